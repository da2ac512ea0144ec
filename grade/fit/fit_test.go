package fit_test

import (
	"encoding/json"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/fit"
	"github.com/stretchr/testify/require"
)

func inches(s ...string) grade.Run[gauge.Length] {
	r := make(grade.Run[gauge.Length], len(s))
	for i := range s {
		r[i] = gauge.MustLength(s[i] + " in")
	}
	return r
}

// PC-22 (a), https://www.interweave.com/article/knitting/how-i-chose-both-size-and-ease-and-a-bit-of-knitting-crazy/
func TestChooseBetweenTwoSizes(t *testing.T) {
	c, err := fit.Choose(grade.Run[string]{"43.5", "47"}, fit.Criterion{
		Body: gauge.MustLength("41.5 in"), Finished: inches("43.5", "47"), Wanted: grade.MustEase("3 in"), Free: true})
	require.NoError(t, err)
	require.Equal(t, fit.Chosen, c.Verdict)
	require.Equal(t, []string{"43.5"}, c.Sizes)
	require.Equal(t, []string{
		"43.5: chosen: chest ease 2 in, 1 in from the wanted 3 in",
		"47: would do, 43.5 is nearer: chest ease 5½ in, 2½ in from the wanted 3 in",
	}, c.Explain(gauge.QuarterInch))
}

// PC-22 (b), https://untangling-knots.com/2014/03/03/faq-what-size-sweater-should-i-knit/
func TestChooseNoneAndTheNearestTie(t *testing.T) {
	c, err := fit.Choose(grade.Run[string]{"30", "34", "38", "42"}, fit.Criterion{
		Body: gauge.MustLength("34 in"), Finished: inches("30", "34", "38", "42"), Wanted: grade.MustEase("-2 in"),
		Window: fit.Window{Least: grade.MustEase("-3 in"), Most: grade.MustEase("-1 in")}})
	require.NoError(t, err)
	require.Equal(t, fit.None, c.Verdict)
	require.Equal(t, []string{"30", "34"}, c.Sizes)
	require.Equal(t, []string{
		"30: nearest, but outside: chest ease -4 in, 1 in less than the least (-3 in)",
		"34: nearest, but outside: chest ease 0 in, 1 in more than the most (-1 in)",
		"38: not chosen: chest ease 4 in, 5 in more than the most (-1 in)",
		"42: not chosen: chest ease 8 in, 9 in more than the most (-1 in)",
	}, c.Explain(gauge.QuarterInch))
}

func TestChooseOnSeveralMeasures(t *testing.T) {
	window := fit.Window{Least: grade.MustEase("2 in"), Most: grade.MustEase("6 in")}
	chest := fit.Criterion{Body: gauge.MustLength("40 in"), Finished: inches("42", "44", "46", "50"), Wanted: grade.MustEase("4 in"), Window: window}
	arm := fit.Criterion{Measure: grade.UpperArm, Body: gauge.MustLength("14 in"), Finished: inches("14", "15", "16", "17"),
		Wanted: grade.MustEase("2 in"), Window: fit.Window{Least: grade.MustEase("10%"), Open: true}}
	labels := grade.Run[string]{"S", "M", "L", "XL"}

	c, err := fit.Choose(labels, chest)
	require.NoError(t, err)
	require.Equal(t, []string{"M"}, c.Sizes, "by the chest alone")
	require.Equal(t, "M: chosen: chest ease 4 in, as wanted", c.Explain(gauge.QuarterInch)[1])

	c, err = fit.Choose(labels, chest, arm)
	require.NoError(t, err)
	require.Equal(t, []string{"L"}, c.Sizes, "M and S are too tight round the arm, XL too wide round the chest")
	require.Equal(t, "M: not chosen: chest ease 4 in, as wanted; upper arm ease 1 in, ½ in less than the least (10%)", c.Explain(gauge.QuarterInch)[1])

	chest.Finished = inches("42", "46", "46", "42")
	chest.Wanted = grade.MustEase("4 in")
	c, err = fit.Choose(labels, chest)
	require.NoError(t, err)
	require.Equal(t, fit.Tied, c.Verdict)
	require.Equal(t, labels, grade.Run[string](c.Sizes))
	require.Equal(t, "S: ties: chest ease 2 in, 2 in from the wanted 4 in", c.Explain(gauge.QuarterInch)[0])
	arm.Free = true
	c, err = fit.Choose(labels, chest, arm)
	require.NoError(t, err)
	require.Equal(t, []string{"L"}, c.Sizes, "the arm breaks the tie of the chest")
}

