package main

import (
	"bytes"
	"encoding/json"
	"flag"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"example.com/panelmath/examples/internal/garment"
	"example.com/panelmath/examples/internal/variant"
	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/seam"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the golden files")

const mine = "14 sts and 11 rows = 4 in"

// cli runs the program and returns what it printed.
func cli(in string, args ...string) (code int, out, errs string) {
	var stdout, stderr bytes.Buffer
	code = run(args, strings.NewReader(in), &stdout, &stderr)
	return code, stdout.String(), stderr.String()
}

// reply runs the program for its JSON.
func replyTo(t *testing.T, in string, args ...string) (r result) {
	t.Helper()
	code, out, errs := cli(in, append([]string{"-format", "json"}, args...)...)
	require.Equal(t, 0, code, errs)
	require.NoError(t, json.Unmarshal([]byte(out), &r))
	return r
}

func TestGolden(t *testing.T) {
	for _, c := range []struct {
		golden string
		args   []string
	}{
		{"as-written.md", []string{"-gauge", mine}},
		{"her-round.md", []string{"-gauge", mine, "-body", "37 in", "-ease", "9 in", "-arm", "17 1/2 in", "-label", "110 m = 50 g", "-label", "400 m = 50 g", "-why"}},
		{"own-swatch.md", []string{"-gauge", "17 sts and 12.5 rows = 10 cm", "-size", "xl-2x", "-swatch", "15 cm x 15 cm = 15 g", "-label", "180 m = 100 g",
			"-counts", "98, 30 sts", "-counts", "96 (102) sts, multiple of 6", "-counts", "91 rows"}},
		{"short-count.md", []string{"-gauge", "7 sts = 2 in, 12 rows = 4 in", "-size", "M"}},
		{"too-tight.md", []string{"-gauge", "24 sts and 15 rows = 4 in"}},
		{"her-round.json", []string{"-gauge", mine, "-round", "46 in", "-counts", "73 sts", "-format", "json"}},
	} {
		t.Run(c.golden, func(t *testing.T) {
			code, got, errs := cli("", c.args...)
			require.Equal(t, 0, code, errs)
			got, _ = withoutWorked(got)
			file := filepath.Join("testdata", c.golden)
			if *update {
				require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
			}
			want, err := os.ReadFile(file)
			require.NoError(t, err)
			require.Empty(t, cmp.Diff(string(want), got))
		})
	}
}

// withoutWorked takes the rows and the finishing out of a document: they are
// those of the pattern program.
func withoutWorked(doc string) (rest string, worked []string) {
	var kept []string
	for _, section := range strings.SplitAfter(strings.ReplaceAll(doc, "\n## ", "\n\x00## "), "\x00") {
		section = strings.TrimSuffix(section, "\x00")
		heading, _, _ := strings.Cut(section, "\n")
		if strings.HasSuffix(heading, ", with your numbers") {
			worked = append(worked, strings.Replace(section, ", with your numbers", "", 1))
			continue
		}
		kept = append(kept, section)
	}
	return strings.Join(kept, ""), worked
}

// layouts are the briefs of every layout that the pattern program tests.
var layouts = []string{"closed-front", "front-and-back", "cocoon", "poncho", "one-size", "uk-child"}

// TestWorked: the rows and the finishing are, to the letter, those of the
// pattern at her gauge.
func TestWorked(t *testing.T) {
	for _, name := range layouts {
		t.Run(name, func(t *testing.T) {
			file := filepath.Join("..", "pattern", "testdata", name+".json")
			code, out, errs := cli("", "-brief", file, "-gauge", "12 sts and 8.5 rows = 4 in")
			require.Equal(t, 0, code, errs)
			_, got := withoutWorked(out)

			b, err := variant.Open(file, nil, nil)
			require.NoError(t, err)
			g, err := b.With("gauge", "12 sts and 8.5 rows = 4 in").Without("worked_gauge").Make()
			require.NoError(t, err)
			d, err := g.Document(garment.Options{})
			require.NoError(t, err)
			want := d.Markdown()
			_, want, _ = strings.Cut(want[strings.Index(want, "\n## Abbreviations"):], "\n\n## ")
			require.Equal(t, "## "+want, strings.TrimSuffix(strings.Join(got, ""), "\n")+"\n")
			require.Contains(t, want, "Finishing\n")
		})
	}
}

// TestLayouts: at the pattern's own gauge every layout comes out as it was, and
// takes the yarn that it took; at another one its openings are not smaller than
// asked, or it says what does not fit.
func TestLayouts(t *testing.T) {
	for _, name := range layouts {
		t.Run(name, func(t *testing.T) {
			file := filepath.Join("..", "pattern", "testdata", name+".json")
			b, err := variant.Open(file, nil, nil)
			require.NoError(t, err)
			g, err := b.Make()
			require.NoError(t, err)
			r := replyTo(t, "", "-brief", file, "-gauge", b.Fabric.Finished.String())
			require.Empty(t, r.Without)
			for i, s := range g.Sizes {
				require.Equal(t, r.Followed[i].Pattern, r.Followed[i].Measures)
				require.Equal(t, r.Followed[i].Pattern, r.New[i].Measures)
				require.Equal(t, s.Yarn.Total.In(s.Yarn.Label.Length.Unit).Text(2), r.New[i].Yarn[0].Length)
				require.Equal(t, r.New[i].Yarn, r.Followed[i].Yarn)
				require.Equal(t, "0.00", r.New[i].Yarn[0].Less)
				require.Empty(t, r.Followed[i].Faults)
				require.Equal(t, s.Sleeve != nil, r.New[i].Sleeve != nil)
			}
			// A tenth tighter in both directions: what was 10 is 9 1/11.
			tight := changedGauge(t, b, "11/10")
			r = replyTo(t, "", "-brief", file, "-gauge", tight)
			for i, s := range g.Sizes {
				for _, m := range s.Sewn.Layout.Measures {
					tenth, err := gauge.Share(10, 11)
					require.NoError(t, err)
					require.Equal(t, m.Length.Times(tenth).In(b.Units).Text(3), r.Followed[i].Measures[m.Name], m.Name)
				}
			}
		})
	}
	refused(t, "-round: a poncho has no round to choose by; use -size", "", "-brief", filepath.Join("..", "pattern", "testdata", "poncho.json"), "-gauge", mine, "-round", "40 in")
}

