package exact

import (
	"fmt"
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// onBig returns x on the big path, whatever its size.
func onBig(x Ratio) Ratio { return Ratio{big: x.Rat()} }

// ends are numbers at which an int64 runs out, and their neighbours.
var ends = [...]int64{0, 1, -1, 2, -2, 3, 7, -10, 254, 1016, 1 << 31, -1 << 31, 3037000499, 3037000500, -3037000500,
	largest - 1, largest, largest + 1, -largest - 1, math.MaxInt64, math.MaxInt64 - 1, math.MinInt64, math.MinInt64 + 1}

// ratios returns ratios of all ends, and some at random of every size.
func ratios(t *testing.T) []Ratio {
	out := []Ratio{{}}
	for _, n := range ends {
		for _, d := range ends {
			x, err := New(n, d)
			if d == 0 {
				require.ErrorIs(t, err, ErrZero)
				continue
			}
			require.NoError(t, err)
			require.Zero(t, x.Rat().Cmp(new(big.Rat).SetFrac(big.NewInt(n), big.NewInt(d))), "%d/%d", n, d)
			out = append(out, x)
		}
	}
	r := rand.New(rand.NewPCG(1, 2))
	for range 100 {
		x, _ := New(r.Int64()>>r.IntN(63), 1+r.Int64()>>r.IntN(63))
		out = append(out, x)
	}
	return out
}

// Every operation against math/big, on both paths and across them.
func TestAgainstBig(t *testing.T) {
	all := ratios(t)
	for i, x := range all {
		require.Zero(t, x.Neg().Rat().Cmp(new(big.Rat).Neg(x.Rat())))
		require.Zero(t, x.Reduced().Rat().Cmp(x.Rat()))
		require.Equal(t, x.Rat().Sign(), x.Sign())
		require.Equal(t, onBig(x).Sign(), x.Sign())
		for j := i; j < len(all); j += 7 {
			y := all[j]
			for _, p := range [...][2]Ratio{{x, y}, {y, x}, {onBig(x), y}, {x, onBig(y)}, {onBig(x), onBig(y)}} {
				a, b := p[0], p[1]
				same := func(op string, got Ratio, want *big.Rat) {
					if got.Rat().Cmp(want) != 0 {
						t.Fatalf("%v %s %v = %v, want %v", a.Rat(), op, b.Rat(), got.Rat(), want)
					}
				}
				same("+", a.Add(b), new(big.Rat).Add(a.Rat(), b.Rat()))
				same("-", a.Sub(b), new(big.Rat).Sub(a.Rat(), b.Rat()))
				same("*", a.Mul(b), new(big.Rat).Mul(a.Rat(), b.Rat()))
				if got := a.Cmp(b); got != a.Rat().Cmp(b.Rat()) {
					t.Fatalf("%v cmp %v = %d", a.Rat(), b.Rat(), got)
				}
				q, err := a.Quo(b)
				if b.Sign() == 0 {
					require.ErrorIs(t, err, ErrZero)
					continue
				}
				same("/", q, new(big.Rat).Quo(a.Rat(), b.Rat()))
			}
		}
	}
}

// A ratio has one shape: what fits in int64 is never kept as a big.Rat.
func TestShape(t *testing.T) {
	third, _ := New(1, 3)
	huge := Int(math.MaxInt64).Mul(Int(math.MaxInt64))
	require.NotNil(t, huge.big)
	back, err := huge.Quo(huge)
	require.NoError(t, err)
	require.Nil(t, back.big)
	require.Nil(t, FromBig(third.Rat()).big)
	require.Nil(t, onBig(third).Neg().big)
	require.NotNil(t, Int(math.MinInt64).big)
	r := big.NewRat(1, 3)
	x := FromBig(r)
	r.SetInt64(9)
	require.Zero(t, x.Cmp(third), "FromBig keeps hold of its argument")
	y := onBig(third)
	y.Rat().SetInt64(9)
	require.Zero(t, y.Cmp(third), "Rat hands out its own")
}

// The neighbours among k·m + p, found by walking.
func walk(x *big.Rat, m, p int64) (below, above int64) {
	floor := new(big.Int).Div(x.Num(), x.Denom()).Int64()
	below = floor
	for ((below-p)%m+m)%m != 0 {
		below--
	}
	above = below
	if x.Cmp(new(big.Rat).SetInt64(below)) != 0 {
		above += m
	}
	return below, above
}

func TestSnap(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 20000 {
		x, _ := New(r.Int64N(1<<r.IntN(41)+1)-r.Int64N(1<<r.IntN(41)+1), 1+r.Int64N(1<<r.IntN(20)))
		m, p := 1+r.Int64N(50), r.Int64N(200)-100
		wantBelow, wantAbove := walk(x.Rat(), m, p)
		middle := big.NewRat(wantBelow+wantAbove, 2)
		wantHalf := x.Rat().Cmp(middle)
		for _, x := range [...]Ratio{x, onBig(x)} {
			below, above, half, err := x.Snap(m, p)
			require.NoError(t, err)
			if below != wantBelow || above != wantAbove || half != wantHalf {
				t.Fatalf("%v.Snap(%d, %d) = %d, %d, %d, want %d, %d, %d", x.Rat(), m, p, below, above, half, wantBelow, wantAbove, wantHalf)
			}
		}
	}
}

// A tie, and one unit of an enormous denominator to either side of it.
func TestSnapTies(t *testing.T) {
	for _, digits := range []int64{3, 10, 17, 30, 60} {
		unit := new(big.Rat).SetFrac(big.NewInt(1), new(big.Int).Exp(big.NewInt(10), big.NewInt(digits), nil))
		for _, c := range []struct{ m, p, k int64 }{{1, 0, 12}, {4, 2, 25}, {6, 1, -3}, {7, -2, 0}, {100000, 3, 1}} {
			tie := new(big.Rat).SetFrac64(2*(c.k*c.m+c.p)+c.m, 2)
			for side := -1; side <= 1; side++ {
				x := new(big.Rat).Add(tie, new(big.Rat).Mul(unit, big.NewRat(int64(side), 1)))
				below, above, half, err := FromBig(x).Snap(c.m, c.p)
				require.NoError(t, err)
				require.Equal(t, [3]int64{c.k*c.m + c.p, c.k*c.m + c.p + c.m, int64(side)}, [3]int64{below, above, int64(half)}, "%v by %d + %d", x, c.m, c.p)
			}
		}
	}
}

// Below zero as above it: the larger neighbour of -2.5 is -2.
func TestSnapNegative(t *testing.T) {
	x, _ := New(-5, 2)
	below, above, half, err := x.Snap(1, 0)
	require.NoError(t, err)
	require.Equal(t, [3]int64{-3, -2, 0}, [3]int64{below, above, int64(half)})
}

// Both paths refuse the same numbers.
func TestSnapLarge(t *testing.T) {
	for _, x := range ratios(t) {
		for _, mp := range [...][2]int64{{1, 0}, {4, 2}, {3, -1}, {100000, 100000}, {largest, -largest}} {
			below, above, half, err := x.Snap(mp[0], mp[1])
			below2, above2, half2, err2 := onBig(x).Snap(mp[0], mp[1])
			require.Equal(t, err, err2, "%v by %v", x.Rat(), mp)
			require.Equal(t, [3]int64{below, above, int64(half)}, [3]int64{below2, above2, int64(half2)}, "%v by %v", x.Rat(), mp)
			if err != nil {
				require.ErrorIs(t, err, ErrLarge)
				continue
			}
			require.LessOrEqual(t, max(below, -below), int64(largest))
		}
	}
}

func TestDigits(t *testing.T) {
	for _, c := range []struct {
		n, d   int64
		places int
		want   string
	}{
		{1, 8, 2, "13"}, {-1, 8, 2, "-13"}, {1, 3, 3, "333"}, {2, 3, 0, "1"}, {5, 2, 0, "3"}, {-5, 2, 0, "-3"}, {0, 1, 4, "0"}, {7, 1, 1, "70"},
	} {
		t.Run(fmt.Sprintf("%d over %d to %d", c.n, c.d, c.places), func(t *testing.T) {
			x, err := New(c.n, c.d)
			require.NoError(t, err)
			require.Equal(t, c.want, x.Digits(c.places).String())
		})
	}
}

func ExampleRatio_Snap() {
	x, _ := New(518*20, 100)              // 518 mm at 20 sts over 100 mm: 103.6
	below, above, half, _ := x.Snap(4, 2) // multiple of 4 + 2
	fmt.Println(below, above, half)
	// Output: 102 106 -1
}

func ExampleRatio_Floor() {
	x, _ := New(-5, 2)
	below, _ := x.Floor()
	above, _ := x.Ceil()
	fmt.Println(below, above)
	// Output: -3 -2
}
