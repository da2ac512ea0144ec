package main

import (
	"fmt"
	"slices"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/check"
	"github.com/shopspring/decimal"
)

// relation is a printed length that a count must make at the gauge.
type relation struct {
	line    line
	name    string
	section string // the heading it stands under
	what    string // the count in words: "78 sts", or nothing where it is the text's own arithmetic
	sizes   []int
	kind    kind
	worked  bool // at the gauge on the hook
	counts  []gauge.Ratio
	lists   []grade.Run[gauge.Length] // as printed, the same in one unit or two
	exact   bool                      // every list is rounded from the exact length, in quarters and halves
	step    int                       // of the legal counts, where lengths need not be exact; 0 stands for 1
	edge    int                       // stitches of the counts that may go into the seams; 0 for none
	alone   bool                      // counts and lengths are lists as printed, which may stand one size off
	less    []gauge.Length            // what the length is less than the count makes, by size: the body of an ease; nil for nothing
	plus    []gauge.Measurement       // what the other direction makes of it, by size; nil for nothing
}

// holds checks what a statement says by itself, and returns the lengths in it
// that hang on the gauge.
func (p *pattern) holds(s statement) ([]Finding, []relation) {
	var out []Finding
	for _, r := range s.rules {
		for _, d := range s.sides {
			if d.kind == length {
				continue
			}
			f, _ := check.Legal(p.list(d.text, d), r)
			out = append(out, p.turn(s.line, f)...)
		}
	}
	if s.centred {
		out = append(out, p.mirrored(s)...)
	}
	var rel []relation
	for i := 1; i < len(s.sides); i++ {
		a, b := s.sides[i-1], s.sides[i]
		switch {
		case a.kind == length && b.kind == length:
			out = append(out, p.sameLength(s.line, a, b)...)
		case a.kind == length || b.kind == length:
			if b.kind == length {
				a, b = b, a
			}
			if b.kind != stitches && b.kind != rows {
				out = append(out, Finding{Line: s.line.number, Name: s.line.name, Got: b.text, Want: "sts or rows", Why: "a length goes with a count of stitches or of rows"})
				continue
			}
			rel = append(rel, p.relation(s, a, b))
		default:
			out = append(out, p.sameCount(s.line, a, b)...)
		}
	}
	return out, rel
}

// list turns the values of a side into a list of package check.
func (p *pattern) list(name string, s side) check.List {
	l := check.List{Name: name, Unit: s.unit}
	for i, v := range s.total {
		d, _ := v.ExactDecimal()
		l.Sizes, l.Values = append(l.Sizes, p.label(i)), append(l.Values, d)
	}
	return l
}

// turn makes findings of a line out of those of package check, once for all
// sizes where they are the same.
func (p *pattern) turn(l line, found []check.Finding) []Finding {
	var out []Finding
	for _, f := range found {
		x := Finding{Line: l.number, Name: l.name, Got: f.Got, Want: f.Want, Why: f.Why, Remark: f.Remark}
		if f.Index >= 0 {
			x.Size = f.Size
		}
		out = append(out, x)
	}
	return once(out, p.n)
}

// once makes one finding of as many as there are sizes, if they all got and want
// the same.
func once(f []Finding, n int) []Finding {
	if n < 2 || len(f) != n || slices.ContainsFunc(f, func(x Finding) bool { return x.Got != f[0].Got || x.Want != f[0].Want }) {
		return f
	}
	f[0].Size = ""
	return f[:1]
}

// sameCount holds two sums of counts against each other. Where one of them is a
// list, it is the whole and the other one its parts.
func (p *pattern) sameCount(l line, parts, whole side) []Finding {
	if len(parts.terms) == 1 && len(whole.terms) > 1 {
		parts, whole = whole, parts
	}
	if len(parts.terms) == 1 {
		var out []Finding
		x, y := parts.total, whole.total
		for i := range x {
			if !x[i].Equal(y[i]) {
				out = append(out, Finding{Line: l.number, Name: l.name, Size: p.label(i), Got: x[i].Text(places(x[i])), Want: y[i].Text(places(y[i])), Why: parts.text + " beside " + whole.text + eachEnd(parts, whole)})
			}
		}
		return once(out, p.n)
	}
	var lists []check.List
	for _, t := range parts.terms {
		lists = append(lists, p.list(t.text, sum(t)))
	}
	f, err := check.Sum(p.list(whole.text, whole), lists...)
	if err != nil {
		return []Finding{{Line: l.number, Name: l.name, Got: whole.text, Why: err.Error()}}
	}
	hint := eachEnd(parts, whole)
	sum := parts.total
	for i := range f {
		if f[i].Want == "" {
			n := sum[f[i].Index]
			f[i].Want = n.Text(places(n)) + ", or other parts"
		}
		f[i].Why = strings.ReplaceAll(f[i].Why, "+ -", "- ") + hint
		if hint != "" {
			f[i].Why = strings.Replace(f[i].Why, "; which value is wrong can't be told", "", 1)
		}
		if f[i].List != whole.text {
			f[i].Got += " of " + f[i].List
		}
	}
	return p.turn(l, f)
}

