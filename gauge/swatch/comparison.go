package swatch

import (
	"fmt"

	"example.com/panelmath/gauge"
)

// Comparison is how one reading stands to another.
type Comparison struct {
	Ratio     gauge.Ratio `json:"ratio"`     // stitches of the second where the first has 1
	Low       gauge.Ratio `json:"low"`       // the least that it can be within what was read
	High      gauge.Ratio `json:"high"`      // the most
	Explained bool        `json:"explained"` // whether rounding alone can make the two differ
}

// Compare returns how the gauge of other stands to that of r, and whether the
// rounding of the numbers alone can explain the difference. With r as the
// printed gauge and other as a printed count over its printed width it tells
// whether a pattern was drafted at its gauge. It returns the error of Validate.
func (r Reading) Compare(other Reading) (Comparison, error) {
	low1, high1, err := r.between()
	if err != nil {
		return Comparison{}, err
	}
	low2, high2, err := other.between()
	if err != nil {
		return Comparison{}, gauge.InField("other", err)
	}
	mid1, _ := perMM(r.Over)
	mid2, _ := perMM(other.Over)
	var c Comparison
	c.Ratio, _ = mid2.Quo(mid1) // no gauge is 0
	c.Low, _ = low2.Quo(high1)
	c.High, _ = high2.Quo(low1)
	c.Explained = c.Low.Cmp(gauge.Int(1)) <= 0 && c.High.Cmp(gauge.Int(1)) >= 0
	return c, nil
}

// Explain says in one sentence what was found.
func (c Comparison) Explain() string {
	s := fmt.Sprintf("%s stitches where the other has 1, from %s to %s within what was read: ", c.Ratio.Text(3), c.Low.Text(3), c.High.Text(3))
	if c.Explained {
		return s + "rounding alone can explain it"
	}
	return s + "rounding alone cannot explain it"
}
