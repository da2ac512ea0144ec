package seam

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/notation"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/seam/internal/say"
)

// DefaultBlocking is the blocking step where the fibre is not known.
const DefaultBlocking = "Block the panels to the finished measurements before seaming, in the way the yarn's label allows, and let them dry. " +
	"Never bring steam or an iron to acrylic or another man-made fibre without trying it on the swatch: heat can ruin it for good."

// Finishing writes the finishing of a garment. The zero value is fit to use.
type Finishing struct {
	// Blocking is the step that comes first, with the cautions of the fibre;
	// empty stands for DefaultBlocking.
	Blocking string `json:"blocking,omitempty"`
	// Sewing says how the pieces were begun and are joined.
	Sewing Sewing `json:"sewing"`
	// Labels names the sizes, for what differs between sizes of odd and even
	// rows; without them they are numbered.
	Labels grade.Run[string] `json:"labels,omitempty"`
	// Centimetres come first in lengths; otherwise inches.
	Centimetres bool `json:"centimetres,omitempty"`
	// Terms are those of the pattern: they spell its words (center back, or
	// centre back) and name a stitch that sews.
	Terms row.Terms `json:"terms,omitzero"`
}

// Text is the finishing of a garment in all sizes as sentences, by the part of
// the pattern they belong to.
type Text struct {
	Blocking string   `json:"blocking"`
	Tails    []string `json:"tails"`   // what each tail sews and how long to leave it: to be read before the pieces are made
	Joining  []string `json:"joining"` // lay, pin, join, where to stop, check the stretch, fasten
	Ending   []string `json:"ending"`  // weave in, and the cautions of the finished thing
}

// Steps returns all sentences in the order of the work, the tails after the
// blocking.
func (t Text) Steps() []string {
	all := append([]string{t.Blocking}, t.Tails...)
	return append(append(all, t.Joining...), t.Ending...)
}

// Steps returns the sentences of Write, one a step. It returns the errors of
// Write.
func (f Finishing) Steps(sizes grade.Run[Garment]) ([]string, error) {
	t, err := f.Write(sizes)
	if err != nil {
		return nil, err
	}
	return t.Steps(), nil
}

// Write returns the finishing of a garment in all sizes: block, what the tails
// sew, lay, pin, join, where to stop, check the stretch, fasten, weave in. Every
// number stands for all sizes: "join 49 (50, 52) pairs". A ready garment is told
// in its own words; an app's own is told seam by seam.
//
// It returns a *gauge.FieldError if there is no size or there are more than
// grade.MaxSizes, Labels do not fit them, the terms or the sewing are not valid, and a
// *grade.SizeError if a layout is not valid or has other seams than the first.
func (f Finishing) Write(sizes grade.Run[Garment]) (Text, error) {
	if len(sizes) < 1 || len(sizes) > grade.MaxSizes {
		return Text{}, &gauge.FieldError{Field: "sizes", Got: strconv.Itoa(len(sizes)), Want: "1 to 64", Err: gauge.ErrBounds}
	}
	if len(f.Labels) != 0 && len(f.Labels) != len(sizes) {
		return Text{}, &gauge.FieldError{Field: "Labels", Got: strconv.Itoa(len(f.Labels)), Want: "none or " + strconv.Itoa(len(sizes))}
	}
	if err := f.Sewing.Validate(); err != nil {
		return Text{}, gauge.InField("Sewing", err)
	}
	if _, err := f.Terms.MarshalText(); err != nil {
		return Text{}, err
	}
	w := writer{f: f, sizes: sizes}
	var err error
	if w.seams, err = grade.Map(sizes, func(g Garment) ([]layout.Seam, error) { return g.Layout.Seams() }); err != nil {
		return Text{}, grade.NameSize(err, f.Labels)
	}
	for i := range sizes {
		if same := sameKind(sizes[0], sizes[i], w.seams[0], w.seams[i]); same != nil {
			return Text{}, grade.NameSize(&grade.SizeError{Index: i, Err: same}, f.Labels)
		}
	}
	if w.tails, err = grade.Map(sizes, func(g Garment) (Tails, error) { return PlanTails(g.Layout, f.Sewing) }); err != nil {
		return Text{}, err
	}
	t := Text{Blocking: f.blocking(), Ending: ending()}
	t.Tails = w.tailSteps()
	if f.Sewing.factor().Sign() > 0 {
		t.Tails = append([]string{w.lie()}, t.Tails...)
	}
	how := f.Sewing.Method.String()
	if f.Sewing.Method == SingleCrochet {
		how = row.SingleCrochet.Term(f.Terms)
	}
	how = "Join every seam in " + how + ", the right side facing you"
	if f.Sewing.factor().Sign() > 0 {
		how += "; another kind of seam takes another length of yarn"
	}
	t.Joining = []string{how + "."}
	switch name := sizes[0].Layout.Name; {
	case len(sizes[0].Joins) == 0:
		t.Joining = append(t.Joining, w.anyGarment()...)
	case name == "open front" || name == "closed front":
		t.Joining = append(t.Joining, w.overShoulders(name == "closed front")...)
	case name == "front and back":
		t.Joining = append(t.Joining, w.frontAndBack()...)
	case name == "cocoon":
		t.Joining = append(t.Joining, w.cocoon()...)
	case name == "poncho":
		t.Joining = append(t.Joining, w.poncho()...)
	default:
		t.Joining = append(t.Joining, w.anyGarment()...)
	}
	for _, part := range [][]string{t.Tails, t.Joining, t.Ending} {
		for i, s := range part {
			part[i] = f.Terms.Spell(s)
		}
	}
	return t, nil
}

