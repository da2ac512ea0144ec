package proof_test

import (
	"encoding/json"
	"math"
	"strings"
	"testing"
	"time"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel/proof"
	"example.com/panelmath/panel/row"
	"github.com/stretchr/testify/require"
)

// A text from a file that no reader made is refused at once, with its line.
func TestValidateRefuses(t *testing.T) {
	for in, want := range map[string]string{
		`{"sizes":1000000000000}`: "Text.Sizes: got 1000000000000, want 1 to 64",
		`{"sizes":65}`:            "Text.Sizes: got 65, want 1 to 64",
		`{"sizes":-1}`:            "Text.Sizes: got -1, want 1 to 64",
		`{"sizes":1,"lines":[{"place":4,"rows":9000000000000000000,"row":"fhdc 3"}]}`:                                          "line 4: got 9000000000000000000 rows, want 0 to 100000",
		`{"sizes":1,"lines":[{"place":4,"rows":-1,"row":"fhdc 3"}]}`:                                                           "line 4: got -1 rows, want 0 to 100000",
		`{"sizes":1,"lines":[{"place":4,"rows":60000,"row":"fhdc 3"},{"place":5,"rows":60000,"row":"hdc in each st across"}]}`: "line 5: got more than 100000 rows to here, want at most 100000",
		`{"sizes":3,"lines":[{"place":4,"from":[1,2],"rows":1,"row":"fhdc 3"}]}`:                                               "line 4: got 2 in from, want one for each of 3 sizes",
		`{"sizes":1,"lines":[{"place":4,"from":[0],"rows":1,"row":"fhdc 3"}]}`:                                                 "line 4: got 0 in from, want 1 to 100000",
		`{"sizes":2,"lines":[{"place":4,"rows":1,"row":"fhdc 3","count":[{"n":[1,2,3],"of":""}]}]}`:                            "line 4: got 3 in count, want one for each of 2 sizes",
		`{"sizes":1,"lines":[{"place":4,"again":{"from":-5,"to":3,"times":[1]}}]}`:                                             "line 4: got rows -5 to 3 again, want rows from 1 to 100000, the first before the last",
		`{"sizes":1,"lines":[{"place":4,"again":{"from":1,"to":9223372036854775807,"times":[1]}}]}`:                            "line 4: got rows 1 to 9223372036854775807 again, want rows from 1 to 100000, the first before the last",
		`{"sizes":1,"lines":[{"place":4,"again":{"from":1,"to":1,"times":[]}}]}`:                                               "line 4: got 0 in times, want one for each of 1 size",
		`{"sizes":2,"lines":[{"place":4,"ends":[{"row":1,"side":"RS"}]}]}`:                                                     "line 4: got 1 in ends, want one for each of 2 sizes",
		`{"sizes":2,"lines":[{"place":4,"rows":1,"row":"fhdc 3 (4, 5)"}]}`:                                                     "line 4: got 3 sizes, want 2 sizes, as elsewhere",
	} {
		t.Run(in, func(t *testing.T) {
			begun := time.Now()
			var text proof.Text
			require.NoError(t, json.Unmarshal([]byte(in), &text))
			var field *gauge.FieldError
			_, err := proof.Check(text, nil)
			require.ErrorAs(t, err, &field)
			require.EqualError(t, err, want)
			_, _, err = text.Plan()
			require.EqualError(t, err, want)
			require.Less(t, time.Since(begun), time.Second)
			_ = text.String() // whatever it says
		})
	}
	require.Error(t, proof.Text{Terms: 9}.Validate())
	require.NoError(t, proof.Text{}.Validate())
}

// Many rows in few bytes are refused too.
func TestManyRowsInFewLines(t *testing.T) {
	text, err := proof.Parse("Row 1: fhdc 10.\n"+strings.Repeat("Rows 2–99999: hdc in each st across.\n", 1000), row.US)
	require.NoError(t, err)
	begun := time.Now()
	_, err = proof.Check(text, nil)
	require.ErrorIs(t, err, gauge.ErrBounds)
	_, _, err = text.Plan()
	require.ErrorIs(t, err, gauge.ErrBounds)
	require.Less(t, time.Since(begun), time.Second)
}

func TestBeginIsACount(t *testing.T) {
	text, err := proof.Parse("Row 1: hdc in each st across. 10 sts.", row.US)
	require.NoError(t, err)
	for _, n := range []int{-5, 100_001, math.MaxInt} {
		_, err := proof.Check(text, grade.Run[int]{n})
		require.ErrorIs(t, err, gauge.ErrBounds)
		require.ErrorContains(t, err, "begin[0]: got ")
	}
	for _, n := range []int{0, 10, 100_000} {
		_, err := proof.Check(text, grade.Run[int]{n})
		require.NoError(t, err)
	}
}
