package main

import (
	"sort"

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
	for _, w := range screws(b, s) {
		if m, ok := s.Sewn.Layout.Measure(w.measure); ok {
			ways = append(ways, a.turn(b, s, w, m))
		}
	}
	return ways
}

// screws returns those that the brief of a size has.
func screws(b variant.Brief, s size) (all []screw) {
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
		if b.Has(w.field) {
			all = append(all, w)
		}
	}
	return all
}

// turn returns the largest legal count for which the yarn suffices.
func (a reply) turn(b variant.Brief, s size, w screw, measure gauge.Measurement) way {
	count, step, least := s.Panel.Rows.Value, len(a.Plan.Repeat), a.Plan.Rows(0)
	if w.stitches {
		count, step, least = s.Panel.Stitches.Value, max(s.Panel.Stitches.Rule.Multiple, 1), max(s.Panel.Stitches.Rule.Least, 1)
	}
	if step == 0 || count < least {
		return way{name: w.name}
	}
	// Less takes less, so the first that is enough can be searched for. What is
	// too small for a garment is passed over as if it were enough; where the
	// search ends on it, no garment is.
	most := (count - least) / step
	off := sort.Search(most, func(off int) bool {
		one, ok := a.at(b, w, measure, count, count-off*step)
		return !ok || one.left.Sign() >= 0
	})
	one, ok := a.at(b, w, measure, count, count-off*step)
	return way{name: w.name, size: one, found: ok && one.left.Sign() >= 0}
}

// at works a size out at another count; ok is false where it makes no garment.
// The measure is in proportion to its count, so the count is asked for by it.
func (a reply) at(b variant.Brief, w screw, measure gauge.Measurement, count, n int) (one size, ok bool) {
	share, err := gauge.Share(n, count)
	if err != nil {
		return size{}, false
	}
	// A measure may be no decimal; nine places of a centimetre are near enough to
	// get the count itself.
	asked := measure.Times(share).Sub(w.less).In(gauge.Centimetre).Decimal(9)
	g, err := b.With(w.field, asked.String()+" cm").Make()
	if err != nil {
		return size{}, false
	}
	got := g.Sizes[0].Panel.Rows.Value
	if w.stitches {
		got = g.Sizes[0].Panel.Stitches.Value
	}
	one, err = a.size(g.Sizes[0])
	return one, err == nil && got == n
}
