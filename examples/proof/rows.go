package main

import (
	"cmp"
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel/proof"
	"example.com/panelmath/panel/row"
)

// block is rows that belong together: those of one piece, or a stretch of them
// where rows before it or after it are not read.
type block struct {
	lines         []line
	said          []string // the lines as package proof reads them
	text          proof.Text
	begun         int  // how far it has begun: see begins
	after, before bool // it stands after, or before, rows that are not read
	numbered
}

var (
	rowLine  = regexp.MustCompile(`^(?i:(?:rows?|rnds?)\s*\d[^:]{0,79}:|(?:next|last|foundation|setup) row\b[^:]{0,79}:|next \d+ rows\b[^:]{0,79}:|foundation: *[a-z]|rep(?:eat)? rows?\s*\d|rep(?:eat)? (?:(?:the )?(?:last|previous|prev|preceding)|this) (?:\w+ )?(?:row|rnd)s?\b.*\b(?:times?|once|twice)\b|work rows?\s*\d.*\b(?:times?|total|once|twice|until|for)\b|the last row, row|ch(?:ain)?\s+\d[\d\s(),:\[\]]*\.?$)`)
	rowFirst = regexp.MustCompile(`^(?i:(?:rows?|rnds?)\s*1\b|foundation|setup|ch(?:ain)?\s)`)
	rowChain = regexp.MustCompile(`^(?i:ch(?:ain)?\s)`)
	rowUntil = regexp.MustCompile(`^(?i:(?:rep|work)\w* rows?\b.*\b(?:until|for pattern|in pattern|throughout|for (?:another )?` + numberForm + `\s*` + unitForm + `))`)
)

// isRow reports whether a line is a row, or tells to work rows again.
func (p *pattern) isRow(l line) bool { return !l.heading && rowLine.MatchString(l.text) }

// addRow puts a row to those before it. A piece begins with its row 1, with a
// foundation, or under a heading.
func (p *pattern) addRow(l line) {
	p.as[l.number] = "row"
	if rowUntil.MatchString(l.text) { // nobody knows how many rows that makes
		p.cutBlock()
		p.as[l.number] = "rows without a number; those after it are checked from their own counts on"
		return
	}
	said := usual(p.recall(l))
	n := begins(said)
	if n > 0 && (n <= p.open.begun || p.open.begun == 0) {
		p.endBlock()
	}
	if len(p.open.lines) > 0 {
		p.after(said)
	}
	if lastRows.MatchString(said) && p.open.last == 0 { // after rows that are not read
		p.as[l.number] = "rows without a number; those after it are checked from their own counts on"
		p.cutBlock()
		return
	}
	p.open.begun = cmp.Or(n, rowsBegun)
	if from, _, _ := numbersOf(said); from > 0 && from == p.open.less { // the first time is one of them
		k := len(p.open.said) - 1
		p.open.said[k] = moreTimes.ReplaceAllStringFunc(p.open.said[k], func(s string) string {
			return digits.ReplaceAllStringFunc(s, func(n string) string {
				t, _ := strconv.Atoi(n)
				return strconv.Itoa(max(0, t-1))
			})
		})
	}
	p.open.less = 0
	for _, s := range p.open.words(said) {
		p.open.lines = append(p.open.lines, l)
		p.open.said = append(p.open.said, s)
		p.open.follow(s)
	}
}

var moreTimes = regexp.MustCompile(listForm + ` more times`)

// The rows with which a piece begins stand in this order. One that does not come
// after those before it is of another piece.
const (
	chainBegun = iota + 1
	foundationBegun
	setupBegun
	rowsBegun
)

// begins says which of these rows a row is; 0 where it is any other.
func begins(said string) int {
	switch m := strings.ToLower(rowFirst.FindString(said)); {
	case strings.HasPrefix(m, "ch"):
		return chainBegun
	case strings.HasPrefix(m, "foundation"):
		return foundationBegun
	case strings.HasPrefix(m, "setup"):
		return setupBegun
	case m != "":
		return rowsBegun
	}
	return 0
}

func (p *pattern) endBlock() {
	if len(p.open.lines) > 0 {
		p.blocks = append(p.blocks, p.open)
	}
	p.open = block{}
}

// cutBlock ends the rows so far where rows follow that can't be worked: what
// comes after them is another stretch of the same piece.
func (p *pattern) cutBlock() {
	p.open.before = true
	p.endBlock()
	p.open.after = true
}

