package schematic

import (
	"slices"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/svg"
	"example.com/panelmath/panel/layout"
)

const lineHeight = 215 // of the key

// page draws the cells and the key below them.
func page(a All, k *key, lines [][]cell) []byte {
	width, height := pageWidth, 0
	for _, line := range lines {
		for _, c := range line {
			width = max(width, c.x+c.w+c.right+margin)
			height = max(height, c.y+c.h+c.bottom)
		}
	}
	title, sizes := a.title()
	var d svg.Doc
	y := margin
	write := func(x, width int, bold bool, text string) {
		for _, line := range wrap(text, width) {
			d.Text(x, y, "start", bold, line)
			y += lineHeight
		}
	}
	if !a.Options.KeyApart {
		y += fontSize
		write(margin, width-2*margin, true, title)
		if sizes != "" {
			write(margin, width-2*margin, false, sizes)
		}
	}
	top := y
	shape := a.Sizes[a.Shape]
	for _, line := range lines {
		for _, c := range line {
			c.y += top
			c.draw(&d, shape.Pieces[c.piece])
		}
	}
	y = top + height + lineHeight
	var told []string
	item := func(sign, text string) {
		if !a.Options.KeyApart {
			d.Text(margin, y, "start", true, sign)
			write(margin+keyIndent, width-2*margin-keyIndent, false, text)
		}
		told = append(told, strings.TrimSpace(sign+" "+text))
	}
	for _, e := range k.pieces() {
		item(e.Sign, e.Text)
	}
	y += lineHeight / 3
	for _, e := range k.entries {
		item(e.Sign, e.Text)
	}
	if m := k.measures(); len(m) > 0 {
		y += lineHeight / 3
		item("Finished", "")
		for _, text := range m {
			item("", text)
		}
	}
	y += lineHeight / 3
	for _, s := range used(shape) {
		if s.dot {
			d.Dot(margin+sampleWidth/2, y-fontSize/3)
		} else {
			d.Line(margin, y-fontSize/3, margin+sampleWidth, y-fontSize/3, s.style)
		}
		if s.over != "" {
			d.Line(margin, y-fontSize/3, margin+sampleWidth, y-fontSize/3, s.over)
		}
		if s.arrow {
			d.Arrow(margin, y-fontSize/3, margin+sampleWidth, y-fontSize/3)
		}
		write(margin+sampleWidth+fontSize, width-2*margin-sampleWidth-fontSize, false, s.text)
	}
	return d.Bytes(width, y-lineHeight+fontSize+margin, fontSize, title, strings.Join(append([]string{describe(shape)}, told...), ". ")+".")
}

const (
	keyIndent   = 380
	sampleWidth = 500
)

// The lines, told apart by pattern.
const (
	outline  = `stroke-width="1.2"`
	crossing = `stroke-width="8" stroke-dasharray="1.3 5"`
	opening  = `stroke-width="2.4" stroke-dasharray="7 4"`
	folding  = `stroke-width="1.2" stroke-dasharray="12 4 1.5 4"`
	chain    = `stroke-width="3.4" stroke-linecap="round" stroke-dasharray="0 7"`
	thin     = `stroke-width="0.7"`
)

// sample is a line of the key that shows a kind of line.
type sample struct {
	style, over string
	arrow, dot  bool
	text        string
}

// used returns the samples of the lines that a layout has.
func used(l layout.Layout) []sample {
	var joined, open, ends bool
	var folds []string
	for _, p := range l.Pieces {
		for _, f := range p.Folds {
			text := "fold"
			if f.Name != "" && f.Name != text {
				text += ": " + f.Name
			}
			if !slices.Contains(folds, text) {
				folds = append(folds, text)
			}
		}
		for at := layout.Bottom; at <= layout.Right; at++ {
			ends = ends || len(p.Stretches(at)) > 1
			for _, s := range p.Stretches(at) {
				joined = joined || s.Kind != layout.Open
				open = open || s.Kind == layout.Open && s.Name != ""
			}
		}
	}
	var out []sample
	if joined {
		out = append(out, sample{style: outline, over: crossing, text: "joined; what bears the same name meets"})
	}
	if open {
		out = append(out, sample{style: opening, text: "stays open"})
	}
	if ends {
		out = append(out, sample{dot: true, text: "here one stretch ends and the next begins"})
	}
	for _, text := range folds {
		out = append(out, sample{style: folding, text: text})
	}
	return append(out,
		sample{style: chain, text: "foundation edge"},
		sample{style: outline, arrow: true, text: "the way the work goes"})
}

// describe tells the drawing to those who do not see it.
func describe(l layout.Layout) string {
	var s []string
	for _, p := range l.Pieces {
		s = append(s, p.Name+", foundation edge at the "+p.Foundation.String())
	}
	return "Pieces laid flat, right sides up: " + strings.Join(s, "; ")
}

