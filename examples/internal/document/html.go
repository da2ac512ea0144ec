package document

import (
	_ "embed"
	"fmt"
	"html/template"
	"io"
	"regexp"
	"strings"
	"unicode/utf8"
)

var (
	//go:embed page.html
	pageHTML string
	//go:embed pattern.css
	patternCSS string
)

var page = template.Must(template.New("page").Funcs(template.FuncMap{
	"kind": func(b Block) string { return strings.ToLower(strings.TrimPrefix(fmt.Sprintf("%T", b), "document.")) },
	// A short label stays in one piece, a long one may break.
	"short": func(s string) bool { return utf8.RuneCountInString(s) <= 10 },
	"css":   func() template.CSS { return template.CSS(patternCSS) },
}).Parse(pageHTML))

// HTML writes d as one page that needs nothing else: no script, no style sheet,
// no font from elsewhere. It prints on A4 and Letter. In large print it is set in
// 18 point, black on white. The drawings must be SVG of our own making.
func (d Document) HTML(w io.Writer, large bool) error {
	return page.Execute(w, d.view(large))
}

// Fragment writes d, its title as a heading of the second level, for a page that
// has a head and a first heading of its own.
func (d Document) Fragment(w io.Writer) error {
	v := d.view(false)
	v.Nested = true
	return page.ExecuteTemplate(w, "pattern", v)
}

// Style returns the style sheet of the pattern's parts, for a page that shows a
// Fragment in an element of the class pattern.
func Style() string { return patternCSS }

// view is a document as the templates see it.
type view struct {
	Title    string
	Lang     string
	Large    bool // print
	Nested   bool // below a first heading of the page
	Sections []section
}

type section struct {
	ID, Heading string
	Blocks      []Block
}

// drawing is a figure whose SVG goes into the page as it is.
type drawing struct {
	Figure
	SVG template.HTML
}

func (d Document) view(large bool) view {
	v := view{Title: d.Title, Lang: d.Lang, Large: large}
	if v.Lang == "" {
		v.Lang = "en"
	}
	figures := 0
	for i, s := range d.Sections {
		out := section{ID: fmt.Sprintf("section-%d", i+1), Heading: s.Heading}
		for _, b := range s.Blocks {
			if f, ok := b.(Figure); ok {
				figures++
				b = drawing{f, inline(f.SVG, fmt.Sprintf("figure-%d-", figures))}
			}
			out.Blocks = append(out.Blocks, b)
		}
		v.Sections = append(v.Sections, out)
	}
	return v
}

// inline makes a drawing part of a page: without the XML declaration, and with
// names that no other drawing has.
func inline(svg, prefix string) template.HTML {
	_, rest, _ := strings.Cut(svg, "<svg")
	return template.HTML(names.ReplaceAllStringFunc("<svg"+rest, func(attribute string) string {
		key, value, _ := strings.Cut(strings.TrimSuffix(attribute, `"`), `="`)
		words := strings.Fields(value)
		for i := range words {
			words[i] = prefix + words[i]
		}
		return key + `="` + strings.Join(words, " ") + `"`
	}))
}

// names are the attributes that give or use a name. In the text of a drawing a
// quotation mark is escaped, so that none is found there.
var names = regexp.MustCompile(`\s(id|aria-labelledby|aria-describedby)="[^"]*"`)
