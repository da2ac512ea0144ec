package panel_test

import (
	"encoding/json"
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/row"
)

func rows(texts ...string) []row.Row {
	out := make([]row.Row, len(texts))
	for i, s := range texts {
		out[i] = row.Must(s, row.US)
	}
	return out
}

func length(s string) gauge.Measurement { return gauge.MustLength(s).Measurement() }

// wrap is the fabric of an invented garment: bands of plain rows with a lace row
// between them.
func wrap() panel.Plan {
	const (
		plain = "hdc in each st across"
		lace  = "dc in first st, *ch 2, sk 2, dc in next st; rep from * across"
		fill  = "hdc in each st and 2 hdc in each ch-2 sp across"
	)
	return panel.Plan{
		Opening: rows("fhdc", plain, lace, fill),
		Repeat:  rows(plain, plain, plain, lace, fill),
		Closing: rows(plain),
	}
}

// From a gauge and the finished measures of four sizes to the written rows.
func Example_sizes() {
	g := gauge.MustGauge("13 sts and 9 rows = 4 in")
	var stitches, repeats grade.Run[int]
	for _, size := range [][2]string{{"50 in", "10 in"}, {"51 in", "12 1/4 in"}, {"52 in", "14 1/4 in"}, {"53 in", "17 in"}} {
		p, err := wrap().Panel(length(size[0]), length(size[1]), g)
		if err != nil {
			fmt.Println(err)
			return
		}
		stitches, repeats = append(stitches, p.Stitches.Value), append(repeats, p.Repeats)
	}
	in, err := wrap().Write(panel.Writing{Stitches: stitches, Repeats: repeats})
	fmt.Print(in.String(), err)
	// Output:
	// Row 1 (RS): fhdc 163 (166, 169, 172). — 163 (166, 169, 172) sts
	// Row 2: hdc in each st across. — 163 (166, 169, 172) sts
	// Row 3: dc in first st, *ch 2, sk 2, dc in next st; rep from * across. — 55 (56, 57, 58) dc, 54 (55, 56, 57) ch-2 sps
	// Row 4: hdc in each st and 2 hdc in each ch-2 sp across. — 163 (166, 169, 172) sts
	// Rows 5–7: hdc in each st across. — 163 (166, 169, 172) sts
	// Row 8: dc in first st, *ch 2, sk 2, dc in next st; rep from * across. — 55 (56, 57, 58) dc, 54 (55, 56, 57) ch-2 sps
	// Row 9: hdc in each st and 2 hdc in each ch-2 sp across. — 163 (166, 169, 172) sts
	// Rep Rows 5–9 3 (4, 4, 6) more times.
	// Row 25 (30, 30, 40): hdc in each st across. — 163 (166, 169, 172) sts
	// The last row, Row 25 (30, 30, 40), is worked on RS (WS, WS, WS).
	// <nil>
}

func ExamplePlan_Legal() {
	fmt.Println(wrap().Legal())
	// Output: multiple of 3 + 1, at least 4 <nil>
}

// The mistakes of a plan are found before anything is printed.
func ExamplePlan_Validate() {
	p := wrap()
	p.Repeat[0] = row.Must("hdc in each st to last st, 2 hdc in last st", row.US)
	fmt.Println(p.Validate())
	p = wrap()
	p.Repeat = p.Repeat[:4]
	fmt.Println(p.Validate())
	// Output:
	// repeat[0] "hdc in each st to last st, 2 hdc in last st": makes 5 where the count to keep is 4
	// repeat[0] "hdc in each st across", worked for the 2nd time: place 2 is a ch-2 sp and the row works a st there: the ch-2 sps would stay unworked; work into them or skip them (sk next ch-2 sp)
}

func ExamplePlan_Fit() {
	g := gauge.MustGauge("13 sts and 9 rows = 4 in")
	for _, width := range []string{"10 in", "11 in", "12 1/4 in", "14 1/4 in"} {
		rows, repeats, _ := wrap().Fit(length(width), g.Rows)
		fmt.Println(width, "is", rows.Exact.Decimal(4), "rows:", rows.Below, "or", rows.Above, "tie", rows.Tie, "→", rows.Value, "in", repeats, "repeats")
	}
	// Output:
	// 10 in is 22.5 rows: 20 or 25 tie true → 25 in 4 repeats
	// 11 in is 24.75 rows: 20 or 25 tie false → 25 in 4 repeats
	// 12 1/4 in is 27.5625 rows: 25 or 30 tie false → 30 in 5 repeats
	// 14 1/4 in is 32.0625 rows: 30 or 35 tie false → 30 in 5 repeats
}

