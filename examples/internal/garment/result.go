package garment

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

// SizeNumbers are the numbers of one size. Those that the layout does not have
// are left out.
type SizeNumbers struct {
	Label            string   `json:"label"`
	Stitches         int      `json:"stitches"`
	Rows             int      `json:"rows"`
	Repeats          int      `json:"repeats"`
	SleeveStitches   int      `json:"sleeve_stitches,omitempty"`
	SleeveRows       int      `json:"sleeve_rows,omitempty"`
	SleeveRepeats    *int     `json:"sleeve_repeats,omitempty"`
	CentreBackPairs  int      `json:"centre_back_pairs,omitempty"`
	CentreFrontPairs int      `json:"centre_front_pairs,omitempty"`
	ShoulderPairs    int      `json:"shoulder_pairs,omitempty"`
	SidePairs        int      `json:"side_pairs,omitempty"`
	SlitPairs        int      `json:"slit_pairs,omitempty"`
	SeamPairs        int      `json:"seam_pairs,omitempty"`
	Round            string   `json:"round,omitempty"`
	Length           string   `json:"length,omitempty"`
	Width            string   `json:"width,omitempty"`
	PanelLength      string   `json:"panel_length,omitempty"`
	ArmholeDepth     string   `json:"armhole_depth,omitempty"`
	NeckDrop         string   `json:"neck_drop,omitempty"`
	NeckDepth        string   `json:"neck_depth,omitempty"`
	NeckWidth        string   `json:"neck_width,omitempty"`
	NeckRound        string   `json:"neck_round,omitempty"`
	BodyOpening      string   `json:"body_opening,omitempty"`
	HemRound         string   `json:"hem_round,omitempty"`
	SleeveLength     string   `json:"sleeve_length,omitempty"`
	SleeveRound      string   `json:"sleeve_round,omitempty"`
	YarnLength       string   `json:"yarn_length"`
	YarnMass         string   `json:"yarn_mass"`
	Skeins           int      `json:"skeins"`
	Why              []string `json:"why,omitempty"` // one sentence for each number
}

// Result returns the numbers of every size, with their explanations if asked.
func (g Garment) Result(why bool) Result {
	label := g.Yarn.Label
	r := Result{Name: g.Name, Units: g.Units.String(), Yarn: ResultUnits{label.Length.Unit.String(), label.Mass.Unit.String()}}
	for _, s := range g.Sizes {
		pairs := func(name string) int {
			j, _ := s.Join(name)
			return j.Pairs
		}
		measure := func(name string) string {
			if m, ok := s.Sewn.Layout.Measure(name); ok {
				return m.In(g.Units).Text(3)
			}
			return ""
		}
		side, _ := s.Join("side")
		n := SizeNumbers{
			Label: s.Group.Label(), Stitches: s.Panel.Stitches.Value, Rows: s.Panel.Rows.Value, Repeats: s.Panel.Repeats,
			CentreBackPairs: pairs("centre back"), CentreFrontPairs: pairs("centre front"), ShoulderPairs: pairs("shoulder"),
			SidePairs: side.Pairs, SlitPairs: side.Start, SeamPairs: pairs("seam"),
			Round: measure("round"), Length: measure("length"), Width: measure("width"), PanelLength: measure("panel length"),
			ArmholeDepth: measure("armhole depth"), NeckDrop: measure("neck drop"), NeckDepth: measure("neck depth"), NeckWidth: measure("neck width"),
			NeckRound: measure("neck round"), BodyOpening: measure("body opening"), HemRound: measure("hem round"),
			SleeveLength: measure("sleeve length"), SleeveRound: measure("sleeve round"),
			YarnLength: s.Yarn.Total.In(label.Length.Unit).Text(2), YarnMass: s.Yarn.Mass.In(label.Mass.Unit).Text(2), Skeins: s.Yarn.Skeins,
		}
		if s.Sleeve != nil {
			n.SleeveStitches, n.SleeveRows, n.SleeveRepeats = s.Sleeve.Stitches.Value, s.Sleeve.Rows.Value, &s.Sleeve.Repeats
		}
		if why {
			n.Why = g.why(s)
		}
		r.Sizes = append(r.Sizes, n)
	}
	return r
}
