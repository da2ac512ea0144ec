package gauge_test

import (
	"encoding/csv"
	"math/big"
	"os"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"github.com/stretchr/testify/require"
)

// Conversions as GNU units prints them, to 1 part in 10^14. A count "1/(4 in)"
// is one over 4 in.
func TestConversions(t *testing.T) {
	file, err := os.Open("testdata/conversions.csv")
	require.NoError(t, err)
	defer file.Close()
	reader := csv.NewReader(file)
	reader.Comment = '#'
	rows, err := reader.ReadAll()
	require.NoError(t, err)
	require.Greater(t, len(rows), 80)
	tolerance := new(big.Rat).SetFrac64(1, 1e14)
	for _, row := range rows[1:] {
		from, err := gauge.ParseRatio(row[0])
		require.NoError(t, err)
		got := gauge.Ratio{}
		if span, ok := strings.CutPrefix(row[1], "1/"); ok {
			per, err := gauge.ParseMeasurement(one(span))
			require.NoError(t, err)
			to, err := gauge.ParseMeasurement(one(strings.TrimPrefix(row[2], "1/")))
			require.NoError(t, err)
			times, err := to.Per(per)
			require.NoError(t, err)
			got = from.Mul(times)
		} else {
			u, err := gauge.ParseUnit(row[1])
			require.NoError(t, err)
			to, err := gauge.ParseUnit(row[2])
			require.NoError(t, err)
			got = gauge.MeasurementOf(from, u).In(to)
		}
		want, ok := new(big.Rat).SetString(row[3])
		require.True(t, ok)
		off := new(big.Rat).Sub(got.Rat(), want)
		off.Quo(off.Abs(off), want)
		require.LessOrEqual(t, off.Cmp(tolerance), 0, "%v: got %v", row, got)
	}
}

// one returns "1 in" for "in" and "4 in" for "(4 in)".
func one(span string) string {
	if inner, ok := strings.CutPrefix(span, "("); ok {
		return strings.TrimSuffix(inner, ")")
	}
	return "1 " + span
}