func ExamplePlan_Panel() {
	p, err := wrap().Panel(length("50 in"), length("12 1/4 in"), gauge.MustGauge("13 sts and 9 rows = 4 in"))
	fmt.Println(p.Stitches.Value, "sts", p.Rows.Value, "rows", p.Repeats, "repeats", err)
	fmt.Println(p.Length.In(gauge.Inch).Text(2), "in by", p.Width.In(gauge.Inch).Text(2), "in")
	// Output:
	// 163 sts 30 rows 5 repeats <nil>
	// 50.15 in by 13.33 in
}

// A solved plan is kept as its plan, and solved again when it is read.
func ExampleSolved_UnmarshalJSON() {
	s, _ := wrap().Solve()
	text, _ := json.Marshal(s)
	var back panel.Solved
	err := json.Unmarshal(text, &back)
	fmt.Println(back.Legal, err)
	err = json.Unmarshal([]byte(`{"plan":{"opening":["fhdc"]},"legal":"even"}`), &back)
	fmt.Println(err)
	// Output:
	// multiple of 3 + 1, at least 4 <nil>
	// Solved.Legal: got even, want any, at least 1 by the plan
}

// A repeat measured on the piece: whole repeats nearest to 14 in, and the miss.
func ExamplePlan_FitHeight() {
	hem := panel.Plan{Opening: rows("fsc", "sc in each st across"), Repeat: rows("dc in each st across", "sc in each st across")}
	h := panel.Height{Once: length("1 in"), Repeat: length("4.3 in")}
	c, err := hem.FitHeight(length("15 in"), h)
	fmt.Println(c.Value, "repeats,", h.Of(c.Value).In(gauge.Inch).Decimal(1), "in;", c.Deviation().In(gauge.Inch).Decimal(1), "in off", err)
	// Output: 3 repeats, 13.9 in; -1.1 in off <nil>
}

func ExampleHeight_Of() {
	h := panel.Height{Once: length("2 cm"), Repeat: length("5 cm")}
	fmt.Println(h.Of(4))
	// Output: 220 mm
}

// Rows are as high as their highest stitch.
func ExamplePlan_Heights() {
	h, err := wrap().Heights(
		panel.StitchHeight{Stitch: row.HalfDoubleCrochet, Height: length("1 cm")},
		panel.StitchHeight{Stitch: row.DoubleCrochet, Height: length("14 mm")},
	)
	fmt.Println(h.Once, h.Repeat, err)
	_, err = wrap().Heights(panel.StitchHeight{Stitch: row.HalfDoubleCrochet, Height: length("1 cm")})
	fmt.Println(err)
	// Output:
	// 54 mm 54 mm <nil>
	// heights for opening[2]: got none for dc, want the height of a row of dc
}

func ExamplePlan_Rows() {
	for k := range 4 {
		fmt.Print(wrap().Rows(k), " ")
	}
	// Output: 5 10 15 20
}

func ExamplePlan_Left() {
	fmt.Println(wrap().Left(3, 8), "rows to go")
	// Output: 12 rows to go
}

func ExamplePlan_At() {
	s, ok := wrap().At(3, 13)
	fmt.Println(s.Part, s.Index, s.Pass, s.Side, ok)
	_, ok = wrap().At(3, 21)
	fmt.Println(ok)
	// Output:
	// repeat 3 2 RS true
	// false
}

// Where sizes have odd and even numbers of rows, they end on different sides.
func ExamplePlan_End() {
	for _, k := range []int{3, 4, 5} {
		s := wrap().End(k)
		fmt.Println(s.Number, s.Part, s.Side)
	}
	// Output:
	// 20 closing WS
	// 25 closing RS
	// 30 closing WS
}

