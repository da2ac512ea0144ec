package main

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// Finding is one printed number, or list, that does not agree with the rest of
// the text. Which of two numbers is the wrong one only the designer knows, so
// Want may be empty.
type Finding struct {
	Line   int    `json:"line"`           // from 1
	Name   string `json:"name"`           // what the line is about: "Row 2", "Back width"
	Size   string `json:"size,omitempty"` // its label; empty where it is about all sizes
	Got    string `json:"got"`
	Want   string `json:"want,omitempty"`
	Why    string `json:"why"`
	Remark bool   `json:"remark,omitempty"` // no fault, only worth a look
}

// String returns `line 12, Back width, size M: got 17 in, want 15½ in: ...`.
func (f Finding) String() string {
	s := fmt.Sprintf("line %d", f.Line)
	if f.Name != "" {
		s += ", " + f.Name
	}
	if f.Size != "" {
		s += ", size " + f.Size
	}
	if f.Remark {
		s += " (remark)"
	}
	s += ": got " + f.Got
	if f.Want != "" {
		s += ", want " + f.Want
	}
	return s + ": " + f.Why
}

// sorted returns the findings in the order of the lines, each once. Where a
// number has more than one finding against it, they stand in the order in which
// they were made.
func sorted(all []Finding) []Finding {
	var out []Finding
	for _, f := range all {
		f.Got, f.Want, f.Why = short(f.Got), short(f.Want), short(strings.TrimSuffix(f.Why, "."))
		if !slices.Contains(out[max(0, len(out)-64):], f) {
			out = append(out, f)
		}
	}
	slices.SortStableFunc(out, func(a, b Finding) int { return cmp.Compare(a.Line, b.Line) })
	return out
}

// short cuts what is too long to be read.
func short(s string) string {
	const most = 400
	if r := []rune(s); len(r) > most {
		return string(r[:most]) + "…"
	}
	return s
}
