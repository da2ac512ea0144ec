package panel

import (
	"encoding/json"
	"errors"
	"math/big"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/panel/work"
	"github.com/stretchr/testify/require"
)

func in(s string) gauge.Measurement { return gauge.MustLength(s).Measurement() }

// Whole documents, kept in testdata; run with UPDATE=1 to write them anew.
func TestWriteGolden(t *testing.T) {
	chain := Plan{
		Opening: rows("ch, hdc in 3rd ch from hook (skipped chs do not count), hdc in each ch across", plain),
		Repeat:  rows("ch 4 (counts as dc, ch 1), sk 1, *dc in next st, ch 1, sk 1; rep from * to last st, dc in last st", "sc in each st and in each ch-1 sp across"),
		Closing: rows(plain, plain),
	}
	for name, c := range map[string]struct {
		plan Plan
		w    Writing
	}{
		"orchard":           {orchard(), Writing{Stitches: grade.Run[int]{163, 166, 169, 172}, Repeats: grade.Run[int]{4, 4, 5, 7}}},
		"orchard-uk":        {orchard(), Writing{Terms: row.UK, Stitches: grade.Run[int]{163, 166, 169, 172}, Repeats: grade.Run[int]{4, 4, 5, 7}}},
		"one-size":          {orchard(), Writing{Stitches: grade.Run[int]{163}, Repeats: grade.Run[int]{2}}},
		"no-repeat":         {orchard(), Writing{Stitches: grade.Run[int]{163}, Repeats: grade.Run[int]{0}}},
		"some-skip":         {orchard(), Writing{Stitches: grade.Run[int]{100, 103, 106}, Repeats: grade.Run[int]{0, 1, 2}, FirstSide: WrongSide}},
		"foundation-chain":  {chain, Writing{Stitches: grade.Run[int]{65, 69, 73, 77, 81, 85, 89, 93, 97}, Repeats: grade.Run[int]{3, 3, 4, 4, 5, 5, 6, 6, 7}}},
		"same-in-all-sizes": {chain, Writing{Stitches: grade.Run[int]{65, 65}, Repeats: grade.Run[int]{2, 2}}},
	} {
		t.Run(name, func(t *testing.T) {
			got, err := c.plan.Write(c.w)
			require.NoError(t, err)
			path := filepath.Join("testdata", name+".txt")
			if os.Getenv("UPDATE") != "" {
				require.NoError(t, os.MkdirAll("testdata", 0o777))
				require.NoError(t, os.WriteFile(path, []byte(got.String()), 0o666))
			}
			want, err := os.ReadFile(path)
			require.NoError(t, err)
			require.Equal(t, string(want), got.String())
			for _, a := range got.Abbreviations() {
				require.Contains(t, strings.ToLower(got.String()), strings.ToLower(strings.TrimSuffix(a.Abbr, " sp")))
			}
		})
	}
}

