package gauge_test

import (
	"fmt"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/gauge/offgauge"
	"example.com/panelmath/gauge/swatch"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

// Published questions and worked examples: what the page asks, what it settles
// on (or what follows from its own numbers), and where it stands. Names of
// the sources are in the addresses; the numbers were recomputed by hand.
//
// What gauge cannot express, and why: the choice between methods of steaming and
// between fibres, and that superwash wool grows most, are words without a number
// (oliveknits.com/knit-tips-growth-blocking, theendlessskein.com/pages/blocking,
// knittingmagic.biz/guide-4, whatknots.blogspot.com/2021/12, langpingtextile.com);
// that a swatch is to be hung with a weight is a method (tomandbel.blogspot.com/2008/04),
// for whose result there is Fabric.Hung; that a chain measures differently from
// the fabric, and how many chains a row needs, belong to the rows.
var publishedCounts = []struct{ name, source, length, over, rule, exact, count string }{
	{"chest 40 in at 4 to the inch", "https://mathsmagics.com/2021/01/22/knitting-math-how-much-difference-can-1-stitch-per-inch-in-gauge-make/", "40 in", "4 over 1 in", "any", "160", "160"},
	{"size 46 in at 4 to the inch", "http://www.double-ewe-yarn.com/GaugeSchmauge", "46 in", "4 over 1 in", "any", "184", "184"},
	{"garment of 36 in", "https://aknitica.com/2014/10/08/gauge-and-sizing/", "36 in", "4 over 1 in", "any", "144", "144"},
	{"48 cm at 20 over 10 cm", "https://hobbyjobby.co.uk/fr-fr/pages/knitting-tension", "48 cm", "20 over 10 cm", "any", "96", "96"},
	{"head of 48 cm, rounded up", "https://lovelyjubblyknits.blogspot.com/2015/09/how-to-work-out-how-many-stitches-you.html", "48 cm", "22 over 10 cm", "any, up", "528/5", "106"},
	{"stitches in an inch of 10 over 2 in", "https://threadbndr.blogspot.com/2023/02/brown-yoke-sweater-part-2-actual-swatch.html", "1 in", "10 over 2 in", "any", "5", "5"},
	{"rows in an inch of 13 over 2 in", "https://threadbndr.blogspot.com/2023/02/brown-yoke-sweater-part-2-actual-swatch.html", "1 in", "13 over 2 in", "any", "13/2", "7"},
	{"scarf 8 in wide", "http://www.angelhugs.ca/stitchinfo.html", "8 in", "4.5 over 1 in", "any", "36", "36"},
	{"scarf 45 in long", "http://www.angelhugs.ca/stitchinfo.html", "45 in", "6 over 1 in", "any", "270", "270"},
	{"half of a 40 in sweater", "https://www.jgknits.com/2021/06/how-to-knit-rectangle.html", "20 in", "4 over 1 in", "any", "80", "80"},
	{"bust of 40 in at 5 to the inch", "http://tossingthestash.blogspot.com/", "40 in", "5 over 1 in", "any", "200", "200"},
	{"scarf of 6 in at 2.5 to the inch", "https://petiterepublic.com/to-seamstresses/best-answer-how-many-stitches-are-in-a-inch-of-yarn.html", "6 in", "2.5 over 1 in", "any", "15", "15"},
	{"about 45 sts in a multiple of 6 + 1", "http://www.marygildersleeve.com/tag/stitch-multiples/", "45 mm", "1 over 1 mm", "multiple of 6 + 1", "45", "43"},
	{"25 in down to 4n + 2", "http://www.knittinghelp.com/forum/showthread.php?t=112998", "25 in", "4 over 1 in", "multiple of 4 + 2, down", "100", "98"},
	{"30 in down to 4n + 2, a tie", "http://www.knittinghelp.com/forum/showthread.php?t=112998", "30 in", "4 over 1 in", "multiple of 4 + 2, down", "120", "118"},
	{"36 in in the round, multiple of 7", "https://pinkbrutus.com/newdesignerresourceblog/2017/8/5/it-always-goes-back-to-gauge-and-stitches", "36 in", "5 over 1 in", "multiple of 7", "180", "182"},
	{"cuff of 7.75 in, even as the other end", "http://kristentendyke.blogspot.com/2014/02/how-to-increase-evenly-along-set-number.html", "7.75 in", "5 over 1 in", "even, down", "155/4", "38"},
	{"body 22.5 in wide", "The Twisted Sisters Knit Sweaters, Lynne Vogel, Interweave 2007, ch. 3", "22.5 in", "4.5 over 1 in", "any", "405/4", "101"},
	{"body 23 in long, even rows", "The Twisted Sisters Knit Sweaters, Lynne Vogel, Interweave 2007, ch. 3", "23 in", "7 over 1 in", "even, down", "161", "160"},
	{"edging of half an inch", "The Twisted Sisters Knit Sweaters, Lynne Vogel, Interweave 2007, ch. 3", "0.5 in", "7 over 1 in", "any", "7/2", "4"},
	{"the rest of the body, even rows", "The Twisted Sisters Knit Sweaters, Lynne Vogel, Interweave 2007, ch. 3", "22.5 in", "7 over 1 in", "even, down", "315/2", "156"},
	{"90 % of 42 in, multiple of 4", "http://diydiy.info/knitting/easy-dual-remote-caddy-free-crochet-pattern/", "37.8 in", "5 over 1 in", "multiple of 4", "189", "188"},
	{"90 % of 42 in, multiple of 4 + 2", "http://diydiy.info/knitting/easy-dual-remote-caddy-free-crochet-pattern/", "37.8 in", "5 over 1 in", "multiple of 4 + 2", "189", "190"},
	{"size 1 at 4 to the inch, multiple of 6", "https://qctester.wordpress.com/2010/04/21/knitting-notes-gauge-conversion-yours-theirs/", "19.2 in", "4 over 1 in", "multiple of 6", "384/5", "78"},
	{"size 2 at 4 to the inch, multiple of 6", "https://qctester.wordpress.com/2010/04/21/knitting-notes-gauge-conversion-yours-theirs/", "20.4 in", "4 over 1 in", "multiple of 6", "408/5", "84"},
	{"crochet back at the maker's gauge", "http://www.yarnspirations.com/blog/gauge-hooks-progress", "18 1/4 in", "14 over 4 in", "any", "511/8", "64"},
	{"crochet back at the pattern's gauge", "http://www.yarnspirations.com/blog/gauge-hooks-progress", "18 1/4 in", "16 over 4 in", "any", "73", "73"},
	{"30 in to the nearest 4n + 2, a tie", "http://www.knittinghelp.com/forum/showthread.php?t=112998", "30 in", "4 over 1 in", "multiple of 4 + 2", "120", "122"},
	{"throw of 50 in at its real gauge", "https://kayewer.net/2018/12/16/by-hook", "50 in", "60 over 35 in", "any", "600/7", "86"},
	{"half of a 41 in pullover", "https://yarnontheside.blogspot.com/2012_12_03_archive.html", "20.5 in", "25 over 4.5 in", "any", "1025/9", "114"},
	{"vest of 33 1/2 in, corrected gauge", "https://pamgrushkin.com/2017/03/31/a-cautionary-tale/", "33 1/2 in", "14 over 4 in", "any", "469/4", "117"},
	{"body of 14 in, printed rows", "http://mariknits.com/2013/08/ginnys-cardigan-kal-getting-ready.html", "14 in", "26 over 4 in", "any", "91", "91"},
	{"body of 14 in, the maker's rows", "http://mariknits.com/2013/08/ginnys-cardigan-kal-getting-ready.html", "14 in", "7 over 1 in", "any", "98", "98"},
	{"armhole of 7 in, printed rows, a tie", "http://mariknits.com/2013/08/ginnys-cardigan-kal-getting-ready.html", "7 in", "26 over 4 in", "any", "91/2", "46"},
	{"armhole of 7 in, the smaller of the tie", "http://mariknits.com/2013/08/ginnys-cardigan-kal-getting-ready.html", "7 in", "26 over 4 in", "any, ties down", "91/2", "45"},
	{"armhole of 7 in, the maker's rows", "http://mariknits.com/2013/08/ginnys-cardigan-kal-getting-ready.html", "7 in", "7 over 1 in", "any", "49", "49"},
	{"yoke planned 9 in deep", "http://feistyknitter.blogspot.com/2015/12/three-steps-forward.html", "9 in", "8 over 1 in", "any", "72", "72"},
	{"46 3/4 in at the washed gauge", "https://mslindz.com/2009/06/14/another-frogging-adveture-hey-teach-edition/", "46 3/4 in", "3.5 over 1 in", "any", "1309/8", "164"},
	{"46 3/4 in at the drafted gauge", "https://mslindz.com/2009/06/14/another-frogging-adveture-hey-teach-edition/", "46 3/4 in", "4.25 over 1 in", "any", "3179/16", "199"},
	{"60 in over four inches", "https://jennasargentedit.com/2022/10/17/why-the-conversion-rate-from-inches-to-cm-is-different-in-the-knitting-world-than-the-real-world/", "60 in", "20 over 4 in", "any", "300", "300"},
	{"150 cm over ten centimetres", "https://jennasargentedit.com/2022/10/17/why-the-conversion-rate-from-inches-to-cm-is-different-in-the-knitting-world-than-the-real-world/", "150 cm", "20 over 10 cm", "any", "300", "300"},
	{"28 cm of rows at 90 in 17 in", "https://knittingissofun.wordpress.com/2022/03/13/2022-wk-of-mar-6-12-oops-metric-vs-imperial-measurements/", "28 cm", "90 over 17 in", "any", "126000/2159", "58"},
	{"neckband of 20 in, even, a tie", "https://papermoonknits.com/musings/adjusting-neck-width", "20 in", "31 over 4 in", "even, ties down", "155", "154"},
	{"half width of 19 in, even, a tie", "https://skeinsandstitchesco.com/blue-moon-sweater-free-crochet-pattern", "19 in", "3 over 1 in", "even", "57", "58"},
}

func TestPublishedCounts(t *testing.T) {
	for _, c := range publishedCounts {
		t.Run(c.name, func(t *testing.T) {
			got := vector{length: c.length, over: c.over, rule: c.rule}.answered(t)
			require.Equal(t, c.exact, got.exact, c.source)
			require.Equal(t, c.count, got.count, c.source)
		})
	}
}

// over is a literal.
func over(s string) gauge.Over {
	o, err := gauge.ParseOver(s)
	if err != nil {
		panic(err)
	}
	return o
}

func rule(s string) gauge.Rule {
	r, err := gauge.ParseRule(s)
	if err != nil {
		panic(err)
	}
	return r
}

// What a count measures at a gauge, to the places that the source prints.
func TestPublishedWidths(t *testing.T) {
	for _, c := range []struct {
		source, over string
		count        int
		unit         gauge.Unit
		places       int
		want         string
	}{
		{"https://mathsmagics.com/2021/01/22/knitting-math-how-much-difference-can-1-stitch-per-inch-in-gauge-make/", "5 over 1 in", 160, gauge.Inch, 0, "32"},
		{"the same", "3 over 1 in", 160, gauge.Inch, 2, "53.33"},
		{"http://www.double-ewe-yarn.com/GaugeSchmauge", "4.25 over 1 in", 184, gauge.Inch, 2, "43.29"},
		{"the same", "4.5 over 1 in", 184, gauge.Inch, 1, "40.9"},
		{"the same", "3.5 over 1 in", 184, gauge.Inch, 1, "52.6"},
		{"https://aknitica.com/2014/10/08/gauge-and-sizing/", "4.5 over 1 in", 144, gauge.Inch, 0, "32"},
		{"https://hobbyjobby.co.uk/fr-fr/pages/knitting-tension", "22 over 10 cm", 96, gauge.Centimetre, 1, "43.6"},
		{"http://tossingthestash.blogspot.com/", "5 over 1 in", 190, gauge.Inch, 0, "38"},
		{"the same", "5 over 1 in", 210, gauge.Inch, 0, "42"},
		{"https://pinkbrutus.com/newdesignerresourceblog/2017/8/5/it-always-goes-back-to-gauge-and-stitches", "5 over 1 in", 182, gauge.Inch, 1, "36.4"},
		{"https://kayewer.net/2018/12/16/by-hook", "60 over 35 in", 80, gauge.Inch, 2, "46.67"},
		{"https://yarnontheside.blogspot.com/2012_12_03_archive.html", "25 over 4.5 in", 127, gauge.Inch, 2, "22.86"},
		{"https://pamgrushkin.com/2017/03/31/a-cautionary-tale/", "20 over 4 in", 117, gauge.Inch, 1, "23.4"},
		{"http://mariknits.com/2013/08/ginnys-cardigan-kal-getting-ready.html", "7 over 1 in", 45, gauge.Inch, 2, "6.43"},
		{"http://feistyknitter.blogspot.com/2015/12/three-steps-forward.html", "6 over 1 in", 72, gauge.Inch, 0, "12"},
		{"https://jennasargentedit.com/2022/10/17/", "20 over 4 in", 300, gauge.Centimetre, 1, "152.4"},
		{"the same", "20 over 10 cm", 300, gauge.Inch, 2, "59.06"},
		{"http://mymillhouse.blogspot.com/2014/04/modifying-sweater-part-ii-fiddling-with.html", "5.25 over 1 in", 218, gauge.Inch, 2, "41.52"},
		{"http://www.yarnspirations.com/blog/gauge-hooks-progress", "14 over 4 in", 64, gauge.Inch, 2, "18.29"},
	} {
		t.Run(fmt.Sprintf("%d at %s", c.count, c.over), func(t *testing.T) {
			m, err := over(c.over).Measure(gauge.Int(c.count))
			require.NoError(t, err)
			require.Equal(t, c.want, m.In(c.unit).Text(c.places), c.source)
		})
	}
}

// Multiples with an offset: http://www.marygildersleeve.com/tag/stitch-multiples/,
// http://readknittingpatterns.com/rkp/read-a-knitting-pattern-with-cast-on-a-multiple/,
// https://www.stitchwhisperdesigns.com/2021/03/multiples.html,
// http://www.ehow.com/how_2284139_use-pattern-stitches-crochet.html,
// https://www.craftorator.com/5515-crochet-summer-poncho.html
func TestPublishedMultiples(t *testing.T) {
	for _, c := range []struct {
		rule       string
		legal, not []int
	}{
		{"multiple of 6 + 1", []int{31, 43, 49}, []int{35, 38, 42}},
		{"multiple of 6 + 2", []int{8, 14, 20, 26, 32}, []int{12, 18}},
		{"multiple of 8 + 2", []int{10, 18, 26, 34, 42, 50}, []int{16, 48}},
		{"multiple of 5 + 1", []int{11, 56, 101}, []int{12, 60}},
		{"multiple of 2 + 5", []int{37, 47}, []int{32, 42}},
		{"multiple of 6 + 3", []int{129, 147, 165}, []int{128, 150}},
	} {
		for _, n := range c.legal {
			require.True(t, rule(c.rule).Legal(n), "%s: %d", c.rule, n)
		}
		for _, n := range c.not {
			require.False(t, rule(c.rule).Legal(n), "%s: %d", c.rule, n)
		}
	}
	got, err := rule("multiple of 8 + 2, at least 3").Within(gauge.Int(0), gauge.Int(50))
	require.NoError(t, err)
	require.Equal(t, []int{10, 18, 26, 34, 42, 50}, got)
}

// A window of 41 to 42 in at 5.25 to the inch and a multiple of 12 + 14: one
// count, and none in a narrower window.
// http://mymillhouse.blogspot.com/2014/04/modifying-sweater-part-ii-fiddling-with.html
func TestPublishedWindow(t *testing.T) {
	o, r := over("5.25 over 1 in"), rule("multiple of 12 + 14")
	low, high := gauge.MustLength("41 in").Measurement(), gauge.MustLength("42 in").Measurement()
	x, err := o.Exact(low)
	require.NoError(t, err)
	require.Equal(t, "861/4", x.String()) // 215.25
	got, err := o.Within(low, high, r)
	require.NoError(t, err)
	require.Equal(t, []int{218}, got)
	got, err = o.Within(gauge.MustLength("41.6 in").Measurement(), high, r)
	require.NoError(t, err)
	require.Empty(t, got)
}

// New tension: 98 sts and a neck of 30 at 5 to the inch, worked at 6.5.
// https://annbuddknits.com/blog/page/87/
func TestPublishedNeck(t *testing.T) {
	g := offgauge.Change{Pattern: over("5 over 1 in"), Mine: over("6.5 over 1 in")}
	for _, c := range []struct {
		rule                string
		whole, centre, side int
		tie                 bool
		off                 string // of the whole, in inches to two places
	}{
		{"any", 127, 39, 44, false, "-0.06"},
		{"even", 128, 40, 44, true, "0.09"},
		{"even, ties down", 128, 38, 45, true, "0.09"},
		{"odd", 127, 39, 44, false, "-0.06"},
	} {
		t.Run(c.rule, func(t *testing.T) {
			got, err := g.Centred(98, 30, rule(c.rule))
			require.NoError(t, err)
			require.Equal(t, "637/5", got.Whole.Exact.String())
			require.Equal(t, "39", got.Centre.Exact.String())
			require.Equal(t, []int{c.whole, c.centre, c.side}, []int{got.Whole.Value, got.Centre.Value, got.Side})
			require.Equal(t, c.tie, got.Centre.Tie)
			require.Equal(t, c.off, got.Whole.Deviation().In(gauge.Inch).Text(2))
			require.Equal(t, got.Whole.Value, got.Side+got.Centre.Value+got.Side)
		})
	}
}

// Two sizes to a multiple of 6, with what each is off, and the way back.
// https://qctester.wordpress.com/2010/04/21/knitting-notes-gauge-conversion-yours-theirs/
func TestPublishedSizes(t *testing.T) {
	g := offgauge.Change{Pattern: over("5 over 1 in"), Mine: over("4 over 1 in")}
	got, err := g.Counts([]int{96, 102}, rule("multiple of 6"))
	require.NoError(t, err)
	require.Equal(t, []int{78, 84}, []int{got[0].Value, got[1].Value})
	require.Equal(t, []string{"0.3", "0.6"}, []string{got[0].Deviation().In(gauge.Inch).Text(1), got[1].Deviation().In(gauge.Inch).Text(1)})
	back, err := offgauge.Change{Pattern: g.Mine, Mine: g.Pattern}.Counts([]int{102}, rule("multiple of 6"))
	require.NoError(t, err)
	require.Equal(t, 126, back[0].Value)
	require.Equal(t, "255/2", back[0].Exact.String())
}

// A multiplier for stitches and one for rows; the half stitch is the maker's
// choice. http://www.cara4webshopping.com/convert_patterns.html
func TestPublishedMultipliers(t *testing.T) {
	sts := offgauge.Change{Pattern: over("8 over 1 in"), Mine: over("9 over 1 in")}
	got, err := sts.Counts([]int{100, 7, 24}, gauge.Rule{})
	require.NoError(t, err)
	require.Equal(t, []int{112, 113, 8, 27}, []int{got[0].Below, got[0].Above, got[1].Value, got[2].Value})
	require.True(t, got[0].Tie)
	require.Zero(t, got[2].Deviation().Sign())
	rows, err := offgauge.Change{Pattern: over("15 over 1 in"), Mine: over("12 over 1 in")}.Exact(10)
	require.NoError(t, err)
	require.Equal(t, "8", rows.String())
}

// All sizes even or all odd: http://bananamoonstudio.blogspot.com/2013/03/pattern-grading.html
// The numbers are our own.
func TestAlike(t *testing.T) {
	g := offgauge.Change{Pattern: over("5 over 1 in"), Mine: over("6.5 over 1 in")}
	got, err := g.Alike([]int{98, 106, 114}, 2) // 127.4, 137.8, 148.2
	require.NoError(t, err)
	var values []int
	for _, c := range got {
		values = append(values, c.Value)
		require.Equal(t, got[0].Value%2, c.Value%2)
	}
	require.Equal(t, []int{128, 138, 148}, values)
}

// Is the printed gauge the one the pattern was drafted at?
func TestPublishedContradictions(t *testing.T) {
	inch, half := gauge.MustLength("1 in"), gauge.MustLength("0.5 in")
	one := decimal.New(1, 0)
	for _, c := range []struct {
		name, source, printed, drawn string
		to                           gauge.Length
		ratio                        string
		explained                    bool
	}{
		{"vest misprint", "https://pamgrushkin.com/2017/03/31/a-cautionary-tale/", "20 over 4 in", "117 over 33.5 in", half, "0.70", false},
		{"vest corrected", "the same", "14 over 4 in", "117 over 33.5 in", half, "1.00", true},
		{"throw", "https://kayewer.net/2018/12/16/by-hook", "60 over 50 in", "60 over 35 in", inch, "1.43", false},
		{"pullover", "https://yarnontheside.blogspot.com/2012_12_03_archive.html", "25 over 4.5 in", "127 over 20.5 in", half, "1.12", false},
		// Rows printed at 4 in from a count over 2 in: off by a factor of 7/5 in the ratio of the sides.
		{"texture", "https://wlsmakesstuff.com/blog-of-making-stuff/technical-twists-gauge", "20 over 4 in", "35 over 5 in", half, "1.40", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := swatch.Printed(over(c.printed)).Compare(swatch.Reading{Over: over(c.drawn), CountTo: one, SpanTo: c.to})
			require.NoError(t, err)
			require.Equal(t, c.ratio, got.Ratio.Text(2), c.source)
			require.Equal(t, c.explained, got.Explained, c.source)
		})
	}
}

