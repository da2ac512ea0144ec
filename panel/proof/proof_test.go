package proof

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/row"
	"github.com/stretchr/testify/require"
)

func findings(t *testing.T, text string, begin ...int) []string {
	t.Helper()
	read, err := Parse(text, row.US)
	require.NoError(t, err)
	var run grade.Run[int]
	if len(begin) > 0 {
		run = begin
	}
	found, err := Check(read, run)
	require.NoError(t, err)
	var out []string
	for _, f := range found {
		out = append(out, f.String())
	}
	return out
}

// Published errata and questions. Each is found, and each false alarm is silent.
func TestPracticeCases(t *testing.T) {
	for _, c := range []struct {
		name, source string
		text         string
		begin        []int
		want         []string
	}{
		{"PC-04a 57 chains are 56 sc, the maker counts 55", "forum.crochetville.com", `Ch 57
Row 1: sc in 2nd ch from hook, sc in each ch across. 56 sts`, nil, nil},
		{"PC-04a as the maker counted", "forum.crochetville.com", `Ch 57
Row 1: sc in 2nd ch from hook, sc in each ch across. 55 sts`, nil,
			[]string{"line 2, Row 1, size 1: makes 56, printed 55"}},
		{"PC-09a 72 times for 6", "laurachau.com", `Row 1 (RS): sc in each st across. 44 (46, 48) sts
Rows 2–9: sc in each st across.
Row 10: 2 sc in first st, sc in each st to last st, 2 sc in last st.
Rep Rows 1–10 71 (5, 5) more times. — 56 (58, 60) sts`, []int{44, 46, 48},
			[]string{"line 4, size 1: makes 188, printed 56", "line 4, size 1: 71 in 71 (5, 5) is out of line with the other sizes, which want at most 5"}},
		{"PC-09b 19 for 9", "wartybobbles.blog", `Row 2: sc in next 19 (16, 23, 30) sts, leave rem sts unworked.`, []int{50},
			[]string{"line 1, Row 2, size 1 (remark): 19 in 19 (16, 23, 30) is out of line with the other sizes, which want 9"}},
		{"PC-10 version A", "bellacrochet.blogspot.com", `Ch 12
Row 1: dc in 4th ch from hook (skipped chs count as dc), dc in each ch across. 10 sts.
Row 2: ch 3 (counts as dc), dc 3, ch 2, sk 3, dc 4. (10 sts)`, nil,
			[]string{"line 3, Row 2, size 1: uses 11 of 10, 1 short"}},
		{"PC-10 version B", "bellacrochet.blogspot.com", `Ch 12
Row 1: dc in 4th ch from hook (skipped chs count as dc), dc in each ch across. 10 sts.
Row 2: ch 3 (counts as dc), [sk 1, 3 dc in next st] 4 times. [13 sts]`, nil,
			[]string{"line 3, Row 2, size 1: uses 9 of 10, 1 left over"}},
		{"PC-10 knitting twin", "astraknots.com", `Row 1: sc 3, sc2tog, sc 6, sc2tog, sc 1. 12 sts`, []int{14}, nil},
		{"PC-11 four sizes, chain counted two ways", "plymouthyarn.com", `Ch 66 (66, 70, 74)
Row 1: hdc in 3rd ch from hook (skipped chs do not count), hdc in each ch across. 64 (64, 68, 72) sts
Row 2: ch 3 (counts as dc), dc in next 35 (35, 37, 39) sts, hdc in last 28 (28, 30, 32) sts. 64 (64, 68, 72) sts
Row 3: ch 2 (counts as hdc), hdc in each st across. 64 (64, 68, 72) sts`, nil, nil},
		{"PC-11 read with one rule", "plymouthyarn.com", `Ch 66 (66, 70, 74)
Row 1: hdc in 3rd ch from hook (skipped chs count as hdc), hdc in each ch across. 64 (64, 68, 72) sts`, nil,
			[]string{"line 2, Row 1, size 1: makes 65, printed 64", "line 2, Row 1, size 2: makes 65, printed 64", "line 2, Row 1, size 3: makes 69, printed 68", "line 2, Row 1, size 4: makes 73, printed 72"}},
		{"PC-12 five sizes, zeros, sides", "rico-design.de", `Rows 1–12 (RS): sc in first 2 sts, *sc in next 6 sts; rep from * to last 5 sts, sc in last 5 sts. 73[79:85:91:103] sts
Rows 13–20: sc in each st across. 73[79:85:91:103] sts
Rep Rows 13–20 1[2:2:2:2] times more.
Rep Rows 13–16 1[0:0:0:0] times more.
The last row, Row 32[36:36:36:36], is worked on WS`, []int{73, 79, 85, 91, 103},
			[]string{"line 4, size 1: rows 13 to 16 are worked 3 times in all"}[:0]},
		{"PC-13 the third size printed with the second's count", "simplycrochetmag.co.uk", `Ch 173 (197, 221, 245)
Row 1: sc in 2nd ch from hook, sc in each ch across. 172 (196, 196, 244) sts`, nil,
			[]string{"line 2, Row 1, size 3: makes 220, printed 196 (that is the count of size 2)"}},
		{"PC-13 a count of trebles alone", "simplycrochetmag.co.uk", `Row 1: *dc in next 2 sts, sc in next st; rep from * across. 20 sts`, []int{30},
			[]string{"line 1, Row 1, size 1: makes 30, printed 20 (that is the dc alone)"}},
		{"PC-13 the same named", "simplycrochetmag.co.uk", `Row 1: *dc in next 2 sts, sc in next st; rep from * across. 20 dc`, []int{30}, nil},
		{"PC-15a at each end, 35 to 53", "gritsandpurls.com", `Row 1: 2 sc in first st, sc in each st to last st, 2 sc in last st. 37 sts
Rows 2–4: sc in each st across.
Rep Rows 1–4 8 more times. — 53 sts`, []int{35}, nil},
		{"PC-15a as the maker counted", "gritsandpurls.com", `Row 1: 2 sc in first st, sc in each st across. 36 sts
Rows 2–4: sc in each st across.
Rep Rows 1–4 8 more times. — 53 sts`, []int{35},
			[]string{"line 3, size 1: makes 44, printed 53"}},
		{"PC-15b per side, 99 to 23", "to-knit-knitting-stitches.com", sideCap(2) + "\nRow 99: sc in each st across. 23 sts", []int{99}, nil},
		// 99 - 10 - 6 - 22 - 3 - 2 = 56; the page of the case sums up 53
		{"PC-15b read as single rows", "to-knit-knitting-stitches.com", sideCap(1) + "\nRow 99: sc in each st across. 23 sts", []int{99},
			[]string{"line 7, Row 99, size 1: makes 56, printed 23"}},
		{"PC-16b 34, 24, 34", "fiddleheadfibers.com", `Row 1: hdc in next 34 sts, leave 24 sts unworked, hdc in next 34 sts. 34 sts, 34 sts`, []int{92}, nil},
		{"PC-16b begun one stitch early", "fiddleheadfibers.com", `Row 1: hdc in next 33 sts, leave 24 sts unworked, hdc in next 35 sts. 34 sts, 34 sts`, []int{92},
			[]string{"line 1, Row 1, size 1: part 1 makes 33, printed 34"}},
		{"PC-16c the wrong column, 9 for 7", "skinnyrabbit.com", `Row 1: sc in next 20 (22) sts, leave 9 (9) sts unworked, sc in next 20 (22) sts. 20 (22) sts, 20 (22) sts`, []int{47, 53},
			[]string{"line 1, Row 1, size 1: uses 49 of 47, 2 short"}},
	} {
		t.Run(c.name+" ("+c.source+")", func(t *testing.T) {
			got := findings(t, c.text, c.begin...)
			if c.name[:5] == "PC-15" {
				got = without(got, "this is row")
			}
			require.Equal(t, len(c.want), len(got), "%q", got)
			for i := range c.want {
				require.Equal(t, c.want[i], got[i])
			}
		})
	}
}

