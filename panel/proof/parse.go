package proof

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/notation"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/row"
)

// maxText is how many bytes of instructions are read: a line may have
// text.Limit of them.
const maxText = 100 * text.Limit

// Parse reads instructions as they are printed, one to a line; empty lines are
// passed over. It takes what panel.Instructions prints, and the usual ways around
// it: `Row 1 (RS): …`, `Rows 5–7: …`, `Row 20 (25, 30): …`, `Next row: …`, counts
// after a dash, in brackets or as a last sentence, `Rep Rows 5–9 3 (4, 5) more
// times`, `Work Rows 5–9 a total of 0 (1, 2) times`, `Ch 66 (70)` on a line of its
// own before the first row.
//
// It returns a *row.SyntaxError with the line and column of the whole text if a
// line is not of these forms or a row can't be read, and a *gauge.FieldError if
// lists of sizes differ in length.
func Parse(s string, terms row.Terms) (Text, error) {
	if len(s) > maxText {
		return Text{}, &row.SyntaxError{Line: 1, Col: 1, Read: "more than 1000000 characters", Want: "a shorter text", Err: gauge.ErrBounds}
	}
	t := Text{Terms: terms, Sizes: 1}
	chain := "" // a foundation chain that waits for its row
	for i, printed := range strings.Split(s, "\n") {
		p := &reader{terms: terms, line: i + 1, all: printed}
		l, err := p.read(&chain)
		if err != nil {
			return Text{}, err
		}
		if l == nil {
			continue
		}
		t.Lines = append(t.Lines, *l)
	}
	if chain != "" {
		return Text{}, &row.SyntaxError{Line: 1, Col: 1, Text: s, Want: "a row after the foundation chain"}
	}
	if err := t.size(); err != nil {
		return Text{}, err
	}
	return t, nil
}

// size finds how many sizes the text has and gives every list that many.
func (t *Text) size() error {
	lists := func(f func(name string, r *grade.Run[int])) {
		for i := range t.Lines {
			l := &t.Lines[i]
			name := fmt.Sprintf("line %d", l.Place)
			f(name, &l.From)
			if l.Again != nil {
				f(name, &l.Again.Times)
			}
			for k := range l.Count {
				f(name, &l.Count[k].N)
			}
		}
	}
	lists(func(_ string, r *grade.Run[int]) { t.Sizes = max(t.Sizes, len(*r)) })
	for _, l := range t.Lines {
		t.Sizes = max(t.Sizes, l.Row.Sizes(), len(l.Ends))
	}
	var err error
	lists(func(name string, r *grade.Run[int]) {
		if *r == nil || err != nil {
			return
		}
		var all grade.Run[int]
		if all, err = r.For(t.Sizes); err != nil {
			err = gauge.InField(name, err)
			return
		}
		*r = all
	})
	for i, l := range t.Lines {
		if n := l.Row.Sizes(); n > 1 && n != t.Sizes && err == nil {
			err = &gauge.FieldError{Field: fmt.Sprintf("line %d", l.Place), Got: fmt.Sprintf("%d sizes", n), Want: fmt.Sprintf("%d sizes, as elsewhere", t.Sizes)}
		}
		if l.Ends != nil && err == nil {
			if t.Lines[i].Ends, err = l.Ends.For(t.Sizes); err != nil {
				err = gauge.InField(fmt.Sprintf("line %d", l.Place), err)
			}
		}
	}
	if err != nil {
		*t = Text{}
	}
	return err
}

// reader reads one line.
type reader struct {
	terms row.Terms
	line  int
	all   string
}

// fail reports what stands at a byte of the line.
func (p *reader) fail(at int, read, want string) error {
	return &row.SyntaxError{Line: p.line, Col: len([]rune(p.all[:at])) + 1, Text: p.all, Read: strings.TrimSpace(read), Want: want}
}

// word cuts one of the words from the front of s, whatever its case; a word ends
// where no letter follows.
func word(s string, words ...string) (rest string, ok bool) {
	s = strings.TrimLeft(s, " \t")
	for _, w := range words {
		if len(s) < len(w) || !strings.EqualFold(s[:len(w)], w) {
			continue
		}
		if len(s) > len(w) && 'a' <= s[len(w)]|0x20 && s[len(w)]|0x20 <= 'z' {
			continue
		}
		return strings.TrimLeft(s[len(w):], " \t"), true
	}
	return s, false
}

// numbers cuts a list of numbers from the front of s: `163 (166, 169)`.
func numbers(s string) (list, rest string) {
	s = strings.TrimLeft(s, " \t")
	n := 0
	for n < len(s) && strings.IndexByte("0123456789 ,:()[]", s[n]) >= 0 {
		n++
	}
	return strings.TrimSpace(s[:n]), s[n:]
}

