package row

import (
	"testing"

	"example.com/panelmath/gauge"
	"github.com/stretchr/testify/require"
)

// Rows that are put together by hand are checked like those that are read.
func TestValidate(t *testing.T) {
	sc := []Part{{Of: SingleCrochet}}
	next := Work{Make: sc}
	for name, c := range map[string]struct {
		items []Item
		field string
		want  string
	}{
		"nothing":                     {nil, "Row.Items", "at least one instruction"},
		"a nil item":                  {[]Item{nil}, "Row.Items[0]", "an instruction"},
		"a pointer":                   {[]Item{&next}, "Row.Items[0]", "an instruction"},
		"foundation with company":     {[]Item{Foundation{Of: FoundationSingle}, next}, "Row.Items[0]", "on its own"},
		"foundation of sc":            {[]Item{Foundation{Of: SingleCrochet}}, "Row.Items[0].Of", "a foundation stitch"},
		"foundation of nothing":       {[]Item{Foundation{Of: FoundationSingle, Count: Num{0}}}, "Row.Items[0].Count", "1 to 100000"},
		"chain alone":                 {[]Item{FoundationChain{Hook: 3}}, "Row.Items[0]", "the stitch in the Nth ch"},
		"chain inside":                {[]Item{next, FoundationChain{Hook: 3}, Work{Make: sc, At: FirstChain}}, "Row.Items[1]", "at the start"},
		"hook":                        {[]Item{FoundationChain{Hook: 1}, Work{Make: sc, At: FirstChain}}, "Row.Items[0].Hook", "2 to 100"},
		"chain counts as two":         {[]Item{FoundationChain{Hook: 3, Counts: []Part{{Of: SingleCrochet}, {Of: SingleCrochet}}}, Work{Make: sc, At: FirstChain}}, "Row.Items[0].Counts", "one stitch"},
		"turning chain alone":         {[]Item{TurningChain{N: 3}}, "Row.Items[0]", "stitches after it"},
		"turning chain of none":       {[]Item{TurningChain{}, next}, "Row.Items[0].N", "1 to 100 chains"},
		"chainless inside":            {[]Item{next, Chainless{SingleCrochet}}, "Row.Items[1]", "at the start"},
		"chainless chain":             {[]Item{Chainless{Chain}, next}, "Row.Items[0].Of", "worked into another"},
		"each inside a repeat":        {[]Item{Repeat{Items: []Item{Each{In: []Into{{Make: sc}}}}, Times: Num{2}}}, "Row.Items[0].Items[0]", "a number of stitches"},
		"each of nothing":             {[]Item{Each{}}, "Row.Items[0].In", "what goes into each place"},
		"each place twice":            {[]Item{Each{In: []Into{{Make: sc}, {Make: sc}}}}, "Row.Items[0]", "once"},
		"two open parts":              {[]Item{Each{In: []Into{{Make: sc}}}, Each{In: []Into{{Make: sc}}}}, "Row.Items", "one part"},
		"work of nothing":             {[]Item{Work{}}, "Row.Items[0].Make", "at least one stitch"},
		"work of chains":              {[]Item{Work{Make: []Part{{Of: Chain}}}}, "Row.Items[0].Make", "at least one stitch in a place"},
		"work of a foundation":        {[]Item{Work{Make: []Part{{Of: FoundationDouble}}}}, "Row.Items[0].Make", "worked into another"},
		"work nowhere":                {[]Item{Work{Make: sc, At: 9}}, "Row.Items[0].At", "Next, First"},
		"first chain without one":     {[]Item{next, Work{Make: sc, At: FirstChain}}, "Row.Items[1]", "right after the foundation chain"},
		"space below any":             {[]Item{Work{Make: sc, Space: -2}}, "Row.Items[0].Space", "any chain space"},
		"a negative number":           {[]Item{Skip{N: Num{-1}}}, "Row.Items[0].N", "0 to 100000"},
		"lists that differ":           {[]Item{Skip{N: Num{1, 2}}, Work{Make: sc, N: Num{1, 2, 3}}}, "Row.Items[1].N", "one for each of 2 sizes"},
		"chains first":                {[]Item{Chains{}, next}, "Row.Items[0]", "says what it counts as"},
		"one together":                {[]Item{Together{SingleCrochet, 1}}, "Row.Items[0].N", "2 to 99"},
		"slip stitches together":      {[]Item{Together{SlipStitch, 2}}, "Row.Items[0].Of", "a taller stitch"},
		"repeat of nothing":           {[]Item{Repeat{Times: Num{2}}}, "Row.Items[0].Items", "something to repeat"},
		"open without its star":       {[]Item{Repeat{Items: []Item{next}}}, "Row.Items[0]", "a number of times"},
		"times and last":              {[]Item{Repeat{Items: []Item{next}, Times: Num{2}, Last: Num{1}}}, "Row.Items[0].Last", "nothing beside"},
		"star inside":                 {[]Item{Repeat{Items: []Item{Repeat{Items: []Item{next}, Times: Num{2}, Star: true}}, Times: Num{2}}}, "Row.Items[0].Items[0]", "brackets inside"},
		"across without a stitch":     {[]Item{Repeat{Items: []Item{Skip{}}, Star: true}}, "Row.Items[0]", "a stitch in what"},
		"leave first":                 {[]Item{Leave{Num{3}}, next}, "Row.Items[0]", "after the first stitch"},
		"leave the rest in the midst": {[]Item{next, Leave{}, next}, "Row.Items[1]", "at the end"},
		"same of several":             {[]Item{next, Work{Make: sc, At: Same, N: Num{2}}}, "Row.Items[1]", "one place"},
		"last before the end":         {[]Item{Work{Make: sc, At: Last}, next}, "Row.Items[0]", "at the end"},
		"first again":                 {[]Item{next, Work{Make: sc, At: First}}, "Row.Items[1]", "next st"},
		"too much in all":             {[]Item{Work{Make: sc, N: Num{60_000}}, Work{Make: sc, N: Num{60_000}}}, "Row.Items", "at most 100000 places"},
	} {
		t.Run(name, func(t *testing.T) {
			err := Row{c.items}.Validate()
			var f *gauge.FieldError
			require.ErrorAs(t, err, &f)
			require.Equal(t, c.field, f.Field)
			require.Contains(t, f.Want, c.want)
		})
	}
	deep := []Item{next}
	for range 8 {
		deep = []Item{Repeat{Items: deep, Times: Num{1}}}
	}
	require.ErrorIs(t, Row{deep}.Validate(), gauge.ErrBounds)
}

