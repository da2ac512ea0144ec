package main

import (
	"regexp"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
)

// panels ties the lines of a garment of two equal panels, as the example program
// pattern prints them, to the rows of its panel: "Each panel, before folding",
// "Round the body, all four panel widths" and so on. Each printed length must be
// the one on its grid that is nearest to what the rows make.
func (p *pattern) panels() ([]Finding, []relation, error) {
	var b *block
	for i := range p.blocks {
		if p.blocks[i].text.Lines != nil {
			b = &p.blocks[i]
			break
		}
	}
	if b == nil || !p.begins("Each panel, before folding") {
		return nil, nil, nil
	}
	sts, worked, last, ok := p.counts(*b)
	if !ok {
		return nil, nil, nil
	}
	g := panels{p: p, along: ratios(sts), across: ratios(p.fitting(worked, last))}
	for _, tell := range []func(line){g.sewn, g.line} {
		for _, l := range p.lines {
			if !p.why[l.number] {
				tell(l)
			}
		}
	}
	return g.found, g.all, nil
}

func (p *pattern) begins(s string) bool {
	for _, l := range p.lines {
		if strings.HasPrefix(l.text, s) {
			return true
		}
	}
	return false
}

// fitting returns the rows that the measures are held against: those worked,
// but in a size where only the number of the last row makes the printed width,
// that number, so that one misprint is not told twice.
func (p *pattern) fitting(worked, last grade.Run[int]) grade.Run[int] {
	over, _, ok := p.over(rows, false)
	out := append(grade.Run[int](nil), worked...)
	for _, x := range p.inBoth {
		if !ok || x.line.name != "Each panel, before folding" {
			continue
		}
		a, b := relation{exact: true, counts: ratios(worked)}, relation{exact: true, counts: ratios(last)}
		grid := a.grid(x.Own)
		for i := range x.Own {
			if !a.right(over, grid, x.Own[i], i) && b.right(over, grid, x.Own[i], i) {
				out[i] = last[i]
			}
		}
		break
	}
	return out
}

func ratios(n grade.Run[int]) []gauge.Ratio {
	var out []gauge.Ratio
	for _, x := range n {
		out = append(out, gauge.Int(x))
	}
	return out
}

// panels gathers what follows from the rows of a panel.
type panels struct {
	p             *pattern
	along, across []gauge.Ratio // stitches and rows of a panel
	back, side    []gauge.Ratio // pairs joined; nil where they are not printed
	all           []relation
	found         []Finding
}

var (
	joined = regexp.MustCompile(`^(Centre back|Sides): .*count (` + listForm + `) sts up .* join (` + listForm + `) pairs`)
	folded = regexp.MustCompile(`fold at the shoulder lies (` + listForm + `) sts from either hem`)
)

// sewn reads the pairs to join, and where the fold lies.
func (g *panels) sewn(l line) {
	if m := folded.FindStringSubmatch(l.text); m != nil {
		g.equal(l, "the fold at the shoulder", m[1], times(g.along, share(1, 2)), "half of the stitches of a row")
	}
	m := joined.FindStringSubmatch(l.text)
	if m == nil {
		return
	}
	pairs := g.read(m[3])
	g.equal(l, m[1], m[2], pairs, "as many as pairs are joined")
	if m[1] == "Sides" {
		g.side = pairs
	} else {
		g.back = pairs
	}
}

// read reads a list of counts for all sizes; nil if it is none.
func (g *panels) read(s string) []gauge.Ratio {
	n, err := numbers(s)
	if err == nil {
		n, err = n.For(g.p.n)
	}
	if err != nil {
		return nil
	}
	var out []gauge.Ratio
	for _, v := range n {
		r, err := gauge.FromDecimal(v)
		if err != nil {
			return nil
		}
		out = append(out, r)
	}
	return out
}

// equal finds the sizes in which a printed list of stitches is not the one wanted.
func (g *panels) equal(l line, name, list string, want []gauge.Ratio, why string) {
	got := g.read(list)
	if got == nil || want == nil {
		return
	}
	for i := range got {
		if !got[i].Equal(want[i]) {
			g.found = append(g.found, Finding{Line: l.number, Name: name, Size: g.p.label(i), Got: got[i].Text(places(got[i])) + " sts", Want: want[i].Text(places(want[i])) + " sts", Why: why})
		}
	}
}

func times(v []gauge.Ratio, by gauge.Ratio) []gauge.Ratio {
	var out []gauge.Ratio
	for _, x := range v {
		out = append(out, x.Mul(by))
	}
	return out
}

// open returns the stitches between the fold and the pairs.
func (g *panels) open(pairs []gauge.Ratio) []gauge.Ratio {
	if pairs == nil {
		return nil
	}
	out := times(g.along, share(1, 2))
	for i := range out {
		out[i] = out[i].Sub(pairs[i])
	}
	return out
}

// line ties the lengths of a line to what makes them.
func (g *panels) line(l line) {
	var pairs []pair
	for _, x := range g.p.inBoth {
		if x.line.number == l.number {
			pairs = append(pairs, x)
		}
	}
	tie := func(i int, k kind, counts []gauge.Ratio) {
		if i < len(pairs) && counts != nil && len(pairs[i].sizes) == g.p.n {
			x := pairs[i]
			g.all = append(g.all, relation{line: l, name: name(l, "panel"), sizes: x.sizes, kind: k, exact: true, counts: counts,
				worked: strings.HasPrefix(l.text, "A panel fresh off the hook"), lists: []grade.Run[gauge.Length]{x.Own, x.Other}})
			g.p.tied[l.number] = true
			g.p.as[l.number] = "lengths of the panels"
		}
	}
	switch l.name {
	case "Round the body, all four panel widths":
		tie(0, rows, times(g.across, gauge.Int(4)))
	case "Length, shoulder to hem":
		tie(0, stitches, times(g.along, share(1, 2)))
	case "Each panel, before folding":
		tie(0, rows, g.across)
		tie(1, stitches, g.along)
	case "Armhole depth":
		tie(0, stitches, g.open(g.side))
	case "Neck drop at the centre back":
		tie(0, stitches, g.open(g.back))
	case "Centre back":
		tie(0, stitches, g.open(g.back))
	case "Sides":
		tie(0, stitches, g.open(g.side))
	case "Ease over the largest chest of each size":
		if len(pairs) == 0 {
			break
		}
		if high := g.p.chests(pairs[0].Own[0].Unit); len(high) == g.p.n && len(pairs[0].sizes) == g.p.n {
			tie(0, rows, times(g.across, gauge.Int(4)))
			g.all[len(g.all)-1].less = high
		}
	}
	if strings.HasPrefix(l.text, "A panel fresh off the hook measures about") {
		tie(0, rows, g.across)
		tie(1, stitches, g.along)
	}
}
