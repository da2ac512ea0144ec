package yarn_test

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"github.com/shopspring/decimal"
)

func ExampleParseLabel() {
	for _, s := range []string{"230 yd = 100 g", "50 g / 137 m", "400yd per 4 oz", "230 yd"} {
		l, err := yarn.ParseLabel(s)
		fmt.Println(l, err)
	}
	// Output:
	// 230 yd = 100 g <nil>
	// 137 m = 50 g <nil>
	// 400 yd = 4 oz <nil>
	// 0 Unit(0) = 0 MassUnit(0) parse label: "230 yd": want a length and a mass, like 230 yd = 100 g
}

func ExampleMustLabel() {
	fmt.Println(yarn.MustLabel("100 g / 210 m"))
	// Output: 210 m = 100 g
}

func ExampleLabel_Validate() {
	fmt.Println(yarn.Label{Length: yarn.MustLength("0 yd"), Mass: yarn.MustMass("100 g")}.Validate())
	// Output: Label.Length: got 0 yd, want more than 0
}

func ExampleLabel_LengthOf() {
	left := yarn.MustLabel("400 yd = 100 g").LengthOf(yarn.MustMass("67 g").Exact())
	fmt.Println(left.In(gauge.Yard), "yd")
	// Output: 268 yd
}

func ExampleLabel_MassOf() {
	m := yarn.MustLabel("400 yd = 100 g").MassOf(yarn.MustLength("100 yd").Measurement())
	fmt.Println(m)
	// Output: 25 g
}

// The same length in balls of several sizes: an exact multiple is not rounded
// further.
func ExampleLabel_Skeins() {
	for _, ball := range []string{"150 m = 50 g", "124 m = 50 g", "90 m = 50 g"} {
		n, slack, err := yarn.MustLabel(ball).Skeins(yarn.MustLength("600 m").Measurement())
		fmt.Println(ball, "->", n, "balls,", slack.In(gauge.Metre), "m left", err)
	}
	// Output:
	// 150 m = 50 g -> 4 balls, 0 m left <nil>
	// 124 m = 50 g -> 5 balls, 20 m left <nil>
	// 90 m = 50 g -> 7 balls, 30 m left <nil>
}

func ExampleLabel_String() {
	fmt.Println(yarn.Label{Length: yarn.MustLength("230 yards"), Mass: yarn.MustMass("3½ oz")})
	// Output: 230 yd = 3.5 oz
}

func ExampleParseLength() {
	for _, s := range []string{"230 yd", "20 1/2 in", "785.5in", "1,250 yd", "230"} {
		l, err := yarn.ParseLength(s)
		fmt.Println(l.Value, err)
	}
	// Output:
	// 230 <nil>
	// 20.5 <nil>
	// 785.5 <nil>
	// 0 parse yarn length: "1,250 yd": a comma in the number; write 1250 or 20.5
	// 0 parse yarn length: "230": no unit; want yd, m, in, ft, cm or mm
}

func ExampleMustLength() {
	fmt.Println(yarn.MustLength("210 metres"))
	// Output: 210 m
}

func ExampleLength_Validate() {
	fmt.Println(yarn.Length{Value: decimal.NewFromInt(200_000), Unit: gauge.Metre}.Validate())
	// Output: Value: got more than 100 km, want at most 100 km
}

func ExampleLength_Measurement() {
	fmt.Println(yarn.MustLength("230 yd").Measurement().In(gauge.Metre).Text(2), "m")
	// Output: 210.31 m
}

func ExampleLength_String() {
	fmt.Println(yarn.Length(gauge.MustLength("20½ in")))
	// Output: 20.5 in
}

func ExampleLength_MarshalText() {
	b, err := yarn.MustLength("230 yd").MarshalText()
	fmt.Println(string(b), err)
	_, err = yarn.Length{}.MarshalText()
	fmt.Println(err)
	// Output:
	// 230 yd <nil>
	// Length.Unit: got Unit(0), want yd, m, in, ft, cm or mm
}

func ExampleLength_UnmarshalText() {
	var l yarn.Length
	err := l.UnmarshalText([]byte("230 yd"))
	fmt.Println(l, err)
	// Output: 230 yd <nil>
}

func ExampleParseMass() {
	for _, s := range []string{"100 g", "3 1/2 oz", "1¾oz", "100"} {
		m, err := yarn.ParseMass(s)
		fmt.Println(m.Value, err)
	}
	// Output:
	// 100 <nil>
	// 3.5 <nil>
	// 1.75 <nil>
	// 0 parse mass: "100": no unit; want g, kg, oz or lb
}

