package panel

import (
	"fmt"
	"testing"

	"example.com/panelmath/grade"
	"example.com/panelmath/panel/row"
)

// long returns a plan of so many rows, plain, lace and filled by turns.
func long(n int) Plan {
	p := Plan{Opening: rows("fhdc")}
	band := rows(plain, lace, fill)
	for i := range n - 1 {
		p.Opening = append(p.Opening, band[i%3])
	}
	return p
}

func BenchmarkPlanLegal(b *testing.B) {
	for _, n := range []int{10, 100, 1000} {
		p := long(n + 1) // ends after a filled row or a plain one
		b.Run(fmt.Sprintf("rows=%d", n), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := p.Legal(); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkPlanWrite(b *testing.B) {
	for _, n := range []int{10, 100, 1000} {
		for _, sizes := range []int{1, 9} {
			p, w := long(n), Writing{Repeats: grade.Run[int]{0}}
			for i := range sizes {
				w.Stitches = append(w.Stitches, 163+6*i)
			}
			b.Run(fmt.Sprintf("rows=%d/sizes=%d", n, sizes), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					if _, err := p.Write(w); err != nil {
						b.Fatal(err)
					}
				}
			})
		}
	}
}

// A plan of 200 rows checked in 9 sizes: its legal counts solved once, and
// every row of every size.
func BenchmarkPlanCheck200RowsIn9Sizes(b *testing.B) {
	p := long(200)
	b.ReportAllocs()
	for b.Loop() {
		for i := range 9 {
			if _, err := p.Steps(163+6*i, 0); err != nil {
				b.Fatal(err)
			}
		}
	}
}

func BenchmarkPlanAbbreviations(b *testing.B) {
	p := orchard()
	b.ReportAllocs()
	for b.Loop() {
		_ = p.Abbreviations(row.US)
	}
}
