package seam

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/enum"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/seam/internal/say"
)

// Start says how a piece is begun: it decides at which corner the first tail
// hangs.
type Start uint8

// The zero value is FromStitches.
const (
	// FromStitches: foundation stitches, or a cast-on whose first row goes back
	// from its tail. Row 1 begins at the tail.
	FromStitches Start = iota
	// FromChain: a foundation chain, along which row 1 goes back to the tail.
	FromChain
)

var startNames = [...]string{"foundation stitches", "foundation chain"}

// String returns "foundation stitches" or "foundation chain".
func (s Start) String() string { return enum.Name("Start", s, startNames[:]) }

// MarshalText returns String, or a *gauge.FieldError for none of the constants.
func (s Start) MarshalText() ([]byte, error) {
	return enum.Marshal("Start", s, startNames[:])
}

// UnmarshalText reads what String returns; it returns a *gauge.ParseError for
// anything else.
func (s *Start) UnmarshalText(b []byte) error {
	return enum.Unmarshal(s, "Start", b, startNames[:])
}

// Method is a way to join edges. How much yarn it takes depends on yarn, hook
// and hand: a measured seam beats every figure here.
type Method uint8

// The zero value is WhipStitch.
const (
	// WhipStitch takes 2.5 times the seam: common practice, no source.
	WhipStitch Method = iota
	// Mattress takes over 2 times the seam (Anne Tarsia, Seaming the Swirl,
	// 2015); 2.25 here.
	Mattress
	// SlipStitch takes about 3 times the piece, woven with a needle (Crochet
	// finishing tips, Gizmo Fiber Arts, 2011).
	SlipStitch
	// SingleCrochet takes 4 times the seam: common practice, no source.
	SingleCrochet
	// BindOff, with three needles, takes about 3 times the seam (3-needle
	// bind-off handout, docslib.org/doc/553927).
	BindOff
)

var methodNames = [...]string{"whip stitch", "mattress stitch", "slip stitch", "single crochet", "three-needle bind-off"}

// String names the method: "whip stitch".
func (m Method) String() string { return enum.Name("Method", m, methodNames[:]) }

// MarshalText returns String, or a *gauge.FieldError for none of the constants.
func (m Method) MarshalText() ([]byte, error) {
	return enum.Marshal("Method", m, methodNames[:])
}

// UnmarshalText reads what String returns; it returns a *gauge.ParseError for
// anything else.
func (m *Method) UnmarshalText(b []byte) error {
	return enum.Unmarshal(m, "Method", b, methodNames[:])
}

// Factor returns the yarn per length of seam: see the constants for where each
// comes from. It is 0 for no valid method.
func (m Method) Factor() gauge.Ratio {
	quarters := [...]int{10, 9, 12, 16, 12}
	if int(m) >= len(quarters) {
		return gauge.Ratio{}
	}
	r, _ := gauge.Share(quarters[m], 4)
	return r
}

// Sewing says how a garment is begun and joined. The zero value is whip stitch
// from foundation stitches with 6 in for every end.
type Sewing struct {
	Start    Start             `json:"start"`
	Method   Method            `json:"method"`
	Measured gauge.Ratio       `json:"measured"` // yarn per length of seam, measured on the swatch; 0 stands for Method.Factor
	End      gauge.Measurement `json:"end"`      // to weave in at each end of a length; nothing stands for 6 in (common practice, no source)
	// AsGiven takes Measured and End as they stand: nothing is nothing, as in a
	// garment that is sewn with another yarn.
	AsGiven bool `json:"as_given,omitempty"`
}

// Validate returns a *gauge.FieldError if Start or Method is none of the
// constants, Measured is negative or above 100, or End is negative.
func (s Sewing) Validate() error {
	if err := enum.Check("Start", s.Start, startNames[:]); err != nil {
		return err
	}
	if err := enum.Check("Method", s.Method, methodNames[:]); err != nil {
		return err
	}
	switch {
	case s.Measured.Sign() < 0 || s.Measured.Cmp(gauge.Int(100)) > 0:
		return &gauge.FieldError{Field: "Measured", Got: say.Plain(s.Measured, 3), Want: "0 to 100"}
	case s.End.Sign() < 0:
		return &gauge.FieldError{Field: "End", Got: say.Length(s.End), Want: "not less than nothing"}
	}
	return nil
}

func (s Sewing) factor() gauge.Ratio {
	if s.AsGiven || s.Measured.Sign() > 0 {
		return s.Measured
	}
	return s.Method.Factor()
}

func (s Sewing) end() gauge.Measurement {
	if s.AsGiven || s.End.Sign() > 0 {
		return s.End
	}
	return gauge.MeasurementOf(gauge.Int(6), gauge.Inch)
}

// Long returns the length beyond which a sewing yarn frays as it is pulled
// through: 20 in for mattress stitch (Lucy Neatby, Refinements to mattress
// stitch: 15 to 20 in at a time). No source gives one for the other methods.
func (s Sewing) Long() (m gauge.Measurement, ok bool) {
	if s.Method == Mattress {
		return gauge.MeasurementOf(gauge.Int(20), gauge.Inch), true
	}
	return m, false
}

// Yarn returns how much yarn a seam of that length takes, one end for a tail
// that hangs on the piece and two for a new length.
func (s Sewing) Yarn(seam gauge.Measurement, ends int) gauge.Measurement {
	return seam.Times(s.factor()).Add(s.end().Times(gauge.Int(ends)))
}