func without(all []string, part string) []string {
	var out []string
	for _, s := range all {
		if !strings.Contains(s, part) {
			out = append(out, s)
		}
	}
	return out
}

// sideCap binds off 5 at the start of the next rows, then 3 twice, 2 eleven
// times, 1 three times, 2 once, in so many rows each.
func sideCap(rows int) string {
	var b strings.Builder
	for i, step := range [][2]int{{5, 2}, {3, 2 * rows}, {2, 11 * rows}, {1, 3 * rows}, {2, rows}} {
		if i > 0 {
			b.WriteByte('\n')
		}
		fmt.Fprintf(&b, "Rows %d–%d: sc in each st to last %d sts, leave %d sts unworked", 100*i+1, 100*i+step[1], step[0], step[0])
	}
	return "Next row: sc in each st across\n" + b.String()
}

// A finding gives both numbers apart as well.
func TestFindingNumbers(t *testing.T) {
	for text, want := range map[string][2]string{
		"Row 1: sc in next 11 sts":                                                      {"11", "10"},
		"Row 1: *sc in next 4 sts; rep from * across":                                   {"8", "10"},
		"Row 1: sc in each st across. 12 sts":                                           {"12", "10"},
		"Row 1: sc in each st and in each ch-1 sp across":                               {"", ""},
		"Row 1: sc in each st across\nRow 3: sc in each st across":                      {"3", "2"},
		"Row 1 (RS): sc in each st across\nRow 2 (RS): sc in each st across":            {"RS", "WS"},
		"Row 1: sc in each st across. 10 sts\nRow 2: 2 sc in each st across. 10 sts":    {"10", "20"},
		"Row 1: sc in next 4 sts, leave 2 sts unworked, sc in next 4 sts. 5 sts, 4 sts": {"5", "4"},
		"Row 1: sc in each st across\nRep Row 4 2 more times":                           {"", ""},
	} {
		read, err := Parse(text, row.US)
		require.NoError(t, err)
		found, err := Check(read, grade.Run[int]{10})
		require.NoError(t, err)
		require.Len(t, found, 1, "%s", text)
		require.Equal(t, want, [2]string{found[0].Got, found[0].Want}, "%s", text)
	}
}

