package main

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/notation"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/printed"
	"example.com/panelmath/yarn/weight"
)

// yarnLine is what a line says about the yarn to buy. Parts that it does not say
// are nil, or zero.
type yarnLine struct {
	line    line
	skeins  grade.Run[int]
	each    yarn.Length // one skein
	mass    yarn.Mass   // of one skein, or of each
	all     bool        // the total is what all skeins hold: `4 skeins x 400 yd = 1600 yd`
	totals  []grade.Run[yarn.Length]
	masses  grade.Run[yarn.Mass]
	left    grade.Run[yarn.Length] // over from the skeins
	skeined string                 // as printed
}

const (
	yarnUnit = `(yards?\b|yds?\b|met(?:re|er)s?\b|m\b)`
	massUnit = `(ounces?\b|oz\b|grams?\b|g\b|kg\b)`
	skeinsIn = `(?:skeins?|balls?|cakes?|hanks?)\b`
)

var (
	yarnName  = regexp.MustCompile(`(?i)^(?:(?:total )?yarn|yardage|skeins|balls|materials?)\b`)
	skeinList = regexp.MustCompile(`(?i)(` + listForm + `)\s*(?:[a-z-]+ )?` + skeinsIn)
	leftOver  = regexp.MustCompile(`(?i)^left over[^:]*$`)
	yarnList  = regexp.MustCompile(`(` + listForm + `)\s*` + yarnUnit)
	massList  = regexp.MustCompile(`(` + listForm + `)\s*` + massUnit)
	thousands = regexp.MustCompile(`\d,\d{3}\b`)
	// one skein: `of 200 yd`, `x 400 yd =`, `230 yd = 100 g per skein`, `(200 yd / 100 g) each`
	ofEach = [...]*regexp.Regexp{
		regexp.MustCompile(`(?i)` + skeinsIn + `(?:,? (?:of|at|each)(?: about)?| ?[x×]| ?\() ?(` + numberForm + `) ?` + yarnUnit + `(?: ?(?:[/=(]|or|per) ?(` + numberForm + `)? ?` + massUnit + `\)?)?`),
		regexp.MustCompile(`(?i)(` + numberForm + `) ?` + yarnUnit + `(?: ?(?:[/=(]|or|per) ?(` + numberForm + `)? ?` + massUnit + `\)?)? ?(?:per|each|a) (?:` + skeinsIn + `)`),
		regexp.MustCompile(`(?i)(` + numberForm + `) ?` + yarnUnit + ` ?(?:[/=]|per) ?(` + numberForm + `)? ?` + massUnit),
	}
	product = regexp.MustCompile(`(?i)` + skeinsIn + ` ?[x×]`)
)

// readYarn reads a line with skeins in it, or one named for yarn. It reports false
// for any other line.
func (p *pattern) readYarn(l line) (bool, error) {
	if leftOver.MatchString(l.name) {
		if m := yarnList.FindStringSubmatch(l.body); m != nil && len(p.yarns) > 0 {
			left, err := yarnLengths(m[1], m[2])
			if err == nil {
				p.yarns[len(p.yarns)-1].left, err = left.For(p.n)
			}
			if err == nil {
				p.yarns = append(p.yarns, yarnLine{line: l})
				p.as[l.number] = "yarn left over"
			}
		}
		return true, nil
	}
	skeins := skeinList.FindStringSubmatch(l.body)
	if skeins == nil && !yarnName.MatchString(l.name) {
		return false, nil
	}
	if m := thousands.FindString(l.body); m != "" {
		return true, unreadable(l.number, "%s: a comma in the number %s; write %s", name(l, "yarn"), text.Quote(m), strings.ReplaceAll(m, ",", ""))
	}
	y := yarnLine{line: l, all: product.MatchString(l.body)}
	rest := l.body
	if skeins != nil {
		list := skeins[1]
		n, err := notation.ReadNumbers(list, 0)
		if err == nil {
			if n, err = n.For(p.n); err == nil && !slices.Contains(n, 0) {
				y.skeins, y.skeined = n, list
			}
		}
	}
	for _, form := range ofEach {
		m := form.FindStringSubmatchIndex(rest)
		if m == nil {
			continue
		}
		part := func(i int) string {
			if m[2*i] < 0 {
				return ""
			}
			return rest[m[2*i]:m[2*i+1]]
		}
		each, err := yarn.ParseLength(part(1) + " " + part(2))
		if err != nil || each.Value.Sign() <= 0 {
			return true, unreadable(l.number, "%s: one skein: %w", name(l, "yarn"), err)
		}
		y.each = each
		if part(4) != "" {
			n := part(3)
			if n == "" {
				n = "1"
			}
			if y.mass, err = yarn.ParseMass(n + " " + part(4)); err != nil {
				return true, unreadable(l.number, "%s: one skein: %w", name(l, "yarn"), err)
			}
		}
		rest = rest[:m[2]] + strings.Repeat(" ", m[1]-m[2]) + rest[m[1]:]
		break
	}
	for _, m := range yarnList.FindAllStringSubmatch(rest, -1) {
		total, err := yarnLengths(m[1], m[2])
		if err != nil {
			return true, unreadable(l.number, "%s: %w", name(l, "yarn"), err)
		}
		if total, err = total.For(p.n); err == nil && positive(total) {
			y.totals = append(y.totals, total)
		}
	}
	if m := massList.FindStringSubmatch(rest); m != nil {
		masses, err := notation.Read(m[1], 0, func(s string) (yarn.Mass, error) { return yarn.ParseMass(s + " " + m[2]) })
		if err == nil {
			masses, err = masses.For(p.n)
		}
		if err == nil {
			y.masses = masses
		}
	}
	if y.skeins == nil && y.totals == nil && y.each.Value.IsZero() {
		return true, nil
	}
	p.yarns = append(p.yarns, y)
	p.as[l.number] = "yarn: " + y.String()
	return true, nil
}

