package rules_test

import (
	"go/ast"
	"go/doc"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// quoted is a text in a comment that something is said to print.
var quoted = regexp.MustCompile("\"[^\"]*\"|`[^`]*`")

// TestQuotedTextsArePrinted: what the doc of an Explain, Error or String quotes as
// its text stands in an example's output or in a test of the package, so that it
// can't outlive a change of the wording.
func TestQuotedTextsArePrinted(t *testing.T) {
	fset, folders := read(t)
	for _, f := range folders {
		if !f.public() || len(f.files) == 0 {
			continue
		}
		var held strings.Builder
		for _, file := range f.tests {
			for _, c := range file.Comments {
				held.WriteString(strings.Join(strings.Fields(c.Text()), " ") + "\n")
			}
			ast.Inspect(file, func(n ast.Node) bool {
				if lit, ok := n.(*ast.BasicLit); ok {
					if s, err := strconv.Unquote(lit.Value); err == nil {
						held.WriteString(s + "\n")
					}
				}
				return true
			})
		}
		p, err := doc.NewFromFiles(fset, f.files, "example.com/panelmath/"+f.path)
		if err != nil {
			t.Fatal(err)
		}
		for _, fn := range functions(p) {
			if !slices.Contains([]string{"Explain", "Error", "String"}, fn.Name) {
				continue
			}
			for _, q := range quoted.FindAllString(strings.Join(strings.Fields(fn.Doc), " "), -1) {
				q = strings.TrimRight(q[1:len(q)-1], ".")
				if len(q) > 15 && !strings.Contains(held.String(), q) {
					t.Errorf("%s: the doc of %s.%s quotes a text that no test of the package holds: %s", f.path, fn.Recv, fn.Name, q)
				}
			}
		}
	}
}