func TestWriteRefuses(t *testing.T) {
	sized := Plan{Opening: rows("fsc 20 (24, 28)")}
	for name, c := range map[string]struct {
		plan Plan
		w    Writing
		want string
	}{
		"no sizes":          {orchard(), Writing{}, "Writing.Stitches.values: got 0, want 1"},
		"other lengths":     {orchard(), Writing{Stitches: grade.Run[int]{100, 103}, Repeats: grade.Run[int]{1, 2, 3}}, "Writing.Stitches.values: got 2, want 1 or 3"},
		"repeats missing":   {orchard(), Writing{Stitches: grade.Run[int]{100, 103}}, "Writing.Repeats.values: got 0, want 1 or 2"},
		"less than nothing": {orchard(), Writing{Stitches: grade.Run[int]{100}, Repeats: grade.Run[int]{-1}}, "Writing.Repeats[0]: got -1, want 0 or more, and at most 100000 rows in all"},
		"too many":          {orchard(), Writing{Stitches: grade.Run[int]{100}, Repeats: grade.Run[int]{20_000}}, "Writing.Repeats[0]: got 20000, want 0 or more, and at most 100000 rows in all"},
		"no repeat":         {Plan{Opening: rows("fsc")}, Writing{Stitches: grade.Run[int]{9}, Repeats: grade.Run[int]{2}}, "Writing.Repeats[0]: got 2, want 0, since the plan has no repeat"},
		"not legal":         {orchard(), Writing{Stitches: grade.Run[int]{100, 101}, Repeats: grade.Run[int]{1}}, "size 2: got 101 sts, want a multiple of 3 + 1, at least 4"},
		"one count only":    {Plan{Opening: rows("fsc 20")}, Writing{Stitches: grade.Run[int]{21}, Repeats: grade.Run[int]{0}}, "size 1: got 21 sts, want 20"},
		"any count":         {Plan{Opening: rows("fsc")}, Writing{Stitches: grade.Run[int]{0}, Repeats: grade.Run[int]{0}}, "size 1: got 0 sts, want at least 1"},
		"even counts":       {Plan{Opening: rows("fsc", "*sc in next 2 sts; rep from * across")}, Writing{Stitches: grade.Run[int]{7}, Repeats: grade.Run[int]{0}}, "size 1: got 7 sts, want an even, at least 2"},
		"terms":             {orchard(), Writing{Terms: 5, Stitches: grade.Run[int]{100}, Repeats: grade.Run[int]{1}}, "Writing.Terms: got Terms(5), want US or UK"},
		"side":              {orchard(), Writing{FirstSide: 5, Stitches: grade.Run[int]{100}, Repeats: grade.Run[int]{1}}, "Writing.FirstSide: got Side(5), want RightSide or WrongSide"},
		"sizes of the rows": {sized, Writing{Stitches: grade.Run[int]{20, 24, 28, 30}, Repeats: grade.Run[int]{0}}, "Writing.Stitches: got 4 sizes, want 3 sizes, as the rows list"},
		"bad plan":          {Plan{Opening: rows("fsc", fill)}, Writing{Stitches: grade.Run[int]{20}, Repeats: grade.Run[int]{0}}, `opening[1] "hdc in each st and 2 hdc in each ch-2 sp across": works into each ch-2 sp, and the row before has none`},
	} {
		t.Run(name, func(t *testing.T) {
			got, err := c.plan.Write(c.w)
			require.EqualError(t, err, c.want)
			require.Empty(t, got.Lines)
		})
	}
	// a repeat that every size works once needs no line to repeat it
	once, err := orchard().Write(Writing{Stitches: grade.Run[int]{100, 103}, Repeats: grade.Run[int]{1}})
	require.NoError(t, err)
	require.NotContains(t, once.String(), "Rep ")
	require.Equal(t, WrongSide, RightSide.Turned(-3))
	// rows with lists of sizes are written as they stand
	got, err := sized.Write(Writing{Stitches: grade.Run[int]{20, 24, 28}, Repeats: grade.Run[int]{0}})
	require.NoError(t, err)
	require.Equal(t, "Row 1 (RS): fsc 20 (24, 28). — 20 (24, 28) sts", got.Lines[0].String())
	require.Equal(t, "Terms(5)", row.Terms(5).String())
	require.Equal(t, "RowStart(9)", RowStart(9).String())
	_, err = RowStart(9).MarshalText()
	require.Error(t, err)
	_, err = Side(9).MarshalText()
	require.EqualError(t, err, "Side: got Side(9), want RS or WS")
	var s RowStart
	require.Error(t, s.UnmarshalText([]byte("x")))
}

