package rules_test

import (
	"go/ast"
	"reflect"
	"regexp"
	"strings"
	"testing"
)

var snake = regexp.MustCompile(`^[a-z][a-z0-9]*(_[a-z0-9]+)*$`)

// TestEveryFieldHasItsJSONName: a file that was written stays readable when a
// field is renamed in Go. Errors are not written to files; a struct with a text
// form has no fields in JSON, and the parts of a row stand in the row's text.
func TestEveryFieldHasItsJSONName(t *testing.T) {
	_, folders := read(t)
	for _, f := range folders {
		if !f.public() {
			continue
		}
		partOfRow := func(typ string) bool { return f.path == "panel/row" && typ != "Abbreviation" }
		text := map[string]bool{}
		for _, file := range f.files {
			for _, d := range file.Decls {
				if fn, ok := d.(*ast.FuncDecl); ok && fn.Recv != nil && (fn.Name.Name == "MarshalText" || fn.Name.Name == "MarshalJSON") {
					typ := fn.Recv.List[0].Type
					if star, ok := typ.(*ast.StarExpr); ok {
						typ = star.X
					}
					if id, ok := typ.(*ast.Ident); ok {
						text[id.Name] = true
					}
				}
			}
		}
		for _, file := range f.files {
			ast.Inspect(file, func(n ast.Node) bool {
				spec, ok := n.(*ast.TypeSpec)
				if !ok {
					return true
				}
				st, ok := spec.Type.(*ast.StructType)
				if !ok || !spec.Name.IsExported() || text[spec.Name.Name] || strings.HasSuffix(spec.Name.Name, "Error") || partOfRow(spec.Name.Name) {
					return true
				}
				for _, field := range st.Fields.List {
					for _, name := range field.Names {
						if !name.IsExported() {
							continue
						}
						tag := ""
						if field.Tag != nil {
							tag = reflect.StructTag(strings.Trim(field.Tag.Value, "`")).Get("json")
						}
						if key, _, _ := strings.Cut(tag, ","); tag != "-" && !snake.MatchString(key) {
							t.Errorf("%s: %s.%s has no snake_case json name", f.path, spec.Name.Name, name.Name)
						}
					}
				}
				return true
			})
		}
	}
}
