package main

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/notation"
	"example.com/panelmath/panel/row"
)

// pattern is what was read out of a text.
type pattern struct {
	lines        []line
	n            int      // number of sizes
	sizes        []string // their labels; empty where the text names none
	terms        row.Terms
	gauges       []tension
	statements   []statement
	names        map[string]statement // by lower-case name
	inBoth       []pair
	yarns        []yarnLine
	printedHooks []printedHook
	blocks       []block
	tied         map[string]bool // pairs that hang on counts: line and place in it
	why          map[int]bool    // lines that explain a number of one size
	open         block           // rows of a piece that is not at its end
	missed       []missed        // lines that look like ones to check and can't be read
	as           map[int]string  // what a line was read as, for report

	chains map[string]string // what is said of the chain at the start of a row, by its number
	places int               // how many stitches may still be worked
	tries  int               // what looking for a wrong row number may still cost
}

// How many stitches the rows of a text may work: enough for garments in many
// sizes, and more for a long text, yet no more than a moment's work.
const (
	mostWork    = 3_000_000
	workPerByte = 40
)

// tension is a line with a gauge. One direction alone leaves the other zero.
type tension struct {
	line   line
	worked bool // on the hook, before washing
	gauge  gauge.Gauge
	other  gauge.Gauge // the same over another span, as it stands in brackets
}

// read reads a text. It returns a *LineError for a line that must be understood
// and can't be.
func read(s string) (*pattern, error) {
	lines, err := split(s)
	if err != nil {
		return nil, err
	}
	p := &pattern{lines: lines, names: map[string]statement{}, as: map[int]string{}, why: map[int]bool{}, tied: map[string]bool{}}
	p.chains, p.places, p.tries = map[string]string{}, mostWork+workPerByte*len(s), mostTries
	if err := p.readSizes(); err != nil {
		return nil, err
	}
	p.bracketed()
	for _, l := range lines {
		if ukTerms.MatchString(l.text) {
			p.terms = row.UK
			p.as[l.number] = "terms: UK"
		}
	}
	section := ""
	for _, l := range lines {
		switch {
		case l.aside && rowLine.MatchString(strings.TrimLeft(l.body, "/ ")):
			p.cutBlock() // a row passed over: those after it stand on their own
			continue
		case l.text == "":
			continue
		case l.heading:
			section = strings.ToLower(l.text)
			p.endBlock()
			continue
		case strings.HasPrefix(section, "why "): // the arithmetic of one size, not the pattern
			p.inBoth = append(p.inBoth, p.pairs(l)...)
			p.why[l.number] = true
			continue
		case p.isRow(l):
			p.addRow(l)
			continue
		}
		p.recall(l)
		if err := p.readLine(l, section); err != nil {
			return nil, err
		}
	}
	p.endBlock()
	p.readHooks()
	return p, nil
}

// readLine reads a line that is no row.
func (p *pattern) readLine(l line, section string) error {
	p.inBoth = append(p.inBoth, p.pairs(l)...)
	if p.as[l.number] != "" {
		return nil
	}
	if isGauge.MatchString(l.name) || isWorked.MatchString(l.name) || strings.Contains(section, "gauge") || strings.Contains(section, "tension") {
		if err := p.readGauge(l); !errors.Is(err, errProse) {
			return err
		}
		if isGauge.MatchString(l.name) {
			return nil // in words, or in clusters
		}
	}
	if ok, err := p.readYarn(l); ok || err != nil {
		return err
	}
	if l.name == "" {
		return nil
	}
	s, err := p.statement(l)
	if errors.Is(err, errProse) {
		return nil
	}
	if err != nil {
		return err
	}
	p.statements = append(p.statements, s)
	if _, ok := p.names[strings.ToLower(l.name)]; !ok {
		p.names[strings.ToLower(l.name)] = s
	}
	p.as[l.number] = "list"
	if len(s.sides) > 1 {
		p.as[l.number] = "equation"
	}
	return nil
}

var (
	ukTerms   = regexp.MustCompile(`(?i)\b(?:UK|British) (?:crochet )?terms\b|^Terms: UK\b`)
	sizesName = regexp.MustCompile(`^(?i:sizes?|sizes? available|to fit sizes?)$`)
	inOrder   = regexp.MustCompile(`in this order: ([^.]*)\.`)
	tableCell = regexp.MustCompile(`^\|\s*([^|]*?)\s*\|`)
	dashSizes = regexp.MustCompile(`^\S+(?:\s*-\s*\S+){2,}$`)
)

