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
	b.Grow(len(s))
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
	for _, pair := range spellings {
		switch old := pair[from]; {
		case len(w) != len(old) || w[1:] != old[1:] || t == UK && strings.HasPrefix(old, "stove"): // a stove is one in Britain too
		case w[0] == old[0]:
			return pair[to]
		case w[0] == old[0]-'a'+'A':
			return strings.ToUpper(pair[to][:1]) + pair[to][1:]
		}
	}
	return w
}
