// Package swatch turns what was measured on a swatch into a gauge, and tells how
// far the gauge can be trusted.
//
// A Reading is one count over one span, with the steps to which the two were
// read: half a stitch, a quarter inch. A Swatch is several readings in one
// direction; it has a gauge (all counts over all spans), a Spread (how far the
// readings differ, and how much of that the reading itself causes) and Measure
// (the length of a count, from the tightest gauge that any reading allows to the
// loosest). A count over a short span is uncertain by a larger share: half a
// stitch is 5 % of 10 stitches over 2 in, and 2.5 % of 20 over 4 in.
//
// Reading.Compare asks whether the gauge that is implied by a printed count and
// a printed width can be the printed gauge, within the rounding of all the
// numbers. Printed makes a reading of a printed gauge.
//
// All shares and bounds are exact ratios. Errors are those of package gauge. At
// most 64 readings.
package swatch
