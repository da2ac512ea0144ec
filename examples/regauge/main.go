// Command regauge holds a maker's gauge, and her yarn, against a finished brief:
// what each size measures if she follows it as written, which size to follow,
// and new numbers in every place.
//
//	go run ./examples/regauge -gauge "14 sts and 11 rows = 4 in"
//	go run ./examples/regauge -gauge "14 sts and 11 rows = 4 in" -body "37 in" -ease "9 in"
//	go run ./examples/regauge -gauge "7 sts = 2 in, 11 rows = 4 in" -size L -label "110 m = 50 g"
//
// What does not hold is a one-line error that names the flag, or the field and
// the size of the brief; the exit status is 2 and nothing is printed on standard
// output.
package main

import (
	_ "embed"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"

	"example.com/panelmath/examples/internal/variant"
)

//go:embed quayside-wrap.json
var quaysideWrap []byte

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	text, err := regauge(args, stdin)
	if err != nil && !errors.Is(err, flag.ErrHelp) {
		fmt.Fprintln(stderr, err)
		return 2
	}
	if _, err := stdout.Write(text); err != nil {
		fmt.Fprintln(stderr, err)
		return 1
	}
	return 0
}

// regauge returns all that is to be printed, or an error and nothing. Asked for
// help it returns both.
func regauge(args []string, stdin io.Reader) ([]byte, error) {
	q, usage, err := ask(args)
	if err != nil {
		return usage, err
	}
	b, err := variant.Open(q.file, stdin, quaysideWrap)
	if err != nil {
		return nil, err
	}
	a, err := answer(b, q)
	if err != nil {
		return nil, err
	}
	if q.format == "json" {
		text, err := json.MarshalIndent(a.result(), "", "  ")
		return append(text, '\n'), err
	}
	d, err := a.document()
	return []byte(d.Markdown()), err
}
