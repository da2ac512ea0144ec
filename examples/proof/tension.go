package main

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
)

var (
	isGauge      = regexp.MustCompile(`(?i)\b(?:gauge|tension)\b`)
	bareGauge    = regexp.MustCompile(`^(?i:gauge|tension):?$`)
	isWorked     = regexp.MustCompile(`(?i)on the hook|before wash|before block|unwashed|unblocked|as worked`)
	gaugePlain   = regexp.MustCompile(`^[^\s–-]+ (?:sts?|stitch(?:es)?|rows?)\b`)
	gaugeOther   = regexp.MustCompile(`[(\[](?:about )?([^()\[\]]*=[^()\[\]]*)[)\]]`)
	gaugeSpan    = regexp.MustCompile(numberForm + `\s*` + unitForm + `\.?`)
	gaugeTurned  = regexp.MustCompile(`^(?i:about |approx\.? |an? )*(` + numberForm + `\s*(?:` + unitForm + `)?(?:\s*(?:x|×|by)\s*` + numberForm + `\s*` + unitForm + `)?(?: square\b)?(?:\s*[(\[][^()\[\]=]{1,30}[)\]]|\s*/\s*` + numberForm + `\s*` + unitForm + `)?)(?: square\b)?\s*(?:=|:|is|measures|equals)\s*(` + numberForm + `\s*` + gaugeNoun + `)(?:(?:\s*(?:x|×|by|and|&|\+|/)|,)\s*(` + numberForm + ` (?:rows?|rnds?|rounds?)\b))?([^=]*)$`)
	gaugeSpanned = regexp.MustCompile(`^(?i:about |approx\.? |an? )*` + numberForm + `\s*` + unitForm + `[^.;]*\d (?:sts?|stitch(?:es)?|rows?)\b`)
	gaugeRows    = regexp.MustCompile(`(` + numberForm + ` rows? (?:=|over|to|per) ` + numberForm + `\s*` + unitForm + `)`)
	gaugeSts     = regexp.MustCompile(`(` + numberForm + ` sts? (?:=|over|to|per) ` + numberForm + `\s*` + unitForm + `)`)
	gaugeAlso    = regexp.MustCompile(`^(?:\s*(?:x|×|by)\s*` + numberForm + `\s*` + unitForm + `)?(?: square)?\s*(?:[(\[/]|or )\s*(?:` + numberForm + `\s*(?:` + unitForm + `)?\s*(?:x|×|by)\s*)?(` + numberForm + `\s*` + unitForm + `)`)
	gaugeRaw     = regexp.MustCompile(`^([^;]*\b(?:unblocked|unwashed|before (?:blocking|washing))\b[^;]*); *(\d.*)$`)
	gaugeCross   = regexp.MustCompile(`^\s*(?:x|×|by)\s*(` + numberForm + `\s*` + unitForm + `)`) // of `4 in x 3 in`
)

// gaugeNoun is what a gauge counts.
const gaugeNoun = `(?:sts?|stitch(?:es)?|sc|hdc|dc|tr|htr|dtr|rows?|rnds?|rounds?)\b`

// gaugeWays are ways to write a gauge that package gauge does not read, and the
// same as it does.
var gaugeWays = [...]struct {
	form *regexp.Regexp
	as   string
}{
	{regexp.MustCompile(`^(?i:about|approx\.?|approximately|in [^,]*,) `), ""},
	{regexp.MustCompile(`(sts?|stitches)(?: ?[/(]| [&+]) ?(\d\S* (?:rows?|rnds?|rounds?))\)?`), "$1 and $2"},
	{regexp.MustCompile(`(?:/| per )(?:inch|in)\b`), " = 1 in"},
	{regexp.MustCompile(`(sts?|stitches|rows?)/(\d)`), "$1 = $2"},
	{regexp.MustCompile(` (?:measures?|equals?|makes?) `), " = "},
	{regexp.MustCompile(`(=|over|to|per) an? (\d)`), "$1 $2"},
	{regexp.MustCompile(`^(\S+) f?(?:sc|hdc|dc|tr|htr|dtr)(?:-[a-z]+)?\b`), "$1 sts"}, // what the stitches are
	{regexp.MustCompile(`(\d) (?:rnds|rounds)\b`), "$1 rows"},
	{regexp.MustCompile(`(sts?|stitches|rows?) (?:wide|across|tall|high|long|deep)\b`), "$1"},
	{regexp.MustCompile(`(=|over|to|per) (` + numberForm + `)\s*(?:x|×|by)\s*(` + numberForm + `)\s*(` + unitForm + `)`), "$1 $2 $4 x $3 $4"},
}

