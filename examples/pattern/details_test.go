package main

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// with returns the default brief with several fields replaced.
func with(t *testing.T, fields map[string]string) string {
	t.Helper()
	text := string(orchardWrap)
	for path, value := range fields {
		var root map[string]any
		require.NoError(t, json.Unmarshal([]byte(text), &root))
		object, names := root, strings.Split(path, ".")
		for _, n := range names[:len(names)-1] {
			object = object[n].(map[string]any)
		}
		if last := names[len(names)-1]; value == "" {
			delete(object, last)
		} else {
			object[last] = json.RawMessage(value)
		}
		out, err := json.Marshal(root)
		require.NoError(t, err)
		text = string(out)
	}
	return text
}

// What a maker is told where a brief is unlike the default one.
func TestToldInWords(t *testing.T) {
	for name, c := range map[string]struct {
		fields map[string]string
		flags  []string
		want   []string
		not    []string
	}{
		// The slip knot of a chain lies where row 1 ends: the other corner.
		"begun with a chain": {fields: map[string]string{"sizes": `[["M", "L"]]`, "length": `"25 in"`, "armhole_depth": `"10 in"`,
			"rows": `{"opening": ["ch 164, sc in 2nd ch from hook and in each ch across"], "repeat": ["sc in each st across", "sc in each st across"], "closing": []}`},
			want: []string{"The first tail of the left panel, at the bottom right corner, sews the center back: leave 65¼ in", "at the bottom left corner, sews the left side seam: leave 43¾ in"}},
		"no yarn for the seams": {fields: map[string]string{"yarn.seam_factor": `"0"`},
			want: []string{"- The seams are sewn with another yarn. All tails, 6 in [15 cm], are woven in."}, not: []string{"sews the"}},
		"no ends": {fields: map[string]string{"yarn.tail_end": `"0 in"`},
			want: []string{"All other tails are woven in.", "leave 38½ ("}, not: []string{"6 in [15 cm]"}},
		"a factor beyond what is usual": {fields: map[string]string{"yarn.seam_factor": `"30"`}, want: []string{"leave 467¾ ("}},
		"one skein": {fields: map[string]string{"chart": `"baby"`, "sizes": `[["3mo"]]`, "length": `"10 in"`, "armhole_depth": `"4 in"`, "ease": `"3 in"`},
			want: []string{"g per skein: 1 skein; ", "No fluffy yarn, such as mohair, for a baby. (", "Small fingers"}, not: []string{"1 skeins"}},
		"closed fabric": {fields: map[string]string{"chart": `"baby"`, "sizes": `[["3mo"]]`, "length": `"10 in"`, "armhole_depth": `"4 in"`, "ease": `"3 in"`,
			"rows": `{"opening": ["fhdc"], "repeat": ["hdc in each st across"], "closing": []}`}, not: []string{"Small fingers"}},
		"left out in one size": {fields: map[string]string{"ease": `"-4 in"`, "rows": `{"opening": ["fhdc"],
			"repeat": ["hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across"], "closing": ["hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across", "hdc in each st across"]}`},
			want: []string{"0 times means: leave this out in your size."}},
		"nothing is repeated": {fields: map[string]string{"ease": `"0 in"`, "rows": `{"opening": ["fhdc", "hdc in each st across", "hdc in each st across"], "repeat": [], "closing": []}`},
			flags: []string{"-why"}, want: []string{"nothing is repeated, and the 3 rows as they are written are the nearest there is to 8.5 in"}, not: []string{"100000", "0 repeats of"}},
		"chain spaces in a seam": {fields: map[string]string{"rows.closing": `["dc in first st, *ch 2, sk 2, dc in next st; rep from * across"]`},
			want: []string{"Wherever its edge is counted, each chain counts as a st: a ch-2 sp as 2."}},
		"a mesh in a seam": {fields: map[string]string{"rows.closing": `["dc in first st, *ch 1, sk 1, dc in next st; rep from * across"]`, "rows.opening": `["fhdc"]`, "rows.repeat": `["hdc in each st across"]`},
			want: []string{"each chain counts as a st: a ch-1 sp as 1."}, not: []string{"ch-2 sp"}},
		"no ends and no seams": {fields: map[string]string{"yarn.seam_factor": `"0"`, "yarn.tail_end": `"0 in"`},
			want: []string{"Another yarn for the seams, which are ", "leave the first tail of the panel long enough to weave in.", "Join every seam in whip stitch, the right side facing you.\n"}, not: []string{"Corners are named", "given under Tails"}},
		"nine sizes": {fields: map[string]string{"sizes": `[["XS"], ["S"], ["M"], ["L"], ["XL"], ["2X"], ["3X"], ["4X"], ["5X"]]`, "length": `"25 in"`, "armhole_depth": `"12 in"`},
			want: []string{" yd / "}, not: []string{"] yd ["}},
		"a row that no size works": {fields: map[string]string{"ease": `"-24 in"`, "sizes": `[["XS"]]`, "length": `"25 in"`, "armhole_depth": `"9 1/2 in"`, "rows": `{"opening": ["fhdc", "hdc in each st across", "hdc in each st across"], "repeat": ["dc in each st across", "dc in each st across"], "closing": []}`},
			not: []string{"- dc: ", "begins with dc"}},
		"a yarn without a name":      {fields: map[string]string{"yarn.name": "", "yarn.fibre": ""}, want: []string{"- Yarn: any, 230 yd = 100 g per skein", "Ways to block; the care"}},
		"a yarn of a fibre alone":    {fields: map[string]string{"yarn.name": "", "yarn.fibre": `"alpaca"`}, want: []string{"- Yarn: alpaca, 230 yd", "For this fiber, or for the rest of the blend, there is no advice on record"}},
		"names are not spelled anew": {fields: map[string]string{"name": `"Centre of colour"`, "yarn.name": `"Grey Fibre"`}, want: []string{"# Centre of colour", "Grey Fibre"}},
		"centimetres first":          {fields: map[string]string{"units": `"cm"`}, flags: []string{"-why"}, want: []string{"less 3.175 cm (1.25 in) at 13 over 4 in"}},
		"unravelled stitches": {fields: map[string]string{"yarn.swatch": "", "yarn.stitches": `[{"stitch": "hdc", "count": "20", "length": "96 in"}, {"stitch": "dc", "count": "20", "length": "120 in"}, {"stitch": "fhdc", "count": "20", "length": "130 in"}, {"stitch": "ch", "count": "20", "length": "30 in"}]`},
			flags: []string{"-why"}, want: []string{" yd) of yarn"}},
	} {
		t.Run(name, func(t *testing.T) {
			code, out, errs := cli(with(t, c.fields), append([]string{"-brief", "-"}, c.flags...)...)
			require.Equal(t, 0, code, errs)
			for _, w := range c.want {
				require.Contains(t, out, w)
			}
			for _, w := range c.not {
				require.NotContains(t, out, w)
			}
		})
	}
}