// Half a stitch over 2 in is a whole one over 4 in.
// https://wlsmakesstuff.com/blog-of-making-stuff/technical-twists-gauge
func TestPublishedShortSpan(t *testing.T) {
	for _, c := range []struct{ over, low, high string }{
		{"10 over 2 in", "3.81", "4.21"}, // from 21 to 19 to 4 in
		{"20 over 4 in", "3.90", "4.10"}, // from 20.5 to 19.5
	} {
		s := swatch.Swatch{Readings: []swatch.Reading{{Over: over(c.over), CountTo: decimal.New(1, 0)}}}
		r, err := s.Measure(20)
		require.NoError(t, err)
		require.Equal(t, []string{c.low, c.high}, []string{r.Low.In(gauge.Inch).Text(2), r.High.In(gauge.Inch).Text(2)})
	}
}

// Growth is the unblocked gauge over the blocked one, in each direction apart.
func TestPublishedGrowth(t *testing.T) {
	for _, c := range []struct{ source, worked, finished, width, length string }{
		{"https://andreagaughanknits.com/blog/blocked-vs-unblocked-gauge", "29 sts and 44 rows = 4 in", "28 sts and 46 rows = 4 in", "1.04", "0.96"},
		{"http://knitbean.blogspot.com/2012/04/how-much-can-cotton-swatch-shrink-after.html", "60 sts and 90 rows = 15 in", "60 sts = 19 in, 90 rows = 10 in", "1.27", "0.67"},
		{"https://straythreads-straythreads.blogspot.com/2021/05", "20 sts and 20 rows = 4 in", "20 sts and 20 rows = 4.25 in", "1.06", "1.06"},
		{"https://mslindz.com/2009/06/14/another-frogging-adveture-hey-teach-edition/", "4.25 sts and 6 rows = 1 in", "3.5 sts and 5 rows = 1 in", "1.21", "1.20"},
	} {
		t.Run(c.worked, func(t *testing.T) {
			g, err := gauge.Fabric{Worked: gauge.MustGauge(c.worked), Finished: gauge.MustGauge(c.finished)}.Growth()
			require.NoError(t, err)
			require.Equal(t, []string{c.width, c.length}, []string{g.Width.Text(2), g.Length.Text(2)}, c.source)
		})
	}
	// A quarter inch on 4 in is 3/4 in on 12 and 3 in on 48 (straythreads, as above).
	f := gauge.Fabric{Worked: gauge.MustGauge("20 sts and 20 rows = 4.25 in"), Finished: gauge.MustGauge("20 sts and 20 rows = 4 in")}
	for length, want := range map[string]string{"12 in": "0.75", "48 in": "3"} {
		m := gauge.MustLength(length).Measurement()
		work, err := f.WorkLength(m)
		require.NoError(t, err)
		require.Equal(t, want, work.Sub(m).In(gauge.Inch).Decimal(2).String())
	}
	// 46 3/4 in planned at the unwashed gauge comes out at 56.8 in (mslindz, as above).
	m, err := offgauge.Change{Pattern: over("4.25 over 1 in"), Mine: over("3.5 over 1 in")}.Measures(gauge.MustLength("46 3/4 in").Measurement())
	require.NoError(t, err)
	require.Equal(t, "56.8", m.In(gauge.Inch).Text(1))
}

