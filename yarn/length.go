package yarn

import (
	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn/internal/bound"
	"github.com/shopspring/decimal"
)

// MaxLength is the longest length of yarn anything here takes, in metres:
// 100 km.
const MaxLength = bound.Metres

// Length is a length of yarn as a label prints it or a tape reads it: `230 yd`.
// It is a type of its own because a skein is longer than gauge.MaxLength, and is
// never negative. A gauge.Length converts: yarn.Length(l). The zero value has no
// unit and is not valid.
type Length struct {
	Value decimal.Decimal
	Unit  gauge.Unit
}

// ParseLength reads `230 yd`, `210 m`, `785.5 in`, `20 1/2 in`, `20½"`, with or
// without the space.
//
// It returns a *gauge.ParseError if there is no number or no unit, the unit is
// unknown, the number is negative or out of bounds, or the length exceeds 100 km.
func ParseLength(s string) (Length, error) {
	in := input{"yarn length", s, "230 yd"}
	d, unit, err := in.split()
	if err != nil {
		return Length{}, err
	}
	u, err := gauge.ParseUnit(unit)
	switch l := (Length{Value: d, Unit: u}); {
	case unit == "":
		return Length{}, in.fail(len(s), "no unit; want yd, m, in, ft, cm or mm", nil)
	case err != nil:
		return Length{}, in.fail(len(s)-len(unit), "unknown unit "+text.Quote(unit)+"; want yd, m, in, ft, cm or mm", nil)
	case d.Sign() < 0:
		return Length{}, in.fail(0, "a negative number", nil)
	case l.Validate() != nil:
		return Length{}, in.bounds(number.Beyond(d, "longer than 100 km"))
	default:
		return l, nil
	}
}

// MustLength is ParseLength for literals in tests and package variables; it
// panics when s is not a length of yarn.
func MustLength(s string) Length {
	return text.Must("yarn.MustLength", s, ParseLength)
}

// Validate returns a *gauge.FieldError if the unit is not valid, the number is
// negative or out of bounds, or the length exceeds 100 km.
func (l Length) Validate() error {
	if !l.Unit.Valid() {
		return &gauge.FieldError{Field: "Unit", Got: l.Unit.String(), Want: "yd, m, in, ft, cm or mm"}
	}
	if _, err := bound.Number("Value", l.Value); err != nil {
		return err
	}
	if l.Value.Sign() < 0 {
		return &gauge.FieldError{Field: "Value", Got: l.String(), Want: "at least 0"}
	}
	return bound.Length("Value", l.Measurement())
}

// finite reports a sum that has grown into fractions without end.
func finite(field string, ms ...gauge.Measurement) error {
	for _, m := range ms {
		if err := bound.Fine(field, m); err != nil {
			return err
		}
	}
	return nil
}

// IsZero reports whether l is the zero value: none was given. 0 yd is a length.
func (l Length) IsZero() bool { return l.Unit == 0 && l.Value.IsZero() }

// Measurement returns the length as an exact measurement.
func (l Length) Measurement() gauge.Measurement {
	return gauge.MeasurementOf(exactly(l.Value), l.Unit)
}

// String returns "230 yd", which ParseLength reads back.
func (l Length) String() string { return number.Text(l.Value) + " " + l.Unit.String() }

// MarshalText returns String. It returns the error of Validate.
func (l Length) MarshalText() ([]byte, error) {
	if err := l.Validate(); err != nil {
		return nil, gauge.InField("Length", err)
	}
	return []byte(l.String()), nil
}

// UnmarshalText reads what ParseLength reads.
func (l *Length) UnmarshalText(b []byte) error {
	return text.Read(l, b, ParseLength)
}
