package yarn_test

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/usage"
	"github.com/shopspring/decimal"
)

// The same wrap by three ways, compared.
func Example_threeWays() {
	label := yarn.MustLabel("230 yd = 100 g")
	panels, _ := yarn.ParseArea("1560 sq in")

	swatch := yarn.Swatch{Width: gauge.MustLength("6 in"), Height: gauge.MustLength("6 in"), Mass: yarn.MustMass("14.5 g"),
		Reading: yarn.Reading{Side: gauge.MustLength("1/16 in"), Mass: yarn.MustMass("0.25 g")}}
	bySwatch, _ := swatch.Fabric("by the swatch", panels, label)

	row := usage.RowSample{Width: gauge.MustLength("10 in"), Yarn: yarn.MustLength("145 in")}
	byRows, _ := row.Rows(yarn.Fabric, "by rows", 70, gauge.MustLength("50 in").Measurement())

	earlier, _ := yarn.ParseArea("1400 sq in")
	project := usage.Project{Label: label, Area: earlier, Skeins: decimal.NewFromInt(6), Left: yarn.MustMass("20 g")}
	byProject, _ := project.Fabric("by an earlier wrap", panels)

	for _, other := range []yarn.Line{byRows, byProject} {
		c, err := yarn.Compare(bySwatch, other)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(c.Explain())
	}
	// Output:
	// by the swatch takes about 1321.46 m, by rows takes 1289.05 m, about 2.45% less: within their spread
	// by the swatch takes about 1321.46 m, by an earlier wrap takes about 1359.22 m, about 2.86% more: within their spread
}

// Skeins for the sizes of a top, in cakes of 530 yd.
func ExampleBuy() {
	cake := yarn.MustLabel("530 yd = 250 g")
	for _, need := range []string{"1250 yd", "1500 yd", "1750 yd", "2000 yd"} {
		q, err := yarn.Buy(cake, yarn.Margin{}, yarn.Line{Name: "body", Length: yarn.MustLength(need).Measurement()})
		fmt.Println(need, q.Skeins, "cakes,", q.Slack.In(gauge.Yard), "yd left", err)
	}
	// Output:
	// 1250 yd 3 cakes, 340 yd left <nil>
	// 1500 yd 3 cakes, 90 yd left <nil>
	// 1750 yd 4 cakes, 370 yd left <nil>
	// 2000 yd 4 cakes, 120 yd left <nil>
}

func ExampleBuyEach() {
	yarns := []yarn.Yarn{
		{Name: "heather", Label: yarn.MustLabel("230 yd = 100 g")},
		{Name: "cream", Label: yarn.MustLabel("120 yd = 50 g")},
	}
	quantities, err := yarn.BuyEach(yarns, yarn.MustMargin("10%"),
		yarn.Line{Name: "panels", Yarn: "heather", Length: yarn.MustLength("1400 yd").Measurement()},
		yarn.Line{Name: "edging", Part: yarn.Edging, Yarn: "cream", Length: yarn.MustLength("100 yd").Measurement()})
	for _, q := range quantities {
		fmt.Println(q.Yarn, q.Skeins, "skeins")
	}
	fmt.Println(err)
	_, err = yarn.BuyEach(yarns, yarn.Margin{}, yarn.Line{Name: "panels", Yarn: "rust"})
	fmt.Println(err)
	// Output:
	// heather 7 skeins
	// cream 1 skeins
	// <nil>
	// Lines[0].Yarn: got "rust", want the name of a yarn
}

func ExampleQuantity_Explain() {
	q, _ := yarn.Buy(yarn.MustLabel("200 m = 50 g"), yarn.MustMargin("5%"),
		yarn.Line{Name: "panels", Length: yarn.MustLength("1000 m").Measurement(), Less: yarn.MustLength("40 m").Measurement(), More: yarn.MustLength("60 m").Measurement()})
	for _, s := range q.Explain() {
		fmt.Println(s)
	}
	// Output:
	// panels: 1000 m given
	// margin: 5% of 1000 m is 50 m
	// spread: 40 m less to 60 m more, which a margin of 6% covers; the margin is smaller than the spread
	// total: 1050 m, which weighs 262.5 g at 200 m = 50 g
	// skeins: 5.25, rounded up to 6, 150 m left
}

func ExampleQuantity_Covers() {
	line := yarn.Line{Name: "panels", Length: yarn.MustLength("1000 m").Measurement(), More: yarn.MustLength("60 m").Measurement()}
	for _, margin := range []string{"5%", "6%", "10%"} {
		q, _ := yarn.Buy(yarn.MustLabel("200 m = 50 g"), yarn.MustMargin(margin), line)
		fmt.Println(margin, q.Covers())
	}
	// Output:
	// 5% false
	// 6% true
	// 10% true
}

func ExampleQuantity_CoverMargin() {
	line := yarn.Line{Name: "panels", Length: yarn.MustLength("1000 m").Measurement(), More: yarn.MustLength("65 m").Measurement()}
	q, _ := yarn.Buy(yarn.MustLabel("200 m = 50 g"), yarn.Margin{}, line)
	fmt.Println(q.CoverMargin())
	// Output: 13/200
}

