package fit

import (
	"math"
	"math/big"
	"slices"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
)

// line is wearers along the line of their measures, those who measure the same
// at one place, in whole ticks: every length becomes a whole number of the
// largest fraction of a millimetre that fits them all, so that comparing and
// adding stay exact and cheap. A group is a stretch [i, j) of places.
type line struct {
	wearers []Wearer
	ease    grade.Ease
	scale   *big.Int   // ticks in a millimetre
	first   []int      // place → its first wearer; one more at the end
	low     []*big.Int // smallest body at a place
	fin     []*big.Int // garment for the largest body at a place
}

func newLine(wearers []Wearer, ease grade.Ease) *line {
	l := &line{wearers: wearers, ease: ease, scale: big.NewInt(1)}
	var lows, fins []*big.Rat
	for i, w := range wearers {
		if i > 0 && w.Low.Measurement().Equal(wearers[i-1].Low.Measurement()) && w.High.Measurement().Equal(wearers[i-1].High.Measurement()) {
			continue
		}
		l.first = append(l.first, i)
		low, fin := mm(w.Low.Measurement()), mm(ease.Finished(w.High.Measurement()))
		lows, fins = append(lows, low), append(fins, fin)
		l.fit(low)
		l.fit(fin)
	}
	l.first = append(l.first, len(wearers))
	for i := range lows {
		l.low = append(l.low, l.ticks(lows[i]))
		l.fin = append(l.fin, l.ticks(fins[i]))
	}
	return l
}

func mm(m gauge.Measurement) *big.Rat { return m.In(gauge.Millimetre).Rat() }

// fit makes the tick small enough for r.
func (l *line) fit(r *big.Rat) {
	d := r.Denom()
	common := new(big.Int).GCD(nil, nil, l.scale, d)
	if common.Cmp(d) != 0 {
		l.scale = new(big.Int).Mul(l.scale, common.Quo(d, common))
	}
}

func (l *line) ticks(r *big.Rat) *big.Int {
	t := new(big.Int).Mul(r.Num(), l.scale)
	return t.Quo(t, r.Denom())
}

// n returns the number of places.
func (l *line) n() int { return len(l.low) }

// cost sets z to the largest ease in the group [i, j): that of its smallest body.
func (l *line) cost(z *big.Int, i, j int) *big.Int { return z.Sub(l.fin[j-1], l.low[i]) }

// total sets z to the sum of the garments of all wearers of the group [i, j).
// The bodies are the same in every split: the least sum has the least ease.
func (l *line) total(z *big.Int, i, j int) *big.Int {
	return z.Mul(z.SetInt64(int64(l.first[j]-l.first[i])), l.fin[j-1])
}

// within returns, for each j, the earliest i for which [i, j) stays inside w.
func (l *line) within(w Window) ([]int, error) {
	earliest := make([]int, l.n()+1)
	i := 0
	for j := 1; j <= l.n(); j++ {
		high := l.wearers[l.first[j-1]].High.Measurement()
		least := w.Least.Finished(high)
		for i < j && least.Cmp(w.Most.Finished(l.wearers[l.first[i]].Low.Measurement())) > 0 {
			i++
		}
		if i == j {
			one := l.wearers[l.first[j-1]]
			return nil, &grade.SizeError{Index: -1, Size: one.Name, Field: "ease",
				Got: "a range of " + one.Low.String() + " to " + one.High.String(), Want: "one that a garment fits with " + w.String()}
		}
		earliest[j] = i
	}
	return earliest, nil
}

// greedy returns the starts of the groups when each, from the smallest wearer,
// takes as many as earliest allows. Each start can't share a group with the one
// before it, so there are no fewer groups.
func (l *line) greedy(earliest []int) []int {
	starts := []int{0}
	for j := 1; j <= l.n(); j++ {
		if last := starts[len(starts)-1]; earliest[j] > last {
			starts = append(starts, j-1)
		}
	}
	return starts
}

// witness returns wearers no two of whom share a group for less than worst.
func (l *line) witness(worst gauge.Measurement) []int {
	w := l.ticks(mm(worst))
	z := new(big.Int)
	for i := range l.n() {
		if l.cost(z, i, i+1).Cmp(w) >= 0 {
			return []int{l.first[i]}
		}
	}
	out, start := []int{0}, 0
	for j := 1; j <= l.n(); j++ {
		if l.cost(z, start, j).Cmp(w) >= 0 {
			start = j - 1
			out = append(out, l.first[start])
		}
	}
	return out
}

// best returns the best split into k groups, none of which starts before
// earliest[its end]. There must be one.
func (l *line) best(k int, earliest []int) Split {
	worst := l.worst(k, earliest)
	n, z := l.n(), new(big.Int)
	// Only groups that keep to worst are left.
	allowed, i := make([]int, n+1), 0
	for j := 1; j <= n; j++ {
		for i = max(i, earliest[j]); l.cost(z, i, j).Cmp(worst) > 0; {
			i++
		}
		allowed[j] = i
	}
	t := l.totals(k, allowed)
	s := Split{Ease: l.ease, Wearers: l.wearers, Ties: l.ties(k, allowed)}
	for i, ends := range t.splits(MaxOthers + 1) {
		if i > 0 {
			s.Others = append(s.Others, l.counts(ends))
			continue
		}
		from := 0
		for _, to := range ends {
			p := Part{From: l.first[from], To: l.first[to]}
			p.Finished = l.ease.Finished(l.wearers[p.To-1].High.Measurement())
			p.Least = p.Finished.Sub(l.wearers[p.To-1].High.Measurement())
			p.Most = p.Finished.Sub(l.wearers[p.From].Low.Measurement())
			s.Parts = append(s.Parts, p)
			from = to
		}
	}
	for i, p := range s.Parts {
		if i == 0 || p.Most.Cmp(s.Worst) > 0 {
			s.Worst = p.Most
		}
		for _, w := range s.Wearers[p.From:p.To] {
			s.Total = s.Total.Add(p.Finished.Sub(w.Low.Measurement()))
		}
	}
	return s
}

