package usage_test

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/usage"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

var kinds = []string{"sc", "hdc", "dc", "ch", "fhdc"}

// counts returns some of each of the first n kinds.
func counts(rng *rand.Rand, n int) []usage.Count {
	var cs []usage.Count
	for _, k := range kinds[:n] {
		cs = append(cs, usage.Count{Stitch: k, N: rng.IntN(500)})
	}
	return append(cs, usage.Count{Stitch: kinds[0], N: 1})
}

// Data that come from known rates give those rates back exactly, with nothing
// left over.
func TestFitRecoversKnownRates(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 3))
	for range 100 {
		n := rng.IntN(len(kinds)) + 1
		truth := make(map[string]decimal.Decimal)
		for _, k := range kinds[:n] {
			truth[k] = decimal.New(int64(rng.IntN(9000)+500), -2) // mm
		}
		var samples []usage.Sample
		for i := range n + rng.IntN(4) {
			s := usage.Sample{Name: fmt.Sprint(i), Counts: counts(rng, n)}
			s.Yarn.Unit = gauge.Millimetre
			for _, c := range s.Counts {
				s.Yarn.Value = s.Yarn.Value.Add(truth[c.Stitch].Mul(decimal.NewFromInt(int64(c.N))))
			}
			samples = append(samples, s)
		}
		f, err := usage.Fit(yarn.Label{}, samples...)
		require.NoError(t, err)
		require.Len(t, f.Rates.Rates, n)
		require.Equal(t, len(samples)-n, f.Spare)
		for _, r := range f.Rates.Rates {
			require.Equal(t, 0, r.Each.In(gauge.Millimetre).Rat().Cmp(truth[r.Stitch].Rat()), r.Stitch)
		}
		require.Equal(t, 0, f.Rates.Off.Sign())
		for _, r := range f.Residuals {
			require.Equal(t, 0, r.Off.Sign())
		}
	}
}

// Of inconsistent data the fit is the one of least squares: the residuals stand
// at right angles to the counts of every stitch, exactly.
func TestFitIsOfLeastSquares(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 8))
	fitted := 0
	for range 200 {
		n := rng.IntN(3) + 1
		var samples []usage.Sample
		for i := range n + 1 + rng.IntN(5) {
			s := usage.Sample{Name: fmt.Sprint(i), Counts: counts(rng, n)}
			total := 0
			for _, c := range s.Counts {
				total += c.N
			}
			s.Yarn = yarn.Length{Value: decimal.NewFromInt(int64(total*50 + rng.IntN(total+1)*10)), Unit: gauge.Millimetre}
			samples = append(samples, s)
		}
		f, err := usage.Fit(yarn.Label{}, samples...)
		var negative *usage.NegativeError
		if err != nil {
			require.ErrorAs(t, err, &negative)
			continue
		}
		fitted++
		for _, k := range kinds[:n] {
			var dot gauge.Measurement
			for i, s := range samples {
				for _, c := range s.Counts {
					if c.Stitch == k {
						dot = dot.Add(f.Residuals[i].Off.Times(gauge.Int(c.N)))
					}
				}
			}
			require.Equal(t, 0, dot.Sign(), k)
		}
		// The spread of the rates holds every sample.
		for _, s := range samples {
			l, err := f.Rates.Line(s.Name, s.Counts...)
			require.NoError(t, err)
			took := s.Yarn.Measurement()
			off := l.Length.Sub(took)
			if off.Sign() < 0 {
				off = off.Times(gauge.Int(-1))
			}
			require.LessOrEqual(t, off.Cmp(took.Times(f.Rates.Off)), 0)
		}
	}
	require.Greater(t, fitted, 100)
}

func TestFitNamesTheUndeterminedStitch(t *testing.T) {
	m := yarn.MustLength("9 m")
	for _, c := range []struct {
		name    string
		samples []usage.Sample
		want    []string
	}{
		{"one swatch of two stitches", []usage.Sample{{Counts: []usage.Count{{Stitch: "hdc", N: 10}, {Stitch: "ch", N: 4}}, Yarn: m}}, []string{`"hdc"`, `"ch"`}},
		{"the chains never change their share of the double crochet", []usage.Sample{
			{Counts: []usage.Count{{Stitch: "hdc", N: 100}}, Yarn: m},
			{Counts: []usage.Count{{Stitch: "hdc", N: 50}, {Stitch: "dc", N: 20}, {Stitch: "ch", N: 40}}, Yarn: m},
			{Counts: []usage.Count{{Stitch: "dc", N: 30}, {Stitch: "ch", N: 60}}, Yarn: m}}, []string{`"dc"`, `"ch"`}},
		{"a stitch that was never made", []usage.Sample{{Counts: []usage.Count{{Stitch: "hdc", N: 100}, {Stitch: "tr", N: 0}}, Yarn: m}}, []string{`"tr"`}},
		{"the same swatch twice", []usage.Sample{
			{Counts: []usage.Count{{Stitch: "hdc", N: 10}, {Stitch: "ch", N: 4}}, Yarn: m}, {Counts: []usage.Count{{Stitch: "hdc", N: 20}, {Stitch: "ch", N: 8}}, Yarn: yarn.MustLength("18 m")}}, []string{`"hdc"`, `"ch"`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			f, err := usage.Fit(yarn.Label{}, c.samples...)
			var u *usage.UndeterminedError
			require.ErrorAs(t, err, &u)
			require.Equal(t, c.want, u.Stitches)
			require.Empty(t, f.Rates.Rates)
		})
	}
}

