package main

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/check"
	"example.com/panelmath/grade/notation"
	"example.com/panelmath/yarn"
	"github.com/shopspring/decimal"
)

// The forms of numbers in running text. What they find is read by the library.
const (
	numberForm = `[-−]?(?:\d+[ -]\d+/\d+|\d+/\d+|\d+(?:\.\d+)?(?: ?[½¼¾⅛⅜⅝⅞])?|[½¼¾⅛⅜⅝⅞])`
	markForm   = `(?:["″”]|cm)?`
	listForm   = numberForm + markForm + `(?:\s*[(\[]\s*` + numberForm + markForm + `(?:\s*[,:]\s*` + numberForm + markForm + `)*\s*[)\]])*`
	unitForm   = `(?:inches|inch\b|in\b\.?|["″”]|cm\b|centimet(?:re|er)s?\b|mm\b|feet\b|ft\b|met(?:re|er)s?\b|m\b|yards?\b|yds?\b)`
	pairForm   = `(` + listForm + `)\s*(` + unitForm + `)\s*(?:[\[(]\s*(` + listForm + `)\s*(` + unitForm + `)\s*[\])]|/\s*(` + listForm + `)\s*(` + unitForm + `))`
)

var (
	listIn = regexp.MustCompile(listForm)
	pairIn = regexp.MustCompile(pairForm)
	// styles that can be told from running text only where a list must stand
	otherList = regexp.MustCompile(`^(?:\d+(?:[-–]\d+){2,}|` + numberForm + `\s*\(` + numberForm + `\)(?:\s*` + numberForm + `\s*\(` + numberForm + `\))+(?:\s*` + numberForm + `)?)`)
)

// number reads a count as it is printed, halves and all.
func number(s string) (decimal.Decimal, error) {
	l, err := gauge.ParseLength(strings.ReplaceAll(s, "−", "-") + " mm") // as many millimetres as a count may be large
	return l.Value, err
}

// numbers reads a list of counts.
func numbers(s string) (grade.Run[decimal.Decimal], error) { return notation.Read(s, 0, number) }

// yarnLengths reads a list of lengths of yarn in one unit.
func yarnLengths(s, unit string) (grade.Run[yarn.Length], error) {
	return notation.Read(s, 0, func(w string) (yarn.Length, error) { return yarn.ParseLength(w + " " + unit) })
}

// values returns how many values a list that listIn found has.
func values(s string) int {
	n := 1
	for _, c := range s {
		if strings.ContainsRune("([,:", c) {
			n++
		}
	}
	return n
}

func hasNumber(s string) bool { return strings.ContainsAny(s, "0123456789½¼¾⅛⅜⅝⅞") }

// mayFall are measures that need not grow with the size.
var mayFall = regexp.MustCompile(`(?i)\b(?:ease|neck)\b`)

// subset finds sizes named in a line that is for some of them: "(size XS–S, XL–2X)".
var subset = regexp.MustCompile(`\((?:for )?sizes? ([^()]*)\)`)

// sizeNames returns the sizes that a line names in brackets: all of "(sizes S, L) …
// or … (size M)".
func sizeNames(l line) []string {
	var names []string
	for _, m := range subset.FindAllStringSubmatch(l.text, -1) {
		for _, name := range strings.FieldsFunc(m[1], func(c rune) bool { return c == ',' || c == ';' || c == '&' }) {
			names = append(names, strings.TrimSpace(name))
		}
	}
	return names
}

// sizesOf returns the places of the sizes that a line is for.
func (p *pattern) sizesOf(l line) []int {
	all := make([]int, p.n)
	for i := range all {
		all[i] = i
	}
	var some []int
	for _, name := range sizeNames(l) {
		if i := slices.Index(p.sizes, name); i >= 0 {
			some = append(some, i)
		}
	}
	slices.Sort(some)
	some = slices.Compact(some)
	if some == nil {
		return all
	}
	return some
}