// The counts of Steps are those of the rows worked one by one.
func TestStepsAgainstWork(t *testing.T) {
	for _, k := range []int{0, 1, 2, 5} {
		steps, err := orchard().Steps(22, k)
		require.NoError(t, err)
		require.Len(t, steps, orchard().Rows(k))
		var places work.Places
		var sum work.Tally
		for i, r := range orchard().sequence(k) {
			if i == 0 {
				r = r.WithCount(row.Num{22})
			}
			w, made, err := work.Into(r, places, 0)
			require.NoError(t, err)
			require.Equal(t, w.Made, steps[i].Made, "row %d", i+1)
			require.Equal(t, len(places), steps[i].Uses)
			at, ok := orchard().At(k, i+1)
			require.True(t, ok)
			require.Equal(t, at.Part, steps[i].Part)
			require.Equal(t, at.Index, steps[i].Index)
			require.Equal(t, at.Pass, steps[i].Pass)
			require.Equal(t, at.Side, steps[i].Side)
			places = made.Turned()
			sum = sum.Add(w.Made)
		}
		got, err := orchard().Tally(22, k)
		require.NoError(t, err)
		require.Equal(t, sum, got)
	}
	_, err := orchard().Steps(23, 1)
	require.EqualError(t, err, "size 1: got 23 sts, want a multiple of 3 + 1, at least 4")
	_, err = orchard().Tally(22, -1)
	require.EqualError(t, err, "repeats: got -1, want 0 or more, and at most 100000 rows in all")
	_, err = Plan{}.Steps(1, 0)
	require.EqualError(t, err, "Plan.Opening: got no rows, want a foundation row to begin with")
}

// Rows are the whole numbers of repeats nearest to the width, ties up: held
// against math/big for widths all around the ties.
func TestFitAgainstBig(t *testing.T) {
	g := gauge.MustGauge("13 sts and 9 rows = 4 in")
	for _, p := range []Plan{orchard(), {Opening: rows("fsc"), Repeat: rows(plain, plain)}, {Opening: rows("fsc", plain), Repeat: rows(plain), Closing: rows(plain, plain)}} {
		for eighths := range 400 {
			width := gauge.MeasurementOf(ratio(t, eighths, 8), gauge.Inch)
			c, k, err := p.Fit(width, g.Rows)
			require.NoError(t, err)
			exact := big.NewRat(int64(eighths*9), 32)
			best := 0
			for try := range 200 {
				if off(p.Rows(try), exact).Cmp(off(p.Rows(best), exact)) <= 0 {
					best = try
				}
			}
			require.Equal(t, best, k, "%d/8 in", eighths)
			require.Equal(t, p.Rows(best), c.Value)
		}
	}
}

func ratio(t *testing.T, n, d int) gauge.Ratio {
	r, err := gauge.Share(n, d)
	require.NoError(t, err)
	return r
}

func off(rows int, exact *big.Rat) *big.Rat {
	d := new(big.Rat).Sub(big.NewRat(int64(rows), 1), exact)
	return d.Abs(d)
}

func TestFitRefuses(t *testing.T) {
	g := gauge.MustGauge("13 sts and 9 rows = 4 in")
	_, _, err := Plan{}.Fit(in("1 in"), g.Rows)
	require.EqualError(t, err, "Plan.Opening: got no rows, want a foundation row to begin with")
	_, _, err = orchard().Fit(in("1 in"), gauge.Over{})
	require.Error(t, err)
	_, _, err = orchard().Fit(in("100 m"), gauge.MustGauge("1 st and 1000 rows = 1 cm").Rows)
	require.ErrorIs(t, err, gauge.ErrBounds)
	once := Plan{Opening: rows("fsc", plain, plain)}
	c, k, err := once.Fit(in("10 in"), g.Rows)
	require.NoError(t, err)
	require.Equal(t, 3, c.Value)
	require.Zero(t, k)
	require.Equal(t, gauge.Rule{Multiple: gauge.MaxCount, Plus: 3, Least: 3}, c.Rule)
	_, err = orchard().Panel(in("50 in"), in("10 in"), gauge.Gauge{})
	require.Error(t, err)
	_, err = Plan{}.Panel(in("50 in"), in("10 in"), g)
	require.Error(t, err)
	_, err = orchard().Panel(in("100 m"), in("10 in"), gauge.MustGauge("200 sts and 1 row = 1 mm"))
	require.ErrorIs(t, err, gauge.ErrBounds)
	_, err = orchard().Panel(in("1 m"), in("100 m"), gauge.MustGauge("1 st and 2000 rows = 1 cm"))
	require.ErrorIs(t, err, gauge.ErrBounds)
}

