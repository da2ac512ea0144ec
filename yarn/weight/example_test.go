package weight_test

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/weight"
	"github.com/shopspring/decimal"
)

func over(n int64, span string) gauge.Over {
	return gauge.Over{Count: decimal.NewFromInt(n), Span: gauge.MustLength(span)}
}

// A yarn measured three ways, and what could stand in for it.
func Example() {
	label := yarn.MustLabel("230 yd = 100 g")
	grist, _ := weight.OfLabel(label)
	v, err := weight.Categories(weight.Measured{Crochet: over(13, "4 in"), Hook: gauge.MustLength("5.5 mm"), Grist: grist})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(v.Explain()[0])
	s, err := weight.Substitute(yarn.MustLength("1595 yd").Measurement(), label, yarn.MustLabel("120 m = 50 g"))
	for _, line := range s.Explain() {
		fmt.Println(line)
	}
	fmt.Println(err)
	// Output:
	// categories 3, 4 fit all that was measured; they overlap
	// about 1458.47 m at 120 m a skein: about 12.15, so 13 skeins, about 101.53 m left
	// grist: 240 m/100 g for about 210.31 m/100 g, about 14.12% finer
	// weight categories that fit both by grist: 3, 4; make a swatch
	// <nil>
}

func ExampleParseUnit() {
	u, err := weight.ParseUnit("denier")
	fmt.Println(u, err)
	_, err = weight.ParseUnit("ply")
	fmt.Println(err)
	// Output:
	// den <nil>
	// parse unit of grist: "ply": unknown unit "ply"; want yd/lb, yd/oz, m/100 g, Nm, tex, denier or another of the package doc
}

func ExampleUnit_Valid() {
	fmt.Println(weight.Tex.Valid(), weight.Unit(0).Valid())
	// Output: true false
}

func ExampleUnit_String() {
	fmt.Println(weight.YardsPerPound, weight.MetresPer100g, weight.MetricCount, weight.Denier)
	// Output: yd/lb m/100 g Nm den
}

func ExampleUnit_MarshalText() {
	b, err := weight.MetresPer100g.MarshalText()
	fmt.Println(string(b), err)
	// Output: m/100 g <nil>
}

func ExampleUnit_UnmarshalText() {
	var u weight.Unit
	err := u.UnmarshalText([]byte("cotton count"))
	fmt.Println(u, err)
	// Output: cotton count <nil>
}

func ExampleGristOf() {
	g, err := weight.GristOf(gauge.Int(1000), weight.YardsPerPound)
	fmt.Println(g.In(weight.MetresPer100g).Text(2), "m/100 g", err)
	// Output: 201.59 m/100 g <nil>
}

func ExampleParseGrist() {
	for _, s := range []string{"1000 yd/lb", "200 m/100g", "500 tex", "Nm 14", "2/28 Nm", "200 m"} {
		g, err := weight.ParseGrist(s)
		fmt.Println(g.In(weight.MetresPer100g).Text(1), err)
	}
	// Output:
	// 201.6 <nil>
	// 200.0 <nil>
	// 200.0 <nil>
	// 1400.0 <nil>
	// 0.0 parse grist: "2/28 Nm": a folded count; give the resultant: 2/28 Nm is 14 Nm
	// 0.0 parse grist: "200 m": want a number and a unit of grist, like 210 m/100 g or 1000 yd/lb
}

func ExampleMustGrist() {
	fmt.Println(weight.MustGrist("500 tex"))
	// Output: 200 m/100 g
}

func ExampleOfLabel() {
	g, err := weight.OfLabel(yarn.MustLabel("230 yd = 100 g"))
	fmt.Println(g, "or", g.In(weight.Tex).Text(1), "tex", err)
	// Output: 210.312 m/100 g or 475.5 tex <nil>
}

func ExampleTogether() {
	g, err := weight.Together(weight.MustGrist("400 m/100 g"), weight.MustGrist("400 m/100 g"))
	fmt.Println(g, err)
	g, err = weight.Together(weight.MustGrist("200 m/100 g"), weight.MustGrist("800 m/100 g"))
	fmt.Println(g, err)
	// Output:
	// 200 m/100 g <nil>
	// 160 m/100 g <nil>
}

func ExampleGrist_Validate() {
	fmt.Println(weight.Grist{}.Validate())
	// Output: Grist: got none, want more than 0
}

