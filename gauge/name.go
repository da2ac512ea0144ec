package gauge

import "example.com/panelmath/internal/text"

// marshalName returns the name, or a *FieldError for a value that has none.
func marshalName[T ~uint8](kind string, v T, names []string) ([]byte, error) {
	if int(v) >= len(names) {
		return nil, &FieldError{Field: kind, Got: text.Name(kind, v, names), Want: text.Or(names)}
	}
	return []byte(names[v]), nil
}

// parseName returns the value with the name, whatever its case.
func parseName[T ~uint8](kind, s string, names []string) (T, error) {
	v, ok := text.Named[T](s, names)
	if !ok {
		return 0, &ParseError{Kind: kind, Text: s, Cause: "unknown " + kind + "; want " + text.Or(names)}
	}
	return v, nil
}

// unmarshalName sets dst to the value with the name.
func unmarshalName[T ~uint8](dst *T, kind string, b []byte, names []string) error {
	return text.Read(dst, b, func(s string) (T, error) { return parseName[T](kind, s, names) })
}
