package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Invented rows, in the ways in which they are usually written (common practice, no
// source). Each is right; with another count in the row after them it is not.
func TestRowsAgain(t *testing.T) {
	const two = "Row 1: Fhdc 40. (40 hdc)\nRow 2: Ch 1, hdc in each st across. (40 hdc)\n"
	for _, again := range []string{
		"Repeat the last row 18 more times.", "Rep last row 18 times.", "Repeat previous row 18 times", "Repeat this row 18 times.",
		"Repeat Row 2 eighteen times.", "Rep Row 2 18 times.", "Rep Row 2 19 times.", "3rd to 20th rows: Rep 2nd row.", "Rows 3-20 Rep Row 2.",
		"Rows 3-20: Repeat last row.", "R3-20: Rep R2.", "Row 3-Row 20: Rep Row 2.", "Row 3-Row 20: Ch 1, hdc in each st across.",
		"Rows 3-20: Rep Row 2 18 times.", "Rows 3-20: Rep Row 2. Change to B in last st.", "Rows 3-20: Rep Row 2, changing to A at end of last row.",
		"Rows 3-20: Rep Row 2 in A.", "Rows 3-20: Rep Row 2. Fasten off A.", "Row 3: Rep Row 2.\nRepeat the last 2 rows 8 times.\nRow 20: Rep Row 2.",
		"Work even for 18 rows.", "Work 18 rows even.", "Continue in hdc for 18 more rows.", "Cont as set for 18 rows.", "Continue in pattern through Row 20.",
	} {
		text := two + again + "\nRow 21: Ch 1, sc in each st across. (40 sc)\nRow 22: Ch 1, sc in each st across. (40 sc)"
		code, out, errs := cli(text)
		require.Empty(t, errs+out, again)
		require.Zero(t, code)
		_, out, _ = cli(strings.TrimSuffix(text, "40 sc)") + "41 sc)")
		require.NotEmpty(t, out, again)
		if !strings.HasPrefix(again, "Work") && !strings.HasPrefix(again, "Con") {
			_, out, _ = cli(strings.NewReplacer("Row 21:", "Row 23:", "Row 22:", "Row 24:").Replace(text))
			require.NotEmpty(t, out, again)
		}
	}
	runLines(t, silent(
		"Sizes: S (M, L)\nRow 1: Fhdc 32 (36, 40). 32 (36, 40) hdc\nRow 2: Ch 1, hdc in each st across.\nRows 3-63 (70, 77): Rep Row 2. 32 (36, 40) hdc\nRow 64 (71, 78): Ch 1, sc in each st across.",
		"Sizes: S (M, L)\nRow 1: Fhdc 32 (36, 40). 32 (36, 40) hdc\nRows 2-63 (70, 77): Ch 1, hdc in each st across. 32 (36, 40) hdc\nRow 64 (71, 78): Ch 1, sc in each st across.",
		"Sizes: S (M, L)\n"+two+"Rep Row 2 10 (12, 14) times.\nRow 13 (15, 17): Ch 1, sc in each st across. (40 sc)",
		"Sizes: S (M, L)\n"+two+"Rep Row 2 10 (12, 14) times.\nRow 12 (14, 16): Ch 1, sc in each st across. (40 sc)",
		"Row 1: Fsc 13.\nRow 2: Ch 1, 5 sc; 3 dc; 5 sc.",
		two+"Note: the rows are worked back and forth.\nRows 3-20: Rep Row 2.",
	))
	runLines(t, []lineCase{
		{"rows by size", "Sizes: S (M, L)\nRow 1: Fhdc 32 (36, 40).\nRow 2: Ch 1, hdc in each st across.\nRows 3-63 (70, 77): Rep Row 2.\nRow 64 (72, 78): Ch 1, sc in each st across.", "line 4, size M: got 68 times, want 69 times: the rows after it are numbered so: row 72, not 71\n"},
		{"a note is no row", two + "Note: the rows are worked back and forth.\nRow 3: Ch 1, hdc in each st across. (41 hdc)", "line 4, Row 3: got 41, want 40: the row makes 40\n"},
		{"nor is what leads to one", two + "Continue as follows:\nNext row: Ch 1, hdc in each st across. (41 hdc)", "line 4, Next row: got 41, want 40: the row makes 40\n"},
		{"nor what rows form", two + "Rows 1 and 2 form the pattern.\nNext row: Ch 1, hdc in each st across. (41 hdc)", "line 4, Next row: got 41, want 40: the row makes 40\n"},
		{"a chain in words", "UK terms\nWith 5 mm hook make 81 ch.\n1st row: 1 htr into 2nd ch from hook, 1 htr into each ch to end. 81 sts.", "line 3, Row 1: got 81, want 80: the row makes 80\n"},
		{"once more is not 18 times", two + "Repeat last row once.\nRow 21: Ch 1, sc in each st across.", "line 3: got 1 time, want 18 times: the rows after it are numbered so: row 21, not 4\n"},
		{"stitches left", two + "Row 3: Ch 1, hdc across to last 5 sts, turn. (35 hdc)\nRow 4: Ch 1, hdc across. (36 hdc)", "line 4, Row 4: got 36, want 35: the row makes 35\n"},
	})
	_, _, errs := cli("Row 1: Fhdc 40.\nRow 2: Ch 1, hdc in each st across.\nRow 3: Ch 1, sc in each st across.\nRows 4-140: Rep Rows 2 and 3.")
	require.Equal(t, "line 4: not checked: column 22: read \"2 and 3\", want a label of whole repeats: it has 137 rows, and these are 2\n", errs)
}

// Invented rows over a chain that does not say whether the chains before its
// first stitch count.
func TestHooked(t *testing.T) {
	runLines(t, silent(
		"Row 1: Ch 92, dc in 4th ch from hook and in each ch across. (90 dc)",
		"Row 1: Ch 92, dc in 4th ch from hook and in each ch across. (89 dc)",
		"Row 1: Ch 41, hdc in 3rd ch from hook, hdc in each ch across. (40 hdc)",
		"Row 1: Ch 42, hdc in 3rd ch from hook, hdc in each ch across. (40 hdc)",
		"Row 1: Ch 42, hdc in third ch from hook, hdc in each ch across.\nRow 2: Ch 1, hdc in each st across. (40 hdc)",
		"Row 1: Ch 42, hdc in 3rd ch from hook, hdc in each ch across.\nRow 2: Ch 1, hdc in each st across. (41 hdc)",
		"Row 1: Ch 46, dc in 6th ch from hook, *ch 1, sk 1, dc in next ch; rep from * across. (22 dc, 21 ch-1 sps)",
		"Ch 42.\nRow 1: Dc in 4th ch from hook, dc in each ch across. 40 dc",
	))
	runLines(t, []lineCase{
		{"neither", "Row 1: Ch 92, dc in 4th ch from hook and in each ch across. (91 dc)", "line 1, Row 1: got 91, want 90: the row makes 90\n"},
		{"the row after it", "Row 1: Ch 42, hdc in 3rd ch from hook, hdc in each ch across.\nRow 2: Ch 1, hdc in each st across. (43 hdc)", "line 2, Row 2: got 43, want 41: the row makes 41\n"},
		{"in UK terms", "UK terms\nSizes: S (M)\nCh 42 (44).\nRow 1: tr in 4th ch from hook, tr in each ch across. 40 (42) tr\nRow 2: 1 ch, dc in each st across. 40 (43) dc", "line 5, Row 2, size M: got 43, want 42: the row makes 42\n"},
	})
}

// Invented ends and beginnings of rows and of rounds, and ways to print a count.
// Each is right with 20, and wrong with 21.
func TestRowEnds(t *testing.T) {
	for _, row := range []string{
		"Ch 1, sc in each st around, join. (20 sc)", "Ch 1, sc in each st around, join with sl st to first sc. (20 sc)", "Ch 1, sc in each st around. Join with a sl st. (20 sc)",
		"Ch 1, sc in each st around, sl st to first sc to join. (20 sc)", "Ch 1, sc in each st around; join with sl st in first sc - 20 sc", "Ch 1, sc around. 20 sc",
		"Ch 1, sc in each st across. Fasten off. 20 sc", "Ch 1, sc in each st across. 20 sc. Fasten off, leaving an 18 in (45.5 cm) tail.", "Join yarn, ch 1, sc in each st across. 20 sc",
		"Join B with sl st in first st, ch 1, sc in each st across. 20 sc",
		"Ch 1, sc in each st across; turn -- 20 sc.", "Ch 1, sc in each st across; 20 sts.", "Ch 1, sc in each st across (20 sc), turn.", "Ch 1. 1 sc in each st to end of row. 20 sc. Turn.",
		"Ch 1, sc in each st across. Total: 20 sts", "1 ch, sc in each st to end. 20 sc", "Ch 1, sc to last 2 sts, sc in last 2 sts. 20 sc", "Ch 1 and turn, sc in each st across. 20 sc",
		"Ch 3 (counts as 1st dc), dc in each st across. 20 dc", "Ch 2 (not counted as a st), hdc in each st across. 20 hdc",
		"Ch 1, [sc2tog] 20 times. 20 sc", "Ch 1, sc2tog across. 20 sc", "Ch 1, sc in next 20 sts, leaving 20 sts unworked. 20 sc",
	} {
		sts := "20"
		if strings.Contains(row, "2tog") || strings.Contains(row, "unworked") {
			sts = "40"
		}
		text := "Row 1: Fsc " + sts + ".\nRow 2: " + row
		code, out, errs := cli(text)
		require.Empty(t, errs+out, row)
		require.Zero(t, code)
		at := strings.LastIndex(text, "20 ")
		_, out, _ = cli(text[:at] + "21 " + text[at+3:])
		require.Contains(t, out, "line 2, Row 2: got 21, want 20", row)
	}
	runLines(t, []lineCase{
		{"a new colour and a count", "Row 1: Fsc 20.\nRow 2: Sc in each st across, changing to B in last st - 21 sc", "line 2, Row 2: got 21, want 20: the row makes 20\n"},
		{"a space after a chain on the first stitch", "Row 1: Fdc 22. (22 dc)\nRow 2: Ch 5 (counts as dc, ch 2), sk first st, sk 2 sts, dc in next st, *ch 2, sk 2, dc in next st; rep from * across. (9 dc, 7 ch-2 sps)", "line 2, Row 2: got 9 dc, want 8: the row makes 8\n"},
		{"the side after the label", "1st row: (Right side). Fsc 20. 20 sc\n2nd row: (Right side). 1 ch. 1 sc in each st. 20 sc", ""},
	})
}
