package main

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// FuzzProof: whatever the text is, the program ends with findings that name a line
// of it, and with errors that do.
func FuzzProof(f *testing.F) {
	for _, pattern := range []string{"testdata/*/*.txt", "../pattern/testdata/uk-child.md"} {
		all, err := filepath.Glob(pattern)
		if err != nil {
			f.Fatal(err)
		}
		for _, file := range all {
			b, err := os.ReadFile(file)
			if err != nil {
				f.Fatal(err)
			}
			f.Add(string(b))
		}
	}
	one := regexp.MustCompile(`^line \d+[:,\[ ]`)
	f.Fuzz(func(t *testing.T, text string) {
		code, out, errs := cli(text, "-remarks")
		switch {
		case code == 2 && (strings.Contains(out, ": got ") && !strings.Contains(out, " (remark): ") || errs == ""):
			t.Fatalf("error %q beside %q", errs, out)
		case code == 1 && out == "", code < 0, code > 2, code == 0 && errs != "":
			t.Fatalf("%d %q %q", code, out, errs)
		}
		for l := range strings.Lines(out + errs) {
			if !one.MatchString(l) {
				t.Fatalf("finding without a line: %q", l)
			}
		}
		if again, same, _ := cli(text, "-remarks"); again != code || same != out {
			t.Fatalf("another answer the second time: %q, %q", out, same)
		}
	})
}