// changedGauge returns the gauge of a brief with so many times the counts.
func changedGauge(t *testing.T, b variant.Brief, times string) string {
	t.Helper()
	x, err := gauge.ParseRatio(times)
	require.NoError(t, err)
	g := b.Fabric.Finished
	for _, o := range []*gauge.Over{&g.Stitches, &g.Rows} {
		count, err := gauge.FromDecimal(o.Count)
		require.NoError(t, err)
		o.Count = count.Mul(x).Decimal(10)
	}
	return g.String()
}

// TestHead: a neck that her head does not pass is told.
func TestHead(t *testing.T) {
	r := replyTo(t, "", "-brief", filepath.Join("..", "pattern", "testdata", "poncho.json"), "-gauge", "13 sts and 9 rows = 4 in", "-head", "30 in")
	require.Len(t, r.New[0].Faults, 1)
	require.Contains(t, r.New[0].Faults[0], "neck opening")
	require.Equal(t, r.New[0].Faults, r.Followed[0].Faults)
}

// TestByHand: size S of the default brief, worked on paper. At 14 sts and 11
// rows over 4 in its 193 sts are 193 · 4/14 in, half of them 27.571 in long, and
// its 33 rows are 12 in, four times 48 in round. New: twice 24 in are 168 sts, a
// multiple of 3 + 1 gives 166 or 169, so 169; 11 in are 30.25 rows, 3 more than
// a multiple of 3 gives 30. Half of 169 less 8 in (28 sts) is 56.5, so 56 pairs;
// less 1 in (3.5 sts) is 81.
func TestByHand(t *testing.T) {
	r := replyTo(t, "", "-gauge", mine)
	s, n := r.Followed[0], r.New[0]
	require.Equal(t, "27.571", s.Measures["length"])
	require.Equal(t, "48.000", s.Measures["round"])
	require.Equal(t, []int{169, 30, 9}, []int{n.Stitches, n.Rows, n.Repeats})
	require.Equal(t, map[string]int{"centre back": 81, "side": 56}, n.Pairs)
	require.Equal(t, "8.143", n.Measures["armhole depth"]) // (84.5 - 56) · 4/14
}

// TestSameGauge: at the pattern's own gauge nothing changes, and yarn is what it
// was, nothing less.
func TestSameGauge(t *testing.T) {
	r := replyTo(t, "", "-gauge", "16 sts and 12 rows = 4 in")
	want := []struct { // what the pattern program prints for this brief
		stitches, rows, skeins int
		length                 string
	}{{193, 33, 6, "1108.08"}, {196, 36, 7, "1227.07"}, {199, 39, 7, "1349.12"}, {208, 45, 9, "1626.12"}}
	for i, w := range want {
		require.Equal(t, r.Followed[i].Pattern, r.Followed[i].Measures)
		require.Equal(t, r.New[i].Measures, r.Followed[i].Measures)
		require.Equal(t, r.New[i].Yarn, r.Followed[i].Yarn)
		y := r.New[i].Yarn[0]
		require.Equal(t, w.stitches, r.New[i].Stitches)
		require.Equal(t, w.rows, r.New[i].Rows)
		require.Equal(t, w.skeins, y.Skeins)
		require.Equal(t, w.length, y.Length)
		require.Equal(t, "0.00", y.Less)
	}
}

// TestFollow: at its own gauge every ready garment is rebuilt as it was; at
// twice the gauge in both directions every measure is half of what it was.
func TestFollow(t *testing.T) {
	own, fine := gauge.MustGauge("16 sts and 12 rows = 4 in"), gauge.MustGauge("32 sts and 24 rows = 4 in")
	half, err := gauge.Share(1, 2)
	require.NoError(t, err)
	in := func(s string) gauge.Measurement { return gauge.MustLength(s).Measurement() }
	for _, crosswise := range []bool{false, true} {
		panel := layout.Rectangle{Stitches: 193, Rows: 33, Gauge: own}
		short := layout.Rectangle{Stitches: 97, Rows: 66, Gauge: own}
		sleeve := layout.Rectangle{Stitches: 60, Rows: 51, Gauge: own}
		if crosswise {
			panel = layout.Rectangle{Stitches: 44, Rows: 145, Gauge: own, Crosswise: true}
			short = layout.Rectangle{Stitches: 88, Rows: 73, Gauge: own, Crosswise: true}
			sleeve = layout.Rectangle{Stitches: 66, Rows: 45, Gauge: own, Crosswise: true}
		}
		for name, sew := range map[string]func() (seam.Garment, error){
			"open front":   seam.OpenFront{Panel: panel, NeckDrop: in("1 in"), ArmholeDepth: in("8 in"), Slit: in("2 in")}.Sew,
			"closed front": seam.ClosedFront{Panel: panel, NeckDrop: in("1 in"), NeckDepth: in("5 in"), ArmholeDepth: in("8 in")}.Sew,
			"front and back": seam.FrontAndBack{Panel: short, NeckWidth: in("10 in"), ArmholeDepth: in("8 1/4 in"),
				Sleeve: &sleeve}.Sew,
			"open sides": seam.FrontAndBack{Panel: short, NeckWidth: in("10 in")}.Sew,
			"cocoon":     seam.Cocoon{Panel: panel, ArmholeDepth: in("8 in")}.Sew,
			"poncho":     seam.Poncho{Panel: panel}.Sew,
		} {
			t.Run(name, func(t *testing.T) {
				g, err := sew()
				require.NoError(t, err)
				same, err := follow(g, own)
				require.NoError(t, err)
				require.Empty(t, cmp.Diff(g.Layout, same))
				small, err := follow(g, fine)
				require.NoError(t, err)
				require.NotEmpty(t, small.Measures)
				for i, m := range g.Layout.Measures {
					require.Equal(t, m.Name, small.Measures[i].Name)
					require.True(t, m.Length.Times(half).Equal(small.Measures[i].Length), m.Name)
				}
			})
		}
	}
	_, err = follow(seam.Garment{Layout: layout.Layout{Name: "tent", Pieces: []layout.Piece{{}}}}, own)
	require.EqualError(t, err, "layout: tent at another gauge is not worked out")
}

