package main

import (
	"bytes"
	"encoding/json"
	"flag"
	"maps"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.com/panelmath/examples/internal/variant"
	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the golden files")

// cli runs the program and returns what it printed.
func cli(in string, args ...string) (code int, out, errs string) {
	var stdout, stderr bytes.Buffer
	code = run(args, strings.NewReader(in), &stdout, &stderr)
	return code, stdout.String(), stderr.String()
}

// replyTo runs the program for its JSON.
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
		{"largest.md", []string{"-have", "4 skeins"}},
		{"wished.md", []string{"-have", "4 skeins and 10 g", "-size", "10"}},
		{"none.md", []string{"-have", "2.5 skeins", "-margin", "5%"}},
		{"lots.md", []string{"-have", "2 skeins", "-have", "1.8 skeins and 20 g", "-size", "4"}},
		{"other-yarn.md", []string{"-have", "240 yd", "-have", "140 g", "-label", "210 yd = 100 g"}},
		{"nothing.md", []string{"-have", "0 g"}},
		{"wished.json", []string{"-have", "4 skeins and 10 g", "-size", "10", "-format", "json"}},
	} {
		t.Run(c.golden, func(t *testing.T) {
			code, got, errs := cli("", c.args...)
			require.Equal(t, 0, code, errs)
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

// TestByHand: size 10 of the default brief with 525 m, worked on paper. Without
// the tenth to spare that is 477.27 m. Two panels of 167 sts and 24 rows are
// 4286.63 cm² and take 200.04 g or 500.11 m. With 158 sts they take 473.15 m and
// the seams, 75 and twice 50 pairs, 2.57 m and 0.91 m for the ends: 476.64 m in
// all. A stitch more is 2.99 m, too much. With 22 rows they take 458.43 m and
// the seams of 167 sts 3.68 m: 462.11 m.
func TestByHand(t *testing.T) {
	r := replyTo(t, "", "-have", "525 m", "-size", "10")
	require.Equal(t, "8", r.Largest)
	require.Equal(t, sizeResult{"10", "554.16", "-29.16", "without the spare"}, r.Sizes[3])
	shorter, narrower := r.Chosen.Ways[0], r.Chosen.Ways[1]
	require.Equal(t, []any{158, 24, 75, 50, "46.471"}, []any{shorter.Stitches, shorter.Rows, shorter.Pairs["centre back"], shorter.Pairs["side"], shorter.Measures["length"]})
	require.Equal(t, "524.31", shorter.Takes)
	require.Equal(t, []any{167, 22, 10, 80, 54, "80.000"}, []any{narrower.Stitches, narrower.Rows, *narrower.Repeats, narrower.Pairs["centre back"], narrower.Pairs["side"], narrower.Measures["round"]})
	require.Equal(t, "508.32", narrower.Takes)
}

// TestHave: all ways to say the same yarn.
func TestHave(t *testing.T) {
	for _, c := range []struct {
		name string
		args []string
		want string
	}{
		{"skeins", []string{"-have", "6 skeins"}, "750.00"},
		{"one", []string{"-have", "1 skein"}, "125.00"},
		{"part of a skein", []string{"-have", "2.5 skeins"}, "312.50"},
		{"a skein and a half", []string{"-have", "1½ skeins"}, "187.50"},
		{"half a skein", []string{"-have", "1/2 skein"}, "62.50"},
		{"two and three quarters", []string{"-have", "2 3/4 skeins and 1/2 oz"}, "379.19"}, // 14.1747615625 g
		{"less than one", []string{"-have", "0.3 skeins"}, "37.50"},
		{"mass", []string{"-have", "300 g"}, "750.00"},
		{"ounces", []string{"-have", "1 oz"}, "70.87"}, // 28.349523125 g
		{"length", []string{"-have", "750 m"}, "750.00"},
		{"yards", []string{"-have", "100 yd"}, "91.44"},
		{"a sum", []string{"-have", "4 skeins and 35 g + 10 m"}, "597.50"},
		{"given twice", []string{"-have", "4 skeins", "-have", "35 g", "-have", "10 m"}, "597.50"},
		{"her label", []string{"-have", "2 skeins and 25 g", "-label", "400 m = 100 g"}, "900.00"},
		{"nothing", []string{"-have", "0 skeins and 0 g and 0 m"}, "0.00"},
	} {
		t.Run(c.name, func(t *testing.T) {
			require.Equal(t, c.want, replyTo(t, "", c.args...).Have)
		})
	}
}

// TestEnough: just enough is enough, and a hair less is not.
func TestEnough(t *testing.T) {
	in := plainBrief(map[string]string{"length": "100 m", "mass": "50 g"}, "6 g", "10%") // 600 m and 60 m
	for _, c := range []struct{ have, enough, left, largest string }{
		{"660 m", "yes", "0.00", "4"},
		{"659.999 m", "without the spare", "0.00", ""},
		{"600 m", "without the spare", "-60.00", ""},
		{"599.999 m", "no", "-60.00", ""},
		{"700 m", "yes", "40.00", "4"},
	} {
		t.Run(c.have, func(t *testing.T) {
			r := replyTo(t, in, "-brief", "-", "-have", c.have)
			require.Equal(t, c.enough, r.Sizes[0].Enough)
			require.Equal(t, c.left, strings.Replace(r.Sizes[0].Left, "-0.00", "0.00", 1))
			require.Equal(t, c.largest, r.Largest)
		})
	}
	require.Equal(t, "yes", replyTo(t, in, "-brief", "-", "-have", "600 m", "-margin", "0%").Sizes[0].Enough)
}

// plainBrief is a garment of 5000 cm² that takes a known mass: two panels of 100
// sts and 25 rows at 10 and 10 over 10 cm, and no yarn for the seams.
func plainBrief(label map[string]string, gramsOf100cm2, margin string) string {
	out, _ := json.Marshal(map[string]any{
		"name": "Plain", "terms": "US", "units": "cm", "gauge": "10 sts and 10 rows = 10 cm", "hook": "6 mm", "chart": "child", "sizes": [][]string{{"4"}},
		"ease": "41.5 cm", "layout": "open front", "length": "50 cm", "armhole_depth": "12 cm", "neck_drop": "3 cm",
		"rows": map[string]any{"opening": []string{"fhdc"}, "repeat": []string{"hdc in each st across"}, "closing": []string{}},
		"yarn": map[string]any{"name": "plain", "fibre": "wool", "label": label, "swatch": map[string]string{"width": "10 cm", "height": "10 cm", "mass": gramsOf100cm2},
			"margin": margin, "seam_factor": "0", "tail_end": "0 cm"},
	})
	return string(out)
}

// TestOtherYarn: how many balls of another yarn are enough, from a magazine and
// two shops (http://knitsimplemag.com/Pattern-Reading/substituting-yarn and
// https://help.loveknitting.com/hc/en-gb/articles/201588193-Substituting-yarn-how-many-balls-of-yarn-do-I-need-
// and http://cebuana80.blogspot.com/2015/01/yarn-substitution-in-crochet-and.html).
func TestOtherYarn(t *testing.T) {
	for _, c := range []struct {
		name, length, mass, swatch string // of the pattern: a skein, and 100 cm² of fabric
		have, label, enough, left  string
	}{
		{"17 of 109 yd for 1800 yd", "200 yd", "100 g", "18 g", "17 skeins", "109 yd = 50 g", "yes", "53.00"},
		{"16 of 109 yd for 1800 yd", "200 yd", "100 g", "18 g", "16 skeins", "109 yd = 50 g", "no", "-56.00"},
		{"4 of 150 m for 600 m", "100 m", "50 g", "6 g", "4 skeins", "150 m = 50 g", "yes", "0.00"},
		{"6 of 90 m for 600 m", "100 m", "50 g", "6 g", "6 skeins", "90 m = 50 g", "no", "-60.00"},
		{"7 of 90 m for 600 m", "100 m", "50 g", "6 g", "7 skeins", "90 m = 50 g", "yes", "30.00"},
		{"13 of 124 m for 1690 m", "338 m", "100 g", "10 g", "13 skeins", "124 m = 50 g", "no", "-78.00"},
		{"14 of 124 m for 1690 m", "338 m", "100 g", "10 g", "14 skeins", "124 m = 50 g", "yes", "46.00"},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := replyTo(t, plainBrief(map[string]string{"length": c.length, "mass": c.mass}, c.swatch, "0%"), "-brief", "-", "-have", c.have, "-label", c.label)
			require.Equal(t, c.enough, r.Sizes[0].Enough)
			require.Equal(t, c.left, r.Sizes[0].Left)
		})
	}
}

// TestThrow: 6 skeins made 60 sts where 80 were wanted, which take exactly 8;
// the same way round, 6 skeins of 8 make 60 of 80 sts
// (https://kayewer.net/2018/12/16/by-hook).
func TestThrow(t *testing.T) {
	// 100 sts take 600 m, 6 m each; 450 m make 75 of them.
	in := plainBrief(map[string]string{"length": "100 m", "mass": "50 g"}, "6 g", "0%")
	r := replyTo(t, in, "-brief", "-", "-have", "450 m")
	require.Equal(t, 75, r.Chosen.Ways[0].Stitches)
	require.Equal(t, "0.00", r.Chosen.Ways[0].Left)
	require.Equal(t, "37.500", r.Chosen.Ways[0].Measures["length"])
	// 25 rows take 24 m each: 18 of them, with 18 m left.
	require.Equal(t, 18, r.Chosen.Ways[1].Rows)
	require.Equal(t, "18.00", r.Chosen.Ways[1].Left)
}

// TestRows: a plan without a repeat can't be made narrower, and the rows of the
// opening are always worked.
func TestRows(t *testing.T) {
	r := replyTo(t, "", "-have", "0 m")
	for _, w := range r.Chosen.Ways {
		require.False(t, w.Found, w.Name)
	}
	rows := map[string][]string{"opening": {"fhtr", "htr in each st across", "htr in each st across", "htr in each st across"}, "repeat": {}, "closing": {}}
	r = replyTo(t, changed(t, "rows", rows), "-brief", "-", "-have", "40 m")
	require.True(t, r.Chosen.Ways[0].Found)
	require.False(t, r.Chosen.Ways[1].Found)
}

// TestLayouts: every layout can be made with a tenth less yarn than it takes, in
// the ways that its fields allow.
func TestLayouts(t *testing.T) {
	for name, want := range map[string][]string{"closed-front": {"shorter", "narrower"}, "front-and-back": {"shorter", "narrower"},
		"cocoon": {"shorter", "narrower"}, "poncho": {"smaller"}, "one-size": {"shorter", "narrower"}, "uk-child": {"shorter", "narrower"}} {
		t.Run(name, func(t *testing.T) {
			file := filepath.Join("..", "pattern", "testdata", name+".json")
			b, err := variant.Open(file, nil, nil)
			require.NoError(t, err)
			g, err := b.Make()
			require.NoError(t, err)
			s := g.Sizes[len(g.Sizes)-1]
			nine, err := gauge.Share(9, 10)
			require.NoError(t, err)
			u := s.Yarn.Label.Length.Unit
			have := s.Yarn.Total.Times(nine).In(u)
			r := replyTo(t, "", "-brief", file, "-have", have.Text(2)+" "+u.String(), "-size", s.Group.Label())
			var names []string
			for _, w := range r.Chosen.Ways {
				names = append(names, w.Name)
				require.True(t, w.Found, w.Name)
				takes, err := gauge.ParseRatio(w.Takes)
				require.NoError(t, err)
				require.LessOrEqual(t, takes.Cmp(have), 0)
				require.Less(t, w.Stitches+w.Rows, s.Panel.Stitches.Value+s.Panel.Rows.Value)
			}
			require.Equal(t, want, names)
		})
	}
}

// TestLargest: in every layout, with a little to much of the yarn that it takes,
// the way found is the first that is enough when all counts are tried from the
// top, also where not every count between leaves an opening that fits.
func TestLargest(t *testing.T) {
	for _, c := range []struct {
		name, file string
		with       [][2]string
	}{
		{"closed front", "closed-front", nil},
		{"closed front, tight neck", "closed-front", [][2]string{{"neck_depth", "9 1/4 in"}}},
		{"front and back", "front-and-back", nil},
		{"front and back, wide neck", "front-and-back", [][2]string{{"neck_width", "13 1/4 in"}}},
		{"cocoon", "cocoon", nil},
		{"poncho", "poncho", nil},
		{"poncho, sides unlike where it is small", "poncho", [][2]string{{"direction", "crosswise"}, {"gauge", "20 sts and 10.5 rows = 4 in"}, {"neck_round", "24 in"}}},
		{"crosswise", "front-and-back", [][2]string{{"direction", "crosswise"}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			b, err := variant.Open(filepath.Join("..", "pattern", "testdata", c.file+".json"), nil, nil)
			require.NoError(t, err)
			b = b.Only(1)
			for _, w := range c.with {
				b = b.With(w[0], w[1])
			}
			b, err = b.Again()
			require.NoError(t, err)
			g, err := b.Make()
			require.NoError(t, err)
			for _, percent := range []int{95, 87, 80, 71, 62, 40, 25, 15} {
				share, err := gauge.Share(percent, 100)
				require.NoError(t, err)
				a := reply{Garment: g, label: g.Yarn.Label, margin: g.Yarn.Margin, have: g.Sizes[0].Yarn.Total.Times(share)}
				s, err := a.size(g.Sizes[0])
				require.NoError(t, err)
				for _, w := range screws(b, s) {
					measure, ok := s.Sewn.Layout.Measure(w.measure)
					require.True(t, ok)
					count, step := s.Panel.Rows.Value, len(a.Plan.Repeat)
					if w.stitches {
						count, step = s.Panel.Stitches.Value, s.Panel.Stitches.Rule.Multiple
					}
					want := way{name: w.name}
					for n := count; n > 0 && !want.found; n -= step {
						if made, err := a.at(b, w, measure, count, n); err == nil && made.left.Sign() >= 0 {
							want = way{w.name, made, true}
						}
					}
					got := a.turn(b, s, w, measure)
					require.Equal(t, want.found, got.found, "%s, %d%%", w.name, percent)
					require.Equal(t, want.Panel.Stitches.Value, got.Panel.Stitches.Value, "%s, %d%%", w.name, percent)
					require.Equal(t, want.Panel.Rows.Value, got.Panel.Rows.Value, "%s, %d%%", w.name, percent)
				}
			}
		})
	}
}

// TestTightNeck: at 13 sts over 4 in a neck 9 1/4 in deep in front and 1 1/4 in
// behind is 30.0625 and 4.0625 sts. With half of the stitches a whole number 31
// and 5 of them stay open, otherwise 30.5 and 4.5: 72 sts round are 22.2 in and
// pass a head of 22 in, 70 sts are 21.5 in and do not. So the count is even.
func TestTightNeck(t *testing.T) {
	in := changedFile(t, "closed-front", map[string]any{"sizes": [][]string{{"M", "L"}}, "length": "25 1/2 in", "armhole_depth": "10 in", "neck_depth": "9 1/4 in"})
	for _, c := range []struct {
		have     string
		stitches int
	}{{"5 skeins", 136}, {"6 skeins", 160}} {
		w := replyTo(t, in, "-brief", "-", "-have", c.have).Chosen.Ways[0]
		require.Equal(t, "shorter", w.Name)
		require.True(t, w.Found)
		require.Equal(t, c.stitches, w.Stitches)
	}
}

// changedFile returns a brief of the pattern program with some fields set.
func changedFile(t *testing.T, name string, with map[string]any) string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("..", "pattern", "testdata", name+".json"))
	require.NoError(t, err)
	var fields map[string]any
	require.NoError(t, json.Unmarshal(text, &fields))
	maps.Copy(fields, with)
	out, err := json.Marshal(fields)
	require.NoError(t, err)
	return string(out)
}

