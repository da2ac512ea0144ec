package weight_test

import (
	"encoding/csv"
	"math"
	"math/big"
	"os"
	"slices"
	"strings"
	"testing"
	"time"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/weight"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

// Every conversion of length, mass and grist that GNU units computed; see
// testdata/README.md. A double carries its last digits' rounding.
func TestUnitsAgainstGNU(t *testing.T) {
	f, err := os.Open("testdata/unit-conversions.csv")
	require.NoError(t, err)
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	checked := 0
	for _, row := range rows[1:] {
		x, err := gauge.ParseRatio(row[0])
		require.NoError(t, err)
		want, ok := new(big.Rat).SetString(row[3])
		require.True(t, ok)
		got, ok := convert(x, row[1], row[2])
		if !ok {
			continue // gauges and areas to a mass belong elsewhere
		}
		checked++
		off := new(big.Rat).Quo(got.Rat(), want)
		off.Sub(off, big.NewRat(1, 1)).Abs(off)
		require.Negative(t, off.Cmp(big.NewRat(1, 100_000_000_000_000)), "%v: got %v", row, got.Text(20))
	}
	require.Equal(t, 259, checked)
}

// convert returns x of one unit in another, if both are of one kind here.
func convert(x gauge.Ratio, from, to string) (gauge.Ratio, bool) {
	plain := func(s string) string { return strings.NewReplacer("(", "", ")", "", "_", " ").Replace(s) }
	if a, err := weight.ParseUnit(plain(from)); err == nil {
		b, err := weight.ParseUnit(plain(to))
		if err != nil {
			return gauge.Ratio{}, false
		}
		g, err := weight.GristOf(x, a)
		return g.In(b), err == nil
	}
	if a, err := gauge.ParseUnit(from); err == nil {
		b, err := gauge.ParseUnit(to)
		return gauge.MeasurementOf(x, a).In(b), err == nil
	}
	if a, err := yarn.ParseMassUnit(from); err == nil {
		b, err := yarn.ParseMassUnit(to)
		return yarn.MassOf(x, a).In(b), err == nil
	}
	a, oka := strings.CutSuffix(from, "^2")
	b, okb := strings.CutSuffix(to, "^2")
	u, erru := gauge.ParseUnit(a)
	v, errv := gauge.ParseUnit(b)
	if oka && okb && erru == nil && errv == nil {
		one := gauge.MeasurementOf(gauge.Int(1), u)
		return yarn.Rectangle(one, one).Times(x).In(v), true
	}
	return gauge.Ratio{}, false
}

// The scope of ASTM D2260, consistent with ISO 2947.
func TestCountsOfASTM(t *testing.T) {
	g := weight.MustGrist("1 Nm")
	for u, want := range map[weight.Unit]string{
		weight.CottonCount: "0.590541", weight.WorstedCount: "0.885812", weight.WoollenRun: "0.310034", weight.LinenLea: "1.65352", weight.YardsPerPound: "496.055",
	} {
		places := len(want) - strings.IndexByte(want, '.') - 1
		require.Equal(t, want, g.In(u).Text(places), u.String())
	}
	require.Equal(t, "590.54", weight.MustGrist("1 tex").In(weight.CottonCount).Text(2))
}

// m/100 g to a yd/lb: 0.201590692542; yd/lb to a m/100 g: 4.960546478565
// (the definitions of 1959).
func TestYardsPerPound(t *testing.T) {
	require.Equal(t, "0.201590692542", weight.MustGrist("1 yd/lb").In(weight.MetresPer100g).Text(12))
	require.Equal(t, "4.960546478565", weight.MustGrist("1 m/100 g").In(weight.YardsPerPound).Text(12))
}

// Every unit there and back, exactly.
func TestEveryUnitRoundTrips(t *testing.T) {
	x, err := gauge.Share(1234567, 891)
	require.NoError(t, err)
	for u := weight.YardsPerPound; u.Valid(); u++ {
		t.Run(u.String(), func(t *testing.T) {
			g, err := weight.GristOf(x, u)
			require.NoError(t, err)
			require.True(t, g.In(u).Equal(x))
			b, err := g.MarshalText()
			require.NoError(t, err)
			var back weight.Grist
			require.NoError(t, back.UnmarshalText(b))
			require.Equal(t, 0, back.Cmp(g))
			name, err := u.MarshalText()
			require.NoError(t, err)
			var v weight.Unit
			require.NoError(t, v.UnmarshalText(name))
			require.Equal(t, u, v)
		})
	}
}

func TestGristRefuses(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"0 tex", `parse grist: "0 tex": want more than 0`},
		{"tex", `parse grist: "tex": want a number and a unit of grist, like 210 m/100 g or 1000 yd/lb`},
		{"1..2 tex", `parse grist: "1..2 tex": want a number like 210 or 1000`},
		{"-5 tex", `parse grist: "-5 tex": want a number and a unit of grist, like 210 m/100 g or 1000 yd/lb`},
		{"", `parse grist: "": want a number and a unit of grist, like 210 m/100 g or 1000 yd/lb`},
	} {
		t.Run(c.text, func(t *testing.T) {
			_, err := weight.ParseGrist(c.text)
			require.EqualError(t, err, c.want)
		})
	}
	_, err := weight.ParseGrist(strings.Repeat("1", 10_001))
	require.ErrorIs(t, err, gauge.ErrBounds)
	_, err = weight.ParseGrist(strings.Repeat("1", 9_000) + " tex")
	require.ErrorIs(t, err, gauge.ErrBounds)
	require.Panics(t, func() { weight.MustGrist("x") })
	_, err = weight.GristOf(gauge.Int(1), 99)
	require.EqualError(t, err, "Unit: got Unit(99), want a unit of grist")
	_, err = weight.GristOf(gauge.Int(-1), weight.Tex)
	require.EqualError(t, err, "Grist: got -1.00, want more than 0")
	_, err = weight.OfLabel(yarn.Label{})
	require.Error(t, err)
	_, err = weight.Together()
	require.EqualError(t, err, "Strands: got 0, want 1 to 16")
	_, err = weight.Together(weight.MustGrist("1 tex"), weight.Grist{})
	require.EqualError(t, err, "Strands[1].Grist: got none, want more than 0")
	_, err = weight.Grist{}.MarshalText()
	require.Error(t, err)
	_, err = weight.Unit(0).MarshalText()
	require.Error(t, err)
	var g weight.Grist
	require.Error(t, g.UnmarshalText([]byte("fine")))
	var u weight.Unit
	require.Error(t, u.UnmarshalText([]byte("fine")))
	require.Equal(t, 0, weight.MustGrist("1 tex").In(0).Sign())
	require.Equal(t, 0, weight.Grist{}.In(weight.Tex).Sign())
	_, err = weight.Basis(9).MarshalText()
	require.Error(t, err)
	var b weight.Basis
	require.Error(t, b.UnmarshalText([]byte("smell")))
}

