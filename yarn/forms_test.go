package yarn_test

import (
	"encoding"
	"encoding/json"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/usage"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

func TestParseRefuses(t *testing.T) {
	long := strings.Repeat("1", 10_001)
	label := func(s string) error { _, err := yarn.ParseLabel(s); return err }
	length := func(s string) error { _, err := yarn.ParseLength(s); return err }
	margin := func(s string) error { _, err := yarn.ParseMargin(s); return err }
	area := func(s string) error { _, err := yarn.ParseArea(s); return err }
	mass := func(s string) error { _, err := yarn.ParseMass(s); return err }
	for _, c := range []struct {
		name  string
		parse func(string) error
		text  string
		want  string
	}{
		{"label without mass", label, "230 yd = 210 m", `parse label: "230 yd = 210 m": parse mass: " 210 m": unknown unit "m"; want g, kg, oz or lb`},
		{"label without length", label, "100 g = 50 g", `parse label: "100 g = 50 g": parse yarn length: " 50 g": unknown unit "g"; want yd, m, in, ft, cm or mm`},
		{"label of nothing", label, "0 yd = 100 g", `parse label: "0 yd = 100 g": Label.Length: got 0 yd, want more than 0`},
		{"label of no mass", label, "230 yd = 0 g", `parse label: "230 yd = 0 g": Label.Mass: got 0 g, want more than 0`},
		{"label of one part", label, "230 yd", `parse label: "230 yd": want a length and a mass, like 230 yd = 100 g`},
		{"length without unit", length, "230", `parse yarn length: "230": no unit; want yd, m, in, ft, cm or mm`},
		{"length in feathers", length, "230 ydd", `parse yarn length: "230 ydd": unknown unit "ydd"; want yd, m, in, ft, cm or mm`},
		{"endless length", length, "100001 m", `parse yarn length: "100001 m": longer than 100 km`},
		{"endless digits", length, "9999999999999999999999999999999 m", `parse yarn length: "9999999999999999999999999999999 m": 31 digits, want at most 30 digits`},
		{"negative length", length, "−3 m", `parse yarn length: "−3 m": a negative number`},
		{"no length", length, "yd", `parse yarn length: "yd": no number; want a number and a unit, like 230 yd`},
		{"bare margin", margin, "10", `parse margin: "10": no percent sign; want a percentage like 10%`},
		{"margin of words", margin, "ten%", `parse margin: "ten%": no number; want a number and a unit, like 10%`},
		{"margin beyond all", margin, "1001%", `parse margin: "1001%": want -100% to 1000%`},
		{"margin below all", margin, "-100.1%", `parse margin: "-100.1%": want -100% to 1000%`},
		{"margin of two signs", margin, "--5%", `parse margin: "--5%": no number; want a number and a unit, like 10%`},
		{"area in inches", area, "36 in", `parse area: "36 in": want a number and a square unit, like 1534 sq in`},
		{"area of nothing", area, "sq in", `parse area: "sq in": want a number like 1534 or 13000/3`},
		{"area of acres", area, "1 sq acre", `parse area: "1 sq acre": want a number and a square unit, like 1534 sq in`},
	} {
		t.Run(c.name, func(t *testing.T) { require.EqualError(t, c.parse(c.text), c.want) })
	}
	for name, parse := range map[string]func(string) error{"label": label, "length": length, "margin": margin, "area": area, "mass": mass} {
		t.Run(name+" of 10 001 characters", func(t *testing.T) { require.ErrorContains(t, parse(long), "text too long") })
	}
	for _, must := range []func(){
		func() { yarn.MustLabel("x") }, func() { yarn.MustLength("x") }, func() { yarn.MustMass("x") }, func() { yarn.MustMargin("x") },
	} {
		require.Panics(t, must)
	}
}

func TestParseLabelForms(t *testing.T) {
	for _, s := range []string{"230 yd = 100 g", "100 g = 230 yd", "230yd/100g", "230 yd / 100 g", "230 yards per 100 grams", "100 g, 230 yd", "100g/230yd"} {
		t.Run(s, func(t *testing.T) {
			l, err := yarn.ParseLabel(s)
			require.NoError(t, err)
			require.Equal(t, "230 yd = 100 g", l.String())
		})
	}
	l, err := yarn.ParseLabel("3 1/2 oz = 1/2 yd")
	require.NoError(t, err)
	require.Equal(t, "0.5 yd = 3.5 oz", l.String())
}

// A brief's part about yarn, read and written.
func TestJSON(t *testing.T) {
	type brief struct {
		Label  yarn.Label  `json:"label"`
		Swatch yarn.Swatch `json:"swatch"`
		Margin yarn.Margin `json:"margin"`
		Sewing yarn.Sewing `json:"sewing"`
	}
	const text = `{"label":{"length":"230 yd","mass":"100 g"},"swatch":{"width":"6 in","height":"6 in","mass":"14.5 g"},"margin":"10%","sewing":{"factor":"2.5","end":"6 in"}}`
	var b brief
	require.NoError(t, json.Unmarshal([]byte(text), &b))
	require.NoError(t, b.Label.Validate())
	require.NoError(t, b.Swatch.Validate())
	require.NoError(t, b.Sewing.Validate())
	out, err := json.Marshal(b)
	require.NoError(t, err)
	require.JSONEq(t, text, string(out))

	for _, bad := range []string{`{"label":{"length":"230 ydd"}}`, `{"label":{"mass":"1 stone"}}`, `{"margin":"0.1"}`} {
		require.Error(t, json.Unmarshal([]byte(bad), &b), bad)
	}
	area := yarn.Rectangle(mm("1 in"), mm("1/8 in")).Times(share(t, 1, 3))
	p := usage.Project{Label: b.Label, Area: area, Skeins: decimal.NewFromInt(3), Left: yarn.MustMass("5 g")}
	out, err = json.Marshal(p)
	require.NoError(t, err)
	var back usage.Project
	require.NoError(t, json.Unmarshal(out, &back))
	require.Equal(t, 0, back.Area.Cmp(area), string(out))
	require.Equal(t, p.Left.String(), back.Left.String())
	require.Error(t, json.Unmarshal([]byte(`{"area":"3 in"}`), &back))
}

func TestMarshalTextRefusesInvalid(t *testing.T) {
	for name, v := range map[string]encoding.TextMarshaler{
		"length": yarn.Length{}, "mass": yarn.Mass{}, "unit": yarn.MassUnit(9), "part": yarn.Part(9), "margin": yarn.Margin{Percent: decimal.NewFromInt(-200)},
	} {
		t.Run(name, func(t *testing.T) {
			b, err := v.MarshalText()
			var f *gauge.FieldError
			require.ErrorAs(t, err, &f)
			require.Nil(t, b)
		})
	}
	require.Equal(t, "MassUnit(9)", yarn.MassUnit(9).String())
	require.Equal(t, "Part(9)", yarn.Part(9).String())
	var u yarn.MassUnit
	require.Error(t, u.UnmarshalText([]byte("stone")))
	var m yarn.Mass
	require.Error(t, m.UnmarshalText([]byte("5")))
}

func TestLengthValidate(t *testing.T) {
	for _, c := range []struct {
		name string
		l    yarn.Length
		want string
	}{
		{"zero value", yarn.Length{}, "Unit: got Unit(0), want yd, m, in, ft, cm or mm"},
		{"negative", yarn.Length{Value: decimal.NewFromInt(-1), Unit: gauge.Metre}, "Value: got -1 m, want at least 0"},
		{"endless", yarn.Length{Value: decimal.New(1, 6), Unit: gauge.Metre}, "Value: got more than 100 km, want at most 100 km"},
		{"hostile", yarn.Length{Value: decimal.New(1, 1_000_000_000), Unit: gauge.Metre}, "Value: got an exponent of 1000000000, want an exponent of -20 to 20"},
		{"31 digits", yarn.Length{Value: decimal.RequireFromString(strings.Repeat("9", 31)), Unit: gauge.Metre}, "Value: got 31 digits, want at most 30 digits"},
	} {
		t.Run(c.name, func(t *testing.T) { require.EqualError(t, c.l.Validate(), c.want) })
	}
	require.Equal(t, 0, yarn.Length{Value: decimal.New(1, 1_000_000_000), Unit: gauge.Metre}.Measurement().Sign())
}

func TestInvalidUnitsGiveNothing(t *testing.T) {
	require.Equal(t, 0, rect("1 in", "1 in").In(0).Sign())
	require.Equal(t, 0, yarn.Label{}.LengthOf(yarn.MustMass("1 g").Exact()).Sign())
	require.Equal(t, 0, yarn.Label{}.MassOf(mm("1 m")).Sign())
	_, err := rect("1 in", "1 in").Per(yarn.Area{})
	require.Error(t, err)
	require.Equal(t, "1/3 sq mm", yarn.Rectangle(mm("1 mm"), mm("1 mm")).Times(share(t, 1, 3)).String())
}

func FuzzParseMass(f *testing.F) {
	for _, s := range []string{"100 g", "3 1/2 oz", "1¾ oz", "½ lb", "1e9 g", "1,5 g", "-3 kg", "0.00000000000000000001 g", "99999999999999999999999999999999 g"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		m, err := yarn.ParseMass(s)
		if err != nil {
			require.True(t, m.Value.IsZero() && m.Unit == 0, "a partial result beside an error")
			return
		}
		require.NoError(t, m.Validate())
		back, err := yarn.ParseMass(m.String())
		require.NoError(t, err)
		require.True(t, back.Exact().Equal(m.Exact()))
		require.Equal(t, m.String(), back.String())
	})
}

