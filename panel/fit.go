package panel

import (
	"fmt"
	"slices"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/row"
)

// Rows returns how many rows are worked with so many repeats.
func (p Plan) Rows(repeats int) int {
	return len(p.Opening) + repeats*len(p.Repeat) + len(p.Closing)
}

// Left returns how many rows are still to be worked after so many are done; 0
// where all are.
func (p Plan) Left(repeats, done int) int { return max(p.Rows(repeats)-max(done, 0), 0) }

// At tells which row of the plan the numbered row (from 1) of a panel is, and on
// which side it is worked, the first on the right side. ok is false beyond the
// last row.
func (p Plan) At(repeats, number int) (s Step, ok bool) {
	if number < 1 || number > p.Rows(repeats) {
		return Step{}, false
	}
	s = Step{Number: number, Side: RightSide.Turned(number - 1)}
	i := number - 1
	switch rep := len(p.Repeat); {
	case i < len(p.Opening):
		s.Part, s.Index = Opening, i
	case i < len(p.Opening)+repeats*rep:
		i -= len(p.Opening)
		s.Part, s.Index, s.Pass = Repeat, i%rep, i/rep+1
	default:
		s.Part, s.Index = Closing, i-len(p.Opening)-repeats*rep
	}
	return s, true
}

// End tells on which row, and on which side, a panel with so many repeats ends.
// A plan without rows gives the zero Step.
func (p Plan) End(repeats int) Step {
	s, _ := p.At(repeats, p.Rows(repeats))
	return s
}

// Fit returns the rows nearest to a width by a row gauge, and the number of
// repeats, at least 0, that gives them. A tie goes to the larger number. A plan
// without a repeat has but one number of rows.
//
// It returns an error if the plan has no opening or the gauge is not valid
// (*gauge.FieldError), or the rows exceed gauge.MaxCount (gauge.ErrBounds).
func (p Plan) Fit(width gauge.Measurement, rows gauge.Over) (gauge.Count, int, error) {
	if len(p.Opening) == 0 {
		return gauge.Count{}, 0, noOpening()
	}
	exact, err := rows.Exact(width)
	if err != nil {
		return gauge.Count{}, 0, err
	}
	each, err := rows.Measure(gauge.Int(1))
	if err != nil {
		return gauge.Count{}, 0, err
	}
	c, k, err := p.fit(exact, each)
	if err != nil {
		return gauge.Count{}, 0, err
	}
	c.Unit = rows.Span.Unit
	return c, k, nil
}

func noOpening() error {
	return &gauge.FieldError{Field: "Plan.Opening", Got: "no rows", Want: "a foundation row to begin with"}
}

// fit returns the number of rows nearest to an exact one.
func (p Plan) fit(exact gauge.Ratio, each gauge.Measurement) (gauge.Count, int, error) {
	once, rep := p.Rows(0), len(p.Repeat)
	if rep == 0 {
		rule := gauge.Rule{Multiple: gauge.MaxCount, Plus: once % gauge.MaxCount, Least: once}
		return gauge.Count{Value: once, Exact: exact, Below: once, Above: once, Rule: rule, Each: each}, 0, nil
	}
	c, err := gauge.Rule{Multiple: rep, Plus: once % rep, Least: once}.Round(exact)
	if err != nil {
		return gauge.Count{}, 0, err
	}
	c.Each = each
	return c, (c.Value - once) / rep, nil
}

// FitHeight returns the number of repeats, at least 0, that comes nearest to a
// width where one repeat and the rows worked once were measured: the count is
// of repeats, and its deviation the miss as a length. A tie goes to the larger
// number.
//
// It returns a *gauge.FieldError if the plan has no opening, the repeat has
// rows and no height, or a height is less than nothing; gauge.ErrBounds if the
// rows exceed gauge.MaxCount.
func (p Plan) FitHeight(width gauge.Measurement, h Height) (gauge.Count, error) {
	switch {
	case len(p.Opening) == 0:
		return gauge.Count{}, noOpening()
	case h.Once.Sign() < 0:
		return gauge.Count{}, &gauge.FieldError{Field: "Height.Once", Got: h.Once.String(), Want: "0 or more"}
	case len(p.Repeat) == 0:
		return gauge.Count{Rule: gauge.Rule{Multiple: gauge.MaxCount}}, nil
	case h.Repeat.Sign() <= 0:
		return gauge.Count{}, &gauge.FieldError{Field: "Height.Repeat", Got: h.Repeat.String(), Want: "more than 0"}
	}
	exact, err := width.Sub(h.Once).Per(h.Repeat)
	if err != nil {
		return gauge.Count{}, err
	}
	c, err := gauge.Rule{}.Round(exact)
	if err != nil {
		return gauge.Count{}, err
	}
	if p.Rows(c.Value) > gauge.MaxCount {
		return gauge.Count{}, &gauge.FieldError{Field: "rows", Got: fmt.Sprint(p.Rows(c.Value)), Want: "at most 100000", Err: gauge.ErrBounds}
	}
	c.Each = h.Repeat
	return c, nil
}

