package main

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// chain returns lines that each square the one before: b: a x a.
func chain(n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, "n%d: n%d + n%d + n%d\n", i+1, i, i, i)
	}
	return b.String()
}

var lineFirst = regexp.MustCompile(`^line \d+: `)

func TestHostileTexts(t *testing.T) {
	mb, full := 1<<20, maxText
	nines := strings.Repeat("9", 9_000)
	for _, c := range []struct {
		name, text string
		code       int
		want       string // the whole error, or nothing where only its form is checked
	}{
		{"empty", "", 0, ""},
		{"line too long", "Sizes: S (M)\n" + strings.Repeat("a", 10_001), 2, "line 2: 10001 characters, want at most 10000\n"},
		{"line as long as may be", strings.Repeat("a ", 5_000), 0, ""},
		{"long list", "Bust: 1 (" + strings.Repeat("1, ", 3_000) + "1) in", 1, ""},
		{"long sum", "Bust: 1" + strings.Repeat(" + 1", 2_000) + " sts = 2001 sts", 0, ""},
		{"long product", "Bust: 9" + strings.Repeat(" x 9", 2_000) + " sts = 2001 sts", 2, ""},
		{"long row", "Row 1: Ch 12, dc in 4th ch from hook (skipped chs count as dc)" + strings.Repeat(", dc in next st", 600), 1, ""},
		{"deep row", "Row 1: " + strings.Repeat("[", 4_000), 2, ""},
		{"many brackets", "Bust: 34 " + strings.Repeat("(", 9_000), 0, ""},
		{"row repeated", "Row 1: fhdc 99999\nRow 2: hdc in each st across.\nRep Row 2 99999 more times.", 0, ""},
		{"row that falls", "Row 1: fhdc 99999\nRow 2: hdc in each st to last st, leave 1 st unworked.\nRep Row 2 99000 more times.", 2, ""},
		{"rows repeated, no two alike", "Row 1: fhdc 1000\nRow 2: 2 hdc in each st across.\nRep Row 2 999 more times.", 1, ""},
		{"absurd count", "Bust: 34 in = " + nines + " sts", 2, ""},
		{"absurd length", "Bust: " + nines + " in = 12 sts", 2, ""},
		{"absurd gauge", "Gauge: " + nines + " sts = 4 in", 2, ""},
		{"exponent", "Gauge: 1e1000000000 sts = 4 in", 2, ""},
		{"exponent in an equation", "Bust: 34e1000000000 in = 12 sts", 2, ""},
		{"gauge of nothing", "Gauge: 0 sts = 4 in", 2, ""},
		{"absurd yarn", "Yarn: 4 skeins of " + nines + " yd", 2, ""},
		{"absurd row", "Row 1: fhdc " + nines, 2, ""},
		{"absurd row number", "Row " + nines[:70] + ": hdc in each st across", 2, ""},
		{"too many sizes", "Sizes: 1 (" + strings.Repeat("2, ", 70) + "3)", 2, ""},
		{"invalid UTF-8", "Sizes: S (M)\nBust: 34 \xff in", 2, "line 2: not valid UTF-8: \"Bust: 34 � in\"\n"},
		{"a list in one unit that looks like a pair", "0cm[0cm]", 0, ""},
		{"zeros", strings.Repeat("\x00", 9_000), 0, ""},
		{"a megabyte in a line", strings.Repeat("a", mb), 2, "line 1: the text goes on after 262144 bytes, want at most so many\n"},
		{"a megabyte", strings.Repeat("a\n", mb/2), 2, "line 131073: the text goes on after 262144 bytes, want at most so many\n"},
		{"without end", strings.Repeat("Row 1: fhdc 5.\n", mb), 2, ""},
		{"lines", strings.Repeat("a\n", full/2), 0, ""},
		{"empty lines", strings.Repeat("\n", full), 0, ""},
		{"pieces", strings.Repeat("Row 1: fhdc 5.\n", full/16), 0, ""},
		{"one piece", "Row 1: fhdc 5.\n" + strings.Repeat("Next row: hdc in each st across.\n", full/40), 0, ""},
		{"one wide piece", "Row 1: fhdc 99999.\n" + strings.Repeat("Next row: hdc in each st across.\n", full/40), 2, ""},
		{"misnumbered rows", "Row 1: fhdc 500.\n" + strings.Repeat("Row 3: hdc in each st across.\n", 199), 1, ""},
		{"chains without a remark", strings.Repeat("BODY\nRow 1: Ch 90000, dc in 9th ch from hook and in each ch across. (99 dc)\n", full/80), 2, ""},
		{"rows again by their place", "Row 1: fhdc 500.\n" + strings.Repeat("Rep last row 3 times.\n", 9000), 1, ""},
		{"equations", strings.Repeat("Bust: 34 in = 12 sts\n", full/22), 1, ""},
		{"equations at a gauge", "Gauge: 4 sts = 4 in\n" + strings.Repeat("Bust: 34 in = 12 sts\n", full/22), 1, ""},
		{"names that grow", "a: 99999 sts\n" + strings.Repeat("a: a x a = a\n", full/16), 2, ""},
		{"names that square", "n0: 3 sts\n" + chain(40), 0, ""},
		{"lists", strings.Repeat("34 (35, 33, 38, 40) in [86 (88, 90, 95, 100) cm] ", 200) + "\n" + strings.Repeat("34 (35, 33) in [86 (88, 90) cm]\n", full/40), 1, ""},
		{"brackets", strings.Repeat("34 "+strings.Repeat("(", 900)+"\n", full/1000), 0, ""},
		{"yarn", strings.Repeat("Yarn: 4 skeins of 200 yd, 800 yd\n", full/40), 0, ""},
		{"amounts", strings.Repeat("Yarn: 4 balls "+strings.Repeat("4 m 5 g, 6 yd (7 oz / ", 400)+"\n", full/9000), 1, ""},
		{"gauges behind one another", strings.Repeat("Gauge: "+strings.Repeat("4 sts = 4 in unblocked; ", 400)+"\n", full/9800), 0, ""},
		{"gauges", strings.Repeat("Gauge: 4 sts = 4 in, in, in, in [ ( / . \n", full/50), 0, ""},
		{"gauges of parts", strings.Repeat("Gauge, a, bb, ccc, ddd: 4 sts = 4 in\nDdd: 34 in = 12 sts\n", full/60), 1, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			code, out, errs := cli(c.text)
			t.Logf("%d %.200q %.200q", code, errs, out)
			require.Equal(t, c.code, code, errs)
			if code == 2 {
				require.Empty(t, out)
				for l := range strings.Lines(errs) {
					if len(l) >= 500 || !lineFirst.MatchString(l) {
						t.Fatalf("%q", l)
					}
				}
			}
			if c.want != "" {
				require.Equal(t, c.want, errs)
			}
		})
	}
}
