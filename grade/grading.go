package grade

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
)

// OnChart grades a measure by the chart: the measure of the body that rules each
// group, and the ease beyond it, one for all groups or one for each. Nothing is
// smoothed: where the chart has uneven steps, so has the result.
//
// It returns the errors of Run.For for the ease and of Ruling.Validate, and a
// *SizeError with the place of the group for those of Ease.Validate, with its
// label, and of Group.Ruled, with the member that they are about.
func OnChart(groups Run[Group], m Measure, u gauge.Unit, r Ruling, ease Run[Ease]) (Run[gauge.Measurement], error) {
	if err := r.Validate(); err != nil {
		return nil, err
	}
	each, err := ease.For(len(groups))
	if err != nil {
		return nil, gauge.InField("ease", err)
	}
	return Zip(groups, each, func(g Group, e Ease) (gauge.Measurement, error) {
		if err := e.Validate(); err != nil {
			return gauge.Measurement{}, &SizeError{Size: g.Label(), Err: err}
		}
		body, err := g.Ruled(m, u, r)
		return e.Finished(body), err
	})
}

// Stepped grades a measure by steps: the smallest size, and what each of the n
// sizes adds to the one before it. One step stands for all; else there are n - 1.
// A step may be less than nothing, and a size too, as a length may.
//
// It returns a *gauge.FieldError if n is not from 1 to MaxSizes, there are not 1
// or n - 1 steps, or first is not valid, and a *SizeError if a step is not
// valid or not in the unit of first, or its size is out of bounds.
func Stepped(first gauge.Length, n int, steps ...gauge.Length) (Run[gauge.Length], error) {
	if err := first.Validate(); err != nil {
		return nil, gauge.InField("first", err)
	}
	if n < 1 || n > MaxSizes {
		return nil, &gauge.FieldError{Field: "sizes", Got: strconv.Itoa(n), Want: "1 to 64", Err: gauge.ErrBounds}
	}
	out := Run[gauge.Length]{first}
	if n == 1 && len(steps) <= 1 {
		return out, nil
	}
	each, err := Run[gauge.Length](steps).For(max(n-1, 1))
	if err != nil || n == 1 {
		return nil, &gauge.FieldError{Field: "steps", Got: strconv.Itoa(len(steps)), Want: fmt.Sprintf("1 or %d", n-1)}
	}
	for i, s := range each {
		if err := s.Validate(); err != nil {
			return nil, &SizeError{Index: i + 1, Field: "step", Err: err}
		}
		if s.Unit != first.Unit {
			return nil, &SizeError{Index: i + 1, Field: "step", Got: s.String(), Want: "a length in " + first.Unit.String()}
		}
		next := gauge.Length{Value: out[i].Value.Add(s.Value), Unit: first.Unit}
		if err := next.Validate(); err != nil {
			return nil, &SizeError{Index: i + 1, Field: "step", Err: err}
		}
		out = append(out, next)
	}
	return out, nil
}

// ShareOf grades a measure as a share of another, exactly: the neck as a third
// of the width.
func ShareOf(r Run[gauge.Measurement], share gauge.Ratio) Run[gauge.Measurement] {
	out := make(Run[gauge.Measurement], len(r))
	for i, m := range r {
		out[i] = m.Times(share)
	}
	return out
}

// Smoothed is a run that was smoothed, and every value that this changed.
type Smoothed struct {
	Values  Run[gauge.Measurement] `json:"values"`
	Changes []Change               `json:"changes"` // in order; none where nothing had to change
}

// Change is a value before and after smoothing.
type Change struct {
	Index int               `json:"index"` // place of the size
	From  gauge.Measurement `json:"from"`
	To    gauge.Measurement `json:"to"`
}

// EvenSteps smooths a run to the same step from size to size, between its
// smallest and its largest size, which stay as they are. The step is exact:
// round the values where they are used.
func EvenSteps(r Run[gauge.Measurement]) Smoothed {
	last := len(r) - 1
	return smooth(r, func(i int, _ gauge.Measurement) gauge.Measurement {
		if i == 0 {
			return r[0]
		}
		part, _ := gauge.Share(i, last)
		return r[0].Add(r[last].Sub(r[0]).Times(part))
	})
}

// NoneSmaller smooths a run so that no size is smaller than the one before it:
// a value that falls is raised to that of the size before.
func NoneSmaller(r Run[gauge.Measurement]) Smoothed {
	return smooth(r, func(i int, before gauge.Measurement) gauge.Measurement {
		if i > 0 && r[i].Cmp(before) < 0 {
			return before
		}
		return r[i]
	})
}

// smooth asks for each value, given that of the size before, and notes changes.
func smooth(r Run[gauge.Measurement], value func(i int, before gauge.Measurement) gauge.Measurement) Smoothed {
	s := Smoothed{Values: make(Run[gauge.Measurement], len(r))}
	var before gauge.Measurement
	for i, from := range r {
		to := value(i, before)
		if !to.Equal(from) {
			s.Changes = append(s.Changes, Change{i, from, to})
		}
		s.Values[i], before = to, to
	}
	return s
}