// readGauge reads a line with a gauge, or with two of which the first is the
// worked one: `18 sts = 4 in unblocked; 16 sts = 4 in blocked`.
func (p *pattern) readGauge(l line) error {
	if m := gaugeRaw.FindStringSubmatch(l.body); m != nil {
		raw := l
		raw.body = m[1]
		if p.readOne(raw, true) == nil {
			l.body = m[2]
		}
	}
	return p.readOne(l, isWorked.MatchString(l.name))
}

// mostSpans is how many lengths of a line are tried as the end of its gauge.
const mostSpans = 4

// readOne reads `12 sts and 10 rows = 4 in`, or one direction alone. What follows
// the gauge is prose. A gauge of clusters, `5 shells and 8 rows = 4 in`, tells the
// rows at most.
func (p *pattern) readOne(l line, worked bool) error {
	if isGauge.MatchString(l.name) || l.name == "" {
		l.body = aroundSpan(l.body)
	}
	for _, w := range gaugeWays {
		l.body = w.form.ReplaceAllString(l.body, w.as)
	}
	if isGauge.MatchString(l.name) && gaugeSpanned.MatchString(l.body) {
		return fmt.Errorf("%s: can't read %s; want stitches and rows before the length: 14 sts and 11 rows = 4 in", l.name, text.Quote(l.body))
	}
	if l.body == "" || l.body[0] < '0' || l.body[0] > '9' {
		return errProse
	}
	t := tension{line: l, worked: worked, parts: partWords(l.name)}
	if m := gaugeOther.FindStringSubmatch(l.body); m != nil {
		if g, err := gauge.ParseGauge(m[1]); err == nil {
			t.other = g
		}
	}
	ends := gaugeSpan.FindAllStringIndex(l.body, mostSpans)
	for i := len(ends) - 1; i >= 0 && !t.given(); i-- {
		t.read(l.body[:ends[i][1]])
		if m := gaugeCross.FindStringSubmatch(l.body[ends[i][1]:]); m != nil && t.given() {
			if high, err := gauge.ParseLength(m[1]); err == nil && t.gauge.Rows.Validate() == nil {
				t.gauge.Rows.Span = high
			}
		}
		if m := gaugeAlso.FindStringSubmatch(l.body[ends[i][1]:]); m != nil && t.given() {
			t.alsoOver(m[1])
		}
	}
	if m := gaugeRows.FindStringSubmatch(l.body); m != nil && !t.given() && !gaugePlain.MatchString(l.body) {
		t.read(m[1])
		p.clusters = true
	}
	switch {
	case t.given():
		t.second(l.body)
		p.gauges = append(p.gauges, t)
		p.as[l.number] = "gauge " + t.String()
		return nil
	case !isGauge.MatchString(l.name) || !gaugePlain.MatchString(l.body):
		return errProse
	}
	_, err := gauge.ParseOver(l.body)
	return fmt.Errorf("%s: %w", l.name, err)
}

// aroundSpan writes a gauge that begins with its span, `4 in square = 14 sts x 11
// rows`, as one that begins with its stitches.
func aroundSpan(s string) string {
	m := gaugeTurned.FindStringSubmatch(s)
	if m == nil || !gaugeSpan.MatchString(m[1]) {
		return s
	}
	counts := m[2]
	if m[3] != "" {
		counts += " and " + m[3]
	}
	return counts + " = " + m[1] + m[4]
}

// second reads the other direction where a gauge has a length of its own for each:
// `12 sts = 4 in (10 cm); 8 rows = 4 in (10 cm)`.
func (t *tension) second(s string) {
	if trimIn.MatchString(s) {
		return // that of the ribbing is none of the whole
	}
	form, one := gaugeRows, &t.gauge.Rows
	if one.Validate() == nil {
		form, one = gaugeSts, &t.gauge.Stitches
	}
	if m := form.FindStringSubmatch(s); m != nil && one.Validate() != nil {
		if over, err := gauge.ParseOver(m[1]); err == nil {
			*one = over
		}
	}
}

// alsoOver takes down the same span in the other unit, as it is printed behind the
// first: 4 in (10 cm).
func (t *tension) alsoOver(span string) {
	l, err := gauge.ParseLength(span)
	if err != nil {
		return
	}
	own := t.over(stitches).Span
	if t.over(stitches).Validate() != nil {
		own = t.over(rows).Span
	}
	if l.Unit != own.Unit && sameSpan(l, own) {
		t.also = l
	}
}

// spans returns one direction of the gauge over each span that may serve a length:
// the one in its unit, where the gauge is printed with it, and the first.
func (t tension) spans(k kind, unit gauge.Unit) []gauge.Over {
	own := t.over(k)
	if t.also.Validate() != nil || unit != t.also.Unit || own.Span.Unit == unit || !sameSpan(t.also, own.Span) {
		return []gauge.Over{own}
	}
	other := own
	other.Span = t.also
	return []gauge.Over{other, own}
}

