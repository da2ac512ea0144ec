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
	if !terms.valid() {
		return Row{}, &gauge.FieldError{Field: "Terms", Got: terms.String(), Want: "US or UK"}
	}
	if len(s) > text.Limit {
		line, col := lineCol(s, text.Limit)
		return Row{}, &SyntaxError{Line: line, Col: col, Text: s, Read: "more than 10000 characters", Want: "a shorter row", Err: gauge.ErrBounds}
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
		return Row{}, p.err
	}
	r := Row{Items: p.settle(items)}
	if p.err != nil {
		return Row{}, p.err
	}
	if err := r.Validate(); err != nil {
		f, _ := err.(*gauge.FieldError)
		p.failAt(0, s, f.Want+", got "+f.Got, f.Err)
		return Row{}, p.err
	}
	return r, nil
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
	overCh  bool // the row is worked into a foundation chain: ch is a place
	sizes   int  // length of the lists of sizes read so far; 0 for none
	started bool // an item has been read
	err     error
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
		items = p.item(items, depth)
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

// chains reads what begins with ch: chains between stitches, a turning chain
// with its remark, or a foundation chain.
func (p *parser) chains(items []Item) []Item {
	t := p.next()
	start := !p.started
	var n Num
	if p.peek().kind == numberToken {
		n = p.num()
	} else if !start {
		p.fail(p.peek(), "a number of chains")
	}
	if start && p.hookAhead() {
		return p.foundationChain(items, n)
	}
	if !start {
		return append(items, Chains{N: canonical(n)})
	}
	if n == nil {
		p.fail(p.peek(), "a number of chains; or, for a foundation chain, a stitch in Nth ch from hook")
		return items
	}
	if len(n) > 1 || n[0] < 1 {
		p.failAt(t.at, p.s[t.at:p.toks[p.i-1].end], "one number of chains for all sizes at the start of a row", nil)
		return items
	}
	tc := TurningChain{N: n[0]}
	open := p.word("(")
	comma := !open && p.peek().word == "," && (p.ahead(1).word == "counts" || p.ahead(1).word == "does")
	if comma {
		p.next()
	}
	switch {
	case p.word("counts", "count", "counting"):
		p.expect("as")
		tc.Counts = p.counted()
	case p.word("does", "do"):
		p.expect("not")
		p.expect("count")
		p.asStitch()
	case open || comma:
		p.fail(p.peek(), "counts as and a stitch, or does not count")
	case n[0] == 1: // before sc one chain never counts: two published lessons agree
	default:
		p.failAt(t.at, p.s[t.at:p.toks[p.i-1].end], fmt.Sprintf("ch %d (counts as dc), naming its stitch, or ch %d (does not count)", n[0], n[0]), nil)
	}
	if open {
		p.expect(")")
	}
	return append(items, tc)
}

// asStitch takes an optional `as a st`.
func (p *parser) asStitch() {
	if p.word("as") {
		p.word("a", "one")
		p.expect("st", "sts", "stitch", "stitches")
	}
}

// counted reads what chains count as: `dc`, `first dc`, `dc, ch 1`.
func (p *parser) counted() []Part {
	var parts []Part
	for p.err == nil {
		p.word("a", "the", "first", "1st", "one")
		part := p.part()
		parts = append(parts, part)
		if !(p.peek().word == "," || p.peek().word == "and" || p.peek().word == "+") || p.peek().kind == endToken {
			break
		}
		if p.ahead(1).word != "ch" && p.ahead(1).word != "chain" {
			break
		}
		p.next()
	}
	if p.err == nil && (parts[0].Of == Chain || len(parts[0].N) != 0 || len(parts) > 2) {
		p.fail(p.peek(), "one stitch, or a stitch and its chains: counts as dc, ch 1")
	}
	return parts
}

// hookAhead reports whether the next instruction goes into a chain `from hook`:
// the sign of a foundation chain.
func (p *parser) hookAhead() bool {
	i, depth := p.i, 0
	for strings.Contains(",;", p.toks[i].word) && p.toks[i].kind == markToken {
		i++
	}
	for ; i < len(p.toks); i++ {
		switch t := p.toks[i]; {
		case t.word == "(" || t.word == "[":
			depth++
		case t.word == ")" || t.word == "]":
			depth--
		case depth == 0 && (t.word == "," || t.word == ";"):
			return false
		case t.word == "from" && t.kind == wordToken:
			return p.toks[i+1].word == "hook" || p.toks[i+1].word == "the" || p.toks[i+1].word == "your"
		}
	}
	return false
}

