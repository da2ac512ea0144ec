package bound_test

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn/internal/bound"
)

func ExampleFine() {
	third, _ := gauge.Share(1, 3)
	x := third
	for range 3 {
		fmt.Println(bound.Fine("Net", gauge.MeasurementOf(x, gauge.Millimetre)))
		for range 400 {
			x = x.Mul(third)
		}
	}
	// Output:
	// <nil>
	// <nil>
	// Net: got a fraction of more than 300 digits, want a simpler one
}
