package number

import "github.com/shopspring/decimal"

// signs are the fractions that have a sign of their own and are exact decimals,
// with their size in thousandths.
var signs = [...]struct {
	sign        string
	thousandths int64
}{
	{"½", 500}, {"¼", 250}, {"¾", 750}, {"⅛", 125}, {"⅜", 375}, {"⅝", 625}, {"⅞", 875},
	{"⅕", 200}, {"⅖", 400}, {"⅗", 600}, {"⅘", 800}, {"⅒", 100},
}

// Vulgar returns the fraction sign for a number of thousandths, or "" where
// there is none.
func Vulgar(thousandths int64) string {
	for _, v := range signs {
		if v.thousandths == thousandths {
			return v.sign
		}
	}
	return ""
}

// unitFraction returns 1/d as a decimal, for the denominators of a tape measure
// and for fifths and tenths.
func unitFraction(d string) (decimal.Decimal, bool) {
	switch d {
	case "2":
		return decimal.New(5, -1), true
	case "4":
		return decimal.New(25, -2), true
	case "8":
		return decimal.New(125, -3), true
	case "16":
		return decimal.New(625, -4), true
	case "32":
		return decimal.New(3125, -5), true
	case "5":
		return decimal.New(2, -1), true
	case "10":
		return decimal.New(1, -1), true
	}
	return decimal.Decimal{}, false
}
