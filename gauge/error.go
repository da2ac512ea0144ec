package gauge

import (
	"errors"
	"fmt"

	"example.com/panelmath/internal/text"
)

// Sentinels to test for with errors.Is.
var (
	// ErrBounds: a value lies outside the limits that the package doc lists.
	ErrBounds = errors.New("out of bounds")
	// ErrNoCount: no legal count answers the question.
	ErrNoCount = errors.New("no legal count")
)

// ParseError tells what a parser of this package could not read.
type ParseError struct {
	Kind  string // what was to be read: "length", "gauge", "rule", ...
	Text  string // the whole text
	At    int    // byte offset of the trouble in Text
	Cause string // what is wrong, and what would be understood
	Err   error  // a sentinel, or nil
}

// Error returns `parse length: "9 inn": unknown unit "inn"`.
func (e *ParseError) Error() string {
	return fmt.Sprintf("parse %s: %s: %s", e.Kind, text.Quote(e.Text), e.Cause)
}

// Unwrap returns the sentinel.
func (e *ParseError) Unwrap() error { return e.Err }

// FieldError tells which field of a struct does not hold, with the value it
// has and what it must be.
type FieldError struct {
	Field string // "Gauge.Stitches.Span"
	Got   string
	Want  string
	Err   error // a sentinel, or nil
}

// Error returns `Gauge.Stitches.Count: got 0, want more than 0`.
func (e *FieldError) Error() string {
	return fmt.Sprintf("%s: got %s, want %s", e.Field, e.Got, e.Want)
}

// Unwrap returns the sentinel.
func (e *FieldError) Unwrap() error { return e.Err }

// InField puts field in front of the field that a FieldError names, so that the
// Validate of a struct can call the Validate of its parts. Any other error, and
// nil, are returned as they are.
func InField(field string, err error) error {
	var f *FieldError
	if errors.As(err, &f) {
		g := *f
		g.Field = field + "." + f.Field
		return &g
	}
	return err
}
