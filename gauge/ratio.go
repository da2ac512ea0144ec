package gauge

import (
	"math/big"
	"strings"

	"example.com/panelmath/internal/exact"
	"example.com/panelmath/internal/text"
	"github.com/shopspring/decimal"
)

// Ratio is an exact number: a numerator over a denominator. A share (a quarter
// of 46 in, a third of 100 cm) and every quotient travel as one until the one
// rounding. The zero value is 0. Compare with Cmp or Equal, not with ==: 1/2
// and 2/4 are equal.
type Ratio struct{ r exact.Ratio }

// Int returns the ratio n/1.
func Int(n int) Ratio { return Ratio{exact.Int(int64(n))} }

// Share returns n/d. It returns a *FieldError if d is 0.
func Share(n, d int) (Ratio, error) {
	r, err := exact.New(int64(n), int64(d))
	if err != nil {
		return Ratio{}, &FieldError{Field: "d", Got: "0", Want: "a denominator other than 0", Err: err}
	}
	return Ratio{r}, nil
}

// FromDecimal returns d as a ratio, exactly. It returns a *FieldError if d
// breaks the bounds of a number.
func FromDecimal(d decimal.Decimal) (Ratio, error) {
	x, err := bounded("d", d)
	return Ratio{x}, err
}

// Add returns x + y.
func (x Ratio) Add(y Ratio) Ratio { return Ratio{x.r.Add(y.r)} }

// Sub returns x - y.
func (x Ratio) Sub(y Ratio) Ratio { return Ratio{x.r.Sub(y.r)} }

// Mul returns x · y.
func (x Ratio) Mul(y Ratio) Ratio { return Ratio{x.r.Mul(y.r)} }

// Quo returns x / y, still as a ratio: nothing is rounded. It returns a
// *FieldError if y is 0.
func (x Ratio) Quo(y Ratio) (Ratio, error) {
	r, err := x.r.Quo(y.r)
	if err != nil {
		return Ratio{}, &FieldError{Field: "y", Got: "0", Want: "a divisor other than 0", Err: err}
	}
	return Ratio{r}, nil
}

// Cmp returns -1, 0 or +1 as x is less than, equal to or greater than y.
func (x Ratio) Cmp(y Ratio) int { return x.r.Cmp(y.r) }

// Equal reports whether x and y are the same number.
func (x Ratio) Equal(y Ratio) bool { return x.r.Cmp(y.r) == 0 }

// Sign returns -1, 0 or +1.
func (x Ratio) Sign() int { return x.r.Sign() }

// Rat returns x as a big.Rat of the caller's own.
func (x Ratio) Rat() *big.Rat { return x.r.Rat() }

// Floor returns the largest whole number not above x. It returns ErrBounds if
// that is beyond ±2^53.
func (x Ratio) Floor() (int, error) { return whole(x.r.Floor()) }

// Ceil returns the smallest whole number not below x. It returns ErrBounds if
// that is beyond ±2^53.
func (x Ratio) Ceil() (int, error) { return whole(x.r.Ceil()) }

func whole(n int64, err error) (int, error) {
	if err != nil {
		return 0, &FieldError{Field: "x", Got: "a number beyond ±2^53", Want: "a smaller one", Err: ErrBounds}
	}
	return int(n), nil
}

// Decimal returns x to the given places, at most 20, rounded once, half away
// from zero. It is for printing.
func (x Ratio) Decimal(places int) decimal.Decimal {
	places = max(0, min(places, MaxExponent))
	return decimal.NewFromBigInt(x.r.Digits(places), int32(-places))
}

// ExactDecimal returns x as a decimal, and false if x has none of at most 20
// places: a third, or a number out of bounds.
func (x Ratio) ExactDecimal() (decimal.Decimal, bool) {
	n := x.r.Digits(MaxExponent)
	d := decimal.NewFromBigInt(n, -MaxExponent)
	if (Ratio{exact.FromBig(d.Rat())}).Cmp(x) != 0 {
		return decimal.Decimal{}, false
	}
	ten, rest := big.NewInt(10), new(big.Int)
	places := MaxExponent
	for q := new(big.Int); places > 0; places-- {
		if q.QuoRem(n, ten, rest); rest.Sign() != 0 {
			break
		}
		n.Set(q)
	}
	d = decimal.NewFromBigInt(n, int32(-places))
	return d, checkNumber("", d) == nil
}

// Text returns x to exactly the given places: Share(1, 8) to 2 is "0.13".
// Half away from zero, for printing.
func (x Ratio) Text(places int) string {
	places = max(0, min(places, MaxExponent))
	return x.Decimal(places).StringFixed(int32(places))
}

// String returns x as a whole number or a fraction in lowest terms: "104",
// "511/8". ParseRatio reads it back.
func (x Ratio) String() string { return x.r.Rat().RatString() }

// ParseRatio reads a whole number, a decimal or a fraction: "104", "-0.5",
// "511/8".
//
// It returns a *ParseError if s is none of these, the denominator is 0, or
// either number has more than 60 digits.
func ParseRatio(s string) (Ratio, error) {
	fail := func(cause string, err error) (Ratio, error) {
		return Ratio{}, &ParseError{Kind: "ratio", Text: s, Cause: cause, Err: err}
	}
	if len(s) > 4*MaxDigits+3 {
		return fail("too many digits", ErrBounds)
	}
	for i, c := range s {
		if (c < '0' || c > '9') && c != '.' && c != '/' && !(i == 0 && (c == '-' || c == '+')) {
			return fail("unexpected "+text.Quote(s[i:])+"; want a number like 104, 0.5 or 511/8", nil)
		}
	}
	if strings.Contains(s, ".") && strings.Contains(s, "/") {
		return fail("a decimal point inside a fraction", nil)
	}
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		return fail("want a number like 104, 0.5 or 511/8", nil)
	}
	return Ratio{exact.FromBig(r)}, nil
}

// MarshalText returns String.
func (x Ratio) MarshalText() ([]byte, error) { return []byte(x.String()), nil }

// UnmarshalText reads what ParseRatio reads.
func (x *Ratio) UnmarshalText(b []byte) error {
	return text.Read(x, b, ParseRatio)
}

// UnmarshalJSON reads a string or a number; null changes nothing.
func (x *Ratio) UnmarshalJSON(b []byte) error {
	if string(b) == "null" {
		return nil
	}
	if len(b) > 1 && b[0] == '"' {
		b = b[1 : len(b)-1]
	}
	return x.UnmarshalText(b)
}