func (c cell) draw(d *svg.Doc, p layout.Piece) {
	d.Text(c.x+c.w/2, c.y+c.numberAt+fontSize/3, "middle", true, itoa(c.piece+1))
	for at := layout.Bottom; at <= layout.Right; at++ {
		c.drawEdge(d, at)
	}
	for _, f := range p.Folds {
		along, count := c.h, p.Count(layout.Left)
		if f.Upright {
			along, count = c.w, p.Count(layout.Bottom)
		}
		share, _ := f.At.Quo(gauge.Int(count)) // a count is at least 1
		n, _ := share.Mul(gauge.Int(along)).Floor()
		if f.Upright {
			d.Line(c.x+n, c.y, c.x+n, c.y+c.h, folding)
		} else {
			d.Line(c.x, c.y+c.h-n, c.x+c.w, c.y+c.h-n, folding)
		}
	}
	c.drawWork(d, p.Foundation)
	c.drawExtents(d)
}

// drawEdge draws the stretches of an edge and their letters.
func (c cell) drawEdge(d *svg.Doc, at layout.Place) {
	// point returns the place so far along the edge and so far out from it.
	point := func(along, out int) (x, y int) {
		switch at {
		case layout.Left:
			return c.x - out, c.y + along
		case layout.Right:
			return c.x + c.w + out, c.y + along
		case layout.Top:
			return c.x + along, c.y - out
		}
		return c.x + along, c.y + c.h + out
	}
	line := func(from, to, outFrom, outTo int, style string) {
		x1, y1 := point(from, outFrom)
		x2, y2 := point(to, outTo)
		d.Line(x1, y1, x2, y2, style)
	}
	row := labelAt
	switch at {
	case layout.Top:
		row = -c.topRow
	case layout.Bottom:
		row = c.bottomRow - c.h
	}
	for _, m := range c.edges[at] {
		style := outline
		if m.kind == layout.Open && m.named {
			style = opening
		}
		line(m.from, m.to, 0, 0, style)
		if m.kind != layout.Open {
			line(m.from, m.to, 0, 0, crossing)
		}
		if m.letter == "" {
			continue
		}
		x, y := point(m.label, row)
		d.Text(x, y+fontSize/3, "middle", false, m.letter)
		if away := m.label - m.middle(); away > 60 || away < -60 || row > labelAt {
			line(m.middle(), m.label, 20, row-fontSize*3/5, thin)
		}
	}
	for _, m := range c.edges[at][1:] {
		x, y := point(m.from, 0)
		d.Dot(x, y)
	}
}

// drawWork draws the dots along the foundation edge and the arrow away from it.
func (c cell) drawWork(d *svg.Doc, foundation layout.Place) {
	const in = 45
	x1, y1, x2, y2 := c.x+in, c.y+in, c.x+c.w-in, c.y+c.h-in
	ax, ay := c.x+c.w*3/10, c.y+c.h*3/10
	switch foundation {
	case layout.Bottom:
		d.Line(x1, y2, x2, y2, chain)
		d.Arrow(ax, c.y+c.h*17/20, ax, c.y+c.h*13/20)
	case layout.Top:
		d.Line(x1, y1, x2, y1, chain)
		d.Arrow(ax, c.y+c.h*3/20, ax, c.y+c.h*7/20)
	case layout.Left:
		d.Line(x1, y1, x1, y2, chain)
		d.Arrow(c.x+c.w/5, ay, c.x+c.w*4/5, ay)
	default:
		d.Line(x2, y1, x2, y2, chain)
		d.Arrow(c.x+c.w*4/5, ay, c.x+c.w/5, ay)
	}
}

// drawExtents draws the dimension lines of width and height.
func (c cell) drawExtents(d *svg.Doc) {
	const tick = 40
	y := c.y + c.widthAt
	d.Line(c.x, y, c.x+c.w, y, thin)
	d.Line(c.x, y-tick, c.x, y+tick, thin)
	d.Line(c.x+c.w, y-tick, c.x+c.w, y+tick, thin)
	for i, text := range c.width {
		d.Text(c.x+c.w/2, y+labelAt+fontSize/5+i*rowHeight, "middle", false, text)
	}
	if len(c.height) == 0 {
		return
	}
	x := c.x + c.heightAt
	d.Line(x, c.y, x, c.y+c.h, thin)
	d.Line(x-tick, c.y, x+tick, c.y, thin)
	d.Line(x-tick, c.y+c.h, x+tick, c.y+c.h, thin)
	for i, text := range c.height {
		d.Text(x-fontSize/2, c.y+c.h/2+fontSize/3+(2*i+1-len(c.height))*rowHeight/2, "end", false, text)
	}
}
