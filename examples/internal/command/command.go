// Package command is the frame of an example program: everything it prints or
// one line that says what does not hold, and flags that parsers of the library
// read.
package command

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"io"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
)

// Program returns all that is to be printed, or an error and nothing. Asked for
// help it returns the help and flag.ErrHelp.
type Program func(args []string, stdin io.Reader) ([]byte, error)

// Run runs a program and returns its exit status: 2 for an error, which is one
// line on stderr; 1 if stdout can't be written.
func Run(p Program, args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	out, err := p(args, stdin)
	if err != nil && !errors.Is(err, flag.ErrHelp) {
		fmt.Fprintln(stderr, err)
		return 2
	}
	if _, err := stdout.Write(out); err != nil {
		fmt.Fprintln(stderr, err)
		return 1
	}
	return 0
}

// Flags is a set of flags that complain in one line.
type Flags struct {
	*flag.FlagSet
	usage *bytes.Buffer
	bad   *flagError // package flag would put the whole value in front of it
}

// New returns a set without flags for the program of that name.
func New(name string) *Flags {
	f := &Flags{FlagSet: flag.NewFlagSet(name, flag.ContinueOnError), usage: &bytes.Buffer{}}
	f.SetOutput(f.usage)
	return f
}

// Read adds a flag that is read by a parser. Given twice, it is refused: one of
// the two was not meant.
func Read[T any](f *Flags, name, usage string, parse func(string) (T, error), set func(T)) {
	given := false
	ReadEach(f, name, usage, func(s string) (v T, err error) {
		if given {
			return v, errors.New("given twice; want one")
		}
		given = true
		return parse(s)
	}, set)
}

// ReadEach adds a flag that may be given several times; set is called for each.
func ReadEach[T any](f *Flags, name, usage string, parse func(string) (T, error), set func(T)) {
	f.Func(name, usage, func(s string) error {
		v, err := parse(s)
		if err != nil {
			f.bad = &flagError{name, s, err}
			return err
		}
		set(v)
		return nil
	})
}

// Text adds a flag that holds a text. An empty one is refused: it is a variable
// of the shell that was never set.
func Text(f *Flags, name, usage string, set func(string)) {
	Read(f, name, usage, func(s string) (string, error) {
		if s == "" {
			return "", errors.New("empty")
		}
		return s, nil
	}, set)
}

// Parse reads the arguments, which are all flags. Asked for help it returns the
// help and flag.ErrHelp.
func (f *Flags) Parse(args []string) (help []byte, err error) {
	switch err := f.FlagSet.Parse(args); {
	case errors.Is(err, flag.ErrHelp):
		return f.usage.Bytes(), err
	case f.bad != nil:
		return nil, f.bad
	case err != nil:
		return nil, errors.New(clip(err.Error()))
	case f.NArg() > 0:
		return nil, fmt.Errorf("unexpected %s after the flags", text.Quote(f.Arg(0)))
	}
	return nil, nil
}

// clip keeps a message on one line that can be read.
func clip(s string) string {
	r := []rune(strings.Join(strings.Fields(s), " "))
	if len(r) > 200 {
		return string(r[:200]) + "…"
	}
	return string(r)
}

// TooMuch returns the error of a quantity of yarn that is beyond reason because
// of a flag.
func TooMuch(flag, size string, err error) error {
	why := err.Error()
	var f *gauge.FieldError
	if errors.As(err, &f) {
		got := f.Got
		if strings.HasSuffix(f.Field, "Skeins") {
			got += " skeins"
		}
		why = "got " + got + ", want " + f.Want
	}
	return fmt.Errorf("-%s: size %s takes more yarn than can be bought: %s", flag, size, why)
}

// flagError says which flag can't be read, and why.
type flagError struct {
	flag, text string
	err        error
}

func (e *flagError) Error() string {
	why := e.err.Error()
	var p *gauge.ParseError
	if errors.As(e.err, &p) {
		why = p.Cause // the text stands before it already
	}
	return "-" + e.flag + ": " + text.Quote(e.text) + ": " + why
}