// What may be printed: inches in quarters, centimetres in halves; and the two
// conventions for centimetres. https://jennabarron.com/blog/common-measurement-errors-in-knitting-patterns,
// https://frasierknits.net/post/common-conversion-mistakes
func TestPublishedGrids(t *testing.T) {
	for _, c := range []struct {
		length string
		grid   gauge.Grid
		want   string
	}{
		{"36 in", gauge.HalfCentimetre, "91.5 cm"},
		{"36 in", gauge.HalfCentimetreAt25, "90 cm"},
		{"60 in", gauge.HalfCentimetreAt25, "150 cm"},
		{"4 in", gauge.HalfCentimetreAt25, "10 cm"},
		{"4 in", gauge.WholeCentimetreAt25, "10 cm"},
		{"4 in", gauge.HalfCentimetre, "10 cm"},
		{"2.8 in", gauge.QuarterInch, "2¾ in"},
		{"1.25 cm", gauge.HalfCentimetre, "1.5 cm"},
	} {
		require.Equal(t, c.want, c.grid.Text(gauge.MustLength(c.length).Measurement()), "%s on %v", c.length, c.grid)
	}
	// Nine sizes of one pattern page, every centimetre the inches times 2.54 to the nearest half.
	inches := []string{"37.5", "42.25", "44", "48.25", "50.75", "54.5", "57.75", "64.25", "68.75"}
	cm := []string{"95.5", "107.5", "112", "122.5", "129", "138.5", "146.5", "163", "174.5"}
	for i := range inches {
		m := gauge.MustLength(inches[i] + " in").Measurement()
		require.Equal(t, cm[i], gauge.HalfCentimetre.Number(m))
		require.NotEqual(t, cm[i], gauge.HalfCentimetreAt25.Number(m))
	}
	require.Equal(t, "101.6 mm", gauge.MustLength("4 in").Measurement().String()) // 10.16 cm, not 10
}

