package row

import (
	"strings"
	"unicode"
)

// spellings are the words of a pattern that are written otherwise in the US,
// British first. From memory, as any dictionary has them.
var spellings = [...][2]string{
	{"centre", "center"}, {"centres", "centers"}, {"centred", "centered"},
	{"centimetre", "centimeter"}, {"centimetres", "centimeters"}, {"millimetre", "millimeter"}, {"millimetres", "millimeters"}, {"metre", "meter"}, {"metres", "meters"},
	{"colour", "color"}, {"colours", "colors"}, {"coloured", "colored"},
	{"fibre", "fiber"}, {"fibres", "fibers"}, {"grey", "gray"},
	{"towards", "toward"}, {"hob", "stove"}, {"hobs", "stoves"},
}

// Spell writes the words of a sentence as they are spelled in the US or in
// Britain: "centre back" and "center back". The sentences of this module are
// spelled as in Britain. Only whole words of a pattern are changed, in lower case
// or with a capital; a name that somebody gave is better left out of it.
func (t Terms) Spell(s string) string {
	var b strings.Builder
	for s != "" {
		n := strings.IndexFunc(s, func(c rune) bool { return !unicode.IsLetter(c) })
		switch {
		case n < 0:
			n = len(s)
		case n == 0:
			n = strings.IndexFunc(s, unicode.IsLetter)
			if n < 0 {
				n = len(s)
			}
		}
		b.WriteString(t.spellWord(s[:n]))
		s = s[n:]
	}
	return b.String()
}

func (t Terms) spellWord(w string) string {
	from, to := 0, 1
	if t == UK {
		from, to = 1, 0
	}
	lower := strings.ToLower(w)
	for _, pair := range spellings {
		switch {
		case lower != pair[from] || t == UK && strings.HasPrefix(lower, "stove"): // a stove is one in Britain too
		case w == lower:
			return pair[to]
		case w == strings.ToUpper(lower[:1])+lower[1:]:
			return strings.ToUpper(pair[to][:1]) + pair[to][1:]
		}
	}
	return w
}
