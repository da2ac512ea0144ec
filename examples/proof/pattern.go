package main

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/row"
)

// pattern is what was read out of a text.
type pattern struct {
	lines        []line
	n            int      // number of sizes
	sizes        []string // their labels; empty where the text names none
	terms        row.Terms
	gauges       []tension
	clusters     bool // a gauge is told in clusters or in words, and not known
	statements   []statement
	names        map[string]statement // by lower-case name
	inBoth       []pair
	yarns        []yarnLine
	yards        []yarnLine // yards with their metres elsewhere
	printedHooks []printedHook
	blocks       []block
	tied         map[string]bool // pairs that hang on counts: line and place in it
	why          map[int]bool    // lines that explain a number of one size
	open         block           // rows of a piece that is not at its end
	missed       []missed        // lines that look like ones to check and can't be read
	as           map[int]string  // what a line was read as, for report

	chains     map[string]string // what is said of the chain at the start of a row, by its number
	places     int               // how many stitches may still be worked
	tries      int               // what looking for a wrong row number may still cost
	overChains int               // how many stitches may still be worked to find out about chains: see hooked
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
	worked bool     // on the hook, before washing
	parts  []string // what it is the gauge of: "sleev", "rib"; none for the whole garment
	gauge  gauge.Gauge
	other  gauge.Gauge  // the same over another span, as it stands in brackets
	also   gauge.Length // the span in the other unit: 4 in (10 cm)
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
	p.overChains = mostHooked
	for i := range p.lines {
		p.lines[i].plain()
	}
	p.readSizes()
	p.bracketed()
	for _, l := range lines {
		if ukTerms.MatchString(l.text) {
			p.terms = row.UK
			p.as[l.number] = "terms: UK"
		}
	}
	section, bare := "", false // bare: it is a line of text, not a heading, and ends with what it is about
	for _, l := range lines {
		switch {
		case l.aside && rowLine.MatchString(strings.TrimLeft(l.body, "/ ")):
			p.cutBlock() // a row passed over: those after it stand on their own
			continue
		case l.text == "":
			continue
		case l.heading:
			section, bare = strings.ToLower(l.text), false
			p.endBlock()
			continue
		case bareGauge.MatchString(l.text):
			section, bare = "gauge", true
			continue
		case strings.HasPrefix(section, "why "): // the arithmetic of one size, not the pattern
			p.inBoth = append(p.inBoth, p.pairs(l)...)
			p.why[l.number] = true
			continue
		case p.isRow(l):
			p.inBoth = append(p.inBoth, p.pairs(l)...) // until piece measures 60 in (152.5 cm)
			p.addRow(l)
			continue
		}
		p.recall(l)
		if err := p.readLine(l, section); err != nil {
			p.miss(l, err)
		}
		p.mind(l)
		if bare && !strings.HasPrefix(p.as[l.number], "gauge ") {
			section, bare = "", false
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
			p.clusters = true
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
	s.section = section
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

var ukTerms = regexp.MustCompile(`(?i)\b(?:UK|British) (?:crochet )?terms\b|^Terms: UK\b`)

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
