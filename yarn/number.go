package yarn

import (
	"strings"
	"unicode"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
	"github.com/shopspring/decimal"
)

// reading is a text that is to become a quantity: a number and its unit.
type reading struct {
	kind string // "mass"
	s    string
	like string // what would be understood: "100 g"
}

func (r reading) fail(at int, cause string, err error) error {
	return &gauge.ParseError{Kind: r.kind, Text: r.s, At: at, Cause: cause, Err: err}
}

// bounds is fail for a quantity beyond its limits.
func (r reading) bounds(cause string) error { return r.fail(0, cause, gauge.ErrBounds) }

// split returns the number, with its sign, and the unit behind it.
func (r reading) split() (d decimal.Decimal, unit string, err error) {
	if len(r.s) > text.Limit {
		return d, "", r.fail(text.Limit, "text too long; at most 10000 characters", gauge.ErrBounds)
	}
	at := len(r.s) - len(strings.TrimLeftFunc(r.s, unicode.IsSpace))
	minus, n := number.Sign(r.s[at:])
	at += n
	d, n, trouble := number.Scan(r.s[at:])
	switch {
	case trouble != nil && trouble.Bounds:
		return d, "", r.fail(at+trouble.At, trouble.Cause, gauge.ErrBounds)
	case trouble != nil:
		return d, "", r.fail(at+trouble.At, trouble.Cause, nil)
	case n == 0:
		return d, "", r.fail(at, "no number; want a number and a unit, like "+r.like, nil)
	case minus:
		d = d.Neg()
	}
	return d, strings.TrimSpace(r.s[at+n:]), nil
}

// exactly returns d, which is known to be within bounds, as a ratio.
func exactly(d decimal.Decimal) gauge.Ratio {
	r, _ := gauge.FromDecimal(d)
	return r
}

// over returns x/y where y is known not to be 0.
func over(x, y gauge.Ratio) gauge.Ratio {
	r, _ := x.Quo(y)
	return r
}
