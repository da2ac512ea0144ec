package row

import (
	"fmt"
	"strings"
)

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
	if p.word("here", "now") && p.peek().word == "and" {
		p.next()
	}
	p.word("throughout")
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
	if p.peek().word == "and" && p.ahead(1).word == "each" {
		p.next()
		p.started = true
		items = append(items, p.placed(make))
	}
	return items
}

// word2 takes a token of any kind.
func (p *parser) word2() bool { p.next(); return true }

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