// rows reads the rows of every piece and lets package panel/proof work them.
func (p *pattern) rows() []Finding {
	var out []Finding
	for i := range p.blocks {
		p.hooked(&p.blocks[i])
		whole := p.blocks[i].inTurn()
		p.blocks[i].text = proof.Text{} // of a piece that is cut nobody can say how many rows it has
		runs := p.runs(whole)
		if len(runs) == 1 && len(runs[0].lines) == len(whole.lines) {
			p.blocks[i] = runs[0]
		}
		for _, b := range runs {
			out = append(out, p.run(&b)...)
		}
	}
	return out
}

// run works rows that were read.
func (p *pattern) run(b *block) []Finding {
	found, err := spending(b.text, &p.places)
	if err != nil {
		p.miss(b.lines[0], fmt.Errorf("the rows from here on: %w", err))
		return nil
	}
	var out []Finding
	told, found := p.renumbered(b, found)
	for _, f := range told {
		f.Size = b.sizeLabel(p, f.at)
		out = append(out, f.Finding)
	}
	return append(out, p.worked(b, found)...)
}

// spending checks a text and takes what that works off what is left.
func spending(t proof.Text, left *int) (found []proof.Finding, err error) {
	found, *left, err = proof.CheckWithin(t, nil, *left)
	return found, err
}

// parse reads the rows. An error says in which of the lines it is, and why.
func (b *block) parse(terms row.Terms) (at int, err error) {
	b.text, err = proof.Parse(strings.Join(b.said, "\n"), terms)
	var syntax *row.SyntaxError
	if errors.As(err, &syntax) {
		at = syntax.Line - 1
		e := *syntax
		e.Col = column(b.lines[at].text, b.said[at], e.Read, e.Col)
		return at, errors.New(strings.TrimPrefix(e.Error(), "row: line "+strconv.Itoa(e.Line)+", "))
	}
	var field *gauge.FieldError
	if errors.As(err, &field) {
		return 0, fmt.Errorf("lists of different lengths: got %s, want %s", field.Got, field.Want)
	}
	if err != nil {
		return 0, err
	}
	for i := range b.text.Lines {
		l := &b.text.Lines[i]
		l.Place = b.lines[l.Place-1].number
		if len(l.Row.Items) == 0 {
			continue
		}
		if _, ok := l.Row.Items[0].(row.Foundation); ok { // 63 hdc are meant by 63 fhdc
			for k := range l.Count {
				l.Count[k].Of = row.NoStitch
			}
		}
	}
	return 0, nil
}

// worked turns the findings of a piece into those of the text. A row that is off
// puts those after it off as well: only the first of them in each size is told.
func (p *pattern) worked(b *block, found []proof.Finding) []Finding {
	var out []Finding
	numbered := b.text.Lines[0].Row.Begins()
	off := map[int]int{} // by size: place in out of the first row that is off
	for _, f := range found {
		if f.Kind == proof.KindNumber && !numbered {
			continue // the rows before it are not in the text
		}
		x := Finding{Line: f.Line, Name: f.Label, Size: b.sizeLabel(p, f.Size), Remark: f.Remark}
		switch f.Kind {
		case proof.KindUses, proof.KindMakes, proof.KindEarly, proof.KindLate:
			at, before := off[f.Size]
			if !before {
				at, before = off[-1]
			}
			if before && (f.Line != out[at].Line || f.Label != out[at].Name) {
				if !strings.HasSuffix(out[at].Why, carried) {
					out[at].Why += carried
				}
				continue
			}
			off[f.Size] = len(out)
		}
		x.Got, x.Want, x.Why = told(f)
		x.Why = sizeNumber.ReplaceAllStringFunc(x.Why, func(s string) string { // package proof numbers the sizes
			n, err := strconv.Atoi(strings.TrimPrefix(s, "size "))
			if err != nil || n < 1 || n > p.n {
				return s
			}
			return "size " + p.label(n-1)
		})
		if f.Kind == proof.KindMakes {
			x.Got += b.noun(f, x.Got)
		}
		out = append(out, x)
	}
	return out
}

var sizeNumber = regexp.MustCompile(`\bsize \d+`)

// sizeLabel returns what a size is called; a piece without lists is for all sizes.
func (b *block) sizeLabel(p *pattern, i int) string {
	if b.text.Sizes < 2 {
		return ""
	}
	return p.label(i)
}

// noun says what a printed count counts, where the row has more than one and one
// of them alone is that number.
func (b *block) noun(f proof.Finding, n string) string {
	var nouns []string
	for _, l := range b.text.Lines {
		if l.Place != f.Line || len(l.Count) < 2 {
			continue
		}
		for _, c := range l.Count {
			switch {
			case strconv.Itoa(c.N[max(0, f.Size)]) != n:
			case c.Spaces:
				nouns = append(nouns, " chain spaces")
			case c.Of != row.NoStitch:
				nouns = append(nouns, " "+c.Of.Abbr(b.text.Terms))
			default:
				nouns = append(nouns, " sts")
			}
		}
	}
	if len(nouns) == 1 {
		return nouns[0]
	}
	return ""
}

