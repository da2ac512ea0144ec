package layout_test

import (
	"encoding/json"
	"fmt"
	"math/big"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/layout"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

func over(n, span string) gauge.Over {
	return gauge.Over{Count: decimal.RequireFromString(n), Span: gauge.MustLength(span)}
}

// inches is a gauge of one stitch and one row to the inch, for garments that
// are published in inches and not in counts.
func inches() gauge.Gauge { return gauge.Gauge{Stitches: over("1", "1 in"), Rows: over("1", "1 in")} }

func rectangle(stitches, rows int, g string) layout.Rectangle {
	return layout.Rectangle{Stitches: stitches, Rows: rows, Gauge: gauge.MustGauge(g)}
}

// garment is a ready garment of any kind.
type garment interface{ Layout() (layout.Layout, error) }

// generated returns one garment of each kind with counts drawn at random.
func generated(r *rand.Rand) []garment {
	rect := func(long, wide int) layout.Rectangle {
		p := layout.Rectangle{Stitches: long, Rows: wide, Crosswise: r.IntN(2) == 0, Gauge: gauge.Gauge{
			Stitches: over(decimal.New(int64(20+r.IntN(200)), -1).String(), []string{"4 in", "10 cm"}[r.IntN(2)]),
			Rows:     over(decimal.New(int64(20+r.IntN(200)), -1).String(), []string{"4 in", "7 cm"}[r.IntN(2)])}}
		if p.Crosswise {
			p.Stitches, p.Rows = wide, long
		}
		return p
	}
	long, wide := 40+r.IntN(200), 10+r.IntN(80)
	p := rect(long, wide)
	side, slit := 1+r.IntN(long/4), r.IntN(long/8)
	back := 1 + r.IntN(long/2)
	front := 1 + r.IntN(long/2-1)
	poncho := rect(100+r.IntN(100), 10+r.IntN(20))
	// The short end of the poncho takes the stretch of its own length.
	end, _ := poncho.Across().Measure(gauge.Int(poncho.Wide()))
	take, _ := poncho.Along().Round(end, gauge.Rule{Least: 1})
	hole := long - side - slit
	depth, _ := p.Along().Measure(gauge.Int(2 * hole))
	sleeve := rect(20+r.IntN(60), 10)
	top, _ := sleeve.Across().Round(depth, gauge.Rule{Least: 1})
	if sleeve.Crosswise {
		sleeve.Stitches = top.Value
	} else {
		sleeve.Rows = top.Value
	}
	return []garment{
		layout.OpenFront{Panel: p, CentreBack: back, Side: side, Slit: slit},
		layout.ClosedFront{Panel: p, CentreBack: back, CentreFront: front, Side: side, Slit: slit},
		layout.FrontAndBack{Panel: p, Shoulder: 1 + r.IntN((wide-1)/2), Side: side, Slit: slit},
		layout.FrontAndBack{Panel: p, Shoulder: 1 + r.IntN((wide-1)/2), Side: side, Slit: slit, Sleeve: &sleeve},
		layout.FrontAndBack{Panel: p, Shoulder: 1 + r.IntN((wide-1)/2)},
		layout.Cocoon{Panel: p, Side: side},
		layout.Poncho{Panel: poncho, Side: take.Value},
	}
}

// In every generated garment: pairs and open stitches add up to the edge, all
// of it is a seam or an opening, and the measures that are reported are those
// that an independent calculation with math/big finds from the pieces.
func TestLayoutInvariants(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 11))
	made := map[string]int{}
	for range 400 {
		for _, g := range generated(r) {
			l, err := g.Layout()
			if err != nil { // a sleeve or a poncho whose rounding is more than the easing
				require.ErrorIs(t, err, layout.ErrLayout, "%+v", g)
				continue
			}
			made[fmt.Sprintf("%T", g)]++
			for _, p := range l.Pieces {
				for at := layout.Bottom; at <= layout.Right; at++ {
					sum := 0
					for _, s := range p.Stretches(at) {
						require.Positive(t, s.Count)
						sum += s.Count
					}
					require.Equal(t, p.Count(at), sum, "%s %v", p.Name, at)
				}
			}
			slow := bySum(l)
			for _, m := range l.Measures {
				want, ok := slow(m.Name)
				require.True(t, ok, "%s: %s", l.Name, m.Name)
				require.Zero(t, want.Cmp(m.Length.In(gauge.Millimetre).Rat()), "%s: %s is %v, from the pieces %v mm", l.Name, m.Name, m.Length, want)
			}
			seams, err := l.Seams()
			require.NoError(t, err)
			openings, err := l.Openings()
			require.NoError(t, err)
			total := 0
			for _, s := range seams {
				total += s.Sides[0].Count + s.Sides[1].Count
				require.LessOrEqual(t, s.Pairs(), s.Sides[1].Count)
				require.False(t, s.Length().Cmp(s.Sides[0].Length) < 0 || s.Length().Cmp(s.Sides[1].Length) < 0)
			}
			for _, o := range openings {
				total += o.Count
			}
			for _, p := range l.Pieces {
				for at := layout.Bottom; at <= layout.Right; at++ {
					total -= p.Count(at)
					if len(p.Edges[at]) == 0 {
						total += p.Count(at)
					}
				}
			}
			require.Zero(t, total, "every named stretch is in a seam or an opening")
		}
	}
	for kind, n := range made {
		require.Greater(t, n, 200, kind)
	}
	require.Len(t, made, 5)
}