// Height is how high the rows of a plan stand.
type Height struct {
	Once   gauge.Measurement `json:"once"`   // opening and closing together
	Repeat gauge.Measurement `json:"repeat"` // one whole repeat
}

// Of returns how high a panel with so many repeats is.
func (h Height) Of(repeats int) gauge.Measurement {
	return h.Once.Add(h.Repeat.Times(gauge.Int(repeats)))
}

// StitchHeight is how high a row of one kind of stitch stands. Measured rows
// beat the heights that charts give.
type StitchHeight struct {
	Stitch row.Stitch        `json:"stitch"`
	Height gauge.Measurement `json:"height"`
}

// Heights returns how high the plan stands where a row is as high as its
// highest stitch. A foundation row is as high as the stitch it stands for where
// it has no height of its own. Heights are compared as given, not by the usual
// order of the stitches.
//
// It returns a *gauge.FieldError if a row has a stitch without a height, or a
// height is not more than 0.
func (p Plan) Heights(heights ...StitchHeight) (Height, error) {
	for i, h := range heights {
		if h.Height.Sign() <= 0 {
			return Height{}, &gauge.FieldError{Field: fmt.Sprintf("heights[%d]", i), Got: h.Height.String(), Want: "more than 0"}
		}
	}
	var out Height
	for _, part := range []struct {
		name Part
		rows []row.Row
		sum  *gauge.Measurement
	}{{Opening, p.Opening, &out.Once}, {Repeat, p.Repeat, &out.Repeat}, {Closing, p.Closing, &out.Once}} {
		for i, r := range part.rows {
			var most gauge.Measurement
			for _, s := range r.Stitches() {
				h, ok := heightOf(s, heights)
				if !ok {
					return Height{}, &gauge.FieldError{Field: fmt.Sprintf("heights for %s[%d]", part.name, i), Got: "none for " + s.String(), Want: "the height of a row of " + s.String()}
				}
				if h.Cmp(most) > 0 {
					most = h
				}
			}
			*part.sum = part.sum.Add(most)
		}
	}
	return out, nil
}

func heightOf(s row.Stitch, heights []StitchHeight) (gauge.Measurement, bool) {
	for _, s := range []row.Stitch{s, s.Plain()} {
		for _, h := range heights {
			if h.Stitch == s {
				return h.Height, true
			}
		}
	}
	return gauge.Measurement{}, false
}

// Unfinished returns the plan that works the first rows of one more repeat
// before the closing: half a repeat, or to a named row inside it.
//
// It returns a *gauge.FieldError if rows is not 0 to the rows of a repeat, and
// the error of Validate where the closing does not fit after that row.
func (p Plan) Unfinished(rows int) (Plan, error) {
	if rows < 0 || rows > len(p.Repeat) {
		return Plan{}, &gauge.FieldError{Field: "rows", Got: fmt.Sprint(rows), Want: fmt.Sprintf("0 to %d, the rows of a repeat", len(p.Repeat))}
	}
	out := p.clone()
	out.Closing = slices.Concat(p.Repeat[:rows], p.Closing)
	if err := out.Validate(); err != nil {
		return Plan{}, err
	}
	return out, nil
}

// FitUnfinished is Fit where the last repeat may end after any of its rows from
// which the closing can go on. It returns the plan to work, with those rows in
// its closing, its rows and its repeats. A tie goes to the larger number of
// rows.
//
// It returns the errors of Validate and Fit.
func (p Plan) FitUnfinished(width gauge.Measurement, rows gauge.Over) (Plan, gauge.Count, int, error) {
	if err := p.Validate(); err != nil {
		return Plan{}, gauge.Count{}, 0, err
	}
	best, count, repeats := p, gauge.Count{}, 0
	for n := range max(len(p.Repeat), 1) {
		q, err := p.Unfinished(n)
		if err != nil {
			continue // the closing does not fit there
		}
		c, k, err := q.Fit(width, rows)
		if err != nil {
			return Plan{}, gauge.Count{}, 0, err
		}
		if n == 0 || nearer(c, count) {
			best, count, repeats = q, c, k
		}
	}
	return best, count, repeats, nil
}

// nearer reports whether c misses by less than o, or by as much above.
func nearer(c, o gauge.Count) bool {
	x, y := c.Off(), o.Off()
	if x.Sign() < 0 {
		x = gauge.Int(0).Sub(x)
	}
	if y.Sign() < 0 {
		y = gauge.Int(0).Sub(y)
	}
	d := x.Cmp(y)
	return d < 0 || d == 0 && c.Value > o.Value
}
