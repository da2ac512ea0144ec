package main

import (
	"errors"
	"fmt"
	"strings"

	"example.com/panelmath/examples/internal/command"
	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn"
)

// question is what the maker asks, as the flags say it. What she left out is
// its zero value.
type question struct {
	file, format, size string
	why                bool

	mine      gauge.Gauge
	round     gauge.Length // wanted
	body      gauge.Length // her chest
	ease      *grade.Ease  // over body; that of the brief where it is nil
	arm, head gauge.Length
	labels    []yarn.Label // her yarn, one for each strand
	swatch    *yarn.Swatch // of her fabric
	others    []others
}

// ask reads the flags. Asked for help it returns flag.ErrHelp and the text.
func ask(args []string) (q question, help []byte, err error) {
	f := command.New("regauge")
	q.format = "markdown"
	command.Text(f, "brief", "the brief to read, - for standard input (default: one that the program holds)", func(s string) { q.file = s })
	command.Text(f, "format", "what to print: markdown (the default) or json", func(s string) { q.format = s })
	command.Text(f, "size", "one size of the pattern alone, by its name: M, or XL–2X", func(s string) { q.size = s })
	f.BoolVar(&q.why, "why", false, "explain every new number")
	command.Read(f, "gauge", `your gauge, washed and blocked: "14 sts and 11 rows = 4 in"`, gauge.ParseGauge, func(g gauge.Gauge) { q.mine = g })
	command.Read(f, "round", `the round you want: "47 in"`, length, func(l gauge.Length) { q.round = l })
	command.Read(f, "body", `your chest, to find the round with -ease or the ease of the pattern: "37 in"`, length, func(l gauge.Length) { q.body = l })
	command.Read(f, "ease", `what the garment is to measure beyond your chest: "9 in", "-5%"`, grade.ParseEase, func(e grade.Ease) { q.ease = &e })
	command.Read(f, "arm", `your upper arm, instead of that in the size table`, length, func(l gauge.Length) { q.arm = l })
	command.Read(f, "head", `your head, where the garment goes over it`, length, func(l gauge.Length) { q.head = l })
	command.ReadEach(f, "label", `your yarn: "110 m = 50 g"; give it once for each strand that you hold together`, yarn.ParseLabel, func(l yarn.Label) { q.labels = append(q.labels, l) })
	command.Read(f, "swatch", `a piece of your fabric and its mass, or the yarn it gave: "6 in x 6 in = 15.5 g"`, parseSwatch, func(s yarn.Swatch) { q.swatch = &s })
	command.ReadEach(f, "counts", `other numbers of the pattern that must change with it: "98 (106) sts, multiple of 4 + 2", "91 rows"; may be repeated`, parseOthers, func(o others) { q.others = append(q.others, o) })
	if help, err := f.Parse(args); err != nil {
		return question{}, help, err
	}
	return q, nil, q.check()
}

// check returns an error for flags that do not go together.
func (q question) check() error {
	switch {
	case q.mine.Validate() != nil:
		return errors.New(`-gauge: missing; want your gauge, "14 sts and 11 rows = 4 in"`)
	case q.format != "markdown" && q.format != "json":
		return fmt.Errorf("-format: got %s, want markdown or json", text.Quote(q.format))
	case q.given(q.round) && q.given(q.body):
		return errors.New("-round: given beside -body; want one of them")
	case q.ease != nil && !q.given(q.body):
		return errors.New("-ease: given without -body; want your chest as well")
	case len(q.labels) > mostStrands:
		return fmt.Errorf("-label: given %d times, want at most %d strands", len(q.labels), mostStrands)
	case len(q.others) > 64:
		return fmt.Errorf("-counts: given %d times, want at most 64", len(q.others))
	}
	return nil
}

const mostStrands = 16 // as yarn.Swatch.HeldTogether takes

func (question) given(l gauge.Length) bool { return l.Unit.Valid() }

func length(s string) (gauge.Length, error) {
	l, err := gauge.ParseLength(s)
	if err == nil && l.Value.Sign() <= 0 {
		return l, errors.New("want more than 0")
	}
	return l, err
}

// parseSwatch reads "6 in x 6 in = 15.5 g", or with the length that it gave
// when it was unravelled: "6 in x 6 in = 32 yd".
func parseSwatch(s string) (w yarn.Swatch, err error) {
	if len(s) > text.Limit {
		return w, errors.New("text too long; at most 10000 characters")
	}
	sides, took, ok := strings.Cut(s, "=")
	width, height, ok2 := strings.Cut(strings.ReplaceAll(sides, "×", "x"), "x")
	if !ok || !ok2 {
		return w, errors.New(`want two sides and a mass: "6 in x 6 in = 15.5 g"`)
	}
	if w.Width, err = length(strings.TrimSpace(width)); err != nil {
		return w, err
	}
	if w.Height, err = length(strings.TrimSpace(height)); err != nil {
		return w, err
	}
	took = strings.TrimSpace(took)
	if w.Mass, err = yarn.ParseMass(took); err != nil {
		w.Mass = yarn.Mass{}
		if w.Yarn, err = yarn.ParseLength(took); err != nil {
			return w, errors.New(`want a mass ("15.5 g") or a length of yarn ("32 yd") after the =`)
		}
	}
	if w.Mass.Unit.Valid() && w.Mass.Value.Sign() == 0 || w.Yarn.Unit.Valid() && w.Yarn.Value.Sign() == 0 {
		return w, errors.New("want more than 0 after the =")
	}
	return w, w.Validate()
}
