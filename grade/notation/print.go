package notation

import (
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/enum"
	"example.com/panelmath/internal/text"
)

// Style is a way to write one value per size. The zero value is Round, the
// house style of grade.Text.
type Style uint8

// The styles of the trade.
const (
	Round       Style = iota // 101 (113, 125)
	Square                   // 101 [113, 125]
	Colons                   // 73[79:85:91:103]
	Dashes                   // 10-12-14
	Alternating              // 8 (10) 12 (14)
)

var styleNames = [...]string{"round", "square", "colons", "dashes", "alternating"}

// String names the style: "round".
func (s Style) String() string { return enum.Name("Style", s, styleNames[:]) }

// MarshalText returns the name. It returns a *gauge.FieldError for a style that
// is not valid.
func (s Style) MarshalText() ([]byte, error) { return enum.Marshal("Style", s, styleNames[:]) }

// UnmarshalText reads a name. It returns a *gauge.ParseError for any other.
func (s *Style) UnmarshalText(b []byte) error {
	return enum.Unmarshal(s, "Style", b, styleNames[:])
}

// Print writes one value per size in style s; where all print alike, one value
// stands for all sizes. Read reads it back.
//
// It returns a *gauge.FieldError if the style is not valid or r has more than
// 64 sizes, and a *grade.SizeError if a value prints as nothing or holds a mark
// that the style needs for itself, so that nobody could read it back.
func Print[T any](s Style, r grade.Run[T], f func(T) string) (string, error) {
	if err := enum.Check("Style", s, styleNames[:]); err != nil {
		return "", err
	}
	if len(r) > grade.MaxSizes {
		return "", &gauge.FieldError{Field: "sizes", Got: strconv.Itoa(len(r)), Want: "at most 64", Err: gauge.ErrBounds}
	}
	marks := "()[],:"
	if s == Dashes {
		marks += "-–"
	}
	words := make([]string, len(r))
	alike := len(r) > 0
	for i, v := range r {
		words[i] = f(v)
		if w := words[i]; strings.TrimSpace(w) == "" || strings.ContainsAny(w, marks) {
			return "", &grade.SizeError{Index: i, Got: text.Quote(w), Want: "a value without any of " + marks}
		}
		alike = alike && words[i] == words[0]
	}
	switch {
	case alike:
		return words[0], nil
	case len(words) == 0:
		return "", nil
	}
	switch s {
	case Colons:
		return words[0] + "[" + strings.Join(words[1:], ":") + "]", nil
	case Dashes:
		return strings.Join(words, "-"), nil
	case Alternating:
		for i := 1; i < len(words); i += 2 {
			words[i] = "(" + words[i] + ")"
		}
		return strings.Join(words, " "), nil
	}
	house := grade.Text(grade.Run[string](words), func(w string) string { return w })
	if s == Square {
		house = strings.NewReplacer("(", "[", ")", "]", "[", "(", "]", ")").Replace(house)
	}
	return house, nil
}

// Skipped returns the labels of the sizes in which a part is skipped: those
// whose count is 0. It returns a *gauge.FieldError if there is not one label
// for each count.
func Skipped(r grade.Run[int], labels grade.Run[string]) (grade.Run[string], error) {
	if len(r) != len(labels) {
		return nil, &gauge.FieldError{Field: "labels", Got: strconv.Itoa(len(labels)), Want: strconv.Itoa(len(r))}
	}
	var out grade.Run[string]
	for i, n := range r {
		if n == 0 {
			out = append(out, labels[i])
		}
	}
	return out, nil
}
