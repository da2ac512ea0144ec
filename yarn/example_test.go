package yarn_test

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
)

// How much yarn for one size of a wrap: two panels by the swatch, three sewn
// seams, and a margin of a tenth.
func Example() {
	label := yarn.MustLabel("230 yd = 100 g")
	swatch := yarn.Swatch{Width: gauge.MustLength("6 in"), Height: gauge.MustLength("6 in"), Mass: yarn.MustMass("14.5 g")}
	g := gauge.MustGauge("13 sts and 9 rows = 4 in")

	length, _ := g.Stitches.Measure(gauge.Int(163))
	width, _ := g.Rows.Measure(gauge.Int(35))
	fabric, err := swatch.Fabric("two panels", yarn.Rectangle(length, width).Times(gauge.Int(2)), label)
	if err != nil {
		fmt.Println(err)
		return
	}
	sewing := yarn.WhipStitch() // 2.5 times the seam, 6 in at each end
	back, _ := sewing.Seam("centre back", gauge.MustLength("23 in").Measurement())
	left, _ := sewing.Seam("left side", gauge.MustLength("15 in").Measurement())
	right, _ := sewing.Seam("right side", gauge.MustLength("15 in").Measurement())

	q, err := yarn.Buy(label, yarn.MustMargin("10%"), fabric, back, left, right)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, sentence := range q.Explain() {
		fmt.Println(sentence)
	}
	fmt.Println(q.Skeins, "skeins")
	// Output:
	// two panels: about 1560.34 sq in at 14.5 g for 36 sq in weighs about 628.47 g, at 230 yd = 100 g that is about 1445.48 yd of yarn
	// centre back: 23 in times 2.5 and twice 6 in for the ends is 69.5 in
	// left side: 15 in times 2.5 and twice 6 in for the ends is 49.5 in
	// right side: 15 in times 2.5 and twice 6 in for the ends is 49.5 in
	// margin: 10% of about 1450.16 yd is about 145.02 yd
	// total: about 1595.18 yd, which weighs about 693.56 g at 230 yd = 100 g
	// skeins: about 6.94, rounded up to 7, about 14.82 yd left
	// 7 skeins
}
