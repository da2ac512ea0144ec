package gauge_test

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"
	"unicode/utf8"

	"example.com/panelmath/gauge"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

// A fraction of 1 or more may have been a mixed number: it is refused where those
// are usual, and a measurement still reads whatever it prints.
func TestMeasurementRefusesWhatLengthRefuses(t *testing.T) {
	for _, s := range []string{"11/2 in", "-11/2 in", "3/3 ft", "5/4 yd", "13000/3 in", `11/2"`} {
		_, err := gauge.ParseMeasurement(s)
		require.Error(t, err, s)
	}
	for s, mm := range map[string]string{"13000/3 mm": "13000/3 mm", "11/2 mm": "5.5 mm", "100/3 cm": "1000/3 mm", "7/2 m": "3500 mm", "1/3 in": "127/15 mm", "-1/2 in": "-12.7 mm", "1 1/2 in": "38.1 mm", "66/1 in": ""} {
		m, err := gauge.ParseMeasurement(s)
		if mm == "" {
			require.Error(t, err, s)
			continue
		}
		require.NoError(t, err, s)
		require.Equal(t, mm, m.String())
	}
}

// A length that is refused says whether it is too long or has too many digits.
func TestLengthOutOfBoundsSaysWhich(t *testing.T) {
	for s, want := range map[string]string{
		"101 m":                              "longer than 100 m",
		"-4000 in":                           "longer than 100 m",
		"9999999999999999999999999999999 mm": "31 digits, want at most 30 digits",
		"5000000000000000000000000000 ft 1.000000000000000000001 in": "more than 20 decimal places",
		"500000000000000000000000000 ft 1.00000000000000000001 in":   "48 digits, want at most 30 digits",
	} {
		_, err := gauge.ParseLength(s)
		require.ErrorIs(t, err, gauge.ErrBounds)
		require.ErrorContains(t, err, want)
		require.False(t, strings.Contains(err.Error(), " or a number"))
	}
}

func TestParseLength(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"20 1/2 in", "20.5 in"}, {`20½"`, "20.5 in"}, {"20.5in", "20.5 in"}, {"20-1/2 in", "20.5 in"}, {"½ in", "0.5 in"}, {"20 ½ in.", "20.5 in"},
		{"1/2 in", "0.5 in"}, {"7/8\"", "0.875 in"}, {"3/16 in", "0.1875 in"}, {"31/32 inch", "0.96875 in"}, {"2/5 m", "0.4 m"}, {"1 3/10 cm", "1.3 cm"},
		{"52 cm", "52 cm"}, {"5 ft 3 in", "63 in"}, {`5'3"`, "63 in"}, {"5′ 3½″", "63.5 in"}, {"5 ft", "5 ft"}, {"-5 ft 3 in", "-63 in"}, {"1.5 yd", "1.5 yd"},
		{"-2 in", "-2 in"}, {"−2 in", "-2 in"}, {"+2 in", "2 in"}, {"- ½ in", "-0.5 in"}, {".5 in", "0.5 in"}, {"4-in", "4 in"}, {"  3\tmm ", "3 mm"}, {"007 cm", "7 cm"},
		{"20.50 CM", "20.5 cm"}, {"3 Yards", "3 yd"}, {"2 METRES", "2 m"}, {"2 metres", "2 m"}, {"100 m", "100 m"}, {"-100 m", "-100 m"},
		{"0.00000000000000000001 mm", "0.00000000000000000001 mm"}, {"1234.56789012345678901234 mm", "1234.56789012345678901234 mm"},
	} {
		t.Run(c.text, func(t *testing.T) {
			l, err := gauge.ParseLength(c.text)
			require.NoError(t, err)
			require.Equal(t, c.want, l.String())
			again, err := gauge.ParseLength(l.String())
			require.NoError(t, err)
			require.Equal(t, c.want, again.String())
		})
	}
}

// refused checks an error by its text and by the text at its place.
func refused(t *testing.T, err error, want, at string) {
	t.Helper()
	require.EqualError(t, err, want)
	var p *gauge.ParseError
	require.ErrorAs(t, err, &p)
	require.Equal(t, at, p.Text[p.At:])
}

