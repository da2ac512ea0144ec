package fit

import (
	"fmt"
	"sort"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
)

// Limits of a split.
const (
	MaxWearers = 10_000
	MaxGroups  = grade.MaxSizes
	// MaxOthers is the most splits that Split.Others lists.
	MaxOthers = 64
)

// Wearer is whom a garment is for: a size of a chart, from its smallest body to
// its largest, or one body, whose Low and High are the same.
type Wearer struct {
	Name string       `json:"name"`
	Low  gauge.Length `json:"low"`
	High gauge.Length `json:"high"`
}

// Validate returns a *gauge.FieldError if an end is not a length of more than
// nothing, or Low is above High.
func (w Wearer) Validate() error {
	if err := w.Low.Validate(); err != nil {
		return gauge.InField("Low", err)
	}
	if err := w.High.Validate(); err != nil {
		return gauge.InField("High", err)
	}
	if w.Low.Value.Sign() <= 0 {
		return &gauge.FieldError{Field: "Low", Got: w.Low.String(), Want: "more than 0"}
	}
	if w.Low.Measurement().Cmp(w.High.Measurement()) > 0 {
		return &gauge.FieldError{Field: "High", Got: w.High.String(), Want: "at least Low, " + w.Low.String()}
	}
	return nil
}

// Wearers returns the sizes of a chart as wearers, by their measure m in the
// chart's column u. It returns the errors of Chart.Validate and Chart.Body.
func Wearers(c grade.Chart, m grade.Measure, u gauge.Unit) ([]Wearer, error) {
	if err := c.Validate(); err != nil {
		return nil, err
	}
	out := make([]Wearer, len(c.Sizes))
	for i, size := range c.Sizes {
		b, err := c.Body(size, m, u)
		if err != nil {
			return nil, err
		}
		out[i] = Wearer{size, b.Low, b.High}
	}
	return out, nil
}

// Bodies returns real bodies as wearers, named by their number from 1.
func Bodies(lengths ...gauge.Length) []Wearer {
	out := make([]Wearer, len(lengths))
	for i, l := range lengths {
		out[i] = Wearer{strconv.Itoa(i + 1), l, l}
	}
	return out
}

// sorted returns the wearers from the smallest to the largest, those that are
// alike in the order given.
func sorted(wearers []Wearer) ([]Wearer, error) {
	if len(wearers) == 0 || len(wearers) > MaxWearers {
		return nil, &gauge.FieldError{Field: "wearers", Got: strconv.Itoa(len(wearers)), Want: "1 to 10000", Err: gauge.ErrBounds}
	}
	type measured struct {
		Wearer
		low, high gauge.Measurement
	}
	all := make([]measured, len(wearers))
	for i, w := range wearers {
		if err := w.Validate(); err != nil {
			return nil, &grade.SizeError{Index: i, Size: w.Name, Err: err}
		}
		all[i] = measured{w, w.Low.Measurement(), w.High.Measurement()}
	}
	sort.SliceStable(all, func(i, j int) bool {
		if c := all[i].low.Cmp(all[j].low); c != 0 {
			return c < 0
		}
		return all[i].high.Cmp(all[j].high) < 0
	})
	out := make([]Wearer, len(all))
	for i, w := range all {
		out[i] = w.Wearer
		if i > 0 && w.high.Cmp(all[i-1].high) < 0 {
			return nil, fmt.Errorf("wearers: %s (%v to %v) lies inside %s (%v to %v): ranges must have an order",
				w.Name, w.Low, w.High, all[i-1].Name, all[i-1].Low, all[i-1].High)
		}
	}
	return out, nil
}
