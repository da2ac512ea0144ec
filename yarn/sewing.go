package yarn

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/yarn/internal/bound"
	"example.com/panelmath/yarn/internal/say"
	"github.com/shopspring/decimal"
)

// Sewing says how much yarn a sewn seam takes: Factor times its finished length,
// and End at each of its two ends to weave in. The zero value is a seam that
// takes no yarn of its own; WhipStitch has the usual figures.
type Sewing struct {
	Factor decimal.Decimal `json:"factor"`       // 0 to 100
	End    gauge.Length    `json:"end,omitzero"` // the zero Length is no end
}

// WhipStitch returns 2.5 times the seam and 6 in at each end: common practice
// for a whip stitch, no source. Sew one seam of your own, unpick it, and
// measure.
func WhipStitch() Sewing {
	return Sewing{Factor: decimal.New(25, -1), End: gauge.Length{Value: decimal.NewFromInt(6), Unit: gauge.Inch}}
}

// end returns the end with its default.
func (s Sewing) end() gauge.Length {
	if unset(s.End) {
		return gauge.Length{Unit: gauge.Inch}
	}
	return s.End
}

// Validate returns a *gauge.FieldError if the factor is negative or above 100,
// or the end is negative or not valid.
func (s Sewing) Validate() error {
	if _, err := bound.Number("Sewing.Factor", s.Factor); err != nil {
		return err
	}
	if s.Factor.Sign() < 0 || s.Factor.GreaterThan(decimal.NewFromInt(100)) {
		return &gauge.FieldError{Field: "Sewing.Factor", Got: number.Text(s.Factor), Want: "0 to 100", Err: gauge.ErrBounds}
	}
	if err := s.end().Validate(); err != nil {
		return gauge.InField("Sewing.End", err)
	}
	if s.end().Value.Sign() < 0 {
		return &gauge.FieldError{Field: "Sewing.End", Got: s.End.String(), Want: "at least 0"}
	}
	return nil
}

// Seam returns the line for one seam of the given finished length: length ·
// factor + 2 · end. It returns a *gauge.FieldError if the sewing is not valid or
// the length is negative or out of bounds.
func (s Sewing) Seam(name string, length gauge.Measurement) (Line, error) {
	if err := s.Validate(); err != nil {
		return Line{}, err
	}
	if err := bound.Length("Seam.Length", length); err != nil {
		return Line{}, err
	}
	u := s.end().Unit
	total := length.Times(exactly(s.Factor)).Add(s.end().Measurement().Times(gauge.Int(2)))
	return Line{Name: name, Part: Seam, Length: total,
		Why: fmt.Sprintf("%s times %s and twice %v for the ends is %s", say.In(length, u), number.Text(s.Factor), s.end(), say.In(total, u))}.checked()
}