// carried is what is told of rows after one that is off.
const carried = "; rows after it are off with it, and not told apart"

// told takes apart what the library says in one sentence.
func told(f proof.Finding) (got, want, why string) {
	before, after, ok := strings.Cut(f.Why, ", printed ")
	switch {
	case ok && (f.Kind == proof.KindMakes || f.Kind == proof.KindEarly || f.Kind == proof.KindLate || f.Kind == proof.KindSizes):
		before = strings.TrimPrefix(before, "makes ")
		got, more, _ := strings.Cut(after, ": ")
		if i := strings.Index(got, " (that is"); i >= 0 {
			more, got = strings.Trim(got[i:], " ()"), got[:i]
		}
		why = "the row makes " + before
		if more != "" {
			why += "; " + more
		}
		return got, before, why
	case ok:
		return after, before[strings.LastIndexByte(before, ' ')+1:], before
	case f.Kind == proof.KindUses:
		if m := used.FindStringSubmatch(f.Why); m != nil {
			return m[1] + " used", m[2], "the row before has " + m[2] + " to work into: " + m[3]
		}
		return "a row that does not fit the one before", "", f.Why
	case f.Kind == proof.KindSizes:
		got, _, _ = strings.Cut(f.Why, " ")
		return got, f.Why[strings.LastIndexByte(f.Why, ' ')+1:], f.Why
	}
	return "rows to work again", "", f.Why
}

var used = regexp.MustCompile(`^uses (\d+) of (\d+), (.*)$`)

// sized is a finding and the size it is about, from 0; -1 for all.
type sized struct {
	Finding
	at int
}

// misnumbered returns the line of the first finding that one wrong number of a
// row may bring about; 0 for none.
func misnumbered(found []proof.Finding) int {
	for _, f := range found {
		if f.Kind == proof.KindNumber || f.Kind == proof.KindAgain || f.Kind == proof.KindSide {
			return f.Line
		}
	}
	return 0
}

// mostTries is how many lines, in all sizes, and rows worked again may be counted
// in all that renumbered tries in a text.
const mostTries = 500_000

// renumbered looks for the number that puts the first row number off that is
// wrong: the last one of a label `Rows 5–7` before it, or one of a line that works
// rows again. Each is changed in turn; the change that leaves nothing is told,
// instead of all that follows from it.
func (p *pattern) renumbered(b *block, found []proof.Finding) ([]sized, []proof.Finding) {
	last := slices.IndexFunc(b.text.Lines, func(l proof.Line) bool { return l.Place == misnumbered(found) })
	if last < 0 {
		return nil, found
	}
	numbers := slices.Clone(b.text.Lines) // rows without work: their numbers alone are counted
	for i := range numbers {
		numbers[i].Row, numbers[i].Count = row.Row{}, nil
	}
	var best []sized
	try := func(i int, f sized, change func(*proof.Line)) {
		if p.tries -= len(numbers) * b.text.Sizes; p.tries < 0 || best != nil {
			return
		}
		changed := func(lines []proof.Line) proof.Text {
			t := b.text
			t.Lines = slices.Clone(lines)
			l := &t.Lines[i]
			l.From = slices.Clone(l.From)
			if l.Again != nil {
				again := *l.Again
				again.Times = slices.Clone(again.Times)
				l.Again = &again
			}
			change(l)
			return t
		}
		if counted, err := spending(changed(numbers), &p.tries); err != nil || misnumbered(counted) > 0 {
			return
		}
		rest, err := spending(changed(b.text.Lines), &p.places)
		if err != nil || misnumbered(rest) > 0 || len(rest) >= len(found) {
			return
		}
		f.Line, f.Name = b.text.Lines[i].Place, b.text.Lines[i].Label
		best, found = []sized{f}, rest
	}
	for i := last; i >= 0 && best == nil; i-- {
		l := b.text.Lines[i]
		if l.Again != nil {
			b.again(i, found, try)
		}
		if l.From != nil {
			b.label(i, try)
			if i < last {
				break
			}
		}
	}
	return best, found
}

