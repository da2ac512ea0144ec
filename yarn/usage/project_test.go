package usage_test

import (
	"encoding/json"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/usage"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

var label = yarn.MustLabel("230 yd = 100 g")

func mm(s string) gauge.Measurement { return yarn.MustLength(s).Measurement() }

func rect(w, h string) yarn.Area { return yarn.Rectangle(mm(w), mm(h)) }

func TestRowsRefuse(t *testing.T) {
	row := usage.RowSample{Width: gauge.MustLength("5 in"), Yarn: yarn.MustLength("53 in")}
	for _, c := range []struct {
		name string
		r    usage.RowSample
		want string
	}{
		{"no width", usage.RowSample{Yarn: row.Yarn}, "RowSample.Width.Unit: got Unit(0), want mm, cm, m, in, ft or yd"},
		{"width of nothing", usage.RowSample{Width: gauge.MustLength("0 in"), Yarn: row.Yarn}, "RowSample.Width: got 0 in, want more than 0"},
		{"no yarn", usage.RowSample{Width: row.Width, Yarn: yarn.MustLength("0 in")}, "RowSample.Yarn: got 0 in, want more than 0"},
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
}

func TestProjectRefuses(t *testing.T) {
	ok := usage.Project{Label: label, Area: rect("10 in", "10 in"), Mass: yarn.MustMass("50 g")}
	for _, c := range []struct {
		name string
		p    usage.Project
		want string
	}{
		{"no label", usage.Project{}, "Project.Label.Length.Unit: got Unit(0), want yd, m, in, ft, cm or mm"},
		{"both", usage.Project{Label: label, Mass: ok.Mass, Skeins: decimal.NewFromInt(2)}, "Project.Skeins: got both a mass and skeins, want one of the two"},
		{"neither", usage.Project{Label: label}, "Project.Skeins: got 0, want more than 0, at most 100000"},
		{"no mass", usage.Project{Label: label, Mass: yarn.MustMass("0 g")}, "Project.Mass: got 0 g, want more than 0"},
		{"hostile skeins", usage.Project{Label: label, Skeins: decimal.New(1, 1_000_000)}, "Project.Skeins: got an exponent of 1000000, want an exponent of -20 to 20"},
		{"all left", usage.Project{Label: label, Skeins: decimal.NewFromInt(2), Left: yarn.MustMass("200 g")}, "Project.Left: got 200 g, want less than the skeins weigh"},
		{"rest without unit", usage.Project{Label: label, Skeins: decimal.NewFromInt(2), Left: yarn.Mass{Value: decimal.NewFromInt(1)}}, "Project.Left.Unit: got MassUnit(0), want g, kg, oz or lb"},
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
	p := usage.Project{Label: label, Area: rect("10 in", "10 in"), Skeins: decimal.New(5, -1)}
	used, err := p.Used()
	require.NoError(t, err)
	require.True(t, used.Less.Equal(used.Length), "half a skein begun may be hardly any")

	p = usage.Project{Label: label, Area: rect("40 in", "40 in"), Skeins: decimal.NewFromInt(7), Left: yarn.MustMass("90 g")}
	double, err := p.Fabric("double", rect("40 in", "80 in"))
	require.NoError(t, err)
	require.True(t, double.Length.Equal(label.LengthOf(yarn.MustMass("1220 g").Exact())))
	n, _, err := label.Skeins(double.Length)
	require.NoError(t, err)
	require.Equal(t, 13, n, "twice the 7 skeins would be 14")
}

// What a brief may hold for each way, read and written.
func TestJSON(t *testing.T) {
	const text = `{"row":{"width":"10 in","yarn":"145 in"},` +
		`"samples":[{"name":"first panel","counts":[{"stitch":"hdc","n":3600},{"stitch":"ch","n":640}],"mass":"112 g"},{"name":"swatch","counts":[{"stitch":"hdc","n":400}],"yarn":"22 m"}],` +
		`"project":{"label":{"length":"230 yd","mass":"100 g"},"area":"903224 sq mm","skeins":"6","left":"20 g"}}`
	var b struct {
		Row     usage.RowSample `json:"row"`
		Samples []usage.Sample  `json:"samples"`
		Project usage.Project   `json:"project"`
	}
	require.NoError(t, json.Unmarshal([]byte(text), &b))
	out, err := json.Marshal(b)
	require.NoError(t, err)
	require.JSONEq(t, text, string(out))

	f, err := usage.Fit(b.Project.Label, b.Samples...)
	require.NoError(t, err)
	out, err = json.Marshal(f)
	require.NoError(t, err)
	var back usage.Fitted
	require.NoError(t, json.Unmarshal(out, &back))
	require.Equal(t, f.Explain(), back.Explain())
	line, err := b.Project.Fabric("next", rect("50 in", "30 in"))
	require.NoError(t, err)
	more, err := gauge.Share(1500, 1400)
	require.NoError(t, err)
	require.True(t, line.Length.Equal(b.Project.Label.LengthOf(yarn.MustMass("580 g").Exact().Times(more))))
}
