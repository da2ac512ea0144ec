package main

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/notation"
	"example.com/panelmath/yarn"
)

// yarnLine is what a line says about the yarn to buy. Parts that it does not say
// are nil, or zero.
type yarnLine struct {
	line    line
	skeins  grade.Run[int]
	each    []yarn.Length // one skein, in one unit or two
	mass    yarn.Mass     // of one skein
	all     bool          // the total is what all skeins hold: `4 skeins x 400 yd = 1600 yd`
	totals  []grade.Run[yarn.Length]
	masses  grade.Run[yarn.Mass]
	left    grade.Run[yarn.Length] // over from the skeins
	skeined string                 // as printed
}

const (
	yarnUnit = `(yards?\b|yds?\b|met(?:re|er)s?\b|m\b)`
	massUnit = `(ounces?\b|oz\b|grams?\b|g\b|kg\b)`
	skeinsIn = `(?:skeins?|balls?|cakes?|hanks?)\b`

	oneAmount = numberForm + `[ -]?(?:` + yarnUnit + `|` + massUnit + `)`
)

var (
	yarnName  = regexp.MustCompile(`(?i)^(?:(?:total )?yarn|yardage|skeins|balls|materials?)\b`)
	leftOver  = regexp.MustCompile(`(?i)^left over[^:]*$`)
	yarnList  = regexp.MustCompile(`(` + listForm + `)\s*` + yarnUnit)
	amountIn  = regexp.MustCompile(`(?i)(` + listForm + `)[\s-]*(?:` + yarnUnit + `|` + massUnit + `)`)
	skeinList = regexp.MustCompile(`(?i)(` + listForm + `)(?:(?:\s*[x×]\s*|\s+|\s*\()` + oneAmount + `\)?)?\s*(?:[x×]\s*)?(?:-?([a-z-]+) )?` + skeinsIn + `|(` + listForm + `)\s*[x×]\s*` + oneAmount)
	product   = regexp.MustCompile(`(?i)` + skeinsIn + ` ?[x×]`)
	thousands = regexp.MustCompile(`(^|[^\d,.])(\d{1,2}),(\d{3})\b`)
	isMass    = regexp.MustCompile(`(?i)^` + massUnit + `$`)
	isUnit    = regexp.MustCompile(`(?i)^-?(?:` + yarnUnit + `|` + massUnit + `)$`)

	// What stands between two amounts that are one: `200 yd (183 m)`, `50 g = 105 m`.
	amountJoin = regexp.MustCompile(`^[)\]]?\s*(?:(?:in )?(?:total|all)\s*)?(?:[/=(\[]|or\b|per\b)\s*(?:(?:about|approx\.?|approximately|~)\s*)?$`)
	labelJoin  = regexp.MustCompile(`[/=]|or|per`)
	perMass    = regexp.MustCompile(`(?i)^ ?(?:/|per) ?` + massUnit) // 200 yd per oz
	// What stands before or after the amount of one skein.
	eachBefore = regexp.MustCompile(`(?i)(?:` + skeinsIn + `(?:,? (?:of|at|each)(?: about)?| ?[x×]| ?[(\[])|\ba|\d[)\]]? ?[x×]) ?$`)
	eachAfter  = regexp.MustCompile(`(?i)^(?:[)\]]?,? ?(?:each\b|(?:per|a|/) ?` + skeinsIn + `)|[ -]?` + skeinsIn + `)`)
	// What says that an amount is not the one to buy.
	otherAmount = regexp.MustCompile(`(?i)\b(?:used|sample|swatch|left|(?:some|plenty|yarn) to spare|up to|elastic|ribbon|fringe|thread|fabric|lining|cord|wire|piping)\b`)
	forSize     = regexp.MustCompile(`\bfor (?:sizes? )?([^\s,;.()]+)`)
)

// withoutCommas writes 1,200 as 1200 in a line about yarn: a comma followed by
// three digits and no blank separates no sizes there.
func (l *line) withoutCommas() {
	if !yarnName.MatchString(l.name) && !amountIn.MatchString(l.text) && !skeinList.MatchString(l.text) {
		return
	}
	l.text = thousands.ReplaceAllString(l.text, "$1$2$3")
	l.body = thousands.ReplaceAllString(l.body, "$1$2$3")
}

