package bench

import (
	"fmt"
	"math"
	"math/big"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/seam"
	"example.com/panelmath/yarn"
	"github.com/cockroachdb/apd/v3"
	"github.com/shopspring/decimal"
)

// size is what one group of the pattern program's own brief asks for, and the
// answers: everything in inches, 13 sts and 9 rows over 4 in, rows 5 + 5k, a
// multiple of 3 + 1.
type size struct {
	chest, length, armhole, neck string
	stitches, rows, back, side   int
	skeins                       int
}

func brief() []size {
	return []size{
		{"34", "25", "9.5", "1.25", 163, 25, 77, 50, 5},
		{"42", "25.5", "10", "1.25", 166, 30, 78, 50, 7},
		{"50", "26", "11", "1.25", 169, 35, 80, 48, 8},
		{"62", "26.5", "12", "1.25", 172, 40, 81, 47, 9},
	}
}

func (s size) check(b *testing.B, stitches, rows, back, side, skeins int) {
	b.Helper()
	if stitches != s.stitches || rows != s.rows || back != s.back || side != s.side || skeins != s.skeins {
		b.Fatalf("chest %s: got %d, %d, %d, %d, %d", s.chest, stitches, rows, back, side, skeins)
	}
}

// BenchmarkBrief is the numbers of four groups: counts, pairs, yarn and skeins.
// The peers work out these numbers and no more; panelmath reads nothing either,
// but checks every input and the armhole, keeps the layout, and can explain each
// number.
func BenchmarkBrief(b *testing.B) {
	b.Run("mod=float64", func(b *testing.B) {
		b.ReportAllocs()
		var in [4][4]float64
		for i, s := range brief() {
			for j, text := range []string{s.chest, s.length, s.armhole, s.neck} {
				fmt.Sscan(text, &in[i][j])
			}
		}
		for b.Loop() {
			for i, s := range brief() {
				g, h := 13.0/4, 4.0/9
				width := (in[i][0] + 9) / 4
				rows := math.Max(0, math.Floor((width/h-5)/5+0.5))*5 + 5
				stitches := math.Floor((2*in[i][1]*g-1)/3+0.5)*3 + 1
				back, side := math.Floor(stitches/2-in[i][3]*g), math.Floor(stitches/2-in[i][2]*g)
				fabric := 2 * stitches / g * rows * h * 14.5 / 36 * 230 / 100
				seams := ((back+2*side)/g*2.5 + 36) / 36
				s.check(b, int(stitches), int(rows), int(back), int(side), int(math.Ceil((fabric+seams)*1.1/230)))
			}
		}
	})
	b.Run("mod=decimal", func(b *testing.B) {
		b.ReportAllocs()
		d := decimal.RequireFromString
		nearest := func(x decimal.Decimal, m, p int64) decimal.Decimal {
			return x.Sub(decimal.NewFromInt(p)).Div(decimal.NewFromInt(m)).Round(0).Mul(decimal.NewFromInt(m)).Add(decimal.NewFromInt(p))
		}
		var in [4][4]decimal.Decimal
		for i, s := range brief() {
			in[i] = [4]decimal.Decimal{d(s.chest), d(s.length), d(s.armhole), d(s.neck)}
		}
		g, four, nine, two := d("3.25"), d("4"), d("9"), d("2")
		for b.Loop() {
			for i, s := range brief() {
				width := in[i][0].Add(nine).Div(four)
				rows := nearest(width.Mul(nine).Div(four), 5, 5)
				stitches := nearest(two.Mul(in[i][1]).Mul(g), 3, 1)
				back := stitches.Div(two).Sub(in[i][3].Mul(g)).Floor()
				side := stitches.Div(two).Sub(in[i][2].Mul(g)).Floor()
				fabric := two.Mul(stitches).Div(g).Mul(rows).Mul(four).Div(nine).Mul(d("14.5")).Div(d("36")).Mul(d("2.3"))
				seams := back.Add(side.Mul(two)).Div(g).Mul(d("2.5")).Add(d("36")).Div(d("36"))
				skeins := fabric.Add(seams).Mul(d("1.1")).Div(d("230")).Ceil()
				s.check(b, int(stitches.IntPart()), int(rows.IntPart()), int(back.IntPart()), int(side.IntPart()), int(skeins.IntPart()))
			}
		}
	})
	b.Run("mod=big.Rat", func(b *testing.B) {
		b.ReportAllocs()
		r := func(s string) *big.Rat {
			x, _ := new(big.Rat).SetString(s)
			return x
		}
		mul := func(a ...*big.Rat) *big.Rat {
			p := big.NewRat(1, 1)
			for _, x := range a {
				p.Mul(p, x)
			}
			return p
		}
		floor := func(x *big.Rat) int64 { return new(big.Int).Div(x.Num(), x.Denom()).Int64() }
		nearest := func(x *big.Rat, m, p int64) int64 {
			y := new(big.Rat).Sub(x, big.NewRat(p, 1))
			return floor(y.Add(y.Quo(y, big.NewRat(m, 1)), big.NewRat(1, 2)))*m + p
		}
		var in [4][4]*big.Rat
		for i, s := range brief() {
			in[i] = [4]*big.Rat{r(s.chest), r(s.length), r(s.armhole), r(s.neck)}
		}
		g, perGram, share, ease := big.NewRat(13, 4), r("2.3"), big.NewRat(29, 72), big.NewRat(9, 1)
		for b.Loop() {
			for i, s := range brief() {
				width := new(big.Rat).Add(in[i][0], ease)
				rows := nearest(mul(width, big.NewRat(9, 16)), 5, 5)
				stitches := nearest(mul(big.NewRat(2, 1), in[i][1], g), 3, 1)
				half := big.NewRat(stitches, 2)
				back := floor(new(big.Rat).Sub(half, mul(in[i][3], g)))
				side := floor(new(big.Rat).Sub(half, mul(in[i][2], g)))
				fabric := mul(big.NewRat(2*stitches*4, 13), big.NewRat(rows*4, 9), share, perGram)
				seams := mul(big.NewRat((back+2*side)*4, 13), big.NewRat(5, 72))
				total := fabric.Add(fabric, seams.Add(seams, big.NewRat(1, 1)))
				skeins := -floor(mul(total, big.NewRat(-11, 2300)))
				s.check(b, int(stitches), int(rows), int(back), int(side), int(skeins))
			}
		}
	})
	b.Run("mod=apd", func(b *testing.B) {
		b.ReportAllocs()
		ctx := apd.BaseContext.WithPrecision(30)
		d := func(s string) *apd.Decimal {
			x, _, err := apd.NewFromString(s)
			if err != nil {
				b.Fatal(err)
			}
			return x
		}
		// do works one operation after another on x, two operands each.
		mul := func(x *apd.Decimal, by ...*apd.Decimal) *apd.Decimal {
			y := new(apd.Decimal).Set(x)
			for _, f := range by {
				_, _ = ctx.Mul(y, y, f)
			}
			return y
		}
		quo := func(x, y *apd.Decimal) *apd.Decimal { z := new(apd.Decimal); _, _ = ctx.Quo(z, x, y); return z }
		add := func(x, y *apd.Decimal) *apd.Decimal { z := new(apd.Decimal); _, _ = ctx.Add(z, x, y); return z }
		sub := func(x, y *apd.Decimal) *apd.Decimal { z := new(apd.Decimal); _, _ = ctx.Sub(z, x, y); return z }
		floor := func(x *apd.Decimal) *apd.Decimal { z := new(apd.Decimal); _, _ = ctx.Floor(z, x); return z }
		nearest := func(x, m, p *apd.Decimal) *apd.Decimal {
			k := quo(sub(x, p), m)
			_, _ = ctx.RoundToIntegralValue(k, k)
			return add(mul(k, m), p)
		}
		var in [4][4]*apd.Decimal
		for i, s := range brief() {
			in[i] = [4]*apd.Decimal{d(s.chest), d(s.length), d(s.armhole), d(s.neck)}
		}
		one, two, three, four, five, nine, g := d("1"), d("2"), d("3"), d("4"), d("5"), d("9"), d("3.25")
		n := func(x *apd.Decimal) int { v, _ := x.Int64(); return int(v) }
		for b.Loop() {
			for i, s := range brief() {
				width := quo(add(in[i][0], nine), four)
				rows := nearest(quo(mul(width, nine), four), five, five)
				stitches := nearest(mul(two, in[i][1], g), three, one)
				back := floor(sub(quo(stitches, two), mul(in[i][3], g)))
				side := floor(sub(quo(stitches, two), mul(in[i][2], g)))
				fabric := mul(quo(quo(mul(two, stitches, rows, four), g), nine), quo(d("14.5"), d("36")), d("2.3"))
				seams := quo(add(mul(quo(add(back, mul(side, two)), g), d("2.5")), d("36")), d("36"))
				skeins := new(apd.Decimal)
				_, _ = ctx.Ceil(skeins, quo(mul(add(fabric, seams), d("1.1")), d("230")))
				s.check(b, n(stitches), n(rows), n(back), n(side), n(skeins))
			}
		}
	})
	b.Run("mod=panelmath", func(b *testing.B) {
		b.ReportAllocs()
		g := newGarment(b)
		for b.Loop() {
			for i, s := range brief() {
				p, sewn, q, err := g.size(i)
				if err != nil {
					b.Fatal(err)
				}
				s.check(b, p.Stitches.Value, p.Rows.Value, sewn.Joins[0].Pairs, sewn.Joins[1].Pairs, q.Skeins)
			}
		}
	})
}

