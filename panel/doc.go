// Package panel turns written rows and a gauge into the rectangles of a
// garment: which stitch counts the rows allow, how often they are repeated for
// a width, and the instructions for all sizes.
package panel
