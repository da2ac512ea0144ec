// Package printed goes the way back: it checks the yarn that a pattern prints.
//
// Columns compares a column of yards with one of metres, Totals multiplies balls
// by their length, Balls divides the need by it and rounds up. A right list gives
// no finding; a Finding says size, got, want and why, and leaves the repair to the
// editor, who alone knows which of two numbers is the wrong one.
//
// Usage asks of a list of skeins which usage, in yarn to a unit of work (a square
// inch, a stitch), makes every size right: more than the largest need that one
// skein fewer would cover, at most the least that the printed skeins hold. If no
// usage does, the two sizes that contradict one another are named. A list that
// prints one number for all sizes while the garment grows contradicts itself so.
//
// At most 64 sizes. Numbers that are not valid, and lists of different lengths,
// are *gauge.FieldError; a list that does not hold is a finding, not an error.
package printed