// A smaller member without a figure does not hide that of the largest: size 2 of
// the children's chart has no upper arm in centimetres, size 6 has 20.5, 8 in
// being 20.32.
func TestArmOfTheLargest(t *testing.T) {
	for depth, want := range map[string]int{"10.2 cm": 2, "10.4 cm": 0} {
		for _, sizes := range []string{`[["4", "6"]]`, `[["2", "4", "6"]]`} {
			code, _, errs := cli(with(t, map[string]string{"chart": `"child"`, "units": `"cm"`, "sizes": sizes, "gauge": `"50 sts and 10 rows = 10 cm"`, "worked_gauge": "",
				"ease": `"10 cm"`, "length": `"45 cm"`, "armhole_depth": `"` + depth + `"`, "neck_drop": `"1 cm"`, "rows": `{"opening": ["fhdc"], "repeat": ["hdc in each st across"], "closing": []}`}), "-brief", "-")
			require.Equal(t, want, code, errs)
			require.Equal(t, want == 2, strings.Contains(errs, "less than upper arm 8.071 in (20.5 cm)"), errs)
		}
	}
}

// A byte order mark, as some editors write it, changes nothing.
func TestByteOrderMark(t *testing.T) {
	code, out, errs := cli("\ufeff"+string(orchardWrap), "-brief", "-")
	require.Equal(t, 0, code, errs)
	_, want, _ := cli("", "-brief", "orchard-wrap.json")
	require.Equal(t, want, out)
}

