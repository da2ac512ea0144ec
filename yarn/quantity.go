package yarn

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn/internal/say"
)

// MaxLines is the largest number of lines in one quantity.
const MaxLines = 10_000

// Quantity is what one size takes of one yarn, and what to buy. Everything but
// Skeins is exact; that is the one rounding, and it goes up.
type Quantity struct {
	Yarn   string            `json:"yarn,omitempty"` // set by BuyEach
	Label  Label             `json:"label"`
	Lines  []Line            `json:"lines"`
	Net    gauge.Measurement `json:"net"`    // the sum of the lines
	Margin Line              `json:"margin"` // the margin, a line of its own
	Total  gauge.Measurement `json:"total"`  // Net and Margin
	Mass   ExactMass         `json:"mass"`   // of Total, by the label
	Skeins int               `json:"skeins"` // the fewest that hold Total
	Slack  gauge.Measurement `json:"slack"`  // what is left of them
	Less   gauge.Measurement `json:"less"`   // Net may be this much less: the spread of the lines
	More   gauge.Measurement `json:"more"`   // Net may be this much more
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
		q.Net, q.Less, q.More = q.Net.Add(l.Length), q.Less.Add(l.Less), q.More.Add(l.More)
		if err := finite("Lines", q.Net, q.Less, q.More); err != nil {
			return Quantity{}, err
		}
	}
	u := label.Length.Unit
	spare := q.Net.Times(margin.share())
	q.Margin = Line{Name: "margin", Part: Spare, Length: spare, Why: fmt.Sprintf("%v of %s is %s", margin, say.In(q.Net, u), say.In(spare, u))}
	q.Total = q.Net.Add(spare)
	q.Mass = label.MassOf(q.Total)
	var err error
	if q.Skeins, q.Slack, err = label.Skeins(q.Total); err != nil {
		return Quantity{}, err
	}
	return q, nil
}

// Covers reports whether the margin covers the spread: Total is at least Net
// and More.
func (q Quantity) Covers() bool { return q.Margin.Length.Cmp(q.More) >= 0 }

// CoverMargin returns the smallest margin, as a share of Net, that covers the
// spread: 3/40 is 7.5%. It is 0 where Net is nothing.
func (q Quantity) CoverMargin() gauge.Ratio {
	share, _ := q.More.Per(q.Net)
	return share
}

// Explain says how every number came about, one sentence each: the lines, the
// margin and whether it covers the spread, the total with its mass, and the
// skeins.
func (q Quantity) Explain() []string {
	var s []string
	for _, l := range q.Lines {
		s = append(s, l.Explain())
	}
	u, mu := q.Label.Length.Unit, q.Label.Mass.Unit
	s = append(s, q.Margin.Explain())
	switch {
	case q.More.Sign() > 0:
		covers := "the margin covers it"
		if !q.Covers() {
			covers = "the margin is smaller than the spread"
		}
		s = append(s, fmt.Sprintf("spread: %s less to %s more, which a margin of %s%% covers; %s",
			say.In(q.Less, u), say.In(q.More, u), say.Number(q.CoverMargin().Mul(gauge.Int(100))), covers))
	case q.Less.Sign() > 0:
		s = append(s, fmt.Sprintf("spread: %s less may do, and no more is needed", say.In(q.Less, u)))
	}
	s = append(s,
		fmt.Sprintf("total: %s, which weighs %s %v at %v", say.In(q.Total, u), say.Number(q.Mass.In(mu)), mu, q.Label))
	each, _ := q.Total.Per(q.Label.Length.Measurement())
	skeins := "skeins: " + say.Number(each)
	if n, _ := each.Floor(); gauge.Int(n).Equal(each) {
		skeins += " just, nothing left"
	} else {
		skeins += fmt.Sprintf(", rounded up to %d, %s left", q.Skeins, say.In(q.Slack, u))
	}
	return append(s, skeins)
}
