package seam_test

import (
	"errors"
	"fmt"
	"math/big"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/seam"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

func length(s string) gauge.Measurement { return gauge.MustLength(s).Measurement() }

func over(n, span string) gauge.Over {
	return gauge.Over{Count: decimal.RequireFromString(n), Span: gauge.MustLength(span)}
}

// The 1917 sweater: worked example D05, American Red Cross instructions,
// Berkeley Daily Gazette, 22 September 1917 (public domain): one strip of 25 in
// each way, 9 in open for the armhole, so that each side seam is 16 in.
func TestJoin1917(t *testing.T) {
	for _, name := range []string{"strip folded at the shoulder", "front and back"} {
		t.Run(name, func(t *testing.T) {
			s := seam.Seam{Name: "side", Count: 200, Gauge: over("4", "1 in"), Opening: length("9 in"), RowEnds: true}
			if name == "front and back" {
				s.Count, s.ToTop = 100, true
			}
			j, err := s.Join()
			require.NoError(t, err)
			require.Equal(t, 64, j.Pairs)
			require.True(t, j.Length.Equal(length("16 in")), j.Length.String())
			require.True(t, j.Opening.Equal(length("9 in")))
		})
	}
}

func TestJoin(t *testing.T) {
	g := over("13", "4 in")
	for _, c := range []struct {
		name           string
		s              seam.Seam
		pairs, start   int
		open           string
		opening, joins string // in inches
	}{
		{"odd, half a stitch on the fold", seam.Seam{Count: 163, Opening: length("1.25 in")}, 77, 0, "9/2", "18/13", "308/13"},
		{"even, exact", seam.Seam{Count: 130, Opening: length("4 in")}, 52, 0, "13", "4", "16"},
		{"even, a hair more", seam.Seam{Count: 130, Opening: length("4.0001 in")}, 51, 0, "14", "56/13", "204/13"},
		{"no opening, odd", seam.Seam{Count: 163}, 81, 0, "1/2", "2/13", "324/13"},
		{"to the top", seam.Seam{Count: 163, ToTop: true, Opening: length("1.25 in")}, 158, 0, "5", "20/13", "632/13"},
		{"slit rounded up", seam.Seam{Count: 130, Opening: length("4 in"), Slit: length("1 in")}, 48, 4, "13", "4", "192/13"},
		{"one pair left", seam.Seam{Count: 8, Opening: length("0.9 in")}, 1, 0, "3", "12/13", "4/13"},
	} {
		t.Run(c.name, func(t *testing.T) {
			c.s.Gauge = g
			j, err := c.s.Join()
			require.NoError(t, err)
			require.Equal(t, c.pairs, j.Pairs)
			require.Equal(t, c.start, j.Start)
			require.Equal(t, c.open, j.Open.String())
			require.Equal(t, c.opening, j.Opening.In(gauge.Inch).String())
			require.Equal(t, c.joins, j.Length.In(gauge.Inch).String())
		})
	}
}

// Against math/big, over generated edges: parts add up to the edge, no opening
// is smaller than asked, and one pair more would make it so.
func TestJoinInvariants(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	joined := 0
	for range 3000 {
		s := seam.Seam{
			Count: 1 + r.IntN(300), ToTop: r.IntN(2) == 0,
			Gauge:   over(decimal.New(int64(1+r.IntN(120)), -1).String(), []string{"1 in", "4 in", "10 cm", "7 cm"}[r.IntN(4)]),
			Opening: gauge.Length{Value: decimal.New(int64(r.IntN(2000)), -2), Unit: gauge.Inch}.Measurement(),
			Slit:    gauge.Length{Value: decimal.New(int64(r.IntN(400)), -2), Unit: gauge.Inch}.Measurement(),
		}
		perMM := new(big.Rat).Quo(s.Gauge.Count.Rat(), s.Gauge.Span.Measurement().In(gauge.Millimetre).Rat())
		mm := func(m gauge.Measurement) *big.Rat { return m.In(gauge.Millimetre).Rat() }
		half := big.NewRat(int64(s.Count), 1)
		if !s.ToTop {
			half.Quo(half, big.NewRat(2, 1))
		}
		floor := func(x *big.Rat) int64 { return new(big.Int).Div(x.Num(), x.Denom()).Int64() } // Euclid: the denominator is positive
		stop := floor(new(big.Rat).Sub(half, new(big.Rat).Mul(mm(s.Opening), perMM)))
		start := -floor(new(big.Rat).Neg(new(big.Rat).Mul(mm(s.Slit), perMM)))
		j, err := s.Join()
		if stop-start < 1 {
			require.ErrorIs(t, err, seam.ErrNoPair, "%+v", s)
			require.Zero(t, j.Pairs)
			continue
		}
		require.NoError(t, err)
		joined++
		require.Equal(t, stop-start, int64(j.Pairs))
		require.True(t, j.Open.Add(gauge.Int(j.Pairs+j.Start)).Rat().Cmp(half) == 0, "parts add up to the edge")
		require.True(t, j.Opening.Cmp(s.Opening) >= 0 && j.Slit.Cmp(s.Slit) >= 0, "no opening smaller than asked")
		each, _ := s.Gauge.Measure(gauge.Int(1))
		require.True(t, j.Opening.Sub(each).Cmp(s.Opening) < 0, "one pair more would be too many")
		require.True(t, s.Slit.Sign() == 0 || j.Slit.Sub(each).Cmp(s.Slit) < 0)
		whole, _ := s.Gauge.Measure(j.Open.Add(gauge.Int(j.Pairs + j.Start)))
		require.True(t, j.Opening.Add(j.Slit).Add(j.Length).Equal(whole))
	}
	require.Greater(t, joined, 1000)
}

func TestJoinErrors(t *testing.T) {
	g := over("13", "4 in")
	huge, err := gauge.ParseRatio("1" + strings.Repeat("0", 30))
	require.NoError(t, err)
	for _, c := range []struct {
		name, want string
		s          seam.Seam
		is         error
	}{
		{"no stitches", "Count: got 0, want 1 to 100000", seam.Seam{Gauge: g}, gauge.ErrBounds},
		{"too many stitches", "Count: got 100001, want 1 to 100000", seam.Seam{Count: 100_001, Gauge: g}, gauge.ErrBounds},
		{"no gauge", "Gauge.Count: got 0, want more than 0", seam.Seam{Count: 10}, nil},
		{"negative opening", "Opening: got -1 in (-2.54 cm), want not less than nothing", seam.Seam{Count: 130, Gauge: g, Opening: length("-1 in")}, nil},
		{"negative slit", "Slit: got -1 in (-2.54 cm), want not less than nothing", seam.Seam{Count: 130, Gauge: g, Slit: length("-1 in")}, nil},
		{"opening as deep as the garment is long", "Opening: got 20 in (50.8 cm), want at most 19.692 in (50.018 cm), which leaves one pair of the 20 in (50.8 cm) edge to join", seam.Seam{Count: 130, Gauge: g, Opening: length("20 in")}, seam.ErrNoPair},
		{"opening deeper than the garment is long", "Opening: got 90 m", seam.Seam{Count: 130, Gauge: g, Opening: length("90 m")}, seam.ErrNoPair},
		{"opening beyond all bounds", "Opening: got 1000000000000000000000000000000 in", seam.Seam{Count: 130, Gauge: g, Opening: gauge.MeasurementOf(huge, gauge.Inch)}, seam.ErrNoPair},
		{"slit beyond all bounds", "Slit: got 1000000000000000000000000000000 in", seam.Seam{Count: 130, Gauge: g, Slit: gauge.MeasurementOf(huge, gauge.Inch)}, seam.ErrNoPair},
		{"less than a pair left", "Opening: got 19.9 in", seam.Seam{Count: 130, Gauge: g, Opening: length("19.9 in")}, seam.ErrNoPair},
		{"slit meets opening", "Slit: got 11 in (27.94 cm), want at most 10.461 in (26.572 cm)", seam.Seam{Count: 130, Gauge: g, Opening: length("9 in"), Slit: length("11 in")}, seam.ErrNoPair},
		{"slit longer than the garment", "Slit: got 90 m", seam.Seam{Count: 130, Gauge: g, Slit: length("90 m")}, seam.ErrNoPair},
		{"one stitch alone", "Opening: got 0 in (0 cm)", seam.Seam{Count: 1, Gauge: g}, seam.ErrNoPair},
	} {
		t.Run(c.name, func(t *testing.T) {
			j, err := c.s.Join()
			c.want = strings.Replace(c.want, "90 m", "3543.307 in (9000 cm)", 1)
			require.ErrorContains(t, err, c.want)
			var f *gauge.FieldError
			require.ErrorAs(t, err, &f)
			if c.is != nil {
				require.ErrorIs(t, err, c.is)
			}
			require.Zero(t, j.Pairs)
			require.ErrorContains(t, gauge.InField("XS–S", err), "XS–S."+f.Field)
		})
	}
}

func TestExplain(t *testing.T) {
	g := over("13", "4 in")
	repeats := gauge.Over{Count: decimal.New(2, 0), Of: 8, Span: gauge.MustLength("3.5 in")}
	for _, c := range []struct {
		s    seam.Seam
		want string
	}{
		{seam.Seam{Name: "centre back", Count: 163, Gauge: g, Opening: length("1.25 in")},
			"centre back: 81½ sts from hem to the fold less 1.25 in (3.175 cm) at 13 over 4 in are 77.4375, rounded down to 77 pairs; 4½ sts stay open to the fold, 1.385 in (3.517 cm)"},
		{seam.Seam{Count: 100, ToTop: true, RowEnds: true, Gauge: over("4", "1 in"), Opening: length("9 in"), Slit: length("2.1 in")},
			"100 row ends from hem to the top less 9 in (22.86 cm) at 4 over 1 in are 64, rounded down to 64; the slit of 2.1 in (5.334 cm) takes 9, which leaves 55 pairs; 36 row ends stay open to the top, 9 in (22.86 cm)"},
		{seam.Seam{Count: 3, Gauge: g}, "1½ sts from hem to the fold less 0 in (0 cm) at 13 over 4 in are 1.5, rounded down to 1 pair; ½ sts stay open to the fold, 0.154 in (0.391 cm)"},
		{seam.Seam{Count: 4, Gauge: g, Opening: length("0.3 in")}, "2 sts from hem to the fold less 0.3 in (0.762 cm) at 13 over 4 in are 1.025, rounded down to 1 pair; 1 st stays open to the fold, 0.308 in (0.782 cm)"},
		{seam.Seam{Count: 4, Gauge: g}, "2 sts from hem to the fold less 0 in (0 cm) at 13 over 4 in are 2, rounded down to 2 pairs; nothing stays open up to the fold"},
		{seam.Seam{Count: 90, ToTop: true, RowEnds: true, Gauge: repeats, Opening: length("0.1 in")},
			"90 row ends from hem to the top less 0.1 in (0.254 cm) at 2 repeats of 8 over 3.5 in are about 89.5429, rounded down to 89 pairs; 1 row end stays open to the top, 0.219 in (0.556 cm)"},
	} {
		j, err := c.s.Join()
		require.NoError(t, err)
		require.Equal(t, c.want, j.Explain())
	}
}

// Worked example D02: a published cardigan in nine sizes; twice the armhole
// depth is within 4 cm of the printed upper sleeve, so every size passes with
// the ease that is printed and fails with a centimetre more.
func TestCheckArmholePublished(t *testing.T) {
	depth := []int{20, 22, 22, 24, 24, 25, 27, 27, 29}
	sleeve := []int{41, 46, 46, 50, 50, 54, 56, 56, 60}
	for i := range depth {
		cm := func(n int) gauge.Measurement { return gauge.MeasurementOf(gauge.Int(n), gauge.Centimetre) }
		require.NoError(t, seam.CheckArmhole(cm(depth[i]), cm(sleeve[i]), cm(2*depth[i]-sleeve[i])))
		err := seam.CheckArmhole(cm(depth[i]), cm(sleeve[i]), cm(2*depth[i]-sleeve[i]+1))
		var fit *seam.FitError
		require.ErrorAs(t, err, &fit)
		require.True(t, fit.Got.Equal(cm(2*depth[i])) && fit.Want.Equal(cm(2*depth[i]+1)))
	}
}

func TestChecks(t *testing.T) {
	tenth, _ := gauge.Share(1, 10)
	in := func(n int) gauge.Measurement { return gauge.MeasurementOf(gauge.Int(n), gauge.Inch) }
	for _, c := range []struct {
		name string
		err  error
		want string // nothing where it passes
	}{
		{"armhole just large enough", seam.CheckArmhole(in(8), in(14), in(2)), ""},
		{"armhole too small", seam.CheckArmhole(in(7), in(15), in(0)), "armhole round 14 in (35.56 cm) is less than upper arm 15 in (38.1 cm)"},
		{"armhole too small with ease", seam.CheckArmhole(in(8), in(15), in(2)), "armhole round 16 in (40.64 cm) is less than upper arm and its ease 17 in (43.18 cm)"},
		{"no depth", seam.CheckArmhole(in(0), in(15), in(0)), "depth: got 0 in (0 cm), want more than nothing"},
		{"no arm", seam.CheckArmhole(in(8), in(0), in(0)), "upperArm: got 0 in (0 cm), want more than nothing"},
		{"ease takes the arm away", seam.CheckArmhole(in(8), in(15), in(-15)), "upperArm + ease: got 0 in (0 cm), want more than nothing"},
		// PC-27: a slit neck of 10 in width is 20 in round; a head of 22 in needs 11 in, or an edge that gives a tenth.
		{"neck too small", seam.CheckNeck(in(20), in(22), gauge.Int(0)), "neck opening 20 in (50.8 cm) is less than head 22 in (55.88 cm)"},
		{"neck that gives a tenth", seam.CheckNeck(in(20), in(22), tenth), ""},
		{"neck that gives too little", seam.CheckNeck(in(19), in(22), tenth), "stretched neck opening 20.9 in (53.086 cm) is less than head 22 in (55.88 cm)"},
		{"neck of nothing", seam.CheckNeck(in(0), in(22), tenth), "round: got 0 in (0 cm), want more than nothing"},
		{"stretch out of range", seam.CheckNeck(in(20), in(22), gauge.Int(2)), "stretch: got 2, want 0 to 1"},
		{"neck as wide as the shoulders", seam.CheckNeckWidth(in(15), in(15)), ""},
		{"neck wider than the shoulders", seam.CheckNeckWidth(in(16), in(15)), "neck width 16 in (40.64 cm) is more than shoulders 15 in (38.1 cm)"},
		{"no shoulders", seam.CheckNeckWidth(in(16), in(0)), "shoulders: got 0 in (0 cm), want more than nothing"},
		{"sleeve end", seam.CheckSleeve(in(9), in(8)), ""},
		{"sleeve end too small", seam.CheckSleeve(in(7), in(8)), "sleeve end 7 in (17.78 cm) is less than arm 8 in (20.32 cm)"},
		{"no sleeve", seam.CheckSleeve(in(0), in(8)), "round: got 0 in (0 cm), want more than nothing"},
	} {
		t.Run(c.name, func(t *testing.T) {
			if c.want == "" {
				require.NoError(t, c.err)
				return
			}
			require.EqualError(t, c.err, c.want)
		})
	}
}

func openFront(t *testing.T, counts ...int) (back, side []seam.Join) {
	t.Helper()
	for _, n := range counts {
		s := seam.Seam{Count: n, Gauge: over("13", "4 in"), Opening: length("1.25 in")}
		b, err := s.Join()
		require.NoError(t, err)
		s.Opening = length("9.5 in")
		a, err := s.Join()
		require.NoError(t, err)
		back, side = append(back, b), append(side, a)
	}
	return back, side
}

func TestOpenFrontSteps(t *testing.T) {
	back, side := openFront(t, 163, 166)
	steps, err := seam.OpenFrontSteps(back, side, "Wet block.")
	require.NoError(t, err)
	all := strings.Join(steps, "\n")
	for _, want := range []string{
		"Wet block.\nLay the two panels",
		"The fold at the shoulder lies 81½ (83) sts from either hem; a half means that it runs through the middle stitch.",
		"join 77 (78) pairs of sts",
		"join 50 (52) pairs of sts",
		"9¾ (9½) in [24.5 (24) cm] from the fold stay open for each armhole",
	} {
		require.Contains(t, all, want)
	}

	back, side = openFront(t, 164, 164)
	steps, err = seam.OpenFrontSteps(back, side, "")
	require.NoError(t, err)
	all = strings.Join(steps, "\n")
	require.Equal(t, row.US.Spell(seam.DefaultBlocking), steps[0])
	require.Contains(t, all, "join 77 pairs of sts", "one number where all are equal")
	require.NotContains(t, all, "middle stitch")
}

func TestOpenFrontStepsErrors(t *testing.T) {
	back, side := openFront(t, 163, 166)
	for name, f := range map[string]func() ([]string, error){
		"no size":             func() ([]string, error) { return seam.OpenFrontSteps(nil, nil, "") },
		"a size too few":      func() ([]string, error) { return seam.OpenFrontSteps(back, side[:1], "") },
		"panels of two kinds": func() ([]string, error) { return seam.OpenFrontSteps(back[:1], side[1:], "") },
		"join without a pair": func() ([]string, error) { return seam.OpenFrontSteps(make([]seam.Join, 1), side[:1], "") },
	} {
		steps, err := f()
		require.ErrorContains(t, err, "open front steps: ", name)
		require.Nil(t, steps, name)
	}
}

var _ error = (*seam.FitError)(nil)

func ExampleSeam_Join() {
	// A panel of 163 stitches folded over the shoulder; the armhole is to be 9½ in deep.
	side := seam.Seam{Name: "side", Count: 163, Gauge: over("13", "4 in"), Opening: length("9.5 in")}
	j, err := side.Join()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("join", j.Pairs, "pairs;", gauge.QuarterInch.Text(j.Opening), "stay open")
	side.Opening = length("26 in")
	_, err = side.Join()
	fmt.Println(errors.Is(err, seam.ErrNoPair), err)
	// Output:
	// join 50 pairs; 9¾ in stay open
	// true Opening: got 26 in (66.04 cm), want at most 24.769 in (62.913 cm), which leaves one pair of the 25.077 in (63.695 cm) edge to join
}

func ExampleJoin_Explain() {
	j, _ := seam.Seam{Name: "side", Count: 163, Gauge: over("13", "4 in"), Opening: length("9.5 in")}.Join()
	fmt.Println(j.Explain())
	// Output:
	// side: 81½ sts from hem to the fold less 9.5 in (24.13 cm) at 13 over 4 in are 50.625, rounded down to 50 pairs; 31½ sts stay open to the fold, 9.692 in (24.618 cm)
}

func ExampleJoin_ExplainIn() {
	j, _ := seam.Seam{Name: "side", Count: 163, Gauge: over("13", "4 in"), Opening: length("9.5 in")}.Join()
	fmt.Println(j.ExplainIn(gauge.Centimetre))
	// Output:
	// side: 81½ sts from hem to the fold less 24.13 cm (9.5 in) at 13 over 4 in are 50.625, rounded down to 50 pairs; 31½ sts stay open to the fold, 24.618 cm (9.692 in)
}

func ExampleSeam_Validate() {
	fmt.Println(seam.Seam{}.Validate())
	// Output:
	// Count: got 0, want 1 to 100000
}

func ExampleCheckArmhole() {
	fmt.Println(seam.CheckArmhole(length("7 in"), length("14 in"), length("1 in")))
	// Output:
	// armhole round 14 in (35.56 cm) is less than upper arm and its ease 15 in (38.1 cm)
}

func ExampleCheckNeck() {
	tenth, _ := gauge.Share(1, 10)
	fmt.Println(seam.CheckNeck(length("20 in"), length("22 in"), gauge.Int(0)))
	fmt.Println(seam.CheckNeck(length("20 in"), length("22 in"), tenth))
	// Output:
	// neck opening 20 in (50.8 cm) is less than head 22 in (55.88 cm)
	// <nil>
}

func ExampleCheckNeckWidth() {
	fmt.Println(seam.CheckNeckWidth(length("16 in"), length("15.5 in")))
	// Output:
	// neck width 16 in (40.64 cm) is more than shoulders 15.5 in (39.37 cm)
}

func ExampleCheckSleeve() {
	fmt.Println(seam.CheckSleeve(length("7 in"), length("8 in")))
	// Output:
	// sleeve end 7 in (17.78 cm) is less than arm 8 in (20.32 cm)
}

func ExampleFitError() {
	err := seam.CheckArmhole(length("7 in"), length("15 in"), length("0 in"))
	var fit *seam.FitError
	if errors.As(err, &fit) {
		fmt.Println("size S–M:", gauge.QuarterInch.Text(fit.Got), "round, want", gauge.QuarterInch.Text(fit.Want))
	}
	// Output:
	// size S–M: 14 in round, want 15 in
}

func ExampleFitError_Error() {
	fmt.Println(seam.CheckSleeve(length("7 in"), length("7.5 in")).Error())
	// Output:
	// sleeve end 7 in (17.78 cm) is less than arm 7.5 in (19.05 cm)
}

func ExampleOpenFrontSteps() {
	var back, side []seam.Join
	for _, n := range []int{163, 166} { // one a size
		b, _ := seam.Seam{Count: n, Gauge: over("13", "4 in"), Opening: length("1.25 in")}.Join()
		s, _ := seam.Seam{Count: n, Gauge: over("13", "4 in"), Opening: length("9.5 in")}.Join()
		back, side = append(back, b), append(side, s)
	}
	steps, err := seam.OpenFrontSteps(back, side, "Wash the panels, pin them out to size and let them dry.")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(steps[2])
	// Output:
	// Center back: count 77 (78) sts up from the back hem on both inner edges and place a marker at each. From the hem up, join 77 (78) pairs of sts, one st to one st, and stop at the markers: 1½ (1½) in [3.5 (4) cm] stay open below the fold for the neck. The rest of both edges stays open down the front.
}