// foundationChain reads on after `ch 12`: the first stitch, its chain from the
// hook and the remark.
func (p *parser) foundationChain(items []Item, n Num) []Item {
	p.overCh = true
	for p.word(",", ";", "turn", "and", "work") {
	}
	make := p.make()
	p.expect("in", "into")
	p.word("the")
	t := p.peek()
	hook := 0
	if t.kind == ordinalToken {
		p.next()
		hook = p.atoi(t)
	} else if p.word("second") {
		hook = 2
	} else if p.word("third") {
		hook = 3
	} else if p.word("fourth") {
		hook = 4
	} else {
		p.fail(t, "the chain for the first stitch: 4th ch from hook")
	}
	p.expect("ch", "chain")
	p.expect("from")
	p.word("the", "your")
	p.expect("hook")
	if p.err == nil && hook < 2 {
		p.fail(t, "at least the 2nd ch from hook")
	}
	fc := FoundationChain{Count: n, Hook: hook}
	if p.word("(") {
		for p.word("the", "skipped", "first", "these", "missed") || p.peek().kind == numberToken && p.atoi(p.peek()) == hook-1 && p.word2() {
		}
		p.word("chs", "ch", "chains", "chain", "sts")
		switch {
		case p.word("count", "counts"):
			p.expect("as")
			fc.Counts = p.counted()
		case p.word("do", "does"):
			p.expect("not")
			p.expect("count")
			p.asStitch()
		default:
			p.fail(p.peek(), "skipped chs count as and a stitch, or skipped chs do not count")
		}
		p.expect(")")
	} else if hook != 2 {
		p.fail(p.peek(), "(skipped chs count as dc), naming the stitch, or (skipped chs do not count)")
	}
	items = append(items, fc, Work{Make: make, At: FirstChain})
	if p.peek().word == "and" && (p.ahead(1).word == "in" || p.ahead(1).word == "each") {
		p.next()
		p.word("in", "into")
		p.started = true
		items = append(items, p.placed(make))
	}
	return items
}

// word2 takes a token of any kind.
func (p *parser) word2() bool { p.next(); return true }

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

// stitchAhead returns the stitch that the next words name, and how many tokens
// they take; the longest name wins.
func (p *parser) stitchAhead(terms Terms) (Stitch, int) {
	if p.peek().kind != wordToken {
		return NoStitch, 0
	}
	for n := 4; n >= 1; n-- {
		words := ""
		for i := range n {
			t := p.ahead(i)
			if t.kind != wordToken {
				words = ""
				break
			}
			if i > 0 {
				words += " "
			}
			words += t.word
		}
		if words == "" {
			continue
		}
		if s := stitchNamed(words, terms); s != NoStitch {
			return s, n
		}
		if w, plural := strings.CutSuffix(words, "s"); plural && n > 0 {
			if s := stitchNamed(w, terms); s != NoStitch {
				return s, n
			}
		}
	}
	return NoStitch, 0
}

// stitch reads the name of a stitch.
func (p *parser) stitch() Stitch {
	s, n := p.stitchAhead(p.terms)
	if s == NoStitch {
		p.failStitch("a stitch")
		return NoStitch
	}
	p.i = min(p.i+n, len(p.toks)-1)
	return s
}

// failStitch fails where a stitch was expected, and says so if the word is one
// of the other terms.
func (p *parser) failStitch(want string) {
	t := p.peek()
	if s, n := p.stitchAhead(p.terms.other()); s != NoStitch {
		end := p.ahead(n - 1).end
		p.failAt(t.at, p.s[t.at:end], fmt.Sprintf("%s terms as in the rest of the row: this is %s for %s", p.terms, p.terms.other(), s.Abbr(p.terms)), nil)
		return
	}
	if s, _, ok := together(t.word, p.terms.other()); ok && t.kind == wordToken {
		p.fail(t, fmt.Sprintf("%s terms as in the rest of the row: this is %s for %s", p.terms, p.terms.other(), s.Abbr(p.terms)+"2tog"))
		return
	}
	switch t.word {
	case "inc", "increase":
		want = "the increase in full: 2 sc in next st, with its stitch"
	case "dec", "decrease":
		want = "the decrease in full: sc2tog, with its stitch"
	}
	p.fail(t, want)
}

