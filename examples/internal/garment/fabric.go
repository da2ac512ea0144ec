package garment

import (
	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/gauge"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/panel/work"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/usage"
)

// panels names the panels of the layout; a cocoon has but one.
func (g Garment) panels() string {
	if g.Layout == brief.Cocoon {
		return "panel"
	}
	return "two panels"
}

// fabric returns the yarn of the pieces that are made like p, by the way that
// the brief gives.
func (g Garment) fabric(name string, p panel.Panel) (yarn.Line, error) {
	pieces := 2
	if name == "panel" {
		pieces = 1
	}
	area := yarn.Rectangle(p.Length, p.Width).Times(gauge.Int(pieces))
	switch {
	case g.Yarn.Stitches != nil:
		t, err := g.Plan.Tally(p.Stitches.Value, p.Repeats)
		if err != nil {
			return yarn.Line{}, err
		}
		return g.Yarn.Stitches.Line(name, counts(t, pieces)...)
	case g.Yarn.Project != nil:
		return g.Yarn.Project.Fabric(name, area)
	}
	return g.Yarn.Swatch.Fabric(name, area, g.Yarn.Label)
}

// counts lists the stitches of so many pieces by kind, chains of chain spaces
// among them.
func counts(t work.Tally, pieces int) []usage.Count {
	var out []usage.Count
	for s := row.Chain; s.Valid(); s++ {
		n := t.Of(s)
		if s == row.Chain {
			n = t.Chains
		}
		if n > 0 {
			out = append(out, usage.Count{Stitch: s.String(), N: n * pieces})
		}
	}
	return out
}
