// Package say prints exact numbers for the sentences of Explain.
package say

import (
	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
)

// Number returns x to two places, with "about" where that is not all of it.
func Number(x gauge.Ratio) string {
	if d, ok := x.ExactDecimal(); ok && d.Exponent() >= -2 {
		return number.Trim(x.Text(2))
	}
	return "about " + number.Trim(x.Text(2))
}

// In returns m in u, "about 12.35 yd".
func In(m gauge.Measurement, u gauge.Unit) string { return Number(m.In(u)) + " " + u.String() }