// TestTight: a cocoon or a poncho that no longer goes round the body says so, as
// a garment with ease does.
func TestTight(t *testing.T) {
	for _, c := range []struct{ name, have, line string }{
		{"cocoon", "1 skein", "- Body opening: "},
		{"poncho", "30 g", "- Hem round: "},
		{"closed-front", "2 skeins", "- Ease over the largest chest of the size: -"},
	} {
		t.Run(c.name, func(t *testing.T) {
			args := []string{"-brief", filepath.Join("..", "pattern", "testdata", c.name+".json"), "-have", c.have}
			ways := replyTo(t, "", args...).Chosen.Ways
			require.True(t, ways[len(ways)-1].Tight)
			code, out, errs := cli("", args...)
			require.Equal(t, 0, code, errs)
			found := false
			for line := range strings.Lines(out) {
				found = found || strings.HasPrefix(line, c.line) && strings.HasSuffix(line, "; it does not go round the body\n")
			}
			require.True(t, found, out)
		})
	}
	ways := replyTo(t, "", "-brief", filepath.Join("..", "pattern", "testdata", "cocoon.json"), "-have", "1 skein").Chosen.Ways
	require.False(t, ways[0].Tight, "shorter is as wide as it was")
}

// TestAbsent: a number of 0 is a number, and no size is none.
func TestAbsent(t *testing.T) {
	code, out, errs := cli("", "-have", "2 skeins", "-format", "json")
	require.Equal(t, 0, code, errs)
	require.NotContains(t, out, `"largest"`)
	code, out, errs = cli(plainBrief(map[string]string{"length": "100 m", "mass": "50 g"}, "6 g", "0%"), "-brief", "-", "-have", "24 m", "-format", "json")
	require.Equal(t, 0, code, errs)
	require.Contains(t, out, `"repeats": 0`)
}

