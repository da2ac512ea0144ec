package gauge

import (
	"fmt"
	"math/big"
	"strings"

	"example.com/panelmath/internal/exact"
	"github.com/shopspring/decimal"
)

// Bounds of a number: digits of the coefficient, and exponent of ten.
const (
	MaxDigits   = 30
	MaxExponent = 20
)

// checkNumber reports a number outside the bounds as a FieldError for field.
func checkNumber(field string, d decimal.Decimal) error {
	_, err := bounded(field, d)
	return err
}

var pow10 = [...]int64{1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18}

// bounded returns d as a ratio, or a *FieldError for field if it is out of
// bounds.
func bounded(field string, d decimal.Decimal) (exact.Ratio, error) {
	e, n := int(d.Exponent()), d.NumDigits()
	switch {
	case e <= 0 && -e < len(pow10) && n < len(pow10): // 18 digits fit in an int64
		return exact.New(d.CoefficientInt64(), pow10[-e])
	case e > MaxExponent || e < -MaxExponent:
		return exact.Ratio{}, &FieldError{Field: field, Got: fmt.Sprintf("an exponent of %d", e), Want: "an exponent of -20 to 20", Err: ErrBounds}
	case n > MaxDigits:
		return exact.Ratio{}, &FieldError{Field: field, Got: fmt.Sprintf("%d digits", n), Want: "at most 30 digits", Err: ErrBounds}
	}
	return exact.FromBig(d.Rat()), nil
}

// plain prints d without an exponent and without trailing zeros, whatever the
// settings of the decimal package. A number out of bounds is not written out.
func plain(d decimal.Decimal) string {
	if err := checkNumber("", d); err != nil {
		return "(a number out of bounds)"
	}
	s := d.StringFixed(max(0, -d.Exponent()))
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	return s
}

// parsePlain returns the decimal that is written as digits with at most one
// point. It is here because the decimal package's own parser heeds a package
// variable.
func parsePlain(s string) decimal.Decimal {
	whole, part, _ := strings.Cut(s, ".")
	n, _ := new(big.Int).SetString("0"+whole+part, 10)
	return decimal.NewFromBigInt(n, -int32(len(part)))
}
