package check_test

import (
	"encoding/json"
	"fmt"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/check"
	"example.com/panelmath/grade/notation"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

// sizes returns n labels: "1", "2", ...
func sizes(n int) grade.Run[string] {
	r := make(grade.Run[string], n)
	for i := range r {
		r[i] = fmt.Sprint(i + 1)
	}
	return r
}

// counts reads a list as a pattern prints it; a lone value stands for n sizes.
func counts(t testing.TB, name, text string, n int) check.List {
	r, err := notation.ReadNumbers(text, n)
	require.NoError(t, err)
	return check.Counts(name, sizes(len(r)), r)
}

func lengths(t testing.TB, name, text string) check.List {
	r, err := notation.ReadLengths(text, 0)
	require.NoError(t, err)
	l, err := check.Lengths(name, sizes(len(r.Own)), r.Own)
	require.NoError(t, err)
	return l
}

func texts(f []check.Finding) []string {
	var out []string
	for _, x := range f {
		s := x.String()
		if x.Remark {
			s = "remark: " + s
		}
		out = append(out, s)
	}
	return out
}

// PC-09 (b), http://www.laurachau.com/vogue-knitting-cabled-cardigan-errata/ and
// https://wartybobbles.blog/2010/04/12/numbers: collar rows in four sizes.
func TestMisprintsInCollarRows(t *testing.T) {
	row2 := counts(t, "row 2", "19 (16, 23, 30)", 4)
	row3 := counts(t, "row 3", "13 (20, 27, 34)", 4)
	row4 := counts(t, "row 4", "17 (24, 31, 37)", 4)

	f, err := check.Rising(row2)
	require.NoError(t, err)
	require.Equal(t, []string{"row 2, size 1: got 19, want 9: the other sizes rise by 7 each"}, texts(f))
	f, err = check.Even(row2)
	require.NoError(t, err)
	require.Equal(t, []string{"row 2, size 1: got 19, want 9: the other sizes rise by 7 each"}, texts(f))
	f, err = check.Even(row3)
	require.NoError(t, err)
	require.Empty(t, f)
	f, err = check.Even(row4)
	require.NoError(t, err)
	require.Equal(t, []string{"remark: row 4, size 4: got 37, want 38: the other sizes rise by 7 each"}, texts(f))

	f, err = check.Apart(row2, row3, decimal.NewFromInt(4))
	require.NoError(t, err)
	require.Equal(t, []string{"row 2, size 1: got 19, want 9: its own steps say so, and row 3 must be 4 more"}, texts(f))
	f, err = check.Apart(row3, row4, decimal.NewFromInt(4))
	require.NoError(t, err)
	require.Equal(t, []string{"row 4, size 4: got 37, want 38: must be 4 more than the 34 of row 3; its own steps say so as well"}, texts(f))
}

// PC-09 (a): an increase every 10th row, 72 times, needs 720 rows. The 160 rows
// of a sleeve are an assumption; the page gives none.
func TestMoreRowsThanThereAre(t *testing.T) {
	needed, there := counts(t, "rows that the increases need", "720", 1), counts(t, "rows of the sleeve", "160", 1)
	f, err := check.AtMost(needed, there)
	require.NoError(t, err)
	require.Equal(t, []string{"rows that the increases need, size 1: got 720, want at most 160: the limit is rows of the sleeve"}, texts(f))
	f, err = check.AtMost(counts(t, "needed", "60", 1), there)
	require.NoError(t, err)
	require.Empty(t, f)
}

// PC-08, https://alwayscastingon.blogspot.com/2007/08/hmmmmmmm.html: 24 sts over
// 10 cm, half widths, 13 stitches of steek. The count of S is not on the page.
func TestListShiftedByOneSize(t *testing.T) {
	names := grade.Run[string]{"S", "M", "L"}
	stitches := check.Counts("stitches", names, grade.Run[int]{0, 253, 277})
	widths, err := check.Lengths("half width", names, grade.Run[gauge.Length]{gauge.MustLength("50 cm"), gauge.MustLength("55 cm"), gauge.MustLength("60 cm")})
	require.NoError(t, err)
	g := gauge.MustGauge("24 sts = 10 cm, 30 rows = 10 cm")
	fabric := check.Fabric{Over: g.Stitches, Pieces: 2, NotCounted: 13, Grid: gauge.HalfCentimetre}
	f, err := check.Widths(stitches, widths, fabric)
	require.NoError(t, err)
	require.Equal(t, []string{"half width: got values that go with stitches one size apart: one of the two lists is shifted by a size: " +
		"253 of size M goes with 50 cm of size S, the next smaller, and so in 2 sizes"}, texts(f))

	// For a true M: 264 + 13.
	right := check.Counts("stitches", names, grade.Run[int]{253, 277, 301})
	f, err = check.Widths(right, widths, fabric)
	require.NoError(t, err)
	require.Empty(t, f)
	one := check.Counts("stitches", names, grade.Run[int]{253, 253, 301})
	f, err = check.Widths(one, widths, fabric)
	require.NoError(t, err)
	require.Equal(t, []string{"half width, size M: got 55 cm, want 50 cm: the 253 of stitches make that at 24 over 10 cm"}, texts(f))
}

// PC-11, https://www.plymouthyarn.com/000111: four sizes; sizes 1 and 2 share
// every count and differ in length only. Nothing is wrong.
func TestJacketWithoutFault(t *testing.T) {
	foundation := counts(t, "foundation", "64 (64, 68, 72)", 4)
	for name, check := range map[string]func() ([]check.Finding, error){
		"row 1: the turning chain counts": func() ([]check.Finding, error) {
			return check.Sum(foundation, counts(t, "chain", "1", 4), counts(t, "dc", "35 (35, 37, 39)", 4), counts(t, "hdc", "28 (28, 30, 32)", 4))
		},
		"second half": func() ([]check.Finding, error) {
			return check.Sum(foundation, counts(t, "new chain", "28 (28, 30, 32)", 4), counts(t, "beside it", "36 (36, 38, 40)", 4))
		},
		"the skipped chains don't count": func() ([]check.Finding, error) {
			return check.Apart(foundation, counts(t, "chain", "66 (66, 70, 74)", 4), decimal.NewFromInt(2))
		},
		"equal neighbours": func() ([]check.Finding, error) { return check.Rising(foundation) },
		"yoke depth":       func() ([]check.Finding, error) { return check.Rising(lengths(t, "yoke", "8 (9, 10, 11) in")) },
		"front width":      func() ([]check.Finding, error) { return check.Even(lengths(t, "front", "5 (6, 7, 8) in")) },
	} {
		t.Run(name, func(t *testing.T) {
			f, err := check()
			require.NoError(t, err)
			require.Empty(t, f)
		})
	}
	// Read with the chain counted twice, one stitch appears in every size.
	f, err := check.Sum(foundation, counts(t, "chain", "2", 4), counts(t, "dc", "35 (35, 37, 39)", 4), counts(t, "hdc", "28 (28, 30, 32)", 4))
	require.NoError(t, err)
	require.Len(t, f, 4)
	require.Equal(t, "foundation, size 1: got 64: the parts add up to 2 + 35 + 28 = 65; which value is wrong can't be told", f[0].String())
}

// PC-12, https://www.rico-design.de/en/corrections/rico-knitting-idea-compact-569/
func TestFiveSizesWithZeros(t *testing.T) {
	cast := counts(t, "cast on", "73[79:85:91:103]", 5)
	for _, rule := range []string{"multiple of 6 + 7", "odd", "multiple of 6 + 1"} {
		r, err := gauge.ParseRule(rule)
		require.NoError(t, err)
		f, err := check.Legal(cast, r)
		require.NoError(t, err)
		require.Empty(t, f, rule)
	}
	f, err := check.Rising(cast)
	require.NoError(t, err)
	require.Empty(t, f)
	f, err = check.Even(cast)
	require.NoError(t, err)
	require.Equal(t, []string{"remark: cast on, size 5: got 103, want 97: the other sizes rise by 6 each"}, texts(f), "uneven but legal: a remark")

	// Rows: 12 + 8, then 8 more once or twice, then 4 or none. 0 skips a part.
	f, err = check.Sum(counts(t, "rows so far", "32[36:36:36:36]", 5), counts(t, "first", "12", 5), counts(t, "rows 13-20", "8", 5),
		counts(t, "once more", "8[16:16:16:16]", 5), counts(t, "rows 13-16", "4[0:0:0:0]", 5))
	require.NoError(t, err)
	require.Empty(t, f)
	f, err = check.Sum(counts(t, "running total", "56[60:64:64:64]", 5), counts(t, "rows so far", "32[36:36:36:36]", 5), counts(t, "block", "24[24:28:28:28]", 5))
	require.NoError(t, err)
	require.Empty(t, f)
	even, err := gauge.ParseRule("even")
	require.NoError(t, err)
	f, err = check.Legal(counts(t, "rows so far", "32[36:36:36:36]", 5), even)
	require.NoError(t, err)
	require.Empty(t, f, "all end on a wrong-side row")
	for _, skip := range []string{"1[0:0:0:0]", "0[0:4:4:4]"} {
		f, err = check.Rising(counts(t, "again", skip, 5))
		require.NoError(t, err)
		require.Empty(t, f, "a skipped size is no fall")
	}
}

// PC-13, http://www.simplycrochetmag.co.uk/2017/02/14/correction-in-simply-crochet-issue-54/
func TestCorrectedCardigan(t *testing.T) {
	chains := counts(t, "foundation chain", "173 (197, 221, 245)", 4)
	f, err := check.Even(chains)
	require.NoError(t, err)
	require.Empty(t, f)
	for _, rule := range []string{"multiple of 12 + 5", "multiple of 4 + 1", "multiple of 3 + 2"} {
		r, err := gauge.ParseRule(rule)
		require.NoError(t, err)
		f, err := check.Legal(chains, r)
		require.NoError(t, err)
		require.Empty(t, f, rule)
	}
	one, next, after := counts(t, "groups", "31 (35)", 2), counts(t, "next row", "32 (36)", 2), counts(t, "after the repeats", "28 (32)", 2)
	f, err = check.Apart(one, next, decimal.NewFromInt(1))
	require.NoError(t, err)
	require.Empty(t, f)
	f, err = check.Apart(next, after, decimal.NewFromInt(-4))
	require.NoError(t, err)
	require.Empty(t, f)
	f, err = check.Apart(one, counts(t, "next row", "32 (38)", 2), decimal.NewFromInt(1)) // a misprint of ours
	require.NoError(t, err)
	require.Equal(t, []string{"next row, size 2: got 38: must be 1 more than the 35 of groups; which of the two is wrong can't be told"}, texts(f))
}

// PC-21 (c): a page of nine sizes, and the two conventions of its readers.
func TestUnitsUnderAConvention(t *testing.T) {
	in := lengths(t, "bust", "37.5 (42.25, 44, 48.25, 50.75, 54.5, 57.75, 64.25, 68.75) in")
	cm := lengths(t, "bust, cm", "95.5 (107.5, 112, 122.5, 129, 138.5, 146.5, 163, 174.5) cm")
	f, err := check.Units(in, cm, gauge.HalfCentimetre)
	require.NoError(t, err)
	require.Empty(t, f)
	f, err = check.Units(in, cm, gauge.HalfCentimetreAt25)
	require.NoError(t, err)
	require.Len(t, f, 9)
	require.Equal(t, "bust, cm, size 1: got 95.5 cm, want 94 cm: 37.5 in prints so on the half centimetre at 2.5 to the inch", f[0].String())
	g, err := check.Conventions(in, cm)
	require.NoError(t, err)
	require.Equal(t, []gauge.Grid{gauge.HalfCentimetre}, g)

	shifted := lengths(t, "bust, cm", "107.5 (112, 122.5, 129, 138.5, 146.5, 163, 174.5, 180) cm")
	f, err = check.Units(in, shifted, gauge.HalfCentimetre)
	require.NoError(t, err)
	require.Len(t, f, 1)
	require.Equal(t, -1, f[0].Index)
	require.Contains(t, f[0].Why, "42.25 in of size 2 goes with 107.5 cm of size 1, the next smaller, and so in 8 sizes")
}

// PC-21 (a), jennasargentedit.com and others: 36 and 60 in at 2.5 to the inch.
func TestEditorsConvention(t *testing.T) {
	in := lengths(t, "width", "36 (60) in")
	at25, err := check.Conventions(in, lengths(t, "cm", "90 (150) cm"))
	require.NoError(t, err)
	require.Equal(t, []gauge.Grid{gauge.HalfCentimetreAt25, gauge.WholeCentimetreAt25}, at25)
	// C22, kristinamcgrath.com: busts 30-60 in are 75-150 cm, 28-66 are 70-165.
	c22, err := check.Conventions(lengths(t, "bust", "28 (30, 60, 66) in"), lengths(t, "cm", "70 (75, 150, 165) cm"))
	require.NoError(t, err)
	require.Equal(t, at25, c22)
	at254, err := check.Conventions(in, lengths(t, "cm", "91.5 (152.5) cm"))
	require.NoError(t, err)
	require.Equal(t, []gauge.Grid{gauge.HalfCentimetre}, at254)
}

// Published lists that a good checker leaves alone, or finds one thing in.
func TestPublishedLists(t *testing.T) {
	g := gauge.MustGauge("16 sts = 3.5 in, 10 rows = 4 in")
	// C06, COBOO Suttons Shell Top: the label is the design target; 56.4 is printed 57.
	bust := lengths(t, "bust", "34 (37, 41, 45, 49, 53, 57) in")
	both := counts(t, "both panels", "156 (168, 186, 204, 222, 240, 258)", 7)
	f, err := check.Widths(both, bust, check.Fabric{Over: g.Stitches, Grid: gauge.WholeInch})
	require.NoError(t, err)
	require.Equal(t, []string{"bust, size 7: got 57 in, want 56 in: the 258 of both panels make that at 16 over 3.5 in"}, texts(f))
	f, err = check.Widths(both, bust, check.Fabric{Over: g.Stitches, Grid: gauge.WholeInch, Within: gauge.MustLength("0.75 in")})
	require.NoError(t, err)
	require.Empty(t, f)
	// C11, Amaranthus Cocoon: 6 clusters over 4 in, 57 (69, 81, 93) clusters wide.
	clusters := check.Fabric{Over: gauge.MustGauge("6 sts and 6 rows = 4 in").Stitches}
	f, err = check.Widths(counts(t, "clusters", "57 (69, 81, 93)", 4), lengths(t, "width", "38 (46, 54, 62) in"), clusters)
	require.NoError(t, err)
	require.Empty(t, f)
	// C10: 1 + 143 [167, 191] = 144 [168, 192].
	f, err = check.Sum(counts(t, "foundation", "144 [168, 192]", 3), counts(t, "first", "1", 3), counts(t, "rest", "143 [167, 191]", 3))
	require.NoError(t, err)
	require.Empty(t, f)
	// C09: widths step 10 then 8; D11: the last two sizes alike.
	f, err = check.Even(lengths(t, "bust", "51 [61, 69] in"))
	require.NoError(t, err)
	require.Equal(t, []string{"remark: bust: got steps of 10 in, 8 in: the steps from size to size are not even"}, texts(f))
	f, err = check.Rising(lengths(t, "armhole", "4.5 (5, 5.5, 6, 7, 7) in"))
	require.NoError(t, err)
	require.Empty(t, f)
	// D02, Heaven Cardigan: twice the armhole stays within the upper arm; its inches
	// are truncated, which the centimetres show.
	arm := lengths(t, "upper arm", "41 (46, 46, 50, 50) (54, 56, 56, 60) cm")
	armhole := lengths(t, "armhole round", "40 (44, 44, 48, 48) (50, 54, 54, 58) cm")
	f, err = check.AtMost(armhole, arm)
	require.NoError(t, err)
	require.Empty(t, f)
	f, err = check.Units(lengths(t, "armhole", "22 (24) cm"), lengths(t, "armhole, in", "8.5 (9.25) in"), gauge.QuarterInch)
	require.NoError(t, err)
	require.Equal(t, []string{"armhole, in, size 1: got 8.5 in, want 8.75 in: 22 cm prints so on the quarter inch",
		"armhole, in, size 2: got 9.25 in, want 9.5 in: 24 cm prints so on the quarter inch"}, texts(f))
	// D04, Braided Lines Vest: bust and armhole rise at very different rates.
	for _, l := range []string{"89 (96, 104, 111, 120) (127, 136, 144, 151) cm", "24 (24, 24, 25, 26) (27, 28, 28, 29) cm"} {
		f, err = check.Rising(lengths(t, "list", l))
		require.NoError(t, err)
		require.Empty(t, f)
	}
	// D05, Red Cross sweater of 1917: 28 + 24 + 28 = 80; D16: 12 = 3 + 6 + 3.
	f, err = check.Sum(counts(t, "row", "80", 1), counts(t, "left", "28", 1), counts(t, "neck", "24", 1), counts(t, "right", "28", 1))
	require.NoError(t, err)
	require.Empty(t, f)
	f, err = check.Sum(lengths(t, "back", "12 in"), lengths(t, "left", "3 in"), lengths(t, "neck", "6 in"), lengths(t, "right", "3 in"))
	require.NoError(t, err)
	require.Empty(t, f)
	// D09 and D10: neck width and front depth must reach 10 in together; 7 + 3.5 do.
	f, err = check.AtMost(lengths(t, "rule of ten", "10 in"), lengths(t, "width and depth", "10.5 in"))
	require.NoError(t, err)
	require.Empty(t, f)
}

func TestRising(t *testing.T) {
	for _, c := range []struct {
		list string
		want []string
	}{
		{"10 (12, 14, 16)", nil},
		{"10 (10, 10, 11)", nil},
		{"0 (12, 0, 16)", nil},
		{"10 (50, 21, 23)", []string{"list, size 2: got 50, want 10 to 21: sizes must not fall; all the others rise"}},
		{"30 (21, 22, 40)", []string{"list, size 1: got 30, want at most 21: sizes must not fall; all the others rise"}},
		{"10 (21, 25, 9)", []string{"list, size 4: got 9, want at least 25: sizes must not fall; all the others rise"}},
		{"5 (9, 5, 7)", []string{"list, size 2: got 9, want 5: sizes must not fall; all the others rise"}},
		{"10 (12, 11, 14)", []string{"list, size 3: got 11: less than the 12 of size 2"}}, // 12 or 11 may be wrong
		{"10 (10, 8, 6)", []string{"list, size 3: got 8: less than the 10 of size 2", "list, size 4: got 6: less than the 8 of size 3"}},
		{"10 (8, 6, 4)", []string{"list, size 2: got 8: less than the 10 of size 1", "list, size 3: got 6: less than the 8 of size 2", "list, size 4: got 4: less than the 6 of size 3"}},
	} {
		t.Run(c.list, func(t *testing.T) {
			f, err := check.Rising(counts(t, "list", c.list, 4))
			require.NoError(t, err)
			require.Equal(t, c.want, texts(f))
		})
	}
}

func TestEven(t *testing.T) {
	for _, c := range []struct {
		list string
		want []string
	}{
		{"10 (12)", nil},
		{"10 (12, 14)", nil},
		{"10 (0, 14, 16)", nil},
		{"10 (12, 14, 17)", []string{"remark: list, size 4: got 17, want 16: the other sizes rise by 2 each"}},
		{"10 (13, 14, 16)", []string{"remark: list, size 2: got 13, want 12: the other sizes rise by 2 each"}},
		{"10 (12, 15)", []string{"remark: list: got steps of 2, 3: the steps from size to size are not even"}},
		{"10 (12, 15, 20)", []string{"remark: list: got steps of 2, 3, 5: the steps from size to size are not even"}},
		{"10 (11, 13, 0, 16)", []string{"remark: list: got steps of 1, 2, 3: the steps from size to size are not even"}}, // 10, 13 and 16 rise by 1½: no count for size 2
	} {
		t.Run(c.list, func(t *testing.T) {
			f, err := check.Even(counts(t, "list", c.list, 0))
			require.NoError(t, err)
			require.Equal(t, c.want, texts(f))
		})
	}
	f, err := check.Even(lengths(t, "length", "10 (11, 13, 14.5) in"))
	require.NoError(t, err)
	require.Equal(t, []string{"remark: length, size 2: got 11 in, want 11.5 in: the other sizes rise by 1.5 in each"}, texts(f))
}

func TestLegal(t *testing.T) {
	four := gauge.Rule{Multiple: 4, Plus: 1}
	for _, c := range []struct {
		list string
		rule gauge.Rule
		want []string
	}{
		{"101 (113, 125)", four, nil},
		{"101 (0, 125)", four, nil},
		{"101 (112, 125)", four, []string{"list, size 2: got 112, want 109 or 113: not a legal count (multiple of 4 + 1)"}},
		{"101 (112, 125, 137)", four, []string{"list, size 2: got 112, want 113: not a legal count (multiple of 4 + 1)"}},
		{"6", four, []string{"list, size 1: got 6, want 5 or 9: not a legal count (multiple of 4 + 1)"}},
		{"3 (13)", gauge.Rule{Multiple: 4, Plus: 1, Least: 9}, []string{"list, size 1: got 3, want 9: not a legal count (multiple of 4 + 1, at least 9)"}},
	} {
		t.Run(c.list, func(t *testing.T) {
			f, err := check.Legal(counts(t, "list", c.list, 0), c.rule)
			require.NoError(t, err)
			require.Equal(t, c.want, texts(f))
		})
	}
}

func TestShift(t *testing.T) {
	g := gauge.MustGauge("20 sts and 20 rows = 10 cm")
	fabric := check.Fabric{Over: g.Stitches, Grid: gauge.WholeCentimetre}
	for _, c := range []struct {
		name, counts, widths string
		want                 []string
	}{
		{"larger", "80 (100, 120)", "30 (40, 50) cm", []string{"width: got values that go with sts one size apart: one of the two lists is shifted by a size: 80 of size 1 goes with 40 cm of size 2, the next larger, and so in 2 sizes"}},
		{"too few to say so", "80 (100)", "30 (40) cm", []string{"width, size 1: got 30 cm, want 40 cm: the 80 of sts make that at 20 over 10 cm", "width, size 2: got 40 cm, want 50 cm: the 100 of sts make that at 20 over 10 cm"}},
		{"one is right", "80 (100, 120)", "30 (40, 60) cm", []string{"width, size 1: got 30 cm, want 40 cm: the 80 of sts make that at 20 over 10 cm", "width, size 2: got 40 cm, want 50 cm: the 100 of sts make that at 20 over 10 cm"}},
		{"nothing to compare", "80 (0)", "0 (40) cm", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			f, err := check.Widths(counts(t, "sts", c.counts, 0), lengths(t, "width", c.widths), fabric)
			require.NoError(t, err)
			require.Equal(t, c.want, texts(f))
		})
	}
	fabric.Within = gauge.MustLength("1 cm")
	f, err := check.Widths(counts(t, "sts", "80 (100)", 2), lengths(t, "width", "41 (51.5) cm"), fabric)
	require.NoError(t, err)
	require.Len(t, f, 1, "a miss of just as much as allowed is right")
	f, err = check.AtMost(lengths(t, "a", "40 (50) cm"), lengths(t, "limit", "40 (49.5) cm"))
	require.NoError(t, err)
	require.Equal(t, []string{"a, size 2: got 50 cm, want at most 49.5 cm: the limit is limit"}, texts(f))
}

