package notation_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"strconv"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/notation"
	"github.com/stretchr/testify/require"
)

var allStyles = [...]notation.Style{notation.Round, notation.Square, notation.Colons, notation.Dashes, notation.Alternating}

// rising returns n different counts.
func rising(n int) grade.Run[int] {
	r := make(grade.Run[int], n)
	for i := range r {
		r[i] = 3 * i
	}
	return r
}

func TestPrintThenReadEveryStyleAndLength(t *testing.T) {
	for _, s := range allStyles {
		for n := 1; n <= grade.MaxSizes; n++ {
			alike := make(grade.Run[int], n)
			almost := make(grade.Run[int], n)
			almost[n-1] = 1
			for _, want := range []grade.Run[int]{rising(n), alike, almost} {
				text, err := notation.Print(s, want, strconv.Itoa)
				require.NoError(t, err)
				got, err := notation.ReadNumbers(text, n)
				require.NoError(t, err, "%v of %d: %s", s, n, text)
				require.Equal(t, want, got, text)
			}
		}
	}
}

func TestPrint(t *testing.T) {
	for _, c := range []struct {
		style notation.Style
		run   grade.Run[int]
		want  string
	}{
		{notation.Round, grade.Run[int]{101, 113, 125}, "101 (113, 125)"},
		{notation.Square, grade.Run[int]{101, 113, 125}, "101 [113, 125]"},
		{notation.Square, rising(10), "0 [3, 6, 9] (12, 15, 18) [21, 24, 27]"},
		{notation.Colons, grade.Run[int]{73, 79, 85, 91, 103}, "73[79:85:91:103]"},
		{notation.Dashes, grade.Run[int]{10, 12, 14}, "10-12-14"},
		{notation.Alternating, grade.Run[int]{8, 10, 12, 14}, "8 (10) 12 (14)"},
		{notation.Alternating, grade.Run[int]{8, 10, 12}, "8 (10) 12"},
		{notation.Dashes, grade.Run[int]{7, 7}, "7"},
		{notation.Colons, nil, ""},
	} {
		t.Run(c.style.String()+" "+c.want, func(t *testing.T) {
			got, err := notation.Print(c.style, c.run, strconv.Itoa)
			require.NoError(t, err)
			require.Equal(t, c.want, got)
		})
	}
}

func TestPrintRefuses(t *testing.T) {
	_, err := notation.Print(notation.Dashes, grade.Run[int]{1, -2}, strconv.Itoa)
	require.EqualError(t, err, `size number 2: got "-2", want a value without any of ()[],:-–`)
	_, err = notation.Print(notation.Round, grade.Run[int]{1, -2}, strconv.Itoa)
	require.NoError(t, err)
	_, err = notation.Print(notation.Round, grade.Run[string]{"1,5"}, func(s string) string { return s })
	require.Error(t, err)
	_, err = notation.Print(notation.Round, grade.Run[string]{" "}, func(s string) string { return s })
	require.Error(t, err)
	_, err = notation.Print(notation.Style(9), rising(2), strconv.Itoa)
	require.EqualError(t, err, "Style: got Style(9), want round, square, colons, dashes or alternating")
	_, err = notation.Print(notation.Round, rising(65), strconv.Itoa)
	require.ErrorIs(t, err, gauge.ErrBounds)
}

