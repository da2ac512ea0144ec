package plain_test

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn/internal/plain"
	"github.com/shopspring/decimal"
)

func ExampleText() {
	fmt.Println(plain.Text(decimal.New(1450, -2)), plain.Text(decimal.New(3, 2)), plain.Text(decimal.New(1, 1_000_000_000)))
	// Output: 14.5 300 (a number out of bounds)
}

func ExampleRatio() {
	third, _ := gauge.Share(1, 3)
	fmt.Println(plain.Ratio(third, 2), plain.Ratio(gauge.Int(500), 2))
	// Output: 0.33 500
}

func ExampleParse() {
	fmt.Println(plain.Parse("14.50"), plain.Parse(".5"), plain.Parse("230"))
	// Output: 14.5 0.5 230
}
