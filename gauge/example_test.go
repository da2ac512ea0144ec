package gauge_test

import (
	"encoding/json"
	"errors"
	"fmt"

	"example.com/panelmath/gauge"
	"github.com/shopspring/decimal"
)

func ExampleParseLength() {
	for _, s := range []string{"20 1/2 in", `20½"`, "20.5in", "5 ft 3 in", "52 cm", "1.5 yd", "52,5 cm"} {
		l, err := gauge.ParseLength(s)
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Println(l)
	}
	// Output:
	// 20.5 in
	// 20.5 in
	// 20.5 in
	// 63 in
	// 52 cm
	// 1.5 yd
	// parse length: "52,5 cm": a comma in the number; write 1250 or 20.5
}

func ExampleMustLength() {
	fmt.Println(gauge.MustLength("48½ in"))
	// Output:
	// 48.5 in
}

func ExampleLength_String() {
	fmt.Println(gauge.Length{Value: decimal.RequireFromString("20.50"), Unit: gauge.Inch})
	// Output:
	// 20.5 in
}

func ExampleLength_Validate() {
	fmt.Println(gauge.Length{Value: decimal.NewFromInt(120), Unit: gauge.Metre}.Validate())
	fmt.Println(gauge.Length{}.Validate())
	// Output:
	// Value: got 120 m, want at most 100 m
	// Unit: got Unit(0), want mm, cm, m, in, ft or yd
}

func ExampleLength_Measurement() {
	// A third of 100 cm, exactly, until it is printed.
	third, _ := gauge.Share(1, 3)
	m := gauge.MustLength("100 cm").Measurement().Times(third)
	fmt.Println(m, "is about", gauge.HalfCentimetre.Text(m))
	// Output:
	// 1000/3 mm is about 33.5 cm
}

func ExampleLength_MarshalText() {
	b, err := json.Marshal(gauge.MustLength("20½ in"))
	fmt.Println(string(b), err)
	// Output:
	// "20.5 in" <nil>
}

func ExampleLength_UnmarshalText() {
	var brief struct{ Length gauge.Length }
	err := json.Unmarshal([]byte(`{"Length": "9 inn"}`), &brief)
	fmt.Println(err)
	// Output:
	// parse length: "9 inn": unknown unit "inn"
}

func ExampleParseUnit() {
	u, err := gauge.ParseUnit("Inches")
	fmt.Println(u, err)
	_, err = gauge.ParseUnit("ell")
	fmt.Println(err)
	// Output:
	// in <nil>
	// parse unit: "ell": unknown unit "ell"; want mm, cm, m, in, ft or yd
}

func ExampleUnit_String() {
	fmt.Println(gauge.Millimetre, gauge.Centimetre, gauge.Metre, gauge.Inch, gauge.Foot, gauge.Yard)
	// Output:
	// mm cm m in ft yd
}

func ExampleUnit_Valid() {
	fmt.Println(gauge.Inch.Valid(), gauge.Unit(0).Valid())
	// Output:
	// true false
}

func ExampleUnit_MarshalText() {
	b, err := json.Marshal([]gauge.Unit{gauge.Inch, gauge.Centimetre})
	fmt.Println(string(b), err)
	// Output:
	// ["in","cm"] <nil>
}

func ExampleUnit_UnmarshalText() {
	var units []gauge.Unit
	err := json.Unmarshal([]byte(`["centimeters", "yd"]`), &units)
	fmt.Println(units, err)
	// Output:
	// [cm yd] <nil>
}

func ExampleMeasurementOf() {
	seven, _ := gauge.Share(7, 3)
	fmt.Println(gauge.MeasurementOf(seven, gauge.Inch))
	// Output:
	// 889/15 mm
}

func ExampleParseMeasurement() {
	for _, s := range []string{"13000/3 mm", "100/3 cm", "20½ in"} {
		m, err := gauge.ParseMeasurement(s)
		fmt.Println(m, err)
	}
	// Output:
	// 13000/3 mm <nil>
	// 1000/3 mm <nil>
	// 520.7 mm <nil>
}

