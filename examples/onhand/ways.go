package main

import (
	"errors"
	"fmt"
	"sort"

	"example.com/panelmath/examples/internal/variant"
	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/seam"
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
	// Less takes less, but not every count makes a garment: an odd one may leave a
	// neck that the head passes, the even ones beside it not. So a count stands for
	// the next below it that does, and the first that is enough can be searched for.
	most, tried := (count-least)/step, map[int]trial{}
	next := func(off int) (size, bool) {
		for last := min(off+gap, most); off <= last; off++ {
			one, ok := tried[off]
			if !ok {
				one.size, one.err = a.at(b, w, measure, count, count-off*step)
				tried[off] = one
			}
			if one.err == nil || errors.Is(one.err, seam.ErrNoPair) { // which less will not leave either
				return one.size, one.err == nil
			}
		}
		return size{}, false
	}
	off := sort.Search(most, func(off int) bool {
		one, ok := next(off)
		return !ok || one.left.Sign() >= 0
	})
	if one, ok := next(off); ok && one.left.Sign() >= 0 {
		return way{name: w.name, size: one, found: true}
	}
	return way{name: w.name}
}

// trial is a size at another count, or why that makes no garment.
type trial struct {
	size
	err error
}

// gap is the most counts in a row that are tried for one that makes a garment.
// Which do goes by the part of a stitch that is lost where pairs are whole; it
// comes back after two counts, in a poncho after a few more.
const gap = 200

// at works a size out at another count, or says why that makes no garment. The
// measure is in proportion to its count, so the count is asked for by it.
func (a reply) at(b variant.Brief, w screw, measure gauge.Measurement, count, n int) (size, error) {
	share, err := gauge.Share(n, count)
	if err != nil {
		return size{}, err
	}
	// A measure may be no decimal; nine places of a centimetre are near enough to
	// get the count itself.
	asked := measure.Times(share).Sub(w.less).In(gauge.Centimetre).Decimal(9)
	g, err := b.With(w.field, asked.String()+" cm").Make()
	if err != nil {
		return size{}, err
	}
	got := g.Sizes[0].Panel.Rows.Value
	if w.stitches {
		got = g.Sizes[0].Panel.Stitches.Value
	}
	if got != n {
		return size{}, fmt.Errorf("%d comes out as %d", n, got)
	}
	return a.size(g.Sizes[0])
}