// A row is not changed by what is derived from it.
func TestDerivedRowsAreCopies(t *testing.T) {
	text := "ch 66 (70), (dc, ch 1 (2), dc) in 4th ch from hook (skipped chs count as dc, ch 2 (3)), sk 1 (2), [sc in next 2 (3) chs, ch 2 (1)] 3 (4) times, dc in each ch to last 2 (3) chs, dc in next 2 (3) chs"
	r := Must(text, US)
	one := r.Size(1)
	require.Equal(t, "ch 70, (dc, ch 2, dc) in 4th ch from hook (skipped chs count as dc, ch 3), sk 2, [sc in next 3 chs, ch 1] 4 times, dc in each ch to last 3 chs, dc in next 3 chs", one.String())
	require.Equal(t, text, r.String())
	require.Equal(t, 2, r.Sizes())
	require.Equal(t, 1, one.Sizes())
	require.Len(t, r.Lists(), 9)
	lists := r.Lists()
	lists[0][0] = 999
	require.Equal(t, text, r.String())

	for _, text := range []string{
		"ch 3 (counts as dc, ch 1 (2)), dc in next 2 (3) sts, leave 3 (4) sts unworked, dc in next st",
		"fhdc 10 (12)",
		"chainless dc in first st, sc2tog, *dc in next 2 (3) sts; rep from * to last 4 (5) sts, dc in last 4 (5) sts",
	} {
		r := Must(text, US)
		require.NotEqual(t, text, r.Size(0).String())
		require.Equal(t, text, r.String())
		require.NoError(t, r.Size(1).Validate())
	}
	require.Equal(t, "sc in next st", Must("sc in next st", US).WithCount(Num{3}).String())
	require.Equal(t, "ch 9, sc in 2nd ch from hook", Must("ch, sc in 2nd ch from hook", US).WithCount(Num{9}).String())
}