func TestParseLengthRefuses(t *testing.T) {
	const noDecimal = " has no exact decimal; want halves, quarters, eighths, sixteenths, fifths or tenths"
	for _, c := range []struct{ text, want, at string }{
		{"9 inn", `unknown unit "inn"`, "inn"},
		{"20,5 cm", "a comma in the number; write 1250 or 20.5", ",5 cm"},
		{"20", "no unit; want mm, cm, m, in, ft or yd", ""},
		{"", `want a number and a unit, like 20 1/2 in, got ""`, ""},
		{"in", `want a number and a unit, like 20 1/2 in, got "in"`, "in"},
		{"--2 in", `want a number and a unit, like 20 1/2 in, got "-2 in"`, "-2 in"},
		{"20 1/2", "no unit; want mm, cm, m, in, ft or yd", ""},
		{"1e1000000000 in", "an exponent; write the number out", "e1000000000 in"},
		{"1E-6 in", "an exponent; write the number out", "E-6 in"},
		{"1/3 in", `fraction "1/3"` + noDecimal, "1/3 in"},
		{"5 2/3 in", `fraction "2/3"` + noDecimal, "2/3 in"},
		{"5⅓ in", `fraction "⅓"` + noDecimal, "⅓ in"},
		{"1/0 in", `fraction "1/0"` + noDecimal, "1/0 in"},
		{"1/ in", `fraction "1/"` + noDecimal, "1/ in"},
		{"20 3/2 in", "a fraction of 1 or more: 3/2; write 1 1/2", "3/2 in"},
		{"20.5 1/2 in", "a fraction after a decimal; write 20 1/2 or 20.5", " 1/2 in"},
		{"11/2 in", "a fraction of 1 or more: 11/2; write 1 1/2 or 5 1/2", "11/2 in"},
		{"1.2.3 in", "a second decimal point", ".3 in"},
		{"5 ft 3 cm", "feet are followed by inches alone: 5 ft 3 in", ""},
		{"5 ft 3", "no unit; want mm, cm, m, in, ft or yd", ""},
		{"5 ft 3 in 2", `unexpected "2"`, "2"},
		{"5 in 3 in", `unexpected "3 in"`, "3 in"},
		{"5 in, or so", `unexpected ", or so"`, ", or so"},
		{"101 m", "longer than 100 m", "101 m"},
		{"-101 m", "longer than 100 m", "-101 m"},
		{"0.000000000000000000001 mm", "more than 20 decimal places", "0.000000000000000000001 mm"},
		{strings.Repeat("1", 40) + " mm", "a number of 40 characters; at most 30 digits", strings.Repeat("1", 40) + " mm"},
		{strings.Repeat("1", 40) + "½ mm", "a number of 40 characters; at most 30 digits", strings.Repeat("1", 40) + "½ mm"},
		{"5 µm", `unknown unit "µ"`, "µm"},
		{"5 \xff", `unknown unit "\xff"`, "\xff"},
	} {
		t.Run(c.text, func(t *testing.T) {
			_, err := gauge.ParseLength(c.text)
			quoted, _ := json.Marshal(c.text)
			want := "parse length: " + string(quoted) + ": " + c.want
			if len(c.text) > 30 || !utf8.ValidString(c.text) {
				require.ErrorContains(t, err, c.want)
				return
			}
			refused(t, err, want, c.at)
		})
	}
}

func TestParseRefusesLongTexts(t *testing.T) {
	long := strings.Repeat("1 ", 6000)
	for name, parse := range map[string]func(string) error{
		"length":      func(s string) error { _, err := gauge.ParseLength(s); return err },
		"measurement": func(s string) error { _, err := gauge.ParseMeasurement(s); return err },
		"gauge":       func(s string) error { _, err := gauge.ParseGauge(s); return err },
		"over":        func(s string) error { _, err := gauge.ParseOver(s); return err },
		"rule":        func(s string) error { _, err := gauge.ParseRule(s); return err },
		"ratio":       func(s string) error { _, err := gauge.ParseRatio(s); return err },
		"unit":        func(s string) error { _, err := gauge.ParseUnit(s); return err },
		"grid":        func(s string) error { _, err := gauge.ParseGrid(s); return err },
		"direction":   func(s string) error { return new(gauge.Direction).UnmarshalText([]byte(s)) },
		"measurement, as a number": func(s string) error {
			_, err := gauge.ParseMeasurement(strings.ReplaceAll(s, " ", "") + " mm")
			return err
		},
	} {
		t.Run(name, func(t *testing.T) {
			err := parse(long)
			var p *gauge.ParseError
			require.ErrorAs(t, err, &p)
			require.Less(t, len(err.Error()), 600)
		})
	}
}

