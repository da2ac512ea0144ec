package offgauge

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
)

// Change turns the numbers of a pattern into those of another gauge, in one
// direction: stitches to stitches, or rows to rows. The zero value is not
// valid.
type Change struct {
	Pattern gauge.Over `json:"pattern"` // the gauge that the pattern was written at
	Mine    gauge.Over `json:"mine"`
}

// Validate returns a *gauge.FieldError if either gauge is not valid.
func (c Change) Validate() error {
	if err := c.Pattern.Validate(); err != nil {
		return gauge.InField("Change.Pattern", err)
	}
	return gauge.InField("Change.Mine", c.Mine.Validate())
}

// Measures returns what comes out at Mine of a piece that measures m at Pattern,
// when its counts are left as they are. It returns the error of Validate.
func (c Change) Measures(m gauge.Measurement) (gauge.Measurement, error) {
	if err := c.Validate(); err != nil {
		return gauge.Measurement{}, err
	}
	n, err := c.Pattern.Exact(m)
	if err != nil {
		return gauge.Measurement{}, err
	}
	return c.Mine.Measure(n)
}

// Exact returns the number at Mine that measures what n does at Pattern,
// unrounded. It returns the error of Validate.
func (c Change) Exact(n int) (gauge.Ratio, error) {
	if err := c.Validate(); err != nil {
		return gauge.Ratio{}, err
	}
	m, err := c.Pattern.Measure(gauge.Int(n))
	if err != nil {
		return gauge.Ratio{}, err
	}
	return c.Mine.Exact(m)
}

// Count returns the legal count at Mine for a number of the pattern, with the
// length that it is off. It returns the errors of Validate and of Rule.Round,
// and a *gauge.FieldError if n is not from 0 to gauge.MaxCount.
func (c Change) Count(n int, r gauge.Rule) (gauge.Count, error) {
	if err := c.Validate(); err != nil {
		return gauge.Count{}, err
	}
	if n < 0 || n > gauge.MaxCount {
		return gauge.Count{}, &gauge.FieldError{Field: "n", Got: strconv.Itoa(n), Want: "0 to 100000", Err: gauge.ErrBounds}
	}
	m, err := c.Pattern.Measure(gauge.Int(n))
	if err != nil {
		return gauge.Count{}, err
	}
	return c.Mine.Round(m, r)
}

// Counts returns Count for every number, by one rule for all. An error names
// the number by its place in the list.
func (c Change) Counts(numbers []int, r gauge.Rule) ([]gauge.Count, error) {
	out := make([]gauge.Count, len(numbers))
	for i, n := range numbers {
		var err error
		if out[i], err = c.Count(n, r); err != nil {
			return nil, fmt.Errorf("number %d of the list, %d: %w", i+1, n, err)
		}
	}
	return out, nil
}

// MaxAlike is the largest multiple that Alike takes.
const MaxAlike = 100

// Alike returns counts that all leave the same remainder by multiple, whichever
// it is: all even or all odd for 2. Of the remainders it takes the one whose
// worst count is least off, and of equal ones the smallest.
//
// It returns the errors of Counts, or a *gauge.FieldError if multiple is not
// from 1 to MaxAlike.
func (c Change) Alike(numbers []int, multiple int) ([]gauge.Count, error) {
	if multiple < 1 || multiple > MaxAlike {
		return nil, &gauge.FieldError{Field: "multiple", Got: strconv.Itoa(multiple), Want: "1 to 100", Err: gauge.ErrBounds}
	}
	var best []gauge.Count
	var least gauge.Ratio
	for plus := range multiple {
		counts, err := c.Counts(numbers, gauge.Rule{Multiple: multiple, Plus: plus})
		if err != nil {
			return nil, err
		}
		if off := worst(counts); best == nil || off.Cmp(least) < 0 {
			best, least = counts, off
		}
	}
	return best, nil
}

// worst returns how far the worst of the counts is off, without its sign.
func worst(counts []gauge.Count) gauge.Ratio {
	var w gauge.Ratio
	for _, c := range counts {
		off := c.Off()
		if off.Sign() < 0 {
			off = gauge.Ratio{}.Sub(off)
		}
		if off.Cmp(w) > 0 {
			w = off
		}
	}
	return w
}
