package main

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/printed"
	"example.com/panelmath/yarn/weight"
)

// yarn checks what is printed about yarn.
func (p *pattern) yarn() []Finding {
	var out []Finding
	for _, y := range p.yarns {
		out = append(out, y.units()...)
		out = append(out, p.holding(y)...)
		out = append(out, p.columns(y)...)
		out = append(out, p.grams(y)...)
		out = append(out, p.leftOver(y)...)
		out = append(out, p.growing(y)...)
		out = append(out, p.thickness(y)...)
	}
	for _, y := range p.yards {
		if y.apart(1) { // it may be a label, which makers round
			for _, f := range p.columns(y) {
				f.Remark = !y.apart(3)
				out = append(out, f)
			}
		}
	}
	return out
}

// apart reports whether the totals in two units are more than so many percent apart
// in some size.
func (y yarnLine) apart(percent int) bool {
	for i, a := range y.totals[0] {
		a, b := a.Measurement(), y.totals[1][i].Measurement()
		most := a.Times(share(percent, 100))
		if a.Sub(b).Cmp(most) > 0 || b.Sub(a).Cmp(most) > 0 {
			return true
		}
	}
	return false
}

// columns holds a total in one unit against the same in another.
func (p *pattern) columns(y yarnLine) []Finding {
	var out []Finding
	for i := 1; i < len(y.totals); i++ {
		if y.totals[i][0].Unit == y.totals[0][0].Unit {
			continue
		}
		f, err := printed.Columns(y.totals[0], y.totals[i])
		f = slices.DeleteFunc(f, func(x printed.Finding) bool {
			a, b := y.totals[0][x.Size], y.totals[i][x.Size]
			return roundly(a.Measurement().In(b.Unit), b.Measurement().In(b.Unit))
		})
		out = append(out, p.bought(y.line, f, err)...)
	}
	return out
}

// bought turns the findings of package printed into those of a line.
func (p *pattern) bought(l line, found []printed.Finding, err error) []Finding {
	var out []Finding
	if err != nil {
		return nil
	}
	for _, f := range found {
		out = append(out, Finding{Line: l.number, Name: name(l, "yarn"), Size: p.label(f.Size), Got: f.Got, Want: f.Want, Why: f.Why})
	}
	return once(out, p.n)
}

// holding asks whether the skeins hold the total and are the fewest that do.
func (p *pattern) holding(y yarnLine) []Finding {
	switch {
	case y.skeins == nil:
		return nil
	case y.each == nil || len(y.totals) == 0:
		return p.weighing(y)
	}
	// A maker rounds both units of a label: the one is taken that a total is in.
	each, total := y.each[0], y.totals[0]
	for _, e := range y.each {
		if e.Unit == total[0].Unit {
			each = e
		}
	}
	if y.all {
		f, err := printed.Totals(y.skeins, each, total)
		return p.bought(y.line, f, err)
	}
	f, err := printed.Balls(total, each, y.skeins)
	for i := range f {
		f[i].Got += " skeins"
		length := total[f[i].Size].Measurement().In(each.Unit)
		n, err := length.Mul(share(1, y.skeins[f[i].Size])).Floor()
		if err == nil && n > 0 && len(f) == len(y.skeins) && gauge.Int(n).Mul(gauge.Int(y.skeins[f[i].Size])).Equal(length) {
			f[i].Why += fmt.Sprintf("; or a skein has %d %v", n, each.Unit)
		}
	}
	return p.bought(y.line, f, err)
}

// weighing asks the same of a total in grams.
func (p *pattern) weighing(y yarnLine) []Finding {
	var out []Finding
	for i, total := range y.masses {
		if y.mass.Value.IsZero() || total.Unit != y.mass.Unit {
			return nil
		}
		need, _ := gauge.FromDecimal(total.Value)
		one, _ := gauge.FromDecimal(y.mass.Value)
		times, err := need.Quo(one)
		if err != nil {
			return nil
		}
		if n, err := times.Ceil(); err == nil && n != y.skeins[i] {
			out = append(out, Finding{Line: y.line.number, Name: name(y.line, "yarn"), Size: p.label(i), Got: strconv.Itoa(y.skeins[i]) + " skeins", Want: strconv.Itoa(n),
				Why: fmt.Sprintf("%v at %v a ball is %s, rounded up", total, y.mass, balls(times))})
		}
	}
	return once(out, p.n)
}

// balls prints how many balls a total takes: 5.6, about 3.33.
func balls(n gauge.Ratio) string {
	if d, ok := n.ExactDecimal(); ok && d.Equal(d.Truncate(2)) {
		return d.String()
	}
	return "about " + n.Text(2)
}

