package gauge

import (
	"fmt"
	"slices"
	"strings"

	"example.com/panelmath/internal/exact"
	"example.com/panelmath/internal/text"
)

// Unit is a unit of length. The zero value is no unit and is not valid.
// The inch is 25.4 mm exactly, the yard 0.9144 m (international yard and pound
// agreement, 1959).
type Unit uint8

// The units of length of the trade.
const (
	_ Unit = iota
	Millimetre
	Centimetre
	Metre
	Inch
	Foot
	Yard
)

// units holds the short name, ten times the unit in millimetres (the inch is
// 25.4), and the words that are read as it.
var units = [...]struct {
	name  string
	tenth int64
	words string
}{
	{"", 0, ""},
	{"mm", 10, "mm millimetre millimetres millimeter millimeters"},
	{"cm", 100, "cm cms centimetre centimetres centimeter centimeters"},
	{"m", 10000, "m metre metres meter meters"},
	{"in", 254, "in ins inch inches \" ″ ”"},
	{"ft", 3048, "ft foot feet ' ′ ’"},
	{"yd", 9144, "yd yds yard yards"},
}

// Valid reports whether u is one of the units above.
func (u Unit) Valid() bool { return u > 0 && int(u) < len(units) }

// String returns the short name: "in".
func (u Unit) String() string {
	if !u.Valid() {
		return fmt.Sprintf("Unit(%d)", uint8(u))
	}
	return units[u].name
}

// mm returns the unit in millimetres.
func (u Unit) mm() exact.Ratio {
	r, _ := exact.New(units[u].tenth, 10)
	return r
}

// ParseUnit reads a unit by its short name, its word in US or UK spelling, or
// its mark (" and '). Case does not matter.
//
// It returns a *ParseError if s is none of these.
func ParseUnit(s string) (Unit, error) {
	if len(s) <= text.Limit {
		w := strings.ToLower(strings.TrimSuffix(strings.TrimSpace(s), "."))
		for u := Millimetre; u <= Yard; u++ {
			if slices.Contains(strings.Fields(units[u].words), w) {
				return u, nil
			}
		}
	}
	return 0, &ParseError{Kind: "unit", Text: s, Cause: "unknown unit " + text.Quote(s) + "; want mm, cm, m, in, ft or yd"}
}

// MarshalText returns the short name. It returns a *FieldError for an invalid unit.
func (u Unit) MarshalText() ([]byte, error) {
	if !u.Valid() {
		return nil, &FieldError{Field: "Unit", Got: u.String(), Want: "a unit of length"}
	}
	return []byte(u.String()), nil
}

// UnmarshalText reads what ParseUnit reads.
func (u *Unit) UnmarshalText(b []byte) error {
	return text.Read(u, b, ParseUnit)
}
