package work

import (
	"fmt"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/row"
)

// Unworked is where a row was split: the stitches there were left unworked, and
// what lies on either side are groups of their own.
const Unworked row.Space = -2

// Places are what stands ready to be worked into, from where the maker begins:
// 0 is a stitch, m a ch-m space, Unworked the cut between two live groups.
type Places []row.Space

// Stitches returns n stitches: none for fewer than 0, and for more than
// gauge.MaxCount one more than that, which is more than any row is worked into.
func Stitches(n int) Places { return make(Places, min(max(n, 0), gauge.MaxCount+1)) }

// Count returns stitches and chains together, each chain of a chain space
// counting as one.
func (p Places) Count() int {
	n := 0
	for _, x := range p {
		switch {
		case x == 0:
			n++
		case x > 0:
			n += int(x)
		}
	}
	return n
}

// Turned returns the places from their other end.
func (p Places) Turned() Places {
	out := make(Places, len(p))
	for i, x := range p {
		out[len(p)-1-i] = x
	}
	return out
}

// Groups returns the live groups: one, unless the row was split.
func (p Places) Groups() []Places {
	var groups []Places
	from := 0
	for i, x := range p {
		if x == Unworked {
			groups = append(groups, p[from:i:i])
			from = i + 1
		}
	}
	return append(groups, p[from:])
}

// Into works the row into places, at the start of a panel into none, and
// returns what it does and the places it makes, before the turn. Sizes are
// counted from 0.
//
// It returns a *gauge.FieldError if the row is not valid or has no such size, a
// foundation has no number, or there are more than gauge.MaxCount places, and a
// *row.FitError if the row does not fit the places.
func Into(r row.Row, p Places, size int) (Worked, Places, error) {
	if err := r.Validate(); err != nil {
		return Worked{}, nil, err
	}
	if err := sized(r, size); err != nil {
		return Worked{}, nil, err
	}
	if len(p) > gauge.MaxCount || p.Count() > gauge.MaxCount {
		return Worked{}, nil, &gauge.FieldError{Field: "Places", Got: "more than 100000", Want: "at most 100000", Err: gauge.ErrBounds}
	}
	f := family{n0: p.Count(), p: make([]place, len(p))}
	for i, x := range p {
		if x < Unworked || x == row.AnySpace || x > gauge.MaxCount {
			return Worked{}, nil, &gauge.FieldError{Field: fmt.Sprintf("Places[%d]", i), Got: fmt.Sprint(int(x)), Want: "a stitch, a chain space of known size or a cut", Err: nil}
		}
		f.p[i] = place(x)
	}
	if r.Begins() {
		if len(p) > 0 {
			return Worked{}, nil, &row.FitError{Text: r.String(), Err: row.ErrFoundation}
		}
		if n := begins(r.Items[0]); len(n) == 0 {
			return Worked{}, nil, &gauge.FieldError{Field: "Row.Items[0].Count", Got: "no number", Want: "the number of stitches or chains to begin"}
		}
	}
	st, l, err := solver{size: size, spent: new(int)}.step(new(Solution), state{family: f}, r, 0, 0)
	if err != nil {
		if fit, ok := err.(*row.FitError); ok {
			fit.Text = r.String()
		}
		return Worked{}, nil, err
	}
	last := st.family.turned()
	made := last.word(0)
	out := make(Places, len(made))
	for i, x := range made {
		out[i] = row.Space(x)
	}
	return l.worked(l.n0), out, nil
}

// sized returns a *gauge.FieldError for a size that the lists of a row do not have.
func sized(r row.Row, size int) error {
	if n := r.Sizes(); n > 1 && (size < 0 || size >= n) {
		return &gauge.FieldError{Field: "size", Got: strconv.Itoa(size), Want: fmt.Sprintf("0 to %d, the sizes of the row counted from 0", n-1), Err: gauge.ErrBounds}
	}
	return nil
}

// begins returns the number of a foundation.
func begins(it row.Item) row.Num {
	switch it := it.(type) {
	case row.Foundation:
		return it.Count
	case row.FoundationChain:
		return it.Count
	}
	return nil
}

// Sum is what a row uses and makes as a rule: Uses and Makes once, and for each
// pass of the part that goes on across what Passes says. Places are stitches and
// chain spaces; what is made counts stitches and chains.
type Sum struct {
	Uses   int    `json:"uses"`
	Makes  int    `json:"makes"`
	Passes []Pass `json:"passes"` // one for an open repeat, one for each kind of place of an `each … across`
}

// Pass is what one pass uses and makes.
type Pass struct {
	Into  row.Space `json:"into"` // of an `each … across`: the kind of place
	Uses  int       `json:"uses"`
	Makes int       `json:"makes"`
}

