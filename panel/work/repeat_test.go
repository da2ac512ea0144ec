package work

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/row"
	"github.com/stretchr/testify/require"
)

// keeping returns rows that keep their count more often than not.
func (g *gen) keeping(most int, space int) ([]row.Row, int) {
	var rows []row.Row
	for range g.IntN(most + 1) {
		var text string
		switch {
		case space > 0 && g.IntN(10) > 0:
			text = fmt.Sprintf("hdc in each st and %d hdc in each ch-%d sp across", space, space)
			space = 0
		case g.IntN(3) > 0:
			space = 1 + g.IntN(3)
			text = fmt.Sprintf("dc in first st, *ch %d, sk %d, dc in next %d sts; rep from * across", space, space, 1+g.IntN(3))
			if k := g.IntN(4); k > 0 {
				text = fmt.Sprintf("dc in first st, *ch %d, sk %d, dc in next st; rep from * to last %d sts, dc in last %d sts", space, space, k, k)
			}
		default:
			text = "hdc in each st across"
			if g.IntN(20) == 0 {
				text = "hdc in each st to last st, 2 hdc in last st"
			}
		}
		rows = append(rows, row.Must(text, row.US))
	}
	return rows, space
}

// The counts of a plan are those at which it works by hand with 0 to 4 repeats,
// every row coming back to the count.
func TestSolveRepeatAgainstSimulation(t *testing.T) {
	g := &gen{Rand: rand.New(rand.NewPCG(5, 6))}
	many, none := 0, 0
	for range 1500 {
		opening, space := g.keeping(2, 0)
		opening = append([]row.Row{row.Must("fhdc", row.US)}, opening...)
		repeat, end := g.keeping(4, space)
		closing, _ := g.keeping(2, end)
		sol, err := SolveRepeat(opening, repeat, closing, 0)
		found := 0
		for n := 1; n <= 120; n++ {
			ok := true
			for k := range 5 {
				rows := slices.Clone(opening)
				for range k {
					rows = append(rows, repeat...)
				}
				rows = append(rows, closing...)
				counts, fits := allByHand(rows, n, 0)
				ok = ok && fits && !slices.ContainsFunc(counts, func(c int) bool { return c != n })
			}
			if ok {
				found++
			}
			legal := err == nil && sol.Rule.Legal(n)
			if ok != legal {
				t.Fatalf("%v | %v | %v at %d: by hand %v, solved %v %v", opening, repeat, closing, n, ok, sol.Rule, err)
			}
			if legal && len(repeat) > 0 {
				require.Equal(t, n, sol.Repeat(1+n%7, len(repeat)-1, n).Made.Count())
			}
			if legal && len(closing) > 0 {
				require.Equal(t, n, sol.Closing(n%7, len(closing)-1, n).Made.Count())
			}
		}
		if found > 3 {
			many++
		} else {
			none++
		}
	}
	t.Logf("%d plans with counts, %d with none or few", many, none)
	require.Greater(t, many, 300)
	require.Greater(t, none, 300)
}

func parse(t *testing.T, texts ...string) []row.Row {
	t.Helper()
	var out []row.Row
	for _, s := range texts {
		r, err := row.Parse(s, row.US)
		require.NoError(t, err, "%s", s)
		out = append(out, r)
	}
	return out
}

