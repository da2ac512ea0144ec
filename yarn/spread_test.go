package yarn_test

import (
	"math/big"
	"math/rand/v2"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

// The spread of a swatch holds every reading that the true swatch could have
// given, and touches the worst of them.
func TestSpreadHoldsEveryReading(t *testing.T) {
	area := rect("40 in", "25 in")
	s := square
	s.Reading = yarn.Reading{Side: gauge.MustLength("1/8 in"), Mass: yarn.MustMass("0.5 g")}
	line, err := s.Fabric("panel", area, label)
	require.NoError(t, err)
	low, high := line.Length.Sub(line.Less), line.Length.Add(line.More)
	least, most := high, low
	for _, w := range []string{"5.875 in", "6 in", "6.125 in"} {
		for _, h := range []string{"5.875 in", "6 in", "6.125 in"} {
			for _, g := range []string{"14 g", "14.5 g", "15 g"} {
				other := yarn.Swatch{Width: gauge.MustLength(w), Height: gauge.MustLength(h), Mass: yarn.MustMass(g)}
				l, err := other.Fabric("panel", area, label)
				require.NoError(t, err)
				require.LessOrEqual(t, low.Cmp(l.Length), 0)
				require.GreaterOrEqual(t, high.Cmp(l.Length), 0)
				if l.Length.Cmp(least) < 0 {
					least = l.Length
				}
				if l.Length.Cmp(most) > 0 {
					most = l.Length
				}
			}
		}
	}
	require.True(t, least.Equal(low))
	require.True(t, most.Equal(high))
}

func TestSpreadOfAnUnravelledSwatch(t *testing.T) {
	s := yarn.Swatch{Width: gauge.MustLength("5 in"), Height: gauge.MustLength("5 in"), Yarn: yarn.MustLength("800 in"), Reading: yarn.Reading{Yarn: yarn.MustLength("8 in")}}
	l, err := s.Fabric("square", rect("10 in", "10 in"), yarn.Label{})
	require.NoError(t, err)
	require.True(t, l.Length.Equal(mm("3200 in")))
	require.True(t, l.Less.Equal(mm("32 in")))
	require.True(t, l.More.Equal(mm("32 in")))
	require.Contains(t, l.Why, "the readings leave 3168 in to 3232 in open")
}

// A margin that covers the spread buys enough for the worst case too.
func TestCoveringMarginIsNeverShort(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 5))
	for range 500 {
		s := square
		s.Reading = yarn.Reading{Side: gauge.Length{Value: decimal.New(int64(rng.IntN(50)), -2), Unit: gauge.Inch}, Mass: yarn.Mass{Value: decimal.New(int64(rng.IntN(200)), -2), Unit: yarn.Gram}}
		line, err := s.Fabric("panels", rect("1 in", "1 in").Times(gauge.Int(rng.IntN(3000)+1)), label)
		require.NoError(t, err)
		seam, err := yarn.WhipStitch().Seam("back", mm("20 in"))
		require.NoError(t, err)
		bare, err := yarn.Buy(label, yarn.Margin{}, line, seam)
		require.NoError(t, err)
		cover := bare.CoverMargin()
		worst := bare.Net.Add(bare.More)
		require.Equal(t, bare.More.Sign() == 0, bare.Covers())

		// The next whole percent covers; a percent less does not, where there is one.
		percent, err := cover.Mul(gauge.Int(100)).Ceil()
		require.NoError(t, err)
		q, err := yarn.Buy(label, yarn.Margin{Percent: decimal.NewFromInt(int64(percent))}, line, seam)
		require.NoError(t, err)
		require.True(t, q.Covers())
		require.GreaterOrEqual(t, label.Length.Measurement().Times(gauge.Int(q.Skeins)).Cmp(worst), 0)
		if percent > 0 {
			q, err = yarn.Buy(label, yarn.Margin{Percent: decimal.NewFromInt(int64(percent - 1))}, line, seam)
			require.NoError(t, err)
			require.False(t, q.Covers())
		}
	}
}

