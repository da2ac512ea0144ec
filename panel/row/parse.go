package row

import (
	"fmt"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
)

// maxDepth is how deep repeats may be nested.
const maxDepth = 6

// Parse reads one row written in the given terms; the grammar is in the package
// documentation.
//
// It returns a *SyntaxError, with line and column, if the text is not of that
// grammar, uses a word of the other terms, lists of sizes differ in length, or
// a repeat works more than gauge.MaxCount places (ErrBounds).
func Parse(s string, terms Terms) (Row, error) {
	r, _, err := ParseNamed(s, terms)
	return r, err
}

// ParseNamed is Parse, and reports whether the row calls every place by its kind
// that it goes into or skips, but for the first and the last: next dc, each ch-1
// sp, and not next st. Such a row may pass over what lies between.
func ParseNamed(s string, terms Terms) (r Row, named bool, err error) {
	p, err := parse(s, terms)
	if err != nil {
		return Row{}, false, err
	}
	return p.row, !p.unnamed, nil
}

func parse(s string, terms Terms) (*parser, error) {
	if !terms.valid() {
		return nil, &gauge.FieldError{Field: "Terms", Got: terms.String(), Want: "US or UK"}
	}
	if len(s) > text.Limit {
		line, col := lineCol(s, text.Limit)
		return nil, &SyntaxError{Line: line, Col: col, Text: s, Read: "more than 10000 characters", Want: "a shorter row", Err: gauge.ErrBounds}
	}
	p := &parser{s: s, toks: lex(s), terms: terms}
	items := p.items(0)
	if p.err == nil && p.peek().kind != endToken {
		p.fail(p.peek(), "the end of the row")
	}
	if p.err == nil && len(items) == 0 {
		p.fail(p.peek(), wantItem)
	}
	if p.err != nil {
		return nil, p.err
	}
	p.row = Row{Items: p.settle(items)}
	if p.err != nil {
		return nil, p.err
	}
	if err := p.row.validate(); err != nil {
		at, end := p.extent(err.Field)
		p.failAt(at, strings.TrimRight(s[at:end], " ,;."), err.Want+", got "+err.Got, err.Err)
		return nil, p.err
	}
	return p, nil
}

// Must is Parse for literals in tests and package variables; it panics when s
// can't be read.
func Must(s string, terms Terms) Row {
	r, err := Parse(s, terms)
	if err != nil {
		panic("row.Must: " + err.Error())
	}
	return r
}

const (
	wantItem  = "an instruction: a stitch, sk, ch, leave, a bracket or *"
	wantPlace = "a place: next st, each st across, first st, last st, same st or a ch-m sp"
)

// parser reads tokens from left to right. The first failure stays in err, and
// everything after it is read in vain.
type parser struct {
	s       string
	toks    []token
	i       int
	terms   Terms
	overCh  bool  // the row is worked into a foundation chain: ch is a place
	sizes   int   // length of the lists of sizes read so far; 0 for none
	started bool  // an item has been read
	starts  []int // byte offset of each item of the row
	plain   bool  // the place read last is called st
	unnamed bool  // some place that is worked or skipped is
	row     Row
	err     error
}

// extent returns where the item stands that a field like Row.Items[3].N is of.
func (p *parser) extent(field string) (from, to int) {
	to = len(p.s)
	rest, ok := strings.CutPrefix(field, "Row.Items[")
	digits, _, _ := strings.Cut(rest, "]")
	i, err := strconv.Atoi(digits)
	if !ok || err != nil || i >= len(p.starts) {
		return 0, to
	}
	for _, at := range p.starts[i+1:] {
		if at > p.starts[i] {
			return p.starts[i], at
		}
	}
	return p.starts[i], to
}

func (p *parser) peek() token { return p.toks[p.i] }

func (p *parser) ahead(n int) token { return p.toks[min(p.i+n, len(p.toks)-1)] }

func (p *parser) next() token {
	t := p.toks[p.i]
	if p.i < len(p.toks)-1 {
		p.i++
	}
	return t
}

// fail records that t stands where want was expected.
func (p *parser) fail(t token, want string) { p.failAt(t.at, p.s[t.at:t.end], want, nil) }

func (p *parser) failAt(at int, read, want string, err error) {
	if p.err == nil {
		line, col := lineCol(p.s, at)
		p.err = &SyntaxError{Line: line, Col: col, Text: p.s, Read: read, Want: want, Err: err}
	}
	p.i = len(p.toks) - 1
}

// word takes the next token if it is one of the words or marks.
func (p *parser) word(words ...string) bool {
	t := p.peek()
	if t.kind != wordToken && t.kind != markToken {
		return false
	}
	for _, w := range words {
		if t.word == w {
			p.next()
			return true
		}
	}
	return false
}

// expect takes one of the words, or fails.
func (p *parser) expect(words ...string) bool {
	if p.word(words...) {
		return true
	}
	p.fail(p.peek(), orList(words))
	return false
}

func orList(words []string) string {
	if n := len(words); n > 1 {
		return strings.Join(words[:n-1], ", ") + " or " + words[n-1]
	}
	return words[0]
}