// Every way in which rows can fail to follow one another, with the amount.
func TestFitErrors(t *testing.T) {
	for name, c := range map[string]struct {
		rows []string
		err  error
		row  int
		text string
	}{
		"short":            {[]string{"fsc 10", "sc in next 11 sts"}, row.ErrShort, 1, "uses 11 of 10, 1 short"},
		"left":             {[]string{"fsc 10", "sc in next 9 sts"}, row.ErrLeft, 1, "uses 9 of 10, 1 left over"},
		"repeat left":      {[]string{"fsc 10", "*sc in next 4 sts; rep from * across"}, row.ErrLeft, 1, "uses 8 of 10, 2 left over (2 short of one more repeat)"},
		"repeat not once":  {[]string{"fsc 3", "*sc in next 4 sts; rep from * across"}, row.ErrShort, 1, "uses 4 of 3, 1 short"},
		"end short":        {[]string{"fsc", "*sc in next st; rep from * to last 2 sts, sc in next 3 sts"}, row.ErrShort, 1, "1 short at the end"},
		"end left":         {[]string{"fsc", "*sc in next st; rep from * to last 4 sts, sc in next 3 sts"}, row.ErrLeft, 1, "1 left over at the end"},
		"wrong number":     {[]string{"fsc", "*sc in next 4 sts; rep from * across", "sc in next 10 sts"}, gauge.ErrNoCount, 2, "uses 10, and the rows before (row 2 first) leave a multiple of 4: no count is both"},
		"chain too short":  {[]string{"ch 2, dc in 4th ch from hook (skipped chs do not count)"}, row.ErrShort, 0, "uses 4 of 2, 2 short"},
		"chain over":       {[]string{"ch 9, dc in 4th ch from hook (skipped chs do not count)"}, row.ErrLeft, 0, "uses 1 of 6, 5 left over"},
		"never a space":    {[]string{"fsc", "sc in each st and in each ch-1 sp across"}, row.ErrNoPlace, 1, "works into each ch-1 sp, and the row before has none"},
		"second beginning": {[]string{"fsc", "fsc"}, row.ErrFoundation, 1, "a foundation row must be the first row and no other"},
		"split":            {[]string{"fsc 9", "sc 3, leave 3 sts unworked, sc 3", "sc in each st across"}, row.ErrSplit, 2, "place 4 lies beyond the stitches left unworked: two live groups, and the row must say which"},
		"rest too short":   {[]string{"fsc 3", "sc 4, leave rem sts unworked"}, row.ErrShort, 1, "uses 4 of 3, 1 short"},
		"rest of lace":     {[]string{"fsc 3", "sc in first st, ch 1, sk 1, sc in last st", "sc 2, leave rem sts unworked"}, row.ErrPlace, 2, "place 2 is a ch-1 sp and the row works a st there: the ch-1 sps would stay unworked; work into them or skip them (sk next ch-1 sp)"},
		"no space there":   {[]string{"fsc 3", "sc in next st, sc in next ch-sp, sc in next st"}, row.ErrPlace, 1, "place 2 is a st and the row works a ch-sp there"},
		"too wide":         {[]string{"fsc 60000", "2 sc in each st across"}, gauge.ErrBounds, 1, "makes more than 100000 stitches"},
		"periods too long": {[]string{"fsc", "*sc in next 97 sts; rep from * across", "*sc in next 101 sts; rep from * across", "*sc in next 103 sts; rep from * across"}, gauge.ErrNoCount, 3, ""},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := Solve(parse(t, c.rows...), 0)
			var f *row.FitError
			require.ErrorAs(t, err, &f)
			require.ErrorIs(t, err, c.err)
			require.Equal(t, c.row, f.Row)
			if c.text != "" {
				require.Equal(t, c.text, f.Cause())
			}
		})
	}
	many := slices.Repeat(parse(t, "sc in next 99999 sts"), 10_000)
	_, err := Solve(append(parse(t, "fsc 99999"), many...), 0)
	require.ErrorContains(t, err, "works more than 1000000 places together with the rows before it")
	require.ErrorIs(t, err, gauge.ErrBounds)
	_, err = Solve(nil, 0)
	require.EqualError(t, err, "rows: got none, want at least one row")
	_, err = Solve([]row.Row{row.Must("fsc", row.US), {}}, 0)
	require.EqualError(t, err, "row 2: Row.Items: got no instruction, want at least one instruction")
	_, err = SolveRepeat(parse(t, "fsc"), parse(t, "sc in each st to last st, 2 sc in last st"), nil, 0)
	require.ErrorIs(t, err, row.ErrCount)
}

// Two progressions meet in the counts that both have.
func TestMeet(t *testing.T) {
	for m1 := 1; m1 <= 6; m1++ {
		for m2 := 0; m2 <= 6; m2++ {
			for n1 := 1; n1 <= 9; n1++ {
				for n2 := 1; n2 <= 9; n2++ {
					x, y := progression(n1, m1), progression(n2, m2)
					both, ok := meet(x, y)
					for n := range 100 {
						if want := x.Legal(n) && y.Legal(n); want != (ok && both.Legal(n)) {
							t.Fatalf("meet(%v, %v) = %v, %v: %d is in both: %v", x, y, both, ok, n, want)
						}
					}
				}
			}
		}
	}
}

// Two rows quarrel where no count is both what one needs and what the other
// makes: closing rows that need different things after 0 and after 1 repeat.
func TestRepeatAndOpeningQuarrel(t *testing.T) {
	_, err := SolveRepeat(parse(t, "fsc", "*sc in next 2 sts; rep from * across"), nil, parse(t, "sc in first st, *sc in next 2 sts; rep from * across"), 0)
	require.ErrorIs(t, err, gauge.ErrNoCount)
	var f *row.FitError
	require.ErrorAs(t, err, &f)
	require.Equal(t, 2, f.Against)
}