func (p *reader) read(chain *string) (*Line, error) {
	if len(p.all) > text.Limit {
		return nil, p.fail(0, "more than 10000 characters", "a shorter line")
	}
	body := strings.TrimRight(p.all, " \t\r")
	at := len(body) - len(strings.TrimLeft(body, " \t"))
	if at == len(body) {
		return nil, nil
	}
	l := &Line{Place: p.line, Rows: 1}
	if i := strings.IndexByte(body[at:], ':'); i > 0 {
		label := body[at : at+i]
		if rest, ok := word(label, "next row", "last row", "next", "rows", "row", "rnds", "rnd", "foundation row", "foundation", "setup row"); ok && !strings.ContainsAny(label, "*;") {
			l.Label = label
			if err := p.label(l, at+len(label)-len(rest), rest); err != nil {
				return nil, err
			}
			at += i + 1
			for at < len(body) && body[at] == ' ' {
				at++
			}
		}
	}
	end, err := p.counts(l, at, body)
	if err != nil {
		return nil, err
	}
	what := strings.TrimRight(strings.TrimSpace(body[at:end]), ".")
	if rest, ok := again(what); ok {
		return l, p.again(l, at, rest)
	}
	if rest, ok := word(what, "the last row, row"); ok {
		return l, p.ends(l, at, rest)
	}
	if rest, ok := word(what, "ch", "chain"); ok {
		if n, rest := numbers(rest); n != "" && rest == "" {
			*chain = what + ", "
			return nil, nil
		}
	}
	r, named, err := row.ParseNamed(*chain+what, p.terms)
	var syntax *row.SyntaxError
	if errors.As(err, &syntax) {
		e := *syntax
		e.Line, e.Text = p.line, p.all
		if syntax.Line == 1 {
			e.Col = max(1, syntax.Col-len(*chain)+len([]rune(p.all[:at])))
		}
		return nil, &e
	}
	if err != nil {
		return nil, err
	}
	*chain = ""
	l.Row, l.Named = r, named
	return l, nil
}

// label reads the numbers and the side of a label: ` 20 (25, 30)`, `s 5–7`, ` 1
// (RS)`.
func (p *reader) label(l *Line, at int, s string) error {
	s = strings.TrimSpace(s)
	_, isNext := word(l.Label, "next")
	for i, sd := range []panel.Side{panel.RightSide, panel.WrongSide} {
		for _, name := range [][2]string{{"RS", "WS"}, {"right side", "wrong side"}} {
			k := indexFold(s, name[i])
			if k < 0 {
				continue
			}
			l.Side = &sd
			s = strings.TrimRight(s[:k], " ,([") + strings.TrimLeft(strings.TrimPrefix(s[k+len(name[i]):], " facing"), ")]")
		}
	}
	s = strings.TrimSpace(s)
	if i := strings.LastIndexAny(s, "(["); i >= 0 && !strings.ContainsAny(s[i:], "0123456789") { // "(dec row)"
		s = strings.TrimSpace(s[:i])
	}
	if list, rest := numbers(s); isNext && list != "" && rest != "" { // "Next 5 rows"
		n, err := strconv.Atoi(list)
		if rest, ok := word(rest, "rows", "rnds"); err != nil || !ok || rest != "" || n < 1 || n > gauge.MaxCount {
			return p.fail(at, s, "a number of rows, like Next 5 rows")
		}
		l.Rows = n
		return nil
	}
	if s == "" {
		return nil
	}
	f := func(v string) (span, error) {
		from, to, two := strings.Cut(v, "~")
		a, err := strconv.Atoi(strings.TrimSpace(from))
		b := a
		if two && err == nil {
			b, err = strconv.Atoi(strings.TrimSpace(to))
		}
		if err != nil || a < 1 || b < a || b > gauge.MaxCount {
			return span{}, fmt.Errorf("want a row number like 5 or rows like 5–7")
		}
		return span{a, b}, nil
	}
	// a dash here is a span of rows, not the mark of a list like 10-12-14
	spans, err := notation.Read(strings.NewReplacer("-", "~", "–", "~", "—", "~").Replace(s), 0, f)
	if err != nil || len(spans) == 0 {
		return p.fail(at, s, "a row number like 5, rows like 5–7, or one for each size")
	}
	for _, x := range spans {
		if x.to-x.from != spans[0].to-spans[0].from {
			return p.fail(at, s, "as many rows in every size")
		}
		l.From = append(l.From, x.from)
	}
	l.Rows = spans[0].to - spans[0].from + 1
	return nil
}

type span struct{ from, to int }

