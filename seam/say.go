package seam

import (
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
)

// say prints a length for a sentence: "9.5 in (24.13 cm)", to a thousandth.
func say(m gauge.Measurement) string {
	return plain(m.In(gauge.Inch), 3) + " in (" + plain(m.In(gauge.Centimetre), 3) + " cm)"
}

// plain prints x to at most so many places, without trailing zeros.
func plain(x gauge.Ratio, places int) string {
	s := x.Text(places)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	return s
}

// atMost prints a limit: rounded down, so that what is printed still holds.
func atMost(m gauge.Measurement) string {
	down := func(u gauge.Unit) string {
		n, err := m.In(u).Mul(gauge.Int(1000)).Floor()
		if err != nil {
			return m.In(u).String()
		}
		thousandths, _ := gauge.Share(n, 1000)
		return plain(thousandths, 3)
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
	if s := plain(x, 4); x.Decimal(4).Rat().Cmp(x.Rat()) == 0 {
		return s
	} else {
		return "about " + s
	}
}

// perSpan prints the count of a gauge.
func perSpan(o gauge.Over) string {
	n, _ := gauge.FromDecimal(o.Count)
	if o.Of > 0 {
		return plain(n, gauge.MaxExponent) + " repeats of " + strconv.Itoa(o.Of)
	}
	return plain(n, gauge.MaxExponent)
}

func pairs(n int) string {
	if n == 1 {
		return "pair"
	}
	return "pairs"
}
