package row

import (
	"slices"
	"strconv"
	"strings"
)

// Abbreviation is a short form and what it stands for.
type Abbreviation struct {
	Abbr    string `json:"abbr"`
	Meaning string `json:"meaning"`
}

// words holds the abbreviations of the trade that are no stitches, by the word
// as it is read: short form and meaning. Source: Craft Yarn Council's
// www.YarnStandards.com.
var words = [...][3]string{
	{"rem", "rem", "remaining"},
	{"rep", "rep", "repeat"},
	{"rs", "RS", "right side"},
	{"sk", "sk", "skip"},
	{"sp", "sp", "space"},
	{"st", "st", "stitch"},
	{"ws", "WS", "wrong side"},
	{"yo", "yo", "yarn over"},
	{"yoh", "yoh", "yarn over hook"},
}

// Abbreviations returns the abbreviations that a text in the given terms uses,
// each once and in alphabetical order: stitches, stitches worked together,
// chain spaces, the words of the trade and the asterisk of a repeat. It reads any text: rows, numbered
// instructions, notes.
func Abbreviations(text string, t Terms) []Abbreviation {
	if !t.valid() {
		return nil
	}
	found := map[string]string{}
	p := &parser{s: text, toks: lex(text), terms: t}
	shorts := shortForms(t)
	for p.peek().kind != endToken {
		w := p.peek()
		if w.word == "rep" && p.ahead(1).word == "from" && p.ahead(2).kind == markToken && p.ahead(2).word == "*" {
			found["*"] = "start of what is worked again, as often as the text says"
		}
		if w.kind != wordToken {
			p.next()
			continue
		}
		if m, ok := strings.CutPrefix(w.word, "ch-"); ok && p.spAhead(1) && digitsOnly(m) {
			found["ch-"+m+" sp"] = "chain space: the space under " + m + " chain" + s(m != "1") + " made earlier"
			p.next()
			p.next()
			continue
		}
		if w.word == "ch-sp" || w.word == "ch-sps" || w.word == "ch" && p.spAhead(1) {
			if w.word == "ch" {
				p.next()
				found["ch sp"] = "chain space"
			} else {
				found["ch-sp"] = "chain space"
			}
			p.next()
			continue
		}
		if s, n, ok := together(w.word, t); ok {
			found[s.Abbr(t)+strconv.Itoa(n)+"tog"] = s.Term(t) + " " + strconv.Itoa(n) + " together"
			p.next()
			continue
		}
		if s, n := p.abbrAhead(shorts); n > 0 {
			found[s.Abbr(t)] = s.Term(t)
			p.i += n
			continue
		}
		word := w.word
		if word == "sts" || word == "sps" {
			word = word[:2]
		}
		for _, e := range words {
			if word == e[0] {
				found[e[1]] = e[2]
			}
		}
		p.next()
	}
	out := make([]Abbreviation, 0, len(found))
	for a, m := range found {
		out = append(out, Abbreviation{a, m})
	}
	slices.SortFunc(out, func(a, b Abbreviation) int {
		if c := strings.Compare(strings.ToLower(a.Abbr), strings.ToLower(b.Abbr)); c != 0 {
			return c
		}
		return strings.Compare(a.Abbr, b.Abbr)
	})
	return out
}

// short is the abbreviation of a stitch, in lower case; second is empty for one
// of a single word.
type short struct {
	of            Stitch
	first, second string
}

func shortForms(t Terms) (all []short) {
	for s := Chain; s.Valid(); s++ {
		first, second, _ := strings.Cut(strings.ToLower(s.Abbr(t)), " ")
		all = append(all, short{s, first, second})
	}
	return all
}

// abbrAhead returns the stitch whose abbreviation comes next, and how many
// words that takes.
func (p *parser) abbrAhead(shorts []short) (Stitch, int) {
	w := p.peek().word
	if w == "chs" {
		return Chain, 1
	}
	for _, s := range shorts {
		switch {
		case w != s.first:
		case s.second == "":
			return s.of, 1
		case strings.TrimSuffix(p.ahead(1).word, "s") == s.second:
			return s.of, 2
		}
	}
	return NoStitch, 0
}
