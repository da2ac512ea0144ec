// Package spread spreads one number evenly over another: the stitches picked up
// from row ends, an edge joined to an unlike one, increases and decreases along
// a row.
//
// # Rates and groups
//
// Rate is what the finished gauge asks for, exactly: 10 stitches to 13 row ends.
// ShortestGroup is what a maker can remember, within a stated tolerance: 3 of 4.
// Group.Off tells what that group costs over a whole edge.
//
// # Plans
//
// Match is the exact plan for two counts, 71 from 88: spread evenly, so that any
// two gaps differ by at most one, and the same from either end on request.
// Simple gives the plan that is easiest to count instead.
//
// Spacing places increases and decreases along a row in the two published ways,
// which give different places for the same request, and in the round.
//
// # Limits
//
// Counts to gauge.MaxCount, groups to MaxGroup. Errors are *gauge.FieldError,
// and ErrNoGroup where no group is short enough. Nothing here is rounded but
// the place of a stitch.
package spread