func (f Finishing) blocking() string {
	if f.Blocking == "" {
		return f.Terms.Spell(DefaultBlocking)
	}
	return f.Blocking
}

// sameKind returns why two sizes cannot share one text.
func sameKind(a, b Garment, seamsA, seamsB []layout.Seam) error {
	names := func(g Garment, seams []layout.Seam) string {
		s := []string{g.Layout.Name}
		for _, x := range seams {
			s = append(s, x.Name)
		}
		for _, j := range g.Joins {
			s = append(s, "("+j.Asked.Name+")")
		}
		return strings.Join(s, ", ")
	}
	if x, y := names(a, seamsA), names(b, seamsB); x != y {
		return fmt.Errorf("%s, beside %s in the first size", y, x)
	}
	return nil
}

func ending() []string {
	return []string{
		"Take out every pin and every marker, and count them. Weave in all ends along the seams, each in two directions. Rest your hands between seams.",
		"Loose fronts, sleeves and hems catch fire easily: keep them away from flames and hobs.",
	}
}

// OpenFrontSteps returns the finishing of an open front from its two joins
// alone, one of each a size, in order: the steps of Finishing without what the
// tails sew. blocking is the step that comes first, with the cautions of the
// fibre; empty stands for DefaultBlocking. Words are spelled as in the US.
//
// It returns an error if there is no size, the two differ in length or in the
// edge they lie on, or a join has no pairs.
func OpenFrontSteps(centreBack, side []Join, blocking string) ([]string, error) {
	if len(centreBack) == 0 || len(centreBack) != len(side) {
		return nil, errors.New("open front steps: want one centre back and one side join a size")
	}
	w := writer{}
	for i := range side {
		if centreBack[i].Pairs < 1 || side[i].Pairs < 1 {
			return nil, errors.New("open front steps: a join without pairs")
		}
		if centreBack[i].Asked.Count != side[i].Asked.Count {
			return nil, errors.New("open front steps: centre back and side lie on panels of different length")
		}
		b, s := centreBack[i], side[i]
		b.Asked.Name, s.Asked.Name = "centre back", "side"
		w.sizes = append(w.sizes, Garment{Joins: []Join{b, s}})
	}
	steps := append(w.overShoulders(false), ending()...)
	for i, s := range steps {
		steps[i] = row.US.Spell(s)
	}
	return append([]string{Finishing{Blocking: blocking}.blocking()}, steps...), nil
}

// writer writes sentences for all sizes.
type writer struct {
	f     Finishing
	sizes grade.Run[Garment]
	seams grade.Run[[]layout.Seam]
	tails grade.Run[Tails]
}

func (g Garment) join(name string) Join {
	for _, j := range g.Joins {
		if j.Asked.Name == name {
			return j
		}
	}
	return Join{}
}

func (w writer) number(name string, f func(Join) gauge.Ratio) string {
	return grade.Text(w.sizes, func(g Garment) string { return say.Halves(f(g.join(name))) })
}

func (w writer) pairs(name string) string {
	return w.number(name, func(j Join) gauge.Ratio { return gauge.Int(j.Pairs) })
}

