package seam

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// most finds by trying everything how many seams can have a tail.
func most(reach [][]int, taken map[int]bool) int {
	if len(reach) == 0 {
		return 0
	}
	best := most(reach[1:], taken)
	for _, s := range reach[0] {
		if !taken[s] {
			taken[s] = true
			best = max(best, 1+most(reach[1:], taken))
			delete(taken, s)
		}
	}
	return best
}

// As many seams as can be are given a tail.
func TestMatchIsLargest(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 2000 {
		seams := 1 + r.IntN(5)
		reach := make([][]int, 1+r.IntN(6))
		for i := range reach {
			for range r.IntN(3) {
				reach[i] = append(reach[i], r.IntN(seams))
			}
		}
		given, used := 0, map[int]bool{}
		for seam, tail := range match(reach, seams) {
			if tail < 0 {
				continue
			}
			given++
			require.Contains(t, reach[tail], seam)
			require.False(t, used[tail], "a tail sews one seam")
			used[tail] = true
		}
		require.Equal(t, most(reach, map[int]bool{}), given, "%v", reach)
	}
}