// eachEnd says which reading of a part makes a sum true that is not: once, or once
// at each end.
func eachEnd(parts, whole side) string {
	for i, t := range parts.terms {
		other := slices.Clone(parts.terms)
		other[i].values = nil
		factor := gauge.Int(2)
		hint := "; it adds up if " + t.text + " is meant at each end"
		if t.ends {
			factor, _ = gauge.Share(1, 2)
			hint = "; it adds up if " + t.text + " is meant once"
		}
		for _, v := range t.values {
			other[i].values = append(other[i].values, v.Mul(factor))
		}
		if slices.EqualFunc(sum(other...).total, whole.total, gauge.Ratio.Equal) {
			return hint
		}
	}
	return ""
}

// mirrored holds the parts of a centred row against each other, left and right.
func (p *pattern) mirrored(s statement) []Finding {
	var out []Finding
	for _, d := range s.sides {
		for i, j := 0, len(d.terms)-1; i < j; i, j = i+1, j-1 {
			for size := range p.n {
				a, b := d.terms[i].values[size], d.terms[j].values[size]
				if a.Equal(b) {
					continue
				}
				out = append(out, Finding{Line: s.line.number, Name: s.line.name, Size: p.label(size),
					Got: a.Text(0) + " and " + b.Text(0), Want: "the same on both sides", Why: "the neck is centred"})
			}
		}
	}
	return once(out, p.n)
}

// sameLength holds two sums of lengths against each other. Every part may be off
// by half of a quarter inch, or of half a centimetre; two lists in one unit may
// not.
func (p *pattern) sameLength(l line, a, b side) []Finding {
	var out []Finding
	var slack gauge.Measurement
	if a.many()+b.many() > 2 || a.unit != b.unit {
		slack = a.slack().Add(b.slack())
	}
	for i := range a.total {
		got, want := gauge.MeasurementOf(a.total[i], a.unit), gauge.MeasurementOf(b.total[i], b.unit)
		off := got.Sub(want)
		if off.Sign() < 0 {
			off = want.Sub(got)
		}
		if off.Cmp(slack) > 0 {
			out = append(out, Finding{Line: l.number, Name: l.name, Size: p.label(i), Got: a.length(a.total[i]), Want: b.length(b.total[i]), Why: a.text + " beside " + b.text})
		}
	}
	return once(out, p.n)
}

// many returns how many printed lengths a side adds up.
func (s side) many() int {
	n := 0
	for _, t := range s.terms {
		n += t.many
	}
	return n
}

// slack returns how far rounding may have put a side off.
func (s side) slack() gauge.Measurement {
	half := halfHalf
	if s.unit == gauge.Inch {
		half = halfQuarter
	}
	return half.Measurement().Times(gauge.Int(s.many()))
}

// length prints a length of the side in its own unit.
func (s side) length(v gauge.Ratio) string {
	d, _ := v.ExactDecimal()
	return gauge.Length{Value: d, Unit: s.unit}.String()
}

// relation ties the length l to the count c.
func (p *pattern) relation(s statement, l, c side) relation {
	r := relation{line: s.line, name: s.line.name, section: s.section, what: c.text, kind: c.kind, counts: c.total,
		worked: isWorked.MatchString(s.line.name), alone: true}
	if c.kind == stitches {
		r.edge = s.edge
	}
	for _, rule := range s.rules {
		r.step = max(r.step, rule.Multiple)
	}
	list := make(grade.Run[gauge.Length], p.n)
	unit := l.unit
	switch unit { // a ruler shows inches or centimetres
	case gauge.Foot, gauge.Yard:
		unit = gauge.Inch
	case gauge.Millimetre, gauge.Metre:
		unit = gauge.Centimetre
	}
	for i, v := range l.total {
		r.sizes = append(r.sizes, i)
		d, _ := gauge.MeasurementOf(v, l.unit).In(unit).ExactDecimal()
		list[i] = gauge.Length{Value: d, Unit: unit}
	}
	r.lists = []grade.Run[gauge.Length]{list}
	return r
}

