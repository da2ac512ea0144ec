package gauge

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"example.com/panelmath/internal/text"
	"github.com/shopspring/decimal"
)

// scanner walks through a text that is to become a length or a gauge. Its
// methods take what comes next, after blanks, and leave at behind it; they
// return a *ParseError for the whole text.
type scanner struct {
	kind string // what the text is to become
	s    string
	at   int
}

// newScanner refuses a text longer than text.Limit.
func newScanner(kind, s string) (*scanner, error) {
	p := &scanner{kind: kind, s: s}
	if len(s) > text.Limit {
		return nil, p.fail(text.Limit, "text too long; at most 10000 characters", ErrBounds)
	}
	return p, nil
}

func (p *scanner) fail(at int, cause string, err error) error {
	return &ParseError{Kind: p.kind, Text: p.s, At: at, Cause: cause, Err: err}
}

// rest returns what comes next, without the blanks before it.
func (p *scanner) rest() string {
	for p.at < len(p.s) && (p.s[p.at] == ' ' || p.s[p.at] == '\t') {
		p.at++
	}
	return p.s[p.at:]
}

// end returns an error if anything comes next.
func (p *scanner) end() error {
	if r := p.rest(); r != "" {
		return p.fail(p.at, "unexpected "+text.Quote(r), nil)
	}
	return nil
}

// letters returns the run of ASCII letters at the front of s.
func letters(s string) string {
	n := 0
	for n < len(s) && 'a' <= s[n]|0x20 && s[n]|0x20 <= 'z' {
		n++
	}
	return s[:n]
}

// digits returns the run of digits at the front of s.
func digits(s string) string {
	n := 0
	for n < len(s) && '0' <= s[n] && s[n] <= '9' {
		n++
	}
	return s[:n]
}

// word takes one of the words, whatever its case, or one of the marks.
func (p *scanner) word(words ...string) bool {
	r := p.rest()
	for _, w := range words {
		if w == letters(w) && strings.EqualFold(w, letters(r)) || w != letters(w) && strings.HasPrefix(r, w) {
			p.at += len(w)
			return true
		}
	}
	return false
}

// number takes `20`, `20.5`, `.5`, `20 1/2`, `20-1/2`, `1/2`, `20½` or `½`. It
// returns false, and takes nothing, if none of them comes next.
func (p *scanner) number() (d decimal.Decimal, ok bool, err error) {
	r, start := p.rest(), p.at
	if f, ok, err := p.fraction(); ok || err != nil {
		return f, ok, err
	}
	n := len(digits(r))
	if n > 0 {
		p.at += n
		if strings.HasPrefix(r[n:], " ") || strings.HasPrefix(r[n:], "-") {
			p.at++
		}
		f, ok, err := p.fraction()
		switch {
		case err != nil:
			return d, false, err
		case ok && n > MaxDigits:
			return d, false, p.tooLong(start, n)
		case ok && f.Cmp(decimal.New(1, 0)) >= 0:
			return d, false, p.fail(start, "a fraction of 1 or more after a whole number", nil)
		case ok:
			return parsePlain(r[:n]).Add(f), true, nil
		}
	}
	if strings.HasPrefix(r[n:], ".") {
		if part := digits(r[n+1:]); part != "" {
			n += 1 + len(part)
		}
	}
	p.at = start + n
	switch after := r[n:]; {
	case n == 0:
		return d, false, nil
	case n > MaxDigits+1:
		return d, false, p.tooLong(start, n)
	case strings.HasPrefix(after, ",") && digits(after[1:]) != "":
		return d, false, p.fail(p.at, "a comma as decimal mark; write a full stop: 20.5", nil)
	case isExponent(after):
		return d, false, p.fail(p.at, "an exponent; write the number out", nil)
	}
	d = parsePlain(r[:n])
	if d.Exponent() < -MaxExponent {
		return d, false, p.fail(start, fmt.Sprintf("more than %d decimal places", MaxExponent), ErrBounds)
	}
	return d, true, nil
}

