package swatch

import (
	"strings"

	"example.com/panelmath/gauge"
	"github.com/shopspring/decimal"
)

// Reading is a count over a span, with the steps to which the two were read. A
// count read to the half stitch lies within a quarter stitch of the true one, a
// span read to the quarter inch within an eighth. A gauge or a count that
// stands in a pattern is a reading as well: it was rounded when it was printed.
type Reading struct {
	Over    gauge.Over      `json:"over"`
	CountTo decimal.Decimal `json:"count_to"`         // step of the count, in what Over counts; 0 stands for exact
	SpanTo  gauge.Length    `json:"span_to,omitzero"` // step of the span; the zero value stands for exact
}

// Printed returns o as a reading rounded to its own last place: a whole number
// to 1, one that ends in .5 to a half, any other to its last decimal. The span
// is exact: it was chosen.
func Printed(o gauge.Over) Reading {
	count, _, _ := strings.Cut(o.String(), " ")
	_, part, _ := strings.Cut(count, ".")
	if part == "5" {
		return Reading{Over: o, CountTo: decimal.New(5, -1)}
	}
	return Reading{Over: o, CountTo: decimal.New(1, -int32(len(part)))}
}

// Validate returns a *gauge.FieldError if Over is not valid, or a step is
// negative or so coarse that the count or the span could be nothing.
func (r Reading) Validate() error {
	_, _, err := r.between()
	return err
}

// between returns the loosest and the tightest gauge, per millimetre, that
// could have given the reading, or the error of Validate.
func (r Reading) between() (low, high gauge.Ratio, err error) {
	mid, err := perMM(r.Over)
	if err != nil {
		return low, high, gauge.InField("Reading.Over", err)
	}
	to, err := gauge.FromDecimal(r.CountTo)
	if err != nil {
		return low, high, &gauge.FieldError{Field: "Reading.CountTo", Got: "a number out of bounds", Want: "a step of the count", Err: err}
	}
	count, _ := gauge.FromDecimal(r.Over.Count)
	n, ok := halfStep(to, count)
	if !ok {
		return low, high, &gauge.FieldError{Field: "Reading.CountTo", Got: to.Text(3), Want: "0, or a step less than twice the count"}
	}
	s := gauge.Ratio{}
	if r.SpanTo.Unit != 0 || !r.SpanTo.Value.IsZero() {
		if err := r.SpanTo.Validate(); err != nil {
			return low, high, gauge.InField("Reading.SpanTo", err)
		}
		s, ok = halfStep(r.SpanTo.Measurement().In(gauge.Millimetre), r.Over.Span.Measurement().In(gauge.Millimetre))
		if !ok {
			return low, high, &gauge.FieldError{Field: "Reading.SpanTo", Got: r.SpanTo.String(), Want: "nothing, or a step less than twice the span"}
		}
	}
	one := gauge.Int(1)
	low, _ = one.Sub(n).Quo(one.Add(s)) // neither divisor is 0
	high, _ = one.Add(n).Quo(one.Sub(s))
	return mid.Mul(low), mid.Mul(high), nil
}

// halfStep returns half a step as a share of the whole, which is more than 0,
// and false unless it is at least 0 and less than 1.
func halfStep(step, whole gauge.Ratio) (gauge.Ratio, bool) {
	share, err := step.Quo(whole.Add(whole))
	return share, err == nil && share.Sign() >= 0 && share.Cmp(gauge.Int(1)) < 0
}

// perMM returns the stitches or rows in a millimetre.
func perMM(o gauge.Over) (gauge.Ratio, error) {
	return o.Exact(gauge.MeasurementOf(gauge.Int(1), gauge.Millimetre))
}
