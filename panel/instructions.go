package panel

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/panel/work"
)

// Writing says how the rows of a plan are to be written out.
type Writing struct {
	Terms     row.Terms      `json:"terms"`
	Stitches  grade.Run[int] `json:"stitches"`   // stitch count of each size
	Repeats   grade.Run[int] `json:"repeats"`    // repeats of each size, in all
	FirstSide Side           `json:"first_side"` // of row 1; the zero value is the right side
}

// Side is the side of the fabric that faces the maker. The zero value is the
// right side.
type Side uint8

// The two sides.
const (
	RightSide Side = iota
	WrongSide
)

// String returns "RS" or "WS".
func (s Side) String() string {
	switch s {
	case RightSide:
		return "RS"
	case WrongSide:
		return "WS"
	}
	return fmt.Sprintf("Side(%d)", uint8(s))
}

// MarshalText returns "RS" or "WS", or a *gauge.FieldError for anything else.
func (s Side) MarshalText() ([]byte, error) {
	if s > WrongSide {
		return nil, &gauge.FieldError{Field: "Side", Got: s.String(), Want: "RS or WS"}
	}
	return []byte(s.String()), nil
}

// UnmarshalText reads "RS" or "WS". It returns a *gauge.ParseError for anything
// else.
func (s *Side) UnmarshalText(b []byte) error {
	for side := RightSide; side <= WrongSide; side++ {
		if strings.EqualFold(string(b), side.String()) {
			*s = side
			return nil
		}
	}
	return &gauge.ParseError{Kind: "side", Text: string(b), Cause: "want RS or WS"}
}

// Turned returns the side that faces the maker after so many turns.
func (s Side) Turned(times int) Side { return Side((int(s) + times%2 + 2) % 2) }

// Line is one line of instructions.
type Line struct {
	Label string `json:"label"` // "Row 1 (RS)", "Rows 5–7", or nothing
	Text  string `json:"text"`  // "hdc in each st across", "Rep Rows 5–9 3 (4, 5, 6) more times"
	Count string `json:"count"` // what stands at the end of the row: "163 (166, 169, 172) sts", or nothing
}

// String returns "Row 2: hdc in each st across. — 163 (166, 169, 172) sts".
func (l Line) String() string {
	var b strings.Builder
	if l.Label != "" {
		b.WriteString(l.Label + ": ")
	}
	b.WriteString(l.Text + ".")
	if l.Count != "" {
		b.WriteString(" — " + l.Count)
	}
	return b.String()
}

// Instructions are the written rows of a panel for all sizes.
type Instructions struct {
	Terms row.Terms `json:"terms"`
	Lines []Line    `json:"lines"`
}

// String returns the lines, one under the other.
func (in Instructions) String() string {
	var b strings.Builder
	for _, l := range in.Lines {
		b.WriteString(l.String() + "\n")
	}
	return b.String()
}

// Abbreviations returns the abbreviations that the lines use, and no others.
func (in Instructions) Abbreviations() []row.Abbreviation {
	return row.Abbreviations(in.String(), in.Terms)
}

// Abbreviations returns the abbreviations that the rows of the plan use; see
// Instructions.Abbreviations for those of the written lines with their counts.
func (p Plan) Abbreviations(t row.Terms) []row.Abbreviation {
	var b strings.Builder
	for _, rows := range [][]row.Row{p.Opening, p.Repeat, p.Closing} {
		for _, r := range rows {
			b.WriteString(r.Text(t) + "\n")
		}
	}
	return row.Abbreviations(b.String(), t)
}

// Write returns the numbered instructions for all sizes. Every row is written
// once, with its count where it ends; equal neighbours share a line. Where
// every size works the repeat, it is written as its first pass, and "Rep Rows
// 5–9 3 (4, 5, 6) more times" follows; where some size has no repeat, the rows
// stand under "Work Rows 5–9 a total of 0 (1, 2) times" instead, which says that
// 0 means to skip them. The numbers of the closing rows are those of each size,
// and a last line says on which side each size ends.
//
// It returns an error if:
//   - Stitches and Repeats are not one value or one for each size, or out of
//     range (*gauge.FieldError);
//   - the plan is not valid (see Validate), or its rows list another number of sizes;
//   - a stitch count is not legal (*SizeError).
func (p Plan) Write(w Writing) (Instructions, error) {
	s, err := p.sheet(w)
	if err != nil {
		return Instructions{}, err
	}
	s.opening()
	s.repeat()
	s.closing()
	return Instructions{Terms: w.Terms, Lines: s.lines}, nil
}

