package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"net/url"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/examples/internal/brief"
)

// values are what the form's controls hold, by name.
type values map[string]string

// fresh returns the values of the page as it is opened.
func fresh() values {
	v := values{}
	for f := range fields() {
		v[f.Name] = f.start()
	}
	return v
}

// posted returns the values that came with a request. The page sends all its
// controls, those too that the layout has no use for, so that a change of the
// layout and back loses nothing; one that did not come is empty. It returns an
// error for a control that came twice.
func posted(form url.Values) (values, error) {
	v := values{}
	for f := range fields() {
		v[f.Name] = strings.ReplaceAll(strings.ToValidUTF8(form.Get(f.Name), "\uFFFD"), "\r\n", "\n")
		if n := len(form[f.Name]); n > 1 {
			return nil, fmt.Errorf("form: %s came %d times", f.Name, n)
		}
	}
	return v, nil
}

func (f field) start() string {
	if f.Start == "" && len(f.Options) > 0 {
		return f.Options[0].Value
	}
	return f.Start
}

// shown reports whether the brief has a place for the field.
func (v values) shown(f field) bool {
	return f.When == "" || slices.Contains(f.Is, v[f.When])
}

// brief returns the brief as JSON.
func (v values) brief() ([]byte, error) {
	root := map[string]any{}
	for f := range fields() {
		text := strings.TrimSpace(v[f.Name])
		if f.Kind == view || !v.shown(f) || f.Optional && text == "" {
			continue
		}
		object, path := root, strings.Split(f.place(), ".")
		for _, name := range path[:len(path)-1] {
			inner, ok := object[name].(map[string]any)
			if !ok {
				inner = map[string]any{}
				object[name] = inner
			}
			object = inner
		}
		object[path[len(path)-1]] = f.Kind.read(text)
	}
	return json.MarshalIndent(root, "", "  ")
}

// read turns the text of a control into a value of the brief.
func (k kind) read(text string) any {
	switch k {
	case list:
		return split(text, ";")
	case groups:
		all := [][]string{}
		for _, g := range split(text, ";") {
			all = append(all, split(g, ","))
		}
		return all
	case rows:
		return split(text, "\n")
	case rates:
		all := []map[string]string{}
		for _, s := range split(text, "\n") {
			stitches, length, _ := strings.Cut(s, "=")
			name, count, _ := strings.Cut(strings.TrimSpace(stitches), " ")
			all = append(all, map[string]string{"stitch": name, "count": strings.TrimSpace(count), "length": strings.TrimSpace(length)})
		}
		return all
	}
	return text
}

// split cuts at the mark and drops what is empty.
func split(text, mark string) []string {
	out := []string{}
	for _, s := range strings.Split(text, mark) {
		if s = strings.TrimSpace(s); s != "" {
			out = append(out, s)
		}
	}
	return out
}

// opened returns the values that show a brief. Its error is that of the brief.
func opened(data []byte) (values, error) {
	if _, err := brief.Read(bytes.NewReader(data)); err != nil {
		return nil, err
	}
	var root map[string]any
	dec := json.NewDecoder(bytes.NewReader(data))
	dec.UseNumber()
	if err := dec.Decode(&root); err != nil {
		return nil, err
	}
	v := fresh()
	v["layout"] = root["layout"].(string) // it holds, the brief has been read
	for _, w := range ways() {
		if _, ok := root["yarn"].(map[string]any)[w.Value]; ok {
			v[way] = w.Value
		}
	}
	for f := range fields() {
		if f.Kind == view || !v.shown(f) {
			continue
		}
		var at any = root
		for _, name := range strings.Split(f.place(), ".") {
			at = at.(map[string]any)[name]
		}
		if at != nil || len(f.Options) == 0 {
			v[f.Name] = f.Kind.show(at)
		}
	}
	return v, nil
}

// show turns a value of a brief into the text of a control.
func (k kind) show(v any) string {
	mark := "; "
	if k == rows || k == rates {
		mark = "\n"
	}
	switch v := v.(type) {
	case string:
		return v
	case json.Number: // will do where a text is asked for
		return v.String()
	case []any:
		var all []string
		for _, item := range v {
			switch item := item.(type) {
			case []any:
				var members []string
				for _, m := range item {
					members = append(members, k.show(m))
				}
				all = append(all, strings.Join(members, ", "))
			case map[string]any:
				all = append(all, k.show(item["stitch"])+" "+k.show(item["count"])+" = "+k.show(item["length"]))
			default:
				all = append(all, k.show(item))
			}
		}
		return strings.Join(all, mark)
	}
	return ""
}

var inFile = regexp.MustCompile(` \(line \d+, column \d+\)$`)

// beside sorts complaints about the brief to the controls they belong to; what
// belongs to none is found under "".
func (v values) beside(errs []*brief.Error) map[string][]string {
	out := map[string][]string{}
	for _, e := range errs {
		name, place, listed := strings.Cut(e.Field, "[")
		f := v.control(name)
		text := inFile.ReplaceAllString(e.Cause, "") // a place in a file that nobody sees
		if e.Size != "" {
			text = "size " + e.Size + ": " + text
		}
		if listed {
			text = f.Kind.entry(place) + text
		}
		if f.Name == "" {
			text = e.Error()
		}
		out[f.Name] = append(out[f.Name], text)
	}
	return out
}

// control returns the shown control of a field of the brief: its own, or the
// first inside it, or that of what holds it.
func (v values) control(name string) field {
	for name != "" {
		for f := range fields() {
			if f.place() == name && v.shown(f) {
				return f
			}
		}
		for f := range fields() {
			if strings.HasPrefix(f.place(), name+".") && v.shown(f) {
				return f
			}
		}
		name = name[:max(strings.LastIndex(name, "."), 0)]
	}
	return field{}
}

// entry says which of several: the place `3].length` counts from nothing,
// people from one.
func (k kind) entry(place string) string {
	index, inner, _ := strings.Cut(place, "]")
	n, err := strconv.Atoi(index)
	if err != nil {
		return ""
	}
	what := map[kind]string{rows: "row", groups: "group", rates: "line"}[k]
	if what == "" {
		what = "value"
	}
	text := what + " " + strconv.Itoa(n+1) + ": "
	if k == rates && inner != "" {
		text += strings.TrimPrefix(inner, ".") + ": "
	}
	return text
}
