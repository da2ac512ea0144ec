// Package notation prints and reads lists of sizes as patterns write them:
// "101 (113, 125)", "73[79:85:91:103]", "10-12-14", and measurements in both
// units, "48½ (56, 66) in [123 (142, 167.5) cm]".
//
// # Styles
//
// Five styles are printed; Read takes all of them, with round or square
// brackets, commas or colons, and tells one from the other by its marks.
//
//	Round        101 (113, 125)      long: 1 (2, 3, 4) [5, 6, 7] (8, 9, 10)
//	Square       101 [113, 125]      long: 1 [2, 3, 4] (5, 6, 7) [8, 9, 10]
//	Colons       73[79:85:91:103]
//	Dashes       10-12-14
//	Alternating  8 (10) 12 (14)
//
// The smallest size stands outside the brackets, the larger ones inside, in
// order; one value alone stands for all sizes (so say yarn companies and
// handbooks: joann.com/lion-brand-coboo-suttons-shell-top, knittingmagic.biz,
// gruendl-wolle.de). Lists of more than seven sizes break into groups of three or
// four (a ten-size listing, strandsoflife.com/?p=4196).
//
// In a list of counts 0 means: skip this part in this size. It is a value like
// any other here; Skipped names the sizes.
//
// # Errors
//
// A reader reports a *gauge.ParseError with the place, in bytes, of a stray
// mark, a missing value, a value that can't be read, or the first value too
// many; it never repairs a list. Texts are read up to 10 000 bytes, lists up to
// 64 sizes.
package notation
