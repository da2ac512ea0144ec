package gauge

import "example.com/panelmath/internal/number"

// Fabric is one fabric in its states: as it comes off the hook, as the garment
// is sold and worn, and as it hangs. Counts come from Finished; "work until the
// piece measures" comes from Worked. Only Finished must be given; a Worked or
// Hung that is left out (its zero value) is taken as no different from it.
type Fabric struct {
	Worked   Gauge `json:"worked,omitzero"` // on the hook, before washing
	Finished Gauge `json:"finished"`        // washed, blocked and dry
	Hung     Gauge `json:"hung,omitzero"`   // finished, weighted or worn until it stops stretching
}

// Growth is how much a fabric grows from one state to another, in each
// direction: 6/5 is a fifth longer, 1 no change, 19/20 a twentieth shorter.
type Growth struct {
	Width  Ratio `json:"width"`  // along the stitches of a row
	Length Ratio `json:"length"` // across the rows
}

// Explain says what happens to the fabric: "3.6 % wider and 4.3 % shorter".
func (g Growth) Explain() string {
	return grown(g.Width, "wider", "narrower", "as wide") + " and " + grown(g.Length, "longer", "shorter", "as long")
}

func grown(x Ratio, more, less, same string) string {
	percent := x.Sub(Int(1)).Mul(Int(100))
	switch percent.Sign() {
	case 0:
		return same
	case -1:
		return number.Text(Int(0).Sub(percent).Decimal(1)) + " % " + less
	}
	return number.Text(percent.Decimal(1)) + " % " + more
}

// Validate returns a *FieldError if Finished is not valid, or another gauge is
// given and not valid.
func (f Fabric) Validate() error {
	if err := f.Finished.Validate(); err != nil {
		return InField("Fabric.Finished", err)
	}
	if f.Worked.given() {
		if err := f.Worked.Validate(); err != nil {
			return InField("Fabric.Worked", err)
		}
	}
	if f.Hung.given() {
		if err := f.Hung.Validate(); err != nil {
			return InField("Fabric.Hung", err)
		}
	}
	return nil
}

// given reports whether g is anything but the zero value.
func (g Gauge) given() bool { return g.Stitches.given() || g.Rows.given() }

func (o Over) given() bool { return o.Of != 0 || !o.Count.IsZero() || o.Span.given() }

func (l Length) given() bool { return l.Unit != 0 || !l.Value.IsZero() }

// Growth returns how the fabric grows from the hook to the finished state:
// worked gauge over finished gauge in each direction. It returns the error of
// Validate.
func (f Fabric) Growth() (Growth, error) {
	if err := f.Validate(); err != nil {
		return Growth{}, err
	}
	if !f.Worked.given() {
		return Growth{Int(1), Int(1)}, nil
	}
	return grow(f.Worked, f.Finished), nil
}

// Hang returns how the finished fabric grows when it hangs. It returns the
// error of Validate.
func (f Fabric) Hang() (Growth, error) {
	if err := f.Validate(); err != nil {
		return Growth{}, err
	}
	if !f.Hung.given() {
		return Growth{Int(1), Int(1)}, nil
	}
	return grow(f.Finished, f.Hung), nil
}

// grow needs both gauges valid.
func grow(from, to Gauge) Growth {
	return Growth{Width: from.Stitches.to(to.Stitches), Length: from.Rows.to(to.Rows)}
}

// to returns how long a stitch of p is, measured in stitches of o. Both valid.
func (o Over) to(p Over) Ratio {
	a, _ := o.perMM()
	b, _ := p.perMM()
	q, _ := a.Quo(b)
	return Ratio{q}
}

// WorkWidth returns what a piece measures along the stitches, on the hook, when
// it will finish at the given width. It returns the error of Validate.
func (f Fabric) WorkWidth(finished Measurement) (Measurement, error) {
	g, err := f.Growth()
	if err != nil {
		return Measurement{}, err
	}
	return finished.over(g.Width), nil
}

// WorkLength returns what a piece measures across the rows, on the hook, when it
// will finish at the given length: "work until the piece measures". It returns
// the error of Validate.
func (f Fabric) WorkLength(finished Measurement) (Measurement, error) {
	g, err := f.Growth()
	if err != nil {
		return Measurement{}, err
	}
	return finished.over(g.Length), nil
}

// over returns m / x for an x that is not 0.
func (m Measurement) over(x Ratio) Measurement {
	q, _ := m.mm.Quo(x.r)
	return Measurement{q}
}