// Where nothing more can be needed, no margin has to cover it.
func TestExplainsASpreadToOneSide(t *testing.T) {
	q, err := yarn.Buy(label, yarn.Margin{}, yarn.Line{Name: "panels", Length: mm("1000 yd"), Less: mm("40 yd")})
	require.NoError(t, err)
	require.Equal(t, "spread: 40 yd less may do, and no more is needed", q.Explain()[2])
}

// Larger areas never take less, whatever the label and the margin.
func TestSizesAreMonotone(t *testing.T) {
	rng := rand.New(rand.NewPCG(13, 17))
	for range 200 {
		l := yarn.Label{Length: yarn.Length{Value: decimal.NewFromInt(int64(rng.IntN(500) + 30)), Unit: gauge.Metre}, Mass: yarn.MustMass("50 g")}
		m := yarn.Margin{Percent: decimal.NewFromInt(int64(rng.IntN(30)))}
		area, skeins := 400, 0
		var total gauge.Measurement
		for range 8 {
			area += rng.IntN(200)
			line, err := square.Fabric("panels", rect("1 in", "1 in").Times(gauge.Int(area)), l)
			require.NoError(t, err)
			q, err := yarn.Buy(l, m, line)
			require.NoError(t, err)
			require.GreaterOrEqual(t, q.Skeins, skeins)
			require.GreaterOrEqual(t, q.Total.Cmp(total), 0)
			skeins, total = q.Skeins, q.Total
		}
	}
}

func TestReadingRefuses(t *testing.T) {
	unravelled := yarn.Swatch{Width: square.Width, Height: square.Height, Yarn: yarn.MustLength("20 m")}
	for _, c := range []struct {
		name string
		s    yarn.Swatch
		r    yarn.Reading
		want string
	}{
		{"side as large as the swatch", square, yarn.Reading{Side: gauge.MustLength("6 in")}, "Swatch.Reading.Side: got 6 in, want at least 0 and less than the swatch"},
		{"negative side", square, yarn.Reading{Side: gauge.MustLength("-1 in")}, "Swatch.Reading.Side: got -1 in, want at least 0 and less than the swatch"},
		{"side without unit", square, yarn.Reading{Side: gauge.Length{Value: decimal.NewFromInt(1)}}, "Swatch.Reading.Side.Unit: got Unit(0), want mm, cm, m, in, ft or yd"},
		{"mass as large as the swatch", square, yarn.Reading{Mass: yarn.MustMass("14.5 g")}, "Swatch.Reading.Mass: got 14.5 g, want less than the mass of the swatch"},
		{"negative mass", square, yarn.Reading{Mass: yarn.Mass{Value: decimal.NewFromInt(-1), Unit: yarn.Gram}}, "Swatch.Reading.Mass.Value: got -1 g, want at least 0"},
		{"mass of an unravelled swatch", unravelled, yarn.Reading{Mass: yarn.MustMass("1 g")}, "Swatch.Reading.Mass: got 1 g, want less than the mass of the swatch"},
		{"yarn of a weighed swatch", square, yarn.Reading{Yarn: yarn.MustLength("1 m")}, "Swatch.Reading.Yarn: got 1 m, want less than the yarn of the swatch"},
		{"yarn as long as all", unravelled, yarn.Reading{Yarn: yarn.MustLength("20 m")}, "Swatch.Reading.Yarn: got 20 m, want less than the yarn of the swatch"},
		{"yarn without unit", unravelled, yarn.Reading{Yarn: yarn.Length{Value: decimal.NewFromInt(1)}}, "Swatch.Reading.Yarn.Unit: got Unit(0), want yd, m, in, ft, cm or mm"},
	} {
		t.Run(c.name, func(t *testing.T) {
			c.s.Reading = c.r
			require.EqualError(t, c.s.Validate(), c.want)
		})
	}
}