// bySum measures a garment from the stretches of its pieces alone, in
// millimetres, with math/big.
func bySum(l layout.Layout) func(measure string) (*big.Rat, bool) {
	each := func(o gauge.Over) *big.Rat {
		return new(big.Rat).Quo(o.Span.Measurement().In(gauge.Millimetre).Rat(), o.Count.Rat())
	}
	// stretch sums the stretches of one name; where names one piece and edge, from there alone.
	stretch := func(name string, where func(p layout.Piece, at layout.Place) bool) *big.Rat {
		sum := new(big.Rat)
		for _, p := range l.Pieces {
			for at := layout.Bottom; at <= layout.Right; at++ {
				if where != nil && !where(p, at) {
					continue
				}
				for _, s := range p.Edges[at] {
					if s.Name == name {
						sum.Add(sum, new(big.Rat).Mul(big.NewRat(int64(s.Count), 1), each(p.Over(at))))
					}
				}
			}
		}
		return sum
	}
	edge := func(i int, at layout.Place) *big.Rat {
		p := l.Pieces[i]
		return new(big.Rat).Mul(big.NewRat(int64(p.Count(at)), 1), each(p.Over(at)))
	}
	times := func(x *big.Rat, n, d int64) *big.Rat { return new(big.Rat).Mul(x, big.NewRat(n, d)) }
	folded := len(l.Pieces[0].Folds) > 0
	return func(measure string) (*big.Rat, bool) {
		switch measure {
		case "round":
			if folded {
				return times(edge(0, layout.Top), 4, 1), true
			}
			return times(edge(0, layout.Top), 2, 1), true
		case "length":
			if folded {
				return times(edge(0, layout.Left), 1, 2), true
			}
			return edge(0, layout.Left), true
		case "width":
			return edge(0, layout.Bottom), true
		case "panel length":
			return edge(0, layout.Left), true
		case "armhole round":
			return stretch("left armhole", func(p layout.Piece, _ layout.Place) bool { return p.Name != "left sleeve" }), true
		case "armhole depth":
			return times(stretch("right armhole", func(p layout.Piece, _ layout.Place) bool { return p.Name != "right sleeve" }), 1, 2), true
		case "neck drop": // half the edge is the back of it
			return new(big.Rat).Sub(times(edge(0, layout.Right), 1, 2), stretch("centre back", func(p layout.Piece, _ layout.Place) bool { return p.Name == l.Pieces[0].Name })), true
		case "neck depth":
			return new(big.Rat).Sub(times(edge(0, layout.Right), 1, 2), stretch("centre front", func(p layout.Piece, _ layout.Place) bool { return p.Name == l.Pieces[0].Name })), true
		case "neck round":
			return stretch("neck", nil), true
		case "neck width":
			return times(stretch("neck", nil), 1, 2), true
		case "slit":
			return stretch("left slit", func(p layout.Piece, at layout.Place) bool { return p.Name == l.Pieces[0].Name }).Mul(
				stretch("left slit", func(p layout.Piece, at layout.Place) bool { return p.Name == l.Pieces[0].Name }),
				map[bool]*big.Rat{true: big.NewRat(1, 2), false: big.NewRat(1, 1)}[folded]), true
		case "sleeve length":
			return edge(2, layout.Left), true
		case "sleeve round":
			return stretch("left sleeve end", nil), true
		case "body opening":
			return stretch("body opening", nil), true
		case "hem round":
			return stretch("hem", nil), true
		}
		return nil, false
	}
}

func measure(t *testing.T, l layout.Layout, name string) string {
	t.Helper()
	m, ok := l.Measure(name)
	require.True(t, ok, name)
	return m.In(gauge.Inch).String()
}

