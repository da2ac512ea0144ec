// Package seam tells how rectangles are joined: how many pairs, where to stop
// for neck and arms, what stays open, whether a person can put the garment on,
// and the finishing as text for all sizes.
//
// # Pairs
//
// A seam is worked pair by pair from the hem up. The place where it stops is
// rounded down to a whole pair and a slit at the hem is rounded up, so that no
// opening is smaller than asked; what it comes to is reported exactly. An edge
// of an odd count that is folded at its middle has half a stitch on either side
// of the fold.
package seam