// items reads instructions up to a closing bracket, the rep that closes a *, or
// the end.
func (p *parser) items(depth int) []Item {
	var items []Item
	for p.err == nil {
		for p.word(",", ";", "and", "then", "work", "make", "yo", "yoh", "yrh", "also") {
		}
		t := p.peek()
		if t.kind == endToken || t.kind == markToken && (t.word == ")" || t.word == "]" || t.word == "}") || t.word == "rep" || t.word == "repeat" {
			return items
		}
		if t.word == "turn" && depth == 0 && p.ahead(1).kind == endToken {
			p.next()
			if len(items) > 0 {
				if _, ok := items[len(items)-1].(Chains); ok {
					p.fail(t, "the chains before it at the start of the next row, where they belong")
				}
			}
			return items
		}
		if depth == 0 {
			p.starts = append(p.starts, t.at)
		}
		items = p.item(items, depth)
		for p.err == nil && p.peek().word == "and" && (p.ahead(1).word == "in" || p.ahead(1).word == "each") {
			w, ok := items[len(items)-1].(Work)
			if !ok {
				break
			}
			if depth == 0 {
				p.starts = append(p.starts, p.peek().at)
			}
			p.next()
			p.word("in")
			items = append(items, p.placed(w.Make))
		}
		for depth == 0 && len(p.starts) < len(items) { // a foundation chain is two
			p.starts = append(p.starts, t.at)
		}
		p.started = true
		if p.err == nil && !p.separated() {
			p.fail(p.peek(), "a comma and the next instruction, or the end of the row")
		}
	}
	return items
}

// separated reports whether what was read may end here.
func (p *parser) separated() bool {
	t := p.peek()
	switch t.kind {
	case endToken:
		return true
	case wordToken:
		return t.word == "and" || t.word == "then" || t.word == "rep" || t.word == "repeat" || t.word == "turn"
	case markToken:
		return strings.Contains(",;)]}", t.word)
	}
	return false
}

// item reads one instruction and appends it.
func (p *parser) item(items []Item, depth int) []Item {
	t := p.peek()
	switch {
	case t.word == "*":
		return append(items, p.star(depth))
	case t.kind == markToken && (t.word == "(" || t.word == "[" || t.word == "{"):
		return append(items, p.bracket(depth))
	case p.word("sk", "skip", "miss", "sk-st"):
		n, space := p.count()
		return append(items, Skip{N: n, Space: space})
	case p.word("leave", "leaving"):
		return append(items, p.leave())
	case p.word("chainless"):
		c := Chainless{Of: p.stitch()}
		if p.started {
			p.fail(t, "a stitch without a chain only at the start of a row")
		}
		p.expect("in", "into")
		p.word("the")
		p.expect("first", "1st")
		p.noun()
		return append(items, c)
	case t.word == "ch" || t.word == "chain":
		return p.chains(items)
	}
	return append(items, p.work())
}

// atoi returns the value of a number token within bounds.
func (p *parser) atoi(t token) int {
	if len(t.word) > 6 {
		p.failAt(t.at, p.s[t.at:t.end], "a number up to 100000", gauge.ErrBounds)
		return 1
	}
	n, _ := strconv.Atoi(t.word)
	if n > gauge.MaxCount {
		p.failAt(t.at, p.s[t.at:t.end], "a number up to 100000", gauge.ErrBounds)
		return 1
	}
	return n
}

// num reads a number, with one for each size if brackets with numbers follow:
// 7 (8, 9), 7 (8, 9) [10, 11], 7[8:9].
func (p *parser) num() Num {
	t := p.peek()
	if t.kind != numberToken {
		p.fail(t, "a number")
		return Num{1}
	}
	p.next()
	n := Num{p.atoi(t)}
	for p.err == nil && p.listAhead() {
		p.next()
		for p.err == nil {
			n = append(n, p.atoi(p.next()))
			if p.word(")", "]") {
				break
			}
			p.next()
		}
	}
	if len(n) > 1 {
		switch {
		case p.sizes == 0:
			p.sizes = len(n)
		case p.sizes != len(n):
			p.failAt(t.at, p.s[t.at:p.toks[max(p.i-1, 0)].end], fmt.Sprintf("as many sizes as before, %d", p.sizes), nil)
		}
		if len(n) > 64 {
			p.failAt(t.at, p.s[t.at:t.end], "at most 64 sizes", gauge.ErrBounds)
		}
	}
	for _, x := range n {
		if x != n[0] {
			return n
		}
	}
	return n[:1] // the same in every size
}

// listAhead reports whether a bracket with numbers alone follows.
func (p *parser) listAhead() bool {
	i := p.i
	if w := p.toks[i].word; w != "(" && w != "[" {
		return false
	}
	for i++; i+1 < len(p.toks); i += 2 {
		if p.toks[i].kind != numberToken {
			return false
		}
		switch p.toks[i+1].word {
		case ")", "]":
			return true
		case ",", ":", ";":
		default:
			return false
		}
	}
	return false
}

// canonical turns a plain 1 into nil.
func canonical(n Num) Num {
	if n.one() {
		return nil
	}
	return n
}
