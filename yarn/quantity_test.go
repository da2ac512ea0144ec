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

// ratio turns a big.Rat into a Ratio.
func ratio(r *big.Rat) gauge.Ratio {
	x, err := gauge.ParseRatio(r.RatString())
	if err != nil {
		panic(err)
	}
	return x
}

var (
	label  = yarn.MustLabel("230 yd = 100 g")
	square = yarn.Swatch{Width: gauge.MustLength("6 in"), Height: gauge.MustLength("6 in"), Mass: yarn.MustMass("14.5 g")}
)

// The whole sum against math/big, on generated garments: fabric by the swatch,
// three seams, a margin; never short, and one skein fewer would be.
func TestQuantityAgainstBigRat(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 11))
	mul := func(xs ...*big.Rat) *big.Rat {
		p := big.NewRat(1, 1)
		for _, x := range xs {
			p.Mul(p, x)
		}
		return p
	}
	for range 2000 {
		n, r := int64(rng.IntN(200)+1), int64(rng.IntN(60)+1)
		sts, rows := int64(rng.IntN(20)+8), int64(rng.IntN(20)+8)
		yd, g, centi := int64(rng.IntN(600)+40), int64(rng.IntN(200)+50), int64(rng.IntN(3000)+100)
		percent := int64(rng.IntN(40))
		seam := big.NewRat(int64(rng.IntN(400)), int64(rng.IntN(30)+1)) // in

		gg := gauge.Gauge{
			Stitches: gauge.Over{Count: decimal.NewFromInt(sts), Span: gauge.MustLength("4 in")},
			Rows:     gauge.Over{Count: decimal.NewFromInt(rows), Span: gauge.MustLength("10 cm")},
		}
		l := yarn.Label{
			Length: yarn.Length{Value: decimal.NewFromInt(yd), Unit: gauge.Yard},
			Mass:   yarn.Mass{Value: decimal.NewFromInt(g), Unit: yarn.Gram},
		}
		sw := yarn.Swatch{Width: gauge.MustLength("6 in"), Height: gauge.MustLength("15 cm"), Mass: yarn.Mass{Value: decimal.New(centi, -2), Unit: yarn.Gram}}
		long, err := gg.Stitches.Measure(gauge.Int(int(n)))
		require.NoError(t, err)
		wide, err := gg.Rows.Measure(gauge.Int(int(r)))
		require.NoError(t, err)
		fabric, err := sw.Fabric("panels", yarn.Rectangle(long, wide).Times(gauge.Int(2)), l)
		require.NoError(t, err)
		lines := []yarn.Line{fabric}
		for range 3 {
			s, err := yarn.WhipStitch().Seam("seam", gauge.MeasurementOf(ratio(seam), gauge.Inch))
			require.NoError(t, err)
			lines = append(lines, s)
		}
		q, err := yarn.Buy(l, yarn.Margin{Percent: decimal.NewFromInt(percent)}, lines...)
		require.NoError(t, err)

		// The same in yards, the slow way.
		area := mul(big.NewRat(2*n*4, sts), big.NewRat(r*1000, rows*254)) // sq in; 10 cm = 1000/254 in
		perYd := mul(area, big.NewRat(centi, 100), mul(big.NewRat(6, 1), big.NewRat(1500, 254)).Inv(mul(big.NewRat(6, 1), big.NewRat(1500, 254))))
		want := mul(perYd, big.NewRat(yd, g))
		one := new(big.Rat).Add(mul(seam, big.NewRat(5, 2)), big.NewRat(12, 1))
		want.Add(want, mul(one, big.NewRat(3, 36)))
		want.Mul(want, big.NewRat(100+percent, 100))
		require.Equal(t, 0, want.Cmp(q.Total.In(gauge.Yard).Rat()), "%v against %v", want, q.Total.In(gauge.Yard))
		require.Equal(t, 0, mul(want, big.NewRat(g, yd)).Cmp(q.Mass.In(yarn.Gram).Rat()))

		bought := big.NewRat(int64(q.Skeins)*yd, 1)
		require.GreaterOrEqual(t, bought.Cmp(want), 0, "short")
		require.Less(t, new(big.Rat).Sub(bought, big.NewRat(yd, 1)).Cmp(want), 0, "a skein too many")
		require.Equal(t, 0, new(big.Rat).Sub(bought, want).Cmp(q.Slack.In(gauge.Yard).Rat()))
	}
}

