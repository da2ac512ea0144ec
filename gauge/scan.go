package gauge

import (
	"strings"
	"unicode/utf8"

	"example.com/panelmath/internal/number"
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

// number takes a number that number.Scan reads. It returns false, and takes
// nothing, if none comes next.
func (p *scanner) number() (d decimal.Decimal, ok bool, err error) {
	d, n, trouble := number.Scan(p.rest())
	if trouble != nil {
		var bounds error
		if trouble.Bounds {
			bounds = ErrBounds
		}
		return d, false, p.fail(p.at+trouble.At, trouble.Cause, bounds)
	}
	p.at += n
	return d, n > 0, nil
}

// sign takes a sign and reports whether it is a minus.
func (p *scanner) sign() bool {
	minus, n := number.Sign(p.rest())
	p.at += n
	return minus
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
	if r := p.rest(); l.Unit == Foot && r != "" && number.Digits(r) != "" {
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
		return Length{}, p.fail(start, number.Beyond(l.Value, "longer than 100 m"), ErrBounds)
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
