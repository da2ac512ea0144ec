// Package layout describes garments as rectangles laid flat: which edges meet,
// what stays open, where it folds.
package layout