// Published garments of rectangles come out as printed.
func TestPublishedGarments(t *testing.T) {
	t.Run("D05: American Red Cross instructions, Berkeley Daily Gazette, 22 Sep 1917 (public domain)", func(t *testing.T) {
		// 80 stitches, 28 + 24 + 28 at the neck; 25 in each way; 9 in open for the armhole, so each seam is 16 in.
		p := layout.Rectangle{Stitches: 80, Rows: 25, Crosswise: true, Gauge: gauge.Gauge{Stitches: over("4", "1 in"), Rows: over("1", "1 in")}}
		l, err := layout.FrontAndBack{Panel: p, Shoulder: 28, Side: 16}.Layout()
		require.NoError(t, err)
		require.Equal(t, layout.Edge{{"left shoulder", 28, layout.Joined}, {"neck", 24, layout.Open}, {"right shoulder", 28, layout.Joined}}, l.Pieces[0].Edges[layout.Top])
		require.Equal(t, "9", measure(t, l, "armhole depth"))
		seams, err := l.Seams()
		require.NoError(t, err)
		require.Equal(t, "left side seam", seams[0].Name)
		require.Equal(t, "16", seams[0].Length().In(gauge.Inch).String())
		neck, _ := l.Measure("neck width")
		width, _ := l.Measure("width")
		part, _ := neck.Per(width)
		require.Equal(t, "3/10", part.String(), "neck = 30 percent of the width")
	})
	t.Run("C11: Amaranthus Cocoon, Yarn Citizen: width 38 (46, 54, 62) in, length 37 (38, 39, 40) in before seaming", func(t *testing.T) {
		for i, size := range [][2]int{{38, 37}, {46, 38}, {54, 39}, {62, 40}} {
			// 6 clusters over 4 in: 57 (69, 81, 93) clusters.
			clusters := []int{57, 69, 81, 93}[i]
			p := layout.Rectangle{Stitches: clusters, Rows: size[1], Crosswise: true, Gauge: gauge.Gauge{Stitches: over("6", "4 in"), Rows: over("1", "1 in")}}
			l, err := layout.Cocoon{Panel: p, Side: 10}.Layout()
			require.NoError(t, err)
			require.Equal(t, fmt.Sprint(size[0]), measure(t, l, "width"))
			require.Equal(t, fmt.Sprint(size[1]), measure(t, l, "panel length"))
			require.Equal(t, fmt.Sprint(2*size[0]), measure(t, l, "body opening"))
		}
	})
	t.Run("C09: Twisted Chain Poncho, Margret Willson, Crochet World: bust 51 (61, 69) in, length 28.5 (29, 29.5) in", func(t *testing.T) {
		// Two rectangles hung front and back: each half the bust wide. The shoulder is a guess, the neck not being printed.
		for _, size := range []struct{ halves, length, bust int }{{51, 57, 51}, {61, 58, 61}, {69, 59, 69}} {
			half := gauge.Gauge{Stitches: over("2", "1 in"), Rows: over("2", "1 in")}
			l, err := layout.FrontAndBack{Panel: layout.Rectangle{Stitches: size.halves, Rows: size.length, Crosswise: true, Gauge: half}, Shoulder: 15}.Layout()
			require.NoError(t, err)
			require.Equal(t, fmt.Sprint(size.bust), measure(t, l, "round"))
			require.Equal(t, big.NewRat(int64(size.length), 2).RatString(), measure(t, l, "length"))
			seams, err := l.Seams()
			require.NoError(t, err)
			require.Len(t, seams, 2, "shoulders, and no sides")
		}
	})
	t.Run("E34: alleghenymountainlmsc.org: two rectangles of 15 by 30 in make a neck of 30 in", func(t *testing.T) {
		for _, crosswise := range []bool{false, true} {
			p := layout.Rectangle{Stitches: 30, Rows: 15, Gauge: inches()}
			if crosswise {
				p = layout.Rectangle{Stitches: 15, Rows: 30, Gauge: inches(), Crosswise: true}
			}
			l, err := layout.Poncho{Panel: p, Side: 15}.Layout()
			require.NoError(t, err)
			require.Equal(t, "30", measure(t, l, "neck round"))
			require.Equal(t, "90", measure(t, l, "hem round"))
			seams, err := l.Seams()
			require.NoError(t, err)
			require.Len(t, seams, 2)
			for _, s := range seams {
				require.Equal(t, "15", s.Length().In(gauge.Inch).String())
			}
		}
	})
	t.Run("D01: Sweater Fit handout, Patty Lyons: armhole depth = half the upper-sleeve width", func(t *testing.T) {
		for width := 14; width <= 22; width += 2 {
			sleeve := layout.Rectangle{Stitches: width, Rows: 17, Crosswise: true, Gauge: inches()}
			l, err := layout.FrontAndBack{Panel: rectangle(24, 22, "1 sts and 1 rows = 1 in"), Shoulder: 7, Side: 24 - width/2, Sleeve: &sleeve}.Layout()
			require.NoError(t, err)
			require.Equal(t, fmt.Sprint(width/2), measure(t, l, "armhole depth"))
			seams, err := l.Seams()
			require.NoError(t, err)
			for _, s := range seams {
				require.True(t, s.Like() && s.Sides[0].Length.Equal(s.Sides[1].Length), "%s: the sleeve's edge is the armhole", s.Name)
			}
		}
	})
	t.Run("D02: Heaven Cardigan, Pope Knits: upper arm 41 to 60 cm is within 4 cm of twice the armhole", func(t *testing.T) {
		depth := []int{20, 22, 22, 24, 24, 25, 27, 27, 29}
		arm := []int{41, 46, 46, 50, 50, 54, 56, 56, 60}
		cm := gauge.Gauge{Stitches: over("1", "1 cm"), Rows: over("1", "1 cm")}
		for i := range depth {
			sleeve := layout.Rectangle{Stitches: arm[i], Rows: 40, Crosswise: true, Gauge: cm}
			l, err := layout.FrontAndBack{Panel: layout.Rectangle{Stitches: 50, Rows: 60, Crosswise: true, Gauge: cm}, Shoulder: 15, Side: 60 - depth[i], Sleeve: &sleeve}.Layout()
			require.NoError(t, err, "the printed sleeve is eased into the printed armhole")
			hole, _ := l.Measure("armhole depth")
			require.True(t, hole.Equal(gauge.MeasurementOf(gauge.Int(depth[i]), gauge.Centimetre)))
		}
	})
	t.Run("D10: drop shoulder worksheet, cstone.net/~glass: shoulder = (panel - neck)/2", func(t *testing.T) {
		l, err := layout.FrontAndBack{Panel: rectangle(24, 21, "1 sts and 1 rows = 1 in"), Shoulder: 7, Side: 14}.Layout()
		require.NoError(t, err)
		require.Equal(t, "7", measure(t, l, "neck width"))
	})
	t.Run("D11: Preteen slipover, Begin to Knit: armhole depth 4.5 (5, 5.5, 6, 7, 7) in", func(t *testing.T) {
		for _, d := range []string{"9/2", "5", "11/2", "6", "7", "7"} {
			depth, err := gauge.ParseRatio(d)
			require.NoError(t, err)
			rows, err := depth.Mul(gauge.Int(2)).Floor()
			require.NoError(t, err)
			half := gauge.Gauge{Stitches: over("2", "1 in"), Rows: over("2", "1 in")}
			l, err := layout.FrontAndBack{Panel: layout.Rectangle{Stitches: 26, Rows: 30, Crosswise: true, Gauge: half}, Shoulder: 8, Side: 30 - rows}.Layout()
			require.NoError(t, err)
			require.Equal(t, d, measure(t, l, "armhole depth"))
		}
	})
}

