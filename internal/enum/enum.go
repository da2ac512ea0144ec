// Package enum gives enumerations their text form: a name for each value, in the
// order of the values, and the errors of package gauge. (Package gauge, which it
// imports, does the same from package text.)
package enum

import (
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
)

// Name returns the name of v, or "Kind(9)" for a value that has none.
func Name[T ~uint8](kind string, v T, names []string) string { return text.Name(kind, v, names) }

// Check returns a *gauge.FieldError for a value that has no name.
func Check[T ~uint8](kind string, v T, names []string) error {
	if int(v) < len(names) {
		return nil
	}
	return &gauge.FieldError{Field: kind, Got: Name(kind, v, names), Want: text.Or(names)}
}

// Marshal returns the name, or the error of Check.
func Marshal[T ~uint8](kind string, v T, names []string) ([]byte, error) {
	if err := Check(kind, v, names); err != nil {
		return nil, err
	}
	return []byte(names[v]), nil
}

// Parse returns the value with the name, whatever its case, or a
// *gauge.ParseError that lists the names.
func Parse[T ~uint8](kind, s string, names []string) (T, error) {
	v, ok := text.Named[T](s, names)
	if !ok {
		kind = strings.ToLower(kind)
		return 0, &gauge.ParseError{Kind: kind, Text: s, Cause: "unknown " + kind + "; want " + text.Or(names)}
	}
	return v, nil
}

// Unmarshal sets dst to the value with the name, or returns the error of Parse.
func Unmarshal[T ~uint8](dst *T, kind string, b []byte, names []string) error {
	return text.Read(dst, b, func(s string) (T, error) { return Parse[T](kind, s, names) })
}
