package grade

import (
	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/enum"
)

// Which names a member of a group. The zero value is LargestMember: nobody's arm
// is left out.
type Which uint8

// In a group of an even number, the middle member is the larger of the two.
const (
	LargestMember Which = iota
	SmallestMember
	MiddleMember
)

var whichNames = [...]string{"largest", "smallest", "middle"}

// String returns "largest", "smallest" or "middle".
func (w Which) String() string { return enum.Name("Which", w, whichNames[:]) }

// MarshalText returns String, or a *gauge.FieldError for a value that is not
// valid.
func (w Which) MarshalText() ([]byte, error) { return enum.Marshal("Which", w, whichNames[:]) }

// UnmarshalText reads what String returns. It returns a *gauge.ParseError for
// anything else.
func (w *Which) UnmarshalText(b []byte) error {
	return enum.Unmarshal(w, "Which", b, whichNames[:])
}

// End is an end of a printed range. The zero value is HighEnd: the largest body
// of the size must get into the garment.
type End uint8

// The ends of a range, and its middle.
const (
	HighEnd End = iota
	LowEnd
	MiddleOfRange
)

var endNames = [...]string{"high", "low", "middle"}

// String returns "high", "low" or "middle".
func (e End) String() string { return enum.Name("End", e, endNames[:]) }

// MarshalText returns String, or a *gauge.FieldError for a value that is not
// valid.
func (e End) MarshalText() ([]byte, error) { return enum.Marshal("End", e, endNames[:]) }

// UnmarshalText reads what String returns. It returns a *gauge.ParseError for
// anything else.
func (e *End) UnmarshalText(b []byte) error {
	return enum.Unmarshal(e, "End", b, endNames[:])
}

// Ruling says whose measure rules a part of the garment: which member of a
// group, and which end of its printed range. The zero value is the high end of
// the largest member.
type Ruling struct {
	Member Which `json:"member"`
	End    End   `json:"end"`
}

// Validate returns a *gauge.FieldError if the member or the end is none of the
// values above.
func (r Ruling) Validate() error {
	if err := enum.Check("Member", r.Member, whichNames[:]); err != nil {
		return gauge.InField("Ruling", err)
	}
	return gauge.InField("Ruling", enum.Check("End", r.End, endNames[:]))
}

// Ruled returns the measure m of the member and end that rule, by the chart's
// column u. It returns the errors of Group.Body, and a *gauge.FieldError if the
// ruling is not valid.
func (g Group) Ruled(m Measure, u gauge.Unit, r Ruling) (gauge.Measurement, error) {
	if err := r.Validate(); err != nil {
		return gauge.Measurement{}, err
	}
	if len(g.Members) == 0 {
		return gauge.Measurement{}, noMembers()
	}
	b, err := g.Chart.Body(g.Member(r.Member), m, u)
	if err != nil {
		return gauge.Measurement{}, err
	}
	switch r.End {
	case LowEnd:
		return b.Low.Measurement(), nil
	case MiddleOfRange:
		return b.Middle(), nil
	}
	return b.High.Measurement(), nil
}
