package grade

import (
	"errors"
	"strconv"
	"strings"
	"unicode"

	"example.com/panelmath/internal/text"
)

// Sentinels to test for with errors.Is.
var (
	// ErrNoSize: the chart has no size of that name.
	ErrNoSize = errors.New("no such size")
	// ErrNoCell: the chart prints no figure for that measure in that unit.
	ErrNoCell = errors.New("no figure")
	// ErrNoChart: there is no standard chart of that name.
	ErrNoChart = errors.New("no such chart")
)

// SizeError tells which size of a list does not hold, and in what.
type SizeError struct {
	Index int    // place in the list, from 0; -1 where the size is in no list
	Size  string // its label; empty where only the place is known
	Field string // what does not hold: "armhole round"; may be empty
	Got   string
	Want  string
	Err   error // the cause, or a sentinel, or nil
}

// Error returns "size XL–2X: armhole round: got 12 in, want at least 13.5 in",
// or the text of Err where there is no Want.
func (e *SizeError) Error() string {
	s := "size "
	if e.Size != "" {
		s += name(e.Size)
	} else {
		s += "number " + strconv.Itoa(e.Index+1)
	}
	if e.Field != "" {
		s += ": " + e.Field
	}
	switch {
	case e.Want != "":
		s += ": got " + e.Got + ", want " + e.Want
	case e.Err != nil:
		s += ": " + e.Err.Error()
	}
	return s
}

// Unwrap returns Err.
func (e *SizeError) Unwrap() error { return e.Err }

// NameSize puts the label of the size into a *SizeError that knows only its
// place, as Map returns it. Any other error, and nil, are returned as they are.
func NameSize(err error, labels Run[string]) error {
	var e *SizeError
	if !errors.As(err, &e) || e.Size != "" || e.Index < 0 || e.Index >= len(labels) {
		return err
	}
	named := *e
	named.Size = labels[e.Index]
	return &named
}

// name prints the label of a size, quoted where it would spoil the message.
func name(s string) string {
	if s == "" || len(s) > MaxName || strings.ContainsFunc(s, func(r rune) bool { return !unicode.IsPrint(r) }) {
		return text.Quote(s)
	}
	return s
}