func ExampleMeasurement_In() {
	fmt.Println(gauge.MustLength("4 in").Measurement().In(gauge.Centimetre).Text(2))
	// Output:
	// 10.16
}

func ExampleMeasurement_Add() {
	a, b := gauge.MustLength("36 in").Measurement(), gauge.MustLength("8.6 cm").Measurement()
	fmt.Println(a.Add(b))
	// Output:
	// 1000.4 mm
}

func ExampleMeasurement_Sub() {
	a, b := gauge.MustLength("36 in").Measurement(), gauge.MustLength("1 yd").Measurement()
	fmt.Println(a.Sub(b))
	// Output:
	// 0 mm
}

func ExampleMeasurement_Times() {
	quarter, _ := gauge.Share(1, 4)
	fmt.Println(gauge.QuarterInch.Text(gauge.MustLength("46 in").Measurement().Times(quarter)))
	// Output:
	// 11½ in
}

func ExampleMeasurement_Per() {
	x, err := gauge.MustLength("10 cm").Measurement().Per(gauge.MustLength("4 in").Measurement())
	fmt.Println(x, err)
	// Output:
	// 125/127 <nil>
}

func ExampleMeasurement_Cmp() {
	fmt.Println(gauge.MustLength("10 cm").Measurement().Cmp(gauge.MustLength("4 in").Measurement()))
	// Output:
	// -1
}

func ExampleMeasurement_Equal() {
	fmt.Println(gauge.MustLength("3 ft").Measurement().Equal(gauge.MustLength("1 yd").Measurement()))
	// Output:
	// true
}

func ExampleMeasurement_Sign() {
	fmt.Println(gauge.MustLength("-2 in").Measurement().Sign())
	// Output:
	// -1
}

func ExampleMeasurement_String() {
	m, _ := gauge.MustGauge("13 sts and 9 rows = 4 in").Width(101)
	fmt.Println(m)
	// Output:
	// 51308/65 mm
}

func ExampleMeasurement_MarshalText() {
	b, err := json.Marshal(gauge.MustLength("48½ in").Measurement())
	fmt.Println(string(b), err)
	// Output:
	// "1231.9 mm" <nil>
}

func ExampleMeasurement_UnmarshalText() {
	var m gauge.Measurement
	err := json.Unmarshal([]byte(`"1231.9 mm"`), &m)
	fmt.Println(gauge.QuarterInch.Text(m), err)
	// Output:
	// 48½ in <nil>
}

func ExampleInt() {
	fmt.Println(gauge.Int(104))
	// Output:
	// 104
}

func ExampleShare() {
	x, err := gauge.Share(10, 4)
	fmt.Println(x, err)
	_, err = gauge.Share(1, 0)
	fmt.Println(err)
	// Output:
	// 5/2 <nil>
	// d: got 0, want a denominator other than 0
}

func ExampleFromDecimal() {
	x, err := gauge.FromDecimal(decimal.RequireFromString("103.6"))
	fmt.Println(x, err)
	_, err = gauge.FromDecimal(decimal.New(1, 1_000_000_000))
	fmt.Println(err)
	// Output:
	// 518/5 <nil>
	// d: got an exponent of 1000000000, want an exponent of -20 to 20
}

func ExampleParseRatio() {
	for _, s := range []string{"511/8", "103.6", "1/0"} {
		x, err := gauge.ParseRatio(s)
		fmt.Println(x, err)
	}
	// Output:
	// 511/8 <nil>
	// 518/5 <nil>
	// 0 parse ratio: "1/0": want a number like 104, 0.5 or 511/8
}

func ExampleRatio_Add() {
	third, _ := gauge.Share(1, 3)
	fmt.Println(third.Add(third).Add(third))
	// Output:
	// 1
}

func ExampleRatio_Sub() {
	third, _ := gauge.Share(1, 3)
	fmt.Println(third.Sub(gauge.Int(1)))
	// Output:
	// -2/3
}