// What a technical editor meets every day, made up for the purpose.
func TestFindings(t *testing.T) {
	for _, c := range []struct {
		name, text string
		begin      []int
		want       []string
	}{
		{"makes 34, printed 54", "Row 1: dc in first st, *ch 2, sk 2, dc in next st; rep from * across. 54 dc, 33 ch-2 sps", []int{100},
			[]string{"line 1, Row 1, size 1: makes 34, printed 54"}},
		{"stitches left without a word", "Row 1: hdc in each st to last 5 sts. 35 hdc\nRep Row 1 2 more times. 25 hdc\nRow 4: *sc in next st, ch 1, sk 1; rep from * to last 3 sts. 11 sc", []int{40}, nil},
		{"stitches left that are counted", "Row 1: hdc in each st to last 5 sts. 40 hdc", []int{40}, []string{"line 1, Row 1, size 1: 5 left over at the end"}},
		{"stitches left and nothing counted", "Row 1: hdc in each st to last 5 sts", []int{40}, []string{"line 1, Row 1, size 1: 5 left over at the end"}},
		{"number words", "Row 1: sc in each st across\nRep Row 1 eighteen more times\nRow 20: sc in each st across\nRow 22: sc in each st across", []int{9}, []string{"line 4, Row 22, size 1: this is row 21, printed 22"}},
		{"spaces alone", "Row 1: dc in first st, *ch 2, sk 2, dc in next st; rep from * across. 33 sts", []int{100},
			[]string{"line 1, Row 1, size 1: makes 34, printed 33 (that is the chain spaces alone)"}},
		{"with or without chains", "Row 1: dc in first st, *ch 2, sk 2, dc in next st; rep from * across. 100 sts\nRow 2: hdc in each st and 2 hdc in each ch-2 sp across. 100 sts", []int{100}, nil},
		{"chains counted", "Row 1: dc in first st, *ch 2, sk 2, dc in next st; rep from * across. 34 sts, 66 chs, 33 ch-sps", []int{100}, nil},
		{"early", "Row 1: sc in each st across. 12 (14) sts\nRow 2: 2 sc in each st across. 36 (42) sts\nRow 3: *sc in next st, 2 sc in next st; rep from * across. 36 (42) sts", []int{12, 14},
			[]string{"line 2, Row 2: makes 24 (28), printed 36 (42): that is the count of the next row, printed one row early"}},
		{"late", "Row 1: sc in each st across. 12 sts\nRow 2: 2 sc in each st across. 12 sts", []int{12},
			[]string{"line 2, Row 2, size 1: makes 24, printed 12: that is the count of the row before, printed one row late"}},
		{"one size off", "Row 1: sc in each st across. 24 (30, 34, 40) sts", []int{20, 24, 30, 34},
			[]string{"line 1, Row 1: makes 20 (24, 30, 34), printed 24 (30, 34, 40): the counts stand one size off"}},
		{"one size the other way", "Row 1: sc in each st across. 18 (20, 24, 30) sts", []int{20, 24, 30, 34},
			[]string{"line 1, Row 1: makes 20 (24, 30, 34), printed 18 (20, 24, 30): the counts stand one size off"}},
		{"one size out of line", "Row 1: sc in each st across. 20 (52, 28, 32) sts", []int{20, 24, 28, 32},
			[]string{"line 1, Row 1, size 2: makes 24, printed 52", "line 1, Row 1, size 2: 52 in 20 (52, 28, 32) is out of line with the other sizes, which want 24"}},
		{"number of a row", "Row 1: sc in each st across\nRow 3: sc in each st across", []int{20},
			[]string{"line 2, Row 3, size 1: this is row 2, printed 3"}},
		{"number after a repeat", "Row 1: sc in each st across\nRow 2: sc in each st across\nRep Rows 1–2 2 (3) more times\nRow 7 (8): sc in each st across", []int{20},
			[]string{"line 4, Row 7 (8), size 2: this is row 9, printed 8"}},
		{"last row and side", "Row 1 (RS): sc in each st across\nRow 2 (WS): sc in each st across\nRow 3 (WS): sc in each st across\nThe last row, Row 4, is worked on WS", []int{20},
			[]string{"line 3, Row 3 (WS), size 1: row 3 is worked on the RS, printed WS", "line 4, size 1: the last row is row 3, printed 4", "line 4, size 1: row 3 is worked on the RS, printed WS"}},
		{"rows that are not there", "Row 1: sc in each st across\nRep Rows 2–3 4 more times", []int{20},
			[]string{"line 2, size 1: there is no row 2 before it to work again"}},
		{"rows that do not follow", "Work Rows 1–3 a total of 0 (1) times\nRow 1: sc in each st across", []int{20},
			[]string{"line 1: rows 1 to 3 do not follow it"}},
		{"a second pass that does not fit", "Row 1: sc in first st, *ch 1, sk 1, sc in next st; rep from * across\nRep Row 1 2 more times", []int{21},
			[]string{"line 2, size 1: place 2 is a ch-1 sp and the row works a st there: the ch-1 sps would stay unworked; work into them or skip them (sk next ch-1 sp)"}},
		{"going on from what is printed", "Row 1: sc in next 11 sts. 10 sts\nRow 2: 2 sc in each st across. 22 sts", []int{10},
			[]string{"line 1, Row 1, size 1: uses 11 of 10, 1 short", "line 2, Row 2, size 1: makes 20, printed 22"}},
		{"places unknown after a lace row that does not fit", "Row 1: dc in first st, *ch 2, sk 2, dc in next st; rep from * across. 101 sts\nRow 2: hdc in each st and 2 hdc in each ch-2 sp across. 101 sts\nRow 3: sc in each st across. 102 sts", []int{101},
			[]string{"line 1, Row 1, size 1: uses 100 of 101, 1 left over (2 short of one more repeat)", "line 3, Row 3, size 1: makes 101, printed 102"}},
		{"nothing known to begin with", "Row 1: sc in each st across\nRow 2: 2 sc in each st across. 20 sts\nRow 3: sc in each st across. 21 sts", nil,
			[]string{"line 3, Row 3, size 1: makes 20, printed 21"}},
		{"a foundation inside", "Row 1: fsc 10. 10 sts\nRow 2: fsc 10", nil,
			[]string{"line 2, Row 2, size 1: a foundation row must be the first row and no other"}},
		{"a foundation without a number", "Row 1: fsc", nil,
			[]string{"line 1, Row 1, size 1: Row.Items[0].Count: got no number, want the number of stitches or chains to begin"}},
		{"a repeat counted by kind", "Row 1: fsc 20. 20 sts\nRow 2: sc2tog, sc in each st across. 19 sc\nRep Row 2 5 more times. 14 sc", nil, nil},
		{"a repeat counted by kind, wrong", "Row 1: fsc 20. 20 sts\nRow 2: sc2tog, sc in each st across. 19 sc\nRep Row 2 5 more times. 15 sc", nil,
			[]string{"line 3, size 1: makes 14, printed 15"}},
		{"spaces of two sizes", "Row 1: fdc 20\nRow 2: dc in next 6 sts, ch 2, sk 2, dc in next 6 sts, ch 1, sk 1, dc in next 5 sts. 17 dc, 1 ch-2 sp, 1 ch-1 sp", nil, nil},
		{"spaces of two sizes together", "Row 1: fdc 20\nRow 2: dc in next 6 sts, ch 2, sk 2, dc in next 6 sts, ch 1, sk 1, dc in next 5 sts. 17 dc, 2 ch-sps", nil, nil},
		{"spaces of two sizes as of one", "Row 1: fdc 20\nRow 2: dc in next 6 sts, ch 2, sk 2, dc in next 6 sts, ch 1, sk 1, dc in next 5 sts. 17 dc, 2 ch-2 sps", nil,
			[]string{"line 2, Row 2, size 1: makes 1, printed 2"}},
		{"spaces of another size", "Row 1: fdc 41\nRow 2: ch 4 (counts as dc, ch 1), sk 1, dc in next st, *ch 1, sk 1, dc in next st; rep from * across. 21 dc, 20 ch-2 sps", nil,
			[]string{"line 2, Row 2, size 1: makes 20 ch-1 sps, printed 20 ch-2 sps"}},
		{"slip stitches across an armhole, not counted", "Row 1: fhdc 60\nRow 2: sl st in next 5 sts, hdc in next 50 sts, leave 5 sts unworked. 50 hdc\nRow 3: hdc in each hdc across. 50 hdc", nil, nil},
		{"slip stitches across an armhole, by their total", "Row 1: fhdc 60\nRow 2: sl st in next 5 sts, hdc in next 50 sts, leave 5 sts unworked. 50 sts\nRow 3: hdc in each st across. 50 sts\nRow 4: hdc in each st across. 51 sts", nil,
			[]string{"line 4, Row 4, size 1: makes 50, printed 51"}},
		{"slip stitches across an armhole, counted", "Row 1: fhdc 60\nRow 2: sl st in next 5 sts, hdc in next 50 sts, leave 5 sts unworked. 55 sts\nRow 3: hdc in each st across. 55 sts", nil, nil},
		{"slip stitches across an armhole, the next row by kind", "Row 1: fhdc 60\nRow 2: sl st in next 5 sts, hdc in next 50 sts, leave 5 sts unworked. 55 sts\nRow 3: hdc in each hdc across. 55 hdc", nil,
			[]string{"line 3, Row 3, size 1: makes 50, printed 55"}},
		{"slip stitches and a chain to begin", "Row 1: fhdc 60\nRow 2: sl st in first 5 sts, ch 1, hdc in next 50 sts, leave 5 sts unworked.\nRow 3: hdc in next 50 sts. 50 hdc", nil, nil},
		{"slip stitches and a wrong total", "Row 1: fhdc 60\nRow 2: sl st in next 5 sts, hdc in next 50 sts, leave 5 sts unworked. 52 sts", nil,
			[]string{"line 2, Row 2, size 1: makes 55, printed 52"}},
		{"row 1 after a foundation row", "Foundation row (RS): fsc 20. 20 sts\nRow 1 (WS): sc in each st across. 25 sc\nRow 2 (RS): sc in each st across.\nRep Row 2 2 more times\nRow 5 (WS): sc in each st across. 20 sc", nil,
			[]string{"line 2, Row 1 (WS), size 1: makes 20, printed 25"}},
		{"row 2 after a foundation row", "Foundation row: fsc 20. 20 sts\nRow 2: sc in each st across. 25 sc", nil,
			[]string{"line 2, Row 2, size 1: makes 20, printed 25"}},
		{"a row that does not fit one size", "Row 1: fsc 20 (22, 24)\nRow 2: sc in next 21 (22, 24) sts. 22 (24, 26) sc\nRow 3: 2 sc in next st, sc in each st to last st, 2 sc in last st. 22 (24, 26) sc", nil,
			[]string{"line 2, Row 2, size 1: uses 21 of 20, 1 short", "line 2, Row 2: makes unknown (22, 24), printed 22 (24, 26): that is the count of the next row, printed one row early", "line 3, Row 3, size 1: makes 24, printed 22"}},
		{"a number left out", "Row 1 (RS): sc in each st across\nRow 2 (WS): sc in each st across\nRow 4 (WS): sc in each st across\nRow 5 (RS): sc in each st across\nRow 6 (WS): sc in each st across", []int{20},
			[]string{"line 3, Row 4 (WS), size 1: this is row 3, printed 4"}},
		{"a number twice", "Row 1: sc in each st across\nRow 2: sc in each st across\nRow 2: sc in each st across\nRow 3: sc in each st across\nRow 4: sc in each st across", []int{20},
			[]string{"line 3, Row 2, size 1: this is row 3, printed 2"}},
		{"rows worked again by their numbers", "Row 1: fsc 20\nRow 2: sc in each st across\nRow 3: sc2tog, sc in each st across\nRows 4–11: Rep Rows 2–3. 16 sts\nRow 13: sc in each st across", nil,
			[]string{"line 4, Rows 4–11, size 1: makes 15, printed 16", "line 5, Row 13, size 1: this is row 12, printed 13"}},
		{"rows worked again and again", "Row 1: fsc 20\nRow 2: sc in each st across\nRow 3: sc2tog, sc in each st across\nRows 4–7: Rep Rows 2–3. 17 sts\nRep Rows 4–6 1 more time. 17 sts\nRep Rows 5–7 1 more time. 14 sts", nil,
			[]string{"line 5, size 1: makes 16, printed 17"}},
		{"the next rows", "Row 1: fsc 20\nNext 5 rows: sc2tog, sc in each st across. 14 sts\nRow 7: sc in each st across", nil,
			[]string{"line 2, Next 5 rows, size 1: makes 15, printed 14"}},
		// Common practice, no source: what is called by its kind passes over what lies between.
		{"mesh over mesh", "Row 1: fdc 41\nRow 2: ch 4 (counts as dc, ch 1), sk 1, *dc in next st, ch 1, sk 1; rep from * to last st, dc in last st. 21 dc, 20 ch-1 sps\nRow 3: ch 4 (counts as dc, ch 1), *dc in next dc, ch 1; rep from * to last st, dc in last st. 21 dc, 20 ch-1 sps\nRow 4: ch 4 (counts as dc, ch 1), dc in next dc, *ch 1, dc in next dc; rep from * across. 21 dc, 19 ch-1 sps", nil,
			[]string{"line 4, Row 4, size 1: makes 20, printed 19"}},
		{"stitches of a mesh", "Row 1: fdc 41\nRow 2: ch 4 (counts as dc, ch 1), sk 1, *dc in next st, ch 1, sk 1; rep from * to last st, dc in last st. 21 dc, 20 ch-1 sps\nRow 3: sc in each dc across. 22 sc", nil, []string{"line 3, Row 3, size 1: makes 21, printed 22"}},
		{"spaces of a mesh", "Row 1: fdc 41\nRow 2: ch 4 (counts as dc, ch 1), sk 1, *dc in next st, ch 1, sk 1; rep from * to last st, dc in last st. 21 dc, 20 ch-1 sps\nRow 3: 2 sc in each ch-1 sp across. 40 sc\nRow 4: sc in each sc across. 41 sc", nil, []string{"line 4, Row 4, size 1: makes 40, printed 41"}},
		{"any stitch of a mesh", "Row 1: fdc 41\nRow 2: ch 4 (counts as dc, ch 1), sk 1, *dc in next st, ch 1, sk 1; rep from * to last st, dc in last st. 21 dc, 20 ch-1 sps\nRow 3: sc in each st across. 21 sc", nil,
			[]string{"line 3, Row 3, size 1: place 2 is a ch-1 sp and the row works a st there: the ch-1 sps would stay unworked; work into them or skip them (sk next ch-1 sp)"}},
		{"v-stitches", "Row 1: fsc 29\nRow 2: ch 3 (counts as dc), *sk 1, (dc, ch 1, dc) in next st, sk 1; rep from * to last st, dc in last st. 20 dc, 9 ch-1 sps\nRow 3: ch 3 (counts as dc), *(dc, ch 1, dc) in next ch-1 sp; rep from * to last st, dc in last st. 20 dc, 9 ch-1 sps\nRow 4: ch 3 (counts as dc), (dc, ch 1, dc) in each ch-1 sp across, dc in last st. 20 dc, 8 ch-1 sps", nil,
			[]string{"line 4, Row 4, size 1: makes 9, printed 8"}},
		{"a mesh moved over", "Row 1: fsc 21\nRow 2: sc in first st, *ch 1, sk 1, sc in next st; rep from * across. 11 sc, 10 ch-1 sps\nRow 3: sc in first st, *sc in next ch-1 sp, ch 1; rep from * to last st, sc in last st. 12 sc, 9 ch-1 sps", nil,
			[]string{"line 3, Row 3, size 1: makes 10, printed 9"}},
		{"too few spaces", "Row 1: fdc 41\nRow 2: ch 4 (counts as dc, ch 1), sk 1, *dc in next st, ch 1, sk 1; rep from * to last st, dc in last st. 21 dc, 20 ch-1 sps\nRow 3: sc in next 21 ch-1 sps", nil,
			[]string{"line 3, Row 3, size 1: uses 21 of 41, 20 left over"}},
		{"no spaces at all", "Row 1: fsc 21\nRow 2: sc in first st, *2 sc in next ch-1 sp; rep from * across", nil,
			[]string{"line 2, Row 2, size 1: place 2 is a st and the row works a ch-1 sp there"}},
		{"moss, the spaces counted as stitches", "Ch 42\nRow 1: sc in 2nd ch from hook, *ch 1, sk next ch, sc in next ch; rep from * across. 41 sts\nRow 2: ch 1, sc in first st, *sc in next ch-1 sp, ch 1, sk next sc; rep from * to last 2 sts, sc in next ch-1 sp, sc in last st. 41 sts", nil, nil},
		{"a size that is skipped", "Row 1: sc in each st across. 0 (24) sts", []int{20, 24}, nil},
		{"words for more", "Row 1: sc in each st across. 20 sts\nRow 2: 2 sc in first st, sc in each st across. 21 sts\nRep Row 2 twice more. — 23 sts\nRep row 2 once more. — 24 sts", []int{20}, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := findings(t, c.text, c.begin...)
			require.Equal(t, len(c.want), len(got), "%q", got)
			for i := range c.want {
				require.Equal(t, c.want[i], got[i])
			}
		})
	}
}