// lists looks at every list of a line: whether it has a value for each size, and
// whether one size alone is out of line.
func (p *pattern) lists(l line) []Finding {
	if !hasNumber(l.text) || sizesName.MatchString(l.name) {
		return nil
	}
	var out []Finding
	sizes := p.sizesOf(l)
	if names := sizeNames(l); len(p.sizes) > 1 {
		for i, name := range names {
			if slices.Contains(names[:i], name) {
				out = append(out, Finding{Line: l.number, Name: l.name, Size: name, Got: "size " + name + " twice", Want: "each size once", Why: "the line is for " + strings.Join(names, ", ")})
			} else if !slices.Contains(p.sizes, name) {
				out = append(out, Finding{Line: l.number, Name: l.name, Got: "size " + name, Want: strings.Join(p.sizes, ", "), Why: "the text has no size of that name"})
			}
		}
	}
	for _, at := range listIn.FindAllStringIndex(l.text, -1) {
		s := l.text[at[0]:at[1]]
		n := values(s)
		if n < 2 {
			continue
		}
		if n != len(sizes) {
			if n > 2 && !inTwoMarks(s) && !(n < p.n && someSizes.MatchString(l.text)) || n == 2 && len(sizes) == 3 && p.stands(l, s) {
				out = append(out, Finding{Line: l.number, Name: l.name, Got: s, Why: "a list of " + strconv.Itoa(n) + " values where the text has " + plural(len(sizes), "size")})
			}
			continue
		}
		got, err := numbers(marks.Replace(s))
		if err != nil || p.isRow(l) || p.isTied(l) || p.isYarn(l) {
			continue // held against what makes it
		}
		list := check.List{Name: "list", Values: got}
		for _, i := range sizes {
			list.Sizes = append(list.Sizes, p.label(i))
		}
		counted := termNoun.MatchString(l.text[at[1]:])
		f, err := check.Rising(list)
		if err == nil && len(f) == 0 && counted {
			f, err = check.Even(list) // lengths are on a grid, and their steps uneven by that
		}
		if err != nil {
			continue
		}
		for _, x := range f {
			if x.Index < 0 || x.Want == "" {
				continue // steps of any size are right, and so are lists that fall
			}
			// Only a step that three other sizes keep makes a fall a fault, and only of
			// counts and of named lists: those of shaping and of openings may fall.
			fault := !x.Remark && (counted || p.isStatement(l)) && strings.HasPrefix(x.Why, "the other sizes rise by") && !strings.HasPrefix(x.Why, "the other sizes rise by 0 ")
			fault = fault || p.isStatement(l) && !counted && roundName.MatchString(l.name) && !mayFall.MatchString(l.name)
			out = append(out, Finding{Line: l.number, Name: l.name, Size: x.Size, Got: x.Got, Want: x.Want, Why: "the list is " + s + "; " + x.Why, Remark: !fault})
		}
	}
	return out
}

// inTwoMarks reports whether a list is one length in both units: `4" (10cm)`.
func inTwoMarks(s string) bool { return strings.Contains(s, "cm") && strings.ContainsAny(s, `"″”`) }

// someSizes finds a line that is for some of the sizes only.
var someSizes = regexp.MustCompile(`(?i)\bsizes?\b.*\bonly\b|\bonly\b.*\bsizes?\b|\bfor sizes? |\b(?:small|larg|remaining|other|first|last|next|two|three|four|five|six|[2-9])\w* sizes?\b`)

// stands reports whether two values are a list of sizes that lacks some: they are
// all that a named line has, or stand in a row or an equation. Elsewhere 4 (5) may
// be a number and a remark.
func (p *pattern) stands(l line, s string) bool {
	switch {
	case inTwoMarks(s) || someSizes.MatchString(l.text):
		return false
	case p.isRow(l) || p.isYarn(l) || looksEqual.MatchString(l.body):
		return true
	}
	rest, ok := strings.CutPrefix(l.body, s)
	return ok && l.name != "" && listUnit.MatchString(rest)
}

var listUnit = regexp.MustCompile(`^\s*(?:` + unitForm + `|sts?|stitch(?:es)?|rows?|rnds?|rounds?|[a-z]{2,3})?\.?$`)

func plural(n int, noun string) string {
	if n == 1 {
		return "1 " + noun
	}
	return strconv.Itoa(n) + " " + noun + "s"
}

// pair is a list of lengths printed in two units.
type pair struct {
	line  line
	place int // among the pairs of its line, from 0
	text  string
	sizes []int
	notation.Lengths
}

