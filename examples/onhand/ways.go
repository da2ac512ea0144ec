package main

import (
	"example.com/panelmath/examples/internal/variant"
	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/layout"
)

// screw is what can be turned to make a size take less: a field of the brief,
// the measure that it sets, and the count that the measure comes from.
type screw struct {
	name, field, measure string
	stitches             bool              // the count is of stitches, otherwise of rows
	less                 gauge.Measurement // what the field leaves out of the measure: ease the chest
}

// ways returns how a size can be made with the yarn: shorter, and narrower. The
// brief is that of the size alone.
func (a reply) ways(b variant.Brief, s size) (ways []way) {
	lengthwise := s.Sewn.Layout.Pieces[0].Foundation != layout.Bottom
	name := "narrower"
	if !b.Has("ease") && !b.Has("length") { // a poncho, whose length follows its width
		name = "smaller"
	}
	for _, w := range []screw{
		{"shorter", "length", "length", lengthwise, gauge.Measurement{}},
		{"narrower", "ease", "round", !lengthwise, s.Chest.High.Measurement()},
		{name, "width", "width", !lengthwise, gauge.Measurement{}},
	} {
		if m, ok := s.Sewn.Layout.Measure(w.measure); ok && b.Has(w.field) {
			ways = append(ways, a.turn(b, s, w, m))
		}
	}
	return ways
}

// turn returns the largest legal count for which the yarn suffices. Every
// measure is in proportion to its count, so each count is asked for by the
// measure that it has in this size.
func (a reply) turn(b variant.Brief, s size, w screw, measure gauge.Measurement) way {
	count, step, least := s.Panel.Rows.Value, len(a.Plan.Repeat), a.Plan.Rows(0)
	if w.stitches {
		count, step, least = s.Panel.Stitches.Value, max(s.Panel.Stitches.Rule.Multiple, 1), max(s.Panel.Stitches.Rule.Least, 1)
	}
	at := func(n int) (size, bool) { // n is a legal count
		share, err := gauge.Share(n, count)
		if err != nil {
			return size{}, false
		}
		// A measure is no decimal; nine places of a centimetre are near enough
		// to get the count itself.
		asked := measure.Times(share).Sub(w.less).In(gauge.Centimetre).Decimal(9)
		g, err := b.With(w.field, asked.String()+" cm").Make()
		if err != nil {
			return size{}, false
		}
		got := g.Sizes[0].Panel.Rows.Value
		if w.stitches {
			got = g.Sizes[0].Panel.Stitches.Value
		}
		if got != n {
			return size{}, false
		}
		one, err := a.size(g.Sizes[0])
		return one, err == nil
	}
	if step == 0 || count < least {
		return way{name: w.name}
	}
	// Counts that make no garment are all small; so none of them is too large.
	low, high := 0, (count-least)/step // repeats that come off, from enough to too few
	for low < high {
		off := (low + high) / 2
		if one, ok := at(count - off*step); !ok || one.left.Sign() >= 0 {
			high = off
		} else {
			low = off + 1
		}
	}
	// A sleeve or a neck may take a stitch more where the panel takes one less:
	// look a few counts further up.
	for off := max(low-4, 0); off < low; off++ {
		if one, ok := at(count - off*step); ok && one.left.Sign() >= 0 {
			low = off
		}
	}
	one, ok := at(count - low*step)
	return way{name: w.name, size: one, found: ok && one.left.Sign() >= 0}
}