// grid returns the grid that a list is printed on: the coarsest that has all its
// values.
func (r relation) grid(list grade.Run[gauge.Length]) gauge.Grid {
	grids := []gauge.Grid{gauge.WholeInch, gauge.HalfInch, gauge.QuarterInch, gauge.EighthInch}
	if list[0].Unit != gauge.Inch {
		grids = []gauge.Grid{gauge.WholeCentimetre, gauge.HalfCentimetre}
	}
	if r.exact {
		grids = grids[len(grids)-2:][:1]
		if list[0].Unit != gauge.Inch {
			grids = []gauge.Grid{gauge.HalfCentimetre}
		}
	}
	for _, g := range grids {
		if !slices.ContainsFunc(list, func(l gauge.Length) bool { return !g.Round(l.Measurement()).Value.Equal(l.Value) }) {
			return g
		}
	}
	return grids[len(grids)-1]
}

// makes returns the length that the count of size i makes at a gauge.
func (r relation) makes(over gauge.Over, i int) (gauge.Measurement, error) {
	m, err := over.Measure(r.counts[i])
	if err == nil && r.less != nil {
		m = m.Sub(r.less[i].Measurement())
	}
	if err == nil && r.plus != nil {
		m = m.Add(r.plus[i])
	}
	return m, err
}

// right reports whether the length of size i is right for its count at a gauge:
// it is what the grid prints for the count, or, where lengths need not be exact,
// the count is the nearest to it.
func (r relation) right(over gauge.Over, g gauge.Grid, l gauge.Length, i int) bool {
	if r.edge > 0 { // the width is measured with the edges, or without
		less := r
		less.edge, less.counts = 0, slices.Clone(r.counts)
		less.counts[i] = r.counts[i].Sub(gauge.Int(r.edge))
		if less.counts[i].Sign() > 0 && less.right(over, g, l, i) {
			return true
		}
	}
	m, err := r.makes(over, i)
	if err != nil || g.Round(m).Value.Equal(l.Value) {
		return true
	}
	if r.exact {
		return false
	}
	x, err := over.Exact(l.Measurement())
	if err != nil {
		return true
	}
	off, step := x.Sub(r.counts[i]).Mul(gauge.Int(2)), gauge.Int(max(r.step, 1))
	return off.Cmp(step) <= 0 && off.Cmp(step.Mul(gauge.Int(-1))) >= 0
}

// fits reports whether all lengths are right at a gauge.
func fits(over gauge.Over, all []relation) bool {
	for _, r := range all {
		for _, list := range r.lists {
			g := r.grid(list)
			for i, l := range list {
				if !r.right(over, g, l, i) {
					return false
				}
			}
		}
	}
	return true
}

// measures holds all lengths against their counts at the gauge of their part.
func (p *pattern) measures(all []relation) []Finding {
	var out []Finding
	for _, k := range []kind{stitches, rows} {
		for _, worked := range []bool{false, true} {
			g := p.choice(k, worked)
			if len(g.all) == 0 {
				g = p.choice(k, false)
			}
			some, order := map[string][]relation{}, []held(nil)
			for _, r := range all {
				if r.kind != k || r.worked != worked {
					continue
				}
				if len(g.all) == 0 {
					if !p.clusters {
						out = append(out, noGauge(k, r))
					}
					break
				}
				h, ok := r.served(k, g)
				if !ok {
					p.as[r.line.number] += ", at a gauge that is not known" // another part's is none of its own
					continue
				}
				if some[h.id()] == nil {
					order = append(order, h)
				}
				some[h.id()] = append(some[h.id()], r)
			}
			for _, h := range order {
				out = append(out, p.at(h, k, some[h.id()])...)
			}
		}
	}
	return out
}

func noGauge(k kind, r relation) Finding {
	return Finding{Line: r.line.number, Name: r.name, Got: "a length and a count", Want: "a line with the gauge: " + k.text(gauge.Over{Count: decimal.NewFromInt(12), Span: gauge.MustLength("4 in")}),
		Why: "without it they can't be held against each other"}
}

// held is a gauge over one of the spans that it is printed with, and its line.
type held struct {
	line line
	over gauge.Over
}

func (h held) id() string { return fmt.Sprint(h.line.number, " ", h.over.Span) }

