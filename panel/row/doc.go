// Package row reads, checks, writes and translates single rows in the language
// that crochet patterns are written in.
//
// # Ten examples
//
// The language is that of the trade's abbreviations (Craft Yarn Council's
// www.YarnStandards.com). Example_tenRows checks this page.
//
//	1  fhdc 101                                  a foundation row: 101 stitches without a chain
//	2  hdc in each st across                     one in every stitch of the row before
//	3  dc in first st, *ch 2, sk 2, dc in next st; rep from * across
//	                                             from * on as often as the row allows
//	4  hdc in each st and 2 hdc in each ch-2 sp across
//	                                             stitches and chain spaces are both places
//	5  [sc in next 2 sts, sc2tog] 4 times        brackets hold a number of times, all told
//	6  *sc in next st, 2 sc in next st; rep from * 3 more times
//	                                             after a star the number is more: 4 in all
//	7  ch 3 (counts as dc), (dc, ch 1, dc) in next st, dc in last st
//	                                             a turning chain says whether it counts
//	8  ch 66, hdc in 3rd ch from hook (skipped chs do not count), hdc in each ch across
//	                                             a foundation chain says so too
//	9  hdc in next 7 (8, 9) sts, leave rem sts unworked
//	                                             a number for each size; the rest is left
//	10 *dc in next st, sk 1; rep from * to last 3 sts, dc in last 3 sts
//	                                             what follows the repeat has its own stitches
//
// # Grammar
//
// Words are read in any case; blanks and full stops are style. What stands in
// ‹› is further style that is read and not written.
//
//	row        = [ start "," ] item { "," item } [ ‹"," "turn"› ]
//	start      = "ch" n "(" "counts as" stitch [ "," "ch" n ] ")"
//	           | "ch" n "(" "does not count" ‹"as a st"› ")"
//	           | "chainless" stitch "in first st"
//	foundation = ( "fsc" | "fhdc" | "fdc" ) [ n ]                       a row of its own
//	           | "ch" [ n ] "," make "in" ordinal "ch from hook" [ skipped ] { "," item }
//	skipped    = "(skipped chs count as" stitch [ "," "ch" n ] ")" | "(skipped chs do not count)"
//	item       = make "in" place | n stitch | stitch n | stitch n "tog"
//	           | make "in each" kind { "and" [ make ] "in each" kind } until
//	           | "sk" n | "sk next" [ n ] kind | "ch" n
//	           | "[" items "]" n "times"
//	           | "*" items ";" "rep from *" ( until | n "more times" | "a total of" n "times" )
//	           | "leave" n "sts unworked" | "leave rem sts unworked"
//	make       = [ n ] stitch | "(" part { "," part } ")"
//	part       = [ n ] stitch | "ch" n
//	place      = ( "next" | "first" | "last" ) [ n ] kind | "each of next" n kind | "same" kind
//	kind       = "st" | "ch-m sp" | "ch-sp" ; over a foundation chain also "ch"
//	until      = "across" ‹"to end"› | "to last" n "sts"
//	n          = number [ "(" number { "," number } ")" ]              one for each size
//
// "skip" and "miss" are read as sk (UK rows are written with miss), "repeat" as
// rep, words in full as their abbreviations, (…) and {…} as […], a stitch after
// next as the place it made, `ch 1` without a remark as one that does not count,
// numbers to ten as words, the top of the turning ch, or the 3rd ch of beg ch-4, as
// the last st, `10 times in total` as all told, `here and throughout` as nothing. "yo", "work", "then" are passed over. In a size whose
// number is 0 the part is skipped. `sc in next 3 sts` is one in each; for more
// in each place say so: `2 sc in each of next 3 sts`. A bare `repeat 3 times`
// after a star is refused, since some mean 3 and some 4.
//
// # Terms
//
// The same word names different stitches in US and UK terms: a US dc is a UK
// tr. Parse is told the terms, refuses a word that only the other terms have,
// and Text writes either. There is no guessing: "dc in each st across" is right
// in both.
//
// # Limits
//
//	text        10 000 bytes
//	number      0 to 100 000, 64 sizes
//	repeats     6 deep; a row uses and makes at most 100 000 places, so that
//	            [[[dc in next 9999 sts] 9999 times] 9999 times] is refused at once
//
// # Errors
//
// Parse returns a *SyntaxError with line, column, what was read and what would
// be understood there. Validate checks rows put together by hand and returns a
// *gauge.FieldError. FitError and its sentinels tell why a row does not fit the
// one before; package work finds out.
package row
