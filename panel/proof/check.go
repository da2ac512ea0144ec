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

// String returns "line 4, Row 3, size 2: makes 68, printed 70".
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

// most is how many places all rows of all sizes of a text together may work.
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
// It returns the error of Validate, and a *gauge.FieldError if begin has neither
// one value nor one for each size, each 0 to gauge.MaxCount, or the rows work more
// than 5 million places.
func Check(t Text, begin grade.Run[int]) ([]Finding, error) {
	found, _, err := CheckWithin(t, begin, most)
	return found, err
}

// CheckWithin is Check for one of several texts that together may work no more
// than so many places. It returns also how many are left for the others: none
// where they did not suffice, all of them with another error. Its errors are those
// of Check, with that bound in place of Check's own.
func CheckWithin(t Text, begin grade.Run[int], places int) (found []Finding, left int, err error) {
	if err := t.Validate(); err != nil {
		return nil, places, err
	}
	t.Sizes = max(t.Sizes, 1)
	c := &checker{t: t, results: make([][]result, len(t.Lines)), left: places, off: make([]int, t.Sizes)}
	for i := range c.results {
		c.results[i] = make([]result, t.Sizes)
	}
	if begin != nil {
		all, err := begin.For(t.Sizes)
		if err != nil {
			return nil, places, gauge.InField("begin", err)
		}
		for size, n := range all {
			if n < 0 || n > gauge.MaxCount {
				return nil, places, &gauge.FieldError{Field: fmt.Sprintf("begin[%d]", size), Got: strconv.Itoa(n), Want: "0 to 100000", Err: gauge.ErrBounds}
			}
		}
		begin = all
	}
	for size := range t.Sizes {
		m := &maker{checker: c, size: size}
		if begin != nil {
			m.places, m.known = work.Stitches(begin[size]), true
		}
		m.all()
		if c.left < 0 {
			return nil, 0, &gauge.FieldError{Field: "Text", Got: fmt.Sprintf("more than %d places to work", places), Want: "fewer rows or repeats", Err: gauge.ErrBounds}
		}
	}
	for i := range t.Lines {
		c.line(i)
	}
	return c.findings, c.left, nil
}

type checker struct {
	t        Text
	results  [][]result // by line, then by size
	findings []Finding
	left     int   // places that may still be worked
	off      []int // by size: by how much the last number printed was off
}

// result is what a line does in one size the first time it is worked.
type result struct {
	known  bool // what it makes is known
	made   work.Tally
	spaces map[row.Space]int // chain spaces made, by their size
	slips  int               // slip stitches made to get across the first stitches
	groups []int             // of a split row
	fit    error
	number int // of its first row, as numbered; 0 where it is skipped
	turn   int // of its first row, as worked: a foundation without a number is worked before row 1
	again  string
}

// space returns the size of the chain spaces made, where all have the same; else 0.
func (r *result) space() row.Space {
	for size := range r.spaces {
		if len(r.spaces) == 1 {
			return size
		}
	}
	return 0
}

// maker works the text in one size.
type maker struct {
	*checker
	size   int
	places work.Places
	other  work.Places    // places that the next row may take instead: with, or without, slip stitches made to get across
	known  bool           // places are known
	last   result         // of the row worked last
	done   int            // rows worked, as numbered
	before int            // rows worked before row 1
	leaves map[*Line]bool // rows that stop before the last stitches and leave them, as their counts tell
	lines  []numbered     // of each printed row number
}

// numbered says on which line the rows from one number to another stand.
type numbered struct {
	from, to, line int
	again          []numbered // where that line works these rows again, over and over
}

// at cuts a stretch at the first of its rows from n on that stand on another line.
func (x numbered) at(n, to int) numbered {
	to = min(to, x.to)
	if x.again == nil {
		return numbered{from: n, to: to, line: x.line}
	}
	if len(x.again) == 1 { // one line over and over
		return numbered{from: n, to: to, line: x.again[0].line}
	}
	first, last := x.again[0].from, x.again[len(x.again)-1].to
	k := first + (n-x.from)%(last-first+1)
	for _, a := range x.again {
		if k <= a.to {
			return numbered{from: n, to: min(to, n+a.to-k), line: a.line}
		}
	}
	return numbered{from: n, to: n, line: x.line}
}