const (
	plain = "hdc in each st across"
	lace  = "dc in first st, *ch 2, sk 2, dc in next st; rep from * across"
	fill  = "hdc in each st and 2 hdc in each ch-2 sp across"
	mesh  = "ch 4 (counts as dc, ch 1), sk 1, *dc in next st, ch 1, sk 1; rep from * to last st, dc in last st"
	into  = "sc in each st and in each ch-1 sp across"
	wave  = "2 sc in first st, *sc in next 4 sts, sc2tog, sc in next 3 sts, 2 sc in next st; rep from * across"
)

func rows(texts ...string) []row.Row {
	var out []row.Row
	for _, s := range texts {
		out = append(out, row.Must(s, row.US))
	}
	return out
}

// plans that are right, of many kinds.
func plans() []panel.Plan {
	var out []panel.Plan
	for _, first := range []string{"fhdc", "ch, hdc in 3rd ch from hook (skipped chs do not count), hdc in each ch across", "ch, dc in 4th ch from hook (skipped chs count as dc), dc in each ch across"} {
		for _, opening := range [][]string{{}, {plain}, {plain, lace, fill}} {
			for _, repeat := range [][]string{{}, {plain}, {plain, plain, plain, lace, fill}, {mesh, into}, {lace, fill, mesh, into, plain}} {
				for _, closing := range [][]string{{}, {plain}, {plain, plain}, {lace}} {
					out = append(out, panel.Plan{Opening: rows(append([]string{first}, opening...)...), Repeat: rows(repeat...), Closing: rows(closing...)})
				}
			}
		}
	}
	return out
}

