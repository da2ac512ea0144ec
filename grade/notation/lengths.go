package notation

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
)

// Lengths is a list of measurements as it stands in a pattern: in one unit, or
// in two. The zero value is an empty list.
type Lengths struct {
	Own   grade.Run[gauge.Length] `json:"own"`   // the designer's own unit, printed first
	Other grade.Run[gauge.Length] `json:"other"` // the same in the other unit; empty where one unit is printed
}

// Text prints measurements on a grid, in the house style, with the unit at the
// end: "48½ (56, 66) in". ReadLengths reads it back.
func Text(r grade.Run[gauge.Measurement], g gauge.Grid) string {
	s := grade.Text(r, g.Number)
	if s == "" {
		return ""
	}
	return s + " " + g.Unit().String()
}

// Both prints measurements in two units, the designer's own first:
// "48½ (56, 66) in [123 (142, 167.5) cm]". Each is rounded to its grid from the
// exact measurement, not the second from the first. One value stands for all
// sizes where all print alike in both units: beside a list it would look like a
// slip. A long list has square brackets of its own, and a slash before the
// second unit. ReadLengths reads it back.
func Both(r grade.Run[gauge.Measurement], own, other gauge.Grid) string {
	if len(r) == 0 {
		return ""
	}
	pair := func(m gauge.Measurement) string { return own.Number(m) + " [" + other.Number(m) }
	if grade.Text(r, pair) == pair(r[0]) {
		r = r[:1] // alike in both
	}
	first, second := grade.InFull(r, own.Number)+" "+own.Unit().String(), grade.InFull(r, other.Number)+" "+other.Unit().String()
	if strings.Contains(first, "[") {
		return first + " / " + second
	}
	return first + " [" + second + "]"
}

// ReadLengths reads what Text and Both print, in any style of Read, with
// fractions: "48½ (56, 66) in [123 (142, 167.5) cm]". The unit stands once at the
// end of a list, or, where there is one list, with every value: 38" (40", 42").
// The second unit stands in square or round brackets or after a slash. A lone value stands for all n
// sizes; where n is 0, for as many as the other list has.
//
// It returns the errors of Read, and a *gauge.ParseError with the place if a
// unit is missing or unknown, the two units are the same, or the two lists
// differ in length.
func ReadLengths(s string, n int) (Lengths, error) {
	if len(s) > text.Limit {
		return Lengths{}, &gauge.ParseError{Kind: kind, Text: s, At: text.Limit, Cause: "text too long; at most 10000 characters"}
	}
	if own, err := Read(s, n, gauge.ParseLength); err == nil && oneUnit(own) {
		return Lengths{Own: own}, nil // every value with its own unit
	}
	own, at, err := lengthsAt(s, 0, len(s), n)
	if err != nil {
		return Lengths{}, err
	}
	l := Lengths{Own: own}
	tail := strings.TrimSpace(s[at:])
	if tail == "" {
		return l, nil
	}
	end := len(s)
	start := len(s) - len(strings.TrimLeft(s[at:], " \t")) // of the mark
	switch {
	case tail[0] == '/':
	case tail[0] == '[' && strings.HasSuffix(tail, "]"), tail[0] == '(' && strings.HasSuffix(tail, ")"):
		end = strings.LastIndexAny(s, "])")
	default:
		return Lengths{}, &gauge.ParseError{Kind: kind, Text: s, At: start, Cause: "want the other unit in brackets after the first, got " + text.Quote(tail)}
	}
	other, at, err := lengthsAt(s, start+1, end, n)
	fail := func(at int, cause string) (Lengths, error) {
		return Lengths{}, &gauge.ParseError{Kind: kind, Text: s, At: at, Cause: cause}
	}
	switch {
	case err != nil:
		return Lengths{}, err
	case strings.TrimSpace(s[at:end]) != "":
		at += len(s[at:end]) - len(strings.TrimLeft(s[at:end], " \t"))
		return fail(at, "unexpected "+text.Quote(s[at:end])+" after the second list")
	case other[0].Unit == own[0].Unit:
		return fail(start, "both lists are in "+own[0].Unit.String())
	}
	sizes := max(len(own), len(other))
	if l.Own, err = own.For(sizes); err != nil {
		return fail(start, "lists of different length")
	}
	if l.Other, err = other.For(sizes); err != nil {
		return fail(start, "lists of different length")
	}
	return l, nil
}

func oneUnit(r grade.Run[gauge.Length]) bool {
	for _, l := range r {
		if l.Unit != r[0].Unit {
			return false
		}
	}
	return true
}

// lengthsAt reads a list and its unit in s[from:to], and returns where it ends.
func lengthsAt(s string, from, to, n int) (grade.Run[gauge.Length], int, error) {
	part := s[from:to]
	isUnit := func(c rune) bool { return unicode.IsLetter(c) || strings.ContainsRune("\"'″”′’", c) }
	begin := strings.IndexFunc(part, isUnit)
	if begin < 0 {
		return nil, 0, &gauge.ParseError{Kind: kind, Text: s, At: to, Cause: "no unit; want one at the end of the list: 48½ (56, 66) in"}
	}
	end := begin
	for end < len(part) {
		c, size := utf8.DecodeRuneInString(part[end:])
		if !isUnit(c) {
			break
		}
		end += size
	}
	unit := part[begin:end]
	if _, err := gauge.ParseUnit(unit); err != nil {
		return nil, 0, &gauge.ParseError{Kind: kind, Text: s, At: from + begin, Cause: "unknown unit " + text.Quote(unit)}
	}
	r, err := Read(part[:begin], n, func(w string) (gauge.Length, error) { return gauge.ParseLength(w + " " + unit) })
	if p, ok := err.(*gauge.ParseError); ok {
		return nil, 0, &gauge.ParseError{Kind: kind, Text: s, At: from + p.At, Cause: p.Cause, Err: p.Err}
	}
	return r, from + end, err
}

// String prints the lists as they are, in the house style, with decimals:
// "48.5 (56, 66) in [123 (142, 167.5) cm]". ReadLengths reads it back.
func (l Lengths) String() string {
	number := func(x gauge.Length) string { return number.Text(x.Value) }
	s := ""
	if len(l.Own) > 0 {
		s = grade.Text(l.Own, number) + " " + l.Own[0].Unit.String()
	}
	if len(l.Other) > 0 {
		s += " [" + grade.Text(l.Other, number) + " " + l.Other[0].Unit.String() + "]"
	}
	return s
}
