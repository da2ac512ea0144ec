package gauge

import (
	"fmt"
	"strconv"

	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
)

// Counted says what a count counts. The zero value leaves it open.
type Counted uint8

// What is counted.
const (
	Stitches Counted = iota + 1 // along a row: width
	Rows                        // across the rows: length
)

var countedNames = [...]string{"", "stitches", "rows"}

// String returns "stitches", "rows", or "" for the zero value.
func (c Counted) String() string { return text.Name("Counted", c, countedNames[:]) }

// MarshalText returns String, or a *FieldError for an invalid value.
func (c Counted) MarshalText() ([]byte, error) { return marshalName("Counted", c, countedNames[:]) }

// UnmarshalText reads what String prints.
func (c *Counted) UnmarshalText(b []byte) error {
	return unmarshalName(c, "counted", b, countedNames[:])
}

// Count is a whole number of stitches or rows, and how it came about. In a
// count from a Rule alone the last three fields are zero.
type Count struct {
	Value   int         `json:"value"` // the answer
	Exact   Ratio       `json:"exact"` // what was asked for, before the rounding
	Below   int         `json:"below"` // the largest legal count not above Exact; Above where there is none
	Above   int         `json:"above"` // the smallest legal count not below Exact; Below where Exact is legal
	Tie     bool        `json:"tie"`   // Exact lay just in the middle of the two
	Rule    Rule        `json:"rule"`
	Each    Measurement `json:"each"`              // length of one stitch or row; nothing where no gauge was given
	Unit    Unit        `json:"unit,omitzero"`     // unit that the gauge was measured in, for Explain
	Counted Counted     `json:"counted,omitempty"` // what is counted, for Explain
}

// Off returns Value - Exact.
func (c Count) Off() Ratio { return Int(c.Value).Sub(c.Exact) }

// Deviation returns how much longer than asked the counted length is; it is
// negative where it is shorter, and nothing where no gauge was given.
func (c Count) Deviation() Measurement { return c.DeviationOf(c.Value) }

// DeviationOf returns how much longer than asked n stitches or rows would be:
// DeviationOf(c.Below) and DeviationOf(c.Above) are the two choices.
func (c Count) DeviationOf(n int) Measurement { return c.Each.Times(Int(n).Sub(c.Exact)) }

// Explain says in one sentence how the count came about, as ExplainIn does with
// the unit that the gauge was measured in: "103.6 stitches lie between 102 (0.8
// cm narrower) and 106 (1.2 cm wider), multiple of 4 + 2: the nearest is 102".
func (c Count) Explain() string { return c.ExplainIn(c.Unit) }

// ExplainIn says in one sentence how the count came about, both choices with
// what they cost: inches to the nearest eighth for a unit of the yard, else
// centimetres to the millimetre. Without a gauge there are no lengths to tell.
func (c Count) ExplainIn(u Unit) string {
	asked, lies, comes := c.asked(), "lies", "comes"
	if c.Counted != 0 {
		asked, lies, comes = asked+" "+c.Counted.String(), "lie", "come"
	}
	rule := ""
	if c.Rule.multiple() > 1 {
		rule = ", " + Rule{Multiple: c.Rule.Multiple, Plus: c.Rule.Plus}.String()
	}
	switch {
	case c.Below == c.Above && c.Off().Sign() == 0:
		return asked + " " + comes + " out exactly" + rule
	case c.Below == c.Above:
		return fmt.Sprintf("%s %s below the smallest count%s: %s", asked, lies, rule, c.choice(c.Value, u))
	}
	return fmt.Sprintf("%s %s between %s and %s%s: %s %d", asked, lies, c.choice(c.Below, u), c.choice(c.Above, u), rule, c.way(), c.Value)
}

// asked prints Exact to three places, and says so where it has more.
func (c Count) asked() string {
	x := number.Text(c.Exact.Decimal(3))
	if d, ok := c.Exact.ExactDecimal(); ok && number.Text(d) == x {
		return x
	}
	return "about " + x
}

// way says how the choice was made.
func (c Count) way() string {
	switch {
	case c.Rule.Direction == Up:
		return "rounded up to"
	case c.Rule.Direction == Down:
		return "rounded down to"
	case c.Tie && c.Value == c.Above:
		return "just in the middle, so take the larger,"
	case c.Tie:
		return "just in the middle, so take the smaller,"
	}
	return "the nearest is"
}

// choice returns "102 (0.8 cm narrower)".
func (c Count) choice(n int, u Unit) string {
	d := c.DeviationOf(n)
	if d.Sign() == 0 {
		return strconv.Itoa(n)
	}
	words := [...][2]string{{"over", "short"}, {"wider", "narrower"}, {"longer", "shorter"}}
	word := words[0]
	if int(c.Counted) < len(words) {
		word = words[c.Counted]
	}
	way := word[0]
	if d.Sign() < 0 {
		way, d = word[1], d.Times(Int(-1))
	}
	return fmt.Sprintf("%d (%s %s)", n, spoken(d, u), way)
}

// spoken prints a small length as a maker would read it off a ruler: "⅜ in",
// "about ⅜ in", "less than ⅛ in", "0.8 cm".
func spoken(d Measurement, u Unit) string {
	s, least := number.Text(d.In(Centimetre).Decimal(1))+" cm", "less than 0.1 cm"
	if u == Inch || u == Foot || u == Yard {
		s, least = EighthInch.Text(d), "less than ⅛ in"
	}
	l, _ := ParseLength(s)
	switch {
	case l.Value.IsZero():
		return least
	case l.Measurement().Equal(d):
		return s
	}
	return "about " + s
}
