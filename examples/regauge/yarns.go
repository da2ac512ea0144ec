package main

import (
	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/examples/internal/garment"
	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/yarn"
)

// strands are the yarns that the fabric is worked with: hers, one for each
// label, or that of the pattern. The same label twice is one yarn, doubled.
func (q question) strands(b brief.Brief) (each, distinct []yarn.Yarn) {
	labels := q.labels
	if len(labels) == 0 {
		labels = []yarn.Label{b.Yarn.Label}
	}
	seen := map[string]bool{}
	for _, l := range labels {
		y := yarn.Yarn{Name: l.String(), Label: l}
		each = append(each, y)
		if !seen[y.Name] {
			seen[y.Name] = true
			distinct = append(distinct, y)
		}
	}
	return each, distinct
}

// yarn returns what a garment takes of each yarn. The fabric goes by her own
// swatch; without one, by what the pattern's own fabric takes, to a stitch or to
// an area, whichever is more: see the README. The first strand sews.
func (q question) yarn(b brief.Brief, pattern garment.Size, made layout.Layout) ([]yarn.Quantity, error) {
	each, distinct := q.strands(b)
	area, stitches := size(made)
	var lines []yarn.Line
	if q.swatch != nil {
		fabric, err := q.swatch.HeldTogether("fabric", area, each...)
		if err != nil {
			return nil, err
		}
		lines = fabric
	} else {
		var took gauge.Measurement
		for _, l := range pattern.Yarn.Lines {
			if l.Part == yarn.Fabric {
				took = took.Add(l.Length)
			}
		}
		fabric, err := estimate(took, pattern.Sewn.Layout, area, stitches)
		if err != nil {
			return nil, err
		}
		for _, y := range each {
			fabric.Yarn = y.Name
			lines = append(lines, fabric)
		}
	}
	seams, err := made.Seams()
	if err != nil {
		return nil, err
	}
	for _, s := range seams {
		line, err := b.Yarn.Sewing.Seam(s.Name, s.Length())
		if err != nil {
			return nil, err
		}
		line.Yarn = each[0].Name
		lines = append(lines, line)
	}
	return yarn.BuyEach(distinct, b.Yarn.Margin, lines...)
}

// size returns the area of all pieces and their stitches, row for row.
func size(l layout.Layout) (area yarn.Area, stitches gauge.Ratio) {
	for _, p := range l.Pieces {
		width, _ := p.Width() // of a layout that was made, which is valid
		height, _ := p.Height()
		area = area.Add(yarn.Rectangle(width, height))
		stitches = stitches.Add(gauge.Int(p.Stitches).Mul(gauge.Int(p.Rows)))
	}
	return area, stitches
}

// estimate returns the fabric of another garment in the pattern's stitch. By
// stitches a stitch takes what it took; by area a square inch does. A looser
// stitch takes more yarn than before, but not in proportion to its area; so the
// truth lies between the two, the larger is safe, and the line says how much
// less it may be.
func estimate(took gauge.Measurement, pattern layout.Layout, area yarn.Area, stitches gauge.Ratio) (yarn.Line, error) {
	oldArea, oldStitches := size(pattern)
	perStitch, err := stitches.Quo(oldStitches)
	if err != nil {
		return yarn.Line{}, err
	}
	perArea, err := area.Per(oldArea)
	if err != nil {
		return yarn.Line{}, err
	}
	more, less := took.Times(perStitch), took.Times(perArea)
	how := "by stitches"
	if more.Cmp(less) < 0 {
		more, less, how = less, more, "by area"
	}
	return yarn.Line{Name: "fabric", Part: yarn.Fabric, Length: more, Less: more.Sub(less),
		Why: "in proportion to the pattern's fabric, " + how + ", which is the safe side"}, nil
}
