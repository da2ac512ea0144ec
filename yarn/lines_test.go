package yarn_test

import (
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"github.com/stretchr/testify/require"
)

func TestTailsRefuse(t *testing.T) {
	_, err := yarn.Tails("x", -1, gauge.MustLength("6 in"))
	require.EqualError(t, err, "Tails: got -1, want 0 to 100000")
	_, err = yarn.Tails("x", 1, gauge.MustLength("-6 in"))
	require.EqualError(t, err, "Tails.Length.Value: got -6 in, want at least 0")
}

func TestHeldTogetherRefuses(t *testing.T) {
	_, err := square.HeldTogether("x", square.Area())
	require.EqualError(t, err, "Yarns: got 0, want 1 to 16 strands")
	_, err = square.HeldTogether("x", square.Area(), yarn.Yarn{Label: label}, yarn.Yarn{})
	require.EqualError(t, err, "Yarns[1].Label.Length.Unit: got Unit(0), want yd, m, in, ft, cm or mm")
	_, err = yarn.Swatch{}.HeldTogether("x", square.Area(), yarn.Yarn{Label: label})
	require.Error(t, err)
	_, err = square.Itself(yarn.Label{})
	require.Error(t, err)
}

// The strands of a doubled yarn weigh what the swatch weighs, and an unravelled
// swatch gives each strand its own length.
func TestHeldTogether(t *testing.T) {
	a := rect("30 in", "20 in")
	single, err := square.Fabric("x", a, label)
	require.NoError(t, err)
	doubled, err := square.HeldTogether("x", a, yarn.Yarn{Name: "a", Label: label}, yarn.Yarn{Name: "a", Label: label})
	require.NoError(t, err)
	require.Len(t, doubled, 2)
	require.True(t, doubled[0].Length.Add(doubled[1].Length).Equal(single.Length))
	q, err := yarn.BuyEach([]yarn.Yarn{{Name: "a", Label: label}}, yarn.Margin{}, doubled...)
	require.NoError(t, err)
	require.True(t, q[0].Total.Equal(single.Length))

	unravelled := yarn.Swatch{Width: square.Width, Height: square.Height, Yarn: yarn.MustLength("20 m")}
	strands, err := unravelled.HeldTogether("x", square.Area(), yarn.Yarn{Name: "a", Label: label}, yarn.Yarn{Name: "b", Label: yarn.MustLabel("400 m = 50 g")})
	require.NoError(t, err)
	for _, l := range strands {
		require.True(t, l.Length.Equal(mm("20 m")))
	}
}

func TestBuyEachRefuses(t *testing.T) {
	y := []yarn.Yarn{{Name: "a", Label: label}, {Name: "b", Label: label}}
	line := yarn.Line{Yarn: "a", Length: mm("10 m")}
	for _, c := range []struct {
		name  string
		yarns []yarn.Yarn
		lines []yarn.Line
		want  string
	}{
		{"no yarn", nil, nil, "Yarns: got 0, want 1 to 64 yarns"},
		{"two of a name", []yarn.Yarn{y[0], y[0]}, nil, `Yarns[1].Name: got "a" twice, want a name of its own`},
		{"unknown yarn", y, []yarn.Line{line, {Yarn: "c"}}, `Lines[1].Yarn: got "c", want the name of a yarn`},
		{"a yarn without a line", y, []yarn.Line{line}, "Yarns[1].Lines: got 0, want 1 to 10000 lines"},
	} {
		t.Run(c.name, func(t *testing.T) {
			qs, err := yarn.BuyEach(c.yarns, yarn.Margin{}, c.lines...)
			require.EqualError(t, err, c.want)
			require.Nil(t, qs)
		})
	}
}

