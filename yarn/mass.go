package yarn

import (
	"fmt"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn/internal/bound"
	"github.com/shopspring/decimal"
)

// MaxMass is the largest mass anything here takes, in kilograms.
const MaxMass = 1000

// MassUnit is a unit of mass. The zero value is no unit and is not valid.
// The pound is 453.59237 g exactly, the ounce a sixteenth of it (avoirdupois;
// international yard and pound agreement, 1959).
type MassUnit uint8

// The units of mass of the trade.
const (
	_ MassUnit = iota
	Gram
	Kilogram
	Ounce
	Pound
)

// massUnits holds the short name, the unit in billionths of a gram, and the
// words that are read as it.
var massUnits = [...]struct {
	name  string
	nano  int64
	words string
}{
	{"", 0, ""},
	{"g", 1_000_000_000, "g gr gram grams gramme grammes"},
	{"kg", 1_000_000_000_000, "kg kgs kilogram kilograms kilo kilos"},
	{"oz", 28_349_523_125, "oz ozs ounce ounces"},
	{"lb", 453_592_370_000, "lb lbs pound pounds"},
}

// Valid reports whether u is one of the units above.
func (u MassUnit) Valid() bool { return u > 0 && int(u) < len(massUnits) }

// String returns the short name: "oz".
func (u MassUnit) String() string {
	if !u.Valid() {
		return fmt.Sprintf("MassUnit(%d)", uint8(u))
	}
	return massUnits[u].name
}

// grams returns the unit in grams.
func (u MassUnit) grams() gauge.Ratio { return exactly(decimal.New(massUnits[u].nano, -9)) }

// ParseMassUnit reads a unit by its short name or its word. Case does not
// matter.
//
// It returns a *gauge.ParseError if s is none of these.
func ParseMassUnit(s string) (MassUnit, error) {
	w := strings.ToLower(strings.TrimSuffix(strings.TrimSpace(s), "."))
	for u := Gram; u <= Pound; u++ {
		for _, word := range strings.Fields(massUnits[u].words) {
			if w == word {
				return u, nil
			}
		}
	}
	return 0, &gauge.ParseError{Kind: "unit of mass", Text: s, Cause: "unknown unit " + text.Quote(s) + "; want g, kg, oz or lb"}
}

// MarshalText returns the short name. It returns a *gauge.FieldError for an
// invalid unit.
func (u MassUnit) MarshalText() ([]byte, error) {
	if !u.Valid() {
		return nil, &gauge.FieldError{Field: "MassUnit", Got: u.String(), Want: "g, kg, oz or lb"}
	}
	return []byte(u.String()), nil
}

// UnmarshalText reads what ParseMassUnit reads.
func (u *MassUnit) UnmarshalText(b []byte) error {
	return text.Read(u, b, ParseMassUnit)
}

// Mass is a mass as a label prints it or a scale reads it; never negative. The
// zero value has no unit and is not valid.
type Mass struct {
	Value decimal.Decimal
	Unit  MassUnit
}

// ParseMass reads `100 g`, `14.5g`, `3 1/2 oz`, `1¾ oz`, `0.45 kg`, `2 lb`.
//
// It returns a *gauge.ParseError if there is no number or no unit, the unit is
// unknown, the number is negative or out of bounds, or the mass exceeds 1000 kg.
func ParseMass(s string) (Mass, error) {
	in := input{"mass", s, "100 g"}
	d, unit, err := in.split()
	if err != nil {
		return Mass{}, err
	}
	u, err := ParseMassUnit(unit)
	switch m := (Mass{Value: d, Unit: u}); {
	case unit == "":
		return Mass{}, in.fail(len(s), "no unit; want g, kg, oz or lb", nil)
	case err != nil:
		return Mass{}, in.fail(len(s)-len(unit), "unknown unit "+text.Quote(unit)+"; want g, kg, oz or lb", nil)
	case d.Sign() < 0:
		return Mass{}, in.fail(0, "a negative number", nil)
	case m.Validate() != nil:
		return Mass{}, in.bounds(number.Beyond(d, "more than 1000 kg"))
	default:
		return m, nil
	}
}

// MustMass is ParseMass for literals in tests and package variables; it panics
// when s is not a mass.
func MustMass(s string) Mass {
	return text.Must("yarn.MustMass", s, ParseMass)
}

