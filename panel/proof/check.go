package proof

import (
	"errors"
	"fmt"
	"slices"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/check"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/panel/work"
)

// Kind says what a finding is about.
type Kind string

// What may be found.
const (
	KindUses   Kind = "uses"   // a row does not fit the places before it
	KindMakes  Kind = "makes"  // a row makes another number than is printed
	KindEarly  Kind = "early"  // the count printed is that of the next row
	KindLate   Kind = "late"   // the count printed is that of the row before
	KindSizes  Kind = "sizes"  // one size is out of line, or a list stands one size off
	KindNumber Kind = "number" // a row has another number than is printed
	KindSide   Kind = "side"   // a row is worked on the other side
	KindAgain  Kind = "again"  // rows are worked again that are not there
)

// Finding is one thing in which a text does not agree with itself. It says what
// is wrong and by how much, and leaves the repair to the designer.
type Finding struct {
	Line   int    `json:"line"`  // of the text, from 1
	Label  string `json:"label"` // "Row 2"
	Size   int    `json:"size"`  // from 0; -1 where all sizes are concerned
	Kind   Kind   `json:"kind"`
	Got    string `json:"got"`    // what is printed, or used: "54"; a list where all sizes are concerned
	Want   string `json:"want"`   // what is made, or there is: "34"; empty where it is no number
	Why    string `json:"why"`    // both in a sentence: "makes 34, printed 54"
	Remark bool   `json:"remark"` // no fault, only worth a look
}

// String returns `line 2, Row 2, size 1: uses 11 of 10, 1 short`.
func (f Finding) String() string {
	s := "line " + strconv.Itoa(f.Line)
	if f.Label != "" {
		s += ", " + f.Label
	}
	if f.Size >= 0 {
		s += ", size " + strconv.Itoa(f.Size+1)
	}
	if f.Remark {
		s += " (remark)"
	}
	return s + ": " + f.Why
}

// most is how many places all rows of all sizes together may work.
const most = 5_000_000

// Check works the rows of a text in every size, as a maker would, and returns
// what does not agree, in the order of the lines. begin is the number of
// stitches there are before the first row, for a text that does not begin with
// a foundation; nil where it does, or where they are unknown, and then nothing
// is held against the first count that is printed. After a row that does not
// fit, the work goes on from the next count that is printed.
//
// A count of "sts" may leave the chains of chain spaces out or count each as one.
//
// It returns a *gauge.FieldError if begin has neither one value nor one for each
// size, or the rows work more than 5 million places.
func Check(t Text, begin grade.Run[int]) ([]Finding, error) {
	t.Sizes = max(t.Sizes, 1)
	c := &checker{t: t, results: make([][]result, len(t.Lines))}
	for i := range c.results {
		c.results[i] = make([]result, t.Sizes)
	}
	if begin != nil {
		all, err := begin.For(t.Sizes)
		if err != nil {
			return nil, gauge.InField("begin", err)
		}
		begin = all
	}
	for size := range t.Sizes {
		m := &maker{checker: c, size: size, lines: map[int]int{}}
		if begin != nil {
			m.places, m.known = work.Stitches(begin[size]), true
		}
		m.all()
		if c.places > most {
			return nil, &gauge.FieldError{Field: "Text", Got: "more than 5 million places to work", Want: "fewer rows or repeats", Err: gauge.ErrBounds}
		}
	}
	for i := range t.Lines {
		c.line(i)
	}
	return c.findings, nil
}

type checker struct {
	t        Text
	results  [][]result // by line, then by size
	findings []Finding
	places   int
}

// result is what a line does in one size the first time it is worked.
type result struct {
	known  bool // what it makes is known
	made   work.Tally
	groups []int // of a split row
	fit    error
	number int // of its first row, as worked; 0 where it is skipped
	again  string
	end    int // rows worked when the text is at its end
}

// maker works the text in one size.
type maker struct {
	*checker
	size   int
	places work.Places
	known  bool        // places are known
	done   int         // rows worked
	lines  map[int]int // line of each printed row number
}

func (m *maker) all() {
	for i := 0; i < len(m.t.Lines); i++ {
		l := &m.t.Lines[i]
		switch {
		case l.Ends != nil:
			m.results[i][m.size].end = m.done
		case l.Again != nil && l.Again.Total:
			i = m.total(i)
		case l.Again != nil:
			m.repeat(i, l.Again.Times[m.size])
		default:
			m.row(i)
		}
	}
}

// row works a line for the first time.
func (m *maker) row(i int) {
	l := &m.t.Lines[i]
	r := &m.results[i][m.size]
	if m.done == 0 && l.From != nil { // an excerpt begins where it says
		m.done = l.From[m.size] - 1
	}
	r.number = m.done + 1
	first := r.number
	if l.From != nil {
		first = l.From[m.size]
	}
	for k := range l.Rows {
		m.lines[first+k] = i
		m.once(i, r)
	}
}

