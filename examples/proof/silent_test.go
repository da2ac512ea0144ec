package main

import (
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/examples/internal/garment"
)

// generated returns the pattern that a generated brief makes; ok is false for a
// garment that nobody could put on.
func generated(t *testing.T, r *rand.Rand) (text string, ok bool) {
	t.Helper()
	pick := func(s ...string) string { return s[r.IntN(len(s))] }
	cm := r.IntN(2) == 0
	unit, scale := "in", 1.0
	if cm {
		unit, scale = "cm", 2.54
	}
	length := func(inches int) string { return fmt.Sprintf("%d %s", int(float64(inches)*scale), unit) }
	chart, sizes := "women", pick(`[["XS","S"],["M","L"],["XL","2X"],["3X","4X","5X"]]`, `[["M"]]`, `[["S"],["M"],["L"]]`,
		`[["XS"],["S"],["M"],["L"],["XL"],["2X"],["3X"],["4X"],["5X"]]`, `[["S"],["L"]]`)
	if r.IntN(3) == 0 {
		chart, sizes = "men", pick(`[["S","M"],["L","XL"]]`, `[["S"],["M"],["L"],["XL"],["2X"]]`)
	}
	m := r.IntN(3) + 1
	lace := fmt.Sprintf("dc in first st, *ch %d, sk %d, dc in next st; rep from * across", m, m)
	fill := fmt.Sprintf("hdc in each st and %d hdc in each ch-%d sp across", m, m)
	if m == 1 {
		fill = "hdc in each st and in each ch-1 sp across"
	}
	plain := "hdc in each st across"
	rows := []map[string][]string{
		{"opening": {"fhdc"}, "repeat": {plain}, "closing": {}},
		{"opening": {"fhdc", plain}, "repeat": {plain, lace, fill}, "closing": {plain}},
		{"opening": {"fhdc", lace, fill}, "repeat": {plain, plain, lace, fill}, "closing": {plain, plain}},
	}[r.IntN(3)]
	b := map[string]any{
		"name": "Generated wrap", "terms": "US", "units": unit, "direction": pick("lengthwise", "crosswise"),
		"gauge": fmt.Sprintf("%d sts and %d rows = %s", 10+r.IntN(14), 6+r.IntN(10), pick("4 in", "10 cm")),
		"hook":  pick("5.5 mm", "4 mm", "9 mm"), "chart": chart, "sizes": json.RawMessage(sizes), "rows": rows,
		"length": length(22 + r.IntN(10)), "armhole_depth": length(11 + r.IntN(3)),
		"yarn": map[string]any{"name": "a wool", "fibre": "wool",
			"label":  json.RawMessage(pick(`{"length":"230 yd","mass":"100 g"}`, `{"length":"120 m","mass":"50 g"}`, `{"length":"280 yd","mass":"5 oz"}`)),
			"swatch": json.RawMessage(pick(`{"width":"6 in","height":"6 in","mass":"14.5 g"}`, `{"width":"15 cm","height":"14 cm","mass":"11 g"}`)),
			"margin": pick("10%", "0%", "7.5%")},
	}
	more := map[string]map[string]any{
		"open front":     {"ease": length(r.IntN(14) + 4), "neck_drop": length(r.IntN(3))},
		"closed front":   {"ease": length(r.IntN(14) + 4), "neck_drop": length(1), "neck_depth": length(10 + r.IntN(3)), "head": "20 in"},
		"front and back": {"ease": length(r.IntN(14) + 4), "neck_width": length(11), "head": "20 in", "sleeve_length": length(8 + r.IntN(10))},
		"cocoon":         {"width": length(35 + r.IntN(20))},
		"poncho":         {"width": length(14 + r.IntN(8)), "neck_round": length(24 + r.IntN(3)), "head": "20 in"},
	}
	layout := pick("open front", "closed front", "front and back", "cocoon", "poncho")
	b["layout"] = layout
	for k, v := range more[layout] {
		b[k] = v
	}
	if layout == "cocoon" {
		b["armhole_depth"] = length(9)
		b["length"] = length(16 + r.IntN(6))
	}
	if layout == "poncho" {
		delete(b, "armhole_depth")
		delete(b, "length")
	} else if r.IntN(3) == 0 && layout != "cocoon" {
		b["hem_slit"] = length(3)
	}
	if r.IntN(2) == 0 {
		b["worked_gauge"] = fmt.Sprintf("%d.5 sts and %d rows = 4 in", 10+r.IntN(14), 6+r.IntN(10))
	}
	data, err := json.Marshal(b)
	require.NoError(t, err)
	read, err := brief.Read(strings.NewReader(string(data)))
	require.NoError(t, err)
	g, err := garment.Make(read)
	if err != nil {
		return "", false
	}
	d, err := g.Document(garment.Options{Why: r.IntN(4) == 0})
	require.NoError(t, err)
	return d.Markdown(), true
}

// TestNoFalseAlarm: whatever the program pattern prints is right.
func TestNoFalseAlarm(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 11))
	many := 0
	for range 80 {
		text, ok := generated(t, r)
		if !ok {
			continue
		}
		many++
		code, out, errs := cli(text)
		if code != 0 {
			t.Fatalf("%s%s\n%s", out, errs, text)
		}
	}
	require.Greater(t, many, 40)
}