// Tail is an end of yarn that hangs at a corner of a piece.
type Tail struct {
	Piece  string            `json:"piece"`
	Last   bool              `json:"last"`           // left by the last row; by the foundation otherwise
	Corner [2]layout.Place   `json:"corner"`         // the two edges that meet there: the foundation or last row first, then a row-end edge
	Seam   string            `json:"seam,omitempty"` // which it sews; empty where none begins there
	Leave  gauge.Measurement `json:"leave"`          // how long to leave it
}

// Tails tells for every piece where its two tails hang and what they sew.
type Tails struct {
	Tails      []Tail      `json:"tails"` // in the order of the pieces, the first tail before the last
	NewLengths []NewLength `json:"new_lengths,omitempty"`
}

// NewLength is a seam that no tail reaches.
type NewLength struct {
	Seam   string            `json:"seam"`
	Length gauge.Measurement `json:"length"` // of yarn to cut
}

// LastEnd returns the edge at which the last row of a piece ends, worked back
// and forth: an odd row ends where row 1 does, an even one where row 1 began.
func LastEnd(p layout.Piece) layout.Place {
	if p.Rows%2 == 1 {
		return p.Foundation.After(1)
	}
	return p.Foundation.After(3)
}

// FirstEnd returns the edge at which the tail of the foundation hangs: where
// row 1 begins for foundation stitches, where it ends for a chain.
func FirstEnd(p layout.Piece, s Start) layout.Place {
	if s == FromChain {
		return p.Foundation.After(1)
	}
	return p.Foundation.After(3)
}

// PlanTails returns where the tails of a layout hang, which seam each can sew,
// and the seams that need a new length; none, where a seam takes no yarn. All pieces lie right side up as the
// layout draws them and were worked back and forth by the right hand, row 1
// right side facing; the left hand mirrors the whole drawing. A tail can sew a
// seam that begins or ends at its corner; no seam is given two tails, and as
// many seams as can be are given one.
//
// It returns the errors of Layout.Validate and Sewing.Validate.
func PlanTails(l layout.Layout, s Sewing) (Tails, error) {
	if err := s.Validate(); err != nil {
		return Tails{}, err
	}
	seams, err := l.Seams()
	if err != nil {
		return Tails{}, err
	}
	index := map[string]int{}
	for i, sm := range seams {
		index[sm.Name] = i
	}
	var t Tails
	var reach [][]int // by tail: the seams at its corner
	for _, p := range l.Pieces {
		first := Tail{Piece: p.Name, Corner: [2]layout.Place{p.Foundation, FirstEnd(p, s.Start)}, Leave: s.end()}
		last := Tail{Piece: p.Name, Last: true, Corner: [2]layout.Place{p.Foundation.After(2), LastEnd(p)}, Leave: s.end()}
		for _, tail := range []Tail{first, last} {
			t.Tails = append(t.Tails, tail)
			var at []int
			for i, edge := range tail.Corner {
				st := atCorner(p, edge, tail.Corner[1-i])
				if st.Kind == layout.Open {
					continue
				}
				if k := index[st.Name]; len(seams[k].Sides[st.Kind-layout.Joined].Parts) == 1 {
					at = append(at, k)
				}
			}
			reach = append(reach, at)
		}
	}
	if s.factor().Sign() == 0 {
		return t, nil // sewn with another yarn
	}
	tailOf := match(reach, len(seams))
	for i, sm := range seams {
		if k := tailOf[i]; k >= 0 {
			t.Tails[k].Seam = sm.Name
			t.Tails[k].Leave = s.Yarn(sm.Length(), 1)
			continue
		}
		t.NewLengths = append(t.NewLengths, NewLength{Seam: sm.Name, Length: s.Yarn(sm.Length(), 2)})
	}
	return t, nil
}

// atCorner returns the stretch of an edge that ends where it meets the other
// edge: stretches run from the left and from the bottom.
func atCorner(p layout.Piece, edge, other layout.Place) layout.Stretch {
	all := p.Stretches(edge)
	if other == layout.Left || other == layout.Bottom {
		return all[0]
	}
	return all[len(all)-1]
}

// match gives every seam at most one tail and every tail at most one seam, as
// many as can be, the earlier seams and tails first (augmenting paths).
func match(reach [][]int, seams int) []int {
	tailOf := make([]int, seams)
	for i := range tailOf {
		tailOf[i] = -1
	}
	var try func(tail int, seen []bool) bool
	try = func(tail int, seen []bool) bool {
		for _, s := range reach[tail] {
			if seen[s] {
				continue
			}
			seen[s] = true
			if tailOf[s] < 0 || try(tailOf[s], seen) {
				tailOf[s] = tail
				return true
			}
		}
		return false
	}
	for tail := range reach {
		try(tail, make([]bool, seams))
	}
	return tailOf
}

// Where names the corner: "bottom left".
func (t Tail) Where() string {
	a, b := t.Corner[0], t.Corner[1]
	if a == layout.Left || a == layout.Right {
		a, b = b, a
	}
	return a.String() + " " + b.String()
}

// String says one tail in a sentence: "the last tail of the left panel, at its
// bottom left corner, sews the left side seam: leave 44½ in [113 cm]".
func (t Tail) String() string {
	which, does := "first", "is woven in"
	if t.Last {
		which = "last"
	}
	if t.Seam != "" {
		does = "sews the " + t.Seam
	}
	return fmt.Sprintf("the %s tail of the %s, at its %s corner, %s: leave %s", which, t.Piece, t.Where(), does,
		lengths(grade.Run[Tail]{t}, func(t Tail) gauge.Measurement { return gauge.QuarterInch.RoundUp(t.Leave).Measurement() }, false))
}