func FuzzParseLabel(f *testing.F) {
	for _, s := range []string{"230 yd = 100 g", "50g/125m", "100 g, 230 yd", "400 yd per 4 oz", "1/2 yd / 1/4 oz", "==", "/", " per ", "yd=g"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		l, err := yarn.ParseLabel(s)
		if err != nil {
			require.True(t, l.Length.Unit == 0 && l.Mass.Unit == 0, "a partial result beside an error")
			return
		}
		require.NoError(t, l.Validate())
		back, err := yarn.ParseLabel(l.String())
		require.NoError(t, err)
		require.Equal(t, l.String(), back.String())
		// What a skein weighs is as long as the skein.
		require.True(t, l.LengthOf(l.Mass.Exact()).Equal(l.Length.Measurement()))
		require.True(t, l.MassOf(l.Length.Measurement()).Equal(l.Mass.Exact()))
	})
}

func FuzzParseMargin(f *testing.F) {
	for _, s := range []string{"10%", "-5 %", "+7.5 percent", "%", "1/2%", "½%", "1e3%"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		m, err := yarn.ParseMargin(s)
		if err != nil {
			return
		}
		require.NoError(t, m.Validate())
		back, err := yarn.ParseMargin(m.String())
		require.NoError(t, err)
		require.True(t, back.Percent.Equal(m.Percent))
	})
}

