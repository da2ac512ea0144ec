// Package gauge is the ground floor of panelmath: lengths, gauges, and the one
// rounding from a length to a count of stitches or rows.
//
// # Model
//
// A [Length] is what somebody measured or chose: a decimal and a unit. A
// [Measurement] is an exact length without a unit of its own, the form in which
// results travel. A [Ratio] is an exact number; a share of a length, a third of
// 100 cm, is a ratio and stays one. An [Over] is a count over the span it was
// measured on, 13 over 4 in, kept as measured; a [Gauge] is one for the stitches
// and one for the rows, each over its own span and unit. A [Rule] says which
// counts are legal and which way to round; a [Count] is the answer with its
// exact value, both neighbours, the tie and what each choice costs in length. A
// [Fabric] is one fabric on the hook, finished and hung. A [Grid] is what a ruler
// can show: the only rounding of lengths, for print.
//
// Swatches of several readings are in gauge/swatch, the numbers of a pattern at
// another gauge in gauge/offgauge, and hook sizes in gauge/hook.
//
// All types are values. Nothing here changes an argument, and everything is
// safe for concurrent use. No result depends on the package variables of the
// decimal package.
//
// # Units
//
// mm, cm, m, in, ft, yd, by name or mark. The inch is 25.4 mm, the foot 0.3048 m
// and the yard 0.9144 m, exactly (international yard and pound agreement, 1959).
// 4 in is 10.16 cm and never 10; the editors' habit of printing 2.5 cm for an
// inch exists only as the two grids whose names end in At25.
//
// # Rounding
//
// A count is length · stitches / span as one ratio, which then goes to the
// nearest legal count in one step: never rounded first and snapped after. 518 mm
// at 20 over 100 mm is 103.6; among the multiples of 4 + 2 that is 102, where
// two steps would give 106.
//
//	Direction        between two legal counts    just in the middle
//	Nearest          the nearer                  the larger
//	NearestTiesDown  the nearer                  the smaller
//	Up               the larger                  the larger
//	Down             the smaller                 the smaller
//
// Legal are the numbers k·Multiple + Plus, k any whole number, that are at least
// Least (and never less than 0). Below the smallest of them, that one is the
// answer, except with Down. Grids round to the nearest step, a tie away from
// zero, and split whole and fraction after.
//
// Three shapes of a number keep this exact and fast: two int64 while they fit,
// a big.Rat where they do not, a decimal at the door; the first two give
// identical results.
//
// # Limits
//
//	number        30 digits, exponent of ten within ±20
//	length        100 m either way
//	count         0 to 100 000; the same for Multiple, Least, Plus (±) and Of
//	text          10 000 bytes
//	whole number  of Ratio.Floor and Ceil: within ±2^53
//
// # Errors
//
// A text that cannot be read gives a [*ParseError] with the place. A field that
// does not hold gives a [*FieldError] with what it has and what it must be; both
// wrap [ErrBounds] where a limit was passed. Where no legal count answers, the
// error wraps [ErrNoCount]: Down below the smallest count, rules that exclude
// each other. No count in a window is not an error but an empty list, and a
// length below nothing is not one either: ease is often negative.
//
// # Text and JSON
//
// What is printed can be read back. JSON holds the same texts as strings; a
// Ratio and a decimal are read from numbers too.
//
//	Length       20.5 in         also 20 1/2 in, 20½", 20-1/2 in, 5 ft 3 in, 20.5in
//	Measurement  1231.9 mm       or 13000/3 mm; also 100/3 cm and any length
//	Ratio        511/8           also 103.6
//	Over         13 over 4 in    also 2 repeats of 8 over 3.5 in
//	Gauge        13 sts and 9 rows = 4 in
//	             20 sts = 7 cm, 10 rows = 10 cm
//	             2 repeats of 8 sts = 3.5 in, 9 rows = 4 in
//	Rule         multiple of 6 + 1, at least 7, ties down      also 6n + 1, even, odd, any
//	Grid         quarter inch
//
// Fractions are those of a tape measure (to 1/32) and fifths and tenths, which
// are exact decimals, and less than 1: 11/2 in may have been 1 1/2 in. A comma in
// a number is refused as well: 1,250 may be meant as 1250 or as 1.25. Names are
// read whatever their case.
//
// Structs have the field names that go doc shows; a fabric is
//
//	{"worked": "12.5 sts and 9 rows = 4 in", "finished": "13 sts and 9 rows = 4 in"}
//
// # Vectors
//
// testdata/rounding.txt holds more than 300 roundings for an implementation in
// any language to test itself against, one a line, from a slow reference on big
// numbers:
//
//	id; length; count over a span; rule; exact; count; below; above; tie
//	T13; 518 mm; 20 over 100 mm; multiple of 4 + 2; 518/5; 102; 102; 106; no
//
// exact is in lowest terms; a count that does not exist is a hyphen, and so are
// its neighbours. The head of the file says more.
//
// # Speed
//
// One count of 518 mm at 20 over 100 mm by multiple of 4 + 2, all in one run
// (go test -C internal/bench -bench Count; AMD EPYC, 2 cores, Go 1.26.8,
// shopspring/decimal 1.6.0, cockroachdb/apd 3.2.3):
//
//	Count/mod=float64            1.9 ns/op    0 B/op   0 allocs/op   a spreadsheet's way
//	Count/mod=panelmath           20 ns/op    0 B/op   0 allocs/op   Counter.Round
//	Count/mod=panelmath-once      47 ns/op    0 B/op   0 allocs/op   Over.Round, which checks the gauge each time
//	Count/mod=decimal            443 ns/op  744 B/op  23 allocs/op   Mul, Div, Round, then snap: 106, not 102
//	Count/mod=big.Rat            820 ns/op  736 B/op  42 allocs/op   exact
//	Count/mod=apd                990 ns/op  608 B/op  13 allocs/op   the way of decimal with another library
//
// [Counter] takes ten and a half times a float64's time and a twenty-second of a decimal's.
package gauge
