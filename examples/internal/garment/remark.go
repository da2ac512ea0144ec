package garment

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel"
)

// Remarks returns what a designer should look at before she publishes: nothing
// is wrong with it, and nothing of it is printed in the pattern.
func (g Garment) Remarks() []string {
	var out []string
	if g.Yarn.Stitches != nil && g.Yarn.Margin.Percent.IsZero() && g.RowStart == panel.ChainDoesNotCount {
		out = append(out, "yarn: by stitches the chains at the start of the rows, and of a foundation chain, are not counted, and there is no margin for them")
	}
	for i, s := range g.Sizes {
		if g.Eased() {
			round := s.Measure("round")
			if far(round.Sub(s.Wanted), s.Wanted) {
				out = append(out, fmt.Sprintf("size %s: the round comes out at %s, asked %s: %s",
					s.Group.Label(), g.one(round), g.one(s.Wanted), g.coarse(s.Panel)))
			}
		}
		for _, n := range g.lengths(s.Panel) {
			asked := n.Each.Times(n.Exact)
			if far(n.Deviation(), asked) {
				out = append(out, fmt.Sprintf("size %s: a panel of %d %s comes out at %s, asked %s: the rows allow no count that is nearer",
					s.Group.Label(), n.Value, n.of, g.one(n.Each.Times(gauge.Int(n.Value))), g.one(asked)))
			}
		}
		if i > 0 && g.alike(s, g.Sizes[i-1]) {
			out = append(out, fmt.Sprintf("sizes %s and %s come out alike", g.Sizes[i-1].Group.Label(), s.Group.Label()))
		}
	}
	return out
}

// far reports whether a garment is further off than a twentieth: its rows are
// coarse for it.
func far(off, asked gauge.Measurement) bool {
	return off.Times(gauge.Int(off.Sign())).Cmp(asked.Times(share(1, 20))) > 0
}

// counted is a count and what it counts.
type counted struct {
	of string
	gauge.Count
}

// lengths returns the counts of a panel that do not make the round.
func (g Garment) lengths(p panel.Panel) []counted {
	sts, rows := counted{"sts", p.Stitches}, counted{"rows", p.Rows}
	switch {
	case !g.Eased():
		return []counted{sts, rows}
	case g.Crosswise:
		return []counted{rows}
	}
	return []counted{sts}
}

// coarse says why a round comes no nearer.
func (g Garment) coarse(p panel.Panel) string {
	switch n := len(g.Plan.Repeat); {
	case g.Crosswise:
		return "the rows allow no count of stitches that is nearer"
	case n == 0:
		return "no row is repeated"
	case p.Repeats == 0 && p.Rows.Off().Sign() > 0:
		return "the opening and closing rows alone are more"
	default:
		return "whole repeats of " + count(n, "row") + " come no nearer"
	}
}

// alike reports whether two sizes have the same panels and the same pairs.
func (g Garment) alike(a, b Size) bool {
	if a.Panel.Stitches.Value != b.Panel.Stitches.Value || a.Panel.Rows.Value != b.Panel.Rows.Value {
		return false
	}
	for i, j := range a.Sewn.Joins {
		if k := b.Sewn.Joins[i]; j.Pairs != k.Pairs || j.Start != k.Start {
			return false
		}
	}
	return true
}

// one prints a measurement in both units, the brief's first.
func (g Garment) one(m gauge.Measurement) string {
	own, other := g.grids()
	return own.Text(m) + " [" + other.Text(m) + "]"
}