// amount is a printed length or mass of yarn and its place in the line.
type amount struct {
	list, unit string
	at, end    int
}

func (a amount) mass() bool { return isMass.MatchString(a.unit) }
func (a amount) lone() bool { return values(a.list) == 1 }

// amounts returns those of a text, each with the others that are the same in
// another unit, or the length that goes with a mass.
func amounts(s string) [][]amount {
	var out [][]amount
	for _, m := range amountIn.FindAllStringSubmatchIndex(s, -1) {
		unit := 4
		if m[4] < 0 {
			unit = 6
		}
		a := amount{list: s[m[2]:m[3]], unit: strings.ToLower(s[m[unit]:m[unit+1]]), at: m[0], end: m[1]}
		n := len(out) - 1
		if n >= 0 && a.joins(out[n], s) {
			out[n] = append(out[n], a)
			continue
		}
		out = append(out, []amount{a})
	}
	return out
}

// joins reports whether an amount belongs to those before it. Two in one unit do
// not: `4 skeins x 400 yd = 1600 yd`.
func (a amount) joins(before []amount, s string) bool {
	last := before[len(before)-1]
	if slices.ContainsFunc(before, func(b amount) bool { return b.unit == a.unit }) || values(last.list) != values(a.list) {
		return false
	}
	between := s[last.end:a.at]
	if strings.TrimSpace(between) == "," { // a label in brackets: `(200 yd, 100 g)`, `(200 yd, 100 g each)`
		opening, after := strings.LastIndexAny(s[:before[0].at], "()[]"), s[a.end:]
		return opening >= 0 && strings.ContainsRune("([", rune(s[opening])) && (eachAfter.MatchString(after) || opening == before[0].at-1)
	}
	return amountJoin.MatchString(between)
}

// ofOne reports whether amounts are those of one skein: they stand where a label
// does, or a length is tied to its mass, `200 yd = 100 g`.
func ofOne(group []amount, s string) bool {
	first, last := group[0], group[len(group)-1]
	if eachBefore.MatchString(s[max(0, first.at-near):first.at]) || eachAfter.MatchString(s[last.end:]) || perMass.MatchString(s[last.end:]) {
		return true
	}
	for i, a := range group[1:] {
		if a.mass() != group[i].mass() && labelJoin.MatchString(s[group[i].end:a.at]) && a.lone() {
			return true
		}
	}
	return false
}

// readYarn reads a line with skeins in it, or one named for yarn. It reports false
// for any other line.
func (p *pattern) readYarn(l line) (bool, error) {
	if leftOver.MatchString(l.name) {
		p.readLeft(l)
		return true, nil
	}
	y := yarnLine{line: l, all: product.MatchString(l.body)}
	if !p.readSkeins(&y) && !yarnName.MatchString(l.name) {
		p.readYards(l)
		return false, nil
	}
	var lengths, masses []amount // of all skeins
	for _, group := range amounts(l.body) {
		switch {
		case p.isOther(clauseAround(l.body, group[0].at, group[len(group)-1].end)):
		case ofOne(group, l.body):
			if m := perMass.FindStringSubmatch(l.body[group[len(group)-1].end:]); m != nil {
				group = append(group, amount{list: "1", unit: m[1]})
			}
			if err := y.label(group); err != nil {
				return true, err
			}
		default:
			for _, a := range group {
				if a.mass() {
					masses = append(masses, a)
				} else {
					lengths = append(lengths, a)
				}
			}
		}
	}
	if n := p.unmarked(y, lengths); n > 0 {
		if err := y.label(lengths[:n]); err != nil {
			return true, err
		}
		lengths = lengths[n:]
	}
	// Beside lists a lone number is for one skein.
	lone := func(a amount) bool { return a.lone() }
	if p.n > 1 && (values(y.skeined) > 1 || slices.ContainsFunc(lengths, func(a amount) bool { return !a.lone() })) {
		if i := slices.IndexFunc(lengths, lone); i >= 0 && y.each == nil {
			if err := y.label(lengths[i : i+1]); err != nil {
				return true, err
			}
		}
		lengths, masses = slices.DeleteFunc(lengths, lone), slices.DeleteFunc(masses, lone)
	}
	if err := p.readTotals(&y, lengths, masses); err != nil {
		return true, err
	}
	if y.skeins == nil && y.totals == nil && y.each == nil {
		return true, nil
	}
	p.yarns = append(p.yarns, y)
	p.as[l.number] = "yarn: " + y.String()
	return true, nil
}

