package garment_test

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"path/filepath"
	"testing"

	"example.com/panelmath/examples/internal/garment"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel"
	"example.com/panelmath/seam"
	"example.com/panelmath/yarn"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the files of testdata")

// kept is what an app would keep of a garment: one value of every struct on the
// way from a brief to a pattern.
type kept struct {
	Ease         grade.Ease
	Group        grade.Group
	Plan         panel.Plan
	Panel        panel.Panel
	Instructions panel.Instructions
	Sewn         seam.Garment
	Tails        seam.Tails
	Text         seam.Text
	Label        yarn.Label
	Swatch       *yarn.Swatch
	Margin       yarn.Margin
	Sewing       yarn.Sewing
	Yarn         yarn.Quantity
}

func indent(t *testing.T, v any) []byte {
	t.Helper()
	var b bytes.Buffer
	enc := json.NewEncoder(&b)
	enc.SetIndent("", "  ")
	enc.SetEscapeHTML(false)
	require.NoError(t, enc.Encode(v))
	return b.Bytes()
}

// TestJSON: what is written is read back to the same text, and a file that was
// written before still is.
func TestJSON(t *testing.T) {
	b := orchard(t)
	g, err := garment.Make(b)
	require.NoError(t, err)
	s := g.Sizes[1]
	rows, err := b.Plan.Write(panel.Writing{Stitches: grade.Run[int]{s.Panel.Stitches.Value}, Repeats: grade.Run[int]{s.Panel.Repeats}})
	require.NoError(t, err)
	tails, err := seam.PlanTails(s.Sewn.Layout, seam.Sewing{})
	require.NoError(t, err)
	text, err := seam.Finishing{}.Write(grade.Run[seam.Garment]{s.Sewn})
	require.NoError(t, err)
	first := indent(t, kept{b.Ease, s.Group, b.Plan, s.Panel, rows, s.Sewn, tails, text, b.Yarn.Label, b.Yarn.Swatch, b.Yarn.Margin, b.Yarn.Sewing, s.Yarn})

	var read kept
	dec := json.NewDecoder(bytes.NewReader(first))
	dec.DisallowUnknownFields()
	require.NoError(t, dec.Decode(&read))
	require.Equal(t, string(first), string(indent(t, read)))

	file := filepath.Join("testdata", "size.json")
	if *update {
		require.NoError(t, os.MkdirAll("testdata", 0o755))
		require.NoError(t, os.WriteFile(file, first, 0o644))
	}
	old, err := os.ReadFile(file)
	require.NoError(t, err)
	var before kept
	dec = json.NewDecoder(bytes.NewReader(old))
	dec.DisallowUnknownFields() // a field that was renamed or taken away is unknown now
	require.NoError(t, dec.Decode(&before))
	require.Equal(t, s.Yarn.Skeins, before.Yarn.Skeins)
	require.True(t, s.Yarn.Total.Equal(before.Yarn.Total))
	require.True(t, s.Panel.Width.Equal(before.Panel.Width))
	require.Equal(t, s.Sewn.Joins[0].Pairs, before.Sewn.Joins[0].Pairs)
	require.Equal(t, rows, before.Instructions)
	require.NoError(t, before.Sewn.Layout.Validate())
	require.NoError(t, before.Plan.Validate())
	require.NoError(t, before.Group.Validate())
}

// TestShared: one brief, with its chart, plan and layout values, is used by many
// at once. The race detector watches.
func TestShared(t *testing.T) {
	b := orchard(t)
	g, err := garment.Make(b)
	require.NoError(t, err)
	want, err := g.Document(garment.Options{Why: true, Schematic: true})
	require.NoError(t, err)
	texts := make(chan string)
	for range 16 {
		go func() {
			h, err := garment.Make(b)
			if err != nil {
				texts <- err.Error()
				return
			}
			d, err := h.Document(garment.Options{Why: true, Schematic: true})
			if err != nil {
				texts <- err.Error()
				return
			}
			_ = g.Remarks()
			texts <- d.Markdown()
		}()
	}
	for range 16 {
		require.Equal(t, want.Markdown(), <-texts)
	}
}
