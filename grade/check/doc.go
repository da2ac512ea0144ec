// Package check reads the lists of a pattern across its sizes and says what
// does not agree: a technical editor's eye for numbers.
//
// A List is one value per size: counts, or lengths in one unit. A value of 0
// means that a part is skipped in that size, and no check looks at it.
//
//	Rising      no size is smaller than the one before; equal neighbours are right
//	Even        one step from size to size
//	Legal       every count is one that a rule allows (multiple of 6 + 1, odd)
//	Apart       two lists stand a fixed amount apart in every size (row 3 = row 2 + 4)
//	Units       inches and centimetres agree under a named convention
//	Widths      counts and widths agree at a gauge
//	Sum         parts add up to the whole in every size
//
// A right list gives no Finding. A Finding says size, got, want and why, and
// names a repair only where exactly one value, changed alone, would satisfy all
// the rest; otherwise it says what does not agree and leaves the repair to the
// designer. Where two lists disagree throughout but agree one size apart, one
// Finding says so.
//
// A Finding with Remark set is no fault: uneven steps are legal, and worth a
// second look.
//
// Arithmetic is exact; a printed length agrees with another if it is what the
// grid prints for it, a tie going away from zero.
package check
