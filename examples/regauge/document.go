package main

import (
	"fmt"
	"slices"
	"strings"

	"example.com/panelmath/examples/internal/document"
	"example.com/panelmath/examples/internal/garment"
	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/notation"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/panel/row"
)

// document writes the reply in the order in which a maker decides.
func (a reply) document() (document.Document, error) {
	d := document.Document{Title: a.pattern.Name + ", at your " + a.gauge(), Lang: a.pattern.Lang(), Sections: []document.Section{
		{Heading: "The two " + a.gauge() + "s", Blocks: a.gauges()},
		{Heading: "If you follow the pattern as it is written", Blocks: a.asWritten()},
	}}
	if a.wanted != nil {
		d.Sections = append(d.Sections, document.Section{Heading: "Which size to follow", Blocks: a.whichSize()})
	}
	d.Sections = append(d.Sections, document.Section{Heading: "New numbers", Blocks: a.newNumbers()})
	if len(a.others) > 0 {
		d.Sections = append(d.Sections, document.Section{Heading: "Other numbers of the pattern", Blocks: a.otherNumbers()})
	}
	if yarns := a.yarns(); yarns != nil {
		d.Sections = append(d.Sections, document.Section{Heading: "Yarn", Blocks: yarns})
	}
	if len(a.renewed) > 0 {
		worked, err := a.worked()
		if err != nil {
			return document.Document{}, err
		}
		d.Sections = append(d.Sections, worked...)
	}
	if a.why {
		for _, r := range a.renewed {
			d.Sections = append(d.Sections, document.Section{Heading: "Why these numbers: " + r.Group.Label(), Blocks: []document.Block{document.List{Items: a.explain(r)}}})
		}
	}
	return d, nil
}

// worked returns the rows and the finishing with the new numbers: what follows
// the abbreviations in the written pattern.
func (a reply) worked() ([]document.Section, error) {
	d, err := a.fresh.Document(garment.Options{})
	if err != nil {
		return nil, err
	}
	for i, s := range d.Sections {
		if s.Heading == "Abbreviations" {
			rest := d.Sections[i+1:]
			for j := range rest {
				rest[j].Heading += ", with your numbers"
			}
			return rest, nil
		}
	}
	return nil, nil
}

// gauge is the word of the pattern's terms.
func (a reply) gauge() string {
	if a.pattern.Terms == row.UK {
		return "tension"
	}
	return "gauge"
}

// both prints measurements in both units, that of the pattern first.
func (a reply) both(m ...gauge.Measurement) string {
	if a.pattern.Units == gauge.Centimetre {
		return notation.Both(m, gauge.HalfCentimetre, gauge.QuarterInch)
	}
	return notation.Both(m, gauge.QuarterInch, gauge.HalfCentimetre)
}

// off says how much more or less than wanted a measurement is.
func (a reply) off(m gauge.Measurement) string {
	switch m.Sign() {
	case 0:
		return "just what you want"
	case 1:
		return a.both(m) + " more than you want"
	}
	return a.both(m.Times(gauge.Int(-1))) + " less than you want"
}

func (a reply) gauges() []document.Block {
	pattern, mine := a.pattern.Fabric.Finished, a.mine
	items := []string{
		"The pattern: " + pattern.String() + ".",
		"Yours: " + mine.String() + ", measured on a piece that was washed, blocked and dried as the garment will be.",
	}
	for _, d := range []struct {
		what, more, less string
		pattern, mine    gauge.Over
	}{
		{"Along a row, the same number of stitches comes out", "longer", "shorter", pattern.Stitches, mine.Stitches},
		{"Across the rows, the same number of rows comes out", "taller", "less tall", pattern.Rows, mine.Rows},
	} {
		items = append(items, d.what+" "+change(d.pattern, d.mine, d.more, d.less)+"."+short(d.mine))
	}
	blocks := []document.Block{document.List{Items: items}}
	wider, taller := told(longer(pattern.Stitches, mine.Stitches)), told(longer(pattern.Rows, mine.Rows))
	hook := map[int]string{2: "smaller", 1: "smaller", -1: "larger", -2: "larger"}[wider+taller]
	if hook != "" {
		blocks = append(blocks, document.Para{Text: "A " + hook + " hook brings you nearer to the pattern. If you like your fabric as it is, read on."})
	}
	return blocks
}

