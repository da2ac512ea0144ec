package hook_test

import (
	"testing"

	"example.com/panelmath/gauge/hook"
)

// What is read prints to what is read as the same hook, and an error stays short.
func FuzzParse(f *testing.F) {
	for _, s := range []string{"5.5 mm", "0.55 cm", "I-9", "1/4 in", "51 mm"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		h, err := hook.Parse(s)
		if err != nil {
			if len(err.Error()) > 2000 {
				t.Fatalf("an error of %d bytes", len(err.Error()))
			}
			return
		}
		again, err := hook.Parse(h.String())
		if err != nil || !again.Diameter.Equal(h.Diameter) {
			t.Fatalf("%q prints as %q, which reads as %v (%v)", s, h, again, err)
		}
	})
}
