package work

import (
	"errors"
	"slices"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/row"
)

// Solution is the answer to the question at which counts a set of rows works. In
// JSON it is the rule and the rows, which are solved again when they are read.
type Solution struct {
	// Rule holds the counts: of what the first row makes where that is a
	// foundation row or chain, of the stitches before it otherwise, each chain of
	// a chain space counting as one. Its Least is the smallest count at which
	// every repeat is worked at least once. A single count is a multiple of
	// gauge.MaxCount.
	Rule gauge.Rule `json:"rule"`

	chains   *link    // by chains to begin; nil without a foundation chain
	opening  []link   // by row
	passes   [][]link // by pass of the repeat, then by row
	closings [][]link // by how many passes went before, then by row
	back     int      // the state that the last of the passes leads back to
	asked    *asked   // what was solved
}

// Worked is what one row does at one count.
type Worked struct {
	Uses   int   `json:"uses"`   // places: stitches and chain spaces
	Spaces int   `json:"spaces"` // chain spaces among them
	Passes int   `json:"passes"` // of its open repeat, or places of its `each … across`
	Made   Tally `json:"made"`
	Space  int   `json:"space"` // chains of each chain space made, where all have the same; 0 otherwise
}

func (l *link) worked(n int) Worked {
	t := l.at(n)
	return Worked{
		Uses:   l.uses + t*l.usesMore,
		Spaces: l.spaces + t*l.spacesMore,
		Passes: l.passes + t*l.step,
		Made:   l.tally(n),
		Space:  l.space,
	}
}

// Solve returns the counts at which the rows work one after another, each into
// what the row before made and from its other end. Sizes are counted from 0,
// for rows with lists of sizes; a row without them is the same in any.
//
// It returns an error if a row is not valid or has no such size
// (*row.InvalidError), or does not fit the places before it at any count
// (*row.FitError).
func Solve(rows []row.Row, size int) (Solution, error) {
	sol, err := solver{size: size, spent: new(int)}.solve(rows, nil, nil)
	if err != nil {
		return Solution{}, err
	}
	sol.asked = &asked{Rows: slices.Clone(rows), Size: size}
	return sol, nil
}

// SolveRepeat is Solve for opening rows, rows that are repeated as often as one
// likes, and closing rows. Every row must come back to the count that the
// first makes. The counts are those that work for every number of repeats, 0
// among them.
//
// It returns an error if a row is not valid or has no such size
// (*row.InvalidError), or does not fit or keep its count (*row.FitError). Its row is counted through opening, repeat and
// closing, its pass says in which repeat.
func SolveRepeat(opening, repeat, closing []row.Row, size int) (Solution, error) {
	sol, err := solver{size: size, keep: true, spent: new(int)}.solve(opening, repeat, closing)
	if err != nil {
		return Solution{}, err
	}
	sol.asked = &asked{Opening: slices.Clone(opening), Repeat: slices.Clone(repeat), Closing: slices.Clone(closing), Size: size}
	return sol, nil
}

// maxPlaces is how many places all rows together may work while they are
// solved: a bound for what could not be meant, far above any garment.
const maxPlaces = 1_000_000

// maxPasses is how many passes of a repeat may differ before they come back to
// the places of an earlier one.
const maxPasses = 100

type solver struct {
	spent *int // places worked so far, all rows together
	size  int
	keep  bool // every row must come back to the count
}

// state is a family on its way, with the counts of every family before it.
type state struct {
	family
	last *lattice // the counts after the last row, and through it those before
}

// lattice is the counts n0 + dn·t that were left after a row. The lattices of
// all rows are a chain that states share, so that a row adds one and copies none.
type lattice struct {
	n0, dn, index int
	before        *lattice
}

