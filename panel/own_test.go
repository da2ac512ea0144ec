package panel_test

import (
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/row"
	"github.com/stretchr/testify/require"
)

func roomy(texts ...string) []row.Row {
	out := make([]row.Row, 0, len(texts)+4)
	for _, s := range texts {
		out = append(out, row.Must(s, row.US))
	}
	return out
}

// What a plan returns shares no rows with it: neither writing to the one nor
// growing it shows in the other.
func TestPlansOwnTheirRows(t *testing.T) {
	for name, derive := range map[string]func(p panel.Plan) (panel.Plan, error){
		"Solve":      func(p panel.Plan) (panel.Plan, error) { s, err := p.Solve(); return s.Plan, err },
		"Unfinished": func(p panel.Plan) (panel.Plan, error) { return p.Unfinished(1) },
		"FitUnfinished": func(p panel.Plan) (panel.Plan, error) {
			q, _, _, err := p.FitUnfinished(gauge.MustLength("10 in").Measurement(), gauge.MustGauge("13 sts and 9 rows = 4 in").Rows)
			return q, err
		},
		"Mirror": func(p panel.Plan) (panel.Plan, error) { m, _, err := p.Mirror(); return m, err },
		"Size":   func(p panel.Plan) (panel.Plan, error) { return p.Size(0), nil },
	} {
		t.Run(name, func(t *testing.T) {
			p := panel.Plan{Opening: roomy("fhdc", "hdc in each st across"), Repeat: roomy("sc in each st across", "hdc in each st across"), Closing: roomy("hdc in each st across")}
			q, err := derive(p)
			require.NoError(t, err)
			for _, rows := range [][]row.Row{q.Opening, q.Repeat, q.Closing} {
				for i := range rows[:cap(rows)] {
					rows[:cap(rows)][i] = row.Row{}
				}
			}
			for _, rows := range [][]row.Row{p.Opening, p.Repeat, p.Closing} {
				for _, r := range rows {
					require.NotEmpty(t, r.Items)
				}
			}
		})
	}
}

func TestPlanHasNoSuchSize(t *testing.T) {
	p := panel.Plan{Opening: roomy("fhdc 10 (12, 14)", "hdc in each st across")}
	for _, i := range []int{-1, 3} {
		require.Error(t, p.Size(i).Validate())
	}
	require.NoError(t, p.Size(2).Validate())
	require.NoError(t, panel.Plan{Opening: roomy("fhdc 10")}.Size(7).Validate())
	// a row for fewer sizes than the others has no number for the last
	var bad *panel.RowError
	require.ErrorAs(t, panel.Plan{Opening: roomy("fhdc 10 (12, 14)", "hdc in next 10 (12) sts")}.Validate(), &bad)
	require.ErrorContains(t, bad, "size: got 2, want 0 to 1")
}

// No partial result stands beside an error.
func TestNothingBesideAnError(t *testing.T) {
	p := panel.Plan{Opening: roomy("fhdc"), Repeat: roomy("sc in first st, *ch 1, sk 1, dc in next st; rep from * across", "hdc in each st and hdc in each ch-1 sp across"), Closing: roomy("hdc in each st across")}
	q, err := p.Unfinished(1)
	require.Error(t, err)
	require.Zero(t, q)
	p = panel.Plan{Opening: roomy("fhdc"), Repeat: roomy("hdc in each st across", "hdc in each st across", "hdc in each st across")}
	c, n, err := p.Fit(gauge.MeasurementOf(gauge.Int(100_000), gauge.Inch), gauge.MustGauge("13 sts and 13 rows = 4 in").Rows)
	require.Error(t, err)
	require.Zero(t, c)
	require.Zero(t, n)
}

func TestRowErrorWithoutACause(t *testing.T) {
	require.Equal(t, "[0]", (&panel.RowError{}).Error())
}
