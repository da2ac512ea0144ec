package swatch_test

import (
	"encoding/json"
	"fmt"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/gauge/swatch"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

var (
	halfStitch  = decimal.New(5, -1)
	quarterInch = gauge.MustLength("¼ in")
)

// over is a literal.
func over(s string) gauge.Over {
	o, err := gauge.ParseOver(s)
	if err != nil {
		panic(err)
	}
	return o
}

// read is a swatch read to the half stitch, the spans laid off exactly.
func read(overs ...string) swatch.Swatch {
	var s swatch.Swatch
	for _, o := range overs {
		s.Readings = append(s.Readings, swatch.Reading{Over: over(o), CountTo: halfStitch})
	}
	return s
}

// Three readings of one swatch, and what 101 stitches will measure.
func Example() {
	s := swatch.Swatch{Readings: []swatch.Reading{
		{Over: over("13 over 4 in"), CountTo: halfStitch},
		{Over: over("12.5 over 4 in"), CountTo: halfStitch},
		{Over: over("6.5 over 2 in"), CountTo: halfStitch},
	}}
	o, err := s.Over()
	if err != nil {
		fmt.Println(err)
		return
	}
	spread, _ := s.Spread()
	width, _ := s.Measure(101)
	fmt.Println(o)
	fmt.Println(spread.Explain())
	fmt.Println(width.Text(gauge.QuarterInch))
	// Output:
	// 32 over 10 in
	// the readings differ by 3.9 %; reading them can cause 3.9 %, which is all of it
	// 31½ in (30 to 33)
}

func ExampleSwatch_Over() {
	o, err := swatch.Swatch{Readings: []swatch.Reading{{Over: over("13 over 4 in")}, {Over: over("20 over 15 cm")}}}.Over()
	fmt.Println(o, err)
	// Output:
	// 33 over 251.6 mm <nil>
}

func ExampleSwatch_Spread() {
	// Half a stitch over 2 in is 5 %.
	s := swatch.Swatch{Readings: []swatch.Reading{{Over: over("10 over 2 in"), CountTo: halfStitch}, {Over: over("10.5 over 2 in"), CountTo: halfStitch}}}
	spread, err := s.Spread()
	fmt.Println(spread.Between, spread.Reading, spread.Share, err)
	// Output:
	// 2/41 2/41 1 <nil>
}

func ExampleSpread_Explain() {
	s := swatch.Swatch{Readings: []swatch.Reading{{Over: over("20 over 4 in"), CountTo: halfStitch}, {Over: over("23 over 4 in"), CountTo: halfStitch}}}
	spread, _ := s.Spread()
	fmt.Println(spread.Explain())
	// Output:
	// the readings differ by 14 %; reading them can cause 2.3 %, which is 16.7 % of it: the fabric itself varies
}

func ExampleSwatch_Measure() {
	for _, reading := range []string{"10 over 2 in", "20 over 4 in"} {
		s := swatch.Swatch{Readings: []swatch.Reading{{Over: over(reading), CountTo: halfStitch}}}
		width, err := s.Measure(200)
		fmt.Println(width.Text(gauge.QuarterInch), err)
	}
	// Output:
	// 40 in (39 to 41) <nil>
	// 40 in (39½ to 40½) <nil>
}

func ExampleRange_Text() {
	m := func(s string) gauge.Measurement { return gauge.MustLength(s).Measurement() }
	fmt.Println(swatch.Range{Low: m("39.5 in"), Mid: m("41 in"), High: m("42.7 in")}.Text(gauge.QuarterInch))
	// Output:
	// 41 in (39½ to 42¾)
}

func ExampleRange_PlusMinus() {
	s := swatch.Swatch{Readings: []swatch.Reading{{Over: over("10 over 2 in"), CountTo: halfStitch}}}
	width, _ := s.Measure(200)
	fmt.Println(gauge.QuarterInch.Text(width.Mid), "±", gauge.EighthInch.Text(width.PlusMinus()))
	// Output: 40 in ± 1 in
}

func ExampleSwatch_Validate() {
	fmt.Println(swatch.Swatch{}.Validate())
	// Output:
	// Swatch.Readings: got 0 readings, want 1 to 64
}

func ExampleReading_Validate() {
	fmt.Println(swatch.Reading{Over: over("13 over 4 in"), CountTo: decimal.New(-5, -1)}.Validate())
	// Output:
	// Reading.CountTo: got -0.500, want 0, or a step less than twice the count
}

func ExamplePrinted() {
	for _, s := range []string{"14 over 4 in", "13.5 over 4 in", "5.25 over 1 in"} {
		fmt.Println(swatch.Printed(over(s)).CountTo)
	}
	// Output:
	// 1
	// 0.5
	// 0.01
}

func ExampleReading_Compare() {
	// A vest of 117 stitches is drawn 33 1/2 in wide; 20 sts = 4 in is printed.
	drawn := swatch.Reading{Over: over("117 over 33.5 in"), CountTo: decimal.New(1, 0), SpanTo: gauge.MustLength("½ in")}
	for _, printed := range []string{"20 over 4 in", "14 over 4 in"} {
		c, err := swatch.Printed(over(printed)).Compare(drawn)
		fmt.Println(c.Explained, c.Ratio.Text(2), err)
	}
	// Output:
	// false 0.70 <nil>
	// true 1.00 <nil>
}

func ExampleComparison_Explain() {
	c, _ := swatch.Printed(over("60 over 50 in")).Compare(swatch.Printed(over("60 over 35 in")))
	fmt.Println(c.Explain())
	// Output:
	// 1.429 stitches where the other has 1, from 1.405 to 1.453 within what was read: rounding alone cannot explain it
}

func TestOver(t *testing.T) {
	for _, c := range []struct {
		name string
		s    swatch.Swatch
		want string
	}{
		{"one", read("13 over 4 in"), "13 over 4 in"},
		{"sum", read("13 over 4 in", "12.5 over 4 in", "3 over 1 in"), "28.5 over 9 in"},
		{"units", read("13 over 4 in", "1 over 1 mm"), "14 over 102.6 mm"},
		{"repeats", read("2 repeats of 8 over 3.5 in", "1 repeat of 8 over 2 in"), "3 repeats of 8 over 5.5 in"},
		{"repeats and stitches", read("2 repeats of 8 over 3.5 in", "5 over 1 in"), "21 over 4.5 in"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := c.s.Over()
			require.NoError(t, err)
			require.Equal(t, c.want, got.String())
		})
	}
}