func TestSum(t *testing.T) {
	left, neck, right := counts(t, "left", "34 (36, 38, 41)", 4), counts(t, "neck", "24 (24, 26, 27)", 4), counts(t, "right", "34 (36, 38, 40)", 4)
	f, err := check.Sum(counts(t, "row", "92 (96, 102, 107)", 4), left, neck, right)
	require.NoError(t, err)
	require.Len(t, f, 1)
	require.Equal(t, "left, size 4: got 41, want 40: the parts add up to 41 + 27 + 40 = 108 beside 107; with this value the steps of its list are even and all adds up", f[0].String())
	// The whole breaks its own steps: it is named.
	f, err = check.Sum(counts(t, "row", "10 (20, 30, 41)", 4), counts(t, "half", "5 (10, 15, 20)", 4), counts(t, "half", "5 (10, 15, 20)", 4))
	require.NoError(t, err)
	require.Len(t, f, 1)
	require.Equal(t, "row, size 4: got 41, want 40: the parts add up to 20 + 20 = 40 beside 41; with this value the steps of its list are even and all adds up", f[0].String())
	// Two values would do, so none is named.
	f, err = check.Sum(counts(t, "row", "10 (20, 30, 41)", 4), counts(t, "half", "5 (10, 15, 19)", 4), counts(t, "half", "5 (10, 15, 21)", 4))
	require.NoError(t, err)
	require.Equal(t, []string{"row, size 4: got 41: the parts add up to 19 + 21 = 40; more than one value would do"}, texts(f[:1]))
}

