package schematic

import (
	"strconv"
	"strings"
	"unicode"
)

func itoa(n int) string { return strconv.Itoa(n) }

// textWidth estimates the width of a line in tenths, from above: the widths are
// those of DejaVu Sans, the widest of the common sans-serif faces.
func textWidth(s string) int {
	w := 0
	for _, r := range s {
		w += runeWidth(r)
	}
	return w * fontSize / 100
}

// runeWidth is in hundredths of the size of the type, rounded up.
func runeWidth(r rune) int {
	switch {
	case strings.ContainsRune("ijl'|", r):
		return 34
	case strings.ContainsRune(" \u00a0,.:;/f-", r):
		return 37
	case strings.ContainsRune("()[]rtI!", r):
		return 42
	case strings.ContainsRune("mw%@½¼¾⅛⅜⅝⅞MW—", r) || r > 0x2fff:
		return 101
	case strings.ContainsRune("<>=+~^#&×", r):
		return 84
	case unicode.IsUpper(r):
		return 79
	}
	return 64
}

// wrap breaks a text at its blanks, not at those that hold a number to its unit, into lines no wider than width; a longer
// word is cut.
func wrap(text string, width int) []string {
	var lines []string
	line := ""
	for _, word := range strings.Split(text, " ") {
		for textWidth(word) > width {
			cut, w := 0, 0
			for i, r := range word {
				if w += runeWidth(r); w*fontSize/100 > width && i > 0 {
					break
				}
				cut = i + len(string(r))
			}
			if line != "" {
				lines = append(lines, line)
			}
			lines, line, word = append(lines, word[:cut]), "", word[cut:]
		}
		switch longer := line + " " + word; {
		case word == "":
		case line == "":
			line = word
		case textWidth(longer) <= width:
			line = longer
		default:
			lines, line = append(lines, line), word
		}
	}
	return append(lines, line)
}
