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
	"example.com/panelmath/internal/text"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/seam"
	"example.com/panelmath/yarn"
)

// Garment is a brief and what follows from it.
type Garment struct {
	brief.Brief
	Sizes grade.Run[Size]

	solved panel.Solved // the plan, solved once for all sizes
}

// Size is one group of sizes: whom it fits, its pieces, where its seams stop,
// and its yarn.
type Size struct {
	Group  grade.Group
	Chest  grade.Body        // from the smallest member's low end to the largest's high end
	Arm    grade.Body        // upper arm of the largest member
	Wanted gauge.Measurement // the round asked for: chest of the largest and ease; of no meaning in a layout without ease
	Panel  panel.Panel
	Sleeve *panel.Panel
	Sewn   seam.Garment // the layout, and how its pairs came about
	Yarn   yarn.Quantity
}

// Eased reports whether the layout is made to a round: chest and ease.
func (g Garment) Eased() bool { return g.Layout != brief.Cocoon && g.Layout != brief.Poncho }

// Join returns how a seam came about: "side". A layout without it has none.
func (s Size) Join(name string) (seam.Join, bool) {
	for _, j := range s.Sewn.Joins {
		if j.Asked.Name == name {
			return j, true
		}
	}
	return seam.Join{}, false
}

// Measure returns a finished measure of the layout: "armhole depth". A layout
// without it has nothing.
func (s Size) Measure(name string) gauge.Measurement {
	m, _ := s.Sewn.Layout.Measure(name)
	return m
}

// seams is how long all seams are together.
func (s Size) seams() (sum gauge.Measurement) {
	all, _ := s.Sewn.Layout.Seams() // it was sewn
	for _, sewn := range all {
		sum = sum.Add(sewn.Length())
	}
	return sum
}

// Make works out every size of the brief. Its error is a *brief.Error that
// names the field and the size.
func Make(b brief.Brief) (Garment, error) {
	solved, err := b.Plan.Solve()
	if err != nil {
		return Garment{}, brief.Because("rows", err)
	}
	g := Garment{Brief: b, solved: solved}
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

// Only returns the garment in one size, named by its label with an en dash or a
// hyphen. Its error names the labels there are.
func (g Garment) Only(label string) (Garment, error) {
	var labels []string
	for i, s := range g.Sizes {
		name := s.Group.Label()
		if label == name || label == strings.ReplaceAll(name, "–", "-") {
			g.Groups, g.Sizes = g.Groups[i:i+1], g.Sizes[i:i+1]
			return g, nil
		}
		labels = append(labels, name)
	}
	return Garment{}, &brief.Error{Field: "size", Cause: fmt.Sprintf("got %s, want %s", text.Quote(label), strings.Join(labels, ", "))}
}

func (g Garment) size(i int) (s Size, fault *brief.Error) {
	var err error
	s.Group = g.Groups[i]
	if s.Chest, err = s.Group.Body(grade.Chest, g.Units); err != nil {
		return Size{}, brief.Because("sizes", err)
	}
	if s.Arm, err = g.arm(s.Group); err != nil {
		return Size{}, brief.Because("sizes", err)
	}
	if s.Wanted = g.Ease.Finished(s.Chest.High.Measurement()); g.Eased() && s.Wanted.Sign() <= 0 {
		return Size{}, brief.Because("ease", errors.New("leaves nothing of the chest's "+s.Chest.High.String()))
	}
	if fault = g.build(&s, i); fault != nil {
		return Size{}, fault
	}
	if fault = g.fits(s, i); fault != nil {
		return Size{}, fault
	}
	if s.Yarn, err = g.yarn(s); err != nil {
		return Size{}, brief.Because("yarn", err)
	}
	return s, nil
}

// arm returns the upper arm of the largest member of a group. A chart may print
// it in one unit only; the arm is compared with the armhole and enters no number,
// so the other column will do where its own has none.
func (g Garment) arm(group grade.Group) (grade.Body, error) {
	b, err := group.Chart.Body(group.Largest(), grade.UpperArm, g.Units)
	if errors.Is(err, grade.ErrNoCell) {
		other := gauge.Inch
		if g.Units == gauge.Inch {
			other = gauge.Centimetre
		}
		return group.Chart.Body(group.Largest(), grade.UpperArm, other)
	}
	return b, err
}

// piece returns the panel nearest to a length and a width of the garment, and
// the rectangle it makes. The rows run along the length, or across it.
func (g Garment) piece(length, width gauge.Measurement) (p panel.Panel, r layout.Rectangle, err error) {
	if g.Crosswise {
		length, width = width, length
	}
	if p, err = g.solved.Panel(length, width, g.Fabric.Finished); err != nil {
		return p, r, err
	}
	// Rows that fix their count (fhdc 101) must fix the one that is asked for.
	if n := p.Stitches; n.Rule.Multiple == gauge.MaxCount && n.Off().Mul(n.Off()).Cmp(gauge.Int(1)) >= 0 {
		return p, r, fmt.Errorf("%s sts long, and the rows fix %d", n.Exact.Decimal(1), n.Value)
	}
	if n := p.Stitches; n.Exact.Sign() <= 0 {
		return p, r, tooShort(n)
	}
	return p, layout.Rectangle{Stitches: p.Stitches.Value, Rows: p.Rows.Value, Gauge: g.Fabric.Finished, Crosswise: g.Crosswise}, nil
}

// Short returns why a panel is too short for its rows: the smallest count that
// works every repeat is further from what was asked than half a repeat. A designer
// is told by Remarks; a maker cannot change the rows.
func (s Size) Short() error {
	if n := s.Panel.Stitches; n.Off().Mul(gauge.Int(2)).Cmp(gauge.Int(max(n.Rule.Multiple, 1))) > 0 {
		return tooShort(n)
	}
	return nil
}

func tooShort(n gauge.Count) error {
	return fmt.Errorf("%s sts long, and the rows need at least %d", n.Exact.Decimal(1), n.Value)
}

// yarn adds up the fabric of the pieces and the seams, each with its two ends.
func (g Garment) yarn(s Size) (yarn.Quantity, error) {
	var lines []yarn.Line
	add := func(l yarn.Line, err error) error {
		lines = append(lines, l)
		return err
	}
	if err := add(g.fabric(g.panels(), s.Panel)); err != nil {
		return yarn.Quantity{}, err
	}
	if s.Sleeve != nil {
		if err := add(g.fabric("two sleeves", *s.Sleeve)); err != nil {
			return yarn.Quantity{}, err
		}
	}
	seams, err := s.Sewn.Layout.Seams()
	if err != nil {
		return yarn.Quantity{}, err
	}
	for _, sewn := range seams {
		if err := add(g.Yarn.Sewing.Seam(sewn.Name, sewn.Length())); err != nil {
			return yarn.Quantity{}, err
		}
	}
	return yarn.Buy(g.Yarn.Label, g.Yarn.Margin, lines...)
}
