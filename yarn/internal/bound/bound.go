// Package bound holds the limits that the packages about yarn share.
package bound

import (
	"errors"

	"example.com/panelmath/gauge"
	"github.com/shopspring/decimal"
)

// Metres is the longest length of yarn taken.
const Metres = 100_000

// bits is the longest denominator taken, some 300 digits. A sum of thousands of
// fractions that share no denominator costs more with every one; what a garment
// adds up stays far below, since its denominators are counts of a few gauges.
const bits = 1024

// Fine returns a *gauge.FieldError if m is a fraction with a denominator of more
// than some 300 digits.
func Fine(field string, m gauge.Measurement) error {
	if m.In(gauge.Millimetre).Rat().Denom().BitLen() > bits {
		return &gauge.FieldError{Field: field, Got: "a fraction of more than 300 digits", Want: "a simpler one", Err: gauge.ErrBounds}
	}
	return nil
}

// Length returns a *gauge.FieldError if m is less than nothing, longer than
// Metres, or not Fine.
func Length(field string, m gauge.Measurement) error {
	if m.Sign() < 0 {
		return &gauge.FieldError{Field: field, Got: "less than nothing", Want: "at least 0"}
	}
	if m.In(gauge.Metre).Cmp(gauge.Int(Metres)) > 0 {
		return &gauge.FieldError{Field: field, Got: "more than 100 km", Want: "at most 100 km", Err: gauge.ErrBounds}
	}
	return Fine(field, m)
}

// Number returns d exactly, or a *gauge.FieldError that names field when d is out
// of the bounds of package gauge.
func Number(field string, d decimal.Decimal) (gauge.Ratio, error) {
	r, err := gauge.FromDecimal(d)
	var f *gauge.FieldError
	if errors.As(err, &f) {
		g := *f
		g.Field = field
		return gauge.Ratio{}, &g
	}
	return r, err
}
