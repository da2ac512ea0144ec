package main

import (
	"iter"
	"slices"
	"strings"

	"example.com/panelmath/examples/internal/brief"
)

// part is a group of fields with a heading.
type part struct {
	Legend string
	Fields []field
}

// field is one control of the form. Its name is its place in the brief,
// "yarn.label.length", after the layout that it is for where another layout has
// a control of its own for the same place: "poncho-width".
type field struct {
	Name, Label, Hint string
	Kind              kind
	Options           []option // of a choice
	Optional          bool     // not sent when empty
	Start             string   // its value when the page is opened

	// The control on which it depends, and the values of that control that ask
	// for it; none where it is always asked for.
	When string
	Is   []string
}

type kind string

// How the text of a control becomes a value of the brief.
const (
	line   kind = "line"   // a text
	list   kind = "list"   // texts, semicolons between them
	groups kind = "groups" // lists of texts: semicolons between groups, commas inside
	rows   kind = "rows"   // texts, one a line
	rates  kind = "rates"  // "hdc 20 = 96 in", one a line
	choice kind = "choice" // one of the options
	view   kind = "view"   // no part of the brief: what the page shows
)

type option struct{ Value, Text string }

// words are options that say what they are.
func words(values ...string) (out []option) {
	for _, v := range values {
		out = append(out, option{v, v})
	}
	return out
}

func layouts() (out []option) {
	for _, l := range brief.Layouts() {
		out = append(out, option{string(l), string(l)})
	}
	return out
}

// ways are how the quantity of yarn is found: the field yarn.<way> of a brief.
func ways() []option {
	return []option{{"swatch", "a swatch, weighed"}, {"unravelled", "a swatch, unravelled"}, {"stitches", "stitches, unravelled"}, {"project", "a finished piece"}}
}

const each = "One for all groups, or one for each: 9 in; 10 in"

