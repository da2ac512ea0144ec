package row

import (
	"errors"
	"strings"
	"testing"
	"time"

	"example.com/panelmath/gauge"
	"github.com/stretchr/testify/require"
)

// What is only style is read as the same row: case, words in full, blanks, full
// stops, the ways to say skip, repeat and across.
func TestForgiving(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"Sc in each stitch across, turn.", "sc in each st across"},
		{"SC IN EACH ST", "sc in each st across"},
		{"yo, hdc in next st", "hdc in next st"},
		{"half double crochet in each stitch to end of row", "hdc in each st across"},
		{"ch 1, sc in each st across", "ch 1 (does not count), sc in each st across"},
		{"Ch 3, counts as dc, dc in next st, 2 dc in same st", "ch 3 (counts as dc), dc in next st, 2 dc in same st"},
		{"ch 2 (does not count as a st), hdc in first st, hdc in each st across", "ch 2 (does not count), hdc in first st, hdc in each st across"},
		{"ch 4 (counts as first dc and ch 1), sk next st, dc in next st", "ch 4 (counts as dc, ch 1), sk 1, dc in next st"},
		{"sc in 1st st, skip next 2 stitches, miss next ch-2 space", "sc in first st, sk 2, sk next ch-2 sp"},
		{"*sc in next st; repeat from * four more times", "*sc in next st; rep from * 4 more times"},
		{"*sc in next st; rep from * once more", "*sc in next st; rep from * 1 more time"},
		{"*sc in next st; rep from * twice more", "*sc in next st; rep from * 2 more times"},
		{"*sc in next st; rep from * 2 times more", "*sc in next st; rep from * 2 more times"},
		{"*sc in next st; rep from * a total of 5 times", "*sc in next st; rep from * 4 more times"},
		{"*sc in next st; rep from * a total of 0 (1) times", "*sc in next st; rep from * a total of 0 (1) times"},
		{"[sc in next st] once, {sc in next st} twice", "[sc in next st] 1 time, [sc in next st] 2 times"},
		{"(sc in next 2 sts, 2 sc in next st) across", "*sc in next 2 sts, 2 sc in next st; rep from * across"},
		{"[sc in next st] to last 2 sts, sc in last 2 sts", "*sc in next st; rep from * to last 2 sts, sc in last 2 sts"},
		{"*sc in next st; rep from * across, sc in last st", "*sc in next st; rep from * to last st, sc in last st"},
		{"*sc in next st; rep from * to last 3 sts, hdc in each st across", "*sc in next st; rep from * to last 3 sts, hdc in next 3 sts"},
		{"dc in each of the next 3 sts, 2 dc in each of last 2 sts", "dc in next 3 sts, 2 dc in each of last 2 sts"},
		{"dc 3, 4 tr, hdc 7 (8, 9)", "dc in next 3 sts, tr in next 4 sts, hdc in next 7 (8, 9) sts"},
		{"hdc 7[8:9]", "hdc in next 7 (8, 9) sts"},
		{"hdc 7 (7, 7)", "hdc in next 7 sts"},
		{"sc 2 tog, sc3tog over next 3 sts", "sc2tog, sc3tog"},
		{"sc in each st and ch-sp across", "sc in each st and in each ch-sp across"},
		{"sc in each st and sc in each ch 1 sp across", "sc in each st and in each ch-1 sp across"},
		{"3 sc in ch 2 sp, sc in next 2 ch-sps", "3 sc in next ch-2 sp, sc in next 2 ch-sps"},
		{"(2 dc) in next st, [dc, ch 1, dc] in next st", "2 dc in next st, (dc, ch 1, dc) in next st"},
		{"dc in next st and in next ch-2 sp", "dc in next st, dc in next ch-2 sp"},
		{"dc in next dc, hdc in next 2 sc", "dc in next st, hdc in next 2 sts"},
		{"chainless dc in first st, dc in each st across", "chainless dc in first st, dc in each st across"},
		{"sc 5, leave remaining sts unworked", "sc in next 5 sts, leave rem sts unworked"},
		{"sc 5, leave next 3 sts unworked, sc 5", "sc in next 5 sts, leave 3 sts unworked, sc in next 5 sts"},
		{"ch 3 (counts as first dc here and throughout), dc in next st and each st across", "ch 3 (counts as dc), dc in next st, dc in each st across"},
		{"ch 2 (does not count as a st throughout), hdc in each st across", "ch 2 (does not count), hdc in each st across"},
		{"*sc in next st, dc in next st; rep from * 10 times in total", "*sc in next st, dc in next st; rep from * 9 more times"},
		{"sc 5, leave rem 5 (6) sts unworked", "sc in next 5 sts, leave 5 (6) sts unworked"},
		{"sc 5, leave last 3 sts unworked", "sc in next 5 sts, leave 3 sts unworked"},
		{"dc in first st, sk first ch-1 sp, dc in next dc", "dc in first st, sk next ch-1 sp, dc in next st"},
		{"ch 3 (counts as dc), dc in each st across, dc in top of turning ch", "ch 3 (counts as dc), dc in each st to last st, dc in last st"},
		{"dc in next 18 sts, dc in top of the beg ch-3", "dc in next 18 sts, dc in last st"},
		{"dc in next 18 sts, 2 dc in top of tch", "dc in next 18 sts, 2 dc in last st"},
		{"sl st in next 5, hdc in next 50 (52), leave 5 unworked", "sl st in next 5 sts, hdc in next 50 (52) sts, leave 5 sts unworked"},
		{"sc in next st, sc in 3rd ch of beg ch-4", "sc in next st, sc in last st"},
		{"2 sc in next st, sc in each remaining st", "2 sc in next st, sc in each st across"},
		{"fhdc 12 sts", "fhdc 12"},
		{"20 fsc", "fsc 20"},
		{"ch 57, sc in second ch from hook and in each ch across", "ch 57, sc in 2nd ch from hook, sc in each ch across"},
		{"Chain 10; dc in fourth chain from the hook (first 3 chs count as dc), dc in next 6 chains", "ch 10, dc in 4th ch from hook (skipped chs count as dc), dc in next 6 chs"},
		{"ch, hdc in 3rd ch from hook (skipped chs do not count as a st) and each ch across", "ch, hdc in 3rd ch from hook (skipped chs do not count), hdc in each ch across"},
	} {
		t.Run(c.text, func(t *testing.T) {
			r, err := Parse(c.text, US)
			require.NoError(t, err)
			require.Equal(t, c.want, r.String())
			again, err := Parse(r.String(), US)
			require.NoError(t, err)
			require.Equal(t, r, again)
		})
	}
}

