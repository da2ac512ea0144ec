package gauge_test

import (
	"fmt"

	"example.com/panelmath/gauge"
)

// From a finished gauge and a chest in three sizes to stitches: the back of a
// top is half the chest and two inches of ease, in a multiple of 4 + 2.
func Example() {
	g, err := gauge.ParseGauge("13 sts and 9 rows = 4 in")
	if err != nil {
		fmt.Println(err)
		return
	}
	half, _ := gauge.Share(1, 2)
	ease := gauge.MustLength("2 in").Measurement()
	for _, chest := range []string{"34 in", "38½ in", "44 in"} {
		width := gauge.MustLength(chest).Measurement().Add(ease).Times(half)
		c, err := g.StitchesIn(width, gauge.Rule{Multiple: 4, Plus: 2})
		if err != nil {
			fmt.Println(err)
			return
		}
		made, _ := g.Width(c.Value)
		fmt.Printf("%s: %d sts, %s [%s]\n", chest, c.Value, gauge.QuarterInch.Text(made), gauge.HalfCentimetre.Text(made))
		fmt.Println("   ", c.Explain())
	}
	// Output:
	// 34 in: 58 sts, 17¾ in [45.5 cm]
	//     58.5 stitches lie between 58 (about ⅛ in narrower) and 62 (about 1⅛ in wider), multiple of 4 + 2: the nearest is 58
	// 38½ in: 66 sts, 20¼ in [51.5 cm]
	//     about 65.813 stitches lie between 62 (about 1⅛ in narrower) and 66 (less than ⅛ in wider), multiple of 4 + 2: the nearest is 66
	// 44 in: 74 sts, 22¾ in [58 cm]
	//     74.75 stitches lie between 74 (about ¼ in narrower) and 78 (1 in wider), multiple of 4 + 2: the nearest is 74
}
