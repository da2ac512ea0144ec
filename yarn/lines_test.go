package yarn_test

import (
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

func TestRowsAndTailsRefuse(t *testing.T) {
	row := yarn.RowSample{Width: gauge.MustLength("5 in"), Yarn: yarn.MustLength("53 in")}
	for _, c := range []struct {
		name string
		r    yarn.RowSample
		want string
	}{
		{"no width", yarn.RowSample{Yarn: row.Yarn}, "RowSample.Width.Unit: got Unit(0), want mm, cm, m, in, ft or yd"},
		{"width of nothing", yarn.RowSample{Width: gauge.MustLength("0 in"), Yarn: row.Yarn}, "RowSample.Width: got 0 in, want more than 0"},
		{"no yarn", yarn.RowSample{Width: row.Width, Yarn: yarn.MustLength("0 in")}, "RowSample.Yarn: got 0 in, want more than 0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := c.r.Rows(yarn.Fabric, "x", 1, mm("1 in"))
			require.EqualError(t, err, c.want)
		})
	}
	_, err := row.Rows(yarn.Fabric, "x", -1, mm("1 in"))
	require.EqualError(t, err, "Rows: got -1, want 0 to 100000")
	_, err = row.Rows(yarn.Fabric, "x", 1, gauge.MustLength("-1 in").Measurement())
	require.EqualError(t, err, "Width: got less than nothing, want at least 0")
	_, err = row.Rows(yarn.Fabric, "x", 100_000, mm("100 m"))
	require.ErrorIs(t, err, gauge.ErrBounds)
	_, err = yarn.Tails("x", -1, gauge.MustLength("6 in"))
	require.EqualError(t, err, "Tails: got -1, want 0 to 100000")
	_, err = yarn.Tails("x", 1, gauge.MustLength("-6 in"))
	require.EqualError(t, err, "Tails.Length.Value: got -6 in, want at least 0")
}

func TestProjectRefuses(t *testing.T) {
	ok := yarn.Project{Label: label, Area: rect("10 in", "10 in"), Mass: yarn.MustMass("50 g")}
	for _, c := range []struct {
		name string
		p    yarn.Project
		want string
	}{
		{"no label", yarn.Project{}, "Project.Label.Length.Unit: got Unit(0), want yd, m, in, ft, cm or mm"},
		{"both", yarn.Project{Label: label, Mass: ok.Mass, Skeins: decimal.NewFromInt(2)}, "Project.Skeins: got both a mass and skeins, want one of the two"},
		{"neither", yarn.Project{Label: label}, "Project.Skeins: got 0, want more than 0, at most 100000"},
		{"no mass", yarn.Project{Label: label, Mass: yarn.MustMass("0 g")}, "Project.Mass: got 0 g, want more than 0"},
		{"hostile skeins", yarn.Project{Label: label, Skeins: decimal.New(1, 1_000_000)}, "Project.Skeins: got an exponent of 1000000, want an exponent of -20 to 20"},
		{"all left", yarn.Project{Label: label, Skeins: decimal.NewFromInt(2), Left: yarn.MustMass("200 g")}, "Project.Left: got 200 g, want less than the skeins weigh"},
		{"rest without unit", yarn.Project{Label: label, Skeins: decimal.NewFromInt(2), Left: yarn.Mass{Value: decimal.NewFromInt(1)}}, "Project.Left.Unit: got MassUnit(0), want g, kg, oz or lb"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := c.p.Used()
			require.EqualError(t, err, c.want)
			_, err = c.p.Times("x", gauge.Int(1))
			require.EqualError(t, err, c.want)
		})
	}
	_, err := ok.Times("x", gauge.Int(-1))
	require.EqualError(t, err, "Times: got -1, want at least 0")
	ok.Area = yarn.Area{}
	_, err = ok.Fabric("x", rect("1 in", "1 in"))
	require.EqualError(t, err, "Project.Area: got 0 sq mm, want more than 0")
}

// A project scales its usage: never a rounded number of skeins.
func TestProjectScalesUsage(t *testing.T) {
	p := yarn.Project{Label: label, Area: rect("10 in", "10 in"), Skeins: decimal.New(5, -1)}
	used, err := p.Used()
	require.NoError(t, err)
	require.True(t, used.Less.Equal(used.Length), "half a skein begun may be hardly any")

	p = yarn.Project{Label: label, Area: rect("40 in", "40 in"), Skeins: decimal.NewFromInt(7), Left: yarn.MustMass("90 g")}
	double, err := p.Fabric("double", rect("40 in", "80 in"))
	require.NoError(t, err)
	require.True(t, double.Length.Equal(label.LengthOf(yarn.MustMass("1220 g").Exact())))
	n, _, err := label.Skeins(double.Length)
	require.NoError(t, err)
	require.Equal(t, 13, n, "twice the 7 skeins would be 14")
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
