package main

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"strings"

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
func ask(args []string) (q question, usage []byte, err error) {
	var out bytes.Buffer
	f := flag.NewFlagSet("regauge", flag.ContinueOnError)
	f.SetOutput(&out)
	var bad *flagError // package flag would put the whole value in front of it
	f.StringVar(&q.file, "brief", "", "the brief to read, - for standard input (default: one that the program holds)")
	f.StringVar(&q.format, "format", "markdown", "what to print: markdown or json")
	f.StringVar(&q.size, "size", "", "one size of the pattern alone, by its name: M, or XL–2X")
	f.BoolVar(&q.why, "why", false, "explain every new number")
	read(f, &bad, "gauge", `your gauge, washed and blocked: "14 sts and 11 rows = 4 in"`, gauge.ParseGauge, func(g gauge.Gauge) { q.mine = g })
	read(f, &bad, "round", `the round you want: "47 in"`, length, func(l gauge.Length) { q.round = l })
	read(f, &bad, "body", `your chest, to find the round with -ease or the ease of the pattern: "37 in"`, length, func(l gauge.Length) { q.body = l })
	read(f, &bad, "ease", `what the garment is to measure beyond your chest: "9 in", "-5%"`, grade.ParseEase, func(e grade.Ease) { q.ease = &e })
	read(f, &bad, "arm", `your upper arm, instead of that in the size table`, length, func(l gauge.Length) { q.arm = l })
	read(f, &bad, "head", `your head, where the garment goes over it`, length, func(l gauge.Length) { q.head = l })
	read(f, &bad, "label", `your yarn: "110 m = 50 g"; give it once for each strand that you hold together`, yarn.ParseLabel, func(l yarn.Label) { q.labels = append(q.labels, l) })
	read(f, &bad, "swatch", `a piece of your fabric and its mass, or the yarn it gave: "6 in x 6 in = 15.5 g"`, parseSwatch, func(s yarn.Swatch) { q.swatch = &s })
	read(f, &bad, "counts", `other numbers of the pattern that must change with it: "98 (106) sts, multiple of 4 + 2", "91 rows"; may be repeated`, parseOthers, func(o others) { q.others = append(q.others, o) })
	switch err := f.Parse(args); {
	case errors.Is(err, flag.ErrHelp):
		return question{}, out.Bytes(), err
	case bad != nil:
		return question{}, nil, bad
	case err != nil:
		return question{}, nil, errors.New(clip(err.Error()))
	case f.NArg() > 0:
		return question{}, nil, fmt.Errorf("unexpected %s after the flags", text.Quote(f.Arg(0)))
	}
	return q, nil, q.check()
}

// clip keeps a message on one line that can be read.
func clip(s string) string {
	r := []rune(strings.Join(strings.Fields(s), " "))
	if len(r) > 200 {
		return string(r[:200]) + "…"
	}
	return string(r)
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

// read adds a flag that a parser of the library reads.
func read[T any](f *flag.FlagSet, bad **flagError, name, usage string, parse func(string) (T, error), set func(T)) {
	f.Func(name, usage, func(s string) error {
		v, err := parse(s)
		if err != nil {
			*bad = &flagError{name, s, err}
			return err
		}
		set(v)
		return nil
	})
}

// flagError says which flag can't be read, and why.
type flagError struct {
	flag, text string
	err        error
}

func (e *flagError) Error() string {
	var p *gauge.ParseError
	var f *gauge.FieldError
	why := e.err.Error()
	switch {
	case errors.As(e.err, &p):
		why = p.Cause
	case errors.As(e.err, &f):
		why = "got " + f.Got + ", want " + f.Want
	}
	return "-" + e.flag + ": " + text.Quote(e.text) + ": " + why
}

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