var unmarkedJoin = regexp.MustCompile(`^[)\]]?\s*[,;]\s*(?:[a-z][a-z. ]{0,30})?~?$`)

// unmarked returns how many of the lengths of a line are those of one skein, where
// no word says so: `6 skeins, 185 yd (169 m), 1050 yd (960 m)`. The second length
// in the same unit is then about what the skeins hold.
func (p *pattern) unmarked(y yarnLine, lengths []amount) int {
	if y.skeins == nil || y.each != nil || values(y.skeined) > 1 || slices.ContainsFunc(lengths, func(a amount) bool { return !a.lone() }) {
		return 0
	}
	for i := 1; i < len(lengths) && i < 3; i++ {
		if lengths[i].unit != lengths[0].unit || !unmarkedJoin.MatchString(y.line.body[lengths[i-1].end:lengths[i].at]) {
			continue
		}
		one, err := yarn.ParseLength(lengths[0].list + " " + lengths[0].unit)
		all, bad := yarn.ParseLength(lengths[i].list + " " + lengths[i].unit)
		if err != nil || bad != nil || one.Value.Sign() <= 0 {
			return 0
		}
		n, err := all.Measurement().Per(one.Measurement())
		if off := n.Sub(gauge.Int(y.skeins[0])); err == nil && off.Cmp(gauge.Int(-2)) > 0 && off.Cmp(gauge.Int(1)) <= 0 && (y.skeins[0] == 1 || n.Cmp(gauge.Int(1)) > 0) {
			return i
		}
		return 0
	}
	return 0
}

const (
	yardUnit  = `(?:yards?\b|yds?\b)`
	metreUnit = `(?:met(?:re|er)s?\b|m\b)`
)

var yardsIn = regexp.MustCompile(`(` + listForm + `)\s*(` + yardUnit + `)\s*[(\[/]\s*(` + listForm + `)\s*(` + metreUnit + `)|(` + listForm + `)\s*(` + metreUnit + `)\s*[(\[/]\s*(` + listForm + `)\s*(` + yardUnit + `)`)

// readYards takes down yards with their metres in a line that is not about skeins:
// `MC total: 810 yd (741 m)`, `You will need 810 yards (741 m)`.
func (p *pattern) readYards(l line) {
	for _, m := range yardsIn.FindAllStringSubmatch(l.body, -1) {
		y := yarnLine{line: l}
		for i := 1; i < len(m); i += 2 {
			total, err := yarnLengths(m[i], m[i+1])
			if m[i] == "" || err != nil {
				continue
			}
			if total, err = total.For(p.n); err == nil && positive(total) {
				y.totals = append(y.totals, total)
			}
		}
		if len(y.totals) == 2 {
			p.yards = append(p.yards, y)
		}
	}
}

// isOther reports whether the words around an amount say that it is not the one
// to buy in every size.
func (p *pattern) isOther(clause string) bool {
	if m := forSize.FindStringSubmatch(clause); m != nil && slices.Contains(p.sizes, m[1]) {
		return true
	}
	return otherAmount.MatchString(clause)
}

// readTotals reads the first length of all skeins, the same in another unit that
// follows it, and the first mass.
func (p *pattern) readTotals(y *yarnLine, lengths, masses []amount) error {
	for i, a := range lengths {
		if i > 0 && !totalJoin.MatchString(y.line.body[lengths[i-1].end:a.at]) || slices.ContainsFunc(lengths[:i], func(b amount) bool { return b.unit == a.unit }) {
			break // another yarn
		}
		total, err := yarnLengths(a.list, a.unit)
		if err != nil {
			return fmt.Errorf("%s: %w", name(y.line, "yarn"), err)
		}
		if total, err = total.For(p.n); err == nil && positive(total) {
			y.totals = append(y.totals, total)
		}
	}
	if len(masses) == 0 {
		return nil
	}
	unit := masses[0].unit
	total, err := notation.Read(masses[0].list, 0, func(s string) (yarn.Mass, error) { return yarn.ParseMass(s + " " + unit) })
	if err == nil {
		total, err = total.For(p.n)
	}
	if err == nil && !slices.ContainsFunc(total, func(m yarn.Mass) bool { return m.Value.Sign() <= 0 }) {
		y.masses = total
	}
	return nil
}

