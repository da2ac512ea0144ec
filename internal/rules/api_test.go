package rules_test

import (
	"bytes"
	"flag"
	"go/ast"
	"go/doc"
	"go/printer"
	"go/token"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write the exported API to api.txt")

// TestAPI compares the exported API with the list in api.txt, one line a name.
// Where it changes on purpose, run `go test ./internal/rules -update`, read the
// difference, and say in DEVELOPERS.md what changed and why.
func TestAPI(t *testing.T) {
	fset, folders := read(t)
	var lines []string
	for _, f := range folders {
		if !f.public() || len(f.files) == 0 {
			continue
		}
		p, err := doc.NewFromFiles(fset, f.files, "example.com/panelmath/"+f.path)
		if err != nil {
			t.Fatal(err)
		}
		add := func(kind string, node ast.Node) {
			lines = append(lines, f.path+": "+kind+" "+oneLine(fset, node))
		}
		for _, group := range [][]*doc.Value{p.Consts, p.Vars} {
			for _, v := range group {
				for _, name := range v.Names {
					if ast.IsExported(name) {
						lines = append(lines, f.path+": "+v.Decl.Tok.String()+" "+name)
					}
				}
			}
		}
		for _, typ := range p.Types {
			for _, v := range append(typ.Consts, typ.Vars...) {
				for _, name := range v.Names {
					if ast.IsExported(name) {
						lines = append(lines, f.path+": "+v.Decl.Tok.String()+" "+name+" "+typ.Name)
					}
				}
			}
			for _, spec := range typ.Decl.Specs {
				add("type", spec)
			}
		}
		for _, fn := range functions(p) {
			fn.Decl.Doc, fn.Decl.Body = nil, nil
			add("", fn.Decl)
		}
	}
	got := strings.Join(lines, "\n") + "\n"
	file := filepath.Join("api.txt")
	if *update {
		if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	have, had := set(got), set(string(want))
	for line := range had {
		if !have[line] {
			t.Errorf("gone from the API, or changed: %s", line)
		}
	}
	for line := range have {
		if !had[line] {
			t.Errorf("new in the API: %s", line)
		}
	}
	if t.Failed() {
		t.Log("on purpose? go test ./internal/rules -update, and a line in DEVELOPERS.md")
	}
}

func set(s string) map[string]bool {
	m := map[string]bool{}
	for _, line := range strings.Split(strings.TrimSpace(s), "\n") {
		m[line] = true
	}
	return m
}

var spaces = regexp.MustCompile(`\s+`)

// oneLine prints a declaration without its comments.
func oneLine(fset *token.FileSet, node ast.Node) string {
	ast.Inspect(node, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.Field:
			n.Doc, n.Comment = nil, nil
		case *ast.TypeSpec:
			n.Doc, n.Comment = nil, nil
		}
		return true
	})
	var b bytes.Buffer
	if err := printer.Fprint(&b, fset, node); err != nil {
		panic(err)
	}
	s := regexp.MustCompile(`//[^\n]*`).ReplaceAllString(b.String(), "")
	return strings.TrimSpace(spaces.ReplaceAllString(s, " "))
}