// Practice case PC-19 (goldenapple.info): a repeat of 32 rows, 28 of them done,
// taken as 4.3 in; 14 in of pattern and a hem of 10 rows. 14/4.3 = 3.26: three
// repeats, 12.9 in. At 4.57 in the repeat, three are 13.7 in. Still to do: 4 + 64
// + 10 = 78 rows (the maker wrote 72).
func TestWholeRepeats(t *testing.T) {
	p := Plan{Opening: rows("fsc"), Repeat: slices.Repeat(rows(plain), 32), Closing: slices.Repeat(rows(plain), 9)}
	for _, c := range []struct {
		repeat gauge.Measurement
		done   string
	}{
		{in("4.3 in"), "12.9"},
		{gauge.MeasurementOf(ratio(t, 32*4, 28), gauge.Inch), "13.7"},
	} {
		count, err := p.FitHeight(in("14 in"), Height{Repeat: c.repeat})
		require.NoError(t, err)
		require.Equal(t, 3, count.Value)
		require.Equal(t, 4, count.Above)
		require.Equal(t, c.done, Height{Repeat: c.repeat}.Of(3).In(gauge.Inch).Text(1))
	}
	require.Equal(t, 4+64+9, p.Left(3, 1+28), "the tenth row of the hem is the foundation row at the other edge")
	require.Equal(t, 78, p.Left(3, 28))
	require.Zero(t, p.Left(3, 1000))
	require.Equal(t, p.Rows(3), p.Left(3, -5))

	for name, f := range map[string]func() error{
		"Plan.Opening: got no rows, want a foundation row to begin with": func() error { _, err := Plan{}.FitHeight(in("1 in"), Height{}); return err },
		"Height.Once: got -25.4 mm, want 0 or more":                      func() error { _, err := p.FitHeight(in("1 in"), Height{Once: in("-1 in")}); return err },
		"Height.Repeat: got 0 mm, want more than 0":                      func() error { _, err := p.FitHeight(in("1 in"), Height{}); return err },
		"rows: got 640010, want at most 100000":                          func() error { _, err := p.FitHeight(in("10 m"), Height{Repeat: in("0.5 mm")}); return err },
		"heights[0]: got 0 mm, want more than 0":                         func() error { _, err := p.Heights(StitchHeight{Stitch: row.SingleCrochet}); return err },
	} {
		require.EqualError(t, f(), name)
	}
	_, err := p.FitHeight(in("100 m"), Height{Repeat: in("0.0005 mm")})
	require.ErrorIs(t, err, gauge.ErrBounds)
	c, err := Plan{Opening: rows("fsc")}.FitHeight(in("1 in"), Height{})
	require.NoError(t, err)
	require.Zero(t, c.Value)
}

// Worked example A10 (angelhugs.ca): 45 in at 6 rows/in, ending on a full repeat:
// 270 rows are 45 repeats of 6 or, in repeats of 8, 272. B11 (Vogel, 2007): 161
// rows go to 160, an even number.
func TestFullRepeats(t *testing.T) {
	six := gauge.MustGauge("4.5 sts and 6 rows = 1 in")
	p := Plan{Opening: rows("fsc", plain, plain, plain, plain, plain), Repeat: slices.Repeat(rows(plain), 6)}
	c, _, err := p.Fit(in("45 in"), six.Rows)
	require.NoError(t, err)
	require.Equal(t, 270, c.Value)
	p = Plan{Opening: slices.Concat(rows("fsc"), slices.Repeat(rows(plain), 7)), Repeat: slices.Repeat(rows(plain), 8)}
	c, _, err = p.Fit(in("45 in"), six.Rows)
	require.NoError(t, err)
	require.Equal(t, 272, c.Value)
	p = Plan{Opening: rows("fsc", plain), Repeat: rows(plain, plain)}
	c, _, err = p.Fit(in("22.9 in"), gauge.MustGauge("4.5 sts and 7 rows = 1 in").Rows)
	require.NoError(t, err)
	require.Equal(t, 160, c.Value)
}

