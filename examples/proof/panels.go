package main

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel/row"
)

// A pattern that the example program pattern printed tells its layout in one
// sentence. From it follows what each finished measure is made of, and so every
// printed length must be the one on its grid that is nearest to what the rows
// make.
var layouts = [...]struct{ sentence, name string }{
	{"The garment is two equal panels.", "folded"}, // over the shoulders, open or closed in front
	{"The garment is a front and a back, two equal panels.", "front and back"},
	{"The garment is one rectangle, ", "cocoon"},
	{"The garment is two equal rectangles.", "poncho"},
}

// tally is a count of stitches or of rows in every size; nil where it is not
// known.
type tally struct {
	kind kind
	n    []gauge.Ratio
}

// panels gathers what follows from the rows of the panels.
type panels struct {
	p              *pattern
	layout         string
	along, across  tally            // stitches and rows of a panel
	long, wide     tally            // the same, along its length and across it
	sleeve         [2]tally         // stitches and rows of a sleeve
	length, round  tally            // the same, along its length and round the arm
	marks          map[string]tally // stitches, or row ends, up to a marker, by step
	slit           tally
	all            []relation
	found          []Finding
	lengths, seams map[string]tally // what makes a finished measure, by name
}

// panels ties the lines of a printed pattern to the rows of its panels.
func (p *pattern) panels() ([]Finding, []relation) {
	g, crosswise := panels{p: p, marks: map[string]tally{}}, false
	for _, l := range p.lines {
		for _, k := range layouts {
			if strings.HasPrefix(l.text, k.sentence) {
				g.layout, crosswise = k.name, strings.Contains(l.text, " is worked crosswise: ")
			}
		}
	}
	if g.layout == "" || len(p.blocks) == 0 {
		return nil, nil
	}
	g.along, g.across = g.piece(0)
	g.sleeve[0], g.sleeve[1] = g.piece(1)
	if g.along.n == nil {
		return nil, nil
	}
	g.long, g.wide, g.length, g.round = g.along, g.across, g.sleeve[0], g.sleeve[1]
	if crosswise {
		g.long, g.wide, g.length, g.round = g.across, g.along, g.sleeve[1], g.sleeve[0]
	}
	for _, read := range []func(line){g.step, g.line} {
		for _, l := range p.lines {
			if !p.why[l.number] {
				read(l)
			}
		}
		if g.lengths == nil {
			g.measures()
		}
	}
	return g.found, g.all
}

// piece returns the stitches and the rows of one piece.
func (g *panels) piece(i int) (along, across tally) {
	if i >= len(g.p.blocks) {
		return tally{}, tally{}
	}
	sts, worked, last, ok := g.p.counts(g.p.blocks[i])
	if !ok {
		return tally{}, tally{}
	}
	if i == 0 {
		worked = g.p.fitting(worked, last)
	}
	return tally{stitches, ratios(sts)}, tally{rows, ratios(worked)}
}

