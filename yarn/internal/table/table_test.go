package table_test

import (
	"fmt"

	"example.com/panelmath/yarn/internal/table"
)

func ExampleRead() {
	for _, row := range table.Read("fibre,method\nsilk,wet\nwool,\"soak, or spray\"\n") {
		fmt.Println(row["fibre"], row["method"])
	}
	fmt.Println(len(table.Read("")))
	// Output:
	// silk wet
	// wool soak, or spray
	// 0
}
