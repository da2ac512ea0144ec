package command_test

import (
	"bytes"
	"errors"
	"flag"
	"io"
	"strings"
	"testing"

	"example.com/panelmath/examples/internal/command"
	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"github.com/stretchr/testify/require"
)

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("disk full") }

func TestRun(t *testing.T) {
	program := func(out string, err error) command.Program {
		return func([]string, io.Reader) ([]byte, error) { return []byte(out), err }
	}
	for _, c := range []struct {
		name    string
		program command.Program
		stdout  io.Writer
		code    int
		out     string
		errs    string
	}{
		{"done", program("numbers", nil), &bytes.Buffer{}, 0, "numbers", ""},
		{"refused", program("", errors.New("-gauge: missing")), &bytes.Buffer{}, 2, "", "-gauge: missing\n"},
		{"help", program("usage", flag.ErrHelp), &bytes.Buffer{}, 0, "usage", ""},
		{"no room", program("numbers", nil), broken{}, 1, "", "disk full\n"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var stderr bytes.Buffer
			require.Equal(t, c.code, command.Run(c.program, nil, nil, c.stdout, &stderr))
			require.Equal(t, c.errs, stderr.String())
			if b, ok := c.stdout.(*bytes.Buffer); ok {
				require.Equal(t, c.out, b.String())
			}
		})
	}
}

func TestTooMuch(t *testing.T) {
	_, _, skeins := yarn.MustLabel("1 mm = 100 g").Skeins(yarn.MustLength("1000 m").Measurement())
	for _, c := range []struct {
		err  error
		want string
	}{
		{skeins, "-label: size S takes more yarn than can be bought: got more than 100000 skeins, want at most 100000"},
		{errors.New("no end of it"), "-label: size S takes more yarn than can be bought: no end of it"},
	} {
		require.EqualError(t, command.TooMuch("label", "S", c.err), c.want)
	}
}

func TestFlags(t *testing.T) {
	parse := func(args ...string) (got []gauge.Length, help []byte, err error) {
		f := command.New("ruler")
		command.ReadEach(f, "length", "a length", gauge.ParseLength, func(l gauge.Length) { got = append(got, l) })
		command.Read(f, "round", "a round", gauge.ParseLength, func(l gauge.Length) { got = append(got, l) })
		command.Text(f, "size", "a size", func(string) {})
		help, err = f.Parse(args)
		return got, help, err
	}
	got, _, err := parse("-length", "4 in", "-length=10 cm")
	require.NoError(t, err)
	require.Equal(t, "4 in 10 cm", got[0].String()+" "+got[1].String())

	_, help, err := parse("-h")
	require.ErrorIs(t, err, flag.ErrHelp)
	require.Contains(t, string(help), "a length")

	for _, c := range []struct {
		name string
		args []string
		want string
	}{
		{"value", []string{"-length", "4 inn"}, `-length: "4 inn": unknown unit "inn"`},
		{"long value", []string{"-length", strings.Repeat("9", 20_000)}, `-length: "` + strings.Repeat("9", 60) + `"… (20000 bytes): text too long; at most 10000 characters`},
		{"twice", []string{"-round", "4 in", "-round", "5 in"}, `-round: "5 in": given twice; want one`},
		{"text twice", []string{"-size", "S", "-size", "M"}, `-size: "M": given twice; want one`},
		{"empty text", []string{"-size", ""}, `-size: "": empty`},
		{"unknown", []string{"-width", "4 in"}, "flag provided but not defined: -width"},
		{"unknown and long", []string{"-" + strings.Repeat("x", 20_000)}, "flag provided but not defined: -" + strings.Repeat("x", 168) + "…"},
		{"no value", []string{"-length"}, "flag needs an argument: -length"},
		{"more words", []string{"-length", "4 in", "more"}, `unexpected "more" after the flags`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, help, err := parse(c.args...)
			require.EqualError(t, err, c.want)
			require.Empty(t, help)
		})
	}
}