// The embedded tables hold what they should: every category, sources that the
// package doc lists, ends in order.
func TestRanges(t *testing.T) {
	doc, err := os.ReadFile("doc.go")
	require.NoError(t, err)
	rs := weight.Ranges()
	require.Len(t, rs, 105)
	for _, r := range rs {
		require.True(t, r.Category >= 0 && r.Category <= 7, r)
		require.Contains(t, []string{"one-source", "two-sources"}, r.Check, r)
		require.NotEmpty(t, r.Name, r)
		if !r.Open {
			require.False(t, r.Low.GreaterThan(r.High), r)
		}
		for _, code := range strings.Split(r.Source, ";") {
			require.Contains(t, string(doc), "\n//   - "+code+":", r)
		}
	}
	for category := range 8 {
		for _, b := range []weight.Basis{weight.CrochetGauge, weight.KnitGauge, weight.Hook, weight.Needle, weight.Wraps, weight.ByGrist} {
			require.True(t, slices.ContainsFunc(rs, func(r weight.Range) bool { return r.Category == category && r.Basis == b }), "%d %v", category, b)
		}
	}
}

// Both ends of every range are in it, and the neighbouring counts are not where
// no other range holds them.
func TestRangesIncludeTheirEnds(t *testing.T) {
	for _, r := range weight.Ranges() {
		if r.Basis != weight.CrochetGauge && r.Basis != weight.KnitGauge {
			continue
		}
		for _, end := range []decimal.Decimal{r.Low, r.High} {
			if end.IsZero() {
				continue
			}
			m := weight.Measured{Knit: gauge.Over{Count: end, Span: gauge.MustLength("4 in")}}
			if r.Basis == weight.CrochetGauge {
				m = weight.Measured{Crochet: m.Knit}
			}
			v, err := weight.Categories(m)
			require.NoError(t, err)
			require.Contains(t, v.Explain(), r.Basis.String()+": "+r.String())
			if r.Edition == "current" {
				require.Contains(t, v.All, r.Category, r)
			}
		}
	}
}

// Knitting and Crocheting All-in-One For Dummies prints gauges beside its yarn
// quantities; its bands are wider than the standard's, so the middle of each is
// looked up. https://www.dummies.com/article/home-auto-hobbies/crafts/knitting-crocheting/estimating-how-much-yarn-to-buy-197579/
func TestPlanningTableCategories(t *testing.T) {
	for _, c := range []struct {
		sts      string // over 1 in
		category int
	}{{"7.5", 1}, {"5.5", 3}, {"4.5", 4}, {"2.25", 6}} {
		v, err := weight.Categories(weight.Measured{Knit: gauge.Over{Count: decimal.RequireFromString(c.sts), Span: gauge.MustLength("1 in")}})
		require.NoError(t, err)
		require.Contains(t, v.All, c.category, c.sts)
	}
}

