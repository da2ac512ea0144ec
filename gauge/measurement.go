package gauge

import (
	"strings"

	"example.com/panelmath/internal/exact"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
)

// Measurement is an exact length without a unit of its own: the form in which
// finished measurements travel, since 101 stitches at 13 over 4 in are no
// decimal number of inches. The zero value is a length of nothing.
type Measurement struct{ mm exact.Ratio }

// MeasurementOf returns x units.
func MeasurementOf(x Ratio, u Unit) Measurement {
	if !u.Valid() {
		return Measurement{}
	}
	return Measurement{x.r.Mul(u.mm())}
}

// In returns how many units m is, exactly. A unit that is not valid gives 0.
func (m Measurement) In(u Unit) Ratio {
	if !u.Valid() {
		return Ratio{}
	}
	r, _ := m.mm.Quo(u.mm())
	return Ratio{r}
}

// Add returns m + o.
func (m Measurement) Add(o Measurement) Measurement { return Measurement{m.mm.Add(o.mm)} }

// Sub returns m - o.
func (m Measurement) Sub(o Measurement) Measurement { return Measurement{m.mm.Sub(o.mm)} }

// Times returns m · x: Times(Int(2)) is twice m, Times of a Share its share.
func (m Measurement) Times(x Ratio) Measurement { return Measurement{m.mm.Mul(x.r)} }

// Per returns m / o as a number. It returns a *FieldError if o is nothing.
func (m Measurement) Per(o Measurement) (Ratio, error) { return Ratio{m.mm}.Quo(Ratio{o.mm}) }

// Cmp returns -1, 0 or +1 as m is shorter than, equal to or longer than o.
func (m Measurement) Cmp(o Measurement) int { return m.mm.Cmp(o.mm) }

// Equal reports whether m and o are the same length.
func (m Measurement) Equal(o Measurement) bool { return m.mm.Cmp(o.mm) == 0 }

// Sign returns -1, 0 or +1.
func (m Measurement) Sign() int { return m.mm.Sign() }

// String returns m in millimetres, exactly: "1231.9 mm", or as a fraction,
// "13000/3 mm", where that is no decimal. ParseMeasurement reads it back. For people see Grid.
func (m Measurement) String() string {
	x := m.In(Millimetre)
	if d, ok := x.ExactDecimal(); ok {
		return number.Text(d) + " mm"
	}
	return x.String() + " mm"
}

// ParseMeasurement reads what String prints, of any length, a ratio of any unit
// ("100/3 cm"), and whatever ParseLength reads. In inches, feet and yards, where
// mixed numbers are usual, a fraction of 1 or more is left to ParseLength, which
// refuses it: 11/2 in may have been 1 1/2.
//
// It returns a *ParseError if s is none of these.
func ParseMeasurement(s string) (Measurement, error) {
	if i := strings.LastIndexByte(s, ' '); i > 0 {
		x, err := ParseRatio(s[:i])
		u, err2 := ParseUnit(s[i+1:])
		if err == nil && err2 == nil && !((u == Inch || u == Foot || u == Yard) && strings.Contains(s, "/") && (x.Cmp(Int(1)) >= 0 || x.Cmp(Int(-1)) <= 0)) {
			return MeasurementOf(x, u), nil
		}
	}
	l, err := ParseLength(s)
	if err != nil {
		return Measurement{}, err
	}
	return l.Measurement(), nil
}

// MarshalText returns String.
func (m Measurement) MarshalText() ([]byte, error) { return []byte(m.String()), nil }

// UnmarshalText reads what ParseMeasurement reads.
func (m *Measurement) UnmarshalText(b []byte) error {
	return text.Read(m, b, ParseMeasurement)
}
