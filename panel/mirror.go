package panel

import (
	"slices"

	"example.com/panelmath/panel/row"
	"example.com/panelmath/panel/work"
)

// Mirrored reports whether a panel with so many repeats looks the same from
// either edge: the first row like the last, the second like the last but one,
// and so on. What counts is the face of a row, its stitches and chains in order,
// so that a row of hdc into stitches and one into chain spaces are alike, and a
// foundation row is like the stitch it stands for.
//
// It returns the errors of Legal, and a *gauge.FieldError for repeats out of
// range.
func (p Plan) Mirrored(repeats int) (bool, error) {
	faces, err := p.faces(repeats)
	return err == nil && palindrome(faces), err
}

func palindrome(faces []string) bool {
	for i, k := 0, len(faces)-1; i < k; i, k = i+1, k-1 {
		if faces[i] != faces[k] {
			return false
		}
	}
	return true
}

// faces returns the faces of every row, at the smallest count.
func (p Plan) faces(repeats int) ([]string, error) {
	sol, err := p.single()
	if err != nil {
		return nil, err
	}
	if err := p.checkRepeats("repeats", repeats); err != nil {
		return nil, err
	}
	return work.Faces(p.sequence(repeats), sol.Rule.Least, 0)
}

// sequence returns every row of a panel.
func (p Plan) sequence(repeats int) []row.Row {
	out := slices.Clone(p.Opening)
	for range repeats {
		out = append(out, p.Repeat...)
	}
	return append(out, p.Closing...)
}

// Mirror returns the plan with the closing rows that make it look the same from
// either edge with any number of repeats: as few as possible, each a row that
// the plan has already and that fits where it is worked. The closing of p is not
// used. ok is false if there are no such rows: where the repeat itself is not
// the same from either side, no closing helps.
//
// It returns the errors of Legal.
func (p Plan) Mirror() (m Plan, ok bool, err error) {
	open := Plan{Opening: p.Opening, Repeat: p.Repeat}
	sol, err := open.single()
	if err != nil {
		return Plan{}, false, err
	}
	const passes = 3
	n := sol.Rule.Least
	faces, err := work.Faces(open.sequence(passes), n, 0)
	if err != nil {
		return Plan{}, false, err
	}
	var candidates []row.Row
	for _, r := range slices.Concat(p.Opening, p.Repeat, p.Closing) {
		if !r.Begins() && !slices.ContainsFunc(candidates, func(o row.Row) bool { return o.String() == r.String() }) {
			candidates = append(candidates, r)
		}
	}
	for c := 0; c <= len(p.Opening)+len(p.Repeat); c++ {
		want := slices.Clone(faces[:c])
		slices.Reverse(want)
		if !palindrome(slices.Concat(faces, want)) {
			continue
		}
		if closing, ok := open.dress(want, candidates, n); ok {
			m = Plan{p.Opening, p.Repeat, closing}.clone()
			if m.mirroredAlways(passes) {
				return m, true, nil
			}
		}
	}
	return Plan{}, false, nil
}

// mirroredAlways checks a plan with 0 to so many repeats.
func (p Plan) mirroredAlways(most int) bool {
	for k := range most + 1 {
		if ok, err := p.Mirrored(k); err != nil || !ok {
			return false
		}
	}
	return true
}

// dress finds rows with the wanted faces, each fitting after the one before.
func (p Plan) dress(want []string, candidates []row.Row, n int) ([]row.Row, bool) {
	var closing []row.Row
	for i := range want {
		found := false
		for _, r := range candidates {
			q := Plan{p.Opening, p.Repeat, append(slices.Clone(closing), r)}
			faces, err := work.Faces(q.sequence(1), n, 0)
			if err != nil || faces[len(faces)-1] != want[i] {
				continue
			}
			if q.Validate() == nil {
				closing, found = q.Closing, true
				break
			}
		}
		if !found {
			return nil, false
		}
	}
	return closing, true
}
