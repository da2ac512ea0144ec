package row

import (
	"strconv"

	"example.com/panelmath/gauge"
)

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
		if !more && p.word("in") { // 10 times in total
			p.expect("total", "all")
			r.Times = n
			break
		}
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
		return len(it.Times) == 0
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