func TestParseUnit(t *testing.T) {
	for text, want := range map[string]gauge.Unit{
		"mm": gauge.Millimetre, "Centimeters": gauge.Centimetre, "cms": gauge.Centimetre, "meter": gauge.Metre, "″": gauge.Inch, "ins.": gauge.Inch,
		" feet ": gauge.Foot, "’": gauge.Foot, "yds": gauge.Yard,
	} {
		u, err := gauge.ParseUnit(text)
		require.NoError(t, err)
		require.Equal(t, want, u)
	}
	_, err := gauge.ParseUnit("")
	require.Error(t, err)
	require.Equal(t, "Unit(9)", gauge.Unit(9).String())
	_, err = gauge.Unit(9).MarshalText()
	require.Error(t, err)
	require.Zero(t, gauge.MeasurementOf(gauge.Int(3), 0).Sign())
	require.Zero(t, gauge.MustLength("3 in").Measurement().In(99).Sign())
	require.Zero(t, gauge.Length{Value: decimal.New(3, 0)}.Measurement().Sign())
}

func TestParseGauge(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"12 sts and 7 rows = 4 in", "12 sts and 7 rows = 4 in"},
		{"7 rows and 12 sts = 4 in", "12 sts and 7 rows = 4 in"},
		{"12 stitches x 7 rows over 4 inches", "12 sts and 7 rows = 4 in"},
		{"12 sts × 7 rows = 4\"", "12 sts and 7 rows = 4 in"},
		{"12 sts by 7 rows to 4 in.", "12 sts and 7 rows = 4 in"},
		{"12 sts, 7 rows per 4 in", "12 sts and 7 rows = 4 in"},
		{"12sts and 7rows in 4in", "12 sts and 7 rows = 4 in"},
		{"20 sts = 7 cm, 10 rows = 10 cm", "20 sts = 7 cm, 10 rows = 10 cm"},
		{"20 sts = 7 cm;10 rows = 10 cm", "20 sts = 7 cm, 10 rows = 10 cm"},
		{"20 sts = 7 cm and 10 rows = 10 cm", "20 sts = 7 cm, 10 rows = 10 cm"},
		{"20 sts = 10 cm, 10 rows = 10.0 cm", "20 sts and 10 rows = 10 cm"},
		{"20 sts = 4 in, 10 rows = 10 cm", "20 sts = 4 in, 10 rows = 10 cm"},
		{"2 repeats of 8 sts = 3.5 in, 9 rows = 4 in", "2 repeats of 8 sts = 3.5 in, 9 rows = 4 in"},
		{"2 reps of 8 sts and 1 repeat of 4 rows = 4 in", "2 repeats of 8 sts and 1 repeat of 4 rows = 4 in"},
		{"5 clusters of 3 sts and 9 rows = 4 in", "5 repeats of 3 sts and 9 rows = 4 in"},
		{"1 repeat 1 st and 1 row = 4 in", "1 repeat of 1 st and 1 row = 4 in"},
		{"13½ sts and 9 1/2 rows = 4 in", "13.5 sts and 9.5 rows = 4 in"},
		{"1 st and 1 row = 1 ft 2 in", "1 st and 1 row = 14 in"},
	} {
		t.Run(c.text, func(t *testing.T) {
			g, err := gauge.ParseGauge(c.text)
			require.NoError(t, err)
			require.Equal(t, c.want, g.String())
			again, err := gauge.ParseGauge(c.want)
			require.NoError(t, err)
			require.Equal(t, c.want, again.String())
			require.True(t, g.Stitches.Count.Equal(again.Stitches.Count) && g.Rows.Span.Measurement().Equal(again.Rows.Span.Measurement()))
		})
	}
}