// SizeError tells in which size a count does not work.
type SizeError struct {
	Size int        // from 0
	Got  int        // the count
	Rule gauge.Rule // the legal counts
}

// Error returns "size 2: got 165 sts, want a multiple of 3 + 1, at least 4".
func (e *SizeError) Error() string {
	return fmt.Sprintf("size %d: got %s, want %s", e.Size+1, text.Count(e.Got, "st", "sts"), legal(e.Rule))
}

// legal says "a multiple of 3 + 1, at least 4".
func legal(r gauge.Rule) string {
	switch {
	case r.Multiple == gauge.MaxCount:
		return strconv.Itoa(r.Least)
	case r.Multiple == 1:
		return "at least " + strconv.Itoa(r.Least)
	case r.Multiple == 2:
		return "an " + r.String()
	}
	return "a " + r.String()
}

// sheet gathers the lines of a plan.
type sheet struct {
	plan      Plan
	terms     row.Terms
	side      Side
	stitches  []int
	repeats   []int
	solutions []work.Solution // by size; one where the rows have no lists
	lines     []Line
}

func (p Plan) sheet(w Writing) (*sheet, error) {
	n := max(len(w.Stitches), len(w.Repeats), p.Sizes())
	s := &sheet{plan: p, terms: w.Terms, side: w.FirstSide}
	if w.Terms > row.UK {
		return nil, &gauge.FieldError{Field: "Writing.Terms", Got: w.Terms.String(), Want: "US or UK"}
	}
	if w.FirstSide > WrongSide {
		return nil, &gauge.FieldError{Field: "Writing.FirstSide", Got: w.FirstSide.String(), Want: "RightSide or WrongSide"}
	}
	var err error
	var run grade.Run[int]
	if run, err = w.Stitches.For(n); err != nil {
		return nil, gauge.InField("Writing.Stitches", err)
	}
	s.stitches = run
	if run, err = w.Repeats.For(n); err != nil {
		return nil, gauge.InField("Writing.Repeats", err)
	}
	s.repeats = run
	for i, k := range s.repeats {
		if err := p.checkRepeats(fmt.Sprintf("Writing.Repeats[%d]", i), k); err != nil {
			return nil, err
		}
	}
	if k := p.Sizes(); k > 1 && k != n {
		return nil, &gauge.FieldError{Field: "Writing.Stitches", Got: fmt.Sprintf("%d sizes", n), Want: fmt.Sprintf("%d sizes, as the rows list", k)}
	}
	for i := range p.Sizes() {
		sol, err := p.solve(i)
		if err != nil {
			return nil, err
		}
		s.solutions = append(s.solutions, sol)
	}
	for i, n := range s.stitches {
		if r := s.solution(i).Rule; !r.Legal(n) || n > gauge.MaxCount {
			return nil, &SizeError{Size: i, Got: n, Rule: r}
		}
	}
	return s, nil
}

func (s *sheet) solution(size int) *work.Solution {
	return &s.solutions[min(size, len(s.solutions)-1)]
}

// run prints one number for each size.
func (s *sheet) run(f func(size int) int) string {
	out := make(grade.Run[int], len(s.stitches))
	for i := range out {
		out[i] = f(i)
	}
	return grade.Numbers(out)
}

// count prints what a row makes: `163 sts`, or `55 dc, 54 ch-2 sps` where there
// are chain spaces.
func (s *sheet) count(worked func(size int) work.Worked) string {
	all := make([]work.Worked, len(s.stitches))
	spaces := false
	for i := range all {
		all[i] = worked(i)
		spaces = spaces || all[i].Made.Spaces > 0
	}
	if !spaces {
		return s.run(func(i int) int { return all[i].Made.Stitches }) + " sts"
	}
	var parts []string
	for k := row.SlipStitch; k.Valid(); k++ {
		n := 0
		for _, w := range all {
			n += w.Made.Of(k)
		}
		if n > 0 {
			parts = append(parts, s.run(func(i int) int { return all[i].Made.Of(k) })+" "+k.Abbr(s.terms))
		}
	}
	noun := "ch-sps"
	if s.terms == row.UK {
		noun = "ch sps"
	}
	if m := all[0].Space; m > 0 && !slices.ContainsFunc(all, func(w work.Worked) bool { return w.Space != m }) {
		noun = fmt.Sprintf("ch-%d sps", m)
	}
	parts = append(parts, s.run(func(i int) int { return all[i].Made.Spaces })+" "+noun)
	return strings.Join(parts, ", ")
}

