package main

import (
	"errors"
	"fmt"
	"slices"

	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/examples/internal/command"
	"example.com/panelmath/examples/internal/garment"
	"example.com/panelmath/examples/internal/variant"
	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/yarn"
)

// reply is everything that can be said to a question.
type reply struct {
	question
	pattern  garment.Garment
	followed grade.Run[followed] // one for each size of the pattern
	wanted   *wanted
	fresh    garment.Garment    // at her gauge, without the sizes that have no numbers there
	renewed  grade.Run[renewed] // one for each size of fresh
	places   []int              // of renewed, in the pattern
	lost     []lost
	deepened gauge.Measurement // the armhole depth that her arm asks for; nothing where the pattern's will do
	counts   [][]gauge.Count   // one for each of question.others
}

// followed is a size of the pattern as it comes out at her gauge.
type followed struct {
	garment.Size
	made  layout.Layout
	yarn  []yarn.Quantity
	unfit error // what can't be put on, or nothing
	fault error // why it can't be sewn together; then made is empty
}

// renewed is a size with numbers of her own gauge.
type renewed struct {
	garment.Size              // new
	was          garment.Size // in the pattern
	yarn         []yarn.Quantity
	unfit        error
}

// lost is a size without numbers at her gauge.
type lost struct {
	at  int // its place in the pattern
	why error
}

// wanted is the round she asks for, and the sizes nearest to it.
type wanted struct {
	round gauge.Measurement
	body  gauge.Length // unset where she gave the round
	ease  grade.Ease
	// nearest are the places in followed whose round at her gauge comes nearest, of
	// those that fit: several in a tie, none where nothing can be followed.
	nearest []int
	fits    bool // they can be put on; where no size can, the nearest are those that can't
	base    int  // the place in the pattern whose own round is nearest, a tie to the larger
}

func answer(b variant.Brief, q question) (reply, error) {
	b, err := q.only(b)
	if err != nil {
		return reply{}, err
	}
	a := reply{question: q}
	if a.pattern, err = b.Make(); err != nil {
		return reply{}, err
	}
	if err := a.check(); err != nil {
		return reply{}, err
	}
	for i, s := range a.pattern.Sizes {
		f := followed{Size: s}
		if f.made, f.fault = follow(s.Sewn, q.mine); f.fault == nil {
			f.unfit = q.unfit(a.pattern.Brief, i, s, f.made)
			if f.yarn, err = q.yarn(b.Brief, s, f.made); err != nil {
				return reply{}, q.tooMuch(s, err)
			}
		}
		a.followed = append(a.followed, f)
	}
	if a.wanted, err = a.want(b); err != nil {
		return reply{}, err
	}
	if err := a.renew(b.With("gauge", q.mine.String()).Without("worked_gauge")); err != nil {
		return reply{}, err
	}
	for _, o := range q.others {
		counts, err := o.at(b.Fabric.Finished, q.mine)
		if err != nil {
			return reply{}, fmt.Errorf("-counts: %s: %w", text.Quote(o.text), err)
		}
		a.counts = append(a.counts, counts)
	}
	return a, nil
}

// tooMuch names the flag that a quantity of yarn beyond reason comes from, and
// the size: the brief's own is not.
func (q question) tooMuch(s garment.Size, err error) error {
	name := "gauge"
	switch {
	case q.swatch != nil:
		name = "swatch"
	case len(q.labels) > 0:
		name = "label"
	}
	return command.TooMuch(name, s.Group.Label(), err)
}

// check returns an error for a measure of hers that no opening of the layout
// is made for.
func (a reply) check() error {
	for _, m := range []struct {
		flag, opening, through string
		given                  bool
	}{{"-head", "neck round", "neck to go over it", a.given(a.head)}, {"-arm", "armhole round", "armhole", a.given(a.arm)}} {
		if _, ok := a.pattern.Sizes[0].Sewn.Layout.Measure(m.opening); m.given && !ok {
			article := "a"
			if a.pattern.Layout == brief.OpenFront {
				article = "an"
			}
			return fmt.Errorf("%s: %s %s has no %s", m.flag, article, a.pattern.Layout, m.through)
		}
	}
	return nil
}

// only returns the brief with the size that she names, or as it is.
func (q question) only(b variant.Brief) (variant.Brief, error) {
	if q.size == "" {
		return b, nil
	}
	i, err := b.Size(q.size)
	if err != nil {
		return b, fmt.Errorf("-size: %w", err)
	}
	return b.Only(i).Again()
}

