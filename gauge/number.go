package gauge

import (
	"fmt"
	"math/big"
	"strings"
	"unicode/utf8"

	"example.com/panelmath/internal/text"
	"github.com/shopspring/decimal"
)

// Bounds of a number: digits of the coefficient, and exponent of ten.
const (
	MaxDigits   = 30
	MaxExponent = 20
)

// checkNumber reports a number outside the bounds as a FieldError for field.
func checkNumber(field string, d decimal.Decimal) error {
	if e := d.Exponent(); e > MaxExponent || e < -MaxExponent {
		return &FieldError{Field: field, Got: fmt.Sprintf("an exponent of %d", e), Want: "an exponent of -20 to 20", Err: ErrBounds}
	}
	if d.NumDigits() > MaxDigits {
		return &FieldError{Field: field, Got: fmt.Sprintf("%d digits", d.NumDigits()), Want: "at most 30 digits", Err: ErrBounds}
	}
	return nil
}

// plain prints d without an exponent and without trailing zeros, whatever the
// settings of the decimal package. A number out of bounds is not written out.
func plain(d decimal.Decimal) string {
	if err := checkNumber("", d); err != nil {
		return "(a number out of bounds)"
	}
	s := d.StringFixed(max(0, -d.Exponent()))
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	return s
}

// parsePlain returns the decimal written as digits with at most one point.
func parsePlain(s string) decimal.Decimal {
	whole, part, _ := strings.Cut(s, ".")
	n, _ := new(big.Int).SetString("0"+whole+part, 10)
	return decimal.NewFromBigInt(n, -int32(len(part)))
}

// vulgar returns the fraction sign at the front of s, as a decimal, and its
// length in bytes; 0 when there is none that is an exact decimal.
func vulgar(s string) (d decimal.Decimal, n int) {
	c, n := utf8.DecodeRuneInString(s)
	switch c {
	case '½':
		return decimal.New(5, -1), n
	case '¼':
		return decimal.New(25, -2), n
	case '¾':
		return decimal.New(75, -2), n
	case '⅛':
		return decimal.New(125, -3), n
	case '⅜':
		return decimal.New(375, -3), n
	case '⅝':
		return decimal.New(625, -3), n
	case '⅞':
		return decimal.New(875, -3), n
	}
	return d, 0
}

// fractionOf returns n/d as a decimal, for the denominators of a tape measure
// and for fifths and tenths.
func fractionOf(n, d string) (decimal.Decimal, bool) {
	var one decimal.Decimal
	switch d {
	case "2":
		one = decimal.New(5, -1)
	case "4":
		one = decimal.New(25, -2)
	case "8":
		one = decimal.New(125, -3)
	case "16":
		one = decimal.New(625, -4)
	case "32":
		one = decimal.New(3125, -5)
	case "5":
		one = decimal.New(2, -1)
	case "10":
		one = decimal.New(1, -1)
	}
	if one.IsZero() || len(n) > 2 {
		return one, false
	}
	return parsePlain(n).Mul(one), true
}

// digitsAt returns the end of the run of digits that starts at i.
func digitsAt(s string, i int) int {
	for i < len(s) && '0' <= s[i] && s[i] <= '9' {
		i++
	}
	return i
}

// scanNumber reads a number at the front of s: `20`, `20.5`, `.5`, `20 1/2`,
// `1/2`, `20½`, with a sign where signed. It returns the number and how many
// bytes it took, 0 when there is none. cause is set when there is a number and
// it can't be read exactly.
func scanNumber(s string, signed bool) (d decimal.Decimal, n int, cause string) {
	i, neg := 0, false
	if signed {
		for _, sign := range []string{"-", "−", "+"} {
			if strings.HasPrefix(s, sign) {
				i, neg = len(sign), sign != "+"
			}
		}
	}
	start := i
	whole := digitsAt(s, i)
	end := whole
	if end < len(s) && s[end] == '.' {
		if e := digitsAt(s, end+1); e > end+1 {
			end = e
		}
	}
	if end > start && end-start > MaxDigits+1 {
		return d, end, fmt.Sprintf("a number of %d characters; at most %d digits", end-start, MaxDigits)
	}
	if end > start {
		d = parsePlain(s[start:end])
		if -d.Exponent() > MaxExponent {
			return d, end, fmt.Sprintf("more than %d decimal places", MaxExponent)
		}
		if end < len(s) && s[end] == ',' && digitsAt(s, end+1) > end+1 {
			return d, end, "a comma as decimal mark; write a full stop: 20.5"
		}
		if end < len(s) && (s[end] == 'e' || s[end] == 'E') && (digitsAt(s, end+1) > end+1 || strings.HasPrefix(s[end+1:], "-") || strings.HasPrefix(s[end+1:], "+")) {
			return d, end, "an exponent; write the number out"
		}
	}
	// A fraction: after a whole number and a space or hyphen, on its own, or as a sign.
	f, at := decimal.Decimal{}, end
	if end == whole {
		at, f, cause = scanFraction(s, start, end)
		if cause != "" {
			return d, at, cause
		}
	}
	switch {
	case at > end && strings.IndexByte(s[end:at], '/') >= 0 && at > whole && !strings.ContainsAny(s[end:end+1], " -"):
		d = f // n/d alone: the digits before the slash were its numerator
	case at > end:
		d = d.Add(f)
	case end == start:
		return d, 0, ""
	}
	if neg {
		d = d.Neg()
	}
	return d, at, ""
}

// scanFraction reads the fraction that follows the digits s[start:end].
func scanFraction(s string, start, end int) (at int, f decimal.Decimal, cause string) {
	rest := s[end:]
	if strings.HasPrefix(rest, "/") && end > start { // n/d alone
		e := digitsAt(s, end+1)
		f, ok := fractionOf(s[start:end], s[end+1:e])
		if !ok {
			return e, f, "fraction " + text.Quote(s[start:e]) + " has no exact decimal; want halves, quarters, eighths, sixteenths, fifths or tenths"
		}
		return e, f, ""
	}
	skip := 0
	if end > start && rest != "" && (rest[0] == ' ' || rest[0] == '-') {
		skip = 1
	}
	if v, n := vulgar(rest[skip:]); n > 0 {
		return end + skip + n, v, ""
	}
	if strings.HasPrefix(rest[skip:], "⅓") || strings.HasPrefix(rest[skip:], "⅔") {
		return end + skip, f, "a third has no exact decimal; give the length in another unit, or as a share"
	}
	if skip == 0 {
		return end, f, ""
	}
	slash := digitsAt(s, end+1)
	if slash == end+1 || slash >= len(s) || s[slash] != '/' {
		return end, f, ""
	}
	e := digitsAt(s, slash+1)
	f, ok := fractionOf(s[end+1:slash], s[slash+1:e])
	if !ok {
		return e, f, "fraction " + text.Quote(s[end+1:e]) + " has no exact decimal; want halves, quarters, eighths, sixteenths, fifths or tenths"
	}
	return e, f, ""
}
