// Command onhand answers what the yarn at hand makes: the largest size of a
// brief, what is left or short for every size, and, where a size takes too much,
// how long or how wide the yarn lets it be.
//
//	go run ./examples/onhand -have "6 skeins"
//	go run ./examples/onhand -have "4 skeins and 35 g" -size 8
//	go run ./examples/onhand -have "900 yd" -label "210 m = 50 g" -brief my.json
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

//go:embed ferry-jacket.json
var ferryJacket []byte

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	return command.Run(onhand, args, stdin, stdout, stderr)
}

func onhand(args []string, stdin io.Reader) ([]byte, error) {
	q, help, err := ask(args)
	if err != nil {
		return help, err
	}
	b, err := variant.Open(q.file, stdin, ferryJacket)
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
	return []byte(a.document().Markdown()), nil
}
