package seam

import (
	"errors"
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/seam/internal/say"
)

// FitError tells that a garment cannot be put on: an opening is smaller than
// what has to pass through it, or wider than what has to hold it.
type FitError struct {
	Part   string            // "armhole round"
	Got    gauge.Measurement // finished
	Wearer string            // "upper arm and its ease"
	Want   gauge.Measurement // the least the part may be; the most where TooBig
	TooBig bool
}

// Error returns "armhole round 14 in (35.56 cm) is less than upper arm 15 in
// (38.1 cm)".
func (e *FitError) Error() string {
	than := "less"
	if e.TooBig {
		than = "more"
	}
	return fmt.Sprintf("%s %s is %s than %s %s", e.Part, say.Length(e.Got), than, e.Wearer, say.Length(e.Want))
}

// Body is what has to pass through the openings of a garment, or has to hold
// it. A measure of nothing is not checked; the zero value checks nothing.
type Body struct {
	UpperArm    gauge.Measurement `json:"upper_arm"`
	ArmEase     gauge.Measurement `json:"arm_ease"` // room at the armhole beyond the upper arm
	Head        gauge.Measurement `json:"head"`
	NeckStretch gauge.Ratio       `json:"neck_stretch"` // share by which the neck edge gives; see CheckNeck
	Shoulders   gauge.Measurement `json:"shoulders"`    // cross back
	SleeveEnd   gauge.Measurement `json:"sleeve_end"`   // what passes the end of a sleeve: the hand, or the arm
}

// Check returns what is wrong with a garment for this body, all of it, joined:
// a *FitError each. It looks at the measures "armhole depth", "neck round",
// "neck width" and "sleeve round" where the layout has them, so that it serves
// the ready garments and an app's own alike.
//
// It returns a *gauge.FieldError if a measure of the body is negative or the
// stretch is out of range.
func (b Body) Check(l layout.Layout) error { return errors.Join(b.check(l)...) }

func (b Body) check(l layout.Layout) (all []error) {
	for _, f := range []named{{"UpperArm", b.UpperArm}, {"Head", b.Head}, {"Shoulders", b.Shoulders}, {"SleeveEnd", b.SleeveEnd}} {
		if f.m.Sign() < 0 {
			return []error{&gauge.FieldError{Field: f.name, Got: say.Length(f.m), Want: "not less than nothing"}}
		}
	}
	check := func(name string, want gauge.Measurement, f func(got gauge.Measurement) error) {
		if got, ok := l.Measure(name); ok && want.Sign() > 0 {
			if err := f(got); err != nil {
				all = append(all, err)
			}
		}
	}
	check("armhole depth", b.UpperArm, func(got gauge.Measurement) error { return CheckArmhole(got, b.UpperArm, b.ArmEase) })
	check("neck round", b.Head, func(got gauge.Measurement) error { return CheckNeck(got, b.Head, b.NeckStretch) })
	check("neck width", b.Shoulders, func(got gauge.Measurement) error { return CheckNeckWidth(got, b.Shoulders) })
	check("sleeve round", b.SleeveEnd, func(got gauge.Measurement) error { return CheckSleeve(got, b.SleeveEnd) })
	return all
}

// CheckSizes checks every size of a garment against its body: one body a size,
// or one for all.
//
// It returns what is wrong in all sizes, joined: a *grade.SizeError with part,
// got and want for each misfit, wrapping the *FitError; labels, where given,
// name the sizes. It returns a *gauge.FieldError if the lists do not fit
// together.
func CheckSizes(labels grade.Run[string], garments grade.Run[Garment], bodies grade.Run[Body]) error {
	bodies, err := bodies.For(len(garments))
	if err != nil {
		return gauge.InField("bodies", err)
	}
	if len(labels) != 0 && len(labels) != len(garments) {
		return &gauge.FieldError{Field: "labels", Got: strconv.Itoa(len(labels)), Want: "none or " + strconv.Itoa(len(garments))}
	}
	var all []error
	for i, g := range garments {
		at := grade.SizeError{Index: i}
		if len(labels) != 0 {
			at.Size = labels[i]
		}
		for _, err := range bodies[i].check(g.Layout) {
			e := at
			e.Err = err
			if fit := (*FitError)(nil); errors.As(err, &fit) {
				e.Field, e.Got, e.Want = fit.Part, say.Length(fit.Got), fit.want()
			}
			all = append(all, &e)
		}
	}
	return errors.Join(all...)
}

// want says what the part must be: "at least 15 in (38.1 cm) for the upper arm".
func (e *FitError) want() string {
	if e.TooBig {
		return "at most " + say.Length(e.Want) + " of the " + e.Wearer
	}
	return "at least " + say.Length(e.Want) + " for the " + e.Wearer
}

// CheckArmhole returns a *FitError if the armhole, twice its finished depth
// round, is smaller than the upper arm and its ease. An ease of nothing lets
// the arm through and no more; a drop shoulder usually has 1 to 2 in more depth
// than a set-in sleeve (Patty Lyons, Sweater Fit handout).
//
// It returns a *gauge.FieldError if the depth or the arm is not more than
// nothing, or the ease takes the arm to nothing.
func CheckArmhole(depth, upperArm, ease gauge.Measurement) error {
	if err := positive(named{"depth", depth}, named{"upperArm", upperArm}, named{"upperArm + ease", upperArm.Add(ease)}); err != nil {
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
	if err := positive(named{"round", round}, named{"head", head}); err != nil {
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
	if err := positive(named{"round", round}, named{"arm", arm}); err != nil {
		return err
	}
	return atLeast("sleeve end", round, "arm", arm)
}

// CheckNeckWidth returns a *FitError if the neck opening laid flat is wider
// than the shoulders: such a garment slides off them.
//
// It returns a *gauge.FieldError if either is not more than nothing.
func CheckNeckWidth(neck, shoulders gauge.Measurement) error {
	if err := positive(named{"neck", neck}, named{"shoulders", shoulders}); err != nil {
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

// named is a measurement and the name of the field that holds it.
type named struct {
	name string
	m    gauge.Measurement
}

func positive(fields ...named) error {
	for _, f := range fields {
		if f.m.Sign() <= 0 {
			return &gauge.FieldError{Field: f.name, Got: say.Length(f.m), Want: "more than nothing"}
		}
	}
	return nil
}