// join is "join 49 (50, 52) pairs of sts", or "join 1 pair of sts".
func (w writer) join(name string) string {
	one := w.pairs(name) == "1"
	return "join " + w.pairs(name) + map[bool]string{true: " pair of ", false: " pairs of "}[one] + w.word(name)
}

// of puts what is counted after a number: "1 st", "7 (8) sts".
func (w writer) of(name, number string) string {
	if number == "1" || number == "½" {
		return number + " " + strings.TrimSuffix(w.word(name), "s")
	}
	return number + " " + w.word(name)
}

// upTo is where a seam stops, counted from the hem.
func (w writer) upTo(name string) string {
	return w.number(name, func(j Join) gauge.Ratio { return gauge.Int(j.Start + j.Pairs) })
}

func (w writer) opening(name string) string {
	return w.length(func(g Garment) gauge.Measurement { return g.join(name).Opening })
}

// seam returns the seam of that name in all sizes; none where there is no such
// seam.
func (w writer) seam(name string) grade.Run[layout.Seam] {
	var run grade.Run[layout.Seam]
	for _, size := range w.seams {
		for _, s := range size {
			if s.Name == name {
				run = append(run, s)
			}
		}
	}
	return run
}

// length prints a length a size in quarter inches and half centimetres.
func (w writer) length(f func(Garment) gauge.Measurement) string {
	return lengths(w.sizes, f, w.f.Centimetres)
}

func lengths[T any](run grade.Run[T], f func(T) gauge.Measurement, metric bool) string {
	own, other := grids(metric)
	all := make(grade.Run[gauge.Measurement], len(run))
	for i, v := range run {
		all[i] = f(v)
	}
	return notation.Both(all, own, other)
}

func grids(metric bool) (own, other gauge.Grid) {
	if metric {
		return gauge.HalfCentimetre, gauge.QuarterInch
	}
	return gauge.QuarterInch, gauge.HalfCentimetre
}

func (w writer) measure(name string) string {
	return w.length(func(g Garment) gauge.Measurement { m, _ := g.Layout.Measure(name); return m })
}

// word returns what is joined: "sts" or "row ends".
func (w writer) word(name string) string {
	if w.sizes[0].join(name).Asked.RowEnds {
		return "row ends"
	}
	return "sts"
}

func (w writer) one(name string) string {
	return map[string]string{"sts": "one st to one st", "row ends": "one row end to one row end"}[w.word(name)]
}

// slit says what stays open at the hem, where any size has a slit.
func (w writer) slit() string {
	has := false
	for _, g := range w.sizes {
		has = has || g.join("side").Start > 0
	}
	if !has {
		return ""
	}
	return " Leave " + w.of("side", w.number("side", func(j Join) gauge.Ratio { return gauge.Int(j.Start) })) + ", " +
		w.length(func(g Garment) gauge.Measurement { return g.join("side").Slit }) + ", open at the hem for the slit."
}

// fold says where a piece folds.
func (w writer) fold(what, name, from string) string {
	s := what + " lies " + w.of(name, w.number(name, func(j Join) gauge.Ratio { return j.Asked.half() })) + " from " + from
	for _, g := range w.sizes {
		if g.join(name).MiddleOnFold {
			return s + "; a half means that it runs through the middle " + map[string]string{"sts": "stitch", "row ends": "row"}[w.word(name)]
		}
	}
	return s
}

const checkAgain = "Check the stretch of the seam again."

const checkStretch = "Before fastening off, pull each seam lengthwise as wearing will: it has to give as much as the fabric. If it is tighter, undo it and join more loosely."

func (w writer) overShoulders(closed bool) []string {
	sts := w.word("centre back")
	edges := "foundation edges"
	if sts == "row ends" {
		edges = "inner edges"
	}
	steps := []string{
		"Lay the two panels side by side, right sides up, with the " + edges + " together in the middle and the hems level. Pin the hems. " + w.fold("The fold at the shoulder", "side", "either hem") + ".",
		"Centre back: count " + w.of("centre back", w.upTo("centre back")) + " up from the back hem on both inner edges and place a marker at each. From the hem up, " + w.join("centre back") +
			", " + w.one("centre back") + ", and stop at the markers: " + w.opening("centre back") + " stay open below the fold for the neck.",
	}
	if closed {
		steps = append(steps, "Centre front: count "+w.of("centre front", w.upTo("centre front"))+" up from the front hem on both inner edges and place a marker at each. From the hem up, "+
			w.join("centre front")+", and stop at the markers: "+w.opening("centre front")+" stay open from the fold down for the neck, "+
			w.measure("neck round")+" all round. Try whether the head goes through before fastening off.")
	} else {
		steps[1] += " The rest of both edges stays open down the front."
	}
	return append(steps, checkStretch+" Fasten off.",
		"Fold both panels over at the shoulder, right sides out, hems level. Pin.",
		w.sides("on each panel count", "from both hems along the outer edge", "the hem up", "from the fold", checkAgain))
}

