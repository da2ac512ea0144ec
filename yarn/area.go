package yarn

import (
	"strings"
	"unicode"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn/internal/say"
)

// Area is an exact area of fabric without a unit of its own. The zero value is
// an area of nothing.
type Area struct{ mm2 gauge.Ratio }

// Rectangle returns the area of a rectangle of finished measurements.
func Rectangle(width, height gauge.Measurement) Area {
	return Area{width.In(gauge.Millimetre).Mul(height.In(gauge.Millimetre))}
}

// In returns how many square units a is: In(gauge.Inch) is the number of square
// inches. A unit that is not valid gives 0.
func (a Area) In(u gauge.Unit) gauge.Ratio {
	mm := gauge.MeasurementOf(gauge.Int(1), u).In(gauge.Millimetre)
	if mm.Sign() == 0 {
		return gauge.Ratio{}
	}
	return over(a.mm2, mm.Mul(mm))
}

// Add returns a + b.
func (a Area) Add(b Area) Area { return Area{a.mm2.Add(b.mm2)} }

// Times returns a · x: Times(gauge.Int(2)) is the area of two such pieces.
func (a Area) Times(x gauge.Ratio) Area { return Area{a.mm2.Mul(x)} }

// Per returns a / b as a number. It returns a *gauge.FieldError if b is nothing.
func (a Area) Per(b Area) (gauge.Ratio, error) { return a.mm2.Quo(b.mm2) }

// Cmp returns -1, 0 or +1 as a is smaller than, equal to or larger than b.
func (a Area) Cmp(b Area) int { return a.mm2.Cmp(b.mm2) }

// Sign returns -1, 0 or +1.
func (a Area) Sign() int { return a.mm2.Sign() }

// String returns a in square millimetres, as a decimal or a fraction:
// "23225.76 sq mm". ParseArea reads it back.
func (a Area) String() string {
	if d, ok := a.mm2.ExactDecimal(); ok {
		return number.Text(d) + " sq mm"
	}
	return a.mm2.String() + " sq mm"
}

// ParseArea reads `1534 sq in`, `1534 in²`, `0.99 sq m`, `13000/3 sq mm`.
//
// It returns a *gauge.ParseError if there is no number or no square unit, or the
// number is out of bounds.
func ParseArea(s string) (Area, error) {
	fail := func(cause string) (Area, error) {
		return Area{}, &gauge.ParseError{Kind: "area", Text: s, Cause: cause}
	}
	if len(s) > text.Limit {
		return fail("text too long; at most 10000 characters")
	}
	digits, unit := strings.TrimSpace(s), ""
	if i := strings.IndexFunc(digits, unicode.IsLetter); i >= 0 {
		digits, unit = strings.TrimSpace(digits[:i]), digits[i:]
	}
	name, squared := strings.CutPrefix(unit, "sq ")
	if !squared {
		name, squared = strings.CutSuffix(unit, "²")
	}
	u, err := gauge.ParseUnit(name)
	if !squared || err != nil {
		return fail("want a number and a square unit, like 1534 sq in")
	}
	x, err := gauge.ParseRatio(digits)
	if err != nil {
		return fail("want a number like 1534 or 13000/3")
	}
	mm := gauge.MeasurementOf(gauge.Int(1), u).In(gauge.Millimetre)
	return Area{x.Mul(mm).Mul(mm)}, nil
}

// MarshalText returns String.
func (a Area) MarshalText() ([]byte, error) { return []byte(a.String()), nil }

// UnmarshalText reads what ParseArea reads.
func (a *Area) UnmarshalText(b []byte) error {
	return text.Read(a, b, ParseArea)
}

// inSquare prints a in square u for a sentence.
func (a Area) inSquare(u gauge.Unit) string { return say.Number(a.In(u)) + " sq " + u.String() }
