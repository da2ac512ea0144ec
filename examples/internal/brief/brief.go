// Package brief reads what a designer decides: the JSON brief that the example
// programs share. It turns every text into a value of the library and names the
// field of everything that does not hold.
package brief

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/yarn"
	"github.com/shopspring/decimal"
)

// Brief is a brief that has been read: every field is a value of the library.
type Brief struct {
	Name         string
	Terms        row.Terms
	Units        gauge.Unit // Inch or Centimetre: the chart's column and the unit printed first
	Fabric       gauge.Fabric
	Hook         gauge.Hook
	Chart        grade.Chart
	Groups       grade.Run[grade.Group]
	Ease         grade.Ease
	Layout       string
	Length       grade.Run[gauge.Length] // one for each group
	ArmholeDepth grade.Run[gauge.Length]
	NeckDrop     grade.Run[gauge.Length]
	Plan         panel.Plan
	RowStart     panel.RowStart
	Yarn         Yarn
}

// Yarn is the brief's yarn and how its quantity is found.
type Yarn struct {
	Name, Fibre string
	Label       yarn.Label
	Swatch      yarn.Swatch
	Margin      yarn.Margin
	Sewing      yarn.Sewing
}

// Read reads a brief. Its error is an *Error, the first of those that ReadAll
// returns.
func Read(r io.Reader) (Brief, error) {
	b, errs := ReadAll(r)
	if len(errs) > 0 {
		return Brief{}, errs[0]
	}
	return b, nil
}

// ReadAll reads a brief and returns every complaint about it, in the order of
// the fields; the brief is empty when there is one.
func ReadAll(r io.Reader) (Brief, []*Error) {
	data, err := io.ReadAll(io.LimitReader(r, readLimit+1))
	if err != nil {
		return Brief{}, []*Error{{Field: "brief", Cause: err.Error(), Err: err}}
	}
	if len(data) > readLimit {
		return Brief{}, []*Error{{Field: "brief", Cause: fmt.Sprintf("more than %d bytes, want at most %d", readLimit, SizeLimit)}}
	}
	n, err := parse(data)
	if err != nil {
		var e *Error
		errors.As(err, &e)
		return Brief{}, []*Error{e}
	}
	f := &fields{}
	b := f.brief(n)
	if len(f.errs) > 0 {
		return Brief{}, f.errs
	}
	return b, nil
}

// fields reads nodes and collects what is wrong with them.
type fields struct{ errs []*Error }

func (f *fields) fail(path, cause string, err error) {
	f.errs = append(f.errs, &Error{Field: path, Cause: cause, Err: err})
}

// object checks the names of an object's fields: the required ones (want) must
// all be there, the others may be. It returns the fields by name; one that is
// missing is a node of no kind.
func (f *fields) object(n node, want, may string) map[string]node {
	if n.kind != "object" {
		f.fail(n.path, "got a "+n.kind+", want an object with "+strings.ReplaceAll(want, " ", ", "), nil)
		return nil
	}
	required, allowed := strings.Fields(want), strings.Fields(want+" "+may)
	have := map[string]node{}
	for _, m := range n.members {
		if !slices.Contains(allowed, m.name) {
			f.fail(m.path, "unknown field; want "+strings.Join(allowed, ", "), nil)
			continue
		}
		have[m.name] = m
	}
	for _, name := range required {
		if _, ok := have[name]; !ok {
			path := name
			if n.path != "" {
				path = n.path + "." + name
			}
			f.fail(path, "missing", nil)
		}
	}
	return have
}

// text reads a text; a number will do where it is the whole value.
func (f *fields) text(n node) (string, bool) {
	switch n.kind {
	case "":
		return "", false // missing, which object has said
	case "text", "number":
		if strings.TrimSpace(n.text) == "" {
			f.fail(n.path, "empty", nil)
			return "", false
		}
		return n.text, true
	}
	f.fail(n.path, "got a "+n.kind+", want a text", nil)
	return "", false
}