// together reads sc2tog.
func together(w string, terms Terms) (Stitch, int, bool) {
	w, ok := strings.CutSuffix(w, "tog")
	if !ok {
		return 0, 0, false
	}
	i := len(w)
	for i > 0 && digit(w[i-1]) {
		i--
	}
	if i == 0 || i == len(w) || len(w)-i > 3 {
		return 0, 0, false
	}
	n, _ := strconv.Atoi(w[i:])
	s := stitchNamed(strings.TrimSuffix(w[:i], "-"), terms)
	return s, n, s != NoStitch
}

// part reads `2 hdc`, `dc`, `ch 1`.
func (p *parser) part() Part {
	var n Num
	if p.peek().kind == numberToken {
		n = p.num()
	}
	s := p.stitch()
	if s == Chain && n == nil {
		n = p.num()
	}
	return Part{N: canonical(n), Of: s}
}

// parts reads what goes into one place, up to the closing bracket.
func (p *parser) parts() []Part {
	var parts []Part
	for p.err == nil {
		parts = append(parts, p.part())
		if !p.word(",", "and", "+") {
			break
		}
	}
	return parts
}

// make reads what goes into a place: `2 hdc`, `hdc`, `(dc, ch 1, dc)`.
func (p *parser) make() []Part {
	if t := p.peek(); t.kind == markToken && (t.word == "(" || t.word == "[") {
		p.next()
		parts := p.parts()
		p.expect(closer(t.word))
		return parts
	}
	return []Part{p.part()}
}

func closer(open string) string {
	switch open {
	case "(":
		return ")"
	case "[":
		return "]"
	}
	return "}"
}

// work reads an instruction that begins with a stitch or its number.
func (p *parser) work() Item {
	t := p.peek()
	var n Num
	if t.kind == numberToken {
		n = p.num()
	}
	if s, k, ok := together(p.peek().word, p.terms); ok && p.peek().kind == wordToken {
		tt := p.next()
		if n != nil {
			p.fail(tt, "[sc2tog] and the number of times, for several in a row")
		}
		return p.together(tt, s, k)
	}
	s, words := p.stitchAhead(p.terms)
	if s == NoStitch {
		p.failStitch(wantItem)
		return nil
	}
	p.i = min(p.i+words, len(p.toks)-1)
	if s.Foundation() {
		return p.foundation(t, s, n)
	}
	if s == Chain {
		p.fail(t, "ch and then the number of chains")
		return nil
	}
	// sc 2 tog
	if n == nil && p.peek().kind == numberToken && p.ahead(1).word == "tog" {
		k := p.atoi(p.next())
		return p.together(p.next(), s, k)
	}
	// hdc 7 (8, 9): one in each of the next 7
	if n == nil && p.peek().kind == numberToken {
		return Work{Make: []Part{{Of: s}}, N: canonical(p.num())}
	}
	if p.word("in", "into") {
		return p.placed([]Part{{N: canonical(n), Of: s}})
	}
	if n == nil {
		p.fail(p.peek(), "a place (in next st) or a number of stitches")
		return nil
	}
	return Work{Make: []Part{{Of: s}}, N: canonical(n)}
}

func (p *parser) together(t token, s Stitch, n int) Item {
	if n < 2 || n > 99 {
		p.fail(t, "2 to 99 stitches together")
	}
	if p.word("over", "in") {
		p.word("the")
		p.expect("next")
		if k := p.num(); len(k) != 1 || k[0] != n {
			p.fail(t, "the same number of stitches as are joined")
		}
		p.noun()
	}
	return Together{Of: s, N: n}
}

func (p *parser) foundation(t token, s Stitch, n Num) Item {
	if p.started {
		p.fail(t, "a foundation row on its own")
	}
	if n == nil && p.peek().kind == numberToken {
		n = p.num()
		p.word("sts", "st", "stitches")
	}
	return Foundation{Of: s, Count: n}
}

