package main

import (
	"errors"
	"fmt"
	"strings"

	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/examples/internal/garment"
	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/seam"
)

// unlikeError tells that two edges which are sewn together differ by more than
// can be eased in.
type unlikeError struct {
	names   [2]string
	lengths [2]gauge.Measurement
	err     error // of the layout
}

func (e *unlikeError) Error() string { return e.err.Error() }
func (e *unlikeError) Unwrap() error { return e.err }

// edge is an edge that is sewn to another: so many stitches or rows of a gauge.
type edge struct {
	name  string
	gauge gauge.Over
	count int
}

// unlike returns an error of a layout, where it is one about edges that do not go
// together with the lengths of the two.
func unlike(err error, one, other edge) error {
	if !errors.Is(err, layout.ErrLayout) {
		return err
	}
	x, err1 := one.gauge.Measure(gauge.Int(one.count))
	y, err2 := other.gauge.Measure(gauge.Int(other.count))
	if err1 != nil || err2 != nil {
		return err
	}
	return &unlikeError{[2]string{one.name, other.name}, [2]gauge.Measurement{x, y}, err}
}

// cannotBeSewn says in the units of the pattern why a size can't be sewn
// together as it is written.
func (a reply) cannotBeSewn(f followed) string {
	s := "Size " + f.Group.Label() + " cannot be sewn together with the pattern's numbers at your " + a.gauge() + ": "
	var e *unlikeError
	if errors.As(f.fault, &e) {
		s += fmt.Sprintf("%s would be %s and %s %s; they may differ by a tenth at most.", e.names[0], a.both(e.lengths[0]), e.names[1], a.both(e.lengths[1]))
	} else {
		s += f.fault.Error() + "."
	}
	for _, r := range a.renewed {
		if r.Group.Label() == f.Group.Label() && r.unfit == nil {
			s += " With the new numbers it can."
		}
	}
	return s
}

// hasNone says in the units of the pattern why a size has no numbers, and what
// would help.
func (a reply) hasNone(l lost) string {
	label, say := a.pattern.Sizes[l.at].Group.Label(), "Size %s has no numbers at your "+a.gauge()+": %s."
	var fit *seam.FitError
	if errors.As(l.why, &fit) {
		return fmt.Sprintf("Size %s has no numbers that would fit at your %s: %s.", label, a.gauge(), a.misfit(l.why)) + a.remedy(l.why, l.at)
	}
	var e *brief.Error
	if !errors.As(l.why, &e) {
		return fmt.Sprintf(say, label, l.why)
	}
	field := strings.ReplaceAll(e.Field, "_", " ")
	switch {
	case errors.Is(l.why, seam.ErrNoPair) && a.pattern.Given(e.Field):
		asked := a.pattern.At(e.Field, l.at)
		if e.Field == "armhole_depth" && a.deepened.Sign() > 0 {
			asked = a.deepened
		}
		return fmt.Sprintf(say, label, "with the "+field+" of "+a.both(asked)+" no pair is left to join")
	case errors.Is(l.why, layout.ErrLayout):
		return fmt.Sprintf(say, label, "its edges do not go together")
	}
	return fmt.Sprintf(say, label, field+": "+e.Cause)
}

// misfit says in the units of the pattern what can't be put on.
func (a reply) misfit(err error) string {
	var parts []string
	for _, f := range fitErrors(err) {
		got, want := a.both(f.Got), a.both(f.Want)
		if a.grid().Number(f.Got) == a.grid().Number(f.Want) { // as near as that
			got, want = a.hundredths(f.Got), a.hundredths(f.Want)
		}
		is := "is"
		if strings.HasSuffix(f.Wearer, "s") {
			is = "are"
		}
		parts = append(parts, fmt.Sprintf("the %s is %s, and the %s %s %s", f.Part, got, f.Wearer, is, want))
	}
	if parts == nil {
		return err.Error()
	}
	return strings.Join(parts, "; ")
}

