package panel

import (
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/row"
	"github.com/stretchr/testify/require"
)

const (
	plain = "hdc in each st across"
	lace  = "dc in first st, *ch 2, sk 2, dc in next st; rep from * across"
	fill  = "hdc in each st and 2 hdc in each ch-2 sp across"
)

func rows(texts ...string) []row.Row {
	out := make([]row.Row, len(texts))
	for i, s := range texts {
		out[i] = row.Must(s, row.US)
	}
	return out
}

func orchard() Plan {
	return Plan{
		Opening: rows("fhdc", plain, lace, fill),
		Repeat:  rows(plain, plain, plain, lace, fill),
		Closing: rows(plain),
	}
}

func TestLegal(t *testing.T) {
	r, err := orchard().Legal()
	require.NoError(t, err)
	require.Equal(t, gauge.Rule{Multiple: 3, Plus: 1, Least: 4}, r)
}

// A plan of a rectangle is refused where a row leaves chain spaces, works into
// spaces that are not there or of another size, or changes the count.
func TestPlanRefusals(t *testing.T) {
	for name, c := range map[string]struct {
		plan  Plan
		part  Part
		index int
		pass  int
		err   error
	}{
		"plain over lace":        {Plan{rows("fhdc", plain, lace), rows(plain), nil}, Repeat, 0, 1, row.ErrPlace},
		"spaces that aren't":     {Plan{rows("fhdc", plain), rows(fill), nil}, Repeat, 0, 1, row.ErrNoPlace},
		"space of another size":  {Plan{rows("fhdc", lace), rows("hdc in each st and 3 hdc in each ch-3 sp across"), nil}, Repeat, 0, 1, row.ErrPlace},
		"too few into the space": {Plan{rows("fhdc", lace, "hdc in each st and in each ch-2 sp across"), nil, nil}, Opening, 2, 0, row.ErrCount},
		"repeat to itself":       {Plan{rows("fhdc", plain), rows(plain, lace), rows(fill)}, Repeat, 0, 2, row.ErrPlace},
		"closing without repeat": {Plan{rows("fhdc", plain), rows(lace, fill, lace), rows(fill)}, Repeat, 0, 2, row.ErrPlace},
		"seam to the closing":    {Plan{rows("fhdc", lace), nil, rows(plain)}, Closing, 0, 0, row.ErrPlace},
		"growing":                {Plan{rows("fhdc"), rows("2 hdc in first st, hdc in each st across"), nil}, Repeat, 0, 1, row.ErrCount},
		"foundation again":       {Plan{rows("fhdc"), rows("fhdc"), nil}, Repeat, 0, 1, row.ErrFoundation},
		"no foundation":          {Plan{rows(plain), nil, nil}, Opening, 0, 0, nil},
	} {
		t.Run(name, func(t *testing.T) {
			err := c.plan.Validate()
			var re *RowError
			require.ErrorAs(t, err, &re)
			require.Equal(t, c.part, re.Part)
			require.Equal(t, c.index, re.Index)
			require.Equal(t, c.pass, re.Pass)
			if c.err != nil {
				require.ErrorIs(t, err, c.err)
			}
		})
	}
}

func TestLaceAsLastRow(t *testing.T) {
	p := Plan{Opening: rows("fhdc", plain), Closing: rows(lace)}
	require.NoError(t, p.Validate())
}
