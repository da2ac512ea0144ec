package schematic_test

import (
	"bytes"
	"encoding/xml"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/panel/schematic"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "rewrite the golden files")

func rectangle(stitches, rows int, crosswise bool) layout.Rectangle {
	return layout.Rectangle{Stitches: stitches, Rows: rows, Crosswise: crosswise, Gauge: gauge.MustGauge("13 sts and 9 rows = 4 in")}
}

type garment interface{ Layout() (layout.Layout, error) }

func made(t testing.TB, g garment) layout.Layout {
	t.Helper()
	l, err := g.Layout()
	require.NoError(t, err)
	return l
}

// sizes are the ready garments, each in three sizes: invented counts.
func sizes(t testing.TB) map[string]grade.Run[layout.Layout] {
	of := func(gs ...garment) grade.Run[layout.Layout] {
		var run grade.Run[layout.Layout]
		for _, g := range gs {
			run = append(run, made(t, g))
		}
		return run
	}
	sleeve := func(n, long int) *layout.Rectangle { r := rectangle(n, long, true); return &r }
	return map[string]grade.Run[layout.Layout]{
		"open-front": of(
			layout.OpenFront{Panel: rectangle(163, 25, false), CentreBack: 77, Side: 50},
			layout.OpenFront{Panel: rectangle(166, 30, false), CentreBack: 78, Side: 50},
			layout.OpenFront{Panel: rectangle(172, 40, false), CentreBack: 81, Side: 46}),
		"closed-front": of(
			layout.ClosedFront{Panel: rectangle(163, 25, false), CentreBack: 77, CentreFront: 57, Side: 42, Slit: 8},
			layout.ClosedFront{Panel: rectangle(166, 30, false), CentreBack: 78, CentreFront: 58, Side: 42, Slit: 8},
			layout.ClosedFront{Panel: rectangle(172, 40, false), CentreBack: 81, CentreFront: 60, Side: 38, Slit: 8}),
		"front-and-back": of(
			layout.FrontAndBack{Panel: rectangle(62, 45, true), Shoulder: 15, Side: 27},
			layout.FrontAndBack{Panel: rectangle(70, 46, true), Shoulder: 19, Side: 27},
			layout.FrontAndBack{Panel: rectangle(90, 48, true), Shoulder: 28, Side: 26}),
		"sleeves": of(
			layout.FrontAndBack{Panel: rectangle(62, 45, true), Shoulder: 15, Side: 25, Slit: 4, Sleeve: sleeve(46, 36)},
			layout.FrontAndBack{Panel: rectangle(70, 46, true), Shoulder: 19, Side: 25, Slit: 4, Sleeve: sleeve(49, 36)},
			layout.FrontAndBack{Panel: rectangle(90, 48, true), Shoulder: 28, Side: 24, Slit: 4, Sleeve: sleeve(58, 36)}),
		"cocoon": of(
			layout.Cocoon{Panel: rectangle(124, 84, true), Side: 24},
			layout.Cocoon{Panel: rectangle(150, 86, true), Side: 24},
			layout.Cocoon{Panel: rectangle(200, 90, true), Side: 24}),
		"poncho": of(
			layout.Poncho{Panel: rectangle(98, 34, false), Side: 49},
			layout.Poncho{Panel: rectangle(104, 36, false), Side: 52},
			layout.Poncho{Panel: rectangle(111, 38, false), Side: 55}),
	}
}

func labels() grade.Run[string] { return grade.Run[string]{"XS–S", "M–L", "XL–2X"} }

// box is a text on the page, in units.
type box struct {
	x1, y1, x2, y2 int // tenths
	text           string
}

// read parses a drawing and returns its texts and the page. Its estimate of a
// text is its own: two thirds of the type size for every character, a third
// for a space or a mark.
func read(t testing.TB, b []byte) (texts []box, width, height int) {
	t.Helper()
	tenths := func(s string) int {
		whole, part, _ := strings.Cut(s, ".")
		n, err := strconv.Atoi(whole + (part + "0")[:1])
		require.NoError(t, err, s)
		return n
	}
	d := xml.NewDecoder(bytes.NewReader(b))
	size := 0
	var in *box
	anchor := ""
	for {
		tok, err := d.Token()
		if tok == nil {
			require.ErrorContains(t, err, "EOF")
			return texts, width, height
		}
		switch v := tok.(type) {
		case xml.StartElement:
			at := map[string]string{}
			for _, a := range v.Attr {
				at[a.Name.Local] = a.Value
				require.NotContains(t, a.Value, "url(")
				require.NotEqual(t, "href", a.Name.Local)
			}
			switch v.Name.Local {
			case "svg":
				_, err := fmt.Sscanf(strings.ReplaceAll(at["viewBox"], ".", " . "), "0 0 %d", new(int))
				require.NoError(t, err)
				f := strings.Fields(at["viewBox"])
				width, height = tenths(f[2]), tenths(f[3])
			case "g":
				size = tenths(at["font-size"])
			case "text":
				in = &box{x1: tenths(at["x"]), y2: tenths(at["y"])}
				anchor = at["text-anchor"]
			case "line":
				for _, x := range []string{at["x1"], at["x2"]} {
					require.True(t, tenths(x) >= 0 && tenths(x) <= width, "a line leaves the page at %s", x)
				}
				for _, y := range []string{at["y1"], at["y2"]} {
					require.True(t, tenths(y) >= 0 && tenths(y) <= height, "a line leaves the page at %s", y)
				}
			case "title", "desc", "rect", "circle", "path":
			default:
				t.Fatalf("element %s", v.Name.Local)
			}
		case xml.CharData:
			if in != nil {
				in.text += string(v)
			}
		case xml.EndElement:
			if v.Name.Local != "text" {
				continue
			}
			w := 0
			for _, r := range in.text {
				if strings.ContainsRune(" ,.:;()[]", r) {
					w += size / 3
				} else {
					w += size * 2 / 3
				}
			}
			in.y1, in.y2 = in.y2-size*3/4, in.y2+size/5
			in.x1 -= map[string]int{"start": 0, "middle": w / 2, "end": w}[anchor]
			in.x2 = in.x1 + w
			texts = append(texts, *in)
			in = nil
		}
	}
}

// requireClear fails where two texts touch or one leaves the page.
func requireClear(t testing.TB, b []byte) {
	t.Helper()
	texts, width, height := read(t, b)
	require.NotEmpty(t, texts)
	for i, a := range texts {
		require.True(t, a.x1 >= 0 && a.y1 >= 0 && a.x2 <= width && a.y2 <= height, "%q leaves the page: %v of %d by %d", a.text, a, width, height)
		for _, c := range texts[:i] {
			apart := a.x2 <= c.x1 || c.x2 <= a.x1 || a.y2 <= c.y1 || c.y2 <= a.y1
			require.True(t, apart, "%q overlaps %q: %v %v", a.text, c.text, a, c)
		}
	}
}

func TestGolden(t *testing.T) {
	for name, run := range sizes(t) {
		for file, draw := range map[string]func() ([]byte, error){
			name + "-smallest.svg": func() ([]byte, error) { return schematic.Draw(run[0], schematic.Options{}) },
			name + "-largest.svg":  func() ([]byte, error) { return schematic.Draw(run[2], schematic.Options{Centimetres: true}) },
			name + "-all.svg": func() ([]byte, error) {
				return schematic.All{Sizes: run, Labels: labels(), Shape: 1, Options: schematic.Options{Title: "Harbour " + name}}.Draw()
			},
		} {
			t.Run(file, func(t *testing.T) {
				b, err := draw()
				require.NoError(t, err)
				requireClear(t, b)
				path := filepath.Join("testdata", file)
				if *update {
					require.NoError(t, os.MkdirAll("testdata", 0o755))
					require.NoError(t, os.WriteFile(path, b, 0o644))
				}
				want, err := os.ReadFile(path)
				require.NoError(t, err)
				require.Equal(t, string(want), string(b))
			})
		}
	}
}

// No two texts touch and nothing leaves the page, for every ready garment, for
// one size and for all, at every ratio from 1:1 to 1:8, either way.
func TestNothingOverlaps(t *testing.T) {
	g := gauge.MustGauge("4 sts and 4 rows = 1 in")
	for ratio := 1; ratio <= 8; ratio++ {
		for _, tall := range []bool{true, false} {
			for _, crosswise := range []bool{true, false} {
				long, wide := 48*ratio, 48
				if !tall {
					long, wide = 48, 48*ratio
				}
				p := layout.Rectangle{Stitches: long, Rows: wide, Gauge: g, Crosswise: crosswise}
				if crosswise {
					p.Stitches, p.Rows = wide, long
				}
				hole := long / 2
				sleeve := layout.Rectangle{Stitches: 2 * hole, Rows: 2 * hole * (1 + ratio%3), Gauge: g, Crosswise: true}
				slit := 1 + ratio%2*3
				gs := []garment{
					layout.OpenFront{Panel: p, CentreBack: long/2 - 3, Side: long/2 - 12 - slit, Slit: slit},
					layout.ClosedFront{Panel: p, CentreBack: long/2 - 1, CentreFront: long/2 - 2, Side: long/2 - 12 - slit, Slit: slit},
					layout.FrontAndBack{Panel: p, Shoulder: wide/2 - 1, Side: long - hole - slit, Slit: slit, Sleeve: &sleeve},
					layout.FrontAndBack{Panel: p, Shoulder: 1},
					layout.Cocoon{Panel: p, Side: long/2 - 1},
				}
				if tall && ratio > 1 {
					gs = append(gs, layout.Poncho{Panel: p, Side: 48})
				}
				for _, g := range gs {
					t.Run(fmt.Sprintf("%T/%d/%v/%v", g, ratio, tall, crosswise), func(t *testing.T) {
						l := made(t, g)
						b, err := schematic.Draw(l, schematic.Options{})
						require.NoError(t, err)
						requireClear(t, b)
						run := make(grade.Run[layout.Layout], 9)
						for i := range run {
							run[i] = l
						}
						b, err = schematic.All{Sizes: run}.Draw()
						require.NoError(t, err)
						requireClear(t, b)
					})
				}
			}
		}
	}
}
