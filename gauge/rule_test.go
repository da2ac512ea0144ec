package gauge_test

import (
	"errors"
	"testing"

	"example.com/panelmath/gauge"
	"github.com/stretchr/testify/require"
)

// Every pair of small rules against trying all counts.
func TestCombineAgainstTrying(t *testing.T) {
	for m := 1; m <= 9; m++ {
		for n := 1; n <= 9; n++ {
			for p := -m; p <= m; p++ {
				for q := 0; q < n; q++ {
					a, b := gauge.Rule{Multiple: m, Plus: p, Least: 3}, gauge.Rule{Multiple: n, Plus: q}
					c, err := gauge.Combine(a, b)
					some := false
					for x := range 300 {
						both := a.Legal(x) && b.Legal(x)
						some = some || both
						if err == nil {
							require.Equal(t, both, c.Legal(x), "%v and %v at %d", a, b, x)
						}
					}
					require.Equal(t, some, err == nil, "%v and %v: %v", a, b, err)
					if err != nil {
						require.ErrorIs(t, err, gauge.ErrNoCount)
					}
				}
			}
		}
	}
}

func TestGridText(t *testing.T) {
	for g := gauge.QuarterInch; g.Validate() == nil; g++ {
		back, err := gauge.ParseGrid(g.String())
		require.NoError(t, err)
		require.Equal(t, g, back)
	}
	var parse *gauge.ParseError
	_, err := gauge.ParseGrid("third of an inch")
	require.True(t, errors.As(err, &parse))
}

// A bare number is no rule: it may mean that very count.
func TestParseRuleRefusesABareNumber(t *testing.T) {
	for _, s := range []string{"10", "6 + 1", "10, at least 20"} {
		_, err := gauge.ParseRule(s)
		require.ErrorContains(t, err, "want multiple of 6 + 1", s)
	}
	for _, s := range []string{"multiple of 10", "10n", "6n + 1", "multiple of 6n + 1"} {
		_, err := gauge.ParseRule(s)
		require.NoError(t, err, s)
	}
}
