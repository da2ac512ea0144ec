package yarn_test

import (
	"encoding/json"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/usage"
	"example.com/panelmath/yarn/weight"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

// story runs through most of the package and tells what came out.
func story(t *testing.T) string {
	t.Helper()
	l, err := yarn.ParseLabel("230.50 yd = 3 1/2 oz")
	require.NoError(t, err)
	s := yarn.Swatch{Width: gauge.MustLength("6 1/8 in"), Height: gauge.MustLength("6 in"), Mass: yarn.MustMass("14.50 g"),
		Reading: yarn.Reading{Side: gauge.MustLength("1/16 in"), Mass: yarn.MustMass("0.25 g")}}
	panels, err := s.Fabric("panels", rect("40 in", "39.0 in"), l)
	require.NoError(t, err)
	seam, err := yarn.WhipStitch().Seam("back", mm("20 in"))
	require.NoError(t, err)
	q, err := yarn.Buy(l, yarn.MustMargin("7.50%"), panels, seam)
	require.NoError(t, err)
	b, err := json.Marshal(q)
	require.NoError(t, err)
	used, err := usage.Project{Label: l, Skeins: decimal.New(65, -1)}.Used()
	require.NoError(t, err)
	f, err := usage.Fit(l, usage.Sample{Name: "a", Counts: []usage.Count{{Stitch: "hdc", N: 7}}, Yarn: yarn.MustLength("1.10 m")}, usage.Sample{Name: "b", Counts: []usage.Count{{Stitch: "hdc", N: 11}}, Mass: yarn.MustMass("1 g")})
	require.NoError(t, err)
	v, err := weight.Categories(weight.Measured{Hook: gauge.MustLength("5.50 mm"), Grist: weight.MustGrist("210.50 m/100 g")})
	require.NoError(t, err)
	out := append(q.Explain(), string(b), used.Explain(), l.String(), weight.MustGrist("2100/9 m/50 g").String(), q.Total.In(gauge.Yard).Text(2), q.Mass.In(yarn.Ounce).Text(2))
	out = append(append(out, f.Explain()...), v.Explain()...)
	_, err = yarn.Sewing{Factor: decimal.New(1005, -1)}.Seam("x", gauge.Measurement{})
	return strings.Join(append(out, err.Error()), "\n")
}

// The decimal package has variables that anyone can set. Nothing here heeds them
// (but for MarshalJSONWithoutQuotes: a decimal field of a struct, a seam factor say,
// is then written as a number, which is read back as well).
func TestSettingsOfTheDecimalPackageChangeNothing(t *testing.T) {
	want := story(t)
	precision, trim, scientific, decode, iterations := decimal.DivisionPrecision, decimal.TrimTrailingZeros, decimal.UseScientificNotation, decimal.MaxDecodeExponent, decimal.ExpMaxIterations
	defer func() {
		decimal.DivisionPrecision, decimal.TrimTrailingZeros, decimal.UseScientificNotation, decimal.MaxDecodeExponent, decimal.ExpMaxIterations = precision, trim, scientific, decode, iterations
	}()
	decimal.DivisionPrecision, decimal.TrimTrailingZeros, decimal.UseScientificNotation, decimal.MaxDecodeExponent, decimal.ExpMaxIterations = 2, !trim, !scientific, 0, 1
	require.Equal(t, want, story(t))
}
