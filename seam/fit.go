package seam

import (
	"fmt"

	"example.com/panelmath/gauge"
)

// FitError tells that a garment cannot be put on: an opening is smaller than
// what has to pass through it, or wider than what has to hold it.
type FitError struct {
	Part   string            // "armhole round"
	Got    gauge.Measurement // finished
	Wearer string            // "upper arm and its ease"
	Want   gauge.Measurement // the least the part may be; the most where TooWide
	TooBig bool
}

// Error returns "armhole round 14 in (35.56 cm) is less than upper arm 15 in
// (38.1 cm)".
func (e *FitError) Error() string {
	than := "less"
	if e.TooBig {
		than = "more"
	}
	return fmt.Sprintf("%s %s is %s than %s %s", e.Part, say(e.Got), than, e.Wearer, say(e.Want))
}

// CheckArmhole returns a *FitError if the armhole, twice its finished depth
// round, is smaller than the upper arm and its ease. An ease of nothing lets
// the arm through and no more; a drop shoulder usually has 1 to 2 in more depth
// than a set-in sleeve (worked examples name a teacher's handout for it).
//
// It returns a *gauge.FieldError if the depth or the arm is not more than
// nothing, or the ease takes the arm to nothing.
func CheckArmhole(depth, upperArm, ease gauge.Measurement) error {
	if err := positive("depth", depth, "upperArm", upperArm, "upperArm + ease", upperArm.Add(ease)); err != nil {
		return err
	}
	wearer := "upper arm"
	if ease.Sign() != 0 {
		wearer = "upper arm and its ease"
	}
	return atLeast("armhole round", depth.Times(gauge.Int(2)), wearer, upperArm.Add(ease))
}

// CheckNeck returns a *FitError if the neck opening, stretched, does not let
// the head through. Round is its finished length all round; stretch is the
// share it gives without harm, 1/10 for a tenth, 0 for an edge that does not
// give. Measure the stretch on the swatch: there is no figure for all fabrics.
//
// It returns a *gauge.FieldError if round or head is not more than nothing, or
// stretch is not from 0 to 1.
func CheckNeck(round, head gauge.Measurement, stretch gauge.Ratio) error {
	if err := positive("round", round, "head", head); err != nil {
		return err
	}
	if stretch.Sign() < 0 || stretch.Cmp(gauge.Int(1)) > 0 {
		return &gauge.FieldError{Field: "stretch", Got: stretch.String(), Want: "0 to 1"}
	}
	part := "neck opening"
	if stretch.Sign() > 0 {
		part = "stretched neck opening"
	}
	return atLeast(part, round.Times(gauge.Int(1).Add(stretch)), "head", head)
}

// CheckSleeve returns a *FitError if the end of a sleeve is smaller round than
// what has to pass through it: the hand, or the arm where the sleeve ends
// above the wrist.
//
// It returns a *gauge.FieldError if either is not more than nothing.
func CheckSleeve(round, arm gauge.Measurement) error {
	if err := positive("round", round, "arm", arm); err != nil {
		return err
	}
	return atLeast("sleeve end", round, "arm", arm)
}

// CheckNeckWidth returns a *FitError if the neck opening laid flat is wider
// than the shoulders: such a garment slides off them.
//
// It returns a *gauge.FieldError if either is not more than nothing.
func CheckNeckWidth(neck, shoulders gauge.Measurement) error {
	if err := positive("neck", neck, "shoulders", shoulders); err != nil {
		return err
	}
	if neck.Cmp(shoulders) > 0 {
		return &FitError{Part: "neck width", Got: neck, Wearer: "shoulders", Want: shoulders, TooBig: true}
	}
	return nil
}

func atLeast(part string, got gauge.Measurement, wearer string, want gauge.Measurement) error {
	if got.Cmp(want) < 0 {
		return &FitError{Part: part, Got: got, Wearer: wearer, Want: want}
	}
	return nil
}

// positive takes pairs of a field name and its measurement.
func positive(fields ...any) error {
	for i := 0; i+1 < len(fields); i += 2 {
		if m := fields[i+1].(gauge.Measurement); m.Sign() <= 0 {
			return &gauge.FieldError{Field: fields[i].(string), Got: say(m), Want: "more than nothing"}
		}
	}
	return nil
}
