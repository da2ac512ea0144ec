package work

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/row"
)

// errNever tells that a kind of place is not there at any count.
var errNever = fmt.Errorf("%w at any count", row.ErrNoPlace)

// family is what stands ready to be worked into, for every count of a
// progression: the count is n0 + dn·t, and the places are p, then t times g,
// then s (t = 0, 1, 2, …). A single count has dn 0 and no g.
type family struct {
	n0, dn  int
	p, g, s []place
}

// link is what one row does for every count of its progression, n0 + dn·t.
type link struct {
	n0, dn         int
	first, more    Tally // made at n0, and for each step after it
	uses, usesMore int   // places
	passes, step   int   // of the open repeat or Each; 0 where there is none
	spaces         int   // chain spaces among the places used at n0
	spacesMore     int
	space          int // chains of every space made; 0 where they differ
}

// at returns which step of the progression n is.
func (l *link) at(n int) int {
	if l.dn == 0 {
		return 0
	}
	return (n - l.n0) / l.dn
}

func (l *link) tally(n int) Tally { return l.first.plus(l.more, l.at(n)) }

// stitchesOf returns the family of any number of plain stitches, at least one.
func stitchesOf(n row.Num, size int) family {
	if len(n) == 0 {
		return family{n0: 1, dn: 1, p: make([]place, 1), g: make([]place, 1)}
	}
	k := n.In(size)
	return family{n0: k, p: make([]place, max(k, 0))}
}

// word returns the places for step t.
func (f *family) word(t int) []place {
	w := make([]place, 0, len(f.p)+t*len(f.g)+len(f.s))
	w = append(w, f.p...)
	for range t {
		w = append(w, f.g...)
	}
	return append(w, f.s...)
}

// turned returns the family as the next row meets it, from the other end.
func (f family) turned() family {
	return family{f.n0, f.dn, reversed(f.s), reversed(f.g), reversed(f.p)}
}

func reversed(w []place) []place {
	out := make([]place, len(w))
	for i, x := range w {
		out[len(w)-1-i] = x
	}
	return out
}

// apply works a row into the places of f. The family that comes back holds
// what the row makes, before the turn, for the counts of f at which the row
// comes out.
//
// With t steps there are a + b·t places; the row takes h + s + q·j of them in j
// passes of its body. Where both have something to repeat, a + b·t = h + s +
// q·j is one linear congruence: its solutions are t0 + τ·u with j0 + ι·u, and
// from step to step both sides grow by the same length, τ·b = ι·q. So the
// places of step u are those of step 0 with u copies of one period put in
// anywhere inside the part that repeats, and the same holds for what the row
// takes: if both are cut at one place of that part, the row comes out at every
// step just when it does so left of the cut, right of it, and in the period.
func (f family) apply(p program) (family, link, error) {
	if p.left != 0 {
		return family{}, link{}, &row.FitError{Left: max(p.left, 0), Short: max(-p.left, 0), Err: sentinel(p.left)}
	}
	h, q, s := takes(p.head), takes(p.body), takes(p.tail)
	a, b := len(f.p)+len(f.s), len(f.g)
	need := h + s
	switch {
	case p.rest:
		return f.applyRest(p, h)
	case q == 0 && b == 0:
		if a != need {
			return family{}, link{}, misfit(need, a)
		}
		return f.fixed(p, 0, 0)
	case q == 0:
		if t := need - a; t < 0 || t%b != 0 {
			return family{}, link{}, &row.FitError{Uses: need, Has: gauge.Rule{Multiple: b, Plus: a % b, Least: a}, Err: gauge.ErrNoCount}
		}
		return f.fixed(p, (need-a)/b, 0)
	case b == 0:
		rest := a - need
		switch {
		case rest < q:
			return family{}, link{}, &row.FitError{Uses: need + q, Has: single0(a), Short: q - rest, Err: row.ErrShort}
		case rest%q != 0:
			return family{}, link{}, &row.FitError{Uses: a - rest%q, Step: q, Has: single0(a), Left: rest % q, Short: q - rest%q, Err: row.ErrLeft}
		}
		return f.fixed(p, 0, rest/q)
	}
	t0, tau, ok := congruence(b, need-a, q)
	if !ok {
		return family{}, link{}, &row.FitError{Uses: need + q, Step: q, Has: gauge.Rule{Multiple: b, Plus: a % b, Least: a}, Err: gauge.ErrNoCount}
	}
	for a+b*t0 < need+q {
		t0 += tau * ((need + q - a - b*t0 + tau*b - 1) / (tau * b))
	}
	never := &row.FitError{Uses: need + q, Step: q, Has: gauge.Rule{Multiple: b, Plus: a % b, Least: a}, Err: gauge.ErrNoCount}
	passes := func(t int) int { return (a + b*t - need) / q }
	start := -1 // the first of the steps before t0 that come out one by one
	for t, tries := t0, 0; f.n0+f.dn*t <= gauge.MaxCount && a+b*t <= gauge.MaxCount && tries < maxTries; t, tries = t+tau, tries+1 {
		g, l, err, aligned := f.grow(p, t, tau, passes(t), tau*b/q)
		switch {
		case aligned && err == nil && start >= 0 && l.step > 0 && p.blind():
			return f.from(p, start, tau, passes(start), tau*b/q)
		case aligned && !errIs(err, row.ErrNoPlace):
			if err != nil && start >= 0 { // it comes out at the smaller steps alone
				return f.fixed(p, start, passes(start))
			}
			return g, l, err
		case err != nil:
			never, start = err.(*row.FitError), -1
		case start < 0:
			start = t
		}
	}
	return family{}, link{}, never
}

