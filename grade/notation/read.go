package notation

import (
	"errors"
	"strconv"
	"strings"
	"unicode/utf8"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/text"
)

// kind is what a ParseError of this package says it read.
const kind = "size list"

// Read reads one value per size in any style, each value with f. A lone value
// stands for all n sizes; where n is 0 any number of values is taken as it is.
//
//	list  = value { group } | value { "(" value ")" value } [ "(" value ")" ] | value { "-" value }
//	group = "(" value { sep value } ")" | "[" value { sep value } "]"
//	sep   = "," or ":", the same one throughout
//
// It returns a *gauge.ParseError with the place if there is a stray mark or no
// value where one is due, if f can't read a value, and if the list has neither
// one nor n values, or more than 64. It returns a *gauge.FieldError if n is
// negative or more than 64.
func Read[T any](s string, n int, f func(string) (T, error)) (grade.Run[T], error) {
	if n < 0 || n > grade.MaxSizes {
		return nil, &gauge.FieldError{Field: "sizes", Got: strconv.Itoa(n), Want: "0 to 64", Err: gauge.ErrBounds}
	}
	fail := func(at int, cause string) (grade.Run[T], error) {
		return nil, &gauge.ParseError{Kind: kind, Text: s, At: at, Cause: cause}
	}
	if len(s) > text.Limit {
		return fail(text.Limit, "text too long; at most 10000 characters")
	}
	words, bad := split(s)
	if bad != nil {
		return fail(bad.at, bad.cause)
	}
	if len(words) == 1 && strings.ContainsAny(words[0].text, "-–") {
		// A dash may belong to the value (-5, 20-1/2) or stand between two.
		if _, err := f(words[0].text); err != nil {
			words = dashed(words[0])
		}
	}
	if len(words) > grade.MaxSizes {
		return fail(words[grade.MaxSizes].at, "more than 64 values")
	}
	out := make(grade.Run[T], len(words))
	for i, w := range words {
		if w.text == "" {
			return fail(w.at, "no value before "+rest(s, w.at))
		}
		v, err := f(w.text)
		if err != nil {
			return fail(w.at, cause(w.text, err))
		}
		out[i] = v
	}
	switch {
	case n == 0 || len(out) == n:
		return out, nil
	case len(out) == 1:
		return out.For(n)
	case len(out) > n:
		return fail(words[n].at, strconv.Itoa(len(out))+" values for "+plural(n)+"; the first too many is "+text.Quote(words[n].text))
	}
	return fail(len(s), strconv.Itoa(len(out))+" values for "+plural(n))
}

// ReadNumbers reads a list of counts, 0 to gauge.MaxCount. It returns the
// errors of Read.
func ReadNumbers(s string, n int) (grade.Run[int], error) {
	return Read(s, n, func(w string) (int, error) {
		v, err := strconv.Atoi(w)
		if err != nil || w[0] == '+' || w[0] == '-' {
			return 0, errors.New("want a whole number, got " + text.Quote(w))
		}
		if v > gauge.MaxCount {
			return 0, errors.New("want at most 100000, got " + text.Quote(w))
		}
		return v, nil
	})
}

func plural(n int) string {
	if n == 1 {
		return "1 size"
	}
	return strconv.Itoa(n) + " sizes"
}

// cause returns what is wrong with a value, without repeating the whole of a
// ParseError's text.
func cause(word string, err error) string {
	var p *gauge.ParseError
	if errors.As(err, &p) {
		return "value " + text.Quote(word) + ": " + p.Cause
	}
	return err.Error()
}

// token is a mark of a list, or a value, and its place in the text.
type token struct {
	mark byte // one of ()[],: or 0 for a value
	text string
	at   int
}

// trouble is what could not be read, and where.
type trouble struct {
	at    int
	cause string
}

// scan cuts a list at its marks. Values have no blanks around them.
func scan(s string) []token {
	var out []token
	start := 0
	value := func(end int) {
		raw := s[start:end]
		if t := strings.TrimSpace(raw); t != "" {
			out = append(out, token{0, t, start + strings.Index(raw, t)})
		}
		start = end + 1
	}
	for i := range len(s) {
		if strings.IndexByte("()[],:", s[i]) >= 0 {
			value(i)
			out = append(out, token{s[i], s[i : i+1], i})
		}
	}
	value(len(s))
	return out
}