func ExampleRatio_Mul() {
	third, _ := gauge.Share(1, 3)
	fmt.Println(third.Mul(gauge.Int(100)))
	// Output:
	// 100/3
}

func ExampleRatio_Quo() {
	x, err := gauge.Int(13).Quo(gauge.Int(9))
	fmt.Println(x, err)
	_, err = x.Quo(gauge.Int(0))
	fmt.Println(err)
	// Output:
	// 13/9 <nil>
	// y: got 0, want a divisor other than 0
}

func ExampleRatio_Cmp() {
	third, _ := gauge.Share(1, 3)
	x, _ := gauge.ParseRatio("0.3333333333333333")
	fmt.Println(x.Cmp(third))
	// Output:
	// -1
}

func ExampleRatio_Equal() {
	a, _ := gauge.Share(1, 2)
	b, _ := gauge.Share(2, 4)
	fmt.Println(a.Equal(b))
	// Output:
	// true
}

func ExampleRatio_Sign() {
	fmt.Println(gauge.Int(-3).Sign(), gauge.Ratio{}.Sign())
	// Output:
	// -1 0
}

func ExampleRatio_Rat() {
	x, _ := gauge.ParseRatio("103.6")
	fmt.Println(x.Rat())
	// Output:
	// 518/5
}

func ExampleRatio_Floor() {
	x, _ := gauge.ParseRatio("-2.5")
	n, err := x.Floor()
	fmt.Println(n, err)
	// Output:
	// -3 <nil>
}

func ExampleRatio_Ceil() {
	x, _ := gauge.ParseRatio("-2.5")
	n, err := x.Ceil()
	fmt.Println(n, err)
	// Output:
	// -2 <nil>
}

func ExampleRatio_Decimal() {
	x, _ := gauge.Share(2, 3)
	fmt.Println(x.Decimal(3))
	// Output:
	// 0.667
}

func ExampleRatio_ExactDecimal() {
	eighth, _ := gauge.Share(1, 8)
	third, _ := gauge.Share(1, 3)
	fmt.Println(eighth.ExactDecimal())
	_, ok := third.ExactDecimal()
	fmt.Println(ok)
	// Output:
	// 0.125 true
	// false
}

func ExampleRatio_Text() {
	x, _ := gauge.Share(1, 8)
	fmt.Println(x.Text(2), gauge.Int(2).Text(2))
	// Output:
	// 0.13 2.00
}

func ExampleRatio_String() {
	x, _ := gauge.Share(1022, 16)
	fmt.Println(x)
	// Output:
	// 511/8
}

func ExampleRatio_MarshalText() {
	x, _ := gauge.Share(1022, 16)
	b, err := json.Marshal(x)
	fmt.Println(string(b), err)
	// Output:
	// "511/8" <nil>
}

func ExampleRatio_UnmarshalText() {
	var x gauge.Ratio
	err := x.UnmarshalText([]byte("511/8"))
	fmt.Println(x, err)
	// Output:
	// 511/8 <nil>
}

func ExampleRatio_UnmarshalJSON() {
	var x []gauge.Ratio
	err := json.Unmarshal([]byte(`["511/8", "103.6", 0.25]`), &x)
	fmt.Println(x, err)
	// Output:
	// [511/8 518/5 1/4] <nil>
}

func ExampleParseGrid() {
	g, err := gauge.ParseGrid("Half centimeter")
	fmt.Println(g, err)
	// Output:
	// half centimetre <nil>
}

func ExampleGrid_Text() {
	m := gauge.MustLength("48.45 in").Measurement()
	fmt.Printf("%s [%s, or %s at 2.5 cm to the inch]\n", gauge.QuarterInch.Text(m), gauge.HalfCentimetre.Text(m), gauge.HalfCentimetreAt25.Text(m))
	// Output:
	// 48½ in [123 cm, or 121 cm at 2.5 cm to the inch]
}