// longer returns by how many percent the same count is longer at another gauge.
func longer(pattern, mine gauge.Over) gauge.Ratio {
	one := gauge.MeasurementOf(gauge.Int(1), gauge.Inch)
	was, _ := pattern.Exact(one) // of gauges that were read, which are valid
	is, _ := mine.Exact(one)
	times, _ := was.Quo(is)
	return times.Sub(gauge.Int(1)).Mul(gauge.Int(100))
}

// told returns the sign of a difference in percent, or 0 where a swatch cannot
// tell it: nobody counts finer than a quarter of a stitch, which of 25 sts over
// 10 cm is 1% (common practice, no source).
func told(percent gauge.Ratio) int {
	if percent.Mul(percent).Cmp(gauge.Int(1)) < 0 {
		return 0
	}
	return percent.Sign()
}

// tenths prints a share that is more than nothing in percent.
func tenths(percent gauge.Ratio) string {
	d := percent.Decimal(1)
	if d.Sign() == 0 {
		return "less than 0.1%"
	}
	return d.String() + "%"
}

// short warns of a count over less than 10 cm: half a stitch is a large share of
// it.
func short(o gauge.Over) string {
	if o.Span.Measurement().In(gauge.Centimetre).Cmp(gauge.Int(10)) >= 0 {
		return ""
	}
	count, _ := o.Exact(o.Span.Measurement())
	share, err := gauge.Int(50).Quo(count)
	if err != nil {
		return ""
	}
	return fmt.Sprintf(" You counted over %v only, where a half more or less is %s%%; count over 10 cm or 4 in if you can.", o.Span, share.Decimal(1))
}

// change says how much longer the same count is at another gauge.
func change(pattern, mine gauge.Over, more, less string) string {
	percent := longer(pattern, mine)
	switch percent.Sign() {
	case 0:
		return "the same"
	case 1:
		return tenths(percent) + " " + more
	}
	return tenths(percent.Mul(gauge.Int(-1))) + " " + less
}

// order tells in which order the sizes stand; nothing where there is one.
func order[T any](sizes []T, label func(T) string) string {
	if len(sizes) < 2 {
		return ""
	}
	return "The sizes stand in this order: " + grade.Text(sizes, label) + "; one number alone is for every size. "
}

func (a reply) asWritten() []document.Block {
	var fine grade.Run[followed]
	for _, f := range a.followed {
		if f.fault == nil {
			fine = append(fine, f)
		}
	}
	var blocks []document.Block
	if len(fine) > 0 {
		label := func(f followed) string { return f.Group.Label() }
		intro := order(fine, label)
		if intro == "" {
			intro = "Size " + label(fine[0]) + ". "
		}
		blocks = []document.Block{
			document.Para{Text: intro + "First what you would get, then what the pattern says."},
			document.List{Items: a.measures(runOf(fine, func(f followed) layout.Layout { return f.made }), runOf(fine, func(f followed) layout.Layout { return f.Sewn.Layout }),
				runOf(fine, func(f followed) garment.Size { return f.Size }))},
		}
	}
	for _, f := range a.followed {
		switch {
		case f.fault != nil:
			blocks = append(blocks, document.Para{Text: a.cannotBeSewn(f)})
		case f.unfit != nil:
			blocks = append(blocks, document.Para{Text: "Size " + f.Group.Label() + " would not fit: " + a.misfit(f.unfit) + "."})
		}
	}
	return blocks
}

func runOf[T, U any](r []T, f func(T) U) grade.Run[U] {
	out := make(grade.Run[U], len(r))
	for i, v := range r {
		out[i] = f(v)
	}
	return out
}