// label tries other numbers in the label of several rows. That of a single row is
// told where it stands.
func (b *block) label(i int, try func(int, sized, func(*proof.Line))) {
	l := b.text.Lines[i]
	if l.Rows == 1 {
		return
	}
	span := 1
	if l.Again != nil {
		span = l.Again.To - l.Again.From + 1
	}
	more := func(x *proof.Line, times int) {
		x.Rows += times * span
		if x.Again != nil {
			for s := range x.Again.Times {
				x.Again.Times[s] += times
			}
		}
	}
	for _, times := range []int{-3, -2, -1, 1, 2, 3} {
		d := times * span
		if l.Rows+d < 1 {
			continue
		}
		to := l.From[0] + l.Rows - 1 // the second number of Rows 5–7
		try(i, sized{Finding{Got: "rows to " + strconv.Itoa(to), Want: "rows to " + strconv.Itoa(to+d), Why: "the rows after it are numbered so"}, -1},
			func(x *proof.Line) { more(x, times) })
		if l.From[0]-d > 0 {
			try(i, sized{Finding{Got: "rows from " + strconv.Itoa(l.From[0]), Want: "rows from " + strconv.Itoa(l.From[0]-d), Why: "the rows before and after it are numbered so"}, -1},
				func(x *proof.Line) {
					more(x, times)
					for s := range x.From {
						x.From[s] -= d
					}
				})
		}
	}
}

// again tries other numbers where rows are worked again: the times that the
// number of a later row asks for, and other rows.
func (b *block) again(i int, found []proof.Finding, try func(int, sized, func(*proof.Line))) {
	l := b.text.Lines[i]
	a := l.Again
	span := a.To - a.From + 1
	for _, f := range found {
		if f.Kind != proof.KindNumber || l.From != nil { // with a label, that says how many rows there are
			continue
		}
		got, want, _ := told(f)
		g, err := strconv.Atoi(got)
		if err != nil {
			continue
		}
		w, err := strconv.Atoi(want)
		if err != nil || (w-g)%span != 0 {
			continue
		}
		less := (w - g) / span
		sizes := []int{f.Size}
		if f.Size < 0 {
			sizes = nil
			for i := range a.Times {
				sizes = append(sizes, i)
			}
		}
		if slices.ContainsFunc(sizes, func(i int) bool { return a.Times[i] < less }) {
			continue
		}
		n := a.Times[sizes[0]]
		try(i, sized{Finding{Got: plural(n, "time"), Want: plural(n-less, "time"), Why: fmt.Sprintf("the rows after it are numbered so: row %d, not %d", g, w)}, f.Size},
			func(x *proof.Line) {
				for _, i := range sizes {
					x.Again.Times[i] -= less
				}
			})
	}
	for _, d := range []int{-3, -2, -1, 1, 2, 3} {
		for _, end := range []bool{false, true} {
			from, to := a.From, a.To
			if end {
				to += d
			} else {
				from += d
			}
			if from > 0 && from <= to {
				try(i, sized{Finding{Got: fmt.Sprintf("rows %d to %d again", a.From, a.To), Want: fmt.Sprintf("rows %d to %d again", from, to), Why: "the rows after it are numbered so"}, -1},
					func(x *proof.Line) { x.Again.From, x.Again.To = from, to })
			}
		}
	}
}

// count returns the number of stitches that most counts of a piece print, and
// the rows that it works, in every size; ok is false where the text does not
// say.
func (p *pattern) counts(b block) (sts, worked, last grade.Run[int], ok bool) {
	many := make([]map[int]int, p.n)
	sts = make(grade.Run[int], p.n)
	for i := range many {
		many[i] = map[int]int{}
	}
	for _, l := range b.text.Lines {
		for _, c := range l.Count {
			if c.Of != row.NoStitch || c.Spaces {
				continue
			}
			for i := range many {
				n := c.N[min(i, len(c.N)-1)]
				if many[i][n]++; many[i][n] > many[i][sts[i]] {
					sts[i] = n
				}
			}
		}
	}
	plan, writing, err := b.text.Plan()
	if err != nil {
		return nil, nil, nil, false
	}
	worked = make(grade.Run[int], p.n)
	for i := range worked {
		worked[i] = plan.Rows(writing.Repeats[min(i, len(writing.Repeats)-1)])
		if sts[i] == 0 {
			return nil, nil, nil, false
		}
	}
	if m := lastRow.FindStringSubmatch(b.lines[len(b.lines)-1].text); m != nil {
		if n, err := numbers(m[1]); err == nil {
			if n, err = n.For(p.n); err == nil {
				for _, v := range n {
					last = append(last, int(v.IntPart()))
				}
			}
		}
	}
	if last == nil {
		last = worked
	}
	return sts, worked, last, true
}

var lastRow = regexp.MustCompile(`^(?i:the last row), Row (` + listForm + `)`)