func ExampleGrid_Number() {
	for _, s := range []string{"0.3 in", "11 7/8 in", "35.9999 in"} {
		fmt.Println(gauge.QuarterInch.Number(gauge.MustLength(s).Measurement()), gauge.EighthInch.Number(gauge.MustLength(s).Measurement()))
	}
	// Output:
	// ¼ ¼
	// 12 11⅞
	// 36 36
}

// A tail of 48.1 in is cut at 48¼ in, not at 48.
func ExampleGrid_RoundUp() {
	tail := gauge.MustLength("48.1 in").Measurement()
	fmt.Println(gauge.QuarterInch.Round(tail), "or", gauge.QuarterInch.RoundUp(tail))
	// Output:
	// 48 in or 48.25 in
}

func ExampleGrid_Round() {
	fmt.Println(gauge.HalfCentimetre.Round(gauge.MustLength("36 in").Measurement()))
	// Output:
	// 91.5 cm
}

func ExampleGrid_Unit() {
	fmt.Println(gauge.EighthInch.Unit(), gauge.WholeCentimetreAt25.Unit())
	// Output:
	// in cm
}

func ExampleGrid_String() {
	fmt.Println(gauge.QuarterInch, "/", gauge.HalfCentimetreAt25)
	// Output:
	// quarter inch / half centimetre at 2.5 to the inch
}

func ExampleGrid_Validate() {
	fmt.Println(gauge.WholeInch.Validate(), gauge.Grid(9).Validate() != nil)
	// Output:
	// <nil> true
}

func ExampleGrid_MarshalText() {
	b, err := json.Marshal(gauge.HalfCentimetre)
	fmt.Println(string(b), err)
	// Output:
	// "half centimetre" <nil>
}

func ExampleGrid_UnmarshalText() {
	var g gauge.Grid
	err := json.Unmarshal([]byte(`"eighth inch"`), &g)
	fmt.Println(g, err)
	// Output:
	// eighth inch <nil>
}

func ExampleParseRule() {
	for _, s := range []string{"multiple of 6 + 1", "6n + 1", "even", "odd, at least 9, up", "multiple of seven"} {
		r, err := gauge.ParseRule(s)
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Println(r)
	}
	// Output:
	// multiple of 6 + 1
	// multiple of 6 + 1
	// even
	// odd, at least 9, up
	// parse rule: "multiple of seven": want multiple of 6 + 1, multiple of 4, even, odd or any, got "multiple of seven"
}

func ExampleRule_Round() {
	x, _ := gauge.ParseRatio("103.6")
	c, err := gauge.Rule{Multiple: 4, Plus: 2}.Round(x)
	fmt.Println(c.Value, c.Below, c.Above, err)
	_, err = gauge.Rule{Least: 110, Direction: gauge.Down}.Round(x)
	fmt.Println(err, errors.Is(err, gauge.ErrNoCount))
	// Output:
	// 102 102 106 <nil>
	// round 103.6 by "any, at least 110, down": no legal count; the smallest is 110 true
}

func ExampleRule_Within() {
	// 12 + 14 in a window of 41 to 42 in at 5.25 to the inch: 215.25 to 220.5.
	low, _ := gauge.ParseRatio("215.25")
	high, _ := gauge.ParseRatio("220.5")
	r := gauge.Rule{Multiple: 12, Plus: 14}
	fmt.Println(r.Within(low, high))
	fmt.Println(r.Within(gauge.Int(219), high)) // none is an answer too
	// Output:
	// [218] <nil>
	// [] <nil>
}

func ExampleRule_Legal() {
	r := gauge.Rule{Multiple: 6, Plus: 1}
	fmt.Println(r.Legal(43), r.Legal(42))
	// Output:
	// true false
}

func ExampleRule_String() {
	fmt.Println(gauge.Rule{Multiple: 3, Plus: -1, Least: 20, Direction: gauge.NearestTiesDown})
	fmt.Println(gauge.Rule{})
	// Output:
	// multiple of 3 - 1, at least 20, ties down
	// any
}

func ExampleRule_Validate() {
	fmt.Println(gauge.Rule{Multiple: -6}.Validate())
	// Output:
	// Rule.Multiple: got -6, want 0 to 100000
}

