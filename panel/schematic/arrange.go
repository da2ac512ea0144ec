package schematic

import (
	"slices"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/layout"
)

// All coordinates are tenths of a unit, as whole numbers.
const (
	pageWidth  = 4800 // of the page
	drawHeight = 3600 // of all pieces one below the other, at most, and
	lineMore   = 1200 // so much more for each line of them
	margin     = 160  // of the page
	fontSize   = 150
	rowHeight  = 190 // room a label takes up and down
	labelAt    = 150 // from an edge to the middle of its labels
	gap        = 120 // between cells
	leastSide  = 40  // a piece is never drawn narrower
)

// cell is a piece in the drawing with what stands around it. Its own
// coordinates begin at the top left corner of the piece.
type cell struct {
	piece                    int
	w, h                     int // of the piece
	left, top, right, bottom int // room around it
	edges                    [4][]mark
	topRow, bottomRow        int      // where the labels of the top and bottom edge stand
	width, height            []string // lines that tell the extents: a letter, or the lengths
	widthAt, heightAt        int      // where their dimension lines run
	numberAt                 int      // where the number of the piece stands
	x, y                     int      // of the piece on the page
}

// mark is a stretch of an edge: from and to along it, from the left or the top.
type mark struct {
	from, to int
	kind     layout.Kind
	named    bool
	letter   string
	label    int // where the letter stands along the edge
}

func (m mark) middle() int { return (m.from + m.to) / 2 }

// arrange places the pieces on lines as the layout says, or one below the
// other where they come out more than twice as large so.
func arrange(l layout.Layout, k *key) [][]cell {
	var lines, stacked [][]int
	for i, p := range l.Pieces {
		stacked = append(stacked, []int{i})
		if i == 0 || p.NewLine {
			lines = append(lines, nil)
		}
		lines[len(lines)-1] = append(lines[len(lines)-1], i)
	}
	a, scaleA := fit(l, k, lines)
	if len(lines) == len(stacked) {
		return a
	}
	const larger = 2 // times
	if b, scaleB := fit(l, k, stacked); scaleB.Cmp(scaleA.Mul(gauge.Int(larger))) > 0 {
		return b
	}
	return a
}

// fit finds the largest scale, by steps of a twentieth, at which the lines fit
// the page, and places the cells.
func fit(l layout.Layout, k *key, lines [][]int) ([][]cell, gauge.Ratio) {
	// The scale in tenths of a unit for a millimetre: the longest line of
	// pieces, or all lines of them, would take the whole page.
	var width, height gauge.Measurement
	for _, line := range lines {
		var w, h gauge.Measurement
		for _, i := range line {
			pw, _ := l.Pieces[i].Width() // the layout is valid
			ph, _ := l.Pieces[i].Height()
			w = w.Add(pw)
			if ph.Cmp(h) > 0 {
				h = ph
			}
		}
		if w.Cmp(width) > 0 {
			width = w
		}
		height = height.Add(h)
	}
	scale, _ := gauge.Int(pageWidth).Quo(width.In(gauge.Millimetre)) // a width is more than nothing
	if s, _ := gauge.Int(drawHeight + lineMore*len(lines)).Quo(height.In(gauge.Millimetre)); s.Cmp(scale) < 0 {
		scale = s
	}
	const mostTries = 80 // a sixtieth: beyond, it is the labels that take the room
	smaller, _ := gauge.Share(19, 20)
	for tries := 0; ; tries++ {
		cells := make([][]cell, len(lines))
		widest := 0
		for n, line := range lines {
			lineW := 0
			for at, i := range line {
				s := k.signs[i]
				if at > 0 && slices.Equal(s.height, k.signs[i-1].height) { // one line tells the height of both
					s.height = nil
				}
				c := newCell(l.Pieces[i], i, s, scale)
				lineW += c.left + c.w + c.right + gap
				cells[n] = append(cells[n], c)
			}
			widest = max(widest, lineW-gap)
		}
		if tries == mostTries || widest <= pageWidth-2*margin {
			place(cells, max(widest, pageWidth-2*margin))
			return cells, scale
		}
		scale = scale.Mul(smaller)
	}
}

// place puts every line in the middle of the width, the pieces of a line with
// their tops level.
func place(lines [][]cell, width int) {
	y := 0
	for _, line := range lines {
		lineW, above, below := -gap, 0, 0
		for _, c := range line {
			lineW += c.left + c.w + c.right + gap
			above, below = max(above, c.top), max(below, c.h+c.bottom)
		}
		x := margin + (width-lineW)/2
		for i := range line {
			line[i].x, line[i].y = x+line[i].left, y+above
			x += line[i].left + line[i].w + line[i].right + gap
		}
		y += above + below + gap
	}
}

