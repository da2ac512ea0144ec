package schematic

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/notation"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/panel/row"
)

// Options says how a schematic is labelled. The zero value is fit to use.
type Options struct {
	Title       string `json:"title,omitempty"`       // empty stands for the name of the layout
	Centimetres bool   `json:"centimetres,omitempty"` // come first; otherwise inches
	// Terms spell the words of the drawing: center back, or centre back. The
	// title stays as it is.
	Terms    row.Terms `json:"terms,omitzero"`
	KeyApart bool      `json:"key_apart,omitempty"` // leaves title and key out of the drawing, for a page that sets All.Key as text
}

// Draw returns the schematic of one size. It returns the error of
// layout.Layout.Validate.
func Draw(l layout.Layout, o Options) ([]byte, error) {
	return All{Sizes: grade.Run[layout.Layout]{l}, Options: o}.Draw()
}

// All is one drawing for all sizes: the shape of one of them, and a key that
// holds every number as a run.
type All struct {
	Sizes   grade.Run[layout.Layout] `json:"sizes"`            // 1 to grade.MaxSizes, of the same pieces, seams and openings
	Labels  grade.Run[string]        `json:"labels,omitempty"` // the names of the sizes; none, or one each
	Shape   int                      `json:"shape"`            // index of the size whose shape is drawn
	Options Options                  `json:"options"`
}

// Draw returns the schematic.
//
// It returns a *gauge.FieldError if there is no size or there are too many,
// Labels do not fit, Shape is none of them or a text is too long, and a *grade.SizeError if a layout
// is not valid or is not made of the same parts as the first.
func (a All) Draw() ([]byte, error) {
	if err := a.check(); err != nil {
		return nil, err
	}
	k := newKey(a)
	return page(a, k, arrange(a.Sizes[a.Shape], k)), nil
}

// KeyLine is a line of the key: the number of a piece or a letter of the
// drawing, and what it stands for.
type KeyLine struct {
	Sign string `json:"sign"`
	Text string `json:"text"`
}

// Key returns the key as text, the pieces first, for a page that sets it beside
// a drawing with KeyApart. Its errors are those of Draw.
func (a All) Key() ([]KeyLine, error) {
	if err := a.check(); err != nil {
		return nil, err
	}
	k := newKey(a)
	return append(k.pieces(), k.entries...), nil
}

// check reports the first thing that is wrong.
func (a All) check() error {
	if len(a.Sizes) < 1 || len(a.Sizes) > grade.MaxSizes {
		return &gauge.FieldError{Field: "Sizes", Got: strconv.Itoa(len(a.Sizes)), Want: "1 to 64", Err: gauge.ErrBounds}
	}
	if len(a.Labels) != 0 && len(a.Labels) != len(a.Sizes) {
		return &gauge.FieldError{Field: "Labels", Got: strconv.Itoa(len(a.Labels)), Want: "none or " + strconv.Itoa(len(a.Sizes))}
	}
	if a.Shape < 0 || a.Shape >= len(a.Sizes) {
		return &gauge.FieldError{Field: "Shape", Got: strconv.Itoa(a.Shape), Want: "0 to " + strconv.Itoa(len(a.Sizes)-1)}
	}
	for _, s := range append([]string{a.Options.Title}, a.Labels...) {
		if len(s) > text.Limit {
			return &gauge.FieldError{Field: "Title or Labels", Got: text.Quote(s), Want: "at most 10000 bytes", Err: gauge.ErrBounds}
		}
	}
	if _, err := grade.Map(a.Sizes, func(l layout.Layout) (int, error) {
		if err := l.Validate(); err != nil {
			return 0, err
		}
		return 0, sameParts(a.Sizes[0], l)
	}); err != nil {
		if len(a.Sizes) == 1 {
			return err.(*grade.SizeError).Err
		}
		return grade.NameSize(err, a.Labels)
	}
	return nil
}

// sameParts returns why two sizes cannot share a drawing.
func sameParts(a, b layout.Layout) error {
	x, y := parts(a), parts(b)
	for i := range min(len(x), len(y)) {
		if x[i] != y[i] {
			return fmt.Errorf("%s, where the first size has %s", y[i], x[i])
		}
	}
	if len(x) != len(y) {
		return fmt.Errorf("%d parts, where the first size has %d", len(y), len(x))
	}
	return nil
}

func parts(l layout.Layout) []string {
	var all []string
	for _, p := range l.Pieces {
		all = append(all, fmt.Sprintf("piece %q with its foundation at the %v", p.Name, p.Foundation))
		for at := layout.Bottom; at <= layout.Right; at++ {
			for _, s := range p.Stretches(at) {
				all = append(all, fmt.Sprintf("%v %q at the %v of %s", s.Kind, s.Name, at, p.Name))
			}
		}
		for _, f := range p.Folds {
			all = append(all, fmt.Sprintf("fold %q of %s", f.Name, p.Name))
		}
	}
	for _, m := range l.Measures {
		all = append(all, "measure "+m.Name)
	}
	return all
}

// key gives letters to lengths: alike ones share a letter.
type key struct {
	all     All
	entries []KeyLine
	letters map[string]string // by what the entry is
	signs   []signs           // by piece
}

// signs are what stands around a piece.
type signs struct {
	edges         [4][]string // letters of the stretches, empty for one without a name
	width, height []string    // at the dimension lines: lengths, a line each, or one letter
}

func newKey(a All) *key {
	k := &key{all: a, letters: map[string]string{}}
	for i, p := range a.Sizes[0].Pieces {
		var s signs
		for at := layout.Bottom; at <= layout.Right; at++ {
			for n := range p.Stretches(at) {
				s.edges[at] = append(s.edges[at], k.stretch(i, at, n))
			}
		}
		s.width, s.height = k.extent(i, layout.Bottom), k.extent(i, layout.Left)
		k.signs = append(k.signs, s)
	}
	return k
}