func ExampleRule_MarshalText() {
	b, err := json.Marshal(gauge.Rule{Multiple: 6, Plus: 1})
	fmt.Println(string(b), err)
	// Output:
	// "multiple of 6 + 1" <nil>
}

func ExampleRule_UnmarshalText() {
	var r gauge.Rule
	err := json.Unmarshal([]byte(`"multiple of 6 + 1"`), &r)
	fmt.Println(r.Multiple, r.Plus, err)
	// Output:
	// 6 1 <nil>
}

func ExampleDirection_String() {
	fmt.Println(gauge.Nearest, "/", gauge.NearestTiesDown, "/", gauge.Up, "/", gauge.Down)
	// Output:
	// nearest / ties down / up / down
}

func ExampleDirection_MarshalText() {
	b, err := json.Marshal(gauge.NearestTiesDown)
	fmt.Println(string(b), err)
	// Output:
	// "ties down" <nil>
}

func ExampleDirection_UnmarshalText() {
	var d gauge.Direction
	err := json.Unmarshal([]byte(`"up"`), &d)
	fmt.Println(d, err)
	// Output:
	// up <nil>
}

func ExampleCount_Explain() {
	g := gauge.MustGauge("20 sts and 26 rows = 10 cm")
	c, _ := g.StitchesIn(gauge.MustLength("51.8 cm").Measurement(), gauge.Rule{Multiple: 4, Plus: 2})
	fmt.Println(c.Explain())
	c, _ = g.RowsIn(gauge.MustLength("12.5 cm").Measurement(), gauge.Rule{})
	fmt.Println(c.Explain())
	c, _ = g.Rows.Round(gauge.MustLength("50 cm").Measurement(), gauge.Rule{Multiple: 2})
	fmt.Println(c.Explain())
	// Output:
	// 103.6 stitches lie between 102 (0.8 cm narrower) and 106 (1.2 cm wider), multiple of 4 + 2: the nearest is 102
	// 32.5 rows lie between 32 (about 0.2 cm shorter) and 33 (about 0.2 cm longer): just in the middle, so take the larger, 33
	// 130 comes out exactly, even
}

func ExampleCount_ExplainIn() {
	g := gauge.MustGauge("20 sts and 26 rows = 10 cm")
	c, _ := g.StitchesIn(gauge.MustLength("51.8 cm").Measurement(), gauge.Rule{Multiple: 4, Plus: 2})
	fmt.Println(c.ExplainIn(gauge.Inch))
	// Output:
	// 103.6 stitches lie between 102 (about ⅜ in narrower) and 106 (about ½ in wider), multiple of 4 + 2: the nearest is 102
}

func ExampleCount_Off() {
	c, _ := gauge.Rule{}.Round(gauge.Int(7))
	x, _ := gauge.ParseRatio("103.6")
	d, _ := gauge.Rule{Multiple: 4, Plus: 2}.Round(x)
	fmt.Println(c.Off(), d.Off())
	// Output:
	// 0 -8/5
}

func ExampleCount_Deviation() {
	c, _ := gauge.MustGauge("20 sts and 26 rows = 10 cm").Stitches.Round(gauge.MustLength("518 mm").Measurement(), gauge.Rule{Multiple: 4, Plus: 2})
	fmt.Println(c.Deviation())
	// Output:
	// -8 mm
}

func ExampleCount_DeviationOf() {
	c, _ := gauge.MustGauge("20 sts and 26 rows = 10 cm").Stitches.Round(gauge.MustLength("518 mm").Measurement(), gauge.Rule{Multiple: 4, Plus: 2})
	fmt.Println(c.Below, c.DeviationOf(c.Below))
	fmt.Println(c.Above, c.DeviationOf(c.Above))
	// Output:
	// 102 -8 mm
	// 106 12 mm
}

func ExampleCounted_String() {
	fmt.Println(gauge.Stitches, gauge.Rows)
	// Output:
	// stitches rows
}

