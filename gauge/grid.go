package gauge

import (
	"math/big"
	"strings"

	"example.com/panelmath/internal/exact"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
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

// gridNames are the text forms, in the order of the constants.
var gridNames = [...]string{
	"quarter inch", "eighth inch", "half inch", "whole inch", "half centimetre", "whole centimetre",
	"half centimetre at 2.5 to the inch", "whole centimetre at 2.5 to the inch",
}

// shape returns the printed unit, the steps in it, and the hundredths of a
// millimetre that are printed as one. A grid that is not valid is QuarterInch.
func (g Grid) shape() (u Unit, steps, hundredths int64) {
	switch g {
	case EighthInch:
		return Inch, 8, 2540
	case HalfInch:
		return Inch, 2, 2540
	case WholeInch:
		return Inch, 1, 2540
	case HalfCentimetre:
		return Centimetre, 2, 1000
	case WholeCentimetre:
		return Centimetre, 1, 1000
	case HalfCentimetreAt25: // an inch is printed as 2.5 cm: 25.4 mm / 2.5
		return Centimetre, 2, 1016
	case WholeCentimetreAt25:
		return Centimetre, 1, 1016
	}
	return Inch, 4, 2540
}

// Validate returns a *FieldError if g is none of the grids above.
func (g Grid) Validate() error {
	_, err := g.MarshalText()
	return err
}

// Unit returns the unit that g prints.
func (g Grid) Unit() Unit {
	u, _, _ := g.shape()
	return u
}

// String names the grid: "quarter inch". ParseGrid reads it back.
func (g Grid) String() string { return text.Name("Grid", g, gridNames[:]) }

// ParseGrid reads the name of a grid, in either spelling of centimetre and
// whatever the case: "half centimetre", "Quarter inch".
//
// It returns a *ParseError if s is none of them.
func ParseGrid(s string) (Grid, error) {
	g, err := parseName[Grid]("grid", s, gridNames[:])
	if err == nil || len(s) > text.Limit {
		return g, err
	}
	if g, err := parseName[Grid]("grid", strings.ReplaceAll(strings.ToLower(s), "centimeter", "centimetre"), gridNames[:]); err == nil {
		return g, nil
	}
	return 0, err
}

// MarshalText returns String. It returns the error of Validate.
func (g Grid) MarshalText() ([]byte, error) { return marshalName("Grid", g, gridNames[:]) }

// UnmarshalText reads what ParseGrid reads.
func (g *Grid) UnmarshalText(b []byte) error {
	return text.Read(g, b, ParseGrid)
}

// Round returns m on the grid, rounded once, a tie away from zero.
func (g Grid) Round(m Measurement) Length {
	n, _ := g.nearest(m)
	return g.at(n)
}

// RoundUp returns the first length on the grid that is not below m: for what must
// not come out too short, like the length of a tail.
func (g Grid) RoundUp(m Measurement) Length {
	n, side := g.nearest(m)
	if side > 0 {
		n.Add(n, big.NewInt(1))
	}
	return g.at(n)
}

// nearest returns the step of the grid that is nearest to m, and on which side
// of it m lies: -1 below, +1 above.
func (g Grid) nearest(m Measurement) (n *big.Int, side int) {
	_, steps, hundredths := g.shape()
	x, _ := exact.New(steps*100, hundredths) // steps in a millimetre
	x = m.mm.Mul(x)
	n = x.Digits(0)
	return n, x.Cmp(exact.FromBig(new(big.Rat).SetInt(n)))
}

// at returns the length of n steps, as it is printed.
func (g Grid) at(n *big.Int) Length {
	u, steps, _ := g.shape()
	// Steps are halves, quarters or eighths: 125 thousandths is the finest.
	return Length{Value: decimal.NewFromBigInt(n.Mul(n, big.NewInt(1000/steps)), -3), Unit: u}
}

// Number returns m on the grid as a person writes it, without the unit: inches
// with a fraction sign, "48½"; centimetres as a decimal, "123" or "167.5". It
// is rounded to the grid first and split into whole and fraction after.
func (g Grid) Number(m Measurement) string {
	v := g.Round(m).Value
	if g.Unit() != Inch {
		return number.Text(v)
	}
	whole := v.Abs().Truncate(0)
	s := number.Vulgar(v.Abs().Sub(whole).Shift(3).IntPart())
	if s == "" || !whole.IsZero() {
		s = number.Text(whole) + s
	}
	if v.Sign() < 0 {
		s = "-" + s
	}
	return s
}

// Text returns Number and the unit: "48½ in". ParseLength reads it back.
func (g Grid) Text(m Measurement) string { return g.Number(m) + " " + g.Unit().String() }