// read reads a text with a parser of the library.
func read[T any](f *fields, n node, parse func(string) (T, error)) (v T) {
	s, ok := f.text(n)
	if !ok {
		return v
	}
	v, err := parse(s)
	if err != nil {
		f.fail(n.path, text.Quote(s)+": "+cause(err), err)
	}
	return v
}

// cause returns what is wrong without the operation and the text, which the
// field's own line has.
func cause(err error) string {
	var p *gauge.ParseError
	var s *row.SyntaxError
	var fit *row.FitError
	var f *gauge.FieldError
	switch {
	case errors.As(err, &fit):
		return fit.Cause()
	case errors.As(err, &p):
		return p.Cause
	case errors.As(err, &s):
		return strings.TrimPrefix(strings.TrimPrefix(s.Error(), "row: "), "line 1, ")
	case errors.As(err, &f):
		return "got " + f.Got + ", want " + f.Want
	}
	return err.Error()
}

// run reads one value for all groups or one for each.
func run[T any](f *fields, n node, groups int, parse func(string) (T, error)) grade.Run[T] {
	items := n.items
	if n.kind != "list" {
		items = []node{n}
	}
	var out grade.Run[T]
	for _, item := range items {
		out = append(out, read(f, item, parse))
	}
	if n.kind == "" || groups == 0 {
		return out
	}
	if len(out) != 1 && len(out) != groups {
		f.fail(n.path, fmt.Sprintf("a list of %d, want one value, or one for each of the %d groups of sizes", len(out), groups), nil)
		return out
	}
	for len(out) < groups {
		out = append(out, out[0])
	}
	return out
}

// check adds the error of a Validate: the library's Label.Length is the length
// of the brief's label.
func (f *fields) check(n node, err error) {
	if err == nil || n.kind == "" {
		return
	}
	path := n.path
	var field *gauge.FieldError
	if errors.As(err, &field) && n.kind == "object" {
		if parts := strings.Split(field.Field, "."); len(parts) > 1 {
			path += "." + strings.ToLower(parts[1])
		}
	}
	f.fail(path, cause(err), err)
}

const (
	required = "name terms units gauge hook chart sizes ease layout length armhole_depth neck_drop rows yarn"
	optional = "worked_gauge row_start"
)

func (f *fields) brief(n node) (b Brief) {
	o := f.object(n, required, optional)
	b.Name, _ = f.text(o["name"])
	b.Terms = read(f, o["terms"], row.ParseTerms)
	b.Units = read(f, o["units"], inOrCm)
	b.Fabric.Finished = read(f, o["gauge"], gauge.ParseGauge)
	if w, ok := o["worked_gauge"]; ok {
		b.Fabric.Worked = read(f, w, gauge.ParseGauge)
	}
	b.Hook = read(f, o["hook"], gauge.ParseHook)
	b.Chart = read(f, o["chart"], bodyChart)
	b.Groups = f.groups(o["sizes"], b.Chart)
	b.Ease = read(f, o["ease"], grade.ParseEase)
	b.Layout = read(f, o["layout"], layout)
	b.Length = run(f, o["length"], len(b.Groups), gauge.ParseLength)
	b.ArmholeDepth = run(f, o["armhole_depth"], len(b.Groups), gauge.ParseLength)
	b.NeckDrop = run(f, o["neck_drop"], len(b.Groups), gauge.ParseLength)
	b.Plan = f.plan(o["rows"], b.Terms)
	if start, ok := o["row_start"]; ok {
		b.RowStart = read(f, start, panel.ParseRowStart)
	}
	b.Yarn = f.yarn(o["yarn"])
	return b
}

func inOrCm(s string) (gauge.Unit, error) {
	switch s {
	case "in":
		return gauge.Inch, nil
	case "cm":
		return gauge.Centimetre, nil
	}
	return 0, errors.New("want in or cm")
}

func bodyChart(s string) (grade.Chart, error) {
	if !slices.Contains([]string{"women", "men", "youth", "child", "baby"}, s) {
		return grade.Chart{}, errors.New("want women, men, youth, child or baby")
	}
	return grade.Standard(s)
}