// noun takes `st`, `sts`, `ch`, or a stitch that stands for the place it made.
// It reports whether the place is a chain space, and of which size.
func (p *parser) noun() Space {
	t := p.peek()
	if t.kind == wordToken {
		switch w := strings.TrimSuffix(t.word, "s"); {
		case w == "st" || w == "stitch" || w == "stitche":
			p.next()
			return 0
		case w == "ch-sp" || w == "ch-space":
			p.next()
			return AnySpace
		case (w == "ch" || w == "chain") && p.spAhead(1):
			p.next()
			p.next()
			return AnySpace
		case (w == "ch" || w == "chain") && p.ahead(1).kind == numberToken && p.spAhead(2):
			p.next()
			m := p.atoi(p.next())
			p.next()
			return p.space(t, m)
		case strings.HasPrefix(t.word, "ch-") && digitsOnly(t.word[3:]) && p.spAhead(1):
			p.next()
			p.next()
			return p.space(t, p.atoi(token{word: t.word[3:], at: t.at, end: t.end}))
		case (w == "ch" || w == "chain") && p.overCh:
			p.next()
			return 0
		}
		if s, n := p.stitchAhead(p.terms); s != NoStitch && s != Chain {
			p.i = min(p.i+n, len(p.toks)-1)
			return 0
		}
	}
	p.failStitch("st or a ch-m sp")
	return 0
}

func (p *parser) space(t token, m int) Space {
	if m < 1 {
		p.fail(t, "a chain space of at least 1")
	}
	return Space(m)
}

func (p *parser) spAhead(n int) bool {
	w := strings.TrimSuffix(p.ahead(n).word, "s")
	return w == "sp" || w == "space" || w == "loop" || w == "lp"
}

func digitsOnly(s string) bool {
	for i := range len(s) {
		if !digit(s[i]) {
			return false
		}
	}
	return s != ""
}

// count reads `2`, `next 2 sts`, `next st`, `next ch-2 sp`.
func (p *parser) count() (Num, Space) {
	next := p.word("the", "next")
	next = p.word("next") || next
	var n Num
	if p.peek().kind == numberToken {
		n = p.num()
		if !p.nounAhead() {
			return canonical(n), 0
		}
	} else if !next && !p.nounAhead() {
		p.fail(p.peek(), "a number of stitches, or next st")
	}
	return canonical(n), p.noun()
}

// nounAhead reports whether a place follows.
func (p *parser) nounAhead() bool {
	w := p.peek().word
	return p.peek().kind == wordToken && !p.separated() && w != "times"
}

func (p *parser) leave() Item {
	p.word("the")
	if p.word("rem", "remaining") {
		p.word("sts", "st", "stitches")
		p.expect("unworked")
		return Leave{}
	}
	p.word("next")
	n := p.num()
	p.word("sts", "st", "stitches")
	p.expect("unworked")
	return Leave{N: n}
}

// placed reads the place after `in` for what is made there.
func (p *parser) placed(make []Part) Item {
	p.word("the")
	t := p.peek()
	switch {
	case p.word("each", "every"):
		if p.word("of") {
			p.word("the")
			return p.places(make, true)
		}
		return p.each(make)
	case p.word("same"):
		if !p.word("place") {
			p.noun()
		}
		return Work{Make: make, At: Same}
	case t.word == "first" || t.word == "last" || t.word == "next" || t.kind == ordinalToken && t.word == "1":
		return p.places(make, false)
	case t.kind == wordToken && strings.HasPrefix(t.word, "ch"):
		return Work{Make: make, Space: p.noun()}
	}
	p.fail(t, wantPlace)
	return nil
}

// places reads `next 3 sts`, `first st`, `last 2 sts`.
func (p *parser) places(make []Part, each bool) Item {
	w := Work{Make: make}
	t := p.next()
	switch {
	case t.word == "next":
	case t.word == "first" || t.kind == ordinalToken && t.word == "1":
		w.At = First
	case t.word == "last":
		w.At = Last
	default:
		p.i--
		p.fail(t, "next, first or last")
		return nil
	}
	if p.peek().kind == numberToken {
		w.N = canonical(p.num())
	}
	w.Space = p.noun()
	if !each && w.N != nil && !single(make) {
		p.failAt(t.at, p.s[t.at:p.toks[p.i-1].end], "in each of, where several go into each place: 2 dc in each of next 3 sts", nil)
	}
	return w
}

