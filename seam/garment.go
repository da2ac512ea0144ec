package seam

import (
	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/seam/internal/say"
	"example.com/panelmath/seam/spread"
)

// Garment is one size of a ready garment: its layout, and how the pairs of its
// seams came about.
type Garment struct {
	Layout layout.Layout `json:"layout"`
	Joins  []Join        `json:"joins"` // one of each kind of seam, in the order in which they are sewn
}

// OpenFront asks for an open front by its openings: two panels over the
// shoulders, joined up the centre back and at the sides. The panels come from
// the counts, so that round and length are those of the rectangle.
type OpenFront struct {
	Panel        layout.Rectangle  `json:"panel"`
	NeckDrop     gauge.Measurement `json:"neck_drop"`     // from the fold down to where the centre back seam stops
	ArmholeDepth gauge.Measurement `json:"armhole_depth"` // from the fold down
	Slit         gauge.Measurement `json:"slit"`          // from the hem up, at each side
}

// Sew returns the garment with every opening at least as large as asked.
//
// It returns a *gauge.FieldError if the panel is not valid, or an opening is
// negative or leaves not one pair (ErrNoPair).
func (o OpenFront) Sew() (Garment, error) {
	if err := o.Panel.Validate(); err != nil {
		return Garment{}, gauge.InField("Panel", err)
	}
	back, err := along(o.Panel, "centre back", o.NeckDrop, gauge.Measurement{})
	if err != nil {
		return Garment{}, gauge.InField("centre back", err)
	}
	side, err := along(o.Panel, "side", o.ArmholeDepth, o.Slit)
	if err != nil {
		return Garment{}, gauge.InField("side", err)
	}
	l, err := layout.OpenFront{Panel: o.Panel, CentreBack: back.Pairs, Side: side.Pairs, Slit: side.Start}.Layout()
	return finish(l, err, back, side)
}

// ClosedFront asks for an open front that is joined in front as well, up to
// the neck.
type ClosedFront struct {
	Panel        layout.Rectangle  `json:"panel"`
	NeckDrop     gauge.Measurement `json:"neck_drop"`  // at the back, from the fold down
	NeckDepth    gauge.Measurement `json:"neck_depth"` // in front, from the fold down
	ArmholeDepth gauge.Measurement `json:"armhole_depth"`
	Slit         gauge.Measurement `json:"slit"`
}

// Sew returns the garment; see OpenFront.Sew.
func (c ClosedFront) Sew() (Garment, error) {
	if err := c.Panel.Validate(); err != nil {
		return Garment{}, gauge.InField("Panel", err)
	}
	back, err := along(c.Panel, "centre back", c.NeckDrop, gauge.Measurement{})
	if err != nil {
		return Garment{}, gauge.InField("centre back", err)
	}
	front, err := along(c.Panel, "centre front", c.NeckDepth, gauge.Measurement{})
	if err != nil {
		return Garment{}, gauge.InField("centre front", err)
	}
	side, err := along(c.Panel, "side", c.ArmholeDepth, c.Slit)
	if err != nil {
		return Garment{}, gauge.InField("side", err)
	}
	l, err := layout.ClosedFront{Panel: c.Panel, CentreBack: back.Pairs, CentreFront: front.Pairs, Side: side.Pairs, Slit: side.Start}.Layout()
	return finish(l, err, back, front, side)
}

// FrontAndBack asks for two equal panels joined at shoulders and sides. A neck
// of two rectangles is a slit: twice its width round.
type FrontAndBack struct {
	Panel        layout.Rectangle  `json:"panel"`
	NeckWidth    gauge.Measurement `json:"neck_width"`
	ArmholeDepth gauge.Measurement `json:"armhole_depth"` // from the shoulder down; nothing leaves the sides open
	Slit         gauge.Measurement `json:"slit"`
	Sleeve       *layout.Rectangle `json:"sleeve,omitempty"`
}