// fitting returns the rows that the measures are held against: those worked,
// but in a size where only the number of the last row makes the printed width,
// that number, so that one misprint is not told twice.
func (p *pattern) fitting(worked, last grade.Run[int]) grade.Run[int] {
	over, _, ok := p.over(rows, false)
	out := slices.Clone(worked)
	for _, x := range p.inBoth {
		if !ok || !blocked(x.line.name) || x.place != 1 || len(x.Own) != len(worked) {
			continue
		}
		a, b := relation{exact: true, counts: ratios(worked)}, relation{exact: true, counts: ratios(last)}
		grid := a.grid(x.Own)
		for i := range x.Own {
			if !a.right(over, grid, x.Own[i], i) && b.right(over, grid, x.Own[i], i) {
				out[i] = last[i]
			}
		}
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

// times returns t times a/b.
func (t tally) times(a, b int) tally {
	out := tally{kind: t.kind}
	for _, x := range t.n {
		out.n = append(out.n, x.Mul(share(a, b)))
	}
	return out
}

// add returns t + o; nothing where either is not known.
func (t tally) add(o tally) tally {
	out := tally{kind: t.kind}
	for i := range min(len(t.n), len(o.n)) {
		out.n = append(out.n, t.n[i].Add(o.n[i]))
	}
	return out
}

func (t tally) less(o tally) tally { return t.add(o.times(-1, 1)) }

const ends = `(?:sts?|row ends?)` // what is joined, by the direction of the rows

var (
	stepCount = regexp.MustCompile(`^(Cent(?:re|er) back|Cent(?:re|er) front|Sides|Shoulders|First seam|Second seam): .*?\bcount (` + listForm + `) ` + ends)
	stepSlit  = regexp.MustCompile(`Leave (` + listForm + `) ` + ends + `, `)
	stepPairs = regexp.MustCompile(`\b[Jj]oin (` + listForm + `) pairs? of ` + ends)
	stepOpen  = regexp.MustCompile(`stop at the markers: (` + listForm + `) ` + ends + `, `)
	stepEnds  = regexp.MustCompile(`\bJoin (?:the whole [^,.]*, )?(` + listForm + `) ` + ends + `\b`)
	stepPass  = regexp.MustCompile(`pass over (` + listForm + `) of the (` + listForm + `),`)
	stepOnto  = regexp.MustCompile(`to (` + listForm + `) ` + ends + ` of the armhole`)
	stepFold  = regexp.MustCompile(`\b[Tt]he fold (?:at the shoulder )?lies (` + listForm + `) ` + ends + ` from either`)
)

// step reads how far a seam goes, and holds the counts of a step against one
// another and against the rows.
func (g *panels) step(l line) {
	list := func(form *regexp.Regexp, i int) (tally, string) {
		if m := form.FindStringSubmatch(l.text); m != nil {
			return g.read(m[i]), m[i]
		}
		return tally{}, ""
	}
	mark, _ := list(stepCount, 2)
	name := l.name
	pairs, printed := list(stepPairs, 1)
	if mark.n != nil {
		name = stepCount.FindStringSubmatch(l.text)[1]
		g.marks[row.UK.Spell(name)] = mark
		if name == "Sides" {
			g.slit, _ = list(stepSlit, 1)
			if g.slit.n != nil {
				mark = mark.less(g.slit)
			}
		}
		if pairs.n != nil {
			g.equal(l, name, printed, mark, "as many pairs as are counted to the marker")
		}
	}
	if first := g.marks["First seam"]; name == "Second seam" && first.n != nil {
		_, count := list(stepCount, 2)
		g.equal(l, name, count, first, "as far as the first seam")
	}
	if name == "Underarms" {
		g.equal(l, name, printed, g.length, "the length of a sleeve")
	}
	if _, s := list(stepFold, 1); s != "" {
		g.equal(l, "the fold", s, g.long.times(1, 2), "half of the length of a panel")
	}
	if _, s := list(stepOpen, 1); s != "" {
		g.equal(l, name, s, g.wide.less(mark.times(2, 1)), "the width of a panel less both shoulders")
	}
	edge, s := list(stepEnds, 1)
	if s == "" {
		return
	}
	onto := mark
	if name == "Sleeves" {
		g.equal(l, name, s, g.round, "the round of a sleeve")
		onto = g.long.less(g.marks["Sides"]).times(2, 1)
		if _, s := list(stepOnto, 1); s != "" {
			g.equal(l, name, s, onto, "what is left open at both sides of the shoulder")
		}
	} else {
		g.equal(l, name, s, g.wide, "the width of a panel")
	}
	_, over := list(stepPass, 1)
	_, of := list(stepPass, 2)
	more := onto.less(edge)
	most := onto
	for i, x := range more.n { // the side that has more
		if x.Sign() < 0 {
			more.n[i], most = x.Mul(gauge.Int(-1)), edge
		}
	}
	if over != "" {
		g.equal(l, name, over, more, "what one side has more than the other")
		g.equal(l, name, of, most, "what the side has that has more")
	}
}

// read reads a list of stitches for all sizes; nothing if it is none.
func (g *panels) read(s string) tally {
	n, err := numbers(s)
	if err == nil {
		n, err = n.For(g.p.n)
	}
	out := tally{kind: stitches}
	for _, v := range n {
		r, bad := gauge.FromDecimal(v)
		if err != nil || bad != nil {
			return tally{}
		}
		out.n = append(out.n, r)
	}
	if err != nil {
		return tally{}
	}
	return out
}

// equal finds the sizes in which a printed list is not the one wanted.
func (g *panels) equal(l line, name, list string, want tally, why string) {
	got := g.read(list)
	if got.n != nil && want.n != nil && g.p.as[l.number] == "" {
		g.p.as[l.number] = "counts of a seam"
	}
	var out []Finding
	for i := range min(len(got.n), len(want.n)) {
		if a, b := got.n[i], want.n[i]; !a.Equal(b) {
			out = append(out, Finding{Line: l.number, Name: name, Size: g.p.label(i), Got: a.Text(places(a)), Want: b.Text(places(b)), Why: why})
		}
	}
	g.found = append(g.found, once(out, g.p.n)...)
}

// measures says what each finished measure is made of in this layout.
func (g *panels) measures() {
	fold, round := g.long.times(1, 2), g.wide.times(4, 1)
	if g.layout == "front and back" {
		fold, round = g.long, g.wide.times(2, 1)
	}
	arm, drop, depth := fold.less(g.marks["Sides"]), fold.less(g.marks["Centre back"]), fold.less(g.marks["Centre front"])
	width := g.wide.less(g.marks["Shoulders"].times(2, 1))
	neck := drop.add(depth).times(2, 1)
	switch g.layout {
	case "front and back":
		neck = width.times(2, 1)
	case "poncho":
		neck = g.long.less(g.marks["First seam"]).times(2, 1)
	}
	g.slit.kind = g.long.kind
	g.lengths = map[string]tally{
		"Round the body": round, "Length": fold, "Width of a panel": g.wide, "Length of a panel, before joining": g.long,
		"Armhole depth": arm, "Armhole, all round": arm.times(2, 1), "Neck drop at the centre back": drop, "Neck depth in front": depth,
		"Neck width": width, "Neck opening, all round": neck, "Sleeve length": g.length, "Sleeve, all round": g.round,
		"Opening round the body": g.wide.times(2, 1), "Slit": g.slit, "Ease over the largest chest of each size": round,
	}
	g.seams = map[string]tally{"Centre back": drop, "Centre front": depth, "Shoulders": width, "Sides": arm}
}

// blocked reports whether a line gives the panels as they are made.
func blocked(name string) bool { return name == "Each panel, blocked" || name == "The panel, blocked" }

// line ties the lengths of a line to what makes them.
func (g *panels) line(l line) {
	var pairs []pair
	for _, x := range g.p.inBoth {
		if x.line.number == l.number {
			pairs = append(pairs, x)
		}
	}
	tie := func(made ...tally) {
		for i, t := range made {
			if i < len(pairs) && len(t.n) == g.p.n && len(pairs[i].sizes) == g.p.n {
				x := pairs[i]
				g.all = append(g.all, relation{line: l, name: name(l, "panel"), sizes: x.sizes, kind: t.kind, exact: true, counts: t.n,
					worked: strings.Contains(l.text, "fresh off the hook"), lists: []grade.Run[gauge.Length]{x.Own, x.Other}})
				g.p.tied[fmt.Sprint(l.number, " ", i)] = true
				g.p.as[l.number] = "lengths of the panels"
			}
		}
	}
	known := row.UK.Spell(l.name)
	made, ok := g.lengths[known]
	switch {
	case len(pairs) == 0:
	case l.name == "Hem, all round" && g.layout == "poncho":
		if over, _, ok := g.p.over(rows, false); ok && len(pairs[0].sizes) == g.p.n {
			tie(g.along.times(2, 1))
			for _, n := range g.across.times(2, 1).n {
				m, _ := over.Measure(n)
				g.all[len(g.all)-1].plus = append(g.all[len(g.all)-1].plus, m)
			}
		}
	case l.name == "Ease over the largest chest of each size":
		if high := g.p.chests(pairs[0].Own[0].Unit); len(high) == g.p.n && len(pairs[0].sizes) == g.p.n {
			tie(made)
			g.all[len(g.all)-1].less = high
		}
	case ok:
		tie(made)
	case blocked(l.name), strings.HasPrefix(l.text, "Before blocking, a panel fresh off the hook"), strings.HasPrefix(l.text, "Before any seam, block "):
		tie(g.along, g.across, g.sleeve[0], g.sleeve[1])
	case l.name == "Sides" && g.slit.n != nil:
		tie(g.slit, g.seams["Sides"])
	case g.seams[known].n != nil:
		tie(g.seams[known], g.lengths["Neck opening, all round"])
	case strings.HasPrefix(l.text, "The open edges, "):
		tie(g.lengths["Opening round the body"])
	case strings.Contains(l.text, "is the neck, "):
		tie(g.lengths["Neck opening, all round"])
	}
}