func FuzzParseArea(f *testing.F) {
	for _, s := range []string{"36 sq in", "1/3 sq mm", "0.25 m²", "sq in", "1e9 sq m", "-3 sq in"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		a, err := yarn.ParseArea(s)
		if err != nil {
			return
		}
		back, err := yarn.ParseArea(a.String())
		if err != nil { // only where the fraction outgrows the digits that a reader takes
			require.Greater(t, len(a.String()), 120)
			return
		}
		require.Equal(t, 0, a.Cmp(back))
	})
}

// A quantity goes out and comes back the same, exactly.
func TestQuantityJSON(t *testing.T) {
	line, err := square.Fabric("panels", rect("40 in", "39 in"), yarn.MustLabel("137 m = 1 3/4 oz"))
	require.NoError(t, err)
	q, err := yarn.Buy(label, yarn.MustMargin("10%"), line)
	require.NoError(t, err)
	out, err := json.Marshal(q)
	require.NoError(t, err)
	var back yarn.Quantity
	require.NoError(t, json.Unmarshal(out, &back))
	require.True(t, back.Total.Equal(q.Total) && back.Net.Equal(q.Net) && back.Mass.Equal(q.Mass) && back.Slack.Equal(q.Slack))
	require.Equal(t, q.Explain(), back.Explain())
	again, err := json.Marshal(back)
	require.NoError(t, err)
	require.Equal(t, string(out), string(again))
}