func TestRefusedInWords(t *testing.T) {
	for name, c := range map[string]struct {
		fields map[string]string
		want   string
	}{
		"a slit in some sizes":  {map[string]string{"hem_slit": `["0 in", "2 in", "2 in", "2 in"]`}, "hem_slit: none in one size and one in another: want a slit in every size, or in none\n"},
		"an armhole of nothing": {map[string]string{"armhole_depth": `"0 in"`, "sizes": `[["M", "L"]]`, "length": `"25.5 in"`}, "armhole_depth: size M–L: got 83, want 1 to 82 pairs\n"},
		"a neck that a chain fixes": {map[string]string{"layout": `"poncho"`, "sizes": `[["M", "L"]]`, "ease": "", "length": "", "armhole_depth": "", "neck_drop": "", "width": `"17 in"`, "neck_round": `"24 in"`, "head": `"22 in"`,
			"rows": `{"opening": ["ch 95, sc in 2nd ch from hook and in each ch across"], "repeat": ["sc in each st across", "hdc in each st across"], "closing": []}`},
			"neck_round: size M–L: comes out at 23½ in [59.5 cm], less than asked, and the rows fix 94 sts\n"},
		"an object": {map[string]string{"gauge": `{}`}, "gauge: got an object, want a text\n"},
		"null":      {map[string]string{"gauge": `null`}, "gauge: got null, want a text\n"},
	} {
		t.Run(name, func(t *testing.T) {
			code, out, errs := cli(with(t, c.fields), "-brief", "-")
			require.Equal(t, 2, code)
			require.Empty(t, out)
			require.Equal(t, c.want, errs)
		})
	}
	for _, flag := range []string{"-brief", "-size", "-svg", "-format"} {
		code, out, errs := cli("", flag, "")
		require.Equal(t, 2, code, flag)
		require.Empty(t, out)
		require.Equal(t, strings.TrimPrefix(flag, "-")+": empty\n", errs)
	}
}

// A designer is told when the rows are coarse for the garment, along them too.
func TestRemarks(t *testing.T) {
	for name, c := range map[string]struct {
		fields map[string]string
		want   string
	}{
		"length": {map[string]string{"length": `"24 in"`, "rows": `{"opening": ["fhdc", "dc in first st, *ch 99, sk 99, dc in next st; rep from * across", "hdc in each st and 99 hdc in each ch-99 sp across"], "repeat": ["hdc in each st across"], "closing": []}`},
			"remark: size XS–S: a panel of 201 sts comes out at 61¾ in [157 cm], asked 48 in [122 cm]: the rows allow no count that is nearer"},
		"much too short for its rows": {map[string]string{"length": `"7 in"`, "sizes": `[["XS"]]`, "armhole_depth": `"9 1/2 in"`, "rows": `{"opening": ["fhdc", "dc in first st, *ch 99, sk 99, dc in next st; rep from * across", "hdc in each st and 99 hdc in each ch-99 sp across"], "repeat": ["hdc in each st across"], "closing": []}`},
			"remark: size XS: a panel of 101 sts comes out at 31 in [79 cm], asked 14 in [35.5 cm]"},
		"no margin": {map[string]string{"yarn.swatch": "", "yarn.margin": `"0%"`, "yarn.stitches": `[{"stitch": "hdc", "count": "20", "length": "96 in"}, {"stitch": "dc", "count": "20", "length": "120 in"}, {"stitch": "fhdc", "count": "20", "length": "130 in"}, {"stitch": "ch", "count": "20", "length": "30 in"}]`},
			"remark: yarn: by stitches the chains at the start of the rows, and of a foundation chain, are not counted, and there is no margin for them\n"},
		"no repeat": {map[string]string{"rows": `{"opening": ["fhdc", "hdc in each st across", "hdc in each st across"], "repeat": [], "closing": []}`}, "asked 43 in [109 cm]: no row is repeated"},
	} {
		t.Run(name, func(t *testing.T) {
			code, _, errs := cli(with(t, c.fields), "-brief", "-")
			require.Equal(t, 0, code, errs)
			require.Contains(t, errs, c.want)
		})
	}
}
