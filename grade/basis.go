package grade

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
)

// Basis says how well a figure of a chart is known. The zero value is Stated.
type Basis uint8

// From the strongest claim that somebody else makes to the weakest of ours.
const (
	Stated     Basis = iota // the maker of the chart states it; nothing was checked here
	TwoSources              // read in at least two documents
	OneSource               // read in one document
	Memory                  // recalled from the standard's printed table, no document reached: unverified
)

var bases = [...]string{"stated", "two-sources", "one-source", "memory"}

// String returns "two-sources", "one-source", "memory" or "stated".
func (b Basis) String() string {
	if int(b) < len(bases) {
		return bases[b]
	}
	return fmt.Sprintf("Basis(%d)", uint8(b))
}

// ParseBasis reads what String returns; an empty text is Stated.
//
// It returns a *gauge.ParseError if s is none of the four.
func ParseBasis(s string) (Basis, error) {
	if s == "" {
		return Stated, nil
	}
	for i, w := range bases {
		if s == w {
			return Basis(i), nil
		}
	}
	return 0, &gauge.ParseError{Kind: "basis", Text: s, Cause: "unknown basis " + text.Quote(s) + "; want stated, two-sources, one-source or memory"}
}

// MarshalText returns String. It returns a *gauge.FieldError for a basis that
// is not valid.
func (b Basis) MarshalText() ([]byte, error) {
	if int(b) >= len(bases) {
		return nil, &gauge.FieldError{Field: "Basis", Got: b.String(), Want: "stated, two-sources, one-source or memory"}
	}
	return []byte(b.String()), nil
}

// UnmarshalText reads what ParseBasis reads.
func (b *Basis) UnmarshalText(t []byte) error {
	v, err := ParseBasis(string(t))
	if err != nil {
		return err
	}
	*b = v
	return nil
}
