package work_test

import (
	"math"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/panel/work"
	"github.com/stretchr/testify/require"
)

// A size that a row does not have is an error, and never the number of another
// size; a row without lists is the same in every size.
func TestNoSuchSize(t *testing.T) {
	listed, plain := row.Must("hdc in next 7 (8, 9) sts, leave rem sts unworked", row.US), row.Must("hdc in each st across", row.US)
	for _, size := range []int{3, -1} {
		for name, run := range map[string]func(r row.Row) error{
			"Into":  func(r row.Row) error { _, _, err := work.Into(r, work.Stitches(10), size); return err },
			"Solve": func(r row.Row) error { _, err := work.Solve([]row.Row{r}, size); return err },
			"SolveRepeat": func(r row.Row) error {
				_, err := work.SolveRepeat([]row.Row{plain}, nil, []row.Row{r}, size)
				return err
			},
			"SumOf": func(r row.Row) error { _, err := work.SumOf(r, size); return err },
			"Faces": func(r row.Row) error { _, err := work.Faces([]row.Row{r}, 10, size); return err },
		} {
			t.Run(name, func(t *testing.T) {
				var field *gauge.FieldError
				require.ErrorAs(t, run(listed), &field)
				require.Equal(t, "size", field.Field)
				require.Equal(t, "0 to 2, the sizes of the row counted from 0", field.Want)
				require.NoError(t, run(plain))
			})
		}
	}
}

func TestCountsOutOfRange(t *testing.T) {
	rows := []row.Row{row.Must("hdc in each st across", row.US)}
	for _, n := range []int{-1, 100_001, math.MaxInt} {
		_, err := work.Faces(rows, n, 0)
		require.ErrorIs(t, err, gauge.ErrBounds)
	}
	_, err := work.Faces([]row.Row{{Items: []row.Item{row.FoundationChain{}}}}, 3, 0)
	require.Error(t, err)
	require.Empty(t, work.Stitches(-1))
	_, _, err = work.Into(rows[0], work.Stitches(math.MaxInt), 0)
	require.ErrorIs(t, err, gauge.ErrBounds)
}