// SumOf returns what the row uses and makes as a rule for any count. Sizes are
// counted from 0. It returns a *gauge.FieldError if the row is not valid or has no
// such size.
func SumOf(r row.Row, size int) (Sum, error) {
	if err := r.Validate(); err != nil {
		return Sum{}, err
	}
	if err := sized(r, size); err != nil {
		return Sum{}, err
	}
	p := compile(r, size)
	s := Sum{Uses: takes(p.head) + takes(p.tail), Makes: makes(p.head) + makes(p.tail)}
	if p.foundation {
		s.Makes = none(begins(r.Items[0]), size)
	}
	if p.chain != nil {
		s.Uses += p.chain.Hook - 1
	}
	switch {
	case len(p.body) == 1 && p.body[0].alts != nil:
		for i := range p.body[0].alts {
			alt := &p.body[0].alts[i]
			s.Passes = append(s.Passes, Pass{row.Space(alt.want), 1, makes(p.body[0].alts[i : i+1])})
		}
	case len(p.body) > 0:
		s.Passes = []Pass{{0, takes(p.body), makes(p.body)}}
	}
	return s, nil
}

func makes(ops []op) int {
	n := 0
	for i := range ops {
		for _, a := range ops[i].out {
			n += int(a.n)
		}
	}
	return n
}

// String returns "uses 1 + 3n, makes 1 + 3n", or "for each st uses 1, makes 1;
// for each ch-2 sp uses 1, makes 2".
func (s Sum) String() string {
	if len(s.Passes) > 1 {
		var b strings.Builder
		if s.Uses+s.Makes > 0 {
			fmt.Fprintf(&b, "uses %d, makes %d; ", s.Uses, s.Makes)
		}
		for i, p := range s.Passes {
			if i > 0 {
				b.WriteString("; ")
			}
			fmt.Fprintf(&b, "for each %s uses %d, makes %d", p.Into, p.Uses, p.Makes)
		}
		return b.String()
	}
	term := func(once, each int) string {
		switch {
		case len(s.Passes) == 0 || each == 0:
			return fmt.Sprint(once)
		case once == 0:
			return fmt.Sprintf("%dn", each)
		}
		return fmt.Sprintf("%d + %dn", once, each)
	}
	var p Pass
	if len(s.Passes) == 1 {
		p = s.Passes[0]
	}
	return "uses " + term(s.Uses, p.Uses) + ", makes " + term(s.Makes, p.Makes)
}

// Faces works rows one after another, beginning with n stitches, and returns
// what each looks like: its stitches and chains in order, a foundation stitch as
// the stitch that it stands for. Rows that look alike from the other end have
// the same face.
//
// It returns a *gauge.FieldError if n is not 0 to gauge.MaxCount, and the errors
// of Into.
func Faces(rows []row.Row, n, size int) ([]string, error) {
	if n < 0 || n > gauge.MaxCount {
		return nil, &gauge.FieldError{Field: "n", Got: strconv.Itoa(n), Want: "0 to 100000", Err: gauge.ErrBounds}
	}
	out := make([]string, 0, len(rows))
	p := Stitches(n)
	for i, r := range rows {
		if r.Begins() {
			if i > 0 {
				return nil, &row.FitError{Row: i, Text: r.String(), Err: row.ErrFoundation}
			}
			if err := r.Validate(); err != nil {
				return nil, err
			}
			out = append(out, strings.TrimSpace(strings.Repeat(plainOf(r).String()+" ", n)))
			continue
		}
		_, made, err := Into(r, p, size)
		if err != nil {
			if fit, ok := err.(*row.FitError); ok {
				fit.Row = i
			}
			return nil, err
		}
		face, turned := bothFaces(r, p, size)
		out = append(out, min(face, turned))
		p = made.Turned()
	}
	return out, nil
}

// plainOf returns the stitch that a foundation stands for.
func plainOf(r row.Row) row.Stitch {
	switch it := r.Items[0].(type) {
	case row.Foundation:
		return it.Of.Plain()
	case row.FoundationChain:
		if w, ok := r.Items[1].(row.Work); ok && len(w.Make) > 0 {
			return w.Make[0].Of
		}
	}
	return row.NoStitch
}

// faces returns what a row that fits p looks like from either end.
func bothFaces(r row.Row, p Places, size int) (from, turned string) {
	prog := compile(r, size)
	places := make([]place, len(p))
	for i, x := range p {
		places[i] = place(x)
	}
	j := 0
	if q := takes(prog.body); q > 0 {
		j = (len(places) - takes(prog.head) - takes(prog.tail)) / q
	}
	ops := prog.laid(j)
	var w walk
	if prog.rest {
		places = places[:takes(ops)]
	}
	if w.work(ops, places, 0) != nil {
		return "", ""
	}
	var words []string
	for _, out := range w.outs {
		for _, a := range out {
			switch a.of {
			case row.NoStitch:
				words = append(words, "|")
			case row.Chain:
				words = append(words, fmt.Sprintf("ch%d", a.n))
			default:
				words = append(words, a.of.String())
			}
		}
	}
	from = strings.Join(words, " ")
	for i, k := 0, len(words)-1; i < k; i, k = i+1, k-1 {
		words[i], words[k] = words[k], words[i]
	}
	return from, strings.Join(words, " ")
}
