package main

import (
	"bytes"
	"flag"
	"fmt"
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

func golden(t *testing.T, file, got string) {
	t.Helper()
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err)
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("%s (-want +got):\n%s", file, diff)
	}
}

func files(t *testing.T, pattern string) []string {
	t.Helper()
	all, err := filepath.Glob(pattern)
	require.NoError(t, err)
	require.NotEmpty(t, all)
	return all
}

// TestErrata: published corrections and fault reports, retold as small texts,
// each with its source in a comment line. What was wrong is found, and the text
// as corrected gives nothing. Beside them stand invented texts as they are pasted
// out of a document.
func TestErrata(t *testing.T) {
	wrong := files(t, "testdata/*/*.wrong.txt")
	require.GreaterOrEqual(t, len(wrong), 20)
	for _, file := range wrong {
		name := strings.TrimSuffix(file, ".wrong.txt")
		t.Run(filepath.Base(name), func(t *testing.T) {
			code, out, errs := cli("", file)
			require.Equal(t, 1, code, errs)
			require.Empty(t, errs)
			golden(t, name+".findings", out)

			code, out, errs = cli("", name+".right.txt")
			require.Equal(t, 0, code, out+errs)
			require.Empty(t, out+errs)
		})
	}
	for _, file := range files(t, "testdata/*/*.right.txt") {
		code, out, errs := cli("", "-remarks", file)
		require.Equal(t, 0, code, file+"\n"+out+errs)
	}
	for _, file := range files(t, "testdata/errata/*.txt") {
		b, err := os.ReadFile(file)
		require.NoError(t, err)
		require.Regexp(t, `(?m)^//.*https?://|^//.*PC-\d`, string(b), file)
	}
}

// TestPrintedPatterns: what the example program pattern prints is right, and so
// the program is silent.
func TestPrintedPatterns(t *testing.T) {
	for _, file := range files(t, "../pattern/testdata/*.md") {
		t.Run(filepath.Base(file), func(t *testing.T) {
			code, out, errs := cli("", file)
			require.Equal(t, 0, code, out+errs)
			require.Empty(t, out)
		})
	}
}

func TestFlags(t *testing.T) {
	const text = "Sizes: S (M, L, XL)\nGauge: 12 sts = 4 in\nWidth: 17 (18, 20, 20) in = 51 (54, 57, 60) sts\nDart: 9 (3, 4, 5) rows\nCast on: 10 (12, 14, 18) sts\n"
	code, out, errs := cli(text)
	require.Equal(t, 1, code, errs)
	require.Equal(t, "line 3, Width, size L: got 20 in, want 19 in: 57 sts at 12 sts = 4 in make that; 20 in take about 60 sts; or the gauge is about 11.5 sts = 4 in\n"+
		"line 4, Dart, size S: got 9, want 2: the list is 9 (3, 4, 5); the other sizes rise by 1 each\n", out)

	code, out, _ = cli(text, "-remarks", "-")
	require.Equal(t, 1, code)
	require.Contains(t, out, "line 5, Cast on, size XL (remark): got 18, want 16: the list is 10 (12, 14, 18); the other sizes rise by 2 each\n")

	code, out, _ = cli(text, "-json")
	require.Equal(t, 1, code)
	require.JSONEq(t, `[
		{"line": 3, "name": "Width", "size": "L", "got": "20 in", "want": "19 in", "why": "57 sts at 12 sts = 4 in make that; 20 in take about 60 sts; or the gauge is about 11.5 sts = 4 in"},
		{"line": 4, "name": "Dart", "size": "S", "got": "9", "want": "2", "why": "the list is 9 (3, 4, 5); the other sizes rise by 1 each"}]`, out)

	code, out, _ = cli("", "-json")
	require.Equal(t, 0, code)
	require.Equal(t, "[]\n", out)

	code, out, _ = cli(text+"Fold at 12 sts.\n", "-read")
	require.Equal(t, 0, code)
	require.Equal(t, "line 2 [gauge 12 sts = 4 in]: Gauge: 12 sts = 4 in\nline 3 [equation]: Width: 17 (18, 20, 20) in = 51 (54, 57, 60) sts\nline 4 [list]: Dart: 9 (3, 4, 5) rows\n"+
		"line 5 [list]: Cast on: 10 (12, 14, 18) sts\nline 6 [NOT CHECKED]: Fold at 12 sts.\n", out)

	for _, args := range [][]string{{"-nonsense"}, {"no-such-file.txt"}, {"a", "b"}} {
		code, out, errs := cli("", args...)
		require.Equal(t, 2, code)
		require.Empty(t, out)
		require.NotEmpty(t, errs)
	}
}

