package garment

import (
	"fmt"

	"example.com/panelmath/gauge"
)

// why returns one sentence for every derived number of a size.
func (g Garment) why(s Size) []string {
	own := g.Units
	in := func(m gauge.Measurement) string { return about(m.In(own)) + " " + own.String() }
	p := s.Panel
	half := fmt.Sprintf("half of %d sts", p.Stitches.Value)
	out := []string{
		fmt.Sprintf("Round asked for: the chest of size %s, %v at its high end, with %v of ease is %s; a quarter of it, %s, is the width of each panel.",
			s.Group.Largest(), s.Chest.High, g.Ease, in(s.Wanted), in(s.Wanted.Times(quarter()))),
		fmt.Sprintf("Rows: %s.", p.Rows.ExplainIn(own)),
		fmt.Sprintf("Repeats: %d rows, less %d opening and %d closing, are %d repeats of %d rows.",
			p.Rows.Value, len(g.Plan.Opening), len(g.Plan.Closing), p.Repeats, len(g.Plan.Repeat)),
		fmt.Sprintf("Width of a panel: %d rows at %v are %s.", p.Rows.Value, g.Fabric.Finished, in(p.Width)),
		fmt.Sprintf("Round: four panel widths of %s are %s.", in(p.Width), in(s.Round())),
		fmt.Sprintf("Stitches: %s.", p.Stitches.ExplainIn(own)),
		fmt.Sprintf("Length: %s at %v is %s.", half, g.Fabric.Finished, in(s.Length())),
	}
	for _, j := range s.Sewn.Joins {
		out = append(out, sentence(j.Explain()))
	}
	out = append(out, fmt.Sprintf("Armhole round: twice the depth of %s is %s, and the upper arm of size %s is %v.",
		in(s.Side().Opening), in(s.Side().Opening.Times(gauge.Int(2))), s.Group.Largest(), s.Arm.High))
	for _, line := range s.Yarn.Explain() {
		out = append(out, sentence(line))
	}
	return out
}

func quarter() gauge.Ratio {
	q, _ := gauge.Share(1, 4)
	return q
}

// about prints x to three places, and says where that is not all of it.
func about(x gauge.Ratio) string {
	d := x.Decimal(3)
	if e, err := gauge.FromDecimal(d); err == nil && e.Equal(x) {
		return d.String()
	}
	return "about " + d.String()
}
