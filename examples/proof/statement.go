package main

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade/notation"
	"example.com/panelmath/internal/text"
)

// kind is what a number counts or measures.
type kind uint8

const (
	plain kind = iota // a number of times, of repeats, of groups
	stitches
	rows
	length
)

// statement is a line like `Back width: 17 (18, 19) in = 78 (82, 87) sts, odd`:
// sides that must be equal, and what must hold for each of them.
type statement struct {
	line    line
	section string // the heading it stands under
	sides   []side
	rules   []gauge.Rule
	edge    int  // stitches that it says are among the count, at the edges
	centred bool // the terms of a side read the same from either end
}

// side is a sum.
type side struct {
	text  string
	kind  kind
	unit  gauge.Unit // of a length
	terms []term
	total []gauge.Ratio // the sum in every size
}

// sum makes a side of terms.
func sum(terms ...term) side {
	s := side{terms: terms, kind: terms[0].kind, unit: terms[0].unit}
	s.total = slices.Clone(terms[0].values)
	for _, t := range terms[1:] {
		for i, v := range t.values {
			s.total[i] = s.total[i].Add(v)
		}
	}
	return s
}

// term is a product with its sign.
type term struct {
	text   string
	kind   kind
	unit   gauge.Unit
	values []gauge.Ratio // one for each size, sign and all; of a length in unit
	ends   bool          // "at each end": counted twice
	list   bool          // one list as it is printed
	many   int           // how many of that list it is
}

var (
	termLength = regexp.MustCompile(`^(` + listForm + `)\s*(` + unitForm + `)(?:\s*[\[(/]\s*` + listForm + `\s*` + unitForm + `\s*[\])]?)?`)
	termCount  = regexp.MustCompile(`^(` + listForm + `)`)
	termNoun   = regexp.MustCompile(`^\s*(?i:((?:[a-z]{2,3} )?groups?\b|times\b|repeats?\b|reps?\b|clusters?\b|shells?\b|ch-\d+ sps?\b)|(sts?\b|stitch(?:es)?\b|chs?\b|chains?\b|pairs?(?: of sts)?\b|sc\b|hdc\b|dc\b|tr\b|htr\b|dtr\b)|(rows?\b|rnds?\b|rounds?\b))`)
	termEnds   = regexp.MustCompile(`^\s*(?i:(?:at|on|from) (?:each|both) (?:ends?|sides?|edges?)\b)`)
	operator   = regexp.MustCompile(`^\s*(=|\+|plus\b|-|−|–|minus\b|less\b|x\b|×)\s*`)
	ending     = regexp.MustCompile(`^\s*(?:,\s*(.*?))?\.?\s*$`)
	looksEqual = regexp.MustCompile(`^[\d½¼¾⅛⅜⅝⅞][^=]*=[^=]*`)
)

// errProse says that a line is prose and no statement.
var errProse = errors.New("no statement")

// statement reads the body of a named line. It returns errProse where the line
// is not one, and another error where it must be and can't be read.
func (p *pattern) statement(l line) (statement, error) {
	s := statement{line: l}
	rest, err := p.sides(&s, l.body)
	if err != nil {
		if looksEqual.MatchString(l.body) && !strings.HasSuffix(l.body, ".") || errors.Is(err, errKinds) && strings.Contains(l.body, "=") {
			return s, fmt.Errorf("%s: %w", l.name, err)
		}
		return s, errProse
	}
	m := ending.FindStringSubmatch(rest)
	if m == nil || m[1] == "" {
		if m == nil {
			return s, p.stray(l, s, rest)
		}
		return s, nil
	}
	for _, clause := range strings.Split(m[1], ",") {
		clause = strings.TrimSpace(clause)
		if clause == "centred" || clause == "centered" {
			s.centred = true
			continue
		}
		r, err := gauge.ParseRule(clause)
		if err != nil {
			return s, p.stray(l, s, clause)
		}
		s.rules = append(s.rules, r)
	}
	return s, nil
}

