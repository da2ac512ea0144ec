package proof_test

import (
	"fmt"

	"example.com/panelmath/grade"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/proof"
	"example.com/panelmath/panel/row"
)

// The faults on one page: what a maker would write to the designer about.
func ExampleCheck() {
	text, err := proof.Parse(`Ch 66 (70, 74)
Row 1 (RS): hdc in 3rd ch from hook (skipped chs do not count), hdc in each ch across. 64 (68, 73) sts.
Row 2: dc in first st, *ch 2, sk 2, dc in next st; rep from * across. 22 (23, 25) dc, 21 (22, 24) ch-2 sps.
Row 3: hdc in each st and 2 hdc in each ch-2 sp across. 64 (70, 73) sts.
Rows 4–6: hdc in each st across.
Rep Rows 2–6 3 (3, 4) more times.
Row 22 (22, 27): hdc in each st across. 64 (70, 73) sts.
`, row.US)
	if err != nil {
		fmt.Println(err)
		return
	}
	found, err := proof.Check(text, nil)
	for _, f := range found {
		fmt.Println(f)
	}
	fmt.Println(err)
	// Output:
	// line 2, Row 1 (RS), size 3: makes 72, printed 73
	// line 3, Row 2, size 2: uses 67 of 68, 1 left over (2 short of one more repeat)
	// line 3, Row 2, size 3: uses 70 of 72, 2 left over (1 short of one more repeat)
	// <nil>
}

// A correct text gives no finding: here the question was whether 35 stitches,
// increased at each end nine times, are 53.
func ExampleCheck_falseAlarm() {
	text, _ := proof.Parse(`Row 1: 2 sc in first st, sc in each st to last st, 2 sc in last st
Rows 2–4: sc in each st across
Rep Rows 1–4 8 more times — 53 sts`, row.US)
	found, err := proof.Check(text, grade.Run[int]{35})
	fmt.Println(len(found), err)
	// Output: 0 <nil>
}

// The pieces of one pattern share what may be worked in all.
func ExampleCheckWithin() {
	left := 1000
	for _, piece := range []string{"Row 1: fsc 20. 20 sts\nRow 2: sc in each st across. 21 sts", "Row 1: fsc 900\nRow 2: sc in each st across", "Row 1: fsc 999\nRow 2: sc in each st across"} {
		text, _ := proof.Parse(piece, row.US)
		var found []proof.Finding
		var err error
		found, left, err = proof.CheckWithin(text, nil, left)
		fmt.Println(len(found), err)
	}
	// Output:
	// 1 <nil>
	// 0 <nil>
	// 0 Text: got more than 76 places to work, want fewer rows or repeats
}

func ExampleParse() {
	text, err := proof.Parse("Row 1 (RS): Dc in each st across (20 (24) sts)\nRows 2-4: HDC in each st across. 20 (24) sts", row.US)
	fmt.Print(text.String(), err, "\n")
	_, err = proof.Parse("Row 1: sc in each st across\nRow 2: htr in each st across", row.US)
	fmt.Println(err)
	// Output:
	// Row 1 (RS): dc in each st across. — 20 (24) sts
	// Rows 2-4: hdc in each st across. — 20 (24) sts
	// <nil>
	// row: line 2, column 8: read "htr", want US terms as in the rest of the row: this is UK for hdc
}

func ExampleText_String() {
	text, _ := proof.Parse("Row 1: sc in each st across, turn. (20 sts)", row.US)
	fmt.Print(text.String())
	// Output: Row 1: sc in each st across. — 20 sts
}

// What a plan writes is read back as the plan.
func ExampleText_Plan() {
	p := panel.Plan{
		Opening: []row.Row{row.Must("fsc", row.US)},
		Repeat:  []row.Row{row.Must("dc in each st across", row.US), row.Must("sc in each st across", row.US)},
	}
	in, _ := p.Write(panel.Writing{Stitches: grade.Run[int]{20, 24}, Repeats: grade.Run[int]{4, 5}})
	text, _ := proof.Parse(in.String(), row.US)
	back, w, err := text.Plan()
	fmt.Println(back.Opening, back.Repeat, w.Stitches, w.Repeats, err)
	// Output: [fsc] [dc in each st across sc in each st across] [20 24] [4 5] <nil>
}

func ExampleFinding_String() {
	fmt.Println(proof.Finding{Line: 4, Label: "Row 3", Size: 1, Kind: proof.KindMakes, Why: "makes 68, printed 70"})
	// Output: line 4, Row 3, size 2: makes 68, printed 70
}

func ExampleText_Validate() {
	text, _ := proof.Parse("Row 1: fhdc 10 (12). 10 (12) sts.", row.US)
	fmt.Println(text.Validate())
	text.Sizes = 3
	fmt.Println(text.Validate())
	// Output:
	// <nil>
	// line 1: got 2 in from, want one for each of 3 sizes
}