// indexFold returns where a word stands in s, whatever the case; -1 for nowhere.
func indexFold(s, part string) int {
	letter := func(i int) bool { return i >= 0 && i < len(s) && 'a' <= s[i]|0x20 && s[i]|0x20 <= 'z' }
	for i := 0; i+len(part) <= len(s); i++ {
		if strings.EqualFold(s[i:i+len(part)], part) && !letter(i-1) && !letter(i+len(part)) {
			return i
		}
	}
	return -1
}

// counts reads what is printed at the end of a row, and returns where the row
// ends. A dash, a bracket or a last sentence sets it off.
func (p *reader) counts(l *Line, at int, body string) (int, error) {
	cut := func(i, skip int) (int, error) {
		tail := strings.Trim(body[i+skip:], " .")
		if skip == 0 {
			tail = strings.TrimSpace(tail[1 : len(tail)-1])
		}
		var ok bool
		if l.Count, ok = p.list(tail); !ok {
			return 0, p.fail(i+skip, body[i+skip:], "counts like 163 (166) sts or 55 dc, 54 ch-2 sps")
		}
		return i, nil
	}
	for _, dash := range []string{"— ", " – ", " - "} {
		if i := strings.LastIndex(body[at:], dash); i >= 0 {
			return cut(at+i, len(dash))
		}
	}
	trimmed := strings.TrimRight(body, " .")
	if n := len(trimmed); n > at && (trimmed[n-1] == ')' || trimmed[n-1] == ']') {
		if i := opening(trimmed); i > at {
			if list, ok := p.list(strings.TrimSpace(trimmed[i+1 : n-1])); ok {
				l.Count = list
				return i, nil
			}
		}
	}
	if i := strings.LastIndex(trimmed, ". "); i > at {
		if list, ok := p.list(strings.TrimSpace(trimmed[i+1:])); ok {
			l.Count = list
			return i, nil
		}
	}
	return len(body), nil
}

// opening returns where the bracket that closes at the end of s opens.
func opening(s string) int {
	depth := 0
	for i := len(s) - 1; i >= 0; i-- {
		switch s[i] {
		case ')', ']':
			depth++
		case '(', '[':
			if depth--; depth == 0 {
				return i
			}
		}
	}
	return -1
}

// list reads counts with their nouns, separated by commas outside brackets, or by
// and.
func (p *reader) list(s string) ([]Count, bool) {
	var out []Count
	depth, from := 0, 0
	s = strings.ReplaceAll(strings.ReplaceAll(s, ", and ", ", "), " and ", ", ")
	for i := 0; i <= len(s); i++ {
		switch {
		case i == len(s) || s[i] == ',' && depth == 0:
			c, ok := p.count(strings.TrimSpace(s[from:i]))
			if !ok {
				return nil, false
			}
			out = append(out, c)
			from = i + 1
		case s[i] == '(' || s[i] == '[':
			depth++
		case s[i] == ')' || s[i] == ']':
			depth--
		}
	}
	return out, true
}

// count reads `163 (166) sts`, `54 ch-2 sps`, `55 dc`.
func (p *reader) count(s string) (Count, bool) {
	list, noun := numbers(s)
	n, err := notation.ReadNumbers(list, 0)
	if list == "" || err != nil {
		return Count{}, false
	}
	c := Count{N: n}
	noun = strings.TrimSuffix(strings.ToLower(strings.TrimSpace(noun)), " total")
	switch noun {
	case "st", "sts", "stitch", "stitches":
		return c, true
	case "ch-sp", "ch-sps", "ch sp", "ch sps", "ch-spaces", "ch spaces", "chain spaces":
		c.Spaces, c.Space = true, row.AnySpace
		return c, true
	}
	if rest, ok := strings.CutPrefix(noun, "ch-"); ok {
		size, word, _ := strings.Cut(rest, " ")
		k, err := strconv.Atoi(size)
		if err != nil || k < 1 || k > gauge.MaxCount || strings.TrimSuffix(word, "s") != "sp" && strings.TrimSuffix(word, "s") != "space" {
			return Count{}, false
		}
		c.Spaces, c.Space = true, row.Space(k)
		return c, true
	}
	st, err := row.ParseStitch(noun, p.terms)
	c.Of = st
	return c, err == nil
}

// again returns what follows `Rep Rows` or `Work Rows`, or `As Rows` after a label.
func again(s string) (rest string, ok bool) {
	if rest, ok = word(s, "rep", "repeat", "work as", "work", "same as", "as"); !ok {
		return s, false
	}
	rest, ok = word(rest, "rows", "row", "rnds", "rnd")
	return rest, ok && rest != "" && '0' <= rest[0] && rest[0] <= '9'
}

