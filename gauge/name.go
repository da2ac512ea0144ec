package gauge

import (
	"fmt"
	"strings"

	"example.com/panelmath/internal/text"
)

// nameOf returns the name of an enumerated value, or "Grid(9)" for one that has
// none.
func nameOf[T ~uint8](kind string, v T, names []string) string {
	if int(v) < len(names) {
		return names[v]
	}
	return fmt.Sprintf("%s(%d)", kind, uint8(v))
}

// marshalName returns the name, or a *FieldError for a value that has none.
func marshalName[T ~uint8](kind string, v T, names []string) ([]byte, error) {
	if int(v) >= len(names) {
		return nil, &FieldError{Field: kind, Got: nameOf(kind, v, names), Want: "one of " + quoteAll(names)}
	}
	return []byte(names[v]), nil
}

// parseName returns the value with the name, whatever its case.
func parseName[T ~uint8](kind, s string, names []string) (T, error) {
	if len(s) <= text.Limit {
		want := strings.ToLower(strings.TrimSpace(s))
		for v, name := range names {
			if want == strings.ToLower(name) {
				return T(v), nil
			}
		}
	}
	return 0, &ParseError{Kind: kind, Text: s, Cause: "want one of " + quoteAll(names)}
}

// unmarshalName sets dst to the value with the name.
func unmarshalName[T ~uint8](dst *T, kind string, b []byte, names []string) error {
	v, err := parseName[T](kind, string(b), names)
	if err == nil {
		*dst = v
	}
	return err
}

func quoteAll(names []string) string { return `"` + strings.Join(names, `", "`) + `"` }
