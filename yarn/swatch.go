package yarn

import (
	"fmt"

	"example.com/panelmath/gauge"
)

// Swatch is a finished rectangle of the fabric (washed and blocked like the
// garment, cut off close) and its mass, or the length of yarn that it gave when
// it was unravelled. Just one of Mass and Yarn is set. The zero value is not
// valid.
type Swatch struct {
	Width  gauge.Length `json:"width"`
	Height gauge.Length `json:"height"`
	Mass   Mass         `json:"mass,omitzero"`
	Yarn   Length       `json:"yarn,omitzero"`
}

// Validate returns a *gauge.FieldError if a side, the mass or the yarn is not
// valid or not more than 0, or if both or neither of Mass and Yarn are set.
func (s Swatch) Validate() error {
	for _, side := range []struct {
		field string
		l     gauge.Length
	}{{"Swatch.Width", s.Width}, {"Swatch.Height", s.Height}} {
		if err := side.l.Validate(); err != nil {
			return gauge.InField(side.field, err)
		}
		if side.l.Value.Sign() <= 0 {
			return &gauge.FieldError{Field: side.field, Got: side.l.String(), Want: "more than 0"}
		}
	}
	switch weighed, unravelled := !s.Mass.unset(), !s.Yarn.unset(); {
	case weighed && unravelled:
		return &gauge.FieldError{Field: "Swatch.Yarn", Got: "both a mass and a length of yarn", Want: "one of the two"}
	case unravelled:
		return s.Yarn.positive("Swatch.Yarn")
	}
	return s.Mass.positive("Swatch.Mass")
}

// Area returns the area of the swatch.
func (s Swatch) Area() Area { return Rectangle(s.Width.Measurement(), s.Height.Measurement()) }

// Fabric returns the line for an area of the same fabric: by its mass and the
// label, or by the unravelled length (then the label is not looked at).
//
// It returns a *gauge.FieldError if the swatch is not valid, the label is
// needed and not valid, or the area is negative or takes more than 100 km.
func (s Swatch) Fabric(name string, a Area, label Label) (Line, error) {
	if err := s.Validate(); err != nil {
		return Line{}, err
	}
	if a.Sign() < 0 {
		return Line{}, &gauge.FieldError{Field: "Area", Got: "less than nothing", Want: "at least 0"}
	}
	times := over(a.mm2, s.Area().mm2)
	u := s.Width.Unit
	line := Line{Name: name, Part: Fabric}
	if !s.Yarn.unset() {
		line.Length = s.Yarn.Measurement().Times(times)
		line.Why = fmt.Sprintf("%s at %v for %s takes %s of yarn", a.inSquare(u), s.Yarn, s.Area().inSquare(u), in(line.Length, s.Yarn.Unit))
		return line.checked()
	}
	if err := label.Validate(); err != nil {
		return Line{}, err
	}
	mass := s.Mass.Exact().Times(times)
	line.Length = label.LengthOf(mass)
	line.Why = fmt.Sprintf("%s at %v for %s weighs %s %v, at %v that is %s of yarn", a.inSquare(u), s.Mass, s.Area().inSquare(u),
		show(mass.In(s.Mass.Unit)), s.Mass.Unit, label, in(line.Length, label.Length.Unit))
	return line.checked()
}
