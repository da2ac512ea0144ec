package row

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// token is a word in lower case, a number, an ordinal or a mark of the row.
type token struct {
	kind tokenKind
	word string // lower case; for a number its digits
	at   int    // byte offset
	end  int
}

type tokenKind uint8

const (
	endToken tokenKind = iota
	wordToken
	numberToken
	ordinalToken
	markToken
)

// lex cuts a text into tokens. Full stops are style and left out; a hyphen
// holds a word together (ch-2, ch-sp). Whatever is no word, number or mark of
// the language becomes a mark of its own, for the parser to refuse.
func lex(s string) []token {
	toks := make([]token, 0, len(s)/3+1)
	for i := 0; i < len(s); {
		c := s[i]
		switch {
		case c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '.':
			i++
		case digit(c):
			j := i
			for j < len(s) && digit(s[j]) {
				j++
			}
			k := j
			for k < len(s) && letter(s[k]) {
				k++
			}
			kind := numberToken
			switch strings.ToLower(s[j:k]) {
			case "st", "nd", "rd", "th":
				kind = ordinalToken
				toks = append(toks, token{kind, s[i:j], i, k})
				i = k
				continue
			}
			toks = append(toks, token{kind, s[i:j], i, j})
			i = j
		case letter(c):
			j := i
			for j < len(s) && (letter(s[j]) || digit(s[j]) || s[j] == '-' && j+1 < len(s) && (letter(s[j+1]) || digit(s[j+1]))) {
				j++
			}
			t := token{wordToken, strings.ToLower(s[i:j]), i, j}
			if n := numberNamed(t.word); n != "" {
				t.kind, t.word = numberToken, n
			}
			toks = append(toks, t)
			i = j
		default:
			_, n := utf8.DecodeRuneInString(s[i:])
			toks = append(toks, token{markToken, s[i : i+n], i, i + n})
			i += n
		}
	}
	return append(toks, token{kind: endToken, at: len(s), end: len(s)})
}

// numberNamed returns the digits of a number that patterns write as a word.
func numberNamed(w string) string {
	for i, name := range [...]string{"two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"} {
		if w == name {
			return strconv.Itoa(i + 2)
		}
	}
	return ""
}

func digit(c byte) bool  { return '0' <= c && c <= '9' }
func letter(c byte) bool { return 'a' <= c|0x20 && c|0x20 <= 'z' }

// lineCol returns the line and column of a byte offset, both from 1.
func lineCol(s string, at int) (line, col int) {
	before := s[:at]
	line = strings.Count(before, "\n") + 1
	if nl := strings.LastIndexByte(before, '\n'); nl >= 0 {
		before = before[nl+1:]
	}
	return line, utf8.RuneCountInString(before) + 1
}
