package yarn

import (
	"example.com/panelmath/gauge"
	"github.com/shopspring/decimal"
)

// exactly returns d, which is known to be within bounds, as a ratio.
func exactly(d decimal.Decimal) gauge.Ratio {
	r, _ := gauge.FromDecimal(d)
	return r
}

// over returns x/y where y is known not to be 0.
func over(x, y gauge.Ratio) gauge.Ratio {
	r, _ := x.Quo(y)
	return r
}
