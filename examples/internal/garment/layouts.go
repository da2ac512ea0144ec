package garment

import (
	"errors"
	"fmt"
	"strings"

	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/seam"
)

// build works out the pieces of a size and sews them. The arithmetic of each
// layout is told in the README of the pattern program.
func (g Garment) build(s *Size, i int) (fault *brief.Error) {
	at := func(field string) gauge.Measurement { return g.At(field, i) }
	length, width := at("length").Times(gauge.Int(2)), at("width")
	switch g.Layout {
	case brief.OpenFront, brief.ClosedFront:
		width = s.Wanted.Times(share(1, 4))
	case brief.FrontAndBack:
		length, width = at("length"), s.Wanted.Times(share(1, 2))
	case brief.Poncho:
		return g.poncho(s, width, at("neck_round"))
	}
	p, r, err := g.piece(length, width)
	if err != nil {
		return brief.Because("length", err)
	}
	s.Panel = p
	switch g.Layout {
	case brief.ClosedFront:
		s.Sewn, err = seam.ClosedFront{Panel: r, NeckDrop: at("neck_drop"), NeckDepth: at("neck_depth"), ArmholeDepth: at("armhole_depth"), Slit: at("hem_slit")}.Sew()
	case brief.FrontAndBack:
		f := seam.FrontAndBack{Panel: r, NeckWidth: at("neck_width"), ArmholeDepth: at("armhole_depth"), Slit: at("hem_slit")}
		if s.Sewn, err = f.Sew(); err == nil && g.Given("sleeve_length") {
			// The sleeve is as wide as the armhole came out, both sides of it.
			piece, rectangle, wrong := g.piece(at("sleeve_length"), s.Measure("armhole depth").Times(gauge.Int(2)))
			if wrong != nil {
				return brief.Because("sleeve_length", wrong)
			}
			s.Sleeve, f.Sleeve = &piece, &rectangle
			s.Sewn, err = f.Sew()
		}
	case brief.Cocoon:
		s.Sewn, err = seam.Cocoon{Panel: r, ArmholeDepth: at("armhole_depth")}.Sew()
	default:
		s.Sewn, err = seam.OpenFront{Panel: r, NeckDrop: at("neck_drop"), ArmholeDepth: at("armhole_depth"), Slit: at("hem_slit")}.Sew()
	}
	if short := s.Short(); err != nil && short != nil {
		return brief.Because("length", short)
	}
	if err != nil {
		return brief.Because(sewnField(err), err)
	}
	return nil
}

// sewnField returns the field of the brief that a seam comes from.
func sewnField(err error) string {
	var wrong *gauge.FieldError
	if !errors.As(err, &wrong) {
		return "layout"
	}
	for prefix, field := range map[string]string{"centre back": "neck_drop", "centre front": "neck_depth", "shoulder": "neck_width", "side": "armhole_depth", "Sleeve": "sleeve_length",
		"CentreBack": "neck_drop", "CentreFront": "neck_depth", "Shoulder": "neck_width", "Side": "armhole_depth", "Slit": "hem_slit"} {
		if strings.HasPrefix(wrong.Field, prefix) {
			if strings.HasSuffix(wrong.Field, "Slit") {
				return "hem_slit"
			}
			return field
		}
	}
	return "length"
}

// poncho makes two equal rectangles that are longer than wide by half the neck.
// Counts go to the nearest; where that leaves the neck smaller than asked, the
// length goes to the next.
func (g Garment) poncho(s *Size, width, neck gauge.Measurement) *brief.Error {
	length := width.Add(neck.Times(share(1, 2)))
	for range 3 {
		p, r, err := g.piece(length, width)
		if err != nil {
			return brief.Because("width", err)
		}
		s.Panel = p
		if s.Sewn, err = (seam.Poncho{Panel: r}).Sew(); err == nil && s.Measure("neck round").Cmp(neck) >= 0 {
			return nil
		} else if err != nil && !errors.Is(err, layout.ErrLayout) {
			return brief.Because("neck_round", err)
		}
		if c := p.Stitches; !g.Crosswise && c.Rule.Multiple == gauge.MaxCount {
			return brief.Because("neck_round", fmt.Errorf("comes out at %s, less than asked, and the rows fix %d sts", g.one(s.Measure("neck round")), c.Value))
		}
		length = length.Add(step(p, g.Crosswise))
	}
	return brief.Because("neck_round", errors.New("no counts near it leave a neck as large"))
}

// step returns how much longer the next legal count makes a panel.
func step(p panel.Panel, crosswise bool) gauge.Measurement {
	c := p.Stitches
	if crosswise {
		c = p.Rows
	}
	return c.Each.Times(gauge.Int(max(c.Rule.Multiple, 1)))
}

// fits checks that a person can put the garment on and that it stays on.
func (g Garment) fits(s Size, i int) *brief.Error {
	body := seam.Body{UpperArm: s.Arm.High.Measurement(), Head: g.At("head", i), NeckStretch: g.NeckStretch, SleeveEnd: s.Arm.High.Measurement()}
	if back, err := s.Group.Body(grade.CrossBack, g.Units); err == nil {
		body.Shoulders = back.High.Measurement()
	}
	err := body.Check(s.Sewn.Layout)
	var fit *seam.FitError
	switch {
	case err == nil:
		return nil
	case !errors.As(err, &fit):
		return brief.Because("armhole_depth", err)
	}
	field := "armhole_depth"
	if strings.Contains(fit.Part, "neck") {
		field = map[brief.Layout]string{brief.ClosedFront: "neck_depth", brief.FrontAndBack: "neck_width", brief.Poncho: "neck_round"}[g.Layout]
	}
	return brief.Because(field, fit)
}

func share(n, d int) gauge.Ratio {
	r, _ := gauge.Share(n, d)
	return r
}