// fiveRectangles is the sweater of worked example D16, described from parts:
// back 12 by 12 in, two fronts of 6 by 12 in, sleeves of 10 by 10 in; the
// shoulders are sewn 3 in from each side. Source: How to piece together an easy
// crocheted sweater, bethanysewandsew, 2012.
func fiveRectangles() layout.Layout {
	g := gauge.Gauge{Stitches: gauge.Over{Count: decimal.NewFromInt(1), Span: gauge.MustLength("1 in")}, Rows: gauge.Over{Count: decimal.NewFromInt(1), Span: gauge.MustLength("1 in")}}
	side := func(which string, k layout.Kind) layout.Edge {
		return layout.Edge{{Name: which + " side", Count: 7, Kind: k}, {Name: which + " armhole", Count: 5, Kind: layout.Joined}}
	}
	front := func(which string, outer layout.Place) layout.Piece {
		p := layout.Piece{Name: which + " front", Stitches: 6, Rows: 12, Gauge: g}
		shoulder := layout.Stretch{Name: which + " shoulder", Count: 3, Kind: layout.Partner}
		neck := layout.Stretch{Name: "neck", Count: 3}
		p.Edges[layout.Top] = layout.Edge{shoulder, neck}
		if outer == layout.Right {
			p.Edges[layout.Top] = layout.Edge{neck, shoulder}
		}
		p.Edges[outer] = side(which, layout.Partner)
		return p
	}
	back := layout.Piece{Name: "back", Stitches: 12, Rows: 12, Gauge: g}
	back.Edges[layout.Top] = layout.Edge{{Name: "left shoulder", Count: 3, Kind: layout.Joined}, {Name: "neck", Count: 6}, {Name: "right shoulder", Count: 3, Kind: layout.Joined}}
	back.Edges[layout.Left], back.Edges[layout.Right] = side("left", layout.Joined), side("right", layout.Joined)
	l := layout.Layout{Name: "five rectangles", Pieces: []layout.Piece{back, front("right", layout.Left), front("left", layout.Right)}}
	for i, which := range []string{"left", "right"} {
		p := layout.Piece{Name: which + " sleeve", Stitches: 10, Rows: 10, Gauge: g, NewLine: i == 0}
		p.Edges[layout.Top] = layout.Edge{{Name: which + " armhole", Count: 10, Kind: layout.Partner}}
		p.Edges[layout.Left] = layout.Edge{{Name: which + " underarm", Count: 10, Kind: layout.Joined}}
		p.Edges[layout.Right] = layout.Edge{{Name: which + " underarm", Count: 10, Kind: layout.Partner}}
		l.Pieces = append(l.Pieces, p)
	}
	return l
}

func TestFiveRectangles(t *testing.T) {
	l := fiveRectangles()
	seams, err := l.Seams()
	require.NoError(t, err)
	got := map[string]string{}
	for _, s := range seams {
		require.True(t, s.Like())
		got[s.Name] = s.Length().In(gauge.Inch).String()
	}
	require.Equal(t, map[string]string{"left side": "7", "right side": "7", "left shoulder": "3", "right shoulder": "3",
		"left armhole": "10", "right armhole": "10", "left underarm": "10", "right underarm": "10"}, got, "side seam 7 in, armhole 5 in as printed")
	openings, err := l.Openings()
	require.NoError(t, err)
	require.Len(t, openings, 1)
	require.Equal(t, 12, openings[0].Count, "6 in at the back as printed, 3 in at each front")
}