// TestNothingToSpare: 0% is said in words.
func TestNothingToSpare(t *testing.T) {
	code, out, errs := cli("", "-have", "2 skeins", "-margin", "0%")
	require.Equal(t, 0, code, errs)
	require.NotContains(t, out, " 0%")
	require.Contains(t, out, "| Takes, with nothing to spare |")
	require.Contains(t, out, ", with nothing kept to spare.")
}

// TestLots: 600 m in two panels of 300 m. The published case of two skeins of
// one lot and a third of another (http://knitsanctuary.blogspot.com/2012/03/because-of-my-recent-discovery-that-i.html
// and the shops above) asks for yarn per piece.
func TestLots(t *testing.T) {
	in := plainBrief(map[string]string{"length": "100 m", "mass": "50 g"}, "6 g", "0%")
	for _, c := range []struct {
		name string
		have []string
		lots string
	}{
		{"one each", []string{"300 m", "300 m"}, "left panel 1, right panel 2"},
		{"both from the second", []string{"299 m", "600 m"}, "left panel 2, right panel 2"},
		{"the odd lot left", []string{"300 m", "100 m", "300 m"}, "left panel 1, right panel 3"},
		{"a hair short", []string{"299.99 m", "300.01 m"}, "mixed"},
		{"one lot", []string{"600 m"}, ""},
		{"not enough", []string{"300 m", "200 m"}, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			args := []string{"-brief", "-"}
			for _, h := range c.have {
				args = append(args, "-have", h)
			}
			r := replyTo(t, in, args...)
			var got []string
			for _, l := range r.Lots {
				got = append(got, l.Piece+" "+l.Lot)
			}
			if r.Mixed != "" {
				got = append(got, "mixed")
			}
			require.Equal(t, c.lots, strings.Join(got, ", "))
		})
	}
}