// What is written is read back as the same plan, written the same again, and
// found without fault; with one number changed, there is one finding at least,
// and it names the line.
func TestWrittenPlans(t *testing.T) {
	g := rand.New(rand.NewPCG(8, 9))
	for i, p := range plans() {
		rule, err := p.Legal()
		require.NoError(t, err)
		sizes := 1 + g.IntN(9)
		w := panel.Writing{Terms: row.Terms(g.IntN(2)), FirstSide: panel.Side(g.IntN(2))}
		n := rule.Least + 20*rule.Multiple
		k, least := g.IntN(3), 0
		for range sizes {
			w.Stitches = append(w.Stitches, n)
			n += rule.Multiple * (1 + g.IntN(4))
			if len(p.Repeat) == 0 {
				w.Repeats = append(w.Repeats, 0)
				continue
			}
			w.Repeats = append(w.Repeats, k)
			k += g.IntN(3)
		}
		least = w.Repeats[0]
		text, err := p.Write(w)
		require.NoError(t, err)
		read, err := Parse(text.String(), w.Terms)
		require.NoError(t, err, "%s", text)
		require.Equal(t, text.String(), read.String())
		found, err := Check(read, nil)
		require.NoError(t, err)
		require.Empty(t, found, "plan %d\n%s", i, text)

		if most := w.Repeats[len(w.Repeats)-1]; len(p.Repeat) == 0 || most > max(least, 1) || least > 1 || most > 0 && least == 0 {
			back, how, err := read.Plan()
			require.NoError(t, err)
			if len(p.Repeat) == 0 {
				p = panel.Plan{Opening: slices.Concat(p.Opening, p.Closing)}
			}
			require.Equal(t, p.Opening, back.Opening)
			require.ElementsMatch(t, p.Repeat, back.Repeat)
			require.ElementsMatch(t, p.Closing, back.Closing)
			require.Equal(t, w.FirstSide, how.FirstSide)
			if sizes > 1 && w.Stitches[0] != w.Stitches[1] {
				require.Equal(t, w.Repeats, how.Repeats)
				require.Equal(t, w.Stitches, how.Stitches)
			}
			again, err := back.Write(how)
			require.NoError(t, err)
			if len(p.Repeat) > 0 {
				require.Equal(t, text.String(), again.String())
			}
		}
		// one printed count is wrong in one size
		for range 5 {
			line := g.IntN(len(read.Lines))
			bad, err := Parse(text.String(), w.Terms)
			require.NoError(t, err)
			if len(bad.Lines[line].Count) == 0 {
				continue
			}
			size := g.IntN(bad.Sizes)
			if w.Repeats[min(size, sizes-1)] == 0 {
				continue
			}
			bad.Lines[line].Count[0].N[size] += 1 + g.IntN(3)
			found, err := Check(bad, nil)
			require.NoError(t, err)
			require.NotEmpty(t, found)
			for _, f := range found {
				require.Equal(t, bad.Lines[line].Place, f.Line)
			}
		}
	}
}