// maxTries is after how many steps the search for a cut is given up.
const maxTries = 64

func sentinel(left int) error {
	if left < 0 {
		return row.ErrShort
	}
	return row.ErrLeft
}

// single0 is the rule of one count.
func single0(n int) gauge.Rule { return gauge.Rule{Multiple: gauge.MaxCount, Plus: n, Least: n} }

func misfit(uses, has int) *row.FitError {
	e := &row.FitError{Uses: uses, Has: single0(has), Short: max(uses-has, 0), Left: max(has-uses, 0), Err: row.ErrShort}
	if has > uses {
		e.Err = row.ErrLeft
	}
	return e
}

// congruence solves b·t ≡ c (mod q) for t: the smallest t of at least 0 and the
// step between solutions.
func congruence(b, c, q int) (t, step int, ok bool) {
	d := gcd(b, q)
	if c%d != 0 {
		return 0, 0, false
	}
	m := q / d
	inv := inverse(b/d%m, m)
	t = int(int64(((c/d)%m+m)%m) * int64(inv) % int64(m))
	return t, m, true
}

func gcd(a, b int) int {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

// inverse returns a⁻¹ mod m for a and m without a common divisor.
func inverse(a, m int) int {
	if m == 1 {
		return 0
	}
	r0, r1, x0, x1 := m, a, 0, 1
	for r1 > 1 {
		k := r0 / r1
		r0, r1 = r1, r0-k*r1
		x0, x1 = x1, x0-k*x1
	}
	return ((x1 % m) + m) % m
}

// walk works ops into places that are as many as they take. It returns what
// each op makes, and which of the alternatives were met.
type walk struct {
	outs [][]atom
	met  uint64
}

func (w *walk) work(ops []op, places []place, from int) *row.FitError {
	k := 0
	for i := range ops {
		o := &ops[i]
		if !o.takes {
			w.outs = append(w.outs, o.out)
			continue
		}
		out, alt, ok := o.choose(places[k])
		if !ok {
			e := &row.FitError{At: from + k + 1, Want: row.Space(o.want), Found: row.Space(places[k]), Err: row.ErrPlace}
			if places[k] == gap {
				e.Found, e.Err = 0, row.ErrSplit
			}
			return e
		}
		if o.alts != nil {
			w.met |= 1 << alt
		}
		w.outs = append(w.outs, out)
		k++
	}
	return nil
}

// unmet returns the first kind of place that the row works into and that is
// not there.
func unmet(p program, met uint64) *row.FitError {
	if len(p.body) != 1 {
		return nil
	}
	for i := range p.body[0].alts {
		if met&(1<<i) == 0 {
			return &row.FitError{Want: row.Space(p.body[0].alts[i].want), Err: row.ErrNoPlace}
		}
	}
	return nil
}

// laid returns head, body j times, tail.
func (p *program) laid(j int) []op {
	ops := make([]op, 0, len(p.head)+j*len(p.body)+len(p.tail))
	ops = append(ops, p.head...)
	for range j {
		ops = append(ops, p.body...)
	}
	return append(ops, p.tail...)
}

// fixed works the row at step t alone, with j passes.
func (f family) fixed(p program, t, j int) (family, link, error) {
	n := f.n0 + f.dn*t
	if n > gauge.MaxCount {
		return family{}, link{}, &row.FitError{Err: gauge.ErrNoCount}
	}
	dn := f.dn
	if len(f.g) > 0 {
		dn = 0
	}
	places := f.word(t)
	w := walk{outs: make([][]atom, 0, len(p.head)+j*len(p.body)+len(p.tail))}
	k, q := takes(p.head), takes(p.body)
	err := w.work(p.head, places, 0)
	for i := 0; i < j && err == nil; i, k = i+1, k+q {
		err = w.work(p.body, places[k:], k)
	}
	if err == nil {
		err = w.work(p.tail, places[k:], k)
	}
	if err != nil {
		return family{}, link{}, err
	}
	if err := unmet(p, w.met); err != nil {
		return family{}, link{}, err
	}
	m := maker{places: make([]place, 0, len(w.outs))}
	for _, out := range w.outs {
		m.make(out)
	}
	l := link{n0: n, dn: dn, first: m.tally, uses: len(places), spaces: spacesIn(places), passes: j}
	l.first.Spaces, l.space = spacesIn(m.places), sameSpace(m.places)
	return family{n0: n, dn: dn, p: trim(m.places)}, l, check(l.first)
}

// applyRest works a row that leaves what it does not use.
func (f family) applyRest(p program, h int) (family, link, error) {
	t, b := 0, len(f.g)
	if missing := h - len(f.p) - len(f.s); missing > 0 {
		if b == 0 {
			return family{}, link{}, misfit(h, h-missing)
		}
		t = (missing + b - 1) / b
	}
	places := f.word(t)[:h]
	if b > 0 && len(f.p)+t*b < h { // take one step more, so that every step begins alike
		t += (h - len(f.p) - t*b + b - 1) / b
		places = f.word(t)[:h]
	}
	var w walk
	if err := w.work(p.head, places, 0); err != nil {
		return family{}, link{}, err
	}
	var m maker
	for _, out := range w.outs {
		m.make(out)
	}
	l := link{n0: f.n0 + f.dn*t, dn: f.dn, first: m.tally, uses: h, spaces: spacesIn(places)}
	l.first.Spaces, l.space = spacesIn(m.places), sameSpace(m.places)
	return family{n0: l.n0, dn: l.dn, p: trim(m.places)}, l, check(l.first)
}

// grow works the row at the steps t0 + τ·u with j0 + ι·u passes. aligned is
// false where both sides can't be cut at one place yet, since their repeating
// parts do not overlap; then err tells whether step t0 comes out alone.
func (f family) grow(p program, t0, tau, j0, iota int) (g family, l link, err error, aligned bool) {
	b := len(f.g)
	places, ops := f.word(t0), p.laid(j0)
	before, after := f.reach()
	lo, hi := len(f.p)-before, len(f.p)+t0*b+after
	var w walk
	bad := w.work(ops, places, 0)

	k := takes(p.head)
	tried := 0
	for c := len(p.head); c <= len(p.head)+j0*len(p.body) && k <= hi && tried < 8; c++ {
		if k >= lo {
			if bad != nil {
				return family{}, link{}, bad, true // left or right of the cut, and so at every step
			}
			tried++
			if g, l, err, ok := f.cut(p, &w, places, c, k, t0, tau, j0, iota); ok {
				return g, l, err, true
			}
		}
		if c < len(ops) && ops[c].takes {
			k++
		}
	}
	if bad != nil {
		return family{}, link{}, bad, false
	}
	if none := unmet(p, w.met); none != nil {
		return family{}, link{}, none, false
	}
	return family{}, link{}, nil, false
}

// reach returns how far the pattern of g goes on into p, backwards, and into s.
func (f family) reach() (before, after int) {
	b := len(f.g)
	for before < len(f.p) && f.p[len(f.p)-1-before] == f.g[b-1-before%b] {
		before++
	}
	for after < len(f.s) && f.s[after] == f.g[after%b] {
		after++
	}
	return before, after
}

// blind reports whether what the row makes does not depend on the places.
func (p *program) blind() bool { return len(p.body) != 1 || p.body[0].alts == nil }

// from returns what the row makes at the steps t0 + τ·u where it comes out at
// all of them, without looking at the places.
func (f family) from(p program, t0, tau, j0, iota int) (family, link, error) {
	places := f.word(t0)
	w := walk{outs: outs(p.laid(j0))}
	y := outs(p.body)
	period := walk{outs: make([][]atom, 0, iota*len(y))}
	for range iota {
		period.outs = append(period.outs, y...)
	}
	grown := f.word(t0 + tau)
	more := spacesIn(grown) - spacesIn(places)
	g, l, err, ok := f.join(&w, &period, len(p.head)+j0*len(p.body), t0, tau)
	if !ok {
		return family{}, link{}, &row.FitError{Err: gauge.ErrNoCount}
	}
	l.uses, l.usesMore = len(places), len(grown)-len(places)
	l.spaces, l.spacesMore = spacesIn(places), more
	l.passes, l.step = j0, iota
	return g, l, err
}

func outs(ops []op) [][]atom {
	out := make([][]atom, len(ops))
	for i := range ops {
		out[i] = ops[i].out
	}
	return out
}

func errIs(err, target error) bool {
	f, ok := err.(*row.FitError)
	return ok && f.Err == target
}

// cut puts the period in at op c, place k. ok is false where a chain space lies
// across the cut that does not lie across the ends of the period.
func (f family) cut(p program, w *walk, places []place, c, k, t0, tau, j0, iota int) (g family, l link, err error, ok bool) {
	b := len(f.g)
	period := make([]place, 0, tau*b)
	for i := range tau * b {
		period = append(period, f.g[((k-len(f.p)+i)%b+b)%b])
	}
	turn := (c - len(p.head)) % len(p.body)
	ops := make([]op, 0, iota*len(p.body))
	for range iota {
		ops = append(ops, p.body[turn:]...)
		ops = append(ops, p.body[:turn]...)
	}
	var y walk
	if bad := y.work(ops, period, k); bad != nil { // step t0 alone
		g, l, err := f.fixed(p, t0, j0)
		return g, l, err, true
	}
	if none := unmet(p, w.met); none != nil {
		if again := unmet(p, w.met|y.met); again != nil {
			return family{}, link{}, &row.FitError{Want: again.Want, Err: errNever}, true
		}
		return family{}, link{}, none, true
	}
	g, l, err, ok = f.join(w, &y, c, t0, tau)
	l.uses, l.usesMore = len(places), len(period)
	l.spaces, l.spacesMore = spacesIn(places), spacesIn(period)
	l.passes, l.step = j0, iota
	return g, l, err, ok
}

// join makes a family of what is made left and right of op c, and of the
// period between them.
func (f family) join(w, y *walk, c, t0, tau int) (g family, l link, err error, ok bool) {
	var left, mid, right maker
	for _, out := range w.outs[:c] {
		left.make(out)
	}
	for _, out := range y.outs {
		mid.make(out)
	}
	for _, out := range w.outs[c:] {
		right.make(out)
	}
	across := trailing(mid.places)
	switch {
	case leading(mid.places) == 0 && leading(right.places) == 0:
		across = 0 // nothing follows the cut that could join
	case trailing(left.places) != across:
		return family{}, link{}, nil, false
	}
	g = family{n0: f.n0 + f.dn*t0, dn: f.dn * tau, p: left.places, g: mid.places, s: right.places}
	if across > 0 { // the space belongs to what follows the cut
		g.p = g.p[:len(g.p)-1]
		g.g = lead(across, g.g[:len(g.g)-1])
		g.s = lead(across, g.s)
	}
	l = link{n0: g.n0, dn: g.dn, first: left.tally.Add(right.tally), more: mid.tally, space: sameSpace(g.p, g.g, g.s)}
	l.first.Spaces = spacesIn(g.p) + spacesIn(g.s)
	l.more.Spaces = spacesIn(g.g)
	return g, l, check(l.first), true
}

// check refuses a row wider than a count may be.
func check(t Tally) error {
	if t.Count() > gauge.MaxCount {
		return &row.FitError{Err: gauge.ErrBounds}
	}
	return nil
}

// trailing returns the chain space at the end of w; 0 for none.
func trailing(w []place) place {
	if n := len(w); n > 0 && w[n-1] > 0 {
		return w[n-1]
	}
	return 0
}

// leading returns the chain space at the start of w; 0 for none.
func leading(w []place) place {
	if len(w) > 0 && w[0] > 0 {
		return w[0]
	}
	return 0
}

// lead puts a chain space in front of w.
func lead(sp place, w []place) []place {
	if len(w) > 0 && w[0] > 0 {
		out := append([]place(nil), w...)
		out[0] += sp
		return out
	}
	return append([]place{sp}, w...)
}

// trim drops the cut of a split at either end: nothing lies beyond it.
func trim(w []place) []place {
	for len(w) > 0 && w[0] == gap {
		w = w[1:]
	}
	for len(w) > 0 && w[len(w)-1] == gap {
		w = w[:len(w)-1]
	}
	return w
}

func spacesIn(w []place) int {
	n := 0
	for _, x := range w {
		if x > 0 {
			n++
		}
	}
	return n
}

// sameSpace returns the size of the chain spaces of the words, 0 where they
// differ or there are none.
func sameSpace(words ...[]place) int {
	var m place
	for _, w := range words {
		for _, x := range w {
			switch {
			case x <= 0 || x == m:
			case m == 0:
				m = x
			default:
				return 0
			}
		}
	}
	return int(m)
}