// again reads on after `Rep Rows`: `5–9 3 (4, 5) more times`.
func (p *reader) again(l *Line, at int, s string) error {
	from, to, rest := rowSpan(s)
	if from < 1 || to < from {
		return p.fail(at, s, "rows that are there, the first before the last")
	}
	l.Again = &Again{From: from, To: to}
	rows := to - from + 1
	if l.Label != "" && rest == "" && l.Rows%rows == 0 { // Rows 4–11: Rep Rows 2–3
		l.Again.Times = grade.Run[int]{l.Rows / rows}
		return nil
	}
	if l.Label != "" && rest == "" { // Rows 4–140: Rep Rows 2 and 3
		return p.fail(at, s, fmt.Sprintf("a label of whole repeats: it has %d rows, and these are %d", l.Rows, rows))
	}
	times, total, want := timesOf(rest)
	if want != "" {
		return p.fail(at, s, want)
	}
	l.Again.Times, l.Again.Total = times, total
	if l.Label != "" && (total || len(times) > 1 || times[0]*rows != l.Rows) {
		return p.fail(at, s, fmt.Sprintf("rows and times that make up the %d of the label", l.Rows))
	}
	return nil
}

// rowSpan cuts `5–9`, `5 and 6` or `5` from the front of s; from is 0 where there
// is no such thing.
func rowSpan(s string) (from, to int, rest string) {
	digits := func(s string) (int, string) {
		n := 0
		for n < len(s) && '0' <= s[n] && s[n] <= '9' {
			n++
		}
		k, err := strconv.Atoi(s[:n])
		if err != nil || k > gauge.MaxCount {
			return 0, s
		}
		return k, strings.TrimLeft(s[n:], " ")
	}
	from, rest = digits(s)
	to = from
	for _, dash := range []string{"–", "—", "-", "to ", "and ", "& "} {
		more, ok := strings.CutPrefix(rest, dash)
		if !ok {
			continue
		}
		to, rest = digits(strings.TrimLeft(more, " "))
		if (dash == "and " || dash == "& ") && to != from+1 { // not those between them
			return 0, 0, rest
		}
		break
	}
	return from, to, strings.TrimLeft(rest, ", ")
}

// timesOf reads `3 (4, 5) more times`, `twice more`, `a total of 3 times`; want
// says what it wants where it can't.
func timesOf(s string) (times grade.Run[int], total bool, want string) {
	for i, w := range []string{"once", "twice"} {
		if more, ok := word(s, w); ok {
			if left, ok := word(more, "more"); !ok || left != "" {
				return nil, false, w + " more"
			}
			return grade.Run[int]{i + 1}, false, ""
		}
	}
	rest, total := word(s, "a total of")
	list, rest := numbers(rest)
	for i, w := range [...]string{"two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
		"eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty"} {
		if more, ok := word(rest, w); ok && list == "" {
			list, rest = strconv.Itoa(i+2), more
		}
	}
	times, err := notation.ReadNumbers(list, 0)
	if list == "" || err != nil {
		return nil, false, "a number of times, or one for each size"
	}
	rest, _, _ = strings.Cut(rest, ";")
	rest, more := word(rest, "more times", "more time", "times more", "time more")
	if !more {
		rest, _ = word(rest, "times", "time")
	}
	if rest != "" || more == total {
		return nil, false, "3 more times, or a total of 3 times"
	}
	return times, total, ""
}

// ends reads on after `The last row, Row`: `20 (25), is worked on WS (RS)`.
func (p *reader) ends(l *Line, at int, s string) error {
	last, on, ok := strings.Cut(s, ", is worked on ")
	if !ok {
		return p.fail(at, s, "the last row, its number and its side")
	}
	rows, err := notation.ReadNumbers(last, 0)
	if err != nil {
		return p.fail(at, last, "the number of the last row, or one for each size")
	}
	sides, err := notation.Read(on, 0, func(s string) (panel.Side, error) {
		switch s {
		case "RS":
			return panel.RightSide, nil
		case "WS":
			return panel.WrongSide, nil
		}
		return 0, fmt.Errorf("want RS or WS")
	})
	if err != nil {
		return p.fail(at, on, "RS or WS, or one for each size")
	}
	n := max(len(rows), len(sides))
	r, err := rows.For(n)
	if err != nil {
		return p.fail(at, last, "as many rows as sides")
	}
	faces, err := sides.For(n)
	if err != nil {
		return p.fail(at, on, "as many sides as rows")
	}
	l.Ends = make(grade.Run[End], n)
	for i := range n {
		l.Ends[i] = End{r[i], faces[i]}
	}
	l.Rows = 0
	return nil
}