// units holds the two units of one skein against each other. Makers round a label
// to fives and tens: what is off by less than 1 % is right, by less than 3 %, or
// 3 of the unit, a remark.
func (y yarnLine) units() []Finding {
	if len(y.each) < 2 || y.each[0].Unit == y.each[1].Unit {
		return nil
	}
	a, b := y.each[0].Measurement(), y.each[1].Measurement()
	off := a.Sub(b)
	if off.Sign() < 0 {
		off = b.Sub(a)
	}
	one := gauge.MeasurementOf(gauge.Int(1), y.each[1].Unit)
	if off.Cmp(a.Times(share(1, 100))) <= 0 || off.Cmp(one) < 0 {
		return nil
	}
	return []Finding{{Line: y.line.number, Name: name(y.line, "yarn"), Got: y.each[1].String(), Want: a.In(y.each[1].Unit).Text(0) + " " + y.each[1].Unit.String(),
		Why: "one skein has " + y.each[0].String(), Remark: off.Cmp(a.Times(share(3, 100))) <= 0 || off.Cmp(one.Times(gauge.Int(3))) < 0}}
}

// roundly reports whether an amount to buy is the exact one in a round number: to
// the nearest 5, 10 or 50, where that is no more than a tenth of it. Common
// practice, no source.
func roundly(exact, printed gauge.Ratio) bool {
	off := exact.Sub(printed)
	if off.Sign() < 0 {
		off = printed.Sub(exact)
	}
	for _, step := range []int{5, 10, 50} {
		n, err := printed.Mul(share(1, step)).Floor()
		if err == nil && n >= 10 && gauge.Int(n).Mul(gauge.Int(step)).Equal(printed) && off.Mul(gauge.Int(2)).Cmp(gauge.Int(step)) <= 0 {
			return true
		}
	}
	return false
}

// grams holds the mass of the total against the label. Both are rounded to a
// whole unit, either way, or to a round number.
func (p *pattern) grams(y yarnLine) []Finding {
	var out []Finding
	if y.masses == nil || y.mass.Value.IsZero() || len(y.totals) == 0 || y.each == nil {
		return nil
	}
	for i, m := range y.masses {
		total := y.totals[0][i]
		times, err := total.Measurement().Per(y.each[0].Measurement())
		if err != nil || m.Unit != y.mass.Unit {
			return nil
		}
		one, _ := gauge.FromDecimal(y.mass.Value)
		got, _ := gauge.FromDecimal(m.Value)
		exact := times.Mul(one)
		off := exact.Sub(got)
		if (off.Cmp(gauge.Int(1)) >= 0 || off.Cmp(gauge.Int(-1)) <= 0) && !roundly(exact, got) {
			n, _ := exact.Ceil()
			out = append(out, Finding{Line: y.line.number, Name: name(y.line, "yarn"), Size: p.label(i), Got: m.String(), Want: strconv.Itoa(n) + " " + m.Unit.String(),
				Why: fmt.Sprintf("%v at %v = %v", total, y.each[0], y.mass)})
		}
	}
	return once(out, p.n)
}

// leftOver holds what is left of the skeins against the total. The total may have
// been rounded to a whole unit. Skeins that hold less than the total are a finding
// of their own.
func (p *pattern) leftOver(y yarnLine) []Finding {
	var out []Finding
	if y.left == nil || y.skeins == nil || len(y.totals) == 0 || y.each == nil {
		return nil
	}
	at := y.line
	for _, o := range p.yarns {
		if o.line.number > y.line.number {
			at = o.line // the line after it, which readLeft left a mark for
			break
		}
	}
	for i, left := range y.left {
		u := left.Unit
		exact := y.each[0].Measurement().Times(gauge.Int(y.skeins[i])).Sub(y.totals[0][i].Measurement()).In(u)
		got := left.Measurement().In(u)
		off := exact.Sub(got)
		if exact.Sign() >= 0 && (off.Cmp(gauge.Int(1)) >= 0 || off.Cmp(gauge.Int(-1)) <= 0) {
			n, _ := exact.Floor()
			out = append(out, Finding{Line: at.number, Name: at.name, Size: p.label(i), Got: left.String(), Want: strconv.Itoa(n) + " " + u.String(),
				Why: fmt.Sprintf("%s of %v less the %v needed, line %d", plural(y.skeins[i], "skein"), y.each[0], y.totals[0][i], y.line.number)})
		}
	}
	return once(out, p.n)
}

// accessory is a yarn beside the main one, for an edge or a stripe.
var accessory = regexp.MustCompile(`(?i)\bcontrast|\b(?:yarn|colou?r) (?:[b-z]|[2-9])\b|^[^:]*\b(?:accent|second|trim|edging|border|stripes?|embroidery|waste|cc\d?)\b[^:]*:`)

