package rules_test

import (
	"bytes"
	"encoding"
	"encoding/json"
	"errors"
	"go/ast"
	"io/fs"
	"os"
	"path/filepath"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/gauge/hook"
	"example.com/panelmath/gauge/offgauge"
	"example.com/panelmath/gauge/swatch"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/caution"
	"example.com/panelmath/grade/check"
	"example.com/panelmath/grade/fit"
	"example.com/panelmath/grade/notation"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/panel/proof"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/panel/schematic"
	"example.com/panelmath/panel/work"
	"example.com/panelmath/seam"
	"example.com/panelmath/seam/spread"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/care"
	"example.com/panelmath/yarn/colour"
	"example.com/panelmath/yarn/printed"
	"example.com/panelmath/yarn/stash"
	"example.com/panelmath/yarn/usage"
	"example.com/panelmath/yarn/weight"
	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"
)

// structs is one value of every public struct that can be kept in a file.
var structs = []any{
	gauge.Count{}, gauge.Fabric{}, gauge.Gauge{}, gauge.Growth{}, gauge.Length{}, gauge.Measurement{}, gauge.Over{}, gauge.Ratio{}, gauge.Rule{},
	hook.Hook{}, hook.Label{},
	offgauge.Centred{}, offgauge.Change{}, offgauge.Parts{},
	swatch.Comparison{}, swatch.Range{}, swatch.Reading{}, swatch.Spread{}, swatch.Swatch{},
	grade.Body{}, grade.Cell{}, grade.Change{}, grade.Chart{}, grade.Ease{}, grade.Gap{}, grade.Group{}, grade.MemberEase{}, grade.Ruling{}, grade.Smoothed{},
	caution.Caution{},
	check.Fabric{}, check.Finding{}, check.List{},
	fit.Choice{}, fit.Class{}, fit.Criterion{}, fit.Measured{}, fit.Part{}, fit.Report{}, fit.Split{}, fit.Wearer{}, fit.Window{}, fit.Worn{},
	notation.Lengths{},
	panel.Height{}, panel.Instructions{}, panel.Line{}, panel.Panel{}, panel.Plan{}, panel.Solved{}, panel.Step{}, panel.StitchHeight{}, panel.Writing{},
	layout.ClosedFront{}, layout.Cocoon{}, layout.Fold{}, layout.FrontAndBack{}, layout.Layout{}, layout.Measure{}, layout.OpenFront{}, layout.Opening{},
	layout.Part{}, layout.Piece{}, layout.Poncho{}, layout.Rectangle{}, layout.Seam{}, layout.Side{}, layout.Stretch{},
	proof.Again{}, proof.Count{}, proof.End{}, proof.Finding{}, proof.Line{}, proof.Text{},
	row.Abbreviation{}, row.Row{},
	schematic.All{}, schematic.KeyLine{}, schematic.Options{},
	work.Pass{}, work.Solution{}, work.Sum{}, work.Tally{}, work.Worked{},
	seam.Body{}, seam.ClosedFront{}, seam.Cocoon{}, seam.Finishing{}, seam.FrontAndBack{}, seam.Garment{}, seam.Join{}, seam.NewLength{}, seam.OpenFront{},
	seam.Poncho{}, seam.Seam{}, seam.Sewing{}, seam.Tail{}, seam.Tails{}, seam.Text{},
	spread.Group{}, spread.Match{}, spread.Spacing{},
	yarn.Area{}, yarn.Comparison{}, yarn.ExactMass{}, yarn.Label{}, yarn.Length{}, yarn.Line{}, yarn.Margin{}, yarn.Mass{}, yarn.Quantity{}, yarn.Reading{},
	yarn.Sewing{}, yarn.Swatch{}, yarn.Yarn{},
	care.Advice{}, care.Caution{},
	colour.Band{}, colour.Course{}, colour.End{}, colour.Row{}, colour.Run{}, colour.Sequence{}, colour.Skeins{}, colour.Start{},
	printed.Finding{}, printed.Interval{}, printed.Size{},
	stash.Assignment{}, stash.Holding{}, stash.Largest{}, stash.Lot{},
	usage.Count{}, usage.Fitted{}, usage.Project{}, usage.Rate{}, usage.Rates{}, usage.Residual{}, usage.RowSample{}, usage.Sample{},
	weight.Grist{}, weight.Measured{}, weight.Range{}, weight.Substitution{}, weight.Verdict{},
}

