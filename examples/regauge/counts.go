package main

import (
	"errors"
	"fmt"
	"strings"

	"example.com/panelmath/examples/internal/document"
	"example.com/panelmath/gauge"
	"example.com/panelmath/gauge/offgauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/notation"
	"example.com/panelmath/internal/text"
)

// others are more numbers of the pattern: those of an edging, a pocket, a
// collar. With a rule each new number obeys it. Without one, numbers that are
// all odd or all even in the pattern stay alike; whether odd or even, whichever
// comes nearer.
type others struct {
	text    string
	counted gauge.Counted
	numbers []int
	rule    *gauge.Rule
}

// parseOthers reads `98 (106) sts, multiple of 4 + 2`, `98, 30 sts` and
// `91 rows`.
func parseOthers(s string) (o others, err error) {
	if len(s) > text.Limit {
		return o, errors.New("text too long; at most 10000 characters")
	}
	o.text = strings.TrimSpace(s)
	list := o.text
	for _, word := range []struct {
		name    string
		counted gauge.Counted
	}{{"st", gauge.Stitches}, {"sts", gauge.Stitches}, {"stitch", gauge.Stitches}, {"stitches", gauge.Stitches}, {"row", gauge.Rows}, {"rows", gauge.Rows}} {
		before, after, ok := strings.Cut(o.text, " "+word.name)
		if !ok || after != "" && !strings.HasPrefix(after, ",") {
			continue
		}
		list, o.counted = before, word.counted
		if rule := strings.TrimSpace(strings.TrimPrefix(after, ",")); rule != "" {
			r, err := gauge.ParseRule(rule)
			if err != nil {
				return o, err
			}
			o.rule = &r
		}
	}
	if o.counted == 0 {
		return o, errors.New(`want numbers and what they count: "98 (106) sts", "91 rows"`)
	}
	if !strings.ContainsAny(list, "([") {
		// Numbers of several places, and not of several sizes.
		words := strings.FieldsFunc(list, func(r rune) bool { return r == ',' || r == ' ' })
		if len(words) == 0 {
			return o, errors.New("want a number before what it counts")
		}
		list = words[0]
		if len(words) > 1 {
			list += " (" + strings.Join(words[1:], ", ") + ")"
		}
	}
	if o.numbers, err = notation.ReadNumbers(list, 0); err != nil || o.rule == nil {
		return o, err
	}
	for _, n := range o.numbers {
		if !o.rule.Legal(n) {
			return o, fmt.Errorf("%d is not %s; want the rule that the pattern's numbers obey", n, aRule(*o.rule))
		}
	}
	return o, nil
}

// aRule names a rule after "is": "a multiple of 3 + 1", "odd".
func aRule(r gauge.Rule) string {
	s := gauge.Rule{Multiple: r.Multiple, Plus: r.Plus}.String()
	if strings.HasPrefix(s, "multiple") {
		return "a " + s
	}
	return s
}

// at returns the new numbers.
func (o others) at(pattern, mine gauge.Gauge) ([]gauge.Count, error) {
	c := offgauge.Change{Pattern: pattern.Stitches, Mine: mine.Stitches}
	if o.counted == gauge.Rows {
		c = offgauge.Change{Pattern: pattern.Rows, Mine: mine.Rows}
	}
	var counts []gauge.Count
	var err error
	switch {
	case o.rule != nil:
		counts, err = c.Counts(o.numbers, *o.rule)
	case o.alike():
		counts, err = c.Alike(o.numbers, 2)
	default:
		counts, err = c.Counts(o.numbers, gauge.Rule{})
	}
	for i := range counts {
		counts[i].Counted = o.counted
	}
	return counts, err
}

// alike reports whether there are several numbers, all odd or all even.
func (o others) alike() bool {
	for _, n := range o.numbers {
		if n%2 != o.numbers[0]%2 {
			return false
		}
	}
	return len(o.numbers) > 1
}

// otherNumbers tells the new numbers, each with the choice that there was.
func (a reply) otherNumbers() []document.Block {
	var items []string
	for i, o := range a.others {
		is, counted := grade.Text(a.counts[i], func(c gauge.Count) string { return fmt.Sprint(c.Value) }), o.counted.String()
		if is == "1" {
			counted = map[gauge.Counted]string{gauge.Stitches: "stitch", gauge.Rows: "row"}[o.counted]
		}
		items = append(items, fmt.Sprintf("%s: now %s %s%s.", o.text, is, counted, o.rest(a.counts[i])))
		for _, c := range a.counts[i] {
			items = append(items, title(c.ExplainIn(a.pattern.Units))+".")
		}
	}
	return []document.Block{document.List{Items: items}}
}

// rest says what the new numbers have in common, where the pattern's do.
func (o others) rest(counts []gauge.Count) string {
	switch {
	case o.rule != nil || !o.alike():
		return ""
	case counts[0].Value%2 == 0:
		return ", all even, since the pattern's are alike as well"
	}
	return ", all odd, since the pattern's are alike as well"
}
