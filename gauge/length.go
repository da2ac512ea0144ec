package gauge

import (
	"strings"

	"example.com/panelmath/internal/exact"
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
// It returns a *ParseError if there is no number or no unit, the unit is
// unknown, a comma stands as decimal mark, the number breaks the bounds, or
// the length exceeds 100 m.
func ParseLength(s string) (Length, error) {
	fail := func(at int, cause string, err error) (Length, error) {
		return Length{}, &ParseError{Kind: "length", Text: s, At: at, Cause: cause, Err: err}
	}
	if len(s) > text.Limit {
		return fail(text.Limit, "text too long; at most 10000 characters", ErrBounds)
	}
	i := len(s) - len(strings.TrimLeft(s, " \t"))
	body := strings.TrimRight(s, " \t")
	first, at, u, cause, bad := scanLength(body, i, true)
	if cause != "" {
		return fail(bad, cause, nil)
	}
	l := Length{Value: first, Unit: u}
	if u == Foot && at < len(body) {
		inches, end, iu, cause, bad := scanLength(body, at, false)
		if cause != "" || iu != Inch {
			if cause == "" {
				bad, cause = at, "feet are followed by inches alone: 5 ft 3 in"
			}
			return fail(bad, cause, nil)
		}
		if first.Sign() < 0 || strings.HasPrefix(body[i:], "-") || strings.HasPrefix(body[i:], "−") {
			inches = inches.Neg()
		}
		l = Length{Value: first.Mul(decimal.NewFromInt(12)).Add(inches), Unit: Inch}
		at = end
	}
	if at < len(body) {
		return fail(at, "unexpected "+text.Quote(body[at:])+" after the length", nil)
	}
	if err := l.Validate(); err != nil {
		return fail(i, "longer than 100 m, or a number out of bounds", ErrBounds)
	}
	return l, nil
}

// scanLength reads a number and its unit at s[i:] and the blanks after them.
func scanLength(s string, i int, signed bool) (d decimal.Decimal, at int, u Unit, cause string, bad int) {
	d, n, cause := scanNumber(s[i:], signed)
	if cause != "" {
		return d, 0, 0, cause, i
	}
	if n == 0 {
		return d, 0, 0, "no number at " + text.Quote(s[i:]) + "; want a number and a unit, like 20 1/2 in", i
	}
	at = i + n
	for at < len(s) && (s[at] == ' ' || s[at] == '\t' || s[at] == '-') {
		at++
	}
	end := at
	for end < len(s) && s[end] != ' ' && s[end] != '\t' && (s[end] < '0' || s[end] > '9') {
		end++
	}
	if end == at {
		return d, 0, 0, "no unit; want mm, cm, m, in, ft or yd", at
	}
	u, err := ParseUnit(s[at:end])
	if err != nil {
		return d, 0, 0, "unknown unit " + text.Quote(s[at:end]), at
	}
	for end < len(s) && (s[end] == ' ' || s[end] == '\t') {
		end++
	}
	return d, end, u, "", 0
}

// MustLength is ParseLength for literals in tests and package variables; it
// panics when s is not a length.
func MustLength(s string) Length {
	l, err := ParseLength(s)
	if err != nil {
		panic("gauge.MustLength: " + err.Error())
	}
	return l
}

// Validate returns a *FieldError if the unit is not valid, the number breaks
// the bounds, or the length exceeds 100 m either way.
func (l Length) Validate() error {
	if !l.Unit.Valid() {
		return &FieldError{Field: "Unit", Got: l.Unit.String(), Want: "mm, cm, m, in, ft or yd"}
	}
	if err := checkNumber("Value", l.Value); err != nil {
		return err
	}
	if m := l.Measurement(); m.mm.Cmp(exact.Int(MaxLength*1000)) > 0 || m.mm.Cmp(exact.Int(-MaxLength*1000)) < 0 {
		return &FieldError{Field: "Value", Got: l.String(), Want: "at most 100 m", Err: ErrBounds}
	}
	return nil
}

// Measurement returns the length as an exact measurement.
func (l Length) Measurement() Measurement {
	if !l.Unit.Valid() {
		return Measurement{}
	}
	return Measurement{fromDecimal(l.Value).Mul(l.Unit.mm())}
}

// String returns `20.5 in`, which ParseLength reads back. For halves and
// quarters see Grid.
func (l Length) String() string { return plain(l.Value) + " " + l.Unit.String() }

// MarshalText returns String. It returns the error of Validate.
func (l Length) MarshalText() ([]byte, error) {
	if err := l.Validate(); err != nil {
		return nil, InField("Length", err)
	}
	return []byte(l.String()), nil
}

// UnmarshalText reads what ParseLength reads.
func (l *Length) UnmarshalText(b []byte) error {
	v, err := ParseLength(string(b))
	if err != nil {
		return err
	}
	*l = v
	return nil
}