// readSizes finds how many sizes there are and what they are called: in a line
// `Sizes: XS (S, M, L)`, in a sentence "in this order: XS (S, M, L).", or in a table
// whose first column is headed Size. Where nothing names them, the length that
// most lists have is taken.
func (p *pattern) readSizes() error {
	table, inTable := []string(nil), false
	for _, l := range p.lines {
		list := ""
		if sizesName.MatchString(l.name) && p.sizes == nil {
			list = l.body
		} else if m := inOrder.FindStringSubmatch(l.text); m != nil && p.sizes == nil {
			list = m[1]
		}
		if list != "" {
			labels, err := labels(list)
			if err != nil {
				return unreadable(l.number, "sizes: %w", err)
			}
			p.sizes, p.as[l.number] = labels, "sizes: "+strings.Join(labels, " | ")
			continue
		}
		m := tableCell.FindStringSubmatch(l.text)
		switch {
		case m == nil:
			inTable = false
		case strings.EqualFold(m[1], "size") && table == nil:
			inTable = true
		case inTable && !strings.HasPrefix(m[1], "---"):
			table = append(table, m[1])
			p.as[l.number] = "size " + m[1]
		}
	}
	if p.sizes == nil && len(table) <= grade.MaxSizes {
		p.sizes = table
	}
	p.n = len(p.sizes)
	if p.n == 0 {
		p.n = p.usual()
	}
	return nil
}

var dashes = regexp.MustCompile(`\b\d+(?:\.\d+)?(?:-\d+(?:\.\d+)?){2,}\b`)

// bracketed writes lists of the form a-b-c, of as many values as there are sizes,
// as a (b, c): within a line a dash may stand for anything.
func (p *pattern) bracketed() {
	if p.n < 3 {
		return
	}
	write := func(s string) string {
		return dashes.ReplaceAllStringFunc(s, func(list string) string {
			values := strings.Split(list, "-")
			if len(values) != p.n {
				return list
			}
			return values[0] + " (" + strings.Join(values[1:], ", ") + ")"
		})
	}
	for i := range p.lines {
		l := &p.lines[i]
		if !sizesName.MatchString(l.name) && !l.aside {
			l.text, l.body = write(l.text), write(l.body)
		}
	}
}

func labels(list string) (grade.Run[string], error) {
	list = strings.TrimSuffix(strings.TrimSpace(list), ".")
	if first, rest, ok := strings.Cut(list, ","); ok && !strings.ContainsAny(list, "([") {
		list = first + " (" + rest + ")"
	}
	if dashSizes.MatchString(list) && !strings.ContainsAny(list, "([,") {
		parts := strings.Split(list, "-")
		for i := range parts {
			parts[i] = strings.TrimSpace(parts[i])
		}
		list = parts[0] + " (" + strings.Join(parts[1:], ", ") + ")"
	}
	return notation.Read(list, 0, func(s string) (string, error) { return s, nil })
}

// usual returns the length that most lists of the text have.
func (p *pattern) usual() int {
	many := map[int]int{}
	best := 1
	for _, l := range p.lines {
		if !hasNumber(l.text) {
			continue
		}
		for _, s := range listIn.FindAllString(l.text, -1) {
			n := values(s)
			if n < 2 || n > grade.MaxSizes {
				continue
			}
			many[n]++
			if best == 1 || many[n] > many[best] {
				best = n
			}
		}
	}
	return best
}

// label returns what size i is called: its label, or its number. The one size of
// a text needs no name.
func (p *pattern) label(i int) string {
	switch {
	case i < 0 || p.n == 1:
		return ""
	case i < len(p.sizes):
		return p.sizes[i]
	}
	return strconv.Itoa(i + 1)
}

var (
	isGauge     = regexp.MustCompile(`(?i)\b(?:gauge|tension)\b`)
	isWorked    = regexp.MustCompile(`(?i)on the hook|before wash|before block|unwashed|unblocked|as worked`)
	gaugeNoun   = regexp.MustCompile(`^(\S+) (?:sc|hdc|dc|tr|htr|dtr)\b`) // what the stitches are
	gaugeAbout  = regexp.MustCompile(`^(?i:about|approx\.?|approximately) `)
	gaugeInch   = regexp.MustCompile(`(?:/| per )(?:inch|in)\b`)
	gaugePer    = regexp.MustCompile(`(sts?|stitches|rows?)/(\d)`)
	gaugeCounts = regexp.MustCompile(`\b(?:sts?|stitch(?:es)?|rows?)\b`)
	gaugeOther  = regexp.MustCompile(`[(\[](?:about )?([^()\[\]]*=[^()\[\]]*)[)\]]`)
	gaugeStop   = regexp.MustCompile(`, in |, after |, wash| in (?:the )?(?:pattern|hdc|dc|sc|tr|htr|st)|[.;]\s|[.;]?$|\s*[\[(/]| using | with `)
)