func TestFirstStitch(t *testing.T) {
	for text, want := range map[string]Stitch{
		"hdc in each st across":                HalfDoubleCrochet,
		"dc in first st, sc in each st across": DoubleCrochet,
		"[[tr in next st] 2 times] 3 times":    TrebleCrochet,
		"sc2tog":                               SingleCrochet,
		"(dc, ch 1) in next st":                DoubleCrochet,
		"fhdc":                                 NoStitch,
		"ch 3 (counts as dc), dc in next st":   NoStitch,
		"sk 1, dc in next st":                  NoStitch,
		"chainless dc in first st":             NoStitch,
		"(ch 1, dc) in next st":                NoStitch,
	} {
		got, plain := Must(text, US).FirstStitch()
		require.Equal(t, want, got, "%s", text)
		require.Equal(t, want != NoStitch, plain, "%s", text)
	}
	for _, r := range []Row{{}, {[]Item{Work{}}}, {[]Item{Each{}}}} {
		_, plain := r.FirstStitch()
		require.False(t, plain)
		require.False(t, r.Begins())
	}
}

func TestStitchesAndChainsOfARow(t *testing.T) {
	for text, want := range map[string][]Stitch{
		"fhdc 10": {FoundationHalfDouble},
		"ch 10, dc in 4th ch from hook (skipped chs count as dc, ch 1), sc in each ch across":    {DoubleCrochet, SingleCrochet},
		"ch 4 (counts as tr, ch 1), [sc2tog, hdc in next st] 2 times, (dc, ch 1, sc) in same st": {TrebleCrochet, SingleCrochet, HalfDoubleCrochet, DoubleCrochet},
		"chainless dc in first st, hdc in each st and 2 sc in each ch-2 sp across":               {DoubleCrochet, HalfDoubleCrochet, SingleCrochet},
	} {
		require.Equal(t, want, Must(text, US).Stitches(), "%s", text)
	}
	for text, want := range map[string]bool{
		"ch 10, dc in 4th ch from hook (skipped chs count as dc, ch 1)": true,
		"ch 10, dc in 4th ch from hook (skipped chs count as dc)":       false,
		"ch 4 (counts as dc, ch 1), dc in next st":                      true,
		"ch 3 (counts as dc), dc in next st":                            false,
		"[sc in next st, ch 1] 3 times":                                 true,
		"(dc, ch 1, dc) in next st":                                     true,
		"(dc, ch 1) in each st across":                                  true,
		"sc2tog":                                                        false,
	} {
		require.Equal(t, want, Must(text, US).HasChains(), "%s", text)
	}
}

// Practice case PC-04 (three forums): chains = stitches + skipped, less 1 if the
// skipped chains count as a stitch.
func TestChainsAgainstStitches(t *testing.T) {
	for _, c := range []struct {
		stitch           Stitch
		counts           bool
		stitches, chains int
	}{
		{SingleCrochet, false, 56, 57}, // (a): the maker counted 55 of 57 chains
		{HalfDoubleCrochet, true, 11, 12},
		{HalfDoubleCrochet, false, 11, 13},
		{DoubleCrochet, true, 11, 13},
		{DoubleCrochet, false, 11, 14},
		{TrebleCrochet, true, 11, 14},
		{TrebleCrochet, false, 11, 15},
		{HalfDoubleCrochet, false, 64, 66}, // PC-03 and PC-11
		{HalfDoubleCrochet, true, 64, 65},  // PC-03
	} {
		f := c.stitch.FirstChain(c.counts)
		chains, err := f.Chains(c.stitches)
		require.NoError(t, err)
		require.Equal(t, c.chains, chains, "%v %v", c.stitch, c.counts)
		stitches, err := f.Stitches(c.chains)
		require.NoError(t, err)
		require.Equal(t, c.stitches, stitches, "%v %v", c.stitch, c.counts)
	}
	_, err := FoundationChain{}.Chains(5)
	require.EqualError(t, err, "FoundationChain.Hook: got 0, want 2 to 100")
	_, err = SingleCrochet.FirstChain(false).Stitches(1)
	require.EqualError(t, err, "chains: got 1, want 2 to 100000")
	_, err = DoubleCrochet.FirstChain(true).Chains(1)
	require.EqualError(t, err, "stitches: got 1, want 2 to 100000")
}

