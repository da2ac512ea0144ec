package main

import (
	"bytes"
	"embed"
	"errors"
	"html/template"
	"strings"

	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/examples/internal/document"
	"example.com/panelmath/examples/internal/garment"
)

//go:embed page.html style.css live.js
var files embed.FS

var page = template.Must(template.ParseFS(files, "page.html"))

// make turns the form's values into a garment, or into what is wrong, by
// control. It holds no state, so that requests run side by side.
func (v values) make() (garment.Garment, map[string][]string) {
	data, err := v.brief()
	if err != nil {
		return garment.Garment{}, map[string][]string{"": {err.Error()}}
	}
	b, errs := brief.ReadAll(bytes.NewReader(data))
	if len(errs) > 0 {
		return garment.Garment{}, v.beside(errs)
	}
	g, err := garment.Make(b)
	if err != nil {
		e := new(brief.Error)
		if !errors.As(err, &e) {
			e = &brief.Error{Field: "brief", Cause: err.Error()}
		}
		return garment.Garment{}, v.beside([]*brief.Error{e})
	}
	if size := strings.TrimSpace(v[only]); size != "" {
		if g, err = g.Only(size); err != nil {
			return garment.Garment{}, map[string][]string{only: {err.Error()}}
		}
	}
	return g, nil
}

// written is the garment as a document, with its drawing.
func written(g garment.Garment) (document.Document, error) {
	return g.Document(garment.Options{Schematic: true})
}

// sheet is what page.html shows.
type sheet struct {
	Title   string
	Parts   []sheetPart
	Wrong   []control // the controls to mend
	More    int       // further ones that are not listed
	General []string  // what belongs to no control
	Pattern template.HTML
}

type sheetPart struct {
	Legend   string
	Controls []control
}

// control is a field with its value.
type control struct {
	field
	Value  string
	Errors []string
	Shown  bool
	Focus  bool // the first to mend
}

const listed = 4 // controls to mend at the foot of the form

func (v values) sheet(pattern template.HTML, wrong map[string][]string) sheet {
	s := sheet{Title: v["name"], Pattern: pattern, General: wrong[""]}
	for _, p := range form {
		out := sheetPart{Legend: p.Legend}
		for _, f := range p.Fields {
			c := control{field: f, Value: v[f.Name], Errors: wrong[f.Name], Shown: v.shown(f)}
			if len(c.Errors) > 0 {
				c.Focus = len(s.Wrong) == 0
				s.Wrong = append(s.Wrong, c)
			}
			out.Controls = append(out.Controls, c)
		}
		s.Parts = append(s.Parts, out)
	}
	if len(s.Wrong) > listed {
		s.Wrong, s.More = s.Wrong[:listed], len(s.Wrong)-listed
	}
	return s
}

// Asks are the values of the control it depends on, as the page has them.
func (c control) Asks() string { return strings.Join(c.Is, "|") }

// Known reports whether a choice has the control's value.
func (c control) Known() bool {
	for _, o := range c.Options {
		if o.Value == c.Value {
			return true
		}
	}
	return false
}

// Lines is how high the text of a control of several lines is: a long row takes
// two.
func (c control) Lines() int {
	const wide = 34 // characters of a line in the column of the form
	n := 1
	for _, s := range strings.Split(c.Value, "\n") {
		n += 1 + len(s)/wide
	}
	return min(n, 14)
}
