package panel

import (
	"example.com/panelmath/gauge"
)

// Panel is one rectangle in one size. The rows run along its length; its width
// grows row by row.
type Panel struct {
	Stitches gauge.Count       // along the row
	Rows     gauge.Count       // across
	Repeats  int               // of the plan's repeat
	Chains   int               // chains to begin; 0 with a foundation row
	Length   gauge.Measurement // finished, along the row
	Width    gauge.Measurement // finished, across the rows
}

// Panel returns the panel of this plan that comes nearest to a length along the
// row and a width across the rows: the legal stitch count nearest to the
// length and the number of repeats nearest to the width, ties to the larger.
// The gauge is the finished one.
//
// It returns the errors of Legal, Fit and Gauge.Validate, and gauge.ErrBounds
// for a count beyond gauge.MaxCount.
func (p Plan) Panel(length, width gauge.Measurement, g gauge.Gauge) (Panel, error) {
	if err := g.Validate(); err != nil {
		return Panel{}, err
	}
	sol, err := p.single()
	if err != nil {
		return Panel{}, err
	}
	stitches, err := g.Stitches.Round(length, sol.Rule)
	if err != nil {
		return Panel{}, err
	}
	rows, repeats, err := p.Fit(width, g.Rows)
	if err != nil {
		return Panel{}, err
	}
	out := Panel{Stitches: stitches, Rows: rows, Repeats: repeats, Chains: sol.Chains(stitches.Value)}
	if out.Length, err = g.Stitches.Measure(gauge.Int(stitches.Value)); err != nil {
		return Panel{}, err
	}
	if out.Width, err = g.Rows.Measure(gauge.Int(rows.Value)); err != nil {
		return Panel{}, err
	}
	return out, nil
}
