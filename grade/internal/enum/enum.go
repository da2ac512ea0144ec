// Package enum gives the small enumerations below grade their text form: a name
// for each value, in the order of the values.
package enum

import (
	"fmt"
	"slices"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
)

// Name returns the name of v, or "Kind(9)" for a value that has none.
func Name[T ~uint8](kind string, v T, names []string) string {
	if int(v) < len(names) {
		return names[v]
	}
	return fmt.Sprintf("%s(%d)", kind, uint8(v))
}

// Check returns a *gauge.FieldError for a value that has no name.
func Check[T ~uint8](kind string, v T, names []string) error {
	if int(v) < len(names) {
		return nil
	}
	return &gauge.FieldError{Field: kind, Got: Name(kind, v, names), Want: strings.Join(names, ", ")}
}

// Marshal returns the name, or the error of Check.
func Marshal[T ~uint8](kind string, v T, names []string) ([]byte, error) {
	if err := Check(kind, v, names); err != nil {
		return nil, err
	}
	return []byte(names[v]), nil
}

// Parse returns the value with the name, or a *gauge.ParseError.
func Parse[T ~uint8](kind, s string, names []string) (T, error) {
	if i := slices.Index(names, s); i >= 0 {
		return T(i), nil
	}
	return 0, &gauge.ParseError{Kind: strings.ToLower(kind), Text: s, Cause: "unknown " + strings.ToLower(kind) + " " + text.Quote(s) + "; want " + strings.Join(names, ", ")}
}
