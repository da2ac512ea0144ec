package grade

import (
	"example.com/panelmath/internal/enum"
	"example.com/panelmath/internal/text"
)

// Basis says how well a figure of a chart is known. The zero value is Stated.
type Basis uint8

// From a claim that somebody else makes to the weakest of ours.
const (
	Stated     Basis = iota // the maker of the chart states it; nothing was checked here
	TwoSources              // read in at least two documents
	OneSource               // read in one document
	Memory                  // recalled from the standard's printed table, no document reached: unverified
)

var basisNames = [...]string{"stated", "two-sources", "one-source", "memory"}

// String returns "stated", "two-sources", "one-source" or "memory".
func (b Basis) String() string { return enum.Name("Basis", b, basisNames[:]) }

// ParseBasis reads what String returns; an empty text is Stated.
//
// It returns a *gauge.ParseError if s is none of the four.
func ParseBasis(s string) (Basis, error) {
	if s == "" {
		return Stated, nil
	}
	return enum.Parse[Basis]("Basis", s, basisNames[:])
}

// MarshalText returns String. It returns a *gauge.FieldError for a basis that
// is not valid.
func (b Basis) MarshalText() ([]byte, error) { return enum.Marshal("Basis", b, basisNames[:]) }

// UnmarshalText reads what ParseBasis reads.
func (b *Basis) UnmarshalText(t []byte) error {
	return text.Read(b, t, ParseBasis)
}
