package rules_test

import (
	"fmt"
	"go/ast"
	"go/doc"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"sort"
	"strings"
	"testing"
)

const root = "../.."

// folder is one package: its sources and its tests, parsed.
type folder struct {
	path  string // "gauge", "panel/row"
	files []*ast.File
	tests []*ast.File
}

func (f folder) public() bool {
	top, _, _ := strings.Cut(f.path, "/")
	if strings.Contains(f.path, "/internal/") {
		return false
	}
	switch top {
	case "gauge", "grade", "panel", "seam", "yarn":
		return true
	}
	return false
}

// read parses every package of the main module. A folder with a go.mod of its
// own is another module and is left out.
func read(t *testing.T) (*token.FileSet, []folder) {
	t.Helper()
	fset := token.NewFileSet()
	byPath := map[string]*folder{}
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() {
			if path != root && (strings.HasPrefix(d.Name(), ".") || d.Name() == "testdata") {
				return filepath.SkipDir
			}
			if _, err := os.Stat(filepath.Join(path, "go.mod")); err == nil && path != root {
				return filepath.SkipDir
			}
			return nil
		}
		if !strings.HasSuffix(path, ".go") {
			return nil
		}
		file, err := parser.ParseFile(fset, path, nil, parser.ParseComments)
		if err != nil {
			return err
		}
		dir, _ := filepath.Rel(root, filepath.Dir(path))
		dir = filepath.ToSlash(dir)
		if byPath[dir] == nil {
			byPath[dir] = &folder{path: dir}
		}
		if strings.HasSuffix(path, "_test.go") {
			byPath[dir].tests = append(byPath[dir].tests, file)
		} else {
			byPath[dir].files = append(byPath[dir].files, file)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	var folders []folder
	for _, f := range byPath {
		folders = append(folders, *f)
	}
	sort.Slice(folders, func(i, j int) bool { return folders[i].path < folders[j].path })
	if len(folders) < 5 {
		t.Fatalf("read %d packages; the test looks in the wrong place", len(folders))
	}
	return fset, folders
}

// Names that bring a float or a rounded quotient into the arithmetic, or a
// global of the decimal library.
const banned = " float32 float64 Float64 InexactFloat64 NewFromFloat NewFromFloat32 NewFromFloatWithExponent BigFloat SetFloat64 ParseFloat" +
	" Div DivRound" +
	" DivisionPrecision PowPrecisionNegativeExponent MarshalJSONWithoutQuotes TrimTrailingZeros ExpMaxIterations "

func TestNoFloatNoDivNoGlobals(t *testing.T) {
	fset, folders := read(t)
	for _, f := range folders {
		for _, file := range f.files {
			ast.Inspect(file, func(n ast.Node) bool {
				if id, ok := n.(*ast.Ident); ok && strings.Contains(banned, " "+id.Name+" ") {
					t.Errorf("%v: %s: no float and no rounding division on the way to a number", fset.Position(id.Pos()), id.Name)
				}
				return true
			})
		}
	}
}

func TestNoPackageVariableCanChange(t *testing.T) {
	fset, folders := read(t)
	for _, f := range folders {
		if strings.HasPrefix(f.path, "examples") {
			continue
		}
		for _, file := range f.files {
			for _, decl := range file.Decls {
				gen, ok := decl.(*ast.GenDecl)
				if !ok || gen.Tok != token.VAR {
					continue
				}
				for _, spec := range gen.Specs {
					v := spec.(*ast.ValueSpec)
					if !fixed(gen, v) {
						t.Errorf("%v: var %s: only Err sentinels, embedded data and unexported arrays", fset.Position(v.Pos()), v.Names[0])
					}
				}
			}
		}
	}
}

// fixed reports whether v is a sentinel error, a compile-time assertion,
// embedded text, or an unexported array or replacer, none of which code here
// writes to.
func fixed(gen *ast.GenDecl, v *ast.ValueSpec) bool {
	for _, c := range []*ast.CommentGroup{gen.Doc, v.Doc} {
		if c != nil {
			for _, line := range c.List {
				if strings.HasPrefix(line.Text, "//go:embed ") {
					return !v.Names[0].IsExported()
				}
			}
		}
	}
	for i, name := range v.Names {
		switch {
		case name.Name == "_":
		case strings.HasPrefix(name.Name, "Err") || strings.HasPrefix(name.Name, "err"):
		case name.IsExported() || i >= len(v.Values):
			return false
		default:
			switch x := v.Values[i].(type) {
			case *ast.CompositeLit:
				if a, ok := x.Type.(*ast.ArrayType); !ok || a.Len == nil {
					return false
				}
			case *ast.CallExpr:
				if s := fmt.Sprint(x.Fun); s != "&{strings NewReplacer}" {
					return false
				}
			default:
				return false
			}
		}
	}
	return true
}

func TestEveryExportedNameIsDocumented(t *testing.T) {
	fset, folders := read(t)
	for _, f := range folders {
		if !f.public() || len(f.files) == 0 {
			continue
		}
		p, err := doc.NewFromFiles(fset, f.files, "example.com/panelmath/"+f.path)
		if err != nil {
			t.Fatal(err)
		}
		if len(p.Doc) < 40 {
			t.Errorf("%s: no package doc", f.path)
		}
		for _, fn := range functions(p) {
			if strings.TrimSpace(fn.Doc) == "" {
				t.Errorf("%s: %s%s has no doc comment", f.path, fn.Recv, "."+fn.Name)
			}
		}
		for _, typ := range p.Types {
			if strings.TrimSpace(typ.Doc) == "" {
				t.Errorf("%s: type %s has no doc comment", f.path, typ.Name)
			}
			values(t, f.path, typ.Consts)
			values(t, f.path, typ.Vars)
		}
		values(t, f.path, p.Consts)
		values(t, f.path, p.Vars)
	}
}

// values wants a comment on the group or on each name of it.
func values(t *testing.T, path string, groups []*doc.Value) {
	for _, g := range groups {
		if strings.TrimSpace(g.Doc) != "" {
			continue
		}
		for _, spec := range g.Decl.Specs {
			v := spec.(*ast.ValueSpec)
			if v.Doc == nil && v.Comment == nil {
				t.Errorf("%s: %s has no doc comment", path, v.Names[0])
			}
		}
	}
}

func functions(p *doc.Package) []*doc.Func {
	all := append([]*doc.Func{}, p.Funcs...)
	for _, typ := range p.Types {
		all = append(all, typ.Funcs...)
		all = append(all, typ.Methods...)
	}
	return all
}

func TestEveryExportedFunctionHasACheckedExample(t *testing.T) {
	fset, folders := read(t)
	for _, f := range folders {
		if !f.public() || len(f.files) == 0 {
			continue
		}
		have := map[string]bool{}
		for _, ex := range doc.Examples(f.tests...) {
			if ex.Output == "" && !ex.EmptyOutput {
				t.Errorf("%s: Example%s has no // Output: and is not run", f.path, ex.Name)
				continue
			}
			// ExampleGauge_Validate_zero is an example of Gauge.Validate.
			parts := strings.Split(ex.Name, "_")
			have[parts[0]] = true
			if len(parts) > 1 {
				have[parts[0]+"_"+parts[1]] = true
			}
		}
		p, err := doc.NewFromFiles(fset, f.files, "example.com/panelmath/"+f.path)
		if err != nil {
			t.Fatal(err)
		}
		for _, fn := range functions(p) {
			name := fn.Name
			if fn.Recv != "" {
				recv, _, _ := strings.Cut(strings.TrimPrefix(fn.Recv, "*"), "[")
				name = recv + "_" + name
			}
			if !have[name] {
				t.Errorf("%s: no checked example Example%s", f.path, name)
			}
		}
	}
}
