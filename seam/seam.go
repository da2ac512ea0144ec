package seam

import (
	"errors"
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/seam/internal/say"
)

// ErrNoPair: the openings leave nothing to join.
var ErrNoPair = errors.New("not one pair left to join")

// Seam asks for one seam: an edge that is sewn to its like, pair by pair, from
// the hem up to where an opening is to begin. The edge is either folded at its
// middle and sewn to itself (or to its twin on the other panel), so that the
// opening is measured from the fold down, or it ends at the top, so that the
// opening is measured from there.
//
// The zero value is not valid: it has no stitches and no gauge.
type Seam struct {
	Name    string            `json:"name,omitempty"`     // "centre back"; for texts and errors
	Count   int               `json:"count"`              // stitches along the whole edge, hem to hem or hem to top; 1 to gauge.MaxCount
	Gauge   gauge.Over        `json:"gauge"`              // finished gauge along the edge
	ToTop   bool              `json:"to_top,omitempty"`   // the edge runs from the hem to the top and has no fold
	RowEnds bool              `json:"row_ends,omitempty"` // Count is of row ends, not of stitches
	Across  bool              `json:"across,omitempty"`   // the edge lies across the garment, as a shoulder does: "from the outer edge in" for "from the hem up"; words only
	Opening gauge.Measurement `json:"opening"`            // wanted from the fold or the top down; not negative
	Slit    gauge.Measurement `json:"slit"`               // wanted from the hem up; not negative
}

// Join is a seam in whole pairs. No opening is smaller than asked: the place
// where the seam stops is rounded down, the place where it starts is rounded
// up.
type Join struct {
	Asked        Seam              `json:"asked"`
	Pairs        int               `json:"pairs"`          // pairs to join
	Start        int               `json:"start"`          // pairs left open at the hem before the seam starts
	Exact        gauge.Ratio       `json:"exact"`          // where the wanted opening begins, counted from the hem
	Open         gauge.Ratio       `json:"open"`           // stitches left open up to the fold or the top, on either side of the seam
	Opening      gauge.Measurement `json:"opening"`        // finished, from the fold or the top down
	Slit         gauge.Measurement `json:"slit"`           // finished, from the hem up
	Length       gauge.Measurement `json:"length"`         // of the joined stretch
	MiddleOnFold bool              `json:"middle_on_fold"` // the fold runs through the middle stitch, the count being odd
}

// Validate returns a *gauge.FieldError if Count is out of its range, the gauge
// is not valid, or an opening is negative.
func (s Seam) Validate() error {
	if s.Count < 1 || s.Count > gauge.MaxCount {
		return &gauge.FieldError{Field: "Count", Got: strconv.Itoa(s.Count), Want: "1 to 100000", Err: gauge.ErrBounds}
	}
	if err := s.Gauge.Validate(); err != nil {
		return gauge.InField("Gauge", err)
	}
	if s.Opening.Sign() < 0 {
		return &gauge.FieldError{Field: "Opening", Got: say.Length(s.Opening), Want: "not less than nothing"}
	}
	if s.Slit.Sign() < 0 {
		return &gauge.FieldError{Field: "Slit", Got: say.Length(s.Slit), Want: "not less than nothing"}
	}
	return nil
}

// half returns the stitches from the hem to the fold, or to the top.
func (s Seam) half() gauge.Ratio {
	if s.ToTop {
		return gauge.Int(s.Count)
	}
	h, _ := gauge.Share(s.Count, 2)
	return h
}