func TestLayoutErrors(t *testing.T) {
	p := rectangle(100, 40, "13 sts and 9 rows = 4 in")
	tiny := rectangle(20, 10, "13 sts and 9 rows = 4 in")
	none := layout.Rectangle{}
	for _, c := range []struct {
		name, want string
		g          garment
	}{
		{"no panel", "Panel.Stitches: got 0", layout.OpenFront{}},
		{"no rows", "Panel.Rows: got 0", layout.Cocoon{Panel: layout.Rectangle{Stitches: 1}}},
		{"no gauge", "Panel.Gauge.Stitches.Count: got 0", layout.Poncho{Panel: layout.Rectangle{Stitches: 1, Rows: 1}}},
		{"too many stitches", "Panel.Stitches: got 100001", layout.FrontAndBack{Panel: rectangle(100_001, 1, "13 sts and 9 rows = 4 in")}},
		{"no centre back", "CentreBack: got 0, want 1 to 50 pairs", layout.OpenFront{Panel: p, Side: 10}},
		{"centre back over the shoulder", "CentreBack: got 51, want 1 to 50 pairs", layout.OpenFront{Panel: p, CentreBack: 51, Side: 10}},
		{"no side", "Side: got 0, want 1 to 49 pairs", layout.OpenFront{Panel: p, CentreBack: 40}},
		{"no armhole", "Side: got 50, want 1 to 49 pairs", layout.OpenFront{Panel: p, CentreBack: 40, Side: 50}},
		{"slit takes the armhole", "Side: got 40, want 1 to 39 pairs", layout.OpenFront{Panel: p, CentreBack: 40, Side: 40, Slit: 10}},
		{"negative slit", "Slit: got -1, want 0 to 99", layout.OpenFront{Panel: p, CentreBack: 40, Side: 10, Slit: -1}},
		{"no centre front", "CentreFront: got 0, want 1 to 50 pairs", layout.ClosedFront{Panel: p, CentreBack: 40, Side: 10}},
		{"no neck", "CentreFront: got 50, want fewer, so that a neck is left", layout.ClosedFront{Panel: p, CentreBack: 50, CentreFront: 50, Side: 10}},
		{"closed front without a panel", "CentreFront: got 1", layout.ClosedFront{CentreFront: 1}},
		{"no shoulder", "Shoulder: got 0, want 1 to 19 pairs", layout.FrontAndBack{Panel: p, Side: 10}},
		{"shoulders leave no neck", "Shoulder: got 20, want 1 to 19 pairs", layout.FrontAndBack{Panel: p, Shoulder: 20, Side: 10}},
		{"sides leave no armhole", "Side: got 100, want 1 to 99 pairs", layout.FrontAndBack{Panel: p, Shoulder: 10, Side: 100}},
		{"slit without a side", "Slit: got 5, want 0, the sides being open", layout.FrontAndBack{Panel: p, Shoulder: 10, Slit: 5}},
		{"slit longer than the panel", "Slit: got 100, want 0 to 99", layout.FrontAndBack{Panel: p, Shoulder: 10, Slit: 100}},
		{"sleeve without a side", "Side: got 0, want a side seam below the sleeve", layout.FrontAndBack{Panel: p, Shoulder: 10, Sleeve: &p}},
		{"sleeve of nothing", "Sleeve.Stitches: got 0", layout.FrontAndBack{Panel: p, Shoulder: 10, Side: 10, Sleeve: &none}},
		{"sleeve unlike the armhole", "left armhole: got sides of 12.31 in (31.26 cm) and 4.44 in (11.29 cm), want lengths that differ by at most 1/10",
			layout.FrontAndBack{Panel: p, Shoulder: 10, Side: 80, Sleeve: &tiny}},
		{"cocoon without armholes", "Side: got 50, want 1 to 49 pairs", layout.Cocoon{Panel: p, Side: 50}},
		{"poncho without a neck", "Side: got 100, want 1 to 99 pairs", layout.Poncho{Panel: p, Side: 100}},
		{"poncho of unlike edges", "first seam: got sides of 17.78 in", layout.Poncho{Panel: p, Side: 10}},
	} {
		t.Run(c.name, func(t *testing.T) {
			l, err := c.g.Layout()
			require.ErrorContains(t, err, c.want)
			var f *gauge.FieldError
			require.ErrorAs(t, err, &f)
			require.Empty(t, l.Pieces)
		})
	}
}

