// Package gauge is the ground floor of panelmath: lengths, swatches, gauges,
// and the one rounding from a length to a count of stitches or rows.
package gauge
