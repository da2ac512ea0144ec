// Package say puts lengths and counts into sentences.
package say

import (
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
)

// Length prints a length for a sentence: "9.5 in (24.13 cm)", to a thousandth.
func Length(m gauge.Measurement) string {
	return Plain(m.In(gauge.Inch), 3) + " in (" + Plain(m.In(gauge.Centimetre), 3) + " cm)"
}

// LengthIn is Length with one of the two units, inch or centimetre, first.
func LengthIn(m gauge.Measurement, first gauge.Unit) string {
	if first == gauge.Centimetre {
		return Plain(m.In(gauge.Centimetre), 3) + " cm (" + Plain(m.In(gauge.Inch), 3) + " in)"
	}
	return Length(m)
}

// Plain prints x to at most so many places, without trailing zeros.
func Plain(x gauge.Ratio, places int) string { return number.Trim(x.Text(places)) }

// AtMost prints a limit: rounded down, so that what is printed still holds.
func AtMost(m gauge.Measurement) string {
	down := func(u gauge.Unit) string {
		n, err := m.In(u).Mul(gauge.Int(1000)).Floor()
		if err != nil {
			return m.In(u).String()
		}
		thousandths, _ := gauge.Share(n, 1000)
		return Plain(thousandths, 3)
	}
	return "at most " + down(gauge.Inch) + " in (" + down(gauge.Centimetre) + " cm)"
}

// Halves prints a count that may hold half a stitch: "53½".
func Halves(x gauge.Ratio) string {
	n, err := x.Floor()
	if err != nil {
		return x.String()
	}
	switch half, _ := gauge.Share(1, 2); {
	case x.Equal(gauge.Int(n)):
		return strconv.Itoa(n)
	case !x.Sub(gauge.Int(n)).Equal(half):
		return x.String()
	case n == 0:
		return "½"
	}
	return strconv.Itoa(n) + "½"
}

// About prints a ratio, with "about" where three places do not hold it.
func About(x gauge.Ratio) string {
	if s := Plain(x, 4); x.Decimal(4).Rat().Cmp(x.Rat()) == 0 {
		return s
	} else {
		return "about " + s
	}
}

// PerSpan prints the count of a gauge.
func PerSpan(o gauge.Over) string {
	n, _ := gauge.FromDecimal(o.Count)
	if o.Of > 0 {
		return Plain(n, gauge.MaxExponent) + " repeats of " + strconv.Itoa(o.Of)
	}
	return Plain(n, gauge.MaxExponent)
}