func TestRefuses(t *testing.T) {
	two := counts(t, "two", "1 (2)", 2)
	three := counts(t, "three", "1 (2, 3)", 3)
	cm := lengths(t, "cm", "1 (2) cm")
	in := lengths(t, "in", "1 (2) in")
	ok := gauge.MustGauge("16 sts = 3.5 in, 10 rows = 4 in").Stitches
	one := func(_ []check.Finding, err error) error { return err }
	large := check.Counts("large", sizes(1), grade.Run[int]{100_001})
	huge := check.List{Name: "huge", Sizes: sizes(1), Values: grade.Run[decimal.Decimal]{decimal.New(1, 1_000_000)}}
	long := check.List{Name: "long", Sizes: sizes(1), Values: grade.Run[decimal.Decimal]{decimal.New(101, 0)}, Unit: gauge.Metre}
	for _, c := range []struct {
		err  error
		want string
	}{
		{one(check.Rising(check.List{Name: "none"})), "none.Sizes: got 0, want 1 to 64"},
		{one(check.Rising(counts(t, "many", "1", 64))), ""},
		{one(check.Even(check.List{Name: "short", Sizes: sizes(2)})), "short.Values: got 0, want 2"},
		{one(check.Even(large)), "size 1: large: got 100001, want at most 100000: out of bounds"},
		{one(check.Even(huge)), "size 1: huge: d: got an exponent of 1000000, want an exponent of -20 to 20"},
		{one(check.Rising(long)), "size 1: long: Value: got 101 m, want at most 100 m"},
		{one(check.Rising(check.List{Name: "unit", Sizes: sizes(1), Values: grade.Run[decimal.Decimal]{decimal.Zero}, Unit: 99})), "unit.Unit: got Unit(99), want a unit of length, or none for counts"},
		{one(check.Legal(large, gauge.Rule{})), "size 1: large: got 100001, want at most 100000: out of bounds"},
		{one(check.Legal(two, gauge.Rule{Multiple: -1})), "Rule.Multiple: got -1, want 0 to 100000"},
		{one(check.Legal(cm, gauge.Rule{})), "cm.Unit: got cm, want counts"},
		{one(check.Units(two, three, gauge.QuarterInch)), "three.Sizes: got 3, want 2, as in two"},
		{one(check.Units(two, cm, gauge.HalfCentimetre)), "two.Unit: got counts, want a unit of length"},
		{one(check.Units(in, cm, gauge.QuarterInch)), "cm.Unit: got cm, want in, the unit of the grid"},
		{one(check.Units(in, two, gauge.QuarterInch)), "two.Unit: got counts, want in, the unit of the grid"},
		{one(check.Apart(two, three, decimal.Zero)), "three.Sizes: got 3, want 2, as in two"},
		{one(check.Apart(two, cm, decimal.Zero)), "cm.Unit: got cm, want counts, as in two"},
		{one(check.Apart(two, two, decimal.New(1, 99))), "by.d: got an exponent of 99, want an exponent of -20 to 20"},
		{one(check.AtMost(two, three)), "three.Sizes: got 3, want 2, as in two"},
		{one(check.AtMost(two, cm)), "two.Unit: got counts, want cm, as in cm"},
		{one(check.Sum(two)), "parts: got none, want at least one"},
		{one(check.Sum(two, three)), "three.Sizes: got 3, want 2, as in two"},
		{one(check.Sum(two, cm)), "cm.Unit: got cm, want counts, as in two"},
		{one(check.Widths(two, three, check.Fabric{Over: ok})), "three.Sizes: got 3, want 2, as in two"},
		{one(check.Widths(two, in, check.Fabric{})), "Fabric.Over.Count: got 0, want more than 0"},
		{one(check.Widths(two, in, check.Fabric{Over: ok, Pieces: -1})), "Fabric.Pieces: got -1, want 0 to 100000"},
		{one(check.Widths(two, in, check.Fabric{Over: ok, NotCounted: -1})), "Fabric.NotCounted: got -1, want 0 to 100000"},
		{one(check.Widths(two, in, check.Fabric{Over: ok, Within: gauge.MustLength("-1 in")})), "Fabric.Within: got -1 in, want 0 or more"},
		{one(check.Widths(two, in, check.Fabric{Over: ok, Within: gauge.Length{Unit: 99}})), "Fabric.Within.Unit: got Unit(99), want mm, cm, m, in, ft or yd"},
		{one(check.Widths(in, in, check.Fabric{Over: ok})), "in.Unit: got in, want counts"},
		{one(check.Widths(two, cm, check.Fabric{Over: ok})), "cm.Unit: got cm, want in, the unit of the grid"},
	} {
		t.Run(c.want, func(t *testing.T) {
			if c.want == "" {
				require.NoError(t, c.err)
				return
			}
			require.EqualError(t, c.err, c.want)
		})
	}
	_, err := check.Conventions(two, cm)
	require.EqualError(t, err, "two.Unit: got counts, want a unit of length")
	_, err = check.Lengths("mixed", sizes(2), grade.Run[gauge.Length]{gauge.MustLength("1 in"), gauge.MustLength("1 cm")})
	require.EqualError(t, err, "size 2: mixed: got 1 cm, want a length in in")
}