func ExampleMustMass() {
	fmt.Println(yarn.MustMass("14.5 grams"))
	// Output: 14.5 g
}

func ExampleMass_Validate() {
	fmt.Println(yarn.Mass{Value: decimal.NewFromInt(-1), Unit: yarn.Ounce}.Validate())
	// Output: Value: got -1 oz, want at least 0
}

func ExampleMass_Exact() {
	fmt.Println(yarn.MustMass("1 lb").Exact())
	// Output: 453.59237 g
}

func ExampleMass_String() {
	fmt.Println(yarn.Mass{Value: decimal.New(145, -1), Unit: yarn.Gram})
	// Output: 14.5 g
}

func ExampleMass_MarshalText() {
	b, err := yarn.MustMass("14.5 g").MarshalText()
	fmt.Println(string(b), err)
	// Output: 14.5 g <nil>
}

func ExampleMass_UnmarshalText() {
	var m yarn.Mass
	err := m.UnmarshalText([]byte("3½ oz"))
	fmt.Println(m, err)
	// Output: 3.5 oz <nil>
}

func ExampleParseMassUnit() {
	u, err := yarn.ParseMassUnit("Ounces")
	fmt.Println(u, err)
	_, err = yarn.ParseMassUnit("stone")
	fmt.Println(err)
	// Output:
	// oz <nil>
	// parse unit of mass: "stone": unknown unit "stone"; want g, kg, oz or lb
}

func ExampleMassUnit_Valid() {
	fmt.Println(yarn.Pound.Valid(), yarn.MassUnit(0).Valid())
	// Output: true false
}

func ExampleMassUnit_String() {
	fmt.Println(yarn.Gram, yarn.Kilogram, yarn.Ounce, yarn.Pound)
	// Output: g kg oz lb
}

func ExampleMassUnit_MarshalText() {
	b, err := yarn.Ounce.MarshalText()
	fmt.Println(string(b), err)
	// Output: oz <nil>
}

func ExampleMassUnit_UnmarshalText() {
	var u yarn.MassUnit
	err := u.UnmarshalText([]byte("lbs"))
	fmt.Println(u, err)
	// Output: lb <nil>
}

func ExampleMassOf() {
	third, _ := gauge.Share(100, 3)
	fmt.Println(yarn.MassOf(third, yarn.Gram), "and", yarn.MassOf(gauge.Int(2), yarn.Kilogram))
	// Output: 100/3 g and 2000 g
}

func ExampleExactMass_In() {
	m := yarn.MustMass("100 g").Exact()
	fmt.Println(m.In(yarn.Gram), "g,", m.In(yarn.Ounce).Text(2), "oz")
	// Output: 100 g, 3.53 oz
}

func ExampleExactMass_Add() {
	fmt.Println(yarn.MustMass("1 lb").Exact().Add(yarn.MustMass("1 oz").Exact()))
	// Output: 481.941893125 g
}

func ExampleExactMass_Sub() {
	fmt.Println(yarn.MustMass("500 g").Exact().Sub(yarn.MustMass("34 g").Exact()))
	// Output: 466 g
}

func ExampleExactMass_Times() {
	third, _ := gauge.Share(1, 3)
	fmt.Println(yarn.MustMass("100 g").Exact().Times(third))
	// Output: 100/3 g
}

func ExampleExactMass_Per() {
	n, err := yarn.MustMass("693.5 g").Exact().Per(yarn.MustMass("100 g").Exact())
	fmt.Println(n.Text(3), err)
	// Output: 6.935 <nil>
}

func ExampleExactMass_Cmp() {
	fmt.Println(yarn.MustMass("1 oz").Exact().Cmp(yarn.MustMass("28 g").Exact()))
	// Output: 1
}

func ExampleExactMass_Equal() {
	fmt.Println(yarn.MustMass("16 oz").Exact().Equal(yarn.MustMass("1 lb").Exact()))
	// Output: true
}

func ExampleExactMass_Sign() {
	fmt.Println(yarn.ExactMass{}.Sign(), yarn.MustMass("1 g").Exact().Sign())
	// Output: 0 1
}

func ExampleExactMass_String() {
	fmt.Println(yarn.MustMass("3.5 oz").Exact())
	// Output: 99.2233309375 g
}

