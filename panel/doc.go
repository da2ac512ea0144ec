// Package panel turns written rows and a gauge into the rectangles of a garment:
// which stitch counts the rows allow, how often they are repeated for a width,
// what every row makes, and the instructions for all sizes.
//
// # Model
//
// A Plan is the rows of a rectangle in three parts: the opening once, the repeat
// as often as the width asks, the closing once. Rows are those of package row.
// The first is a foundation row or chain; every row after it must come back to
// the count of the first, each chain of a chain space counting as one, and must
// use all that the row before made: also where the repeat begins again, and where
// the closing follows the opening in a size without repeats. A lace row may be
// the very last.
//
// A Panel is one rectangle in one size: the rows run along its length, and its
// width grows row by row. Package layout joins panels to garments.
//
// # From a plan to a pattern
//
//	Legal          the stitch counts that the rows allow: multiple of 3 + 1, at least 4
//	Fit            the rows and repeats nearest to a width, by row gauge
//	FitHeight      the same by the measured height of a repeat, or by Heights of stitches
//	FitUnfinished  the same where the last repeat may be left before its end
//	Panel          both directions at once, with the finished measurements
//	Steps, Tally   what every row makes, and all of them together, by kind of stitch
//	At, End, Left  which row a number is, on which side, and how many are left
//	Mirrored       whether both edges look the same; Mirror finds the closing for it
//	Write          numbered instructions for all sizes; package proof reads them back
//
// # Rounding
//
// Stitches go to the nearest legal count and rows to the nearest whole number of
// repeats, each in one step from the exact value; a tie goes to the larger.
//
// # Limits
//
//	rows listed    10 000
//	rows worked    100 000
//	stitches       100 000
//	sizes          64
//
// # Errors
//
// A *RowError names the part, the place of the row in it and the pass of the
// repeat, and wraps the *row.FitError with the amount. A *SizeError names the
// size whose count is not legal. Fields that are out of range give a
// *gauge.FieldError.
package panel
