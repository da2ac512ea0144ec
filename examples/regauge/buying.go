package main

import (
	"fmt"

	"example.com/panelmath/examples/internal/document"
	"example.com/panelmath/examples/internal/garment"
	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/weight"
)

// yarns says what to buy either way, beside what the pattern says, or nothing
// where there is no garment to buy it for. A list of fewer sizes than the
// pattern has names them.
func (a reply) yarns() []document.Block {
	y := a.pattern.Yarn
	_, distinct := a.strands(a.pattern.Brief)
	var items []string
	say := func(what string, labels grade.Run[string], q grade.Run[yarn.Quantity]) {
		if len(q) == 0 {
			return
		}
		if len(q) < len(a.pattern.Sizes) {
			what += ", size " + grade.Text(labels, func(s string) string { return s })
		}
		items = append(items, what+": "+buy(q)+".")
	}
	for i := range distinct {
		var fine grade.Run[followed]
		for _, f := range a.followed {
			if f.fault == nil {
				fine = append(fine, f)
			}
		}
		say("Following the pattern as it is written", runOf(fine, func(f followed) string { return f.Group.Label() }), runOf(fine, func(f followed) yarn.Quantity { return f.yarn[i] }))
		say("With the new numbers", runOf(a.renewed, func(r renewed) string { return r.Group.Label() }), runOf(a.renewed, func(r renewed) yarn.Quantity { return r.yarn[i] }))
	}
	if len(items) == 0 {
		return nil
	}
	spare := fmt.Sprintf("All quantities have %v to spare, as the pattern has.", y.Margin)
	if y.Margin.Percent.Sign() == 0 {
		spare = "Nothing is kept to spare, as in the pattern."
	}
	items = append(items, "The pattern: "+buy(runOf(a.pattern.Sizes, func(s garment.Size) yarn.Quantity { return s.Yarn }))+".")
	blocks := []document.Block{document.Para{Text: order(a.pattern.Sizes, func(s garment.Size) string { return s.Group.Label() }) +
		spare + " Buy all skeins of one dye lot."}, document.List{Items: items}}
	if was := a.pattern.Fabric.Finished; a.swatch == nil && (longer(was.Stitches, a.mine.Stitches).Sign() != 0 || longer(was.Rows, a.mine.Rows).Sign() != 0) {
		blocks = append(blocks, document.Para{Text: "The fabric is reckoned from what the pattern's own takes, stitch for stitch or area for area, whichever is more. " +
			"As a rule the truth lies between the two, so that less may do. To know, weigh a piece of your own fabric and give it with -swatch."})
	}
	if len(a.labels) > 0 {
		blocks = append(blocks, document.Para{Text: a.grist() + " Length is what counts, so the mass differs where the yarn is finer or thicker; your swatch tells whether the fabric pleases."})
	}
	if len(a.labels) > 1 {
		blocks = append(blocks, document.Para{Text: "Held together, every strand takes the whole length; the seams are sewn with one strand of the first."})
	}
	return blocks
}

// buy prints what to buy for all sizes.
func buy(q grade.Run[yarn.Quantity]) string {
	label := q[0].Label
	own, other := label.Length.Unit, gauge.Metre
	if own == gauge.Metre {
		other = gauge.Yard
	}
	up := func(x gauge.Ratio) string {
		n, _ := x.Ceil() // at most 100 km
		return fmt.Sprint(n)
	}
	length := func(u gauge.Unit) string {
		return grade.Text(q, func(q yarn.Quantity) string { return up(q.Total.In(u)) }) + " " + u.String()
	}
	skeins := "skeins"
	text := grade.Text(q, func(q yarn.Quantity) string { return fmt.Sprint(q.Skeins) })
	if text == "1" {
		skeins = "skein"
	}
	s := fmt.Sprintf("%s %s of %v; %s [%s], %s %v", text, skeins, label, length(own), length(other),
		grade.Text(q, func(q yarn.Quantity) string { return up(q.Mass.In(label.Mass.Unit)) }), label.Mass.Unit)
	less := grade.Text(q, func(q yarn.Quantity) string {
		n, _ := q.Less.In(own).Floor()
		return fmt.Sprint(n)
	})
	if less != "0" {
		s += fmt.Sprintf("; up to %s %v less may do", less, own)
	}
	return s
}

// grist compares her yarn with the pattern's.
func (a reply) grist() string {
	pattern, _ := weight.OfLabel(a.pattern.Yarn.Label) // of labels that were read, which are valid
	var strands []weight.Grist
	for _, l := range a.labels {
		g, _ := weight.OfLabel(l)
		strands = append(strands, g)
	}
	mine, _ := weight.Together(strands...)
	times, _ := mine.In(weight.MetresPer100g).Quo(pattern.In(weight.MetresPer100g))
	percent := times.Sub(gauge.Int(1)).Mul(gauge.Int(100))

	yarn := "Your yarn has"
	if len(strands) > 1 {
		yarn = fmt.Sprintf("Your %d strands held together have", len(strands))
	}
	switch percent.Sign() {
	case 1:
		return fmt.Sprintf("%s %s more length to the mass than the pattern's yarn: finer.", yarn, tenths(percent))
	case -1:
		return fmt.Sprintf("%s %s less length to the mass than the pattern's yarn: thicker.", yarn, tenths(percent.Mul(gauge.Int(-1))))
	}
	return yarn + " as much length to the mass as the pattern's."
}