func ExampleCounted_MarshalText() {
	b, err := json.Marshal(gauge.Rows)
	fmt.Println(string(b), err)
	// Output:
	// "rows" <nil>
}

func ExampleCounted_UnmarshalText() {
	var c gauge.Counted
	err := json.Unmarshal([]byte(`"stitches"`), &c)
	fmt.Println(c == gauge.Stitches, err)
	// Output:
	// true <nil>
}

func ExampleCounter_Round() {
	counter, err := gauge.MustGauge("13 sts and 9 rows = 4 in").Stitches.Counter(gauge.Rule{Multiple: 3, Plus: 1})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, width := range []string{"17 in", "19 in", "22 in"} {
		c, err := counter.Round(gauge.MustLength(width).Measurement())
		fmt.Println(c.Value, err)
	}
	// Output:
	// 55 <nil>
	// 61 <nil>
	// 73 <nil>
}

func ExampleParseOver() {
	o, err := gauge.ParseOver("2 repeats of 8 over 3.5 in")
	fmt.Println(o.Count, o.Of, o.Span, err)
	// Output:
	// 2 8 3.5 in <nil>
}

func ExampleOver_Exact() {
	o, _ := gauge.ParseOver("14 over 4 in")
	x, err := o.Exact(gauge.MustLength("18 1/4 in").Measurement())
	fmt.Println(x, err)
	// Output:
	// 511/8 <nil>
}

func ExampleOver_Round() {
	o, _ := gauge.ParseOver("14 over 4 in")
	c, err := o.Round(gauge.MustLength("18 1/4 in").Measurement(), gauge.Rule{})
	fmt.Println(c.Value, err)
	// Output:
	// 64 <nil>
}

func ExampleOver_Counter() {
	o, _ := gauge.ParseOver("14 over 4 in")
	counter, err := o.Counter(gauge.Rule{Multiple: 2})
	if err != nil {
		fmt.Println(err)
		return
	}
	c, err := counter.Round(gauge.MustLength("18 1/4 in").Measurement())
	fmt.Println(c.Value, err)
	// Output:
	// 64 <nil>
}

func ExampleOver_Within() {
	o, _ := gauge.ParseOver("5.25 over 1 in")
	r := gauge.Rule{Multiple: 12, Plus: 14}
	fmt.Println(o.Within(gauge.MustLength("41 in").Measurement(), gauge.MustLength("42 in").Measurement(), r))
	// Output:
	// [218] <nil>
}

func ExampleOver_Measure() {
	o, _ := gauge.ParseOver("13 over 4 in")
	m, err := o.Measure(gauge.Int(101))
	fmt.Println(m, gauge.QuarterInch.Text(m), err)
	// Output:
	// 51308/65 mm 31 in <nil>
}

func ExampleOver_String() {
	fmt.Println(gauge.Over{Count: decimal.NewFromInt(2), Of: 8, Span: gauge.MustLength("3½ in")})
	// Output:
	// 2 repeats of 8 over 3.5 in
}

func ExampleOver_Validate() {
	fmt.Println(gauge.Over{Span: gauge.MustLength("4 in")}.Validate())
	// Output:
	// Count: got 0, want more than 0
}

func ExampleOver_MarshalText() {
	b, err := json.Marshal(gauge.Over{Count: decimal.NewFromInt(13), Span: gauge.MustLength("4 in")})
	fmt.Println(string(b), err)
	// Output:
	// "13 over 4 in" <nil>
}

func ExampleOver_UnmarshalText() {
	var o gauge.Over
	err := json.Unmarshal([]byte(`"13 sts over 4 in"`), &o)
	fmt.Println(o, err)
	// Output:
	// 13 over 4 in <nil>
}