// samples are the values whose text or rows must hold; in JSON.
var samples = map[reflect.Type]string{
	reflect.TypeFor[decimal.Decimal]():   `"13.5"`,
	reflect.TypeFor[gauge.Length]():      `"20.5 in"`,
	reflect.TypeFor[gauge.Measurement](): `"13000/3 mm"`,
	reflect.TypeFor[gauge.Ratio]():       `"511/8"`,
	reflect.TypeFor[gauge.Over]():        `"13.5 sts = 4 in"`,
	reflect.TypeFor[gauge.Gauge]():       `"13 sts and 9 rows = 4 in"`,
	reflect.TypeFor[gauge.Rule]():        `"multiple of 6 + 1, at least 7, ties down"`,
	reflect.TypeFor[hook.Hook]():         `"5.5 mm"`,
	reflect.TypeFor[grade.Ease]():        `"-5%"`,
	reflect.TypeFor[row.Row]():           `"dc in first st, *ch 2, sk 2, dc in next st; rep from * across"`,
	reflect.TypeFor[row.Space]():         `2`,
	reflect.TypeFor[work.Tally]():        `{"stitches":5,"chains":4,"spaces":2,"kinds":{"sc":3,"dc":2}}`,
	reflect.TypeFor[panel.Plan]():        `{"opening":["fhdc"],"repeat":["hdc in each st across"],"closing":["sc in each st across"]}`,
	reflect.TypeFor[panel.Solved]():      `{"plan":{"opening":["fhdc","dc in first st, *ch 2, sk 2, dc in next st; rep from * across"],"repeat":null,"closing":null},"legal":"multiple of 3 + 1, at least 4"}`,
	reflect.TypeFor[work.Solution]():     `{"rule":"multiple of 2 + 1, at least 3","opening":["fsc"],"repeat":["dc in first st, *ch 1, sk 1, dc in next st; rep from * across","sc in each st and in each ch-1 sp across"],"size":1}`,
	reflect.TypeFor[yarn.Area]():         `"511/8 sq mm"`,
	reflect.TypeFor[yarn.ExactMass]():    `"511/8 g"`,
	reflect.TypeFor[yarn.Length]():       `"230 yd"`,
	reflect.TypeFor[yarn.Margin]():       `"10%"`,
	reflect.TypeFor[yarn.Mass]():         `"3.5 oz"`,
	reflect.TypeFor[weight.Grist]():      `"590 m/100 g"`,
}

// fill gives every exported field under v a value of its own, none of them zero.
func fill(t *testing.T, v reflect.Value, n *int) {
	t.Helper()
	*n++
	if text, ok := samples[v.Type()]; ok {
		if err := json.Unmarshal([]byte(text), v.Addr().Interface()); err != nil {
			t.Fatalf("%s: %v", v.Type(), err)
		}
		return
	}
	switch v.Kind() {
	case reflect.Uint8: // an enumeration: its last name
		for last := 30; ; last-- {
			v.SetUint(uint64(last))
			if m, ok := v.Interface().(encoding.TextMarshaler); !ok || last == 0 {
				t.Fatalf("%s has no name", v.Type())
			} else if _, err := m.MarshalText(); err == nil {
				return
			}
		}
	case reflect.Int:
		v.SetInt(int64(*n))
	case reflect.String:
		v.SetString("text " + strconv.Itoa(*n))
	case reflect.Bool:
		v.SetBool(true)
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		fill(t, v.Elem(), n)
	case reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), 2, 2))
		for i := range 2 {
			fill(t, v.Index(i), n)
		}
	case reflect.Array:
		for i := range v.Len() {
			fill(t, v.Index(i), n)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				fill(t, v.Field(i), n)
			}
		}
	default:
		t.Fatalf("no value for %s", v.Type())
	}
}

func strict(b []byte, into any) error {
	d := json.NewDecoder(bytes.NewReader(b))
	d.DisallowUnknownFields()
	return d.Decode(into)
}

// lost says what of an old document a new one no longer has.
func lost(at string, before, after any) []string {
	switch old := before.(type) {
	case map[string]any:
		now, _ := after.(map[string]any)
		var out []string
		for k, v := range old {
			if w, ok := now[k]; ok {
				out = append(out, lost(at+"."+k, v, w)...)
			} else {
				out = append(out, at+"."+k)
			}
		}
		return out
	case []any:
		now, _ := after.([]any)
		if len(now) != len(old) {
			return []string{at}
		}
		var out []string
		for i := range old {
			out = append(out, lost(at+"["+strconv.Itoa(i)+"]", old[i], now[i])...)
		}
		return out
	}
	if before != after {
		return []string{at}
	}
	return nil
}

