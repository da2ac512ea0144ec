package gauge_test

import (
	"fmt"
	"math/big"
	"math/rand/v2"
	"testing"

	"example.com/panelmath/gauge"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

var directions = [...]gauge.Direction{gauge.Nearest, gauge.NearestTiesDown, gauge.Up, gauge.Down}

// same compares one count with the reference, by Over.Round and by Counter.
func same(t *testing.T, m gauge.Measurement, o gauge.Over, r gauge.Rule) {
	t.Helper()
	x := slowExact(m.In(gauge.Millimetre).Rat(), o)
	value, below, above, tie, ok := slowCount(x, r)
	got, err := o.Round(m, r)
	counter, err2 := o.Counter(r)
	if err2 != nil {
		t.Fatal(err2)
	}
	got2, err2 := counter.Round(m)
	if (err == nil) != ok || fmt.Sprint(err) != fmt.Sprint(err2) {
		t.Fatalf("%v at %v by %v: error %v and %v, want a count: %v", m, o, r, err, err2, ok)
	}
	if !ok {
		return
	}
	for _, c := range [...]gauge.Count{got, got2} {
		if c.Value != value || c.Below != below || c.Above != above || c.Tie != tie || c.Exact.Rat().Cmp(x) != 0 {
			t.Fatalf("%v at %v by %v = %d (%d, %d, tie %v, exact %v), want %d (%d, %d, tie %v, exact %v)",
				m, o, r, c.Value, c.Below, c.Above, c.Tie, c.Exact, value, below, above, tie, x)
		}
		off := new(big.Rat).Sub(big.NewRat(int64(value), 1), x)
		off.Mul(off, m.In(gauge.Millimetre).Rat())
		if back := new(big.Rat).Mul(c.Deviation().In(gauge.Millimetre).Rat(), x); back.Cmp(off) != 0 {
			t.Fatalf("%v at %v by %v is off by %v", m, o, r, c.Deviation())
		}
	}
}

var oracleRules = [...]gauge.Rule{
	{}, {Multiple: 2}, {Multiple: 2, Plus: 1}, {Multiple: 4, Plus: 2}, {Multiple: 6, Plus: 1}, {Multiple: 3, Plus: -1}, {Multiple: 12, Plus: 14},
	{Least: 9}, {Multiple: 5, Plus: 3, Least: 20},
}

// A dense grid of lengths, counts and spans.
func TestRoundGrid(t *testing.T) {
	spans := []gauge.Length{gauge.MustLength("4 in"), gauge.MustLength("10 cm"), gauge.MustLength("7 cm"), gauge.MustLength("3.5 in")}
	eighth, err := gauge.Share(1, 8)
	require.NoError(t, err)
	for n := range 81 {
		for unit := gauge.Centimetre; unit <= gauge.Inch; unit += gauge.Inch - gauge.Centimetre {
			m := gauge.MeasurementOf(gauge.Int(n).Mul(eighth), unit)
			for count := 1; count <= 60; count += 3 {
				o := gauge.Over{Count: decimal.New(int64(count)*5, -1), Span: spans[(n+count)%len(spans)]}
				for _, r := range oracleRules {
					for _, d := range directions {
						r.Direction = d
						same(t, m, o, r)
					}
				}
			}
		}
	}
}

// Numbers of every length up to the bounds, and answers of every size.
func TestRoundLarge(t *testing.T) {
	rnd := rand.New(rand.NewPCG(5, 6))
	number := func(most int) decimal.Decimal { // up to 30 digits, below 10^most
		n := 1 + rnd.IntN(30)
		s := fmt.Sprint(1 + rnd.IntN(9))
		for len(s) < n {
			s += fmt.Sprint(rnd.IntN(10))
		}
		v, _ := new(big.Int).SetString(s, 10)
		return decimal.NewFromBigInt(v, int32(max(-20, rnd.IntN(most+1)-n)))
	}
	counted := 0
	for range 20000 {
		o := gauge.Over{Count: number(3), Of: rnd.IntN(9), Span: gauge.Length{Value: number(2), Unit: gauge.Centimetre}}
		l := gauge.Length{Value: number(4), Unit: gauge.Millimetre}
		r := oracleRules[rnd.IntN(len(oracleRules))]
		r.Direction = directions[rnd.IntN(len(directions))]
		if o.Validate() != nil || l.Validate() != nil {
			continue
		}
		if x := slowExact(l.Measurement().In(gauge.Millimetre).Rat(), o); x.Cmp(big.NewRat(gauge.MaxCount-20, 1)) > 0 {
			continue
		}
		counted++
		same(t, l.Measurement(), o, r)
	}
	require.Greater(t, counted, 5000)
}

// Exact ties, made by choosing the answer first, and the same one unit of the
// twentieth decimal of a millimetre to either side.
func TestRoundTies(t *testing.T) {
	rnd := rand.New(rand.NewPCG(7, 8))
	ulp := gauge.Length{Value: decimal.New(1, -20), Unit: gauge.Millimetre}.Measurement()
	half, err := gauge.Share(1, 2)
	require.NoError(t, err)
	for range 5000 {
		o := gauge.Over{Count: decimal.New(1+rnd.Int64N(400), -1), Of: rnd.IntN(4),
			Span: gauge.Length{Value: decimal.New(1+rnd.Int64N(400), -1), Unit: gauge.Unit(1 + rnd.IntN(6))}}
		r := gauge.Rule{Multiple: 1 + rnd.IntN(12), Plus: rnd.IntN(20) - 5}
		below := 20 + rnd.IntN(200)
		for !r.Legal(below) {
			below++
		}
		m, err := o.Measure(gauge.Int(r.Multiple).Mul(half).Add(gauge.Int(below)))
		require.NoError(t, err)
		for _, r.Direction = range directions {
			same(t, m, o, r)
			same(t, m.Add(ulp), o, r)
			same(t, m.Sub(ulp), o, r)
		}
		r.Direction = gauge.Nearest
		c, err := o.Round(m, r)
		require.NoError(t, err)
		require.True(t, c.Tie)
		require.Equal(t, below+r.Multiple, c.Value)
		c, err = o.Round(m.Sub(ulp), r)
		require.NoError(t, err)
		require.False(t, c.Tie)
		require.Equal(t, below, c.Value)
	}
}

// A longer length never has fewer stitches, and a count measured and rounded
// again is the same count.
func TestRoundInvariants(t *testing.T) {
	o := gauge.MustGauge("13 sts and 9 rows = 4 in").Stitches
	quarter, err := gauge.Share(1, 4)
	require.NoError(t, err)
	for _, r := range oracleRules {
		for _, d := range directions[:3] {
			r.Direction = d
			last := 0
			for n := range 400 {
				c, err := o.Round(gauge.MeasurementOf(gauge.Int(n).Mul(quarter), gauge.Inch), r)
				require.NoError(t, err)
				require.GreaterOrEqual(t, c.Value, last)
				require.True(t, r.Legal(c.Value))
				last = c.Value
				m, err := o.Measure(gauge.Int(c.Value))
				require.NoError(t, err)
				again, err := o.Round(m, r)
				require.NoError(t, err)
				require.Equal(t, c.Value, again.Value)
				require.False(t, again.Tie)
			}
		}
	}
}

// Within lists what Legal says, number by number.
func TestWithinAgainstLegal(t *testing.T) {
	half, err := gauge.Share(1, 2)
	require.NoError(t, err)
	for _, r := range oracleRules {
		for low := -5; low < 60; low += 3 {
			for width := -1; width < 30; width += 4 {
				var want []int
				lo, hi := gauge.Int(low).Add(half), gauge.Int(low+width)
				for n := max(0, low+1); n <= low+width; n++ {
					if r.Legal(n) {
						want = append(want, n)
					}
				}
				got, err := r.Within(lo, hi)
				require.NoError(t, err)
				require.Equal(t, want, got, "%v within %v to %v", r, lo, hi)
			}
		}
	}
}