// Practice case PC-04 (c), a ripple (neisripplealong.blogspot.com): 195 chains
// are 12·16 + 3 and 63 are 12·5 + 3; three skipped chains count as a dc. The
// published row puts one more dc beside the counted chain; from then on 3, sk 2
// (two dc joined twice), 3, and an increase to 3+ stitches at the peak use and
// make 12, and the last repeat has room for a single chain with 2 dc.
func TestRipple(t *testing.T) {
	ripple := "ch, dc in 4th ch from hook (skipped chs count as dc), *dc in next 3 chs, [dc2tog] 2 times, dc in next 3 chs, [2 dc in next ch] 2 times; rep from * to last 11 chs, dc in next 3 chs, [dc2tog] 2 times, dc in next 3 chs, 2 dc in last ch"
	sol, err := Solve(parse(t, ripple), 0)
	require.NoError(t, err)
	for _, c := range []struct{ chains, stitches int }{{195, 192}, {63, 60}} {
		require.True(t, sol.Rule.Legal(c.stitches))
		require.Equal(t, c.chains, sol.Chains(c.stitches))
		require.Equal(t, c.stitches, sol.Opening(0, c.stitches).Made.Count())
	}
	require.Equal(t, gauge.Rule{Multiple: 12, Plus: 0, Least: 24}, sol.Rule)
	require.Zero(t, sol.Chains(61))
	// with a second increase at the end the last repeat does not fit
	_, err = Solve(parse(t, "ch 195, dc in 4th ch from hook (skipped chs count as dc), *dc in next 3 chs, [dc2tog] 2 times, dc in next 3 chs, [2 dc in next ch] 2 times; rep from * across"), 0)
	require.ErrorIs(t, err, row.ErrLeft)
}

// Practice case PC-10: rows that use more or fewer than there are
// (bellacrochet.blogspot.com), and the knitting twin (astraknots.com).
func TestCountFlow(t *testing.T) {
	first := row.Must("ch 12, dc in 4th ch from hook (skipped chs count as dc), dc in each ch across", row.US)
	w, places, err := Into(first, nil, 0)
	require.NoError(t, err)
	require.Equal(t, 10, w.Made.Stitches)
	_, _, err = Into(row.Must("ch 3 (counts as dc), dc 3, ch 2, sk 3, dc 4", row.US), places.Turned(), 0)
	require.EqualError(t, err, `row 1, "ch 3 (counts as dc), dc in next 3 sts, ch 2, sk 3, dc in nex"… (67 bytes): uses 11 of 10, 1 short`)
	b := row.Must("ch 3 (counts as dc), [sk 1, 3 dc in next st] 4 times", row.US)
	_, _, err = Into(b, places.Turned(), 0)
	require.ErrorContains(t, err, "uses 9 of 10, 1 left over")
	sum, err := SumOf(b, 0)
	require.NoError(t, err)
	require.Equal(t, Sum{Uses: 9, Makes: 13}, sum)
	twin, err := SumOf(row.Must("sc 3, sc2tog, sc 6, sc2tog, sc 1", row.US), 0)
	require.NoError(t, err)
	require.Equal(t, Sum{Uses: 14, Makes: 12}, twin)
}

// Practice case PC-11 (plymouthyarn.com), four sizes: the chain does not count
// at the foundation and counts in the row after.
func TestJacketCorrection(t *testing.T) {
	rows := parse(t,
		"ch 66 (66, 70, 74), hdc in 3rd ch from hook (skipped chs do not count), hdc in each ch across",
		"ch 3 (counts as dc), dc in next 35 (35, 37, 39) sts, hdc in last 28 (28, 30, 32) sts",
		"ch 2 (counts as hdc), hdc in each st across",
	)
	for size, want := range []int{64, 64, 68, 72} {
		sol, err := Solve(rows, size)
		require.NoError(t, err)
		require.Equal(t, want, sol.Rule.Least)
		require.Equal(t, gauge.MaxCount, sol.Rule.Multiple)
		for i := range rows {
			require.Equal(t, want, sol.Opening(i, want).Made.Count())
		}
	}
	// read with one rule, a stitch is missing
	counted := parse(t, "ch 66, hdc in 3rd ch from hook (skipped chs count as hdc), hdc in each ch across", "dc in next 35 sts, hdc in last 28 sts")
	_, err := Solve(counted, 0)
	require.ErrorContains(t, err, "uses 63 of 65, 2 left over")
}

