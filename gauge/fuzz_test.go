package gauge_test

import (
	"fmt"
	"testing"

	"example.com/panelmath/gauge"
)

// stable checks that what is read prints to something that is read and printed
// the same, and that an error stays short.
func stable[T fmt.Stringer](f *testing.F, parse func(string) (T, error), seeds ...string) {
	for _, s := range seeds {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		v, err := parse(s)
		if err != nil {
			if len(err.Error()) > 2000 {
				t.Fatalf("an error of %d bytes", len(err.Error()))
			}
			return
		}
		again, err := parse(v.String())
		if err != nil {
			t.Fatalf("%q prints as %q: %v", s, v, err)
		}
		if again.String() != v.String() {
			t.Fatalf("%q prints as %q, then as %q", s, v, again)
		}
	})
}

func FuzzParseLength(f *testing.F) {
	stable(f, gauge.ParseLength, "20 1/2 in", "20½\"", "5 ft 3 in", "-5'3½\"", "1.5 yd", "0.5cm", "4-in", "1e9 in", "20,5 cm", "3/2 m")
}

func FuzzParseMeasurement(f *testing.F) {
	stable(f, gauge.ParseMeasurement, "13000/3 mm", "100/3 cm", "-1/7 in", "20½ in", "1/0 mm", "99999999999999999999 yd")
}

func FuzzParseGauge(f *testing.F) {
	stable(f, gauge.ParseGauge, "12 sts and 7 rows = 4 in", "20 sts = 7 cm, 10 rows = 10 cm", "2 repeats of 8 sts = 3.5 in; 9 rows = 4 in", "1 st x 1 row over 4\"")
}

func FuzzParseOver(f *testing.F) {
	stable(f, gauge.ParseOver, "13 over 4 in", "2 repeats of 8 over 3.5 in", "13½ sts = 10cm", "1 rep of 1 row per 1 ft 2 in")
}

func FuzzParseRule(f *testing.F) {
	stable(f, gauge.ParseRule, "multiple of 6 + 1", "6n - 1, at least 4, up", "even", "odd, ties down", "any")
}

func FuzzParseRatio(f *testing.F) {
	stable(f, gauge.ParseRatio, "511/8", "-0.5", "104", "1/0", "+2/4")
}

func FuzzParseGrid(f *testing.F) {
	stable(f, gauge.ParseGrid, "quarter inch", "Half Centimeter at 2.5 to the inch", "")
}

func FuzzParseUnit(f *testing.F) {
	stable(f, gauge.ParseUnit, "in", "Metres", "\"", "yds.", "")
}