// TestWanted: the nearest size is told by its round at her gauge, a tie by both.
func TestWanted(t *testing.T) {
	for _, c := range []struct {
		name, round string
		args        []string
		nearest     []string
		new         string // round
	}{
		{"just size S", "48.000", []string{"-round", "48 in"}, []string{"S"}, "48.000"},
		{"between", "50.000", []string{"-round", "50 in"}, []string{"S"}, "48.000"},
		{"body and ease", "46.000", []string{"-body", "37 in", "-ease", "9 in"}, []string{"S"}, "48.000"},
		{"body and the pattern's ease", "47.000", []string{"-body", "37 in"}, []string{"S"}, "48.000"},
		{"body and a share", "45.000", []string{"-body", "36 in", "-ease", "25%"}, []string{"S"}, "43.636"},
		{"no ease", "60.000", []string{"-body", "60 in", "-ease", "0%"}, []string{"L"}, "61.091"},
		{"in centimetres", "57.087", []string{"-round", "145 cm"}, []string{"L"}, "56.727"},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := replyTo(t, "", append([]string{"-gauge", mine}, c.args...)...)
			require.Equal(t, c.round, r.Wanted.Round)
			require.Equal(t, c.nearest, r.Wanted.Nearest)
			require.Len(t, r.New, 1)
			require.Equal(t, c.new, r.New[0].Measures["round"])
		})
	}
	// 33 and 36 rows at 12 over 4 in are 44 and 48 in: 46 in is the middle.
	r := replyTo(t, "", "-gauge", "14 sts and 12 rows = 4 in", "-round", "46 in")
	require.Equal(t, []string{"S", "M"}, r.Wanted.Nearest)
	require.Equal(t, "M", r.New[0].Label, "a tie goes to the larger")
}

// TestNearestThatFits: a size that can't be put on is told only where none can,
// and with that word.
func TestNearestThatFits(t *testing.T) {
	// At 24 and 15 over 4 in XL–2X comes out 48 in round, and its armhole 13.333 in
	// for an arm of 15.5 in; L, 41.6 in, goes on.
	args := []string{"-gauge", "24 sts and 15 rows = 4 in", "-round", "48 in"}
	r := replyTo(t, "", args...)
	require.Equal(t, []string{"L"}, r.Wanted.Nearest)
	require.True(t, r.Wanted.Fits)
	code, out, errs := cli("", args...)
	require.Equal(t, 0, code, errs)
	require.Contains(t, out, "Of the sizes that fit as they are written this one comes nearest: Size L,")

	r = replyTo(t, "", append(args, "-arm", "20 in")...)
	require.Equal(t, []string{"XL–2X"}, r.Wanted.Nearest)
	require.False(t, r.Wanted.Fits)
	code, out, errs = cli("", append(args, "-arm", "20 in")...)
	require.Equal(t, 0, code, errs)
	require.Contains(t, out, "No size fits as it is written. Of all this one comes nearest: Size XL–2X,")
	require.Contains(t, out, " But it would not fit: the armhole round is 13¼ in [34 cm], and the upper arm is 20 in [51 cm].\n")
}

// TestTies: however many sizes come equally near, none is counted wrong. With 30
// rows in the repeat all three are of 32 rows.
func TestTies(t *testing.T) {
	repeat := slices.Repeat([]string{"hdc in each st across"}, 30)
	in := changedAll(t, map[string]any{"sizes": [][]string{{"S"}, {"M"}, {"L"}}, "length": "24 in", "armhole_depth": "9 in",
		"rows": map[string][]string{"opening": {"fhdc", "hdc in each st across"}, "repeat": repeat, "closing": {}}})
	args := []string{"-brief", "-", "-gauge", mine, "-round", "40 in"}
	require.Equal(t, []string{"S", "M", "L"}, replyTo(t, in, args...).Wanted.Nearest)
	code, out, errs := cli(in, args...)
	require.Equal(t, 0, code, errs)
	require.Contains(t, out, "Of the sizes as they are written these come equally near:\n")
}

// TestOpenings: in every layout and direction no opening that the text names is
// smaller than asked, and none larger by more than it says.
func TestOpenings(t *testing.T) {
	for _, c := range []struct {
		name, crosswise string
		says, says2     string // lengthwise, crosswise
	}{
		{"closed-front", "", "each may be deeper by less than a stitch.", "each may be deeper by less than a row."},
		{"front-and-back", "", "an armhole may be deeper by less than a stitch, and the neck wider by less than two rows.", "an armhole may be deeper by less than a row, and the neck wider by less than two stitches."},
		{"cocoon", "", "it may be deeper by less than a stitch.", "it may be deeper by less than a row."},
		{"poncho", "", "so it may be larger; its round stands above.", "so it may be larger; its round stands above."},
	} {
		for i, says := range []string{c.says, c.says2} {
			b, err := variant.Open(filepath.Join("..", "pattern", "testdata", c.name+".json"), nil, nil)
			require.NoError(t, err)
			b = b.With("direction", []string{"lengthwise", "crosswise"}[i]).Without("worked_gauge")
			told := 0
			for _, gauges := range []string{"12 sts and 8.5 rows = 4 in", "14.5 sts and 11 rows = 4 in", "17 sts and 13 rows = 10 cm", "16.25 sts and 9.5 rows = 4 in"} {
				g, err := b.With("gauge", gauges).Make()
				if err != nil {
					continue // it would not fit
				}
				for at, s := range g.Sizes {
					text := openings(s)
					require.Contains(t, text, says)
					told++
					p := s.Sewn.Layout.Pieces[0]
					along, across := p.Over(layout.Bottom), p.Over(layout.Left)
					for _, o := range []struct {
						field, measure string
						over           gauge.Over
						less           int
					}{{"armhole_depth", "armhole depth", across, 1}, {"neck_depth", "neck depth", across, 1}, {"neck_drop", "neck drop", across, 1}, {"neck_width", "neck width", along, 2}, {"neck_round", "neck round", along, 1 << 20}} {
						if !g.Given(o.field) {
							continue
						}
						more, err := o.over.Exact(s.Measure(o.measure).Sub(g.At(o.field, at)))
						require.NoError(t, err)
						require.GreaterOrEqual(t, more.Sign(), 0, "%s %s", c.name, o.field)
						require.Less(t, more.Cmp(gauge.Int(o.less)), 0, "%s %s", c.name, o.field)
					}
				}
			}
			require.Positive(t, told, c.name)
		}
	}
}