// FuzzAmounts: whatever stands in -have is refused, or yarn that can be added up.
func FuzzAmounts(f *testing.F) {
	for _, s := range []string{"6 skeins", "2.5 skeins and 35 g", "900 yd", "1 skein + 20 1/2 in", "½ oz", "", "skeins", "0 skeins"} {
		f.Add(s)
	}
	label := yarn.MustLabel("125 m = 50 g")
	f.Fuzz(func(t *testing.T, s string) {
		amounts, err := parseAmounts(s)
		if err != nil {
			return
		}
		for _, a := range amounts {
			m, err := a.holding(label).Length()
			require.NoError(t, err, "%q", s)
			require.GreaterOrEqual(t, m.Sign(), 0, "%q", s)
		}
	})
}

// changed returns the default brief with one field set to a text or a value.
func changed(t *testing.T, field string, value any) string {
	t.Helper()
	var fields map[string]any
	require.NoError(t, json.Unmarshal(ferryJacket, &fields))
	fields[field] = value
	out, err := json.Marshal(fields)
	require.NoError(t, err)
	return string(out)
}

func TestBadFlags(t *testing.T) {
	h := func(args ...string) []string { return append([]string{"-have", "4 skeins"}, args...) }
	long := strings.Repeat("9", 20_000)
	for _, c := range []struct {
		name string
		args []string
		want string
	}{
		{"nothing said", nil, `-have: missing; want the yarn you have, "6 skeins" or "430 g" or "900 yd"`},
		{"bare number", []string{"-have", "6"}, `-have: "6": want skeins, a mass or a length: "6 skeins", "430 g", "900 yd"`},
		{"empty", []string{"-have", ""}, `-have: "": want skeins, a mass or a length: "6 skeins", "430 g", "900 yd"`},
		{"an and too many", []string{"-have", "6 skeins and "}, ``},
		{"no number", []string{"-have", "many skeins"}, `-have: "many skeins": want a number of skeins like 6, 2.5 or 2 1/2, got "many"`},
		{"negative", []string{"-have", "-2 skeins"}, `-have: "-2 skeins": want 0 to 100000 skeins, got "-2"`},
		{"a third", []string{"-have", "1/3 skeins"}, `-have: "1/3 skeins": fraction "1/3" has no exact decimal; want halves, quarters, eighths, sixteenths, fifths or tenths`},
		{"negative mass", []string{"-have", "-2 g"}, ``},
		{"too many", []string{"-have", "100001 skeins"}, `-have: "100001 skeins": want 0 to 100000 skeins, got "100001"`},
		{"hostile exponent", []string{"-have", "1e1000000000 skeins"}, ``},
		{"hostile mass", []string{"-have", "1e1000000000 g"}, ``},
		{"hostile digits", []string{"-have", long + " skeins"}, ``},
		{"many digits", []string{"-have", "0." + strings.Repeat("3", 59) + " skeins"}, ``},
		{"hostile sum", []string{"-have", strings.Repeat("1 g+", 2400) + "1 g"}, ``},
		{"many lots", strings.Split(strings.Repeat("-have,1 skein,", 9), ",")[:18], `-have: given 9 times, want at most 8 lots`},
		{"label without mass", h("-label", "200 m"), ``},
		{"label of nothing", h("-label", "200 m = 0 g"), ``},
		{"margin without percent", h("-margin", "0.1"), ``},
		{"negative margin", h("-margin", "-5%"), `-margin: got -5%, want 0% or more`},
		{"size", h("-size", "12"), `-size: got "12", want one of 4, 6, 8, 10`},
		{"empty size", h("-size", ""), `-size: "": empty`},
		{"size twice", h("-size", "4", "-size", "6"), `-size: "6": given twice; want one`},
		{"label with hardly any mass", h("-label", "1 mm = 100 kg"), `-label: size 4 takes more yarn than can be bought: got more than 100000 skeins, want at most 100000`},
		{"margin of the most", h("-margin", "1001%"), ``},
		{"size too long", h("-size", long), ``},
		{"format", h("-format", "pdf"), `-format: got "pdf", want markdown or json`},
		{"no such file", h("-brief", "no-such-file.json"), ``},
		{"more words", h("extra"), `unexpected "extra" after the flags`},
		{"unknown flag", h("-nonsense"), `flag provided but not defined: -nonsense`},
	} {
		t.Run(c.name, func(t *testing.T) { refused(t, c.want, "", c.args...) })
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
		{"zero gauge", changed(t, "gauge", "0 sts and 11 rows = 10 cm"), ``},
		{"ease", changed(t, "ease", "9 inn"), `ease: "9 inn": unknown unit "inn"`},
		{"armhole", changed(t, "armhole_depth", "5 cm"), ``},
		{"too much yarn", changed(t, "length", "99 m"), ``},
	} {
		t.Run(c.name, func(t *testing.T) { refused(t, c.want, c.in, "-brief", "-", "-have", "4 skeins") })
	}
}

// TestHostileYarn: more yarn than anybody has is only a number.
func TestHostileYarn(t *testing.T) {
	r := replyTo(t, "", "-have", "100000 skeins", "-label", "100000 m = 1 g")
	require.Equal(t, "10", r.Largest)
	r = replyTo(t, "", "-have", "0."+strings.Repeat("0", 17)+"1 g")
	require.Empty(t, r.Largest)
}

// TestReadme: what the README shows is what the program prints.
func TestReadme(t *testing.T) {
	text, err := os.ReadFile("README.md")
	require.NoError(t, err)
	code, out, errs := cli("", "-have", "4 skeins and 10 g", "-size", "10")
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
	require.Contains(t, out, "the yarn you have")
}
