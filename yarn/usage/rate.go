package usage

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/internal/say"
	"github.com/shopspring/decimal"
)

// Bounds of a fit.
const (
	MaxKinds   = 16  // kinds of stitch
	MaxSamples = 256 // swatches and panels
	MaxName    = 100 // bytes in the name of a kind
)

// Count is so many stitches of one kind: "hdc", "ch", "cast-on". The kind is a
// name and nothing more; stitches that take yarn differently need different
// names.
type Count struct {
	Stitch string `json:"stitch"`
	N      int    `json:"n"`
}

// validate checks a list of counts.
func validate(counts []Count) error {
	if len(counts) == 0 || len(counts) > gauge.MaxCount {
		return &gauge.FieldError{Field: "Counts", Got: strconv.Itoa(len(counts)), Want: "at least 1", Err: gauge.ErrBounds}
	}
	for i, c := range counts {
		at := "Counts[" + strconv.Itoa(i) + "]"
		if c.Stitch == "" || len(c.Stitch) > MaxName {
			return &gauge.FieldError{Field: at + ".Stitch", Got: text.Quote(c.Stitch), Want: "a name of 1 to 100 bytes"}
		}
		if c.N < 0 || c.N > 100*gauge.MaxCount {
			return &gauge.FieldError{Field: at + ".N", Got: strconv.Itoa(c.N), Want: "0 to 10000000", Err: gauge.ErrBounds}
		}
	}
	return nil
}

// Rate is the yarn that one stitch of a kind takes, exactly.
type Rate struct {
	Stitch string            `json:"stitch"`
	Each   gauge.Measurement `json:"each"`
}

// Rates is the yarn that stitches take, a kind at a time, and by what share the
// figures may be off, either way. The zero value knows no stitch.
type Rates struct {
	Rates []Rate      `json:"rates"`
	Off   gauge.Ratio `json:"off"` // 0 takes them as exact; less than 1
}

// Measured returns the rate of one kind from n stitches that were unravelled and
// gave a length of yarn. It returns a *gauge.FieldError if n is not more than 0,
// or the length is not valid or not more than 0.
func Measured(stitch string, n int, l yarn.Length) (Rate, error) {
	if err := validate([]Count{{stitch, n}}); err != nil {
		return Rate{}, err
	}
	if n == 0 {
		return Rate{}, &gauge.FieldError{Field: "N", Got: "0", Want: "more than 0"}
	}
	if err := positive("Yarn", l, l.Value); err != nil {
		return Rate{}, err
	}
	share, err := gauge.Share(1, n)
	return Rate{stitch, l.Measurement().Times(share)}, err
}

// Of returns the rate of a kind, and whether it is known.
func (r Rates) Of(stitch string) (gauge.Measurement, bool) {
	for _, rate := range r.Rates {
		if rate.Stitch == stitch {
			return rate.Each, true
		}
	}
	return gauge.Measurement{}, false
}

// Line returns the line for so many stitches of each kind; a kind may come
// several times. It returns a *gauge.FieldError if there is no count, a count is
// negative, a kind has no rate (the error names it), or the line is out of
// bounds.
func (r Rates) Line(name string, counts ...Count) (yarn.Line, error) {
	if err := validate(counts); err != nil {
		return yarn.Line{}, err
	}
	if r.Off.Sign() < 0 || r.Off.Cmp(gauge.Int(1)) >= 0 {
		return yarn.Line{}, &gauge.FieldError{Field: "Rates.Off", Got: r.Off.Text(4), Want: "at least 0 and less than 1"}
	}
	l := yarn.Line{Name: name, Part: yarn.Fabric}
	stitches := 0
	for i, c := range counts {
		each, ok := r.Of(c.Stitch)
		if !ok {
			return yarn.Line{}, &gauge.FieldError{Field: "Counts[" + strconv.Itoa(i) + "].Stitch", Got: text.Quote(c.Stitch), Want: "a kind of stitch whose yarn is known"}
		}
		stitches += c.N
		l.Length = l.Length.Add(each.Times(gauge.Int(c.N)))
	}
	l.Less = l.Length.Times(r.Off)
	l.More = l.Less
	l.Why = fmt.Sprintf("%s %s (%s) of yarn", text.Count(stitches, "stitch takes", "stitches take"), say.In(l.Length, gauge.Metre), say.In(l.Length, gauge.Yard))
	if r.Off.Sign() > 0 {
		l.Why += ", give or take " + say.Number(r.Off.Mul(gauge.Int(100))) + "%"
	}
	return checked(l)
}

// checked returns the line, or the error of Validate and no line.
func checked(l yarn.Line) (yarn.Line, error) {
	if err := l.Validate(); err != nil {
		return yarn.Line{}, err
	}
	return l, nil
}

// positive checks a length or mass of yarn that may not be nothing; value is its
// number.
func positive(field string, q interface {
	Validate() error
	String() string
}, value decimal.Decimal) error {
	if err := q.Validate(); err != nil {
		return gauge.InField(field, err)
	}
	if value.Sign() == 0 {
		return &gauge.FieldError{Field: field, Got: q.String(), Want: "more than 0"}
	}
	return nil
}
