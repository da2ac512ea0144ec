package garment

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel"
	"example.com/panelmath/seam"
)

// why returns one sentence for every derived number of a size.
func (g Garment) why(s Size) []string {
	in := func(m gauge.Measurement) string { return about(m.In(g.Units)) + " " + g.Units.String() }
	var out []string
	say := func(format string, a ...any) { out = append(out, fmt.Sprintf(format, a...)) }
	if g.Eased() {
		say("Round asked for: the chest of size %s, %v at its high end, with %v of ease is %s.", s.Group.Largest(), s.Chest.High, g.Ease, in(s.Wanted))
	}
	piece := func(name string, p panel.Panel) {
		say("%s, stitches: %s.", name, p.Stitches.ExplainIn(g.Units))
		if n := len(g.Plan.Repeat); n == 0 {
			say("%s, rows: nothing is repeated, and the %d rows as they are written are the nearest there is to %s.", name, p.Rows.Value, in(p.Rows.Each.Times(p.Rows.Exact)))
		} else {
			say("%s, rows: %s.", name, p.Rows.ExplainIn(g.Units))
			say("%s, repeats: %d %s less %d of opening and closing are %s of %s.", name, p.Rows.Value, plural("row", p.Rows.Value), p.Rows.Value-p.Repeats*n, count(p.Repeats, "repeat"), count(n, "row"))
		}
		say("%s, along the row: %d sts at %v are %s.", name, p.Stitches.Value, g.Fabric.Finished, in(p.Length))
		say("%s, across the rows: %d rows at %v are %s.", name, p.Rows.Value, g.Fabric.Finished, in(p.Width))
	}
	piece("Panel", s.Panel)
	if s.Sleeve != nil {
		piece("Sleeve", *s.Sleeve)
	}
	for _, j := range s.Sewn.Joins {
		out = append(out, sentence(j.ExplainIn(g.Units)))
	}
	if seams, err := s.Sewn.Layout.Seams(); err == nil {
		for _, sewn := range seams {
			if plan, err := seam.MatchSeam(sewn).Explain(); err == nil && !sewn.Like() {
				say("%s, eased: %s.", sentenceStart(sewn.Name), plan)
			}
		}
	}
	for _, m := range s.Sewn.Layout.Measures {
		say("%s, finished: %s.", sentenceStart(m.Name), in(m.Length))
	}
	if round, ok := s.Sewn.Layout.Measure("armhole round"); ok {
		say("The armhole, %s round, takes the upper arm of size %s, %v.", in(round), s.Group.Largest(), s.Arm.High)
	}
	for _, line := range s.Yarn.Explain() {
		out = append(out, sentence(line))
	}
	for i, s := range out {
		out[i] = g.Terms.Spell(s)
	}
	return out
}

// count is "1 row", "5 rows".
func count(n int, word string) string { return fmt.Sprint(n) + " " + plural(word, n) }

func plural(word string, n int) string {
	if n == 1 {
		return word
	}
	return word + "s"
}

// about prints x to three places, and says where that is not all of it.
func about(x gauge.Ratio) string {
	d := x.Decimal(3)
	if e, err := gauge.FromDecimal(d); err == nil && e.Equal(x) {
		return d.String()
	}
	return "about " + d.String()
}
