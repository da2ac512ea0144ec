package row

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
)

// extent is how much an item uses and makes, each bounded well above
// gauge.MaxCount so that sums can't overflow.
type extent struct{ stitches, spaces, makes int }

const extentCap = 1 << 24

func (e extent) size() int { return max(e.stitches+e.spaces, e.makes) }

func (e extent) add(o extent) extent {
	return extent{min(e.stitches+o.stitches, extentCap), min(e.spaces+o.spaces, extentCap), min(e.makes+o.makes, extentCap)}
}

func (e extent) times(n int) extent {
	n = min(n, extentCap)
	return extent{capMul(e.stitches, n), capMul(e.spaces, n), capMul(e.makes, n)}
}

func capMul(a, b int) int { return int(min(int64(a)*int64(b), extentCap)) }

// made returns how many stitches and chains the parts make in a size.
func made(parts []Part, size int) int {
	n := 0
	for _, p := range parts {
		n += p.N.In(size)
	}
	return n
}

// measure returns what an item uses and makes in a size; an open repeat and an
// Each count as one pass.
func measure(it Item, size int) extent {
	switch it := it.(type) {
	case TurningChain:
		if it.Counts != nil {
			return extent{1, 0, made(it.Counts, size)}
		}
	case Chainless:
		return extent{1, 0, 1}
	case Work:
		n, m := it.N.In(size), made(it.Make, size)
		switch {
		case m == 0:
		case it.At == Same:
			return extent{0, 0, m}
		case it.Space == 0:
			return extent{1, 0, m}.times(n)
		default:
			return extent{0, 1, m}.times(n)
		}
	case Each:
		e := extent{}
		for _, in := range it.In {
			e.makes += made(in.Make, size)
		}
		e.stitches = 1
		return e
	case Skip:
		if it.Space == 0 {
			return extent{stitches: it.N.In(size)}
		}
		return extent{spaces: it.N.In(size)}
	case Chains:
		return extent{makes: it.N.In(size)}
	case Together:
		return extent{it.N, 0, 1}
	case Leave:
		if len(it.N) > 0 {
			return extent{stitches: it.N.In(size)}
		}
	case Foundation:
		return extent{makes: numIn0(it.Count, size)}
	case FoundationChain:
		return extent{it.Hook - 1, 0, made(it.Counts, size) * boolInt(it.Counts != nil)}
	case Repeat:
		var e extent
		for _, in := range it.Items {
			e = e.add(measure(in, size))
		}
		if len(it.Times) > 0 {
			e = e.times(it.Times.In(size))
		}
		return e
	}
	return extent{}
}

func boolInt(b bool) int {
	if b {
		return 1
	}
	return 0
}

// Validate returns a *gauge.FieldError if the row is not one that Parse could
// have returned: it is empty, an item stands where it can't (a start inside the
// row, two parts that both go on to the end), a number or list of sizes is out
// of range, or a repeat makes no stitch.
func (r Row) Validate() error {
	if err := r.validate(); err != nil {
		return err
	}
	return nil
}

func (r Row) validate() *gauge.FieldError {
	if len(r.Items) == 0 {
		return &gauge.FieldError{Field: "Row.Items", Got: "no instruction", Want: "at least one instruction"}
	}
	v := &validator{}
	v.items(r.Items, 0, "Row.Items")
	if v.err == nil && v.open > 1 {
		v.fail("Row.Items", "two parts that go on to the end", "one part that goes on to the end of the row; a number for the others", nil)
	}
	if v.err == nil {
		for size := range r.Sizes() {
			var e extent
			for _, it := range r.Items {
				e = e.add(measure(it, size))
			}
			if e.size() > gauge.MaxCount {
				v.fail("Row.Items", "more than 100000 places", "a row of at most 100000 places", gauge.ErrBounds)
				break
			}
		}
	}
	return v.err
}

// Sizes returns for how many sizes the row is written: 1 where it has no list
// of sizes.
func (r Row) Sizes() int {
	n := 1
	eachNum(r.Items, func(num Num) { n = max(n, len(num)) })
	return n
}

// eachNum calls f with every number of the items.
func eachNum(items []Item, f func(Num)) {
	parts := func(parts []Part) {
		for _, p := range parts {
			f(p.N)
		}
	}
	for _, it := range items {
		switch it := it.(type) {
		case Foundation:
			f(it.Count)
		case FoundationChain:
			f(it.Count)
			parts(it.Counts)
		case TurningChain:
			parts(it.Counts)
		case Work:
			parts(it.Make)
			f(it.N)
		case Each:
			for _, in := range it.In {
				parts(in.Make)
			}
			f(it.Last)
		case Skip:
			f(it.N)
		case Chains:
			f(it.N)
		case Repeat:
			eachNum(it.Items, f)
			f(it.Times)
			f(it.Last)
		case Leave:
			f(it.N)
		}
	}
}