// single reports whether the parts are one stitch.
func single(parts []Part) bool { return len(parts) == 1 && parts[0].N.one() && parts[0].Of != Chain }

// each reads on after `in each`: `st across`, `st and 2 hdc in each ch-2 sp
// across`, `st and ch-sp to last 3 sts`.
func (p *parser) each(make []Part) Item {
	e := Each{In: []Into{{Make: make, Space: p.noun()}}}
	for p.err == nil && p.peek().word == "and" {
		mark := p.i
		p.next()
		more := make
		if p.peek().word != "in" && p.peek().word != "each" && !p.spaceAhead() {
			if p.peek().kind == markToken && p.peek().word != "(" {
				p.i = mark
				break
			}
			more = p.make()
			if p.err == nil && !(p.peek().word == "in" && p.ahead(1).word == "each" && p.ahead(2).word != "of") {
				// a new instruction after and
				p.i = mark
				break
			}
		}
		p.word("in", "into")
		p.word("each")
		e.In = append(e.In, Into{Make: more, Space: p.noun()})
	}
	e.Last = p.until()
	return e
}

// spaceAhead reports whether a chain space follows.
func (p *parser) spaceAhead() bool {
	w := p.peek().word
	return strings.HasPrefix(w, "ch-") || (w == "ch" || w == "chain") && (p.spAhead(1) || p.ahead(1).kind == numberToken && p.spAhead(2)) || p.overCh && w == "ch"
}

// until reads `across`, `to end`, `to last 3 sts`, or nothing.
func (p *parser) until() Num {
	if p.word("across") {
		p.word("row")
		if p.peek().word != "to" {
			return nil
		}
	}
	if p.word("around") {
		return nil
	}
	if !p.word("to") {
		return nil
	}
	p.word("the")
	if p.word("end") {
		if p.word("of") {
			p.word("the")
			p.expect("row")
		}
		return nil
	}
	p.expect("last")
	n := Num{1}
	if p.peek().kind == numberToken {
		n = p.num()
	}
	if p.noun() != 0 {
		p.fail(p.peek(), "to last N sts, counting stitches alone")
	}
	return n
}

// star reads a repeat from its asterisk on.
func (p *parser) star(depth int) Item {
	t := p.next()
	if depth > 0 {
		p.fail(t, "brackets for a repeat inside a repeat")
		return nil
	}
	items := p.items(depth + 1)
	if !p.expect("rep", "repeat") {
		return nil
	}
	p.word("from")
	p.word("*")
	p.word("to", "*")
	if p.toks[p.i-1].word == "to" && p.toks[p.i-1].kind == wordToken {
		p.i--
	}
	r := Repeat{Items: items, Star: true}
	u := p.peek()
	switch {
	case p.word("a"):
		p.expect("total")
		p.expect("of")
		r.Times = p.num()
		p.expect("times", "time")
	case p.word("once"):
		p.expect("more")
		r.Times = Num{2}
	case p.word("twice"):
		p.expect("more")
		r.Times = Num{3}
	case u.kind == numberToken:
		n := p.num()
		more := p.word("more")
		p.expect("times", "time")
		if !more && !p.word("more") {
			p.failAt(u.at, p.s[u.at:p.toks[p.i-1].end], "3 more times, or a total of 3 times", nil)
		}
		r.Times = plus(n, 1)
	case u.word == "across" || u.word == "to" || u.word == "around":
		r.Last = p.until()
	default:
		p.fail(u, "across, to end, to last N sts, N more times or a total of N times")
	}
	return p.bounded(t, r)
}

