package work

import "example.com/panelmath/panel/row"

// place is what a row leaves for the next: 0 is a stitch, m a ch-m space, gap
// the cut of a split row.
type place int32

const gap place = -2

// atom is what is made: a stitch of a kind, or n chains.
type atom struct {
	of row.Stitch
	n  int32 // chains; 1 for a stitch
}

// op takes at most one place and makes what stands in out. An op with alts
// takes whichever kind of place comes and makes what is said for that kind.
type op struct {
	takes bool
	want  place // 0 a stitch, m a ch-m space, place(AnySpace) any chain space
	out   []atom
	alts  []op
}

// program is a row, laid out for one size: head and tail are worked once, body
// as often as the places allow, at least once.
type program struct {
	head, body, tail []op
	left             int  // stitches that the row leaves at its end without working them
	rest             bool // the row leaves what is left, whatever the number
	foundation       bool
	chain            *row.FoundationChain
}

// compile lays a valid row out for a size.
func compile(r row.Row, size int) program {
	var p program
	c := &p.head
	for i, it := range r.Items {
		switch it := it.(type) {
		case row.Foundation:
			p.foundation = true
			p.head = append(p.head, op{out: []atom{{it.Of, 1}}})
		case row.FoundationChain:
			p.chain = &it
			if it.Counts != nil {
				*c = append(*c, op{out: atoms(it.Counts, size)})
			}
		case row.Each:
			alts := make([]op, len(it.In))
			for k, in := range it.In {
				alts[k] = op{takes: true, want: place(in.Space), out: atoms(in.Make, size)}
			}
			if len(alts) == 1 {
				p.body = alts
			} else {
				p.body = []op{{takes: true, alts: alts}}
			}
			p.left = leftOf(none(it.Last, size), r.Items[i+1:], size)
			c = &p.tail
		case row.Repeat:
			if len(it.Times) > 0 {
				*c = appendOps(*c, it, size)
				continue
			}
			for _, in := range it.Items {
				p.body = appendOps(p.body, in, size)
			}
			p.left = leftOf(none(it.Last, size), r.Items[i+1:], size)
			c = &p.tail
		case row.Leave:
			if len(it.N) == 0 {
				p.rest = true
				continue
			}
			*c = appendOps(*c, it, size)
		default:
			*c = appendOps(*c, it, size)
		}
	}
	return p
}

// leftOf returns how many of the last stitches the items do not take. A chain
// space among the last stitches may count as one or not.
func leftOf(last int, items []row.Item, size int) int {
	var ops []op
	for _, it := range items {
		ops = appendOps(ops, it, size)
	}
	n := 0
	for i := range ops {
		if ops[i].takes && ops[i].want == 0 {
			n++
		}
	}
	if last == takes(ops) {
		return 0
	}
	return last - n
}

// none is In with 0 for an empty number.
func none(n row.Num, size int) int {
	if len(n) == 0 {
		return 0
	}
	return n.In(size)
}

func atoms(parts []row.Part, size int) []atom {
	var out []atom
	for _, p := range parts {
		n := p.N.In(size)
		if p.Of == row.Chain {
			if n > 0 {
				out = append(out, atom{row.Chain, int32(n)})
			}
			continue
		}
		for range n {
			out = append(out, atom{p.Of, 1})
		}
	}
	return out
}

func appendOps(ops []op, it row.Item, size int) []op {
	switch it := it.(type) {
	case row.TurningChain:
		if it.Counts != nil {
			ops = append(ops, op{takes: true, out: atoms(it.Counts, size)})
		}
	case row.Chainless:
		ops = append(ops, op{takes: true, out: []atom{{it.Of, 1}}})
	case row.Work:
		out := atoms(it.Make, size)
		if len(out) == 0 {
			break
		}
		if it.At == row.Same {
			ops = append(ops, op{out: out})
			break
		}
		for range it.N.In(size) {
			ops = append(ops, op{takes: true, want: place(it.Space), out: out})
		}
	case row.Skip:
		for range it.N.In(size) {
			ops = append(ops, op{takes: true, want: place(it.Space)})
		}
	case row.Chains:
		if n := it.N.In(size); n > 0 {
			ops = append(ops, op{out: []atom{{row.Chain, int32(n)}}})
		}
	case row.Together:
		for range it.N - 1 {
			ops = append(ops, op{takes: true})
		}
		ops = append(ops, op{takes: true, out: []atom{{it.Of, 1}}})
	case row.Leave:
		for i := range it.N.In(size) {
			o := op{takes: true}
			if i == 0 {
				o.out = []atom{{row.NoStitch, 0}}
			}
			ops = append(ops, o)
		}
	case row.Repeat:
		var once []op
		for _, in := range it.Items {
			once = appendOps(once, in, size)
		}
		for range it.Times.In(size) {
			ops = append(ops, once...)
		}
	}
	return ops
}

// takes counts the places that ops take.
func takes(ops []op) int {
	n := 0
	for i := range ops {
		if ops[i].takes {
			n++
		}
	}
	return n
}

// fits reports whether a place is what is wanted.
func fits(want, have place) bool {
	return want == have || want == place(row.AnySpace) && have > 0
}

// choose returns what the op makes of a place, the index of the alternative
// used, and whether it can take the place at all.
func (o *op) choose(have place) (out []atom, alt int, ok bool) {
	if o.alts == nil {
		return o.out, 0, fits(o.want, have)
	}
	for i := range o.alts {
		if fits(o.alts[i].want, have) {
			return o.alts[i].out, i, true
		}
	}
	return nil, 0, false
}

// maker gathers what is made: places for the next row, and a tally.
type maker struct {
	places []place
	tally  Tally
}

func (m *maker) make(out []atom) {
	for _, a := range out {
		switch {
		case a.of == row.Chain:
			m.tally.Chains += int(a.n)
			if k := len(m.places); k > 0 && m.places[k-1] > 0 {
				m.places[k-1] += place(a.n)
				continue
			}
			m.tally.Spaces++
			m.places = append(m.places, place(a.n))
		case a.of == row.NoStitch:
			m.places = append(m.places, gap)
		default:
			m.tally.kinds[a.of]++
			m.tally.Stitches++
			m.places = append(m.places, 0)
		}
	}
}

// Tally counts what a row makes. JSON has the kinds under their US
// abbreviations: {"stitches":2,"chains":1,"spaces":1,"kinds":{"dc":2}}.
type Tally struct {
	Stitches int `json:"stitches"` // of all kinds
	Chains   int `json:"chains"`   // in chain spaces
	Spaces   int `json:"spaces"`   // chain spaces
	kinds    [row.FoundationDouble + 1]int
}

// Count returns stitches and chains together: the width of the row in
// stitches, each chain of a chain space counting as one.
func (t Tally) Count() int { return t.Stitches + t.Chains }

// Of returns how many stitches of a kind were made.
func (t Tally) Of(s row.Stitch) int {
	switch {
	case s == row.Chain:
		return t.Chains
	case s.Valid():
		return t.kinds[s]
	}
	return 0
}

// Add returns the sum of two tallies.
func (t Tally) Add(o Tally) Tally { return t.plus(o, 1) }

// plus returns t + k·o.
func (t Tally) plus(o Tally, k int) Tally {
	t.Stitches += k * o.Stitches
	t.Chains += k * o.Chains
	t.Spaces += k * o.Spaces
	for i := range t.kinds {
		t.kinds[i] += k * o.kinds[i]
	}
	return t
}