func TestChooseRefuses(t *testing.T) {
	ok := fit.Criterion{Body: gauge.MustLength("40 in"), Finished: inches("42", "44"), Free: true}
	with := func(change func(*fit.Criterion)) fit.Criterion { c := ok; change(&c); return c }
	two := grade.Run[string]{"S", "M"}
	for _, c := range []struct {
		name     string
		sizes    grade.Run[string]
		criteria []fit.Criterion
		want     string
	}{
		{"no sizes", nil, []fit.Criterion{ok}, "sizes: got 0, want 1 to 64"},
		{"no criteria", two, nil, "criteria: got none, want at least one"},
		{"measure", two, []fit.Criterion{with(func(c *fit.Criterion) { c.Measure = 99 })}, "Measure: got Measure(99), want a measure of the body"},
		{"no body", two, []fit.Criterion{with(func(c *fit.Criterion) { c.Body = gauge.Length{} })}, "chest.Body.Unit: got Unit(0), want mm, cm, m, in, ft or yd"},
		{"body of nothing", two, []fit.Criterion{with(func(c *fit.Criterion) { c.Body = gauge.MustLength("0 in") })}, "chest.Body: got 0 in, want more than 0"},
		{"length of the list", two, []fit.Criterion{with(func(c *fit.Criterion) { c.Finished = inches("42") })}, "chest.Finished: got 1 values, want 2"},
		{"finished", two, []fit.Criterion{with(func(c *fit.Criterion) { c.Finished = grade.Run[gauge.Length]{ok.Finished[0], {}} })}, "size M: chest: Unit: got Unit(0), want mm, cm, m, in, ft or yd"},
		{"wanted", two, []fit.Criterion{with(func(c *fit.Criterion) { c.Wanted.Unit = 77 })}, "chest.Wanted.Ease.Unit: got Unit(77), want mm, cm, m, in, ft or yd"},
		{"window", two, []fit.Criterion{with(func(c *fit.Criterion) { c.Free = false; c.Window.Least.Unit = 77 })}, "chest.Window.Least.Ease.Unit: got Unit(77), want mm, cm, m, in, ft or yd"},
		{"wanted outside", two, []fit.Criterion{with(func(c *fit.Criterion) { c.Free = false; c.Wanted = grade.MustEase("1 in") })}, "chest.Wanted: got 1 in, want an ease inside the window, 0%"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := fit.Choose(c.sizes, c.criteria...)
			require.EqualError(t, err, c.want)
		})
	}
}

// The figures of both editions: fit-ease.csv says how each is known.
func TestClasses(t *testing.T) {
	for _, c := range []struct {
		edition string
		want    []string
	}{
		{"current", []string{
			"Very close fitting: -4 in to -2 in, -10 cm to -5 cm, one-source",
			"Close fitting: 0 in, 0 cm, one-source",
			"Classic fit: 2 in to 4 in, 5 cm to 10 cm, two-sources",
			"Loose fit: 4 in to 6 in, 10 cm to 15 cm, one-source",
			"Oversized: 6 in and more, 15 cm and more, one-source",
		}},
		// C03, the earlier edition as Lion Brand's guideline has it.
		{"earlier", []string{
			"Very close: 0 in, , one-source", "Close fit: 1 in to 2 in, , one-source", "Standard fit: 2 in to 4 in, , one-source",
			"Loose fit: 4 in to 6 in, , one-source", "Oversized: 6 in and more, , one-source",
		}},
	} {
		t.Run(c.edition, func(t *testing.T) {
			classes, err := fit.Classes(c.edition)
			require.NoError(t, err)
			var got []string
			for _, k := range classes {
				metric := ""
				if k.HasMetric {
					metric = k.Metric.String()
				}
				require.NoError(t, k.Inches.Validate())
				require.Equal(t, c.edition, k.Edition)
				got = append(got, k.Printed+": "+k.Inches.String()+", "+metric+", "+k.Basis.String())
			}
			require.Equal(t, c.want, got)
		})
	}
	_, err := fit.Classes("1999")
	require.EqualError(t, err, `fit classes: no edition "1999"; there are current and earlier`)
}