// The wave keeps its count with increases and decreases.
func TestWave(t *testing.T) {
	p := panel.Plan{Opening: rows("fsc"), Repeat: rows(wave)}
	require.ErrorIs(t, p.Validate(), row.ErrCount)
}

func TestParseRefuses(t *testing.T) {
	for _, c := range []struct {
		text      string
		line, col int
		read      string
	}{
		{"Row 1: sc in eech st", 1, 14, "eech"},
		{"\nRow 1 (RS): sc in next st, htr in next st", 2, 28, "htr"},
		{"  Row x: sc in next st", 1, 7, "x"},
		{"Rows 5–3: sc in next st", 1, 6, "5–3"},
		{"Row 20 (25: sc in next st", 1, 5, "20 (25"},
		{"Rows 5–6 (5–7): sc in next st", 1, 6, "5–6 (5–7)"},
		{"Row 1: sc in next st — often", 1, 24, "often"},
		{"Row 1: sc in next st — 12 knots", 1, 24, "12 knots"},
		{"Row 1: sc in next st — 12 ch-x sps", 1, 24, "12 ch-x sps"},
		{"Row 1: sc in next st — sts", 1, 24, "sts"},
		{"Rep Rows 5–3 2 more times", 1, 1, "5–3 2 more times"},
		{"Rep Row 5 3 times", 1, 1, "5 3 times"},
		{"Rep Row 5 a total of 3 more times", 1, 1, "5 a total of 3 more times"},
		{"Rep Row 5 once", 1, 1, "5 once"},
		{"Rows 4–8: Rep Rows 2–3", 1, 11, "2–3"},
		{"Rows 4–9: Rep Rows 2–3 2 more times", 1, 11, "2–3 2 more times"},
		{"Rep Rows 2 and 5 2 more times", 1, 1, "2 and 5 2 more times"},
		{"Next x rows: sc in each st across", 1, 6, "x rows"},
		{"Next 5 times: sc in each st across", 1, 6, "5 times"},
		{"Rep Row 5 often", 1, 1, "5 often"},
		{"Rep Row 0 2 more times", 1, 1, "0 2 more times"},
		{"Rep Row 999999999 2 more times", 1, 1, "999999999 2 more times"},
		{"The last row, Row 5", 1, 1, "5"},
		{"The last row, Row x, is worked on RS", 1, 1, "x"},
		{"The last row, Row 5, is worked on top", 1, 1, "top"},
		{"The last row, Row 5 (6), is worked on RS (WS, RS)", 1, 1, "5 (6)"},
		{"The last row, Row 5 (6, 7), is worked on RS (WS)", 1, 1, "RS (WS)"},
		{"Ch 12", 1, 1, ""},
		{"Row 1: " + strings.Repeat("sc 1, ", 3000), 1, 1, "more than 10000 characters"},
	} {
		t.Run(c.text[:min(len(c.text), 40)], func(t *testing.T) {
			_, err := Parse(c.text, row.US)
			var s *row.SyntaxError
			require.ErrorAs(t, err, &s)
			require.Equal(t, c.line, s.Line)
			require.Equal(t, c.col, s.Col, "%v", err)
			require.Equal(t, c.read, s.Read)
			require.NotEmpty(t, s.Want)
		})
	}
	_, err := Parse("Rows 4-140: Rep Rows 2 and 3.", row.US)
	require.EqualError(t, err, `row: line 1, column 13: read "2 and 3", want a label of whole repeats: it has 137 rows, and these are 2`)
	_, err = Parse(strings.Repeat("x", maxText+1), row.US)
	require.ErrorIs(t, err, gauge.ErrBounds)
	for text, want := range map[string]string{
		"Row 1: sc in next 2 (3) sts. 2 (3, 4) sts":                           "line 1: got 2 sizes, want 3 sizes, as elsewhere",
		"Row 1: sc in each st across. 2 (3, 4) sts\nRow 2: sc 3. 2 (3) sts":   "line 2.values: got 2, want 1 or 3",
		"Row 1: sc 1. 2 (3, 4) sts\nThe last row, Row 1 (2), is worked on WS": "line 2.values: got 2, want 1 or 3",
	} {
		got, err := Parse(text, row.US)
		require.EqualError(t, err, want)
		require.Empty(t, got.Lines)
	}
	_, err = Parse("Row 1: sc 1", 9)
	require.Error(t, err)
	_, err = Check(Text{Sizes: 2}, grade.Run[int]{1, 2, 3})
	require.EqualError(t, err, "begin.values: got 3, want 1 or 2")
	found, err := Check(Text{}, nil)
	require.NoError(t, err)
	require.Empty(t, found)
}