// TestInWords: what can't be worn is told in the units of the pattern and with
// what would help, never in the names of the library.
func TestInWords(t *testing.T) {
	file := func(name string) string { return filepath.Join("..", "pattern", "testdata", name+".json") }
	for _, c := range []struct {
		name string
		args []string
		want string
	}{
		{"neck too small", []string{"-brief", file("closed-front"), "-gauge", "13.25 sts and 9 rows = 4 in", "-head", "26 in"},
			"With a neck depth of 11¾ in [30 cm] or more in the brief it would pass."},
		{"neck of a poncho", []string{"-brief", file("poncho"), "-gauge", "13 sts and 9 rows = 4 in", "-head", "75 cm"},
			"With a neck round of 29¾ in [75.5 cm] or more in the brief it would pass."},
		{"arms of all sizes", []string{"-gauge", mine, "-arm", "20 in"}, "With -size beside -arm the armhole becomes deep enough."},
	} {
		t.Run(c.name, func(t *testing.T) {
			code, out, errs := cli("", c.args...)
			require.Equal(t, 0, code, errs)
			require.Contains(t, out, c.want)
		})
	}
	t.Run("lost", func(t *testing.T) {
		// 2 (9 1/4 + 1 1/4) in are 21 in: only what is lost to whole pairs lets a head of
		// 22 in through, at 24 sts less of it than at 13.
		in := changedAll(t, map[string]any{"layout": "closed front", "units": "cm", "gauge": "13 sts and 12 rows = 4 in", "length": "24 in", "neck_depth": "9 1/4 in", "neck_drop": "1 1/4 in", "head": "22 in",
			"rows": map[string][]string{"opening": {"fhdc", "hdc in each st across"}, "repeat": {"hdc in each st across"}, "closing": {}}})
		code, out, errs := cli(in, "-brief", "-", "-gauge", "24 sts and 15 rows = 4 in")
		require.Equal(t, 0, code, errs)
		require.Contains(t, out, "Size S has no numbers that would fit at your gauge: the neck opening is 54 cm [21¼ in], and the head is 56 cm [22 in]."+
			" With a neck depth of 25 cm [9¾ in] or more in the brief it would pass.\n")
	})
	t.Run("near", func(t *testing.T) {
		code, out, errs := cli(changed(t, "units", "cm"), "-brief", "-", "-gauge", mine, "-arm", "47.2 cm")
		require.Equal(t, 0, code, errs)
		require.Contains(t, out, "Size S would not fit: the armhole round is 47.17 cm [18.57 in], and the upper arm is 47.20 cm [18.58 in].\n")
	})
	t.Run("no pair", func(t *testing.T) {
		in := changedAll(t, map[string]any{"units": "cm", "length": "9 in", "armhole_depth": "8 in"})
		code, out, errs := cli(in, "-brief", "-", "-gauge", "3 sts and 12 rows = 4 in")
		require.Equal(t, 0, code, errs)
		require.Contains(t, out, "Size S has no numbers at your gauge: with the armhole depth of 20.5 cm [8 in] no pair is left to join.\n")
	})
}

// TestYarnNotes: nothing is said of yarn for garments that can't be made, and
// nothing to spare is not 0%.
func TestYarnNotes(t *testing.T) {
	in := plainBrief(map[string]string{"length": "100 m", "mass": "50 g"}, "6 g") // nothing to spare
	code, out, errs := cli(in, "-brief", "-", "-gauge", "9 sts and 9 rows = 10 cm")
	require.Equal(t, 0, code, errs)
	require.Contains(t, out, "Nothing is kept to spare, as in the pattern. Buy all skeins of one dye lot.")
	require.Contains(t, out, "The fabric is reckoned from")
	code, out, errs = cli(in, "-brief", "-", "-gauge", "10 sts = 10 cm, 10 rows = 10 cm") // the same in other words
	require.Equal(t, 0, code, errs)
	require.NotContains(t, out, "The fabric is reckoned from")

	code, out, errs = cli("", "-brief", filepath.Join("..", "pattern", "testdata", "front-and-back.json"), "-gauge", "60 sts and 14 rows = 4 in", "-body", "8 in", "-ease", "2 in")
	require.Equal(t, 0, code, errs)
	require.Contains(t, out, "has no numbers")
	require.NotContains(t, out, "## Yarn")
	require.NotContains(t, out, "to spare")
	require.NotContains(t, out, "The fabric is reckoned from")
}

// TestMoreJSON: the hem slit and the reasons are there as well.
func TestMoreJSON(t *testing.T) {
	file := filepath.Join("..", "pattern", "testdata", "closed-front.json")
	r := replyTo(t, "", "-brief", file, "-gauge", "14 sts and 9 rows = 4 in")
	require.Equal(t, 11, r.New[0].Slit) // 3 in are 10.5 sts
	require.Empty(t, r.New[0].Why)
	r = replyTo(t, "", "-brief", file, "-gauge", "14 sts and 9 rows = 4 in", "-why")
	require.Contains(t, r.New[0].Why[0], "Stitches: ")
	require.Greater(t, len(r.New[3].Why), 5)
}

// TestArm: an armhole that her arm does not pass is told, and made deeper where
// one size is worked out for her.
func TestArm(t *testing.T) {
	r := replyTo(t, "", "-gauge", mine, "-arm", "20 in")
	require.Equal(t, []string{"armhole round 18.571 in (47.171 cm) is less than upper arm 20 in (50.8 cm)"}, r.Followed[0].Faults)
	require.Empty(t, r.Followed[3].Faults)
	require.Equal(t, []string{"armhole round 16.286 in (41.366 cm) is less than upper arm 20 in (50.8 cm)"}, r.New[0].Faults)

	r = replyTo(t, "", "-gauge", mine, "-arm", "20 in", "-size", "S")
	require.Empty(t, r.New[0].Faults)
	require.Equal(t, 49, r.New[0].Pairs["side"]) // 84.5 less 10 in, which are 35 sts
	require.Equal(t, "10.143", r.New[0].Measures["armhole depth"])

	r = replyTo(t, "", "-gauge", mine, "-arm", "10 in", "-size", "S")
	require.Equal(t, 56, r.New[0].Pairs["side"], "the pattern's depth is kept where it will do")
}

