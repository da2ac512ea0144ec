package schematic_test

import (
	"bytes"
	"encoding/json"
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
// text is its own: sixteen twenty-fifths of the type size for every character,
// less for a narrow one, more for a broad one.
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
				switch {
				case strings.ContainsRune("ijl", r):
					w += size * 3 / 10
				case strings.ContainsRune(" \u00a0,.:;()[]frt", r):
					w += size * 2 / 5
				case strings.ContainsRune("½¼¾mwMW", r):
					w += size
				default:
					w += size * 16 / 25
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
		if a.x1 < 0 || a.y1 < 0 || a.x2 > width || a.y2 > height {
			t.Fatalf("%q leaves the page: %v of %d by %d", a.text, a, width, height)
		}
		for _, c := range texts[:i] {
			if a.x2 > c.x1 && c.x2 > a.x1 && a.y2 > c.y1 && c.y2 > a.y1 {
				t.Fatalf("%q overlaps %q: %v %v", a.text, c.text, a, c)
			}
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

// sampler is an app's own layout of many unlike pieces: each edge in short
// stretches, each with a name of its own.
func sampler(pieces, stretches int, name string) layout.Layout {
	l := layout.Layout{Name: name}
	for i := range pieces {
		n := stretches * (1 + i%3)
		p := layout.Piece{Name: fmt.Sprintf("%s %d", name, i+1), Stitches: n, Rows: n * (1 + i%5), Foundation: layout.Place(i % 4), NewLine: i%3 == 0,
			Gauge: gauge.MustGauge("3 sts and 4 rows = 1 in")}
		for at := layout.Bottom; at <= layout.Right; at++ {
			for k := range stretches {
				p.Edges[at] = append(p.Edges[at], layout.Stretch{Name: fmt.Sprintf("%s %d %v %d", name, i, at, k), Count: p.Count(at) / stretches})
			}
		}
		p.Folds = []layout.Fold{{At: gauge.Int(1)}, {At: gauge.Int(1), Upright: true}}
		l.Pieces = append(l.Pieces, p)
	}
	return l
}

// The largest layout that is allowed, and texts that break everything, still
// give a clear and valid page.
func TestOwnLayouts(t *testing.T) {
	for name, l := range map[string]layout.Layout{
		"one stretch, one stitch":  {Pieces: []layout.Piece{{Stitches: 1, Rows: 1, Gauge: gauge.MustGauge("1 st and 1 row = 1 mm")}}},
		"a name on a single edge":  {Pieces: []layout.Piece{{Stitches: 9, Rows: 9, Gauge: gauge.MustGauge("1 st and 1 row = 1 in"), Edges: [4]layout.Edge{layout.Right: {{Name: "seam", Count: 9}}}}}},
		"many pieces":              sampler(9, 4, "piece"),
		"as large as can be":       sampler(layout.MaxPieces, layout.MaxStretches, "x"),
		"marks that must be told":  sampler(2, 2, `<script>"&'</script>`),
		"no letters of our script": sampler(2, 2, "袖 рукав"),
		"control characters":       sampler(1, 2, "a\x00b\x1bc"),
		"one endless word":         sampler(1, 2, strings.Repeat("w", 3000)),
		"as thin as a thread":      {Pieces: []layout.Piece{{Name: "cord", Stitches: 2, Rows: 100_000, Gauge: gauge.MustGauge("20 sts and 40 rows = 4 in"), Edges: [4]layout.Edge{layout.Left: {{Name: "a", Count: 1}, {Name: "b", Count: 99_999}}}}}},
	} {
		t.Run(name, func(t *testing.T) {
			b, err := schematic.Draw(l, schematic.Options{})
			require.NoError(t, err)
			requireClear(t, b)
			require.NotContains(t, string(b), "<script")
			require.Contains(t, string(b), "<title id=")
		})
	}
}

// Whatever is read as a layout is drawn as valid XML, or is an error.
func FuzzDraw(f *testing.F) {
	for _, l := range []layout.Layout{sampler(2, 3, "a"), made(f, layout.Poncho{Panel: rectangle(98, 34, false), Side: 49})} {
		b, err := json.Marshal(l)
		require.NoError(f, err)
		f.Add(b)
	}
	f.Fuzz(func(t *testing.T, b []byte) {
		var l layout.Layout
		if json.Unmarshal(b, &l) != nil {
			return
		}
		drawing, err := schematic.Draw(l, schematic.Options{})
		if err != nil {
			require.Equal(t, l.Validate(), err)
			return
		}
		requireClear(t, drawing)
	})
}

// Nine sizes, and sixty-four: the key goes on, the drawing stays.
func TestManySizes(t *testing.T) {
	for _, n := range []int{9, grade.MaxSizes} {
		var run grade.Run[layout.Layout]
		var names grade.Run[string]
		for i := range n {
			run = append(run, made(t, layout.OpenFront{Panel: rectangle(163+i, 25+i, i < 0), CentreBack: 77, Side: 50}))
			names = append(names, fmt.Sprintf("size %d", i+1))
		}
		b, err := schematic.All{Sizes: run, Labels: names, Shape: n - 1}.Draw()
		require.NoError(t, err)
		requireClear(t, b)
	}
}

// Every count and length of the key is that of the layout.
func TestKeyTellsTheLayout(t *testing.T) {
	l := made(t, layout.OpenFront{Panel: rectangle(163, 27, false), CentreBack: 77, Side: 50})
	b, err := schematic.Draw(l, schematic.Options{})
	require.NoError(t, err)
	texts, _, _ := read(t, b)
	var all []string
	for _, x := range texts {
		all = append(all, strings.ReplaceAll(x.text, "\u00a0", " "))
	}
	page := strings.Join(all, "\n")
	for _, want := range []string{"Open front", "left panel: 163 sts, 27 rows", "left side seam, joined: 50 sts, 15½ in [39 cm]", "armhole, open: 63 sts, 19½ in [49 cm]",
		"center back, joined: 77 sts, 23¾ in [60 cm]", "front and neck, open: 86 sts, 26½ in [67 cm]", "50¼ in\n127.5 cm", "12 in\n30.5 cm", "round: 48 in [122 cm]"} {
		require.Contains(t, page, want)
	}
	require.Contains(t, string(b), "left panel, foundation edge at the right; right panel, foundation edge at the left")
}

// With the key apart, the drawing holds letters and samples of its lines only;
// its description still tells all, and the key is the one of the whole drawing.
func TestKeyApart(t *testing.T) {
	for name, run := range sizes(t) {
		t.Run(name, func(t *testing.T) {
			all := schematic.All{Sizes: run, Labels: labels()}
			whole, err := all.Draw()
			require.NoError(t, err)
			all.Options.KeyApart = true
			apart, err := all.Draw()
			require.NoError(t, err)
			requireClear(t, apart)
			key, err := all.Key()
			require.NoError(t, err)
			text := func(b []byte) string {
				var out []string
				texts, _, _ := read(t, b)
				for _, x := range texts {
					out = append(out, x.text)
				}
				return strings.ReplaceAll(strings.Join(out, " "), "\u00a0", " ")
			}
			desc := strings.ReplaceAll(string(apart), "\u00a0", " ")
			for _, line := range key {
				line.Text = strings.ReplaceAll(line.Text, "\u00a0", " ")
				require.Contains(t, text(whole), line.Text)
				require.NotContains(t, text(apart), line.Text)
				require.Contains(t, desc, line.Sign+" "+line.Text)
				require.Regexp(t, `>`+line.Sign+`</text>`, string(apart))
			}
		})
	}
}

func TestErrors(t *testing.T) {
	run := sizes(t)["open-front"]
	other := sizes(t)["cocoon"][0]
	closed := sizes(t)["closed-front"][0]
	var f *gauge.FieldError
	var size *grade.SizeError
	for want, c := range map[string]struct {
		all schematic.All
		as  any
	}{
		"Sizes: got 0, want 1 to 64":    {schematic.All{}, &f},
		"Sizes: got 65, want 1 to 64":   {schematic.All{Sizes: make(grade.Run[layout.Layout], 65)}, &f},
		"Labels: got 1, want none or 3": {schematic.All{Sizes: run, Labels: grade.Run[string]{"S"}}, &f},
		"Shape: got 3, want 0 to 2":     {schematic.All{Sizes: run, Shape: 3}, &f},
		"Shape: got -1, want 0 to 2":    {schematic.All{Sizes: run, Shape: -1}, &f},
		"Title or Labels: got":          {schematic.All{Sizes: run, Options: schematic.Options{Title: strings.Repeat("x", 10_001)}}, &f},
		`size L: piece "panel" with its foundation at the bottom, where the first size has piece "left panel" with its foundation at the right`: {
			schematic.All{Sizes: grade.Run[layout.Layout]{run[0], other}, Labels: grade.Run[string]{"S", "L"}}, &size},
		"size number 2: open \"left slit\" at the left of left panel, where the first size has joined \"left side seam\"": {
			schematic.All{Sizes: grade.Run[layout.Layout]{run[0], closed}}, &size},
		"size number 2: Pieces: got 0": {schematic.All{Sizes: grade.Run[layout.Layout]{run[0], {}}}, &size},
	} {
		b, err := c.all.Draw()
		require.ErrorContains(t, err, want)
		require.ErrorAs(t, err, c.as)
		require.Nil(t, b)
		key, err := c.all.Key()
		require.ErrorContains(t, err, want)
		require.Nil(t, key)
	}
	shorter := run[0]
	shorter.Measures = shorter.Measures[:5]
	_, err := schematic.All{Sizes: grade.Run[layout.Layout]{run[0], shorter}}.Draw()
	require.ErrorContains(t, err, "parts, where the first size has")
	b, err := schematic.Draw(layout.Layout{}, schematic.Options{})
	require.EqualError(t, err, "Pieces: got 0, want 1 to 32")
	require.Nil(t, b)
}

func ExampleDraw() {
	l, err := layout.Cocoon{Panel: layout.Rectangle{Stitches: 57, Rows: 74, Crosswise: true, Gauge: gauge.MustGauge("6 sts and 8 rows = 4 in")}, Side: 22}.Layout()
	if err != nil {
		fmt.Println(err)
		return
	}
	svg, err := schematic.Draw(l, schematic.Options{Title: "Cocoon in one size"})
	if err != nil {
		fmt.Println(err)
		return
	}
	lines := strings.Split(string(svg), "\n")
	fmt.Println(lines[2])
	// Output: <title id="schematic-title">Cocoon in one size</title>
}

// One drawing stands for all sizes: its key holds runs.
func ExampleAll_Draw() {
	var all schematic.All
	for i, label := range []string{"S–M", "L–XL"} {
		p := layout.Rectangle{Stitches: 57 + 12*i, Rows: 74 + 2*i, Crosswise: true, Gauge: gauge.MustGauge("6 sts and 8 rows = 4 in")}
		l, err := layout.Cocoon{Panel: p, Side: 22 + i}.Layout()
		if err != nil {
			fmt.Println(err)
			return
		}
		all.Sizes, all.Labels = append(all.Sizes, l), append(all.Labels, label)
	}
	svg, err := all.Draw()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, line := range strings.Split(string(svg), "\n") {
		if at := strings.Index(line, ">left side seam"); at > 0 {
			fmt.Println(strings.ReplaceAll(strings.TrimSuffix(line[at+1:], "</text>"), "\u00a0", " "))
		}
	}
	// Output: left side seam, joined: 22 (23) row ends, 11
}

// A page that sets the key as text, at the size of its own type.
func ExampleAll_Key() {
	l, err := layout.Cocoon{Panel: layout.Rectangle{Stitches: 57, Rows: 74, Crosswise: true, Gauge: gauge.MustGauge("6 sts and 8 rows = 4 in")}, Side: 22}.Layout()
	if err != nil {
		fmt.Println(err)
		return
	}
	key, err := schematic.All{Sizes: grade.Run[layout.Layout]{l}, Options: schematic.Options{KeyApart: true}}.Key()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, line := range key {
		fmt.Println(line.Sign, strings.ReplaceAll(line.Text, "\u00a0", " "))
	}
	// Output:
	// 1 panel: 57 sts, 74 rows
	// A body opening, open: 57 sts, 38 in [96.5 cm]
	// B left side seam, joined: 22 row ends, 11 in [28 cm]
	// C armhole, open: 30 row ends, 15 in [38 cm]
	// D right side seam, joined: 22 row ends, 11 in [28 cm]
}

func BenchmarkDraw(b *testing.B) {
	for name, l := range map[string]layout.Layout{
		"open front": made(b, layout.OpenFront{Panel: rectangle(163, 27, false), CentreBack: 77, Side: 50}),
		"largest":    sampler(layout.MaxPieces, layout.MaxStretches, "x"),
	} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := schematic.Draw(l, schematic.Options{}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
