package main

import (
	"fmt"
	"strings"

	"example.com/panelmath/examples/internal/document"
	"example.com/panelmath/gauge"
	"example.com/panelmath/grade/notation"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/weight"
)

// document writes the reply.
func (a reply) document() document.Document {
	d := document.Document{Title: a.Name + ", with the yarn at hand", Lang: a.Lang(), Sections: []document.Section{
		{Heading: "Your yarn", Blocks: a.stock()},
		{Heading: "Which sizes it makes", Blocks: a.which()},
	}}
	if c := a.chosen; c != nil {
		d.Sections = append(d.Sections, document.Section{Heading: "Size " + c.Group.Label() + " with this yarn", Blocks: a.further(*c)})
	}
	return d
}

// units are the unit of length of her label and the other one.
func (a reply) units() (own, other gauge.Unit) {
	own = a.label.Length.Unit
	if own == gauge.Metre {
		return own, gauge.Yard
	}
	return own, gauge.Metre
}

// atMost prints a length of yarn rounded down, for what there is; atLeast
// rounded up, for what is needed.
func (a reply) atMost(m gauge.Measurement) string {
	own, other := a.units()
	x, _ := m.In(own).Floor() // at most 100 km for every skein
	y, _ := m.In(other).Floor()
	return fmt.Sprintf("%d %v [%d %v]", x, own, y, other)
}

func (a reply) atLeast(m gauge.Measurement) string {
	own, other := a.units()
	x, _ := m.In(own).Ceil()
	y, _ := m.In(other).Ceil()
	return fmt.Sprintf("%d %v [%d %v]", x, own, y, other)
}

// grams prints the mass of a length of yarn, by the label, rounded up.
func (a reply) grams(m gauge.Measurement) string {
	g, _ := a.label.MassOf(m).In(a.label.Mass.Unit).Ceil()
	return fmt.Sprintf("%d %v", g, a.label.Mass.Unit)
}

func (a reply) stock() []document.Block {
	blocks := []document.Block{document.Para{Text: fmt.Sprintf("You have %s, at %v a skein.", a.atMost(a.have), a.label)}}
	if len(a.lots) > 1 {
		var items []string
		for _, l := range a.lots {
			items = append(items, "Lot "+l.Name+": "+a.atMost(l.Length))
		}
		blocks = append(blocks, document.List{Items: items})
	}
	if s, err := weight.Substitute(a.have, a.Yarn.Label, a.label); err == nil && s.Finer.Sign() != 0 {
		word := "gauge"
		if a.Terms == row.UK {
			word = "tension"
		}
		blocks = append(blocks, document.Para{Text: "It is not the yarn of the pattern, " + a.Yarn.Label.String() + ". If it comes out at the pattern's " + word + ", it takes the same length."},
			document.List{Items: sentences(s.Explain()[1:])})
	}
	return blocks
}

func sentences(all []string) []string {
	out := make([]string, len(all))
	for i, s := range all {
		s = strings.NewReplacer("grist:", "length to the mass:", " for ", " against ", "by grist", "by that").Replace(s)
		out[i] = strings.ToUpper(s[:1]) + s[1:] + "."
	}
	return out
}

// spare says what a quantity has to spare.
func (a reply) spare() string {
	if a.margin.Percent.Sign() == 0 {
		return "with nothing to spare"
	}
	return fmt.Sprintf("with %v to spare", a.margin)
}

func (a reply) which() []document.Block {
	t := document.Table{Header: []string{"Size", "Takes, " + a.spare(), "Is it enough?"}}
	for _, s := range a.sizes {
		t.Rows = append(t.Rows, []string{s.Group.Label(), a.atLeast(s.takes.Total) + ", " + a.grams(s.takes.Total), a.says(s)})
	}
	s := "It makes none of the sizes as they are written."
	if a.largest >= 0 {
		one := a.sizes[a.largest]
		s = fmt.Sprintf("The largest size that it makes is %s: %s are left, and the %v to spare besides if all goes well.", one.Group.Label(), a.atMost(one.left), a.margin)
		if a.margin.Percent.Sign() == 0 {
			s = fmt.Sprintf("The largest size that it makes is %s: %s are left. Nothing is kept to spare.", one.Group.Label(), a.atMost(one.left))
		}
	}
	blocks := []document.Block{t, document.Para{Text: s}}
	if a.made < 0 {
		return blocks
	}
	one := a.sizes[a.made]
	if a.made != a.largest {
		blocks = append(blocks, document.Para{Text: fmt.Sprintf("Size %s, which you would like, leaves %s.", one.Group.Label(), a.atMost(one.left))})
	}
	if s, ok := a.halfway(one); ok {
		blocks = append(blocks, document.Para{Text: s})
	}
	switch {
	case a.mixed != nil:
		return append(blocks, document.Para{Text: "Your dye lots do not hold every piece of size " + one.Group.Label() + " whole. Work two rows from one lot and two from the other, in turn, where they meet, or take the odd lot for an edging."})
	case len(a.given) > 0:
		var items []string
		for _, g := range a.given {
			items = append(items, g.Piece+": lot "+g.Lot)
		}
		blocks = append(blocks, document.Para{Text: "So that no piece of size " + one.Group.Label() + " changes shade in its middle, work"}, document.List{Items: items})
	}
	return blocks
}