// TestReadme: the equations that the README shows are read, and agree at a gauge
// that makes them.
func TestReadme(t *testing.T) {
	b, err := os.ReadFile("README.md")
	require.NoError(t, err)
	_, text, ok := strings.Cut(string(b), "leaves a sum to the reader:\n")
	require.True(t, ok)
	text, _, ok = strings.Cut(text, "\nA side is a sum")
	require.True(t, ok)
	for l := range strings.Lines(strings.TrimSpace(text)) {
		l = "Gauge: 24 sts = 10 cm\n" + strings.TrimSpace(l)
		code, out, errs := cli(l)
		require.Equal(t, 0, code, l+"\n"+out+errs)
		_, out, _ = cli(l, "-read")
		require.Regexp(t, `line 2 .(equation|list)`, out, l)
	}
}

// TestUsualWays: rows and gauges as they are written elsewhere.
func TestUsualWays(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"dash without blanks", "Row 1: Ch 21, sc in 2nd ch from hook and in each ch across—20 sc.\nRow 2: Ch 1, sc in each st across, turn—21 sc.", "line 2, Row 2: got 21, want 20: the row makes 20\n"},
		{"turn after the chain", "Row 1: Ch 21; sc in second ch from hook and in each ch across. (20 sts)\nRow 2: Ch 1, turn, sc in each st across. (21 sts)", "line 2, Row 2: got 21, want 20: the row makes 20\n"},
		{"foundation apart, counts after a colon", "Foundation: Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across: 20 sc.\nRow 2: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st: 23 sc", "line 3, Row 2: got 23, want 22: the row makes 22\n"},
		{"chain on a line of its own, two rows at once", "Ch 21.\nRow 1: Sc in 2nd ch from hook, sc in each ch across. 20 sc\nRows 2 and 3: Ch 1, sc in each st across. 21 sc", "line 3, Rows 2–3: got 21, want 20: the row makes 20\n"},
		{"row by another's number", "Row 1: Fhdc 20.\nRow 2: Hdc in each st across. 20 sts\nRows 3-9: Rep Row 2. 21 sts", "line 3, Rows 3-9: got 21, want 20: the row makes 20\n"},
		{"row over two lines", "Row 1: Fdc 20,\n(21 sts)", "line 1, Row 1: got 21, want 20: the row makes 20\n"},
		{"rows without a number", "Row 1: Fhdc 20.\nRow 2: Hdc in each st across. 20 sts\nRep Row 2 until piece measures 9 in.\nNext row: Sc in each st across. 20 sts\nNext row: Sc in each st across. 21 sts", "line 5, Next row: got 21, want 20: the row makes 20\n"},
		{"row passed over", "Row 1: Fhdc 20.\n// Row 2: in seed stitch\nRow 3: Hdc in each st across. 20 sts\nRow 4: Hdc in each st across. 21 sts", "line 4, Row 4: got 21, want 20: the row makes 20\n"},
		{"per inch", "Gauge: 4 sts per inch\nWidth: 20 in = 90 sts", "line 2, Width: got 20 in, want 22½ in: 90 sts at 4 sts = 1 in make that; 20 in take about 80 sts; or the gauge is about 4.5 sts = 1 in\n"},
		{"per four inches", "Gauge: approx. 16 sts/4\"\nWidth: 20 in = 90 sts", "line 2, Width: got 20 in, want 22½ in: 90 sts at 16 sts = 4 in make that; 20 in take about 80 sts; or the gauge is about 18 sts = 4 in\n"},
		{"over two spans", "Tension: 18 tr and 9 rows = 10 cm (about 19 sts and 9.1 rows = 4 in)", "line 1, Tension: got 19 sts = 4 in, want 18 sts = 4 in: 18 sts = 10 cm is that\n"},
		{"sizes with commas", "Sizes: S, M, L\nBust: 34 (36) in", "line 2, Bust: got 34 (36): a list of 2 values where the text has 3 sizes\n"},
		{"rows for other sizes", "Sizes: S (M, L)\nRow 1: Fhdc 20 (22).", "line 2, Row 1: got 20 (22): a list of 2 values where the text has 3 sizes\n"},
		{"gauge in clusters", "Gauge: 4 shells = 4 in", ""},
		{"an increase into the first stitch", "Row 1: Fdc 20. (20 dc)\nRow 2: Ch 3 (counts as dc), dc in first st, dc in each st across. (22 dc)", "line 2, Row 2: got 22, want 21: the row makes 21\n"},
		{"a space after the chain that counts", "Row 1: Fdc 21. (21 dc)\nRow 2: Ch 4 (counts as dc, ch 1), sk next st, dc in next st, *ch 1, sk next st, dc in next st; rep from * across. (11 dc, 10 ch-1 sps)\nRow 3: Ch 3 (counts as dc), dc in first ch-1 sp, dc in next dc, *dc in next ch-1 sp, dc in next dc; rep from * across. (22 dc)", "line 3, Row 3: got 22, want 21: the row makes 21\n"},
		{"a chain that counts throughout", "Row 1: Fdc 20. (20 dc)\nRow 2: Ch 3 (counts as dc here and throughout), dc in next st and each st across. (20 dc)\nRow 3: Ch 3, sk first st, dc in each st across. (20 dc)\nRow 4: Ch 3, turn. Dc in each st across, dc in top of turning ch. (21 dc)", "line 4, Row 4: got 21, want 20: the row makes 20\n"},
		{"a chain that counts by a note", "Turning ch-3 counts as 1 dc throughout.\nRow 1: Fdc 20. (20 dc)\nRow 2: Ch 3, dc in each st across. (21 dc)", "line 3, Row 2: got 21, want 20: the row makes 20\n"},
		{"one loop of the stitch", "Row 1: Fsc 20. (20 sc)\nRow 2: Ch 1, sc in BLO of each st across. (20 sc)\nRow 3: Ch 1, sc in each st across in back loops only. (20 sc)\nRow 4: Ch 1, working in front loops only, sc in each sc across. (20 sc)\nRow 5: Ch 1, hdc in 3rd loop of each st across. (20 hdc)\nRow 6: Ch 1, sc blo in each st across. (21 sc)", "line 6, Row 6: got 21, want 20: the row makes 20\n"},
		{"the end of a row", "Row 1: With A, fsc 20. Turn. (20 sc)\nRow 2: Ch 1. Sc in each st across, change to B. Turn. (20 sc)\nRow 3: Sc in each st across, ch 1, turn. (20 sc)\nRow 4: Sc in each st across. (21 sc). Fasten off.", "line 4, Row 4: got 21, want 20: the row makes 20\n"},
		{"labels", "R1: Fsc 20. (20 sc)\n2nd row (WS): Ch 1, sc in each st across. (20 sc)\nRow 3. Ch 1, sc in each st across. (20 sc)\nRow 4 - Ch 1, sc in each st across. (20 sc)\nRow 5 (dec row): Ch 1, sc2tog, sc in each st across. (19 sc)\nNext 3 rows: Ch 1, sc in each st across. (19 sc)\nRows 9 through 10: Ch 1, sc in each st across. (20 sc)", "line 7, Rows 9–10: got 20, want 19: the row makes 19\n"},
		{"repeats", "Row 1: Fsc 20. (20 sc)\nRow 2: Ch 1, sc in each st across. (20 sc)\nRow 3: Ch 1, sc2tog, sc in each st across. (19 sc)\nRows 4-7: Rep Rows 2-3.\nRepeat Rows 2 and 3 four times more. (13 sc)\nRow 16: Same as Row 3. (13 sc)", "line 6, Row 16: got 13, want 12: the row makes 12\n"},
		{"counts", "Row 1: Fdc 22, turn. (22)\nRow 2: Ch 5 (counts as dc and ch 2), sk 2 sts, dc in next st, *ch 2, sk 2 sts, dc in next st; rep from * across. (8 dc and 7 ch-2 spaces)\nRow 3: Ch 1, sc in first st, *2 sc in next ch-2 space, sc in next dc; rep from * across, turn - 23", "line 3, Row 3: got 23, want 22: the row makes 22\n"},
		{"a count of the one size", "Row 1: Fsc 20. [21]", "line 1, Row 1: got 21, want 20: the row makes 20\n"},
		{"a chain after slip stitches", "Row 1: Fhdc 60. (60 hdc)\nRow 2: Sl st in first 5 sts, ch 1 (does not count as st), hdc in next 50 sts, leave rem 5 sts unworked. (51 hdc)", "line 2, Row 2: got 51, want 50: the row makes 50\n"},
		{"slip stitches across an armhole", "Row 1: Fhdc 60. (60 hdc)\nRow 2: Sl st in next 5 sts, hdc in next 50, leave 5 unworked. (50 hdc)\nRow 3: Ch 1, hdc in each hdc across. (51 hdc)", "line 3, Row 3: got 51, want 50: the row makes 50\n"},
		{"rows by turns", "Row 1: Fsc 20. (20 sc)\nRows 2, 4 and 6: Ch 1, sc in each st across. (20 sc)\nRows 3 and 5: Ch 1, sc in each st across. (21 sc)\nRow 7: Ch 1, sc in each st across. (20 sc)", "line 3, Row 3: got 21, want 20: the row makes 20; rows after it are off with it, and not told apart\n"},
		{"all even rows", "Row 1: Fsc 20. (20 sc)\nRow 2 and all even rows: Ch 1, sc in each st across. (20 sc)\nRow 3: Ch 1, sc2tog, sc in each st across. (19 sc)\nRow 5: Ch 1, sc2tog, sc in each st across. (18 sc)\nRep Rows 3–6 2 more times. (14 sc)\nRow 15: Ch 1, sc in each st across. (13 sc)", "line 6, Row 15: got 13, want 14: the row makes 14\n"},
		{"all WS rows", "Row 1 (RS): Fsc 20. (20 sc)\nRow 2 (WS) and all WS rows: Ch 1, sc in each st across.\nRow 3 (RS): Ch 1, sc2tog, sc in each st across. (19 sc)\nRow 5 (RS): Ch 1, sc2tog, sc in each st across. (19 sc)", "line 4, Row 5 (RS): got 19, want 18: the row makes 18; that is the count of the row before, printed one row late\n"},
		{"no rows", "2nd row of buttons: 5 in\nRow 1. See the notes.\nRows 1-5 form the pattern.\nWork Rows 1-12 in color A, Rows 13-24 in color B.\nCh 3 at the beginning of a row counts as dc.", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			code, out, errs := cli(c.text)
			require.Empty(t, errs)
			require.Equal(t, c.want, out)
			require.Equal(t, c.want != "", code == 1)
		})
	}
}