// BenchmarkSizes: the cost grows with the number of sizes and no faster.
func BenchmarkSizes(b *testing.B) {
	g := newGarment(b)
	for _, n := range []int{1, 4, 16, 64} {
		b.Run(fmt.Sprintf("sizes=%d", n), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				for i := range n {
					if _, _, _, err := g.size(i % 4); err != nil {
						b.Fatal(err)
					}
				}
			}
		})
	}
}

// BenchmarkRows: solving a plan of so many rows and writing it in nine sizes.
func BenchmarkRows(b *testing.B) {
	plain, lace, fill := us("hdc in each st across"), us("dc in first st, *ch 2, sk 2, dc in next st; rep from * across"), us("hdc in each st and 2 hdc in each ch-2 sp across")
	for _, n := range []int{10, 100, 1000} {
		plan := panel.Plan{Opening: []row.Row{us("fhdc")}}
		for len(plan.Opening) < n {
			plan.Opening = append(plan.Opening, plain, lace, fill)
		}
		counts, repeats := make(grade.Run[int], 9), make(grade.Run[int], 9)
		for i := range counts {
			counts[i] = 100 + 3*i
		}
		b.Run(fmt.Sprintf("rows=%d", n), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := plan.Write(panel.Writing{Stitches: counts, Repeats: repeats}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func us(s string) row.Row { return row.Must(s, row.US) }

// garment is the same brief as an embedder holds it.
type garment struct {
	gauge          gauge.Gauge
	plan           panel.Solved
	groups         grade.Run[grade.Group]
	ease           grade.Ease
	length, arm    [4]gauge.Measurement
	neck           gauge.Measurement
	label          yarn.Label
	swatch         yarn.Swatch
	margin         yarn.Margin
	quarter, twice gauge.Ratio
}

func newGarment(b *testing.B) garment {
	b.Helper()
	check := func(err error) {
		if err != nil {
			b.Fatal(err)
		}
	}
	lace, fill, plain := us("dc in first st, *ch 2, sk 2, dc in next st; rep from * across"), us("hdc in each st and 2 hdc in each ch-2 sp across"), us("hdc in each st across")
	plan, err := panel.Plan{
		Opening: []row.Row{us("fhdc"), plain, lace, fill},
		Repeat:  []row.Row{plain, plain, plain, lace, fill},
		Closing: []row.Row{plain},
	}.Solve()
	check(err)
	women, err := grade.Standard("women")
	check(err)
	groups, err := women.Groups([][]string{{"XS", "S"}, {"M", "L"}, {"XL", "2X"}, {"3X", "4X", "5X"}})
	check(err)
	margin, err := yarn.ParseMargin("10%")
	check(err)
	quarter, err := gauge.Share(1, 4)
	check(err)
	g := garment{gauge: gauge.MustGauge("13 sts and 9 rows = 4 in"), plan: plan, groups: groups, ease: grade.MustEase("9 in"), margin: margin,
		neck: gauge.MustLength("1 1/4 in").Measurement(), label: yarn.MustLabel("230 yd = 100 g"), quarter: quarter, twice: gauge.Int(2),
		swatch: yarn.Swatch{Width: gauge.MustLength("6 in"), Height: gauge.MustLength("6 in"), Mass: yarn.MustMass("14.5 g")}}
	for i, s := range brief() {
		g.length[i], g.arm[i] = gauge.MustLength(s.length+" in").Measurement(), gauge.MustLength(s.armhole+" in").Measurement()
	}
	return g
}

func (g garment) size(i int) (p panel.Panel, sewn seam.Garment, q yarn.Quantity, err error) {
	chest, err := g.groups[i].Body(grade.Chest, gauge.Inch)
	if err != nil {
		return p, sewn, q, err
	}
	arm, err := g.groups[i].Body(grade.UpperArm, gauge.Inch)
	if err != nil {
		return p, sewn, q, err
	}
	width := g.ease.Finished(chest.High.Measurement()).Times(g.quarter)
	if p, err = g.plan.Panel(g.length[i].Times(g.twice), width, g.gauge); err != nil {
		return p, sewn, q, err
	}
	sewn, err = seam.OpenFront{Panel: layout.Rectangle{Stitches: p.Stitches.Value, Rows: p.Rows.Value, Gauge: g.gauge}, NeckDrop: g.neck, ArmholeDepth: g.arm[i]}.Sew()
	if err != nil {
		return p, sewn, q, err
	}
	if err = (seam.Body{UpperArm: arm.High.Measurement()}).Check(sewn.Layout); err != nil {
		return p, sewn, q, err
	}
	fabric, err := g.swatch.Fabric("two panels", yarn.Rectangle(p.Length, p.Width).Times(g.twice), g.label)
	if err != nil {
		return p, sewn, q, err
	}
	lines := []yarn.Line{fabric}
	for _, j := range []seam.Join{sewn.Joins[0], sewn.Joins[1], sewn.Joins[1]} {
		line, err := yarn.WhipStitch().Seam(j.Asked.Name, j.Length)
		if err != nil {
			return p, sewn, q, err
		}
		lines = append(lines, line)
	}
	q, err = yarn.Buy(g.label, g.margin, lines...)
	return p, sewn, q, err
}

// TestPeersAgree runs every peer once: a benchmark that gives another number
// measures something else.
func TestPeersAgree(t *testing.T) {
	for name, f := range map[string]func(*testing.B){"Count": BenchmarkCount, "Brief": BenchmarkBrief, "Sizes": BenchmarkSizes, "Rows": BenchmarkRows} {
		if r := testing.Benchmark(f); r.N == 0 {
			t.Errorf("%s: no run", name)
		}
	}
}
