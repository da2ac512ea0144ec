package grade

import (
	"fmt"
	"slices"
	"strconv"

	"example.com/panelmath/gauge"
)

// Group is one size of the garment: sizes of a chart that are neighbours, made
// as one. A group of one is a single size. Chart.Groups makes groups; the zero
// value is not valid.
type Group struct {
	Chart   Chart    `json:"chart"`
	Members []string `json:"members"` // from the smallest to the largest
}

// Groups returns the sizes of c made as groups, in order: each list holds the
// members of one group. Sizes may be left out between two groups, but not
// inside one. The groups have one copy of the chart among them.
//
// It returns a *gauge.FieldError if there is no list or more than MaxSizes, the
// error of Chart.Validate, and a *SizeError with the place of the group if it
// has no member, or a member that the chart lacks (ErrNoSize), that is named
// twice, is out of order, or is not the neighbour of the one before it.
func (c Chart) Groups(lists [][]string) (Run[Group], error) {
	if err := c.Validate(); err != nil {
		return nil, err
	}
	if len(lists) == 0 || len(lists) > MaxSizes {
		return nil, &gauge.FieldError{Field: "groups", Got: strconv.Itoa(len(lists)), Want: "1 to 64", Err: gauge.ErrBounds}
	}
	c.Sizes, c.Cells = slices.Clone(c.Sizes), slices.Clone(c.Cells)
	out := make(Run[Group], len(lists))
	in := make(map[string]int)
	last := -1
	for i, list := range lists {
		if len(list) == 0 {
			return nil, &SizeError{Index: i, Field: "group", Got: "no size", Want: "at least one"}
		}
		for j, size := range list {
			at := slices.Index(c.Sizes, size)
			if at < 0 {
				return nil, placed(i, c.noSize(size))
			}
			fail := func(got, want string) (Run[Group], error) {
				return nil, &SizeError{Index: i, Size: size, Field: fmt.Sprintf("group number %d", i+1), Got: got, Want: want}
			}
			if k, twice := in[size]; twice {
				return fail(fmt.Sprintf("it in group number %d as well", k+1), "each size once")
			}
			if at < last {
				return fail("it after "+name(c.Sizes[last]), "sizes in the order of the chart")
			}
			if j > 0 && at != last+1 {
				return fail("it beside "+name(c.Sizes[last]), "its neighbour "+name(c.Sizes[last+1]))
			}
			in[size], last = i, at
		}
		out[i] = Group{Chart: c, Members: slices.Clone(list)}
	}
	return out, nil
}

// Singles returns every size of c as a group of its own. It returns the error
// of Chart.Validate.
func (c Chart) Singles() (Run[Group], error) {
	lists := make([][]string, len(c.Sizes))
	for i, s := range c.Sizes {
		lists[i] = []string{s}
	}
	return c.Groups(lists)
}

// Validate returns the errors of Chart.Groups for a group that was written as a
// literal.
func (g Group) Validate() error {
	_, err := g.Chart.Groups([][]string{g.Members})
	return err
}

// Label returns "XS–S" with an en dash, or "M" for a single size. A group of no
// members has no label.
func (g Group) Label() string {
	switch n := len(g.Members); n {
	case 0:
		return ""
	case 1:
		return g.Members[0]
	default:
		return g.Members[0] + "–" + g.Members[n-1]
	}
}

// Labels returns the labels of groups.
func Labels(groups Run[Group]) Run[string] {
	out := make(Run[string], len(groups))
	for i, g := range groups {
		out[i] = g.Label()
	}
	return out
}

// Smallest returns the smallest member, or nothing for a group of none.
func (g Group) Smallest() string { return g.Member(SmallestMember) }

// Largest returns the largest member, or nothing for a group of none.
func (g Group) Largest() string { return g.Member(LargestMember) }

// Member returns the ruling member, or nothing for a group of none.
func (g Group) Member(w Which) string {
	n := len(g.Members)
	if n == 0 {
		return ""
	}
	switch w {
	case SmallestMember:
		return g.Members[0]
	case MiddleMember:
		return g.Members[n/2]
	}
	return g.Members[n-1]
}

// Body returns the measure m over the whole group, as the chart prints it in
// unit u: from the low end of the smallest member to the high end of the
// largest. Its basis is the weaker of the two.
//
// It returns the errors of Chart.Body, and a *gauge.FieldError for a group of
// no members.
func (g Group) Body(m Measure, u gauge.Unit) (Body, error) {
	if len(g.Members) == 0 {
		return Body{}, noMembers()
	}
	small, err := g.Chart.Body(g.Smallest(), m, u)
	if err != nil || len(g.Members) == 1 {
		return small, err
	}
	large, err := g.Chart.Body(g.Largest(), m, u)
	if err != nil {
		return Body{}, err
	}
	b := Body{Low: small.Low, High: large.High, Basis: max(small.Basis, large.Basis), Source: small.Source, Note: small.Note}
	if large.Source != small.Source {
		b.Source = join(small.Source, large.Source)
	}
	if large.Note != small.Note {
		b.Note = join(small.Note, large.Note)
	}
	return b, nil
}

func noMembers() error {
	return &gauge.FieldError{Field: "Group.Members", Got: "none", Want: "at least one"}
}

func join(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + "; " + b
}