// TestPieces: what belongs to one piece, and what is told of it. Invented texts.
func TestPieces(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"row 1 is worked into the foundation row", "Foundation row: Fsc 20. (20 sc)\nRow 1: Ch 1, sc in each st across. (25 sc)", "line 2, Row 1: got 25, want 20: the row makes 20\n"},
		{"and into the setup row", "Ch 21.\nFoundation row: Sc in 2nd ch from hook, sc in each ch across. (20 sc)\nSetup row: Ch 1, sc in each st across. (20 sc)\nRow 1: Ch 1, sc in each st across. (25 sc)", "line 4, Row 1: got 25, want 20: the row makes 20\n"},
		{"another foundation row is another piece", "Foundation row: Fsc 20. (20 sc)\nRow 1: Ch 1, sc in each st across. (20 sc)\nFoundation row: Fsc 30. (30 sc)\nRow 1: Ch 1, sc in each st across. (30 sc)", ""},
		{"a repeat counted by kind", "Row 1: Fsc 20. (20 sc)\nRow 2: Ch 1, sc2tog, sc in each st across. (19 sc)\nRepeat Row 2 5 more times. (14 sc)", ""},
		{"a number left out", "Row 1: Fsc 20. (20 sc)\nRow 2: Ch 1, sc in each st across. (20 sc)\nRow 4: Ch 1, sc in each st across. (20 sc)\nRow 5: Ch 1, sc in each st across. (20 sc)", "line 3, Row 4: got 4, want 3: this is row 3\n"},
		{"a number twice", "Row 1: Fsc 20. (20 sc)\nRow 2: Ch 1, sc in each st across. (20 sc)\nRow 2: Ch 1, sc in each st across. (20 sc)\nRow 3: Ch 1, sc in each st across. (20 sc)", "line 3, Row 2: got 2, want 3: this is row 3\n"},
		{"a size that does not fit", "Sizes: S (M, L)\nRow 1: Fsc 20 (22, 24). 20 (22, 24) sc\nRow 2: Ch 1, sc in next 21 (22, 24) sts. 22 (24, 26) sc\nRow 3: Ch 1, 2 sc in next st, sc in each st to last st, 2 sc in last st. 24 (24, 26) sc",
			"line 3, Row 2, size S: got 21 used, want 20: the row before has 20 to work into: 1 short\n" +
				"line 3, Row 2: got 22 (24, 26), want unknown (22, 24): the row makes unknown (22, 24); that is the count of the next row, printed one row early\n"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, out, errs := cli(c.text)
			require.Empty(t, errs)
			require.Equal(t, c.want, out)
		})
	}
}

