package garment_test

import (
	"os"
	"testing"

	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/examples/internal/garment"
)

// orchard reads the brief that the program pattern holds.
func orchard(b testing.TB) brief.Brief {
	b.Helper()
	f, err := os.Open("../../pattern/orchard-wrap.json")
	if err != nil {
		b.Fatal(err)
	}
	defer f.Close()
	read, err := brief.Read(f)
	if err != nil {
		b.Fatal(err)
	}
	return read
}

// BenchmarkNumbers: all numbers of the default brief, four groups of sizes,
// without a text.
func BenchmarkNumbers(b *testing.B) {
	in := orchard(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := garment.Make(in); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkDocument: the numbers and the Markdown.
func BenchmarkDocument(b *testing.B) {
	in := orchard(b)
	b.ReportAllocs()
	for b.Loop() {
		g, err := garment.Make(in)
		if err != nil {
			b.Fatal(err)
		}
		d, err := g.Document(garment.Options{})
		if err != nil {
			b.Fatal(err)
		}
		d.Markdown()
	}
}
