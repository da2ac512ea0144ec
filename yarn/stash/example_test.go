package stash_test

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/stash"
)

func metres(s string) gauge.Measurement { return yarn.MustLength(s + " m").Measurement() }

func ExampleHolding_Length() {
	h := stash.Holding{Label: yarn.MustLabel("400 yd = 100 g"), Skeins: 2, Rest: yarn.MustMass("67 g")}
	m, err := h.Length()
	fmt.Println(m.In(gauge.Yard), "yd", err)
	// Output: 1068 yd <nil>
}

func ExampleLargestSize() {
	label := yarn.MustLabel("210 m = 50 g")
	var sizes [][]yarn.Quantity
	for _, need := range []string{"1150", "1320", "1490", "1700"} {
		q, err := yarn.Buy(label, yarn.MustMargin("5%"), yarn.Line{Name: "wrap", Length: metres(need)})
		if err != nil {
			fmt.Println(err)
			return
		}
		sizes = append(sizes, []yarn.Quantity{q})
	}
	best, err := stash.LargestSize([]stash.Holding{{Label: label, Skeins: 7}, {Label: label, Rest: yarn.MustMass("12 g")}}, sizes...)
	fmt.Printf("size %d, %v m left; %s %v\n", best.Size+1, best.Left.In(gauge.Metre), best.Next, err)
	// Output: size 2, 672/5 m left; size 3 is 44.1 m short <nil>
}

func ExampleLots() {
	pieces := []yarn.Line{{Name: "left panel", Length: metres("600")}, {Name: "right panel", Length: metres("600")}, {Name: "edging", Length: metres("90")}}
	ways, err := stash.Lots(pieces, []stash.Lot{{Name: "4711", Length: metres("700")}, {Name: "4720", Length: metres("630")}})
	for _, w := range ways {
		fmt.Println(w.Piece, "from lot", w.Lot)
	}
	fmt.Println(err)
	_, err = stash.Lots(pieces, []stash.Lot{{Name: "4711", Length: metres("1150")}})
	fmt.Println(err)
	_, err = stash.Lots(pieces, []stash.Lot{{Name: "4711", Length: metres("590")}, {Name: "4720", Length: metres("595")}})
	fmt.Println(err)
	// Output:
	// left panel from lot 4711
	// right panel from lot 4720
	// edging from lot 4711
	// <nil>
	// assign 3 pieces to 1 lot: the lots do not hold the pieces whole: each fits a lot, all together do not
	// assign 3 pieces to 2 lots: the lots do not hold the pieces whole: larger than every lot: "left panel", "right panel"
}