func ExampleParseGauge() {
	for _, s := range []string{
		"12 sts and 7 rows = 4 in", "20 sts = 7 cm, 10 rows = 10 cm", "2 repeats of 8 sts = 3.5 in, 9 rows = 4 in",
		"18 stitches x 24 rows over 10cm", "5 clusters of 3 sts and 9 rows = 4 in", "20 sts = 7 cm",
	} {
		g, err := gauge.ParseGauge(s)
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Println(g)
	}
	// Output:
	// 12 sts and 7 rows = 4 in
	// 20 sts = 7 cm, 10 rows = 10 cm
	// 2 repeats of 8 sts = 3.5 in, 9 rows = 4 in
	// 18 sts and 24 rows = 10 cm
	// 5 repeats of 3 sts and 9 rows = 4 in
	// parse gauge: "20 sts = 7 cm": no rows; want both: 12 sts and 7 rows = 4 in
}

func ExampleMustGauge() {
	g := gauge.MustGauge("13 sts and 9 rows = 4 in")
	fmt.Println(g.Stitches.Count, g.Rows.Count)
	// Output:
	// 13 9
}

func ExampleGauge_StitchesIn() {
	g := gauge.MustGauge("13 sts and 9 rows = 4 in")
	c, err := g.StitchesIn(gauge.MustLength("20 in").Measurement(), gauge.Rule{Multiple: 2, Plus: 1})
	fmt.Println(c.Value, c.Exact, err)
	// Output:
	// 65 65 <nil>
}

func ExampleGauge_RowsIn() {
	g := gauge.MustGauge("26 sts and 26 rows = 4 in")
	c, err := g.RowsIn(gauge.MustLength("7 in").Measurement(), gauge.Rule{})
	fmt.Println(c.Value, c.Tie, err)
	// Output:
	// 46 true <nil>
}

func ExampleGauge_Width() {
	m, err := gauge.MustGauge("14 sts and 11 rows = 4 in").Width(64)
	fmt.Println(m.In(gauge.Inch).Text(2), "in", err)
	// Output:
	// 18.29 in <nil>
}

func ExampleGauge_Length() {
	m, err := gauge.MustGauge("14 sts and 7 rows = 1 in").Length(45)
	fmt.Println(m.In(gauge.Inch).Text(2), "in", err)
	// Output:
	// 6.43 in <nil>
}

func ExampleGauge_String() {
	fmt.Println(gauge.MustGauge("20 sts over 7 cm; 10 rows over 10 cm"))
	// Output:
	// 20 sts = 7 cm, 10 rows = 10 cm
}

func ExampleGauge_Validate() {
	fmt.Println(gauge.Gauge{}.Validate())
	// Output:
	// Gauge.Stitches.Count: got 0, want more than 0
}

func ExampleGauge_MarshalText() {
	b, err := json.Marshal(gauge.MustGauge("12 sts x 7 rows = 4 in"))
	fmt.Println(string(b), err)
	// Output:
	// "12 sts and 7 rows = 4 in" <nil>
}

func ExampleGauge_UnmarshalText() {
	var g gauge.Gauge
	err := json.Unmarshal([]byte(`"12 sts and 7 rows = 4"`), &g)
	fmt.Println(err)
	// Output:
	// parse gauge: "12 sts and 7 rows = 4": no unit; want mm, cm, m, in, ft or yd
}

func ExampleFabric() {
	f := gauge.Fabric{
		Worked:   gauge.MustGauge("4.25 sts and 6 rows = 1 in"),
		Finished: gauge.MustGauge("3.5 sts and 5 rows = 1 in"),
	}
	g, err := f.Growth()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("washing makes it", g.Explain())
	c, _ := f.Finished.StitchesIn(gauge.MustLength("23 in").Measurement(), gauge.Rule{})
	work, _ := f.WorkLength(gauge.MustLength("24 in").Measurement())
	fmt.Printf("%d sts; work until the piece measures %s\n", c.Value, gauge.QuarterInch.Text(work))
	// Output:
	// washing makes it 21.4 % wider and 20 % longer
	// 81 sts; work until the piece measures 20 in
}

