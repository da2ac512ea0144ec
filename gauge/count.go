package gauge

import (
	"fmt"
	"strconv"
)

// Count is a whole number of stitches or rows, and how it came about.
type Count struct {
	Value int   // the answer
	Exact Ratio // what was asked for, before the rounding
	Below int   // the largest legal count not above Exact
	Above int   // the smallest legal count not below it; Below where Exact is legal
	Tie   bool  // Exact lay just in the middle of the two
	Rule  Rule
	Each  Measurement // length of one stitch or row; nothing where no gauge was given
}

// Off returns Value - Exact.
func (c Count) Off() Ratio { return Int(c.Value).Sub(c.Exact) }

// Deviation returns how much longer than asked the counted length is; it is
// negative where it is shorter, and nothing where no gauge was given.
func (c Count) Deviation() Measurement { return c.Each.Times(c.Off()) }

// Explain says in one sentence how the count came about: "103.6 lies between
// 102 and 106 (multiple of 4 + 2): the nearest is 102, 8 mm narrower".
func (c Count) Explain() string {
	x := c.Exact.Decimal(3)
	exactly := ""
	if !(Ratio{fromDecimal(x)}).Equal(c.Exact) {
		exactly = "about "
	}
	s := exactly + plain(x)
	rule := ""
	if c.Rule.multiple() > 1 {
		rule = " (" + Rule{Multiple: c.Rule.Multiple, Plus: c.Rule.Plus}.String() + ")"
	}
	switch {
	case c.Below == c.Above && c.Off().Sign() == 0:
		return s + rule + " comes out exactly"
	case c.Below == c.Above:
		s += " is less than the smallest count" + rule + ", " + strconv.Itoa(c.Value)
	default:
		s += fmt.Sprintf(" lies between %d and %d%s: ", c.Below, c.Above, rule)
		way := "the nearest is"
		switch {
		case c.Rule.Direction == Up:
			way = "rounded up,"
		case c.Rule.Direction == Down:
			way = "rounded down,"
		case c.Tie && c.Rule.Direction == Nearest:
			way = "just in the middle, the larger is taken,"
		case c.Tie:
			way = "just in the middle, the smaller is taken,"
		}
		s += way + " " + strconv.Itoa(c.Value)
	}
	if d := c.Deviation(); d.Sign() != 0 {
		word := "more"
		if d.Sign() < 0 {
			word, d = "less", d.Times(Int(-1))
		}
		s += ", " + plain(d.In(Millimetre).Decimal(1)) + " mm " + word + " than asked"
	}
	return s
}
