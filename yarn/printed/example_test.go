package printed_test

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/printed"
)

func lengths(texts ...string) []yarn.Length {
	var ls []yarn.Length
	for _, s := range texts {
		ls = append(ls, yarn.MustLength(s))
	}
	return ls
}

func ExampleColumns() {
	found, err := printed.Columns(lengths("1450 yd", "1950 yd", "2400 yd"), lengths("1326 m", "1791 m", "2195 m"))
	for _, f := range found {
		fmt.Println(f)
	}
	fmt.Println(err)
	// Output:
	// size 2: got 1791 m, want 1783 m: 1950 yd is 1783.08 m
	// <nil>
}

func ExampleTotals() {
	found, err := printed.Totals([]int{3, 4, 4}, yarn.MustLength("623 yd"), lengths("1869 yd", "2492 yd", "2942 yd"))
	for _, f := range found {
		fmt.Println(f)
	}
	fmt.Println(err)
	// Output:
	// size 3: got 2942 yd, want 2492 yd: 4 × 623 yd is 2492 yd
	// <nil>
}

func ExampleBalls() {
	found, err := printed.Balls(lengths("830 m", "880 m", "945 m"), yarn.MustLength("140 m"), []int{6, 6, 7})
	for _, f := range found {
		fmt.Println(f)
	}
	fmt.Println(err)
	// Output:
	// size 2: got 6, want 7: 880 m at 140 m a ball is about 6.29, rounded up
	// <nil>
}

func ExampleFinding_String() {
	fmt.Println(printed.Finding{Size: 1, Got: "6", Want: "7", Why: "880 m at 140 m a ball is about 6.29, rounded up"})
	// Output: size 2: got 6, want 7: 880 m at 140 m a ball is about 6.29, rounded up
}

// Skeins of 230 yd for four sizes of known area, in square inches: one usage for
// all, or the two sizes that contradict one another.
func ExampleUsage() {
	list := func(skeins ...int) []printed.Size {
		var sizes []printed.Size
		for i, area := range []int{1400, 1560, 1730, 1900} {
			sizes = append(sizes, printed.Size{Name: []string{"XS–S", "M–L", "XL–2X", "3X–5X"}[i], Work: gauge.Int(area), Skeins: skeins[i]})
		}
		return sizes
	}
	for _, skeins := range [][]int{{7, 7, 8, 9}, {7, 7, 8, 8}, {7, 7, 9, 8}} {
		iv, err := printed.Usage(yarn.MustLength("230 yd"), list(skeins...)...)
		fmt.Println(skeins, iv.None, err)
		fmt.Println(iv.Explain(gauge.Inch))
	}
	// Output:
	// [7 7 8 9] false <nil>
	// the list is right for more than about 35.49 in and at most about 37.15 in to a unit of work; size "XS–S" (7 skeins) sets the low end, size "M–L" (7 skeins) the high
	// [7 7 8 8] true <nil>
	// no usage makes the list right: size "XS–S" (7 skeins) takes more than about 35.49 in to a unit of work, size "3X–5X" (8 skeins) at most about 34.86 in
	// [7 7 9 8] true <nil>
	// no usage makes the list right: size "XL–2X" (9 skeins) takes more than about 38.29 in to a unit of work, size "3X–5X" (8 skeins) at most about 34.86 in
}

func ExampleInterval_Explain() {
	iv, _ := printed.Usage(yarn.MustLength("100 m"), printed.Size{Name: "S", Work: gauge.Int(10), Skeins: 4}, printed.Size{Name: "L", Work: gauge.Int(15), Skeins: 4})
	fmt.Println(iv.Explain(gauge.Metre))
	// Output: no usage makes the list right: size "S" (4 skeins) takes more than 30 m to a unit of work, size "L" (4 skeins) at most about 26.67 m
}
