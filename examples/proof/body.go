package main

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/gauge/hook"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/notation"
)

var (
	ofChart     = regexp.MustCompile(`Body measures that each size is made for \((\w+)\)`)
	chestRow    = regexp.MustCompile(`^\|\s*([^|]*?)\s*\|\s*([^|]*?)\s*\|\s*([^|]*?)\s*\|$`)
	hookLabel   = regexp.MustCompile(`([\d.]+ ?mm)(?: \((?:US )?| ?/ ?(?:US )?)(` + labelForm + `)(?:[,)]|\s|$)`)
	labelHook   = regexp.MustCompile(`\b(` + labelForm + `|\d+(?:\.\d+)?/[A-Z]) ?(?:[(\[]|/ ?)([\d.]+ ?mm)\b`)
	turnedLabel = regexp.MustCompile(`^(\d[\d.]*)/([A-Z])$`) // 8/H
)

// table returns the rows of the table of body measures: size and two columns, the
// first of them the header.
func (p *pattern) table() (rows [][]string, lines []line) {
	for _, l := range p.lines {
		m := chestRow.FindStringSubmatch(l.text)
		if m == nil || strings.HasPrefix(m[1], "---") || rows == nil && !strings.EqualFold(m[1], "size") {
			continue
		}
		rows, lines = append(rows, m[1:]), append(lines, l)
	}
	return rows, lines
}

// chests returns the high end of the chest of every size in the table, in unit u.
func (p *pattern) chests(u gauge.Unit) []gauge.Length {
	rows, _ := p.table()
	var out []gauge.Length
	for i := 1; i < len(rows); i++ {
		for c := 1; c < len(rows[i]); c++ {
			if !strings.HasSuffix(rows[0][c], ", "+u.String()) {
				continue
			}
			high, err := rangeOf(rows[i][c], u)
			if err != nil {
				return nil
			}
			out = append(out, high[len(high)-1])
		}
	}
	return out
}

// rangeOf reads a range of a table: "28–34", or one number.
func rangeOf(cell string, u gauge.Unit) (grade.Run[gauge.Length], error) {
	return notation.Read(cell, 0, func(s string) (gauge.Length, error) { return gauge.ParseLength(s + " " + u.String()) })
}

// body holds the table of body measures against the standard's chart, where the
// text says that the figures are from there, and the names of its sizes against
// those in the order of the lists.
func (p *pattern) body() []Finding {
	var out []Finding
	rows, lines := p.table()
	var chart grade.Chart
	known := false
	for _, l := range p.lines {
		if m := ofChart.FindStringSubmatch(l.text); m != nil {
			c, err := grade.Standard(m[1])
			if err == nil && slices.ContainsFunc(p.lines, func(l line) bool { return strings.Contains(l.text, "Craft Yarn Council") }) {
				chart, known = c, true
			}
		}
	}
	for i := 1; i < len(rows); i++ {
		size := rows[i][0]
		if i <= len(p.sizes) && p.sizes[i-1] != size {
			out = append(out, Finding{Line: lines[i].number, Name: "sizes", Got: size, Want: p.sizes[i-1], Why: "so the sizes are called in " + p.ordered()})
			continue
		}
		if !known {
			continue
		}
		group, ok := groupOf(chart, size)
		if !ok {
			out = append(out, Finding{Line: lines[i].number, Name: "sizes", Got: size, Want: "sizes of the chart: " + strings.Join(chart.Sizes, ", "), Why: "the table says that it is the standard's chart " + chart.Name})
			continue
		}
		for c := 1; c < len(rows[i]); c++ {
			u, _ := gauge.ParseUnit(rows[0][c][strings.LastIndexByte(rows[0][c], ' ')+1:])
			body, err := group.Body(grade.Chest, u)
			if err != nil {
				continue
			}
			want := body.Low.Value.String()
			if !body.Low.Value.Equal(body.High.Value) {
				want += "–" + body.High.Value.String()
			}
			if got := rows[i][c]; got != want {
				out = append(out, Finding{Line: lines[i].number, Name: rows[0][c], Size: size, Got: got, Want: want, Why: "so the standard's chart " + chart.Name + " has it"})
			}
		}
	}
	return out
}

// ordered says where the text tells the order of its sizes.
func (p *pattern) ordered() string {
	for _, l := range p.lines {
		if strings.HasPrefix(p.as[l.number], "sizes: ") {
			return "line " + strconv.Itoa(l.number)
		}
	}
	return "another line"
}

// groupOf returns the sizes from XS to S of "XS–S".
func groupOf(c grade.Chart, label string) (grade.Group, bool) {
	first, last, two := strings.Cut(label, "–")
	if !two {
		last = first
	}
	from, to := slices.Index(c.Sizes, first), slices.Index(c.Sizes, last)
	if from < 0 || to < from {
		return grade.Group{}, false
	}
	groups, err := c.Groups([][]string{c.Sizes[from : to+1]})
	if err != nil {
		return grade.Group{}, false
	}
	return groups[0], true
}

// labelForm is a label of a hook: H-8, M/N-13, K 10.5.
const labelForm = `[A-Z](?:/[A-Z])?[-/ ]\d+(?:\.\d+)?`

// mostHooks is how many hooks of a line are read.
const mostHooks = 16

// printedHook is a hook as a line prints it: its diameter and a label.
type printedHook struct {
	line  line
	hook  hook.Hook
	label string
}

func (p *pattern) readHooks() {
	for _, l := range p.lines {
		if !strings.Contains(l.text, "mm") {
			continue
		}
		var read []string
		add := func(size, label string) {
			if h, err := hook.Parse(size); err == nil {
				p.printedHooks = append(p.printedHooks, printedHook{l, h, turnedLabel.ReplaceAllString(label, "$2/$1")})
				read = append(read, h.String()+", "+label)
			}
		}
		for _, m := range hookLabel.FindAllStringSubmatch(l.text, mostHooks) {
			add(m[1], m[2])
		}
		if read == nil {
			for _, m := range labelHook.FindAllStringSubmatch(l.text, mostHooks) {
				add(m[2], m[1])
			}
		}
		if read != nil {
			p.as[l.number] = "hook: " + strings.Join(read, "; ")
		}
	}
}

// hooks holds the label of a hook against its diameter.
func (p *pattern) hooks() []Finding {
	var out []Finding
	for _, x := range p.printedHooks {
		l, h := x.line, x.hook
		of := hook.Labelled(x.label)
		if len(of) == 0 || slices.ContainsFunc(of, func(o hook.Hook) bool { return o.Diameter.Equal(h.Diameter) }) {
			continue // a maker's own label is none of ours
		}
		var want []string
		for _, o := range of {
			want = append(want, o.String())
		}
		out = append(out, Finding{Line: l.number, Name: name(l, "hook"), Got: h.String(), Want: strings.Join(want, " or "), Why: x.label + " is the label of " + strings.Join(want, " or ") + "; the labels of " + h.Explain()})
	}
	return out
}
