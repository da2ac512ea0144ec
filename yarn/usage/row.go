package usage

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/internal/bound"
	"example.com/panelmath/yarn/internal/say"
)

// RowSample is one finished row (or a foundation, or a round of edging) that was
// unravelled: how wide it was, and how much yarn it gave. A row takes yarn in
// proportion to its width. The zero value is not valid.
type RowSample struct {
	Width gauge.Length `json:"width"`
	Yarn  yarn.Length  `json:"yarn"`
}

// Validate returns a *gauge.FieldError if either is not valid or not more than 0.
func (r RowSample) Validate() error {
	if err := r.Width.Validate(); err != nil {
		return gauge.InField("RowSample.Width", err)
	}
	if r.Width.Value.Sign() <= 0 {
		return &gauge.FieldError{Field: "RowSample.Width", Got: r.Width.String(), Want: "more than 0"}
	}
	return positive("RowSample.Yarn", r.Yarn, r.Yarn.Value)
}

// Times returns how many times its width a row takes, exactly. It returns the
// error of Validate.
func (r RowSample) Times() (gauge.Ratio, error) {
	if err := r.Validate(); err != nil {
		return gauge.Ratio{}, err
	}
	return r.Yarn.Measurement().Per(r.Width.Measurement())
}

// Rows returns the line for so many such rows of the given width: a foundation
// is one row, an edging of two rounds is two rows as long as the edge.
//
// It returns a *gauge.FieldError if the sample is not valid, rows is not 0 to
// 100 000, or the width is negative or out of bounds.
func (r RowSample) Rows(part yarn.Part, name string, rows int, width gauge.Measurement) (yarn.Line, error) {
	times, err := r.Times()
	if err != nil {
		return yarn.Line{}, err
	}
	if rows < 0 || rows > gauge.MaxCount {
		return yarn.Line{}, &gauge.FieldError{Field: "Rows", Got: strconv.Itoa(rows), Want: "0 to 100000", Err: gauge.ErrBounds}
	}
	if err := bound.Length("Width", width); err != nil {
		return yarn.Line{}, err
	}
	total := width.Times(times).Times(gauge.Int(rows))
	word := "rows"
	if rows == 1 {
		word = "row"
	}
	u := r.Yarn.Unit
	return checked(yarn.Line{Name: name, Part: part, Length: total,
		Why: fmt.Sprintf("%d %s of %s at %s times the width is %s", rows, word, say.In(width, r.Width.Unit), say.Number(times), say.In(total, u))})
}
