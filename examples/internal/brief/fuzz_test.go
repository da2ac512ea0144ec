package brief_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/examples/internal/garment"
)

// FuzzRead: whatever is read, every complaint is one line that names a field and
// nothing comes beside it; a brief that is read can be made, or is refused with a
// complaint of the same kind.
func FuzzRead(f *testing.F) {
	files, err := filepath.Glob("../../pattern/testdata/*.json")
	if err != nil {
		f.Fatal(err)
	}
	for _, file := range append(files, "../../pattern/orchard-wrap.json") {
		data, err := os.ReadFile(file)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(string(data))
	}
	f.Add(`{"name": "a", "name": "b"}`)
	f.Add("[[[[[[[[[[")
	f.Fuzz(func(t *testing.T, text string) {
		b, errs := brief.ReadAll(strings.NewReader(text))
		for _, e := range errs {
			if e.Field == "" || strings.ContainsAny(e.Error(), "\n\r") {
				t.Errorf("complaint %q", e.Error())
			}
		}
		if len(errs) > 0 {
			return
		}
		g, err := garment.Make(b)
		if err != nil {
			if strings.ContainsAny(err.Error(), "\n\r") || !strings.Contains(err.Error(), ": ") {
				t.Errorf("complaint %q", err.Error())
			}
			return
		}
		if _, err := g.Document(garment.Options{Why: true, Schematic: true}); err != nil {
			t.Errorf("made and not written: %v", err)
		}
	})
}