func (m *maker) all() {
	for i := 0; i < len(m.t.Lines); i++ {
		l := &m.t.Lines[i]
		switch {
		case l.Ends != nil:
			m.results[i][m.size].number, m.results[i][m.size].turn = m.done, m.done+m.before
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
	switch first := m.from(l); {
	case m.done == 0 && first > 0 && !l.Row.Begins(): // an excerpt begins where it says
		m.done = first - 1
	case first == 1 && m.unnumbered(i): // a foundation may stand before row 1
		m.before, m.done = m.done, 0
	}
	r.number, r.turn = m.done+1, m.done+m.before+1
	first := r.number
	if l.From != nil {
		first = l.From[m.size]
	}
	m.lines = append(m.lines, numbered{from: first, to: first + l.Rows - 1, line: i})
	for k := range l.Rows {
		before, known := m.places, m.known
		m.once(l, l.Count)
		if k == 0 || r.fit == nil {
			number, turn := r.number, r.turn
			*r = m.last
			r.number, r.turn = number, turn
		}
		// go on from what is printed, where that tells all about the places
		if n := printed(l, m.size); !m.known && n > 0 && !l.Row.HasChains() {
			m.places, m.known = work.Stitches(n), true
		}
		if m.idle(known, before) { // the other rows are like this one
			m.done += l.Rows - k - 1
			break
		}
	}
}

// from returns the number in the label of a line; 0 where it has none.
func (m *maker) from(l *Line) int {
	if l.From == nil {
		return 0
	}
	return l.From[m.size]
}

// unnumbered reports whether the lines before line i are rows without a number.
func (m *maker) unnumbered(i int) bool {
	for _, l := range m.t.Lines[:i] {
		if l.From != nil || l.Again != nil || l.Ends != nil {
			return false
		}
	}
	return true
}

// idle reports whether working the same again changes nothing, or can't be done.
func (m *maker) idle(known bool, before work.Places) bool {
	return m.left < 0 || !m.known || known && m.other == nil && slices.Equal(before, m.places)
}

// once works one row, and takes down in last what it does. Where two kinds of
// places may be meant, counts tell which.
func (m *maker) once(l *Line, counts []Count) {
	m.done++
	m.last = result{}
	if m.places == nil && l.Row.Begins() {
		m.known = true
	}
	if m.left < 0 {
		m.known = false
	}
	if !m.known {
		return
	}
	if m.other != nil && l.Named && len(m.other) < len(m.places) { // hdc in each hdc, not in the slip stitches
		m.places, m.other = m.other, m.places
	}
	made := m.into(l, m.places)
	if m.other != nil && (m.last.fit != nil || !l.Named && !m.prints(counts)) {
		first := m.last
		if again := m.into(l, m.other); m.last.fit == nil && m.prints(counts) {
			made = again
		} else {
			m.last = first
		}
	}
	m.other, m.known = nil, m.last.known
	if !m.known {
		return
	}
	m.places = made.Turned()
	if n := m.last.slips; n > 0 {
		m.other = m.places[:len(m.places)-n]
		if len(counts) > 0 && !slices.ContainsFunc(counts, func(c Count) bool { return c.Of == row.NoStitch && c.N[m.size] == m.last.made.Stitches }) {
			m.places, m.other = m.other, m.places
		}
	}
}

// into works a row into places.
func (m *maker) into(l *Line, p work.Places) work.Places {
	m.left -= len(p) + 1
	r, slips := across(l.Row, m.size)
	w, made, err := work.Into(r, p, m.size)
	if err != nil && l.Named {
		if some, ok := work.PassOver(r, p, m.size); ok {
			m.left -= len(p)
			w, made, err = work.Into(r, some, m.size)
		}
	}
	if last := stops(r); len(last) > 0 && len(l.Count) > 0 && errors.Is(err, row.ErrLeft) {
		rest := row.Row{Items: append(slices.Clone(r.Items), row.Leave{N: last})}
		m.left -= len(p)
		w, made, err = m.leaving(l, rest, p, err)
	}
	if err != nil {
		m.last = result{fit: err}
		return nil
	}
	m.last = result{known: true, made: w.Made, slips: slips, groups: groups(made)}
	if w.Made.Spaces > 0 {
		m.last.spaces = map[row.Space]int{}
		for _, x := range made {
			if x > 0 {
				m.last.spaces[x]++
			}
		}
	}
	return made
}

// stops returns the stitches before which a row ends that goes on to the last
// few, with nothing after: those may be meant to be left, without a word.
func stops(r row.Row) row.Num {
	if len(r.Items) == 0 {
		return nil
	}
	switch it := r.Items[len(r.Items)-1].(type) {
	case row.Each:
		return it.Last
	case row.Repeat:
		return it.Last
	}
	return nil
}

// leaving works a row that leaves the rest, where the counts of its line say so
// the first time; else it returns the error.
func (m *maker) leaving(l *Line, r row.Row, p work.Places, left error) (work.Worked, work.Places, error) {
	w, made, err := work.Into(r, p, m.size)
	if err != nil {
		return w, nil, left
	}
	if !m.leaves[l] {
		result := result{known: true, made: w.Made}
		for _, c := range l.Count {
			if c.Spaces || !c.prints(&result, m.size) {
				return w, nil, left
			}
		}
		if m.leaves == nil {
			m.leaves = map[*Line]bool{}
		}
		m.leaves[l] = true
	}
	return w, made, nil
}

// prints reports whether every count is that of the row worked last.
func (m *maker) prints(counts []Count) bool {
	return !slices.ContainsFunc(counts, func(c Count) bool { return !c.prints(&m.last, m.size) })
}

// across returns how many slip stitches a row begins with, to get across the
// first stitches: whether they count as stitches is custom. A chain after them
// brings the row to its height.
func across(r row.Row, size int) (row.Row, int) {
	n := 0
	for i, it := range r.Items {
		switch it := it.(type) {
		case row.TurningChain:
			if it.Counts != nil {
				return r, 0
			}
			continue
		case row.Work:
			if len(it.Make) == 1 && it.Make[0].Of == row.SlipStitch && len(it.Make[0].N) == 0 && it.Space == 0 && it.At <= row.First {
				n += it.N.In(size)
				continue
			}
		case row.Chains:
			if _, skip := r.Items[min(i+1, len(r.Items)-1)].(row.Skip); n > 0 && it.N.In(size) == 1 && !skip && i+1 < len(r.Items) {
				return row.Row{Items: slices.Delete(slices.Clone(r.Items), i, i+1)}, n
			}
		}
		return r, n
	}
	return r, 0 // slip stitches alone are the row
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

// stand returns the lines of the rows from one number to another, in order; or
// the first number that no line has.
func (m *maker) stand(from, to int) (lines []numbered, missing int) {
	for from <= to {
		end, found := to, false
		for k := len(m.lines) - 1; k >= 0 && !found; k-- { // the last that has the number
			m.left--
			switch x := m.lines[k]; {
			case x.from <= from && from <= x.to:
				lines, found = append(lines, x.at(from, end)), true
			case from < x.from:
				end = min(end, x.from-1)
			}
		}
		if !found || m.left < 0 {
			return nil, from
		}
		from = lines[len(lines)-1].to + 1
	}
	return lines, 0
}

// repeat works rows again that stand before line i.
func (m *maker) repeat(i, times int) {
	l := &m.t.Lines[i]
	r := &m.results[i][m.size]
	if m.done > 0 {
		r.number, r.turn = m.done+1, m.done+m.before+1
	}
	lines, missing := m.stand(l.Again.From, l.Again.To)
	if missing > 0 {
		r.again = fmt.Sprintf("there is no row %d before it to work again", missing)
		m.known = false
		return
	}
	if first := m.from(l); first > 0 {
		m.lines = append(m.lines, numbered{first, first + l.Rows - 1, i, lines})
	}
	for k := range times {
		before, known := m.places, m.known
		for _, x := range lines {
			m.again(x, r)
		}
		if m.done > most {
			return
		}
		if m.idle(known, before) { // the other passes are like this one, or unknown
			m.done += (times - k - 1) * (l.Again.To - l.Again.From + 1)
			break
		}
	}
	if fit, number, turn := r.fit, r.number, r.turn; m.known {
		*r = m.last
		r.fit, r.number, r.turn = fit, number, turn
	}
}

// again works the rows of one line again.
func (m *maker) again(x numbered, r *result) {
	for k := x.from; k <= x.to; k++ {
		before, known := m.places, m.known
		m.once(&m.t.Lines[x.line], nil)
		if r.fit == nil {
			r.fit = m.last.fit
		}
		if m.idle(known, before) {
			m.done += x.to - k
			return
		}
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
		printed, format := 0, "this is row %d, printed %d"
		switch {
		case l.Ends != nil:
			printed, format = l.Ends[s].Row, "the last row is row %d, printed %d"
		case l.From != nil && res[s].number > 0:
			printed = l.From[s]
		default:
			return fault{}
		}
		off := printed - res[s].number
		if before := c.off[s]; off == 0 || off == before { // it is off with those before it
			c.off[s] = off
			return fault{}
		}
		c.off[s] = off
		return other(printed, res[s].number, format)
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
	r, printed := &c.results[i][size], panel.RightSide
	switch {
	case r.turn == 0:
		return fault{}
	case l.Ends != nil:
		printed = l.Ends[size].Side
	case l.Side != nil:
		printed = *l.Side
	default:
		return fault{}
	}
	base := panel.RightSide
	for k := range i {
		if s := c.t.Lines[k].Side; s != nil && c.results[k][size].turn > 0 {
			base = s.Turned(c.results[k][size].turn - 1)
			break
		}
	}
	right := base.Turned(r.turn - 1)
	if i == 0 || right == printed || !c.sided(i, size) {
		return fault{}
	}
	if l.Ends == nil && c.off[size]%2 != 0 { // right for the number printed, which is told as wrong
		return fault{}
	}
	return fault{printed.String(), right.String(), fmt.Sprintf("row %d is worked on the %s, printed %s", r.number, right, printed)}
}

// sided reports whether a side is printed before line i.
func (c *checker) sided(i, size int) bool {
	for k := range i {
		if c.t.Lines[k].Side != nil && c.results[k][size].turn > 0 {
			return true
		}
	}
	return false
}

// makes returns the numbers that a count may print for what a row makes.
func (count Count) makes(r *result) []int {
	t := r.made
	switch {
	case count.Spaces && count.Space > 0:
		return []int{r.spaces[count.Space]}
	case count.Spaces:
		return []int{t.Spaces}
	case count.Of == row.Chain:
		return []int{t.Chains}
	case count.Of != row.NoStitch:
		return []int{t.Of(count.Of)}
	}
	out := []int{t.Stitches}
	if t.Chains > 0 {
		out = append(out, t.Count())
	}
	if r.slips > 0 {
		out = append(out, t.Stitches-r.slips, t.Count()-r.slips)
	}
	return out
}

// prints reports whether a count is that of a result; it is right where that is
// unknown, or where the part is skipped.
func (count Count) prints(r *result, size int) bool {
	return !r.known || count.N[size] == 0 || slices.Contains(count.makes(r), count.N[size])
}

func (c *checker) right(i int, count Count, size int) bool {
	return count.prints(&c.results[i][size], size)
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
		r := &c.results[i][s]
		if size := r.space(); count.Space > 0 && size > 0 && size != count.Space && r.made.Spaces == count.N[s] {
			made := Count{N: grade.Run[int]{count.N[s]}, Spaces: true, Space: size}.text(c.t.Terms)
			printed := Count{N: grade.Run[int]{count.N[s]}, Spaces: true, Space: count.Space}.text(c.t.Terms)
			return fault{printed, made, "makes " + made + ", printed " + printed}
		}
		return other(count.N[s], count.makes(r)[0], "makes %d, printed %d"+c.hint(i, count, s))
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
	out := make(grade.Run[string], c.t.Sizes)
	for s := range out {
		out[s] = "unknown"
		if r := &c.results[i][s]; r.known {
			out[s] = strconv.Itoa(count.makes(r)[0])
		}
	}
	return grade.Text(out, func(s string) string { return s })
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
			if !r.known || !slices.Contains(count.makes(r), count.N[s]) {
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
		if o >= 0 && o < c.t.Sizes && c.results[i][o].known && slices.Contains(count.makes(&c.results[i][o]), n) {
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