// readLeft reads what is left over of the yarn of the line before it.
func (p *pattern) readLeft(l line) {
	m := yarnList.FindStringSubmatch(l.body)
	if m == nil || len(p.yarns) == 0 {
		return
	}
	left, err := yarnLengths(m[1], m[2])
	if err == nil {
		p.yarns[len(p.yarns)-1].left, err = left.For(p.n)
	}
	if err == nil {
		p.yarns = append(p.yarns, yarnLine{line: l})
		p.as[l.number] = "yarn left over"
	}
}

// readSkeins reads how many skeins a line asks for, and reports whether there are
// skeins in it. A line with two numbers of them is about more than one yarn.
func (p *pattern) readSkeins(y *yarnLine) (found bool) {
	var lists []string
	for _, m := range skeinList.FindAllStringSubmatch(y.line.body, -1) {
		found = true
		if word := m[4]; !isUnit.MatchString(word) { // `50 g balls` are not fifty
			lists = append(lists, m[1]+m[5])
		}
	}
	if len(lists) != 1 {
		return found
	}
	n, err := notation.ReadNumbers(lists[0], 0)
	if err == nil {
		if n, err = n.For(p.n); err == nil && !slices.Contains(n, 0) {
			y.skeins, y.skeined = n, lists[0]
		}
	}
	return found
}

// near is how far from an amount words may stand that are about it.
const near = 80

// clauseAround returns the words around an amount up to the next mark.
func clauseAround(s string, from, to int) string {
	s, from, to = s[max(0, from-near):min(len(s), to+near)], min(from, near), to-max(0, from-near)
	if i := strings.LastIndexAny(s[:from], ",;.("); i >= 0 {
		s, to = s[i+1:], to-i-1
	}
	if i := strings.IndexAny(s[to:], ",;.)"); i >= 0 {
		s = s[:to+i]
	}
	return s
}

var totalJoin = regexp.MustCompile(`^[)\]]?(?: (?:in )?(?:total|all))?(?:,|,? ?(?:or|=|/)| ?[(\[]) ?(?:about |approx\.? )?$`)

// label reads the length of one skein, in one unit or two, and its mass.
func (y *yarnLine) label(group []amount) error {
	if y.each != nil && slices.ContainsFunc(group, func(a amount) bool { return !a.mass() }) {
		return nil // the first label counts
	}
	for _, a := range group {
		if !a.lone() {
			continue
		}
		if a.mass() {
			m, err := yarn.ParseMass(a.list + " " + a.unit)
			if err != nil {
				return fmt.Errorf("%s: one skein: %w", name(y.line, "yarn"), err)
			}
			y.mass = m
			continue
		}
		each, err := yarn.ParseLength(a.list + " " + a.unit)
		if err != nil {
			return fmt.Errorf("%s: one skein: %w", name(y.line, "yarn"), err)
		}
		if each.Value.Sign() > 0 {
			y.each = append(y.each, each)
		}
	}
	return nil
}

func positive(r grade.Run[yarn.Length]) bool {
	return !slices.ContainsFunc(r, func(l yarn.Length) bool { return l.Value.Sign() <= 0 })
}

func (y yarnLine) String() string {
	var parts []string
	if y.skeins != nil {
		parts = append(parts, grade.Numbers(y.skeins)+" skeins")
	}
	for _, each := range y.each {
		parts = append(parts, each.String()+" each")
	}
	for _, t := range y.totals {
		parts = append(parts, grade.Text(t, yarn.Length.String)+" in all")
	}
	return strings.Join(parts, ", ")
}