// tenths returns m at a scale.
func tenths(m gauge.Measurement, scale gauge.Ratio) int {
	n, err := m.In(gauge.Millimetre).Mul(scale).Floor()
	if err != nil {
		return 0
	}
	return n
}

func newCell(p layout.Piece, i int, s signs, scale gauge.Ratio) cell {
	c := cell{piece: i, width: s.width, height: s.height}
	w, _ := p.Width() // the layout is valid
	h, _ := p.Height()
	c.w, c.h = max(tenths(w, scale), leastSide), max(tenths(h, scale), leastSide)
	low, high := [4]int{}, [4]int{} // how far the labels of an edge reach
	for at := layout.Bottom; at <= layout.Right; at++ {
		c.edges[at], low[at], high[at] = marks(p, at, s.edges[at], c.along(at))
	}
	// Labels of the top and bottom stand clear of those of the sides.
	over := max(0, -low[layout.Left], -low[layout.Right])
	under := max(0, high[layout.Left]-c.h, high[layout.Right]-c.h)
	c.topRow, c.bottomRow = -over-labelAt, c.h+under+labelAt
	c.numberAt = -over - labelAt
	if labelled(c.edges[layout.Top]) {
		c.numberAt = c.topRow - rowHeight
	}
	c.widthAt = c.h + under + labelAt/2
	if labelled(c.edges[layout.Bottom]) {
		c.widthAt = c.bottomRow + labelAt
	}
	c.heightAt = -labelAt / 2
	if labelled(c.edges[layout.Left]) {
		c.heightAt = -2 * labelAt
	}
	if len(c.height) == 0 {
		c.heightAt += labelAt
	}
	beyond := longest(c.width)/2 - c.w/2 // what tells the width may be wider than the piece
	c.top, c.bottom = rowHeight/2-c.numberAt, c.widthAt-c.h+labelAt+fontSize/5+len(c.width)*rowHeight
	c.left = max(-c.heightAt+fontSize/2+longest(c.height), -low[layout.Top], -low[layout.Bottom], beyond)
	c.right = max(labelAt/2, high[layout.Top]-c.w, high[layout.Bottom]-c.w, beyond)
	if short := len(c.height)*rowHeight - c.h; short > 0 { // it stands beside the middle of a low piece
		c.top, c.bottom = max(c.top, short/2), max(c.bottom, short/2)
	}
	if labelled(c.edges[layout.Right]) {
		c.right = max(c.right, labelAt+widest(c.edges[layout.Right])/2)
	}
	return c
}

// along returns the drawn length of an edge.
func (c cell) along(at layout.Place) int {
	if at == layout.Left || at == layout.Right {
		return c.h
	}
	return c.w
}

// marks returns the stretches of an edge with their letters spread so that no
// two touch, and how far the labels reach along the edge.
func marks(p layout.Piece, at layout.Place, letters []string, length int) (out []mark, low, high int) {
	total, sum := p.Count(at), 0
	upright := at == layout.Left || at == layout.Right
	for i, s := range p.Stretches(at) {
		from := length * sum / total
		sum += s.Count
		m := mark{from: from, to: length * sum / total, kind: s.Kind, named: s.Name != "", letter: letters[i]}
		if upright { // stretches run from the bottom up
			m.from, m.to = length-m.to, length-m.from
		}
		out = append(out, m)
	}
	if upright {
		for i, j := 0, len(out)-1; i < j; i, j = i+1, j-1 {
			out[i], out[j] = out[j], out[i]
		}
	}
	// size is the room of a label along the edge.
	size := func(m mark) int {
		if upright {
			return rowHeight
		}
		return textWidth(m.letter) + fontSize/2
	}
	// Each label goes as near to the middle of its stretch as those before it
	// allow; what goes too far is then moved back from the end.
	need, end := 0, -1<<30
	for i := range out {
		if out[i].letter == "" {
			continue
		}
		half := size(out[i]) / 2
		out[i].label = max(out[i].middle(), end+half)
		end = out[i].label + half
		need += size(out[i])
	}
	most := length + max(0, need-length)/2
	for i := len(out) - 1; i >= 0; i-- {
		if out[i].letter == "" {
			continue
		}
		half := size(out[i]) / 2
		out[i].label = min(out[i].label, most-half)
		most = out[i].label - half
		low, high = min(low, out[i].label-half), max(high, out[i].label+half)
	}
	return out, low, high
}

func longest(lines []string) int {
	w := 0
	for _, s := range lines {
		w = max(w, textWidth(s))
	}
	return w
}

func labelled(ms []mark) bool { return widest(ms) > 0 }

func widest(ms []mark) int {
	w := 0
	for _, m := range ms {
		w = max(w, textWidth(m.letter))
	}
	return w
}