// Lists as they stand in published patterns and in the sources named.
func TestReadPublished(t *testing.T) {
	for _, c := range []struct {
		source, text string
		sizes        int
		want         grade.Run[int]
	}{
		{"knitting handbook, I02", "100 (112, 120, 128)", 4, grade.Run[int]{100, 112, 120, 128}},
		{"Crochet World, I07 and C09", "51 [61, 69]", 3, grade.Run[int]{51, 61, 69}},
		{"ten-size listing, I09", "1 (2, 3, 4) [5, 6, 7] (8, 9, 10)", 10, grade.Run[int]{1, 2, 3, 4, 5, 6, 7, 8, 9, 10}},
		{"Heaven Cardigan, D02", "85 (93, 103, 113, 123) (133, 143, 153, 163)", 9, grade.Run[int]{85, 93, 103, 113, 123, 133, 143, 153, 163}},
		{"correction, rico-design.de, PC-12", "73[79:85:91:103]", 5, grade.Run[int]{73, 79, 85, 91, 103}},
		{"the same, 0 skips the part", "1[0:0:0:0]", 5, grade.Run[int]{1, 0, 0, 0, 0}},
		{"simplycrochetmag.co.uk issue 54, PC-13", "29 (33: 37)", 3, grade.Run[int]{29, 33, 37}},
		{"garnstudio.com 7432, PC-25", "10-12-14", 3, grade.Run[int]{10, 12, 14}},
		{"Moogly, I12", "10 (11, 12)", 3, grade.Run[int]{10, 11, 12}},
		{"joann.com, I01: one number is for all", "4", 7, grade.Run[int]{4, 4, 4, 4, 4, 4, 4}},
		{"common practice, no source", "8 (10) 12 (14)", 4, grade.Run[int]{8, 10, 12, 14}},
		{"an en dash", " 10 – 12–14 ", 3, grade.Run[int]{10, 12, 14}},
		{"any number of sizes", "1 (2)", 0, grade.Run[int]{1, 2}},
		{"the largest count", "100000", 1, grade.Run[int]{100000}},
	} {
		t.Run(c.source, func(t *testing.T) {
			got, err := notation.ReadNumbers(c.text, c.sizes)
			require.NoError(t, err)
			require.Equal(t, c.want, got)
		})
	}
}

func TestReadRefuses(t *testing.T) {
	for _, c := range []struct {
		text  string
		sizes int
		at    int
		want  string
	}{
		{"101 (113, 125]", 3, 13, `stray "]" before the end; no bracket of its kind is open`},
		{"101 (113, 125))", 3, 14, `stray ")" before the end; no bracket of its kind is open`},
		{"101 (113 (125))", 3, 9, `stray "(" before "125))"; a bracket is open already`},
		{"101 (113,, 125)", 3, 9, `no value before ", 125)"`},
		{"101 (113, )", 3, 10, `no value before ")"`},
		{"101 ()", 3, 5, `no value before ")"`},
		{"(101, 113)", 2, 0, `no value before "(101, 113)"; the smallest size stands outside the brackets`},
		{"101, 113", 2, 3, `stray "," before " 113"; want brackets round the larger sizes: 101 (113, 125)`},
		{"101 (113: 125, 137)", 4, 13, `stray "," before " 137)"; the list is separated by ":"`},
		{"101 (113, 125) sts", 3, 15, `unexpected "sts" outside the brackets`},
		{"8 (10) 12 (14, 16)", 5, 15, `a second value in a bracket, where brackets take turns: "16"`},
		{"8 (10, 12) 14 (16)", 5, 11, `unexpected "14" outside the brackets`},
		{"8 (10) (12) 14 (16)", 5, 12, `unexpected "14" outside the brackets`},
		{"8 (10) 12 (14) (16)", 5, 15, `stray "(" before "16)"; want a value between two brackets, as in 8 (10) 12 (14)`},
		{"101 (113, 125)", 4, 14, `3 values for 4 sizes`},
		{"101 (113, 125)", 2, 10, `3 values for 2 sizes; the first too many is "125"`},
		{"101 (113)", 1, 5, `2 values for 1 size; the first too many is "113"`},
		{"101 (x, 125)", 3, 5, `want a whole number, got "x"`},
		{"101 (-1, 125)", 3, 5, `want a whole number, got "-1"`},
		{"101 (100001, 125)", 3, 5, `want at most 100000, got "100001"`},
		{"10-12x-14", 3, 3, `want a whole number, got "12x"`},
		{"10–12x–14", 3, 5, `want a whole number, got "12x"`},
		{"10--14", 3, 3, `no value before "-14"`},
		{"101 (113, 125", 3, 13, `the bracket "(" is not closed`},
		{"101 (113, ", 3, 10, `the bracket "(" is not closed`},
		{"101 (113, [125])", 3, 10, `stray "[" before "125])"; a bracket is open already`},
		{"1-2 (3)", 0, 0, `want a whole number, got "1-2"`},
		{"101)", 1, 3, `stray ")" before the end; no bracket of its kind is open`},
		{", 101", 1, 0, `no value before ", 101"`},
		{strings.Repeat("1-", 64) + "1", 0, 128, `more than 64 values`},
		{"", 3, 0, `no value; want a list like 101 (113, 125)`},
		{"1" + strings.Repeat(" (1)", 64), 0, 255, `more than 64 values`},
		{strings.Repeat("1", 10001), 0, 10000, `text too long; at most 10000 characters`},
	} {
		t.Run(c.want, func(t *testing.T) {
			_, err := notation.ReadNumbers(c.text, c.sizes)
			var p *gauge.ParseError
			require.ErrorAs(t, err, &p)
			require.Equal(t, c.want, p.Cause)
			require.Equal(t, c.at, p.At)
			require.Equal(t, "size list", p.Kind)
		})
	}
	_, err := notation.ReadNumbers("1", 65)
	require.ErrorIs(t, err, gauge.ErrBounds)
}

