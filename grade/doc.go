// Package grade holds what differs from size to size: charts of body measures,
// ease, sizes made as groups, and runs of one value per size.
//
// # Model
//
// A Run is one value per size, the smallest first. Arithmetic is for one size at
// a time; Map and Zip run it over all sizes and say in which size it failed.
// Text and Numbers print a run as a pattern does: "101 (113, 125)".
//
// A Chart gives the measures of the body by size, inches and centimetres as
// printed: compute with one column, never with a mix. Chart.Groups makes its
// sizes into Groups; a group's Body goes from the low end of its smallest member
// to the high end of its largest. Ease is what a garment measures beyond the
// body, and OnChart puts the two together for all groups.
//
// Below this package:
//
//	grade/notation   size lists in every style, printed and read; both units
//	grade/fit        fit classes, splits of wearers into groups, choice of a size
//	grade/check      what does not agree in the lists of a pattern
//	grade/caution    cautions that depend on who wears it
//
// # The standard charts, and how well they are known
//
// The figures are those of the Craft Yarn Council's Standards & Guidelines for
// Crochet and Knitting (2018). Source: Craft Yarn Council's
// www.YarnStandards.com. Most could not be checked against a document: such a
// cell has the basis Memory. A cell is one measure of one size in one unit.
//
//	chart         cells   two-sources   one-source   memory   what documents back
//	women           162             3           14      145   chest
//	men              90             0            0       90   nothing
//	youth            54             0           15       39   back waist, cross back, arm length, upper arm, armhole depth, in inches
//	child            89             0           33       56   the same and chest, in inches; three chests in cm
//	baby             90             3            3       84   chests of 3mo, 6mo, 24mo; back waist and armhole depth of 3mo
//	head             12             0            0       12   nothing
//	head ranges       6             0            6        0   all, inches only; a magazine's, not the Council's
//
// The child's upper arm of size 2 has no figure in centimetres (ErrNoCell).
// Women's sizes share some cells (cross back of 2X and 3X), the neck to wrist and
// the XL hip and cross back exist in two readings: Body.Note says so. Upper arm
// and cross back grow at very different rates, so never scale one from the chest.
//
// # Limits
//
//	sizes of a chart, groups, values of a run that are expanded   64
//	name of a size                                                40 bytes
//	table that ReadChart reads                                    256 KiB
//	ease                                                          a length to 100 m; above -100% to 1000%
//
// # Errors
//
// Text that can't be read gives a *gauge.ParseError, a field out of range a
// *gauge.FieldError, and what fails in one size a *SizeError with its place, its
// label where that is known, and got and want. ErrNoSize, ErrNoCell and
// ErrNoChart are to be tested for with errors.Is: a missing cell is for the
// caller to decide about. Chart.Falls are remarks, no errors.
//
// # Text and JSON
//
// Measure, Basis and Ease have a text form that they read back: "upper arm",
// "two-sources", "9 in" or "-5%". A Chart is JSON with the fields name, source,
// sizes and cells, lengths as text; a Run is a JSON array.
package grade