// The true gauge of a reading lies inside the range that Measure gives, and the
// range shrinks with the span.
func TestMeasure(t *testing.T) {
	quarter, err := gauge.Share(1, 4)
	require.NoError(t, err)
	last := gauge.Measurement{}
	for n := 20; n >= 2; n -= 3 {
		s := swatch.Swatch{Readings: []swatch.Reading{{Over: over(fmt.Sprintf("%d over %d in", n*5, n)), CountTo: halfStitch, SpanTo: quarterInch}}}
		got, err := s.Measure(100)
		require.NoError(t, err)
		require.True(t, got.Mid.Equal(gauge.MustLength("20 in").Measurement()))
		require.True(t, got.Low.Cmp(got.Mid) < 0 && got.Mid.Cmp(got.High) < 0)
		wide := got.High.Sub(got.Low)
		require.Positive(t, wide.Cmp(last), "a span of %d in", n)
		last = wide
		// The loosest: a quarter stitch less over an eighth of an inch more.
		loosest, err := gauge.Int(n).Mul(gauge.Int(8)).Add(gauge.Int(1)).Quo(gauge.Int(n).Mul(gauge.Int(5)).Sub(quarter).Mul(gauge.Int(8)))
		require.NoError(t, err)
		require.True(t, got.High.In(gauge.Inch).Equal(loosest.Mul(gauge.Int(100))), "got %v", got.High.In(gauge.Inch))
	}
	down := swatch.Range{Low: gauge.MustLength("9 in").Measurement(), Mid: gauge.MustLength("10 in").Measurement(), High: gauge.MustLength("10.5 in").Measurement()}
	require.True(t, down.PlusMinus().Equal(gauge.MustLength("1 in").Measurement()))
	exact, err := swatch.Swatch{Readings: []swatch.Reading{{Over: over("13 over 4 in")}}}.Measure(13)
	require.NoError(t, err)
	require.True(t, exact.Low.Equal(exact.High) && exact.Mid.Equal(exact.Low))
	both, err := read("10 over 2 in", "20 over 4 in").Measure(100)
	require.NoError(t, err)
	short, err := read("10 over 2 in").Measure(100)
	require.NoError(t, err)
	require.True(t, both.Low.Equal(short.Low) && both.High.Equal(short.High), "the widest reading rules")
}

func TestSpread(t *testing.T) {
	for _, c := range []struct {
		name, want string
		s          swatch.Swatch
	}{
		{"one reading", "the readings differ by 0 %; reading them can cause 5 %, which is all of it", read("10 over 2 in")},
		{"explained", "the readings differ by 4.9 %; reading them can cause 4.9 %, which is all of it", read("10.5 over 2 in", "10 over 2 in")},
		{"half explained", "the readings differ by 9.5 %; reading them can cause 4.8 %, which is 50 % of it: the fabric itself varies",
			read("10 over 2 in", "10.5 over 2 in", "11 over 2 in")},
		{"read exactly", "the readings differ by 9.5 %; reading them can cause 0 %, which is 0 % of it: the fabric itself varies",
			swatch.Swatch{Readings: []swatch.Reading{{Over: over("10 over 2 in")}, {Over: over("11 over 2 in")}}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := c.s.Spread()
			require.NoError(t, err)
			require.Equal(t, c.want, got.Explain())
		})
	}
}

