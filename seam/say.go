package seam

import (
	"strconv"

	"example.com/panelmath/gauge"
	"github.com/shopspring/decimal"
)

// say prints a length for a sentence: "9.5 in (24.13 cm)", to a thousandth.
func say(m gauge.Measurement) string {
	return m.In(gauge.Inch).Decimal(3).String() + " in (" + m.In(gauge.Centimetre).Decimal(3).String() + " cm)"
}

// atMost prints a limit: rounded down, so that what is printed still holds.
func atMost(m gauge.Measurement) string {
	down := func(u gauge.Unit) string {
		n, err := m.In(u).Mul(gauge.Int(1000)).Floor()
		if err != nil {
			return m.In(u).String()
		}
		return decimal.New(int64(n), -3).String()
	}
	return "at most " + down(gauge.Inch) + " in (" + down(gauge.Centimetre) + " cm)"
}

// halves prints a count that may hold half a stitch: "53½".
func halves(x gauge.Ratio) string {
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

// about prints a ratio, with "about" where three places do not hold it.
func about(x gauge.Ratio) string {
	d := x.Decimal(4)
	if d.Rat().Cmp(x.Rat()) == 0 {
		return d.String()
	}
	return "about " + d.String()
}

// perSpan prints the count of a gauge.
func perSpan(o gauge.Over) string {
	if o.Of > 0 {
		return o.Count.String() + " repeats of " + strconv.Itoa(o.Of)
	}
	return o.Count.String()
}

func pairs(n int) string {
	if n == 1 {
		return "pair"
	}
	return "pairs"
}