func ExampleSwatch_Validate() {
	fmt.Println(yarn.Swatch{Width: gauge.MustLength("6 in"), Height: gauge.MustLength("6 in")}.Validate())
	// Output: Swatch.Mass: got no mass and no length of yarn, want one of the two
}

func ExampleSwatch_Area() {
	s := yarn.Swatch{Width: gauge.MustLength("6 in"), Height: gauge.MustLength("15 cm"), Mass: yarn.MustMass("14 g")}
	fmt.Println(s.Area().In(gauge.Inch).Text(2), "sq in")
	// Output: 35.43 sq in
}

func ExampleSwatch_Fabric() {
	panels, _ := yarn.ParseArea("1560 sq in")
	weighed := yarn.Swatch{Width: gauge.MustLength("6 in"), Height: gauge.MustLength("6 in"), Mass: yarn.MustMass("14.5 g")}
	line, err := weighed.Fabric("panels", panels, yarn.MustLabel("230 yd = 100 g"))
	fmt.Println(line.Explain(), err)

	unravelled := yarn.Swatch{Width: gauge.MustLength("5 in"), Height: gauge.MustLength("5 in"), Yarn: yarn.MustLength("802 in")}
	line, err = unravelled.Fabric("panels", panels, yarn.Label{})
	fmt.Println(line.Explain(), err)
	// Output:
	// panels: 1560 sq in at 14.5 g for 36 sq in weighs about 628.33 g, at 230 yd = 100 g that is about 1445.17 yd of yarn <nil>
	// panels: 1560 sq in at 802 in for 25 sq in takes 50044.8 in of yarn <nil>
}

func ExampleSwatch_Itself() {
	s := yarn.Swatch{Width: gauge.MustLength("6 in"), Height: gauge.MustLength("6 in"), Mass: yarn.MustMass("14.5 g")}
	line, err := s.Itself(yarn.MustLabel("230 yd = 100 g"))
	fmt.Println(line.Part, line.Length.In(gauge.Yard).Text(2), "yd", err)
	// Output: swatch 33.35 yd <nil>
}

// A thick and a thin yarn held together: each strand takes the same length.
func ExampleSwatch_HeldTogether() {
	s := yarn.Swatch{Width: gauge.MustLength("10 cm"), Height: gauge.MustLength("10 cm"), Mass: yarn.MustMass("9 g")}
	area, _ := yarn.ParseArea("1 sq m")
	yarns := []yarn.Yarn{{Name: "wool", Label: yarn.MustLabel("200 m = 100 g")}, {Name: "mohair", Label: yarn.MustLabel("200 m = 25 g")}}
	lines, err := s.HeldTogether("panels", area, yarns...)
	fmt.Println(err)
	quantities, _ := yarn.BuyEach(yarns, yarn.Margin{}, lines...)
	for _, q := range quantities {
		fmt.Println(q.Yarn, q.Total.In(gauge.Metre), "m,", q.Mass, q.Skeins, "skeins")
	}
	// Output:
	// <nil>
	// wool 1440 m, 720 g 8 skeins
	// mohair 1440 m, 180 g 8 skeins
}

func ExampleSewing_Validate() {
	fmt.Println(yarn.Sewing{}.Validate())
	fmt.Println(yarn.Sewing{Factor: decimal.NewFromInt(-1)}.Validate())
	// Output:
	// <nil>
	// Sewing.Factor: got -1, want 0 to 100
}

func ExampleSewing_Seam() {
	line, err := yarn.WhipStitch().Seam("side", gauge.MustLength("15 in").Measurement())
	fmt.Println(line.Explain(), err)
	// Output: side: 15 in times 2.5 and twice 6 in for the ends is 49.5 in <nil>
}

func ExampleTails() {
	line, err := yarn.Tails("new skeins", 12, gauge.MustLength("15 cm"))
	fmt.Println(line.Explain(), err)
	// Output: new skeins: 12 ends of 15 cm are 180 cm <nil>
}

func ExampleLine_Validate() {
	fmt.Println(yarn.Line{Length: gauge.MustLength("-1 in").Measurement()}.Validate())
	// Output: Line.Length: got less than nothing, want at least 0
}

func ExampleLine_Explain() {
	fmt.Println(yarn.Line{Name: "pompoms", Length: yarn.MustLength("12 m").Measurement()}.Explain())
	// Output: pompoms: 12 m given
}

// Half a stitch and half a row over 4 in, carried to the fabric.
func ExampleLine_Widen() {
	low, high, _ := yarn.GaugeSpread(gauge.MustGauge("13 sts and 9 rows = 4 in"), decimal.New(5, -1), decimal.New(5, -1))
	line, err := yarn.Line{Name: "panels", Length: yarn.MustLength("1000 m").Measurement()}.Widen(low, high)
	fmt.Println(line.Less.In(gauge.Metre).Text(1), "m less,", line.More.In(gauge.Metre).Text(1), "m more", err)
	// Output: 87.7 m less, 101.2 m more <nil>
}

