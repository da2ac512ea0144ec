// Command proof reads a written pattern and says where its numbers do not agree
// with one another.
//
//	go run ./examples/proof pattern.md        findings, one a line; nothing where all agrees
//	go run ./examples/proof < pattern.md      the same from standard input
//	go run ./examples/proof -read pattern.md  what was read out of each line, and which lines were not
//
// The exit status is 1 if there is something to find; else 2 if a line that looks
// like one to check can't be read; else 0. Such lines are told on standard error,
// each with its cause, and the rest of the text is checked without them. A text
// that can't be read at all is refused with status 2 and one line that says why.
package main

import (
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"
)

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("proof", flag.ContinueOnError)
	flags.SetOutput(stderr)
	flags.Usage = func() {
		fmt.Fprintln(stderr, "usage: proof [flags] [file]; without a file, or with -, standard input is read")
		flags.PrintDefaults()
	}
	remarks := flags.Bool("remarks", false, "print remarks too: no faults, but worth a look; they don't change the exit status")
	asJSON := flags.Bool("json", false, "print the findings as a JSON list")
	asRead := flags.Bool("read", false, "print how each line with a number in it was read, instead of findings")
	if err := flags.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			return 0
		}
		return 2
	}
	fail := func(err error) int {
		fmt.Fprintln(stderr, err)
		return 2
	}
	s, err := load(flags.Args(), stdin)
	if err != nil {
		return fail(err)
	}
	p, err := read(s)
	if err != nil {
		return fail(err)
	}
	all := p.check()
	if *asRead {
		return write(stdout, stderr, p.report(), 0)
	}
	status, out := 0, []Finding{}
	if len(p.missed) > 0 {
		status = 2
		fmt.Fprint(stderr, p.unchecked())
	}
	for _, f := range all {
		if !f.Remark {
			status = 1
		}
		if !f.Remark || *remarks {
			out = append(out, f)
		}
	}
	if *asJSON {
		b, err := json.MarshalIndent(out, "", "  ")
		if err != nil {
			return fail(err)
		}
		return write(stdout, stderr, string(b)+"\n", status)
	}
	var text strings.Builder
	for _, f := range out {
		text.WriteString(f.String() + "\n")
	}
	return write(stdout, stderr, text.String(), status)
}

func write(stdout, stderr io.Writer, text string, status int) int {
	if _, err := io.WriteString(stdout, text); err != nil {
		fmt.Fprintln(stderr, err)
		return 2
	}
	return status
}

// load reads the text, a little more of it than may be read, so that a file
// without end costs no more than one that is too long.
func load(rest []string, stdin io.Reader) (string, error) {
	in := stdin
	switch {
	case len(rest) > 1:
		return "", fmt.Errorf("%d files, want one", len(rest))
	case len(rest) == 1 && rest[0] != "-":
		f, err := os.Open(rest[0])
		if err != nil {
			return "", err
		}
		defer f.Close()
		in = f
	}
	b, err := io.ReadAll(io.LimitReader(in, maxText+1))
	return string(b), err
}