func TestOwnLayoutErrors(t *testing.T) {
	long := strings.Repeat("x", 10_001)
	for _, c := range []struct {
		name, want string
		change     func(*layout.Layout)
	}{
		{"no pieces", "Pieces: got 0, want 1 to 32", func(l *layout.Layout) { l.Pieces = nil }},
		{"too many pieces", "Pieces: got 33, want 1 to 32", func(l *layout.Layout) { l.Pieces = make([]layout.Piece, 33) }},
		{"long name", "Name: got \"xxx", func(l *layout.Layout) { l.Name = long }},
		{"too many measures", "Measures: got 33", func(l *layout.Layout) { l.Measures = make([]layout.Measure, 33) }},
		{"long name of a measure", "Measures[0].Name", func(l *layout.Layout) { l.Measures = []layout.Measure{{Name: long}} }},
		{"long name of a piece", "Pieces[2].Name", func(l *layout.Layout) { l.Pieces[2].Name = long }},
		{"long name of a stretch", "Pieces[0].Edges[top][1].Name", func(l *layout.Layout) { l.Pieces[0].Edges[layout.Top][1].Name = long }},
		{"long name of a fold", "Pieces[0].Folds[0].Name", func(l *layout.Layout) { l.Pieces[0].Folds = []layout.Fold{{Name: long}} }},
		{"too many folds", "Pieces[0].Folds: got 17, want at most 16", func(l *layout.Layout) { l.Pieces[0].Folds = make([]layout.Fold, 17) }},
		{"too many stretches", "Pieces[0].Edges[top]: got 17 stretches, want at most 16", func(l *layout.Layout) { l.Pieces[0].Edges[layout.Top] = make(layout.Edge, 17) }},
		{"easing", "Easing: got 2, want 0 to 1", func(l *layout.Layout) { l.Easing = gauge.Int(2) }},
		{"one name twice", `Pieces[1].Name: got "back" twice`, func(l *layout.Layout) { l.Pieces[1].Name = "back" }},
		{"foundation nowhere", "Pieces[0].Foundation: got Place(4)", func(l *layout.Layout) { l.Pieces[0].Foundation = 4 }},
		{"stretch of nothing", "Pieces[0].Edges[top][0].Count: got 0", func(l *layout.Layout) { l.Pieces[0].Edges[layout.Top][0].Count = 0 }},
		{"no such kind", "Pieces[0].Edges[top][0].Kind: got Kind(3)", func(l *layout.Layout) { l.Pieces[0].Edges[layout.Top][0].Kind = 3 }},
		{"seam without a name", "Pieces[0].Edges[top][0].Name: got none", func(l *layout.Layout) { l.Pieces[0].Edges[layout.Top][0].Name = "" }},
		{"edge that does not add up", "Pieces[0].Edges[top]: got 13 in all its stretches, want 12", func(l *layout.Layout) { l.Pieces[0].Edges[layout.Top][0].Count = 4 }},
		{"seam of one side", "left shoulder: got one side of a seam", func(l *layout.Layout) { l.Pieces[0].Edges[layout.Top][0].Kind = layout.Partner }},
		{"fold outside", "Pieces[0].Folds[0].At: got 12, want more than 0 and less than 12", func(l *layout.Layout) { l.Pieces[0].Folds = []layout.Fold{{At: gauge.Int(12)}} }},
		{"upright fold outside", "Pieces[1].Folds[0].At: got 6, want more than 0 and less than 6", func(l *layout.Layout) { l.Pieces[1].Folds = []layout.Fold{{At: gauge.Int(6), Upright: true}} }},
	} {
		t.Run(c.name, func(t *testing.T) {
			l := fiveRectangles()
			c.change(&l)
			require.ErrorContains(t, l.Validate(), c.want)
			_, err := l.Seams()
			require.ErrorContains(t, err, c.want)
			_, err = l.Openings()
			require.ErrorContains(t, err, c.want)
		})
	}
}

func TestPlaceAndKindText(t *testing.T) {
	for p := layout.Bottom; p <= layout.Right; p++ {
		b, err := p.MarshalText()
		require.NoError(t, err)
		var q layout.Place
		require.NoError(t, q.UnmarshalText(b))
		require.Equal(t, p, q)
		require.Equal(t, p, p.After(4))
		require.Equal(t, p, p.After(1).After(-1))
	}
	for k := layout.Open; k <= layout.Partner; k++ {
		b, err := k.MarshalText()
		require.NoError(t, err)
		var q layout.Kind
		require.NoError(t, q.UnmarshalText(b))
		require.Equal(t, k, q)
	}
	var f *gauge.FieldError
	var e *gauge.ParseError
	_, err := layout.Place(9).MarshalText()
	require.ErrorAs(t, err, &f)
	_, err = layout.Kind(9).MarshalText()
	require.ErrorAs(t, err, &f)
	require.ErrorAs(t, new(layout.Place).UnmarshalText([]byte("middle")), &e)
	require.ErrorAs(t, new(layout.Kind).UnmarshalText([]byte("glued")), &e)
}

// A layout goes through JSON, names of places and kinds included.
func TestLayoutJSON(t *testing.T) {
	l := fiveRectangles()
	b, err := json.Marshal(l.Pieces)
	require.NoError(t, err)
	require.Contains(t, string(b), `"edges":[null,[{"name":"left side","count":7,"kind":"joined"}`)
	var back []layout.Piece
	require.NoError(t, json.Unmarshal(b, &back))
	again, err := json.Marshal(back)
	require.NoError(t, err)
	require.Equal(t, string(b), string(again))
	require.NoError(t, layout.Layout{Pieces: back}.Validate())
}

