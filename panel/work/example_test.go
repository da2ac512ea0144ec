package work_test

import (
	"encoding/json"
	"fmt"

	"example.com/panelmath/panel/row"
	"example.com/panelmath/panel/work"
)

func rows(texts ...string) []row.Row {
	out := make([]row.Row, len(texts))
	for i, s := range texts {
		out[i] = row.Must(s, row.US)
	}
	return out
}

// A lace row and the row that fills it, at any count.
func ExampleSolve() {
	sol, err := work.Solve(rows(
		"fhdc",
		"dc in first st, *ch 2, sk 2, dc in next st; rep from * across",
		"hdc in each st and 2 hdc in each ch-2 sp across",
	), 0)
	fmt.Println(sol.Rule, err)
	for i := range 3 {
		w := sol.Opening(i, 100)
		fmt.Printf("row %d uses %d places, makes %d sts and %d ch-sps\n", i+1, w.Uses, w.Made.Stitches, w.Made.Spaces)
	}
	// Output:
	// multiple of 3 + 1, at least 4 <nil>
	// row 1 uses 0 places, makes 100 sts and 0 ch-sps
	// row 2 uses 100 places, makes 34 sts and 33 ch-sps
	// row 3 uses 67 places, makes 100 sts and 0 ch-sps
}

// Rows that quarrel: the third needs a multiple of 4 + 1, the fourth an even
// count.
func ExampleSolve_quarrel() {
	_, err := work.Solve(rows(
		"fhdc",
		"hdc in each st across",
		"sc in first st, *ch 3, sk 3, sc in next st; rep from * across",
		"sc in each st and 3 sc in each ch-3 sp across",
		"dc in first 2 sts, *ch 1, sk 1, dc in next st; rep from * across",
	), 0)
	fmt.Println(err)
	// Output: row 5, "dc in first 2 sts, *ch 1, sk 1, dc in next st; rep from * ac"… (64 bytes): uses a multiple of 2, and the rows before (row 3 first) leave a multiple of 4 + 1: no count is both
}

// A triangle grows by two stitches a row; its counts are solved all the same.
func ExampleSolution_Opening() {
	grow := "2 sc in first st, sc in each st to last st, 2 sc in last st"
	sol, _ := work.Solve(rows("fsc", grow, grow, grow), 0)
	fmt.Println(sol.Rule)
	for i := range 4 {
		fmt.Print(sol.Opening(i, 35).Made.Count(), " ")
	}
	// Output:
	// any, at least 3
	// 35 37 39 41
}

func ExampleSolveRepeat() {
	lace := rows("dc in first st, *ch 2, sk 2, dc in next st; rep from * across", "hdc in each st and 2 hdc in each ch-2 sp across")
	sol, err := work.SolveRepeat(rows("fhdc"), lace, rows("hdc in each st across"), 0)
	fmt.Println(sol.Rule, err)
	_, err = work.SolveRepeat(rows("fhdc"), lace[:1], rows("hdc in each st across"), 0)
	fmt.Println(err)
	// Output:
	// multiple of 3 + 1, at least 4 <nil>
	// row 2, "dc in first st, *ch 2, sk 2, dc in next st; rep from * acros"… (61 bytes): place 2 is a ch-2 sp and the row works a st there: the ch-2 sps would stay unworked; work into them or skip them (sk next ch-2 sp)
}

func ExampleSolution_Repeat() {
	lace := rows("dc in first st, *ch 2, sk 2, dc in next st; rep from * across", "hdc in each st and 2 hdc in each ch-2 sp across")
	sol, _ := work.SolveRepeat(rows("fhdc"), lace, nil, 0)
	fmt.Println(sol.Repeat(7, 0, 100).Made.Of(row.DoubleCrochet))
	// Output: 34
}

func ExampleSolution_Closing() {
	sol, _ := work.SolveRepeat(rows("fsc"), rows("sc in each st across"), rows("dc in each st across"), 0)
	fmt.Println(sol.Closing(12, 0, 40).Made.Of(row.DoubleCrochet))
	// Output: 40
}

func ExampleSolution_Chains() {
	sol, _ := work.Solve(rows("ch, hdc in 3rd ch from hook (skipped chs do not count), hdc in each ch across"), 0)
	fmt.Println(sol.Chains(64))
	// Output: 66
}

func ExampleInto() {
	lace := row.Must("dc in first st, *ch 2, sk 2, dc in next st; rep from * across", row.US)
	w, made, err := work.Into(lace, work.Stitches(7), 0)
	fmt.Println(w.Uses, w.Passes, made, made.Count(), err)
	_, _, err = work.Into(lace, work.Stitches(9), 0)
	fmt.Println(err)
	// Output:
	// 7 2 [st ch-2 sp st ch-2 sp st] 7 <nil>
	// row 1, "dc in first st, *ch 2, sk 2, dc in next st; rep from * acros"… (61 bytes): uses 7 of 9, 2 left over (1 short of one more repeat)
}

// The stitches and the spaces of a mesh, each by their kind.
func ExamplePassOver() {
	mesh := work.Places{0, 1, 0, 1, 0}
	for _, s := range []string{"sc in each dc across", "2 sc in each ch-1 sp across", "dc in first st, *ch 2, dc in next dc; rep from * across"} {
		r, named, _ := row.ParseNamed(s, row.US)
		kept, ok := work.PassOver(r, mesh, 0)
		fmt.Println(named, kept, ok)
	}
	_, ok := work.PassOver(row.Must("sc in next 2 ch-2 sps", row.US), mesh, 0)
	fmt.Println(ok)
	// Output:
	// true [st st st] true
	// true [ch-1 sp ch-1 sp] true
	// true [st st st] true
	// false
}

