package yarn

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
)

// MaxLines is the largest number of lines in one quantity.
const MaxLines = 10_000

// Quantity is what one size takes of one yarn, and what to buy. Everything but
// Skeins is exact; that is the one rounding, and it goes up.
type Quantity struct {
	Label  Label             `json:"label"`
	Lines  []Line            `json:"lines"`
	Net    gauge.Measurement `json:"net"`    // the sum of the lines
	Margin Line              `json:"margin"` // the margin, a line of its own
	Total  gauge.Measurement `json:"total"`  // Net and Margin
	Mass   ExactMass         `json:"mass"`   // of Total, by the label
	Skeins int               `json:"skeins"` // the fewest that hold Total
	Slack  gauge.Measurement `json:"slack"`  // what is left of them
}

// Buy adds up the lines, adds the margin and returns how many skeins to buy.
// Which yarn a line is in does not matter here: see BuyEach for several.
//
// It returns a *gauge.FieldError if the label, the margin or a line is not
// valid, there is no line, or the total exceeds 100 km or 100 000 skeins.
func Buy(label Label, margin Margin, lines ...Line) (Quantity, error) {
	if err := label.Validate(); err != nil {
		return Quantity{}, err
	}
	if err := margin.Validate(); err != nil {
		return Quantity{}, err
	}
	if len(lines) == 0 || len(lines) > MaxLines {
		return Quantity{}, &gauge.FieldError{Field: "Lines", Got: strconv.Itoa(len(lines)), Want: "1 to 10000 lines", Err: gauge.ErrBounds}
	}
	q := Quantity{Label: label, Lines: append([]Line(nil), lines...)}
	for i, l := range lines {
		if err := l.Validate(); err != nil {
			return Quantity{}, gauge.InField("Lines["+strconv.Itoa(i)+"]", err)
		}
		q.Net = q.Net.Add(l.Length)
	}
	u := label.Length.Unit
	spare := q.Net.Times(margin.share())
	q.Margin = Line{Name: "margin", Part: Spare, Length: spare, Why: fmt.Sprintf("%v of %s is %s", margin, in(q.Net, u), in(spare, u))}
	q.Total = q.Net.Add(spare)
	q.Mass = label.MassOf(q.Total)
	var err error
	if q.Skeins, q.Slack, err = label.Skeins(q.Total); err != nil {
		return Quantity{}, err
	}
	return q, nil
}

// Explain says how every number came about, one sentence each: the lines, the
// margin, the total with its mass, and the skeins.
func (q Quantity) Explain() []string {
	var s []string
	for _, l := range q.Lines {
		s = append(s, l.Explain())
	}
	u, mu := q.Label.Length.Unit, q.Label.Mass.Unit
	s = append(s, q.Margin.Explain(),
		fmt.Sprintf("total: %s, which weighs %s %v at %v", in(q.Total, u), show(q.Mass.In(mu)), mu, q.Label))
	each, _ := q.Total.Per(q.Label.Length.Measurement())
	skeins := "skeins: " + show(each)
	if n, _ := each.Floor(); gauge.Int(n).Equal(each) {
		skeins += " just, nothing left"
	} else {
		skeins += fmt.Sprintf(", rounded up to %d, %s left", q.Skeins, in(q.Slack, u))
	}
	return append(s, skeins)
}
