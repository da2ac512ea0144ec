package row

import (
	"errors"
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
)

// SyntaxError tells where a row can't be read, what stands there and what would
// be understood.
type SyntaxError struct {
	Line, Col int    // from 1; Col counts characters
	Text      string // the whole text
	Read      string // what stands there; empty at the end of the text
	Want      string // what would be understood
	Err       error  // a sentinel, or nil
}

// Error returns `row: line 2, column 8: read "eech", want a place: next st, each st
// across, first st, last st, same st or a ch-m sp`.
func (e *SyntaxError) Error() string {
	read := "the row ends"
	if e.Read != "" {
		read = "read " + text.Quote(e.Read)
	}
	return fmt.Sprintf("row: line %d, column %d: %s, want %s", e.Line, e.Col, read, e.Want)
}

// Unwrap returns the sentinel.
func (e *SyntaxError) Unwrap() error { return e.Err }

// Sentinels for the ways in which a row does not fit the places before it.
var (
	ErrShort   = errors.New("uses more places than there are")
	ErrLeft    = errors.New("leaves places over")
	ErrPlace   = errors.New("meets another kind of place")
	ErrNoPlace = errors.New("works into places that are not there")
	ErrSplit   = errors.New("is worked across two live groups")
	ErrCount   = errors.New("changes the count")
	// ErrFoundation: a foundation row stands after the first row.
	ErrFoundation = errors.New("a foundation row after the first row")

	// ErrRepeat: a repeat never comes back to the places of an earlier pass.
	ErrRepeat = errors.New("never comes back to the places it began with")
)

// FitError tells why a row can't be worked into the places before it, without
// inventing a repair.
type FitError struct {
	Row     int        // index in the rows given, from 0
	Pass    int        // of the repeat, from 1; 0 outside it
	Text    string     // the row in US terms
	Uses    int        // places that the row uses: with Step, in its passes that fit, or in one
	Step    int        // places that one more pass uses; 0 if the row has no such part
	Has     gauge.Rule // places there are; one that is a single count is a multiple of gauge.MaxCount
	Left    int        // places left over
	Short   int        // places missing
	At      int        // place, from 1 and from where the row begins, for ErrPlace and ErrSplit
	Want    Space      // what the row works into there
	Found   Space      // what there is
	Makes   int        // what the row makes, for ErrCount, where Has holds the count to keep
	Against int        // for gauge.ErrNoCount: number (from 1) of the row before whose counts exclude this one's; 0 for none
	Err     error      // ErrShort, ErrLeft, ErrPlace, ErrNoPlace, ErrSplit, ErrCount, ErrFoundation, gauge.ErrNoCount or gauge.ErrBounds
}

// Unwrap returns the sentinel.
func (e *FitError) Unwrap() error { return e.Err }

// Error returns the row and its trouble: `row 2, "sc in next 11 sts": uses 11 of
// 10, 1 short`.
func (e *FitError) Error() string {
	s := fmt.Sprintf("row %d", e.Row+1)
	if e.Text != "" {
		s += ", " + text.Quote(e.Text)
	}
	return s + ": " + e.Cause()
}

// Cause returns the trouble alone: "uses 11 of 10, 1 short".
func (e *FitError) Cause() string {
	switch {
	case errors.Is(e.Err, ErrFoundation):
		return "a foundation row must be the first row and no other"
	case errors.Is(e.Err, ErrRepeat):
		return "the repeat never comes back to the places it began with"
	case errors.Is(e.Err, ErrCount):
		return fmt.Sprintf("makes %d where the count to keep is %d", e.Makes, e.Has.Least)
	case errors.Is(e.Err, ErrSplit):
		return fmt.Sprintf("place %d lies beyond the stitches left unworked: two live groups, and the row must say which", e.At)
	case errors.Is(e.Err, ErrNoPlace):
		return fmt.Sprintf("works into each %s, and the row before has none", e.Want)
	case errors.Is(e.Err, ErrPlace):
		s := fmt.Sprintf("place %d is a %s and the row works a %s there", e.At, e.Found, e.Want)
		if e.Want == 0 {
			return s + fmt.Sprintf(": the %ss would stay unworked; work into them or skip them (sk next %s)", e.Found, e.Found)
		}
		return s
	case errors.Is(e.Err, gauge.ErrBounds) && e.Uses > 0:
		return fmt.Sprintf("works more than %d places together with the rows before it", e.Uses)
	case errors.Is(e.Err, gauge.ErrBounds):
		return "makes more than 100000 stitches"
	case errors.Is(e.Err, gauge.ErrNoCount) && e.Step > 0:
		return fmt.Sprintf("uses %s, and the rows before%s leave %s: no count is both", multiple(e.Step, e.Uses-e.Step), e.against(), multiple(e.Has.Multiple, e.Has.Plus))
	case errors.Is(e.Err, gauge.ErrNoCount) && e.Uses > 0:
		return fmt.Sprintf("uses %d, and the rows before%s leave %s: no count is both", e.Uses, e.against(), multiple(e.Has.Multiple, e.Has.Plus))
	case errors.Is(e.Err, gauge.ErrNoCount):
		return "no count up to 100000 works"
	case e.Has.Least == 0 && e.Uses == 0 && e.Left > 0:
		return fmt.Sprintf("%d left over at the end", e.Left)
	case e.Has.Least == 0 && e.Uses == 0:
		return fmt.Sprintf("%d short at the end", e.Short)
	case e.Step > 0:
		return fmt.Sprintf("uses %d of %d, %d left over (%d short of one more repeat)", e.Uses, e.Has.Least, e.Left, e.Short)
	case e.Short > 0:
		return fmt.Sprintf("uses %d of %d, %d short", e.Uses, e.Has.Least, e.Short)
	}
	return fmt.Sprintf("uses %d of %d, %d left over", e.Uses, e.Has.Least, e.Left)
}

// multiple says "a multiple of 4 + 1".
func multiple(m, plus int) string {
	s := fmt.Sprintf("a multiple of %d", m)
	if plus %= max(m, 1); plus != 0 {
		s += fmt.Sprintf(" + %d", plus)
	}
	return s
}

func (e *FitError) against() string {
	if e.Against == 0 {
		return ""
	}
	return fmt.Sprintf(" (row %d first)", e.Against)
}

// InvalidError tells which of several rows is not valid.
type InvalidError struct {
	Row int // index in the rows given, from 0
	Err error
}

// Error returns "row 3: Row.Items: got no instruction, want at least one instruction".
func (e *InvalidError) Error() string { return fmt.Sprintf("row %d: %v", e.Row+1, e.Err) }

// Unwrap returns the *gauge.FieldError.
func (e *InvalidError) Unwrap() error { return e.Err }
