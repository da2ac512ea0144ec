package colour_test

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/colour"
)

func metres(s string) gauge.Measurement { return yarn.MustLength(s + " m").Measurement() }

func stripes() colour.Sequence {
	return colour.Sequence{Repeats: true, Runs: []colour.Run{
		{Colour: "moss", Length: yarn.MustLength("12 m")},
		{Colour: "sand", Length: yarn.MustLength("9 m")},
		{Colour: "rust", Length: yarn.MustLength("14 m")},
	}}
}

// Where the colours of a striping yarn end on the first panel of a wrap, and
// where to start the second so that the stripes match.
func Example() {
	panel := colour.Equal(24, colour.Row{Stitches: 81, Yarn: metres("4.1")})
	course, err := colour.Ends(stripes(), metres("5"), panel)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, e := range course.Ends {
		fmt.Println(e)
	}
	skeins := colour.Skeins{Sequence: stripes(), Each: yarn.MustLength("240 m")}
	for _, style := range []colour.Style{colour.Repeated, colour.Mirrored} {
		start, err := colour.Second(skeins, course.From, course.Used, style)
		fmt.Println(start.Explain(), err)
	}
	// Output:
	// moss ends in row 2 after 57 stitches and about 0.29 of the next
	// sand ends in row 4 after 73 stitches and about 0.1 of the next
	// rust ends in row 8 after 25 stitches and about 0.68 of the next
	// moss ends in row 11 after 19 stitches and about 0.76 of the next
	// sand ends in row 13 after 35 stitches and about 0.56 of the next
	// rust ends in row 16 after 69 stitches and about 0.15 of the next
	// moss ends in row 19 after 63 stitches and about 0.22 of the next
	// sand ends in row 21 after 79 stitches and about 0.02 of the next
	// repeated: go on with the same skein; start 110 m from the beginning of the skein; 6.6 m are cut away, 31.6 m are left <nil>
	// mirrored: go on with the same skein, wound off from its other end; start 208.4 m from the beginning of the skein; 31.6 m are cut away, 6.6 m are left <nil>
}

func ExampleEnds() {
	course, err := colour.Ends(stripes(), gauge.Measurement{}, colour.Equal(5, colour.Row{Stitches: 40, Yarn: metres("4")}))
	for _, e := range course.Ends {
		fmt.Println(e.Colour, e.Row, e.Stitches, e.Part)
	}
	fmt.Println(err)
	// Output:
	// moss 3 40 0
	// <nil>
}

func ExampleEnd_String() {
	half, _ := gauge.Share(1, 2)
	fmt.Println(colour.End{Colour: "moss", Row: 7, Stitches: 12, Part: half})
	// Output: moss ends in row 7 after 12 stitches and 0.5 of the next
}

func ExampleRun_String() {
	fmt.Println(colour.Run{Colour: "moss"}, "|", colour.Run{Colour: "moss", To: "sand"})
	// Output: moss | moss to sand
}

func ExampleSequence_Validate() {
	twice := colour.Sequence{Runs: []colour.Run{{Colour: "moss", Length: yarn.MustLength("1 m")}, {Colour: "moss", Length: yarn.MustLength("2 m")}}}
	fmt.Println(twice.Validate())
	// Output: Sequence.Runs[0]: got two runs of "moss" side by side, want one run
}

func ExampleSequence_Period() {
	fmt.Println(stripes().Period().In(gauge.Metre), "m")
	// Output: 35 m
}

func ExampleEqual() {
	fmt.Println(len(colour.Equal(24, colour.Row{Stitches: 81, Yarn: metres("4.1")})))
	// Output: 24
}

func ExampleSkeins_Validate() {
	fmt.Println(colour.Skeins{Sequence: stripes()}.Validate())
	// Output: Skeins.Each.Unit: got Unit(0), want yd, m, in, ft, cm or mm
}

// The first panel leaves too little: a new skein starts at the same place of its
// colours, and what comes before is cut away.
func ExampleSecond() {
	skeins := colour.Skeins{Sequence: stripes(), Each: yarn.MustLength("180 m")}
	start, err := colour.Second(skeins, metres("5"), metres("98.4"), colour.Repeated)
	fmt.Println(start.NewSkein, start.Cut.In(gauge.Metre), "m cut away", err)
	skeins.Fresh = yarn.MustLength("30 m") // the new skein begins in the rust
	start, err = colour.Second(skeins, metres("5"), metres("98.4"), colour.Repeated)
	fmt.Println(start.NewSkein, start.Cut.In(gauge.Metre), "m cut away", err)
	_, err = colour.Second(skeins, metres("5"), metres("190"), colour.Repeated)
	fmt.Println(err)
	// Output:
	// true 5 m cut away <nil>
	// true 10 m cut away <nil>
	// match a second panel: the yarn runs out: the first takes 195 m and the skein holds 180 m
}

func ExampleStart_Explain() {
	skeins := colour.Skeins{Sequence: stripes(), Each: yarn.MustLength("240 m")}
	start, _ := colour.Second(skeins, gauge.Measurement{}, metres("70"), colour.Repeated)
	fmt.Println(start.Explain())
	// Output: repeated: go on with the same skein; start 70 m from the beginning of the skein; nothing is cut away, 100 m are left
}

func ExampleStyle_String() {
	fmt.Println(colour.Repeated, colour.Mirrored)
	// Output: repeated mirrored
}

func ExampleStyle_MarshalText() {
	b, err := colour.Mirrored.MarshalText()
	fmt.Println(string(b), err)
	// Output: mirrored <nil>
}

func ExampleStyle_UnmarshalText() {
	var s colour.Style
	err := s.UnmarshalText([]byte("mirrored"))
	fmt.Println(s, err)
	// Output: mirrored <nil>
}

// A front half as wide as the back: each band takes half of its colour.
func ExampleLineUp() {
	back := colour.Equal(10, colour.Row{Stitches: 80, Yarn: metres("4")})
	front := colour.Equal(10, colour.Row{Stitches: 40, Yarn: metres("2")})
	bands, err := colour.LineUp(stripes(), gauge.Measurement{}, back, front)
	for _, b := range bands {
		fmt.Println(b.Explain())
	}
	fmt.Println(err)
	// Output:
	// moss from row 0 to row 3 takes 6 m of 12 m: cut away 6 m
	// sand from row 3 to row 5.25 takes 4.5 m of 9 m: cut away 4.5 m
	// rust from row 5.25 to row 8.75 takes 7 m of 14 m: cut away 7 m
	// moss from row 8.75 to row 10 takes 2.5 m of 5 m: cut away 2.5 m
	// <nil>
}

func ExampleBand_Explain() {
	fmt.Println(colour.Band{Colour: "moss", From: gauge.Int(0), To: gauge.Int(3), Given: metres("12"), Needed: metres("13"), Short: metres("1")}.Explain())
	// Output: moss from row 0 to row 3 takes 13 m of 12 m: 1 m short
}

func ExampleSplit() {
	parts, err := colour.Split(yarn.MustLength("300 yd").Measurement(), 140, 30, 30)
	for _, p := range parts {
		fmt.Println(p.In(gauge.Yard), "yd")
	}
	fmt.Println(err)
	// Output:
	// 210 yd
	// 45 yd
	// 45 yd
	// <nil>
}