func (sv solver) solve(opening, repeat, closing []row.Row) (Solution, error) {
	all := slices.Concat(opening, repeat, closing)
	if len(all) == 0 {
		return Solution{}, &gauge.FieldError{Field: "rows", Got: "none", Want: "at least one row"}
	}
	for i, r := range all {
		if err := r.Validate(); err != nil {
			return Solution{}, &row.InvalidError{Row: i, Err: err}
		}
		if err := sized(r, sv.size); err != nil {
			return Solution{}, &row.InvalidError{Row: i, Err: err}
		}
	}
	named := func(err error, i, pass int) error {
		var f *row.FitError
		if errors.As(err, &f) {
			f.Row, f.Pass, f.Text = i, pass, all[i].String()
		}
		return err
	}

	var sol Solution
	st := state{family: stitchesOf(nil, 0)}
	run := func(st state, from, to, pass int) (state, []link, error) {
		links := make([]link, 0, to-from)
		for i := from; i < to; i++ {
			var l link
			var err error
			if st, l, err = sv.step(&sol, st, all[i], i, pass); err != nil {
				return st, nil, named(err, i, pass)
			}
			links = append(links, l)
		}
		return st, links, nil
	}

	var err error
	nOpen, nRep := len(opening), len(repeat)
	if st, sol.opening, err = run(st, 0, nOpen, 0); err != nil {
		return Solution{}, err
	}
	states := []state{st}
	sol.back = -1
	for nRep > 0 && sol.back < 0 {
		if len(states) > maxPasses {
			return Solution{}, named(&row.FitError{Err: row.ErrRepeat}, nOpen, len(states))
		}
		next, links, err := run(states[len(states)-1], nOpen, nOpen+nRep, len(states))
		if err != nil {
			return Solution{}, err
		}
		next.family = next.family.settled()
		sol.passes = append(sol.passes, links)
		sol.back = slices.IndexFunc(states, func(s state) bool { return s.family.settled().equal(next.family) })
		if sol.back < 0 {
			states = append(states, next)
		}
	}
	rule := gauge.Rule{}
	for i, s := range states {
		end, links, err := run(s, nOpen+nRep, len(all), 0)
		if err != nil {
			return Solution{}, err
		}
		sol.closings = append(sol.closings, links)
		both, ok := progression(end.n0, end.dn), true
		if i > 0 {
			both, ok = meet(rule, both)
		}
		if !ok {
			return Solution{}, named(&row.FitError{Err: gauge.ErrNoCount}, len(all)-1, 0)
		}
		rule = both
	}
	sol.Rule = rule
	return sol, nil
}

// step works row i into st.
func (sv solver) step(sol *Solution, st state, r row.Row, i, pass int) (state, link, error) {
	p := compile(r, sv.size)
	var l link
	var f family
	var err error
	switch {
	case p.foundation || p.chain != nil:
		if i > 0 || pass > 0 {
			return st, l, &row.FitError{Err: row.ErrFoundation}
		}
		if p.foundation {
			f = stitchesOf(r.Items[0].(row.Foundation).Count, sv.size)
			l = link{n0: f.n0, dn: f.dn}
			l.first.add(r.Items[0].(row.Foundation).Of, len(f.p))
			l.more.add(r.Items[0].(row.Foundation).Of, len(f.g))
			break
		}
		f = stitchesOf(nil, 0)
		if len(p.chain.Count) > 0 {
			f = stitchesOf(row.Num{p.chain.Count.In(sv.size) - p.chain.Hook + 1}, 0)
			if f.n0 < 1 {
				return st, l, &row.FitError{Uses: p.chain.Hook, Has: single0(p.chain.Count.In(sv.size)), Short: 1 - f.n0, Err: row.ErrShort}
			}
		}
		if f, l, err = f.apply(p); err != nil {
			return st, l, err
		}
		begin := l
		begin.n0 += p.chain.Hook - 1
		sol.chains = &begin
		f.n0, f.dn = l.first.Count(), l.more.Count()
		l.n0, l.dn = f.n0, f.dn
	default:
		if f, l, err = st.apply(p); err != nil {
			return st, l, st.quarrel(err, p)
		}
	}
	if *sv.spent += len(f.p) + len(f.g) + len(f.s) + l.uses; *sv.spent > maxPlaces {
		return st, l, &row.FitError{Uses: maxPlaces, Err: gauge.ErrBounds}
	}
	if sv.keep && (l.first.Count() != l.n0 || l.more.Count() != l.dn) {
		return st, l, &row.FitError{Makes: l.first.Count(), Has: progression(l.n0, l.dn), Err: row.ErrCount}
	}
	next := state{family: f.turned(), last: &lattice{f.n0, f.dn, i, st.last}}
	return next, l, nil
}

func (t *Tally) add(s row.Stitch, n int) {
	t.Stitches += n
	t.kinds[s] += n
}