// What changes a count is refused, with the place, what stands there and what
// would be understood.
func TestSyntaxErrors(t *testing.T) {
	for _, c := range []struct {
		text       string
		terms      Terms
		line, col  int
		read, want string
	}{
		{"", US, 1, 1, "", "an instruction"},
		{"hdcc in next st", US, 1, 1, "hdcc", "an instruction"},
		{"htr in next st", US, 1, 1, "htr", "US terms as in the rest of the row: this is UK for hdc"},
		{"dc in next st, sc in next st", UK, 1, 16, "sc", "UK terms as in the rest of the row: this is US for dc"},
		{"htr2tog", US, 1, 1, "htr2tog", "US terms"},
		{"sc in next st\nfoo", US, 2, 1, "foo", "a comma"},
		{"sc in next st, é", US, 1, 16, "é", "an instruction"},
		{"2 dc in next 3 sts", US, 1, 9, "next 3 sts", "in each of"},
		{"*sc in next st; rep from * 3 times", US, 1, 28, "3 times", "3 more times, or a total of 3 times"},
		{"*sc in next st; rep from * often", US, 1, 28, "often", "across"},
		{"*sc in next st", US, 1, 15, "", "rep or repeat"},
		{"*; rep from * across", US, 1, 1, "*", "something to repeat"},
		{"[*sc in next st; rep from * across] 2 times", US, 1, 2, "*", "brackets for a repeat inside a repeat"},
		{"[sc in next st", US, 1, 15, "", "]"},
		{"[sc in next st)", US, 1, 15, ")", "]"},
		{"[sc in next st] 3 more times", US, 1, 19, "more", "the number of times in all"},
		{"[sc in next st] often", US, 1, 17, "often", "4 times, across"},
		{"[[sc in next st] across] 2 times", US, 1, 18, "across", "a number of times"},
		{"ch 2, hdc in each st across", US, 1, 1, "ch 2", "ch 2 (does not count)"},
		{"ch 3 (starts)", US, 1, 7, "starts", "counts as"},
		{"ch 3 (counts as ch 1), dc in next st", US, 1, 21, ")", "one stitch"},
		{"ch 3 (4), dc in next st", US, 1, 1, "ch 3 (4)", "one number of chains"},
		{"ch, dc in next st", US, 1, 3, ",", "a number of chains"},
		{"sc in next st, ch, sc in next st", US, 1, 18, ",", "a number of chains"},
		{"sc in each st across, ch 1, turn", US, 1, 29, "turn", "start of the next row"},
		{"ch 3 (counts as dc), dc in first st", US, 1, 22, "dc in first st", "same st for an increase"},
		{"sc in first st, hdc in last st, sc in next st", US, 1, 17, "hdc in last st", "at the end of the row"},
		{"sc in next st, dc in first st", US, 1, 16, "dc in first st", "next st"},
		{"sc in same st", US, 1, 1, "sc in same st", ""},
		{"ch 10, dc in 4th ch from hook, dc in each ch across", US, 1, 30, ",", "(skipped chs count as dc)"},
		{"ch 10, dc in 1st ch from hook", US, 1, 14, "1st", "at least the 2nd"},
		{"ch 10, dc in next ch from hook", US, 1, 14, "next", "4th ch from hook"},
		{"ch 10, dc in 4th ch from hook (so)", US, 1, 32, "so", "skipped chs count as"},
		{"sc in each ch across", US, 1, 12, "ch", "only over a foundation chain"},
		{"inc in next st", US, 1, 1, "inc", "2 sc in next st"},
		{"dec", US, 1, 1, "dec", "sc2tog"},
		{"2 sc2tog", US, 1, 3, "sc2tog", "[sc2tog]"},
		{"sc1tog", US, 1, 1, "sc1tog", "2 to 99"},
		{"sc2tog over next 3 sts", US, 1, 18, "3", "the same number"},
		{"sc in next 5 (6, 7) sts, sk 1 (2), sc in last st", US, 1, 29, "1 (2)", "as many sizes as before, 3"},
		{"sc in next 100001 sts", US, 1, 12, "100001", "up to 100000"},
		{"sc in next 999999999999 sts", US, 1, 12, "999999999999", "up to 100000"},
		{"sc in next ch-0 sp", US, 1, 12, "ch-0", "at least 1"},
		{"sc in often", US, 1, 7, "often", "a place"},
		{"sc", US, 1, 3, "", "a place"},
		{"dc ch", US, 1, 4, "ch", "a place"},
		{"2 ch", US, 1, 1, "2", "ch and then the number"},
		{"fhdc in next st", US, 1, 6, "in", "a comma"},
		{"sc in next st, fsc 3", US, 1, 16, "fsc", "on its own"},
		{"sc in next st, chainless sc in first st", US, 1, 16, "chainless", "at the start"},
		{"leave rem sts unworked", US, 1, 1, "leave rem sts unworked", "after the first stitch"},
		{"leave 3 sts", US, 1, 12, "", "unworked"},
		{"sk", US, 1, 3, "", "a number of stitches"},
		{"ch 3 (counts as dc), sk first st", US, 1, 25, "first", "st or a ch-m sp"},
		{"dc in top of it", US, 1, 14, "it", "turning ch or beg ch-3"},
		{"sk 1 ch-x sp", US, 1, 6, "ch-x", "st or a ch-m sp"},
		{"hdc in each st to last ch-2 sp", US, 1, 31, "", "counting stitches alone"},
		{"hdc in each of st", US, 1, 16, "st", "next, first or last"},
		{"hdc in each st across, hdc in each st across", US, 1, 1, "hdc in each st across, hdc in each st across", "one part that goes on"},
		{"*sc in next st; rep from * to last 2 sts, sc in next 2 sts, sc in each st across", US, 1, 1, "", "stitches left for each st across"},
		{"*ch 1, sk 1; rep from * across", US, 1, 1, "*ch 1, sk 1; rep from * across", "a stitch in what is repeated"},
		{"sc in next st; sc in next st) 2 times", US, 1, 29, ")", "the end of the row"},
		{"sc in each st and in each st across", US, 1, 1, "sc in each st and in each st across", "each kind of place once"},
		{"(ch 1) in next st", US, 1, 1, "(ch 1) in next st", "at least one stitch"},
		{"[[[[[[[sc in next st] 1 time] 1 time] 1 time] 1 time] 1 time] 1 time] 1 time", US, 1, 7, "[", "nested at most 6 deep"},
	} {
		t.Run(c.text, func(t *testing.T) {
			_, err := Parse(c.text, c.terms)
			var s *SyntaxError
			require.ErrorAs(t, err, &s)
			require.Equal(t, c.line, s.Line)
			require.Equal(t, c.col, s.Col, "%v", err)
			if c.read != "" {
				require.Equal(t, c.read, s.Read)
			}
			require.Contains(t, s.Want, c.want)
			require.Contains(t, s.Error(), "row: line ")
			require.Equal(t, c.text, s.Text)
		})
	}
}