// Two readings are explained just as long as their ranges touch.
func TestCompareEdge(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want bool
	}{
		{"10 over 2 in", "10.5 over 2 in", true}, {"10 over 2 in", "11 over 2 in", false}, {"10.5 over 2 in", "10 over 2 in", true}, {"11 over 2 in", "10 over 2 in", false},
		{"10 over 2 in", "20 over 4 in", true}, {"10 over 2 in", "20.5 over 4 in", true}, {"10 over 2 in", "21 over 4 in", false},
	} {
		got, err := read(c.a).Readings[0].Compare(read(c.b).Readings[0])
		require.NoError(t, err)
		require.Equal(t, c.want, got.Explained, "%s and %s", c.a, c.b)
		require.True(t, got.Low.Cmp(got.Ratio) <= 0 && got.Ratio.Cmp(got.High) <= 0)
	}
}

func TestRefuses(t *testing.T) {
	good := swatch.Reading{Over: over("13 over 4 in"), CountTo: halfStitch}
	long := decimal.New(1, -20)
	for _, c := range []struct {
		name string
		r    swatch.Reading
		want string
	}{
		{"nothing", swatch.Reading{}, "Reading.Over.Count: got 0, want more than 0"},
		{"negative step", swatch.Reading{Over: good.Over, CountTo: decimal.New(-5, -1)}, "Reading.CountTo: got -0.500, want 0, or a step less than twice the count"},
		{"coarse step", swatch.Reading{Over: good.Over, CountTo: decimal.New(26, 0)}, "Reading.CountTo: got 26.000, want 0, or a step less than twice the count"},
		{"huge step", swatch.Reading{Over: good.Over, CountTo: decimal.New(1, 1_000_000_000)}, "Reading.CountTo: got a number out of bounds, want a step of the count"},
		{"negative span step", swatch.Reading{Over: good.Over, SpanTo: gauge.MustLength("-1 in")}, "Reading.SpanTo: got -1 in, want nothing, or a step less than twice the span"},
		{"coarse span step", swatch.Reading{Over: good.Over, SpanTo: gauge.MustLength("8 in")}, "Reading.SpanTo: got 8 in, want nothing, or a step less than twice the span"},
		{"span step without a unit", swatch.Reading{Over: good.Over, SpanTo: gauge.Length{Value: halfStitch}}, "Reading.SpanTo.Unit: got Unit(0), want mm, cm, m, in, ft or yd"},
	} {
		t.Run(c.name, func(t *testing.T) {
			require.EqualError(t, c.r.Validate(), c.want)
			_, err := c.r.Compare(good)
			require.EqualError(t, err, c.want)
			_, err = good.Compare(c.r)
			require.EqualError(t, err, "other."+c.want)
			s := swatch.Swatch{Readings: []swatch.Reading{good, c.r}}
			_, err = s.Over()
			require.EqualError(t, err, "Swatch.Readings[1]."+c.want)
			_, err = s.Spread()
			require.Error(t, err)
			_, err = s.Measure(3)
			require.Error(t, err)
		})
	}
	require.ErrorIs(t, swatch.Swatch{Readings: make([]swatch.Reading, swatch.MaxReadings+1)}.Validate(), gauge.ErrBounds)
	_, err := read("60000 over 4 in", "60000 over 4 in").Over()
	require.ErrorIs(t, err, gauge.ErrBounds)
	tiny := swatch.Reading{Over: gauge.Over{Count: long, Span: gauge.Length{Value: long, Unit: gauge.Inch}}}
	_, err = swatch.Swatch{Readings: []swatch.Reading{tiny, {Over: over("1 over 1 mm")}}}.Over()
	require.ErrorIs(t, err, gauge.ErrBounds, "a sum with more places than a number may have")
	require.Error(t, swatch.Printed(gauge.Over{Count: decimal.New(1, 1_000_000_000), Span: gauge.MustLength("4 in")}).Validate())
}

func TestJSON(t *testing.T) {
	s := read("13 over 4 in")
	s.Readings[0].SpanTo = quarterInch
	b, err := json.Marshal(s)
	require.NoError(t, err)
	require.Equal(t, `{"readings":[{"over":"13 over 4 in","count_to":"0.5","span_to":"0.25 in"}]}`, string(b))
	var back swatch.Swatch
	require.NoError(t, json.Unmarshal([]byte(`{"readings":[{"over":"13 over 4 in","count_to":0.5}]}`), &back))
	o, err := back.Over()
	require.NoError(t, err)
	require.Equal(t, "13 over 4 in", o.String())
}
