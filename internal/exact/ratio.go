// Package exact holds ratios of whole numbers and is the only place where a
// ratio becomes a whole number. The public packages keep a quotient as
// numerator and denominator until they ask this package for one rounding.
//
// A ratio lives in two int64 while it fits and in a big.Rat when it does not;
// the two give identical results.
package exact

import (
	"errors"
	"math"
	"math/big"
	"math/bits"
)

// ErrZero is returned for a ratio with a denominator of nothing.
var ErrZero = errors.New("division by zero")

// Ratio is n/d. The zero value is 0. It is not kept in lowest terms: that
// costs more than it saves on the way to one rounding.
type Ratio struct {
	n, d int64    // d > 0, or both zero in the zero value; n is never MinInt64
	big  *big.Rat // takes the place of n and d where they would not fit
}

// Int returns n/1.
func Int(n int64) Ratio {
	if n == math.MinInt64 {
		return Ratio{big: new(big.Rat).SetInt64(n)}
	}
	return Ratio{n: n, d: 1}
}

// New returns n/d, or ErrZero.
func New(n, d int64) (Ratio, error) {
	if d == 0 {
		return Ratio{}, ErrZero
	}
	if n == math.MinInt64 || d == math.MinInt64 {
		return fromBig(new(big.Rat).SetFrac(big.NewInt(n), big.NewInt(d))), nil
	}
	if d < 0 {
		n, d = -n, -d
	}
	return Ratio{n: n, d: d}, nil
}

// FromBig returns r without keeping hold of it.
func FromBig(r *big.Rat) Ratio { return fromBig(new(big.Rat).Set(r)) }

// fromBig takes r over, as int64 where it fits: a value has one shape.
func fromBig(r *big.Rat) Ratio {
	if r.Num().IsInt64() && r.Denom().IsInt64() && r.Num().Int64() != math.MinInt64 {
		return Ratio{n: r.Num().Int64(), d: r.Denom().Int64()}
	}
	return Ratio{big: r}
}

// Rat returns a copy as a big.Rat.
func (x Ratio) Rat() *big.Rat {
	if x.big != nil {
		return new(big.Rat).Set(x.big)
	}
	return big.NewRat(x.n, x.den())
}

func (x Ratio) den() int64 {
	if x.d == 0 {
		return 1
	}
	return x.d
}

// Sign returns -1, 0 or +1.
func (x Ratio) Sign() int {
	if x.big != nil {
		return x.big.Sign()
	}
	switch {
	case x.n < 0:
		return -1
	case x.n > 0:
		return 1
	}
	return 0
}

// Neg returns -x.
func (x Ratio) Neg() Ratio {
	if x.big != nil {
		return fromBig(new(big.Rat).Neg(x.big))
	}
	return Ratio{n: -x.n, d: x.d}
}

// Mul returns x·y.
func (x Ratio) Mul(y Ratio) Ratio {
	if x.big == nil && y.big == nil {
		n, ok1 := mul(x.n, y.n)
		d, ok2 := mul(x.den(), y.den())
		if ok1 && ok2 {
			return Ratio{n: n, d: d}
		}
	}
	return fromBig(new(big.Rat).Mul(x.Rat(), y.Rat()))
}

// Quo returns x/y, or ErrZero.
func (x Ratio) Quo(y Ratio) (Ratio, error) {
	if y.Sign() == 0 {
		return Ratio{}, ErrZero
	}
	return x.Mul(y.Inv()), nil
}

// Inv returns 1/x for an x that is not 0.
func (x Ratio) Inv() Ratio {
	switch {
	case x.big != nil:
		return fromBig(new(big.Rat).Inv(x.big))
	case x.n < 0:
		return Ratio{n: -x.den(), d: -x.n}
	}
	return Ratio{n: x.den(), d: x.n}
}

// Add returns x+y.
func (x Ratio) Add(y Ratio) Ratio {
	if x.big == nil && y.big == nil {
		if x.den() == y.den() {
			if n, ok := add(x.n, y.n); ok {
				return Ratio{n: n, d: x.den()}
			}
		}
		a, ok1 := mul(x.n, y.den())
		b, ok2 := mul(y.n, x.den())
		d, ok3 := mul(x.den(), y.den())
		if ok1 && ok2 && ok3 {
			if n, ok := add(a, b); ok {
				return Ratio{n: n, d: d}
			}
		}
	}
	return fromBig(new(big.Rat).Add(x.Rat(), y.Rat()))
}

// Sub returns x-y.
func (x Ratio) Sub(y Ratio) Ratio { return x.Add(y.Neg()) }

// Cmp returns -1, 0 or +1 as x is less than, equal to or greater than y.
func (x Ratio) Cmp(y Ratio) int {
	if x.big == nil && y.big == nil {
		if s, t := x.Sign(), y.Sign(); s != t {
			return sign(s - t)
		}
		h1, l1 := bits.Mul64(abs(x.n), uint64(y.den()))
		h2, l2 := bits.Mul64(abs(y.n), uint64(x.den()))
		c := 0
		switch {
		case h1 != h2:
			c = cmp(h1, h2)
		default:
			c = cmp(l1, l2)
		}
		if x.n < 0 {
			return -c
		}
		return c
	}
	return x.Rat().Cmp(y.Rat())
}

func cmp(a, b uint64) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}

func sign(n int) int {
	switch {
	case n < 0:
		return -1
	case n > 0:
		return 1
	}
	return 0
}

func abs(n int64) uint64 {
	if n < 0 {
		return uint64(-n)
	}
	return uint64(n)
}

// mul returns a·b and whether it fits, MinInt64 excluded so that a sign can
// always be changed.
func mul(a, b int64) (int64, bool) {
	hi, lo := bits.Mul64(abs(a), abs(b))
	if hi != 0 || lo > math.MaxInt64 {
		return 0, false
	}
	if (a < 0) != (b < 0) {
		return -int64(lo), true
	}
	return int64(lo), true
}

func add(a, b int64) (int64, bool) {
	s := a + b
	if (s > a) != (b > 0) && b != 0 || s == math.MinInt64 {
		return 0, false
	}
	return s, true
}

// Reduced returns x in lowest terms.
func (x Ratio) Reduced() Ratio {
	if x.big != nil {
		return x // a big.Rat always is
	}
	a, b := abs(x.n), uint64(x.den())
	for b != 0 {
		a, b = b, a%b
	}
	return Ratio{n: x.n / int64(a), d: x.den() / int64(a)}
}