func TestCategoriesOverlapAndGap(t *testing.T) {
	v, err := weight.Categories(weight.Measured{Knit: over(41, "8 in")}) // 20.5 over 4 in: no row of the table
	require.NoError(t, err)
	require.Empty(t, v.All)
	require.Equal(t, []weight.Basis{weight.KnitGauge}, v.Gaps)
	require.Equal(t, []string{"no category fits all that was measured: check the figures", "no table has a range for the knit gauge"}, v.Explain())
	v, err = weight.Categories(weight.Measured{Hook: gauge.MustLength("20 mm")})
	require.NoError(t, err)
	require.Equal(t, []int{7}, v.All)
	require.Equal(t, "category 7 fits all that was measured", v.Explain()[0])
	require.Equal(t, "hook: 7 jumbo: 15 and more mm (MM)", v.Explain()[1])
	require.Contains(t, v.Explain()[2], "edition 2014-2018")
	require.Equal(t, "knit gauge: 7 jumbo: 6 and fewer sts = 4 in (MM)", func() string {
		v, err := weight.Categories(weight.Measured{Knit: over(2, "4 in")})
		require.NoError(t, err)
		return v.Explain()[1]
	}())
	v, err = weight.Categories(weight.Measured{Grist: weight.MustGrist("210 m/100 g")})
	require.NoError(t, err)
	require.Contains(t, v.Any, 3)
	require.Contains(t, v.Any, 4)
}

func TestCategoriesRefuses(t *testing.T) {
	for _, c := range []struct {
		name string
		m    weight.Measured
		want string
	}{
		{"nothing", weight.Measured{}, "Measured: got nothing, want at least one figure"},
		{"gauge over nothing", weight.Measured{Crochet: over(14, "0 in")}, "Measured.Crochet.Span: got 0 in, want more than 0"},
		{"hook of nothing", weight.Measured{Hook: gauge.MustLength("0 mm")}, "Measured.Hook: got 0 mm, want more than 0"},
		{"needle without unit", weight.Measured{Needle: gauge.Length{Value: decimal.NewFromInt(3)}}, "Measured.Needle.Unit: got Unit(0), want mm, cm, m, in, ft or yd"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := weight.Categories(c.m)
			require.EqualError(t, err, c.want)
		})
	}
}

func TestSubstitute(t *testing.T) {
	from := yarn.MustLabel("200 m = 100 g")
	s, err := weight.Substitute(yarn.MustLength("600 m").Measurement(), from, yarn.MustLabel("150 m = 75 g"))
	require.NoError(t, err)
	require.Equal(t, 4, s.Skeins)
	require.Equal(t, "grist: the same, 200 m/100 g", s.Explain()[1])
	s, err = weight.Substitute(yarn.MustLength("600 m").Measurement(), from, yarn.MustLabel("80 m = 50 g"))
	require.NoError(t, err)
	require.Equal(t, "-1/5", s.Finer.String())
	require.Contains(t, s.Explain()[1], "20% thicker")

	_, err = weight.Substitute(gauge.Measurement{}, yarn.Label{}, from)
	require.ErrorContains(t, err, "From.Label.Length")
	_, err = weight.Substitute(gauge.Measurement{}, from, yarn.Label{})
	require.ErrorContains(t, err, "To.Label.Length")
	_, err = weight.Substitute(gauge.MustLength("-1 in").Measurement(), from, from)
	require.EqualError(t, err, "Total: got less than nothing, want at least 0")
}

func FuzzParseGrist(f *testing.F) {
	for _, s := range []string{"1000 yd/lb", "Nm 14", "2/28 Nm", "13000/3 m/100 g", "500 tex", "cotton count 30", "1e9 den", "/"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		g, err := weight.ParseGrist(s)
		if err != nil {
			require.Error(t, g.Validate(), "a partial result beside an error")
			return
		}
		require.NoError(t, g.Validate())
		if text := g.String(); len(text) < 120 {
			back, err := weight.ParseGrist(text)
			require.NoError(t, err)
			require.Equal(t, 0, back.Cmp(g))
		}
	})
}

func BenchmarkCategories(b *testing.B) {
	m := weight.Measured{Crochet: over(13, "4 in"), Grist: weight.MustGrist("210 m/100 g")}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := weight.Categories(m); err != nil {
			b.Fatal(err)
		}
	}
}

// Numbers out of bounds are not written out, and cost nothing.
func TestRangeOutOfBounds(t *testing.T) {
	begun := time.Now()
	for _, e := range []int32{-2_000_000, 30_000_000, math.MaxInt32} {
		for _, high := range []int64{0, 3} {
			r := weight.Range{Low: decimal.New(1, e), High: decimal.New(high, 0)}
			require.Less(t, len(r.String()), 100)
			require.Less(t, len(weight.Verdict{Fits: []weight.Range{r}}.Explain()[1]), 100)
		}
	}
	require.Less(t, time.Since(begun), time.Second)
	require.Contains(t, weight.Range{Low: decimal.New(90, -1), High: decimal.New(9, 0)}.String(), ": 9 ")
}

func TestSubstituteSaysOneSkein(t *testing.T) {
	label := yarn.MustLabel("230 yd = 100 g")
	s, err := weight.Substitute(gauge.MustLength("90 m").Measurement(), label, label)
	require.NoError(t, err)
	require.Contains(t, s.Explain()[0], "so 1 skein, ")
}
