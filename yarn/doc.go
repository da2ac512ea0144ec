// Package yarn works out how much yarn to buy, and how sure that is.
//
// # Model
//
// A Label is what one skein says: a Length and a Mass. A Line is the yarn that
// one thing takes, as an exact gauge.Measurement, with how much Less or More it
// might be and the arithmetic in one sentence. Buy adds lines up, adds the Margin
// as a line of its own, and returns a Quantity: the total, its mass by the label,
// and the skeins. Skeins is the one rounding, and it goes up; an exact multiple
// is not rounded further. Everything before it is a ratio, so that a caller can
// print the total to any place of any unit.
//
// Lines come from what a maker can measure:
//
//   - Swatch: the mass, or the unravelled length, of a finished rectangle;
//     Swatch.Fabric takes an Area, Swatch.HeldTogether several strands;
//   - Sewing and Tails: sewn seams, and ends to weave in;
//   - in package yarn/usage, Rates: the yarn of one stitch of each kind, measured
//     by unravelling or fitted from several swatches and panels;
//   - Project there: a finished piece and what it used, scaled by area or by a
//     number;
//   - RowSample there: one unravelled row, foundation chain or round of edging.
//
// Compare says whether two ways to one line agree within their spread. Line.Piece
// and Line.Yarn say which piece a line belongs to and which yarn or colour it is
// worked in: ByPiece adds up the pieces, BuyEach buys each yarn.
//
// # Spread
//
// Reading says how far the readings of a swatch may be off; Fabric carries it to
// the line, at its worst: the least yarn on the largest swatch, the most on the
// smallest. GaugeSpread does the same for a gauge that was counted over a short
// span, Line.Widen applies it. Spreads add up in a Quantity; Covers says whether
// the margin covers them and CoverMargin how large it has to be. A line without a
// spread is taken as exact, which no reading is.
//
// # Units and constants
//
// Lengths of yarn are in any gauge.Unit, masses in g, kg, oz and lb. The pound is
// 453.59237 g exactly, the ounce a sixteenth, the yard 0.9144 m (international
// yard and pound agreement, 1959). WhipStitch is common practice, no source. There
// is no other constant in this package: how much yarn a fabric takes is the
// maker's own measurement.
//
// # Limits
//
//	length of yarn, of a skein, line or total    0 to 100 km
//	mass                                         0 to 1000 kg
//	margin                                       -100 to 1000 percent
//	skeins                                       100 000
//	lines in a quantity                          10 000
//	strands held together, yarns                 16, 64
//	denominator of a length, or of a sum         300 digits
//	numbers, texts                               as in package gauge
//
// # Errors
//
// Parsers return *gauge.ParseError, everything else *gauge.FieldError with the
// field, what it is and what it must be; gauge.ErrBounds is wrapped where a limit
// was passed. Beside an error every result is the zero value. A margin of nothing,
// a line of nothing and a total of nothing are no errors.
//
// # Text and JSON
//
//	Length     "230 yd"            reads 230 yd, 20 1/2 in, 20½"
//	Mass       "14.5 g"            reads 100 g, 3 1/2 oz, 1¾oz
//	Label      "230 yd = 100 g"    reads either order, with =, /, per or a comma
//	Margin     "10%"               reads 10%, 7.5 %, -5 percent
//	Area       "23225.76 sq mm"    reads 36 sq in, 36 in², 0.25 sq m
//	ExactMass  "14.5 g"            or a fraction, "100/3 g"
//
// Numbers have the forms that package gauge lists, and the same hints. In JSON
// a label is {"length": "230 yd", "mass": "100 g"}; a swatch {"width": "6 in",
// "height": "6 in", "mass": "14.5 g"} or "yarn" for "mass", with "reading":
// {"side": "1/16 in", "mass": "0.25 g"} where it is known; a quantity has its
// lines with lengths in millimetres, exactly.
//
// # Packages below
//
// yarn/usage (yarn by stitches, by rows, by a finished project), yarn/stash (largest size from yarn at hand, dye
// lots by whole pieces), yarn/printed (printed lists checked), yarn/weight (grist,
// weight categories, substitution), yarn/colour (colours that change along the
// yarn), yarn/care (blocking by fibre, cautions).
package yarn