func ExamplePlan_Steps() {
	p := panel.Plan{Opening: rows("fsc"), Repeat: rows("dc in first st, *ch 1, sk 1, dc in next st; rep from * across", "sc in each st and in each ch-1 sp across")}
	steps, err := p.Steps(9, 1)
	for _, s := range steps {
		fmt.Println(s.Number, s.Side, s.Part, s.Made.Stitches, "sts", s.Made.Spaces, "ch-sps")
	}
	fmt.Println(err)
	// Output:
	// 1 RS opening 9 sts 0 ch-sps
	// 2 WS repeat 5 sts 4 ch-sps
	// 3 RS repeat 9 sts 0 ch-sps
	// <nil>
}

func ExamplePlan_Tally() {
	t, err := wrap().Tally(163, 3)
	fmt.Println(t.Stitches, "sts:", t.Of(row.FoundationHalfDouble), "fhdc,", t.Of(row.HalfDoubleCrochet), "hdc,", t.Of(row.DoubleCrochet), "dc;", t.Chains, "ch", err)
	// Output: 2828 sts: 163 fhdc, 2445 hdc, 220 dc; 432 ch <nil>
}

func ExamplePlan_Mirrored() {
	p := wrap()
	fmt.Println(p.Mirrored(3))
	p.Closing = nil
	fmt.Println(p.Mirrored(3))
	// Output:
	// true <nil>
	// false <nil>
}

func ExamplePlan_Mirror() {
	p := wrap()
	p.Closing = nil
	m, ok, err := p.Mirror()
	fmt.Println(m.Closing, ok, err)
	// Output: [hdc in each st across] true <nil>
}

func ExamplePlan_Unfinished() {
	half, err := wrap().Unfinished(2)
	fmt.Println(half.Rows(0), half.Rows(3), err)
	_, err = wrap().Unfinished(4)
	fmt.Println(err)
	// Output:
	// 7 22 <nil>
	// closing[4] "hdc in each st across": place 2 is a ch-2 sp and the row works a st there: the ch-2 sps would stay unworked; work into them or skip them (sk next ch-2 sp)
}

func ExamplePlan_FitUnfinished() {
	p, rows, repeats, err := wrap().FitUnfinished(length("12 1/4 in"), gauge.MustGauge("13 sts and 9 rows = 4 in").Rows)
	fmt.Println(rows.Value, "rows:", repeats, "repeats and", len(p.Closing)-1, "rows of another", err)
	// Output: 28 rows: 4 repeats and 3 rows of another <nil>
}

func ExamplePlan_Sizes() {
	p := panel.Plan{Opening: rows("fsc 20 (24, 28)")}
	fmt.Println(p.Sizes())
	// Output: 3
}

func ExamplePlan_Size() {
	p := panel.Plan{Opening: rows("fsc 20 (24, 28)", "sc in next 20 (24, 28) sts")}
	fmt.Println(p.Size(1).Legal())
	_, err := p.Legal()
	fmt.Println(err)
	// Output:
	// multiple of 100000 + 24, at least 24 <nil>
	// Plan: got lists of 3 sizes, want the plan of one size: see Size
}

// A size without repeats skips them, and its closing rows have their own
// numbers.
func ExamplePlan_Write() {
	p := panel.Plan{Opening: rows("fsc"), Repeat: rows("dc in each st across", "sc in each st across"), Closing: rows("sl st in each st across")}
	in, err := p.Write(panel.Writing{Terms: row.UK, Stitches: grade.Run[int]{20, 24, 28}, Repeats: grade.Run[int]{0, 1, 2}})
	fmt.Print(in.String(), err)
	// Output:
	// Row 1 (RS): fdc 20 (24, 28). — 20 (24, 28) sts
	// Work Rows 2–3 a total of 0 (1, 2) times; 0: skip these rows in that size.
	// Row 2: tr in each st across. — 20 (24, 28) sts
	// Row 3: dc in each st across. — 20 (24, 28) sts
	// Row 2 (4, 6): ss in each st across. — 20 (24, 28) sts
	// The last row, Row 2 (4, 6), is worked on WS.
	// <nil>
}

func ExampleInstructions_String() {
	in, _ := panel.Plan{Opening: rows("fsc", "sc in each st across")}.Write(panel.Writing{Stitches: grade.Run[int]{20}, Repeats: grade.Run[int]{0}})
	fmt.Print(in.String())
	// Output:
	// Row 1 (RS): fsc 20. — 20 sts
	// Row 2: sc in each st across. — 20 sts
	// The last row, Row 2, is worked on WS.
}

