package main

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the golden files")

// cli runs the program and returns what it printed.
func cli(in string, args ...string) (code int, out, errs string) {
	var stdout, stderr bytes.Buffer
	code = run(args, strings.NewReader(in), &stdout, &stderr)
	return code, stdout.String(), stderr.String()
}

func golden(t *testing.T, name, got string) {
	t.Helper()
	file := filepath.Join("testdata", name)
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err)
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("%s (-want +got):\n%s", file, diff)
	}
}

func TestDefaultBrief(t *testing.T) {
	for _, c := range []struct {
		golden string
		args   []string
	}{
		{"orchard-wrap.md", nil},
		{"orchard-wrap-why.md", []string{"-why"}},
		{"orchard-wrap.json", []string{"-format", "json"}},
	} {
		t.Run(c.golden, func(t *testing.T) {
			code, out, errs := cli("", c.args...)
			require.Equal(t, 0, code, errs)
			golden(t, c.golden, out)
		})
	}
}

// TestOtherBriefs: UK terms and centimetres with odd and even numbers of rows, one
// size alone, and the other layouts.
func TestOtherBriefs(t *testing.T) {
	for _, name := range []string{"uk-child", "one-size", "closed-front", "front-and-back", "cocoon", "poncho"} {
		t.Run(name, func(t *testing.T) {
			code, out, errs := cli("", "-brief", filepath.Join("testdata", name+".json"))
			require.Equal(t, 0, code, errs)
			golden(t, name+".md", out)
		})
	}
}

// changed returns the default brief with one field replaced: a path like
// "yarn.label.length", and the value's JSON; no value takes the field away.
func changed(t *testing.T, path, value string) string {
	t.Helper()
	var root map[string]any
	require.NoError(t, json.Unmarshal(orchardWrap, &root))
	object, names := root, strings.Split(path, ".")
	for _, n := range names[:len(names)-1] {
		object = object[n].(map[string]any)
	}
	last := names[len(names)-1]
	delete(object, last)
	if value != "" {
		object[last] = json.RawMessage(value)
	}
	out, err := json.Marshal(root)
	require.NoError(t, err)
	return string(out)
}

