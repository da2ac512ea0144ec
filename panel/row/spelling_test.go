package row

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Whole words alone are spelled anew, and what was spelled once stays.
func TestSpell(t *testing.T) {
	for british, american := range map[string]string{
		"":                           "",
		"Centre back, centre-front.": "Center back, center-front.",
		"centimetres to the half":    "centimeters to the half",
		"keep from flames and hobs":  "keep from flames and stoves",
		"The fibre; colours.":        "The fiber; colors.",
		"Epicentre 2½ ½":             "Epicentre 2½ ½",
		"\xffcentre":                 "\xffcenter",
		"CENTRE":                     "CENTRE",
	} {
		require.Equal(t, american, US.Spell(british))
		require.Equal(t, american, US.Spell(american))
		require.Equal(t, british, UK.Spell(british))
	}
	require.Equal(t, "on the stove", UK.Spell("on the stove"))
	require.Equal(t, "Fibre and metres", UK.Spell("Fiber and meters"))
}

func FuzzSpell(f *testing.F) {
	f.Add("Centre back: 12 cm towards the hem")
	f.Fuzz(func(t *testing.T, s string) {
		for _, terms := range []Terms{US, UK} {
			once := terms.Spell(s)
			require.Equal(t, once, terms.Spell(once))
		}
	})
}
