package row

import "math/rand/v2"

// gen writes rows by chance.
type gen struct {
	*rand.Rand
	sizes int
	over  bool // into a foundation chain
}

var workable = []Stitch{SlipStitch, SingleCrochet, HalfDoubleCrochet, DoubleCrochet, TrebleCrochet, DoubleTreble, TripleTreble, ExtendedSingle, FrontPostDouble, BackPostDouble}

func (g *gen) stitch() Stitch { return workable[g.IntN(len(workable))] }

// num returns 1 to most, in a form that is read back the same.
func (g *gen) num(most int) Num {
	if g.sizes > 1 && g.IntN(4) == 0 {
		n := make(Num, g.sizes)
		for i := range n {
			n[i] = 1 + g.IntN(most)
		}
		for _, x := range n {
			if x != n[0] {
				return n
			}
		}
		return canonical(n[:1])
	}
	return canonical(Num{1 + g.IntN(most)})
}

func (g *gen) space() Space {
	if g.over {
		return 0
	}
	switch g.IntN(6) {
	case 0:
		return Space(1 + g.IntN(5))
	case 1:
		return AnySpace
	}
	return 0
}

// put returns what goes into one place: at least one stitch.
func (g *gen) put() []Part {
	var parts []Part
	for range g.IntN(3) {
		if g.IntN(3) == 0 {
			parts = append(parts, Part{g.num(4), Chain})
		} else {
			parts = append(parts, Part{g.num(3), g.stitch()})
		}
	}
	return append(parts, Part{g.num(3), g.stitch()})
}

// items returns instructions that may stand anywhere.
func (g *gen) items(depth, most int) []Item {
	var items []Item
	for range 1 + g.IntN(most) {
		switch k := g.IntN(10); {
		case k < 3:
			items = append(items, Work{Make: []Part{{Of: g.stitch()}}, N: g.num(6), Space: g.space()})
		case k < 4:
			items = append(items, Work{Make: g.put(), N: g.num(3), Space: g.space()})
		case k == 5:
			items = append(items, Skip{N: g.num(3), Space: g.space()})
		case k == 6:
			items = append(items, Chains{N: g.num(4)})
		case k == 7:
			items = append(items, Together{Of: workable[1+g.IntN(len(workable)-1)], N: 2 + g.IntN(3)})
		case k == 8 && depth < 3:
			items = append(items, Repeat{Items: g.items(depth+1, 3), Times: notNil(g.num(4))})
		default:
			items = append(items, Work{Make: []Part{{Of: g.stitch()}}, Space: g.space()})
		}
	}
	if _, ok := items[0].(Chains); ok {
		items[0] = Work{Make: []Part{{Of: SingleCrochet}}}
	}
	return items
}

func notNil(n Num) Num {
	if n == nil {
		return Num{1}
	}
	return n
}

// row returns a valid row of any form the language has.
func (g *gen) row() Row {
	for {
		if r := (Row{g.any()}); r.Validate() == nil {
			return r
		}
	}
}

func (g *gen) any() []Item {
	g.over = false
	var items []Item
	switch g.IntN(12) {
	case 0:
		var n Num
		if g.IntN(2) == 0 {
			n = notNil(g.num(200))
		}
		return []Item{Foundation{Of: FoundationSingle + Stitch(g.IntN(3)), Count: n}}
	case 1:
		g.over = true
		fc := FoundationChain{Hook: 2 + g.IntN(4)}
		if g.IntN(2) == 0 {
			fc.Count = notNil(g.num(200))
		}
		if g.IntN(2) == 0 {
			fc.Counts = g.counts()
		}
		items = append(items, fc, Work{Make: g.put(), At: FirstChain})
	case 2:
		items = append(items, TurningChain{N: 1 + g.IntN(5), Counts: g.counts()})
	case 3:
		items = append(items, TurningChain{N: 1 + g.IntN(5)}, Work{Make: g.put(), At: First})
	case 4:
		items = append(items, Chainless{Of: g.stitch()})
	case 5:
		items = append(items, Work{Make: g.put(), At: First})
	}
	items = append(items, g.items(0, 4)...)
	if g.IntN(6) == 0 {
		items = append(items, Work{Make: g.put(), At: Same})
	}
	if g.IntN(6) == 0 {
		items = append(items, Repeat{Items: g.items(1, 3), Times: notNil(g.num(4)), Star: true})
	}
	var tail []Item
	if g.IntN(2) == 0 {
		tail = g.items(0, 3)
	}
	if g.IntN(3) == 0 {
		tail = append(tail, Work{Make: g.put(), At: Last, N: g.num(2)})
	}
	p := parser{sizes: g.sizes}
	switch g.IntN(4) {
	case 0:
		e := Each{In: []Into{{Make: g.put()}}, Last: p.uses(tail)}
		if !g.over && g.IntN(2) == 0 {
			e.In = append(e.In, Into{Make: g.put(), Space: Space(1 + g.IntN(3))})
		}
		items = append(items, e)
	case 1:
		items = append(items, Repeat{Items: g.items(1, 3), Star: true, Last: p.uses(tail)})
	case 2:
		if g.IntN(3) == 0 {
			tail = append(tail, Leave{N: notNil(g.num(20))})
		}
		if g.IntN(3) == 0 {
			return append(append(items, tail...), Leave{})
		}
	}
	return append(items, tail...)
}

// counts returns what chains count as.
func (g *gen) counts() []Part {
	parts := []Part{{Of: g.stitch()}}
	if g.IntN(3) == 0 {
		parts = append(parts, Part{g.num(3), Chain})
	}
	return parts
}
