// Package work works written rows: what each uses and makes, at which counts a
// set of rows comes out, and why it does not.
//
// # Model
//
// A row uses the places that the row before left, stitches and chain spaces,
// from the end where that row stopped; and it makes places for the next. The
// two are separate sums: sc2tog uses 2 and makes 1. Every place must be used:
// worked into, skipped by name, or left by name. Chains made next to one another
// are one space. A space is worked into as a whole, by its size or as any ch-sp.
// The count of a row is its stitches and the chains of its spaces, which is its
// width in stitches.
//
// # Solved counts
//
// Solve answers for all counts at once. The places that n stitches lead to are a
// fixed beginning, a period as often as n asks, and a fixed end; a row is a
// beginning, a body as often as fits, and an end. Both have the same length at
// the solutions of one linear congruence, and there they agree at every count or
// at none, so that three comparisons decide. What comes out is again a
// beginning, a period and an end, for the next row. Nothing is tried; a
// simulation in the tests agrees for every count to 500 on thousands of
// generated sets of rows.
//
// A count is legal if every part that is worked across is worked at least once
// and every kind of place that an `each … across` names is there.
//
// Where no progression comes out but single counts do, Rule holds one of them;
// that takes a row that works into any ch-sp over spaces of several sizes, or one
// that fixes the number of its stitches.
//
// # Limits
//
//	a row            at most 100 000 places used and made
//	a solved period  at most 100 000 stitches: beyond it there is no count
//	all rows         1 million places while they are solved
//	a repeat         comes back to the places of an earlier pass within 100 passes
//
// # Errors
//
// *row.FitError names the row, the pass of the repeat, and the amount: how many
// are short or left over, which place is of another kind, which earlier row
// excludes the counts of this one. No repair is invented.
package work