func TestSkeinsExactMultipleIsNotRoundedFurther(t *testing.T) {
	n, slack, err := label.Skeins(yarn.MustLength("460 yd").Measurement())
	require.NoError(t, err)
	require.Equal(t, 2, n)
	require.Equal(t, 0, slack.Sign())
	n, _, err = label.Skeins(yarn.MustLength("460.0000000000000001 yd").Measurement())
	require.NoError(t, err)
	require.Equal(t, 3, n)
	n, slack, err = label.Skeins(gauge.Measurement{})
	require.NoError(t, err)
	require.Equal(t, 0, n)
	require.Equal(t, 0, slack.Sign())
}

func TestBuyRefuses(t *testing.T) {
	line := yarn.Line{Name: "fabric", Length: yarn.MustLength("100 yd").Measurement()}
	negative := yarn.Line{Length: gauge.MustLength("-1 in").Measurement()}
	far := yarn.Line{Length: yarn.MustLength("60000 m").Measurement()}
	for _, c := range []struct {
		name   string
		label  yarn.Label
		margin yarn.Margin
		lines  []yarn.Line
		want   string
	}{
		{"zero label", yarn.Label{}, yarn.Margin{}, []yarn.Line{line}, "Label.Length.Unit: got Unit(0), want yd, m, in, ft, cm or mm"},
		{"label of no length", yarn.Label{Length: yarn.MustLength("0 yd"), Mass: label.Mass}, yarn.Margin{}, []yarn.Line{line}, "Label.Length: got 0 yd, want more than 0"},
		{"label of no mass", yarn.Label{Length: label.Length, Mass: yarn.MustMass("0 g")}, yarn.Margin{}, []yarn.Line{line}, "Label.Mass: got 0 g, want more than 0"},
		{"margin takes away all and more", label, yarn.Margin{Percent: decimal.NewFromInt(-101)}, []yarn.Line{line}, "Margin.Percent: got -101, want -100 to 1000"},
		{"margin of hostile size", label, yarn.Margin{Percent: decimal.New(1, 1_000_000)}, []yarn.Line{line}, "Margin.Percent: got an exponent of 1000000, want an exponent of -20 to 20"},
		{"no lines", label, yarn.Margin{}, nil, "Lines: got 0, want 1 to 10000 lines"},
		{"negative line", label, yarn.Margin{}, []yarn.Line{line, negative}, "Lines[1].Line.Length: got less than nothing, want at least 0"},
		{"beyond 100 km", label, yarn.Margin{}, []yarn.Line{far, far}, "Total: got more than 100 km, want at most 100 km"},
		{"too many skeins", yarn.MustLabel("1 mm = 1 g"), yarn.Margin{}, []yarn.Line{far}, "Skeins: got more than 100000, want at most 100000"},
	} {
		t.Run(c.name, func(t *testing.T) {
			q, err := yarn.Buy(c.label, c.margin, c.lines...)
			require.EqualError(t, err, c.want)
			require.Empty(t, q.Lines)
		})
	}
}

func TestMarginMayBeNothingOrTakeAway(t *testing.T) {
	line := yarn.Line{Name: "fabric", Length: yarn.MustLength("1000 yd").Measurement()}
	for _, c := range []struct {
		margin, total string
		skeins        int
	}{{"0%", "1000 yd", 5}, {"10 %", "1100 yd", 5}, {"-10%", "900 yd", 4}, {"-100%", "0 yd", 0}, {"+15 percent", "1150 yd", 5}, {"15.0001%", "1150.001 yd", 6}} {
		t.Run(c.margin, func(t *testing.T) {
			q, err := yarn.Buy(label, yarn.MustMargin(c.margin), line)
			require.NoError(t, err)
			require.True(t, q.Total.Equal(yarn.MustLength(c.total).Measurement()), "%v", q.Total)
			require.Equal(t, c.skeins, q.Skeins)
		})
	}
}

