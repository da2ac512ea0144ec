package fit_test

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/fit"
)

// The same garment, 9 in wider than the largest body of each size, in nine
// sizes, in four groups and in three: what each wearer gets.
func Example() {
	women, err := grade.Standard("women")
	if err != nil {
		fmt.Println(err)
		return
	}
	wearers, err := fit.Wearers(women, grade.Chest, gauge.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, k := range []int{9, 4, 3} {
		split, err := fit.Best(wearers, grade.MustEase("9 in"), k)
		if err != nil {
			fmt.Println(err)
			return
		}
		groups, err := women.Groups(split.Lists())
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%d: %s\n", k, grade.Text(grade.Labels(groups), func(s string) string { return s }))
		for i, p := range split.Parts {
			fmt.Printf("  %-6s finished %s in, ease %s to %s in\n", groups[i].Label(),
				gauge.QuarterInch.Number(p.Finished), gauge.QuarterInch.Number(p.Least), gauge.QuarterInch.Number(p.Most))
		}
		if k == 9 {
			continue
		}
		worn := split.Worn()
		fmt.Printf("  XS gets up to %s, M up to %s, 3X up to %s\n", gauge.QuarterInch.Text(worn[0].AtLow),
			gauge.QuarterInch.Text(worn[2].AtLow), gauge.QuarterInch.Text(worn[6].AtLow))
		fmt.Printf("  %d splits tie in the most ease, %d more in the ease of all\n", split.Ties, len(split.Others))
	}
	// Output:
	// 9: XS (S, M, L, XL) [2X, 3X, 4X, 5X]
	//   XS     finished 39 in, ease 9 to 11 in
	//   S      finished 43 in, ease 9 to 11 in
	//   M      finished 47 in, ease 9 to 11 in
	//   L      finished 51 in, ease 9 to 11 in
	//   XL     finished 55 in, ease 9 to 11 in
	//   2X     finished 59 in, ease 9 to 11 in
	//   3X     finished 63 in, ease 9 to 11 in
	//   4X     finished 67 in, ease 9 to 11 in
	//   5X     finished 71 in, ease 9 to 11 in
	// 4: XS–S (M–L, XL–2X, 3X–5X)
	//   XS–S   finished 43 in, ease 9 to 15 in
	//   M–L    finished 51 in, ease 9 to 15 in
	//   XL–2X  finished 59 in, ease 9 to 15 in
	//   3X–5X  finished 71 in, ease 9 to 19 in
	//   XS gets up to 15 in, M up to 15 in, 3X up to 19 in
	//   16 splits tie in the most ease, 3 more in the ease of all
	// 3: XS–M (L–2X, 3X–5X)
	//   XS–M   finished 47 in, ease 9 to 19 in
	//   L–2X   finished 59 in, ease 9 to 19 in
	//   3X–5X  finished 71 in, ease 9 to 19 in
	//   XS gets up to 19 in, M up to 11 in, 3X up to 19 in
	//   1 splits tie in the most ease, 0 more in the ease of all
}

func women() []fit.Wearer {
	c, err := grade.Standard("women")
	if err != nil {
		panic(err)
	}
	w, err := fit.Wearers(c, grade.Chest, gauge.Inch)
	if err != nil {
		panic(err)
	}
	return w
}

func ExampleFewest() {
	// A drop shoulder with 6 to 12 in of ease for everybody.
	s, err := fit.Fewest(women(), fit.Window{Least: grade.MustEase("6 in"), Most: grade.MustEase("12 in")})
	fmt.Println(len(s.Parts), s.Lists(), err)
	fmt.Println(s.Explain(gauge.QuarterInch))
	// Output:
	// 5 [[XS] [S M] [L XL] [2X 3X] [4X 5X]] <nil>
	// XS, S–M, L–XL, 2X–3X, 4X–5X: the most ease anybody gets is 12 in; no two of XS, M, XL, 3X, 5X can share a group
}

func ExampleBest() {
	members := fit.Bodies(gauge.MustLength("84 cm"), gauge.MustLength("118 cm"), gauge.MustLength("86.5 cm"), gauge.MustLength("101 cm"))
	s, err := fit.Best(members, grade.MustEase("8 cm"), 2)
	fmt.Println(s.Explain(gauge.HalfCentimetre), err)
	fmt.Println(s.Ties, s.Others)
	// Output:
	// 1–3, 4–2: the most ease anybody gets is 25 cm; any two of 1, 4, 2 in one group take that much or more <nil>
	// 2 []
}

func ExampleSplit_Lists() {
	s, _ := fit.Best(women(), grade.MustEase("9 in"), 3)
	fmt.Println(s.Lists())
	// Output: [[XS S M] [L XL 2X] [3X 4X 5X]]
}

func ExampleSplit_Worn() {
	s, _ := fit.Best(women(), grade.MustEase("9 in"), 3)
	for _, w := range s.Worn()[:3] {
		fmt.Println(w.Name, gauge.QuarterInch.Text(w.AtHigh), "to", gauge.QuarterInch.Text(w.AtLow))
	}
	// Output:
	// XS 17 in to 19 in
	// S 13 in to 15 in
	// M 9 in to 11 in
}

func ExampleSplit_Explain() {
	s, _ := fit.Best(women(), grade.MustEase("9 in"), 3)
	fmt.Println(s.Explain(gauge.QuarterInch))
	// Output: XS–M, L–2X, 3X–5X: the most ease anybody gets is 19 in; any two of XS, M, XL, 3X, 5X in one group take that much or more
}

func ExampleWearers() {
	c, _ := grade.Standard("men")
	w, err := fit.Wearers(c, grade.Chest, gauge.Centimetre)
	fmt.Println(w[1].Name, w[1].Low, w[1].High, err)
	// Output: M 96.5 cm 101.5 cm <nil>
}

func ExampleBodies() {
	fmt.Println(fit.Bodies(gauge.MustLength("84 cm"), gauge.MustLength("40 in")))
	// Output: [{1 84 cm 84 cm} {2 40 in 40 in}]
}

func ExampleWearer_Validate() {
	w := fit.Wearer{Name: "M", Low: gauge.MustLength("38 in"), High: gauge.MustLength("36 in")}
	fmt.Println(w.Validate())
	// Output: High: got 36 in, want at least Low, 38 in
}

func ExampleWindow_String() {
	fmt.Println(fit.Window{Least: grade.MustEase("-3 in"), Most: grade.MustEase("-1 in")})
	fmt.Println(fit.Window{Least: grade.MustEase("6 in"), Open: true})
	// Output:
	// -3 in to -1 in
	// 6 in and more
}

func ExampleWindow_Validate() {
	fmt.Println(fit.Window{Least: grade.MustEase("4 in"), Most: grade.MustEase("2 in")}.Validate())
	// Output: Window.Most: got 2 in, want at least 4 in
}

func ExampleWindow_Miss() {
	w := fit.Window{Least: grade.MustEase("2 in"), Most: grade.MustEase("4 in")}
	body := gauge.MustLength("40 in").Measurement()
	for _, finished := range []string{"41 in", "43 in", "47 in"} {
		fmt.Println(finished, gauge.QuarterInch.Text(w.Miss(body, gauge.MustLength(finished).Measurement())))
	}
	// Output:
	// 41 in -1 in
	// 43 in 0 in
	// 47 in 3 in
}

func ExampleWindow_Holds() {
	w := fit.Window{Least: grade.MustEase("5%"), Most: grade.MustEase("10%")}
	fmt.Println(w.Holds(gauge.MustLength("100 cm").Measurement(), gauge.MustLength("107 cm").Measurement()))
	// Output: true
}

func ExampleClasses() {
	classes, _ := fit.Classes("current")
	for _, c := range classes {
		fmt.Printf("%s: %v (%v)\n", c.Printed, c.Inches, c.Basis)
	}
	fmt.Println(grade.Credit)
	// Output:
	// Very close fitting: -4 in to -2 in (one-source)
	// Close fitting: 0 in (one-source)
	// Classic fit: 2 in to 4 in (two-sources)
	// Loose fit: 4 in to 6 in (one-source)
	// Oversized: 6 in and more (one-source)
	// Source: Craft Yarn Council's www.YarnStandards.com
}

func ExampleClassesOf() {
	classes, _ := fit.Classes("current")
	for _, c := range fit.ClassesOf(classes, gauge.MustLength("9 in").Measurement(), false) {
		fmt.Println(c.Printed)
	}
	// Output: Oversized
}

func ExampleChoose() {
	sizes := grade.Run[string]{"S", "M", "L"}
	chest := fit.Criterion{
		Body: gauge.MustLength("41.5 in"), Wanted: grade.MustEase("3 in"),
		Window:   fit.Window{Least: grade.MustEase("1 in"), Most: grade.MustEase("5 in")},
		Finished: grade.Run[gauge.Length]{gauge.MustLength("40 in"), gauge.MustLength("43.5 in"), gauge.MustLength("47 in")},
	}
	choice, err := fit.Choose(sizes, chest)
	fmt.Println(choice.Verdict, choice.Sizes, err)
	// Output: chosen [M] <nil>
}

func ExampleChoice_Explain() {
	sizes := grade.Run[string]{"S", "M"}
	choice, _ := fit.Choose(sizes, fit.Criterion{
		Body: gauge.MustLength("34 in"), Wanted: grade.MustEase("-2 in"),
		Window:   fit.Window{Least: grade.MustEase("-3 in"), Most: grade.MustEase("-1 in")},
		Finished: grade.Run[gauge.Length]{gauge.MustLength("30 in"), gauge.MustLength("34 in")},
	})
	for _, line := range choice.Explain(gauge.QuarterInch) {
		fmt.Println(line)
	}
	// Output:
	// S: nearest, but outside: chest ease -4 in, 1 in less than the least (-3 in)
	// M: nearest, but outside: chest ease 0 in, 1 in more than the most (-1 in)
}

func ExampleVerdict_String() {
	fmt.Println(fit.None, fit.Chosen, fit.Tied)
	// Output: none chosen tied
}

func ExampleVerdict_MarshalText() {
	b, err := fit.Tied.MarshalText()
	fmt.Println(string(b), err)
	// Output: tied <nil>
}

func ExampleVerdict_UnmarshalText() {
	var v fit.Verdict
	fmt.Println(v.UnmarshalText([]byte("chosen")), v)
	// Output: <nil> chosen
}
