package row

import (
	"fmt"
	"slices"
)

// Row is one written row. Its parts stand in the order they are worked. The
// zero value is empty and not valid.
type Row struct {
	Items []Item
}

// Item is one instruction of a row: Foundation, FoundationChain, TurningChain,
// Chainless, Work, Each, Skip, Chains, Together, Repeat or Leave.
type Item interface{ item() }

// Num is a number that may differ by size: one value for all, or one for each
// size in order. In a size where it is 0 the part is skipped.
type Num []int

// Space is what a stitch is worked into or a skip passes: 0 is a stitch, m a
// ch-m space, AnySpace a chain space of any size.
type Space int

// AnySpace is a chain space whose size the text leaves open.
const AnySpace Space = -1

// String returns "st", "ch-2 sp" or "ch-sp".
func (s Space) String() string {
	switch {
	case s == 0:
		return "st"
	case s == AnySpace:
		return "ch-sp"
	case s < 0:
		return fmt.Sprintf("Space(%d)", int(s))
	}
	return fmt.Sprintf("ch-%d sp", int(s))
}

// Part is a number of stitches of one kind, or of chains, that are worked into
// one place.
type Part struct {
	N  Num
	Of Stitch
}

// Foundation makes the first row without a chain: `fhdc 101`. An open count is
// nil: `fhdc`.
type Foundation struct {
	Of    Stitch
	Count Num
}

// FoundationChain makes the chain to begin and says where the first stitch
// goes: `ch 12, dc in 4th ch from hook (skipped chs count as dc)`. The Work
// that follows is that first stitch. An open count is nil: `ch`.
type FoundationChain struct {
	Count  Num
	Hook   int    // the first stitch goes into this chain from the hook; Hook-1 chains are skipped
	Counts []Part // what the skipped chains stand for; nil if they do not count
}

// TurningChain brings a row to its height: `ch 3 (counts as dc)`, `ch 1 (does
// not count)`. One that counts stands on the first stitch.
type TurningChain struct {
	N      int
	Counts []Part // what it stands for; nil if it does not count
}

// Chainless is a first stitch that needs no turning chain: `chainless dc in
// first st`.
type Chainless struct{ Of Stitch }

// At says which places a Work goes into.
type At uint8

// Where stitches may go. FirstChain is the chain that FoundationChain.Hook
// names.
const (
	Next At = iota
	First
	Last
	Same // the place just worked; it uses none
	FirstChain
)

// Work puts Make into each of N places: `dc in next 3 sts`, `2 dc in next
// st`, `(dc, ch 1, dc) in next ch-2 sp`, `hdc in last 4 sts`.
type Work struct {
	Make  []Part
	At    At
	N     Num // places, each of which gets Make; nil stands for 1
	Space Space
}

// Into is what goes into each place of one kind.
type Into struct {
	Make  []Part
	Space Space
}

// Each works every place to the end of the row, or to the last stitches, which
// the items after it use: `hdc in each st and 2 hdc in each ch-2 sp across`.
type Each struct {
	In   []Into
	Last Num // stitches left for the items that follow; nil for none
}

// Skip passes places without working them: `sk 2`, `sk next ch-2 sp`.
type Skip struct {
	N     Num
	Space Space
}

// Chains makes chains between stitches: `ch 2`.
type Chains struct{ N Num }

// Together joins N stitches into one: `sc2tog`.
type Together struct {
	Of Stitch
	N  int
}

// Repeat works Items again and again: `[…] 4 times`, `*…; rep from * 3 more
// times`, `*…; rep from * across`, `*…; rep from * to last 3 sts`.
type Repeat struct {
	Items []Item
	Times Num  // passes in all; nil is as often as the row allows
	Last  Num  // with Times nil: stitches left for the items that follow; nil for none
	Star  bool // written with * even though Times is given
}

// Leave splits a row: it leaves N stitches unworked, or all that are left where
// N is nil: `leave 24 sts unworked`, `leave rem sts unworked`.
type Leave struct{ N Num }

func (Foundation) item()      {}
func (FoundationChain) item() {}
func (TurningChain) item()    {}
func (Chainless) item()       {}
func (Work) item()            {}
func (Each) item()            {}
func (Skip) item()            {}
func (Chains) item()          {}
func (Together) item()        {}
func (Repeat) item()          {}
func (Leave) item()           {}

// In returns the number for a size, counted from 0. A number that is the same
// for all sizes serves each of them; nil stands for 1. In a size that the list
// does not have it is -1, which is a number of nothing and in no row: the number
// of another size could be taken for an answer.
func (n Num) In(size int) int {
	switch {
	case len(n) == 0:
		return 1
	case len(n) == 1:
		return n[0]
	case size < 0 || size >= len(n):
		return -1
	}
	return n[size]
}

// one reports whether n is 1 in every size.
func (n Num) one() bool { return len(n) == 0 || len(n) == 1 && n[0] == 1 }

// Begins reports whether the row is a foundation row or begins with a
// foundation chain.
func (r Row) Begins() bool {
	if len(r.Items) == 0 {
		return false
	}
	switch r.Items[0].(type) {
	case Foundation, FoundationChain:
		return true
	}
	return false
}

