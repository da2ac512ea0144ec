package gauge_test

import (
	"testing"

	"example.com/panelmath/gauge"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

// Every entry point validates, and names what does not hold.
func TestCountRefuses(t *testing.T) {
	good := gauge.MustGauge("13 sts and 9 rows = 4 in")
	m := gauge.MustLength("20 in").Measurement()
	long := gauge.MustLength("100 m").Measurement().Times(gauge.Int(100))
	bad := gauge.Rule{Multiple: -6}
	for name, c := range map[string]struct {
		err  func() error
		want string
	}{
		"stitches":            {func() error { _, err := gauge.Gauge{}.StitchesIn(m, gauge.Rule{}); return err }, "Gauge.Stitches.Count: got 0, want more than 0"},
		"rows":                {func() error { _, err := gauge.Gauge{}.RowsIn(m, gauge.Rule{}); return err }, "Gauge.Rows.Count: got 0, want more than 0"},
		"width":               {func() error { _, err := gauge.Gauge{}.Width(3); return err }, "Gauge.Stitches.Count: got 0, want more than 0"},
		"length":              {func() error { _, err := gauge.Gauge{}.Length(3); return err }, "Gauge.Rows.Count: got 0, want more than 0"},
		"rows of a gauge":     {func() error { return gauge.Gauge{Stitches: good.Stitches}.Validate() }, "Gauge.Rows.Count: got 0, want more than 0"},
		"rule for stitches":   {func() error { _, err := good.StitchesIn(m, bad); return err }, "Rule.Multiple: got -6, want 0 to 100000"},
		"rule for rows":       {func() error { _, err := good.RowsIn(m, bad); return err }, "Rule.Multiple: got -6, want 0 to 100000"},
		"too many":            {func() error { _, err := good.StitchesIn(long.Times(gauge.Int(10)), gauge.Rule{}); return err }, "Count: got about 12795275.591, want at most 100000"},
		"over, exact":         {func() error { _, err := gauge.Over{}.Exact(m); return err }, "Count: got 0, want more than 0"},
		"over, round":         {func() error { _, err := gauge.Over{}.Round(m, gauge.Rule{}); return err }, "Count: got 0, want more than 0"},
		"over, within":        {func() error { _, err := gauge.Over{}.Within(m, m, gauge.Rule{}); return err }, "Count: got 0, want more than 0"},
		"over, measure":       {func() error { _, err := gauge.Over{}.Measure(gauge.Int(3)); return err }, "Count: got 0, want more than 0"},
		"repeat":              {func() error { return gauge.Over{Count: decimal.New(2, 0), Of: -1, Span: good.Rows.Span}.Validate() }, "Of: got -1, want 0 to 100000"},
		"span":                {func() error { return gauge.Over{Count: decimal.New(2, 0)}.Validate() }, "Span.Unit: got Unit(0), want mm, cm, m, in, ft or yd"},
		"within, rule":        {func() error { _, err := bad.Within(gauge.Int(0), gauge.Int(9)); return err }, "Rule.Multiple: got -6, want 0 to 100000"},
		"round, rule":         {func() error { _, err := bad.Round(gauge.Int(0)); return err }, "Rule.Multiple: got -6, want 0 to 100000"},
		"direction":           {func() error { return gauge.Rule{Direction: 9}.Validate() }, "Rule.Direction: got Direction(9), want nearest, ties down, up or down"},
		"counter of nothing":  {func() error { _, err := new(gauge.Counter).Round(m); return err }, "Counter: got the zero value, want a counter made by Over.Counter"},
		"counter, gauge":      {func() error { _, err := gauge.Over{}.Counter(gauge.Rule{}); return err }, "Count: got 0, want more than 0"},
		"counter, rule":       {func() error { _, err := good.Rows.Counter(bad); return err }, "Rule.Multiple: got -6, want 0 to 100000"},
		"combine, first":      {func() error { _, err := gauge.Combine(bad, gauge.Rule{}); return err }, "Rule.Multiple: got -6, want 0 to 100000"},
		"combine, second":     {func() error { _, err := gauge.Combine(gauge.Rule{}, bad); return err }, "Rule.Multiple: got -6, want 0 to 100000"},
		"combine, directions": {func() error { _, err := gauge.Combine(rule("any, up"), rule("any, down")); return err }, "Rule.Direction: got up and down, want one direction"},
		"combine, too large":  {func() error { _, err := gauge.Combine(rule("multiple of 99999"), rule("even")); return err }, "Rule.Multiple: got 99999 times 2, want at most 100000"},
		"nothing below":       {func() error { _, err := rule("odd, at least 4, down").Round(gauge.Int(4)); return err }, `round 4 by "odd, at least 4, down": no legal count; the smallest is 5`},
	} {
		t.Run(name, func(t *testing.T) { require.EqualError(t, c.err(), c.want) })
	}
}

func TestCombine(t *testing.T) {
	for _, c := range []struct{ a, b, want string }{
		{"multiple of 3 + 1", "even", "multiple of 6 + 4"},
		{"even", "multiple of 3 + 1", "multiple of 6 + 4"},
		{"multiple of 4 - 1", "any", "multiple of 4 + 3"},
		{"any", "any, down", "any, down"},
		{"any, up", "odd", "odd, up"},
		{"multiple of 6, at least 7, ties down", "multiple of 4, at least 3, ties down", "multiple of 12, at least 7, ties down"},
		{"multiple of 100000 + 1", "multiple of 100000 + 1", "multiple of 100000 + 1"},
	} {
		got, err := gauge.Combine(rule(c.a), rule(c.b))
		require.NoError(t, err)
		require.Equal(t, c.want, got.String(), "%s and %s", c.a, c.b)
	}
	_, err := gauge.Combine(rule("multiple of 4"), rule("odd"))
	require.ErrorIs(t, err, gauge.ErrNoCount)
}

// A length below nothing is printed with its sign, in front of a fraction too.
func TestGridNegative(t *testing.T) {
	for _, c := range []struct {
		length string
		grid   gauge.Grid
		want   string
	}{
		{"-2½ in", gauge.QuarterInch, "-2½ in"}, {"-½ in", gauge.QuarterInch, "-½ in"}, {"-0.1 in", gauge.QuarterInch, "0 in"},
		{"-0.125 in", gauge.QuarterInch, "-¼ in"}, {"0.125 in", gauge.QuarterInch, "¼ in"}, {"-1.25 cm", gauge.HalfCentimetre, "-1.5 cm"},
		{"3½ in", gauge.WholeInch, "4 in"}, {"3¾ in", gauge.HalfInch, "4 in"}, {"3.7 in", gauge.HalfInch, "3½ in"}, {"3.4 cm", gauge.WholeCentimetre, "3 cm"},
	} {
		got := c.grid.Text(gauge.MustLength(c.length).Measurement())
		require.Equal(t, c.want, got, "%s on %v", c.length, c.grid)
		back, err := gauge.ParseLength(got)
		require.NoError(t, err)
		require.True(t, back.Value.Equal(c.grid.Round(gauge.MustLength(c.length).Measurement()).Value))
	}
	require.Equal(t, gauge.QuarterInch.Text(gauge.MustLength("3.3 in").Measurement()), gauge.Grid(99).Text(gauge.MustLength("3.3 in").Measurement()))
}

// Rounded up, a length lies at the first step of the grid that is not
// below it: every sixteenth of a step is tried, with a hair more
// and a hair less, as an inch on the grids that print an inch as 2.5 cm.
func TestGridUp(t *testing.T) {
	hair := gauge.MustLength("0.000001 mm").Measurement()
	for g := gauge.QuarterInch; g.Validate() == nil; g++ {
		step := map[gauge.Grid]string{
			gauge.QuarterInch: "1/4 in", gauge.EighthInch: "1/8 in", gauge.HalfInch: "1/2 in", gauge.WholeInch: "1 in",
			gauge.HalfCentimetre: "0.5 cm", gauge.WholeCentimetre: "1 cm", gauge.HalfCentimetreAt25: "5.08 mm", gauge.WholeCentimetreAt25: "10.16 mm",
		}[g]
		one := gauge.MustLength(step).Measurement()
		for n := -20; n <= 20; n++ {
			up := g.Round(one.Times(gauge.Int(n)))
			for part := -15; part <= 0; part++ {
				sixteenths, err := gauge.Share(16*n+part, 16)
				require.NoError(t, err)
				at := one.Times(sixteenths)
				require.Equal(t, up, g.RoundUp(at), "%v, %s", g, at)
				if part > -15 {
					require.Equal(t, up, g.RoundUp(at.Sub(hair)), "%v, just below %s", g, at)
				}
				if part < 0 {
					require.Equal(t, up, g.RoundUp(at.Add(hair)), "%v, just above %s", g, at)
				}
			}
		}
	}
}

// Rounding allocates nothing while the numbers fit.
func TestRoundAllocations(t *testing.T) {
	o, m, r := over("13 over 4 in"), gauge.MustLength("48.5 in").Measurement(), gauge.Rule{Multiple: 4, Plus: 2}
	counter, err := o.Counter(r)
	require.NoError(t, err)
	require.Zero(t, testing.AllocsPerRun(100, func() { _, _ = counter.Round(m) }))
	require.Zero(t, testing.AllocsPerRun(100, func() { _, _ = o.Round(m, r) }))
}

// No partial result stands beside an error.
func TestNothingBesideAnError(t *testing.T) {
	c, err := gauge.Rule{Multiple: 3}.Round(gauge.Int(100_001))
	require.ErrorIs(t, err, gauge.ErrBounds)
	require.Zero(t, c)
	x, err := gauge.Over{}.Exact(gauge.MustLength("4 in").Measurement())
	require.Error(t, err)
	require.Zero(t, x)
}
