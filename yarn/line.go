package yarn

import (
	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/enum"
	"example.com/panelmath/yarn/internal/bound"
	"example.com/panelmath/yarn/internal/say"
)

// Part says what a line of a quantity is for.
type Part uint8

// The parts of a garment that take yarn. The zero value is Fabric.
const (
	Fabric Part = iota
	Foundation
	Seam
	Ends
	Edging
	Swatching
	Spare
)

var parts = [...]string{"fabric", "foundation", "seam", "ends", "edging", "swatch", "margin"}

// String returns the name: "seam".
func (p Part) String() string { return enum.Name("Part", p, parts[:]) }

// MarshalText returns String. It returns a *gauge.FieldError for a value that is
// none of the above.
func (p Part) MarshalText() ([]byte, error) {
	return enum.Marshal("Part", p, parts[:])
}

// UnmarshalText reads what String prints. It returns a *gauge.ParseError for
// anything else.
func (p *Part) UnmarshalText(b []byte) error {
	return enum.Unmarshal(p, "Part", b, parts[:])
}

// Line is one line of a quantity: the yarn that one thing takes, exact, and how
// much less or more it might be. The zero value is fabric that takes nothing.
type Line struct {
	Name   string            `json:"name"`
	Part   Part              `json:"part"`
	Piece  string            `json:"piece,omitempty"` // the piece it belongs to; empty where it belongs to none
	Yarn   string            `json:"yarn,omitempty"`  // the yarn or colour it is worked in; empty where there is only one
	Length gauge.Measurement `json:"length"`
	Less   gauge.Measurement `json:"less"` // it may be this much less than Length
	More   gauge.Measurement `json:"more"` // it may be this much more
	Why    string            `json:"why"`  // the arithmetic, in one sentence
}

// Validate returns a *gauge.FieldError if the part is unknown, the length is
// negative or beyond 100 km, or Less or More is negative or Less exceeds the
// length.
func (l Line) Validate() error {
	if l.Part > Spare {
		return &gauge.FieldError{Field: "Line.Part", Got: l.Part.String(), Want: "a part of a garment"}
	}
	if err := bound.Length("Line.Length", l.Length); err != nil {
		return err
	}
	if err := bound.Length("Line.More", l.More); err != nil {
		return err
	}
	if err := bound.Fine("Line.Less", l.Less); err != nil {
		return err
	}
	if l.Less.Sign() < 0 || l.Less.Cmp(l.Length) > 0 {
		return &gauge.FieldError{Field: "Line.Less", Got: l.Less.String(), Want: "0 to the length of the line"}
	}
	return nil
}

// checked returns the line, or the error of Validate and no line.
func (l Line) checked() (Line, error) {
	if err := l.Validate(); err != nil {
		return Line{}, err
	}
	return l, nil
}

// Explain returns the name and the arithmetic in one sentence.
func (l Line) Explain() string {
	why := l.Why
	if why == "" {
		why = say.In(l.Length, gauge.Metre) + " given"
	}
	if l.Name == "" {
		return why
	}
	return l.Name + ": " + why
}
