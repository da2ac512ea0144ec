package usage_test

import (
	"errors"
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/usage"
	"github.com/shopspring/decimal"
)

// Two swatches and a finished panel tell what each stitch takes, and a plan of
// stitches becomes a line.
func Example() {
	f, err := usage.Fit(yarn.MustLabel("230 yd = 100 g"),
		usage.Sample{Name: "plain swatch", Counts: []usage.Count{{"hdc", 400}}, Yarn: yarn.MustLength("22 m")},
		usage.Sample{Name: "lace swatch", Counts: []usage.Count{{"dc", 120}, {"ch", 238}, {"hdc", 60}}, Yarn: yarn.MustLength("17 m")},
		usage.Sample{Name: "first panel", Counts: []usage.Count{{"hdc", 3600}, {"dc", 330}, {"ch", 640}}, Mass: yarn.MustMass("112 g")})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, s := range f.Explain() {
		fmt.Println(s)
	}
	line, err := f.Rates.Line("both panels", usage.Count{"hdc", 8000}, usage.Count{"dc", 760}, usage.Count{"ch", 1480})
	fmt.Println(line.Explain(), err)
	// Output:
	// hdc takes 55 mm a stitch
	// dc takes about 96.99 mm a stitch
	// ch takes about 8.66 mm a stitch
	// plain swatch took 22 m; the rates give just that
	// lace swatch took 17 m; the rates give just that
	// first panel took about 235.55 m; the rates give just that
	// as many samples as kinds of stitch: nothing is left to check the fit by
	// both panels: 10240 stitches take about 526.53 m (about 575.82 yd) of yarn <nil>
}

func ExampleMeasured() {
	r, err := usage.Measured("hdc", 45, yarn.MustLength("1 yd"))
	fmt.Println(r.Stitch, r.Each.In(gauge.Inch), "in", err)
	// Output: hdc 4/5 in <nil>
}

func ExampleRates_Of() {
	r, _ := usage.Measured("hdc", 100, yarn.MustLength("5 m"))
	each, ok := usage.Rates{Rates: []usage.Rate{r}}.Of("hdc")
	fmt.Println(each, ok)
	_, ok = usage.Rates{}.Of("dc")
	fmt.Println(ok)
	// Output:
	// 50 mm true
	// false
}

func ExampleRates_Line() {
	r, _ := usage.Measured("knit", 45, yarn.MustLength("1 yd"))
	off, _ := gauge.Share(1, 20)
	line, err := usage.Rates{Rates: []usage.Rate{r}, Off: off}.Line("body", usage.Count{"knit", 25200})
	fmt.Println(line.Length.In(gauge.Yard), "yd, give or take", line.More.In(gauge.Yard), "yd", err)
	_, err = usage.Rates{}.Line("body", usage.Count{"dc", 10})
	fmt.Println(err)
	// Output:
	// 560 yd, give or take 28 yd <nil>
	// Counts[0].Stitch: got "dc", want a kind of stitch whose yarn is known
}

func ExampleFit() {
	f, err := usage.Fit(yarn.Label{},
		usage.Sample{Counts: []usage.Count{{"hdc", 100}, {"ch", 20}}, Yarn: yarn.MustLength("540 cm")},
		usage.Sample{Counts: []usage.Count{{"hdc", 50}, {"ch", 60}}, Yarn: yarn.MustLength("370 cm")})
	for _, r := range f.Rates.Rates {
		fmt.Println(r.Stitch, r.Each)
	}
	fmt.Println(err)
	// Output:
	// hdc 50 mm
	// ch 20 mm
	// <nil>
}

func ExampleFitted_Explain() {
	f, _ := usage.Fit(yarn.Label{},
		usage.Sample{Name: "first", Counts: []usage.Count{{"hdc", 100}}, Yarn: yarn.MustLength("5 m")},
		usage.Sample{Name: "second", Counts: []usage.Count{{"hdc", 100}}, Yarn: yarn.MustLength("5.2 m")})
	for _, s := range f.Explain() {
		fmt.Println(s)
	}
	// Output:
	// hdc takes 51 mm a stitch
	// first took 5 m; the rates give 2% more
	// second took 5.2 m; the rates give about 1.92% less
}

