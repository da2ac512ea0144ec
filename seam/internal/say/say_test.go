package say

import (
	"testing"

	"example.com/panelmath/gauge"
	"github.com/stretchr/testify/require"
)

func ratio(s string) gauge.Ratio {
	r, err := gauge.ParseRatio(s)
	if err != nil {
		panic(err)
	}
	return r
}

func TestSay(t *testing.T) {
	huge := ratio("100000000000000000000000")
	for want, got := range map[string]string{
		"9.5 in (24.13 cm)":           Length(gauge.MeasurementOf(ratio("9.5"), gauge.Inch)),
		"0.333 in (0.847 cm)":         Length(gauge.MeasurementOf(ratio("1/3"), gauge.Inch)),
		"at most 0.666 in (1.693 cm)": AtMost(gauge.MeasurementOf(ratio("2/3"), gauge.Inch)),
		"53½":                         Halves(ratio("107/2")),
		"½":                           Halves(ratio("1/2")),
		"0":                           Halves(ratio("0")),
		"7/3":                         Halves(ratio("7/3")),
		"100000000000000000000000":    Halves(huge),
		"49.4375":                     About(ratio("791/16")),
		"about 0.3333":                About(ratio("1/3")),
		"100":                         Plain(ratio("100"), 3),
		"13":                          PerSpan(gauge.MustGauge("13 sts and 9 rows = 4 in").Stitches),
		"2 repeats of 8":              PerSpan(gauge.MustGauge("2 repeats of 8 sts and 9 rows = 4 in").Stitches),
		"at most 100000000000000000000000 in (254000000000000000000000 cm)": AtMost(gauge.MeasurementOf(huge, gauge.Inch)),
	} {
		require.Equal(t, want, got)
	}
}

func TestLengthIn(t *testing.T) {
	m := gauge.MustLength("9.5 in").Measurement()
	require.Equal(t, "9.5 in (24.13 cm)", LengthIn(m, gauge.Inch))
	require.Equal(t, "24.13 cm (9.5 in)", LengthIn(m, gauge.Centimetre))
}
