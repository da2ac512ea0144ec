package exact

import (
	"errors"
	"math/big"
	"math/bits"
)

// ErrLarge is returned when a whole number is asked of a ratio beyond ±2^53.
var ErrLarge = errors.New("too large for a whole number")

const largest = 1 << 53

// Floor returns the largest whole number not above x.
func (x Ratio) Floor() (int64, error) {
	below, _, _, err := x.Snap(1, 0)
	return below, err
}

// Ceil returns the smallest whole number not below x.
func (x Ratio) Ceil() (int64, error) {
	_, above, _, err := x.Snap(1, 0)
	return above, err
}

// Snap returns the neighbours of x among the numbers k·m + p (m from 1 to 2^53,
// p within ±2^53, k any whole number): the largest not above x and the smallest not below it.
// They are equal when x is one of them. half tells on which side of the middle
// between them x lies: -1 below it, 0 on it exactly (a tie), +1 above it; it is
// 0 as well when the neighbours are equal.
func (x Ratio) Snap(m, p int64) (below, above int64, half int, err error) {
	if x.big == nil {
		if below, above, half, ok := snap64(x.n, x.den(), m, p); ok {
			return below, above, half, nil
		}
	}
	return snapBig(x.Rat(), m, p)
}

// snap64 is the whole of the rounding: q = floor((n - p·d) / (m·d)), and the
// remainder against half of m·d.
func snap64(n, d, m, p int64) (below, above int64, half int, ok bool) {
	pd, ok1 := mul(p, d)
	md, ok2 := mul(m, d)
	if !ok1 || !ok2 {
		return 0, 0, 0, false
	}
	t, ok3 := add(n, -pd)
	if !ok3 {
		return 0, 0, 0, false
	}
	q, r := t/md, t%md
	if r < 0 {
		q, r = q-1, r+md
	}
	b, ok4 := mul(q, m)
	b, ok5 := add(b, p)
	if !ok4 || !ok5 || b > largest || b < -largest {
		return 0, 0, 0, false
	}
	if r == 0 {
		return b, b, 0, true
	}
	return b, b + m, cmp(uint64(r), uint64(md-r)), true
}

func snapBig(x *big.Rat, m, p int64) (below, above int64, half int, err error) {
	d := x.Denom()
	t := new(big.Int).Mul(big.NewInt(p), d)
	t.Sub(x.Num(), t)
	md := new(big.Int).Mul(big.NewInt(m), d)
	q, r := new(big.Int).DivMod(t, md, new(big.Int)) // Euclid: r is never negative
	b := q.Mul(q, big.NewInt(m))
	b.Add(b, big.NewInt(p))
	if b.CmpAbs(big.NewInt(largest)) > 0 {
		return 0, 0, 0, ErrLarge
	}
	if r.Sign() == 0 {
		return b.Int64(), b.Int64(), 0, nil
	}
	return b.Int64(), b.Int64() + m, r.Cmp(md.Sub(md, r)), nil
}

// Digits returns x as coefficient·10^-places, rounded once, half away from
// zero. It is for printing: places is small and not negative.
func (x Ratio) Digits(places int) *big.Int {
	if n, ok := x.digits64(places); ok {
		return big.NewInt(n)
	}
	r := x.Rat()
	n := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(places)), nil)
	n.Mul(n, r.Num())
	neg := n.Sign() < 0
	n.Abs(n)
	n.Lsh(n, 1).Add(n, r.Denom())
	n.Quo(n, new(big.Int).Lsh(r.Denom(), 1))
	if neg {
		n.Neg(n)
	}
	return n
}

// digits64 is Digits where n·10^places fits 128 bits and the answer an int64.
func (x Ratio) digits64(places int) (int64, bool) {
	if x.big != nil || places > 18 {
		return 0, false
	}
	scale := uint64(1)
	for range places {
		scale *= 10
	}
	d := uint64(x.den())
	hi, lo := bits.Mul64(abs(x.n), scale)
	if hi >= d {
		return 0, false
	}
	q, r := bits.Div64(hi, lo, d)
	if r >= d-r {
		q++
	}
	if q > largest {
		return 0, false
	}
	if x.n < 0 {
		return -int64(q), true
	}
	return int64(q), true
}
