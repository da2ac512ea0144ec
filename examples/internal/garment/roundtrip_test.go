package garment_test

import (
	"bytes"
	"encoding/json"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade/caution"
	"example.com/panelmath/panel/proof"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/seam/spread"
	"example.com/panelmath/yarn/care"
	"github.com/stretchr/testify/require"
)

// through writes v, reads it back and writes it again.
func through[T any](t *testing.T, v T) {
	t.Helper()
	first := indent(t, v)
	var back T
	dec := json.NewDecoder(bytes.NewReader(first))
	dec.DisallowUnknownFields()
	require.NoError(t, dec.Decode(&back), "%T", v)
	require.Equal(t, string(first), string(indent(t, back)), "%T", v)
}

// TestJSONOfTheSmallPackages: those that a garment does not hold.
func TestJSONOfTheSmallPackages(t *testing.T) {
	through(t, caution.All())
	through(t, care.Blocking(care.Acrylic))
	through(t, care.Cautions(care.SteamBurns, care.Hands))
	through(t, row.Abbreviations("hdc in each st across", row.US))
	match := spread.Match{From: 88, Take: 71}
	groups, err := match.Groups()
	require.NoError(t, err)
	through(t, match)
	through(t, groups)
	text, err := proof.Parse("Row 1: fhdc 10 — 10 sts\nRow 2: hdc in each st across — 11 sts", row.US)
	require.NoError(t, err)
	through(t, text)
	found, err := proof.Check(text, nil)
	require.NoError(t, err)
	require.NotEmpty(t, found)
	through(t, found)
	through(t, gauge.Count{Value: 13, Below: 12, Above: 13, Tie: true})
}