// Both swatches have as many chains to a double crochet: their yarn could be
// moved from the one to the other.
func ExampleUndeterminedError_Error() {
	_, err := usage.Fit(yarn.Label{},
		usage.Sample{Counts: []usage.Count{{"hdc", 100}, {"dc", 20}, {"ch", 40}}, Yarn: yarn.MustLength("9 m")},
		usage.Sample{Counts: []usage.Count{{"hdc", 50}, {"dc", 30}, {"ch", 60}}, Yarn: yarn.MustLength("8 m")},
		usage.Sample{Counts: []usage.Count{{"hdc", 200}}, Yarn: yarn.MustLength("11 m")})
	fmt.Println(err)
	var u *usage.UndeterminedError
	fmt.Println(errors.As(err, &u), u.Stitches)
	// Output:
	// fit yarn per stitch to 3 samples: that does not determine "dc", "ch"; add a swatch with another share of it
	// true ["dc" "ch"]
}

func ExampleNegativeError_Error() {
	_, err := usage.Fit(yarn.Label{},
		usage.Sample{Counts: []usage.Count{{"hdc", 100}}, Yarn: yarn.MustLength("9 m")},
		usage.Sample{Counts: []usage.Count{{"hdc", 100}, {"ch", 50}}, Yarn: yarn.MustLength("8 m")})
	fmt.Println(err)
	// Output: fit yarn per stitch: "ch" would take -20 mm: a count or a measurement is wrong
}

func ExampleRowSample_Validate() {
	fmt.Println(usage.RowSample{Width: gauge.MustLength("5 in")}.Validate())
	// Output: RowSample.Yarn.Unit: got Unit(0), want yd, m, in, ft, cm or mm
}

func ExampleRowSample_Times() {
	n, err := usage.RowSample{Width: gauge.MustLength("5 in"), Yarn: yarn.MustLength("78.5 in")}.Times()
	fmt.Println(n.Text(1), err)
	// Output: 15.7 <nil>
}

func ExampleRowSample_Rows() {
	chain := usage.RowSample{Width: gauge.MustLength("5 in"), Yarn: yarn.MustLength("25.5 in")}
	line, err := chain.Rows(yarn.Foundation, "foundation", 1, gauge.MustLength("50 in").Measurement())
	fmt.Println(line.Explain(), err)
	// Output: foundation: 1 row of 50 in at 5.1 times the width is 255 in <nil>
}

func ExampleProject_Validate() {
	fmt.Println(usage.Project{Label: yarn.MustLabel("230 yd = 100 g")}.Validate())
	// Output: Project.Skeins: got 0, want more than 0, at most 100000
}

// What was used is known to the gram where the rest was weighed, and else to one
// skein only.
func ExampleProject_Used() {
	p := usage.Project{Label: yarn.MustLabel("230 yd = 100 g"), Skeins: decimal.NewFromInt(6), Left: yarn.MustMass("20 g")}
	used, err := p.Used()
	fmt.Println(used.Explain(), err)
	p.Left = yarn.Mass{}
	used, err = p.Used()
	fmt.Println(used.Explain(), err)
	fmt.Println("or up to", used.Less.In(gauge.Yard), "yd less")
	// Output:
	// finished project: 6 skeins of 230 yd = 100 g less 20 g left are 1334 yd of yarn <nil>
	// finished project: 6 skeins of 230 yd = 100 g are at most 1380 yd, the last one begun <nil>
	// or up to 230 yd less
}

// A throw of 60 stitches used 6 skeins; the same with 80 stitches.
func ExampleProject_Times() {
	label := yarn.MustLabel("200 yd = 100 g")
	p := usage.Project{Label: label, Skeins: decimal.NewFromInt(6), Left: yarn.MustMass("0 g")}
	wider, _ := gauge.Share(80, 60)
	line, err := p.Times("throw", wider)
	fmt.Println(line.Explain(), err)
	n, _, _ := label.Skeins(line.Length)
	fmt.Println(n, "skeins")
	// Output:
	// throw: 6 skeins of 200 yd = 100 g less 0 g left are 1200 yd of yarn; about 1.33 times as much is 1600 yd <nil>
	// 8 skeins
}

func ExampleProject_Fabric() {
	done, _ := yarn.ParseArea("1400 sq in")
	next, _ := yarn.ParseArea("1600 sq in")
	p := usage.Project{Label: yarn.MustLabel("230 yd = 100 g"), Area: done, Mass: yarn.MustMass("560 g")}
	line, err := p.Fabric("next size", next)
	fmt.Println(line.Explain(), err)
	// Output: next size: 560 g at 230 yd = 100 g is 1288 yd of yarn; about 1.14 times as much is 1472 yd <nil>
}
