// Package grade holds what differs from size to size: the charts of body
// measures, ease, sizes made as groups, and the runs of one value per size.
package grade