func TestClassesOf(t *testing.T) {
	current, err := fit.Classes("current")
	require.NoError(t, err)
	earlier, err := fit.Classes("earlier")
	require.NoError(t, err)
	for _, c := range []struct {
		classes []fit.Class
		ease    string
		metric  bool
		want    []string
	}{
		{current, "3 in", false, []string{"classic"}},
		{current, "4 in", false, []string{"classic", "loose"}},
		{current, "1 in", false, nil}, // between close and classic
		{earlier, "1 in", false, []string{"close"}},
		{current, "40 in", false, []string{"oversized"}},
		{current, "-7 cm", true, []string{"very-close"}},
		{earlier, "3 cm", true, nil}, // no centimetres seen
		// C04, knitting handbook: chest 40 in, garment 42 to 44 in is standard fit, 46 in and more loose.
		{earlier, "2 in", false, []string{"close", "classic"}},
		{earlier, "6 in", false, []string{"loose", "oversized"}},
	} {
		t.Run(c.ease, func(t *testing.T) {
			var got []string
			for _, k := range fit.ClassesOf(c.classes, gauge.MustLength(c.ease).Measurement(), c.metric) {
				got = append(got, k.Name)
			}
			require.Equal(t, c.want, got)
		})
	}
}

func TestWindow(t *testing.T) {
	w := fit.Window{Least: grade.MustEase("-5%"), Most: grade.MustEase("2 in")}
	body := gauge.MustLength("40 in").Measurement()
	for _, c := range []struct{ finished, miss string }{{"38 in", "0 in"}, {"42 in", "0 in"}, {"37 in", "-1 in"}, {"42.5 in", "0.5 in"}} {
		t.Run(c.finished, func(t *testing.T) {
			f := gauge.MustLength(c.finished).Measurement()
			require.True(t, w.Miss(body, f).Equal(gauge.MustLength(c.miss).Measurement()))
			require.Equal(t, c.miss == "0 in", w.Holds(body, f))
		})
	}
	require.EqualError(t, fit.Window{Most: grade.Ease{Unit: 99}}.Validate(), "Window.Most.Ease.Unit: got Unit(99), want mm, cm, m, in, ft or yd")
	require.NoError(t, fit.Window{Least: grade.MustEase("5%"), Most: grade.MustEase("1 in")}.Validate(), "kinds that can't be compared without a body")
	require.Equal(t, "Verdict(7)", fit.Verdict(7).String())
}

func TestJSON(t *testing.T) {
	s, err := fit.Best(wearers(t, "women", grade.Chest, gauge.Inch), grade.MustEase("9 in"), 4)
	require.NoError(t, err)
	c, err := fit.Choose(grade.Run[string]{"S", "M"}, fit.Criterion{Body: gauge.MustLength("40 in"), Finished: inches("42", "44"), Free: true})
	require.NoError(t, err)
	classes, err := fit.Classes("earlier")
	require.NoError(t, err)
	for name, c := range map[string]struct{ value, back any }{
		"split": {s, new(fit.Split)}, "choice": {c, new(fit.Choice)}, "class": {classes[0], new(fit.Class)},
	} {
		t.Run(name, func(t *testing.T) {
			b, err := json.Marshal(c.value)
			require.NoError(t, err)
			require.NoError(t, json.Unmarshal(b, c.back))
			again, err := json.Marshal(c.back)
			require.NoError(t, err)
			require.Equal(t, string(b), string(again))
		})
	}
	b, err := json.Marshal(s.Parts[0])
	require.NoError(t, err)
	require.Equal(t, `{"from":0,"to":2,"finished":"1092.2 mm","up_to":"1092.2 mm","least":"228.6 mm","most":"381 mm"}`, string(b))
	var v fit.Verdict
	require.EqualError(t, v.UnmarshalText([]byte("maybe")), `parse verdict: "maybe": unknown verdict; want none, chosen or tied`)
	_, err = fit.Verdict(9).MarshalText()
	require.Error(t, err)
}