// measures prints every finished measure, now and before, and what the round
// leaves over the largest chest of each size.
func (a reply) measures(now, before grade.Run[layout.Layout], sizes grade.Run[garment.Size]) (items []string) {
	for _, m := range now[0].Measures {
		of := func(l layout.Layout) gauge.Measurement {
			m, _ := l.Measure(m.Name)
			return m
		}
		items = append(items, fmt.Sprintf("%s: %s; the pattern: %s", title(m.Name), a.both(runOf(now, of)...), a.both(runOf(before, of)...)))
	}
	if _, ok := now[0].Measure("round"); ok {
		ease := func(of grade.Run[layout.Layout]) string {
			var m grade.Run[gauge.Measurement]
			for i, l := range of {
				round, _ := l.Measure("round")
				m = append(m, round.Sub(sizes[i].Chest.High.Measurement()))
			}
			return a.both(m...)
		}
		items = append(items, "Ease over the largest chest of the size: "+ease(now)+"; the pattern: "+ease(before))
	}
	return items
}

func title(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

func (a reply) whichSize() []document.Block {
	w := a.wanted
	ask := "You want " + a.both(w.round) + " round the body"
	if w.body.Unit.Valid() {
		ask += fmt.Sprintf(": your chest of %v and %v of ease", w.body, w.ease)
	}
	blocks := []document.Block{document.Para{Text: ask + "."}}
	var items []string
	for _, i := range w.nearest {
		f := a.followed[i]
		round, _ := f.made.Measure("round")
		length, _ := f.made.Measure("length")
		own, _ := f.Sewn.Layout.Measure("length")
		s := fmt.Sprintf("Size %s, worked as written at your %s, comes out %s round, %s", f.Group.Label(), a.gauge(), a.both(round), a.off(round.Sub(w.round)))
		if w.body.Unit.Valid() {
			s += ", with " + a.both(round.Sub(w.body.Measurement())) + " of ease"
		}
		s += fmt.Sprintf(". It will be %s long; the pattern's is %s.", a.both(length), a.both(own))
		if f.unfit != nil {
			s += " But it would not fit: " + a.misfit(f.unfit) + "."
		}
		items = append(items, s)
	}
	which := "Of the sizes as they are written "
	switch {
	case len(items) == 0:
		return append(blocks, document.Para{Text: "No size can be followed as it is written."})
	case !w.fits:
		which = "No size fits as it is written. Of all "
	case slices.ContainsFunc(a.followed, func(f followed) bool { return f.unfit != nil }):
		which = "Of the sizes that fit as they are written "
	}
	if len(items) == 1 {
		return append(blocks, document.Para{Text: which + "this one comes nearest: " + items[0]})
	}
	return append(blocks, document.Para{Text: which + "these come equally near:"}, document.List{Items: items})
}

func (a reply) newNumbers() []document.Block {
	var blocks []document.Block
	for _, l := range a.lost {
		blocks = append(blocks, document.Para{Text: a.hasNone(l)})
	}
	if len(a.renewed) == 0 {
		return blocks
	}
	intro := order(a.renewed, func(r renewed) string { return r.Group.Label() })
	switch {
	case a.wanted != nil:
		intro = fmt.Sprintf("For the round you want, with the lengths and openings of size %s. ", a.renewed[0].Group.Label())
	case intro == "":
		intro = "Size " + a.renewed[0].Group.Label() + ". "
	}
	blocks = append(blocks, document.Para{Text: intro + "Write these into the pattern instead of its own."})
	var items []string
	number := func(name string, f func(garment.Size) string) {
		is := grade.Text(a.renewed, func(r renewed) string { return f(r.Size) })
		instead := ", as in the pattern"
		if was := grade.Text(a.renewed, func(r renewed) string { return f(r.was) }); was != is {
			instead = ", instead of " + was
		}
		items = append(items, name+": "+is+instead)
	}
	first := a.renewed[0]
	if first.Panel.Chains > 0 {
		number("Chains to begin with", func(s garment.Size) string { return fmt.Sprint(s.Panel.Chains) })
	}
	stitches := "Stitches in a row"
	if r := first.Panel.Stitches.Rule; r.Multiple > 1 {
		stitches += ", " + aRule(r) + ", as the rows need it"
	}
	number(stitches, func(s garment.Size) string { return fmt.Sprint(s.Panel.Stitches.Value) })
	number("Rows in all", func(s garment.Size) string { return fmt.Sprint(s.Panel.Rows.Value) })
	if len(a.fresh.Plan.Repeat) > 0 {
		number("Times that the repeat is worked, the first time included", func(s garment.Size) string { return fmt.Sprint(s.Panel.Repeats) })
	}
	number("The last row is worked on the", func(s garment.Size) string { return a.fresh.Plan.End(s.Panel.Repeats).Side.String() })
	if first.Sleeve != nil {
		number("Stitches in a row of the sleeve", func(s garment.Size) string { return fmt.Sprint(s.Sleeve.Stitches.Value) })
		number("Rows of the sleeve", func(s garment.Size) string { return fmt.Sprint(s.Sleeve.Rows.Value) })
		number("Times that the repeat is worked in the sleeve, the first time included", func(s garment.Size) string { return fmt.Sprint(s.Sleeve.Repeats) })
	}
	for _, j := range first.Sewn.Joins {
		number("Pairs to join, "+a.pattern.Terms.Spell(j.Asked.Name), func(s garment.Size) string {
			join, _ := s.Join(j.Asked.Name)
			return fmt.Sprint(join.Pairs)
		})
		if j.Start > 0 {
			number("Pairs left open at the hem", func(s garment.Size) string {
				join, _ := s.Join(j.Asked.Name)
				return fmt.Sprint(join.Start)
			})
		}
	}
	blocks = append(blocks, document.List{Items: items},
		document.Para{Text: "With these numbers the garment measures, beside what the pattern says:"},
		document.List{Items: a.measures(runOf(a.renewed, func(r renewed) layout.Layout { return r.Sewn.Layout }), runOf(a.renewed, func(r renewed) layout.Layout { return r.was.Sewn.Layout }),
			runOf(a.renewed, func(r renewed) garment.Size { return r.was }))})
	if w := a.wanted; w != nil {
		round, _ := first.Sewn.Layout.Measure("round")
		s := "The round is " + a.off(round.Sub(w.round))
		if w.body.Unit.Valid() {
			s += ", with " + a.both(round.Sub(w.body.Measurement())) + " of ease over your chest"
		}
		s += "."
		if step, ok := first.step(round, len(a.fresh.Plan.Repeat)); ok {
			s += " One repeat more or less changes it by " + a.both(step) + "."
		}
		blocks = append(blocks, document.Para{Text: s})
	}
	if a.deepened.Sign() > 0 {
		blocks = append(blocks, document.Para{Text: "The armhole is deeper than the pattern's, " + a.both(a.deepened) + " at least, so that your arm of " + a.arm.String() + " just goes through; for more room give a larger -arm."})
	}
	fits := true
	for i, r := range a.renewed {
		if r.unfit != nil {
			fits = false
			blocks = append(blocks, document.Para{Text: "With these numbers size " + r.Group.Label() + " would not fit: " + a.misfit(r.unfit) + "." + a.remedy(r.unfit, a.places[i])})
		}
	}
	if fits && len(first.Sewn.Joins) > 0 {
		s := openings(first.Size)
		if _, ok := first.Sewn.Layout.Measure("armhole round"); ok {
			s += " Arms go through their openings."
		}
		blocks = append(blocks, document.Para{Text: s})
	}
	return blocks
}

// step returns what one repeat adds to the round, where the rows run lengthwise
// so that repeats add to it.
func (r renewed) step(round gauge.Measurement, rows int) (gauge.Measurement, bool) {
	share, err := gauge.Share(rows, r.Panel.Rows.Value)
	lengthwise := r.Sewn.Layout.Pieces[0].Foundation != layout.Bottom
	return round.Times(share), err == nil && lengthwise && rows > 0
}

// explain returns one sentence for every new number of a size.
func (a reply) explain(r renewed) []string {
	u := a.pattern.Units
	items := []string{"Stitches: " + r.Panel.Stitches.ExplainIn(u) + ".", "Rows: " + r.Panel.Rows.ExplainIn(u) + "."}
	for _, j := range r.Sewn.Joins {
		items = append(items, title(a.pattern.Terms.Spell(j.ExplainIn(u)))+".")
	}
	for _, q := range r.yarn {
		for _, line := range q.Explain() {
			items = append(items, title(a.pattern.Terms.Spell(strings.TrimSuffix(line, ".")))+".")
		}
	}
	return items
}
