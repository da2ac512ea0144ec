package exact_test

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"example.com/panelmath/internal/exact"
)

// TestDigitsAgainstBig compares the short way, which fits 128 bits, with half
// away from zero worked out with math/big: small and large ratios, ties, and one
// unit to either side of a tie.
func TestDigitsAgainstBig(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 5))
	slow := func(n, d int64, places int) *big.Int {
		x := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(places)), nil)
		x.Mul(x, big.NewInt(n)).Abs(x).Lsh(x, 1)
		x.Add(x, big.NewInt(d)).Quo(x, new(big.Int).Lsh(big.NewInt(d), 1))
		if n < 0 {
			x.Neg(x)
		}
		return x
	}
	check := func(n, d int64, places int) {
		t.Helper()
		x, err := exact.New(n, d)
		if err != nil {
			t.Fatal(err)
		}
		if got, want := x.Digits(places), slow(n, d, places); got.Cmp(want) != 0 {
			t.Errorf("Digits(%d/%d, %d) = %v, want %v", n, d, places, got, want)
		}
	}
	for range 20000 {
		bits := 1 + r.IntN(62)
		n, d := r.Int64N(1<<bits)-r.Int64N(1<<bits), 1+r.Int64N(1<<(1+r.IntN(62)))
		check(n, d, r.IntN(21))
		// (2k+1)/2·10^-places is a tie.
		places := r.IntN(6)
		scale := int64(math.Pow10(places)) * 2
		k := 2*r.Int64N(1e9) + 1
		for _, sign := range []int64{1, -1} {
			check(sign*k, scale, places)
			check(sign*(k*1000+1), scale*1000, places)
			check(sign*(k*1000-1), scale*1000, places)
		}
	}
}