// stray is the error for what follows a statement: an equation must be
// understood to its end, a list may be followed by prose.
func (p *pattern) stray(l line, s statement, rest string) error {
	if looksEqual.MatchString(l.body) && !strings.HasSuffix(l.body, ".") {
		return fmt.Errorf("%s: can't read %s; want a list of sizes with sts, rows, in or cm, the name of a line before it, +, -, x or =, and after a comma a rule (multiple of 6 + 1, odd, even) or centred", l.name, text.Quote(rest))
	}
	return errProse
}

// errKinds says that unlike things are added.
var errKinds = errors.New("adds or multiplies unlike things")

// sides reads sums with = between them, and returns what follows.
func (p *pattern) sides(s *statement, rest string) (string, error) {
	from := rest
	current := side{}
	sign := gauge.Int(1)
	for {
		t, noted, err := p.product(rest)
		if err != nil {
			return rest, err
		}
		after := s.note(noted)
		for i := range t.values {
			t.values[i] = t.values[i].Mul(sign)
		}
		if err := current.add(t); err != nil {
			return rest, err
		}
		op := operator.FindStringSubmatch(after)
		rest = after
		if op == nil || op[1] == "=" {
			current.text = strings.TrimSpace(from[:len(from)-len(noted)])
			s.sides = append(s.sides, current)
		}
		if op == nil {
			return rest, nil
		}
		rest = after[len(op[0]):]
		sign = gauge.Int(1)
		switch op[1] {
		case "=":
			from, current = rest, side{}
		case "-", "−", "–", "minus", "less":
			sign = gauge.Int(-1)
		}
	}
}

// noteForm finds what is said of a sum behind it: `(all sizes)`, `(incl. 2 edge sts)`,
// `including 1 selvedge st each side`.
var (
	noteForm  = regexp.MustCompile(`^\s*(?i:[(\[](?:(?:in|for) )?all sizes[)\]]|,?\s*(?:in|for) all sizes\b|[(\[](?:incl\.?|including|includes|excl\.?|excluding|not counting|not including|without|with|plus) [^()\[\]=]*[)\]]|,?\s*(?:incl\.?|including|includes) [^=,]*)`)
	edgeIn    = regexp.MustCompile(`(?i)(?:incl\.?|including|includes) (?:an? |the )?(\d{0,2}) ?[a-z -]*\b(?:edge|selvedge|selvage|seam)\b`)
	edgeTwice = regexp.MustCompile(`(?i)\b(?:each|either|both) (?:sides?|ends?|edges?)\b`)
)

// note passes over such a note, and takes down the stitches of the edges.
func (s *statement) note(rest string) string {
	note := noteForm.FindString(rest)
	if m := edgeIn.FindStringSubmatch(note); m != nil && !strings.Contains(note, "not ") {
		s.edge = 1
		if n, err := strconv.Atoi(m[1]); err == nil {
			s.edge = n
		}
		if edgeTwice.MatchString(note) {
			s.edge *= 2
		}
	}
	return rest[len(note):]
}

func (s *side) add(t term) error {
	switch {
	case t.kind == plain:
	case s.kind == plain:
		s.kind, s.unit = t.kind, t.unit
	case s.kind != t.kind:
		return fmt.Errorf("%w: %s beside %s", errKinds, text.Quote(t.text), text.Quote(s.terms[0].text))
	case s.unit != t.unit: // the second unit is turned into the first
		for i, v := range t.values {
			t.values[i] = gauge.MeasurementOf(v, t.unit).In(s.unit)
		}
	}
	s.terms = append(s.terms, t)
	if len(s.total) == 0 {
		s.total = slices.Clone(t.values)
		return nil
	}
	for i, v := range t.values {
		s.total[i] = s.total[i].Add(v)
		if err := bounded(s.total[i]); err != nil {
			return err
		}
	}
	return nil
}