func (w writer) sides(where, from, begin, below, check string) string {
	slit := w.slit()
	begin = " From " + begin
	if slit != "" {
		begin = " From there up"
	}
	return "Sides: " + where + " " + w.of("side", w.upTo("side")) + " up " + from + " and place markers." + slit + begin + ", " + w.join("side") +
		", and stop at the markers: " + w.opening("side") + " " + below + " stay open for each armhole. " + check + " Fasten off."
}

func (w writer) frontAndBack() []string {
	steps := []string{
		"Lay front and back on each other, wrong sides together, hems and edges level. Pin.",
		"Shoulders: from each outer edge in, count " + w.of("shoulder", w.pairs("shoulder")) + " along the top of both panels and place markers. At each shoulder " + w.join("shoulder") +
			" from the outer edge in, and stop at the markers: " +
			w.of("shoulder", w.number("shoulder", func(j Join) gauge.Ratio { return j.Open.Add(j.Open) })) + ", " + w.measure("neck width") +
			", stay open in the middle for the neck. Try whether the head goes through. " + checkStretch + " Fasten off.",
	}
	if w.sizes[0].join("side").Pairs == 0 {
		return append(steps, "The sides stay open.")
	}
	steps = append(steps, w.sides("on both panels count", "from the hem along the side edges", "the hem up", "below the shoulder", checkAgain))
	sleeve, under := w.seam("left armhole"), w.seam("left underarm")
	if len(sleeve) == 0 {
		return steps
	}
	return append(steps,
		"Sleeves: pin the middle of the top edge of each sleeve to the shoulder and its corners to the markers. Join "+
			grade.Text(sleeve, func(s layout.Seam) string { return strconv.Itoa(s.Sides[1].Count) })+" "+kind(sleeve[0].Sides[1])+" of the sleeve to "+
			grade.Text(sleeve, func(s layout.Seam) string { return strconv.Itoa(s.Sides[0].Count) })+" "+kind(sleeve[0].Sides[0])+" of the armhole, "+w.plans(sleeve)+". "+checkAgain+" Fasten off.",
		"Underarms: fold each sleeve lengthwise, wrong sides together, and join "+
			grade.Text(under, func(s layout.Seam) string { return strconv.Itoa(s.Pairs()) })+" pairs of "+kind(under[0].Sides[0])+" from the sleeve end to the armhole. "+checkAgain+" Fasten off.")
}

// lie says how the pieces are looked at where corners are named.
func (w writer) lie() string {
	l := w.sizes[0].Layout
	var how []string
	same := true
	for _, p := range l.Pieces {
		same = same && p.Foundation == l.Pieces[0].Foundation
		how = append(how, "the "+p.Name+" with its foundation edge at the "+p.Foundation.String())
	}
	s := strings.Join(how, ", ")
	if same && len(how) > 1 {
		s = "each with its foundation edge at the " + l.Pieces[0].Foundation.String()
	}
	if l.Name == "open front" || l.Name == "closed front" {
		s += ", the back hems at the bottom"
	}
	also := ""
	if l.Name == "poncho" {
		also = ", in the seams too" // which name left and right edges
	}
	return "Corners are named as the pieces lie right sides up: " + s + ". They are those of a right hand; for a left hand left and right change places" + also + "."
}