// want works out the round that she asks for, or nothing.
func (a reply) want(b variant.Brief) (*wanted, error) {
	if !a.given(a.round) && !a.given(a.body) {
		return nil, nil
	}
	if !a.pattern.Eased() {
		return nil, fmt.Errorf("-round: a %s has no round to choose by; use -size", a.pattern.Layout)
	}
	w := wanted{body: a.body, ease: b.Ease, round: a.round.Measurement()}
	if a.given(a.body) {
		if a.ease != nil {
			w.ease = *a.ease
		}
		w.round = w.ease.Finished(a.body.Measurement())
	}
	if w.round.Sign() <= 0 {
		return nil, fmt.Errorf("-ease: %v leaves nothing of a chest of %v", w.ease, a.body)
	}
	w.fits = slices.ContainsFunc(a.followed, func(f followed) bool { return f.fault == nil && f.unfit == nil })
	var least, leastBase gauge.Measurement
	for i, f := range a.followed {
		own, _ := f.Sewn.Layout.Measure("round")
		if off := apart(own, w.round); i == 0 || off.Cmp(leastBase) <= 0 {
			w.base, leastBase = i, off
		}
		if f.fault != nil || w.fits && f.unfit != nil {
			continue
		}
		round, _ := f.made.Measure("round")
		off := apart(round, w.round)
		switch {
		case len(w.nearest) == 0 || off.Cmp(least) < 0:
			w.nearest, least = []int{i}, off
		case off.Cmp(least) == 0:
			w.nearest = append(w.nearest, i)
		}
	}
	return &w, nil
}

func apart(a, b gauge.Measurement) gauge.Measurement {
	if a.Cmp(b) < 0 {
		return b.Sub(a)
	}
	return a.Sub(b)
}

// renew works out the numbers at her gauge: of the round she wants, or of every
// size. A size that has none is left out and told.
func (a *reply) renew(b variant.Brief) error {
	sizes := []int{}
	if a.wanted != nil {
		one, err := a.wantedRound(b)
		if err != nil {
			return err
		}
		b, sizes = a.deepen(one, a.wanted.base), append(sizes, a.wanted.base)
		if a.fresh, err = b.Make(); err != nil {
			a.lose(a.wanted.base, err)
			return nil
		}
	} else {
		if len(a.pattern.Sizes) == 1 {
			b = a.deepen(b, 0)
		}
		for i := range a.pattern.Sizes {
			if _, err := b.Only(i).Make(); err != nil {
				a.lose(i, err)
				continue
			}
			sizes = append(sizes, i)
		}
		if len(sizes) == 0 {
			return nil
		}
		var err error
		if a.fresh, err = b.Only(sizes...).Make(); err != nil {
			return err
		}
	}
	a.places = sizes
	for at, i := range sizes {
		r := renewed{Size: a.fresh.Sizes[at], was: a.pattern.Sizes[i]}
		r.unfit = a.unfit(a.fresh.Brief, at, r.Size, r.Sewn.Layout)
		var err error
		if r.yarn, err = a.yarn(b.Brief, r.was, r.Sewn.Layout); err != nil {
			return a.tooMuch(r.Size, err)
		}
		a.renewed = append(a.renewed, r)
	}
	return nil
}

// deepen gives one size an armhole that lets her arm through, where the pattern
// asks for less.
func (a *reply) deepen(b variant.Brief, i int) variant.Brief {
	if !a.given(a.arm) {
		return b
	}
	half, _ := gauge.Share(1, 2)
	depth := a.arm.Measurement().Times(half)
	if !a.pattern.Given("armhole_depth") || a.pattern.At("armhole_depth", i).Cmp(depth) >= 0 {
		return b
	}
	d, ok := depth.In(gauge.Centimetre).ExactDecimal()
	if !ok {
		return b // so that unfit tells
	}
	a.deepened = depth
	return b.With("armhole_depth", gauge.Length{Value: d, Unit: gauge.Centimetre}.String())
}

func (a *reply) lose(i int, err error) {
	a.lost = append(a.lost, lost{i, err})
}

// wantedRound returns the size of the brief that lies nearest, with the ease
// that makes it the round she wants. Centimetres hold every inch exactly.
func (a reply) wantedRound(b variant.Brief) (variant.Brief, error) {
	chest := a.pattern.Sizes[a.wanted.base].Chest.High.Measurement()
	ease, ok := a.wanted.round.Sub(chest).In(gauge.Centimetre).ExactDecimal()
	if !ok {
		return b, errors.New("-round: too many decimal places")
	}
	return b.Only(a.wanted.base).With("ease", grade.EaseOf(gauge.Length{Value: ease, Unit: gauge.Centimetre}).String()), nil
}
