package proof

import (
	"fmt"
	"strings"
	"testing"

	"example.com/panelmath/grade"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/row"
)

func BenchmarkCheck(b *testing.B) {
	for _, n := range []int{10, 100, 200, 1000} {
		for _, sizes := range []int{1, 9} {
			texts := []string{"fhdc"}
			for i := range n - 1 {
				texts = append(texts, []string{plain, lace, fill}[i%3])
			}
			w := panel.Writing{Repeats: grade.Run[int]{0}}
			for i := range sizes {
				w.Stitches = append(w.Stitches, 100+6*i)
			}
			in, err := panel.Plan{Opening: rows(texts...)}.Write(w)
			if err != nil {
				b.Fatal(err)
			}
			text, err := Parse(in.String(), row.US)
			if err != nil {
				b.Fatal(err)
			}
			b.Run(fmt.Sprintf("rows=%d/sizes=%d", n, sizes), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					if found, err := Check(text, nil); err != nil || len(found) > 0 {
						b.Fatal(found, err)
					}
				}
			})
		}
	}
}

func BenchmarkParse(b *testing.B) {
	s := strings.Repeat("Row 3: dc in first st, *ch 2, sk 2, dc in next st; rep from * across. — 55 (56, 57, 58) dc, 54 (55, 56, 57) ch-2 sps\n", 100)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Parse(s, row.US); err != nil {
			b.Fatal(err)
		}
	}
}
