// Package hook knows crochet hooks: the diameter, which is the truth, and the
// labels of the trade, which are not the same for every maker.
//
// # Model
//
// A [Hook] is a diameter in millimetres. A [Label] is what one [Scheme] calls it,
// and its [Check] says how well that is backed. One label can stand for several
// hooks ([Labelled] lists them), which is why [Parse] reads a diameter alone and
// answers a label with the diameters that it stands for. The next size up or
// down is the next that is sold now.
//
// # Limits and errors
//
// A diameter is more than 0 and at most 50 mm. A text that cannot be read gives a
// *gauge.ParseError, a hook out of bounds a *gauge.FieldError.
//
// # Text and JSON
//
// A Hook is read and written as its diameter, "5.5 mm"; a Scheme and a Check by
// their names, "old UK" and "two sources". A Label is
//
//	{"text": "I-9", "scheme": "US", "check": "two sources", "source": "LG MF TY"}
//
// # Sources
//
// The table of labels is that of the Craft Yarn Council (source: Craft Yarn
// Council's www.YarnStandards.com) with the labels of makers that differ. Each
// label says whether it was seen in two of the charts below, in one, or comes
// from memory: LG, TY, D4, GR, HQ, HS and JU are hook and needle charts of shops
// and makers, MF is https://matifs.com/crochet-hooks-size-chart and CD is
// https://www.cdhp.org/us-crochet-hook-sizes/.
package hook