// Whatever an app reads as a layout is valid or an error, and never a panic.
func FuzzLayoutJSON(f *testing.F) {
	b, err := json.Marshal(fiveRectangles())
	require.NoError(f, err)
	f.Add(b)
	f.Add([]byte(`{"pieces":[{"stitches":1,"rows":1,"foundation":"left","edges":[[{"name":"a","count":1,"kind":"joined"}]]}]}`))
	f.Fuzz(func(t *testing.T, b []byte) {
		var l layout.Layout
		if json.Unmarshal(b, &l) != nil {
			return
		}
		seams, err := l.Seams()
		openings, err2 := l.Openings()
		require.Equal(t, err == nil, err2 == nil)
		if err != nil {
			require.Nil(t, seams)
			return
		}
		for _, o := range openings {
			require.Positive(t, o.Count)
		}
	})
}

// What comes out of a layout is the caller's own.
func TestLayoutValues(t *testing.T) {
	l := fiveRectangles()
	l.Pieces[0].Stretches(layout.Top)[0].Count = 99
	require.NoError(t, l.Validate())
}

// An app describes a garment of its own: five rectangles make a cardigan.
func Example_ownGarment() {
	l := fiveRectangles()
	seams, err := l.Seams()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, s := range seams[:3] {
		fmt.Println(s.Name, s.Pairs(), "pairs,", gauge.QuarterInch.Text(s.Length()))
	}
	openings, _ := l.Openings()
	fmt.Println(openings[0].Name, gauge.QuarterInch.Text(openings[0].Length), "all round")
	// Output:
	// left side 7 pairs, 7 in
	// left armhole 10 pairs, 10 in
	// left shoulder 3 pairs, 3 in
	// neck 12 in all round
}

func ExampleOpenFront_Layout() {
	p := layout.Rectangle{Stitches: 163, Rows: 27, Gauge: gauge.MustGauge("13 sts and 9 rows = 4 in")}
	l, err := layout.OpenFront{Panel: p, CentreBack: 77, Side: 50}.Layout()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range l.Measures {
		fmt.Println(m.Name, gauge.QuarterInch.Text(m.Length))
	}
	// Output:
	// round 48 in
	// length 25 in
	// width 12 in
	// armhole depth 9¾ in
	// armhole round 19½ in
	// neck drop 1½ in
}

func ExampleClosedFront_Layout() {
	p := layout.Rectangle{Stitches: 163, Rows: 27, Gauge: gauge.MustGauge("13 sts and 9 rows = 4 in")}
	l, _ := layout.ClosedFront{Panel: p, CentreBack: 77, CentreFront: 57, Side: 50}.Layout()
	neck, _ := l.Measure("neck round")
	fmt.Println(gauge.QuarterInch.Text(neck))
	// Output: 17¾ in
}

func ExampleFrontAndBack_Layout() {
	p := layout.Rectangle{Stitches: 66, Rows: 54, Crosswise: true, Gauge: gauge.MustGauge("12 sts and 12 rows = 4 in")}
	l, _ := layout.FrontAndBack{Panel: p, Shoulder: 17, Side: 27}.Layout()
	for _, name := range []string{"round", "length", "neck width", "armhole depth"} {
		m, _ := l.Measure(name)
		fmt.Println(name, gauge.QuarterInch.Text(m))
	}
	// Output:
	// round 44 in
	// length 18 in
	// neck width 10¾ in
	// armhole depth 9 in
}

func ExampleCocoon_Layout() {
	p := layout.Rectangle{Stitches: 57, Rows: 74, Crosswise: true, Gauge: gauge.MustGauge("6 sts and 8 rows = 4 in")}
	l, _ := layout.Cocoon{Panel: p, Side: 22}.Layout()
	for _, m := range l.Measures {
		fmt.Println(m.Name, gauge.QuarterInch.Text(m.Length))
	}
	// Output:
	// width 38 in
	// panel length 37 in
	// length 18½ in
	// armhole depth 7½ in
	// armhole round 15 in
	// body opening 76 in
}

func ExamplePoncho_Layout() {
	p := layout.Rectangle{Stitches: 30, Rows: 15, Gauge: gauge.MustGauge("1 st and 1 row = 1 in")}
	l, _ := layout.Poncho{Panel: p, Side: 15}.Layout()
	neck, _ := l.Measure("neck round")
	fmt.Println(gauge.QuarterInch.Text(neck))
	// Output: 30 in
}

func ExampleLayout_Validate() {
	l := fiveRectangles()
	l.Pieces[0].Edges[layout.Top][0].Count = 4
	fmt.Println(l.Validate())
	// Output: Pieces[0].Edges[top]: got 13 in all its stretches, want 12
}

func ExampleLayout_Seams() {
	seams, _ := fiveRectangles().Seams()
	fmt.Println(len(seams), "seams, the first", seams[0].Name)
	// Output: 8 seams, the first left side
}

func ExampleLayout_Openings() {
	openings, _ := fiveRectangles().Openings()
	fmt.Println(openings[0].Name, openings[0].Count)
	// Output: neck 12
}

func ExampleLayout_Measure() {
	l, _ := layout.Poncho{Panel: layout.Rectangle{Stitches: 30, Rows: 15, Gauge: gauge.MustGauge("1 st and 1 row = 1 in")}, Side: 15}.Layout()
	_, ok := l.Measure("sleeve length")
	fmt.Println(ok)
	// Output: false
}