// A list made by a rule, with one value changed: the change is found, with the
// value that it had, and nothing else is.
func TestOneChangedValueIsFound(t *testing.T) {
	for n := 5; n <= 12; n++ {
		for step := 1; step <= 24; step += 7 {
			for at := range n {
				for _, by := range []int{-30, -1, 1, 2, 400} {
					right := make(grade.Run[int], n)
					for i := range right {
						right[i] = 200 + i*step
					}
					f, err := check.Even(check.Counts("list", sizes(n), right))
					require.NoError(t, err)
					require.Empty(t, f)
					wrong := append(grade.Run[int](nil), right...)
					wrong[at] += by
					f, err = check.Even(check.Counts("list", sizes(n), wrong))
					require.NoError(t, err)
					require.Len(t, f, 1)
					require.Equal(t, at, f[0].Index, "%v", wrong)
					require.Equal(t, fmt.Sprint(right[at]), f[0].Want)
				}
			}
		}
	}
}

func TestJSON(t *testing.T) {
	for _, l := range []check.List{counts(t, "chain", "66 (66, 70)", 3), lengths(t, "width", "8 (9.5) in")} {
		b, err := json.Marshal(l)
		require.NoError(t, err)
		var back check.List
		require.NoError(t, json.Unmarshal(b, &back))
		require.NoError(t, back.Validate())
		again, err := json.Marshal(back)
		require.NoError(t, err)
		require.Equal(t, string(b), string(again))
	}
	b, err := json.Marshal(counts(t, "chain", "66 (70)", 2))
	require.NoError(t, err)
	require.Equal(t, `{"name":"chain","sizes":["1","2"],"values":["66","70"]}`, string(b))
	f := check.Fabric{Over: gauge.MustGauge("16 sts and 12 rows = 4 in").Stitches, Pieces: 2}
	b, err = json.Marshal(f)
	require.NoError(t, err)
	var back check.Fabric
	require.NoError(t, json.Unmarshal(b, &back))
	require.NoError(t, back.Validate())
}

