package main

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// missed is a line that looks like one to check and can't be read, and why. The
// rest of the text is checked without it.
type missed struct {
	line  line
	cause error
}

// String returns `line 12: not checked: column 20: read "stt", want ...`.
func (m missed) String() string {
	return fmt.Sprintf("line %d: not checked: %v", m.line.number, m.cause)
}

// miss takes down that a line is not checked.
func (p *pattern) miss(l line, cause error) {
	p.missed = append(p.missed, missed{l, cause})
	p.as[l.number] = "NOT CHECKED: " + short(cause.Error())
}

// unchecked returns the missed lines in the order of the text, one a line.
func (p *pattern) unchecked() string {
	all := slices.Clone(p.missed)
	slices.SortStableFunc(all, func(a, b missed) int { return cmp.Compare(a.line.number, b.line.number) })
	var b strings.Builder
	last := ""
	for _, m := range all {
		if s := m.String() + "\n"; s != last { // a line may stand for several rows
			b.WriteString(s)
			last = s
		}
	}
	return b.String()
}
