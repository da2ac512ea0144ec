package main

import (
	"fmt"

	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/examples/internal/garment"
	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/seam"
)

// follow returns the garment that comes out at another gauge when every count
// and every pair of the pattern is left as it is.
func follow(g seam.Garment, mine gauge.Gauge) (layout.Layout, error) {
	pieces := g.Layout.Pieces
	rectangle := func(p layout.Piece) layout.Rectangle {
		return layout.Rectangle{Stitches: p.Stitches, Rows: p.Rows, Gauge: mine, Crosswise: p.Foundation == layout.Bottom}
	}
	joins := map[string]seam.Join{}
	for _, j := range g.Joins {
		joins[j.Asked.Name] = j
	}
	body, side := rectangle(pieces[0]), joins["side"]
	switch g.Layout.Name {
	case "open front":
		return layout.OpenFront{Panel: body, CentreBack: joins["centre back"].Pairs, Side: side.Pairs, Slit: side.Start}.Layout()
	case "closed front":
		return layout.ClosedFront{Panel: body, CentreBack: joins["centre back"].Pairs, CentreFront: joins["centre front"].Pairs, Side: side.Pairs, Slit: side.Start}.Layout()
	case "front and back":
		f := layout.FrontAndBack{Panel: body, Shoulder: joins["shoulder"].Pairs, Side: side.Pairs, Slit: side.Start}
		if len(pieces) > 2 {
			sleeve := rectangle(pieces[2])
			f.Sleeve = &sleeve
			l, err := f.Layout()
			return l, unlike(err, edge{"the sleeve at its top", sleeve.Across(), sleeve.Wide()}, edge{"the armhole", body.Along(), 2 * (body.Long() - f.Side - f.Slit)})
		}
		return f.Layout()
	case "cocoon":
		return layout.Cocoon{Panel: body, Side: side.Pairs}.Layout()
	case "poncho":
		l, err := layout.Poncho{Panel: body, Side: joins["seam"].Pairs}.Layout()
		return l, unlike(err, edge{"the short end of a panel", body.Across(), body.Wide()}, edge{"the part of the long side that takes it", body.Along(), joins["seam"].Pairs})
	}
	return layout.Layout{}, fmt.Errorf("layout: %s at another gauge is not worked out", g.Layout.Name)
}

// unfit returns what a wearer of a size could not put on, or nothing: the
// wearer of the size chart and of the brief, or she herself where she gives her
// measures. The brief is the one that has the size at the place i.
func (q question) unfit(b brief.Brief, i int, s garment.Size, l layout.Layout) error {
	body := seam.Body{UpperArm: s.Arm.High.Measurement(), Head: b.At("head", i), NeckStretch: b.NeckStretch}
	if q.given(q.arm) {
		body.UpperArm = q.arm.Measurement()
	}
	if q.given(q.head) {
		body.Head = q.head.Measurement()
	}
	if back, err := s.Group.Body(grade.CrossBack, b.Units); err == nil {
		body.Shoulders = back.High.Measurement()
	}
	body.SleeveEnd = body.UpperArm
	return body.Check(l)
}