func TestGaugeSpread(t *testing.T) {
	g := gauge.MustGauge("2 repeats of 8 sts = 5 in, 20 rows = 4 in")
	low, high, err := yarn.GaugeSpread(g, decimal.NewFromInt(1), decimal.NewFromInt(1))
	require.NoError(t, err)
	require.Equal(t, 0, low.Rat().Cmp(new(big.Rat).Mul(big.NewRat(16, 17), big.NewRat(20, 21))))
	require.Equal(t, 0, high.Rat().Cmp(new(big.Rat).Mul(big.NewRat(16, 15), big.NewRat(20, 19))))
	_, _, err = yarn.GaugeSpread(gauge.Gauge{}, decimal.Zero, decimal.Zero)
	require.Error(t, err)
	for _, c := range []struct {
		sts, rows decimal.Decimal
		want      string
	}{
		{decimal.NewFromInt(16), decimal.Zero, "Stitches: got 16, want at least 0 and less than the count of the gauge"},
		{decimal.Zero, decimal.NewFromInt(-1), "Rows: got -1, want at least 0 and less than the count of the gauge"},
		{decimal.New(1, 99), decimal.Zero, "Stitches: got an exponent of 99, want an exponent of -20 to 20"},
	} {
		_, _, err = yarn.GaugeSpread(g, c.sts, c.rows)
		require.EqualError(t, err, c.want)
	}
}

func TestWidenRefuses(t *testing.T) {
	l := yarn.Line{Length: mm("10 m")}
	two := gauge.Int(2)
	for _, c := range []struct{ low, high gauge.Ratio }{{two, two}, {gauge.Int(-1), two}, {gauge.Int(1), gauge.Int(0)}} {
		_, err := l.Widen(c.low, c.high)
		require.ErrorContains(t, err, "want a low of 0 to 1 and a high of at least 1")
	}
	_, err := yarn.Line{Part: 99}.Widen(gauge.Int(1), gauge.Int(1))
	require.EqualError(t, err, `Line.Part: got Part(99), want a part of a garment`)
	_, err = yarn.Line{Length: mm("60000 m")}.Widen(gauge.Int(1), gauge.Int(3))
	require.ErrorIs(t, err, gauge.ErrBounds)
	_, err = yarn.Line{Length: mm("1 m"), Less: mm("2 m")}.Widen(gauge.Int(1), gauge.Int(1))
	require.ErrorContains(t, err, "Line.Less")
}

func TestCompare(t *testing.T) {
	a := yarn.Line{Name: "a", Length: mm("100 m"), Less: mm("5 m"), More: mm("5 m")}
	for _, c := range []struct {
		b     string
		agree bool
		gap   string
		want  string
	}{
		{"104 m", true, "0 m", "a takes 100 m, b takes 104 m, 4% more: within their spread"},
		{"105 m", true, "0 m", "a takes 100 m, b takes 105 m, 5% more: within their spread"},
		{"107 m", false, "2 m", "a takes 100 m, b takes 107 m, 7% more: their spreads are 2 m apart; measure again"},
		{"91 m", false, "4 m", "a takes 100 m, b takes 91 m, 9% less: their spreads are 4 m apart; measure again"},
	} {
		t.Run(c.b, func(t *testing.T) {
			got, err := yarn.Compare(a, yarn.Line{Name: "b", Length: mm(c.b)})
			require.NoError(t, err)
			require.Equal(t, c.agree, got.Agree)
			require.True(t, got.Gap.Equal(mm(c.gap)))
			require.Equal(t, c.want, got.Explain())
		})
	}
	_, err := yarn.Compare(yarn.Line{}, a)
	require.EqualError(t, err, "A.Length: got 0, want more than 0")
	_, err = yarn.Compare(a, yarn.Line{Part: 99})
	require.Error(t, err)
}

// Two widenings on end hold what each of them would, at its worst.
func TestWidenTwice(t *testing.T) {
	l := yarn.Line{Length: mm("100 m")}
	for range 2 {
		var err error
		l, err = l.Widen(share(t, 9, 10), share(t, 11, 10))
		require.NoError(t, err)
	}
	require.True(t, l.Length.Sub(l.Less).Equal(mm("81 m")))
	require.True(t, l.Length.Add(l.More).Equal(mm("121 m")))
}