// Repeats of whole garments cost nothing: passes that change nothing are counted,
// not worked; and what can't be is refused.
func TestCheckBounds(t *testing.T) {
	text, err := Parse("Row 1: sc in each st across\nRep Row 1 99998 more times\nRow 100000: sc in each st across. 20 sts", row.US)
	require.NoError(t, err)
	found, err := Check(text, grade.Run[int]{20})
	require.NoError(t, err)
	require.Empty(t, found)
	text, err = Parse("Row 1: sc in first st, sc in each st across\nRow 2: 2 sc in first st, sc2tog, sc in each st across\nRow 3: 2 sc in first st, sc in each st across\nRep Rows 1–3 49999 more times", row.US)
	require.NoError(t, err)
	_, err = Check(text, grade.Run[int]{5000})
	require.ErrorIs(t, err, gauge.ErrBounds)
}

func TestPlanRefuses(t *testing.T) {
	for text, want := range map[string]string{
		"":                            "Text.Lines: got no foundation row or chain, want one to begin with",
		"Row 1: sc in each st across": "Text.Lines: got no foundation row or chain, want one to begin with",
		"Row 1: fsc":                  "Row.Items[0].Count: got no number, want the number of stitches or chains to begin",
		"Row 1: fsc 9\nRow 2: sc in each st across\nRep Row 2 2 more times\nRow 5: sc in each st across\nRep Row 5 2 more times": "line 5: got a second stretch of rows worked again, want one repeat",
		"Row 1: fsc 9\nRow 2: sc in each st across\nRow 3: sc in each st across\nRep Row 2 2 more times":                         "line 4: got rows to 2 worked again after row 3, want a repeat that ends with the row before it",
	} {
		read, err := Parse(text, row.US)
		require.NoError(t, err)
		_, _, err = read.Plan()
		require.EqualError(t, err, want)
	}
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{
		"Ch 66 (66, 70, 74)\nRow 1 (RS): hdc in 3rd ch from hook (skipped chs do not count), hdc in each ch across. 64 (64, 68, 72) sts.",
		"Rows 2–5: hdc in each st across. (64 (64, 68, 72) sts)\nRep Rows 2–5 3 (4, 5, 6) more times.",
		"Work Rows 2–3 a total of 0 (1, 2) times; 0: skip these rows in that size.\nRow 2: sc in each st across — 55 dc, 54 ch-2 sps",
		"The last row, Row 20 (25), is worked on WS (RS).",
	} {
		f.Add(s, false)
	}
	f.Fuzz(func(t *testing.T, s string, uk bool) {
		terms := row.US
		if uk {
			terms = row.UK
		}
		read, err := Parse(s, terms)
		if err != nil {
			return
		}
		_, _ = Check(read, grade.Run[int]{24})
		_, _, _ = read.Plan()
		again, err := Parse(read.String(), terms)
		require.NoError(t, err, "%s", read)
		require.Equal(t, read.String(), again.String())
	})
}

