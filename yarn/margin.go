package yarn

import (
	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn/internal/bound"
	"github.com/shopspring/decimal"
)

// Margin is what is bought beyond the calculated quantity, as a percentage of
// it. The zero value is no margin. A negative margin, down to -100, takes away.
type Margin struct {
	Percent decimal.Decimal
}

// Validate returns a *gauge.FieldError if the percentage is below -100, above
// 1000, or out of the bounds of a number.
func (m Margin) Validate() error {
	if _, err := bound.Number("Margin.Percent", m.Percent); err != nil {
		return err
	}
	if m.Percent.LessThan(decimal.NewFromInt(-100)) || m.Percent.GreaterThan(decimal.NewFromInt(1000)) {
		return &gauge.FieldError{Field: "Margin.Percent", Got: number.Text(m.Percent), Want: "-100 to 1000", Err: gauge.ErrBounds}
	}
	return nil
}

// share returns the margin as a number: 10% is 1/10.
func (m Margin) share() gauge.Ratio { return over(exactly(m.Percent), gauge.Int(100)) }

// String returns "10%", which ParseMargin reads back.
func (m Margin) String() string { return number.Text(m.Percent) + "%" }

// ParseMargin reads `10%`, `7.5 %`, `-5%`, `10 percent`. A bare number is not
// read: 0.1 and 10 could both be meant.
//
// It returns a *gauge.ParseError if s is none of these or breaks the bounds of
// Margin.
func ParseMargin(s string) (Margin, error) {
	in := input{"margin", s, "10%"}
	d, unit, err := in.split()
	if err != nil {
		return Margin{}, err
	}
	if unit != "%" && unit != "percent" {
		return Margin{}, in.fail(len(s), "no percent sign; want a percentage like 10%", nil)
	}
	m := Margin{Percent: d}
	if m.Validate() != nil {
		return Margin{}, in.bounds("want -100% to 1000%")
	}
	return m, nil
}

// MustMargin is ParseMargin for literals in tests and package variables; it
// panics when s is not a margin.
func MustMargin(s string) Margin {
	return text.Must("yarn.MustMargin", s, ParseMargin)
}

// MarshalText returns String. It returns the error of Validate.
func (m Margin) MarshalText() ([]byte, error) {
	if err := m.Validate(); err != nil {
		return nil, err
	}
	return []byte(m.String()), nil
}

// UnmarshalText reads what ParseMargin reads.
func (m *Margin) UnmarshalText(b []byte) error {
	return text.Read(m, b, ParseMargin)
}