func ExampleGaugeSpread() {
	half := decimal.New(5, -1)
	for _, g := range []string{"13 sts and 9 rows = 4 in", "26 sts and 18 rows = 8 in"} {
		low, high, err := yarn.GaugeSpread(gauge.MustGauge(g), half, half)
		fmt.Println(g, low.Text(3), high.Text(3), err)
	}
	// Output:
	// 13 sts and 9 rows = 4 in 0.912 1.101 <nil>
	// 26 sts and 18 rows = 8 in 0.955 1.049 <nil>
}

func ExampleCompare() {
	a := yarn.Line{Name: "by the swatch", Length: yarn.MustLength("1300 m").Measurement(), Less: yarn.MustLength("50 m").Measurement(), More: yarn.MustLength("50 m").Measurement()}
	b := yarn.Line{Name: "by stitches", Length: yarn.MustLength("1400 m").Measurement(), Less: yarn.MustLength("20 m").Measurement()}
	c, err := yarn.Compare(a, b)
	fmt.Println(c.Agree, c.Gap.In(gauge.Metre), "m", err)
	// Output: false 30 m <nil>
}

func ExampleComparison_Explain() {
	a := yarn.Line{Name: "by the swatch", Length: yarn.MustLength("1300 m").Measurement(), More: yarn.MustLength("150 m").Measurement()}
	b := yarn.Line{Name: "by stitches", Length: yarn.MustLength("1400 m").Measurement()}
	c, _ := yarn.Compare(a, b)
	fmt.Println(c.Explain())
	// Output: by the swatch takes 1300 m, by stitches takes 1400 m, about 7.69% more: within their spread
}

func ExampleByPiece() {
	m := func(s string) gauge.Measurement { return yarn.MustLength(s).Measurement() }
	pieces, err := yarn.ByPiece(
		yarn.Line{Name: "fabric", Piece: "left panel", Length: m("600 yd")},
		yarn.Line{Name: "foundation", Part: yarn.Foundation, Piece: "left panel", Length: m("8 yd")},
		yarn.Line{Name: "fabric", Piece: "right panel", Length: m("600 yd")},
		yarn.Line{Name: "centre back", Part: yarn.Seam, Length: m("2 yd")})
	for _, p := range pieces {
		fmt.Printf("%q %v yd\n", p.Piece, p.Length.In(gauge.Yard))
	}
	fmt.Println(err)
	// Output:
	// "left panel" 608 yd
	// "right panel" 600 yd
	// "" 2 yd
	// <nil>
}

func ExamplePart_String() {
	fmt.Println(yarn.Fabric, yarn.Foundation, yarn.Seam, yarn.Ends, yarn.Edging, yarn.Swatching, yarn.Spare)
	// Output: fabric foundation seam ends edging swatch margin
}

func ExamplePart_MarshalText() {
	b, err := yarn.Seam.MarshalText()
	fmt.Println(string(b), err)
	// Output: seam <nil>
}

func ExamplePart_UnmarshalText() {
	var p yarn.Part
	fmt.Println(p.UnmarshalText([]byte("edging")), p)
	fmt.Println(p.UnmarshalText([]byte("sleeve")))
	// Output:
	// <nil> edging
	// parse part: "sleeve": unknown part; want fabric, foundation, seam, ends, edging, swatch or margin
}

func ExampleWhipStitch() {
	s := yarn.WhipStitch()
	fmt.Println(s.Factor, "times the seam,", s.End, "at each end")
	// Output: 2.5 times the seam, 6 in at each end
}

func ExampleLength_IsZero() {
	fmt.Println(yarn.Length{}.IsZero(), yarn.MustLength("0 yd").IsZero())
	// Output: true false
}

func ExampleMass_IsZero() {
	fmt.Println(yarn.Mass{}.IsZero(), yarn.MustMass("0 g").IsZero())
	// Output: true false
}

// All sizes of a wrap: the arithmetic is for one size, grade.Map runs it over
// all.
func Example_sizes() {
	label := yarn.MustLabel("230 yd = 100 g")
	swatch := yarn.Swatch{Width: gauge.MustLength("6 in"), Height: gauge.MustLength("6 in"), Mass: yarn.MustMass("14.5 g")}
	panels := grade.Run[string]{"1560 sq in", "1710 sq in", "1900 sq in", "2150 sq in"}

	quantities, err := grade.Map(panels, func(area string) (yarn.Quantity, error) {
		a, err := yarn.ParseArea(area)
		if err != nil {
			return yarn.Quantity{}, err
		}
		fabric, err := swatch.Fabric("two panels", a, label)
		if err != nil {
			return yarn.Quantity{}, err
		}
		return yarn.Buy(label, yarn.MustMargin("10%"), fabric)
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for i, q := range quantities {
		fmt.Println(panels[i], "->", q.Total.In(gauge.Yard).Text(0), "yd,", q.Mass.In(yarn.Gram).Text(0), "g,", q.Skeins, "skeins")
	}
	// Output:
	// 1560 sq in -> 1590 yd, 691 g, 7 skeins
	// 1710 sq in -> 1743 yd, 758 g, 8 skeins
	// 1900 sq in -> 1936 yd, 842 g, 9 skeins
	// 2150 sq in -> 2191 yd, 953 g, 10 skeins
}