// form is the whole form, in the order in which a designer decides. A new field
// of the brief is a new line here. It does not change while the program runs.
var form = fit([]part{
	{"Garment", []field{
		{Name: "name", Label: "Title of the pattern", Kind: line, Start: "Orchard wrap"},
		{Name: "layout", Label: "Layout", Kind: choice, Options: layouts(), Hint: "Which rectangles, and how they are joined."},
		{Name: "direction", Label: "Direction of the rows", Kind: choice, Options: words("lengthwise", "crosswise"), Hint: "Along the length of the garment, or across it."},
		{Name: "terms", Label: "Terms", Kind: choice, Options: words("US", "UK"), Hint: "The language of your rows and of the pattern."},
		{Name: "units", Label: "Your unit", Kind: choice, Options: words("in", "cm"), Hint: "The column of the size chart that is used, and the unit printed first."},
	}},
	{"Gauge", []field{
		{Name: "gauge", Label: "Finished gauge", Kind: line, Hint: "Washed, blocked and dry: 13 sts and 9 rows = 4 in", Start: "13 sts and 9 rows = 4 in"},
		{Name: "worked_gauge", Label: "Gauge on the hook", Kind: line, Optional: true, Hint: "Before washing, if it differs.", Start: "13.5 sts and 9 rows = 4 in"},
		{Name: "hook", Label: "Hook", Kind: line, Hint: "Metric size: 5.5 mm", Start: "5.5 mm"},
	}},
	{"Sizes", []field{
		{Name: "chart", Label: "Size chart", Kind: choice, Options: words("women", "men", "youth", "child", "baby")},
		{Name: "sizes", Label: "Groups of sizes", Kind: groups, Hint: "Sizes of a group with commas, groups with semicolons: XS, S; M, L", Start: "XS, S; M, L; XL, 2X; 3X, 4X, 5X"},
		{Name: "ease", Label: "Ease", Kind: line, Hint: "Added to the largest chest of a group. A length or a percentage, may be negative: 9 in", Start: "9 in"},
		{Name: "width", Label: "Width", Kind: list, Hint: "Along the fold. " + each, Start: "38 in; 46 in; 54 in; 62 in"},
		{Name: "poncho-width", Label: "Width of a panel", Kind: list, Hint: each, Start: "16 in; 17 in; 18 in; 19 in"},
		{Name: "cocoon-length", Label: "Length", Kind: list, Hint: "From the fold to the open edge. " + each, Start: "18 in"},
		{Name: "length", Label: "Length", Kind: list, Hint: "From the shoulder down. " + each, Start: "25 in; 25 1/2 in; 26 in; 26 1/2 in"},
		{Name: "armhole_depth", Label: "Armhole depth", Kind: list, Hint: "From the shoulder, or the fold, down.", Start: "9 1/2 in; 10 in; 11 in; 12 in"},
		{Name: "neck_drop", Label: "Neck drop", Kind: list, Hint: "How far below the fold the centre back seam stops.", Start: "1 1/4 in"},
		{Name: "neck_depth", Label: "Neck depth", Kind: list, Hint: "How far below the fold the front seam stops.", Start: "10 in"},
		{Name: "neck_width", Label: "Neck width", Kind: list, Hint: "Left open between the shoulder seams.", Start: "11 in"},
		{Name: "neck_round", Label: "Neck round", Kind: list, Start: "24 in"},
		{Name: "head", Label: "Round of the head", Kind: list, Hint: "The neck has to let it through.", Start: "22 in"},
		{Name: "neck_stretch", Label: "Stretch of the neck edge", Kind: line, Optional: true, Hint: "The share by which it gives: 10%"},
		{Name: "hem_slit", Label: "Slit at the hem", Kind: list, Optional: true, Hint: "Left open at each side from the hem up."},
		{Name: "sleeve_length", Label: "Sleeve length", Kind: list, Optional: true, Hint: "Without it there is no sleeve."},
	}},
	{"Rows", []field{
		{Name: "rows.opening", Label: "Opening rows, worked once", Kind: rows, Hint: "One row a line.",
			Start: "fhdc\nhdc in each st across\ndc in first st, *ch 2, sk 2, dc in next st; rep from * across\nhdc in each st and 2 hdc in each ch-2 sp across"},
		{Name: "rows.repeat", Label: "Rows that repeat", Kind: rows, Hint: "As often as the measure asks.",
			Start: "hdc in each st across\nhdc in each st across\nhdc in each st across\ndc in first st, *ch 2, sk 2, dc in next st; rep from * across\nhdc in each st and 2 hdc in each ch-2 sp across"},
		{Name: "rows.closing", Label: "Closing rows, worked once", Kind: rows, Hint: "May be empty.", Start: "hdc in each st across"},
		{Name: "row_start", Label: "Start of a row", Kind: choice, Options: words("chain does not count", "chain counts", "no chain"), Hint: "Words only; it never changes a count."},
	}},
	{"Yarn", []field{
		{Name: "yarn.name", Label: "Yarn", Kind: line, Start: "a DK cotton blend"},
		{Name: "yarn.fibre", Label: "Fibre", Kind: line, Start: "cotton blend"},
		{Name: "yarn.label.length", Label: "Length of a skein", Kind: line, Hint: "As the label says: 230 yd", Start: "230 yd"},
		{Name: "yarn.label.mass", Label: "Mass of a skein", Kind: line, Hint: "As the label says: 100 g", Start: "100 g"},
		{Name: way, Label: "The quantity is found by", Kind: view, Options: ways()},
		{Name: "yarn.swatch.width", Label: "Swatch, width", Kind: line, Hint: "Finished: 6 in", Start: "6 in"},
		{Name: "yarn.swatch.height", Label: "Swatch, height", Kind: line, Start: "6 in"},
		{Name: "yarn.swatch.mass", Label: "Swatch, mass", Kind: line, Start: "14.5 g"},
		{Name: "yarn.unravelled.width", Label: "Swatch, width", Kind: line, Hint: "Finished: 6 in", Start: "6 in"},
		{Name: "yarn.unravelled.height", Label: "Swatch, height", Kind: line, Start: "6 in"},
		{Name: "yarn.unravelled.length", Label: "Yarn it gave", Kind: line, Hint: "Unravelled, not stretched: 33 yd", Start: "33 yd"},
		{Name: "yarn.stitches", Label: "Stitches", Kind: rates, Hint: "One kind a line, ch for the chains of spaces: hdc 20 = 60 in",
			Start: "fhdc 20 = 80 in\nhdc 20 = 60 in\ndc 20 = 80 in\nch 20 = 15 in"},
		{Name: "yarn.project.width", Label: "Finished piece, width", Kind: line, Hint: "In the same fabric: 20 in", Start: "20 in"},
		{Name: "yarn.project.height", Label: "Finished piece, height", Kind: line, Start: "60 in"},
		{Name: "yarn.project.mass", Label: "Finished piece, mass", Kind: line, Optional: true, Hint: "Or the two below.", Start: "480 g"},
		{Name: "yarn.project.skeins", Label: "Skeins begun", Kind: line, Optional: true},
		{Name: "yarn.project.left", Label: "Mass left over", Kind: line, Optional: true},
		{Name: "yarn.margin", Label: "Margin", Kind: line, Hint: "Added to the calculated quantity: 10%", Start: "10%"},
		{Name: "yarn.seam_factor", Label: "Yarn per length of seam", Kind: line, Optional: true, Hint: "2.5 where nothing is given."},
		{Name: "yarn.tail_end", Label: "Yarn at each end of a seam", Kind: line, Optional: true, Hint: "6 in where nothing is given."},
	}},
	{"Print", []field{
		{Name: only, Label: "One size alone", Kind: view, Optional: true, Hint: "With plain numbers, by its label: M–L"},
	}},
})

// The two controls that are no part of the brief.
const (
	way  = "yarn"
	only = "size"
)

// fields returns all fields in order.
func fields() iter.Seq[field] {
	return func(yield func(field) bool) {
		for _, p := range form {
			for _, f := range p.Fields {
				if !yield(f) {
					return
				}
			}
		}
	}
}

// place is where the value stands in the brief.
func (f field) place() string { return f.Name[strings.Index(f.Name, "-")+1:] }

// fit finds out which fields belong to which layouts, as the brief has it, and
// to which way to the quantity of yarn.
func fit(parts []part) []part {
	layouts := map[string][]string{} // by name of the field
	for _, l := range brief.Layouts() {
		for _, name := range strings.Fields(l.Required() + " " + l.Optional()) {
			layouts[name] = append(layouts[name], string(l))
		}
	}
	for _, p := range parts {
		for _, f := range p.Fields {
			if layout, _, own := strings.Cut(f.Name, "-"); own {
				layouts[f.Name] = []string{layout}
				layouts[f.place()] = slices.DeleteFunc(layouts[f.place()], func(l string) bool { return l == layout })
			}
		}
	}
	for _, p := range parts {
		for i, f := range p.Fields {
			if n := len(layouts[f.Name]); n > 0 && n < len(brief.Layouts()) {
				p.Fields[i].When, p.Fields[i].Is = "layout", layouts[f.Name]
			}
			for _, w := range ways() {
				if name := way + "." + w.Value; f.Name == name || strings.HasPrefix(f.Name, name+".") {
					p.Fields[i].When, p.Fields[i].Is = way, []string{w.Value}
				}
			}
		}
	}
	return parts
}
