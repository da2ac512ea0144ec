package main

import (
	"fmt"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// The oracle: the default brief worked again with math/big alone, trying every
// legal count from the top. It shares no code with the library. The body
// measures are copied from the standard's table, child (chest and upper arm in
// centimetres; Craft Yarn Council's www.YarnStandards.com, from memory).
var (
	chests  = []string{"58.5", "63.5", "67", "71"}
	arms    = []string{"19", "20.5", "21.5", "22"}
	lengths = []int64{40, 43, 46, 49}
	depths  = []int64{14, 15, 16, 17}
	labels  = []string{"4", "6", "8", "10"}
)

func rat(s string) *big.Rat {
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		panic(s)
	}
	return r
}

func n(i int64) *big.Rat { return big.NewRat(i, 1) }
func mul(a ...*big.Rat) *big.Rat {
	p := n(1)
	for _, x := range a {
		p.Mul(p, x)
	}
	return p
}
func quo(a, b *big.Rat) *big.Rat { return new(big.Rat).Quo(a, b) }
func sub(a, b *big.Rat) *big.Rat { return new(big.Rat).Sub(a, b) }
func add(a, b *big.Rat) *big.Rat { return new(big.Rat).Add(a, b) }

func floor(x *big.Rat) int64 {
	q, _ := new(big.Int).DivMod(x.Num(), x.Denom(), new(big.Int))
	return q.Int64()
}

// nearest is k·m + p nearest to x, a tie to the larger.
func nearest(x *big.Rat, m, p int64) int64 {
	return max(floor(add(quo(sub(x, n(p)), n(m)), big.NewRat(1, 2))), 0)*m + p
}

// places is x to the digits, half away from zero.
func places(x *big.Rat, digits int) string {
	if x.Sign() < 0 {
		return "-" + places(new(big.Rat).Neg(x), digits)
	}
	scale := new(big.Rat).SetInt(new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(digits)), nil))
	s := fmt.Sprintf("%0*d", digits+1, floor(add(mul(x, scale), big.NewRat(1, 2))))
	return s[:len(s)-digits] + "." + s[len(s)-digits:]
}

var (
	g = big.NewRat(17, 10) // stitches to the centimetre
	h = big.NewRat(11, 10) // rows
)

// jacket returns the pairs of size i at some counts, and its net metres of
// yarn; ok is false where it makes no garment.
func jacket(i int, sts, rows int64) (back, side int64, net *big.Rat, ok bool) {
	half := big.NewRat(sts, 2)
	back, side = floor(sub(half, mul(n(2), g))), floor(sub(half, mul(n(depths[i]), g)))
	// The chest takes no part: a garment that does not close is one.
	if back < 1 || side < 1 || mul(n(2), quo(sub(half, n(side)), g)).Cmp(rat(arms[i])) < 0 {
		return 0, 0, nil, false
	}
	fabric := mul(n(2), quo(n(sts), g), quo(n(rows), h), big.NewRat(105, 2250), big.NewRat(5, 2))
	seams := quo(mul(quo(n(back+2*side), g), big.NewRat(5, 2)), n(100))
	return back, side, add(fabric, add(seams, rat("0.9144"))), true // six ends of 6 in
}

func TestAgainstTheOracle(t *testing.T) {
	found := map[string]int{}
	for seed := range uint64(150) {
		r := rand.New(rand.NewPCG(seed, 3))
		tenths := int64(r.IntN(6500))
		margin := int64(r.IntN(4) * 5)
		i := r.IntN(4)
		spare := big.NewRat(100+margin, 100)
		have := big.NewRat(tenths, 10)
		got := replyTo(t, "", "-have", fmt.Sprintf("%d.%d m", tenths/10, tenths%10), "-margin", fmt.Sprintf("%d%%", margin), "-size", labels[i])
		args := fmt.Sprintf("%d tenths, %d%%, size %s", tenths, margin, labels[i])

		largest := ""
		var sts, rows int64
		for j, label := range labels {
			N, R := nearest(mul(n(2*lengths[j]), g), 1, 0), nearest(mul(quo(add(rat(chests[j]), n(14)), n(4)), h), 2, 2)
			_, _, net, ok := jacket(j, N, R)
			require.True(t, ok)
			total := mul(net, spare)
			want := sizeResult{label, places(total, 2), places(sub(have, total), 2), "no"}
			switch {
			case total.Cmp(have) <= 0:
				want.Enough, largest = "yes", label
			case net.Cmp(have) <= 0:
				want.Enough = "without the spare"
			}
			require.Equal(t, want, got.Sizes[j], args)
			if j == i {
				sts, rows = N, R
			}
		}
		require.Equal(t, largest, got.Largest, args)
		if got.Sizes[i].Enough == "yes" {
			require.Nil(t, got.Chosen, args)
			found["enough"]++
			continue
		}
		for k, step := range [][2]int64{{1, 0}, {0, 2}} {
			N, R := sts, rows
			want := wayResult{Name: []string{"shorter", "narrower"}[k]}
			for ; N > 0 && R >= 2; N, R = N-step[0], R-step[1] {
				back, side, net, ok := jacket(i, N, R)
				total := (*big.Rat)(nil)
				if ok {
					total = mul(net, spare)
				}
				if !ok || total.Cmp(have) > 0 {
					continue
				}
				half := big.NewRat(N, 2)
				depth := quo(sub(half, n(side)), g)
				repeats := int(R-2) / 2
				want.Found, want.Stitches, want.Rows, want.Repeats = true, int(N), int(R), &repeats
				want.Tight = big.NewRat(4*R, 1).Cmp(mul(rat(chests[i]), h)) <= 0
				want.Pairs = map[string]int{"centre back": int(back), "side": int(side)}
				want.Measures = map[string]string{"round": places(quo(n(4*R), h), 3), "width": places(quo(n(R), h), 3), "length": places(quo(half, g), 3),
					"armhole depth": places(depth, 3), "armhole round": places(mul(n(2), depth), 3), "neck drop": places(quo(sub(half, n(back)), g), 3)}
				want.Takes, want.Left = places(total, 2), places(sub(have, total), 2)
				break
			}
			require.Equal(t, want, got.Chosen.Ways[k], args)
			found[fmt.Sprintf("%s %v", want.Name, want.Found)]++
		}
	}
	for _, kind := range []string{"enough", "shorter true", "shorter false", "narrower true", "narrower false"} {
		require.Greater(t, found[kind], 3, "%s: the generator tests too little: %v", kind, found)
	}
}