// growing looks for one number of skeins, or one length, for all sizes of a
// garment that grows. One figure for a yarn beside the main one is right: an edge
// may be as long in all sizes.
func (p *pattern) growing(y yarnLine) []Finding {
	round, of := p.growth()
	main := func(o yarnLine) bool { return o.grows() && !accessory.MatchString(o.line.text) }
	if round == nil || p.n < 2 || accessory.MatchString(y.line.text) || slices.ContainsFunc(p.yarns, main) {
		return nil
	}
	var out []Finding
	if y.skeins != nil && y.totals == nil {
		var sizes []printed.Size
		for i, n := range y.skeins { // half of the smallest size may be the same in all: sleeves, bands
			sizes = append(sizes, printed.Size{Name: p.label(i), Work: round[i].Add(round[0]), Skeins: n})
		}
		each := yarn.MustLength("100 yd")
		if y.each != nil {
			each = y.each[0]
		}
		iv, err := printed.Usage(each, sizes...)
		if err == nil && iv.None && slices.Max(y.skeins) == slices.Min(y.skeins) {
			out = append(out, Finding{Line: y.line.number, Name: name(y.line, "yarn"), Got: y.skeined + " skeins for all sizes", Want: "more for the larger sizes",
				Why: fmt.Sprintf("%s (line %d) grows by more than one skein in %d allows, even if half of the smallest size were the same in all", name(of, "the garment"), of.number, y.skeins[0])})
		}
	}
	if len(y.totals) > 0 && !y.grows() {
		first, last := round[0], round[len(round)-1]
		if first.Mul(gauge.Int(11)).Cmp(last.Mul(gauge.Int(10))) <= 0 {
			out = append(out, Finding{Line: y.line.number, Name: name(y.line, "yarn"), Got: y.totals[0][0].String() + " for all sizes", Want: "more for the larger sizes",
				Why: fmt.Sprintf("%s (line %d) grows from size to size", name(of, "the garment"), of.number)})
		}
	}
	return out
}

// grows reports whether one size takes more of the yarn than another.
func (y yarnLine) grows() bool {
	return y.skeins != nil && y.totals == nil && slices.Max(y.skeins) > slices.Min(y.skeins) ||
		len(y.totals) > 0 && slices.ContainsFunc(y.totals[0], func(l yarn.Length) bool { return !l.Value.Equal(y.totals[0][0].Value) })
}

var roundName = regexp.MustCompile(`(?i)\b(?:round|bust|chest|hips?|waist|circumference|width)\b`)

// growth returns the first list of widths or rounds of the text, with its line.
func (p *pattern) growth() ([]gauge.Ratio, line) {
	for _, s := range p.statements {
		if s.sides[0].kind == length && roundName.MatchString(s.line.name) {
			v := s.sides[0].total
			if !slices.ContainsFunc(v, func(r gauge.Ratio) bool { return r.Sign() <= 0 }) {
				return v, s.line
			}
		}
	}
	return nil, line{}
}

var (
	inStockinette = regexp.MustCompile(`(?i)\b(?:stockinette|stocking st|St st)\b`)
	inSingle      = regexp.MustCompile(`(?i)\b(?:in sc|single crochet)\b`)
)

// thickness asks whether a yarn of that length to its mass can make the gauge,
// where the gauge is of a fabric that the standard's categories are told by.
func (p *pattern) thickness(y yarnLine) []Finding {
	if y.mass.Value.IsZero() || y.each == nil {
		return nil
	}
	grist, err := weight.OfLabel(yarn.Label{Length: y.each[0], Mass: y.mass})
	if err != nil {
		return nil
	}
	for _, t := range p.gauges {
		m := weight.Measured{}
		switch {
		case inStockinette.MatchString(t.line.text):
			m.Knit = t.gauge.Stitches
		case inSingle.MatchString(t.line.text):
			m.Crochet = t.gauge.Stitches
		default:
			continue
		}
		byGauge, err := weight.Categories(m)
		if err != nil || len(byGauge.Any) == 0 {
			continue
		}
		byGrist, err := weight.Categories(weight.Measured{Grist: grist})
		if err != nil {
			continue
		}
		near := slices.ContainsFunc(byGauge.Any, func(a int) bool {
			return slices.ContainsFunc(byGrist.Any, func(b int) bool { return a-b < 2 && b-a < 2 })
		})
		if !near {
			return []Finding{{Line: y.line.number, Name: name(y.line, "yarn"), Got: y.each[0].String() + " to " + y.mass.String(), Want: "a yarn of weight category " + join(byGauge.Any) + ", as the gauge of line " + strconv.Itoa(t.line.number) + " is worked in",
				Why: "that is a yarn of category " + orNone(byGrist.Any) + "; length, mass or gauge is misprinted"}}
		}
	}
	return nil
}

func join(n []int) string {
	var out []string
	for _, x := range n {
		out = append(out, strconv.Itoa(x))
	}
	return strings.Join(out, " or ")
}

func orNone(n []int) string {
	if len(n) == 0 {
		return "none of the tables"
	}
	return join(n)
}
