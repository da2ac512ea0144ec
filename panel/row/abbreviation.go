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
		if s, n := p.abbrAhead(); n > 0 {
			found[s.Abbr(t)] = s.Term(t)
			p.i += n
			continue
		}
		for _, e := range words {
			if w.word == e[0] || w.word == e[0]+"s" && e[0] == "st" || w.word == "sps" && e[0] == "sp" {
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

// abbrAhead returns the stitch whose abbreviation comes next, and how many
// words that takes.
func (p *parser) abbrAhead() (Stitch, int) {
	w := p.peek().word
	for s := Chain; s.Valid(); s++ {
		a := strings.ToLower(s.Abbr(p.terms))
		first, second, two := strings.Cut(a, " ")
		switch {
		case two && w == first && (p.ahead(1).word == second || p.ahead(1).word == second+"s"):
			return s, 2
		case !two && (w == a || s == Chain && w == "chs"):
			return s, 1
		}
	}
	return NoStitch, 0
}