func TestSkipped(t *testing.T) {
	labels := grade.Run[string]{"1", "2", "3", "4", "5"}
	r, err := notation.ReadNumbers("0[0:4:4:4]", 5) // PC-12, rico-design.de correction
	require.NoError(t, err)
	skip, err := notation.Skipped(r, labels)
	require.NoError(t, err)
	require.Equal(t, grade.Run[string]{"1", "2"}, skip)
	_, err = notation.Skipped(r, labels[:3])
	require.EqualError(t, err, "labels: got 3, want 5")
}

func measures(t testing.TB, s string) grade.Run[gauge.Measurement] {
	l, err := notation.ReadLengths(s, 0)
	require.NoError(t, err)
	m, err := grade.Map(l.Own, func(l gauge.Length) (gauge.Measurement, error) { return l.Measurement(), nil })
	require.NoError(t, err)
	return m
}

// PC-21: nine sizes of a published page whose centimetres are 2.54 to the inch,
// to the nearest half.
func TestBothUnitsPublished(t *testing.T) {
	m := measures(t, "37.5 (42.25, 44, 48.25, 50.75, 54.5, 57.75, 64.25, 68.75) in")
	require.Equal(t, "37½ (42¼, 44, 48¼, 50¾) [54½, 57¾, 64¼, 68¾] in / 95.5 (107.5, 112, 122.5, 129) [138.5, 146.5, 163, 174.5] cm",
		notation.Both(m, gauge.QuarterInch, gauge.HalfCentimetre))
	// Better Than Basic Pullover, C05: whole centimetres.
	m = measures(t, "42.5 (46.5, 50, 54.5, 59) in")
	require.Equal(t, "108 (118, 127, 138, 150) cm", notation.Text(m, gauge.WholeCentimetre))
}

// One number stands for all sizes where it does so in both units; beside a list
// it would look like a slip.
func TestBothOneForAll(t *testing.T) {
	for text, want := range map[string]string{
		"1.5 (1.5, 1.5) in":    "1½ in [4 cm]",
		"1.45 (1.55, 1.45) in": "1½ (1½, 1½) in [3.5 (4, 3.5) cm]",
		"9.65 (9.85, 9.65) in": "9¾ (9¾, 9¾) in [24.5 (25, 24.5) cm]",
		"1.6 (1.7) in":         "1½ (1¾) in [4 (4.5) cm]",
		"4.12 (4.13) in":       "4 (4¼) in [10.5 (10.5) cm]",
		"1.5 in":               "1½ in [4 cm]",
	} {
		require.Equal(t, want, notation.Both(measures(t, text), gauge.QuarterInch, gauge.HalfCentimetre))
	}
	require.Empty(t, notation.Both(nil, gauge.QuarterInch, gauge.HalfCentimetre))
}

