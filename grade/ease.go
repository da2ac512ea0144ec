package grade

import (
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
	"github.com/shopspring/decimal"
)

// Ease is what a garment measures beyond the body: a length, or a percentage of
// the body where Unit is no unit. It may be negative: the garment stretches.
// The zero value is 0%: the garment measures what the body measures.
type Ease struct {
	Value decimal.Decimal
	Unit  gauge.Unit // of the length; no unit for a percentage
}

// maxPercent is the largest percentage; the smallest lies above -100.
const maxPercent = 1000

// EaseOf returns the length l as ease.
func EaseOf(l gauge.Length) Ease { return Ease(l) }

// Percent returns p percent of the body as ease.
func Percent(p decimal.Decimal) Ease { return Ease{Value: p} }

// ParseEase reads a length, "9 in", "-2 1/2 in", "+8 cm", or a percentage,
// "-5%", "7.5 %".
//
// It returns a *gauge.ParseError if s is neither, or breaks the bounds of
// Validate.
func ParseEase(s string) (Ease, error) {
	fail := func(at int, cause string, err error) (Ease, error) {
		return Ease{}, &gauge.ParseError{Kind: "ease", Text: s, At: at, Cause: cause, Err: err}
	}
	if len(s) > text.Limit {
		return fail(text.Limit, "text too long; at most 10000 characters", gauge.ErrBounds)
	}
	number, isPercent := strings.CutSuffix(strings.TrimSpace(s), "%")
	if !isPercent {
		l, err := gauge.ParseLength(s)
		if p, ok := err.(*gauge.ParseError); ok {
			return fail(p.At, strings.Replace(p.Cause, "; want mm, cm, m, in, ft or yd", "; want a length like 9 in or a percentage like -5%", 1), p.Err)
		}
		return Ease(l), err
	}
	// A percentage is written like a number of any unit: let ParseLength read it.
	l, err := gauge.ParseLength(strings.TrimSpace(number) + " mm")
	if err != nil {
		return fail(0, "want a percentage like -5%", nil)
	}
	e := Ease{Value: l.Value}
	if err := e.Validate(); err != nil {
		return fail(0, err.Error(), gauge.ErrBounds)
	}
	return e, nil
}

// MustEase is ParseEase for literals in tests and package variables; it panics
// when s is not an ease.
func MustEase(s string) Ease {
	return text.Must("grade.MustEase", s, ParseEase)
}

// Validate returns a *gauge.FieldError if a length is longer than 100 m or has
// no valid unit, or a percentage is not above -100 and at most 1000.
func (e Ease) Validate() error {
	if e.Unit != 0 {
		return gauge.InField("Ease", gauge.Length(e).Validate())
	}
	if _, err := gauge.FromDecimal(e.Value); err != nil {
		return gauge.InField("Ease", err)
	}
	if e.Value.Cmp(decimal.NewFromInt(-100)) <= 0 || e.Value.Cmp(decimal.NewFromInt(maxPercent)) > 0 {
		return &gauge.FieldError{Field: "Ease.Value", Got: number.Text(e.Value) + "%", Want: "above -100% and at most 1000%", Err: gauge.ErrBounds}
	}
	return nil
}

// Finished returns what the garment measures on a body, exactly: body + ease,
// or body · (1 + percentage). An ease that is not valid gives the body itself.
func (e Ease) Finished(body gauge.Measurement) gauge.Measurement {
	if e.Validate() != nil {
		return body
	}
	if e.Unit != 0 {
		return body.Add(gauge.Length(e).Measurement())
	}
	p, _ := gauge.FromDecimal(e.Value)
	hundredth, _ := gauge.Share(1, 100)
	return body.Add(body.Times(p.Mul(hundredth)))
}

// Given returns the ease that a finished measure gives a body: as a length, and
// as a percentage of the body, both exact.
//
// It returns a *gauge.FieldError if the body is nothing.
func Given(body, finished gauge.Measurement) (length gauge.Measurement, percent gauge.Ratio, err error) {
	length = finished.Sub(body)
	share, err := length.Per(body)
	if err != nil {
		return gauge.Measurement{}, gauge.Ratio{}, gauge.InField("body", err)
	}
	return length, share.Mul(gauge.Int(100)), nil
}

// Sign returns -1, 0 or +1.
func (e Ease) Sign() int { return e.Value.Sign() }

// String returns "9 in" or "-5%", which ParseEase reads back.
func (e Ease) String() string {
	if e.Unit == 0 {
		return number.Text(e.Value) + "%"
	}
	return gauge.Length(e).String()
}

// MarshalText returns String. It returns the error of Validate.
func (e Ease) MarshalText() ([]byte, error) {
	if err := e.Validate(); err != nil {
		return nil, err
	}
	return []byte(e.String()), nil
}

// UnmarshalText reads what ParseEase reads.
func (e *Ease) UnmarshalText(b []byte) error {
	return text.Read(e, b, ParseEase)
}
