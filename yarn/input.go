package yarn

import (
	"strings"
	"unicode"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
	"github.com/shopspring/decimal"
)

// input is a text that is to become a quantity: a number and its unit.
type input struct {
	kind string // "mass"
	s    string
	like string // what would be understood: "100 g"
}

func (in input) fail(at int, cause string, err error) error {
	return &gauge.ParseError{Kind: in.kind, Text: in.s, At: at, Cause: cause, Err: err}
}

// bounds is fail for a quantity beyond its limits.
func (in input) bounds(cause string) error { return in.fail(0, cause, gauge.ErrBounds) }

// split returns the number, with its sign, and the unit behind it.
func (in input) split() (d decimal.Decimal, unit string, err error) {
	if len(in.s) > text.Limit {
		return d, "", in.fail(text.Limit, "text too long; at most 10000 characters", gauge.ErrBounds)
	}
	at := len(in.s) - len(strings.TrimLeftFunc(in.s, unicode.IsSpace))
	minus, n := number.Sign(in.s[at:])
	at += n
	d, n, trouble := number.Scan(in.s[at:])
	switch {
	case trouble != nil && trouble.Bounds:
		return d, "", in.fail(at+trouble.At, trouble.Cause, gauge.ErrBounds)
	case trouble != nil:
		return d, "", in.fail(at+trouble.At, trouble.Cause, nil)
	case n == 0:
		return d, "", in.fail(at, "no number; want a number and a unit, like "+in.like, nil)
	case minus:
		d = d.Neg()
	}
	return d, strings.TrimSpace(in.s[at+n:]), nil
}

// positive is Validate for a quantity of that value that may not be nothing.
func positive(field string, value decimal.Decimal, q interface {
	Validate() error
	String() string
}) error {
	if err := q.Validate(); err != nil {
		return gauge.InField(field, err)
	}
	if value.Sign() == 0 {
		return &gauge.FieldError{Field: field, Got: q.String(), Want: "more than 0"}
	}
	return nil
}