// counts returns the number of wearers in each group.
func (l *line) counts(ends []int) []int {
	out, from := make([]int, len(ends)), 0
	for g, to := range ends {
		out[g] = l.first[to] - l.first[from]
		from = to
	}
	return out
}

// worst returns the smallest worst ease of a split into k groups. at[j] is that
// of the first j places in g groups; it grows with j, while the cost of the last
// group falls with its start i: the best start is where they meet, and it only
// moves up as j does.
func (l *line) worst(k int, earliest []int) *big.Int {
	n, z := l.n(), new(big.Int)
	at := make([]*big.Int, n+1) // nil where it can't be done
	at[0] = new(big.Int).Neg(new(big.Int).Lsh(big.NewInt(1), 512))
	for g := 1; g <= k; g++ {
		next := make([]*big.Int, n+1)
		i := g - 1
		with := func(i, j int) *big.Int { // of a last group [i, j), or nil
			if at[i] == nil {
				return nil
			}
			if l.cost(z, i, j).Cmp(at[i]) >= 0 {
				return z
			}
			return at[i]
		}
		for j := g; j <= n; j++ {
			i = max(i, earliest[j])
			v := with(i, j)
			if v == nil {
				break // not for any larger j either
			}
			v = new(big.Int).Set(v)
			for i+1 < j {
				w := with(i+1, j)
				if w == nil || w.Cmp(v) > 0 {
					break
				}
				v.Set(w)
				i++
			}
			next[j] = v
		}
		at = next
	}
	return at[n]
}

// ties returns the number of splits into k groups, none of which starts before
// allowed[its end].
func (l *line) ties(k int, allowed []int) int {
	n := l.n()
	before := make([]*big.Int, n+2) // before[j]: ways for fewer than j places, summed
	for j := range before {
		before[j] = big.NewInt(min(int64(j), 1))
	}
	ways := new(big.Int)
	for range k {
		next := make([]*big.Int, n+2)
		next[0], next[1] = new(big.Int), new(big.Int)
		for j := 1; j <= n; j++ {
			ways.Sub(before[j], before[allowed[j]])
			next[j+1] = new(big.Int).Add(next[j], ways)
		}
		before = next
	}
	if !ways.IsInt64() || ways.Int64() > math.MaxInt {
		return math.MaxInt
	}
	return int(ways.Int64())
}

// totals holds the least sum of garments of the places from i on in g groups, where
// it can be done.
type totals struct {
	l     *line
	k     int
	least [][]*big.Int // by g, then i; nil where it can't be done
	reach []int        // by i: the largest end of a group that starts at i
}

// totals fills the table. The total of a group obeys the quadrangle inequality,
// so the first best end only moves up with the start, and each row is filled by
// halving.
func (l *line) totals(k int, allowed []int) totals {
	n := l.n()
	t := totals{l: l, k: k, least: make([][]*big.Int, k+1), reach: make([]int, n)}
	j := 0
	for i := range n {
		for j < n && allowed[j+1] <= i {
			j++
		}
		t.reach[i] = j
	}
	t.least[0] = make([]*big.Int, n+1)
	t.least[0][n] = new(big.Int)
	lo, hi := n, n // the starts from which g-1 groups can reach the end
	z := new(big.Int)
	for g := 1; g <= k; g++ {
		row, rest := make([]*big.Int, n+1), t.least[g-1]
		var fill func(ilo, ihi, jlo, jhi int)
		fill = func(ilo, ihi, jlo, jhi int) {
			if ilo > ihi {
				return
			}
			i := (ilo + ihi) / 2
			best := -1
			for j := max(jlo, i+1); j <= min(jhi, t.reach[i]); j++ {
				l.total(z, i, j).Add(z, rest[j])
				if best < 0 || z.Cmp(row[i]) < 0 {
					best = j
					row[i] = new(big.Int).Set(z)
				}
			}
			fill(ilo, i-1, jlo, best)
			fill(i+1, ihi, best, jhi)
		}
		from := allowed[lo]
		fill(from, n-g, lo, hi)
		lo, hi = from, n-g
		t.least[g] = row
	}
	return t
}

// splits returns the ends of the groups of the best splits, those with the
// narrower groups at the small end first, at most the given number of them.
func (t totals) splits(most int) [][]int {
	var out [][]int
	ends := make([]int, 0, t.k)
	z := new(big.Int)
	var walk func(g, i int)
	walk = func(g, i int) {
		if g == 0 {
			out = append(out, slices.Clone(ends))
			return
		}
		for j := i + 1; j <= t.reach[i] && len(out) < most; j++ {
			rest := t.least[g-1][j]
			if rest == nil || t.l.total(z, i, j).Add(z, rest).Cmp(t.least[g][i]) != 0 {
				continue
			}
			ends = append(ends, j)
			walk(g-1, j)
			ends = ends[:len(ends)-1]
		}
	}
	walk(t.k, 0)
	return out
}
