// Package fit decides who gets which size: the fit classes of the standard, the
// split of wearers into the fewest or the best groups, and the size for one
// body on several measures at once.
//
// # Splits
//
// A Wearer is a range of bodies (a size of a chart) or one real body. A garment
// made for a group measures the ease beyond the group's largest body; every
// smaller body in it gets more. Fewest answers how few groups keep every
// wearer's ease inside a Window, Best what is the best that k groups can do.
// Both are exact, and bring their proof: the Witness of a Split is a list of
// wearers no two of which can share a group on better terms, so that fewer
// groups, or a better worst ease, would have to put two of them together.
//
// A split is best when the largest ease that any wearer gets is smallest. Among
// those that tie in this, the one that takes the least ease over all wearers
// is chosen, and among those the one whose smaller sizes have the narrower
// groups. Ties counts the first kind of tie, Others lists the second.
//
// # Limits
//
// 10 000 wearers, 64 groups; lengths as in package gauge. A split of 10 000
// bodies into 9 groups takes about a tenth of a second, into 64 under a second.
package fit
