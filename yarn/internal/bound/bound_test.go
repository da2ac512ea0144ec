package bound_test

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn/internal/bound"
	"github.com/shopspring/decimal"
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

func ExampleLength() {
	fmt.Println(bound.Length("Total", gauge.MustLength("100 m").Measurement()))
	fmt.Println(bound.Length("Total", gauge.MustLength("-1 in").Measurement()))
	fmt.Println(bound.Length("Total", gauge.MustLength("100 m").Measurement().Times(gauge.Int(1001))))
	// Output:
	// <nil>
	// Total: got less than nothing, want at least 0
	// Total: got more than 100 km, want at most 100 km
}

func ExampleNumber() {
	fmt.Println(bound.Number("Factor", decimal.New(25, -1)))
	fmt.Println(bound.Number("Factor", decimal.New(1, 99)))
	// Output:
	// 5/2 <nil>
	// 0 Factor: got an exponent of 99, want an exponent of -20 to 20
}
