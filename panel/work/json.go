package work

import (
	"encoding/json"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/row"
)

// sums has the fields of a Tally and none of its methods.
type sums Tally

// tallied is a Tally in JSON.
type tallied struct {
	sums
	Kinds map[row.Stitch]int `json:"kinds,omitempty"`
}

// MarshalJSON returns the sums, and the stitches of each kind that was made.
func (t Tally) MarshalJSON() ([]byte, error) {
	out := tallied{sums: sums(t)}
	for s, n := range t.kinds {
		if n == 0 {
			continue
		}
		if out.Kinds == nil {
			out.Kinds = map[row.Stitch]int{}
		}
		out.Kinds[row.Stitch(s)] = n
	}
	return json.Marshal(out)
}

// UnmarshalJSON reads what MarshalJSON writes. Without kinds, as older files are,
// the sums alone are known. It returns an error for a kind that is no stitch, and
// a *gauge.FieldError where the kinds do not add up to the stitches.
func (t *Tally) UnmarshalJSON(b []byte) error {
	var in tallied
	if err := json.Unmarshal(b, &in); err != nil {
		return err
	}
	out, sum := Tally(in.sums), 0
	for s, n := range in.Kinds {
		switch {
		case !s.Valid() || s == row.Chain:
			return &gauge.FieldError{Field: "Tally.Kinds", Got: "no stitch of a row", Want: "one like sc, hdc or dc; chains stand apart"}
		case n < 0:
			return &gauge.FieldError{Field: "Tally.Kinds", Got: strconv.Itoa(n) + " " + s.String(), Want: "0 or more"}
		}
		out.kinds[s] = n
		sum += n
	}
	if in.Kinds != nil && sum != out.Stitches {
		return &gauge.FieldError{Field: "Tally.Kinds", Got: strconv.Itoa(sum) + " in all", Want: strconv.Itoa(out.Stitches) + " as in stitches"}
	}
	*t = out
	return nil
}

// asked is what a Solution answers: in JSON it stands for the answer, which is
// found again when it is read.
type asked struct {
	Rows    []row.Row `json:"rows,omitempty"` // of Solve
	Opening []row.Row `json:"opening,omitempty"`
	Repeat  []row.Row `json:"repeat,omitempty"`
	Closing []row.Row `json:"closing,omitempty"`
	Size    int       `json:"size,omitempty"`
}

// solved is a Solution in JSON.
type solved struct {
	Rule *gauge.Rule `json:"rule"`
	asked
}

// MarshalJSON returns the rule, and the rows that were solved.
func (s Solution) MarshalJSON() ([]byte, error) {
	out := solved{Rule: &s.Rule}
	if s.asked != nil {
		out.asked = *s.asked
	}
	return json.Marshal(out)
}

// UnmarshalJSON reads the rows and solves them again. It returns the errors of
// Solve and SolveRepeat, and a *gauge.FieldError where the rule is not the one
// that the rows have.
func (s *Solution) UnmarshalJSON(b []byte) error {
	var in solved
	if err := json.Unmarshal(b, &in); err != nil {
		return err
	}
	var out Solution
	var err error
	switch q := in.asked; {
	case q.Rows != nil:
		out, err = Solve(q.Rows, q.Size)
	case q.Opening != nil || q.Repeat != nil || q.Closing != nil:
		out, err = SolveRepeat(q.Opening, q.Repeat, q.Closing, q.Size)
	}
	if err != nil {
		return err
	}
	if in.Rule != nil && in.Rule.String() != out.Rule.String() { // any count is written in one way
		return &gauge.FieldError{Field: "Solution.Rule", Got: in.Rule.String(), Want: out.Rule.String() + " by the rows"}
	}
	*s = out
	return nil
}