// FirstStitch returns the stitch that the row begins with. plain is false where
// the row says itself how it gets to its height, is a foundation, or begins with
// something else than a stitch.
func (r Row) FirstStitch() (s Stitch, plain bool) {
	items := r.Items
	for len(items) > 0 {
		repeat, ok := items[0].(Repeat)
		if !ok {
			break
		}
		items = repeat.Items
	}
	var made []Part
	if len(items) > 0 {
		switch it := items[0].(type) {
		case Work:
			made = it.Make
		case Each:
			if len(it.In) > 0 {
				made = it.In[0].Make
			}
		case Together:
			return it.Of, true
		}
	}
	if len(made) == 0 || made[0].Of == Chain {
		return NoStitch, false
	}
	return made[0].Of, true
}

// Stitches returns the kinds of stitch that the row makes, without chains, each
// once and in the order in which they come.
func (r Row) Stitches() []Stitch {
	var out []Stitch
	add := func(s Stitch) {
		if s != Chain && !slices.Contains(out, s) {
			out = append(out, s)
		}
	}
	parts := func(parts []Part) {
		for _, p := range parts {
			add(p.Of)
		}
	}
	var walk func(items []Item)
	walk = func(items []Item) {
		for _, it := range items {
			switch it := it.(type) {
			case Foundation:
				add(it.Of)
			case FoundationChain:
				parts(it.Counts)
			case TurningChain:
				parts(it.Counts)
			case Chainless:
				add(it.Of)
			case Work:
				parts(it.Make)
			case Each:
				for _, in := range it.In {
					parts(in.Make)
				}
			case Together:
				add(it.Of)
			case Repeat:
				walk(it.Items)
			}
		}
	}
	walk(r.Items)
	return out
}

// Size returns the row of one size, counted from 0: every list of sizes is
// replaced by its number. In a size that a list does not have it is the zero Row,
// which is not valid.
func (r Row) Size(i int) Row {
	for _, n := range r.Lists() {
		if i < 0 || i >= len(n) {
			return Row{}
		}
	}
	return r.mapNums(func(n Num) Num {
		if len(n) > 1 {
			return Num{n.In(i)}
		}
		return n
	})
}

// WithCount returns the row with the count of its foundation row or chain
// replaced; a row without one is returned as it is.
func (r Row) WithCount(n Num) Row {
	items, n := slices.Clone(r.Items), slices.Clone(n)
	if !r.Begins() {
		return Row{items}
	}
	switch it := items[0].(type) {
	case Foundation:
		it.Count = n
		items[0] = it
	case FoundationChain:
		it.Count = n
		items[0] = it
	}
	return Row{items}
}

// mapNums returns a copy of the row with f applied to every number.
func (r Row) mapNums(f func(Num) Num) Row { return Row{mapItems(r.Items, f)} }

func mapItems(items []Item, f func(Num) Num) []Item {
	one := func(n Num) Num { return canonical(f(n)) }
	parts := func(in []Part) []Part {
		if in == nil {
			return nil
		}
		out := make([]Part, len(in))
		for i, p := range in {
			out[i] = Part{one(p.N), p.Of}
		}
		return out
	}
	out := make([]Item, len(items))
	for i, it := range items {
		switch it := it.(type) {
		case Foundation:
			it.Count = f(it.Count)
			out[i] = it
		case FoundationChain:
			it.Count, it.Counts = f(it.Count), parts(it.Counts)
			out[i] = it
		case TurningChain:
			it.Counts = parts(it.Counts)
			out[i] = it
		case Work:
			it.Make, it.N = parts(it.Make), one(it.N)
			out[i] = it
		case Each:
			in := make([]Into, len(it.In))
			for k := range it.In {
				in[k] = Into{parts(it.In[k].Make), it.In[k].Space}
			}
			it.In, it.Last = in, f(it.Last)
			out[i] = it
		case Skip:
			it.N = one(it.N)
			out[i] = it
		case Chains:
			it.N = one(it.N)
			out[i] = it
		case Repeat:
			it.Items, it.Times, it.Last = mapItems(it.Items, f), f(it.Times), f(it.Last)
			out[i] = it
		case Leave:
			it.N = f(it.N)
			out[i] = it
		default:
			out[i] = it
		}
	}
	return out
}

// Lists returns the numbers of the row that differ by size, in order.
func (r Row) Lists() []Num {
	var out []Num
	eachNum(r.Items, func(n Num) {
		if len(n) > 1 {
			out = append(out, slices.Clone(n))
		}
	})
	return out
}

// HasChains reports whether the row makes chains between or beside its stitches.
func (r Row) HasChains() bool {
	chains := func(parts []Part) bool {
		return slices.ContainsFunc(parts, func(p Part) bool { return p.Of == Chain })
	}
	var in func(items []Item) bool
	in = func(items []Item) bool {
		return slices.ContainsFunc(items, func(it Item) bool {
			switch it := it.(type) {
			case FoundationChain:
				return chains(it.Counts)
			case TurningChain:
				return chains(it.Counts)
			case Chains:
				return true
			case Work:
				return chains(it.Make)
			case Each:
				return slices.ContainsFunc(it.In, func(in Into) bool { return chains(in.Make) })
			case Repeat:
				return in(it.Items)
			}
			return false
		})
	}
	return in(r.Items)
}
