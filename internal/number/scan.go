package number

import (
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"

	"example.com/panelmath/internal/text"
	"github.com/shopspring/decimal"
)

// Trouble says what is wrong with a number that was to be read.
type Trouble struct {
	At     int    // byte offset in the text
	Cause  string // what is wrong, and what would be understood
	Bounds bool   // it is too long or too fine
}

// Scan reads the number at the front of s: `20`, `20.5`, `.5`, `20 1/2`,
// `20-1/2`, `1/2`, `20½` or `½`. It returns how many bytes the number takes: 0,
// and no trouble, if none of them comes first. There is no sign before it; see
// Sign.
func Scan(s string) (d decimal.Decimal, n int, trouble *Trouble) {
	if f, n, trouble := fraction(s); n > 0 || trouble != nil {
		return f, n, trouble
	}
	n = len(Digits(s))
	if n > 0 {
		f, m, trouble := fraction(afterGap(s[n:]))
		gap := len(s[n:]) - len(afterGap(s[n:]))
		switch {
		case trouble != nil:
			trouble.At += n + gap
			return d, 0, trouble
		case m > 0 && n > MaxDigits:
			return d, 0, tooLong(n)
		case m > 0:
			return Parse(s[:n]).Add(f), n + gap + m, nil
		}
	}
	point := false
	if strings.HasPrefix(s[n:], ".") {
		if part := Digits(s[n+1:]); part != "" {
			n, point = n+1+len(part), true
		}
	}
	if n == 0 {
		return d, 0, nil
	}
	if n > MaxDigits+1 {
		return d, 0, tooLong(n)
	}
	if cause := follows(s[n:], point); cause != "" {
		return d, 0, &Trouble{At: n, Cause: cause}
	}
	d = Parse(s[:n])
	if d.Exponent() < -MaxExponent {
		return d, 0, &Trouble{Cause: fmt.Sprintf("more than %d decimal places", MaxExponent), Bounds: true}
	}
	return d, n, nil
}

// follows returns why a number cannot be followed by s, or "".
func follows(s string, point bool) string {
	switch {
	case strings.HasPrefix(s, ",") && Digits(s[1:]) != "":
		return "a comma in the number; write 1250 or 20.5"
	case point && strings.HasPrefix(s, ".") && Digits(s[1:]) != "":
		return "a second decimal point"
	case s != "" && s[0]|0x20 == 'e' && Digits(strings.TrimLeft(s[1:], "+-")) != "":
		return "an exponent; write the number out"
	}
	if point {
		if _, n, trouble := fraction(afterGap(s)); n > 0 || trouble != nil {
			return "a fraction after a decimal; write 20 1/2 or 20.5"
		}
	}
	return ""
}

// afterGap returns s without the blank or hyphen that may stand between a whole
// number and a fraction.
func afterGap(s string) string {
	if strings.HasPrefix(s, " ") || strings.HasPrefix(s, "-") {
		return s[1:]
	}
	return s
}

func tooLong(n int) *Trouble {
	return &Trouble{Cause: fmt.Sprintf("a number of %d characters; at most %d digits", n, MaxDigits), Bounds: true}
}

// fraction reads a fraction sign or n/d of less than 1. A fraction of 1 or more
// is most likely a mixed number that has lost its blank.
func fraction(s string) (d decimal.Decimal, n int, trouble *Trouble) {
	for _, v := range signs {
		if strings.HasPrefix(s, v.sign) {
			return decimal.New(v.thousandths, -3), len(v.sign), nil
		}
	}
	if c, size := utf8.DecodeRuneInString(s); c >= '⅐' && c <= '⅞' {
		return d, 0, noDecimal(s[:size])
	}
	num := Digits(s)
	den, ok := strings.CutPrefix(s[len(num):], "/")
	if num == "" || !ok {
		return d, 0, nil
	}
	den = Digits(den)
	n = len(num) + 1 + len(den)
	one, ok := unitFraction(den)
	if !ok || len(num) > 3 {
		return d, 0, noDecimal(s[:n])
	}
	d = Parse(num).Mul(one)
	if d.Cmp(decimal.New(1, 0)) >= 0 {
		return d, 0, &Trouble{Cause: "a fraction of 1 or more: " + s[:n] + "; write " + strings.Join(readings(num, den), " or ")}
	}
	return d, n, nil
}

// readings returns what a fraction of 1 or more may have meant: a mixed number
// that has lost its blank, and the number that it is. 11/2 is 1 1/2 or 5 1/2.
func readings(num, den string) []string {
	d, _ := strconv.Atoi(den)
	var out []string
	for i := 1; i < len(num); i++ {
		if k, _ := strconv.Atoi(num[i:]); num[0] != '0' && num[i] != '0' && k < d {
			out = append(out, num[:i]+" "+num[i:]+"/"+den)
		}
	}
	n, _ := strconv.Atoi(num)
	value := strconv.Itoa(n / d)
	if n%d > 0 {
		value += fmt.Sprintf(" %d/%d", n%d, d)
	}
	return append(out, value)
}

func noDecimal(fraction string) *Trouble {
	return &Trouble{Cause: "fraction " + text.Quote(fraction) + " has no exact decimal; want halves, quarters, eighths, sixteenths, fifths or tenths"}
}

// Sign reads the sign at the front of s and returns whether it is a minus, and
// how many bytes it takes: 0 if there is none.
func Sign(s string) (minus bool, n int) {
	for _, sign := range [...]string{"-", "−", "+"} {
		if strings.HasPrefix(s, sign) {
			return sign != "+", len(sign)
		}
	}
	return false, 0
}

// Digits returns the digits at the front of s.
func Digits(s string) string {
	n := 0
	for n < len(s) && '0' <= s[n] && s[n] <= '9' {
		n++
	}
	return s[:n]
}
