package garment

import (
	"fmt"

	"example.com/panelmath/gauge"
)

// Remarks returns what a designer should look at before she publishes: nothing
// is wrong with it, and nothing of it is printed in the pattern.
func (g Garment) Remarks() []string {
	var out []string
	for i, s := range g.Sizes {
		if g.Eased() {
			round := s.Measure("round")
			// Further off than a twentieth: the repeat is coarse for the garment.
			if off := round.Sub(s.Wanted); off.Times(gauge.Int(off.Sign())).Cmp(s.Wanted.Times(share(1, 20))) > 0 {
				out = append(out, fmt.Sprintf("size %s: the round comes out at %s, asked %s: whole repeats of %d rows come no nearer",
					s.Group.Label(), g.one(round), g.one(s.Wanted), len(g.Plan.Repeat)))
			}
		}
		if i > 0 && g.alike(s, g.Sizes[i-1]) {
			out = append(out, fmt.Sprintf("sizes %s and %s come out alike", g.Sizes[i-1].Group.Label(), s.Group.Label()))
		}
	}
	return out
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
