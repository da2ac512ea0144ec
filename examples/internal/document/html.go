package document

import (
	_ "embed"
	"fmt"
	"html/template"
	"io"
	"strings"
)

//go:embed page.html
var pageHTML string

var page = template.Must(template.New("page").Funcs(template.FuncMap{
	"kind":  func(b Block) string { return strings.ToLower(strings.TrimPrefix(fmt.Sprintf("%T", b), "document.")) },
	"svg":   func(s string) template.HTML { return template.HTML(s[max(strings.Index(s, "<svg"), 0):]) },
	"id":    func(i int) string { return fmt.Sprintf("s%d", i+1) },
	"first": func(cells []string) string { return cells[0] },
	"rest":  func(cells []string) []string { return cells[1:] },
}).Parse(pageHTML))

// HTML writes d as one page that needs nothing else: no script, no style sheet,
// no font from elsewhere. It prints on A4 and Letter. In large print it is set in
// 18 point, black on white. The drawings must be SVG of our own making.
func (d Document) HTML(w io.Writer, large bool) error {
	return page.Execute(w, struct {
		Document
		Large bool
	}{d, large})
}

// Fragment writes the parts of d below its title, for a page that has its own
// head.
func (d Document) Fragment(w io.Writer) error { return page.ExecuteTemplate(w, "sections", d) }