// bracket reads `[…] 4 times`, `(…) across` and `(dc, ch 1, dc) in next st`.
func (p *parser) bracket(depth int) Item {
	t := p.peek()
	if depth >= maxDepth {
		p.failAt(t.at, t.word, "repeats nested at most "+strconv.Itoa(maxDepth)+" deep", gauge.ErrBounds)
		return nil
	}
	if w := p.afterBracket(); w == "in" || w == "into" {
		make := p.make()
		p.expect("in", "into")
		return p.placed(make)
	}
	p.next()
	items := p.items(depth + 1)
	if !p.expect(closer(t.word)) {
		return nil
	}
	r := Repeat{Items: items}
	u := p.peek()
	switch {
	case p.word("twice"):
		r.Times = Num{2}
	case p.word("once"):
		r.Times = Num{1}
	case u.kind == numberToken:
		r.Times = p.num()
		if p.peek().word == "more" {
			p.fail(p.peek(), "times; the number after a bracket is the number of times in all")
		}
		p.expect("times", "time", "x")
	case u.word == "across" || u.word == "to":
		r.Star, r.Last = true, p.until()
		if depth > 0 {
			p.fail(u, "a number of times for a repeat inside a repeat")
		}
	default:
		p.fail(u, "4 times, across, or in and a place")
	}
	return p.bounded(t, r)
}

// afterBracket returns the word after the bracket that opens here.
func (p *parser) afterBracket() string {
	depth := 0
	for i := p.i; i < len(p.toks); i++ {
		switch p.toks[i].word {
		case "(", "[", "{":
			depth++
		case ")", "]", "}":
			if depth--; depth == 0 {
				return p.toks[i+1].word
			}
		}
	}
	return ""
}

// bounded refuses a repeat that works more than a row can hold, at its opening
// mark, and one that has nothing in it.
func (p *parser) bounded(t token, r Repeat) Item {
	if p.err != nil {
		return r
	}
	if len(r.Items) == 0 {
		p.fail(t, "something to repeat")
		return r
	}
	for size := range max(p.sizes, 1) {
		if measure(r, size).size() > gauge.MaxCount {
			p.failAt(t.at, t.word, "a repeat that works at most 100000 places", gauge.ErrBounds)
		}
	}
	return r
}

// plus adds k to every number.
func plus(n Num, k int) Num {
	out := make(Num, len(n))
	for i := range n {
		out[i] = n[i] + k
	}
	return out
}

// settle writes into the open repeat how many stitches the items after it use,
// where the text says across and then goes on; and it gives its number to an
// `each st across` that has a known number of stitches left.
func (p *parser) settle(items []Item) []Item {
	open := -1
	for i, it := range items {
		if openEnded(it) {
			open = i
			break
		}
	}
	if open < 0 || open == len(items)-1 {
		return items
	}
	last := lastOf(items[open])
	tail := items[open+1:]
	if last == nil {
		last = p.uses(tail)
		for _, it := range tail {
			if openEnded(it) {
				p.failAt(0, p.s, "one part that goes on to the end of the row; say to last N sts for the first", nil)
				return items
			}
		}
		switch it := items[open].(type) {
		case Each:
			it.Last = last
			items[open] = it
		case Repeat:
			it.Last = last
			items[open] = it
		}
		return items
	}
	for i, it := range tail {
		e, ok := it.(Each)
		if !ok || len(e.In) != 1 || e.In[0].Space != 0 || len(e.Last) != 0 || i != len(tail)-1 {
			continue
		}
		before := p.uses(tail[:i])
		n := make(Num, max(len(last), len(before)))
		for k := range n {
			n[k] = last.In(k) - numIn0(before, k)
			if n[k] < 1 {
				p.failAt(0, p.s, "stitches left for each st across after the last "+strconv.Itoa(last.In(k)), nil)
				return items
			}
		}
		tail[i] = Work{Make: e.In[0].Make, N: canonical(n)}
	}
	return items
}

// numIn0 is In with 0 for an empty number.
func numIn0(n Num, size int) int {
	if len(n) == 0 {
		return 0
	}
	return n.In(size)
}

// uses returns the stitches that the items use, by size; nil for none.
func (p *parser) uses(items []Item) Num {
	n := make(Num, max(p.sizes, 1))
	same := true
	for size := range n {
		for _, it := range items {
			n[size] += measure(it, size).stitches
		}
		same = same && n[size] == n[0]
	}
	if same {
		n = n[:1]
	}
	if same && n[0] == 0 {
		return nil
	}
	return n
}

func openEnded(it Item) bool {
	switch it := it.(type) {
	case Each:
		return true
	case Repeat:
		return it.Times == nil
	}
	return false
}

func lastOf(it Item) Num {
	switch it := it.(type) {
	case Each:
		return it.Last
	case Repeat:
		return it.Last
	}
	return nil
}