// Worked examples I01, I02, I09, I12, I15 and I16 (company and designers' pages):
// the smallest size outside the brackets, long lists in bracket groups, a lone
// number for all sizes, sizes inside a row and counts in brackets at its end.
func TestConventions(t *testing.T) {
	for text, want := range map[string]string{
		"Row 1 (RS): sc 7 (8, 9), ch 1, sk 1, sc 2. (10 (11, 12) sts).": "Row 1 (RS): sc in next 7 (8, 9) sts, ch 1, sk 1, sc in next 2 sts. — 10 (11, 12) sts\n",
		"Row 1: fsc 1 (2, 3, 4) [5, 6, 7] (8, 9, 10)":                   "Row 1: fsc 1 (2, 3, 4) [5, 6, 7] (8, 9, 10).\n",
		"Row 1: Fsc 100 (112, 120, 128).":                               "Row 1: fsc 100 (112, 120, 128).\n",
		"Row 2, RS facing: sc in each st across – 24 sts":               "Row 2, RS facing: sc in each st across. — 24 sts\n",
		"Next row (wrong side): sc in each st across [24 sts total]":    "Next row (wrong side): sc in each st across. — 24 sts\n",
		"Foundation row: fsc 12. 12 stitches.":                          "Foundation row: fsc 12. — 12 sts\n",
		"Rep rows 3 to 6 2 more times":                                  "Rep Rows 3–6 2 more times.\n",
		"Repeat Row 3 once more":                                        "Rep Row 3 1 more time.\n",
		"Repeat Rows 2 and 3 8 times more":                              "Rep Rows 2–3 8 more times.\n",
		"Repeat Rows 2-3, four more times":                              "Rep Rows 2–3 4 more times.\n",
		"Rows 4-11: Rep Rows 2-3.":                                      "Rows 4-11: Rep Rows 2–3 4 more times.\n",
		"Row 4: Same as Row 2. (20 sts)":                                "Row 4: Rep Row 2 1 more time. — 20 sts\n",
		"Row 2 (dec row): sc2tog, sc in each st across":                 "Row 2 (dec row): sc2tog, sc in each st across.\n",
		"Next 5 rows: sc in each st across":                             "Next 5 rows: sc in each st across.\n",
		"Row 1: dc 3, ch 2, dc 3 (6 dc and 1 ch-2 space)":               "Row 1: dc in next 3 sts, ch 2, dc in next 3 sts. — 6 dc, 1 ch-2 sps\n",
		"Row 1: dc 3, ch 2, dc 3 — 6 dc, 1 ch-2 sp":                     "Row 1: dc in next 3 sts, ch 2, dc in next 3 sts. — 6 dc, 1 ch-2 sps\n",
	} {
		read, err := Parse(text, row.US)
		require.NoError(t, err, "%s", text)
		require.Equal(t, want, read.String())
		again, err := Parse(read.String(), row.US)
		require.NoError(t, err)
		require.Equal(t, want, again.String())
	}
	uk, err := Parse("Row 1: *tr in next st, ch 1, miss 1; rep from * across — 12 tr, 12 ch sps", row.UK)
	require.NoError(t, err)
	require.Equal(t, "Row 1: *tr in next st, ch 1, miss 1; rep from * across. — 12 tr, 12 ch sps\n", uk.String())
	found, err := Check(uk, grade.Run[int]{24})
	require.NoError(t, err)
	require.Empty(t, found)
}