func (p *scanner) tooLong(at, n int) error {
	return p.fail(at, fmt.Sprintf("a number of %d characters; at most %d digits", n, MaxDigits), ErrBounds)
}

// isExponent reports whether s, which follows a number, is the exponent of a
// computer's notation: e6, E-6.
func isExponent(s string) bool {
	return s != "" && s[0]|0x20 == 'e' && digits(strings.TrimLeft(s[1:], "+-")) != ""
}

// fraction takes a fraction sign or n/d. It returns false, and takes nothing,
// if neither comes next.
func (p *scanner) fraction() (decimal.Decimal, bool, error) {
	r := p.s[p.at:]
	if sign, f, ok := vulgar(r); ok {
		p.at += len(sign)
		return f, true, nil
	}
	if c, size := utf8.DecodeRuneInString(r); c >= '⅐' && c <= '⅞' {
		return decimal.Decimal{}, false, p.noDecimal(r[:size])
	}
	num := digits(r)
	den, ok := strings.CutPrefix(r[len(num):], "/")
	if num == "" || !ok {
		return decimal.Decimal{}, false, nil
	}
	den = digits(den)
	part, ok := unitFraction(den)
	if !ok || len(num) > 2 {
		return decimal.Decimal{}, false, p.noDecimal(r[:len(num)+1+len(den)])
	}
	p.at += len(num) + 1 + len(den)
	return parsePlain(num).Mul(part), true, nil
}

func (p *scanner) noDecimal(fraction string) error {
	return p.fail(p.at, "fraction "+text.Quote(fraction)+" has no exact decimal; want halves, quarters, eighths, sixteenths, fifths or tenths", nil)
}

// sign takes a sign and reports whether it is a minus.
func (p *scanner) sign() bool {
	r := p.rest()
	for _, sign := range []string{"-", "−", "+"} {
		if strings.HasPrefix(r, sign) {
			p.at += len(sign)
			return sign != "+"
		}
	}
	return false
}

// length takes a number and its unit; feet may be followed by inches.
func (p *scanner) length() (Length, error) {
	p.rest()
	start := p.at
	neg := p.sign()
	l, err := p.plainLength()
	if err != nil {
		return Length{}, err
	}
	if r := p.rest(); l.Unit == Foot && r != "" && digits(r[:1]) != "" {
		inches, err := p.plainLength()
		if err != nil {
			return Length{}, err
		}
		if inches.Unit != Inch {
			return Length{}, p.fail(p.at, "feet are followed by inches alone: 5 ft 3 in", nil)
		}
		l = Length{Value: l.Value.Mul(decimal.NewFromInt(12)).Add(inches.Value), Unit: Inch}
	}
	if neg {
		l.Value = l.Value.Neg()
	}
	if err := l.Validate(); err != nil {
		return Length{}, p.fail(start, "longer than 100 m, or a number out of bounds", ErrBounds)
	}
	return l, nil
}

// plainLength takes a number and a unit, with blanks or one hyphen between.
func (p *scanner) plainLength() (Length, error) {
	d, ok, err := p.number()
	if err != nil {
		return Length{}, err
	}
	if !ok {
		return Length{}, p.fail(p.at, "want a number and a unit, like 20 1/2 in, got "+text.Quote(p.rest()), nil)
	}
	r := p.rest()
	if strings.HasPrefix(r, "-") && letters(r[1:]) != "" { // a 4-in span
		p.at++
		r = r[1:]
	}
	name := letters(r)
	if name == "" { // an inch or foot mark
		_, size := utf8.DecodeRuneInString(r)
		name = r[:size]
	}
	if name == "" {
		return Length{}, p.fail(p.at, "no unit; want mm, cm, m, in, ft or yd", nil)
	}
	u, err := ParseUnit(name)
	if err != nil {
		return Length{}, p.fail(p.at, "unknown unit "+text.Quote(name), nil)
	}
	p.at += len(name)
	if letters(name) != "" && strings.HasPrefix(p.s[p.at:], ".") { // in.
		p.at++
	}
	return Length{Value: d, Unit: u}, nil
}
