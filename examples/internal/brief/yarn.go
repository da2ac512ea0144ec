package brief

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/usage"
	"github.com/shopspring/decimal"
)

// Named returns the yarn as a maker looks for it: its name, and its fibre in
// brackets.
func (y Yarn) Named() string {
	switch {
	case y.Name == "" && y.Fibre == "":
		return "any"
	case y.Name == "":
		return y.Fibre
	case y.Fibre == "":
		return y.Name
	}
	return y.Name + " (" + y.Fibre + ")"
}

// Yarn is the brief's yarn and the way its quantity is found: by a swatch
// (weighed or unravelled), by stitches, or by a finished project. The other two
// are nil.
type Yarn struct {
	Name, Fibre string
	Label       yarn.Label
	Swatch      *yarn.Swatch
	Stitches    *usage.Rates
	Project     *usage.Project
	Margin      yarn.Margin
	Sewing      yarn.Sewing
}

func (f *fields) yarn(n node, terms row.Terms) (y Yarn) {
	if n.kind == "" {
		return y
	}
	way := "swatch"
	var ways []node
	for _, m := range n.members {
		switch m.name {
		case "swatch", "unravelled", "stitches", "project":
			way = m.name
			ways = append(ways, m)
		}
	}
	if len(ways) > 1 {
		f.fail(ways[1].path, "given beside "+ways[0].name+"; want one of swatch, unravelled, stitches and project", nil)
		return y
	}
	o := f.object(n, "label "+way+" margin", "name fibre seam_factor tail_end")
	y.Name, _ = f.text(o["name"])
	y.Fibre, _ = f.text(o["fibre"])
	if l, ok := o["label"]; ok {
		lo := f.object(l, "length mass", "")
		y.Label = yarn.Label{Length: read(f, lo["length"], yarn.ParseLength), Mass: read(f, lo["mass"], yarn.ParseMass)}
		f.check(l, y.Label.Validate)
	}
	switch w := o[way]; {
	case w.kind == "":
	case way == "stitches":
		y.Stitches = f.stitches(w, terms)
	case way == "project":
		y.Project = f.project(w, y.Label)
	default:
		y.Swatch = f.swatch(w, way)
	}
	y.Margin = read(f, o["margin"], spare)
	y.Sewing = yarn.WhipStitch()
	if s, ok := o["seam_factor"]; ok {
		y.Sewing.Factor = read(f, s, number)
		f.check(s, yarn.Sewing{Factor: y.Sewing.Factor}.Validate)
	}
	if s, ok := o["tail_end"]; ok {
		y.Sewing.End = read(f, s, gauge.ParseLength)
		f.check(s, yarn.Sewing{End: y.Sewing.End}.Validate)
	}
	return y
}

// spare reads a margin that never takes yarn away.
func spare(s string) (yarn.Margin, error) {
	m, err := yarn.ParseMargin(s)
	if err == nil && m.Percent.Sign() < 0 {
		return m, errors.New("less than nothing; the calculated quantity would run short")
	}
	return m, err
}

// swatch reads a finished rectangle and its mass, or the yarn it gave when it
// was unravelled.
func (f *fields) swatch(n node, way string) *yarn.Swatch {
	third := "mass"
	if way == "unravelled" {
		third = "length"
	}
	o := f.object(n, "width height "+third, "")
	s := yarn.Swatch{Width: read(f, o["width"], gauge.ParseLength), Height: read(f, o["height"], gauge.ParseLength)}
	if third == "mass" {
		s.Mass = read(f, o["mass"], yarn.ParseMass)
	} else {
		s.Yarn = read(f, o["length"], yarn.ParseLength)
	}
	f.check(n, s.Validate)
	return &s
}

// stitches reads how much yarn stitches gave when they were unravelled:
// [{"stitch": "hdc", "count": 20, "length": "96 in"}, ...].
func (f *fields) stitches(n node, terms row.Terms) *usage.Rates {
	if n.kind != "list" || len(n.items) == 0 {
		f.fail(n.path, `want a list of stitches: [{"stitch": "hdc", "count": "20", "length": "96 in"}]`, nil)
		return nil
	}
	var rates usage.Rates
	for _, item := range n.items {
		before := len(f.errs)
		o := f.object(item, "stitch count length", "")
		name := read(f, o["stitch"], func(s string) (string, error) { return stitch(s, terms) })
		count := read(f, o["count"], strconv.Atoi)
		length := read(f, o["length"], yarn.ParseLength)
		if len(f.errs) > before {
			continue
		}
		rate, err := usage.Measured(name, count, length)
		if err != nil {
			f.fail(item.path, cause(err), err)
			continue
		}
		if _, twice := rates.Of(name); twice {
			f.fail(item.path, name+" is given twice", nil)
			continue
		}
		rates.Rates = append(rates.Rates, rate)
	}
	return &rates
}

// stitch returns the US abbreviation of a stitch named in the brief's terms.
func stitch(s string, terms row.Terms) (string, error) {
	for st := row.Chain; st.Valid(); st++ {
		if strings.EqualFold(s, st.Abbr(terms)) {
			return st.String(), nil
		}
	}
	return "", fmt.Errorf("no stitch of %v terms", terms)
}

// project reads a finished rectangle in the same fabric and what it used: its
// mass, or the skeins begun and the mass of what was left of them.
func (f *fields) project(n node, label yarn.Label) *usage.Project {
	o := f.object(n, "width height", "mass skeins left")
	width, height := read(f, o["width"], gauge.ParseLength), read(f, o["height"], gauge.ParseLength)
	p := usage.Project{Label: label, Area: yarn.Rectangle(width.Measurement(), height.Measurement())}
	if m, ok := o["mass"]; ok {
		p.Mass = read(f, m, yarn.ParseMass)
	}
	if m, ok := o["skeins"]; ok {
		p.Skeins = read(f, m, number)
	}
	if m, ok := o["left"]; ok {
		p.Left = read(f, m, yarn.ParseMass)
	}
	f.check(n, p.Validate)
	return &p
}

// number reads a plain decimal.
func number(s string) (decimal.Decimal, error) {
	if strings.Trim(s, "0123456789.-") != "" {
		return decimal.Decimal{}, errors.New("want a number like 2.5")
	}
	d, err := decimal.NewFromString(s)
	if err != nil {
		return d, errors.New("want a number like 2.5")
	}
	if _, err := gauge.FromDecimal(d); err != nil {
		return decimal.Decimal{}, err
	}
	return d, nil
}
