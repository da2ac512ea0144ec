package yarn_test

import (
	"fmt"
	"log"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/seam"
	"example.com/panelmath/yarn"
)

// A whole garment in one sitting: an open-front wrap of two panels over the
// shoulders, in three groups of sizes, from the swatch to the skeins.
func Example_openFront() {
	g := gauge.MustGauge("13 sts and 9 rows = 4 in")
	plan := panel.Plan{
		Opening: rows("fhdc", "hdc in each st across"),
		Repeat: rows("dc in first st, *ch 2, sk 2, dc in next st; rep from * across",
			"hdc in each st and 2 hdc in each ch-2 sp across", "hdc in each st across"),
	}
	ease := grade.MustEase("9 in")
	label := yarn.MustLabel("230 yd = 100 g")
	swatch := yarn.Swatch{Width: gauge.MustLength("6 in"), Height: gauge.MustLength("6 in"), Mass: yarn.MustMass("14.5 g")}
	margin, err := yarn.ParseMargin("10%")
	check(err)

	women, err := grade.Standard("women")
	check(err)
	groups, err := women.Groups([][]string{{"XS", "S"}, {"M", "L"}, {"XL", "2X"}})
	check(err)
	length, armhole, neck := gauge.MustLength("25 in"), gauge.MustLength("10 in"), gauge.MustLength("1 in")
	quarter, _ := gauge.Share(1, 4)

	// One size is plain arithmetic; grade.Map runs it over all of them.
	type size struct {
		panel panel.Panel
		sewn  seam.Garment
		yarn  yarn.Quantity
	}
	sizes, err := grade.Map(groups, func(group grade.Group) (s size, err error) {
		chest, err := group.Body(grade.Chest, gauge.Inch)
		if err != nil {
			return s, err
		}
		arm, err := group.Body(grade.UpperArm, gauge.Inch)
		if err != nil {
			return s, err
		}
		width := ease.Finished(chest.High.Measurement()).Times(quarter)
		if s.panel, err = plan.Panel(length.Measurement().Times(gauge.Int(2)), width, g); err != nil {
			return s, err
		}
		s.sewn, err = seam.OpenFront{
			Panel:    layout.Rectangle{Stitches: s.panel.Stitches.Value, Rows: s.panel.Rows.Value, Gauge: g},
			NeckDrop: neck.Measurement(), ArmholeDepth: armhole.Measurement(),
		}.Sew()
		if err != nil {
			return s, err
		}
		if err = (seam.Body{UpperArm: arm.High.Measurement()}).Check(s.sewn.Layout); err != nil {
			return s, err
		}
		fabric, err := swatch.Fabric("panels", yarn.Rectangle(s.panel.Length, s.panel.Width).Times(gauge.Int(2)), label)
		if err != nil {
			return s, err
		}
		lines := []yarn.Line{fabric}
		for _, j := range []seam.Join{s.sewn.Joins[0], s.sewn.Joins[1], s.sewn.Joins[1]} { // centre back and two sides
			line, err := yarn.WhipStitch().Seam(j.Asked.Name, j.Length)
			if err != nil {
				return s, err
			}
			lines = append(lines, line)
		}
		s.yarn, err = yarn.Buy(label, margin, lines...)
		return s, err
	})
	check(grade.NameSize(err, grade.Labels(groups)))

	fmt.Println("Sizes:", grade.Text(groups, grade.Group.Label))
	fmt.Println("Round:", grade.Text(sizes, func(s size) string { return gauge.QuarterInch.Number(s.panel.Width.Times(gauge.Int(4))) }), "in")
	fmt.Println("Stitches:", grade.Text(sizes, func(s size) string { return fmt.Sprint(s.panel.Stitches.Value) }))
	fmt.Println("Rows:", grade.Text(sizes, func(s size) string { return fmt.Sprint(s.panel.Rows.Value) }))
	fmt.Println("Centre back:", grade.Text(sizes, func(s size) string { return fmt.Sprint(s.sewn.Joins[0].Pairs) }), "pairs")
	fmt.Println("Sides:", grade.Text(sizes, func(s size) string { return fmt.Sprint(s.sewn.Joins[1].Pairs) }), "pairs")
	fmt.Println("Skeins:", grade.Text(sizes, func(s size) string { return fmt.Sprint(s.yarn.Skeins) }))
	// Output:
	// Sizes: XS–S (M–L, XL–2X)
	// Round: 41 (51½, 57) in
	// Stitches: 163
	// Rows: 23 (29, 32)
	// Centre back: 78 pairs
	// Sides: 49 pairs
	// Skeins: 5 (6, 7)
}

// rows reads rows in US terms.
func rows(texts ...string) (out []row.Row) {
	for _, s := range texts {
		out = append(out, row.Must(s, row.US))
	}
	return out
}

func check(err error) {
	if err != nil {
		log.Fatal(err)
	}
}
