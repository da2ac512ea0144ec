package main

import (
	"cmp"
	"regexp"
	"strings"

	"example.com/panelmath/gauge"
)

const (
	sideForm   = `(` + listForm + `)\s*(` + unitForm + `)`
	sideWord   = `(?:\s+(?:wide|long|deep|tall|high))?`
	acrossForm = `(` + listForm + `)\s*(` + unitForm + `)?` + sideWord + `\s*(?:x|×|by)\s*` + sideForm + sideWord
)

var (
	acrossIn = regexp.MustCompile(acrossForm + `\s*[\[(/]\s*` + acrossForm) // `10 x 60 in (25.5 x 152.5 cm)`
	besideIn = regexp.MustCompile(sideForm + `([,;]| or) ` + sideForm)      // `13 (14, 15½) in, 33 (35.5, 39.5) cm`
	marks    = strings.NewReplacer(`"`, "", "″", "", "”", "", "cm", "")
)

// bothUnits returns the lengths in two units of a text, each as `a in [b cm]`.
func bothUnits(s string) []string {
	var out []string
	add := func(own, ownUnit, other, otherUnit string) {
		out = append(out, marks.Replace(own)+" "+ownUnit+" ["+marks.Replace(other)+" "+otherUnit+"]")
	}
	for _, m := range acrossIn.FindAllStringSubmatch(s, -1) {
		add(m[1], cmp.Or(m[2], m[4]), m[5], cmp.Or(m[6], m[8]))
		add(m[3], m[4], m[7], m[8])
	}
	s = acrossIn.ReplaceAllString(s, "")
	out = append(out, pairIn.FindAllString(s, -1)...)
	for _, m := range besideIn.FindAllStringSubmatch(s, -1) {
		// After a comma or semicolon two lists are one length twice; two lone lengths may be two.
		if n := values(m[1]); n == values(m[4]) && (n > 1 || m[3] == " or") && inAndCm(m[2], m[5]) && alike(m[1]+" "+m[2], m[4]+" "+m[5]) {
			add(m[1], m[2], m[4], m[5])
		}
	}
	return out
}

// alike reports whether the first lengths of two lists may stand for one another:
// neither is more than half as long again. `36 (40) in; 50 (52) cm` are a bust and a
// length.
func alike(own, other string) bool {
	first := func(s string) (gauge.Measurement, bool) {
		unit := s[strings.LastIndex(s, " ")+1:]
		if i := strings.IndexAny(s, "([,;:"); i >= 0 {
			s = s[:i] + " " + unit
		}
		l, err := gauge.ParseLength(s)
		return l.Measurement(), err == nil
	}
	a, ok := first(own)
	b, read := first(other)
	half := a.Add(b).Times(share(2, 5)) // the shorter is at least two fifths of both
	return !ok || !read || a.Cmp(half) >= 0 && b.Cmp(half) >= 0
}

// inAndCm reports whether one of two units is the inch and the other the
// centimetre.
func inAndCm(a, b string) bool {
	x, err := gauge.ParseUnit(strings.TrimSuffix(a, "."))
	y, bad := gauge.ParseUnit(strings.TrimSuffix(b, "."))
	return err == nil && bad == nil && x != y && (x == gauge.Inch || y == gauge.Inch) && (x == gauge.Centimetre || y == gauge.Centimetre)
}
