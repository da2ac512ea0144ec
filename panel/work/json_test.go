package work

import (
	"encoding/json"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/row"
	"github.com/stretchr/testify/require"
)

// What is read was found by solving, at a size of its own too, and answers as the
// one that was written.
func TestSolutionFromJSON(t *testing.T) {
	sized := []row.Row{row.Must("fsc 7 (9, 11)", row.US), row.Must("sc 3 (4, 5), ch 1, sk 1, dc in each st across", row.US)}
	for size := range 3 {
		sol, err := Solve(sized, size)
		require.NoError(t, err)
		text, err := json.Marshal(sol)
		require.NoError(t, err)
		var back Solution
		require.NoError(t, json.Unmarshal(text, &back))
		require.Equal(t, sol, back)
		require.Equal(t, 3+size, back.Opening(1, 7+2*size).Made.Of(row.SingleCrochet))
	}
	for text, want := range map[string]string{
		`[]`:                            "cannot unmarshal array",
		`{"rows": ["hcd"]}`:             `read "hcd"`,
		`{"rows": ["fhdc 3", "hdc 4"]}`: "row 2",
		`{"opening": ["fhdc"], "repeat": ["2 hdc in each st across"]}`: "row 2",
		`{"rule": "even"}`: "Solution.Rule: got even, want any by the rows",
		`{"repeat": ["hdc in each st across", "fhdc 3"]}`: "row 2",
	} {
		kept := Solution{Rule: gauge.Rule{Multiple: 2}}
		require.ErrorContains(t, json.Unmarshal([]byte(text), &kept), want, text)
		require.Equal(t, Solution{Rule: gauge.Rule{Multiple: 2}}, kept, "nothing half read")
	}
}

// Rows that work at any count are read back too: the rule of any count has two
// forms and one text.
func TestAnyCountFromJSON(t *testing.T) {
	sol, err := Solve([]row.Row{row.Must("fdc", row.US), row.Must("dc in each st across", row.US)}, 0)
	require.NoError(t, err)
	text, err := json.Marshal(sol)
	require.NoError(t, err)
	var back Solution
	require.NoError(t, json.Unmarshal(text, &back))
	require.Equal(t, sol, back)
}

// The rows that a solution keeps for JSON are its own.
func TestSolutionKeepsItsRows(t *testing.T) {
	given := []row.Row{row.Must("fsc", row.US)}
	sol, err := Solve(given, 0)
	require.NoError(t, err)
	given[0] = row.Must("fdc", row.US)
	text, err := json.Marshal(sol)
	require.NoError(t, err)
	require.JSONEq(t, `{"rule": "any, at least 1", "rows": ["fsc"]}`, string(text))
}

func TestTallyFromJSON(t *testing.T) {
	var old Tally // from before the kinds were written
	require.NoError(t, json.Unmarshal([]byte(`{"stitches":5,"chains":4,"spaces":2}`), &old))
	require.Equal(t, Tally{Stitches: 5, Chains: 4, Spaces: 2}, old)
	for text, want := range map[string]string{
		`{"stitches":5,"kinds":{"sc":3}}`:         "Tally.Kinds: got 3 in all, want 5 as in stitches",
		`{"stitches":5,"kinds":{"":5}}`:           "Tally.Kinds: got no stitch of a row",
		`{"stitches":5,"kinds":{"ch":5}}`:         "Tally.Kinds: got no stitch of a row",
		`{"stitches":5,"kinds":{"xyz":5}}`:        "xyz",
		`{"stitches":5,"kinds":{"sc":6,"dc":-1}}`: "Tally.Kinds: got -1 dc, want 0 or more",
		`[]`: "cannot unmarshal array",
	} {
		kept := Tally{Stitches: 1}
		require.ErrorContains(t, json.Unmarshal([]byte(text), &kept), want, text)
		require.Equal(t, Tally{Stitches: 1}, kept, "nothing half read")
	}
}

func FuzzSolutionJSON(f *testing.F) {
	f.Add(`{"rows":["fhdc","dc in first st, *ch 1, sk 1, dc in next st; rep from * across"]}`)
	f.Add(`{"rule":"any, at least 1","opening":["fsc"],"repeat":["sc in each st across"],"size":2}`)
	f.Fuzz(func(t *testing.T, s string) {
		var sol Solution
		if len(s) > 2000 || json.Unmarshal([]byte(s), &sol) != nil {
			return
		}
		text, err := json.Marshal(sol)
		require.NoError(t, err)
		var back Solution
		require.NoError(t, json.Unmarshal(text, &back), "%s", text)
		require.Equal(t, sol.Rule, back.Rule)
	})
}

func FuzzTallyJSON(f *testing.F) {
	f.Add(`{"stitches":2,"chains":1,"spaces":1,"kinds":{"dc":2}}`)
	f.Fuzz(func(t *testing.T, s string) {
		var tally Tally
		if json.Unmarshal([]byte(s), &tally) != nil {
			return
		}
		text, err := json.Marshal(tally)
		require.NoError(t, err)
		var back Tally
		require.NoError(t, json.Unmarshal(text, &back), "%s", text)
		require.Equal(t, tally, back)
	})
}
