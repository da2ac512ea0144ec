// Package usage works out yarn by stitches: how much one stitch of each kind
// takes, measured by unravelling or fitted from several swatches and finished
// panels, and what a panel of so many stitches of each kind takes.
package usage
