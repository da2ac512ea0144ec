package notation

import (
	"errors"
	"strconv"
	"strings"

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

// word is a value and its place in the text.
type word struct {
	text string
	at   int
}

// trouble is what split could not read.
type trouble struct {
	at    int
	cause string
}

// split cuts a list at its brackets, commas and colons.
func split(s string) ([]word, *trouble) {
	var (
		words    []word
		open     byte // the bracket we are in, or 0
		sep      byte // the separator of the list, or 0 while it has had none
		inGroup  int  // values in the open group
		start    = 0  // of the value being read
		outside  = 0  // values outside brackets
		groups   = 0
		wide     = -1 // place of the first group of more than one value
		position int
	)
	bad := func(at int, cause string) ([]word, *trouble) { return nil, &trouble{at, cause} }
	stray := func(at int, want string) ([]word, *trouble) {
		return bad(at, "stray "+text.Quote(s[at:at+1])+" before "+rest(s, at+1)+"; "+want)
	}
	take := func(end int) (bool, *trouble) {
		raw := s[start:end]
		w := word{strings.TrimSpace(raw), start + len(raw) - len(strings.TrimLeft(raw, " \t\n\r"))}
		if w.text == "" {
			return false, nil
		}
		if len(words) == grade.MaxSizes {
			return false, &trouble{w.at, "more than 64 values"}
		}
		words = append(words, w)
		return true, nil
	}
	for position = 0; position < len(s); position++ {
		c := s[position]
		switch c {
		case '(', '[':
			if open != 0 {
				return stray(position, "a bracket is open already")
			}
			got, t := take(position)
			if t != nil {
				return nil, t
			}
			if got {
				outside++
				if wide >= 0 {
					return bad(words[len(words)-1].at, "a value outside the brackets: "+text.Quote(words[len(words)-1].text))
				}
				if outside != groups+1 {
					return stray(position, "want one value for each bracket")
				}
			} else if groups == 0 {
				return bad(position, "no value before "+rest(s, position)+"; the smallest size stands outside the brackets")
			}
			if !got && outside != 1 {
				return stray(position, "want a value between two brackets, as in 8 (10) 12 (14)")
			}
			open, inGroup, start = c, 0, position+1
			groups++
		case ')', ']':
			if open == 0 || open == '(' && c == ']' || open == '[' && c == ')' {
				return stray(position, "no bracket of its kind is open")
			}
			got, t := take(position)
			if t != nil {
				return nil, t
			}
			if !got {
				return bad(position, "no value before "+rest(s, position))
			}
			if inGroup++; inGroup > 1 {
				if outside > 1 {
					return bad(words[len(words)-1].at, "a second value in a bracket, where brackets take turns: "+text.Quote(words[len(words)-1].text))
				}
				wide = position
			}
			open, start = 0, position+1
		case ',', ':':
			if open == 0 {
				return stray(position, "want brackets round the larger sizes: 101 (113, 125)")
			}
			if sep != 0 && sep != c {
				return stray(position, "the list is separated by "+text.Quote(string(sep)))
			}
			got, t := take(position)
			if t != nil {
				return nil, t
			}
			if !got {
				return bad(position, "no value before "+rest(s, position))
			}
			sep, start = c, position+1
			inGroup++
		}
	}
	if open != 0 {
		return bad(len(s), "the bracket "+text.Quote(string(open))+" is not closed")
	}
	got, t := take(len(s))
	switch {
	case t != nil:
		return nil, t
	case got && groups > 0 && (wide >= 0 || outside != groups):
		last := words[len(words)-1]
		return bad(last.at, "unexpected "+text.Quote(last.text)+" after the brackets")
	case len(words) == 0:
		return bad(0, "no value; want a list like 101 (113, 125)")
	}
	return words, nil
}

// dashed cuts a word at its dashes.
func dashed(w word) []word {
	var out []word
	at := w.at
	for part := range strings.SplitSeq(strings.ReplaceAll(w.text, "–", "\x00-\x00"), "-") {
		// An en dash is three bytes; the marks beside it keep the places right.
		clean := strings.Trim(part, "\x00")
		lead := len(part) - len(strings.TrimLeft(part, "\x00"))
		t := strings.TrimLeft(clean, " ")
		out = append(out, word{strings.TrimSpace(t), at + lead + len(clean) - len(t)})
		if len(out) > grade.MaxSizes {
			break
		}
		at += len(part) + 1
	}
	return out
}

func rest(s string, at int) string {
	if at >= len(s) {
		return "the end"
	}
	return text.Quote(s[at:])
}
