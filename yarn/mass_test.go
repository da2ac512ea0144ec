package yarn_test

import (
	"encoding/json"
	"math/big"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

func TestParseMass(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"100 g", "100 g"}, {"14.5g", "14.5 g"}, {"3 1/2 oz", "3.5 oz"}, {"3-1/2 oz", "3.5 oz"}, {"1¾ oz", "1.75 oz"}, {"½ lb", "0.5 lb"},
		{"1/8 lb", "0.125 lb"}, {"0.45 kg", "0.45 kg"}, {"2 lbs", "2 lb"}, {"50 Grams", "50 g"}, {"4 oz.", "4 oz"}, {" .5 kilo ", "0.5 kg"},
		{"0 g", "0 g"}, {"1000 kg", "1000 kg"},
	} {
		t.Run(c.text, func(t *testing.T) {
			m, err := yarn.ParseMass(c.text)
			require.NoError(t, err)
			require.Equal(t, c.want, m.String())
			back, err := yarn.ParseMass(m.String())
			require.NoError(t, err)
			require.True(t, back.Exact().Equal(m.Exact()))
		})
	}
}

func TestParseMassRefuses(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"", `parse mass: "": no number; want a number and a unit, like 100 g`},
		{"100", `parse mass: "100": no unit; want g, kg, oz or lb`},
		{"100 yd", `parse mass: "100 yd": unknown unit "yd"; want g, kg, oz or lb`},
		{"-5 g", `parse mass: "-5 g": a negative number`},
		{"1,250 g", `parse mass: "1,250 g": a comma in the number; write 1250 or 20.5`},
		{"11/2 oz", `parse mass: "11/2 oz": a fraction of 1 or more: 11/2; write 1 1/2 or 5 1/2`},
		{"1.5 1/2 oz", `parse mass: "1.5 1/2 oz": a fraction after a decimal; write 20 1/2 or 20.5`},
		{"1e1000000000 g", `parse mass: "1e1000000000 g": an exponent; write the number out`},
		{"1001 kg", `parse mass: "1001 kg": more than 1000 kg`},
		{"9999999999999999999999999999999 g", `parse mass: "9999999999999999999999999999999 g": 31 digits, want at most 30 digits`},
		{". g", `parse mass: ". g": no number; want a number and a unit, like 100 g`},
		{"1.2.3 g", `parse mass: "1.2.3 g": a second decimal point`},
		{"0.000000000000000000001 g", `parse mass: "0.000000000000000000001 g": more than 20 decimal places`},
	} {
		t.Run(c.text, func(t *testing.T) {
			_, err := yarn.ParseMass(c.text)
			require.EqualError(t, err, c.want)
		})
	}
	_, err := yarn.ParseMass(strings.Repeat("9", 20000) + " g")
	require.ErrorIs(t, err, gauge.ErrBounds)
	_, err = yarn.ParseMass(strings.Repeat("9", 200) + " g")
	require.ErrorContains(t, err, "at most 30 digits")
}

// The pound is 453.59237 g and the ounce a sixteenth of it: international yard
// and pound agreement, 1 July 1959.
func TestUnitsAreThoseOf1959(t *testing.T) {
	for _, c := range []struct{ from, grams string }{
		{"1 lb", "453.59237 g"}, {"16 oz", "453.59237 g"}, {"1 oz", "28.349523125 g"}, {"3.5 oz", "99.2233309375 g"}, {"1 kg", "1000 g"},
	} {
		t.Run(c.from, func(t *testing.T) {
			require.Equal(t, c.grams, yarn.MustMass(c.from).Exact().String())
		})
	}
}

func TestMassValidate(t *testing.T) {
	for _, c := range []struct {
		name string
		m    yarn.Mass
		want string
	}{
		{"zero value", yarn.Mass{}, "Unit: got MassUnit(0), want g, kg, oz or lb"},
		{"negative", yarn.Mass{Value: decimal.NewFromInt(-1), Unit: yarn.Gram}, "Value: got -1 g, want at least 0"},
		{"heavy", yarn.Mass{Value: decimal.NewFromInt(1001), Unit: yarn.Kilogram}, "Value: got 1001 kg, want at most 1000 kg"},
		{"hostile", yarn.Mass{Value: decimal.New(1, 1_000_000_000), Unit: yarn.Gram}, "Value: got an exponent of 1000000000, want an exponent of -20 to 20"},
	} {
		t.Run(c.name, func(t *testing.T) { require.EqualError(t, c.m.Validate(), c.want) })
	}
}

func TestExactMass(t *testing.T) {
	third, _ := gauge.Share(1000, 3)
	m := yarn.MassOf(third, yarn.Gram)
	require.Equal(t, "1000/3 g", m.String())
	require.Equal(t, 0, m.In(yarn.Gram).Rat().Cmp(big.NewRat(1000, 3)))
	require.True(t, m.Add(m).Equal(m.Times(gauge.Int(2))))
	require.Equal(t, 0, m.Sub(m).Sign())
	require.Equal(t, 1, m.Cmp(yarn.MustMass("333.3 g").Exact()))
	n, err := m.Per(yarn.MustMass("100 g").Exact())
	require.NoError(t, err)
	require.Equal(t, "10/3", n.String())
	_, err = m.Per(yarn.ExactMass{})
	require.Error(t, err)
	require.Equal(t, 0, yarn.MassOf(third, 0).Sign())
	require.Equal(t, 0, m.In(9).Sign())

	b, err := json.Marshal(m)
	require.NoError(t, err)
	require.Equal(t, `"1000/3 g"`, string(b))
	var back yarn.ExactMass
	require.NoError(t, json.Unmarshal(b, &back))
	require.True(t, back.Equal(m))
	require.NoError(t, json.Unmarshal([]byte(`"1 lb"`), &back))
	require.Equal(t, "453.59237 g", back.String())
	require.Error(t, json.Unmarshal([]byte(`"heavy"`), &back))
}