func positive(r grade.Run[yarn.Length]) bool {
	return !slices.ContainsFunc(r, func(l yarn.Length) bool { return l.Value.Sign() <= 0 })
}

func (y yarnLine) String() string {
	var parts []string
	if y.skeins != nil {
		parts = append(parts, grade.Numbers(y.skeins)+" skeins")
	}
	if y.each.Value.Sign() > 0 {
		parts = append(parts, y.each.String()+" each")
	}
	for _, t := range y.totals {
		parts = append(parts, grade.Text(t, yarn.Length.String)+" in all")
	}
	return strings.Join(parts, ", ")
}

// yarn checks what is printed about yarn.
func (p *pattern) yarn() []Finding {
	var out []Finding
	for _, y := range p.yarns {
		add := func(l line, found []printed.Finding, err error) {
			if err != nil {
				return
			}
			var some []Finding
			for _, f := range found {
				some = append(some, Finding{Line: l.number, Name: name(l, "yarn"), Size: p.label(f.Size), Got: f.Got, Want: f.Want, Why: f.Why})
			}
			out = append(out, once(some, p.n)...)
		}
		if y.skeins != nil && y.each.Value.Sign() > 0 && len(y.totals) > 0 {
			if y.all {
				f, err := printed.Totals(y.skeins, y.each, y.totals[0])
				add(y.line, f, err)
			} else {
				f, err := printed.Balls(y.totals[0], y.each, y.skeins)
				for i := range f {
					f[i].Got += " skeins"
					n, err := y.totals[0][f[i].Size].Measurement().In(y.each.Unit).Mul(share(1, y.skeins[f[i].Size])).Floor()
					if err == nil && n > 0 && len(f) == len(y.skeins) && gauge.Int(n).Mul(gauge.Int(y.skeins[f[i].Size])).Equal(y.totals[0][f[i].Size].Measurement().In(y.each.Unit)) {
						f[i].Why += fmt.Sprintf("; or a skein has %d %v", n, y.each.Unit)
					}
				}
				add(y.line, f, err)
			}
		}
		for i := 1; i < len(y.totals); i++ {
			if y.totals[i][0].Unit != y.totals[0][0].Unit {
				f, err := printed.Columns(y.totals[0], y.totals[i])
				add(y.line, f, err)
			}
		}
		out = append(out, p.grams(y)...)
		out = append(out, p.leftOver(y)...)
		out = append(out, p.growing(y)...)
		out = append(out, p.thickness(y)...)
	}
	return out
}

