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
	"unicode"

	"example.com/panelmath/gauge"
	"example.com/panelmath/gauge/hook"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/yarn"
)

// Brief is a brief that has been read: every field is a value of the library.
type Brief struct {
	Name        string
	Terms       row.Terms
	Units       gauge.Unit // Inch or Centimetre: the chart's column and the unit printed first
	Fabric      gauge.Fabric
	Hook        hook.Hook
	Chart       grade.Chart
	Groups      grade.Run[grade.Group]
	Ease        grade.Ease
	Layout      Layout
	Crosswise   bool // rows run across the garment
	Plan        panel.Plan
	RowStart    panel.RowStart
	NeckStretch gauge.Ratio
	Yarn        Yarn

	lengths map[string]grade.Run[gauge.Length] // of the layout, one for each group
}

// Given reports whether the brief gives a length of the layout: "hem_slit".
func (b Brief) Given(field string) bool { return len(b.lengths[field]) > 0 }

// At returns a length of the layout for a group, nothing where it is not given.
func (b Brief) At(field string, group int) gauge.Measurement {
	if run := b.lengths[field]; group < len(run) {
		return run[group].Measurement()
	}
	return gauge.Measurement{}
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
		f.fail(n.path, "got "+n.a()+", want an object with "+strings.ReplaceAll(want, " ", ", "), nil)
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
	f.fail(n.path, "got "+n.a()+", want a text", nil)
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
		// Without the library's name of the field: "Ease.Value: got ...".
		if name, rest, ok := strings.Cut(p.Cause, ": got "); ok && name != "" && unicode.IsUpper(rune(name[0])) {
			return "got " + rest
		}
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

// check adds the error of a Validate, unless something below the node is wrong
// already: the library's Label.Length is the length of the brief's label.
func (f *fields) check(n node, validate func() error) {
	for _, e := range f.errs {
		if strings.HasPrefix(e.Field, n.path) {
			return
		}
	}
	err := validate()
	if err == nil {
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

func (f *fields) brief(n node) (b Brief) {
	use := OpenFront
	for _, m := range n.members {
		if l, err := parseLayout(m.text); m.name == "layout" && err == nil {
			use = l
		}
	}
	o := f.object(n, use.Required(), use.Optional())
	b.Name, _ = f.text(o["name"])
	b.Terms = read(f, o["terms"], row.ParseTerms)
	b.Units = read(f, o["units"], inOrCm)
	b.Fabric.Finished = read(f, o["gauge"], gauge.ParseGauge)
	if w, ok := o["worked_gauge"]; ok {
		b.Fabric.Worked = read(f, w, gauge.ParseGauge)
	}
	b.Hook = read(f, o["hook"], hook.Parse)
	b.Chart = read(f, o["chart"], bodyChart)
	b.Groups = f.groups(o["sizes"], b.Chart)
	if e, ok := o["ease"]; ok {
		b.Ease = read(f, e, grade.ParseEase)
	}
	b.Layout = read(f, o["layout"], parseLayout)
	if d, ok := o["direction"]; ok {
		b.Crosswise = read(f, d, crosswise)
	}
	b.lengths = map[string]grade.Run[gauge.Length]{}
	for _, name := range use.Lengths() {
		if l, ok := o[name]; ok {
			b.lengths[name] = run(f, l, len(b.Groups), gauge.ParseLength)
		}
	}
	if slits := b.lengths["hem_slit"]; len(slits) > 1 && slices.ContainsFunc(slits, func(l gauge.Length) bool { return l.Value.IsZero() != slits[0].Value.IsZero() }) {
		f.fail("hem_slit", "none in one size and one in another: want a slit in every size, or in none", nil)
	}
	if s, ok := o["neck_stretch"]; ok {
		b.NeckStretch = read(f, s, stretch)
	}
	b.Plan = f.plan(o["rows"], b.Terms)
	if start, ok := o["row_start"]; ok {
		b.RowStart = read(f, start, panel.ParseRowStart)
	}
	b.Yarn = f.yarn(o["yarn"], b.Terms)
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

func crosswise(s string) (bool, error) {
	switch s {
	case "lengthwise":
		return false, nil
	case "crosswise":
		return true, nil
	}
	return false, errors.New("want lengthwise or crosswise")
}

// stretch reads the share by which a neck edge gives: 10% is 1/10.
func stretch(s string) (gauge.Ratio, error) {
	m, err := yarn.ParseMargin(s)
	if err != nil {
		return gauge.Ratio{}, err
	}
	share, err := gauge.FromDecimal(m.Percent.Shift(-2))
	if err != nil || share.Sign() < 0 || share.Cmp(gauge.Int(1)) > 0 {
		return gauge.Ratio{}, errors.New("want 0% to 100%")
	}
	return share, nil
}

func (f *fields) groups(n node, chart grade.Chart) grade.Run[grade.Group] {
	if n.kind == "" || len(chart.Sizes) == 0 {
		return nil
	}
	if n.kind != "list" {
		f.fail(n.path, "got "+n.a()+`, want a list of groups: [["XS", "S"], ["M"]]`, nil)
		return nil
	}
	lists, before := [][]string{}, len(f.errs)
	for _, item := range n.items {
		if item.kind != "list" {
			f.fail(item.path, "got "+item.a()+`, want a group of sizes: ["XS", "S"]`, nil)
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
				f.fail(list.path, "got "+list.a()+", want a list of rows", nil)
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
		f.rows(p, p.Validate())
	}
	return p
}

// rows adds a complaint about rows that do not fit one another.
func (f *fields) rows(p panel.Plan, err error) {
	var r *panel.RowError
	switch {
	case errors.As(err, &r):
		why := cause(err)
		if r.Pass > 1 {
			why = "when the repeat begins again: " + why
		}
		f.fail(fmt.Sprintf("rows.%s[%d]", r.Part, r.Index), why, err)
	case err != nil && len(p.Opening) == 0:
		f.fail("rows.opening", cause(err), err)
	case err != nil:
		f.fail("rows", cause(err), err)
	}
}