func ExampleSumOf() {
	for _, s := range []string{
		"sc in next 3 sts, sc2tog, sc in next 6 sts, sc2tog, sc in next st",
		"dc in first st, *ch 2, sk 2, dc in next st; rep from * across",
		"*sc in next st, 2 sc in next st; rep from * across",
		"hdc in each st and 2 hdc in each ch-2 sp across",
	} {
		sum, _ := work.SumOf(row.Must(s, row.US), 0)
		fmt.Println(sum)
	}
	// Output:
	// uses 14, makes 12
	// uses 1 + 3n, makes 1 + 3n
	// uses 2n, makes 3n
	// for each st uses 1, makes 1; for each ch-2 sp uses 1, makes 2
}

func ExampleSum_String() {
	fmt.Println(work.Sum{Uses: 1, Makes: 1, Passes: []work.Pass{{Uses: 12, Makes: 12}}})
	// Output: uses 1 + 12n, makes 1 + 12n
}

func ExampleStitches() {
	fmt.Println(work.Stitches(3))
	// Output: [st st st]
}

func ExamplePlaces_Count() {
	fmt.Println(work.Places{0, 2, 0}.Count())
	// Output: 4
}

func ExamplePlaces_Turned() {
	fmt.Println(work.Places{0, 2, 0, 0}.Turned())
	// Output: [st st ch-2 sp st]
}

// A row split for a neck: 92 stitches, 24 of them left in the middle.
func ExamplePlaces_Groups() {
	split := row.Must("hdc in next 34 sts, leave 24 sts unworked, hdc in next 34 sts", row.US)
	_, made, _ := work.Into(split, work.Stitches(92), 0)
	for _, g := range made.Groups() {
		fmt.Print(g.Count(), " ")
	}
	_, _, err := work.Into(row.Must("hdc in each st across", row.US), made, 0)
	fmt.Println(err)
	// Output: 34 34 row 1, "hdc in each st across": place 35 lies beyond the stitches left unworked: two live groups, and the row must say which
}

func ExampleFaces() {
	faces, _ := work.Faces(rows("fsc", "dc in first st, *ch 1, sk 1, dc in next st; rep from * across", "sc in each st and in each ch-1 sp across"), 5, 0)
	for _, f := range faces {
		fmt.Println(f)
	}
	// Output:
	// sc sc sc sc sc
	// dc ch1 dc ch1 dc
	// sc sc sc sc sc
}

func ExampleTally_Count() {
	w, _, _ := work.Into(row.Must("(dc, ch 1, dc) in next st", row.US), work.Stitches(1), 0)
	fmt.Println(w.Made.Stitches, w.Made.Count())
	// Output: 2 3
}

func ExampleTally_Of() {
	w, _, _ := work.Into(row.Must("sc 3, hdc 2", row.US), work.Stitches(5), 0)
	fmt.Println(w.Made.Of(row.SingleCrochet), w.Made.Of(row.HalfDoubleCrochet), w.Made.Of(row.Chain))
	// Output: 3 2 0
}

func ExampleTally_Add() {
	a, _, _ := work.Into(row.Must("sc 3, hdc 2", row.US), work.Stitches(5), 0)
	b, _, _ := work.Into(row.Must("sc in each st across", row.US), work.Stitches(5), 0)
	fmt.Println(a.Made.Add(b.Made).Of(row.SingleCrochet))
	// Output: 8
}

func ExampleTally_MarshalJSON() {
	w, _, _ := work.Into(row.Must("(dc, ch 1, dc) in next st", row.US), work.Stitches(1), 0)
	text, err := json.Marshal(w.Made)
	fmt.Println(string(text), err)
	// Output: {"stitches":2,"chains":1,"spaces":1,"kinds":{"dc":2}} <nil>
}

func ExampleTally_UnmarshalJSON() {
	var t work.Tally
	err := json.Unmarshal([]byte(`{"stitches":2,"chains":1,"spaces":1,"kinds":{"dc":2}}`), &t)
	fmt.Println(t.Of(row.DoubleCrochet), t.Count(), err)
	err = json.Unmarshal([]byte(`{"stitches":3,"kinds":{"dc":2}}`), &t)
	fmt.Println(err)
	// Output:
	// 2 3 <nil>
	// Tally.Kinds: got 2 in all, want 3 as in stitches
}

func ExampleSolution_MarshalJSON() {
	sol, _ := work.Solve(rows("fhdc", "dc in first st, *ch 1, sk 1, dc in next st; rep from * across"), 0)
	text, err := json.Marshal(sol)
	fmt.Println(string(text), err)
	// Output: {"rule":"odd, at least 3","rows":["fhdc","dc in first st, *ch 1, sk 1, dc in next st; rep from * across"]} <nil>
}

func ExampleSolution_UnmarshalJSON() {
	var sol work.Solution
	err := json.Unmarshal([]byte(`{"rows":["fhdc","dc in first st, *ch 1, sk 1, dc in next st; rep from * across"]}`), &sol)
	fmt.Println(sol.Rule, sol.Opening(1, 11).Made.Of(row.DoubleCrochet), err)
	err = json.Unmarshal([]byte(`{"rule":"even","rows":["fhdc","dc in first st, *ch 1, sk 1, dc in next st; rep from * across"]}`), &sol)
	fmt.Println(err)
	// Output:
	// odd, at least 3 6 <nil>
	// Solution.Rule: got even, want odd, at least 3 by the rows
}