// TestCounts: published questions about another gauge, by the numbers retold
// beside each.
func TestCounts(t *testing.T) {
	for _, c := range []struct {
		name, source, pattern, mine, counts string
		want                                []int
	}{
		// 98 sts at 5 to the inch, and a neck of 30, at 6.5: 127.4 and 39, of one parity.
		{"parity shared", "https://annbuddknits.com/blog/page/87/", "5 sts = 1 in, 8 rows = 1 in", "6.5 sts = 1 in, 8 rows = 1 in", "98, 30 sts", []int{127, 39}},
		// The same with a neck of 31, which is 40.3: odd and even before, so each for itself.
		{"parity not shared", "the same", "5 sts = 1 in, 8 rows = 1 in", "6.5 sts = 1 in, 8 rows = 1 in", "98, 31 sts", []int{127, 40}},
		// 96 (102) at 5 to the inch in a multiple of 6, at 4; and 102 the other way round.
		{"multiple of 6", "https://qctester.wordpress.com/2010/04/21/knitting-notes-gauge-conversion-yours-theirs/", "5 sts = 1 in, 8 rows = 1 in", "4 sts = 1 in, 8 rows = 1 in", "96 (102) sts, multiple of 6", []int{78, 84}},
		{"multiple of 6, back", "the same", "4 sts = 1 in, 8 rows = 1 in", "5 sts = 1 in, 8 rows = 1 in", "102 sts, multiple of 6", []int{126}},
		// 18 1/4 in of hdc are 73 sts at 16 to 4 in and 63.875 at 14.
		{"looser hook", "http://www.yarnspirations.com/blog/gauge-hooks-progress", "16 sts and 12 rows = 4 in", mine, "73 sts", []int{64}},
		// 60 sts that were to be 50 in wide always came out 35 in.
		{"throw", "https://kayewer.net/2018/12/16/by-hook", "60 sts = 50 in, 8 rows = 4 in", "60 sts = 35 in, 8 rows = 4 in", "60 sts", []int{86}},
		// 127 sts that were to be half of 41 in, at 25 to 4.5 in.
		{"pullover", "https://yarnontheside.blogspot.com/2012_12_03_archive.html", "127 sts = 20.5 in, 8 rows = 1 in", "25 sts = 4.5 in, 8 rows = 1 in", "127 sts", []int{114}},
		// 72 rows at 8 to the inch, 9 in deep, worked at 6 to the inch.
		{"yoke", "http://feistyknitter.blogspot.com/2015/12/three-steps-forward.html", "5 sts = 1 in, 8 rows = 1 in", "5 sts = 1 in, 6 rows = 1 in", "72 rows", []int{54}},
		// 14 in at 26 rows to 4 in are 91 rows; at 7 to the inch 98.
		{"body", "http://mariknits.com/2013/08/ginnys-cardigan-kal-getting-ready.html", "5 sts = 1 in, 26 rows = 4 in", "5 sts = 1 in, 7 rows = 1 in", "91 rows", []int{98}},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := replyTo(t, changed(t, "gauge", c.pattern), "-brief", "-", "-gauge", c.mine, "-counts", c.counts)
			var got []int
			for _, n := range r.Counts[0].New {
				got = append(got, n.Value)
			}
			require.Equal(t, c.want, got, c.source)
		})
	}
}

// TestOneCount: one stitch is a stitch.
func TestOneCount(t *testing.T) {
	code, out, errs := cli("", "-gauge", mine, "-counts", "1 sts", "-counts", "1 rows", "-counts", "16, 30 sts")
	require.Equal(t, 0, code, errs)
	require.Contains(t, out, "- 1 sts: now 1 stitch.\n")
	require.Contains(t, out, "- 1 rows: now 1 row.\n")
	require.Contains(t, out, "- 16, 30 sts: now 14 (26) stitches,")
}

// TestHook: below 1% no hook is advised, and a difference is never 0%.
func TestHook(t *testing.T) {
	const larger, smaller = "A larger hook brings", "A smaller hook brings"
	for _, c := range []struct{ gauge, says, hook string }{
		{"15.75 sts = 10 cm, 12 rows = 4 in", "the same number of stitches comes out less than 0.1% shorter.", ""}, // 16.002 over 4 in
		{"15.9 sts and 12 rows = 4 in", "comes out 0.6% longer.", ""},
		{"15.84 sts and 12 rows = 4 in", "comes out 1% longer.", smaller}, // 16/15.84 is 1.0101
		{"16.3 sts and 12.3 rows = 4 in", "comes out 1.8% shorter.", larger},
		{"15 sts and 12.01 rows = 4 in", "comes out 0.1% less tall.", smaller},
		{"15 sts and 13 rows = 4 in", "comes out 6.7% longer.", ""}, // one looser, one tighter
		{"16 sts and 12 rows = 4 in", "comes out the same.", ""},
	} {
		code, out, errs := cli("", "-gauge", c.gauge)
		require.Equal(t, 0, code, errs)
		require.Contains(t, out, c.says, c.gauge)
		require.NotContains(t, out, " 0%", c.gauge)
		for _, hook := range []string{larger, smaller} {
			require.Equal(t, c.hook == hook, strings.Contains(out, hook), c.gauge)
		}
	}
	code, out, errs := cli("", "-gauge", mine, "-label", "200.01 yd = 100 g")
	require.Equal(t, 0, code, errs)
	require.Contains(t, out, "Your yarn has less than 0.1% more length to the mass")
}