// Join returns how many pairs to join: ⌊half - Opening·g⌋ less ⌈Slit·g⌉, with
// half the stitches from the hem to the fold (Count/2, half a stitch where
// Count is odd) or to the top.
//
// It returns a *gauge.FieldError if the seam is not valid, or (ErrNoPair) if
// the openings leave not one pair.
func (s Seam) Join() (Join, error) {
	if err := s.Validate(); err != nil {
		return Join{}, err
	}
	half := s.half()
	whole, err := s.Gauge.Measure(half)
	if err != nil {
		return Join{}, err
	}
	tooDeep := func(field string, got gauge.Measurement, least gauge.Ratio) error {
		room, err := s.Gauge.Measure(half.Sub(least))
		if err != nil {
			return err
		}
		return &gauge.FieldError{Field: field, Got: say.Length(got), Err: ErrNoPair,
			Want: say.AtMost(room) + ", which leaves one pair of the " + say.Length(whole) + " edge to join"}
	}
	one := gauge.Int(1)
	if s.Opening.Cmp(whole) >= 0 {
		return Join{}, tooDeep("Opening", s.Opening, one)
	}
	if s.Slit.Cmp(whole) >= 0 {
		return Join{}, tooDeep("Slit", s.Slit, half.Sub(half))
	}
	open, err := s.Gauge.Exact(s.Opening)
	if err != nil {
		return Join{}, err
	}
	slit, err := s.Gauge.Exact(s.Slit)
	if err != nil {
		return Join{}, err
	}
	j := Join{Asked: s, Exact: half.Sub(open), MiddleOnFold: !s.ToTop && !s.Across && s.Count%2 == 1}
	stop, err := j.Exact.Floor()
	if err != nil {
		return Join{}, err
	}
	if j.Start, err = slit.Ceil(); err != nil {
		return Join{}, err
	}
	j.Pairs = stop - j.Start
	if stop < 1 {
		return Join{}, tooDeep("Opening", s.Opening, one)
	}
	if j.Pairs < 1 {
		return Join{}, tooDeep("Slit", s.Slit, half.Sub(gauge.Int(stop-1)))
	}
	j.Open = half.Sub(gauge.Int(stop))
	for _, m := range []struct {
		of  gauge.Ratio
		dst *gauge.Measurement
	}{{j.Open, &j.Opening}, {gauge.Int(j.Start), &j.Slit}, {gauge.Int(j.Pairs), &j.Length}} {
		if *m.dst, err = s.Gauge.Measure(m.of); err != nil {
			return Join{}, err
		}
	}
	return j, nil
}

// Explain says in one sentence how the pairs came about: "side: 81½ sts from hem
// to the fold less 9.5 in (24.13 cm) at 13 over 4 in are 50.625, rounded down to
// 50 pairs; 31½ sts stay open to the fold, 9.692 in (24.618 cm)".
func (j Join) Explain() string { return j.ExplainIn(gauge.Inch) }

// ExplainIn is Explain with inches or centimetres first.
func (j Join) ExplainIn(first gauge.Unit) string {
	length := func(m gauge.Measurement) string { return say.LengthIn(m, first) }
	s := ""
	if j.Asked.Name != "" {
		s = j.Asked.Name + ": "
	}
	word, begin, end := "sts", "hem", "the fold"
	if j.Asked.RowEnds {
		word = "row ends"
	}
	switch {
	case j.Asked.Across && j.Asked.ToTop:
		begin, end = "one end", "the other"
	case j.Asked.Across:
		begin, end = "the outer edge", "the middle"
	case j.Asked.ToTop:
		end = "the top"
	}
	s += fmt.Sprintf("%s %s from %s to %s less %s at %s over %s are %s", say.Halves(j.Asked.half()), word, begin, end,
		length(j.Asked.Opening), say.PerSpan(j.Asked.Gauge), j.Asked.Gauge.Span, say.About(j.Exact))
	if j.Start > 0 {
		s += fmt.Sprintf(", rounded down to %d; the slit of %s takes %d, which leaves %d %s", j.Pairs+j.Start, length(j.Asked.Slit), j.Start, j.Pairs, pairs(j.Pairs))
	} else {
		s += fmt.Sprintf(", rounded down to %d %s", j.Pairs, pairs(j.Pairs))
	}
	if j.Open.Sign() == 0 {
		return s + "; nothing stays open up to " + end
	}
	stay := "stay"
	if j.Open.Equal(gauge.Int(1)) {
		stay = "stays"
		word = map[bool]string{false: "st", true: "row end"}[j.Asked.RowEnds]
	}
	return s + fmt.Sprintf("; %s %s %s open to %s, %s", say.Halves(j.Open), word, stay, end, length(j.Opening))
}

func pairs(n int) string {
	if n == 1 {
		return "pair"
	}
	return "pairs"
}