// Worked examples B01, B02, B06, B08, B16, B18 (marygildersleeve.com,
// readknittingpatterns.com, stitchwhisperdesigns.com, ehow.com,
// craftorator.com): a multiple first, then the plus.
func TestMultiples(t *testing.T) {
	for _, c := range []struct {
		row  string
		rule gauge.Rule
		some []int
	}{
		{"*sc in next 3 sts, hdc in next 3 sts; rep from * to last st, sc in last st", gauge.Rule{Multiple: 6, Plus: 1, Least: 7}, []int{31, 43, 49}},
		{"sc in first st, *sc in next 6 sts; rep from * to last st, sc in last st", gauge.Rule{Multiple: 6, Plus: 2, Least: 8}, []int{8, 14, 20, 26, 32}},
		{"sc in first st, *hdc in next 8 sts; rep from * to last st, sc in last st", gauge.Rule{Multiple: 8, Plus: 2, Least: 10}, []int{10, 18, 26, 34, 42, 50}},
		{"*sc in next 4 sts, 2 sc in next st; rep from * to last st, sc in last st", gauge.Rule{Multiple: 5, Plus: 1, Least: 6}, []int{11, 56, 101}},
		{"*dc in next st, ch 1, sk 1; rep from * to last 5 sts, dc in last 5 sts", gauge.Rule{Multiple: 2, Plus: 1, Least: 7}, []int{37, 47}},
		{"*sc in next 6 sts; rep from * to last 3 sts, sc in last 3 sts", gauge.Rule{Multiple: 6, Plus: 3, Least: 9}, []int{129, 147, 165}},
		// PC-12 (rico-design.de): 2, repeats of 6, then 5: all five sizes are 6n + 7
		{"sc in first 2 sts, *ch 1, sk 1, sc in next 5 sts; rep from * to last 5 sts, sc in last 5 sts", gauge.Rule{Multiple: 6, Plus: 1, Least: 13}, []int{73, 79, 85, 91, 103}},
	} {
		sol, err := Solve(parse(t, c.row), 0)
		require.NoError(t, err)
		require.Equal(t, c.rule, sol.Rule, "%s", c.row)
		for _, n := range c.some {
			require.True(t, sol.Rule.Legal(n), "%s: %d", c.row, n)
		}
	}
	// I03 (interweave.com): (k2, p2) to the end is 4n, with 2 more at the end 4n + 2
	for text, plus := range map[string]int{"*sc in next 2 sts, hdc in next 2 sts; rep from * across": 0, "*sc in next 2 sts, hdc in next 2 sts; rep from * to last 2 sts, sc in last 2 sts": 2} {
		sol, err := Solve(parse(t, text), 0)
		require.NoError(t, err)
		require.Equal(t, 4, sol.Rule.Multiple)
		require.Equal(t, plus, sol.Rule.Plus)
	}
	// I05 (zanotowane.pl): "four more times" is five passes
	sum, err := SumOf(row.Must("*sc in next st, ch 1, skip 1; repeat from * four more times", row.US), 0)
	require.NoError(t, err)
	require.Equal(t, 10, sum.Uses)
	// PC-13 (simplycrochetmag.co.uk): 173, 197, 221, 245 chains are all 12n + 5
	for _, n := range []int{173, 197, 221, 245} {
		require.True(t, gauge.Rule{Multiple: 12, Plus: 5}.Legal(n))
		require.True(t, gauge.Rule{Multiple: 4, Plus: 1}.Legal(n))
		require.True(t, gauge.Rule{Multiple: 3, Plus: 2}.Legal(n))
	}
}

// Practice case PC-16 (b) (fiddleheadfibers.com): 92 split as 34, 24, 34; begun
// one stitch early the total is the same and the sides are not.
func TestSplit(t *testing.T) {
	groups := func(text string) []int {
		w, made, err := Into(row.Must(text, row.US), Stitches(92), 0)
		require.NoError(t, err)
		require.Equal(t, 92, w.Uses)
		require.Equal(t, 68, w.Made.Stitches)
		var out []int
		for _, g := range made.Groups() {
			out = append(out, g.Count())
		}
		return out
	}
	require.Equal(t, []int{34, 34}, groups("hdc 34, leave 24 sts unworked, hdc 34"))
	require.Equal(t, []int{33, 35}, groups("hdc 33, leave 24 sts unworked, hdc 35"))
	// (a) (allexperts.com): 31, less 8 to a holder, then 2, 2, 1, 1 at the neck: 17
	places := Stitches(31)
	for _, n := range []int{8, 2, 2, 1, 1} {
		r := row.Row{Items: []row.Item{row.Each{In: []row.Into{{Make: []row.Part{{Of: row.HalfDoubleCrochet}}}}, Last: row.Num{n}}, row.Leave{N: row.Num{n}}}}
		_, made, err := Into(r, places, 0)
		require.NoError(t, err)
		places = made
	}
	require.Equal(t, 17, places.Count())
}