// Worked example B09 (bananamoonstudio.blogspot.com): where all sizes have even
// rows, or all odd, each ends on the same side and one sentence serves them all.
func TestSidesOfSizes(t *testing.T) {
	even := Plan{Opening: rows("fsc", plain), Repeat: rows(plain, plain), Closing: nil}
	for k := range 6 {
		require.Equal(t, WrongSide, even.End(k).Side)
	}
	require.Equal(t, []Side{WrongSide, RightSide, WrongSide}, []Side{orchard().End(3).Side, orchard().End(4).Side, orchard().End(5).Side})
	require.Equal(t, Step{}, Plan{}.End(0))
}

// A mirrored plan has the same faces from either edge; the closing that Mirror
// finds is the shortest with that property.
func TestMirror(t *testing.T) {
	mesh := "dc in first st, *ch 1, sk 1, dc in next st; rep from * across"
	into := "hdc in each st and in each ch-1 sp across"
	for name, c := range map[string]struct {
		plan    Plan
		closing []row.Row
		ok      bool
	}{
		"orchard":            {orchard(), rows(plain), true},
		"plain":              {Plan{Opening: rows("fhdc"), Repeat: rows(plain)}, nil, true},
		"bands":              {Plan{Opening: rows("fsc", "sc in each st across"), Repeat: rows("sc in each st across", "dc in each st across")}, rows("sc in each st across", "sc in each st across", "sc in each st across"), true},
		"mesh":               {Plan{Opening: rows("fhdc"), Repeat: rows(mesh, into)}, nil, true},
		"ends in lace":       {Plan{Opening: rows("fhdc"), Repeat: rows(mesh, into, plain, mesh, into)}, rows(plain)[:0], true},
		"three kinds in row": {Plan{Opening: rows("fsc"), Repeat: rows("sc in each st across", "dc in each st across", "tr in each st across")}, nil, false},
	} {
		t.Run(name, func(t *testing.T) {
			m, ok, err := c.plan.Mirror()
			require.NoError(t, err)
			require.Equal(t, c.ok, ok)
			require.ElementsMatch(t, c.closing, m.Closing)
			if !ok {
				return
			}
			for k := range 6 {
				same, err := m.Mirrored(k)
				require.NoError(t, err)
				require.True(t, same, "%d repeats", k)
			}
		})
	}
	_, _, err := Plan{}.Mirror()
	require.Error(t, err)
	_, err = Plan{}.Mirrored(1)
	require.Error(t, err)
	_, err = orchard().Mirrored(-1)
	require.Error(t, err)
}

func TestUnfinished(t *testing.T) {
	_, err := orchard().Unfinished(6)
	require.EqualError(t, err, "rows: got 6, want 0 to 5, the rows of a repeat")
	_, _, _, err = Plan{}.FitUnfinished(in("1 in"), gauge.Over{})
	require.Error(t, err)
	_, _, _, err = orchard().FitUnfinished(in("1 in"), gauge.Over{})
	require.Error(t, err)
	g := gauge.MustGauge("13 sts and 9 rows = 4 in")
	// 26.5 and 29 rows: ties go to the larger number
	for width, want := range map[string]int{"13.25 in": 27, "14.5 in": 30} {
		_, c, _, err := orchard().FitUnfinished(in(width), gauge.MustGauge("13 sts and 8 rows = 4 in").Rows)
		require.NoError(t, err)
		require.Equal(t, want, c.Value)
	}
	seen := map[int]bool{}
	for eighths := range 240 {
		width := gauge.MeasurementOf(ratio(t, eighths, 8), gauge.Inch)
		p, c, k, err := orchard().FitUnfinished(width, g.Rows)
		require.NoError(t, err)
		require.NoError(t, p.Validate())
		require.Equal(t, c.Value, p.Rows(k))
		whole, _, err := orchard().Fit(width, g.Rows)
		require.NoError(t, err)
		require.False(t, nearer(whole, c) && whole.Value != c.Value, "%d/8 in: %d, whole %d", eighths, c.Value, whole.Value)
		seen[len(p.Closing)-1] = true
	}
	require.Equal(t, map[int]bool{0: true, 1: true, 2: true, 3: true}, seen, "after the lace row no closing fits")
}