func TestReadLengths(t *testing.T) {
	for _, c := range []struct {
		text  string
		sizes int
		want  string
	}{
		{"48½ (56, 66) in [123 (142, 167.5) cm]", 3, "48.5 (56, 66) in [123 (142, 167.5) cm]"},
		{"48 1/2 (56, 66)\" [123 (142, 167.5) cm]", 3, "48.5 (56, 66) in [123 (142, 167.5) cm]"},
		{"48½ (56, 66) in / 123 (142, 167.5) cm", 3, "48.5 (56, 66) in [123 (142, 167.5) cm]"},
		{"123 (142, 167.5) cm (48½ (56, 66) in)", 3, "123 (142, 167.5) cm [48.5 (56, 66) in]"},
		{"48½ in [123 cm]", 3, "48.5 in [123 cm]"},
		{"48 (48¼) in [122.5 cm]", 0, "48 (48.25) in [122.5 cm]"},
		{"20-1/2 in", 2, "20.5 in"},
		{`38" (40", 42½")`, 3, "38 (40, 42.5) in"},
		{"20 cm [22 cm]", 2, "20 (22) cm"},
		{"20-21-22 cm", 3, "20 (21, 22) cm"},
		{"20[21:22]cm", 3, "20 (21, 22) cm"},
	} {
		t.Run(c.text, func(t *testing.T) {
			l, err := notation.ReadLengths(c.text, c.sizes)
			require.NoError(t, err)
			require.Equal(t, c.want, l.String())
			again, err := notation.ReadLengths(l.String(), c.sizes)
			require.NoError(t, err)
			require.Equal(t, l.String(), again.String())
			if c.sizes > 0 {
				require.Len(t, l.Own, c.sizes)
			}
		})
	}
	require.Empty(t, notation.Lengths{}.String())
	require.Empty(t, notation.Text(nil, gauge.QuarterInch))
	require.Empty(t, notation.Both(nil, gauge.QuarterInch, gauge.HalfCentimetre))
}

// What both units print is what is read, for every number of sizes.
func TestBothThenReadEveryLength(t *testing.T) {
	for n := 1; n <= grade.MaxSizes; n++ {
		r := make(grade.Run[gauge.Measurement], n)
		for i := range r {
			r[i] = gauge.MustLength("17.3 cm").Measurement().Times(gauge.Int(i + 1))
		}
		l, err := notation.ReadLengths(notation.Both(r, gauge.QuarterInch, gauge.HalfCentimetre), n)
		require.NoError(t, err)
		require.Len(t, l.Own, n)
		require.Len(t, l.Other, n)
		for i := range r {
			require.Equal(t, gauge.QuarterInch.Round(r[i]).String(), l.Own[i].String())
			require.Equal(t, gauge.HalfCentimetre.Round(r[i]).String(), l.Other[i].String())
		}
	}
}

