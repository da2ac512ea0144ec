// Package panelmath is the manual of a library of exact pattern math for
// garments made of rectangles. It has no identifiers of its own: the work is in
// five packages, one on top of the other.
//
//	gauge   lengths, swatches and gauges, and the one rounding to a count
//	grade   size charts, ease, size groups, one value per size (a run)
//	panel   written rows, the row plan, one panel, layouts and the schematic
//	seam    stitch pairs, openings, armhole and neck, tails, steps
//	yarn    lengths and masses of yarn, margin, skeins
//
// Imports run upwards only: grade uses gauge, panel uses grade, and so on. An
// app that needs lengths and counts imports gauge alone.
//
// # The model
//
// A designer measures a swatch, picks a size chart and groups its sizes, decides
// ease and lengths, and writes the rows of the fabric. From these follow, in
// every size: stitches and rows, finished measurements, the stitch pairs to sew
// and where to stop, yarn and skeins. One size at a time is plain arithmetic on
// plain structs; grade.Run carries one value per size, and grade.Map runs a
// one-size function over it.
//
// # Exact
//
// A quotient is never stored. A ratio keeps its numerator and denominator until
// one rounding, from the exact value straight to the nearest legal count:
// 518 mm at 20 stitches over 100 mm is 103.6, and among the multiples of 4 + 2
// that is 102. Rounding to 104 first and to a legal count after would give 106.
// Ties go to the larger count unless the rule says otherwise. No float64 stands
// on the way to a number, and no setting of the decimal library changes one.
//
// # Units
//
// One inch is 25.4 mm exactly, so 4 in is 10.16 cm and not 10. A gauge keeps the
// span it was measured over. The editors' habit of printing 2.5 cm to the inch
// is a grid that a caller may name for printing; nothing is computed with it.
//
// # Limits
//
//	what                         limit
//	a length                     100 m either way
//	a count of stitches or rows  100 000
//	sizes                        64
//	digits of a number           30
//	exponent of ten              -20 to 20
//	characters of a text         10 000
//
// What lies beyond is an error that names the limit, and costs milliseconds.
//
// # Errors
//
// A text that can't be read gives a ParseError with the place (row.SyntaxError
// with line and column for written rows). A struct that does not hold gives a
// FieldError with the field, what it has and what it must be. A garment that
// can't be made or worn gives a SizeError with the size, got and want. No
// function returns a partial result beside an error, and none panics on input
// but those that begin with Must.
//
// Not an error: two sizes with the same number, a count that is far from the
// wanted length (its deviation says so), a neck drop of nothing.
package panelmath