// Sew returns the garment; see OpenFront.Sew. The shoulders are rounded down,
// so that the neck is at least as wide as asked and lies in the middle.
//
// It also returns a *gauge.FieldError if there is a sleeve and no armhole
// depth, or the sleeve is too unlike the armhole to be eased in.
func (f FrontAndBack) Sew() (Garment, error) {
	if err := f.Panel.Validate(); err != nil {
		return Garment{}, gauge.InField("Panel", err)
	}
	half, _ := gauge.Share(1, 2)
	shoulder, err := Seam{Name: "shoulder", Count: f.Panel.Wide(), Gauge: f.Panel.Across(), RowEnds: !f.Panel.Crosswise,
		Across: true, Opening: f.NeckWidth.Times(half)}.Join()
	if err != nil {
		return Garment{}, gauge.InField("shoulder", err)
	}
	want := layout.FrontAndBack{Panel: f.Panel, Shoulder: shoulder.Pairs, Sleeve: f.Sleeve}
	joins := []Join{shoulder}
	if f.ArmholeDepth.Sign() != 0 || f.Slit.Sign() != 0 || f.Sleeve != nil {
		side, err := Seam{Name: "side", Count: f.Panel.Long(), Gauge: f.Panel.Along(), RowEnds: f.Panel.Crosswise, ToTop: true,
			Opening: f.ArmholeDepth, Slit: f.Slit}.Join()
		if err != nil {
			return Garment{}, gauge.InField("side", err)
		}
		want.Side, want.Slit = side.Pairs, side.Start
		joins = append(joins, side)
	}
	l, err := want.Layout()
	return finish(l, err, joins...)
}

// Cocoon asks for one rectangle folded at the middle of its length and joined
// at the sides, the armholes at the fold.
type Cocoon struct {
	Panel        layout.Rectangle  `json:"panel"`
	ArmholeDepth gauge.Measurement `json:"armhole_depth"` // from the fold
}

// Sew returns the garment; see OpenFront.Sew.
func (c Cocoon) Sew() (Garment, error) {
	if err := c.Panel.Validate(); err != nil {
		return Garment{}, gauge.InField("Panel", err)
	}
	side, err := along(c.Panel, "side", c.ArmholeDepth, gauge.Measurement{})
	if err != nil {
		return Garment{}, gauge.InField("side", err)
	}
	l, err := layout.Cocoon{Panel: c.Panel, Side: side.Pairs}.Layout()
	return finish(l, err, side)
}

// Poncho asks for two equal rectangles, the short end of each joined to the
// long side of the other.
type Poncho struct {
	Panel layout.Rectangle `json:"panel"`
}

// Sew returns the garment. The stretch of the long side that takes the short
// end is rounded down, so that the neck is no smaller than twice the
// difference of the two.
//
// It returns a *gauge.FieldError if the panel is not valid or no longer than it
// is wide, so that no neck is left.
func (p Poncho) Sew() (Garment, error) {
	if err := p.Panel.Validate(); err != nil {
		return Garment{}, gauge.InField("Panel", err)
	}
	long, err := p.Panel.Along().Measure(gauge.Int(p.Panel.Long()))
	if err != nil {
		return Garment{}, err
	}
	wide, err := p.Panel.Across().Measure(gauge.Int(p.Panel.Wide()))
	if err != nil {
		return Garment{}, err
	}
	if long.Cmp(wide) <= 0 {
		return Garment{}, &gauge.FieldError{Field: "Panel", Got: say.Length(long) + " long and " + say.Length(wide) + " wide", Want: "longer than wide, so that a neck is left", Err: layout.ErrLayout}
	}
	side, err := Seam{Name: "seam", Count: p.Panel.Long(), Gauge: p.Panel.Along(), RowEnds: p.Panel.Crosswise, ToTop: true,
		Across: true, Opening: long.Sub(wide)}.Join()
	if err != nil {
		return Garment{}, gauge.InField("seam", err)
	}
	l, err := layout.Poncho{Panel: p.Panel, Side: side.Pairs}.Layout()
	return finish(l, err, side)
}

// along joins the folded long edge of a panel.
func along(r layout.Rectangle, name string, opening, slit gauge.Measurement) (Join, error) {
	return Seam{Name: name, Count: r.Long(), Gauge: r.Along(), RowEnds: r.Crosswise, Opening: opening, Slit: slit}.Join()
}

func finish(l layout.Layout, err error, joins ...Join) (Garment, error) {
	if err != nil {
		return Garment{}, err
	}
	return Garment{Layout: l, Joins: joins}, nil
}

// MatchSeam returns the plan by which the two sides of a seam meet: the
// smaller number spread over the larger, mirrored. Where both are equal it is
// one to one.
func MatchSeam(s layout.Seam) spread.Match {
	a, b := s.Sides[0].Count, s.Sides[1].Count
	return spread.Match{From: max(a, b), Take: min(a, b), Mirrored: true}
}
