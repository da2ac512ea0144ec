package seam_test

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/seam"
)

// A closed front in three sizes: from the counts of the panels and the openings
// that are wanted to pairs, finished measures and a check against the bodies.
func Example() {
	type size struct {
		label          string
		stitches, rows int
		armhole        string
		body           seam.Body
	}
	in := func(s string) gauge.Measurement { return gauge.MustLength(s).Measurement() }
	head := in("21 1/2 in")
	sizes := grade.Run[size]{
		{"S", 160, 24, "8 in", seam.Body{UpperArm: in("10 1/4 in"), ArmEase: in("3 in"), Head: head}},
		{"M", 163, 27, "8 1/2 in", seam.Body{UpperArm: in("11 in"), ArmEase: in("3 in"), Head: head}},
		{"L", 166, 30, "8 1/2 in", seam.Body{UpperArm: in("15 in"), ArmEase: in("3 in"), Head: head}},
	}
	garments, err := grade.Map(sizes, func(s size) (seam.Garment, error) {
		return seam.ClosedFront{
			Panel:        layout.Rectangle{Stitches: s.stitches, Rows: s.rows, Gauge: gauge.MustGauge("13 sts and 9 rows = 4 in")},
			NeckDrop:     in("1 in"),
			NeckDepth:    in("9 1/2 in"),
			ArmholeDepth: in(s.armhole),
		}.Sew()
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for i, name := range []string{"centre back", "centre front", "side"} {
		fmt.Printf("%-13s join %s pairs\n", name, grade.Text(garments, func(g seam.Garment) string { return fmt.Sprint(g.Joins[i].Pairs) }))
	}
	for _, name := range []string{"round", "length", "armhole depth", "neck round"} {
		fmt.Printf("%-13s %s in\n", name, grade.Text(garments, func(g seam.Garment) string {
			m, _ := g.Layout.Measure(name)
			return gauge.QuarterInch.Number(m)
		}))
	}
	labels, _ := grade.Map(sizes, func(s size) (string, error) { return s.label, nil })
	bodies, _ := grade.Map(sizes, func(s size) (seam.Body, error) { return s.body, nil })
	fmt.Println(seam.CheckSizes(labels, garments, bodies))
	// Output:
	// centre back   join 76 (78, 79) pairs
	// centre front  join 49 (50, 52) pairs
	// side          join 54 (53, 55) pairs
	// round         42¾ (48, 53¼) in
	// length        24½ (25, 25½) in
	// armhole depth 8 (8¾, 8½) in
	// neck round    21½ in
	// size L: armhole round: got 17.231 in (43.766 cm), want at least 18 in (45.72 cm) for the upper arm and its ease
}
