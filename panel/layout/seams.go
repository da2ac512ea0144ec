package layout

import (
	"example.com/panelmath/gauge"
)

// Seam is a seam of a layout: two sides that are sewn together.
type Seam struct {
	Name  string  `json:"name"`
	Sides [2]Side `json:"sides"` // the Joined stretches and their Partner
}

// Side is one side of a seam or the whole of an opening.
type Side struct {
	Parts   []Part            `json:"parts"`
	Count   int               `json:"count"`    // stitches or row ends in all
	RowEnds bool              `json:"row_ends"` // some of them are row ends
	Length  gauge.Measurement `json:"length"`   // finished, exactly
}

// Part tells where a stretch lies.
type Part struct {
	Piece int   `json:"piece"` // index in Layout.Pieces
	Edge  Place `json:"edge"`
	At    int   `json:"at"` // index in the edge
}

// Opening is what stays open under one name, such as an armhole or the neck.
type Opening struct {
	Name string `json:"name"`
	Side        // all its stretches; Length is the opening all round
}

// Like reports whether the seam joins one to one: the same number on both
// sides.
func (s Seam) Like() bool { return s.Sides[0].Count == s.Sides[1].Count }

// Pairs returns how many pairs are joined: the smaller of the two sides. What
// the other has more is eased in evenly.
func (s Seam) Pairs() int { return min(s.Sides[0].Count, s.Sides[1].Count) }

// Length returns the finished length of the seam: of the longer of its two
// sides, so that the yarn for it does not run short.
func (s Seam) Length() gauge.Measurement {
	if s.Sides[1].Length.Cmp(s.Sides[0].Length) > 0 {
		return s.Sides[1].Length
	}
	return s.Sides[0].Length
}

// Seams returns the seams in the order in which the pieces name them. It
// returns the error of Validate.
func (l Layout) Seams() ([]Seam, error) {
	if err := l.Validate(); err != nil {
		return nil, err
	}
	return l.seams(), nil
}

// Openings returns what stays open, by name, in the order in which the pieces
// name them; stretches without a name are left out. It returns the error of
// Validate.
func (l Layout) Openings() ([]Opening, error) {
	if err := l.Validate(); err != nil {
		return nil, err
	}
	var all []Opening
	at := map[string]int{}
	l.walk(func(part Part, s Stretch) {
		if s.Kind != Open || s.Name == "" {
			return
		}
		i, ok := at[s.Name]
		if !ok {
			i = len(all)
			at[s.Name] = i
			all = append(all, Opening{Name: s.Name})
		}
		all[i].Side = l.add(all[i].Side, part, s)
	})
	return all, nil
}

// Measure returns the finished measure of that name; ok is false where the
// layout has none.
func (l Layout) Measure(name string) (m gauge.Measurement, ok bool) {
	for _, v := range l.Measures {
		if v.Name == name {
			return v.Length, true
		}
	}
	return m, false
}

// walk visits every stretch: piece by piece, the edges in the order of Place.
func (l Layout) walk(visit func(Part, Stretch)) {
	for i, p := range l.Pieces {
		for at := Bottom; at <= Right; at++ {
			for k, s := range p.Stretches(at) {
				visit(Part{i, at, k}, s)
			}
		}
	}
}

// seams needs valid pieces.
func (l Layout) seams() []Seam {
	var all []Seam
	at := map[string]int{}
	l.walk(func(part Part, s Stretch) {
		if s.Kind == Open {
			return
		}
		i, ok := at[s.Name]
		if !ok {
			i = len(all)
			at[s.Name] = i
			all = append(all, Seam{Name: s.Name})
		}
		side := &all[i].Sides[s.Kind-Joined]
		*side = l.add(*side, part, s)
	})
	return all
}

func (l Layout) add(side Side, part Part, s Stretch) Side {
	p := l.Pieces[part.Piece]
	m, _ := p.Over(part.Edge).Measure(gauge.Int(s.Count)) // the piece is valid
	side.Parts = append(side.Parts, part)
	side.Count += s.Count
	side.RowEnds = side.RowEnds || p.RowEnds(part.Edge)
	side.Length = side.Length.Add(m)
	return side
}
