package gauge_test

import (
	"fmt"
	"strings"

	"example.com/panelmath/gauge"
)

// A sweep over one inch of lengths at 1 stitch to the inch, so that the ties at
// 11.5 and 12.5 can be read down a column for each direction.
func Example_directions() {
	inch := gauge.MustGauge("1 st and 1 row = 1 in").Stitches
	fmt.Println("  asked  nearest  ties   up   down\n                  down")
	for quarters := 45; quarters <= 51; quarters++ {
		share, err := gauge.Share(quarters, 4)
		if err != nil {
			fmt.Println(err)
			return
		}
		line := fmt.Sprintf("%7s", share.Text(2))
		for _, d := range []gauge.Direction{gauge.Nearest, gauge.NearestTiesDown, gauge.Up, gauge.Down} {
			c, err := inch.Round(gauge.MeasurementOf(share, gauge.Inch), gauge.Rule{Direction: d})
			if err != nil {
				fmt.Println(err)
				return
			}
			mark := " "
			if c.Tie {
				mark = "*" // just in the middle
			}
			line += fmt.Sprintf("  %5d%s", c.Value, mark)
		}
		fmt.Println(strings.TrimRight(line, " "))
	}
	// Output:
	// asked  nearest  ties   up   down
	//                   down
	//   11.25     11      11      12      11
	//   11.50     12*     11*     12*     11*
	//   11.75     12      12      12      11
	//   12.00     12      12      12      12
	//   12.25     12      12      13      12
	//   12.50     13*     12*     13*     12*
	//   12.75     13      13      13      12
}
