package yarn

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn/internal/say"
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

	Reading Reading `json:"reading,omitzero"`
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
	switch weighed, unravelled := !s.Mass.IsZero(), !s.Yarn.IsZero(); {
	case weighed && unravelled:
		return &gauge.FieldError{Field: "Swatch.Yarn", Got: "both a mass and a length of yarn", Want: "one of the two"}
	case !weighed && !unravelled:
		return &gauge.FieldError{Field: "Swatch.Mass", Got: "no mass and no length of yarn", Want: "one of the two"}
	case unravelled:
		if err := positive("Swatch.Yarn", s.Yarn.Value, s.Yarn); err != nil {
			return err
		}
	default:
		if err := positive("Swatch.Mass", s.Mass.Value, s.Mass); err != nil {
			return err
		}
	}
	return s.Reading.validate(s)
}

// Area returns the area of the swatch.
func (s Swatch) Area() Area { return Rectangle(s.Width.Measurement(), s.Height.Measurement()) }

// Fabric returns the line for an area of the same fabric: by its mass and the
// label, or by the unravelled length (then the label is not looked at). Less and
// More carry what the readings leave open.
//
// It returns a *gauge.FieldError if the swatch is not valid, the label is
// needed and not valid, or the area is negative or takes more than 100 km.
func (s Swatch) Fabric(name string, a Area, label Label) (Line, error) {
	if s.Yarn.IsZero() {
		if err := label.Validate(); err != nil {
			return Line{}, err
		}
	}
	return s.fabric(name, a, label.perGram(), "at "+label.String(), label.Length.Unit)
}

// Itself returns the line for making the swatch, from the same yarn. It returns
// the errors of Fabric.
func (s Swatch) Itself(label Label) (Line, error) {
	l, err := s.Fabric("swatch", s.Area(), label)
	l.Part = Swatching
	if err != nil {
		return Line{}, err
	}
	return l, nil
}

// HeldTogether returns the lines for an area of fabric that was worked with
// several strands held together, one line a strand. Each strand takes the same
// length, so a weighed swatch is shared out by the labels of all; name a yarn
// twice where it is doubled.
//
// It returns the errors of Fabric, and one if there is no yarn or there are more
// than 16.
func (s Swatch) HeldTogether(name string, a Area, yarns ...Yarn) ([]Line, error) {
	if len(yarns) == 0 || len(yarns) > 16 {
		return nil, &gauge.FieldError{Field: "Yarns", Got: strconv.Itoa(len(yarns)), Want: "1 to 16 strands", Err: gauge.ErrBounds}
	}
	var perLength gauge.Ratio // grams to a millimetre of all strands
	for i, y := range yarns {
		if err := y.Label.Validate(); err != nil {
			return nil, gauge.InField("Yarns["+strconv.Itoa(i)+"]", err)
		}
		perLength = perLength.Add(over(gauge.Int(1), y.Label.perGram()))
	}
	l, err := s.fabric(name, a, over(gauge.Int(1), perLength), fmt.Sprintf("with %d strands held together", len(yarns)), yarns[0].Label.Length.Unit)
	if err != nil {
		return nil, err
	}
	lines := make([]Line, len(yarns))
	for i, y := range yarns {
		lines[i] = l
		lines[i].Yarn = y.Name
	}
	return lines, nil
}

// fabric is Fabric for a yarn of so many millimetres to the gram; u is the unit
// in which the sentence tells the length.
func (s Swatch) fabric(name string, a Area, perGram gauge.Ratio, at string, u gauge.Unit) (Line, error) {
	if err := s.Validate(); err != nil {
		return Line{}, err
	}
	if a.Sign() < 0 {
		return Line{}, &gauge.FieldError{Field: "Area", Got: "less than nothing", Want: "at least 0"}
	}
	times := over(a.mm2, s.Area().mm2)
	line := Line{Name: name, Part: Fabric}
	if !s.Yarn.IsZero() {
		u = s.Yarn.Unit
		line.Length = s.Yarn.Measurement().Times(times)
		line.Why = fmt.Sprintf("%s at %v for %s takes %s of yarn", a.inSquare(s.Width.Unit), s.Yarn, s.Area().inSquare(s.Width.Unit), say.In(line.Length, u))
	} else {
		mass := s.Mass.Exact().Times(times)
		line.Length = gauge.MeasurementOf(mass.g.Mul(perGram), gauge.Millimetre)
		line.Why = fmt.Sprintf("%s at %v for %s weighs %s %v, %s that is %s of yarn", a.inSquare(s.Width.Unit), s.Mass, s.Area().inSquare(s.Width.Unit),
			say.Number(mass.In(s.Mass.Unit)), s.Mass.Unit, at, say.In(line.Length, u))
	}
	if low, high := s.spread(); low.Cmp(high) < 0 {
		line.Less = line.Length.Times(gauge.Int(1).Sub(low))
		line.More = line.Length.Times(high.Sub(gauge.Int(1)))
		line.Why += fmt.Sprintf("; the readings leave %s to %s open", say.In(line.Length.Sub(line.Less), u), say.In(line.Length.Add(line.More), u))
	}
	return line.checked()
}
