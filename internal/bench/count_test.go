// Package bench measures one count of panelmath beside the ways in which the
// same count is usually worked out:
//
//	go test -C internal/bench -bench Count -count 10
package bench

import (
	"math"
	"math/big"
	"testing"

	"example.com/panelmath/gauge"
	"github.com/cockroachdb/apd/v3"
	"github.com/shopspring/decimal"
)

// The count: 518 mm at 20 sts over 100 mm, a multiple of 4 + 2. It is 103.6
// before the rounding, so 102; rounded first and snapped after it would be 106.
const (
	multiple = 4
	plus     = 2
	want     = 102
)

// floatWay is a spreadsheet's: one expression in float64.
//
//go:noinline
func floatWay(width, stitches, span float64, multiple, plus int) int {
	k := math.Floor((width*stitches/span-float64(plus))/float64(multiple) + 0.5)
	return int(k)*multiple + plus
}

// decimalWay is the straightforward one: multiply, divide, round, then snap to
// the nearest legal count. It rounds twice.
func decimalWay(width, stitches, span, multiple, plus decimal.Decimal) decimal.Decimal {
	n := width.Mul(stitches).Div(span).Round(0)
	return n.Sub(plus).Div(multiple).Round(0).Mul(multiple).Add(plus)
}

// ratWay is exact: fractions of big numbers, and the floor of x + 1/2.
func ratWay(width, stitches, span *big.Rat, multiple, plus int64) int64 {
	x := new(big.Rat).Mul(width, stitches)
	x.Quo(x, span).Sub(x, big.NewRat(plus, 1)).Quo(x, big.NewRat(multiple, 1)).Add(x, big.NewRat(1, 2))
	k := new(big.Int).Div(x.Num(), x.Denom())
	return k.Int64()*multiple + plus
}

// apdWay is the straightforward one with another decimal library.
func apdWay(ctx *apd.Context, width, stitches, span, multiple, plus *apd.Decimal) (*apd.Decimal, error) {
	x := new(apd.Decimal)
	steps := []func() (apd.Condition, error){
		func() (apd.Condition, error) { return ctx.Mul(x, width, stitches) },
		func() (apd.Condition, error) { return ctx.Quo(x, x, span) },
		func() (apd.Condition, error) { return ctx.RoundToIntegralValue(x, x) },
		func() (apd.Condition, error) { return ctx.Sub(x, x, plus) },
		func() (apd.Condition, error) { return ctx.Quo(x, x, multiple) },
		func() (apd.Condition, error) { return ctx.RoundToIntegralValue(x, x) },
		func() (apd.Condition, error) { return ctx.Mul(x, x, multiple) },
		func() (apd.Condition, error) { return ctx.Add(x, x, plus) },
	}
	for _, step := range steps {
		if _, err := step(); err != nil {
			return nil, err
		}
	}
	return x, nil
}

func BenchmarkCount(b *testing.B) {
	b.Run("mod=float64", func(b *testing.B) {
		b.ReportAllocs()
		n := 0
		for b.Loop() {
			n = floatWay(518, 20, 100, multiple, plus)
		}
		if n != want {
			b.Fatalf("got %d", n)
		}
	})
	b.Run("mod=panelmath", func(b *testing.B) {
		b.ReportAllocs()
		over := gauge.Over{Count: decimal.NewFromInt(20), Span: gauge.MustLength("100 mm")}
		counter, err := over.Counter(gauge.Rule{Multiple: multiple, Plus: plus})
		width := gauge.MustLength("518 mm").Measurement()
		var c gauge.Count
		for b.Loop() {
			c, err = counter.Round(width)
		}
		if err != nil || c.Value != want {
			b.Fatal(c, err)
		}
	})
	b.Run("mod=panelmath-once", func(b *testing.B) { // gauge and rule checked each time
		b.ReportAllocs()
		over := gauge.Over{Count: decimal.NewFromInt(20), Span: gauge.MustLength("100 mm")}
		rule := gauge.Rule{Multiple: multiple, Plus: plus}
		width := gauge.MustLength("518 mm").Measurement()
		var c gauge.Count
		var err error
		for b.Loop() {
			c, err = over.Round(width, rule)
		}
		if err != nil || c.Value != want {
			b.Fatal(c, err)
		}
	})
	b.Run("mod=big.Rat", func(b *testing.B) {
		b.ReportAllocs()
		width, stitches, span := big.NewRat(518, 1), big.NewRat(20, 1), big.NewRat(100, 1)
		n := int64(0)
		for b.Loop() {
			n = ratWay(width, stitches, span, multiple, plus)
		}
		if n != want {
			b.Fatalf("got %d", n)
		}
	})
	b.Run("mod=decimal", func(b *testing.B) {
		b.ReportAllocs()
		width, stitches, span := decimal.NewFromInt(518), decimal.NewFromInt(20), decimal.NewFromInt(100)
		m, p := decimal.NewFromInt(multiple), decimal.NewFromInt(plus)
		var n decimal.Decimal
		for b.Loop() {
			n = decimalWay(width, stitches, span, m, p)
		}
		if !n.Equal(decimal.NewFromInt(106)) { // two roundings: not the answer
			b.Fatalf("got %v", n)
		}
	})
	b.Run("mod=apd", func(b *testing.B) {
		b.ReportAllocs()
		ctx := apd.BaseContext.WithPrecision(30)
		width, stitches, span, m, p := apd.New(518, 0), apd.New(20, 0), apd.New(100, 0), apd.New(multiple, 0), apd.New(plus, 0)
		var n *apd.Decimal
		var err error
		for b.Loop() {
			n, err = apdWay(ctx, width, stitches, span, m, p)
		}
		if err != nil || n.Cmp(apd.New(106, 0)) != 0 { // two roundings here as well
			b.Fatal(n, err)
		}
	})
}
