package weight

import (
	"fmt"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn"
)

// Unit is a unit of grist: length to a mass, or mass to a length (tex, dtex,
// denier: the larger, the thicker). The zero value is no unit and is not valid.
type Unit uint8

// The units of grist of the trade and the mills. The counts are those of one
// strand, or of the yarn as it stands; a folded count like 2/28 is not read.
const (
	_ Unit = iota
	YardsPerPound
	YardsPerOunce
	YardsPer100g
	YardsPer50g
	MetresPer100g
	MetresPer50g
	MetresPerOunce
	MetresPerKilogram
	Tex          // g per 1000 m
	Decitex      // g per 10 000 m
	Denier       // g per 9000 m
	MetricCount  // Nm, m/g
	CottonCount  // 840 yd/lb
	WorstedCount // 560 yd/lb
	WoollenRun   // 1600 yd/lb
	LinenLea     // 300 yd/lb
	Typp         // 1000 yd/lb
)

// units holds the name, the words that are read as it, and what 1 of it is: so
// many lengths to one mass. Where reciprocal is set, n of it are that over n.
var units = [...]struct {
	name       string
	words      string
	lengths    int64
	length     gauge.Unit
	masses     int64
	mass       yarn.MassUnit
	reciprocal bool
}{
	{},
	{"yd/lb", "yd/lb;ypp;yards per pound", 1, gauge.Yard, 1, yarn.Pound, false},
	{"yd/oz", "yd/oz;yards per ounce", 1, gauge.Yard, 1, yarn.Ounce, false},
	{"yd/100 g", "yd/100 g;yd/100g", 1, gauge.Yard, 100, yarn.Gram, false},
	{"yd/50 g", "yd/50 g;yd/50g", 1, gauge.Yard, 50, yarn.Gram, false},
	{"m/100 g", "m/100 g;m/100g", 1, gauge.Metre, 100, yarn.Gram, false},
	{"m/50 g", "m/50 g;m/50g", 1, gauge.Metre, 50, yarn.Gram, false},
	{"m/oz", "m/oz", 1, gauge.Metre, 1, yarn.Ounce, false},
	{"m/kg", "m/kg", 1, gauge.Metre, 1, yarn.Kilogram, false},
	{"tex", "tex", 1000, gauge.Metre, 1, yarn.Gram, true},
	{"dtex", "dtex;decitex", 10000, gauge.Metre, 1, yarn.Gram, true},
	{"den", "den;denier", 9000, gauge.Metre, 1, yarn.Gram, true},
	{"Nm", "nm;metric count", 1, gauge.Metre, 1, yarn.Gram, false},
	{"cotton count", "cotton count;ne;nec", 840, gauge.Yard, 1, yarn.Pound, false},
	{"worsted count", "worsted count;new", 560, gauge.Yard, 1, yarn.Pound, false},
	{"woollen run", "woollen run;run", 1600, gauge.Yard, 1, yarn.Pound, false},
	{"linen lea", "linen lea;lea;nel", 300, gauge.Yard, 1, yarn.Pound, false},
	{"typp", "typp", 1000, gauge.Yard, 1, yarn.Pound, false},
}

// Valid reports whether u is one of the units above.
func (u Unit) Valid() bool { return u > 0 && int(u) < len(units) }

// String returns the name: "yd/lb".
func (u Unit) String() string {
	if !u.Valid() {
		return fmt.Sprintf("Unit(%d)", uint8(u))
	}
	return units[u].name
}

// one returns what 1 u is, in millimetres to the gram.
func (u Unit) one() gauge.Ratio {
	d := units[u]
	mm := gauge.MeasurementOf(gauge.Int(int(d.lengths)), d.length).In(gauge.Millimetre)
	r, _ := mm.Quo(yarn.MassOf(gauge.Int(int(d.masses)), d.mass).In(yarn.Gram))
	return r
}

// ParseUnit reads a unit by its name: `yd/lb`, `m/100 g`, `Nm`, `tex`, `denier`,
// `cotton count`. Case does not matter.
//
// It returns a *gauge.ParseError if s is none of these.
func ParseUnit(s string) (Unit, error) {
	w := strings.ToLower(strings.TrimSpace(s))
	for u := YardsPerPound; u <= Typp; u++ {
		for _, word := range strings.Split(units[u].words, ";") {
			if w == word {
				return u, nil
			}
		}
	}
	return 0, &gauge.ParseError{Kind: "unit of grist", Text: s, Cause: "unknown unit " + text.Quote(s) + "; want yd/lb, yd/oz, m/100 g, Nm, tex, denier or another of the package doc"}
}

// MarshalText returns the name. It returns a *gauge.FieldError for an invalid unit.
func (u Unit) MarshalText() ([]byte, error) {
	if !u.Valid() {
		return nil, &gauge.FieldError{Field: "Unit", Got: u.String(), Want: "a unit of grist"}
	}
	return []byte(u.String()), nil
}

// UnmarshalText reads what ParseUnit reads.
func (u *Unit) UnmarshalText(b []byte) error {
	return text.Read(u, b, ParseUnit)
}

// Grist is how thick a yarn is: how much length a mass of it has, exact and
// without a unit of its own. The zero value is no grist and is not valid.
type Grist struct{ mmPerG gauge.Ratio }

