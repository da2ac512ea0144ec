package hook_test

import (
	"encoding"
	"encoding/csv"
	"encoding/json"
	"os"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/gauge/hook"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

// table reads a file of testdata into one map a row.
func table(t *testing.T, name string) []map[string]string {
	file, err := os.Open("testdata/" + name)
	require.NoError(t, err)
	defer file.Close()
	reader := csv.NewReader(file)
	reader.Comment = '#'
	rows, err := reader.ReadAll()
	require.NoError(t, err)
	var out []map[string]string
	for _, row := range rows[1:] {
		m := map[string]string{}
		for i, name := range rows[0] {
			m[name] = row[i]
		}
		out = append(out, m)
	}
	return out
}

// Every label of the standard's tables, with its check, and none that the tables
// or their notes do not have.
func TestHookTable(t *testing.T) {
	check := map[string]hook.Check{"two-sources": hook.TwoSources, "one-source": hook.OneSource, "memory": hook.FromMemory}
	seen := 0
	for _, row := range table(t, "hooks.csv") {
		h := hook.Must(row["mm"] + " mm")
		for _, l := range h.Labels() {
			if l.Scheme == hook.US || l.Scheme == hook.OldUK {
				seen++
			}
		}
		if row["us"] != "" {
			require.Equal(t, row["us"], h.US(), row)
		}
		if row["uk_old"] != "" {
			require.Equal(t, row["uk_old"], h.UK(), row)
		}
		for _, l := range h.Labels() {
			if l.Text == row["us"] && l.Scheme == hook.US || l.Text == row["uk_old"] && l.Scheme == hook.OldUK {
				require.Equal(t, check[row["check"]], l.Check, row)
				require.Equal(t, strings.ReplaceAll(row["source"], ";", " "), l.Source)
			}
			require.NotEmpty(t, hook.Labelled(l.Text))
		}
	}
	require.Equal(t, 57, seen)
	for _, row := range table(t, "hooks-steel.csv") {
		var steel, lace []string
		for _, l := range hook.Must(row["mm"] + " mm").Labels() {
			switch l.Scheme {
			case hook.Steel:
				steel = append(steel, l.Text)
				require.Equal(t, check[row["check"]], l.Check, row)
			case hook.Lace:
				lace = append(lace, l.Text)
			}
		}
		require.Equal(t, row["us_steel"], strings.Join(steel, ";"), row)
		require.Equal(t, row["lace_number"], strings.Join(lace, ""), row)
	}
}

// One label, several sizes, as the standard's notes say.
func TestHooksLabelled(t *testing.T) {
	for label, want := range map[string]string{
		"I-9": "[5.5 mm]", "i 9": "[5.5 mm]", "P-16": "[11 mm 11.5 mm]", "Q": "[15.75 mm 16 mm]", "M-13": "[9 mm]", "M/N-13": "[9 mm]", "G": "[4.25 mm]",
		"B-1": "[2 mm 2.25 mm]", "00": "[2.7 mm 3.5 mm 9 mm]", "": "[]", "Z-99": "[]",
	} {
		var names []string
		for _, h := range hook.Labelled(label) {
			names = append(names, h.String())
		}
		require.Equal(t, want, "["+strings.Join(names, " ")+"]", label)
	}
}

// Up the sizes that are sold, one by one, and down again.
func TestHookSteps(t *testing.T) {
	var up []string
	h := hook.Must("0.1 mm")
	for next, ok := h.Larger(); ok; next, ok = h.Larger() {
		if back, ok := next.Smaller(); ok && len(up) > 0 {
			require.Equal(t, h.String(), back.String())
		}
		h = next
		up = append(up, strings.TrimSuffix(h.String(), " mm"))
	}
	require.Equal(t, "0.6 0.75 0.85 0.9 0.95 1 1.05 1.1 1.15 1.25 1.3 1.4 1.5 1.6 1.65 1.7 1.75 1.8 1.9 "+
		"2 2.25 2.5 2.75 3 3.25 3.5 3.75 4 4.5 5 5.5 6 6.5 7 7.5 8 9 10 11 11.5 12 15 15.75 16 17.5 19 25 30", strings.Join(up, " "))
	between, ok := hook.Must("5.25 mm").Smaller()
	require.True(t, ok)
	require.Equal(t, "5 mm", between.String())
	_, ok = hook.Must("0.6 mm").Smaller()
	require.False(t, ok)
}

func TestParseHookRefuses(t *testing.T) {
	for text, want := range map[string]string{
		"51 mm":   "want more than 0 and at most 50 mm",
		"0 mm":    "want more than 0 and at most 50 mm",
		"-5 mm":   "want more than 0 and at most 50 mm",
		"5,5 mm":  "want a diameter like 5.5 mm",
		"I-9":     "a label, which makers use differently; write the diameter: 5.5 mm",
		"steel 7": "want a diameter like 5.5 mm",
	} {
		_, err := hook.Parse(text)
		require.EqualError(t, err, `parse hook: "`+text+`": `+want)
	}
}

// What a hook and its labels print is read back, and a text that is not one
// changes nothing.
func TestRoundTrip(t *testing.T) {
	type all struct {
		Hook  hook.Hook
		Label hook.Label
	}
	in := all{hook.Must("5.5 mm"), hook.Must("9 mm").Labels()[0]}
	b, err := json.Marshal(in)
	require.NoError(t, err)
	var out all
	require.NoError(t, json.Unmarshal(b, &out))
	require.True(t, in.Hook.Diameter.Equal(out.Hook.Diameter))
	require.Equal(t, in.Label, out.Label)
	for _, v := range []encoding.TextUnmarshaler{&out.Hook, &out.Label.Scheme, &out.Label.Check} {
		var p *gauge.ParseError
		require.ErrorAs(t, v.UnmarshalText([]byte("?")), &p, "%T", v)
	}
	require.Equal(t, "5.5 mm", out.Hook.String())
	require.Equal(t, in.Label, out.Label)
}

func TestRefuses(t *testing.T) {
	for _, v := range []encoding.TextMarshaler{hook.Hook{}, hook.Scheme(9), hook.Check(9)} {
		_, err := v.MarshalText()
		var f *gauge.FieldError
		require.ErrorAs(t, err, &f, "%T", v)
	}
	require.PanicsWithValue(t, `hook.Must: parse hook: "x": want a diameter like 5.5 mm`, func() { hook.Must("x") })
	long := strings.Repeat("1 ", 6000)
	require.Empty(t, hook.Labelled(long))
	_, err := hook.Parse(long)
	require.ErrorIs(t, err, gauge.ErrBounds)
	require.Less(t, len(err.Error()), 600)
	for _, d := range []decimal.Decimal{decimal.New(1, 1_000_000_000), decimal.New(1, -1_000_000_000), decimal.New(1, 21)} {
		h := hook.Hook{Diameter: d}
		require.ErrorIs(t, h.Validate(), gauge.ErrBounds)
		require.Equal(t, "(a number out of bounds) mm", h.String())
		require.Empty(t, h.US())
		_, ok := h.Larger()
		require.False(t, ok)
	}
}

// The decimal package's variables change nothing here.
func TestHostileSettings(t *testing.T) {
	story := func() []any {
		larger, _ := hook.Must("5.5 mm").Larger()
		return []any{hook.Must("5.50 mm").Explain(), hook.Hook{Diameter: decimal.New(1, 1)}.String(), larger.String()}
	}
	want := story()
	division, trim, scientific := decimal.DivisionPrecision, decimal.TrimTrailingZeros, decimal.UseScientificNotation
	defer func() {
		decimal.DivisionPrecision, decimal.TrimTrailingZeros, decimal.UseScientificNotation = division, trim, scientific
	}()
	decimal.DivisionPrecision, decimal.TrimTrailingZeros, decimal.UseScientificNotation = 2, !trim, !scientific
	require.Equal(t, want, story())
}
