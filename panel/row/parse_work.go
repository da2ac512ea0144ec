package row

import (
	"fmt"
	"strconv"
	"strings"
)

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
	if s, n := p.stitchAhead(p.terms.other()); s != NoStitch && s != Chain && s != SlipStitch {
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
		p.unnamed = true
		return Work{Make: []Part{{Of: s}}, N: canonical(p.num())}
	}
	if p.word("in", "into") {
		return p.placed([]Part{{N: canonical(n), Of: s}})
	}
	if n == nil {
		p.fail(p.peek(), "a place (in next st) or a number of stitches")
		return nil
	}
	p.unnamed = true
	return Work{Make: []Part{{Of: s}}, N: canonical(n)}
}

func (p *parser) together(t token, s Stitch, n int) Item {
	p.unnamed = true
	if n < 2 || n > 99 {
		p.fail(t, "2 to 99 stitches together")
	}
	if p.word("over", "in") {
		p.word("the")
		p.expect("next")
		over := p.peek()
		if k := p.num(); len(k) != 1 || k[0] != n {
			p.fail(over, "the same number of stitches as are joined")
		}
		p.noun()
	}
	return Together{Of: s, N: n}
}

// noun takes `st`, `sts`, `ch`, or a stitch that stands for the place it made.
// It reports whether the place is a chain space, and of which size.
func (p *parser) noun() Space {
	t := p.peek()
	p.plain = false
	if t.kind == wordToken {
		switch w := strings.TrimSuffix(t.word, "s"); {
		case w == "st" || w == "stitch" || w == "stitche":
			p.plain = true
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
	if t.word == "ch" || t.word == "chs" {
		p.fail(t, "st or a ch-m sp; ch is a place only over a foundation chain")
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

// kind is noun for a place among others.
func (p *parser) kind() Space {
	space := p.noun()
	p.unnamed = p.unnamed || p.plain
	return space
}

// count reads `2`, `next 2 sts`, `next st`, `next ch-2 sp`, `first ch-2 sp`: that
// of the row is the next. The first st may be under the turning chain.
func (p *parser) count() (Num, Space) {
	next := p.word("the", "next")
	next = p.word("next") || next
	if t := p.peek(); t.word == "first" || t.kind == ordinalToken && t.word == "1" {
		p.next()
		if next = p.spaceAhead(); !next {
			p.i--
		}
	}
	var n Num
	if p.peek().kind == numberToken {
		n = p.num()
		if !p.nounAhead() {
			p.unnamed = true
			return canonical(n), 0
		}
	} else if !next && !p.nounAhead() {
		p.fail(p.peek(), "a number of stitches, or next st")
	}
	return canonical(n), p.kind()
}

// nounAhead reports whether a place follows.
func (p *parser) nounAhead() bool {
	w := p.peek().word
	return p.peek().kind == wordToken && !p.separated() && w != "times"
}

func (p *parser) leave() Item {
	p.word("the")
	if p.word("rem", "remaining") && p.peek().kind != numberToken {
		p.word("sts", "st", "stitches")
		p.expect("unworked")
		return Leave{}
	}
	p.word("next", "last")
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
		p.word("rem", "remaining")
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
	case p.word("top"):
		return p.top(make)
	case t.kind == ordinalToken && strings.TrimSuffix(p.ahead(1).word, "s") == "ch" && p.ahead(2).word == "of": // 3rd ch of beg ch-4
		p.i += 2
		return p.top(make)
	}
	p.fail(t, wantPlace)
	return nil
}

// top reads on after `in top` or `in 3rd ch`: `of turning ch`, `of beg ch-4`. The chain that
// began the row before is the last stitch of this one.
func (p *parser) top(make []Part) Item {
	p.expect("of")
	p.word("the")
	if t := p.peek(); !p.word("tch", "t-ch") {
		p.word("turning", "beg", "beginning")
		if ch, n, _ := strings.Cut(p.next().word, "-"); ch != "ch" && ch != "chain" || n != "" && !digitsOnly(n) {
			p.fail(t, "turning ch or beg ch-3")
		}
	}
	return Work{Make: make, At: Last}
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
	bare := false // next 50, without a noun
	if p.peek().kind == numberToken {
		w.N = canonical(p.num())
		bare = !p.nounAhead()
	}
	if bare {
		p.unnamed = true
	} else if w.At == Next {
		w.Space = p.kind()
	} else {
		w.Space = p.noun()
	}
	if w.At == First && w.Space != 0 { // stitches may stand before it: it is the next
		w.At = Next
	}
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
	e := Each{In: []Into{{Make: make, Space: p.kind()}}}
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
		e.In = append(e.In, Into{Make: more, Space: p.kind()})
	}
	e.Last = p.until()
	return e
}

// spaceAhead reports whether a chain space follows.
func (p *parser) spaceAhead() bool {
	w := p.peek().word
	return strings.HasPrefix(w, "ch-") || (w == "ch" || w == "chain") && (p.spAhead(1) || p.ahead(1).kind == numberToken && p.spAhead(2)) || p.overCh && w == "ch"
}