func TestFitRefuses(t *testing.T) {
	hdc := []usage.Count{{Stitch: "hdc", N: 10}}
	m := yarn.MustLength("9 m")
	var many []usage.Count
	for i := range 17 {
		many = append(many, usage.Count{Stitch: fmt.Sprint("st", i), N: 1})
	}
	for _, c := range []struct {
		name string
		s    []usage.Sample
		want string
	}{
		{"no sample", nil, "Samples: got 0, want 1 to 256"},
		{"no count", []usage.Sample{{Yarn: m}}, "Samples[0].Counts: got 0, want at least 1"},
		{"a stitch without a name", []usage.Sample{{Counts: []usage.Count{{N: 1}}, Yarn: m}}, `Samples[0].Counts[0].Stitch: got "", want a name of 1 to 100 bytes`},
		{"a name without end", []usage.Sample{{Counts: []usage.Count{{Stitch: strings.Repeat("x", 101), N: 1}}, Yarn: m}}, `Samples[0].Counts[0].Stitch: got "` + strings.Repeat("x", 60) + `"… (101 bytes), want a name of 1 to 100 bytes`},
		{"a negative count", []usage.Sample{{Counts: []usage.Count{{Stitch: "hdc", N: -1}}, Yarn: m}}, "Samples[0].Counts[0].N: got -1, want 0 to 10000000"},
		{"neither yarn nor mass", []usage.Sample{{Counts: hdc}}, "Samples[0].Yarn: got both or neither of a length and a mass, want one of the two"},
		{"both", []usage.Sample{{Counts: hdc, Yarn: m, Mass: yarn.MustMass("1 g")}}, "Samples[0].Yarn: got both or neither of a length and a mass, want one of the two"},
		{"weighed without a label", []usage.Sample{{Counts: hdc, Mass: yarn.MustMass("1 g")}}, "Samples[0].Label.Length.Unit: got Unit(0), want yd, m, in, ft, cm or mm"},
		{"took nothing", []usage.Sample{{Counts: hdc, Yarn: yarn.MustLength("0 m")}}, "Samples[0].Yarn: got nothing, want more than 0"},
		{"too many kinds", []usage.Sample{{Counts: many, Yarn: m}}, "Samples: got more than 16 kinds of stitch, want at most 16"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := usage.Fit(yarn.Label{}, c.s...)
			require.EqualError(t, err, c.want)
		})
	}
}

func TestMeasuredRefuses(t *testing.T) {
	for _, c := range []struct {
		stitch string
		n      int
		l      yarn.Length
		want   string
	}{
		{"", 1, yarn.MustLength("1 m"), `Counts[0].Stitch: got "", want a name of 1 to 100 bytes`},
		{"hdc", 0, yarn.MustLength("1 m"), "N: got 0, want more than 0"},
		{"hdc", 1, yarn.Length{}, "Yarn.Unit: got Unit(0), want yd, m, in, ft, cm or mm"},
		{"hdc", 1, yarn.MustLength("0 m"), "Yarn: got 0 m, want more than 0"},
	} {
		_, err := usage.Measured(c.stitch, c.n, c.l)
		require.EqualError(t, err, c.want)
	}
}

func TestLineRefuses(t *testing.T) {
	rates := usage.Rates{Rates: []usage.Rate{{Stitch: "hdc", Each: yarn.MustLength("50 m").Measurement()}}}
	_, err := rates.Line("x")
	require.EqualError(t, err, "Counts: got 0, want at least 1")
	_, err = rates.Line("x", usage.Count{Stitch: "hdc", N: 10_000})
	require.ErrorIs(t, err, gauge.ErrBounds)
	rates.Off = gauge.Int(1)
	_, err = rates.Line("x", usage.Count{Stitch: "hdc", N: 1})
	require.EqualError(t, err, "Rates.Off: got 1.0000, want at least 0 and less than 1")
}

func BenchmarkFit(b *testing.B) {
	rng := rand.New(rand.NewPCG(2, 3))
	var samples []usage.Sample
	for range 12 {
		cs := counts(rng, 5)
		total := 0
		for i, c := range cs {
			total += c.N * (40 + 5*i)
		}
		samples = append(samples, usage.Sample{Counts: cs, Yarn: yarn.Length{Value: decimal.NewFromInt(int64(total + rng.IntN(9))), Unit: gauge.Millimetre}})
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := usage.Fit(yarn.Label{}, samples...); err != nil {
			b.Fatal(err)
		}
	}
}