type validator struct {
	err   *gauge.FieldError
	open  int
	sizes int
	chain bool
}

func (v *validator) fail(field, got, want string, err error) {
	if v.err == nil {
		v.err = &gauge.FieldError{Field: field, Got: got, Want: want, Err: err}
	}
}

func (v *validator) items(items []Item, depth int, field string) {
	if depth > maxDepth {
		v.fail(field, "deeper repeats", "repeats nested at most "+strconv.Itoa(maxDepth)+" deep", gauge.ErrBounds)
		return
	}
	for i, it := range items {
		if v.err != nil {
			return
		}
		f := field + "[" + strconv.Itoa(i) + "]"
		start := depth == 0 && i == 0
		last := depth == 0 && i == len(items)-1
		switch it := it.(type) {
		case Foundation:
			if !start || !last {
				v.fail(f, "a foundation row beside other instructions", "a foundation row on its own", nil)
			}
			if !it.Of.Foundation() {
				v.fail(f+".Of", it.Of.String(), "a foundation stitch", nil)
			}
			v.num(f+".Count", it.Count, 1)
		case FoundationChain:
			v.chain = true
			if !start {
				v.fail(f, "a foundation chain inside the row", "a foundation chain at the start of the row", nil)
			}
			if it.Hook < 2 || it.Hook > 100 {
				v.fail(f+".Hook", strconv.Itoa(it.Hook), "2 to 100", nil)
			}
			v.num(f+".Count", it.Count, 1)
			if w, ok := second(items).(Work); !ok || w.At != FirstChain {
				v.fail(f, "a foundation chain alone", "the stitch in the Nth ch from hook after it", nil)
			}
			v.counts(f+".Counts", it.Counts)
		case TurningChain:
			if !start || last {
				v.fail(f, "a turning chain that does not begin the row", "a turning chain at the start of a row, and stitches after it", nil)
			}
			if it.N < 1 || it.N > 100 {
				v.fail(f+".N", strconv.Itoa(it.N), "1 to 100 chains", nil)
			}
			v.counts(f+".Counts", it.Counts)
		case Chainless:
			if !start {
				v.fail(f, "a first stitch inside the row", "a first stitch at the start of a row", nil)
			}
			v.plain(f+".Of", it.Of)
		case Work:
			v.work(it, f, depth, i, items)
		case Each:
			v.open++
			if depth > 0 {
				v.fail(f, "each st across inside a repeat", "a number of stitches inside a repeat", nil)
			}
			if len(it.In) == 0 {
				v.fail(f+".In", "nothing", "what goes into each place", nil)
			}
			for j, in := range it.In {
				v.parts(fmt.Sprintf("%s.In[%d].Make", f, j), in.Make, 1)
				v.space(fmt.Sprintf("%s.In[%d].Space", f, j), in.Space)
				for _, other := range it.In[:j] {
					if other.Space == in.Space {
						v.fail(f, "the same place twice", "each kind of place once", nil)
					}
				}
			}
			v.num(f+".Last", it.Last, 0)
		case Skip:
			v.num(f+".N", it.N, 0)
			v.space(f+".Space", it.Space)
		case Chains:
			v.num(f+".N", it.N, 0)
			if start {
				v.fail(f, "chains before the first stitch", "a turning chain that says what it counts as", nil)
			}
		case Together:
			v.plain(f+".Of", it.Of)
			if it.Of == SlipStitch {
				v.fail(f+".Of", "slip stitches together", "a taller stitch", nil)
			}
			if it.N < 2 || it.N > 99 {
				v.fail(f+".N", strconv.Itoa(it.N), "2 to 99", nil)
			}
		case Repeat:
			if len(it.Items) == 0 {
				v.fail(f+".Items", "nothing", "something to repeat", nil)
			}
			if len(it.Times) == 0 {
				v.open++
				if depth > 0 || !it.Star {
					v.fail(f, "an open repeat inside a repeat, or without its asterisk", "a number of times", nil)
				}
				if !stitchIn(it.Items) {
					v.fail(f, "a repeat across that makes no stitch", "a stitch in what is repeated across", nil)
				}
			} else if len(it.Last) > 0 {
				v.fail(f+".Last", it.Last.String(), "nothing beside a number of times", nil)
			}
			if it.Star && depth > 0 {
				v.fail(f, "* inside a repeat", "brackets inside a repeat", nil)
			}
			v.num(f+".Times", it.Times, 0)
			v.num(f+".Last", it.Last, 0)
			v.items(it.Items, depth+1, f+".Items")
		case Leave:
			v.num(f+".N", it.N, 0)
			if depth > 0 || len(it.N) == 0 && !last || i == 0 {
				v.fail(f, "a split there", "leave after the first stitch and outside repeats; leave rem sts at the end", nil)
			}
		default:
			v.fail(f, fmt.Sprintf("%T", it), "an instruction", nil)
		}
	}
}