// grams holds the mass of the total against the label. Both are rounded to a
// whole unit, either way.
func (p *pattern) grams(y yarnLine) []Finding {
	var out []Finding
	if y.masses == nil || y.mass.Value.IsZero() || len(y.totals) == 0 {
		return nil
	}
	for i, m := range y.masses {
		total := y.totals[0][i]
		times, err := total.Measurement().Per(y.each.Measurement())
		if err != nil || m.Unit != y.mass.Unit {
			return nil
		}
		one, _ := gauge.FromDecimal(y.mass.Value)
		got, _ := gauge.FromDecimal(m.Value)
		exact := times.Mul(one)
		off := exact.Sub(got)
		if off.Cmp(gauge.Int(1)) >= 0 || off.Cmp(gauge.Int(-1)) <= 0 {
			n, _ := exact.Ceil()
			out = append(out, Finding{Line: y.line.number, Name: name(y.line, "yarn"), Size: p.label(i), Got: m.String(), Want: strconv.Itoa(n) + " " + m.Unit.String(),
				Why: fmt.Sprintf("%v at %v = %v", total, y.each, y.mass)})
		}
	}
	return once(out, p.n)
}

// leftOver holds what is left of the skeins against the total. The total may have
// been rounded to a whole unit.
func (p *pattern) leftOver(y yarnLine) []Finding {
	var out []Finding
	if y.left == nil || y.skeins == nil || len(y.totals) == 0 || y.each.Value.IsZero() {
		return nil
	}
	at := y.line
	for _, o := range p.yarns {
		if o.line.number > y.line.number {
			at = o.line // the line after it, which readYarn left a mark for
			break
		}
	}
	for i, left := range y.left {
		u := left.Unit
		exact := y.each.Measurement().Times(gauge.Int(y.skeins[i])).Sub(y.totals[0][i].Measurement()).In(u)
		got := left.Measurement().In(u)
		off := exact.Sub(got)
		if off.Cmp(gauge.Int(1)) >= 0 || off.Cmp(gauge.Int(-1)) <= 0 {
			n, _ := exact.Floor()
			out = append(out, Finding{Line: at.number, Name: at.name, Size: p.label(i), Got: left.String(), Want: strconv.Itoa(n) + " " + u.String(),
				Why: fmt.Sprintf("%s of %v less the %v needed, line %d", plural(y.skeins[i], "skein"), y.each, y.totals[0][i], y.line.number)})
		}
	}
	return once(out, p.n)
}

// growing looks for one number of skeins, or one length, for all sizes of a
// garment that grows.
func (p *pattern) growing(y yarnLine) []Finding {
	round, of := p.growth()
	if round == nil || p.n < 2 {
		return nil
	}
	var out []Finding
	if y.skeins != nil && y.totals == nil {
		var sizes []printed.Size
		for i, n := range y.skeins { // half of the smallest size may be the same in all: sleeves, bands
			sizes = append(sizes, printed.Size{Name: p.label(i), Work: round[i].Add(round[0]), Skeins: n})
		}
		each := y.each
		if each.Value.IsZero() {
			each = yarn.MustLength("100 yd")
		}
		iv, err := printed.Usage(each, sizes...)
		if err == nil && iv.None && slices.Max(y.skeins) == slices.Min(y.skeins) {
			out = append(out, Finding{Line: y.line.number, Name: name(y.line, "yarn"), Got: y.skeined + " skeins for all sizes", Want: "more for the larger sizes",
				Why: fmt.Sprintf("%s (line %d) grows by more than one skein in %d allows, even if half of the smallest size were the same in all", name(of, "the garment"), of.number, y.skeins[0])})
		}
	}
	if len(y.totals) > 0 && !slices.ContainsFunc(y.totals[0], func(l yarn.Length) bool { return !l.Value.Equal(y.totals[0][0].Value) }) {
		first, last := round[0], round[len(round)-1]
		if first.Mul(gauge.Int(11)).Cmp(last.Mul(gauge.Int(10))) <= 0 {
			out = append(out, Finding{Line: y.line.number, Name: name(y.line, "yarn"), Got: y.totals[0][0].String() + " for all sizes", Want: "more for the larger sizes",
				Why: fmt.Sprintf("%s (line %d) grows from size to size", name(of, "the garment"), of.number)})
		}
	}
	return out
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
	if y.mass.Value.IsZero() || y.each.Value.IsZero() {
		return nil
	}
	grist, err := weight.OfLabel(yarn.Label{Length: y.each, Mass: y.mass})
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
			return []Finding{{Line: y.line.number, Name: name(y.line, "yarn"), Got: y.each.String() + " to " + y.mass.String(), Want: "a yarn of weight category " + join(byGauge.Any) + ", as the gauge of line " + strconv.Itoa(t.line.number) + " is worked in",
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
