package check_test

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/check"
	"github.com/shopspring/decimal"
)

func show(f []check.Finding, err error) {
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, x := range f {
		fmt.Println(x)
	}
	if len(f) == 0 {
		fmt.Println("nothing found")
	}
}

// A row of the Larkrise jacket in four sizes, as it came back from the designer.
func Example() {
	sizes := grade.Run[string]{"S", "M", "L", "XL"}
	row := check.Counts("row 12", sizes, grade.Run[int]{84, 92, 100, 108})
	left := check.Counts("left front", sizes, grade.Run[int]{30, 33, 36, 39})
	neck := check.Counts("neck", sizes, grade.Run[int]{24, 26, 29, 30})
	right := check.Counts("right front", sizes, grade.Run[int]{30, 33, 36, 39})
	show(check.Rising(row))
	show(check.Legal(row, gauge.Rule{Multiple: 4}))
	show(check.Sum(row, left, neck, right))
	// Output:
	// nothing found
	// nothing found
	// neck, size L: got 29, want 28: the parts add up to 36 + 29 + 36 = 101 beside 100; with this value the steps of its list are even and all adds up
}

func ExampleRising() {
	sizes := grade.Run[string]{"S", "M", "L", "XL"}
	show(check.Rising(check.Counts("row 2", sizes, grade.Run[int]{19, 16, 23, 30})))
	show(check.Rising(check.Counts("chain", sizes, grade.Run[int]{66, 66, 70, 74})))
	// Output:
	// row 2, size S: got 19, want 9: the other sizes rise by 7 each
	// nothing found
}

func ExampleEven() {
	sizes := grade.Run[string]{"1", "2", "3", "4", "5"}
	f, _ := check.Even(check.Counts("cast on", sizes, grade.Run[int]{73, 79, 85, 91, 103}))
	fmt.Println(f[0].Remark, f[0])
	// Output: true cast on, size 5: got 103, want 97: the other sizes rise by 6 each
}

func ExampleLegal() {
	sizes := grade.Run[string]{"S", "M", "L"}
	show(check.Legal(check.Counts("chain", sizes, grade.Run[int]{73, 78, 85}), gauge.Rule{Multiple: 6, Plus: 1}))
	// Output: chain, size M: got 78, want 73 or 79: not a legal count (multiple of 6 + 1)
}

func ExampleApart() {
	sizes := grade.Run[string]{"S", "M", "L", "XL"}
	row3 := check.Counts("row 3", sizes, grade.Run[int]{13, 20, 27, 34})
	row4 := check.Counts("row 4", sizes, grade.Run[int]{17, 24, 31, 37})
	show(check.Apart(row3, row4, decimal.NewFromInt(4)))
	// Output: row 4, size XL: got 37, want 38: must be 4 more than the 34 of row 3; its own steps say so as well
}

func ExampleUnits() {
	sizes := grade.Run[string]{"S", "M"}
	in, _ := check.Lengths("bust", sizes, grade.Run[gauge.Length]{gauge.MustLength("37.5 in"), gauge.MustLength("44 in")})
	cm, _ := check.Lengths("bust, cm", sizes, grade.Run[gauge.Length]{gauge.MustLength("95.5 cm"), gauge.MustLength("110 cm")})
	show(check.Units(in, cm, gauge.HalfCentimetre))
	// Output: bust, cm, size M: got 110 cm, want 112 cm: 44 in prints so on the half centimetre
}

func ExampleConventions() {
	sizes := grade.Run[string]{"S", "M"}
	in, _ := check.Lengths("width", sizes, grade.Run[gauge.Length]{gauge.MustLength("36 in"), gauge.MustLength("60 in")})
	cm, _ := check.Lengths("width, cm", sizes, grade.Run[gauge.Length]{gauge.MustLength("90 cm"), gauge.MustLength("150 cm")})
	grids, err := check.Conventions(in, cm)
	fmt.Println(grids, err)
	// Output: [half centimetre at 2.5 to the inch whole centimetre at 2.5 to the inch] <nil>
}

func ExampleAtMost() {
	one := grade.Run[string]{"S"}
	show(check.AtMost(check.Counts("rows needed", one, grade.Run[int]{720}), check.Counts("rows of the sleeve", one, grade.Run[int]{160})))
	// Output: rows needed, size S: got 720, want at most 160: the limit is rows of the sleeve
}

func ExampleWidths() {
	sizes := grade.Run[string]{"S", "M", "L"}
	stitches := check.Counts("stitches", sizes, grade.Run[int]{0, 253, 277})
	widths, _ := check.Lengths("half width", sizes, grade.Run[gauge.Length]{gauge.MustLength("50 cm"), gauge.MustLength("55 cm"), gauge.MustLength("60 cm")})
	g := gauge.MustGauge("24 sts = 10 cm, 30 rows = 10 cm")
	show(check.Widths(stitches, widths, check.Fabric{Over: g.Stitches, Pieces: 2, NotCounted: 13, Grid: gauge.HalfCentimetre}))
	// Output: half width: got values that go with stitches one size apart: one of the two lists is shifted by a size: 253 of size M goes with 50 cm of size S, the next smaller, and so in 2 sizes
}

func ExampleSum() {
	sizes := grade.Run[string]{"S", "M"}
	row := check.Counts("row", sizes, grade.Run[int]{80, 92})
	side := check.Counts("side", sizes, grade.Run[int]{28, 34})
	neck := check.Counts("neck", sizes, grade.Run[int]{24, 26})
	show(check.Sum(row, side, neck, side))
	// Output: row, size M: got 92: the parts add up to 34 + 26 + 34 = 94; which value is wrong can't be told
}

func ExampleCounts() {
	l := check.Counts("chain", grade.Run[string]{"S", "M"}, grade.Run[int]{66, 70})
	fmt.Println(l.Name, l.Sizes, l.Values)
	// Output: chain [S M] [66 70]
}

func ExampleLengths() {
	l, err := check.Lengths("armhole", grade.Run[string]{"S", "M"}, grade.Run[gauge.Length]{gauge.MustLength("9 1/2 in"), gauge.MustLength("10 in")})
	fmt.Println(l.Values, l.Unit, err)
	// Output: [9.5 10] in <nil>
}

func ExampleList_Validate() {
	fmt.Println(check.List{Name: "neck", Sizes: grade.Run[string]{"S"}}.Validate())
	// Output: neck.Values: got 0, want 1
}

func ExampleFabric_Validate() {
	g := gauge.MustGauge("16 sts and 12 rows = 4 in")
	fmt.Println(check.Fabric{Over: g.Stitches, Pieces: -2}.Validate())
	// Output: Fabric.Pieces: got -2, want 0 to 100000
}

func ExampleFinding_String() {
	fmt.Println(check.Finding{List: "sleeve", Size: "S", Got: "72", Want: "6", Why: "the other sizes rise by 1 each"})
	// Output: sleeve, size S: got 72, want 6: the other sizes rise by 1 each
}
