package say

import (
	"fmt"
	"slices"
	"strings"

	"example.com/panelmath/gauge"
)

// Name returns the name of an enumerated value, or "Way(9)" for one that has
// none.
func Name(kind string, i uint8, names []string) string {
	if int(i) < len(names) {
		return names[i]
	}
	return fmt.Sprintf("%s(%d)", kind, i)
}

// MarshalName returns the name as text, or a *gauge.FieldError for a value that
// has none.
func MarshalName(kind string, i uint8, names []string) ([]byte, error) {
	if int(i) < len(names) {
		return []byte(names[i]), nil
	}
	return nil, &gauge.FieldError{Field: kind, Got: Name(kind, i, names), Want: strings.Join(names, ", ")}
}

// UnmarshalName returns the value of a name, or a *gauge.ParseError.
func UnmarshalName(kind string, text []byte, names []string) (uint8, error) {
	i := slices.Index(names, string(text))
	if i < 0 {
		return 0, &gauge.ParseError{Kind: kind, Text: string(text), Cause: "want " + strings.Join(names, ", ")}
	}
	return uint8(i), nil
}
