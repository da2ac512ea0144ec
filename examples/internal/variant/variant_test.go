package variant_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/examples/internal/variant"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

const orchard = "../../pattern/orchard-wrap.json"

func open(t *testing.T) variant.Brief {
	t.Helper()
	b, err := variant.Open(orchard, nil, nil)
	require.NoError(t, err)
	return b
}

// TestOnly: every size alone is what it is among the others.
func TestOnly(t *testing.T) {
	b := open(t)
	all, err := b.Make()
	require.NoError(t, err)
	require.Len(t, all.Sizes, 4)
	for i, want := range all.Result(true).Sizes {
		one, err := b.Only(i).Make()
		require.NoError(t, err)
		got := one.Result(true).Sizes
		require.Len(t, got, 1)
		require.Empty(t, cmp.Diff(want, got[0]))
	}
}

// TestWith: a changed field takes effect, and the brief it came from keeps its own.
func TestWith(t *testing.T) {
	b := open(t)
	before, err := b.Make()
	require.NoError(t, err)
	changed, err := b.With("length", "30 in").Make()
	require.NoError(t, err)
	require.Equal(t, "30.154", changed.Result(false).Sizes[0].Length) // 196 sts at 13 over 8 in
	require.Equal(t, 196, changed.Sizes[0].Panel.Stitches.Value)
	after, err := b.Make()
	require.NoError(t, err)
	require.Empty(t, cmp.Diff(before.Result(true), after.Result(true)))

	require.True(t, b.Has("worked_gauge"))
	require.False(t, b.Without("worked_gauge").Has("worked_gauge"))
	_, err = b.Without("gauge").Make()
	require.EqualError(t, err, "gauge: missing")
	_, err = b.With("length", "30 inn").Make()
	require.EqualError(t, err, `length: "30 inn": unknown unit "inn"`)
}

func TestOpen(t *testing.T) {
	text, err := os.ReadFile(orchard)
	require.NoError(t, err)
	held, err := variant.Open("", nil, text)
	require.NoError(t, err)
	require.Equal(t, "Orchard wrap", held.Name)
	piped, err := variant.Open("-", strings.NewReader(string(text)), nil)
	require.NoError(t, err)
	require.Equal(t, "Orchard wrap", piped.Name)

	_, err = variant.Open(filepath.Join(t.TempDir(), "none.json"), nil, nil)
	require.ErrorIs(t, err, os.ErrNotExist)
	_, err = variant.Open("-", strings.NewReader(`{"name": "a", "name": "b"}`), nil)
	var e *brief.Error
	require.ErrorAs(t, err, &e)
	require.Equal(t, "name", e.Field)
}

func TestSize(t *testing.T) {
	b := open(t)
	for _, name := range []string{"XL–2X", "XL-2X", "xl – 2x"} {
		i, err := b.Size(name)
		require.NoError(t, err)
		require.Equal(t, 2, i)
	}
	_, err := b.Size("XXL")
	require.EqualError(t, err, `got "XXL", want one of XS–S, M–L, XL–2X, 3X–5X`)
}

// TestAgain: a variant of a variant is read from what the first one left.
func TestAgain(t *testing.T) {
	one, err := open(t).Only(1, 3).Again()
	require.NoError(t, err)
	require.Len(t, one.Groups, 2)
	two, err := one.Only(1).Make()
	require.NoError(t, err)
	require.Equal(t, "3X–5X", two.Sizes[0].Group.Label())
	require.Equal(t, 172, two.Sizes[0].Panel.Stitches.Value)
}