func ExamplePiece_Validate() {
	fmt.Println(layout.Piece{Stitches: 10}.Validate())
	// Output: Rows: got 0, want 1 to 100000
}

// The same piece, its rows upright and level.
func ExamplePiece_RowEnds() {
	p := layout.Piece{Stitches: 163, Rows: 27, Gauge: gauge.MustGauge("13 sts and 9 rows = 4 in"), Foundation: layout.Left}
	fmt.Println(p.RowEnds(layout.Bottom), p.RowEnds(layout.Left))
	// Output: true false
}

func ExamplePiece_Count() {
	p := layout.Piece{Stitches: 163, Rows: 27, Gauge: gauge.MustGauge("13 sts and 9 rows = 4 in"), Foundation: layout.Left}
	fmt.Println(p.Count(layout.Bottom), p.Count(layout.Left))
	// Output: 27 163
}

func ExamplePiece_Over() {
	p := layout.Piece{Stitches: 163, Rows: 27, Gauge: gauge.MustGauge("13 sts and 9 rows = 4 in"), Foundation: layout.Left}
	fmt.Println(p.Over(layout.Bottom).Count, p.Over(layout.Left).Count)
	// Output: 9 13
}

func ExamplePiece_Width() {
	p := layout.Piece{Stitches: 163, Rows: 27, Gauge: gauge.MustGauge("13 sts and 9 rows = 4 in"), Foundation: layout.Left}
	w, _ := p.Width()
	h, _ := p.Height()
	fmt.Println(gauge.QuarterInch.Text(w), "by", gauge.QuarterInch.Text(h))
	// Output: 12 in by 50¼ in
}

func ExamplePiece_Height() {
	p := layout.Piece{Stitches: 40, Rows: 27, Gauge: gauge.MustGauge("13 sts and 9 rows = 4 in")}
	h, _ := p.Height()
	fmt.Println(gauge.QuarterInch.Text(h))
	// Output: 12 in
}

func ExamplePiece_Stretches() {
	l := fiveRectangles()
	fmt.Println(l.Pieces[0].Stretches(layout.Top))
	// Output: [{left shoulder 3 joined} {neck 6 open} {right shoulder 3 joined}]
}

func ExamplePlace_After() {
	fmt.Println(layout.Bottom.After(1), layout.Bottom.After(-1))
	// Output: left right
}

func ExamplePlace_String() {
	fmt.Println(layout.Top)
	// Output: top
}

func ExamplePlace_MarshalText() {
	b, _ := layout.Left.MarshalText()
	fmt.Println(string(b))
	// Output: left
}

func ExamplePlace_UnmarshalText() {
	var p layout.Place
	fmt.Println(p.UnmarshalText([]byte("right")), p)
	// Output: <nil> right
}

func ExampleKind_String() {
	fmt.Println(layout.Partner)
	// Output: partner
}

func ExampleKind_MarshalText() {
	b, _ := layout.Open.MarshalText()
	fmt.Println(string(b))
	// Output: open
}

func ExampleKind_UnmarshalText() {
	var k layout.Kind
	fmt.Println(k.UnmarshalText([]byte("joined")), k)
	// Output: <nil> joined
}

func ExampleSeam_Pairs() {
	seams, _ := fiveRectangles().Seams()
	fmt.Println(seams[0].Pairs(), seams[0].Like())
	// Output: 7 true
}

func ExampleSeam_Like() {
	s := layout.Seam{Sides: [2]layout.Side{{Count: 88}, {Count: 71}}}
	fmt.Println(s.Like(), s.Pairs())
	// Output: false 71
}

func ExampleSeam_Length() {
	seams, _ := fiveRectangles().Seams()
	fmt.Println(gauge.QuarterInch.Text(seams[0].Length()))
	// Output: 7 in
}

func ExampleRectangle_Validate() {
	fmt.Println(layout.Rectangle{Stitches: 10, Rows: 10}.Validate())
	// Output: Gauge.Stitches.Count: got 0, want more than 0
}

func ExampleRectangle_Long() {
	r := layout.Rectangle{Stitches: 163, Rows: 27}
	fmt.Println(r.Long(), r.Wide())
	r.Crosswise = true
	fmt.Println(r.Long(), r.Wide())
	// Output:
	// 163 27
	// 27 163
}

func ExampleRectangle_Wide() {
	fmt.Println(layout.Rectangle{Stitches: 163, Rows: 27}.Wide())
	// Output: 27
}

func ExampleRectangle_Along() {
	r := layout.Rectangle{Gauge: gauge.MustGauge("13 sts and 9 rows = 4 in")}
	fmt.Println(r.Along().Count, r.Across().Count)
	// Output: 13 9
}

func ExampleRectangle_Across() {
	r := layout.Rectangle{Gauge: gauge.MustGauge("13 sts and 9 rows = 4 in"), Crosswise: true}
	fmt.Println(r.Across().Count)
	// Output: 13
}

func TestStretchesOfNoPlace(t *testing.T) {
	require.Nil(t, layout.Piece{}.Stretches(layout.Right+1))
}
