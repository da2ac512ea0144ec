package row

import "testing"

func BenchmarkParse(b *testing.B) {
	for _, s := range []string{
		"hdc in each st across",
		"dc in first st, *ch 2, sk 2, dc in next st; rep from * across",
		"ch 66 (66, 70, 74), (dc, ch 1, dc) in 4th ch from hook (skipped chs count as dc), [sc in next 2 chs, sc2tog] 4 (5, 6, 7) times, dc in each ch across",
	} {
		b.Run("row="+s[:20], func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := Parse(s, US); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkText(b *testing.B) {
	r := Must("dc in first st, *ch 2, sk 2, dc in next st; rep from * across", US)
	b.ReportAllocs()
	for b.Loop() {
		_ = r.Text(UK)
	}
}
