// Package say prints exact numbers for the sentences of Explain.
package say

import "example.com/panelmath/gauge"

// Number returns x to two places, with "about" where that is not all of it.
func Number(x gauge.Ratio) string {
	d := x.Decimal(2)
	if back, err := gauge.FromDecimal(d); err == nil && back.Equal(x) {
		return d.String()
	}
	return "about " + d.String()
}

// In returns m in u, "about 12.35 yd".
func In(m gauge.Measurement, u gauge.Unit) string { return Number(m.In(u)) + " " + u.String() }
