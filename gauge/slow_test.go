package gauge_test

import (
	"math/big"

	"example.com/panelmath/gauge"
)

// slowCount is the reference for Rule.Round: it looks at every whole number
// near x, one by one, and compares distances as fractions of big numbers. ok is
// false where no count answers.
func slowCount(x *big.Rat, r gauge.Rule) (value, below, above int, tie, ok bool) {
	m := max(r.Multiple, 1)
	legal := func(n int) bool {
		for n -= r.Plus; n < 0; {
			n += m
		}
		return n%m == 0
	}
	floor := int(new(big.Int).Div(x.Num(), x.Denom()).Int64())
	least := r.Least
	for !legal(least) {
		least++
	}
	rat := func(n int) *big.Rat { return big.NewRat(int64(n), 1) }

	hasBelow := false
	for n := floor; n > floor-m && n >= least; n-- {
		if legal(n) {
			below, hasBelow = n, true
			break
		}
	}
	above = max(floor, least)
	for !legal(above) || rat(above).Cmp(x) < 0 {
		above++
	}
	if !hasBelow {
		ok = r.Direction != gauge.Down || rat(above).Cmp(x) == 0
		return above, above, above, false, ok
	}
	down, up := new(big.Rat).Sub(x, rat(below)), new(big.Rat).Sub(rat(above), x)
	tie = below != above && down.Cmp(up) == 0
	switch {
	case r.Direction == gauge.Up,
		r.Direction == gauge.Nearest && up.Cmp(down) <= 0,
		r.Direction == gauge.NearestTiesDown && up.Cmp(down) < 0:
		value = above
	default:
		value = below
	}
	return value, below, above, tie, true
}

// slowExact is the reference for Over.Exact: mm · count · of / span.
func slowExact(mm *big.Rat, o gauge.Over) *big.Rat {
	perUnit := map[gauge.Unit]string{gauge.Millimetre: "1", gauge.Centimetre: "10", gauge.Metre: "1000",
		gauge.Inch: "25.4", gauge.Foot: "304.8", gauge.Yard: "914.4"}[o.Span.Unit]
	unit, _ := new(big.Rat).SetString(perUnit)
	x := new(big.Rat).Mul(mm, o.Count.Rat())
	x.Mul(x, big.NewRat(int64(max(o.Of, 1)), 1))
	return x.Quo(x, unit.Mul(unit, o.Span.Value.Rat()))
}