// Validate returns a *gauge.FieldError if the unit is not valid, the number is
// negative or out of bounds, or the mass exceeds 1000 kg.
func (m Mass) Validate() error {
	if !m.Unit.Valid() {
		return &gauge.FieldError{Field: "Unit", Got: m.Unit.String(), Want: "g, kg, oz or lb"}
	}
	if _, err := bound.Number("Value", m.Value); err != nil {
		return err
	}
	if m.Value.Sign() < 0 {
		return &gauge.FieldError{Field: "Value", Got: m.String(), Want: "at least 0"}
	}
	if m.Exact().In(Kilogram).Cmp(gauge.Int(MaxMass)) > 0 {
		return &gauge.FieldError{Field: "Value", Got: m.String(), Want: "at most 1000 kg", Err: gauge.ErrBounds}
	}
	return nil
}

// IsZero reports whether m is the zero value: none was given. 0 g is a mass.
func (m Mass) IsZero() bool { return m.Unit == 0 && m.Value.IsZero() }

// Exact returns the mass as an exact mass.
func (m Mass) Exact() ExactMass { return MassOf(exactly(m.Value), m.Unit) }

// String returns "14.5 g", which ParseMass reads back.
func (m Mass) String() string { return number.Text(m.Value) + " " + m.Unit.String() }

// MarshalText returns String. It returns the error of Validate.
func (m Mass) MarshalText() ([]byte, error) {
	if err := m.Validate(); err != nil {
		return nil, gauge.InField("Mass", err)
	}
	return []byte(m.String()), nil
}

// UnmarshalText reads what ParseMass reads.
func (m *Mass) UnmarshalText(b []byte) error {
	return text.Read(m, b, ParseMass)
}

// ExactMass is a mass without a unit of its own, as gauge.Measurement is a
// length: the form in which a calculated mass travels. The zero value is a mass
// of nothing.
type ExactMass struct{ g gauge.Ratio }

// MassOf returns x units. A unit that is not valid gives nothing.
func MassOf(x gauge.Ratio, u MassUnit) ExactMass {
	if !u.Valid() {
		return ExactMass{}
	}
	return ExactMass{x.Mul(u.grams())}
}

// In returns how many units m is, exactly. A unit that is not valid gives 0.
func (m ExactMass) In(u MassUnit) gauge.Ratio {
	if !u.Valid() {
		return gauge.Ratio{}
	}
	return over(m.g, u.grams())
}

// Add returns m + o.
func (m ExactMass) Add(o ExactMass) ExactMass { return ExactMass{m.g.Add(o.g)} }

// Sub returns m - o.
func (m ExactMass) Sub(o ExactMass) ExactMass { return ExactMass{m.g.Sub(o.g)} }

// Times returns m · x.
func (m ExactMass) Times(x gauge.Ratio) ExactMass { return ExactMass{m.g.Mul(x)} }

// Per returns m / o as a number. It returns a *gauge.FieldError if o is nothing.
func (m ExactMass) Per(o ExactMass) (gauge.Ratio, error) { return m.g.Quo(o.g) }

// Cmp returns -1, 0 or +1 as m is lighter than, equal to or heavier than o.
func (m ExactMass) Cmp(o ExactMass) int { return m.g.Cmp(o.g) }

// Equal reports whether m and o are the same mass.
func (m ExactMass) Equal(o ExactMass) bool { return m.g.Cmp(o.g) == 0 }

// Sign returns -1, 0 or +1.
func (m ExactMass) Sign() int { return m.g.Sign() }

// String returns m in grams: "14.5 g", or as a fraction, "1000/3 g".
func (m ExactMass) String() string {
	if d, ok := m.g.ExactDecimal(); ok {
		return number.Text(d) + " g"
	}
	return m.g.String() + " g"
}

// MarshalText returns String.
func (m ExactMass) MarshalText() ([]byte, error) { return []byte(m.String()), nil }

// UnmarshalText reads what String prints, and what ParseMass reads. It returns
// a *gauge.ParseError for anything else.
func (m *ExactMass) UnmarshalText(b []byte) error {
	if number, ok := strings.CutSuffix(string(b), " g"); ok {
		if g, err := gauge.ParseRatio(number); err == nil {
			*m = ExactMass{g}
			return nil
		}
	}
	v, err := ParseMass(string(b))
	if err != nil {
		return err
	}
	*m = v.Exact()
	return nil
}