// tailSteps says what every tail sews, where it hangs and how long it is to be.
// What is the same in all sizes is a run; what is not is told by size.
func (w writer) tailSteps() []string {
	var steps []string
	for t, first := range w.tails[0].Tails {
		tail := func(i int) Tail { return w.tails[i].Tails[t] }
		leave := func(i int) gauge.Measurement { return tail(i).Leave }
		name := "The first tail of the " + first.Piece
		if first.Last {
			name = "The last tail of the " + first.Piece
		}
		corners := w.alike(func(i int) string { return tail(i).Where() })
		seams := w.alike(func(i int) string { return tail(i).Seam })
		switch {
		case len(seams) == 1 && first.Seam == "":
		case len(seams) == 1:
			where := make([]string, len(corners))
			for k, c := range corners {
				where[k] = "at the " + tail(c[0]).Where() + " corner" + w.only(c)
			}
			steps = append(steps, name+", "+strings.Join(where, " or ")+", sews the "+first.Seam+": leave "+w.cut(leave)+".")
		default:
			for _, group := range w.alike(func(i int) string { return tail(i).Where() + tail(i).Seam }) {
				if at := tail(group[0]); at.Seam != "" {
					steps = append(steps, name+", at the "+at.Where()+" corner, sews the "+at.Seam+": leave "+w.each(group, leave)+".")
				}
			}
		}
	}
	for _, sm := range w.seams[0] {
		fresh := func(i int) (gauge.Measurement, bool) {
			for _, n := range w.tails[i].NewLengths {
				if n.Seam == sm.Name {
					return n.Length, true
				}
			}
			return gauge.Measurement{}, false
		}
		length := func(i int) gauge.Measurement { m, _ := fresh(i); return m }
		for _, group := range w.alike(func(i int) string { _, ok := fresh(i); return strconv.FormatBool(ok) }) {
			if _, ok := fresh(group[0]); ok {
				steps = append(steps, "The "+sm.Name+" needs a new length: "+w.each(group, length)+".")
			}
		}
	}
	rest := "All other tails"
	if w.f.Sewing.factor().Sign() == 0 {
		rest = "The seams are sewn with another yarn. All tails"
	}
	if end := w.f.Sewing.end(); end.Sign() > 0 {
		rest += ", " + w.lone(end) + ","
	}
	rest += " are woven in."
	if long, ok := w.f.Sewing.Long(); ok {
		rest += " Yarn that is pulled through frays: sew with no more than " + w.lone(long) + " at a time, and join new yarn."
	}
	return append(steps, rest)
}

// cut prints a length of yarn for all sizes.
func (w writer) cut(f func(int) gauge.Measurement) string {
	all := make(grade.Run[int], len(w.sizes))
	for i := range all {
		all[i] = i
	}
	return lengths(all, w.up(f), w.f.Centimetres)
}

// up rounds a length of yarn up in the designer's own unit: never too short.
func (w writer) up(f func(int) gauge.Measurement) func(int) gauge.Measurement {
	own, _ := grids(w.f.Centimetres)
	return func(i int) gauge.Measurement { return own.RoundUp(f(i)).Measurement() }
}

// each is cut for all sizes, or for some of them by name: a list of some would
// be read as one of all.
func (w writer) each(sizes []int, f func(int) gauge.Measurement) string {
	if len(sizes) == len(w.sizes) {
		return w.cut(f)
	}
	var texts []string
	for _, same := range w.alike(func(i int) string { return w.lone(w.up(f)(i)) }) {
		same = slices.DeleteFunc(same, func(i int) bool { return !slices.Contains(sizes, i) })
		if len(same) > 0 {
			texts = append(texts, w.lone(w.up(f)(same[0]))+" in "+w.named(same))
		}
	}
	return strings.Join(texts, "; ")
}

func sentence(s string) string {
	first, n := utf8.DecodeRuneInString(s)
	return string(unicode.ToUpper(first)) + s[n:] + "."
}

// lone prints one length for all sizes.
func (w writer) lone(m gauge.Measurement) string {
	return lengths(grade.Run[gauge.Measurement]{m}, func(m gauge.Measurement) gauge.Measurement { return m }, w.f.Centimetres)
}

// alike gathers the sizes that have the same key, in order.
func (w writer) alike(key func(int) string) [][]int {
	var groups [][]int
	at := map[string]int{}
	for i := range w.sizes {
		k, ok := at[key(i)]
		if !ok {
			k = len(groups)
			at[key(i)] = k
			groups = append(groups, nil)
		}
		groups[k] = append(groups[k], i)
	}
	return groups
}

// only names the sizes of a group, where it is not all of them.
func (w writer) only(sizes []int) string {
	if len(sizes) == len(w.sizes) {
		return ""
	}
	return " (" + w.named(sizes) + ")"
}

