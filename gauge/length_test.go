package gauge_test

import (
	"testing"

	"example.com/panelmath/gauge"
	"github.com/stretchr/testify/require"
)

func TestParseLength(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"20 1/2 in", "20.5 in"}, {"20½\"", "20.5 in"}, {"20.5in", "20.5 in"}, {"20-1/2 in", "20.5 in"}, {"½ in", "0.5 in"},
		{"52 cm", "52 cm"}, {"5 ft 3 in", "63 in"}, {"5'3\"", "63 in"}, {"1.5 yd", "1.5 yd"}, {"-2 in", "-2 in"},
	} {
		t.Run(c.text, func(t *testing.T) {
			l, err := gauge.ParseLength(c.text)
			require.NoError(t, err)
			require.Equal(t, c.want, l.String())
		})
	}
}

func TestParseLengthRefuses(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"9 inn", `parse length: "9 inn": unknown unit "inn"`},
		{"20,5 cm", `parse length: "20,5 cm": a comma as decimal mark; write a full stop: 20.5`},
		{"20", `parse length: "20": no unit; want mm, cm, m, in, ft or yd`},
		{"1e1000000000 in", `parse length: "1e1000000000 in": an exponent; write the number out`},
		{"1/3 in", `parse length: "1/3 in": fraction "1/3" has no exact decimal; want halves, quarters, eighths, sixteenths, fifths or tenths`},
		{"101 m", `parse length: "101 m": longer than 100 m, or a number out of bounds`},
	} {
		t.Run(c.text, func(t *testing.T) {
			_, err := gauge.ParseLength(c.text)
			require.EqualError(t, err, c.want)
		})
	}
}
