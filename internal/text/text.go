// Package text holds what every parser and error of the library shares.
package text

import (
	"strconv"
	"unicode/utf8"
)

// Limit is the most bytes a parser of the library reads.
const Limit = 10000

// Count returns "1 skein" or "5 skeins".
func Count(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.Itoa(n) + " " + many
}

// Quote quotes s for an error message, cut to a length a line can hold.
func Quote(s string) string {
	const most = 60
	if len(s) <= most {
		return strconv.Quote(s)
	}
	cut := most
	for cut > 0 && !utf8.RuneStart(s[cut]) {
		cut--
	}
	return strconv.Quote(s[:cut]) + "… (" + strconv.Itoa(len(s)) + " bytes)"
}
