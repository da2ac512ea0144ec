package yarn

import (
	"strings"
	"unicode"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn/internal/plain"
	"github.com/shopspring/decimal"
)

// fractions are those that a tape or a label prints and that are exact decimals.
var fractions = [...]struct {
	sign, words string
	thousandths int64
}{
	{"½", "1/2", 500}, {"¼", "1/4", 250}, {"¾", "3/4", 750},
	{"⅛", "1/8", 125}, {"⅜", "3/8", 375}, {"⅝", "5/8", 625}, {"⅞", "7/8", 875},
	{"⅒", "1/10", 100}, {"⅕", "1/5", 200}, {"⅖", "2/5", 400}, {"⅗", "3/5", 600}, {"⅘", "4/5", 800},
}

// splitUnit cuts `3 1/2 oz` into its number and its unit, which begins with a
// letter or an inch or foot mark.
func splitUnit(s string) (number, unit string) {
	s = strings.TrimSpace(s)
	at := strings.IndexFunc(s, func(c rune) bool { return unicode.IsLetter(c) || strings.ContainsRune("\"'″′”’", c) })
	if at < 0 {
		return s, ""
	}
	return strings.TrimSpace(s[:at]), s[at:]
}

// readNumber reads `230`, `14.5`, `.5`, `3 1/2`, `3½`, `1/2`: not negative, no
// exponent. It returns the cause when s is none of these.
func readNumber(s string) (d decimal.Decimal, cause string) {
	const want = "want a number like 230, 14.5 or 3 1/2"
	switch {
	case s == "":
		return d, "no number; " + want
	case len(s) > gauge.MaxDigits+8:
		return d, "a number of more than 30 digits"
	case strings.Contains(s, ","):
		return d, "a comma in the number; write 1250 or 12.5"
	case strings.HasPrefix(s, "-") || strings.HasPrefix(s, "−"):
		return d, "a negative number"
	}
	whole := s
	for _, f := range fractions {
		for _, form := range [...]string{f.sign, f.words} {
			rest, ok := strings.CutSuffix(s, form)
			if !ok {
				continue
			}
			gap := strings.HasSuffix(rest, " ") || strings.HasSuffix(rest, "-") || rest == "" || form == f.sign
			if !gap {
				continue // 11/2 is no 1 1/2
			}
			whole, d = strings.TrimRight(rest, " -"), decimal.New(f.thousandths, -3)
			if whole == "" {
				return d, ""
			}
			if strings.Contains(whole, ".") {
				return d, "a decimal and a fraction; " + want
			}
		}
	}
	if whole != "." && strings.Trim(whole, "0123456789.") == "" && strings.Count(whole, ".") <= 1 {
		n := plain.Parse(whole)
		if n.NumDigits() <= gauge.MaxDigits && n.Exponent() >= -gauge.MaxExponent {
			return n.Add(d), ""
		}
		return d, "more than 30 digits or 20 decimal places"
	}
	return d, text.Quote(s) + " is no number; " + want
}

// exactly returns d, which is known to be within bounds, as a ratio.
func exactly(d decimal.Decimal) gauge.Ratio {
	r, _ := gauge.FromDecimal(d)
	return r
}

// over returns x/y where y is known not to be 0.
func over(x, y gauge.Ratio) gauge.Ratio {
	r, _ := x.Quo(y)
	return r
}