func TestStarts(t *testing.T) {
	p := Plan{Opening: rows("fhdc", "sc in each st across", "sl st in each st across", "ch 3 (counts as dc), dc in next st, dc in each st across"), Repeat: rows("sc in each st across", lace), Closing: rows("sk 1, sc in each st across")}
	require.Equal(t, []string{
		"At the start of each row that begins with dc, ch 1 (does not count as a st); work the first dc into the first st.",
		"At the start of each row that begins with tr, ch 3 (does not count as a st); work the first tr into the first st.",
	}, p.Starts(ChainDoesNotCount, row.UK))
	require.Len(t, p.Starts(ChainCounts, row.US), 2)
	require.Len(t, p.Starts(NoChain, row.US), 1)
	require.Nil(t, Plan{Opening: rows("fhdc")}.Starts(NoChain, row.US))
}

func TestPlanErrors(t *testing.T) {
	_, err := Plan{Opening: append(rows("fsc"), row.Row{})}.Legal()
	require.EqualError(t, err, "opening[1]: Row.Items: got no instruction, want at least one instruction")
	_, err = Plan{Opening: append(rows("fsc"), slices.Repeat(rows(plain), 10_000)...)}.Legal()
	require.ErrorIs(t, err, gauge.ErrBounds)
	err = Plan{Opening: rows("fsc 20 (24)", "sc in next 20 (25) sts")}.Validate()
	var e *RowError
	require.True(t, errors.As(err, &e))
	require.EqualError(t, err, `opening[1] "sc in next 20 (25) sts": uses 25 of 24, 1 short`)
	require.EqualError(t, &RowError{Part: Closing, Index: 1, Pass: 22, Err: row.ErrLeft}, "closing[1], worked for the 22nd time: leaves places over")
	for n, want := range map[int]string{1: "1st", 2: "2nd", 3: "3rd", 4: "4th", 11: "11th", 12: "12th", 13: "13th", 21: "21st", 23: "23rd", 101: "101st", 111: "111th"} {
		require.Equal(t, want, ordinal(n))
	}
	require.Equal(t, errors.ErrUnsupported, orchard().named(errors.ErrUnsupported))
}

func solved(t *testing.T, p Plan) Solved {
	s, err := p.Solve()
	require.NoError(t, err)
	return s
}

// JSON reads back what it writes, rows as text and numbers as text.
func TestJSON(t *testing.T) {
	g := gauge.MustGauge("13 sts and 9 rows = 4 in")
	p, err := orchard().Panel(in("50 in"), in("12 1/4 in"), g)
	require.NoError(t, err)
	written, err := orchard().Write(Writing{Terms: row.UK, Stitches: grade.Run[int]{163}, Repeats: grade.Run[int]{2}})
	require.NoError(t, err)
	for _, c := range []struct{ value, back any }{
		{orchard(), new(Plan)}, {p, new(Panel)}, {written, new(Instructions)},
		{Writing{Terms: row.UK, Stitches: grade.Run[int]{1, 2}, Repeats: grade.Run[int]{3}, FirstSide: WrongSide}, new(Writing)},
		{Height{in("1 in"), in("2 cm")}, new(Height)},
		{solved(t, orchard()), new(Solved)}, {solved(t, Plan{Opening: rows("fdc")}), new(Solved)},
	} {
		b, err := json.Marshal(c.value)
		require.NoError(t, err)
		require.NoError(t, json.Unmarshal(b, c.back), "%s", b)
		again, err := json.Marshal(c.back)
		require.NoError(t, err)
		require.JSONEq(t, string(b), string(again))
		require.NotRegexp(t, `"[A-Z]\w*":`, string(b), "a field without its tag")
	}
	require.Error(t, json.Unmarshal([]byte(`{"opening": ["hdc in eech st"]}`), new(Plan)))
}