func TestIntoRefuses(t *testing.T) {
	sc := row.Must("sc in each st across", row.US)
	_, _, err := Into(row.Row{}, Stitches(3), 0)
	require.EqualError(t, err, "Row.Items: got no instruction, want at least one instruction")
	_, _, err = Into(sc, Places{-5}, 0)
	require.EqualError(t, err, "Places[0]: got -5, want a stitch, a chain space of known size or a cut")
	_, _, err = Into(sc, Stitches(gauge.MaxCount+1), 0)
	require.ErrorIs(t, err, gauge.ErrBounds)
	_, _, err = Into(row.Must("fsc", row.US), nil, 0)
	require.EqualError(t, err, "Row.Items[0].Count: got no number, want the number of stitches or chains to begin")
	_, _, err = Into(row.Must("ch, sc in 2nd ch from hook", row.US), nil, 0)
	require.EqualError(t, err, "Row.Items[0].Count: got no number, want the number of stitches or chains to begin")
	_, _, err = Into(row.Must("fsc 3", row.US), Stitches(3), 0)
	require.ErrorIs(t, err, row.ErrFoundation)
	_, err = SumOf(row.Row{}, 0)
	require.Error(t, err)
	require.Empty(t, Stitches(-1))
	require.Equal(t, Tally{}, Tally{}.Add(Tally{}))
	require.Zero(t, Tally{}.Of(row.NoStitch))
}

func TestSums(t *testing.T) {
	for text, want := range map[string]string{
		"fsc 12": "uses 0, makes 12",
		"fsc":    "uses 0, makes 0",
		"ch 12, dc in 4th ch from hook (skipped chs count as dc), dc in each ch across":      "uses 4 + 1n, makes 2 + 1n",
		"2 sc in first st, sc in each st and 2 sc in each ch-2 sp to last st, sc in last st": "uses 2, makes 3; for each st uses 1, makes 1; for each ch-2 sp uses 1, makes 2",
		"*(dc, ch 1, dc) in next st, sk 2; rep from * across":                                "uses 3n, makes 3n",
	} {
		s, err := SumOf(row.Must(text, row.US), 0)
		require.NoError(t, err)
		require.Equal(t, want, s.String(), "%s", text)
	}
}

func TestFaces(t *testing.T) {
	faces, err := Faces(parse(t,
		"ch, hdc in 3rd ch from hook (skipped chs do not count), hdc in each ch across",
		"sc in next 3 sts, dc in next 4 sts, leave rem sts unworked",
		"ch 3 (counts as dc), dc in next 3 sts, sc in next 3 sts",
		"sc in next 2 sts, leave 2 sts unworked, (dc, ch 2) in next 3 sts"[:0]+"sc in next 2 sts, leave 2 sts unworked, sc in next 3 sts",
	), 9, 0)
	require.NoError(t, err)
	require.Equal(t, "hdc hdc hdc hdc hdc hdc hdc hdc hdc", faces[0])
	require.Equal(t, faces[1], faces[2], "the same from the other end")
	require.Equal(t, "sc sc sc | sc sc", faces[3])
	_, err = Faces(parse(t, "fsc", "*sc in next 2 sts; rep from * across"), 9, 0)
	require.ErrorIs(t, err, row.ErrLeft)
	_, err = Faces(parse(t, "fsc", "fsc"), 9, 0)
	require.ErrorIs(t, err, row.ErrFoundation)
}

// What is asked beyond a solution is nothing.
func TestBeyondTheSolution(t *testing.T) {
	sol, err := SolveRepeat(parse(t, "fsc"), parse(t, "*sc in next 2 sts; rep from * across"), parse(t, "sc in each st across"), 0)
	require.NoError(t, err)
	require.Equal(t, 2, sol.Rule.Multiple)
	for _, w := range []Worked{sol.Opening(0, 7), sol.Opening(-1, 8), sol.Opening(5, 8), sol.Repeat(0, 0, 8), sol.Closing(-1, 0, 8), sol.Closing(3, 9, 8), new(Solution).Repeat(1, 0, 1), new(Solution).Closing(0, 0, 1)} {
		require.Equal(t, Worked{}, w)
	}
	require.Zero(t, sol.Chains(8))
	require.Equal(t, 8, sol.Repeat(1000, 0, 8).Made.Stitches)
}