// once works one row of a line; r takes down what it does, nil where it was
// worked before.
func (m *maker) once(i int, r *result) {
	l := &m.t.Lines[i]
	m.done++
	if m.places == nil && l.Row.Begins() {
		m.known = true
	}
	if m.checker.places > most {
		m.known = false
		return
	}
	m.checker.places += len(m.places) + 1
	if m.known {
		w, made, err := work.Into(l.Row, m.places, m.size)
		if err == nil {
			if r != nil {
				r.known, r.made, r.groups = true, w.Made, groups(made)
			}
			m.places = made.Turned()
			return
		}
		m.known = false
		if r != nil && r.fit == nil {
			r.fit = err
		}
	}
	if r != nil {
		r.known = false
	}
	// go on from what is printed, where that tells all about the places
	if n := printed(l, m.size); r != nil && n > 0 && !l.Row.HasChains() {
		m.places, m.known = work.Stitches(n), true
	}
}

func groups(p work.Places) []int {
	var out []int
	for _, g := range p.Groups() {
		out = append(out, g.Count())
	}
	return out
}

// printed returns the stitches printed at the end of a line; 0 where no count
// tells all of them.
func printed(l *Line, size int) int {
	if len(l.Count) != 1 || l.Count[0].Spaces {
		return 0
	}
	if of := l.Count[0].Of; of != row.NoStitch && !slices.Equal(l.Row.Stitches(), []row.Stitch{of}) {
		return 0
	}
	return min(l.Count[0].N[size], gauge.MaxCount)
}

// repeat works rows again that stand before line i.
func (m *maker) repeat(i, times int) {
	l := &m.t.Lines[i]
	r := &m.results[i][m.size]
	for n := l.Again.From; n <= l.Again.To; n++ {
		if _, ok := m.lines[n]; !ok {
			r.again = fmt.Sprintf("there is no row %d before it to work again", n)
			m.known = false
			return
		}
	}
	for k := range times {
		before, known := m.places, m.known
		for n := l.Again.From; n <= l.Again.To; n++ {
			line := m.lines[n]
			if m.once(line, nil); known && !m.known {
				_, _, r.fit = work.Into(m.t.Lines[line].Row, m.places, m.size)
				known = false
			}
			if m.checker.places > most || m.done > most {
				return
			}
		}
		if !known || slices.Equal(before, m.places) { // the rest is like this pass, or unknown
			m.done += (times - k - 1) * (l.Again.To - l.Again.From + 1)
			break
		}
	}
	if m.known {
		r.known, r.made.Stitches, r.groups = true, m.places.Count(), groups(m.places)
	}
}

// total works the rows that follow line i as often as it says, and returns the
// last line of them.
func (m *maker) total(i int) int {
	l := &m.t.Lines[i]
	rows, last := l.Again.To-l.Again.From+1, i
	for rows > 0 && last+1 < len(m.t.Lines) && m.t.Lines[last+1].Again == nil && m.t.Lines[last+1].Ends == nil {
		last++
		rows -= m.t.Lines[last].Rows
	}
	if rows != 0 {
		m.results[i][m.size].again = fmt.Sprintf("rows %d to %d do not follow it", l.Again.From, l.Again.To)
		m.known = false
		return i
	}
	if l.Again.Times[m.size] == 0 {
		return last
	}
	for k := i + 1; k <= last; k++ {
		m.row(k)
	}
	m.repeat(i, l.Again.Times[m.size]-1)
	return last
}

// fault is what does not agree in one size; the zero value is none.
type fault struct{ got, want, why string }

func (c *checker) find(i, size int, kind Kind, f fault) {
	l := &c.t.Lines[i]
	c.findings = append(c.findings, Finding{Line: l.Place, Label: l.Label, Size: size, Kind: kind, Got: f.got, Want: f.want, Why: f.why})
}

// other is a fault of one number printed for another.
func other(got, want int, format string) fault {
	return fault{strconv.Itoa(got), strconv.Itoa(want), fmt.Sprintf(format, want, got)}
}

// each reports a problem by size: once where every size has the same.
func (c *checker) each(i int, kind Kind, find func(size int) fault) {
	faults := make([]fault, c.t.Sizes)
	same := true
	for size := range faults {
		faults[size] = find(size)
		same = same && faults[size] == faults[0]
	}
	if same && faults[0].why != "" {
		c.find(i, c.whole(), kind, faults[0])
		return
	}
	for size, f := range faults {
		if f.why != "" {
			c.find(i, size, kind, f)
		}
	}
}