// Nothing a plan gives out is shared with it.
func TestPlanIsNotChanged(t *testing.T) {
	p := orchard()
	before := p.Abbreviations(row.US)
	half, err := p.Unfinished(3)
	require.NoError(t, err)
	half.Closing[0] = row.Row{}
	_, _, err = p.Mirror()
	require.NoError(t, err)
	_, err = p.Write(Writing{Stitches: grade.Run[int]{100, 103}, Repeats: grade.Run[int]{1, 2}})
	require.NoError(t, err)
	one := p.Size(0)
	one.Opening[0] = row.Row{}
	require.Equal(t, orchard(), p)
	require.Equal(t, before, p.Abbreviations(row.US))
}

// Practice case PC-05 (knittinghelp.com, mymillhouse.blogspot.com). (a) 30 in at
// 4 sts/in, a multiple of 4 + 2, lies between 118 and 122, both 2 away; the
// pattern rounds down. (b) 41 to 42 in at 5.25 sts/in and 12n + 14: 218 alone.
func TestMultiplesWithAnOffset(t *testing.T) {
	p := Plan{Opening: rows("fsc", "sc in first st, *sc in next 2 sts, dc in next 2 sts; rep from * to last st, sc in last st")}
	rule, err := p.Legal()
	require.NoError(t, err)
	require.Equal(t, gauge.Rule{Multiple: 4, Plus: 2, Least: 6}, rule)
	c, err := gauge.MustGauge("4 sts and 4 rows = 1 in").Stitches.Round(in("30 in"), rule)
	require.NoError(t, err)
	require.True(t, c.Tie)
	require.Equal(t, []int{118, 122, 122}, []int{c.Below, c.Above, c.Value})
	rule.Direction = gauge.Down
	c, err = gauge.MustGauge("4 sts and 4 rows = 1 in").Stitches.Round(in("30 in"), rule)
	require.NoError(t, err)
	require.Equal(t, 118, c.Value)

	p = Plan{Opening: rows("fsc", "sc in first 7 sts, *sc in next 12 sts; rep from * to last 7 sts, sc in last 7 sts")}
	rule, err = p.Legal()
	require.NoError(t, err)
	require.Equal(t, gauge.Rule{Multiple: 12, Plus: 2, Least: 26}, rule)
	counts, err := rule.Within(ratio(t, 41*21, 4), ratio(t, 42*21, 4))
	require.NoError(t, err)
	require.Equal(t, []int{218}, counts)
}

// Practice case PC-25 (garnstudio.com, a maker's page): 54 rows of UK treble at 9
// rows to 10 cm are 60 cm; worked as US treble, 4 chains high for 3, about 80 cm.
func TestTermsChangeTheHeight(t *testing.T) {
	uk, err := row.Parse("tr in each st across", row.UK)
	require.NoError(t, err)
	us, err := row.Parse("tr in each st across", row.US)
	require.NoError(t, err)
	height := gauge.MeasurementOf(ratio(t, 10, 9), gauge.Centimetre)
	heights := []StitchHeight{
		{row.DoubleCrochet, height},
		{row.TrebleCrochet, height.Times(ratio(t, row.TrebleCrochet.Height(), row.DoubleCrochet.Height()))},
	}
	for _, c := range []struct {
		r  row.Row
		cm int
	}{{uk, 60}, {us, 80}} {
		p := Plan{Opening: slices.Repeat([]row.Row{c.r}, 54)}
		h, err := p.Heights(heights...)
		require.NoError(t, err)
		require.True(t, h.Once.Equal(gauge.MeasurementOf(gauge.Int(c.cm), gauge.Centimetre)), "%v", h.Once)
	}
}