func TestParseGaugeRefuses(t *testing.T) {
	for _, c := range []struct{ text, want, at string }{
		{"", `want a number of sts or rows, got ""`, ""},
		{"12", `want sts or rows, got ""`, ""},
		{"12 bobbles = 4 in", `want sts or rows, got "bobbles = 4 in"`, "bobbles = 4 in"},
		{"-12 sts and 7 rows = 4 in", "sts: got -12, want more than 0", "-12 sts and 7 rows = 4 in"},
		{"12 sts and -7 rows = 4 in", "rows: got -7, want more than 0", "-7 rows = 4 in"},
		{"-0.5 repeats of 8 sts and 7 rows = 4 in", "sts: got -0.5, want more than 0", "-0.5 repeats of 8 sts and 7 rows = 4 in"},
		{"-sts and 7 rows = 4 in", `want a number of sts or rows, got "-sts and 7 rows = 4 in"`, "-sts and 7 rows = 4 in"},
		{"12 sts and 7 rows", `want = and a span like 4 in, got ""`, ""},
		{"12 sts and 7 rows = 4", "no unit; want mm, cm, m, in, ft or yd", ""},
		{"12 sts and 7 rows = 4 inn", `unknown unit "inn"`, "inn"},
		{"12 sts = 4 in", "no rows; want both: 12 sts and 7 rows = 4 in", ""},
		{"7 rows = 4 in", "no stitches; want both: 12 sts and 7 rows = 4 in", ""},
		{"12 sts and 12 sts = 4 in", "stitches are given twice", "12 sts = 4 in"},
		{"12 sts and 7 rows = 4 in, 7 rows = 4 in", "rows are given twice", "7 rows = 4 in"},
		{"12 sts and 7 rows = 4 in!", `unexpected "!"`, "!"},
		{"12,5 sts and 7 rows = 4 in", "a comma in the number; write 1250 or 20.5", ",5 sts and 7 rows = 4 in"},
		{"12 sts and 7 rows = -4 in", "Span: got -4 in, want more than 0", "12 sts and 7 rows = -4 in"},
		{"0 sts and 7 rows = 4 in", "sts: got 0, want more than 0", "0 sts and 7 rows = 4 in"},
		{"100001 sts and 7 rows = 4 in", "Count: got 100001, want at most 100000", "100001 sts and 7 rows = 4 in"},
		{"2 repeats of sts and 7 rows = 4 in", `want the number of sts or rows in a repeat, 1 to 100000, got "sts and 7 rows = 4 in"`, "sts and 7 rows = 4 in"},
		{"2 repeats of 0 sts and 7 rows = 4 in", `want the number of sts or rows in a repeat, 1 to 100000, got "0 sts and 7 rows = 4 in"`, "0 sts and 7 rows = 4 in"},
		{"12 sts and 7 rows = 200 m", "longer than 100 m", "200 m"},
	} {
		t.Run(c.text, func(t *testing.T) {
			_, err := gauge.ParseGauge(c.text)
			quoted, _ := json.Marshal(c.text)
			refused(t, err, "parse gauge: "+string(quoted)+": "+c.want, c.at)
		})
	}
}

func TestParseOverRefuses(t *testing.T) {
	for _, c := range []struct{ text, want, at string }{
		{"over 4 in", `want a number of sts or rows, got "over 4 in"`, "over 4 in"},
		{"1e5 over 4 in", "an exponent; write the number out", "e5 over 4 in"},
		{"13 at 4 in", `want = and a span like 4 in, got "at 4 in"`, "at 4 in"},
		{"13 over 4 in or so", `unexpected "or so"`, "or so"},
		{"0 over 4 in", "count: got 0, want more than 0", "0 over 4 in"},
		{"-13 over 4 in", "count: got -13, want more than 0", "-13 over 4 in"},
		{"-13 rows over 4 in", "rows: got -13, want more than 0", "-13 rows over 4 in"},
	} {
		t.Run(c.text, func(t *testing.T) {
			_, err := gauge.ParseOver(c.text)
			quoted, _ := json.Marshal(c.text)
			refused(t, err, "parse count over a span: "+string(quoted)+": "+c.want, c.at)
		})
	}
}

func TestParseRule(t *testing.T) {
	for _, c := range []struct {
		text, print string
		want        gauge.Rule
	}{
		{"multiple of 6 + 1", "multiple of 6 + 1", gauge.Rule{Multiple: 6, Plus: 1}},
		{"Multiple of 6+1", "multiple of 6 + 1", gauge.Rule{Multiple: 6, Plus: 1}},
		{"6n + 1", "multiple of 6 + 1", gauge.Rule{Multiple: 6, Plus: 1}},
		{"multiple of 6n", "multiple of 6", gauge.Rule{Multiple: 6}},
		{"multiple of 8 - 1", "multiple of 8 - 1", gauge.Rule{Multiple: 8, Plus: -1}},
		{"multiple of 12 + 14", "multiple of 12 + 14", gauge.Rule{Multiple: 12, Plus: 14}},
		{"even", "even", gauge.Rule{Multiple: 2}},
		{"multiple of 2", "even", gauge.Rule{Multiple: 2}},
		{"odd", "odd", gauge.Rule{Multiple: 2, Plus: 1}},
		{"multiple of 2 - 1", "odd", gauge.Rule{Multiple: 2, Plus: -1}},
		{"any", "any", gauge.Rule{}},
		{"multiple of 1", "any", gauge.Rule{Multiple: 1}},
		{"any, nearest", "any", gauge.Rule{}},
		{"odd, Ties Down, at least 9", "odd, at least 9, ties down", gauge.Rule{Multiple: 2, Plus: 1, Least: 9, Direction: gauge.NearestTiesDown}},
		{"even,up", "even, up", gauge.Rule{Multiple: 2, Direction: gauge.Up}},
		{"even, down", "even, down", gauge.Rule{Multiple: 2, Direction: gauge.Down}},
	} {
		t.Run(c.text, func(t *testing.T) {
			r, err := gauge.ParseRule(c.text)
			require.NoError(t, err)
			require.Equal(t, c.want, r)
			require.Equal(t, c.print, r.String())
		})
	}
}