func (c *checker) line(i int) {
	l, res := &c.t.Lines[i], c.results[i]
	c.each(i, KindAgain, func(s int) fault { return fault{why: res[s].again} })
	c.each(i, KindNumber, func(s int) fault {
		switch {
		case l.Ends != nil && l.Ends[s].Row != res[s].end:
			return other(l.Ends[s].Row, res[s].end, "the last row is row %d, printed %d")
		case l.From != nil && res[s].number > 0 && l.From[s] != res[s].number:
			return other(l.From[s], res[s].number, "this is row %d, printed %d")
		}
		return fault{}
	})
	c.each(i, KindSide, func(s int) fault { return c.facing(i, s) })
	c.each(i, KindUses, func(s int) fault {
		var fit *row.FitError
		switch {
		case res[s].fit == nil:
			return fault{}
		case errors.As(res[s].fit, &fit) && fit.Uses > 0 && (fit.Err == row.ErrShort || fit.Err == row.ErrLeft):
			return fault{strconv.Itoa(fit.Uses), strconv.Itoa(fit.Has.Least), fit.Cause()}
		case fit != nil:
			return fault{why: fit.Cause()}
		}
		return fault{why: res[s].fit.Error()}
	})
	wrong := make([]bool, c.t.Sizes)
	for s := range wrong {
		wrong[s] = res[s].fit != nil
	}
	if n := len(l.Count); n > 1 && slices.ContainsFunc(res, func(r result) bool { return len(r.groups) == n }) {
		c.split(i, wrong)
	} else {
		for _, count := range l.Count {
			c.count(i, count, wrong)
		}
	}
	c.lists(i, wrong)
}

// facing holds the side of a label, or of the closing remark, against the first
// side that is printed.
func (c *checker) facing(i, size int) fault {
	l := &c.t.Lines[i]
	number, printed := c.results[i][size].number, panel.RightSide
	switch {
	case l.Ends != nil:
		number, printed = c.results[i][size].end, l.Ends[size].Side
	case l.Side != nil:
		printed = *l.Side
	default:
		return fault{}
	}
	if number == 0 {
		return fault{}
	}
	base := panel.RightSide
	for k := range i {
		if s := c.t.Lines[k].Side; s != nil && c.results[k][size].number > 0 {
			base = s.Turned(c.results[k][size].number - 1)
			break
		}
	}
	if i == 0 || base.Turned(number-1) == printed || !c.sided(i, size) {
		return fault{}
	}
	right := base.Turned(number - 1).String()
	return fault{printed.String(), right, fmt.Sprintf("row %d is worked on the %s, printed %s", number, right, printed)}
}

// sided reports whether a side is printed before line i.
func (c *checker) sided(i, size int) bool {
	for k := range i {
		if c.t.Lines[k].Side != nil && c.results[k][size].number > 0 {
			return true
		}
	}
	return false
}

// makes returns the numbers that a count may print for what a row makes.
func (count Count) makes(t work.Tally) []int {
	switch {
	case count.Spaces:
		return []int{t.Spaces}
	case count.Of == row.Chain:
		return []int{t.Chains}
	case count.Of != row.NoStitch:
		return []int{t.Of(count.Of)}
	case t.Chains > 0:
		return []int{t.Stitches, t.Count()}
	}
	return []int{t.Stitches}
}

// right reports whether a count prints what the line makes in a size; it is
// right where that is unknown, or where the part is skipped.
func (c *checker) right(i int, count Count, size int) bool {
	r := &c.results[i][size]
	return !r.known || count.N[size] == 0 || slices.Contains(count.makes(r.made), count.N[size])
}

// count holds a printed count against what the row makes.
func (c *checker) count(i int, count Count, wrong []bool) {
	var bad, known []int
	for s := range c.t.Sizes {
		if c.results[i][s].known && count.N[s] != 0 {
			known = append(known, s)
		}
		if !c.right(i, count, s) {
			bad = append(bad, s)
			wrong[s] = true
		}
	}
	if len(bad) == 0 {
		return
	}
	// made where it stands, but for another row
	if len(bad) == len(known) {
		for _, near := range []struct {
			kind Kind
			line int
			why  string
		}{{KindEarly, c.neighbour(i, 1), "next row"}, {KindLate, c.neighbour(i, -1), "row before"}} {
			if near.line >= 0 && c.like(near.line, count, bad) {
				made, printed := c.runOf(i, count), grade.Numbers(count.N)
				c.find(i, c.whole(), near.kind, fault{printed, made, fmt.Sprintf("makes %s, printed %s: that is the count of the %s, printed one row %s", made, printed, near.why, near.kind)})
				return
			}
		}
		for _, off := range []int{1, -1} {
			if len(known) > 2 && c.shifted(i, count, off) {
				made, printed := c.runOf(i, count), grade.Numbers(count.N)
				c.find(i, -1, KindSizes, fault{printed, made, fmt.Sprintf("makes %s, printed %s: the counts stand one size off", made, printed)})
				return
			}
		}
	}
	c.each(i, KindMakes, func(s int) fault {
		if !slices.Contains(bad, s) {
			return fault{}
		}
		return other(count.N[s], count.makes(c.results[i][s].made)[0], "makes %d, printed %d"+c.hint(i, count, s))
	})
}