// bounded refuses what no pattern has, so that lines that refer to one another
// can't grow without end.
func bounded(v gauge.Ratio) error {
	most := gauge.Int(1_000_000_000)
	if _, ok := v.ExactDecimal(); !ok || v.Cmp(most) > 0 || v.Cmp(most.Mul(gauge.Int(-1))) < 0 {
		return errors.New("a number out of bounds")
	}
	return nil
}

// product reads `6 x 25 rows`, `9 sts at each end`.
func (p *pattern) product(s string) (term, string, error) {
	t, rest, err := p.item(s)
	for err == nil {
		op := operator.FindStringSubmatch(rest)
		if op == nil || op[1] != "x" && op[1] != "×" {
			break
		}
		var next term
		if next, rest, err = p.item(rest[len(op[0]):]); err != nil {
			break
		}
		if t.kind != plain && next.kind != plain {
			return t, rest, fmt.Errorf("%w: %s times %s", errKinds, text.Quote(t.text), text.Quote(next.text))
		}
		factor := t
		if t.kind == plain {
			t.kind, t.unit = next.kind, next.unit
		} else {
			factor = next
		}
		if n, err := factor.values[0].Ceil(); err == nil {
			t.many = min(max(t.many*n, 1), gauge.MaxCount)
		}
		t.list = false
		for i := range t.values {
			t.values[i] = t.values[i].Mul(next.values[i])
		}
	}
	for _, v := range t.values {
		if err == nil {
			err = bounded(v)
		}
	}
	if err != nil {
		return t, s, err
	}
	if m := termEnds.FindString(rest); m != "" {
		rest, t.ends, t.list, t.many = rest[len(m):], true, false, 2*t.many
		for i := range t.values {
			t.values[i] = t.values[i].Mul(gauge.Int(2))
		}
	}
	t.text = strings.TrimSpace(s[:len(s)-len(rest)])
	return t, rest, nil
}

// item reads a list of lengths or of counts, or the name of a line before.
func (p *pattern) item(s string) (term, string, error) {
	if m := termLength.FindStringSubmatch(s); m != nil {
		if u, err := gauge.ParseUnit(strings.TrimSuffix(m[2], ".")); err == nil {
			list := marks.Replace(m[1])
			return p.fill(term{text: m[0], kind: length, unit: u, list: true}, list, s[len(m[0]):])
		}
	}
	list := otherList.FindString(s)
	if list == "" {
		list = termCount.FindString(s)
	}
	if list == "" {
		return p.named(s)
	}
	t := term{text: list, list: true}
	rest := s[len(list):]
	if m := termNoun.FindStringSubmatch(rest); m != nil {
		switch {
		case m[2] != "":
			t.kind = stitches
		case m[3] != "":
			t.kind = rows
		}
		rest = rest[len(m[0]):]
	}
	return p.fill(t, list, rest)
}

// fill gives a term its values, one for each size.
func (p *pattern) fill(t term, list, rest string) (term, string, error) {
	t.many = 1
	got, err := notation.Read(list, 0, number)
	if err != nil {
		return t, rest, err
	}
	all, err := got.For(p.n)
	if err != nil {
		return t, rest, errProse // a list of another length is a finding of its own
	}
	for _, v := range all {
		r, err := gauge.FromDecimal(v)
		if err != nil {
			return t, rest, err
		}
		t.values = append(t.values, r)
	}
	return t, rest, nil
}

// named reads the name of a line before this one; the longest that fits.
func (p *pattern) named(s string) (term, string, error) {
	low := strings.ToLower(s[:min(len(s), maxName)])
	for n := len(low); n > 0; n-- {
		q, ok := p.names[low[:n]]
		if !ok {
			continue
		}
		of := q.sides[0]
		return term{text: q.line.name, kind: of.kind, unit: of.unit, values: slices.Clone(of.total), many: 1}, s[n:], nil
	}
	return term{}, s, errors.New("can't read " + text.Quote(s))
}
