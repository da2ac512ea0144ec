package work

import (
	"slices"

	"example.com/panelmath/panel/row"
)

// PassOver returns the places that a row goes into, or skips, if it passes over
// those of another kind than comes next in it: the chain spaces between the
// stitches of `dc in each dc across`, the stitches between the spaces of `2 sc in
// each ch-1 sp across`. That is how rows are meant that call places by their kind
// (row.ParseNamed): common practice, no source. ok is false where the row does not
// fit the places so either, or would leave places over that it could go into.
func PassOver(r row.Row, p Places, size int) (kept Places, ok bool) {
	if r.Validate() != nil || r.Begins() || len(p) == 0 {
		return nil, false
	}
	prog := compile(r, size)
	w := passing{places: p}
	if prog.left != 0 || !w.all(prog.head, len(p)) {
		return nil, false
	}
	if prog.rest {
		return w.kept, true
	}
	end := passing{places: p.Turned()}
	tail := slices.Clone(prog.tail)
	slices.Reverse(tail)
	if !end.all(tail, len(p)-w.at) {
		return nil, false
	}
	to := len(p) - end.at
	for passes := 0; takes(prog.body) > 0; passes++ {
		pass := w
		if !pass.all(prog.body, to) {
			if passes == 0 {
				return nil, false
			}
			break
		}
		w = pass
	}
	into := prog.body
	if len(into) == 0 {
		into = slices.Concat(prog.head, prog.tail)
	}
	for _, x := range p[w.at:to] {
		if x == Unworked || slices.ContainsFunc(into, func(o op) bool { return o.takes && o.fits(x) }) {
			return nil, false
		}
	}
	return append(w.kept, end.kept.Turned()...), true
}

// passing goes along places.
type passing struct {
	places Places
	at     int // the next of them
	kept   Places
}

// all takes a place for each op that takes one, before the place to.
func (w *passing) all(ops []op, to int) bool {
	for i := range ops {
		o := &ops[i]
		if !o.takes {
			continue
		}
		for w.at < to && w.places[w.at] != Unworked && !o.fits(w.places[w.at]) {
			w.at++
		}
		if w.at >= to || w.places[w.at] == Unworked {
			return false
		}
		w.kept = append(w.kept, w.places[w.at])
		w.at++
	}
	return true
}

// fits reports whether the op can take a place.
func (o *op) fits(x row.Space) bool {
	_, _, ok := o.choose(place(x))
	return ok
}