// served returns the gauge that a length is held against: of those that may
// serve it, each over either of its spans, the first at which it is right, else
// the first.
func (r relation) served(k kind, g choice) (held, bool) {
	var may []held
	for _, t := range g.serving(r.line.name, r.section) {
		for _, over := range t.spans(k, r.lists[0][0].Unit) {
			may = append(may, held{t.line, over})
		}
	}
	if len(may) == 0 {
		return held{}, false
	}
	for _, h := range may {
		if len(may) > 1 && fits(h.over, []relation{r}) {
			return h, true
		}
	}
	return may[0], true
}

// at holds lengths against their counts at one gauge.
func (p *pattern) at(t held, k kind, some []relation) []Finding {
	over := t.over
	var off []Finding
	wrong, both := 0, 0
	for _, r := range some {
		f, bad, n := p.against(over, k, r)
		off = append(off, f...)
		wrong, both = wrong+bad, both+n
	}
	if other, ok := implied(over, some, true); ok && wrong > 1 && 2*wrong > both && !shifted(off) {
		return []Finding{{Line: t.line.number, Name: name(t.line, "gauge"), Got: k.text(over), Want: k.text(other),
			Why: fmt.Sprintf("%s from line %d on agree with their counts at %s, and not at the gauge printed here", plural(both, "length"), some[0].line.number, k.text(other))}}
	}
	return off
}

func name(l line, or string) string {
	if l.name == "" {
		return or
	}
	return l.name
}

func shifted(f []Finding) bool {
	return slices.ContainsFunc(f, func(x Finding) bool { return strings.Contains(x.Why, "shifted by a size") })
}

// against holds one relation against the gauge. It returns how many lengths are
// wrong, of how many.
func (p *pattern) against(over gauge.Over, k kind, r relation) (out []Finding, wrong, both int) {
	for i := range r.counts {
		var got, want []string
		m, _ := r.makes(over, i)
		for _, list := range r.lists {
			g := r.grid(list)
			both++
			if r.right(over, g, list[i], i) {
				continue
			}
			wrong++
			got, want = append(got, g.Text(list[i].Measurement())), append(want, g.Text(m))
			if !g.Round(list[i].Measurement()).Value.Equal(list[i].Value) {
				got[len(got)-1] = list[i].String()
			}
		}
		if got == nil {
			continue
		}
		if !r.exact { // the printed grid may be coarse
			want = []string{fine(r.lists[0][i].Unit).Text(m)}
		}
		f := Finding{Line: r.line.number, Name: r.name, Size: p.label(r.sizes[i]), Got: strings.Join(got, " and "), Want: strings.Join(want, " and "),
			Why: r.counts[i].Text(places(r.counts[i])) + " " + k.noun() + " at " + k.text(over) + " make that"}
		if r.plus != nil {
			f.Why += fmt.Sprintf(", with %s across the rows", fine(gauge.Inch).Text(r.plus[i]))
		}
		if r.less != nil {
			round, _ := over.Measure(r.counts[i])
			f.Why = fmt.Sprintf("a round of %s (%s %s at %s) less a chest of %v, the high end in the table of sizes", r.grid(r.lists[0]).Text(round), r.counts[i].Text(0), k.noun(), k.text(over), r.less[i])
		}
		if !r.exact {
			if x, err := over.Exact(r.lists[0][i].Measurement()); err == nil {
				f.Why += fmt.Sprintf("; %s take about %s %s", f.Got, x.Text(0), k.noun())
			}
			if other, ok := implied(over, []relation{r.only(i)}, false); ok {
				f.Why += "; or the gauge is about " + k.text(other)
			}
		}
		out = append(out, f)
	}
	if s, ok := p.shift(over, r); ok && len(out) > 1 {
		return []Finding{s}, wrong, both
	}
	return once(out, p.n), wrong, both
}

// only returns the relation of one size.
func (r relation) only(i int) relation {
	out := r
	out.counts = r.counts[i : i+1]
	out.lists = nil
	for _, l := range r.lists {
		out.lists = append(out.lists, l[i:i+1])
	}
	return out
}

// shift reports lists that stand one size apart.
func (p *pattern) shift(over gauge.Over, r relation) (Finding, bool) {
	list := r.lists[0]
	if !r.alone || len(list) != p.n {
		return Finding{}, false
	}
	counts := p.list(r.what, sum(term{values: r.counts}))
	widths, err := check.Lengths(r.name, counts.Sizes, list)
	if err != nil {
		return Finding{}, false
	}
	found, err := check.Widths(counts, widths, check.Fabric{Over: over, Grid: r.grid(list)})
	if err != nil || len(found) != 1 || found[0].Index >= 0 {
		return Finding{}, false
	}
	return Finding{Line: r.line.number, Name: r.name, Got: r.line.body, Want: "both for the same size", Why: found[0].Why}, true
}

