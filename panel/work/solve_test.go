package work

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// The solved counts are those that a slow simulation finds, up to 500.
func TestSolveAgainstSimulation(t *testing.T) {
	const most = 500
	g := &gen{Rand: rand.New(rand.NewPCG(1, 2))}
	solved, none, single := 0, 0, 0
	for range 2000 {
		rows := g.set()
		for i, r := range rows {
			require.NoError(t, r.Validate(), "%d %v", i, r)
		}
		sol, err := Solve(rows, 0)
		found := 0
		for n := 1; n <= most; n++ {
			counts, ok := allByHand(rows, n, 0)
			legal := err == nil && sol.Rule.Legal(n)
			if ok != legal {
				t.Fatalf("%v\nat %d: simulation %v, solved %v %v", rows, n, ok, sol.Rule, err)
			}
			if !ok {
				continue
			}
			found++
			for i, c := range counts {
				require.Equal(t, c, sol.Opening(i, n).Made.Count(), "%v at %d, row %d", rows, n, i+1)
			}
		}
		switch {
		case found > 1:
			solved++
		case found == 1:
			single++
		default:
			none++
		}
	}
	t.Logf("%d sets with many counts, %d with one, %d with none up to %d", solved, single, none, most)
	require.Greater(t, solved, 500)
	require.Greater(t, single, 50)
	require.Greater(t, none, 200)
}
