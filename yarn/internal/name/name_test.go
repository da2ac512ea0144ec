package name_test

import (
	"fmt"

	"example.com/panelmath/yarn/internal/name"
)

func ExampleOf() {
	fmt.Println(name.Of("Way", []string{"up", "down"}, 1), name.Of("Way", []string{"up", "down"}, 2))
	// Output: down Way(2)
}

func ExampleMarshal() {
	b, err := name.Marshal("Way", []string{"up", "down"}, 0)
	fmt.Println(string(b), err)
	_, err = name.Marshal("Way", []string{"up", "down"}, 2)
	fmt.Println(err)
	// Output:
	// up <nil>
	// Way: got Way(2), want up, down
}

func ExampleRead() {
	fmt.Println(name.Read("Way", []string{"up", "down"}, []byte("down")))
	fmt.Println(name.Read("Way", []string{"up", "down"}, []byte("left")))
	// Output:
	// 1 <nil>
	// 0 parse way: "left": unknown way "left"; want up, down
}
