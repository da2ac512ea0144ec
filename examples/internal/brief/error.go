package brief

import (
	"strings"
	"unicode"
)

// Error says which field of a brief does not hold, in which size where it is
// only one, and why. It is one line.
type Error struct {
	Field string // "yarn.label.length", "rows.repeat[3]", or "brief" for the whole
	Size  string // the group's label, or nothing
	Cause string
	Err   error // the library's own error, or nil
}

// Error returns `armhole_depth: size 2X–3X: ...`.
func (e *Error) Error() string {
	s := e.Field + ": "
	if e.Size != "" {
		s += "size " + e.Size + ": "
	}
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) {
			return ' '
		}
		return r
	}, s+e.Cause)
}

// Unwrap returns the library's own error.
func (e *Error) Unwrap() error { return e.Err }

// Because returns an error of the library as the fault of a field.
func Because(field string, err error) *Error {
	return &Error{Field: field, Cause: cause(err), Err: err}
}
