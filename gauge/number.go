package gauge

import (
	"example.com/panelmath/internal/exact"
	"example.com/panelmath/internal/number"
	"github.com/shopspring/decimal"
)

// Bounds of a number: digits of the coefficient, and exponent of ten.
const (
	MaxDigits   = number.MaxDigits
	MaxExponent = number.MaxExponent
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
	if e, n := int(d.Exponent()), d.NumDigits(); e <= 0 && -e < len(pow10) && n < len(pow10) { // 18 digits fit in an int64
		return exact.New(d.CoefficientInt64(), pow10[-e])
	}
	if got, want := number.Outside(d); got != "" {
		return exact.Ratio{}, &FieldError{Field: field, Got: got, Want: want, Err: ErrBounds}
	}
	return exact.FromBig(d.Rat()), nil
}