func (k kind) noun() string {
	if k == rows {
		return "rows"
	}
	return "sts"
}

// places is how many decimals a count is printed with: 81.5, 253.
func places(x gauge.Ratio) int {
	if d, ok := x.ExactDecimal(); ok && !d.Equal(d.Truncate(0)) {
		return 1
	}
	return 0
}

// implied returns the gauge at which all lengths are right: another whole or
// half number over the span of the printed one, or the same number over another
// span that gauges are measured on, if spans is set.
func implied(over gauge.Over, all []relation, spans bool) (gauge.Over, bool) {
	for _, span := range []string{"4 in", "10 cm", "2 in", "5 cm", "1 in"} {
		if !spans {
			break
		}
		other := over
		other.Span = gauge.MustLength(span)
		if other.Span != over.Span && fits(other, all) {
			return other, true
		}
	}
	other := over
	low, high, ok := counts(over.Span.Measurement(), all)
	if !ok {
		return other, false
	}
	middle := low.Add(high).Mul(share(1, 2))
	for _, steps := range []int{1, 2} { // the whole number next to the middle, then the half
		n, err := middle.Mul(gauge.Int(steps)).Add(share(1, 2)).Floor()
		if err != nil || n < 1 {
			continue
		}
		other.Count, other.Of = gauge.Int(n).Mul(share(1, steps)).Decimal(1), 0
		if fits(other, all) {
			return other, true
		}
	}
	return other, false
}

// counts returns the least and the most stitches in a span at which all lengths
// are right; ok is false where there are none.
func counts(span gauge.Measurement, all []relation) (low, high gauge.Ratio, ok bool) {
	for _, r := range all {
		for _, list := range r.lists {
			half := step(r.grid(list)).Times(share(1, 2))
			for i, l := range list {
				m := l.Measurement()
				if r.less != nil {
					m = m.Add(r.less[i].Measurement())
				}
				if r.plus != nil {
					m = m.Sub(r.plus[i])
				}
				if m.Sub(half).Sign() <= 0 {
					continue
				}
				n := r.counts[i]
				least, _ := span.Per(m.Add(half))
				most, _ := span.Per(m.Sub(half))
				from, to := n.Mul(least), n.Mul(most)
				if !r.exact { // or the count is the nearest
					each, _ := span.Per(m)
					half := share(max(r.step, 1), 2)
					from = smaller(from, n.Sub(half).Mul(each))
					to = larger(to, n.Add(half).Mul(each))
				}
				if !ok || from.Cmp(low) > 0 {
					low = from
				}
				if !ok || to.Cmp(high) < 0 {
					high = to
				}
				ok = true
			}
		}
	}
	return low, high, ok && low.Cmp(high) <= 0
}

func smaller(a, b gauge.Ratio) gauge.Ratio {
	if a.Cmp(b) < 0 {
		return a
	}
	return b
}

func larger(a, b gauge.Ratio) gauge.Ratio {
	if a.Cmp(b) > 0 {
		return a
	}
	return b
}

// fine returns the finest grid of a unit that a ruler shows.
func fine(u gauge.Unit) gauge.Grid {
	if u == gauge.Inch {
		return gauge.QuarterInch
	}
	return gauge.HalfCentimetre
}

// step returns the step of a grid.
func step(g gauge.Grid) gauge.Measurement {
	switch g {
	case gauge.WholeInch:
		return gauge.MeasurementOf(gauge.Int(1), gauge.Inch)
	case gauge.HalfInch:
		return gauge.MeasurementOf(share(1, 2), gauge.Inch)
	case gauge.QuarterInch:
		return gauge.MeasurementOf(share(1, 4), gauge.Inch)
	case gauge.EighthInch:
		return gauge.MeasurementOf(share(1, 8), gauge.Inch)
	case gauge.WholeCentimetre:
		return gauge.MeasurementOf(gauge.Int(1), gauge.Centimetre)
	}
	return gauge.MeasurementOf(share(1, 2), gauge.Centimetre)
}

// share returns a/b for a b that is not 0.
func share(a, b int) gauge.Ratio {
	r, _ := gauge.Share(a, b)
	return r
}
