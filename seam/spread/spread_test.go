package spread_test

import (
	"fmt"
	"math/big"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/seam/spread"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

func over(n, span string) gauge.Over {
	return gauge.Over{Count: decimal.RequireFromString(n), Span: gauge.MustLength(span)}
}

func share(t testing.TB, n, d int) gauge.Ratio {
	r, err := gauge.Share(n, d)
	require.NoError(t, err)
	return r
}

// Published rates of stitches to row ends, each with its source.
func TestRatePublished(t *testing.T) {
	for _, c := range []struct {
		source   string
		rows, st gauge.Over
		rate     string
		groups   map[string]string // tolerance: group
	}{
		{"E15: The rule of 3/4, La Purple Penguin, 2021: 21 sts and 28 rows over 10 cm", over("28", "10 cm"), over("21", "10 cm"), "3/4",
			map[string]string{"0": "3 of 4"}},
		{"E16: thread at Men Who Knit: 16 sts and 24 rows over 4 in", over("24", "4 in"), over("16", "4 in"), "2/3",
			map[string]string{"0": "2 of 3"}},
		{"PC-17b: kelbournewoolens.com, 2015: 20 sts and 26 rows over 4 in", over("26", "4 in"), over("20", "4 in"), "10/13",
			map[string]string{"0": "10 of 13", "1/20": "3 of 4", "1/4": "2 of 3", "3/10": "1 of 1"}},
		{"E14: Picking up stitches, Indigirl, 2010: 216 rows, 142 sts wanted", over("216", "1 m"), over("142", "1 m"), "71/108",
			map[string]string{"1/50": "2 of 3", "0": "71 of 108"}},
		{"E22, E23: Crochet Cabana; KnittingHelp forum: 2 sc to a dc row end", over("7", "4 in"), over("14", "4 in"), "2",
			map[string]string{"0": "2 of 1"}},
		{"rows to rows of another gauge", over("26", "4 in"), over("20", "4 in"), "10/13", map[string]string{"0": "10 of 13"}},
		{"spans in different units: 4 in is 10.16 cm", over("26", "4 in"), over("20", "10 cm"), "254/325",
			map[string]string{"1/50": "7 of 9"}},
	} {
		t.Run(c.source, func(t *testing.T) {
			r, err := spread.Rate(c.rows, c.st)
			require.NoError(t, err)
			require.Equal(t, c.rate, r.String())
			for tol, want := range c.groups {
				tolerance, err := gauge.ParseRatio(tol)
				require.NoError(t, err)
				g, err := spread.ShortestGroup(r, tolerance)
				require.NoError(t, err)
				require.Equal(t, want, g.String(), "within %s", tol)
			}
		})
	}
}

// A plain group along an edge, as published: 3 of 4 over 104 rows gives 78
// where 10 of 13 gives 80 (PC-17b); over 216 rows 162 and not 142 (E14).
func TestGroupOff(t *testing.T) {
	off, err := spread.Group{Take: 3, Of: 4}.Off(104, share(t, 10, 13))
	require.NoError(t, err)
	require.Equal(t, "-2", off.String())
	off, err = spread.Group{Take: 3, Of: 4}.Off(216, share(t, 142, 216))
	require.NoError(t, err)
	require.Equal(t, "20", off.String())
	off, err = spread.Group{Take: 3, Of: 4}.Off(6, share(t, 3, 4)) // 3 from 4, then 2 from 2
	require.NoError(t, err)
	require.Equal(t, "1/2", off.String())
	off, err = spread.Group{Take: 3, Of: 2}.Off(5, share(t, 3, 2)) // 6 from 4, 1 from 1
	require.NoError(t, err)
	require.Equal(t, "-1/2", off.String())
}

// PC-17c: forum.knittinghelp.com: 53 stitches along 11 1/2 in are 4.61 to the
// inch, 18.4 to 4 in.
func TestImplied(t *testing.T) {
	edge, inch := gauge.MustLength("11.5 in").Measurement(), gauge.MustLength("1 in").Measurement()
	n, err := spread.Implied(53, edge, inch)
	require.NoError(t, err)
	require.Equal(t, "4.61", n.Text(2))
	n, err = spread.Implied(53, edge, inch.Times(gauge.Int(4)))
	require.NoError(t, err)
	require.Equal(t, "18.4", n.Text(1))
	var f *gauge.FieldError
	_, err = spread.Implied(0, edge, inch)
	require.ErrorAs(t, err, &f)
	_, err = spread.Implied(53, gauge.Measurement{}, inch)
	require.ErrorAs(t, err, &f)
}

func words(gs []spread.Group) string {
	var s []string
	for _, g := range gs {
		s = append(s, g.String())
	}
	return strings.Join(s, "; ")
}

func TestMatchPublished(t *testing.T) {
	for _, c := range []struct {
		source, even, simple string
		m                    spread.Match
	}{
		{"PC-17a: forum.knittinghelp.com, how to knit up: 71 from 88",
			"5 of 6, once; 4 of 5, 4 times; 5 of 6, once; 4 of 5, 5 times; 5 of 6, once; 4 of 5, 5 times",
			"4 of 5, 17 times; 3 of 3, once", spread.Match{From: 88, Take: 71}},
		{"PC-17b: 10 from 13 is (3 of 4) + (3 of 4) + (4 of 5)", "4 of 5, once; 3 of 4, twice", "3 of 4, 3 times; 1 of 1, once", spread.Match{From: 13, Take: 10}},
		{"PC-17b: 20 from 26", "4 of 5, once; 3 of 4, twice; 4 of 5, once; 3 of 4, twice", "3 of 4, 6 times; 2 of 2, once", spread.Match{From: 26, Take: 20}},
		{"E15: 3 of 4", "3 of 4, 7 times", "3 of 4, 7 times", spread.Match{From: 28, Take: 21}},
		{"E16: 80 from 120 is 2 of 3", "2 of 3, 40 times", "2 of 3, 40 times", spread.Match{From: 120, Take: 80}},
		{"E19: one to two rows", "1 of 2, 30 times", "1 of 2, 30 times", spread.Match{From: 60, Take: 30}},
		{"few", "1 of 4, once; 1 of 3, once; 1 of 4, once; 1 of 3, once", "1 of 3, 4 times; 0 of 2, once", spread.Match{From: 14, Take: 4}},
		{"one to one", "9 of 9, once", "9 of 9, once", spread.Match{From: 9, Take: 9}},
	} {
		t.Run(c.source, func(t *testing.T) {
			even, err := c.m.Groups()
			require.NoError(t, err)
			require.Equal(t, strings.ReplaceAll(c.even, "twice", "2 times"), words(even))
			simple, err := c.m.Simple()
			require.NoError(t, err)
			require.Equal(t, c.simple, words(simple))
			for _, gs := range [][]spread.Group{even, simple} {
				take, of := 0, 0
				for _, g := range gs {
					take, of = take+g.Take*g.Times, of+g.Of*g.Times
				}
				require.Equal(t, []int{c.m.Take, c.m.From}, []int{take, of})
			}
		})
	}
}

// gaps returns the distances between the places that hold v.
func gaps(places []int, v int) (least, most int) {
	last := -1
	for i, p := range places {
		if p != v {
			continue
		}
		if last >= 0 {
			d := i - last
			if least == 0 || d < least {
				least = d
			}
			most = max(most, d)
		}
		last = i
	}
	return least, most
}

// Every plan for small counts: the sum is right, the spread is even, and where
// a plan that reads the same from either end exists at all, the mirrored plan
// is one. That it does not exist elsewhere is tried by brute force.
func TestMatchEverySmallPlan(t *testing.T) {
	for from := 1; from <= 48; from++ {
		for take := 1; take <= 3*from; take++ {
			for _, mirrored := range []bool{false, true} {
				m := spread.Match{From: from, Take: take, Mirrored: mirrored}
				places, err := m.Places()
				require.NoError(t, err)
				sum, low, high := 0, places[0], places[0]
				for _, p := range places {
					sum, low, high = sum+p, min(low, p), max(high, p)
				}
				require.Equal(t, take, sum, "%+v", m)
				require.LessOrEqual(t, high-low, 1, "%+v", m)
				for _, v := range []int{low, high} {
					least, most := gaps(places, v)
					require.LessOrEqual(t, most-least, 1, "%+v: places with %d", m, v)
				}
				if mirrored {
					unlike := 0
					for i := range places {
						if places[i] != places[from-1-i] {
							unlike++
						}
					}
					if m.CanMirror() {
						require.Zero(t, unlike, "%+v: %v", m, places)
					} else {
						require.Equal(t, 2, unlike, "%+v: %v", m, places)
					}
				}
			}
		}
	}
	for from := 1; from <= 14; from++ {
		possible := map[int]bool{}
		for mask := range 1 << from {
			n, same := 0, true
			for i := range from {
				n += mask >> i & 1
				same = same && mask>>i&1 == mask>>(from-1-i)&1
			}
			if same {
				possible[n] = true
			}
		}
		for take := 1; take < from; take++ {
			require.Equal(t, possible[take], spread.Match{From: from, Take: take}.CanMirror(), "%d of %d", take, from)
		}
	}
}

// No shorter group lies within the tolerance: brute force over all groups.
func TestShortestGroupBruteForce(t *testing.T) {
	for d := 1; d <= 30; d++ {
		for n := 1; n <= 2*d; n++ {
			for _, tol := range []*big.Rat{big.NewRat(0, 1), big.NewRat(1, 100), big.NewRat(1, 20)} {
				rate := big.NewRat(int64(n), int64(d))
				within := func(of int64) bool {
					for take := int64(1); take <= 3*of; take++ {
						off := new(big.Rat).Sub(big.NewRat(take, of), rate)
						if off.Abs(off).Cmp(new(big.Rat).Mul(tol, rate)) <= 0 {
							return true
						}
					}
					return false
				}
				shortest := int64(1)
				for !within(shortest) {
					shortest++
				}
				tolerance, _ := gauge.ParseRatio(tol.RatString())
				g, err := spread.ShortestGroup(share(t, n, d), tolerance)
				require.NoError(t, err)
				require.Equal(t, shortest, int64(g.Of), "%d/%d within %s", n, d, tol)
			}
		}
	}
}

func TestMatchErrors(t *testing.T) {
	var f *gauge.FieldError
	for name, err := range map[string]error{
		"From: got 0":                       func() error { _, err := spread.Match{Take: 1}.Places(); return err }(),
		"Take: got 0":                       func() error { _, err := spread.Match{From: 1}.Explain(); return err }(),
		"From: got 100001":                  spread.Match{From: 100_001, Take: 1}.Validate(),
		"Take: got 100001":                  spread.Match{From: 1, Take: 100_001}.Validate(),
		"Take: got 5, want at most From, 4": func() error { _, err := spread.Match{From: 4, Take: 5}.Groups(); return err }(),
		"Take: got 6, want at most From, 4": func() error { _, err := spread.Match{From: 4, Take: 6}.Simple(); return err }(),
		"Take: got -1":                      func() error { _, err := spread.Match{From: 4, Take: -1}.Simple(); return err }(),
		"From: got -1":                      func() error { _, err := spread.Match{From: -1, Take: 1}.Groups(); return err }(),
		"rate: got 0":                       func() error { _, err := spread.ShortestGroup(gauge.Int(0), gauge.Int(0)); return err }(),
		"rate: got 1001":                    func() error { _, err := spread.ShortestGroup(gauge.Int(1001), gauge.Int(0)); return err }(),
		"tolerance: got 1,":                 func() error { _, err := spread.ShortestGroup(gauge.Int(1), gauge.Int(1)); return err }(),
		"from.Count: got 0":                 func() error { _, err := spread.Rate(gauge.Over{}, over("1", "1 in")); return err }(),
		"to.Count: got 0":                   func() error { _, err := spread.Rate(over("1", "1 in"), gauge.Over{}); return err }(),
		"edge: got 0":                       func() error { _, err := spread.Group{Take: 1, Of: 1}.Off(0, gauge.Int(1)); return err }(),
		"Group: got 0 of 0":                 func() error { _, err := spread.Group{}.Off(1, gauge.Int(1)); return err }(),
	} {
		require.ErrorContains(t, err, name)
		require.ErrorAs(t, err, &f, name)
	}
	_, err := spread.ShortestGroup(share(t, 1, 1001), gauge.Int(0))
	require.ErrorIs(t, err, spread.ErrNoGroup)
}

func TestMatchExplain(t *testing.T) {
	for want, m := range map[string]spread.Match{
		"9 from 9: one to one":                                                                 {From: 9, Take: 9},
		"18 from 9: 2 into each":                                                               {From: 9, Take: 18},
		"22 from 9: 2 into each, but 3 into numbers 3, 5, 7, 9":                                {From: 9, Take: 22},
		"24 from 9: 3 into each, but 2 into numbers 3, 6, 9":                                   {From: 9, Take: 24},
		"10 from 13: (4 of 5), (3 of 4) twice":                                                 {From: 13, Take: 10},
		"10 from 13: (2 of 3), (3 of 4) twice, (2 of 2)":                                       {From: 13, Take: 10, Mirrored: true},
		"3 from 4: (1 of 2), (2 of 2); the same from either end but for the one in the middle": {From: 4, Take: 3, Mirrored: true},
	} {
		s, err := m.Explain()
		require.NoError(t, err)
		require.Equal(t, want, s)
	}
	for _, m := range []spread.Match{{From: 99_999, Take: 149_000 / 2}, {From: 50_000, Take: 70_001}} {
		s, err := m.Explain()
		require.NoError(t, err)
		require.Less(t, len(s), 1000)
		require.Contains(t, s, "and so on")
	}
}

// Published spacings.
func TestSpacingPublished(t *testing.T) {
	for _, c := range []struct {
		source string
		s      spread.Spacing
		places []int
	}{
		{"E01: Woolpack Yarn, flat", spread.Spacing{Stitches: 51, Changes: 4}, []int{6, 19, 32, 45}},
		{"E01: Woolpack Yarn, in the round", spread.Spacing{Stitches: 51, Changes: 4, Way: spread.InRound}, []int{13, 26, 39, 51}},
		{"E03: Dummies, 5 sections of 8", spread.Spacing{Stitches: 40, Changes: 4, Way: spread.Sections}, []int{8, 16, 24, 32}},
		{"E11: Crochet Kim, 8 sections of 25", spread.Spacing{Stitches: 200, Changes: 8, Way: spread.InRound}, []int{25, 50, 75, 100, 125, 150, 175, 200}},
		{"E11: Crochet Kim, 204: 26 and 25 by turns", spread.Spacing{Stitches: 204, Changes: 8, Way: spread.InRound}, []int{26, 51, 77, 102, 128, 153, 179, 204}},
	} {
		t.Run(c.source, func(t *testing.T) {
			got, err := c.s.Places()
			require.NoError(t, err)
			require.Equal(t, c.places, got)
		})
	}
	t.Run("E02: Woolpack Yarn, 112 sts, 16 increases: every 7", func(t *testing.T) {
		cuts, err := spread.Spacing{Stitches: 112, Changes: 16}.Intervals()
		require.NoError(t, err)
		require.Equal(t, []int{3, 7, 7, 7, 7, 7, 7, 7, 8, 7, 7, 7, 7, 7, 7, 7, 3}, cuts, "3½ at either end, in whole stitches")
	})
	t.Run("E05: Paper Moon Knits, 190 to 249: every 3rd 46 times, every 4th 13 times", func(t *testing.T) {
		s := spread.Spacing{Stitches: 190, Changes: 59, Way: spread.InRound}
		require.Equal(t, 249, s.After())
		require.Equal(t, map[int]int{3: 46, 4: 13, 0: 1}, tally(t, s))
	})
	t.Run("E08: Spincraft, 131 to 92, as corrected: 14 units of 4 and 25 of 3", func(t *testing.T) {
		s := spread.Spacing{Stitches: 131, Changes: 39, Decrease: true, Way: spread.InRound}
		require.Equal(t, 92, s.After())
		require.Equal(t, map[int]int{4: 14, 3: 25, 0: 1}, tally(t, s))
	})
	t.Run("E09: amandakeep, 2012, 74 to 44: 30 decreases, 14 plain stitches beside them", func(t *testing.T) {
		s := spread.Spacing{Stitches: 74, Changes: 30, Decrease: true}
		require.Equal(t, 44, s.After())
		cuts, err := s.Intervals()
		require.NoError(t, err)
		plain := cuts[30]
		for _, c := range cuts[:30] {
			plain += c - 2
		}
		require.Equal(t, 14, plain)
	})
}

func tally(t *testing.T, s spread.Spacing) map[int]int {
	cuts, err := s.Intervals()
	require.NoError(t, err)
	m := map[int]int{}
	for _, c := range cuts {
		m[c]++
	}
	return m
}

func TestSpacingEverySmallPlan(t *testing.T) {
	for n := 1; n <= 60; n++ {
		for k := 1; k <= n; k++ {
			for _, way := range []spread.Way{spread.HalfEnds, spread.Sections, spread.InRound} {
				for _, dec := range []bool{false, true} {
					s := spread.Spacing{Stitches: n, Changes: k, Decrease: dec, Way: way}
					cuts, err := s.Intervals()
					if err != nil {
						require.ErrorContains(t, err, "Changes: got ")
						continue
					}
					sum, low, high := 0, n, 0
					for i, c := range cuts {
						sum += c
						if i > 0 && i < k || way == spread.Sections && !dec {
							low, high = min(low, c), max(high, c)
						}
						if dec && i < k {
							require.GreaterOrEqual(t, c, 2, "%+v: %v", s, cuts)
						}
					}
					require.Equal(t, n, sum, "%+v", s)
					require.Len(t, cuts, k+1)
					require.True(t, k == 1 || high-low <= 1, "%+v: %v", s, cuts)
					if way == spread.InRound {
						require.Zero(t, cuts[k])
						continue
					}
					ends := cuts[k] - cuts[0]
					if dec {
						ends = cuts[k] - (cuts[0] - 2)
					}
					if way == spread.HalfEnds || dec {
						require.LessOrEqual(t, max(ends, -ends), 1, "%+v: %v", s, cuts)
					}
				}
			}
		}
	}
}

func TestSpacingErrors(t *testing.T) {
	for want, s := range map[string]spread.Spacing{
		"Stitches: got 0":      {Changes: 1},
		"Stitches: got 100001": {Stitches: 100_001, Changes: 1},
		"Changes: got 0":       {Stitches: 10},
		"Changes: got 11, want one to a stitch, at most 10":                                  {Stitches: 10, Changes: 11},
		"Changes: got 10, want one section more than changes, at most 9":                     {Stitches: 10, Changes: 10, Way: spread.Sections},
		"Changes: got 6, want two stitches to each, at most 5":                               {Stitches: 10, Changes: 6, Decrease: true},
		"Changes: got 5, want two stitches to each section, at most 4":                       {Stitches: 10, Changes: 5, Decrease: true, Way: spread.Sections},
		"Way: got Way(3), want half intervals at the ends, one section more or in the round": {Stitches: 10, Changes: 1, Way: 3},
	} {
		_, err := s.Places()
		require.ErrorContains(t, err, want)
		text, err := s.Explain()
		require.ErrorContains(t, err, want)
		require.Empty(t, text)
	}
}

func TestSpacingExplain(t *testing.T) {
	for want, s := range map[string]spread.Spacing{
		"increase 4 in 51 sts: (6, inc), (13, inc) 3 times, 6; 55 sts":                    {Stitches: 51, Changes: 4},
		"decrease 4 in 20 sts: (1, 2 tog), (3, 2 tog), (4, 2 tog), (3, 2 tog), 1; 16 sts": {Stitches: 20, Changes: 4, Decrease: true},
		"decrease 5 in 10 sts: (2 tog) 5 times; 5 sts":                                    {Stitches: 10, Changes: 5, Decrease: true},
		"increase 2 in 12 sts: (4, inc) twice, 4; 14 sts":                                 {Stitches: 12, Changes: 2, Way: spread.Sections},
	} {
		got, err := s.Explain()
		require.NoError(t, err)
		require.Equal(t, want, got)
	}
	got, err := spread.Spacing{Stitches: 100_000, Changes: 37_777}.Explain()
	require.NoError(t, err)
	require.Less(t, len(got), 1500)
	require.Contains(t, got, "and so on")
}

func ExampleRate() {
	// Row ends of a panel at 26 rows over 4 in, a border at 20 stitches over 4 in.
	r, _ := spread.Rate(over("26", "4 in"), over("20", "4 in"))
	fmt.Println(r, "of a stitch to a row end")
	// Output: 10/13 of a stitch to a row end
}

func ExampleImplied() {
	n, _ := spread.Implied(53, gauge.MustLength("11.5 in").Measurement(), gauge.MustLength("4 in").Measurement())
	fmt.Println("about", n.Text(1), "to 4 in")
	// Output: about 18.4 to 4 in
}

func ExampleShortestGroup() {
	r, _ := spread.Rate(over("26", "4 in"), over("20", "4 in"))
	for _, percent := range []int{0, 1, 3} {
		tolerance, _ := gauge.Share(percent, 100)
		g, _ := spread.ShortestGroup(r, tolerance)
		off, _ := g.Off(104, r)
		fmt.Printf("within %d %%: %v; over 104 rows it is off by %v\n", percent, g, off)
	}
	// Output:
	// within 0 %: 10 of 13; over 104 rows it is off by 0
	// within 1 %: 10 of 13; over 104 rows it is off by 0
	// within 3 %: 3 of 4; over 104 rows it is off by -2
}

func ExampleGroup_Off() {
	tenOf13, _ := gauge.Share(10, 13)
	off, _ := spread.Group{Take: 3, Of: 4}.Off(104, tenOf13)
	fmt.Println(off)
	// Output: -2
}

func ExampleGroup_String() {
	fmt.Println(spread.Group{Take: 4, Of: 5, Times: 17})
	// Output: 4 of 5, 17 times
}

func ExampleMatch() {
	for _, mirrored := range []bool{false, true} {
		m := spread.Match{From: 26, Take: 20, Mirrored: mirrored}
		s, _ := m.Explain()
		fmt.Println(s)
	}
	// Output:
	// 20 from 26: (4 of 5), (3 of 4) twice, (4 of 5), (3 of 4) twice
	// 20 from 26: (2 of 3), (3 of 4) twice, (4 of 5), (3 of 4) twice, (2 of 2)
}

func ExampleMatch_Explain() {
	s, _ := spread.Match{From: 9, Take: 22}.Explain()
	fmt.Println(s)
	s, _ = spread.Match{From: 88, Take: 71}.Explain()
	fmt.Println(s)
	// Output:
	// 22 from 9: 2 into each, but 3 into numbers 3, 5, 7, 9
	// 71 from 88: (5 of 6), (4 of 5) 4 times, (5 of 6), (4 of 5) 5 times, (5 of 6), (4 of 5) 5 times
}

func ExampleMatch_Places() {
	p, _ := spread.Match{From: 13, Take: 10}.Places()
	fmt.Println(p)
	// Output: [1 1 1 1 0 1 1 1 0 1 1 1 0]
}

func ExampleMatch_Groups() {
	g, _ := spread.Match{From: 13, Take: 10}.Groups()
	fmt.Println(g)
	// Output: [4 of 5, once 3 of 4, 2 times]
}

func ExampleMatch_Simple() {
	g, _ := spread.Match{From: 88, Take: 71}.Simple()
	fmt.Println(g)
	// Output: [4 of 5, 17 times 3 of 3, once]
}

func ExampleMatch_CanMirror() {
	fmt.Println(spread.Match{From: 88, Take: 71}.CanMirror(), spread.Match{From: 87, Take: 71}.CanMirror())
	// Output: false true
}

func ExampleMatch_Validate() {
	fmt.Println(spread.Match{From: 88}.Validate())
	// Output: Take: got 0, want 1 to 100000
}

// The two published ways give different places for the same request.
func ExampleSpacing() {
	for _, way := range []spread.Way{spread.HalfEnds, spread.Sections, spread.InRound} {
		at, _ := spread.Spacing{Stitches: 51, Changes: 4, Way: way}.Places()
		fmt.Println(way, at)
	}
	// Output:
	// half intervals at the ends [6 19 32 45]
	// one section more [10 20 31 41]
	// in the round [13 26 39 51]
}

func ExampleSpacing_After() {
	fmt.Println(spread.Spacing{Stitches: 131, Changes: 39, Decrease: true}.After())
	// Output: 92
}

func ExampleSpacing_Intervals() {
	cuts, _ := spread.Spacing{Stitches: 51, Changes: 4}.Intervals()
	fmt.Println(cuts)
	// Output: [6 13 13 13 6]
}

func ExampleSpacing_Places() {
	at, _ := spread.Spacing{Stitches: 40, Changes: 4, Way: spread.Sections}.Places()
	fmt.Println(at)
	// Output: [8 16 24 32]
}

func ExampleSpacing_Explain() {
	for _, way := range []spread.Way{spread.HalfEnds, spread.Sections, spread.InRound} {
		s, _ := spread.Spacing{Stitches: 51, Changes: 12, Decrease: true, Way: way}.Explain()
		fmt.Println(s)
	}
	// Output:
	// decrease 12 in 51 sts: (1, 2 tog), (2, 2 tog), (3, 2 tog), (2, 2 tog) 3 times, (3, 2 tog), (2, 2 tog) 3 times, (3, 2 tog), (2, 2 tog), 1; 39 sts
	// decrease 12 in 51 sts: (3, 2 tog), (2, 2 tog) 5 times, (1, 2 tog), (2, 2 tog) 5 times, 3; 39 sts
	// decrease 12 in 51 sts: (3, 2 tog), (2, 2 tog) 3 times, (3, 2 tog), (2, 2 tog) 3 times, (3, 2 tog), (2, 2 tog) 3 times; 39 sts
}

func ExampleSpacing_Validate() {
	fmt.Println(spread.Spacing{Stitches: 10, Changes: 6, Decrease: true}.Validate())
	// Output: Changes: got 6, want two stitches to each, at most 5
}

func ExampleWay_String() {
	fmt.Println(spread.Sections)
	// Output: one section more
}

func ExampleWay_MarshalText() {
	b, _ := spread.InRound.MarshalText()
	fmt.Println(string(b))
	// Output: in the round
}

func ExampleWay_UnmarshalText() {
	var w spread.Way
	fmt.Println(w.UnmarshalText([]byte("one section more")), w)
	fmt.Println(w.UnmarshalText([]byte("by eye")))
	// Output:
	// <nil> one section more
	// parse way: "by eye": unknown way; want half intervals at the ends, one section more or in the round
}

func BenchmarkMatch(b *testing.B) {
	for _, m := range []spread.Match{{From: 88, Take: 71}, {From: 88, Take: 71, Mirrored: true}, {From: 100_000, Take: 76_923}} {
		b.Run(fmt.Sprintf("%d/%d/%v", m.Take, m.From, m.Mirrored), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := m.Groups(); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func TestCanMirrorOfNoPlan(t *testing.T) {
	for _, m := range []spread.Match{{}, {Take: 4}, {From: 4}, {From: -3, Take: -2}} {
		require.False(t, m.CanMirror())
	}
}

func TestSpacingSaysOneStitch(t *testing.T) {
	s, err := spread.Spacing{Stitches: 2, Changes: 1, Decrease: true}.Explain()
	require.NoError(t, err)
	require.Contains(t, s, "decrease 1 in 2 sts: ")
	require.Contains(t, s, "; 1 st")
	require.NotContains(t, s, "1 sts")
}