// GristOf returns the grist of x units. It returns a *gauge.FieldError if the
// unit is not valid, or x is not more than 0.
func GristOf(x gauge.Ratio, u Unit) (Grist, error) {
	if !u.Valid() {
		return Grist{}, &gauge.FieldError{Field: "Unit", Got: u.String(), Want: "a unit of grist"}
	}
	if x.Sign() <= 0 {
		return Grist{}, &gauge.FieldError{Field: "Grist", Got: x.Text(2), Want: "more than 0"}
	}
	if units[u].reciprocal {
		r, err := u.one().Quo(x)
		return Grist{r}, err
	}
	return Grist{x.Mul(u.one())}, nil
}

// OfLabel returns the grist that a label states. It returns a *gauge.FieldError
// if the label is not valid.
func OfLabel(l yarn.Label) (Grist, error) {
	if err := l.Validate(); err != nil {
		return Grist{}, err
	}
	r, err := l.Length.Measurement().In(gauge.Millimetre).Quo(l.Mass.Exact().In(yarn.Gram))
	return Grist{r}, err
}

// Validate returns a *gauge.FieldError if there is no grist.
func (g Grist) Validate() error {
	if g.mmPerG.Sign() <= 0 {
		return &gauge.FieldError{Field: "Grist", Got: "none", Want: "more than 0"}
	}
	return nil
}

// In returns how many units g is, exactly; 0 where g or the unit is not valid.
func (g Grist) In(u Unit) gauge.Ratio {
	if !u.Valid() || g.Validate() != nil {
		return gauge.Ratio{}
	}
	x, y := g.mmPerG, u.one()
	if units[u].reciprocal {
		x, y = y, x
	}
	r, _ := x.Quo(y)
	return r
}

// Cmp returns -1, 0 or +1 as g is thicker than, the same as or finer than o.
func (g Grist) Cmp(o Grist) int { return g.mmPerG.Cmp(o.mmPerG) }

// Together returns the grist of strands held together: their masses to a length
// add up. It returns a *gauge.FieldError if there is no strand, there are more
// than 16, or one has no grist.
func Together(strands ...Grist) (Grist, error) {
	if len(strands) == 0 || len(strands) > 16 {
		return Grist{}, &gauge.FieldError{Field: "Strands", Got: strconv.Itoa(len(strands)), Want: "1 to 16"}
	}
	var perLength gauge.Ratio
	for i, s := range strands {
		inverse, err := gauge.Int(1).Quo(s.mmPerG)
		if err != nil {
			return Grist{}, gauge.InField("Strands["+strconv.Itoa(i)+"]", s.Validate())
		}
		perLength = perLength.Add(inverse)
	}
	r, err := gauge.Int(1).Quo(perLength)
	return Grist{r}, err
}

// String returns the grist in metres to 100 g, as a decimal or a fraction:
// "0.9144 m/100 g". ParseGrist reads it back.
func (g Grist) String() string {
	x := g.In(MetresPer100g)
	if d, ok := x.ExactDecimal(); ok {
		return number.Text(d) + " m/100 g"
	}
	return x.String() + " m/100 g"
}

// ParseGrist reads a number and a unit: `1000 yd/lb`, `210 m/100 g`, `500 tex`,
// `14 Nm`, `Nm 14`.
//
// It returns a *gauge.ParseError if there is no number or no unit, the number is
// not more than 0 or out of bounds, or it is a folded count like 2/28: give the
// resultant, 14.
func ParseGrist(s string) (Grist, error) {
	fail := func(cause string, err error) (Grist, error) {
		return Grist{}, &gauge.ParseError{Kind: "grist", Text: s, Cause: cause, Err: err}
	}
	if len(s) > text.Limit {
		return fail("text too long; at most 10000 characters", gauge.ErrBounds)
	}
	body := strings.TrimSpace(s)
	end := strings.IndexFunc(body, func(c rune) bool { return (c < '0' || c > '9') && c != '.' && c != '/' })
	number, unit := body, ""
	switch {
	case end > 0:
		number, unit = body[:end], strings.TrimSpace(body[end:])
	case end == 0: // Nm 14
		if i := strings.LastIndexByte(body, ' '); i > 0 {
			unit, number = body[:i], body[i+1:]
		}
	}
	u, err := ParseUnit(unit)
	if err != nil {
		return fail("want a number and a unit of grist, like 210 m/100 g or 1000 yd/lb", nil)
	}
	if u >= Tex && strings.Contains(number, "/") {
		return fail("a folded count; give the resultant: 2/28 Nm is 14 Nm", nil)
	}
	x, err := gauge.ParseRatio(number)
	if err != nil {
		return fail("want a number like 210 or 1000", err)
	}
	g, err := GristOf(x, u)
	if err != nil {
		return fail("want more than 0", nil)
	}
	return g, nil
}

// MustGrist is ParseGrist for literals in tests and package variables; it panics
// when s is not a grist.
func MustGrist(s string) Grist {
	return text.Must("weight.MustGrist", s, ParseGrist)
}

// MarshalText returns String. It returns the error of Validate.
func (g Grist) MarshalText() ([]byte, error) {
	if err := g.Validate(); err != nil {
		return nil, err
	}
	return []byte(g.String()), nil
}

// UnmarshalText reads what ParseGrist reads.
func (g *Grist) UnmarshalText(b []byte) error {
	return text.Read(g, b, ParseGrist)
}
