package swatch

import (
	"fmt"
	"strings"

	"example.com/panelmath/gauge"
)

// Spread is how far the readings of a swatch differ, as shares of its gauge: 1/20
// is 5 %.
type Spread struct {
	Between gauge.Ratio `json:"between"` // the tightest reading less the loosest
	Reading gauge.Ratio `json:"reading"` // what reading those two to their steps can cause by itself
	Share   gauge.Ratio `json:"share"`   // how much of Between that explains, 0 to 1; 1 where the readings agree
}

// Spread returns how far the readings differ, and how much of that comes from
// counting to a step over a short span. It returns the error of Over.
func (s Swatch) Spread() (Spread, error) {
	sum, err := s.Over()
	if err != nil {
		return Spread{}, err
	}
	per, err := perMM(sum)
	if err != nil {
		return Spread{}, err
	}
	loosest, tightest := s.Readings[0], s.Readings[0]
	loose, _ := perMM(loosest.Over)
	tight := loose
	for _, r := range s.Readings[1:] {
		x, _ := perMM(r.Over)
		if x.Cmp(loose) < 0 {
			loosest, loose = r, x
		}
		if x.Cmp(tight) > 0 {
			tightest, tight = r, x
		}
	}
	_, most, _ := loosest.between()
	least, _, _ := tightest.between()
	var out Spread
	out.Between, _ = tight.Sub(loose).Quo(per)
	out.Reading, _ = most.Sub(loose).Add(tight.Sub(least)).Quo(per)
	out.Share = gauge.Int(1)
	if out.Between.Cmp(out.Reading) > 0 {
		out.Share, _ = out.Reading.Quo(out.Between)
	}
	return out, nil
}

// Explain says in one sentence what was found: "the readings differ by 4.9 %;
// reading them can cause 4.9 %, which is all of it".
func (s Spread) Explain() string {
	text := fmt.Sprintf("the readings differ by %s; reading them can cause %s", percent(s.Between), percent(s.Reading))
	if s.Share.Cmp(gauge.Int(1)) >= 0 {
		return text + ", which is all of it"
	}
	return text + ", which is " + percent(s.Share) + " of it: the fabric itself varies"
}

// percent returns "5 %", "3.6 %".
func percent(x gauge.Ratio) string {
	return strings.TrimSuffix(x.Mul(gauge.Int(100)).Text(1), ".0") + " %"
}
