// Package bound keeps exact numbers from growing without end: a sum of thousands
// of fractions that share no denominator costs more with every one.
package bound

import "example.com/panelmath/gauge"

// bits is the longest denominator taken, some 300 digits. What a garment adds up
// stays far below: its denominators are counts of a few gauges.
const bits = 1024

// Fine returns a *gauge.FieldError if m is a fraction with a denominator of more
// than some 300 digits.
func Fine(field string, m gauge.Measurement) error {
	if m.In(gauge.Millimetre).Rat().Denom().BitLen() > bits {
		return &gauge.FieldError{Field: field, Got: "a fraction of more than 300 digits", Want: "a simpler one", Err: gauge.ErrBounds}
	}
	return nil
}