// whole is the size of a finding about all sizes.
func (c *checker) whole() int {
	if c.t.Sizes == 1 {
		return 0
	}
	return -1
}

// runOf prints what a line makes in every size.
func (c *checker) runOf(i int, count Count) string {
	out := make(grade.Run[int], c.t.Sizes)
	for s := range out {
		out[s] = count.makes(c.results[i][s].made)[0]
	}
	return grade.Numbers(out)
}

// neighbour returns the row line after or before line i; -1 for none.
func (c *checker) neighbour(i, step int) int {
	for k := i + step; k >= 0 && k < len(c.t.Lines); k += step {
		if l := &c.t.Lines[k]; l.Again == nil && l.Ends == nil {
			return k
		}
	}
	return -1
}

// like reports whether a count is right for another line in the given sizes.
func (c *checker) like(line int, count Count, sizes []int) bool {
	for _, s := range sizes {
		if !c.results[line][s].known || !c.right(line, count, s) {
			return false
		}
	}
	return true
}

// shifted reports whether every count that has a neighbour is that of the size
// off places further.
func (c *checker) shifted(i int, count Count, off int) bool {
	for s := range c.t.Sizes {
		if o := s + off; o >= 0 && o < c.t.Sizes {
			r := &c.results[i][o]
			if !r.known || !slices.Contains(count.makes(r.made), count.N[s]) {
				return false
			}
		}
	}
	return true
}

// hint says what else the number printed for one size is, if anything.
func (c *checker) hint(i int, count Count, size int) string {
	n, made := count.N[size], c.results[i][size].made
	if count.Of == row.NoStitch && !count.Spaces {
		for k := row.SlipStitch; k.Valid(); k++ {
			if made.Of(k) == n {
				return fmt.Sprintf(" (that is the %s alone)", k.Abbr(c.t.Terms))
			}
		}
		if made.Spaces == n {
			return " (that is the chain spaces alone)"
		}
	}
	for _, o := range []int{size - 1, size + 1} {
		if o >= 0 && o < c.t.Sizes && c.results[i][o].known && slices.Contains(count.makes(c.results[i][o].made), n) {
			return fmt.Sprintf(" (that is the count of size %d)", o+1)
		}
	}
	return ""
}

// split holds one printed count for each group against a split row.
func (c *checker) split(i int, wrong []bool) {
	c.each(i, KindMakes, func(s int) fault {
		r := &c.results[i][s]
		if !r.known {
			return fault{}
		}
		for k, count := range c.t.Lines[i].Count {
			if count.Of == row.NoStitch && !count.Spaces && k < len(r.groups) && r.groups[k] != count.N[s] {
				wrong[s] = true
				return other(count.N[s], r.groups[k], "part "+strconv.Itoa(k+1)+" makes %d, printed %d")
			}
		}
		return fault{}
	})
}

// lists looks for a size that is out of line in the lists of a line. Where the
// row works all the same, that is a remark.
func (c *checker) lists(i int, wrong []bool) {
	l := &c.t.Lines[i]
	var lists []grade.Run[int]
	for _, n := range l.Row.Lists() {
		lists = append(lists, grade.Run[int](n))
	}
	if l.Again != nil {
		lists = append(lists, l.Again.Times)
	}
	for _, count := range l.Count {
		lists = append(lists, count.N)
	}
	labels := make(grade.Run[string], c.t.Sizes)
	for s := range labels {
		labels[s] = strconv.Itoa(s + 1)
	}
	for _, list := range lists {
		found, err := check.Rising(check.Counts("list", labels, list))
		if err != nil {
			continue // a list that is none: nothing to hold against it
		}
		for _, f := range found {
			if f.Index < 0 || f.Want == "" {
				continue
			}
			c.findings = append(c.findings, Finding{
				Line: l.Place, Label: l.Label, Size: f.Index, Kind: KindSizes, Remark: !wrong[f.Index],
				Got: f.Got, Want: f.Want,
				Why: fmt.Sprintf("%s in %s is out of line with the other sizes, which want %s", f.Got, grade.Numbers(list), f.Want),
			})
		}
	}
}
