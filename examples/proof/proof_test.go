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
// as corrected gives nothing.
func TestErrata(t *testing.T) {
	wrong := files(t, "testdata/errata/*.wrong.txt")
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
