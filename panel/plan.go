package panel

import (
	"errors"
	"fmt"
	"slices"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/panel/work"
)

// Plan is the rows of a rectangle: the opening once, the repeat as often as the
// width asks, the closing once. The opening begins with a foundation row or
// chain. Repeat and closing may be empty. The zero value has no rows and is not
// valid.
type Plan struct {
	Opening []row.Row `json:"opening"`
	Repeat  []row.Row `json:"repeat"`
	Closing []row.Row `json:"closing"`
}

// Part names one of the three parts of a plan.
type Part string

// The parts of a plan, in the order they are worked.
const (
	Opening Part = "opening"
	Repeat  Part = "repeat"
	Closing Part = "closing"
)

// RowError tells which row of a plan does not work, and why.
type RowError struct {
	Part  Part
	Index int    // in the part, from 0
	Pass  int    // of the repeat, from 1; 0 outside it
	Text  string // the row in US terms
	Err   error  // a *row.FitError, or a *gauge.FieldError for a row that is not valid
}

// Error returns `opening[1] "sc in next 11 sts": uses 11 of 10, 1 short`.
func (e *RowError) Error() string {
	s := fmt.Sprintf("%s[%d]", e.Part, e.Index)
	if e.Text != "" {
		s += " " + text.Quote(e.Text)
	}
	if e.Pass > 1 {
		s += fmt.Sprintf(", worked for the %s time", ordinal(e.Pass))
	}
	var fit *row.FitError
	if errors.As(e.Err, &fit) {
		return s + ": " + fit.Cause()
	}
	if e.Err == nil {
		return s
	}
	return s + ": " + e.Err.Error()
}

// Unwrap returns the cause.
func (e *RowError) Unwrap() error { return e.Err }

func ordinal(n int) string {
	switch {
	case n%100 >= 11 && n%100 <= 13:
	case n%10 == 1:
		return strconv.Itoa(n) + "st"
	case n%10 == 2:
		return strconv.Itoa(n) + "nd"
	case n%10 == 3:
		return strconv.Itoa(n) + "rd"
	}
	return strconv.Itoa(n) + "th"
}

// maxRows is how many rows a plan may list.
const maxRows = 10_000

// Validate returns an error if the plan is not one of a rectangle:
//   - there is no opening, or more than 10 000 rows (*gauge.FieldError);
//   - a row is not valid, is not worked into a foundation, does not fit the
//     places before it, or does not come back to the count of the first row
//     (*RowError): so also where the repeat begins again after its last row, and
//     where the closing follows the opening in a size without repeats.
func (p Plan) Validate() error {
	for size := range p.Sizes() {
		if _, err := p.solve(size); err != nil {
			return err
		}
	}
	return nil
}

// Sizes returns for how many sizes the rows are written: 1 where they have no
// lists of sizes.
func (p Plan) Sizes() int {
	n := 1
	for _, rows := range [][]row.Row{p.Opening, p.Repeat, p.Closing} {
		for _, r := range rows {
			n = max(n, r.Sizes())
		}
	}
	return n
}

// solve finds the legal counts for one size of the rows' lists.
func (p Plan) solve(size int) (work.Solution, error) {
	switch n := len(p.Opening) + len(p.Repeat) + len(p.Closing); {
	case len(p.Opening) == 0:
		return work.Solution{}, &gauge.FieldError{Field: "Plan.Opening", Got: "no rows", Want: "a foundation row to begin with"}
	case n > maxRows:
		return work.Solution{}, &gauge.FieldError{Field: "Plan", Got: strconv.Itoa(n) + " rows", Want: "at most 10000", Err: gauge.ErrBounds}
	case !p.Opening[0].Begins():
		return work.Solution{}, &RowError{Part: Opening, Text: p.Opening[0].String(), Err: &gauge.FieldError{Field: "Opening[0]", Got: "a row that needs stitches to be worked into", Want: "a foundation row (fhdc) or a foundation chain"}}
	}
	sol, err := work.SolveRepeat(p.Opening, p.Repeat, p.Closing, size)
	return sol, p.named(err)
}

// named puts part and index of a row in front of an error about it.
func (p Plan) named(err error) error {
	var fit *row.FitError
	var bad *row.InvalidError
	e := &RowError{Err: err}
	n := 0
	switch {
	case errors.As(err, &fit):
		n, e.Pass, e.Text = fit.Row, fit.Pass, fit.Text
	case errors.As(err, &bad):
		n, e.Err = bad.Row, bad.Err
	default:
		return err
	}
	e.Part, e.Index = p.part(n)
	return e
}

// part returns to which part row n belongs, counted through all three.
func (p Plan) part(n int) (Part, int) {
	if n < len(p.Opening) {
		return Opening, n
	}
	if n -= len(p.Opening); n < len(p.Repeat) {
		return Repeat, n
	}
	return Closing, n - len(p.Repeat)
}

// Legal returns the stitch counts at which every row of the plan works, for any
// number of repeats: "multiple of 3 + 1, at least 4". Least is the smallest
// count at which every part in stars or brackets, and every `each … across`, is
// worked at least once. A plan that fixes its count (fhdc 101) has one legal
// count.
//
// It returns the error of Validate, and a *gauge.FieldError for a plan with
// lists of sizes, which is solved size by size: see Size.
func (p Plan) Legal() (gauge.Rule, error) {
	sol, err := p.single()
	if err != nil {
		return gauge.Rule{}, err
	}
	return sol.Rule, nil
}

// single is solve for a plan without lists of sizes.
func (p Plan) single() (work.Solution, error) {
	if n := p.Sizes(); n > 1 {
		return work.Solution{}, &gauge.FieldError{Field: "Plan", Got: fmt.Sprintf("lists of %d sizes", n), Want: "the plan of one size: see Size"}
	}
	return p.solve(0)
}

// Size returns the plan of one size, counted from 0, for rows with lists of
// sizes. In a size that the lists do not have it is the zero Plan, which is not
// valid.
func (p Plan) Size(i int) Plan {
	if n := p.Sizes(); n > 1 && (i < 0 || i >= n) {
		return Plan{}
	}
	each := func(rows []row.Row) []row.Row {
		out := make([]row.Row, len(rows))
		for k, r := range rows {
			out[k] = r.Size(i)
		}
		return out
	}
	return Plan{each(p.Opening), each(p.Repeat), each(p.Closing)}
}

// clone returns the plan with rows of its own, so that what is written to one does
// not show in the other.
func (p Plan) clone() Plan {
	return Plan{slices.Clone(p.Opening), slices.Clone(p.Repeat), slices.Clone(p.Closing)}
}