// TestEveryStructGoesThroughJSON: a value of every public struct, with no field
// left zero, is written and read back whole; and what stands in the file of an
// earlier day is still read, and nothing of it is lost. With -update, structs that
// the file does not have yet are added to it; what it has is never changed.
func TestEveryStructGoesThroughJSON(t *testing.T) {
	file := filepath.Join("testdata", "structs.json")
	old := map[string]json.RawMessage{}
	if b, err := os.ReadFile(file); err == nil {
		if err := json.Unmarshal(b, &old); err != nil {
			t.Fatal(err)
		}
	} else if !errors.Is(err, fs.ErrNotExist) {
		t.Fatal(err)
	}
	same := cmp.Options{cmp.Exporter(func(reflect.Type) bool { return true }), cmp.Comparer(decimal.Decimal.Equal)}
	listed := map[string]bool{}
	for _, zero := range structs {
		typ := reflect.TypeOf(zero)
		name := strings.TrimPrefix(typ.PkgPath(), "example.com/panelmath/") + "." + typ.Name()
		listed[name] = true
		t.Run(name, func(t *testing.T) {
			for _, filled := range []bool{false, true} {
				v, n := reflect.New(typ), 0
				if filled {
					fill(t, v.Elem(), &n)
				}
				text, err := json.Marshal(v.Interface())
				if err != nil {
					if filled {
						t.Fatal(err)
					}
					continue // a zero value that is not valid is refused, not written
				}
				back := reflect.New(typ)
				if err := strict(text, back.Interface()); err != nil {
					t.Fatalf("%s: %v", text, err)
				}
				if diff := cmp.Diff(v.Interface(), back.Interface(), same); diff != "" && filled {
					t.Errorf("%s: -written +read:\n%s", text, diff)
				}
				again, err := json.Marshal(back.Interface())
				if err != nil || !bytes.Equal(text, again) {
					t.Errorf("written again, error %v:\n%s\n%s", err, text, again)
				}
				if filled && old[name] == nil && *update {
					old[name] = text
				}
			}
			back := reflect.New(typ)
			if err := strict(old[name], back.Interface()); err != nil {
				t.Fatalf("from %s: %v", file, err)
			}
			again, err := json.Marshal(back.Interface())
			if err != nil {
				t.Fatal(err)
			}
			var before, after any
			if err := errors.Join(json.Unmarshal(old[name], &before), json.Unmarshal(again, &after)); err != nil {
				t.Fatal(err)
			}
			for _, at := range lost(name, before, after) {
				t.Errorf("in %s, but no longer read: %s", file, at)
			}
		})
	}
	_, folders := read(t)
	for _, f := range folders {
		for _, file := range f.files {
			ast.Inspect(file, func(n ast.Node) bool {
				spec, ok := n.(*ast.TypeSpec)
				if !ok || !f.public() || !spec.Name.IsExported() {
					return true
				}
				name := f.path + "." + spec.Name.Name
				if _, ok := spec.Type.(*ast.StructType); ok && !listed[name] && !notKept(f.path, spec.Name.Name) {
					t.Errorf("%s is not among the structs of this test", name)
				}
				return true
			})
		}
	}
	if *update {
		b, err := json.MarshalIndent(old, "", "\t")
		if err != nil {
			t.Fatal(err)
		}
		if err := errors.Join(os.MkdirAll("testdata", 0o755), os.WriteFile(file, append(b, '\n'), 0o644)); err != nil {
			t.Fatal(err)
		}
	}
}

// notKept reports whether a struct is not for files: an error; the parts of a
// row, which stand in the row's text; a Counter, which is made of a gauge and a
// rule.
func notKept(folder, name string) bool {
	return strings.HasSuffix(name, "Error") || folder == "panel/row" || folder == "gauge" && name == "Counter"
}

// TestBareDecimals: the structs that hold a decimal without a unit, which the
// package doc names, are read back whole however the decimal library writes it.
func TestBareDecimals(t *testing.T) {
	quotes := decimal.MarshalJSONWithoutQuotes
	defer func() { decimal.MarshalJSONWithoutQuotes = quotes }()
	var bare []string
	for _, zero := range structs {
		typ := reflect.TypeOf(zero)
		if reflect.PointerTo(typ).Implements(reflect.TypeFor[encoding.TextMarshaler]()) {
			continue // written as a text of its own
		}
		for i := range typ.NumField() {
			field := typ.Field(i).Type
			if field.Kind() == reflect.Slice {
				field = field.Elem()
			}
			if field != reflect.TypeFor[decimal.Decimal]() {
				continue
			}
			bare = append(bare, typ.String()+"."+typ.Field(i).Name)
			for _, quotes := range []bool{false, true} {
				decimal.MarshalJSONWithoutQuotes = quotes
				v, back, n := reflect.New(typ), reflect.New(typ), 0
				fill(t, v.Elem(), &n)
				text, err := json.Marshal(v.Interface())
				if err == nil {
					err = json.Unmarshal(text, back.Interface())
				}
				if diff := cmp.Diff(v.Interface(), back.Interface(), cmp.Exporter(func(reflect.Type) bool { return true }), cmp.Comparer(decimal.Decimal.Equal)); err != nil || diff != "" {
					t.Errorf("%v, error %v: -written +read:\n%s", typ, err, diff)
				}
			}
		}
	}
	want := []string{"swatch.Reading.CountTo", "check.List.Values", "yarn.Sewing.Factor", "usage.Project.Skeins", "weight.Range.Low", "weight.Range.High"}
	if diff := cmp.Diff(want, bare); diff != "" {
		t.Errorf("-named in the package doc +found:\n%s", diff)
	}
}