// Hostile rows are refused at once.
func TestBounds(t *testing.T) {
	start := time.Now()
	for _, s := range []string{
		"[[[dc in next 9999 sts] 9999 times] 9999 times]",
		"[[[dc in next 9999 sts] 9999 times] 9999 times] 9999 times",
		"[dc in next 9999 sts] 99999 times",
		strings.Repeat("[", 9000),
		strings.Repeat("sc ", 9000),
		"[sc in next 99999 sts] 2 times, [sc in next 99999 sts] 2 times",
		"sc in next 99999 sts, sc in next 99999 sts",
		"[sc in next 2 (60000) sts] 2 times",
		"sc 1 (" + strings.Repeat("1, ", 70) + "2)",
		"ch " + strings.Repeat("9", 5000),
	} {
		_, err := Parse(s, US)
		var syntax *SyntaxError
		require.ErrorAs(t, err, &syntax)
		require.True(t, errors.Is(err, gauge.ErrBounds), "%v", err)
	}
	require.Less(t, time.Since(start), 5*time.Second, "a guard against exponential cost, no measurement")
	_, err := Parse("sc in next st", 7)
	require.EqualError(t, err, "Terms: got Terms(7), want US or UK")
	require.Panics(t, func() { Must("nonsense", US) })
}

func TestRowAsText(t *testing.T) {
	r := Must("dc in first st, *ch 2, sk 2, dc in next st; rep from * across", US)
	b, err := r.MarshalText()
	require.NoError(t, err)
	var back Row
	require.NoError(t, back.UnmarshalText(b))
	require.Equal(t, r, back)
	require.Error(t, back.UnmarshalText([]byte("nonsense")))
	_, err = Row{}.MarshalText()
	require.EqualError(t, err, "Row.Items: got no instruction, want at least one instruction")
	require.Equal(t, "", Row{}.String())
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{
		"fhdc 101 (113, 125)", "hdc in each st and 2 hdc in each ch-2 sp across",
		"dc in first st, *ch 2, sk 2, dc in next st; rep from * across",
		"ch 12, dc in 4th ch from hook (skipped chs count as dc), dc in each ch across",
		"[[(dc, ch 1, dc) in next st, sk 2] 2 (3) times, sc2tog] 4 times, leave rem sts unworked",
		"ch 4 (counts as dc, ch 1), *dc in next st; rep from * to last 3 sts, 2 dc in each of last 3 sts",
	} {
		f.Add(s, false)
		f.Add(s, true)
	}
	f.Fuzz(func(t *testing.T, s string, uk bool) {
		terms := US
		if uk {
			terms = UK
		}
		r, err := Parse(s, terms)
		if err != nil {
			var syntax *SyntaxError
			require.ErrorAs(t, err, &syntax)
			require.NotEmpty(t, syntax.Want)
			return
		}
		require.NoError(t, r.Validate())
		for _, terms := range []Terms{US, UK} {
			written := r.Text(terms)
			if len(written) > 10000 {
				return
			}
			back, err := Parse(written, terms)
			require.NoError(t, err, "%s", written)
			require.Equal(t, r, back, "%s", written)
		}
	})
}
