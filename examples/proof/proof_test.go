package main

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the golden files")

// cli runs the program and returns what it printed.
func cli(in string, args ...string) (code int, out, errs string) {
	var stdout, stderr bytes.Buffer
	code = run(args, strings.NewReader(in), &stdout, &stderr)
	return code, stdout.String(), stderr.String()
}

func golden(t *testing.T, file, got string) {
	t.Helper()
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err)
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("%s (-want +got):\n%s", file, diff)
	}
}

func files(t *testing.T, pattern string) []string {
	t.Helper()
	all, err := filepath.Glob(pattern)
	require.NoError(t, err)
	require.NotEmpty(t, all)
	return all
}

// TestErrata: published corrections and fault reports, retold as small texts,
// each with its source in a comment line. What was wrong is found, and the text
// as corrected gives nothing. Beside them stand invented texts as they are pasted
// out of a document.
func TestErrata(t *testing.T) {
	wrong := files(t, "testdata/*/*.wrong.txt")
	require.GreaterOrEqual(t, len(wrong), 20)
	for _, file := range wrong {
		name := strings.TrimSuffix(file, ".wrong.txt")
		t.Run(filepath.Base(name), func(t *testing.T) {
			code, out, errs := cli("", file)
			require.Equal(t, 1, code, errs)
			require.Empty(t, errs)
			golden(t, name+".findings", out)

			code, out, errs = cli("", name+".right.txt")
			require.Equal(t, 0, code, out+errs)
			require.Empty(t, out)
			require.Empty(t, errs)
		})
	}
	for _, file := range files(t, "testdata/errata/*.txt") {
		b, err := os.ReadFile(file)
		require.NoError(t, err)
		require.Regexp(t, `(?m)^//.*https?://|^//.*PC-\d`, string(b), file)
	}
}

// TestPrintedPatterns: what the example program pattern prints is right, and so
// the program is silent.
func TestPrintedPatterns(t *testing.T) {
	for _, file := range files(t, "../pattern/testdata/*.md") {
		t.Run(filepath.Base(file), func(t *testing.T) {
			code, out, errs := cli("", file)
			require.Equal(t, 0, code, out+errs)
			require.Empty(t, out)
		})
	}
}

func TestFlags(t *testing.T) {
	const text = "Sizes: S (M, L, XL)\nGauge: 12 sts = 4 in\nWidth: 17 (18, 20, 20) in = 51 (54, 57, 60) sts\nDart: 9 (3, 4, 5) rows\nCast on: 10 (12, 14, 18) sts\n"
	code, out, errs := cli(text)
	require.Equal(t, 1, code, errs)
	require.Equal(t, "line 3, Width, size L: got 20 in, want 19 in: 57 sts at 12 sts = 4 in make that; 20 in take about 60 sts; or the gauge is about 11.5 sts = 4 in\n"+
		"line 4, Dart, size S: got 9, want 2: the list is 9 (3, 4, 5); the other sizes rise by 1 each\n", out)

	code, out, _ = cli(text, "-remarks", "-")
	require.Equal(t, 1, code)
	require.Contains(t, out, "line 5, Cast on, size XL (remark): got 18, want 16: the list is 10 (12, 14, 18); the other sizes rise by 2 each\n")

	code, out, _ = cli(text, "-json")
	require.Equal(t, 1, code)
	require.JSONEq(t, `[
		{"line": 3, "name": "Width", "size": "L", "got": "20 in", "want": "19 in", "why": "57 sts at 12 sts = 4 in make that; 20 in take about 60 sts; or the gauge is about 11.5 sts = 4 in"},
		{"line": 4, "name": "Dart", "size": "S", "got": "9", "want": "2", "why": "the list is 9 (3, 4, 5); the other sizes rise by 1 each"}]`, out)

	code, out, _ = cli("", "-json")
	require.Equal(t, 0, code)
	require.Equal(t, "[]\n", out)

	code, out, _ = cli(text+"Fold at 12 sts.\n", "-read")
	require.Equal(t, 0, code)
	require.Equal(t, "line 2 [gauge 12 sts = 4 in]: Gauge: 12 sts = 4 in\nline 3 [equation]: Width: 17 (18, 20, 20) in = 51 (54, 57, 60) sts\nline 4 [list]: Dart: 9 (3, 4, 5) rows\n"+
		"line 5 [list]: Cast on: 10 (12, 14, 18) sts\nline 6 [NOT CHECKED]: Fold at 12 sts.\n", out)

	for _, args := range [][]string{{"-nonsense"}, {"no-such-file.txt"}, {"a", "b"}} {
		code, out, errs := cli("", args...)
		require.Equal(t, 2, code)
		require.Empty(t, out)
		require.NotEmpty(t, errs)
	}
}

// TestReadme: the equations that the README shows are read, and agree at a gauge
// that makes them.
func TestReadme(t *testing.T) {
	b, err := os.ReadFile("README.md")
	require.NoError(t, err)
	_, text, ok := strings.Cut(string(b), "leaves a sum to the reader:\n")
	require.True(t, ok)
	text, _, ok = strings.Cut(text, "\nA side is a sum")
	require.True(t, ok)
	for l := range strings.Lines(strings.TrimSpace(text)) {
		l = "Gauge: 24 sts = 10 cm\n" + strings.TrimSpace(l)
		code, out, errs := cli(l)
		require.Equal(t, 0, code, l+"\n"+out+errs)
		_, out, _ = cli(l, "-read")
		require.Regexp(t, `line 2 .(equation|list)`, out, l)
	}
}
