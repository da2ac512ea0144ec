package swatch

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
	"github.com/shopspring/decimal"
)

// MaxReadings is the largest number of readings in a swatch.
const MaxReadings = 64

// Swatch is what was measured on one swatch in one direction: the same thing
// counted at several places. The zero value has no readings and is not valid.
type Swatch struct {
	Readings []Reading `json:"readings"` // 1 to MaxReadings
}

// Validate returns a *gauge.FieldError if there is no reading or too many, or
// one is not valid.
func (s Swatch) Validate() error {
	if n := len(s.Readings); n == 0 || n > MaxReadings {
		return &gauge.FieldError{Field: "Swatch.Readings", Got: strconv.Itoa(n) + " readings", Want: "1 to 64", Err: gauge.ErrBounds}
	}
	for i, r := range s.Readings {
		if err := r.Validate(); err != nil {
			return gauge.InField(fmt.Sprintf("Swatch.Readings[%d]", i), err)
		}
	}
	return nil
}

// Over returns the gauge of the swatch: all counts over all spans, so that a
// long span, which is known better, weighs more. Spans in different units are
// added in millimetres, and repeats of different sizes in stitches.
//
// It returns the error of Validate, and of Over.Validate where a sum is out of
// bounds.
func (s Swatch) Over() (gauge.Over, error) {
	if err := s.Validate(); err != nil {
		return gauge.Over{}, err
	}
	first := s.Readings[0].Over
	of, unit := first.Of, first.Span.Unit
	for _, r := range s.Readings {
		if r.Over.Of != of {
			of = 0
		}
		if r.Over.Span.Unit != unit {
			unit = gauge.Millimetre
		}
	}
	count, span := decimal.Decimal{}, gauge.Measurement{}
	for _, r := range s.Readings {
		n := r.Over.Count
		if of == 0 {
			n = n.Mul(decimal.New(int64(max(r.Over.Of, 1)), 0))
		}
		count, span = count.Add(n), span.Add(r.Over.Span.Measurement())
	}
	length, ok := span.In(unit).ExactDecimal()
	if !ok {
		return gauge.Over{}, &gauge.FieldError{Field: "Swatch.Readings", Got: "spans that add up to " + span.String(), Want: "a sum of at most 20 decimal places", Err: gauge.ErrBounds}
	}
	sum := gauge.Over{Count: count, Of: of, Span: gauge.Length{Value: length, Unit: unit}}
	if err := sum.Validate(); err != nil {
		return gauge.Over{}, gauge.InField("Swatch", err)
	}
	return sum, nil
}

// Range is a length that is known to lie from Low to High.
type Range struct {
	Low  gauge.Measurement `json:"low"`
	Mid  gauge.Measurement `json:"mid"` // the best guess
	High gauge.Measurement `json:"high"`
}

// PlusMinus returns how far the length can be off either way: it lies within Mid
// ± PlusMinus.
func (r Range) PlusMinus() gauge.Measurement {
	down, up := r.Mid.Sub(r.Low), r.High.Sub(r.Mid)
	if down.Cmp(up) > 0 {
		return down
	}
	return up
}

// Text returns the range on a grid: "41 in (39½ to 42¾)".
func (r Range) Text(g gauge.Grid) string {
	return g.Text(r.Mid) + " (" + g.Number(r.Low) + " to " + g.Number(r.High) + ")"
}

// Measure returns how long n stitches or rows are: Mid at the gauge of the
// swatch, Low and High at the tightest and the loosest gauge that any reading
// allows. It returns the error of Over.
func (s Swatch) Measure(n int) (Range, error) {
	sum, err := s.Over()
	if err != nil {
		return Range{}, err
	}
	mid, err := sum.Measure(gauge.Int(n))
	if err != nil {
		return Range{}, err
	}
	out := Range{Low: mid, Mid: mid, High: mid}
	for _, r := range s.Readings {
		loose, tight, _ := r.between()
		for _, per := range [...]gauge.Ratio{loose, tight} {
			mm, _ := gauge.Int(n).Quo(per) // no gauge is 0
			switch m := gauge.MeasurementOf(mm, gauge.Millimetre); {
			case m.Cmp(out.Low) < 0:
				out.Low = m
			case m.Cmp(out.High) > 0:
				out.High = m
			}
		}
	}
	return out, nil
}
