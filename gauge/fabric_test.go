package gauge_test

import (
	"errors"
	"fmt"
	"testing"

	"example.com/panelmath/gauge"
	"github.com/stretchr/testify/require"
)

func ExampleFabric_WorkLength() {
	f := gauge.Fabric{
		Worked:   gauge.MustGauge("13 sts and 10 rows = 4 in"),
		Finished: gauge.MustGauge("13 sts and 9 rows = 4 in"),
	}
	length := gauge.MustLength("20 in").Measurement()
	work, err := f.WorkLength(length)
	fmt.Println(gauge.QuarterInch.Text(work), err)
	// Output: 18 in <nil>
}

func ExampleCombine() {
	r, err := gauge.Combine(gauge.Rule{Multiple: 3, Plus: 1}, gauge.Rule{Multiple: 2})
	fmt.Println(r, err)
	_, err = gauge.Combine(gauge.Rule{Multiple: 4}, gauge.Rule{Multiple: 2, Plus: 1})
	fmt.Println(err)
	// Output:
	// multiple of 6 + 4 <nil>
	// combine multiple of 4 and odd: no legal count
}

func ExampleHook() {
	h, err := gauge.ParseHook("5.5 mm")
	fmt.Println(h, h.US(), h.UK(), err)
	for _, h := range gauge.HooksLabelled("P-16") {
		fmt.Println(h)
	}
	_, err = gauge.ParseHook("P/16")
	fmt.Println(err)
	// Output:
	// 5.5 mm I-9 5 <nil>
	// 11 mm
	// 11.5 mm
	// parse hook: "P/16": a label, which makers use differently; write the diameter: 11 mm or 11.5 mm
}

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