func ExampleExactMass_MarshalText() {
	third, _ := gauge.Share(100, 3)
	b, err := yarn.MassOf(third, yarn.Gram).MarshalText()
	fmt.Println(string(b), err)
	// Output: 100/3 g <nil>
}

func ExampleExactMass_UnmarshalText() {
	var m yarn.ExactMass
	err := m.UnmarshalText([]byte("100/3 g"))
	fmt.Println(m.In(yarn.Gram).Text(2), err)
	// Output: 33.33 <nil>
}

func ExampleRectangle() {
	a := yarn.Rectangle(gauge.MustLength("25 in").Measurement(), gauge.MustLength("20 in").Measurement())
	fmt.Println(a.In(gauge.Inch), "sq in")
	// Output: 500 sq in
}

func ExampleParseArea() {
	a, err := yarn.ParseArea("1534 sq in")
	fmt.Println(a.In(gauge.Metre).Text(3), "sq m", err)
	_, err = yarn.ParseArea("1534 in")
	fmt.Println(err)
	// Output:
	// 0.990 sq m <nil>
	// parse area: "1534 in": want a number and a square unit, like 1534 sq in
}

func ExampleArea_In() {
	yard := gauge.MustLength("1 yd").Measurement()
	fmt.Println(yarn.Rectangle(yard, yard).In(gauge.Foot), "sq ft")
	// Output: 9 sq ft
}

func ExampleArea_Add() {
	cm := gauge.MustLength("1 cm").Measurement()
	fmt.Println(yarn.Rectangle(cm, cm).Add(yarn.Rectangle(cm, cm)))
	// Output: 200 sq mm
}

func ExampleArea_Times() {
	half, _ := gauge.Share(1, 2) // a triangle
	in := gauge.MustLength("10 in").Measurement()
	fmt.Println(yarn.Rectangle(in, in).Times(half).In(gauge.Inch), "sq in")
	// Output: 50 sq in
}

func ExampleArea_Per() {
	a, _ := yarn.ParseArea("1560 sq in")
	b, _ := yarn.ParseArea("36 sq in")
	n, err := a.Per(b)
	fmt.Println(n, err)
	// Output: 130/3 <nil>
}

func ExampleArea_Cmp() {
	a, _ := yarn.ParseArea("1 sq in")
	b, _ := yarn.ParseArea("6.4516 cm²")
	fmt.Println(a.Cmp(b))
	// Output: 0
}

func ExampleArea_Sign() {
	fmt.Println(yarn.Area{}.Sign())
	// Output: 0
}

func ExampleArea_String() {
	a, _ := yarn.ParseArea("36 sq in")
	fmt.Println(a)
	// Output: 23225.76 sq mm
}

func ExampleArea_MarshalText() {
	a, _ := yarn.ParseArea("36 sq in")
	b, err := a.MarshalText()
	fmt.Println(string(b), err)
	// Output: 23225.76 sq mm <nil>
}

func ExampleArea_UnmarshalText() {
	var a yarn.Area
	err := a.UnmarshalText([]byte("0.25 sq m"))
	fmt.Println(a.In(gauge.Centimetre), err)
	// Output: 2500 <nil>
}

func ExampleParseMargin() {
	for _, s := range []string{"10%", "7.5 %", "-5%", "0.1"} {
		m, err := yarn.ParseMargin(s)
		fmt.Println(m, err)
	}
	// Output:
	// 10% <nil>
	// 7.5% <nil>
	// -5% <nil>
	// 0% parse margin: "0.1": no percent sign; want a percentage like 10%
}

func ExampleMustMargin() {
	fmt.Println(yarn.MustMargin("15 percent"))
	// Output: 15%
}

func ExampleMargin_Validate() {
	fmt.Println(yarn.Margin{Percent: decimal.NewFromInt(-101)}.Validate())
	// Output: Margin.Percent: got -101, want -100 to 1000
}

func ExampleMargin_String() {
	fmt.Println(yarn.Margin{}, yarn.Margin{Percent: decimal.NewFromInt(10)})
	// Output: 0% 10%
}

func ExampleMargin_MarshalText() {
	b, err := yarn.MustMargin("10%").MarshalText()
	fmt.Println(string(b), err)
	// Output: 10% <nil>
}

func ExampleMargin_UnmarshalText() {
	var m yarn.Margin
	err := m.UnmarshalText([]byte("12.5%"))
	fmt.Println(m, err)
	// Output: 12.5% <nil>
}
