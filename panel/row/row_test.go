package row

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// The forms that a plan of a rectangle may use, in both terms.
func TestTextInBothTerms(t *testing.T) {
	for _, c := range []struct{ us, uk string }{
		{"fhdc", "fhtr"},
		{"fhdc 101", "fhtr 101"},
		{"hdc in each st across", "htr in each st across"},
		{"dc in first st, *ch 2, sk 2, dc in next st; rep from * across", "tr in first st, *ch 2, miss 2, tr in next st; rep from * across"},
		{"hdc in each st and 2 hdc in each ch-2 sp across", "htr in each st and 2 htr in each ch-2 sp across"},
		{"hdc in each st and in each ch-1 sp across", "htr in each st and in each ch-1 sp across"},
	} {
		t.Run(c.us, func(t *testing.T) {
			us, err := Parse(c.us, US)
			require.NoError(t, err)
			uk, err := Parse(c.uk, UK)
			require.NoError(t, err)
			require.Equal(t, us, uk)
			require.Equal(t, c.us, us.String())
			require.Equal(t, c.uk, us.Text(UK))
		})
	}
}