// TestRule: how the rule of the rows is told.
func TestRule(t *testing.T) {
	mesh := func(rep string) string {
		return changed(t, "rows", map[string][]string{"opening": {"fhdc"}, "closing": {},
			"repeat": {rep, "hdc in each st and in each ch-1 sp across"}})
	}
	code, out, errs := cli(mesh("dc in first st, *ch 1, sk 1, dc in next st; rep from * across"), "-brief", "-", "-gauge", mine)
	require.Equal(t, 0, code, errs)
	require.Contains(t, out, "- Stitches in a row, odd, as the rows need it: ")
	code, out, errs = cli("", "-gauge", mine)
	require.Equal(t, 0, code, errs)
	require.Contains(t, out, "- Stitches in a row, a multiple of 3 + 1, as the rows need it: ")
}

// TestShortCount: a count over 2 in is known to about half a stitch
// (https://wlsmakesstuff.com/blog-of-making-stuff/technical-twists-gauge).
func TestShortCount(t *testing.T) {
	for _, c := range []struct{ over, want string }{
		{"7 over 2 in", " You counted over 2 in only, where a half more or less is 7.1%; count over 10 cm or 4 in if you can."},
		{"10 over 5 cm", " You counted over 5 cm only, where a half more or less is 5%; count over 10 cm or 4 in if you can."},
		{"2 repeats of 8 over 3.5 in", " You counted over 3.5 in only, where a half more or less is 3.1%; count over 10 cm or 4 in if you can."},
		{"20 over 10 cm", ""},
		{"14 over 4 in", ""},
	} {
		o, err := gauge.ParseOver(c.over)
		require.NoError(t, err)
		require.Equal(t, c.want, short(o), c.over)
	}
}

// changed returns the default brief with one field set to a text or a value.
func changed(t *testing.T, field string, value any) string {
	t.Helper()
	return changedAll(t, map[string]any{field: value})
}

// changedAll returns the default brief with some fields set.
func changedAll(t *testing.T, with map[string]any) string {
	t.Helper()
	var fields map[string]any
	require.NoError(t, json.Unmarshal(quaysideWrap, &fields))
	maps.Copy(fields, with)
	out, err := json.Marshal(fields)
	require.NoError(t, err)
	return string(out)
}

// plainBrief is a garment of 5000 cm² that takes a known mass: two panels of 100
// sts and 25 rows at 10 and 10 over 10 cm, no seams, nothing to spare.
func plainBrief(label map[string]string, gramsOf100cm2 string) string {
	out, _ := json.Marshal(map[string]any{
		"name": "Plain", "terms": "US", "units": "cm", "gauge": "10 sts and 10 rows = 10 cm", "hook": "6 mm", "chart": "child", "sizes": [][]string{{"4"}},
		"ease": "41.5 cm", "layout": "open front", "length": "50 cm", "armhole_depth": "12 cm", "neck_drop": "3 cm",
		"rows": map[string]any{"opening": []string{"fhdc"}, "repeat": []string{"hdc in each st across"}, "closing": []string{}},
		"yarn": map[string]any{"name": "plain", "fibre": "wool", "label": label, "swatch": map[string]string{"width": "10 cm", "height": "10 cm", "mass": gramsOf100cm2},
			"margin": "0%", "seam_factor": "0", "tail_end": "0 cm"},
	})
	return string(out)
}

// TestOtherYarn: substitution by length, from a magazine and two shops
// (http://knitsimplemag.com/Pattern-Reading/substituting-yarn and
// https://help.loveknitting.com/hc/en-gb/articles/201588193-Substituting-yarn-how-many-balls-of-yarn-do-I-need-
// and http://cebuana80.blogspot.com/2015/01/yarn-substitution-in-crochet-and.html).
func TestOtherYarn(t *testing.T) {
	same := "10 sts and 10 rows = 10 cm"
	for _, c := range []struct {
		name, length, mass, swatch string // of the pattern: a skein, and 100 cm² of fabric
		labels                     []string
		lengths                    []string
		skeins                     []int
	}{
		{"9 balls of 200 yd", "200 yd", "100 g", "18 g", []string{"109 yd = 50 g"}, []string{"1800.00"}, []int{17}},
		{"the same in metres", "200 yd", "100 g", "18 g", []string{"100 m = 50 g"}, []string{"1645.92"}, []int{17}},
		{"6 balls of 100 m", "100 m", "50 g", "6 g", []string{"150 m = 50 g"}, []string{"600.00"}, []int{4}},
		{"6 balls of 100 m, shorter", "100 m", "50 g", "6 g", []string{"90 m = 50 g"}, []string{"600.00"}, []int{7}},
		{"5 balls of 338 m", "338 m", "100 g", "10 g", []string{"124 m = 50 g"}, []string{"1690.00"}, []int{14}},
		{"doubled", "100 m", "50 g", "6 g", []string{"300 m = 50 g", "300 m = 50 g"}, []string{"1200.00"}, []int{4}},
		{"two held together", "100 m", "50 g", "6 g", []string{"200 m = 50 g", "450 m = 25 g"}, []string{"600.00", "600.00"}, []int{3, 2}},
	} {
		t.Run(c.name, func(t *testing.T) {
			args := []string{"-brief", "-", "-gauge", same}
			for _, l := range c.labels {
				args = append(args, "-label", l)
			}
			r := replyTo(t, plainBrief(map[string]string{"length": c.length, "mass": c.mass}, c.swatch), args...)
			require.Equal(t, r.New[0].Yarn, r.Followed[0].Yarn)
			require.Len(t, r.New[0].Yarn, len(c.skeins))
			for i, y := range r.New[0].Yarn {
				require.Equal(t, c.skeins[i], y.Skeins)
				require.Equal(t, c.lengths[i], y.Length)
			}
		})
	}
}