// readGauge reads `12 sts and 10 rows = 4 in`, or one direction alone. What follows
// the gauge is prose.
func (p *pattern) readGauge(l line) error {
	l.body = gaugeAbout.ReplaceAllString(l.body, "")
	if l.body == "" || l.body[0] < '0' || l.body[0] > '9' {
		return errProse
	}
	l.body = gaugePer.ReplaceAllString(gaugeInch.ReplaceAllString(l.body, " = 1 in"), "$1 = $2")
	l.body = gaugeNoun.ReplaceAllString(l.body, "$1 sts")
	var other gauge.Gauge
	if m := gaugeOther.FindStringSubmatch(l.body); m != nil {
		if g, err := gauge.ParseGauge(m[1]); err == nil {
			other = g
		}
	}
	ends := gaugeStop.FindAllStringIndex(l.body, -1)
	var first error
	for i := len(ends) - 1; i >= 0; i-- {
		t := tension{line: l, other: other, worked: isWorked.MatchString(l.name)}
		body := l.body[:ends[i][0]]
		g, err := gauge.ParseGauge(body)
		if err == nil {
			t.gauge = g
		} else if over, err := gauge.ParseOver(body); err == nil && strings.Contains(body, "row") {
			t.gauge.Rows = over
		} else if err == nil {
			t.gauge.Stitches = over
		} else {
			if first == nil {
				first = err
			}
			continue
		}
		p.gauges = append(p.gauges, t)
		p.as[l.number] = "gauge " + t.String()
		return nil
	}
	if !isGauge.MatchString(l.name) || !gaugeCounts.MatchString(l.body) {
		return errProse
	}
	return unreadable(l.number, "%s: %w", l.name, first)
}

func (t tension) String() string {
	s, r := t.gauge.Stitches, t.gauge.Rows
	switch {
	case s.Validate() != nil:
		return rows.text(r)
	case r.Validate() != nil:
		return stitches.text(s)
	}
	return t.gauge.String()
}

// text prints one direction of a gauge: "20 sts = 4 in".
func (k kind) text(o gauge.Over) string {
	noun := " sts = "
	if k == rows {
		noun = " rows = "
	}
	return strings.Replace(o.String(), " over ", noun, 1)
}

// twice holds a gauge that is printed over two spans against itself.
func (p *pattern) twice() []Finding {
	var out []Finding
	for _, t := range p.gauges {
		for _, d := range []struct {
			kind       kind
			own, other gauge.Over
		}{{stitches, t.gauge.Stitches, t.other.Stitches}, {rows, t.gauge.Rows, t.other.Rows}} {
			exact, err := d.own.Exact(d.other.Span.Measurement())
			if err != nil || d.other.Validate() != nil {
				continue
			}
			want := exact.Decimal(max(0, -int(d.other.Count.Exponent()))) // as many places as are printed
			if !want.Equal(d.other.Count) {
				right := d.other
				right.Count = want
				out = append(out, Finding{Line: t.line.number, Name: name(t.line, "gauge"), Got: d.kind.text(d.other), Want: d.kind.text(right), Why: d.kind.text(d.own) + " is that"})
			}
		}
	}
	return out
}

// over returns the gauge for a direction, and its line; ok is false where the
// text has none.
func (p *pattern) over(k kind, worked bool) (over gauge.Over, l line, ok bool) {
	for _, t := range p.gauges {
		over := t.gauge.Stitches
		if k == rows {
			over = t.gauge.Rows
		}
		if t.worked == worked && over.Validate() == nil {
			return over, t.line, true
		}
	}
	return gauge.Over{}, line{}, false
}

// check returns what does not agree.
func (p *pattern) check() []Finding {
	all := p.rows()
	all = append(all, p.body()...)
	all = append(all, p.hooks()...)
	all = append(all, p.twice()...)
	var pieces []relation
	for _, s := range p.statements {
		f, r := p.holds(s)
		all = append(all, f...)
		pieces = append(pieces, r...)
	}
	f, house := p.panels()
	all = append(all, f...)
	for _, l := range p.lines {
		if !l.heading && !p.why[l.number] {
			all = append(all, p.lists(l)...)
		}
	}
	all = append(all, units(p, slices.DeleteFunc(slices.Clone(p.inBoth), func(x pair) bool { return p.tied[x.id()] }))...)
	all = append(all, p.measures(append(pieces, house...))...)
	all = append(all, p.yarn()...)
	return sorted(all)
}

// report says how every line with a number in it was read.
func (p *pattern) report() string {
	both := map[int]bool{}
	for _, x := range p.inBoth {
		both[x.line.number] = true
	}
	var b strings.Builder
	for _, l := range p.lines {
		if l.aside || l.heading || !hasNumber(l.text) {
			continue
		}
		as := p.as[l.number]
		switch {
		case as == "" && both[l.number]:
			as = "one length in two units"
		case as == "":
			as = "NOT CHECKED"
		}
		text := []rune(l.text)
		if len(text) > 60 {
			text = append(text[:60:60], '…')
		}
		fmt.Fprintf(&b, "line %d [%s]: %s\n", l.number, as, string(text))
	}
	return b.String()
}

func (p *pattern) isYarn(l line) bool { return strings.HasPrefix(p.as[l.number], "yarn") }

func (p *pattern) isStatement(l line) bool {
	return p.as[l.number] == "list" || p.as[l.number] == "equation"
}