// TestWork: wrong row numbers cost little more than right ones, however many
// pieces have one. Counted, not timed: stitches worked, and lines tried.
func TestWork(t *testing.T) {
	piece := "SQUARE\nRow 1: Fsc 300. (300 sc)\nRow 2: Ch 1, sc in each st across. (300 sc)\nRows 3-300: Rep Row 2.\nRow 302: Ch 1, sc in each st across.\nRow 303: Ch 1, sc in each st across.\n"
	long := "Sizes: 1 (2, 3, 4, 5)\nRow 1: Fsc 100 (110, 120, 130, 140).\n"
	for i := range 400 {
		long += fmt.Sprintf("Row %d: Ch 1, sc in each st across.\n", i+2+i/200)
	}
	for _, text := range []string{strings.Repeat(piece, 90), long} {
		p, err := read(text)
		require.NoError(t, err)
		all := p.places
		require.NotEmpty(t, p.rows())
		require.Less(t, all-p.places, 500_000)
		require.Less(t, mostTries-p.tries, 10_000)
	}
}

func TestUnreadable(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"stray mark", "Sizes: S (M, L\n", `line 1: not checked: sizes: parse size list: "S (M, L": the bracket "(" is not closed`},
		{"unit of an equation", "\nBack width: 20 inn = 80 sts", `line 2: not checked: Back width: can't read " inn = 80 sts"; want a list of sizes with sts, rows, in or cm, the name of a line before it, +, -, x or =, and after a comma a rule (multiple of 6 + 1, odd, even) or centred`},
		{"unlike things", "Back: 20 sts + 3 rows = 80 sts", `line 1: not checked: Back: adds or multiplies unlike things: "3 rows" beside "20 sts"`},
		{"gauge", "Gauge: 12 sts = 4 inn", `line 1: not checked: Gauge: parse count over a span: "12 sts = 4 inn": unknown unit "inn"`},
		{"row", "Row 1: Fhdc 20.\nRow 2: Hdc in each stt across.", `line 2: not checked: column 20: read "stt", want st or a ch-m sp`},
	} {
		t.Run(c.name, func(t *testing.T) {
			code, out, errs := cli(c.text)
			require.Equal(t, 2, code)
			require.Empty(t, out)
			require.Equal(t, c.want+"\n", errs)
		})
	}
}

