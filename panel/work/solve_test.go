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
				if made := sol.Opening(i, n).Made.Count(); made != c {
					t.Fatalf("%v at %d, row %d: makes %d by hand, solved %d", rows, n, i+1, c, made)
				}
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

// Rows whose places differ where the row does not look: the small counts come
// out one by one before the periods of both lie side by side.
func TestSolveOverMixedLace(t *testing.T) {
	mixed := "dc in first st, *ch 1, sk 1, dc in next st; rep from * to last 6 sts, [ch 2, sk 2, dc in next st] 2 times"
	for _, over := range []string{
		"sc in first st, *sc in next ch-sp, sc in next st; rep from * to last 3 sts, [sc in next ch-sp, sc in next st] 3 times",
		"sc in first st, *(sc, ch 1) in next ch-sp, sc in next st; rep from * to last 3 sts, [sc in next ch-sp, sc in next st] 3 times",
		"sc in first st, *ch 1, sk next ch-sp, sc in next st; rep from * to last 2 sts, [sc in next ch-sp, sc in next st] 2 times",
		"sc in first st, [sc in next ch-sp, sc in next st] 2 times, sc in each st and in each ch-sp to last 2 sts, [2 sc in next ch-1 sp, sc in next st] 2 times",
		"sc in each st and (sc, ch 1) in each ch-1 sp and 2 sc in each ch-2 sp across",
		"sc in each st and 2 sc in each ch-2 sp and 3 sc in each ch-sp to last 9 sts, [sc in next ch-sp, sc in next st] 9 times",
	} {
		for _, first := range [][]string{{mixed}, {mixed, "dc in each st and in each ch-2 sp and (dc, ch 1) in each ch-1 sp across"}} {
			rows := parse(t, append(append([]string(nil), first...), over)...)
			sol, err := Solve(rows, 0)
			for n := 1; n <= 120; n++ {
				counts, ok := allByHand(rows, n, 0)
				require.Equal(t, ok, err == nil && sol.Rule.Legal(n), "%s at %d: %v %v", over, n, sol.Rule, err)
				for i := range counts {
					if ok {
						require.Equal(t, counts[i], sol.Opening(i, n).Made.Count(), "%s at %d", over, n)
					}
				}
			}
		}
	}
}