func TestParseRuleRefuses(t *testing.T) {
	const first = "want multiple of 6 + 1, multiple of 4, even, odd or any, got "
	const rest = "want at least N, and one of nearest, ties down, up or down, got "
	for _, c := range []struct{ text, want, at string }{
		{"", first + `""`, ""},
		{"multiple of", first + `"multiple of"`, "multiple of"},
		{"multiple of 0", first + `"multiple of 0"`, "multiple of 0"},
		{"multiple of -6", first + `"multiple of -6"`, "multiple of -6"},
		{"multiple of 6 +", first + `"multiple of 6 +"`, "multiple of 6 +"},
		{"multiple of 6 + -1", first + `"multiple of 6 + -1"`, "multiple of 6 + -1"},
		{"multiple of 6.5", first + `"multiple of 6.5"`, "multiple of 6.5"},
		{"multiple of 99999999999999999999", first + `"multiple of 99999999999999999999"`, "multiple of 99999999999999999999"},
		{"any, at least x", `want one whole number after at least, got "x"`, " at least x"},
		{"any, at least 3, at least 3", `want one whole number after at least, got "3"`, " at least 3"},
		{"any, up, down", rest + `"down"`, " down"},
		{"any, sideways", rest + `"sideways"`, " sideways"},
		{"any,", rest + `""`, ""},
		{"multiple of 100001", "Rule.Multiple: got 100001, want 0 to 100000", "multiple of 100001"},
		{"multiple of 6 + 100001", "Rule.Plus: got 100001, want -100000 to 100000", "multiple of 6 + 100001"},
		{"any, at least 100001", "Rule.Least: got 100001, want 0 to 100000", "any, at least 100001"},
	} {
		t.Run(c.text, func(t *testing.T) {
			_, err := gauge.ParseRule(c.text)
			quoted, _ := json.Marshal(c.text)
			refused(t, err, "parse rule: "+string(quoted)+": "+c.want, c.at)
		})
	}
}

func TestParseRatio(t *testing.T) {
	for text, want := range map[string]string{"104": "104", "-0.5": "-1/2", "+511/8": "511/8", "2/4": "1/2", ".5": "1/2",
		strings.Repeat("9", 60) + "/" + strings.Repeat("7", 59): strings.Repeat("9", 60) + "/" + strings.Repeat("7", 59)} {
		x, err := gauge.ParseRatio(text)
		require.NoError(t, err)
		back, err := gauge.ParseRatio(x.String())
		require.NoError(t, err)
		require.True(t, back.Equal(x))
		if len(text) < 60 {
			require.Equal(t, want, x.String())
		}
	}
	for _, text := range []string{"", "-", "1/0", "1/-2", "1.5/2", "1e9", "0x10", "1_000", "½", "1 2", strings.Repeat("1", 200)} {
		_, err := gauge.ParseRatio(text)
		var p *gauge.ParseError
		require.ErrorAs(t, err, &p, "%q", text)
	}
}

