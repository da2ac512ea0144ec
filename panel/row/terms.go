package row

import (
	"fmt"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
)

// Terms says in which of the two naming systems of the trade a text is
// written. The same word can name different stitches: a US dc is a UK tr, and a
// UK dc is a US sc. The zero value is US.
type Terms uint8

// The two systems.
const (
	US Terms = iota
	UK
)

// String returns "US" or "UK".
func (t Terms) String() string {
	switch t {
	case US:
		return "US"
	case UK:
		return "UK"
	}
	return fmt.Sprintf("Terms(%d)", uint8(t))
}

// other returns the other system.
func (t Terms) other() Terms { return 1 - t }

// valid reports whether t is one of the two.
func (t Terms) valid() bool { return t <= UK }

// ParseTerms reads "US" or "UK"; case does not matter. It returns a
// *gauge.ParseError for anything else.
func ParseTerms(s string) (Terms, error) {
	switch strings.ToUpper(strings.TrimSpace(s)) {
	case "US":
		return US, nil
	case "UK":
		return UK, nil
	}
	return 0, &gauge.ParseError{Kind: "terms", Text: s, Cause: "got " + text.Quote(s) + ", want US or UK"}
}

// MarshalText returns "US" or "UK", or a *gauge.FieldError for anything else.
func (t Terms) MarshalText() ([]byte, error) {
	if !t.valid() {
		return nil, &gauge.FieldError{Field: "Terms", Got: t.String(), Want: "US or UK"}
	}
	return []byte(t.String()), nil
}

// UnmarshalText reads what ParseTerms reads.
func (t *Terms) UnmarshalText(b []byte) error {
	v, err := ParseTerms(string(b))
	if err != nil {
		return err
	}
	*t = v
	return nil
}