// TestNotChecked: a row that can't be read is told, and the rest of the text is
// checked as far as that is honest. Invented texts.
func TestNotChecked(t *testing.T) {
	for _, c := range []struct {
		name, text, out, errs string
		code                  int
	}{
		{"rows after it begin afresh", "Row 1: Fsc 20. (20 sc)\nRow 2: Sc in each stt. (25 sc)\nRow 3: Ch 1, sc in each st across. (25 sc)\nRow 4: Ch 1, sc in each st across. (26 sc)",
			"line 4, Row 4: got 26, want 25: the row makes 25\n", "line 2: not checked: column 19: read \"stt\", want st or a ch-m sp\n", 1},
		{"a chain that belongs to the next row", "Row 1: Fsc 20. (20 sc)\nRow 2: Sc in each st across, ch 3, turn. (20 sc)\nRow 3: Dc in next 19 sts. (20 dc)\nRow 4: Ch 1, sc in each st across. (20 sc)",
			"", "line 2: not checked: column 36: read \"turn\", want the chains before it at the start of the next row, where they belong\n", 2},
		{"rows by turns with others that are not there", "Row 1: Fsc 20. (20 sc)\nRows 2, 4 and 6: Ch 1, sc in each st across. (20 sc)\nRow 7: Ch 1, sc in each st across. (20 sc)",
			"", "line 2: not checked: column 6: read \"2, 4 and 6\", want a row number like 5, rows like 5–7, or one for each size\n", 2},
		{"rows by turns that can't be read", "Row 1: Fsc 20. (20 sc)\nRows 2 and 4: Sc in each stt.\nRow 3: Ch 1, sc in each st across. (20 sc)",
			"", "line 2: not checked: column 26: read \"stt\", want st or a ch-m sp\n", 2},
		{"rows by turns with any", "Row 1: Fsc 20. (20 sc)\nRow 2 and all rows like it: Ch 1, sc in each st across. (20 sc)\nRow 3: Ch 1, sc2tog, sc in each st across. (19 sc)\nRow 5: Ch 1, sc2tog, sc in each st across. (18 sc)",
			"", "line 2: not checked: column 5: read \"2 and all rows like it\", want a row number like 5, rows like 5–7, or one for each size\n", 2},
		{"nothing else is wrong", "Row 1: Fsc 20. (20 sc)\nRow 2: Sc in each stt. (20 sc)\nRow 3: Ch 1, sc in each st across.\nRow 4: Ch 1, sc in each st across. (25 sc)",
			"", "line 2: not checked: column 19: read \"stt\", want st or a ch-m sp\n", 2},
		{"rows before it", "Row 1: Fsc 20. (20 sc)\nRow 2: Ch 1, sc in each st across. (21 sc)\nRow 3: Sc in each stt.",
			"line 2, Row 2: got 21, want 20: the row makes 20\n", "line 3: not checked: column 19: read \"stt\", want st or a ch-m sp\n", 1},
		{"other lines", "Row 1: Sc in each stt.\nBust: 34 in = 87 cm",
			"line 2, Bust: got 34 in, want 87 cm: 34 in beside 87 cm\n", "line 1: not checked: column 19: read \"stt\", want st or a ch-m sp\n", 1},
		{"rows worked again that were not read", "Row 1: Fsc 20. (20 sc)\nRow 2: Sc in each stt.\nRow 3: Ch 1, sc in each st across. (20 sc)\nRep Rows 2-3 4 more times. (20 sc)\nRep Row 3 2 more times.",
			"", "line 2: not checked: column 19: read \"stt\", want st or a ch-m sp\nline 4: not checked: it reaches back to a line that is not checked\nline 5: not checked: it reaches back to a line that is not checked\n", 2},
		{"rows worked again that were", "Row 1: Sc in each stt.\nRow 2: Ch 1, sc in each st across. (20 sc)\nRow 3: Ch 1, sc2tog, sc in each st across. (19 sc)\nRep Rows 2-3 4 more times. (14 sts)",
			"line 4: got 14, want 15: the row makes 15\n", "line 1: not checked: column 19: read \"stt\", want st or a ch-m sp\n", 1},
		{"rows to be worked in all", "Row 1: Fsc 20. (20 sc)\nWork Rows 2–3 a total of 4 times.\nRow 2: Ch 1, sc in each st across. (20 sc)\nRow 3: Sc in each stt.\nRow 10: Ch 1, sc in each st across. (20 sc)",
			"", "line 2: not checked: it reaches on to a line that is not checked\nline 4: not checked: column 19: read \"stt\", want st or a ch-m sp\n", 2},
		{"a comment in their place", "Row 1: Fsc 20. (20 sc)\n// Row 2: in seed stitch\nRow 3: Ch 1, sc in each st across. (20 sc)\nRep Rows 2-3 4 more times.",
			"", "line 4: not checked: it reaches back to a line that is not checked\n", 2},
		{"the columns of the line as it is printed", "Row 1: Ch 3 (counts as first dc), sk first st, dc in each stt.",
			"", "line 1: not checked: column 59: read \"stt\", want st or a ch-m sp\n", 2},
		{"a list too short cuts the rows as well", "Sizes: S (M, L)\nRow 1: Fsc 20 (22, 24). 20 (22, 24) sc\nRow 2: Ch 1, sc in next 20 (22) sts.\nRow 3: Ch 1, sc in each st across. 20 (22, 24) sc\nRow 4: Ch 1, sc in each st across. 20 (22, 25) sc",
			"line 3, Row 2: got 20 (22): a list of 2 values where the text has 3 sizes\nline 5, Row 4, size L: got 25, want 24: the row makes 24\n", "", 1},
	} {
		t.Run(c.name, func(t *testing.T) {
			code, out, errs := cli(c.text)
			require.Equal(t, c.out, out)
			require.Equal(t, c.errs, errs)
			require.Equal(t, c.code, code)
		})
	}
}

