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
	"io"
	"os"

	"example.com/panelmath/examples/internal/command"
	"example.com/panelmath/examples/internal/variant"
)

//go:embed quayside-wrap.json
var quaysideWrap []byte

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	return command.Run(regauge, args, stdin, stdout, stderr)
}

func regauge(args []string, stdin io.Reader) ([]byte, error) {
	q, help, err := ask(args)
	if err != nil {
		return help, err
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
