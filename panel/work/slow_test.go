package work

import "example.com/panelmath/panel/row"

// The slow and readable reference: a row is worked by hand, place by place, at
// one count. Nothing of it is shared with the solver but the Row itself.

// hand is the maker's hand: the places of the row before and where it stands.
type hand struct {
	size   int
	places []int // 0 a stitch, m > 0 a ch-m space, -2 the cut of a split
	at     int
	made   []int
	met    map[row.Space]bool
	worked int // passes of the open part
}

// take takes the next place if it is of the wanted kind.
func (h *hand) take(want row.Space) bool {
	if h.at >= len(h.places) {
		return false
	}
	have := h.places[h.at]
	if have == -2 || want == row.AnySpace && have == 0 || want != row.AnySpace && int(want) != have {
		return false
	}
	h.at++
	return true
}

func (h *hand) make(parts []row.Part) {
	for _, p := range parts {
		n := 1
		if p.N != nil {
			n = p.N.In(h.size)
		}
		if p.Of == row.Chain {
			h.chain(n)
			continue
		}
		for range n {
			h.made = append(h.made, 0)
		}
	}
}

func (h *hand) chain(n int) {
	if k := len(h.made); k > 0 && h.made[k-1] > 0 {
		h.made[k-1] += n
	} else if n > 0 {
		h.made = append(h.made, n)
	}
}

func (h *hand) makesNothing(parts []row.Part) bool {
	for _, p := range parts {
		if p.N.In(h.size) > 0 {
			return false
		}
	}
	return true
}

// needs counts the stitches and the spaces that items take.
func needs(items []row.Item, size int) (stitches, spaces int) {
	for _, it := range items {
		switch it := it.(type) {
		case row.Work:
			h := hand{size: size}
			switch {
			case it.At == row.Same || h.makesNothing(it.Make):
			case it.Space == 0:
				stitches += it.N.In(size)
			default:
				spaces += it.N.In(size)
			}
		case row.Skip:
			if it.Space == 0 {
				stitches += it.N.In(size)
			} else {
				spaces += it.N.In(size)
			}
		case row.Together:
			stitches += it.N
		case row.Leave:
			if it.N != nil {
				stitches += it.N.In(size)
			}
		case row.Repeat:
			a, b := needs(it.Items, size)
			stitches += a * it.Times.In(size)
			spaces += b * it.Times.In(size)
		}
	}
	return stitches, spaces
}

// work works the items; it reports false where they don't fit.
func (h *hand) work(items []row.Item) bool {
	for i, it := range items {
		switch it := it.(type) {
		case row.TurningChain:
			if it.Counts != nil {
				if !h.take(0) {
					return false
				}
				h.make(it.Counts)
			}
		case row.Chainless:
			if !h.take(0) {
				return false
			}
			h.made = append(h.made, 0)
		case row.Work:
			if h.makesNothing(it.Make) {
				continue
			}
			for range it.N.In(h.size) {
				if it.At != row.Same && !h.take(it.Space) {
					return false
				}
				h.make(it.Make)
			}
		case row.Skip:
			for range it.N.In(h.size) {
				if !h.take(it.Space) {
					return false
				}
			}
		case row.Chains:
			h.chain(it.N.In(h.size))
		case row.Together:
			for range it.N {
				if !h.take(0) {
					return false
				}
			}
			h.made = append(h.made, 0)
		case row.Leave:
			n := len(h.places) - h.at
			if it.N != nil {
				n = it.N.In(h.size)
			}
			for range n {
				if it.N != nil && !h.take(0) {
					return false
				}
			}
			if it.N == nil {
				h.at = len(h.places)
			}
			if n > 0 {
				h.made = append(h.made, -2)
			}
		case row.Repeat:
			if it.Times != nil {
				for range it.Times.In(h.size) {
					if !h.work(it.Items) {
						return false
					}
				}
				continue
			}
			_, spaces := needs(items[i+1:], h.size)
			keep := none(it.Last, h.size) + spaces
			for len(h.places)-h.at > keep {
				if !h.work(it.Items) {
					return false
				}
				h.worked++
			}
			if h.worked == 0 || len(h.places)-h.at != keep {
				return false
			}
		case row.Each:
			_, spaces := needs(items[i+1:], h.size)
			keep := none(it.Last, h.size) + spaces
			for len(h.places)-h.at > keep {
				ok := false
				for _, in := range it.In {
					if h.take(in.Space) {
						h.make(in.Make)
						if !h.met[in.Space] {
							h.met[in.Space] = true
						}
						ok = true
						break
					}
				}
				if !ok {
					return false
				}
				h.worked++
			}
			if h.worked == 0 || len(h.places)-h.at != keep || len(h.met) < len(it.In) {
				return false
			}
		}
	}
	return true
}

// byHand works one row into places, before the turn.
func byHand(r row.Row, places []int, size int) (made []int, ok bool) {
	h := &hand{size: size, places: places, made: make([]int, 0, 2*len(places)), met: map[row.Space]bool{}}
	if f, is := r.Items[0].(row.Foundation); is {
		n := len(places)
		if f.Count != nil && f.Count.In(size) != n {
			return nil, false
		}
		return places, true
	}
	if !h.work(r.Items) || h.at != len(places) {
		return nil, false
	}
	for len(h.made) > 0 && h.made[0] == -2 {
		h.made = h.made[1:]
	}
	for len(h.made) > 0 && h.made[len(h.made)-1] == -2 {
		h.made = h.made[:len(h.made)-1]
	}
	return h.made, true
}

// allByHand works rows one after another at one count, and returns the counts
// made.
func allByHand(rows []row.Row, n, size int) (counts []int, ok bool) {
	places := make([]int, n)
	for _, r := range rows {
		made, ok := byHand(r, places, size)
		if !ok {
			return nil, false
		}
		counts = append(counts, width(made))
		places = make([]int, len(made))
		for i, x := range made {
			places[len(made)-1-i] = x
		}
	}
	return counts, true
}

func width(places []int) int {
	n := 0
	for _, x := range places {
		switch {
		case x == 0:
			n++
		case x > 0:
			n += x
		}
	}
	return n
}
