package panel

import (
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/work"
)

// Step is one worked row of a panel.
type Step struct {
	Number int  `json:"number"` // from 1
	Part   Part `json:"part"`
	Index  int  `json:"index"` // in the part, from 0
	Pass   int  `json:"pass"`  // of the repeat, from 1; 0 outside it
	Side   Side `json:"side"`
	work.Worked
}

// Steps returns every row of a panel, in the order they are worked, with what
// it uses and makes. The first is worked on the right side.
//
// It returns the errors of Legal, a *SizeError if the stitch count is not
// legal, and a *gauge.FieldError if the repeats are fewer than 0 or give more
// than gauge.MaxCount rows.
func (p Plan) Steps(stitches, repeats int) ([]Step, error) {
	sol, err := p.counted(stitches, repeats)
	if err != nil {
		return nil, err
	}
	steps := make([]Step, 0, p.Rows(repeats))
	add := func(part Part, i, pass int, w work.Worked) {
		n := len(steps)
		steps = append(steps, Step{Number: n + 1, Part: part, Index: i, Pass: pass, Side: RightSide.Turned(n), Worked: w})
	}
	for i := range p.Opening {
		add(Opening, i, 0, sol.Opening(i, stitches))
	}
	for pass := range repeats {
		for i := range p.Repeat {
			add(Repeat, i, pass+1, sol.Repeat(pass+1, i, stitches))
		}
	}
	for i := range p.Closing {
		add(Closing, i, 0, sol.Closing(repeats, i, stitches))
	}
	return steps, nil
}

// counted solves the plan and checks a count and a number of repeats.
func (p Plan) counted(stitches, repeats int) (work.Solution, error) {
	sol, err := p.single()
	if err != nil {
		return sol, err
	}
	if err := p.checkRepeats("repeats", repeats); err != nil {
		return sol, err
	}
	if !sol.Rule.Legal(stitches) || stitches > gauge.MaxCount {
		return sol, &SizeError{Got: stitches, Rule: sol.Rule}
	}
	return sol, nil
}

func (p Plan) checkRepeats(field string, k int) error {
	switch {
	case k < 0 || k > gauge.MaxCount || p.Rows(k) > gauge.MaxCount:
		return &gauge.FieldError{Field: field, Got: strconv.Itoa(k), Want: "0 or more, and at most 100000 rows in all", Err: gauge.ErrBounds}
	case k > 0 && len(p.Repeat) == 0:
		return &gauge.FieldError{Field: field, Got: strconv.Itoa(k), Want: "0, since the plan has no repeat"}
	}
	return nil
}

// Tally returns how many stitches of each kind a panel has, all rows together:
// the figures for yarn by stitches. It returns the errors of Steps.
func (p Plan) Tally(stitches, repeats int) (work.Tally, error) {
	steps, err := p.Steps(stitches, repeats)
	if err != nil {
		return work.Tally{}, err
	}
	var t work.Tally
	for _, s := range steps {
		t = t.Add(s.Made)
	}
	return t, nil
}
