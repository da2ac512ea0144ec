package number

import (
	"math/big"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

func TestScan(t *testing.T) {
	for _, c := range []struct{ s, want, rest string }{
		{"20 in", "20", " in"}, {"20.50in", "20.5", "in"}, {".5", "0.5", ""}, {"007 cm", "7", " cm"},
		{"20 1/2 in", "20.5", " in"}, {"20-1/2 in", "20.5", " in"}, {"1/2", "0.5", ""}, {"31/32 in", "0.96875", " in"},
		{"20½\"", "20.5", "\""}, {"20 ½", "20.5", ""}, {"½", "0.5", ""}, {"1⅖", "1.4", ""}, {"⅒ oz", "0.1", " oz"},
		{"12 sts", "12", " sts"}, {"4-in", "4", "-in"}, {"5 ft", "5", " ft"}, {"3 eggs", "3", " eggs"}, {"3.", "3", "."}, {"20.5 13", "20.5", " 13"},
		{"", "0", ""}, {"in", "0", "in"}, {"-5", "0", "-5"}, {".", "0", "."}, {"., 5", "0", "., 5"},
		{strings.Repeat("9", 30), strings.Repeat("9", 30), ""},
	} {
		t.Run(c.s, func(t *testing.T) {
			d, n, trouble := Scan(c.s)
			require.Nil(t, trouble)
			require.Equal(t, c.want, Text(d))
			require.Equal(t, c.rest, c.s[n:])
		})
	}
}

func TestScanRefuses(t *testing.T) {
	const noDecimal = " has no exact decimal; want halves, quarters, eighths, sixteenths, fifths or tenths"
	for _, c := range []struct {
		s, cause, at string
		bounds       bool
	}{
		{"20,5 cm", "a comma in the number; write 1250 or 20.5", ",5 cm", false},
		{"1,250.5 g", "a comma in the number; write 1250 or 20.5", ",250.5 g", false},
		{"1e9", "an exponent; write the number out", "e9", false},
		{"1.5E-6", "an exponent; write the number out", "E-6", false},
		{"1.2.3 g", "a second decimal point", ".3 g", false},
		{"20.5 1/2 in", "a fraction after a decimal; write 20 1/2 or 20.5", " 1/2 in", false},
		{"20.5½", "a fraction after a decimal; write 20 1/2 or 20.5", "½", false},
		{"20 1/3", `fraction "1/3"` + noDecimal, "1/3", false},
		{"1/0", `fraction "1/0"` + noDecimal, "1/0", false},
		{"1/ in", `fraction "1/"` + noDecimal, "1/ in", false},
		{"5⅓", `fraction "⅓"` + noDecimal, "⅓", false},
		{"11/2 oz", "a fraction of 1 or more: 11/2; write 1 1/2 or 5 1/2", "11/2 oz", false},
		{"20 3/2 in", "a fraction of 1 or more: 3/2; write 1 1/2", "3/2 in", false},
		{strings.Repeat("1", 40), "a number of 40 characters; at most 30 digits", strings.Repeat("1", 40), true},
		{strings.Repeat("1", 40) + "½", "a number of 40 characters; at most 30 digits", strings.Repeat("1", 40) + "½", true},
		{"0.000000000000000000001", "more than 20 decimal places", "0.000000000000000000001", true},
	} {
		t.Run(c.s, func(t *testing.T) {
			_, n, trouble := Scan(c.s)
			require.NotNil(t, trouble)
			require.Zero(t, n)
			require.Equal(t, Trouble{At: len(c.s) - len(c.at), Cause: c.cause, Bounds: c.bounds}, *trouble)
		})
	}
}

// Every fraction that is read against big.Rat.
func TestFractionsAreExact(t *testing.T) {
	for _, den := range []string{"2", "4", "8", "16", "32", "5", "10"} {
		want, ok := new(big.Rat).SetString("1/" + den)
		require.True(t, ok)
		d, _, trouble := Scan("7 1/" + den)
		require.Nil(t, trouble)
		require.Zero(t, d.Rat().Cmp(want.Add(want, big.NewRat(7, 1))), den)
	}
	for _, v := range signs {
		d, n, trouble := Scan(v.sign)
		require.Nil(t, trouble)
		require.Equal(t, len(v.sign), n)
		require.Zero(t, d.Rat().Cmp(big.NewRat(v.thousandths, 1000)))
		require.Equal(t, v.sign, Vulgar(v.thousandths))
	}
	require.Empty(t, Vulgar(0))
}

func TestSign(t *testing.T) {
	for _, c := range []struct {
		s     string
		minus bool
		n     int
	}{{"5", false, 0}, {"-5", true, 1}, {"−5", true, 3}, {"+5", false, 1}, {"", false, 0}} {
		minus, n := Sign(c.s)
		require.Equal(t, c.minus, minus, c.s)
		require.Equal(t, c.n, n, c.s)
	}
}

func TestText(t *testing.T) {
	for want, d := range map[string]decimal.Decimal{
		"0": {}, "2.5": decimal.New(2500, -3), "-0.5": decimal.New(-5, -1), "12000": decimal.New(12, 3),
		"(a number out of bounds)": decimal.New(1, 1_000_000_000),
	} {
		require.Equal(t, want, Text(d))
	}
	require.Equal(t, "(a number out of bounds)", Text(Parse(strings.Repeat("9", 31))))
}

func TestOutside(t *testing.T) {
	for _, c := range []struct {
		d         decimal.Decimal
		got, want string
	}{
		{decimal.New(1, 20), "", ""},
		{decimal.New(1, -21), "an exponent of -21", "an exponent of -20 to 20"},
		{decimal.New(1, 21), "an exponent of 21", "an exponent of -20 to 20"},
		{Parse(strings.Repeat("9", 31)), "31 digits", "at most 30 digits"},
	} {
		got, want := Outside(c.d)
		require.Equal(t, []string{c.got, c.want}, []string{got, want})
	}
}

// What is read never takes more than there is, and prints to what is read again.
func FuzzScan(f *testing.F) {
	for _, s := range []string{"20 1/2 in", "20½", ".5", "1e9", "1,5", "11/2", "⅓", "1.2.3", "20-1/2"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		d, n, trouble := Scan(s)
		if trouble != nil {
			if n != 0 || trouble.At < 0 || trouble.At > len(s) {
				t.Fatalf("%q: %d bytes and %+v", s, n, *trouble)
			}
			return
		}
		again, m, trouble := Scan(Text(d))
		if outside, _ := Outside(d); outside == "" && (trouble != nil || m != len(Text(d)) || !again.Equal(d)) {
			t.Fatalf("%q reads as %v, which reads as %v (%v)", s, d, again, trouble)
		}
	})
}
