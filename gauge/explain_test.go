package gauge_test

import (
	"testing"

	"example.com/panelmath/gauge"
	"github.com/stretchr/testify/require"
)

func TestExplain(t *testing.T) {
	inches, cm := gauge.MustGauge("14 sts and 9 rows = 4 in"), gauge.MustGauge("20 sts and 10 rows = 10 cm")
	for _, c := range []struct {
		name         string
		g            gauge.Gauge
		rows         bool
		length, rule string
		want         string
	}{
		{"nearest", inches, false, "18 1/4 in", "any",
			"63.875 stitches lie between 63 (¼ in narrower) and 64 (less than ⅛ in wider): the nearest is 64"},
		{"not a decimal", inches, false, "10 cm", "even",
			"about 13.78 stitches lie between 12 (about ½ in narrower) and 14 (about ⅛ in wider), even: the nearest is 14"},
		{"exact inches", cm, false, "51.8 cm", "multiple of 4 + 2",
			"103.6 stitches lie between 102 (0.8 cm narrower) and 106 (1.2 cm wider), multiple of 4 + 2: the nearest is 102"},
		{"tie", cm, true, "12.5 cm", "any",
			"12.5 rows lie between 12 (0.5 cm shorter) and 13 (0.5 cm longer): just in the middle, so take the larger, 13"},
		{"tie down", cm, true, "12.5 cm", "any, ties down",
			"12.5 rows lie between 12 (0.5 cm shorter) and 13 (0.5 cm longer): just in the middle, so take the smaller, 12"},
		{"up", cm, true, "12.5 cm", "any, up",
			"12.5 rows lie between 12 (0.5 cm shorter) and 13 (0.5 cm longer): rounded up to 13"},
		{"down", cm, true, "12.5 cm", "any, down",
			"12.5 rows lie between 12 (0.5 cm shorter) and 13 (0.5 cm longer): rounded down to 12"},
		{"exact", cm, false, "50 cm", "even", "100 stitches come out exactly, even"},
		{"least", cm, true, "2 cm", "odd, at least 4", "2 rows lie below the smallest count, odd: 5 (3 cm longer)"},
	} {
		t.Run(c.name, func(t *testing.T) {
			count := c.g.StitchesIn
			if c.rows {
				count = c.g.RowsIn
			}
			got, err := count(gauge.MustLength(c.length).Measurement(), rule(c.rule))
			require.NoError(t, err)
			require.Equal(t, c.want, got.Explain())
		})
	}
}

// Without a gauge there is no length to tell, and without a direction neither
// width nor length.
func TestExplainOpen(t *testing.T) {
	x, err := gauge.ParseRatio("103.6")
	require.NoError(t, err)
	c, err := rule("multiple of 4 + 2").Round(x)
	require.NoError(t, err)
	require.Equal(t, "103.6 lies between 102 and 106, multiple of 4 + 2: the nearest is 102", c.Explain())
	require.Zero(t, c.Deviation().Sign())
	c, err = over("20 over 10 cm").Round(gauge.MustLength("51.8 cm").Measurement(), rule("multiple of 4 + 2"))
	require.NoError(t, err)
	require.Equal(t, "103.6 lies between 102 (0.8 cm short) and 106 (1.2 cm over), multiple of 4 + 2: the nearest is 102", c.Explain())
	c.Counted = 9
	require.Contains(t, c.Explain(), "102 (0.8 cm short)")
	c, err = gauge.Rule{}.Round(gauge.Int(7))
	require.NoError(t, err)
	require.Equal(t, "7 comes out exactly", c.Explain())
	c, err = over("10 over 1 cm").Round(gauge.MustLength("1.04 cm").Measurement(), gauge.Rule{})
	require.NoError(t, err)
	require.Equal(t, "10.4 lies between 10 (less than 0.1 cm short) and 11 (about 0.1 cm over): the nearest is 10", c.Explain())
}

func TestGrowthExplain(t *testing.T) {
	same := gauge.Fabric{Finished: gauge.MustGauge("13 sts and 9 rows = 4 in")}
	for _, growth := range []func() (gauge.Growth, error){same.Growth, same.Hang} {
		g, err := growth()
		require.NoError(t, err)
		require.Equal(t, "as wide and as long", g.Explain())
	}
	for _, f := range []gauge.Fabric{
		{}, {Worked: same.Finished},
		{Finished: same.Finished, Worked: gauge.Gauge{Stitches: gauge.Over{Of: 3}}},
		{Finished: same.Finished, Hung: gauge.Gauge{Rows: gauge.Over{Span: gauge.MustLength("4 in")}}},
	} {
		var field *gauge.FieldError
		_, err := f.Growth()
		require.ErrorAs(t, err, &field)
		_, err = f.Hang()
		require.ErrorAs(t, err, &field)
		_, err = f.WorkWidth(gauge.Measurement{})
		require.ErrorAs(t, err, &field)
		_, err = f.WorkLength(gauge.Measurement{})
		require.ErrorAs(t, err, &field)
	}
}
