package yarn

import (
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn/internal/bound"
)

// Label is what the label of one skein (ball, hank, cake) says: its length and
// its mass, each in the unit it is printed in. The zero value is not valid.
type Label struct {
	Length Length `json:"length"`
	Mass   Mass   `json:"mass"`
}

// Validate returns a *gauge.FieldError if either is not valid or not more than 0.
func (l Label) Validate() error {
	if err := positive("Label.Length", l.Length.Value, l.Length); err != nil {
		return err
	}
	return positive("Label.Mass", l.Mass.Value, l.Mass)
}

// LengthOf returns the length of yarn that has mass m, exactly. The label must
// be valid.
func (l Label) LengthOf(m ExactMass) gauge.Measurement {
	n, err := m.Per(l.Mass.Exact())
	if err != nil {
		return gauge.Measurement{}
	}
	return l.Length.Measurement().Times(n)
}

// MassOf returns the mass of a length of yarn, exactly. The label must be valid.
func (l Label) MassOf(m gauge.Measurement) ExactMass {
	n, err := m.Per(l.Length.Measurement())
	if err != nil {
		return ExactMass{}
	}
	return l.Mass.Exact().Times(n)
}

// perGram returns the millimetres to a gram, 0 where the label is not valid.
func (l Label) perGram() gauge.Ratio {
	r, _ := l.Length.Measurement().In(gauge.Millimetre).Quo(l.Mass.Exact().g)
	return r
}

// Skeins returns how many skeins hold m, rounded up and never down, and the
// slack: what is left over of the last one. An exact multiple is not rounded
// further. It returns a *gauge.FieldError if the label is not valid, m is
// negative or out of bounds, or more than 100 000 skeins are needed.
func (l Label) Skeins(m gauge.Measurement) (skeins int, slack gauge.Measurement, err error) {
	if err := l.Validate(); err != nil {
		return 0, slack, err
	}
	if err := bound.Length("Total", m); err != nil {
		return 0, slack, err
	}
	each := l.Length.Measurement()
	n, err := m.Per(each)
	if err == nil {
		skeins, err = n.Ceil()
	}
	if err != nil || skeins > gauge.MaxCount {
		return 0, slack, &gauge.FieldError{Field: "Skeins", Got: "more than 100000", Want: "at most 100000", Err: gauge.ErrBounds}
	}
	return skeins, each.Times(gauge.Int(skeins)).Sub(m), nil
}

// String returns "230 yd = 100 g", which ParseLabel reads back.
func (l Label) String() string { return l.Length.String() + " = " + l.Mass.String() }

// ParseLabel reads a length and a mass in either order, with `=`, `/`, `per` or
// `,` between them: `230 yd = 100 g`, `100 g / 210 m`, `400 yd per 4 oz`.
//
// It returns a *gauge.ParseError if s is not of this form, or either part is
// not valid or not more than 0.
func ParseLabel(s string) (Label, error) {
	fail := func(cause string, err error) (Label, error) {
		return Label{}, &gauge.ParseError{Kind: "label", Text: s, Cause: cause, Err: err}
	}
	if len(s) > text.Limit {
		return fail("text too long; at most 10000 characters", gauge.ErrBounds)
	}
	a, b, ok := strings.Cut(s, "=")
	for _, mark := range []string{" per ", " / ", ","} {
		if !ok {
			a, b, ok = strings.Cut(s, mark)
		}
	}
	if !ok { // 230yd/100g; a slash between digits is a fraction
		for i := 1; i+1 < len(s) && !ok; i++ {
			if s[i] == '/' && (s[i-1] < '0' || s[i-1] > '9') {
				a, b, ok = s[:i], s[i+1:], true
			}
		}
	}
	if !ok {
		return fail("want a length and a mass, like 230 yd = 100 g", nil)
	}
	if _, err := ParseMass(a); err == nil {
		a, b = b, a
	}
	var l Label
	var err error
	if l.Length, err = ParseLength(a); err != nil {
		return fail(err.Error(), err)
	}
	if l.Mass, err = ParseMass(b); err != nil {
		return fail(err.Error(), err)
	}
	if err := l.Validate(); err != nil {
		return fail(err.Error(), err)
	}
	return l, nil
}

// MustLabel is ParseLabel for literals in tests and package variables; it panics
// when s is not a label.
func MustLabel(s string) Label {
	return text.Must("yarn.MustLabel", s, ParseLabel)
}
