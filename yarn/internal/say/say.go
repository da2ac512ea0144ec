// Package say prints exact numbers for the sentences of Explain.
package say

import (
	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
)

// Number returns x to two places, with "about" where that is not all of it.
func Number(x gauge.Ratio) string {
	d := x.Decimal(2)
	text := number.Trim(d.StringFixed(2))
	if y, err := gauge.FromDecimal(d); err == nil && y.Equal(x) {
		return text
	}
	return "about " + text
}

// In returns m in u, "about 12.35 yd".
func In(m gauge.Measurement, u gauge.Unit) string { return Number(m.In(u)) + " " + u.String() }
