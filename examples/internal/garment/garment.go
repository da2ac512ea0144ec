// Package garment composes a brief into a garment: every number of every size,
// through the five packages of the library.
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
	"example.com/panelmath/yarn"
)

// Garment is a brief and what follows from it.
type Garment struct {
	brief.Brief
	Sizes grade.Run[Size]
}

// Size is one group of sizes: whom it fits, one of its two panels, where its
// seams stop, and its yarn.
type Size struct {
	Group  grade.Group
	Chest  grade.Body        // from the smallest member's low end to the largest's high end
	Arm    grade.Body        // upper arm, likewise
	Wanted gauge.Measurement // the round asked for: chest of the largest and ease
	Panel  panel.Panel
	Sewn   seam.Garment // the layout, and how its pairs came about
	Yarn   yarn.Quantity
}

// Back is the centre back seam, Side each of the two side seams.
func (s Size) Back() seam.Join { return s.Sewn.Joins[0] }
func (s Size) Side() seam.Join { return s.Sewn.Joins[1] }

// Length returns the finished length from shoulder to hem: half a panel.
func (s Size) Length() gauge.Measurement { return s.Panel.Length.Times(half()) }

// Round returns the finished measurement round the body: four panel widths.
func (s Size) Round() gauge.Measurement { return s.Panel.Width.Times(gauge.Int(4)) }

func half() gauge.Ratio {
	h, _ := gauge.Share(1, 2)
	return h
}

// Make works out every size of the brief. Its error is a *brief.Error that
// names the field and the size.
func Make(b brief.Brief) (Garment, error) {
	g := Garment{Brief: b}
	for i := range b.Groups {
		s, err := g.size(i)
		if err != nil {
			err.Size = b.Groups[i].Label()
			return Garment{}, err
		}
		g.Sizes = append(g.Sizes, s)
	}
	return g, nil
}

func (g Garment) size(i int) (s Size, fault *brief.Error) {
	fail := func(field string, err error) (Size, *brief.Error) { return Size{}, brief.Because(field, err) }
	var err error
	s.Group = g.Groups[i]
	if s.Chest, err = s.Group.Body(grade.Chest, g.Units); err != nil {
		return fail("sizes", err)
	}
	if s.Arm, err = g.arm(s.Group); err != nil {
		return fail("sizes", err)
	}

	// The panel: a quarter of the round wide, twice the length long.
	s.Wanted = g.Ease.Finished(s.Chest.High.Measurement())
	if s.Wanted.Sign() <= 0 {
		return fail("ease", errors.New("leaves nothing of the chest's "+s.Chest.High.String()))
	}
	quarter, _ := gauge.Share(1, 4)
	width, length := s.Wanted.Times(quarter), g.Length[i].Measurement().Times(gauge.Int(2))
	if s.Panel, err = g.Plan.Panel(length, width, g.Fabric.Finished); err != nil {
		return fail("length", err)
	}
	// Where the smallest count that works every repeat is not the nearest, the
	// garment is too short for its rows.
	if n := s.Panel.Stitches; n.Off().Mul(gauge.Int(2)).Cmp(gauge.Int(max(n.Rule.Multiple, 1))) > 0 {
		return fail("length", fmt.Errorf("%s sts long, and the rows need at least %d", n.Exact.Decimal(1), n.Value))
	}

	// The seams: from either hem up, open below the fold for neck and arms.
	rectangle := layout.Rectangle{Stitches: s.Panel.Stitches.Value, Rows: s.Panel.Rows.Value, Gauge: g.Fabric.Finished}
	s.Sewn, err = seam.OpenFront{Panel: rectangle, NeckDrop: g.NeckDrop[i].Measurement(), ArmholeDepth: g.ArmholeDepth[i].Measurement()}.Sew()
	var wrong *gauge.FieldError
	switch {
	case errors.As(err, &wrong) && strings.HasPrefix(wrong.Field, "centre back"):
		return fail("neck_drop", err)
	case err != nil:
		return fail("armhole_depth", err)
	}
	if err = (seam.Body{UpperArm: s.Arm.High.Measurement()}).Check(s.Sewn.Layout); err != nil {
		return fail("armhole_depth", err)
	}
	if s.Yarn, err = g.yarn(s); err != nil {
		return fail("yarn", err)
	}
	return s, nil
}

// arm returns the upper arm of a group. A chart may print it in one unit only;
// the arm is compared with the armhole and enters no number, so the other
// column will do.
func (g Garment) arm(group grade.Group) (grade.Body, error) {
	b, err := group.Body(grade.UpperArm, g.Units)
	if errors.Is(err, grade.ErrNoCell) {
		other := gauge.Inch
		if g.Units == gauge.Inch {
			other = gauge.Centimetre
		}
		return group.Body(grade.UpperArm, other)
	}
	return b, err
}

func (g Garment) yarn(s Size) (yarn.Quantity, error) {
	area := yarn.Rectangle(s.Panel.Length, s.Panel.Width).Times(gauge.Int(2))
	fabric, err := g.Yarn.Swatch.Fabric("two panels", area, g.Yarn.Label)
	if err != nil {
		return yarn.Quantity{}, err
	}
	lines := []yarn.Line{fabric}
	for _, sewn := range []struct {
		name string
		join seam.Join
	}{{"centre back seam", s.Back()}, {"first side seam", s.Side()}, {"second side seam", s.Side()}} {
		line, err := g.Yarn.Sewing.Seam(sewn.name, sewn.join.Length)
		if err != nil {
			return yarn.Quantity{}, err
		}
		lines = append(lines, line)
	}
	return yarn.Buy(g.Yarn.Label, g.Yarn.Margin, lines...)
}