func ExampleInstructions_Abbreviations() {
	in, _ := panel.Plan{Opening: rows("fsc", "sc in each st across")}.Write(panel.Writing{Stitches: grade.Run[int]{20}, Repeats: grade.Run[int]{0}})
	for _, a := range in.Abbreviations() {
		fmt.Println(a.Abbr+":", a.Meaning)
	}
	// Output:
	// fsc: foundation single crochet
	// RS: right side
	// sc: single crochet
	// st: stitch
	// WS: wrong side
}

func ExamplePlan_Abbreviations() {
	for _, a := range wrap().Abbreviations(row.UK) {
		fmt.Print(a.Abbr, ", ")
	}
	// Output: *, ch, ch-2 sp, fhtr, htr, rep, st, tr,
}

func ExampleLine_String() {
	fmt.Println(panel.Line{Label: "Row 2", Text: "sc in each st across", Count: "20 sts"})
	// Output: Row 2: sc in each st across. — 20 sts
}

func ExamplePlan_Starts() {
	p := panel.Plan{Opening: rows("fhdc", "hdc in each st across")}
	for s := panel.ChainDoesNotCount; s <= panel.NoChain; s++ {
		fmt.Println(p.Starts(s, row.US)[0])
	}
	// Output:
	// At the start of each row that begins with hdc, ch 2 (does not count as a st); work the first hdc into the first st.
	// At the start of each row that begins with hdc, ch 2: this chain is the first hdc of the row and stands on the first st, so go on with the next st or sp. The last stitch of the row after goes into the top of this chain.
	// Begin the rows without a turning chain: draw the first loop of a row up to the height of its first stitch, and work that stitch into the first st.
}

func ExampleParseRowStart() {
	s, err := panel.ParseRowStart("Chain counts")
	fmt.Println(s, err)
	_, err = panel.ParseRowStart("slip knot")
	fmt.Println(err)
	// Output:
	// chain counts <nil>
	// parse row start: "slip knot": got "slip knot", want chain counts, chain does not count or no chain
}

func ExampleRowStart_String() {
	fmt.Println(panel.NoChain)
	// Output: no chain
}

func ExampleRowStart_MarshalText() {
	b, err := panel.ChainCounts.MarshalText()
	fmt.Println(string(b), err)
	// Output: chain counts <nil>
}

func ExampleRowStart_UnmarshalText() {
	var s panel.RowStart
	fmt.Println(s.UnmarshalText([]byte("no chain")), s)
	// Output: <nil> no chain
}

func ExampleSide_String() {
	fmt.Println(panel.RightSide, panel.WrongSide)
	// Output: RS WS
}

func ExampleSide_MarshalText() {
	b, err := panel.WrongSide.MarshalText()
	fmt.Println(string(b), err)
	// Output: WS <nil>
}

func ExampleSide_UnmarshalText() {
	var s panel.Side
	fmt.Println(s.UnmarshalText([]byte("ws")), s)
	fmt.Println(s.UnmarshalText([]byte("left")))
	// Output:
	// <nil> WS
	// parse side: "left": want RS or WS
}

func ExampleSide_Turned() {
	fmt.Println(panel.RightSide.Turned(1), panel.RightSide.Turned(4))
	// Output: WS RS
}

func ExampleRowError_Error() {
	err := panel.Plan{Opening: rows("fsc 10", "sc in next 11 sts")}.Validate()
	fmt.Println(err)
	// Output: opening[1] "sc in next 11 sts": uses 11 of 10, 1 short
}

func ExampleRowError_Unwrap() {
	err := &panel.RowError{Part: panel.Repeat, Err: row.ErrLeft}
	fmt.Println(err.Unwrap() == row.ErrLeft)
	// Output: true
}

func ExampleSizeError_Error() {
	_, err := wrap().Write(panel.Writing{Stitches: grade.Run[int]{163, 165}, Repeats: grade.Run[int]{3}})
	fmt.Println(err)
	// Output: size 2: got 165 sts, want a multiple of 3 + 1, at least 4
}
