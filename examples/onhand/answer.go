package main

import (
	"fmt"

	"example.com/panelmath/examples/internal/command"
	"example.com/panelmath/examples/internal/garment"
	"example.com/panelmath/examples/internal/variant"
	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/stash"
)

// reply is everything that can be said to a question.
type reply struct {
	garment.Garment
	label   yarn.Label // of her yarn
	margin  yarn.Margin
	lots    []stash.Lot // the yarn at hand
	have    gauge.Measurement
	sizes   grade.Run[size]
	largest int     // the place of the largest size that the yarn makes, -1 for none
	chosen  *chosen // the size that is worked out further, or nothing
	made    int     // the place of the size that is made as it is written, -1 for none
	given   []stash.Assignment
	mixed   error // why the lots do not hold its pieces whole
}

// size is what one size takes of her yarn.
type size struct {
	garment.Size
	takes yarn.Quantity
	left  gauge.Measurement // less than nothing where the yarn is short
}

// enough says whether the yarn makes a size.
func (s size) enough(have gauge.Measurement) string {
	switch {
	case s.left.Sign() >= 0:
		return "yes"
	case s.takes.Net.Cmp(have) <= 0:
		return "without the spare"
	}
	return "no"
}

// around names the measure that goes round the body.
func (s size) around() string {
	for _, name := range []string{"round", "body opening"} {
		if _, ok := s.Sewn.Layout.Measure(name); ok {
			return name
		}
	}
	return "hem round"
}

// tight reports whether the garment does not go round the body.
func (s size) tight() bool { return s.Measure(s.around()).Cmp(s.Chest.High.Measurement()) <= 0 }

// chosen is a size that the yarn does not make, and what it makes of it.
type chosen struct {
	size
	ways []way
}

// way is one way to make the size with the yarn: shorter or narrower.
type way struct {
	name string
	size
	found bool // false where not even the smallest will do
}

func answer(b variant.Brief, q question) (reply, error) {
	a := reply{label: b.Yarn.Label, margin: b.Yarn.Margin, largest: -1}
	if q.label.Length.Unit.Valid() {
		a.label = q.label
	}
	if q.margin != nil {
		a.margin = *q.margin
	}
	var err error
	if a.Garment, err = b.Make(); err != nil {
		return reply{}, err
	}
	pick := 0
	if q.size != "" {
		if pick, err = b.Size(q.size); err != nil {
			return reply{}, fmt.Errorf("-size: %w", err)
		}
	}
	var at []stash.Holding
	for i, lot := range q.have {
		l := stash.Lot{Name: fmt.Sprint(i + 1)}
		for _, amount := range lot {
			h := amount.holding(a.label)
			m, err := h.Length()
			if err != nil {
				return reply{}, fmt.Errorf("-have: %w", err)
			}
			at, l.Length = append(at, h), l.Length.Add(m)
		}
		a.lots, a.have = append(a.lots, l), a.have.Add(l.Length)
	}
	var quantities [][]yarn.Quantity
	for _, s := range a.Sizes {
		one, err := a.size(s)
		if err != nil {
			return reply{}, q.blame(s, err)
		}
		a.sizes = append(a.sizes, one)
		quantities = append(quantities, []yarn.Quantity{one.takes})
	}
	largest, err := stash.LargestSize(at, quantities...)
	if err != nil {
		return reply{}, fmt.Errorf("-have: %w", err)
	}
	a.largest = largest.Size
	a.made = a.largest
	if q.size != "" {
		a.made = pick
	}
	if s := a.sizes[pick]; (q.size != "" || a.largest < 0) && s.left.Sign() < 0 {
		a.made, a.chosen = -1, &chosen{size: s, ways: a.ways(b.Only(pick), s)}
	}
	if a.made >= 0 && len(a.lots) > 1 {
		a.given, a.mixed = a.share(a.sizes[a.made])
	}
	return a, nil
}

// blame names the flag that a quantity of yarn beyond reason comes from: the
// brief's own is not.
func (q question) blame(s garment.Size, err error) error {
	name := "margin"
	if q.label.Length.Unit.Valid() {
		name = "label"
	}
	return command.TooMuch(name, s.Group.Label(), err)
}

// share gives every piece, with its part of the spare, whole to a dye lot; the
// seams take what is left anywhere.
func (a reply) share(s size) ([]stash.Assignment, error) {
	var fabric gauge.Measurement
	for _, l := range s.takes.Lines {
		if l.Part == yarn.Fabric {
			fabric = fabric.Add(l.Length)
		}
	}
	all, err := s.takes.Total.Per(s.takes.Net)
	if err != nil {
		return nil, nil // a garment that takes no yarn
	}
	var areas []yarn.Area
	var whole yarn.Area
	for _, p := range s.Sewn.Layout.Pieces {
		width, _ := p.Width() // of a layout that was made, which is valid
		height, _ := p.Height()
		areas = append(areas, yarn.Rectangle(width, height))
		whole = whole.Add(areas[len(areas)-1])
	}
	var pieces []yarn.Line
	for i, p := range s.Sewn.Layout.Pieces {
		part, err := areas[i].Per(whole)
		if err != nil {
			return nil, err
		}
		pieces = append(pieces, yarn.Line{Name: p.Name, Length: fabric.Times(all).Times(part)})
	}
	return stash.Lots(pieces, a.lots)
}

// size returns what a size takes of her yarn: the same length as of that of the
// brief.
func (a reply) size(s garment.Size) (size, error) {
	q, err := yarn.Buy(a.label, a.margin, s.Yarn.Lines...)
	return size{s, q, a.have.Sub(q.Total)}, err
}
