package fit_test

import (
	"encoding/json"
	"fmt"
	"math"
	"math/bits"
	"math/rand/v2"
	"slices"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/fit"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

func wearers(t testing.TB, chart string, m grade.Measure, u gauge.Unit) []fit.Wearer {
	c, err := grade.Standard(chart)
	require.NoError(t, err)
	w, err := fit.Wearers(c, m, u)
	require.NoError(t, err)
	return w
}

// slow is the brute force: every way to cut the line, kept readable. Lengths are
// in nanometres, which hold every length and percentage of these tests.
type slow struct {
	worst, total int64
	ties         int
	best         [][]int // wearers in each group, of the splits that tie in worst and total
}

func nm(m gauge.Measurement) int64 {
	r := m.Times(gauge.Int(1_000_000)).In(gauge.Millimetre).Rat()
	if !r.IsInt() {
		panic("a length of less than a nanometre: " + m.String())
	}
	return r.Num().Int64()
}

// bruteForce tries every split of w (sorted) into k groups in which every group
// passes ok. Those who measure the same stay together.
func bruteForce(w []fit.Wearer, ease grade.Ease, k int, ok func(from, to int) bool) (s slow, found bool) {
	n := len(w)
	low, high, finished := make([]int64, n), make([]int64, n), make([]int64, n)
	for i, x := range w {
		low[i], high[i], finished[i] = nm(x.Low.Measurement()), nm(x.High.Measurement()), nm(ease.Finished(x.High.Measurement()))
	}
	for cuts := uint(0); cuts < 1<<(n-1); cuts++ {
		if bits.OnesCount(cuts) != k-1 {
			continue
		}
		var counts []int
		from, valid := 0, true
		worst, total := int64(math.MinInt64), int64(0)
		for to := 1; to <= n && valid; to++ {
			if to < n && cuts&(1<<(to-1)) == 0 {
				continue
			}
			valid = (to == n || low[to] != low[to-1] || high[to] != high[to-1]) && ok(from, to)
			for i := from; i < to; i++ {
				total += finished[to-1] - low[i]
				worst = max(worst, finished[to-1]-low[i])
			}
			counts = append(counts, to-from)
			from = to
		}
		switch {
		case !valid:
		case !found || worst < s.worst:
			s, found = slow{worst, total, 1, [][]int{counts}}, true
		case worst == s.worst:
			s.ties++
			if total < s.total {
				s.total, s.best = total, nil
			}
			if total == s.total {
				s.best = append(s.best, counts)
			}
		}
	}
	return s, found
}

func requireSame(t *testing.T, want slow, got fit.Split) {
	t.Helper()
	require.Equal(t, want.worst, nm(got.Worst))
	require.Equal(t, want.total, nm(got.Total))
	require.Equal(t, want.ties, got.Ties)
	counts := make([]int, len(got.Parts))
	for i, p := range got.Parts {
		counts[i] = p.To - p.From
	}
	all := append([][]int{counts}, got.Others...)
	if len(want.best) > fit.MaxOthers {
		require.Len(t, got.Others, fit.MaxOthers)
		require.Subset(t, want.best, all)
		return
	}
	require.ElementsMatch(t, want.best, all)
	for _, other := range got.Others {
		require.Negative(t, slices.Compare(counts, other), "the narrower groups at the small end come first")
	}
}

// requireProof checks the witness of Best: any k groups put two of them together.
func requireProof(t *testing.T, s fit.Split, k int) {
	t.Helper()
	cost := func(i, j int) gauge.Measurement {
		return s.Ease.Finished(s.Wearers[j].High.Measurement()).Sub(s.Wearers[i].Low.Measurement())
	}
	if len(s.Witness) == 1 {
		require.GreaterOrEqual(t, cost(s.Witness[0], s.Witness[0]).Cmp(s.Worst), 0)
		return
	}
	require.Greater(t, len(s.Witness), k)
	for i, a := range s.Witness {
		for _, b := range s.Witness[i+1:] {
			require.GreaterOrEqual(t, cost(a, b).Cmp(s.Worst), 0)
		}
	}
}

func anyGroup(int, int) bool { return true }

func distinct(w []fit.Wearer) int {
	n := 1
	for i := 1; i < len(w); i++ {
		if !w[i].Low.Measurement().Equal(w[i-1].Low.Measurement()) || !w[i].High.Measurement().Equal(w[i-1].High.Measurement()) {
			n++
		}
	}
	return n
}

func TestBestEqualsBruteForceOnEveryChart(t *testing.T) {
	for _, chart := range []string{"women", "men", "youth", "child", "baby"} {
		for _, m := range []grade.Measure{grade.Chest, grade.UpperArm, grade.CrossBack, grade.Hip} {
			c, err := grade.Standard(chart)
			require.NoError(t, err)
			w, err := fit.Wearers(c, m, gauge.Inch)
			require.NoError(t, err)
			for k := 1; k <= len(w); k++ {
				for _, ease := range []string{"9 in", "-5%", "-2 in"} {
					got, err := fit.Best(w, grade.MustEase(ease), k)
					require.NoError(t, err)
					want, found := bruteForce(got.Wearers, got.Ease, min(k, distinct(w)), anyGroup)
					require.True(t, found)
					requireSame(t, want, got)
					requireProof(t, got, k)
				}
			}
		}
	}
}

// randomWearers returns up to 12 ranges or bodies, with many that are alike.
func randomWearers(r *rand.Rand) []fit.Wearer {
	w := make([]fit.Wearer, 1+r.IntN(12))
	span := int64(1 + r.IntN(60))
	wide := int64(r.IntN(4))
	places := int32(r.IntN(3))
	for i := range w {
		low := decimal.New(100+r.Int64N(span), -places)
		high := low.Add(decimal.New(wide, -places)) // one width: ranges have an order
		unit := []gauge.Unit{gauge.Inch, gauge.Centimetre}[r.IntN(2)]
		if wide > 0 {
			unit = gauge.Inch
		}
		w[i] = fit.Wearer{Name: fmt.Sprint(i), Low: gauge.Length{Value: low, Unit: unit}, High: gauge.Length{Value: high, Unit: unit}}
	}
	return w
}

func TestBestEqualsBruteForceOnRandomWearers(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 3000 {
		w := randomWearers(r)
		k := 1 + r.IntN(len(w))
		given := slices.Clone(w)
		ease := []string{"3 in", "-7 cm", "12.5%", "-3%", "0 in"}[r.IntN(5)]
		got, err := fit.Best(w, grade.MustEase(ease), k)
		require.NoError(t, err)
		require.Equal(t, given, w, "the argument stays as it was")
		k = min(k, distinct(got.Wearers))
		want, found := bruteForce(got.Wearers, got.Ease, k, anyGroup)
		require.True(t, found)
		requireSame(t, want, got)
		requireProof(t, got, k)
	}
}

func TestFewestEqualsBruteForceOnRandomWearers(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	solved := 0
	for range 3000 {
		w := randomWearers(r)
		win := fit.Window{Least: grade.MustEase([]string{"1 in", "-4%", "0 in"}[r.IntN(3)]), Most: grade.MustEase([]string{"4 in", "8%", "12 cm", "40%"}[r.IntN(4)])}
		got, err := fit.Fewest(w, win)
		if err != nil {
			var se *grade.SizeError
			require.ErrorAs(t, err, &se) // a range too wide for the window
			continue
		}
		solved++
		ok := func(from, to int) bool {
			return win.Least.Finished(got.Wearers[to-1].High.Measurement()).Cmp(win.Most.Finished(got.Wearers[from].Low.Measurement())) <= 0
		}
		k := len(got.Parts)
		for fewer := 1; fewer < k; fewer++ {
			_, found := bruteForce(got.Wearers, win.Least, fewer, ok)
			require.False(t, found, "%d groups do", fewer)
		}
		want, found := bruteForce(got.Wearers, win.Least, k, ok)
		require.True(t, found)
		requireSame(t, want, got)
		require.Len(t, got.Witness, k)
		for i, a := range got.Witness {
			for _, b := range got.Witness[i+1:] {
				require.False(t, ok(a, b+1), "%d and %d share a group", a, b)
			}
		}
		for _, p := range got.Parts {
			for _, x := range got.Wearers[p.From:p.To] {
				for _, finished := range []gauge.Measurement{p.Finished, p.UpTo} {
					require.True(t, win.Holds(x.Low.Measurement(), finished))
					require.True(t, win.Holds(x.High.Measurement(), finished))
				}
			}
		}
	}
	require.Greater(t, solved, 1500)
}

// The women's chart into four: the default is the split whose one wide group is
// the largest, and three others tie.
func TestFourGroupsOfWomen(t *testing.T) {
	s, err := fit.Best(wearers(t, "women", grade.Chest, gauge.Inch), grade.MustEase("9 in"), 4)
	require.NoError(t, err)
	require.Equal(t, [][]string{{"XS", "S"}, {"M", "L"}, {"XL", "2X"}, {"3X", "4X", "5X"}}, s.Lists())
	require.Equal(t, [][]int{{2, 2, 3, 2}, {2, 3, 2, 2}, {3, 2, 2, 2}}, s.Others)
	require.Equal(t, "482.6 mm", s.Worst.String()) // 19 in: 62 + 9 - 52
}

// C01, Patty Lyons: a drop shoulder has 6 to 8 in of ease; C02, Elizabeth Smith
// Knits: 6 to 12 in. With the narrow window every one of the women's nine sizes
// stands alone, since its range is 2 in wide; the wide one takes two together.
func TestDropShoulderEase(t *testing.T) {
	w := wearers(t, "women", grade.Chest, gauge.Inch)
	for _, c := range []struct {
		most   string
		groups int
	}{{"8 in", 9}, {"12 in", 5}, {"16 in", 3}} {
		s, err := fit.Fewest(w, fit.Window{Least: grade.MustEase("6 in"), Most: grade.MustEase(c.most)})
		require.NoError(t, err)
		require.Len(t, s.Parts, c.groups, c.most)
	}
}

func TestAsManyGroupsAsThereCanBe(t *testing.T) {
	s, err := fit.Best(bodies(200), grade.MustEase("9 in"), 64)
	require.NoError(t, err)
	require.Len(t, s.Parts, 64)
	s, err = fit.Best(bodies(5), grade.MustEase("9 in"), 64)
	require.NoError(t, err)
	require.Len(t, s.Parts, 5)
}

func TestFewestOpenAndTight(t *testing.T) {
	w := wearers(t, "women", grade.Chest, gauge.Inch)
	s, err := fit.Fewest(w, fit.Window{Least: grade.MustEase("6 in"), Open: true})
	require.NoError(t, err)
	require.Len(t, s.Parts, 1, "oversized has no upper limit")
	require.Equal(t, s.Parts[0].Finished, s.Parts[0].UpTo)

	_, err = fit.Fewest(w, fit.Window{Least: grade.MustEase("2 in"), Most: grade.MustEase("3 in")})
	require.EqualError(t, err, "size XS: ease: got a range of 28 in to 30 in, want one that a garment fits with 2 in to 3 in")
}

func TestSplitRefuses(t *testing.T) {
	w := wearers(t, "women", grade.Chest, gauge.Inch)
	in := func(s string) gauge.Length { return gauge.MustLength(s) }
	ease := grade.MustEase("9 in")
	best := func(w []fit.Wearer, e grade.Ease, k int) error { _, err := fit.Best(w, e, k); return err }
	fewest := func(w []fit.Wearer, win fit.Window) error { _, err := fit.Fewest(w, win); return err }
	many := make([]fit.Wearer, 65)
	for i := range many {
		many[i] = fit.Bodies(gauge.Length{Value: decimal.NewFromInt(int64(10 + 10*i)), Unit: gauge.Inch})[0]
	}
	for _, c := range []struct {
		err  error
		want string
	}{
		{best(nil, ease, 1), "wearers: got 0, want 1 to 10000"},
		{best(w, ease, 0), "groups: got 0, want 1 to 64"},
		{best(w, ease, 65), "groups: got 65, want 1 to 64"},
		{best(w, grade.Percent(decimal.NewFromInt(-100)), 2), "Ease.Value: got -100%, want above -100% and at most 1000%"},
		{best([]fit.Wearer{{Name: "A", Low: in("3 in"), High: in("2 in")}}, ease, 1), "size A: High: got 2 in, want at least Low, 3 in"},
		{best([]fit.Wearer{{Name: "A", Low: in("0 in"), High: in("2 in")}}, ease, 1), "size A: Low: got 0 in, want more than 0"},
		{best([]fit.Wearer{{Name: "A", High: in("2 in")}}, ease, 1), "size A: Low.Unit: got Unit(0), want mm, cm, m, in, ft or yd"},
		{best([]fit.Wearer{{Name: "A", Low: in("2 in")}}, ease, 1), "size A: High.Unit: got Unit(0), want mm, cm, m, in, ft or yd"},
		{best([]fit.Wearer{{Name: "A", Low: in("30 in"), High: in("40 in")}, {Name: "B", Low: in("32 in"), High: in("34 in")}}, ease, 1),
			"wearers: B (32 in to 34 in) lies inside A (30 in to 40 in): ranges must have an order"},
		{fewest(w, fit.Window{Least: grade.MustEase("4 in"), Most: grade.MustEase("2 in")}), "Window.Most: got 2 in, want at least 4 in"},
		{fewest(nil, fit.Window{}), "wearers: got 0, want 1 to 10000"},
		{fewest(many, fit.Window{}), "groups: got 65, want at most 64"},
	} {
		t.Run(c.want, func(t *testing.T) { require.EqualError(t, c.err, c.want) })
	}
}

func TestChartErrorsReachWearers(t *testing.T) {
	c, err := grade.Standard("child")
	require.NoError(t, err)
	_, err = fit.Wearers(c, grade.UpperArm, gauge.Centimetre)
	require.ErrorIs(t, err, grade.ErrNoCell)
	_, err = fit.Wearers(grade.Chart{}, grade.UpperArm, gauge.Centimetre)
	require.ErrorIs(t, err, gauge.ErrBounds)
}

// bodies returns n bodies between 70 and 160 cm, to the tenth of a millimetre.
func bodies(n int) []fit.Wearer {
	r := rand.New(rand.NewPCG(5, 6))
	l := make([]gauge.Length, n)
	for i := range l {
		l[i] = gauge.Length{Value: decimal.New(70000+r.Int64N(90000), -3), Unit: gauge.Centimetre}
	}
	return fit.Bodies(l...)
}

func TestManyBodies(t *testing.T) {
	s, err := fit.Best(bodies(10_000), grade.MustEase("5%"), 9)
	require.NoError(t, err)
	require.Len(t, s.Parts, 9)
	require.Len(t, s.Worn(), 10_000)
	requireProof(t, s, 9)
	for _, w := range s.Worn() {
		require.LessOrEqual(t, w.AtLow.Cmp(s.Worst), 0)
	}
}

func TestTiesSaturate(t *testing.T) {
	l := make([]gauge.Length, 200)
	for i := range l {
		l[i] = gauge.Length{Value: decimal.NewFromInt(int64(100 + i)), Unit: gauge.Millimetre}
	}
	// One far body fixes the worst; the rest may be cut anywhere.
	w := append(fit.Bodies(l...), fit.Wearer{Name: "wide", Low: gauge.MustLength("400 mm"), High: gauge.MustLength("900 mm")})
	s, err := fit.Best(w, grade.MustEase("0 in"), 40)
	require.NoError(t, err)
	require.Equal(t, int(^uint(0)>>1), s.Ties)
	require.LessOrEqual(t, len(s.Others), fit.MaxOthers)
	require.Equal(t, "wide", s.Wearers[s.Witness[0]].Name)
}

func TestExplain(t *testing.T) {
	w := wearers(t, "women", grade.Chest, gauge.Inch)
	nine, err := fit.Best(w, grade.MustEase("9 in"), 9)
	require.NoError(t, err)
	require.Equal(t, "XS, S, M, L, XL, 2X, 3X, 4X, 5X: the most ease anybody gets is 11 in; XS alone takes that much", nine.Explain(gauge.QuarterInch))
	require.Equal(t, "no split", fit.Split{}.Explain(gauge.QuarterInch))
	one, err := fit.Best(w[:1], grade.MustEase("9 in"), 1)
	require.NoError(t, err)
	require.Equal(t, "XS: the most ease anybody gets is 11 in", one.Explain(gauge.QuarterInch))
}

func BenchmarkBest(b *testing.B) {
	for _, c := range []struct{ bodies, groups int }{{9, 4}, {100, 9}, {10_000, 9}, {10_000, 64}} {
		w := bodies(c.bodies)
		b.Run(fmt.Sprintf("bodies=%d/groups=%d", c.bodies, c.groups), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := fit.Best(w, grade.MustEase("9 in"), c.groups); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkFewest(b *testing.B) {
	w := bodies(10_000)
	win := fit.Window{Least: grade.MustEase("5 cm"), Most: grade.MustEase("15 cm")}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := fit.Fewest(w, win); err != nil {
			b.Fatal(err)
		}
	}
}

// A split from a file may name wearers that are not there: it says what it can.
func TestSplitFromAFile(t *testing.T) {
	for _, part := range []string{`{"from":0,"to":1}`, `{"from":-3,"to":9}`, `{"from":5,"to":2}`, `{"from":2,"to":1}`} {
		var s fit.Split
		require.NoError(t, json.Unmarshal([]byte(`{"parts":[`+part+`],"witness":[101,-1]}`), &s))
		require.Empty(t, s.Worn())
		require.Equal(t, [][]string{nil}, s.Lists())
		require.Equal(t, "nobody: the most ease anybody gets is 0 in", s.Explain(gauge.QuarterInch))
	}
}