func second(items []Item) Item {
	if len(items) < 2 {
		return nil
	}
	return items[1]
}

func (v *validator) work(it Work, f string, depth, i int, items []Item) {
	v.parts(f+".Make", it.Make, 0)
	v.num(f+".N", it.N, 0)
	v.space(f+".Space", it.Space)
	switch it.At {
	case Next:
	case First:
		_, tc := items[0].(TurningChain)
		counts := tc && items[0].(TurningChain).Counts != nil
		switch {
		case counts && i == 1 && depth == 0:
			v.fail(f, "the first st, on which the turning chain stands and counts", "next st, or same st for an increase", nil)
		case depth > 0 || i > 0 && !(i == 1 && tc):
			v.fail(f, "the first st inside the row", "next st", nil)
		}
	case Last:
		if depth > 0 || usesAfter(items[i+1:]) {
			v.fail(f, "the last st before the end", "the last st at the end of the row", nil)
		}
	case Same:
		if depth == 0 && i == 0 || !it.N.one() {
			v.fail(f, "the same st with nothing before it", "one place just worked before", nil)
		}
	case FirstChain:
		if depth > 0 || i != 1 || !v.chain || !it.N.one() || it.Space != 0 {
			v.fail(f, "a ch from hook inside the row", "a ch from hook right after the foundation chain", nil)
		}
	default:
		v.fail(f+".At", strconv.Itoa(int(it.At)), "Next, First, Last, Same or FirstChain", nil)
	}
}

func usesAfter(items []Item) bool {
	for _, it := range items {
		if e := measure(it, 0); e.stitches+e.spaces > 0 {
			return true
		}
	}
	return false
}

// stitchIn reports whether the items make a stitch.
func stitchIn(items []Item) bool {
	for _, it := range items {
		switch it := it.(type) {
		case Work:
			for _, p := range it.Make {
				if p.Of != Chain {
					return true
				}
			}
		case Together, Chainless:
			return true
		case Repeat:
			if stitchIn(it.Items) {
				return true
			}
		}
	}
	return false
}

func (v *validator) num(f string, n Num, least int) {
	if len(n) > 1 {
		if v.sizes == 0 {
			v.sizes = len(n)
		}
		if len(n) != v.sizes || len(n) > 64 {
			v.fail(f, n.String(), fmt.Sprintf("one number, or one for each of %d sizes", min(v.sizes, 64)), nil)
		}
	}
	for _, x := range n {
		if x < least || x > gauge.MaxCount {
			v.fail(f, n.String(), fmt.Sprintf("%d to 100000", least), gauge.ErrBounds)
		}
	}
}

func (v *validator) space(f string, s Space) {
	if s < AnySpace || s > gauge.MaxCount {
		v.fail(f, strconv.Itoa(int(s)), "a stitch, any chain space, or a chain space of 1 to 100000", nil)
	}
}

func (v *validator) plain(f string, s Stitch) {
	if !s.Valid() || s == Chain || s.Foundation() {
		v.fail(f, s.String(), "a stitch worked into another", nil)
	}
}

func (v *validator) parts(f string, parts []Part, least int) {
	if len(parts) == 0 {
		v.fail(f, "nothing", "at least one stitch", nil)
	}
	chains := true
	for _, p := range parts {
		v.num(f, p.N, least)
		if p.Of != Chain {
			chains = false
			v.plain(f, p.Of)
		}
	}
	if chains && len(parts) > 0 {
		v.fail(f, "chains alone", "at least one stitch in a place", nil)
	}
}

// counts checks what chains count as.
func (v *validator) counts(f string, parts []Part) {
	if parts == nil {
		return
	}
	v.parts(f, parts, 1)
	if v.err == nil && (parts[0].Of == Chain || !parts[0].N.one() || len(parts) > 2 || len(parts) == 2 && parts[1].Of != Chain) {
		v.fail(f, "other parts", "one stitch, or a stitch and its chains", nil)
	}
}
