package row

import (
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// What is written is read as the same row, in US and UK terms; US to UK and
// back is the identity, and so is writing what was read.
func TestRoundTripGenerated(t *testing.T) {
	for _, sizes := range []int{1, 2, 4, 9} {
		g := &gen{Rand: rand.New(rand.NewPCG(uint64(sizes), 3)), sizes: sizes}
		for range 5000 {
			r := g.row()
			us, uk := r.Text(US), r.Text(UK)
			back, err := Parse(us, US)
			require.NoError(t, err, "%s", us)
			require.Equal(t, r, back, "%s", us)
			require.Equal(t, us, back.Text(US))
			back, err = Parse(uk, UK)
			require.NoError(t, err, "%s", uk)
			require.Equal(t, r, back, "%s", uk)
			require.Equal(t, us, back.Text(US))
			// style changes nothing
			loose := strings.NewReplacer("sk ", "Skip ", ", ", " , ", "rep from", "repeat from", " sts", " stitches", "hdc", "HDC").Replace(us) + "."
			back, err = Parse(loose, US)
			require.NoError(t, err, "%s", loose)
			require.Equal(t, r, back, "%s", loose)
		}
	}
}
