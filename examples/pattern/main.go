// Command pattern turns a designer's brief into a complete graded pattern.
//
//	go run ./examples/pattern                          the embedded brief, as Markdown
//	go run ./examples/pattern -brief my.json           another brief; - reads standard input
//	go run ./examples/pattern -format html             a page to print; -large for large print
//	go run ./examples/pattern -size M–L                one size, with plain numbers
//	go run ./examples/pattern -format json -why        numbers, each with the sentence that explains it
//
// A brief that does not hold is a one-line error that names the field and the
// size; the exit status is 2 and nothing is printed on standard output.
package main

import (
	"bytes"
	_ "embed"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"

	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/examples/internal/garment"
)

//go:embed orchard-wrap.json
var orchardWrap []byte

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("pattern", flag.ContinueOnError)
	flags.SetOutput(stderr)
	file := flags.String("brief", "", "the brief to read, - for standard input (default: one that the program holds)")
	format := flags.String("format", "markdown", "what to print: markdown, html or json")
	size := flags.String("size", "", "one size alone, by its label: M–L, or M-L")
	large := flags.Bool("large", false, "large print, with -format html")
	svg := flags.String("svg", "", "a file to write the schematic to, as SVG")
	why := flags.Bool("why", false, "explain every derived number in every size")
	if err := flags.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			return 0
		}
		return 2
	}
	var empty error // a variable of the shell that was never set
	flags.Visit(func(f *flag.Flag) {
		if f.Value.String() == "" {
			empty = fmt.Errorf("%s: empty", f.Name)
		}
	})
	if empty != nil {
		fmt.Fprintln(stderr, empty)
		return 2
	}
	text, remarks, err := pattern(flags.Args(), options{*file, *format, *size, *svg, *large, *why}, stdin)
	if err != nil {
		fmt.Fprintln(stderr, err)
		return 2
	}
	for _, r := range remarks {
		fmt.Fprintln(stderr, "remark:", r)
	}
	if _, err := stdout.Write(text); err != nil {
		fmt.Fprintln(stderr, err)
		return 1
	}
	return 0
}

type options struct {
	brief, format, size, svg string
	large, why               bool
}

// pattern returns all that is to be printed and what a designer should look at,
// or an error and nothing.
func pattern(rest []string, o options, stdin io.Reader) (text []byte, remarks []string, err error) {
	if len(rest) > 0 {
		return nil, nil, fmt.Errorf("unexpected %q after the flags", rest[0])
	}
	in, err := open(o.brief, stdin)
	if err != nil {
		return nil, nil, err
	}
	defer in.Close()
	b, err := brief.Read(in)
	if err != nil {
		return nil, nil, err
	}
	g, err := garment.Make(b)
	if err != nil {
		return nil, nil, err
	}
	if o.size != "" {
		if g, err = g.Only(o.size); err != nil {
			return nil, nil, err
		}
	}
	text, err = write(g, o)
	if err != nil || o.svg == "" {
		return text, g.Remarks(), err
	}
	drawing, err := g.Schematic()
	if err != nil {
		return nil, nil, err
	}
	return text, g.Remarks(), os.WriteFile(o.svg, drawing, 0o666)
}

func write(g garment.Garment, o options) ([]byte, error) {
	if o.large && o.format != "html" {
		return nil, fmt.Errorf("large: got format %q, want html", o.format)
	}
	switch o.format {
	case "json":
		text, err := json.MarshalIndent(g.Result(o.why), "", "  ")
		return append(text, '\n'), err
	case "markdown":
		d, err := g.Document(garment.Options{Why: o.why})
		return []byte(d.Markdown()), err
	case "html":
		d, err := g.Document(garment.Options{Why: o.why, Schematic: true})
		if err != nil {
			return nil, err
		}
		var page bytes.Buffer
		err = d.HTML(&page, o.large)
		return page.Bytes(), err
	}
	return nil, fmt.Errorf("format: got %q, want markdown, html or json", o.format)
}

func open(file string, stdin io.Reader) (io.ReadCloser, error) {
	switch file {
	case "":
		return io.NopCloser(bytes.NewReader(orchardWrap)), nil
	case "-":
		return io.NopCloser(stdin), nil
	}
	f, err := os.Open(file)
	if err != nil {
		return nil, fmt.Errorf("brief: %w", err)
	}
	return f, nil
}
