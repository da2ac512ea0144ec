// Package number reads and prints the numbers of the library: whole numbers,
// decimals and the fractions of a tape measure. Nothing here heeds the package
// variables of the decimal package.
package number

import (
	"fmt"
	"math/big"
	"strings"

	"github.com/shopspring/decimal"
)

// Bounds of a number: digits of the coefficient, and exponent of ten.
const (
	MaxDigits   = 30
	MaxExponent = 20
)

// Outside says how d breaks the bounds, and returns "" for a number within them.
func Outside(d decimal.Decimal) (got, want string) {
	if e := d.Exponent(); e > MaxExponent || e < -MaxExponent {
		return fmt.Sprintf("an exponent of %d", e), "an exponent of -20 to 20"
	}
	if n := d.NumDigits(); n > MaxDigits {
		return fmt.Sprintf("%d digits", n), "at most 30 digits"
	}
	return "", ""
}

// Beyond says why a quantity of d is refused: most where its number is within the
// bounds, and else how it breaks them.
func Beyond(d decimal.Decimal, most string) string {
	if got, want := Outside(d); got != "" {
		return got + ", want " + want
	}
	return most
}

// Text prints d without an exponent and without trailing zeros. A number out of
// bounds is not written out.
func Text(d decimal.Decimal) string {
	if got, _ := Outside(d); got != "" {
		return "(a number out of bounds)"
	}
	return Trim(d.StringFixed(max(0, -d.Exponent())))
}

// Trim returns a printed decimal without trailing zeros.
func Trim(s string) string {
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	return s
}

// Parse returns the decimal that is written as digits with at most one point
// among them; the caller has checked that s is nothing else, and not long.
func Parse(s string) decimal.Decimal {
	whole, part, _ := strings.Cut(s, ".")
	n, _ := new(big.Int).SetString("0"+whole+part, 10)
	return decimal.NewFromBigInt(n, -int32(len(part)))
}