// sameSpan reports whether two spans are one as gauges have it: 4 in and 10 cm.
func sameSpan(a, b gauge.Length) bool {
	ratio, err := a.Measurement().Per(b.Measurement())
	return err == nil && ratio.Cmp(share(98, 100)) >= 0 && ratio.Cmp(share(102, 100)) <= 0
}

// read reads a gauge or one direction of it.
func (t *tension) read(s string) {
	if g, err := gauge.ParseGauge(s); err == nil {
		t.gauge = g
	} else if over, err := gauge.ParseOver(s); err == nil && strings.Contains(s, "row") {
		t.gauge.Rows = over
	} else if err == nil {
		t.gauge.Stitches = over
	}
}

func (t tension) given() bool {
	return t.over(stitches).Validate() == nil || t.over(rows).Validate() == nil
}

// over returns one direction of the gauge.
func (t tension) over(k kind) gauge.Over {
	if k == rows {
		return t.gauge.Rows
	}
	return t.gauge.Stitches
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
		if t.worked == worked && t.over(k).Validate() == nil {
			return t.over(k), t.line, true
		}
	}
	return gauge.Over{}, line{}, false
}

var (
	word = regexp.MustCompile(`[a-z]+`)
	// Words in the name of a gauge that name no part of a garment.
	noPart  = regexp.MustCompile(`^(?:.|gauge|tension|finished|final|main|fabric|blocked|blocking|unblocked|washed|washing|unwashed|after|before|in|on|the|of|for|over|with|and|at|per|to|your|all|both|rows?|st|sts|stitch|stitches|pattern|swatch|hook|needle|as|worked|measured|mm|cm|inch|inches|width|length|height|size|note|important|check|approx|approximate)$`)
	partEnd = regexp.MustCompile(`(?:ing|ed|es|s|e)$`)
)

// partWords returns the words of a name that may name a part, each cut to what
// ribbing, ribbed and rib have in common.
func partWords(name string) []string {
	var out []string
	for _, w := range word.FindAllString(strings.ToLower(name), -1) {
		if noPart.MatchString(w) {
			continue
		}
		if cut := partEnd.ReplaceAllString(w, ""); len(cut) > 2 {
			if n := len(cut); cut[n-1] == cut[n-2] {
				cut = cut[:n-1]
			}
			w = cut
		}
		out = append(out, w)
	}
	return out
}

var trimWord = regexp.MustCompile(`^(?:rib|edg|border|bord|band|cuff|collar|hem|trim)$`)

var trimIn = regexp.MustCompile(`(?i)\b(?:rib|edging|border|band|cuff|collar|hem|trim)`)

// trims reports whether a gauge is that of a trim: of ribbing, of a border.
func (t tension) trims() bool { return slices.ContainsFunc(t.parts, trimWord.MatchString) }

// mostGauges is how many gauges are tried for one line.
const mostGauges = 4

// choice holds the gauges of one direction by what they name. A line is served by
// those of its part, else by those of no part, or by the only one that is not for
// a trim.
type choice struct {
	part  map[string][]tension // by word
	named map[string]bool      // words that gauges name, in this direction or the other
	rest  []tension            // those that name no part
	all   []tension            // the different ones
}

func (p *pattern) choice(k kind, worked bool) choice {
	g := choice{part: map[string][]tension{}, named: map[string]bool{}}
	add := func(list []tension, t tension) []tension {
		if len(list) == mostGauges || slices.ContainsFunc(list, func(o tension) bool { return o.over(k).String() == t.over(k).String() }) {
			return list
		}
		return append(list, t)
	}
	for _, t := range p.gauges {
		if t.worked != worked {
			continue
		}
		for _, w := range t.parts {
			g.named[w] = true
		}
		if t.over(k).Validate() != nil {
			continue
		}
		g.all = add(g.all, t)
		for _, w := range t.parts {
			g.part[w] = add(g.part[w], t)
		}
		if len(t.parts) == 0 {
			g.rest = add(g.rest, t)
		}
	}
	main := slices.DeleteFunc(slices.Clone(g.all), tension.trims)
	if len(g.rest) == 0 && len(main) == 1 && len(g.all) < mostGauges {
		g.rest = main // beside a gauge for ribbing that of the body serves all the rest
	}
	return g
}

// serving returns the gauges that may serve a line of that name in that section.
func (g choice) serving(name, section string) []tension {
	for _, s := range []string{name, section} {
		var out []tension
		known := false
		for _, w := range partWords(s[:min(len(s), maxName)]) {
			known = known || g.named[w]
			out = append(out, g.part[w]...)
		}
		if known {
			return out
		}
	}
	if len(g.all) == 1 {
		return g.all
	}
	return g.rest
}