// letter returns the letter of an entry, a new one where there is none yet.
func (k *key) letter(what string) string {
	if l, ok := k.letters[what]; ok {
		return l
	}
	n := len(k.entries)
	l := string(rune('A' + n%26))
	if n >= 26 {
		l += strconv.Itoa(n/26 + 1)
	}
	k.letters[what] = l
	k.entries = append(k.entries, KeyLine{l, k.spell(what)})
	return l
}

func (k *key) spell(s string) string { return k.all.Options.Terms.Spell(s) }

// stretch returns the letter of a stretch, or nothing for one without a name.
func (k *key) stretch(piece int, at layout.Place, i int) string {
	s := k.all.Sizes[0].Pieces[piece].Stretches(at)[i]
	if s.Name == "" {
		return ""
	}
	word := "sts"
	if k.all.Sizes[0].Pieces[piece].RowEnds(at) {
		word = "row ends"
	}
	counts := grade.Text(k.all.Sizes, func(l layout.Layout) string { return strconv.Itoa(l.Pieces[piece].Stretches(at)[i].Count) })
	if counts == "1" {
		word = strings.TrimSuffix(word, "s")
	}
	what := "open"
	if s.Kind != layout.Open {
		what = "joined"
	}
	length := k.lengths(func(l layout.Layout) gauge.Measurement {
		p := l.Pieces[piece]
		m, _ := p.Over(at).Measure(gauge.Int(p.Stretches(at)[i].Count)) // the layout is valid
		return m
	})
	return k.letter(k.name(s) + ", " + what + ": " + counts + " " + word + ", " + length)
}

// extent returns what stands at the dimension line of the width or height of a
// piece: the lengths of one size, in a line each, or a letter for a run.
func (k *key) extent(piece int, at layout.Place) []string {
	whole := func(l layout.Layout) gauge.Measurement {
		p := l.Pieces[piece]
		m, _ := p.Over(at).Measure(gauge.Int(p.Count(at))) // the layout is valid
		return m
	}
	if len(k.all.Sizes) == 1 {
		m := whole(k.all.Sizes[0])
		in, cm := gauge.QuarterInch.Text(m), gauge.HalfCentimetre.Text(m)
		if k.all.Options.Centimetres {
			in, cm = cm, in
		}
		return []string{in, cm}
	}
	word := "height"
	if at == layout.Bottom {
		word = "width"
	}
	return []string{k.letter("whole " + word + ": " + k.lengths(whole))}
}

// name takes left and right away from what stays open: both sides of a garment
// share a letter where they are alike. They stay for what is joined, since what
// bears the same letter meets, and for what lies on several pieces.
func (k *key) name(s layout.Stretch) string {
	on, name := 0, s.Name
	for _, p := range k.all.Sizes[0].Pieces {
		for at := layout.Bottom; at <= layout.Right; at++ {
			if slices.ContainsFunc(p.Stretches(at), func(s layout.Stretch) bool { return s.Name == name }) {
				on++
				break
			}
		}
	}
	if on > 1 || s.Kind != layout.Open {
		return name
	}
	for _, which := range []string{"left ", "right "} {
		if rest, ok := strings.CutPrefix(name, which); ok {
			return rest
		}
	}
	return name
}

// lengths prints a length of every size in both units.
func (k *key) lengths(f func(layout.Layout) gauge.Measurement) string {
	all := make(grade.Run[gauge.Measurement], len(k.all.Sizes))
	for i, l := range k.all.Sizes {
		all[i] = f(l)
	}
	own, other := gauge.QuarterInch, gauge.HalfCentimetre
	if k.all.Options.Centimetres {
		own, other = other, own
	}
	// A unit stays on the line of its number.
	return strings.NewReplacer(" in", "\u00a0in", " cm", "\u00a0cm").Replace(notation.Both(all, own, other))
}

// pieces returns a line for each piece: "1 left panel: 163 (171) sts, 27 rows".
func (k *key) pieces() []KeyLine {
	var out []KeyLine
	for i, p := range k.all.Sizes[0].Pieces {
		sts := grade.Text(k.all.Sizes, func(l layout.Layout) string { return strconv.Itoa(l.Pieces[i].Stitches) })
		rows := grade.Text(k.all.Sizes, func(l layout.Layout) string { return strconv.Itoa(l.Pieces[i].Rows) })
		out = append(out, KeyLine{strconv.Itoa(i + 1), k.spell(p.Name) + ": " + sts + " sts, " + rows + " rows"})
	}
	return out
}

// measures returns a line for each finished measure.
func (k *key) measures() []string {
	var out []string
	for i, m := range k.all.Sizes[0].Measures {
		out = append(out, k.spell(m.Name)+": "+k.lengths(func(l layout.Layout) gauge.Measurement { return l.Measures[i].Length }))
	}
	return out
}

// title returns the heading, and a line that says which sizes are shown.
func (a All) title() (title, sizes string) {
	title = a.Options.Title
	if title == "" {
		title = a.Sizes[0].Name
	}
	if title == "" {
		title = "schematic"
	}
	first, n := utf8.DecodeRuneInString(title)
	title = string(unicode.ToUpper(first)) + title[n:]
	if len(a.Labels) == 0 {
		return title, ""
	}
	sizes = "size " + a.Labels[0]
	if len(a.Labels) > 1 {
		sizes = "sizes " + grade.Text(a.Labels, func(s string) string { return s }) + "; drawn: " + a.Labels[a.Shape]
	}
	return title, sizes
}