// Text and JSON of every type, there and back; what is read twice is the same.
func TestRoundTrip(t *testing.T) {
	type all struct {
		Unit        gauge.Unit
		Length      gauge.Length
		Measurement gauge.Measurement
		Ratio       gauge.Ratio
		Over        gauge.Over
		Gauge       gauge.Gauge
		Rule        gauge.Rule
		Direction   gauge.Direction
		Grid        gauge.Grid
		Fabric      gauge.Fabric
		Count       gauge.Count
		Plain       gauge.Count
	}
	g := gauge.MustGauge("2 repeats of 8 sts = 3.5 in, 9 rows = 4 in")
	count, err := g.StitchesIn(gauge.MustLength("18 1/4 in").Measurement(), gauge.Rule{Multiple: 3, Plus: 1, Direction: gauge.NearestTiesDown})
	require.NoError(t, err)
	plain, err := gauge.Rule{}.Round(gauge.Int(7))
	require.NoError(t, err)
	third, err := gauge.Share(1, 3)
	require.NoError(t, err)
	in := all{gauge.Foot, gauge.MustLength("20½ in"), gauge.MeasurementOf(third, gauge.Centimetre), third, g.Stitches, g,
		gauge.Rule{Multiple: 6, Plus: 1, Least: 7, Direction: gauge.Up}, gauge.Down, gauge.HalfCentimetreAt25,
		gauge.Fabric{Finished: g}, count, plain}
	b, err := json.Marshal(in)
	require.NoError(t, err)
	require.Contains(t, string(b), `"Fabric":{"finished":"2 repeats of 8 sts = 3.5 in, 9 rows = 4 in"}`)
	require.Contains(t, string(b), `"Plain":{"value":7,"exact":"7","below":7,"above":7,"tie":false,"rule":"any","each":"0 mm"}`)
	var out all
	require.NoError(t, json.Unmarshal(b, &out))
	require.True(t, out.Ratio.Equal(third) && out.Length.Value.Equal(in.Length.Value) && out.Count.Each.Equal(count.Each))
	require.Equal(t, []any{in.Rule, in.Direction, in.Grid, in.Count.Tie, in.Count.Counted}, []any{out.Rule, out.Direction, out.Grid, out.Count.Tie, out.Count.Counted})
	again, err := json.Marshal(out)
	require.NoError(t, err)
	require.Equal(t, string(b), string(again))
}

// Every UnmarshalText leaves its target alone when it fails.
func TestUnmarshalRefuses(t *testing.T) {
	type unmarshaler interface{ UnmarshalText([]byte) error }
	u, l, m, x := gauge.Inch, gauge.MustLength("1 in"), gauge.MustLength("1 in").Measurement(), gauge.Int(3)
	g := gauge.MustGauge("1 st and 1 row = 1 in")
	o, r, d, grid := g.Stitches, gauge.Rule{Multiple: 3}, gauge.Up, gauge.WholeInch
	c := gauge.Rows
	for _, v := range []unmarshaler{&u, &l, &m, &x, &g, &o, &r, &d, &grid, &c} {
		var p *gauge.ParseError
		require.ErrorAs(t, v.UnmarshalText([]byte("?")), &p, "%T", v)
	}
	require.Equal(t, "in 1 in 25.4 mm 3", strings.Join([]string{u.String(), l.String(), m.String(), x.String()}, " "))
	require.Equal(t, "1 st and 1 row = 1 in", g.String())
	require.Equal(t, []any{"1 over 1 in", 3, gauge.Up, gauge.WholeInch, gauge.Rows},
		[]any{o.String(), r.Multiple, d, grid, c})
	require.Error(t, json.Unmarshal([]byte(`true`), &x))
	require.NoError(t, json.Unmarshal([]byte(`null`), &x))
	require.Equal(t, "3", x.String())
}

// Every MarshalText refuses a value that could not be read back.
func TestMarshalRefuses(t *testing.T) {
	type marshaler interface{ MarshalText() ([]byte, error) }
	for _, v := range []marshaler{gauge.Unit(0), gauge.Length{}, gauge.Over{}, gauge.Gauge{}, gauge.Rule{Least: -1}, gauge.Direction(9), gauge.Grid(9),
		gauge.Counted(9)} {
		_, err := v.MarshalText()
		var f *gauge.FieldError
		require.ErrorAs(t, err, &f, "%T", v)
	}
}

func TestMustPanics(t *testing.T) {
	require.PanicsWithValue(t, `gauge.MustLength: parse length: "x": want a number and a unit, like 20 1/2 in, got "x"`, func() { gauge.MustLength("x") })
	require.PanicsWithValue(t, `gauge.MustGauge: parse gauge: "x": want a number of sts or rows, got "x"`, func() { gauge.MustGauge("x") })
}

func TestErrors(t *testing.T) {
	plain := errors.New("plain")
	require.Equal(t, plain, gauge.InField("A", plain))
	require.NoError(t, gauge.InField("A", nil))
	inner := gauge.Rule{Least: -1}.Validate()
	outer := gauge.InField("Brief", inner)
	require.EqualError(t, outer, "Brief.Rule.Least: got -1, want 0 to 100000")
	require.EqualError(t, inner, "Rule.Least: got -1, want 0 to 100000", "InField changed its argument")
	require.ErrorIs(t, outer, gauge.ErrBounds)
}
