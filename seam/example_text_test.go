package seam_test

import (
	"fmt"
	"log"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/seam"
)

// shawl is a cocoon in one size.
func shawl() grade.Run[seam.Garment] {
	p := layout.Rectangle{Stitches: 100, Rows: 60, Gauge: gauge.MustGauge("12 sts and 9 rows = 4 in")}
	g, err := seam.Cocoon{Panel: p, ArmholeDepth: gauge.MustLength("8 in").Measurement()}.Sew()
	if err != nil {
		log.Fatal(err)
	}
	return grade.Run[seam.Garment]{g}
}

func ExampleFinishing_Write() {
	text, err := seam.Finishing{Blocking: "Wet the panel and pin it out."}.Write(shawl())
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(text.Blocking)
	for _, s := range text.Joining[:2] {
		fmt.Println(s)
	}
	// Output:
	// Wet the panel and pin it out.
	// Join every seam in whip stitch, the right side facing you; another kind of seam takes another length of yarn.
	// Lay the panel flat, right side down, and fold it at the middle so that the open edges meet, right side out. The fold lies 50 sts from either of them. Pin.
}

func ExampleText_Steps() {
	text := seam.Text{Blocking: "Block.", Tails: []string{"Leave 20 in."}, Joining: []string{"Join 26 pairs."}, Ending: []string{"Weave in."}}
	for i, s := range text.Steps() {
		fmt.Println(i+1, s)
	}
	// Output:
	// 1 Block.
	// 2 Leave 20 in.
	// 3 Join 26 pairs.
	// 4 Weave in.
}

// Where more is passed over than joined, the step says how much after each pair:
// 104 sts of the long side take 36 row ends of the short one.
func ExampleFinishing_Write_steep() {
	p := layout.Rectangle{Stitches: 180, Rows: 36, Gauge: gauge.MustGauge("26 sts and 9 rows = 4 in")}
	g, err := seam.Poncho{Panel: p}.Sew()
	if err != nil {
		log.Fatal(err)
	}
	text, err := seam.Finishing{}.Write(grade.Run[seam.Garment]{g})
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(text.Joining[2])
	// Output:
	// First seam: count 104 sts down the right edge of the second panel from its top corner and place a marker. Join the whole bottom end of the first panel, 36 row ends, to this stretch, one to one, and on the side that has more pass over 68 of the 104, spread evenly: 1–2 after each pair.
}