func layout(s string) (string, error) {
	if s != "open front" {
		return "", errors.New(`want "open front"`)
	}
	return s, nil
}

// notNegative reads a length that yarn can have.
func notNegative(s string) (gauge.Length, error) {
	l, err := gauge.ParseLength(s)
	if err == nil && l.Value.Sign() < 0 {
		return l, errors.New("less than nothing; want a length of 0 or more")
	}
	return l, err
}

func (f *fields) groups(n node, chart grade.Chart) grade.Run[grade.Group] {
	if n.kind == "" || len(chart.Sizes) == 0 {
		return nil
	}
	if n.kind != "list" {
		f.fail(n.path, "got a "+n.kind+`, want a list of groups: [["XS", "S"], ["M"]]`, nil)
		return nil
	}
	lists, before := [][]string{}, len(f.errs)
	for _, item := range n.items {
		if item.kind != "list" {
			f.fail(item.path, "got a "+item.kind+`, want a group of sizes: ["XS", "S"]`, nil)
			return nil
		}
		var names []string
		for _, m := range item.items {
			name, _ := f.text(m)
			names = append(names, name)
		}
		lists = append(lists, names)
	}
	if len(f.errs) > before {
		return nil
	}
	groups, err := chart.Groups(lists)
	if err != nil {
		f.fail(n.path, err.Error(), err)
	}
	return groups
}

func (f *fields) plan(n node, terms row.Terms) (p panel.Plan) {
	if n.kind == "" {
		return p
	}
	before := len(f.errs)
	o := f.object(n, "opening repeat closing", "")
	part := func(name string) (rows []row.Row) {
		list := o[name]
		if list.kind != "list" {
			if list.kind != "" {
				f.fail(list.path, "got a "+list.kind+", want a list of rows", nil)
			}
			return nil
		}
		for _, item := range list.items {
			rows = append(rows, read(f, item, func(s string) (row.Row, error) { return row.Parse(s, terms) }))
		}
		return rows
	}
	p.Opening, p.Repeat, p.Closing = part("opening"), part("repeat"), part("closing")
	if len(f.errs) == before {
		f.rows(p.Validate())
	}
	return p
}

// rows adds a complaint about rows that do not fit one another.
func (f *fields) rows(err error) {
	var r *panel.RowError
	switch {
	case errors.As(err, &r):
		f.fail(fmt.Sprintf("rows.%s[%d]", r.Part, r.Index), cause(err), err)
	case err != nil:
		f.fail("rows", err.Error(), err)
	}
}

func (f *fields) yarn(n node) (y Yarn) {
	if n.kind == "" {
		return y
	}
	o := f.object(n, "name fibre label swatch margin", "seam_factor tail_end")
	y.Name, _ = f.text(o["name"])
	y.Fibre, _ = f.text(o["fibre"])
	if l, ok := o["label"]; ok {
		before := len(f.errs)
		lo := f.object(l, "length mass", "")
		y.Label = yarn.Label{Length: read(f, lo["length"], yarn.ParseLength), Mass: read(f, lo["mass"], yarn.ParseMass)}
		if len(f.errs) == before {
			f.check(l, y.Label.Validate())
		}
	}
	if s, ok := o["swatch"]; ok {
		before := len(f.errs)
		so := f.object(s, "width height mass", "")
		y.Swatch = yarn.Swatch{Width: read(f, so["width"], gauge.ParseLength), Height: read(f, so["height"], gauge.ParseLength), Mass: read(f, so["mass"], yarn.ParseMass)}
		if len(f.errs) == before {
			f.check(s, y.Swatch.Validate())
		}
	}
	y.Sewing = yarn.WhipStitch()
	y.Margin = read(f, o["margin"], yarn.ParseMargin)
	if s, ok := o["seam_factor"]; ok {
		y.Sewing.Factor = read(f, s, decimal.NewFromString)
		f.check(s, yarn.Sewing{Factor: y.Sewing.Factor}.Validate())
	}
	if s, ok := o["tail_end"]; ok {
		y.Sewing.End = read(f, s, notNegative)
	}
	return y
}
