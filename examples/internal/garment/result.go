package garment

import "example.com/panelmath/gauge"

// Result is what the JSON output holds: the numbers of every size. Lengths are
// decimals in the brief's unit to 0.001, yarn in the label's units to 0.01,
// rounded half up for printing only.
type Result struct {
	Name  string        `json:"name"`
	Units string        `json:"units"`
	Yarn  ResultUnits   `json:"yarn_units"`
	Sizes []SizeNumbers `json:"sizes"`
}

// ResultUnits are the units of the yarn's numbers.
type ResultUnits struct {
	Length string `json:"length"`
	Mass   string `json:"mass"`
}

// SizeNumbers are the numbers of one size.
type SizeNumbers struct {
	Label           string   `json:"label"`
	Stitches        int      `json:"stitches"`
	Rows            int      `json:"rows"`
	Repeats         int      `json:"repeats"`
	CentreBackPairs int      `json:"centre_back_pairs"`
	SidePairs       int      `json:"side_pairs"`
	Round           string   `json:"round"`
	Length          string   `json:"length"`
	Width           string   `json:"width"`
	ArmholeDepth    string   `json:"armhole_depth"`
	NeckDrop        string   `json:"neck_drop"`
	YarnLength      string   `json:"yarn_length"`
	YarnMass        string   `json:"yarn_mass"`
	Skeins          int      `json:"skeins"`
	Why             []string `json:"why,omitempty"` // one sentence for each number
}

// Result returns the numbers of every size, with their explanations if asked.
func (g Garment) Result(why bool) Result {
	label := g.Yarn.Label
	r := Result{Name: g.Name, Units: g.Units.String(), Yarn: ResultUnits{label.Length.Unit.String(), label.Mass.Unit.String()}}
	in := func(m gauge.Measurement) string { return m.In(g.Units).Text(3) }
	for _, s := range g.Sizes {
		n := SizeNumbers{
			Label: s.Group.Label(), Stitches: s.Panel.Stitches.Value, Rows: s.Panel.Rows.Value, Repeats: s.Panel.Repeats,
			CentreBackPairs: s.Back().Pairs, SidePairs: s.Side().Pairs,
			Round: in(s.Round()), Length: in(s.Length()), Width: in(s.Panel.Width), ArmholeDepth: in(s.Side().Opening), NeckDrop: in(s.Back().Opening),
			YarnLength: s.Yarn.Total.In(label.Length.Unit).Text(2), YarnMass: s.Yarn.Mass.In(label.Mass.Unit).Text(2), Skeins: s.Yarn.Skeins,
		}
		if why {
			n.Why = g.why(s)
		}
		r.Sizes = append(r.Sizes, n)
	}
	return r
}