// TestSwatch: her own swatch decides. 5000 cm² at 8 g for 100 cm² are 400 g; with
// two strands of 200 m and 400 m to 100 g, 1 m of both weighs 0.75 g.
func TestSwatch(t *testing.T) {
	in := plainBrief(map[string]string{"length": "100 m", "mass": "50 g"}, "6 g")
	same := "10 sts and 10 rows = 10 cm"
	for _, c := range []struct {
		name   string
		args   []string
		length []string
	}{
		{"weighed", []string{"-swatch", "10 cm x 10 cm = 8 g"}, []string{"800.00"}}, // the pattern's yarn, 2 m to the gram
		{"weighed, her yarn", []string{"-swatch", "20 cm × 5 cm = 8 g", "-label", "150 m = 50 g"}, []string{"1200.00"}},
		{"unravelled", []string{"-swatch", "10 cm x 10 cm = 20 m", "-label", "150 m = 50 g"}, []string{"1000.00"}},
		{"held together", []string{"-swatch", "10 cm x 10 cm = 8 g", "-label", "200 m = 100 g", "-label", "400 m = 100 g"}, []string{"533.33", "533.33"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := replyTo(t, in, append([]string{"-brief", "-", "-gauge", same}, c.args...)...)
			var got []string
			for _, y := range r.New[0].Yarn {
				got = append(got, y.Length)
				require.Equal(t, "0.00", y.Less)
			}
			require.Equal(t, c.length, got)
		})
	}
}

// TestCannotBeFollowed: sizes that can't be sewn, can't be put on or have no
// numbers are told, and the others are given.
func TestCannotBeFollowed(t *testing.T) {
	r := replyTo(t, "", "-gauge", "24 sts and 15 rows = 4 in")
	require.Equal(t, []string{"armhole round 13.333 in (33.867 cm) is less than upper arm 15.5 in (39.37 cm)"}, r.Followed[3].Faults)
	require.Empty(t, r.Followed[2].Faults)

	// A mesh over 41 sts: twice 24 in are 12 sts at 1 st over 4 in, and it needs 42.
	mesh := changed(t, "rows", map[string][]string{"opening": {"fhdc"}, "closing": {},
		"repeat": {"dc in first st, *ch 40, sk 40, dc in next st; rep from * across", "hdc in each st and 40 hdc in each ch-40 sp across"}})
	r = replyTo(t, mesh, "-brief", "-", "-gauge", "1 st = 4 in, 12 rows = 4 in")
	require.Empty(t, r.New)
	require.Len(t, r.Without, 4)
	code, out, errs := cli(mesh, "-brief", "-", "-gauge", "1 st = 4 in, 12 rows = 4 in")
	require.Equal(t, 0, code, errs)
	require.Contains(t, out, "Size S has no numbers at your gauge: length: 12 sts long, and the rows need at least 42.")
	require.NotContains(t, out, "Panel (make 2)")
}

// TestCannotBeSewn: with more rows and fewer stitches the sleeve no longer fits
// the armhole, so no size can be followed; the new numbers can.
func TestCannotBeSewn(t *testing.T) {
	args := []string{"-brief", filepath.Join("..", "pattern", "testdata", "front-and-back.json"), "-gauge", "10 sts and 14 rows = 4 in"}
	r := replyTo(t, "", append(args, "-round", "50 in")...)
	for _, f := range r.Followed {
		require.Len(t, f.Faults, 1)
		require.Empty(t, f.Measures)
		require.Empty(t, f.Yarn)
	}
	require.Empty(t, r.Wanted.Nearest)
	require.Len(t, r.New, 1)
	code, out, errs := cli("", append(args, "-round", "50 in")...)
	require.Equal(t, 0, code, errs)
	require.Contains(t, out, "Size M–L cannot be sewn together with the pattern's numbers at your gauge: the sleeve at its top would be 12¾ in [32.5 cm] and the armhole 26½ in [67 cm]; they may differ by a tenth at most. With the new numbers it can.\n")
	require.Contains(t, out, "No size can be followed as it is written.\n")
	require.NotContains(t, out, "Following the pattern")
	require.Contains(t, out, "With the new numbers, size ")
}

func TestBadFlags(t *testing.T) {
	g := func(args ...string) []string { return append([]string{"-gauge", mine}, args...) }
	long := strings.Repeat("9", 20_000)
	for _, c := range []struct {
		name string
		args []string
		want string
	}{
		{"no gauge", nil, `-gauge: missing; want your gauge, "14 sts and 11 rows = 4 in"`},
		{"gauge of nothing", []string{"-gauge", "0 sts and 11 rows = 4 in"}, ``},
		{"gauge over nothing", []string{"-gauge", "14 sts and 11 rows = 0 in"}, ``},
		{"gauge without rows", []string{"-gauge", "14 sts = 4 in"}, ``},
		{"gauge in no unit", []string{"-gauge", "14 sts and 11 rows = 4 inn"}, `-gauge: "14 sts and 11 rows = 4 inn": unknown unit "inn"`},
		{"gauge with an exponent", []string{"-gauge", "1e1000000000 sts and 11 rows = 4 in"}, ``},
		{"gauge too long", []string{"-gauge", long}, ``},
		{"round of nothing", g("-round", "0 in"), `-round: "0 in": want more than 0`},
		{"negative round", g("-round", "-4 in"), `-round: "-4 in": want more than 0`},
		{"round without unit", g("-round", "48"), ``},
		{"round with many places", g("-round", "46.1234567890123456789012 in"), ``},
		{"round and body", g("-round", "48 in", "-body", "38 in"), `-round: given beside -body; want one of them`},
		{"ease without body", g("-ease", "4 in"), `-ease: given without -body; want your chest as well`},
		{"ease of minus all", g("-body", "38 in", "-ease", "-100%"), ``},
		{"ease that leaves nothing", g("-body", "38 in", "-ease", "-40 in"), `-ease: -40 in leaves nothing of a chest of 38 in`},
		{"hostile round", g("-round", "1e999999999 in"), ``},
		{"round too long", g("-round", long+" in"), ``},
		{"arm", g("-arm", "thick"), ``},
		{"label without mass", g("-label", "200 m"), ``},
		{"label of nothing", g("-label", "0 m = 100 g"), ``},
		{"swatch without sides", g("-swatch", "15 g"), `-swatch: "15 g": want two sides and a mass: "6 in x 6 in = 15.5 g"`},
		{"swatch of nothing", g("-swatch", "6 in x 6 in = 0 g"), `-swatch: "6 in x 6 in = 0 g": want more than 0 after the =`},
		{"swatch of no height", g("-swatch", "6 in x 0 in = 15 g"), `-swatch: "6 in x 0 in = 15 g": want more than 0`},
		{"swatch of what", g("-swatch", "6 in x 6 in = heavy"), `-swatch: "6 in x 6 in = heavy": want a mass ("15.5 g") or a length of yarn ("32 yd") after the =`},
		{"swatch too heavy", g("-swatch", "0.001 mm x 0.001 mm = 900 kg"), ``},
		{"counts of nothing", g("-counts", "98"), `-counts: "98": want numbers and what they count: "98 (106) sts", "91 rows"`},
		{"counts without number", g("-counts", " , sts"), `-counts: " , sts": want a number before what it counts`},
		{"counts with a bad rule", g("-counts", "98 sts, multiple of many"), ``},
		{"counts too many", g("-counts", "100001 sts"), ``},
		{"counts beyond the most", []string{"-gauge", "1000 sts and 11 rows = 1 in", "-counts", "90000 sts"}, ``},
		{"counts too long", g("-counts", long+" sts"), ``},
		{"size", g("-size", "M-L"), `-size: got "M-L", want one of S, M, L, XL–2X`},
		{"empty size", g("-size", ""), `-size: "": empty`},
		{"gauge twice", g("-gauge", "15 sts and 11 rows = 4 in"), `-gauge: "15 sts and 11 rows = 4 in": given twice; want one`},
		{"body twice", g("-body", "38 in", "-body", "40 in"), `-body: "40 in": given twice; want one`},
		{"gauge beyond reason", []string{"-gauge", "14 sts and 11 rows = 100 m"}, `-gauge: size S takes more yarn than can be bought: got more than 100 km, want at most 100 km`},
		{"head without a neck", g("-head", "60 in"), `-head: an open front has no neck to go over it`},
		{"counts that break their rule", g("-counts", "7 sts, multiple of 6"), `-counts: "7 sts, multiple of 6": 7 is not a multiple of 6; want the rule that the pattern's numbers obey`},
		{"a count of several that does", g("-counts", "97 (102) sts, odd"), `-counts: "97 (102) sts, odd": 102 is not odd; want the rule that the pattern's numbers obey`},
		{"size too long", g("-size", long), ``},
		{"format", g("-format", "pdf"), `-format: got "pdf", want markdown or json`},
		{"no such file", g("-brief", "no-such-file.json"), ``},
		{"more words", g("extra"), `unexpected "extra" after the flags`},
		{"unknown flag", g("-nonsense"), `flag provided but not defined: -nonsense`},
		{"unknown flag, long", g("-" + long), ``},
		{"no value", []string{"-gauge"}, `flag needs an argument: -gauge`},
		{"many strands", g(strings.Split(strings.Repeat("-label,200 m = 50 g,", 17), ",")[:34]...), `-label: given 17 times, want at most 16 strands`},
	} {
		t.Run(c.name, func(t *testing.T) {
			refused(t, c.want, "", c.args...)
		})
	}
}

