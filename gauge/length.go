package gauge

import (
	"example.com/panelmath/internal/exact"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
	"github.com/shopspring/decimal"
)

// MaxLength is the longest length anything here takes, in metres, either sign.
const MaxLength = 100

// Length is a length as it was measured or chosen: a decimal and its unit. It
// may be negative (ease is). The zero value has no unit and is not valid; a
// length of nothing is Length{Unit: Inch}.
type Length struct {
	Value decimal.Decimal
	Unit  Unit
}

// ParseLength reads `20.5 in`, `20 1/2 in`, `20½"`, `52 cm`, `5 ft 3 in`,
// `1.5 yd`, with or without the space, with a leading sign. Feet and inches
// together give inches. Fractions are those of a tape measure and of tenths,
// which are exact decimals.
//
// It returns a *ParseError with the place if there is no number or no unit, the
// unit is unknown, a comma stands as decimal mark, the number breaks the
// bounds, or the length exceeds 100 m.
func ParseLength(s string) (Length, error) {
	p, err := newScanner("length", s)
	if err != nil {
		return Length{}, err
	}
	l, err := p.length()
	if err == nil {
		err = p.end()
	}
	if err != nil {
		return Length{}, err
	}
	return l, nil
}

// MustLength is ParseLength for literals in tests and package variables; it
// panics when s is not a length.
func MustLength(s string) Length {
	return text.Must("gauge.MustLength", s, ParseLength)
}

// Validate returns a *FieldError if the unit is not valid, the number breaks
// the bounds, or the length exceeds 100 m either way.
func (l Length) Validate() error {
	_, err := l.mm()
	return err
}

// mm returns the length in millimetres, or the error of Validate.
func (l Length) mm() (exact.Ratio, error) {
	if !l.Unit.Valid() {
		return exact.Ratio{}, &FieldError{Field: "Unit", Got: l.Unit.String(), Want: "mm, cm, m, in, ft or yd"}
	}
	x, err := bounded("Value", l.Value)
	if err != nil {
		return exact.Ratio{}, err
	}
	x = x.Mul(l.Unit.mm())
	if x.Cmp(exact.Int(MaxLength*1000)) > 0 || x.Cmp(exact.Int(-MaxLength*1000)) < 0 {
		return exact.Ratio{}, &FieldError{Field: "Value", Got: l.String(), Want: "at most 100 m", Err: ErrBounds}
	}
	return x, nil
}

// Measurement returns the length as an exact measurement, and nothing for a
// length that is not valid.
func (l Length) Measurement() Measurement {
	x, _ := l.mm()
	return Measurement{x}
}

// String returns `20.5 in`, which ParseLength reads back. For halves and
// quarters see Grid.
func (l Length) String() string { return number.Text(l.Value) + " " + l.Unit.String() }

// MarshalText returns String. It returns the error of Validate.
func (l Length) MarshalText() ([]byte, error) {
	if err := l.Validate(); err != nil {
		return nil, InField("Length", err)
	}
	return []byte(l.String()), nil
}

// UnmarshalText reads what ParseLength reads.
func (l *Length) UnmarshalText(b []byte) error {
	return text.Read(l, b, ParseLength)
}