func (x pair) id() string { return fmt.Sprint(x.line.number, " ", x.place) }

// isTied reports whether lengths of a line are held against counts.
func (p *pattern) isTied(l line) bool {
	return slices.ContainsFunc(p.inBoth, func(x pair) bool { return x.line.number == l.number && p.tied[x.id()] })
}

// pairs returns the lengths in two units of a line. Lengths of yarn, which may be
// longer, are package yarn's.
func (p *pattern) pairs(l line) []pair {
	if !hasNumber(l.text) {
		return nil
	}
	var out []pair
	for _, s := range bothUnits(l.text) {
		x := pair{line: l, place: len(out), text: s, sizes: p.sizesOf(l)}
		var err error
		if x.Lengths, err = notation.ReadLengths(unsign(s), 0); err != nil || len(x.Other) == 0 || len(x.Own) > 1 && len(x.Own) != len(x.sizes) {
			continue // a list of another length is a finding of its own
		}
		if len(x.Own) == 1 {
			x.Own, _ = x.Own.For(len(x.sizes))
			x.Other, _ = x.Other.For(len(x.sizes))
		}
		out = append(out, x)
	}
	return out
}

func unsign(s string) string { return strings.ReplaceAll(s, "−", "-") }

// Inches and centimetres that stand for one length may each be rounded from the
// exact one, to a quarter and to a half: they are then at most half of both
// steps apart. Editors' list: https://kristinamcgrath.com/articles/u7b5y8-how-to-work-with-multi-system-gau
var (
	halfQuarter = gauge.Length{Value: decimal.New(125, -3), Unit: gauge.Inch}
	halfHalf    = gauge.Length{Value: decimal.New(25, -2), Unit: gauge.Centimetre}
)

// apart returns how far two printed lengths of one size are apart beyond their
// rounding, when an inch is counted as 2.54 cm, or as 2.5 cm.
func apart(own, other gauge.Length, at25 bool) gauge.Measurement {
	a, b := own.Measurement(), other.Measurement()
	if at25 {
		less, _ := gauge.Share(250, 254)
		if own.Unit == gauge.Inch {
			a = a.Times(less)
		} else {
			b = b.Times(less)
		}
	}
	off := a.Sub(b)
	if off.Sign() < 0 {
		off = b.Sub(a)
	}
	return off.Sub(halfQuarter.Measurement()).Sub(halfHalf.Measurement())
}

// units holds the two units of every pair against each other, under the
// convention that more of the page keeps.
func units(p *pattern, all []pair) []Finding {
	fails := func(at25 bool) (out []Finding) {
		for _, x := range all {
			own, other := x.Own[0].Unit, x.Other[0].Unit
			if own != gauge.Inch && own != gauge.Centimetre || other != gauge.Inch && other != gauge.Centimetre {
				continue
			}
			grid := gauge.HalfCentimetre
			switch {
			case other == gauge.Inch:
				grid = gauge.QuarterInch
			case at25:
				grid = gauge.HalfCentimetreAt25
			}
			for i := range x.Own {
				if apart(x.Own[i], x.Other[i], at25).Sign() < 0 {
					continue
				}
				why := x.Own[i].String() + " at 2.54 cm to the inch"
				m := x.Own[i].Measurement()
				if at25 {
					why = x.Own[i].String() + " at 2.5 cm to the inch, as most of this text has it"
					if other == gauge.Inch {
						more, _ := gauge.Share(254, 250)
						m = m.Times(more)
					}
				}
				f := Finding{Line: x.line.number, Name: x.line.name, Got: x.Other[i].String(), Want: grid.Text(m), Why: why}
				if !same(x) {
					f.Size = p.label(x.sizes[i])
				}
				out = append(out, f)
				if same(x) {
					break
				}
			}
		}
		return out
	}
	at254, at25 := fails(false), fails(true)
	if len(at25) < len(at254) {
		return at25
	}
	return at254
}

// same reports whether one length in both units stands for all sizes.
func same(x pair) bool {
	for _, list := range listIn.FindAllString(x.text, -1) {
		if values(list) > 1 {
			return false
		}
	}
	return len(x.sizes) > 1
}