// The pieces sum up to the whole, and so do the yarns.
func TestPartsSumToTheWhole(t *testing.T) {
	lines := []yarn.Line{
		{Piece: "left", Yarn: "a", Length: mm("100 m"), More: mm("3 m")}, {Piece: "right", Yarn: "b", Length: mm("120 m"), Less: mm("2 m")},
		{Piece: "left", Yarn: "b", Length: mm("7 m")}, {Yarn: "a", Length: mm("1/2 m")},
	}
	q, err := yarn.Buy(label, yarn.Margin{}, lines...)
	require.NoError(t, err)
	pieces, err := yarn.ByPiece(lines...)
	require.NoError(t, err)
	require.Len(t, pieces, 3)
	var sum, less, more gauge.Measurement
	for _, p := range pieces {
		sum, less, more = sum.Add(p.Length), less.Add(p.Less), more.Add(p.More)
	}
	require.True(t, sum.Equal(q.Net) && less.Equal(q.Less) && more.Equal(q.More))
	each, err := yarn.BuyEach([]yarn.Yarn{{Name: "b", Label: label}, {Name: "a", Label: label}}, yarn.Margin{}, lines...)
	require.NoError(t, err)
	require.Equal(t, []string{"b", "a"}, []string{each[0].Yarn, each[1].Yarn})
	require.True(t, each[0].Net.Add(each[1].Net).Equal(q.Net))
	_, err = yarn.ByPiece(yarn.Line{}, yarn.Line{Part: 99})
	require.ErrorContains(t, err, "Lines[1].Line.Part")
	require.Equal(t, "100 m given", yarn.Line{Length: mm("100 m")}.Explain())
	require.ErrorContains(t, yarn.Line{More: gauge.MustLength("-1 in").Measurement()}.Validate(), "Line.More")
}

// Nothing that is handed in is changed.
func TestBuyLeavesItsLinesAlone(t *testing.T) {
	lines := []yarn.Line{{Name: "a", Length: mm("10 m")}}
	q, err := yarn.Buy(label, yarn.MustMargin("10%"), lines...)
	require.NoError(t, err)
	q.Lines[0].Name = "changed"
	require.Equal(t, "a", lines[0].Name)
	exact, err := yarn.Buy(label, yarn.Margin{}, yarn.Line{Length: label.Length.Measurement()})
	require.NoError(t, err)
	require.Equal(t, "skeins: 1 just, nothing left", exact.Explain()[3])
}

func BenchmarkBuy(b *testing.B) {
	a := rect("1253.2 mm", "396.3 mm").Times(gauge.Int(2))
	b.ReportAllocs()
	for b.Loop() {
		fabric, err := square.Fabric("panels", a, label)
		if err != nil {
			b.Fatal(err)
		}
		seam, err := yarn.WhipStitch().Seam("centre back", mm("23 in"))
		if err != nil {
			b.Fatal(err)
		}
		if _, err := yarn.Buy(label, yarn.MustMargin("10%"), fabric, seam, seam, seam); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkParseLabel(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := yarn.ParseLabel("230 yd = 3 1/2 oz"); err != nil {
			b.Fatal(err)
		}
	}
}

// Thousands of fractions without a common denominator are refused at once, not
// added up for hours.
func TestEndlessFractionsAreRefused(t *testing.T) {
	var lines []yarn.Line
	for i := range yarn.MaxLines {
		lines = append(lines, yarn.Line{Length: gauge.MeasurementOf(share(t, 1, 1_000_000_007+2*i), gauge.Metre)})
	}
	_, err := yarn.Buy(label, yarn.Margin{}, lines...)
	require.EqualError(t, err, "Lines: got a fraction of more than 300 digits, want a simpler one")
	_, err = yarn.ByPiece(lines...)
	require.ErrorIs(t, err, gauge.ErrBounds)
	fine := gauge.Int(1)
	for range 40 {
		fine = fine.Mul(share(t, 1, 1_000_000_007))
	}
	for _, l := range []yarn.Line{{Length: gauge.MeasurementOf(fine, gauge.Metre)}, {Length: mm("1 m"), Less: gauge.MeasurementOf(fine, gauge.Metre)}} {
		require.ErrorIs(t, l.Validate(), gauge.ErrBounds)
	}
}
