// Package name prints and reads the values of an enumeration by their names.
package name

import (
	"fmt"
	"slices"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
)

// Of returns the name of the i-th value, "Part(9)" where there is none.
func Of(kind string, names []string, i uint8) string {
	if int(i) < len(names) {
		return names[i]
	}
	return fmt.Sprintf("%s(%d)", kind, i)
}

// Marshal returns the name as text, or a *gauge.FieldError where there is none.
func Marshal(kind string, names []string, i uint8) ([]byte, error) {
	if int(i) >= len(names) {
		return nil, &gauge.FieldError{Field: kind, Got: Of(kind, names, i), Want: strings.Join(names, ", ")}
	}
	return []byte(names[i]), nil
}

// Read returns the value of a name, or a *gauge.ParseError that lists the names.
func Read(kind string, names []string, b []byte) (uint8, error) {
	i := slices.Index(names, string(b))
	if i < 0 {
		return 0, &gauge.ParseError{Kind: strings.ToLower(kind), Text: string(b), Cause: "unknown " + strings.ToLower(kind) + " " + text.Quote(string(b)) + "; want " + strings.Join(names, ", ")}
	}
	return uint8(i), nil
}
