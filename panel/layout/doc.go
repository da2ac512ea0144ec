// Package layout describes garments as rectangles laid flat, right sides up:
// which edges meet, what stays open, where it folds.
//
// # Parts
//
// A Layout is a list of pieces. A Piece is a rectangle of so many stitches and
// rows at a finished gauge, drawn as it lies; Foundation tells at which of its
// four places the work began, so that an edge is known to be of stitches or of
// row ends. Each edge is cut into stretches that add up to it, every one of
// them sewn or open. The stretches of a seam bear its name on both sides, Joined
// on the one and Partner on the other; the stretches of an opening share a name
// in the same way. A Fold is a line across a piece, at half a stitch where the
// count is odd.
//
// From these follow the seams, with the count and the exact length of both
// sides, and the openings, all round. Nothing is rounded.
//
// # Ready garments
//
// Five are made from counts: OpenFront, ClosedFront, FrontAndBack (with or
// without sleeves, or with open sides), Cocoon and Poncho. Their Rectangle has
// its rows lengthwise (the length is counted in stitches) or crosswise (it is
// counted in rows). Each reports its finished measures by name, exactly: round,
// length, width, armhole depth, and so on; the doc of each lists them. Package
// seam makes them from wanted openings instead, and tells the arithmetic.
//
//	garment       pieces                         seams
//	open front    2, hem over shoulder to hem    centre back, sides
//	closed front  2, hem over shoulder to hem    centre back, centre front, sides
//	front, back   2, hem to shoulder, 0-2 sleeves  shoulders, sides, armholes, underarms
//	cocoon        1, folded at its middle        sides
//	poncho        2                              each short end to the other's long side
//
// An app describes its own garment with the same parts; the example shows a
// cardigan of five rectangles.
//
// # Place and turn
//
// Place goes by the clock: bottom, left, top, right. Where the foundation lies at
// one of them, row 1 (right side facing, worked from right to left by the right
// hand) begins at the place before it and ends at the place after it. Two equal
// panels on either side of a body are one piece, turned round: in the open front
// the foundation of the left panel lies at its right and that of the right panel
// at its left. The left hand mirrors the whole.
//
// # Errors and limits
//
// Every error is a *gauge.FieldError that names the field; those that say that
// the parts make no garment wrap ErrLayout. Counts go to gauge.MaxCount, pieces to
// MaxPieces, stretches of an edge to MaxStretches, names to 10 000 bytes. The two
// sides of a seam may differ in length by Layout.Easing, a tenth by default.
//
// A layout is plain data and goes through JSON: places and kinds by name,
// gauges as "13 sts and 9 rows = 4 in", exact numbers as fractions.
package layout