func TestBadBriefs(t *testing.T) {
	digits := strings.Repeat("9", 10_000)
	for _, c := range []struct{ name, path, value, want string }{
		{"misspelt unit", "ease", `"9 inn"`, `ease: "9 inn": unknown unit "inn"`},
		{"comma", "ease", `"9,5 in"`, `ease: "9,5 in": a comma in the number; write 1250 or 20.5`},
		{"missing field", "gauge", "", `gauge: missing`},
		{"missing inner field", "yarn.label.mass", "", `yarn.label.mass: missing`},
		{"unknown field", "colour", `"red"`, `colour: unknown field; want name, terms, units, gauge, hook, chart, sizes, ease, layout, length, armhole_depth, neck_drop, rows, yarn, worked_gauge, row_start, direction, hem_slit`},
		{"unknown inner field", "yarn.colour", `"red"`, `yarn.colour: unknown field; want label, swatch, margin, name, fibre, seam_factor, tail_end`},
		{"wrong kind", "gauge", `["a"]`, `gauge: got a list, want a text`},
		{"list too short", "length", `["25 in", "26 in"]`, `length: a list of 2, want one value, or one for each of the 4 groups of sizes`},
		{"list too long", "neck_drop", `["1 in", "1 in", "1 in", "1 in", "1 in"]`, `neck_drop: a list of 5, want one value, or one for each of the 4 groups of sizes`},
		{"empty list", "armhole_depth", `[]`, `armhole_depth: a list of 0, want one value, or one for each of the 4 groups of sizes`},
		{"unknown size", "sizes", `[["XS"], ["6X"]]`, `sizes: size 6X: no such size in the chart women; it has XS, S, M, L, XL, 2X, 3X, 4X, 5X`},
		{"size twice", "sizes", `[["XS", "S"], ["S"]]`, ``},
		{"out of order", "sizes", `[["M"], ["S"]]`, ``},
		{"gap in a group", "sizes", `[["XS", "M"]]`, ``},
		{"no sizes", "sizes", `[]`, ``},
		{"empty group", "sizes", `[["S"], []]`, ``},
		{"sizes no list", "sizes", `"XS"`, `sizes: got a text, want a list of groups: [["XS", "S"], ["M"]]`},
		{"unknown chart", "chart", `"dogs"`, `chart: "dogs": want women, men, youth, child or baby`},
		{"unknown terms", "terms", `"AU"`, ``},
		{"unknown unit", "units", `"mm"`, `units: "mm": want in or cm`},
		{"unknown layout", "layout", `"raglan"`, ``},
		{"zero gauge", "gauge", `"0 sts and 9 rows = 4 in"`, `gauge: "0 sts and 9 rows = 4 in": sts: got 0, want more than 0`},
		{"negative gauge", "gauge", `"-13 sts and 9 rows = 4 in"`, ``},
		{"zero span", "gauge", `"13 sts and 9 rows = 0 in"`, ``},
		{"gauge without rows", "gauge", `"13 sts = 4 in"`, `gauge: "13 sts = 4 in": no rows; want both: 12 sts and 7 rows = 4 in`},
		{"hook by letter", "hook", `"I-9"`, ``},
		{"digits", "ease", `"` + digits + ` in"`, ``},
		{"digits in a number", "yarn.seam_factor", digits, ``},
		{"exponent", "ease", `"1e1000000000 in"`, `ease: "1e1000000000 in": an exponent; write the number out`},
		{"exponent in a number", "yarn.seam_factor", `1e1000000000`, ``},
		{"exponent in the gauge", "gauge", `"1e1000000000 sts and 9 rows = 4 in"`, ``},
		{"long text", "name", `"` + strings.Repeat("a", 10_001) + `"`, `name: 10001 characters, want at most 10000`},
		{"empty name", "name", `" "`, `name: empty`},
		{"row that can't be read", "rows.repeat", `["hdc in each stt across"]`, ``},
		{"rows that do not fit", "rows.closing", `["hdc in each st and 3 hdc in each ch-3 sp across"]`, ``},
		{"lace left open", "rows.repeat", `["dc in first st, *ch 2, sk 2, dc in next st; rep from * across", "hdc in each st across"]`, ``},
		{"no foundation", "rows.opening", `["hdc in each st across"]`, ``},
		{"rows that fix another count", "rows.opening", `["fhdc 101", "hdc in each st across", "dc in first st, *ch 2, sk 2, dc in next st; rep from * across", "hdc in each st and 2 hdc in each ch-2 sp across"]`, ``},
		{"other terms", "rows.repeat", `["htr in each st across"]`, ``},
		{"no row list", "rows.repeat", `"hdc in each st across"`, `rows.repeat: got a text, want a list of rows`},
		{"armhole smaller than the arm", "armhole_depth", `["9 1/2 in", "10 in", "7 in", "12 in"]`, ``},
		{"armhole deeper than the garment", "armhole_depth", `"26 in"`, ``},
		{"neck below the hem", "neck_drop", `["1 in", "1 in", "1 in", "27 in"]`, ``},
		{"negative neck", "neck_drop", `"-1 in"`, ``},
		{"negative armhole", "armhole_depth", `["9 in", "-1 in", "11 in", "12 in"]`, ``},
		{"negative length", "length", `["25 in", "-1 in", "26 in", "27 in"]`, ``},
		{"no length", "length", `"0 in"`, ``},
		{"ease that leaves nothing", "ease", `"-40 in"`, ``},
		{"ease of minus all", "ease", `"-100%"`, ``},
		{"too short for the rows", "length", `"1/4 in"`, ``},
		{"too long", "length", `"101 m"`, ``},
		{"label of nothing", "yarn.label.length", `"0 yd"`, ``},
		{"swatch of nothing", "yarn.swatch.width", `"0 in"`, ``},
		{"margin without percent", "yarn.margin", `"0.1"`, ``},
		{"negative factor", "yarn.seam_factor", `"-1"`, ``},
		{"row start", "row_start", `"chains"`, ``},
	} {
		t.Run(c.name, func(t *testing.T) {
			code, out, errs := cli(changed(t, c.path, c.value), "-brief", "-")
			require.Equal(t, 2, code)
			require.Empty(t, out)
			require.Equal(t, 1, strings.Count(errs, "\n"), errs)
			field, _, _ := strings.Cut(c.path, ".")
			require.True(t, strings.HasPrefix(errs, field) || strings.Contains(errs, "the rows fix"), errs)
			require.Less(t, len(errs), 400)
			if c.want != "" {
				require.Equal(t, c.want+"\n", errs)
			} else {
				t.Log(errs)
			}
		})
	}
}

func TestBadFiles(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"empty", "", `brief: empty; want a JSON object with name, terms, units, gauge and so on`},
		{"blank", " \n\t", `brief: empty; want a JSON object with name, terms, units, gauge and so on`},
		{"no JSON", "name = wrap", ``},
		{"cut off", string(orchardWrap[:200]), ``},
		{"a list", "[]", `brief: got a list, want a JSON object`},
		{"two objects", string(orchardWrap) + "{}", ``},
		{"field twice", `{"name": "a", "name": "b"}`, `name: given twice (line 1, column 21)`},
		{"one megabyte of a", strings.Repeat("a", 1<<20), ``},
		{"one megabyte in a field", `{"name": "` + strings.Repeat("a", 1<<20) + `"}`, `name: 1048576 characters, want at most 10000`},
		{"one megabyte of blanks", string(orchardWrap) + strings.Repeat(" ", 1<<20), ``},
		{"three megabytes", strings.Repeat(" ", 3<<20), ``},
		{"invalid UTF-8", strings.Replace(string(orchardWrap), "cotton", "cott\xffon", 1), `yarn.name: not valid UTF-8 (line 21, column 33)`},
		{"deep", strings.Repeat("[", 100_000), ``},
		{"many fields", "{" + strings.Repeat(`"a":1,`, 100_000), ``},
	} {
		t.Run(c.name, func(t *testing.T) {
			code, out, errs := cli(c.text, "-brief", "-")
			require.Equal(t, 2, code)
			require.Empty(t, out)
			require.Equal(t, 1, strings.Count(errs, "\n"), errs)
			require.Less(t, len(errs), 400)
			if c.want != "" {
				require.Equal(t, c.want+"\n", errs)
			} else {
				t.Log(errs)
			}
		})
	}
}

func TestBadFlags(t *testing.T) {
	for _, args := range [][]string{{"-format", "pdf"}, {"-brief", "no-such-file.json"}, {"extra"}, {"-nonsense"}} {
		code, out, errs := cli("", args...)
		require.Equal(t, 2, code)
		require.Empty(t, out)
		require.NotEmpty(t, errs)
	}
}
