// Package panelmath is the manual of a library of exact pattern math for
// garments made of rectangles. It has no identifiers of its own: the work is in
// five packages, one on top of the other.
//
//	gauge   lengths, swatches and gauges, and the one rounding to a count
//	grade   size charts, ease, size groups, one value per size (a run), checks
//	panel   written rows, the row plan, one panel, layouts and the schematic
//	seam    stitch pairs, openings, armhole and neck, tails, finishing as text
//	yarn    lengths and masses of yarn, margin, skeins, substitution, colour runs
//
// Imports run upwards only: grade uses gauge, panel uses grade, and so on. An
// app that needs lengths and counts imports gauge alone. A concept that is not
// always needed has a package of its own below: panel/row reads written rows,
// panel/proof checks a printed plan, panel/schematic draws, gauge/hook knows
// the labels of hooks, grade/fit chooses sizes and groups, grade/check looks at
// lists of sizes, seam/spread joins unlike edges, yarn/weight substitutes,
// yarn/stash asks what a stash makes.
//
// # For a reader who does not crochet
//
// A fabric of crochet (or knitting) is made of stitches that stand side by side
// in rows. A gauge says how many stitches and how many rows a span of the
// finished fabric holds: "13 sts and 9 rows = 4 in". A stitch pattern works on
// some counts only: "multiple of 3 + 1" is 1, 4, 7, ... A garment is made larger
// than the body by its ease. It is made in several sizes, and a pattern prints
// one number for each, the smallest before the brackets: 163 (166, 169, 172).
// Here the garments are rectangles: a panel is worked row by row, folded, and
// sewn to another from the hem up, stitch to stitch in pairs, until the place
// where the neck or the arm needs room. Yarn is sold in skeins of so much length
// and mass, and all skeins of a garment should come from one dye lot.
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
// # Text and JSON
//
// What has a text form is printed by String and MarshalText and read back by its
// Parse function and UnmarshalText:
//
//	gauge.Length    20.5 in (reads 20 1/2 in, 20½", 5 ft 3 in, 52 cm)
//	gauge.Ratio     511/8
//	gauge.Gauge     13 sts and 9 rows = 4 in
//	gauge.Rule      multiple of 6 + 1, at least 7, ties down
//	grade.Ease      9 in, -5%
//	row.Row         dc in first st, *ch 2, sk 2, dc in next st; rep from * across
//	yarn.Label      230 yd = 100 g (in JSON an object of length and mass)
//	yarn.Margin     10%
//	notation        101 (113, 125) and 48½ (56, 66) in [123 (142, 167.5) cm]
//
// JSON uses these texts for the types that have one, and objects with
// snake_case names for the others. Counts are written as numbers, ratios as
// strings. A decimal without a unit (a step in swatch, a factor, skeins, the ends
// of a range of yarn weights, the values of a list to check) is written as the
// decimal library writes it: as a string, or bare where a program has set
// decimal.MarshalJSONWithoutQuotes. Ratios and decimals are read from strings and
// from numbers. Names stay as they are from one version to the next, and a field
// that is added is optional. Every public struct but the errors, the
// parts of a row (which stand in its text) and gauge.Counter is read back whole;
// panel.Solved and work.Solution are solved again as they are read.
//
// # Errors
//
// A text that can't be read gives a gauge.ParseError with the place, a written row
// a row.SyntaxError with line and column. A struct that does not hold gives a
// gauge.FieldError with the field, what it has and what it must be. A garment
// that can't be made or worn gives a grade.SizeError, a seam.FitError or a
// panel.RowError with size or row, got and want. They wrap sentinels such as
// gauge.ErrBounds, gauge.ErrNoCount, grade.ErrNoSize and seam.ErrNoPair. No
// function returns a partial result beside an error, and none panics on input
// but those that begin with Must.
//
// Not an error: two sizes with the same number; a count that is far from the
// wanted length (its deviation says so); a neck drop of nothing; no legal count in
// a window (the list is empty); no size that fits (the answer says why).
//
// # Concurrency
//
// Values are not changed by use and there is no package state that changes:
// everything may be shared between goroutines as long as nobody writes to it.
package panelmath
