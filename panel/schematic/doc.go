// Package schematic draws a layout to scale, as a picture in SVG 1.1 that stands
// alone: no script, no style sheet, no font file, no link.
//
// # What is drawn
//
// Every piece lies right side up as the layout describes it, all to one scale,
// with dimension lines in both units. Stretches of an edge bear letters; the key
// below the drawing gives for each letter what it is, its count, and its length
// in both units. In one drawing for all sizes the dimension lines bear letters as
// well, the key holds runs, and the shape is that of the size that is named.
// Letters keep long text out of the drawing, so that nothing overlaps whatever
// the proportions, and leave the key large enough to read on a phone. A page with
// type of its own, large print say, draws with Options.KeyApart and sets All.Key
// beside the drawing.
//
// Everything is black on white and told apart by its line: cross strokes for
// what is joined, dashes for openings, dash and dot for a fold, a row of dots
// along the foundation edge, and an arrow the way the work goes. Dots on an edge
// are places for markers.
//
// # Limits
//
// A drawing is 480 units wide, and more only where one piece needs it. Pieces are
// placed to a tenth of a unit; no number in the key is taken from the drawing.
// Widths of text are estimated from the widest of the common sans-serif faces.
package schematic
