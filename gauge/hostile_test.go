package gauge_test

import (
	"encoding/json"
	"fmt"
	"math/big"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

// hostile sets every package variable of the decimal package to an odd value
// until the test ends.
func hostile(t *testing.T) {
	division, power, quotes, trim, scientific, iterations, exponent, zero := decimal.DivisionPrecision, decimal.PowPrecisionNegativeExponent,
		decimal.MarshalJSONWithoutQuotes, decimal.TrimTrailingZeros, decimal.UseScientificNotation, decimal.ExpMaxIterations, decimal.MaxDecodeExponent, decimal.Zero
	t.Cleanup(func() {
		decimal.DivisionPrecision, decimal.PowPrecisionNegativeExponent, decimal.MarshalJSONWithoutQuotes, decimal.TrimTrailingZeros = division, power, quotes, trim
		decimal.UseScientificNotation, decimal.ExpMaxIterations, decimal.MaxDecodeExponent, decimal.Zero = scientific, iterations, exponent, zero
	})
	decimal.DivisionPrecision, decimal.PowPrecisionNegativeExponent, decimal.MarshalJSONWithoutQuotes, decimal.TrimTrailingZeros = 2, -3, true, false
	decimal.UseScientificNotation, decimal.ExpMaxIterations, decimal.MaxDecodeExponent, decimal.Zero = true, 1, 0, decimal.New(7, 0)
}

// everything returns one text with a result of every kind.
func everything(t *testing.T) string {
	var b strings.Builder
	for _, v := range readVectors(t) {
		fmt.Fprintln(&b, v.answered(t))
	}
	for _, s := range []string{"20.50 in", "1200 mm", "0.125 in", "5 ft 3½ in", "20 3/16 in"} {
		l := gauge.MustLength(s)
		j, err := json.Marshal(l)
		require.NoError(t, err)
		fmt.Fprintln(&b, l, l.Measurement(), string(j))
		for g := gauge.QuarterInch; g.Validate() == nil; g++ {
			fmt.Fprintln(&b, g.Text(l.Measurement()), g.Round(l.Measurement()))
		}
	}
	for _, s := range []string{"12.0 sts and 7.50 rows = 4.00 in", "2 repeats of 8 sts = 3½ in, 9 rows = 10 cm"} {
		g := gauge.MustGauge(s)
		c, err := g.StitchesIn(gauge.MustLength("1200 mm").Measurement(), gauge.Rule{Multiple: 4, Plus: 2})
		require.NoError(t, err)
		j, err := json.Marshal(c)
		require.NoError(t, err)
		fmt.Fprintln(&b, g, c.Explain(), c.ExplainIn(gauge.Inch), string(j))
		growth, err := gauge.Fabric{Worked: g, Finished: gauge.MustGauge("13 sts and 9 rows = 4 in")}.Growth()
		require.NoError(t, err)
		fmt.Fprintln(&b, growth.Explain())
	}
	fmt.Fprintln(&b, gauge.Length{Value: decimal.New(12, 2), Unit: gauge.Millimetre}, gauge.Over{Count: decimal.New(2, 1), Span: gauge.Length{Value: decimal.New(1, 2), Unit: gauge.Millimetre}})
	x, err := gauge.ParseRatio("103.600")
	require.NoError(t, err)
	fmt.Fprintln(&b, x, x.Text(2))
	for _, bad := range []string{"20,5 cm", "1e5 in", "101 m", "9 inn"} {
		_, err := gauge.ParseLength(bad)
		fmt.Fprintln(&b, err)
	}
	return b.String()
}

// The decimal package's variables change nothing here.
func TestHostileSettings(t *testing.T) {
	want := everything(t)
	hostile(t)
	require.Equal(t, "20.50", decimal.New(2050, -2).String(), "the settings are not in force")
	require.Equal(t, want, everything(t))
}

// A number far out of bounds is refused, and printed, at once.
func TestHostileNumbers(t *testing.T) {
	for _, d := range []decimal.Decimal{decimal.New(1, 1_000_000_000), decimal.New(1, -1_000_000_000), decimal.New(1, 21), decimal.New(1, -21),
		decimal.NewFromBigInt(new(big.Int).Exp(big.NewInt(10), big.NewInt(40), nil), 0)} {
		l := gauge.Length{Value: d, Unit: gauge.Inch}
		require.ErrorIs(t, l.Validate(), gauge.ErrBounds)
		require.Equal(t, "(a number out of bounds) in", l.String())
		_, err := l.MarshalText()
		require.ErrorIs(t, err, gauge.ErrBounds)
		_, err = gauge.FromDecimal(d)
		require.ErrorIs(t, err, gauge.ErrBounds)
		o := gauge.Over{Count: d, Span: gauge.MustLength("4 in")}
		require.ErrorIs(t, o.Validate(), gauge.ErrBounds)
		require.NotEmpty(t, o.String())
		o = gauge.Over{Count: decimal.New(13, 0), Span: l}
		require.ErrorIs(t, o.Validate(), gauge.ErrBounds)
		require.NotEmpty(t, o.String())
	}
}

// Counts and whole numbers beyond their bounds.
func TestOutOfBounds(t *testing.T) {
	huge, err := gauge.ParseRatio(strings.Repeat("9", 50))
	require.NoError(t, err)
	for _, r := range []gauge.Rule{{}, {Multiple: 7, Plus: 3, Direction: gauge.Up}} {
		_, err = r.Round(huge)
		require.EqualError(t, err, "Count: got about a number of more than 20 digits, want at most 100000")
		require.ErrorIs(t, err, gauge.ErrBounds)
		_, err = r.Round(gauge.Int(100_001))
		require.ErrorIs(t, err, gauge.ErrBounds)
	}
	c, err := gauge.Rule{Multiple: 3}.Round(gauge.Int(100_000)) // 99 999 or 100 002
	require.NoError(t, err)
	require.Equal(t, 99_999, c.Value)
	_, err = gauge.Rule{Multiple: 3, Direction: gauge.Up}.Round(gauge.Int(100_000))
	require.ErrorIs(t, err, gauge.ErrBounds)
	_, err = huge.Floor()
	require.ErrorIs(t, err, gauge.ErrBounds)
	_, err = huge.Ceil()
	require.ErrorIs(t, err, gauge.ErrBounds)
	_, err = gauge.Rule{}.Within(gauge.Int(0), huge)
	require.ErrorIs(t, err, gauge.ErrBounds)
	_, ok := huge.ExactDecimal()
	require.False(t, ok)
	require.Equal(t, "0.00000000000000000000", gauge.Ratio{}.Text(1000))
	require.Equal(t, "0", gauge.Ratio{}.Decimal(-3).String())
	lowest := gauge.Int(-1 << 63)
	require.Equal(t, "9223372036854775808", gauge.Ratio{}.Sub(lowest).String())
}