// refused checks that the program says one line and prints nothing.
func refused(t *testing.T, want, in string, args ...string) {
	t.Helper()
	code, out, errs := cli(in, args...)
	require.Equal(t, 2, code, out)
	require.Empty(t, out)
	require.Equal(t, 1, strings.Count(errs, "\n"), errs)
	require.Less(t, len(errs), 450)
	if want != "" {
		require.Equal(t, want+"\n", errs)
	} else {
		t.Log(errs)
	}
}

func TestBadBriefs(t *testing.T) {
	for _, c := range []struct{ name, in, want string }{
		{"empty", "", `brief: empty; want a JSON object with name, terms, units, gauge and so on`},
		{"cut off", string(quaysideWrap[:300]), ``},
		{"ease", changed(t, "ease", "9 inn"), `ease: "9 inn": unknown unit "inn"`},
		{"armhole", changed(t, "armhole_depth", "5 in"), ``},
		{"twice", `{"name": "a", "name": "b"}`, `name: given twice (line 1, column 21)`},
		{"long", strings.Repeat(" ", 3<<20), ``},
	} {
		t.Run(c.name, func(t *testing.T) { refused(t, c.want, c.in, "-brief", "-", "-gauge", mine) })
	}
}

// TestReadme: what the README shows is what the program prints.
func TestReadme(t *testing.T) {
	text, err := os.ReadFile("README.md")
	require.NoError(t, err)
	code, out, errs := cli("", "-gauge", mine, "-body", "37 in", "-ease", "9 in", "-arm", "17 1/2 in")
	require.Equal(t, 0, code, errs)
	shown := strings.Split(string(text), "\n```\n")
	require.Greater(t, len(shown), 3)
	for i := 1; i < len(shown); i += 2 {
		require.Contains(t, out, shown[i])
	}
}

func TestHelp(t *testing.T) {
	code, out, errs := cli("", "-h")
	require.Equal(t, 0, code)
	require.Empty(t, errs)
	require.Contains(t, out, "your gauge, washed and blocked")
}

// FuzzCounts: whatever stands in -counts is refused, or gives one new number for
// each, of one parity where the old ones are.
func FuzzCounts(f *testing.F) {
	for _, s := range []string{"98 (106) sts, multiple of 4 + 2", "98, 30 stitches", "91 rows, even", " sts", "1 row", "7, 9 st, up"} {
		f.Add(s)
	}
	pattern, hers := gauge.MustGauge("5 sts and 7 rows = 1 in"), gauge.MustGauge("6.5 sts = 2.5 cm, 9 rows = 1 in")
	f.Fuzz(func(t *testing.T, s string) {
		o, err := parseOthers(s)
		if err != nil {
			return
		}
		counts, err := o.at(pattern, hers)
		if err != nil {
			return
		}
		require.Len(t, counts, len(o.numbers))
		for _, c := range counts {
			if o.rule != nil {
				require.True(t, o.rule.Legal(c.Value), "%q gives %d", s, c.Value)
			} else if o.alike() {
				require.Equal(t, counts[0].Value%2, c.Value%2, "%q gives %v", s, counts)
			}
		}
	})
}

// FuzzSwatch: whatever stands in -swatch is refused, or a sound swatch.
func FuzzSwatch(f *testing.F) {
	for _, s := range []string{"6 in x 6 in = 15.5 g", "15 cm × 15cm=32 yd", "x=", "=x", "6 in x 6 in = 1/2 oz"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		if w, err := parseSwatch(s); err == nil {
			require.NoError(t, w.Validate(), "%q", s)
		}
	})
}