// hundredths prints a measurement finer than a tape shows it.
func (a reply) hundredths(m gauge.Measurement) string {
	own, other := a.pattern.Units, gauge.Inch
	if own == gauge.Inch {
		other = gauge.Centimetre
	}
	return fmt.Sprintf("%s %v [%s %v]", m.In(own).Text(2), own, m.In(other).Text(2), other)
}

func fitErrors(err error) (all []*seam.FitError) {
	var joined interface{ Unwrap() []error }
	if errors.As(err, &joined) {
		for _, e := range joined.Unwrap() {
			all = append(all, fitErrors(e)...)
		}
		return all
	}
	var f *seam.FitError
	if errors.As(err, &f) {
		return []*seam.FitError{f}
	}
	return nil
}

// remedy says what in the brief would help the size at a place of the pattern
// against a misfit of its new numbers, or nothing. Openings come out no smaller
// than they are asked for, so that what it names is enough.
func (a reply) remedy(err error, at int) (s string) {
	half, _ := gauge.Share(1, 2)
	for _, f := range fitErrors(err) {
		field, least := "armhole_depth", f.Want.Times(half)
		if f.Wearer == "head" {
			field, least = a.neck(f.Want, at)
		}
		switch {
		case f.TooBig:
			s += " A smaller neck width in the brief may help."
		case f.Wearer == "upper arm" && a.given(a.arm) && a.wanted == nil && len(a.pattern.Sizes) > 1:
			s += " With -size beside -arm the armhole becomes deep enough."
		case f.Part == "sleeve end":
			s += " A deeper armhole in the brief makes the sleeve wider."
		case a.pattern.Given(field):
			s += fmt.Sprintf(" With a %s of %s or more in the brief it would pass.", strings.ReplaceAll(field, "_", " "), a.both(a.up(least)))
		}
	}
	return s
}

// neck returns the field of the brief that sets the size of the neck, and what
// it has to be for a head.
func (a reply) neck(head gauge.Measurement, at int) (field string, least gauge.Measurement) {
	half, _ := gauge.Share(1, 2)
	stretched, _ := gauge.Int(1).Quo(gauge.Int(1).Add(a.pattern.NeckStretch)) // 0 to 1 was read
	round := head.Times(stretched)
	switch a.pattern.Layout {
	case brief.Poncho:
		return "neck_round", round
	case brief.ClosedFront:
		return "neck_depth", round.Times(half).Sub(a.pattern.At("neck_drop", at))
	}
	return "neck_width", round.Times(half)
}

// up rounds a measurement up to what the pattern's units are printed in.
func (a reply) up(m gauge.Measurement) gauge.Measurement { return a.grid().RoundUp(m).Measurement() }

func (a reply) grid() gauge.Grid {
	if a.pattern.Units == gauge.Centimetre {
		return gauge.HalfCentimetre
	}
	return gauge.QuarterInch
}

// openings says how far the openings of a layout are from what the designer
// asked for. Each side of one ends at a whole pair: the depth is out by less than
// one, a neck that two shoulders leave by less than two. A poncho's neck goes by
// the counts of the panel.
func openings(s garment.Size) string {
	l := s.Sewn.Layout
	along, across := "stitch", "rows"
	if l.Pieces[0].Foundation == layout.Bottom {
		along, across = "row", "stitches"
	}
	switch l.Name {
	case "poncho":
		return "The neck is no smaller than the designer asked for. It goes by the counts that the rows allow, so it may be larger; its round stands above."
	case "cocoon":
		return "No armhole is smaller than the designer asked for; since pairs are whole, it may be deeper by less than a " + along + "."
	case "front and back":
		return "No armhole or neck is smaller than the designer asked for; since pairs are whole, an armhole may be deeper by less than a " + along + ", and the neck wider by less than two " + across + "."
	}
	return "No armhole or neck is smaller than the designer asked for; since pairs are whole, each may be deeper by less than a " + along + "."
}