func TestReadLengthsRefuses(t *testing.T) {
	for _, c := range []struct {
		text string
		at   int
		want string
	}{
		{"48½ (56, 66)", 13, "no unit; want one at the end of the list: 48½ (56, 66) in"},
		{"48½ (56, 66) inn", 14, `unknown unit "inn"`},
		{"48½ (56, 66) in [123 (142, 167.5) in]", 17, "both lists are in in"},
		{"48½ (56, 66) in [123 (142) cm]", 28, "2 values for 3 sizes"},
		{"48½ (56, 66) in 123", 17, `want the other unit in brackets after the first, got "123"`},
		{"48½ (56, 66) in [123 (142, 167.5) cm x]", 38, `unexpected "x" after the second list`},
		{"48½ (5.6.7, 66) in", 6, `value "5.6.7": a second decimal point`},
		{"48½ (56, 66) in [x cm]", 18, `unknown unit "x"`},
		{strings.Repeat("1", 10001), 10000, "text too long; at most 10000 characters"},
	} {
		t.Run(c.want, func(t *testing.T) {
			_, err := notation.ReadLengths(c.text, 3)
			var p *gauge.ParseError
			require.ErrorAs(t, err, &p)
			require.Equal(t, c.want, p.Cause)
			require.Equal(t, c.at, p.At)
		})
	}
	_, err := notation.ReadLengths("20 (21, 22) in [50 (53) cm]", 0)
	require.ErrorContains(t, err, "lists of different length")
	_, err = notation.ReadLengths("20 (21) in [50 (53, 55) cm]", 0)
	require.ErrorContains(t, err, "lists of different length")
	_, err = notation.ReadLengths("20 in", 99)
	require.ErrorIs(t, err, gauge.ErrBounds)
}

func TestStyleText(t *testing.T) {
	b, err := json.Marshal(allStyles)
	require.NoError(t, err)
	require.JSONEq(t, `["round","square","colons","dashes","alternating"]`, string(b))
	var back [len(allStyles)]notation.Style
	require.NoError(t, json.Unmarshal(b, &back))
	require.Equal(t, allStyles, back)
	_, err = notation.Style(7).MarshalText()
	require.Error(t, err)
	require.EqualError(t, back[0].UnmarshalText([]byte("wavy")), `parse style: "wavy": unknown style; want round, square, colons, dashes or alternating`)
}

func TestReadKeepsTheValuesError(t *testing.T) {
	_, err := notation.Read("1 (2)", 2, func(s string) (int, error) {
		if s == "2" {
			return 0, errors.New("two is not wanted")
		}
		return 1, nil
	})
	require.EqualError(t, err, `parse size list: "1 (2)": two is not wanted`)
}

func FuzzReadNumbers(f *testing.F) {
	for _, s := range []string{"101 (113, 125)", "73[79:85:91:103]", "10-12-14", "8 (10) 12 (14)", "1 (2, 3) [4]", "(", "1 (2]", "10–12"} {
		f.Add(s, 3)
		f.Add(s, 0)
	}
	f.Fuzz(func(t *testing.T, s string, n int) {
		r, err := notation.ReadNumbers(s, n)
		if err != nil {
			var p *gauge.ParseError
			if errors.As(err, &p) && (p.At < 0 || p.At > len(s)) {
				t.Fatalf("place %d of %q", p.At, s)
			}
			return
		}
		for _, style := range allStyles {
			text, err := notation.Print(style, r, strconv.Itoa)
			require.NoError(t, err)
			again, err := notation.ReadNumbers(text, len(r))
			require.NoError(t, err)
			require.Equal(t, r, again)
		}
	})
}

func FuzzReadLengths(f *testing.F) {
	for _, s := range []string{"48½ (56, 66) in [123 (142, 167.5) cm]", "48 in / 122 cm", "20-1/2\"", "1 (2) in [", "1 in [1 cm)"} {
		f.Add(s, 3)
		f.Add(s, 0)
	}
	f.Fuzz(func(t *testing.T, s string, n int) {
		l, err := notation.ReadLengths(s, n)
		if err != nil {
			var p *gauge.ParseError
			if errors.As(err, &p) && (p.At < 0 || p.At > len(s)) {
				t.Fatalf("place %d of %q", p.At, s)
			}
			return
		}
		again, err := notation.ReadLengths(l.String(), len(l.Own))
		if err != nil || again.String() != l.String() {
			t.Fatalf("%q prints %q, which reads as %v, %v", s, l, again, err)
		}
	})
}