func TestSwatchRefuses(t *testing.T) {
	six := gauge.MustLength("6 in")
	for _, c := range []struct {
		name string
		s    yarn.Swatch
		want string
	}{
		{"zero value", yarn.Swatch{}, "Swatch.Width.Unit: got Unit(0), want mm, cm, m, in, ft or yd"},
		{"no height", yarn.Swatch{Width: six, Height: gauge.MustLength("0 in"), Mass: yarn.MustMass("1 g")}, "Swatch.Height: got 0 in, want more than 0"},
		{"negative width", yarn.Swatch{Width: gauge.MustLength("-6 in"), Height: six, Mass: yarn.MustMass("1 g")}, "Swatch.Width: got -6 in, want more than 0"},
		{"neither mass nor yarn", yarn.Swatch{Width: six, Height: six}, "Swatch.Mass: got no mass and no length of yarn, want one of the two"},
		{"no mass", yarn.Swatch{Width: six, Height: six, Mass: yarn.MustMass("0 g")}, "Swatch.Mass: got 0 g, want more than 0"},
		{"both", yarn.Swatch{Width: six, Height: six, Mass: yarn.MustMass("1 g"), Yarn: yarn.MustLength("1 m")}, "Swatch.Yarn: got both a mass and a length of yarn, want one of the two"},
		{"no yarn", yarn.Swatch{Width: six, Height: six, Yarn: yarn.MustLength("0 m")}, "Swatch.Yarn: got 0 m, want more than 0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := c.s.Fabric("panel", yarn.Rectangle(six.Measurement(), six.Measurement()), label)
			require.EqualError(t, err, c.want)
		})
	}
	_, err := square.Fabric("panel", square.Area(), yarn.Label{})
	require.EqualError(t, err, "Label.Length.Unit: got Unit(0), want yd, m, in, ft, cm or mm")
	_, err = square.Fabric("panel", square.Area().Times(gauge.Int(-1)), label)
	require.EqualError(t, err, "Area: got less than nothing, want at least 0")
	_, err = square.Fabric("panel", square.Area().Times(gauge.Int(1_000_000)), label)
	require.ErrorIs(t, err, gauge.ErrBounds)
}

func TestSewingRefuses(t *testing.T) {
	for _, c := range []struct {
		name string
		s    yarn.Sewing
		len  gauge.Measurement
		want string
	}{
		{"negative factor", yarn.Sewing{Factor: decimal.NewFromInt(-1)}, gauge.Measurement{}, "Sewing.Factor: got -1, want 0 to 100"},
		{"hostile factor", yarn.Sewing{Factor: decimal.New(1, 1_000_000)}, gauge.Measurement{}, "Sewing.Factor: got an exponent of 1000000, want an exponent of -20 to 20"},
		{"negative end", yarn.Sewing{End: gauge.MustLength("-1 in")}, gauge.Measurement{}, "Sewing.End: got -1 in, want at least 0"},
		{"end without unit", yarn.Sewing{End: gauge.Length{Value: decimal.NewFromInt(3)}}, gauge.Measurement{}, "Sewing.End.Unit: got Unit(0), want mm, cm, m, in, ft or yd"},
		{"negative seam", yarn.Sewing{}, gauge.MustLength("-1 in").Measurement(), "Seam.Length: got less than nothing, want at least 0"},
		{"endless seam", yarn.WhipStitch(), yarn.MustLength("60000 m").Measurement(), "Line.Length: got more than 100 km, want at most 100 km"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := c.s.Seam("side", c.len)
			require.EqualError(t, err, c.want)
		})
	}
}

func TestSewing(t *testing.T) {
	seam := gauge.MustLength("10 in").Measurement()
	for _, c := range []struct {
		name string
		s    yarn.Sewing
		want string
	}{
		{"zero value", yarn.Sewing{}, "0 in"},
		{"whip stitch", yarn.WhipStitch(), "37 in"},
		{"factor alone", yarn.Sewing{Factor: decimal.NewFromInt(4)}, "40 in"},
		{"ends alone", yarn.Sewing{End: gauge.MustLength("10 in")}, "20 in"},
	} {
		t.Run(c.name, func(t *testing.T) {
			l, err := c.s.Seam("side", seam)
			require.NoError(t, err)
			require.True(t, l.Length.Equal(gauge.MustLength(c.want).Measurement()), "%v", l.Length)
			require.Equal(t, yarn.Seam, l.Part)
		})
	}
}