// The settings of the decimal package change nothing.
func TestHostileGlobals(t *testing.T) {
	precision, trim, scientific := decimal.DivisionPrecision, decimal.TrimTrailingZeros, decimal.UseScientificNotation
	defer func() {
		decimal.DivisionPrecision, decimal.TrimTrailingZeros, decimal.UseScientificNotation = precision, trim, scientific
	}()
	decimal.DivisionPrecision, decimal.TrimTrailingZeros, decimal.UseScientificNotation = 1, false, true
	TestMisprintsInCollarRows(t)
	TestListShiftedByOneSize(t)
	TestUnitsUnderAConvention(t)
	TestPublishedLists(t)
	TestEven(t)
	TestSum(t)
}

func TestGridsAreChecked(t *testing.T) {
	in, cm := lengths(t, "in", "1 (2) in"), lengths(t, "cm", "2.5 (5) cm")
	_, err := check.Units(in, cm, 99)
	require.Error(t, err)
	_, err = check.Widths(counts(t, "sts", "1 (2)", 2), cm, check.Fabric{Over: gauge.MustGauge("16 sts and 12 rows = 4 in").Stitches, Grid: 99})
	require.Error(t, err)
}

func TestListsOwnTheirLabels(t *testing.T) {
	labels := grade.Run[string]{"S"}
	check.Counts("sts", labels, grade.Run[int]{1}).Sizes[0] = "?"
	l, err := check.Lengths("width", labels, grade.Run[gauge.Length]{gauge.MustLength("9 in")})
	require.NoError(t, err)
	l.Sizes[0] = "?"
	require.Equal(t, grade.Run[string]{"S"}, labels)
}
