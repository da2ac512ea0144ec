package main

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"example.com/panelmath/panel/proof"
)

// runs returns the rows of a piece as package proof reads them. A line that can't
// be read is missed, and cuts the piece in two: nobody knows what the rows after
// it are worked into, so that they begin afresh from their own counts.
func (p *pattern) runs(b block) []block {
	if !b.after && !b.before && p.readable(&b) {
		return []block{b}
	}
	c := cutter{pattern: p, whole: b, after: b.after, total: -1}
	for i := 0; i < len(b.lines); i++ {
		first := i
		for i+1 < len(b.lines) && rowChain.MatchString(b.said[i]) { // a chain is read with its row
			i++
		}
		if one := b.part(first, i+1); !p.readable(&one) || !c.holds(one.text.Lines[0]) {
			c.miss(i, &one)
			c.cut(first, i+1, true)
		} else {
			c.count(i, one.text.Lines[0])
		}
	}
	c.cut(len(b.lines), len(b.lines), b.before)
	return c.runs
}

// part returns some lines of a piece.
func (b *block) part(from, to int) block {
	return block{lines: b.lines[from:to], said: b.said[from:to]}
}

// readable reads the rows of a block. They have lists for the sizes of the text.
func (p *pattern) readable(b *block) bool {
	if slices.ContainsFunc(b.lines, func(l line) bool { return len(p.lists(l)) > 0 }) {
		return false
	}
	_, err := b.parse(p.terms)
	return err == nil && (b.text.Sizes == 1 || b.text.Sizes == p.n)
}

// cutter cuts the rows of a piece where one is missed.
type cutter struct {
	*pattern
	whole block
	runs  []block
	from  int    // where the rows since the last cut begin
	after bool   // they stand after rows that were not read
	rows  []span // their numbers
	next  int    // number of the next row in the first size; 0 where nobody knows
	total int    // a line that tells how often the rows after it are worked; -1 for none
	left  int    // how many of these rows are still to come
}

type span struct{ from, to int }

// holds reports whether the rows are there that a line works again.
func (c *cutter) holds(l proof.Line) bool {
	if l.Again == nil || l.Again.Total || !c.after {
		return true
	}
	n := l.Again.To - l.Again.From + 1
	for _, s := range c.rows {
		n -= max(0, min(s.to, l.Again.To)-max(s.from, l.Again.From)+1)
	}
	return n <= 0
}

// count goes on in the numbers of the rows.
func (c *cutter) count(i int, l proof.Line) {
	switch {
	case l.Ends != nil:
		return
	case l.Again != nil && l.Again.Total:
		c.total, c.left = i, l.Again.To-l.Again.From+1
		return
	case l.Again != nil:
		c.next = 0
		return
	case l.From != nil:
		c.next = l.From[0]
	}
	if c.left -= l.Rows; c.left <= 0 {
		c.total = -1
	}
	if c.next > 0 {
		c.rows = append(c.rows, span{c.next, c.next + l.Rows - 1})
		c.next += l.Rows
	}
}

// miss says why a line is not checked.
func (c *cutter) miss(i int, b *block) {
	l := c.whole.lines[i]
	switch at, err := b.parse(c.terms); {
	case err != nil:
		c.pattern.miss(b.lines[at], err)
	case len(c.lists(l)) > 0: // that is a finding
	case b.text.Sizes != 1 && b.text.Sizes != c.n:
		c.pattern.miss(l, fmt.Errorf("lists for %s in a text for %d", plural(b.text.Sizes, "size"), c.n))
	default:
		c.pattern.miss(l, errors.New("it reaches back to a line that is not checked"))
	}
}

// cut ends the rows so far before line to; the next begin at line from. before
// says whether rows stand between them that are not read.
func (c *cutter) cut(to, from int, before bool) {
	if before && c.total >= c.from {
		at := c.total
		c.pattern.miss(c.whole.lines[at], errors.New("it reaches on to a line that is not checked"))
		c.total = -1
		c.cut(at, at+1, true)
	}
	if c.from < to {
		run := c.whole.part(c.from, to)
		run.after = c.after
		if at, err := run.parse(c.terms); err != nil {
			c.pattern.miss(run.lines[at], err)
		} else {
			c.runs = append(c.runs, run)
		}
	}
	c.from, c.after, c.rows, c.next, c.total = from, true, nil, 0, -1
}

// column returns where something stands in a line that package proof reads in
// other words; what stands in these words alone is where they begin.
func column(text, said, read string, col int) int {
	if read != "" && strings.Count(text, read) == 1 {
		return utf8.RuneCountInString(text[:strings.Index(text, read)]) + 1
	}
	head := 0
	for head < min(len(text), len(said)) && text[head] == said[head] {
		head++
	}
	tail := 0
	for tail < min(len(text), len(said))-head && text[len(text)-1-tail] == said[len(said)-1-tail] {
		tail++
	}
	runes := utf8.RuneCountInString
	switch {
	case col-1 < runes(said[:head]):
		return col
	case runes(said)-col+1 <= runes(said[len(said)-tail:]):
		return col + runes(text) - runes(said)
	}
	return runes(text[:head]) + 1
}