// quarrel finds the row whose counts exclude those of the row that failed: the
// first after which the failing row's congruence has no solution.
func (s *state) quarrel(err error, p program) error {
	f, ok := err.(*row.FitError)
	if !ok || f.Err != gauge.ErrNoCount || s.dn == 0 || len(s.g) == 0 {
		return err
	}
	a, b := len(s.p)+len(s.s), len(s.g)
	need, q := takes(p.head)+takes(p.tail), takes(p.body)
	for l := s.last; l != nil; l = l.before {
		// places at count n0 + dn·t of that time: a + b·(n0 + dn·t - s.n0)/s.dn
		want := s.dn*(need-a) - b*(l.n0-s.n0)
		if d := gcd(b*l.dn, s.dn*q); d == 0 || want%d != 0 {
			f.Against = l.index + 1 // and on to the first such row
		}
	}
	return f
}

// settled returns the same family with as much as possible of the places in s,
// so that two families that are the same compare equal.
func (f family) settled() family {
	b := len(f.g)
	if b == 0 {
		return family{f.n0, f.dn, slices.Concat(f.p, f.s), nil, nil}
	}
	before, _ := f.reach()
	cut := len(f.p) - before
	g := make([]place, b)
	for i := range g {
		g[(i+before)%b] = f.g[i]
	}
	return family{f.n0, f.dn, slices.Clone(f.p[:cut]), g, slices.Concat(f.p[cut:], f.s)}
}

func (f family) equal(o family) bool {
	return f.n0 == o.n0 && f.dn == o.dn && slices.Equal(f.p, o.p) && slices.Equal(f.g, o.g) && slices.Equal(f.s, o.s)
}

// progression returns the counts n0 + dn·t as a rule.
func progression(n0, dn int) gauge.Rule {
	switch dn {
	case 0:
		return single0(n0)
	case 1:
		return gauge.Rule{Multiple: 1, Least: n0}
	}
	return gauge.Rule{Multiple: dn, Plus: n0 % dn, Least: n0}
}

// meet returns the counts that both rules have.
func meet(x, y gauge.Rule) (gauge.Rule, bool) {
	t, step, ok := congruence(x.Multiple, y.Plus-x.Plus, max(y.Multiple, 1))
	if !ok {
		return gauge.Rule{}, false
	}
	m := min(x.Multiple*step, gauge.MaxCount)
	n := x.Plus + x.Multiple*t
	if least := max(x.Least, y.Least); n < least {
		n += (least - n + m - 1) / m * m
	}
	if n > gauge.MaxCount {
		return gauge.Rule{}, false
	}
	if m == gauge.MaxCount {
		m = 0
	}
	return progression(n, m), true
}

// after returns which of the states follows after so many passes.
func (s *Solution) after(passes int) int {
	if passes < len(s.closings) || s.back < 0 {
		return min(passes, len(s.closings)-1)
	}
	return s.back + (passes-s.back)%(len(s.closings)-s.back)
}

// Opening returns what opening row i (from 0) does at count n. Solve has nothing
// but opening rows. A count that is not legal, and a row that is not there, do
// nothing.
func (s *Solution) Opening(i, n int) Worked { return s.row(s.opening, i, n) }

// Repeat returns what row i (from 0) of a pass (from 1) of the repeat does; see
// Opening.
func (s *Solution) Repeat(pass, i, n int) Worked {
	if pass < 1 || len(s.passes) == 0 {
		return Worked{}
	}
	return s.row(s.passes[s.after(pass-1)], i, n)
}

// Closing returns what closing row i (from 0) does after so many passes; see
// Opening.
func (s *Solution) Closing(passes, i, n int) Worked {
	if passes < 0 || len(s.closings) == 0 {
		return Worked{}
	}
	return s.row(s.closings[s.after(passes)], i, n)
}

func (s *Solution) row(links []link, i, n int) Worked {
	if i < 0 || i >= len(links) || !s.Rule.Legal(n) {
		return Worked{}
	}
	return links[i].worked(n)
}

// Chains returns how many chains to begin give the count n; 0 where the rows do
// not begin with a foundation chain, or the count is not legal.
func (s *Solution) Chains(n int) int {
	if s.chains == nil || !s.Rule.Legal(n) {
		return 0
	}
	return s.chains.n0 + s.opening[0].at(n)*s.chains.dn
}