// halfway says what has to be left when one of two equal pieces is done: the
// other and the seams, without the spare.
func (a reply) halfway(s size) (string, bool) {
	p := s.Sewn.Layout.Pieces
	if len(p) != 2 || p[0].Stitches != p[1].Stitches || p[0].Rows != p[1].Rows {
		return "", false
	}
	half, _ := gauge.Share(1, 2)
	rest := s.takes.Net
	for _, l := range s.takes.Lines {
		if l.Part == yarn.Fabric {
			rest = rest.Sub(l.Length.Times(half))
		}
	}
	return "When the first of the two panels is done, weigh what is left: the second and the seams take " + a.grams(rest) + ". If it is less, stop there: the yarn will not reach.", true
}

// says answers whether the yarn makes a size.
func (a reply) says(s size) string {
	short := s.left.Times(gauge.Int(-1))
	switch s.enough(a.have) {
	case "yes":
		return "yes, " + a.atMost(s.left) + " left"
	case "without the spare":
		return "only without the spare: " + a.atLeast(short) + " of it are missing"
	}
	skeins, _, _ := a.label.Skeins(short) // of what is less than a quantity that was bought
	word := "skeins"
	if skeins == 1 {
		word = "skein"
	}
	return fmt.Sprintf("no, %s short: %d more %s", a.atLeast(short), skeins, word)
}

// both prints a measurement in both units, that of the brief first.
func (a reply) both(m gauge.Measurement) string {
	if a.Units == gauge.Centimetre {
		return notation.Both([]gauge.Measurement{m}, gauge.HalfCentimetre, gauge.QuarterInch)
	}
	return notation.Both([]gauge.Measurement{m}, gauge.QuarterInch, gauge.HalfCentimetre)
}

func (a reply) further(c chosen) []document.Block {
	blocks := []document.Block{document.Para{Text: "As it is written it takes " + a.atLeast(c.takes.Total) + ", which is " + a.atLeast(c.left.Times(gauge.Int(-1))) + " more than you have."}}
	for _, w := range c.ways {
		if !w.found {
			blocks = append(blocks, document.Para{Text: "Made " + w.name + ", even the least that can be worn takes more than you have."})
			continue
		}
		blocks = append(blocks, document.Para{Text: "Made " + w.name + ", with everything else as it was:"}, document.List{Items: a.numbers(c.size, w.size)})
	}
	return blocks
}

// numbers tells every number of a size that has become another.
func (a reply) numbers(was, is size) (items []string) {
	count := func(name string, was, is int) {
		if was != is {
			items = append(items, fmt.Sprintf("%s: %d, instead of %d", name, is, was))
		}
	}
	count("Chains to begin with", was.Panel.Chains, is.Panel.Chains)
	count("Stitches in a row", was.Panel.Stitches.Value, is.Panel.Stitches.Value)
	count("Rows in all", was.Panel.Rows.Value, is.Panel.Rows.Value)
	count("Times that the repeat is worked, the first time included", was.Panel.Repeats, is.Panel.Repeats)
	if is.Sleeve != nil {
		count("Stitches in a row of the sleeve", was.Sleeve.Stitches.Value, is.Sleeve.Stitches.Value)
		count("Rows of the sleeve", was.Sleeve.Rows.Value, is.Sleeve.Rows.Value)
		count("Times that the repeat is worked in the sleeve", was.Sleeve.Repeats, is.Sleeve.Repeats)
	}
	for i, j := range is.Sewn.Joins {
		count("Pairs to join, "+a.Terms.Spell(j.Asked.Name), was.Sewn.Joins[i].Pairs, j.Pairs)
	}
	const tight = "; it does not go round the body"
	for _, m := range is.Sewn.Layout.Measures {
		before := was.Measure(m.Name)
		if before.Equal(m.Length) {
			continue
		}
		s := fmt.Sprintf("%s: %s, instead of %s", strings.ToUpper(m.Name[:1])+m.Name[1:], a.both(m.Length), a.both(before))
		if m.Name == is.around() && m.Name != "round" && is.tight() {
			s += tight
		}
		items = append(items, s)
	}
	if round := is.Measure("round"); round.Sign() > 0 && !round.Equal(was.Measure("round")) {
		s := "Ease over the largest chest of the size: " + a.both(round.Sub(is.Chest.High.Measurement()))
		if is.tight() {
			s += tight
		}
		items = append(items, s)
	}
	last := fmt.Sprintf("This keeps %v to spare and leaves %s.", a.margin, a.atMost(is.left))
	if a.margin.Percent.Sign() == 0 {
		last = fmt.Sprintf("This leaves %s, with nothing kept to spare.", a.atMost(is.left))
	}
	if s, ok := a.halfway(is); ok {
		last += " " + s
	}
	return append(items, last)
}