// One garment, three ways to print its sizes.
func Example() {
	counts := grade.Run[int]{101, 113, 125}
	for _, style := range []notation.Style{notation.Round, notation.Colons, notation.Alternating} {
		text, _ := notation.Print(style, counts, strconv.Itoa)
		back, _ := notation.ReadNumbers(text, 3)
		fmt.Println(text, "=", grade.Numbers(back))
	}
	_, err := notation.ReadNumbers("101 (113, 125]", 3)
	fmt.Println(err)
	// Output:
	// 101 (113, 125) = 101 (113, 125)
	// 101[113:125] = 101 (113, 125)
	// 101 (113) 125 = 101 (113, 125)
	// parse size list: "101 (113, 125]": stray "]" before the end; no bracket of its kind is open
}

func ExamplePrint() {
	chains := grade.Run[int]{73, 79, 85, 91, 103}
	for _, s := range []notation.Style{notation.Round, notation.Square, notation.Colons, notation.Dashes, notation.Alternating} {
		text, _ := notation.Print(s, chains, strconv.Itoa)
		fmt.Println(text)
	}
	// Output:
	// 73 (79, 85, 91, 103)
	// 73 [79, 85, 91, 103]
	// 73[79:85:91:103]
	// 73-79-85-91-103
	// 73 (79) 85 (91) 103
}

func ExampleRead() {
	r, err := notation.Read("9½ in (10 in, 11 in)", 3, gauge.ParseLength)
	fmt.Println(r, err)
	_, err = notation.Read("9½ in (10 in)", 3, gauge.ParseLength)
	fmt.Println(err)
	// Output:
	// [9.5 in 10 in 11 in] <nil>
	// parse size list: "9½ in (10 in)": 2 values for 3 sizes
}

func ExampleReadNumbers() {
	r, err := notation.ReadNumbers("1[2:2:2:2]", 5)
	fmt.Println(r, err)
	// Output: [1 2 2 2 2] <nil>
}

func ExampleSkipped() {
	more, _ := notation.ReadNumbers("1[0:0:0:0]", 5)
	skip, _ := notation.Skipped(more, grade.Run[string]{"S", "M", "L", "XL", "2X"})
	fmt.Println("skip this part in sizes", skip)
	// Output: skip this part in sizes [M L XL 2X]
}

func ExampleText() {
	r := grade.Run[gauge.Measurement]{gauge.MustLength("48.5 in").Measurement(), gauge.MustLength("56 in").Measurement()}
	fmt.Println(notation.Text(r, gauge.QuarterInch))
	// Output: 48½ (56) in
}

func ExampleBoth() {
	r := grade.Run[gauge.Measurement]{
		gauge.MustLength("48.5 in").Measurement(), gauge.MustLength("56 in").Measurement(), gauge.MustLength("66 in").Measurement(),
	}
	fmt.Println(notation.Both(r, gauge.QuarterInch, gauge.HalfCentimetre))
	// Output: 48½ (56, 66) in [123 (142, 167.5) cm]
}

func ExampleReadLengths() {
	l, err := notation.ReadLengths("48½ (56, 66) in [123 (142, 167.5) cm]", 3)
	fmt.Println(l.Own[2], "or", l.Other[2], err)
	// Output: 66 in or 167.5 cm <nil>
}

func ExampleLengths_String() {
	l, _ := notation.ReadLengths("48½ (56, 66)\" / 123 (142, 167.5) cm", 3)
	fmt.Println(l)
	// Output: 48.5 (56, 66) in [123 (142, 167.5) cm]
}

func ExampleStyle_String() {
	fmt.Println(notation.Colons)
	// Output: colons
}

func ExampleStyle_MarshalText() {
	b, err := notation.Dashes.MarshalText()
	fmt.Println(string(b), err)
	// Output: dashes <nil>
}

func ExampleStyle_UnmarshalText() {
	var s notation.Style
	fmt.Println(s.UnmarshalText([]byte("alternating")), s)
	// Output: <nil> alternating
}