// rows writes one line for every stretch of equal rows. number gives the row
// number of the first row in each size.
func (s *sheet) rows(rows []row.Row, number func(size int) int, worked func(i, size int) work.Worked) {
	for i := 0; i < len(rows); {
		text := rows[i].Text(s.terms)
		count := s.count(func(size int) work.Worked { return worked(i, size) })
		j := i + 1
		for j < len(rows) && !rows[i].Begins() && rows[j].Text(s.terms) == text &&
			s.count(func(size int) work.Worked { return worked(j, size) }) == count {
			j++
		}
		first := number(0)+i == 1
		if first {
			text = s.beginning(rows[0]).Text(s.terms)
		}
		label := s.label(j-i, func(size int) int { return number(size) + i })
		if first {
			label += " (" + s.side.String() + ")"
		}
		s.lines = append(s.lines, Line{Label: label, Text: text, Count: count})
		i = j
	}
}

// beginning returns the first row with the count that it needs in each size.
func (s *sheet) beginning(r row.Row) row.Row {
	if r.Sizes() > 1 {
		return r
	}
	n := make(row.Num, len(s.stitches))
	same := true
	for i := range n {
		n[i] = s.stitches[i]
		if c := s.solution(i).Chains(n[i]); c > 0 {
			n[i] = c
		}
		same = same && n[i] == n[0]
	}
	if same {
		n = n[:1]
	}
	return r.WithCount(n)
}

// label returns "Row 12", "Rows 5–9", "Row 20 (25, 30)" or "Rows 20–21 (25–26,
// 30–31)".
func (s *sheet) label(many int, number func(size int) int) string {
	out := make(grade.Run[string], len(s.stitches))
	for i := range out {
		n := number(i)
		out[i] = strconv.Itoa(n)
		if many > 1 {
			out[i] += "–" + strconv.Itoa(n+many-1)
		}
	}
	word := "Row "
	if many > 1 {
		word = "Rows "
	}
	return word + grade.Text(out, func(s string) string { return s })
}

func (s *sheet) opening() {
	s.rows(s.plan.Opening, func(int) int { return 1 }, func(i, size int) work.Worked {
		return s.solution(size).Opening(i, s.stitches[size])
	})
}

func (s *sheet) repeat() {
	most, least := slices.Max(s.repeats), slices.Min(s.repeats)
	if most == 0 {
		return
	}
	from := len(s.plan.Opening) + 1
	span := s.label(len(s.plan.Repeat), func(int) int { return from })
	if least == 0 {
		s.lines = append(s.lines, Line{Text: fmt.Sprintf("Work %s a total of %s times; 0: skip these rows in that size", span, s.run(func(i int) int { return s.repeats[i] }))})
	}
	s.rows(s.plan.Repeat, func(int) int { return from }, func(i, size int) work.Worked {
		return s.solution(size).Repeat(1, i, s.stitches[size])
	})
	if least > 0 && most > 1 {
		times := "times"
		if most == 2 && least == 2 {
			times = "time"
		}
		s.lines = append(s.lines, Line{Text: fmt.Sprintf("Rep %s %s more %s", span, s.run(func(i int) int { return s.repeats[i] - 1 }), times)})
	}
}

func (s *sheet) closing() {
	s.rows(s.plan.Closing, func(size int) int { return s.plan.Rows(s.repeats[size]) - len(s.plan.Closing) + 1 },
		func(i, size int) work.Worked {
			return s.solution(size).Closing(s.repeats[size], i, s.stitches[size])
		})
	ends := make(grade.Run[Side], len(s.stitches))
	for i := range ends {
		ends[i] = s.side.Turned(s.plan.Rows(s.repeats[i]) - 1)
	}
	last := s.run(func(i int) int { return s.plan.Rows(s.repeats[i]) })
	s.lines = append(s.lines, Line{Text: fmt.Sprintf("The last row, Row %s, is worked on %s", last, grade.Text(ends, Side.String))})
}
