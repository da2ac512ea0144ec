package say_test

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn/internal/say"
)

func ExampleNumber() {
	third, _ := gauge.Share(1, 3)
	half, _ := gauge.Share(1, 2)
	fmt.Println(say.Number(third), say.Number(half), say.Number(gauge.Int(7)))
	// Output: about 0.33 0.5 7
}

func ExampleIn() {
	fmt.Println(say.In(gauge.MustLength("1 yd").Measurement(), gauge.Inch))
	fmt.Println(say.In(gauge.MustLength("1 cm").Measurement(), gauge.Inch))
	// Output:
	// 36 in
	// about 0.39 in
}