func ExampleFabric_Growth() {
	f := gauge.Fabric{Worked: gauge.MustGauge("29 sts and 44 rows = 4 in"), Finished: gauge.MustGauge("28 sts and 46 rows = 4 in")}
	g, err := f.Growth()
	fmt.Println(g.Width, g.Length, err)
	// Output:
	// 29/28 22/23 <nil>
}

func ExampleGrowth_Explain() {
	f := gauge.Fabric{Worked: gauge.MustGauge("29 sts and 44 rows = 4 in"), Finished: gauge.MustGauge("28 sts and 46 rows = 4 in")}
	g, _ := f.Growth()
	fmt.Println(g.Explain())
	// Output:
	// 3.6 % wider and 4.3 % shorter
}

func ExampleFabric_Hang() {
	f := gauge.Fabric{Finished: gauge.MustGauge("13 sts and 9 rows = 4 in"), Hung: gauge.MustGauge("13 sts and 9 rows = 4¼ in")}
	g, err := f.Hang()
	fmt.Println(g.Explain(), err)
	// Output:
	// 6.3 % wider and 6.3 % longer <nil>
}

func ExampleFabric_Validate() {
	fmt.Println(gauge.Fabric{Worked: gauge.MustGauge("13 sts and 9 rows = 4 in")}.Validate())
	// Output:
	// Fabric.Finished.Gauge.Stitches.Count: got 0, want more than 0
}

func ExampleFabric_WorkWidth() {
	f := gauge.Fabric{Worked: gauge.MustGauge("20 sts and 20 rows = 4 in"), Finished: gauge.MustGauge("20 sts and 20 rows = 4¼ in")}
	work, err := f.WorkWidth(gauge.MustLength("17 in").Measurement())
	fmt.Println(gauge.QuarterInch.Text(work), err)
	// Output:
	// 16 in <nil>
}

func ExampleFabric_WorkLength() {
	f := gauge.Fabric{Worked: gauge.MustGauge("13 sts and 10 rows = 4 in"), Finished: gauge.MustGauge("13 sts and 9 rows = 4 in")}
	work, err := f.WorkLength(gauge.MustLength("20 in").Measurement())
	fmt.Println(gauge.QuarterInch.Text(work), err)
	// Output:
	// 18 in <nil>
}

func ExampleCombine() {
	r, err := gauge.Combine(gauge.Rule{Multiple: 3, Plus: 1}, gauge.Rule{Multiple: 2})
	fmt.Println(r, err)
	_, err = gauge.Combine(gauge.Rule{Multiple: 4}, gauge.Rule{Multiple: 2, Plus: 1})
	fmt.Println(err)
	// Output:
	// multiple of 6 + 4 <nil>
	// combine multiple of 4 and odd: no legal count
}

func ExampleParseError_Error() {
	_, err := gauge.ParseGauge("12 sts and 7 rows over 4 inn")
	var parse *gauge.ParseError
	if errors.As(err, &parse) {
		fmt.Println(parse.Error())
		fmt.Println(parse.Text[parse.At:])
	}
	// Output:
	// parse gauge: "12 sts and 7 rows over 4 inn": unknown unit "inn"
	// inn
}

func ExampleParseError_Unwrap() {
	_, err := gauge.ParseLength("101 m")
	fmt.Println(errors.Is(err, gauge.ErrBounds))
	// Output:
	// true
}

func ExampleFieldError_Error() {
	g := gauge.MustGauge("12 sts and 7 rows = 4 in")
	g.Rows.Span = gauge.MustLength("-4 in")
	var field *gauge.FieldError
	if errors.As(g.Validate(), &field) {
		fmt.Println(field.Error())
	}
	// Output:
	// Gauge.Rows.Span: got -4 in, want more than 0
}

func ExampleFieldError_Unwrap() {
	err := gauge.Rule{Least: 1_000_000}.Validate()
	fmt.Println(errors.Is(err, gauge.ErrBounds))
	// Output:
	// true
}

func ExampleInField() {
	fmt.Println(gauge.InField("Brief", gauge.Gauge{}.Validate()))
	// Output:
	// Brief.Gauge.Stitches.Count: got 0, want more than 0
}
