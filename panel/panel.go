package panel

import (
	"encoding/json"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/work"
)

// Panel is one rectangle in one size. The rows run along its length; its width
// grows row by row.
type Panel struct {
	Stitches gauge.Count       `json:"stitches"` // along the row
	Rows     gauge.Count       `json:"rows"`     // across
	Repeats  int               `json:"repeats"`  // of the plan's repeat
	Chains   int               `json:"chains"`   // to begin; 0 with a foundation row
	Length   gauge.Measurement `json:"length"`   // finished, along the row
	Width    gauge.Measurement `json:"width"`    // finished, across the rows
}

// Solved is a plan of one size whose legal counts are known. Solving costs more
// than a panel does: solve once for panels in many sizes. It is not changed by
// use. The zero value has no plan and gives no panel. In JSON it is the plan and
// the rule; the plan is solved again when it is read.
type Solved struct {
	Plan  Plan       `json:"plan"`
	Legal gauge.Rule `json:"legal"` // the legal stitch counts; see Plan.Legal

	sol work.Solution
}

// Solve returns the plan with its legal counts. It returns the errors of Legal.
func (p Plan) Solve() (Solved, error) {
	sol, err := p.single()
	if err != nil {
		return Solved{}, err
	}
	return Solved{Plan: p.clone(), Legal: sol.Rule, sol: sol}, nil
}

// UnmarshalJSON reads the plan and solves it again. It returns the errors of Solve,
// and a *gauge.FieldError where the rule is not the one that the plan has.
func (s *Solved) UnmarshalJSON(b []byte) error {
	var in struct {
		Plan  Plan        `json:"plan"`
		Legal *gauge.Rule `json:"legal"`
	}
	if err := json.Unmarshal(b, &in); err != nil {
		return err
	}
	var out Solved
	if p := in.Plan; p.Opening != nil || p.Repeat != nil || p.Closing != nil {
		var err error
		if out, err = p.Solve(); err != nil {
			return err
		}
	}
	if in.Legal != nil && in.Legal.String() != out.Legal.String() { // any count is written in one way
		return &gauge.FieldError{Field: "Solved.Legal", Got: in.Legal.String(), Want: out.Legal.String() + " by the plan"}
	}
	*s = out
	return nil
}

// Panel returns the panel of this plan that comes nearest to a length along the
// row and a width across the rows; see Solved.Panel. It returns the errors of
// Legal and of Solved.Panel.
func (p Plan) Panel(length, width gauge.Measurement, g gauge.Gauge) (Panel, error) {
	s, err := p.Solve()
	if err != nil {
		return Panel{}, err
	}
	return s.Panel(length, width, g)
}

// Panel returns the panel that comes nearest to a length along the row and a
// width across the rows: the legal stitch count nearest to the length and the
// number of repeats nearest to the width, ties to the larger. The gauge is the
// finished one.
//
// It returns the errors of Fit and Gauge.Validate, and gauge.ErrBounds for a
// count beyond gauge.MaxCount.
func (s Solved) Panel(length, width gauge.Measurement, g gauge.Gauge) (Panel, error) {
	if err := g.Validate(); err != nil {
		return Panel{}, err
	}
	stitches, err := g.Stitches.Round(length, s.Legal)
	if err != nil {
		return Panel{}, err
	}
	rows, repeats, err := s.Plan.Fit(width, g.Rows)
	if err != nil {
		return Panel{}, err
	}
	out := Panel{Stitches: stitches, Rows: rows, Repeats: repeats, Chains: s.sol.Chains(stitches.Value)}
	if out.Length, err = g.Stitches.Measure(gauge.Int(stitches.Value)); err != nil {
		return Panel{}, err
	}
	if out.Width, err = g.Rows.Measure(gauge.Int(rows.Value)); err != nil {
		return Panel{}, err
	}
	return out, nil
}
