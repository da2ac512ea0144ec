package gauge

import (
	"fmt"

	"example.com/panelmath/internal/exact"
	"github.com/shopspring/decimal"
)

// Grid is what a ruler can show: the steps on which a length is printed.
// Editors print inches in quarters and centimetres in halves or wholes (common
// practice; worked example B10 names one technical editor's list). The zero
// value is QuarterInch.
//
// The two grids that end in At25 print centimetres at 2.5 to the inch, the
// editors' habit that treats 4 in and 10 cm as one span. It is a choice for
// printing only; everything else here converts at 2.54.
type Grid uint8

// The grids that patterns are printed on.
const (
	QuarterInch Grid = iota
	EighthInch
	HalfInch
	WholeInch
	HalfCentimetre
	WholeCentimetre
	HalfCentimetreAt25
	WholeCentimetreAt25
)

// grids holds, for each grid, its unit, its steps to the unit, the size of a
// step as a decimal, and ten times the millimetres that count as one unit.
func (g Grid) shape() (u Unit, steps int64, step decimal.Decimal, tenths int64) {
	switch g {
	case EighthInch:
		return Inch, 8, decimal.New(125, -3), 254
	case HalfInch:
		return Inch, 2, decimal.New(5, -1), 254
	case WholeInch:
		return Inch, 1, decimal.New(1, 0), 254
	case HalfCentimetre:
		return Centimetre, 2, decimal.New(5, -1), 100
	case WholeCentimetre:
		return Centimetre, 1, decimal.New(1, 0), 100
	case HalfCentimetreAt25: // 25.4 mm print as 2.5 cm: a printed centimetre is 10.16 mm
		return Centimetre, 2, decimal.New(5, -1), 0
	case WholeCentimetreAt25:
		return Centimetre, 1, decimal.New(1, 0), 0
	}
	return Inch, 4, decimal.New(25, -2), 254
}

// Unit returns the unit that g prints.
func (g Grid) Unit() Unit {
	u, _, _, _ := g.shape()
	return u
}

// String names the grid: "quarter inch".
func (g Grid) String() string {
	names := [...]string{"quarter inch", "eighth inch", "half inch", "whole inch", "half centimetre", "whole centimetre",
		"half centimetre at 2.5 to the inch", "whole centimetre at 2.5 to the inch"}
	if int(g) < len(names) {
		return names[g]
	}
	return fmt.Sprintf("Grid(%d)", uint8(g))
}

// Round returns m on the grid, rounded once, a tie away from zero.
func (g Grid) Round(m Measurement) Length {
	u, steps, step, tenths := g.shape()
	unit, _ := exact.New(tenths, 10)
	if tenths == 0 {
		unit, _ = exact.New(1016, 100)
	}
	x, _ := m.mm.Quo(unit)
	n := Ratio{x.Mul(exact.Int(steps))}.Decimal(0)
	return Length{Value: n.Mul(step), Unit: u}
}

// Number returns m on the grid as a person writes it, without the unit: inches
// with a fraction sign, "48½"; centimetres as a decimal, "123" or "167.5". It
// is rounded to the grid first and split into whole and fraction after.
func (g Grid) Number(m Measurement) string {
	v := g.Round(m).Value
	if g.Unit() != Inch {
		return v.String()
	}
	whole := v.Abs().Truncate(0)
	s, part := whole.String(), v.Abs().Sub(whole)
	for _, sign := range []string{"½", "¼", "¾", "⅛", "⅜", "⅝", "⅞"} {
		if d, _ := vulgar(sign); d.Equal(part) {
			s += sign
			if whole.IsZero() {
				s = sign
			}
		}
	}
	if v.Sign() < 0 {
		s = "-" + s
	}
	return s
}

// Text returns Number and the unit: "48½ in". ParseLength reads it back.
func (g Grid) Text(m Measurement) string { return g.Number(m) + " " + g.Unit().String() }