// The abbreviations of a text are all of those, and no others.
func TestAbbreviations(t *testing.T) {
	names := func(text string, terms Terms) []string {
		var out []string
		for _, a := range Abbreviations(text, terms) {
			out = append(out, a.Abbr+" = "+a.Meaning)
		}
		return out
	}
	require.Equal(t, []string{
		"* = start of what is worked again, as often as the text says", "ch = chain", "ch-1 sp = chain space: the space under 1 chain made earlier",
		"ch-sp = chain space", "dc = double crochet", "FPdc = front post double crochet", "rem = remaining", "rep = repeat", "RS = right side",
		"sc2tog = single crochet 2 together", "sk = skip", "sl st = slip stitch", "sp = space", "st = stitch", "WS = wrong side",
	}, names("Row 1 (RS): *dc in next 3 sts, ch 2, sk 2; rep from * across, FPdc in ch-1 sp, sc2tog, sl sts and 3 ch-sps. WS. leave rem sps, 1st", US))
	require.Equal(t, []string{"ch sp = chain space", "dc = double crochet", "ss = slip stitch", "tr = treble"}, names("tr in next ch sp, ss, dc", UK))
	require.Equal(t, []string{"ch = chain", "yo = yarn over"}, names("ch 3, yo, insert the hook", US))
	require.Equal(t, []string{"yoh = yarn over hook"}, names("(yoh and draw through 2 loops) twice", UK))
	require.Empty(t, names("The chart is over.", US))
	require.Nil(t, Abbreviations("sc", 9))
}

func TestErrors(t *testing.T) {
	single := gauge.Rule{Multiple: gauge.MaxCount, Plus: 10, Least: 10}
	for want, e := range map[string]*FitError{
		"uses 11 of 10, 1 short":                                 {Uses: 11, Has: single, Short: 1, Err: ErrShort},
		"uses 9 of 10, 1 left over":                              {Uses: 9, Has: single, Left: 1, Err: ErrLeft},
		"uses 9 of 10, 1 left over (2 short of one more repeat)": {Uses: 9, Step: 3, Has: single, Left: 1, Short: 2, Err: ErrLeft},
		"2 left over at the end":                                 {Left: 2, Err: ErrLeft},
		"2 short at the end":                                     {Short: 2, Err: ErrShort},
		"place 3 is a ch-2 sp and the row works a st there: the ch-2 sps would stay unworked; work into them or skip them (sk next ch-2 sp)": {At: 3, Found: 2, Err: ErrPlace},
		"place 3 is a st and the row works a ch-2 sp there":                                                   {At: 3, Want: 2, Err: ErrPlace},
		"works into each ch-2 sp, and the row before has none":                                                {Want: 2, Err: ErrNoPlace},
		"place 35 lies beyond the stitches left unworked: two live groups, and the row must say which":        {At: 35, Err: ErrSplit},
		"makes 12 where the count to keep is 10":                                                              {Makes: 12, Has: single, Err: ErrCount},
		"a foundation row must be the first row and no other":                                                 {Err: ErrFoundation},
		"the repeat never comes back to the places it began with":                                             {Err: ErrRepeat},
		"makes more than 100000 stitches":                                                                     {Err: gauge.ErrBounds},
		"no count up to 100000 works":                                                                         {Err: gauge.ErrNoCount},
		"uses 12, and the rows before leave a multiple of 5 + 1: no count is both":                            {Uses: 12, Has: gauge.Rule{Multiple: 5, Plus: 1}, Err: gauge.ErrNoCount},
		"uses a multiple of 2, and the rows before (row 3 first) leave a multiple of 4 + 1: no count is both": {Uses: 4, Step: 2, Against: 3, Has: gauge.Rule{Multiple: 4, Plus: 1}, Err: gauge.ErrNoCount},
	} {
		require.Equal(t, want, e.Cause())
		require.Equal(t, "row 1: "+want, e.Error())
		require.ErrorIs(t, e, e.Err)
	}
}