// Traps of general arithmetic, retold from threads on other projects.
func TestArithmeticTraps(t *testing.T) {
	// https://github.com/golang/go/issues/11523: a tie is not left to the number type's printing.
	eighth, err := gauge.Share(1, 8)
	require.NoError(t, err)
	require.Equal(t, "0.13", eighth.Text(2))
	require.Equal(t, "-0.13", gauge.Int(0).Sub(eighth).Text(2))
	// https://github.com/golang/go/issues/17221: 1.2 is 6/5.
	require.Equal(t, "6/5", gauge.MustLength("1.2 in").Measurement().In(gauge.Inch).String())
	// https://github.com/adamdehaven/specify/issues/33: a tape measure has a grid; 5.19 in is not 5 1/5.
	require.Equal(t, "5¼ in", gauge.QuarterInch.Text(gauge.MustLength("5.19 in").Measurement()))
	require.Equal(t, "5¼ in", gauge.EighthInch.Text(gauge.MustLength("5.19 in").Measurement()))
	// https://github.com/HakanSeven12/OpenCADStudio/pull/381: round first, split after.
	require.Equal(t, "36 in", gauge.EighthInch.Text(gauge.MustLength("35.9999 in").Measurement()))
	// https://github.com/wadey/go-rounding/issues/4: rounding up goes to the next number.
	c, err := over("1 over 1 mm").Round(gauge.MustLength("3.1 mm").Measurement(), rule("any, up"))
	require.NoError(t, err)
	require.Equal(t, 4, c.Value)
}