func ExampleGrist_In() {
	g := weight.MustGrist("14 Nm")
	for _, u := range []weight.Unit{weight.MetresPer100g, weight.Tex, weight.Denier, weight.YardsPerPound, weight.CottonCount} {
		fmt.Println(g.In(u).Text(2), u)
	}
	// Output:
	// 1400.00 m/100 g
	// 71.43 tex
	// 642.86 den
	// 6944.77 yd/lb
	// 8.27 cotton count
}

func ExampleGrist_Cmp() {
	fmt.Println(weight.MustGrist("1000 yd/lb").Cmp(weight.MustGrist("200 m/100 g")))
	// Output: 1
}

func ExampleGrist_String() {
	fmt.Println(weight.MustGrist("200 m/100 g"), weight.MustGrist("1 yd/100 g"))
	// Output: 200 m/100 g 0.9144 m/100 g
}

func ExampleGrist_MarshalText() {
	b, err := weight.MustGrist("14 Nm").MarshalText()
	fmt.Println(string(b), err)
	// Output: 1400 m/100 g <nil>
}

func ExampleGrist_UnmarshalText() {
	var g weight.Grist
	err := g.UnmarshalText([]byte("1400 m/100 g"))
	fmt.Println(g.In(weight.MetricCount), err)
	// Output: 14 <nil>
}

func ExampleRanges() {
	for _, r := range weight.Ranges() {
		if r.Category == 3 && r.Basis == weight.CrochetGauge {
			fmt.Println(r, r.Check)
		}
	}
	// Output: 3 light: 12 to 17 sc = 4 in (HS;CW;MM) two-sources
}

func ExampleRange_String() {
	fmt.Println(weight.Range{Category: 4, Name: "worsted", Low: decimal.NewFromInt(9), High: decimal.NewFromInt(10), Unit: "wpi", Source: "PM"})
	// Output: 4 worsted: 9 to 10 wpi (PM)
}

func ExampleCategories() {
	v, err := weight.Categories(weight.Measured{Crochet: over(14, "4 in")})
	fmt.Println(v.All, err)
	v, err = weight.Categories(weight.Measured{Crochet: over(14, "4 in"), Wraps: over(11, "1 in")})
	fmt.Println(v.All, v.Any, err)
	// Output:
	// [3 4] <nil>
	// [3 4] [3 4] <nil>
}

func ExampleVerdict_Explain() {
	v, _ := weight.Categories(weight.Measured{Needle: gauge.MustLength("3.75 mm"), Grist: weight.MustGrist("400 yd/oz")})
	for _, s := range v.Explain() {
		fmt.Println(s)
	}
	// Output:
	// no category fits all that was measured: check the figures
	// needle: 2 fine: 3.25 to 3.75 mm (HS;CW;MM)
	// needle: 3 light: 3.75 to 4.5 mm (HS;CW;MM)
	// grist: 0 1-ply: 800 and more m/100 g (CU)
	// grist: 0 lace: 600 and more m/100 g (D4)
	// grist: 0 lace (18+ wpi): 2600 and more yd/lb (WW)
	// grist: 0 lace (19+ wpi): 2600 and more yd/lb (BO)
}

func ExampleBasis_String() {
	fmt.Println(weight.CrochetGauge, weight.Wraps)
	// Output: crochet gauge wraps per inch
}

func ExampleBasis_MarshalText() {
	b, err := weight.ByGrist.MarshalText()
	fmt.Println(string(b), err)
	// Output: grist <nil>
}

func ExampleBasis_UnmarshalText() {
	var b weight.Basis
	err := b.UnmarshalText([]byte("hook"))
	fmt.Println(b, err)
	// Output: hook <nil>
}

func ExampleSubstitute() {
	s, err := weight.Substitute(yarn.MustLength("1800 yd").Measurement(), yarn.MustLabel("200 yd = 100 g"), yarn.MustLabel("109 yd = 50 g"))
	fmt.Println(s.Skeins, "balls,", s.Slack.In(gauge.Yard), "yd left", err)
	// Output: 17 balls, 53 yd left <nil>
}

func ExampleSubstitution_Explain() {
	s, _ := weight.Substitute(yarn.MustLength("1800 yd").Measurement(), yarn.MustLabel("200 yd = 100 g"), yarn.MustLabel("400 yd = 100 g"))
	for _, line := range s.Explain() {
		fmt.Println(line)
	}
	// Output:
	// 1800 yd at 400 yd a skein: 4.5, so 5 skeins, 200 yd left
	// grist: 365.76 m/100 g for 182.88 m/100 g, 100% finer
	// no weight category fits both by grist: expect another gauge, and make a swatch
}