// named is "size M–L" or "sizes M–L, XL–2X".
func (w writer) named(sizes []int) string {
	names := make([]string, len(sizes))
	for k, i := range sizes {
		names[k] = w.label(i)
	}
	if len(names) == 1 {
		return "size " + names[0]
	}
	return "sizes " + strings.Join(names, ", ")
}

func (w writer) label(i int) string {
	if len(w.f.Labels) > 0 {
		return w.f.Labels[i]
	}
	return "number " + strconv.Itoa(i+1)
}

// plans says how the two sides of a seam meet, for all sizes: one to one, or
// what is passed over on the longer side. The exact place of each is the plan of
// MatchSeam, which would fill a page here.
func (w writer) plans(seams grade.Run[layout.Seam]) string {
	over := make(grade.Run[int], len(seams))
	from := make(grade.Run[int], len(seams))
	alike, steep := true, false
	for i, s := range seams {
		m := MatchSeam(s)
		over[i], from[i] = m.From-m.Take, m.From
		alike, steep = alike && over[i] == 0, steep || over[i] > m.Take
	}
	if alike {
		return "one to one"
	}
	// How many pairs lie before, between and after those that are passed over; or,
	// where more are passed over than joined, how many after each pair.
	every := make(grade.Run[int], len(seams))
	for i := range every {
		every[i] = i
	}
	between := grade.Text(every, func(i int) string {
		a, b := from[i]-over[i], over[i]+1
		if a < b {
			b--
		}
		if steep {
			a, b = over[i], from[i]-over[i]
		}
		switch {
		case over[i] == 0:
			return "–"
		case a%b == 0:
			return strconv.Itoa(a / b)
		}
		return fmt.Sprintf("%d–%d", a/b, a/b+1)
	})
	spread := "one after every " + between + " pairs"
	switch {
	case steep:
		spread = between + " after each pair"
	case between == "1":
		spread = "one after every pair"
	}
	return fmt.Sprintf("one to one, and on the side that has more pass over %s of the %s, spread evenly: %s", grade.Numbers(over), grade.Numbers(from), spread)
}

func kind(s layout.Side) string {
	if s.RowEnds {
		return "row ends"
	}
	return "sts"
}

func (w writer) cocoon() []string {
	return []string{
		"Lay the panel flat, right side down, and fold it at the middle so that the open edges meet, right side out. " + w.fold("The fold", "side", "either of them") + ". Pin.",
		w.sides("at each side count", "from the open edges towards the fold", "the open edges in", "from the fold", checkStretch),
		"The open edges, " + w.measure("body opening") + " all round, frame neck, fronts and hips.",
	}
}

func (w writer) poncho() []string {
	s := w.seam("first seam")
	down := w.of("seam", w.pairs("seam"))
	return []string{
		"Lay the second panel flat, right side up, and the first to the right of it, right side up and turned so that its bottom end lies along the right edge of the second, the bottom left corner of the first level with the top corner of the second. Pin.",
		"First seam: count " + down + " down the right edge of the second panel from its top corner and place a marker. Join the whole bottom end of the first panel, " +
			grade.Text(s, func(s layout.Seam) string { return strconv.Itoa(s.Sides[0].Count) }) + " " + kind(s[0].Sides[0]) + ", to this stretch, " + w.plans(s) + ".",
		"Second seam: count " + down + " down the right edge of the first panel from its top corner and place a marker. Bring the bottom end of the second panel round to this stretch, its bottom left corner to the top corner of the first panel, without twisting, and join it in the same way. " +
			"What is left of the two right edges is the neck, " + w.measure("neck round") + " all round. Try whether the head goes through. " + checkStretch + " Fasten off.",
	}
}

// anyGarment tells an app's own layout seam by seam.
func (w writer) anyGarment() []string {
	steps := []string{"Lay the pieces flat, right sides up, as in the schematic. Pin."}
	for i, s := range w.seams[0] {
		run := make(grade.Run[layout.Seam], len(w.seams))
		for k, size := range w.seams {
			run[k] = size[i]
		}
		text := s.Name + ": join " + grade.Text(run, func(s layout.Seam) string { return strconv.Itoa(s.Pairs()) }) + " pairs, " +
			lengths(run, layout.Seam.Length, w.f.Centimetres)
		steps = append(steps, sentence(text+", "+w.plans(run)))
	}
	return append(steps, checkStretch+" Fasten off.")
}
