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

// A size that a list does not have is never the number of another size.
func TestNoSuchSize(t *testing.T) {
	n := Num{7, 8, 9}
	for _, size := range []int{-1, 3} {
		require.Equal(t, -1, n.In(size))
		require.Equal(t, 7, Num{7}.In(size))
		require.Equal(t, 1, Num(nil).In(size))
		require.Error(t, Must("hdc in next 7 (8, 9) sts, leave rem sts unworked", US).Size(size).Validate())
		require.NoError(t, Must("hdc in each st across", US).Size(size).Validate())
	}
}

func TestWithCountKeepsNothing(t *testing.T) {
	n := Num{3, 4}
	r := Must("fhdc 3", US).WithCount(n)
	n[0] = 99
	require.Equal(t, "fhdc 3 (4)", r.String())
	plain := Must("hdc in each st across", US)
	plain.WithCount(n).Items[0] = nil
	require.Equal(t, "hdc in each st across", plain.String())
}