func TestEquations(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"lengths add up", "Back: 12 in = 3 in + 6 in + 3 in", ""},
		{"lengths do not", "Back: 12 in = 3 in + 6 in + 4 in", "line 1, Back: got 12 in, want 13 in: 12 in beside 3 in + 6 in + 4 in\n"},
		{"lengths in two units", "Back: 30.5 cm = 12 in", ""},
		{"lengths in two units that differ", "Back: 33 cm = 12 in", "line 1, Back: got 33 cm, want 12 in: 33 cm beside 12 in\n"},
		{"each part rounded", "Round: 44½ in = 4 x 11 in", ""},
		{"skeins times length", "Yarn: 4 skeins x 400 yd = 1500 yd", "line 1, Yarn: got 1500 yd, want 1600 yd: 4 × 400 yd is 1600 yd\n"},
		{"grams by the label", "Yarn: 200 yd = 100 g per skein: 4 skeins, 700 yd, 450 g", "line 1, Yarn: got 450 g, want 350 g: 700 yd at 200 yd = 100 g\n"},
		{"one length of yarn for a garment that grows", "Sizes: S (M)\nBust: 34 (44) in\nYarn: 900 yd", "line 3, Yarn: got 900 yd for all sizes, want more for the larger sizes: Bust (line 2) grows from size to size\n"},
		{"no gauge", "Width: 20 in = 80 sts", "line 1, Width: got a length and a count, want a line with the gauge: 12 sts = 4 in: without it they can't be held against each other\n"},
		{"length and a plain number", "Gauge: 12 sts = 4 in\nWidth: 20 in = 60", "line 2, Width: got 60, want sts or rows: a length goes with a count of stitches or of rows\n"},
		{"rows", "Gauge: 10 rows = 4 in\nLength: 20 (22) in = 50 (60) rows", "line 2, Length, size 2: got 22 in, want 24 in: 60 rows at 10 rows = 4 in make that; 22 in take about 55 rows; or the gauge is about 11 rows = 4 in\n"},
		{"worked gauge", "Gauge: 12 sts = 4 in\nOn the hook: 15 sts = 4 in\nWidth before washing: 16 in = 60 sts\nWidth: 20 in = 60 sts", ""},
		{"once for a count that is meant at each end", "Sleeve: 35 sts + 9 sts at each end = 44 sts", "line 1, Sleeve: got 44, want 53, or other parts: the parts add up to 35 + 18 = 53; it adds up if 9 sts at each end is meant once\n"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, out, errs := cli(c.text)
			require.Empty(t, errs)
			require.Equal(t, c.want, out)
		})
	}
}
