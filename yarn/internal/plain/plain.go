// Package plain prints and reads decimals without an exponent, whatever the
// settings of the decimal package.
package plain

import (
	"math/big"
	"strings"

	"example.com/panelmath/gauge"
	"github.com/shopspring/decimal"
)

// Text returns d without an exponent and without trailing zeros. A number out of
// the bounds of package gauge is not written out.
func Text(d decimal.Decimal) string {
	if _, err := gauge.FromDecimal(d); err != nil {
		return "(a number out of bounds)"
	}
	return trim(d.StringFixed(max(0, -d.Exponent())))
}

// Ratio returns x rounded to the places, as Text does.
func Ratio(x gauge.Ratio, places int) string { return trim(x.Text(places)) }

func trim(s string) string {
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
