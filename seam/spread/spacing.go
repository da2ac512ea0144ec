package spread

import (
	"fmt"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/enum"
	"example.com/panelmath/internal/text"
)

// Way says how increases or decreases are spaced along a row. The published
// ways give different places for the same request; all are even.
type Way uint8

// The zero value is HalfEnds.
const (
	// HalfEnds: the row in as many equal parts as there are changes, each
	// change in the middle of its part, so that a flat row starts and ends
	// with half an interval (Woolpack Yarn, Calculating where to place increases).
	HalfEnds Way = iota
	// Sections: one section more than there are changes, a change between any
	// two (Dummies, How to increase at several points in the same row).
	Sections
	// InRound: as HalfEnds, the change at the end of its part, for work in the
	// round (Woolpack Yarn, as above).
	InRound
)

var wayNames = [...]string{"half intervals at the ends", "one section more", "in the round"}

// String names the way: "half intervals at the ends".
func (w Way) String() string { return enum.Name("Way", w, wayNames[:]) }

// MarshalText returns String, or a *gauge.FieldError for none of the constants.
func (w Way) MarshalText() ([]byte, error) { return enum.Marshal("Way", w, wayNames[:]) }

// UnmarshalText reads what String returns; it returns a *gauge.ParseError for
// anything else.
func (w *Way) UnmarshalText(b []byte) error {
	return enum.Unmarshal(w, "Way", b, wayNames[:])
}

// Spacing spreads increases or decreases over a row. The zero value is not
// valid.
type Spacing struct {
	Stitches int  `json:"stitches"` // in the row; 1 to gauge.MaxCount
	Changes  int  `json:"changes"`  // 1 to Stitches
	Decrease bool `json:"decrease,omitempty"`
	Way      Way  `json:"way,omitempty"`
}

// Validate returns a *gauge.FieldError if a field is out of its range, or a
// decrease would find no two stitches of its own to work together.
func (s Spacing) Validate() error {
	if s.Stitches < 1 || s.Stitches > gauge.MaxCount {
		return &gauge.FieldError{Field: "Stitches", Got: strconv.Itoa(s.Stitches), Want: "1 to 100000", Err: gauge.ErrBounds}
	}
	if err := enum.Check("Way", s.Way, wayNames[:]); err != nil {
		return err
	}
	most, why := s.Stitches, "one to a stitch, at most "
	switch {
	case s.Decrease && s.Way == Sections:
		most, why = s.Stitches/2-1, "two stitches to each section, at most "
	case s.Decrease:
		most, why = s.Stitches/2, "two stitches to each, at most "
	case s.Way == Sections:
		most, why = s.Stitches-1, "one section more than changes, at most "
	}
	if s.Changes < 1 || s.Changes > most {
		return &gauge.FieldError{Field: "Changes", Got: strconv.Itoa(s.Changes), Want: why + strconv.Itoa(most), Err: gauge.ErrBounds}
	}
	return nil
}

// After returns how many stitches the row has afterwards.
func (s Spacing) After() int {
	if s.Decrease {
		return s.Stitches - s.Changes
	}
	return s.Stitches + s.Changes
}

// Intervals returns the stitches of the row in order, cut at the changes: the
// change is worked after each interval but the last; a decrease uses the last
// two stitches of its interval. The last interval is 0 in the round. They add
// up to Stitches; any two between changes differ by at most one.
//
// It returns the error of Validate.
func (s Spacing) Intervals() ([]int, error) {
	if err := s.Validate(); err != nil {
		return nil, err
	}
	n, k := s.Stitches, s.Changes
	cuts := make([]int, 0, k+1)
	last := 0
	for i := range k {
		var at int
		switch s.Way {
		case InRound:
			at = ((i+1)*n + k - 1) / k
		case Sections:
			at = middle((i+1)*n, k+1, 2*(i+1) <= k+1)
		default:
			at = middle((2*i+1)*n, 2*k, 2*i+1 <= k)
		}
		if s.Decrease && s.Way != InRound {
			at++ // its two stitches lie on either side of the place
		}
		cuts = append(cuts, at-last)
		last = at
	}
	return append(cuts, n-last), nil
}

// middle returns num/den to the nearest; a tie goes down in the first half of
// a row and up in the second, so that both ends are alike.
func middle(num, den int, firstHalf bool) int {
	q, r := num/den, num%den
	if 2*r > den || 2*r == den && !firstHalf {
		return q + 1
	}
	return q
}

// Places returns the stitches after which the changes are worked, counted from
// the beginning of the row.
//
// It returns the error of Validate.
func (s Spacing) Places() ([]int, error) {
	cuts, err := s.Intervals()
	if err != nil {
		return nil, err
	}
	at := make([]int, s.Changes)
	sum := 0
	for i := range at {
		sum += cuts[i]
		at[i] = sum
	}
	return at, nil
}

// Explain says the plan in a sentence: "increase 4 in 51 sts: (6, inc), (13,
// inc) 3 times, 6; 55 sts".
//
// It returns the error of Validate.
func (s Spacing) Explain() (string, error) {
	cuts, err := s.Intervals()
	if err != nil {
		return "", err
	}
	verb, unit := "increase", func(n int) string { return fmt.Sprintf("%d, inc", n) }
	if s.Decrease {
		verb, unit = "decrease", func(n int) string {
			if n == 2 {
				return "2 tog"
			}
			return fmt.Sprintf("%d, 2 tog", n-2)
		}
	}
	var words []string
	for i := 0; i < s.Changes && len(words) < mostWords; {
		j := i
		for j < s.Changes && cuts[j] == cuts[i] {
			j++
		}
		w := "(" + unit(cuts[i]) + ")"
		switch {
		case j-i == 2:
			w += " twice"
		case j-i > 2:
			w += fmt.Sprintf(" %d times", j-i)
		}
		words = append(words, w)
		if i = j; len(words) == mostWords && i < s.Changes {
			words = append(words, "and so on")
		}
	}
	if rest := cuts[s.Changes]; rest > 0 {
		words = append(words, strconv.Itoa(rest))
	}
	return fmt.Sprintf("%s %d in %s: %s; %s", verb, s.Changes, text.Count(s.Stitches, "st", "sts"), strings.Join(words, ", "), text.Count(s.After(), "st", "sts")), nil
}