// split returns the values of a list with brackets, or the one value of a list
// without.
func split(s string) ([]token, *trouble) {
	p := parser{s: s, rest: scan(s)}
	if len(p.rest) == 0 {
		return nil, &trouble{0, "no value; want a list like 101 (113, 125)"}
	}
	if m := p.next().mark; m == '(' || m == '[' {
		return nil, &trouble{p.next().at, "no value before " + rest(s, p.next().at) + "; the smallest size stands outside the brackets"}
	}
	if t := p.value(); t != nil {
		return nil, t
	}
	outside, groups, widest := 1, 0, 1
	for len(p.rest) > 0 {
		next := p.next()
		if next.mark == 0 { // brackets take turns: each holds one value
			if widest > 1 || outside != groups {
				return nil, &trouble{next.at, "unexpected " + text.Quote(next.text) + " outside the brackets"}
			}
			outside++
			if t := p.value(); t != nil {
				return nil, t
			}
			continue
		}
		if outside > 1 && outside == groups {
			return nil, p.stray("want a value between two brackets, as in 8 (10) 12 (14)")
		}
		before := len(p.values)
		if t := p.group(); t != nil {
			return nil, t
		}
		groups++
		widest = max(widest, len(p.values)-before)
		if outside > 1 && widest > 1 {
			second := p.values[before+1]
			return nil, &trouble{second.at, "a second value in a bracket, where brackets take turns: " + text.Quote(second.text)}
		}
	}
	return p.values, nil
}

// parser takes tokens from the front of rest.
type parser struct {
	s      string
	rest   []token
	values []token
	sep    byte // the separator of the list, 0 while it has had none
}

// next returns the token that comes next; at the end, a mark that is none.
func (p *parser) next() token {
	if len(p.rest) == 0 {
		return token{' ', "", len(p.s)}
	}
	return p.rest[0]
}

// stray reports the mark that comes next.
func (p *parser) stray(want string) *trouble {
	m := p.next()
	return &trouble{m.at, "stray " + text.Quote(m.text) + " before " + rest(p.s, m.at+1) + "; " + want}
}

// value takes a value.
func (p *parser) value() *trouble {
	v := p.next()
	switch {
	case v.mark != 0:
		return &trouble{v.at, "no value before " + rest(p.s, v.at)}
	case len(p.values) == grade.MaxSizes:
		return &trouble{v.at, "more than 64 values"}
	}
	p.values, p.rest = append(p.values, v), p.rest[1:]
	return nil
}

// group takes a bracket with its values.
func (p *parser) group() *trouble {
	opening := p.next()
	switch opening.mark {
	case ')', ']':
		return p.stray("no bracket of its kind is open")
	case ',', ':':
		return p.stray("want brackets round the larger sizes: 101 (113, 125)")
	}
	closing := byte(')')
	if opening.mark == '[' {
		closing = ']'
	}
	for {
		p.rest = p.rest[1:]
		if m := p.next().mark; m == '(' || m == '[' {
			return p.stray("a bracket is open already")
		}
		if len(p.rest) == 0 {
			return p.open(opening)
		}
		if t := p.value(); t != nil {
			return t
		}
		switch m := p.next().mark; m {
		case closing:
			p.rest = p.rest[1:]
			return nil
		case ',', ':':
			if p.sep != 0 && p.sep != m {
				return p.stray("the list is separated by " + text.Quote(string(p.sep)))
			}
			p.sep = m
		case ' ':
			return p.open(opening)
		case '(', '[':
			return p.stray("a bracket is open already")
		default:
			return p.stray("no bracket of its kind is open")
		}
	}
}

func (p *parser) open(bracket token) *trouble {
	return &trouble{len(p.s), "the bracket " + text.Quote(bracket.text) + " is not closed"}
}

// dashed cuts a value at its dashes.
func dashed(v token) []token {
	var out []token
	start := 0
	cut := func(end int) {
		raw := v.text[start:end]
		t := strings.TrimSpace(raw)
		out = append(out, token{0, t, v.at + start + strings.Index(raw, t)})
	}
	for i, c := range v.text {
		if c == '-' || c == '–' {
			cut(i)
			start = i + utf8.RuneLen(c)
		}
	}
	cut(len(v.text))
	return out
}

func rest(s string, at int) string {
	if at >= len(s) {
		return "the end"
	}
	return text.Quote(s[at:])
}
