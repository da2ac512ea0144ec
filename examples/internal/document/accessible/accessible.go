// Package accessible finds the common faults that keep people with a screen
// reader or a keyboard out of a page. It looks at the text of the page alone:
// what a style sheet does, a browser has to show.
//
// Its rules are those of the Web Content Accessibility Guidelines 2.2 that a
// program can decide, each named where it is checked (from memory).
package accessible

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"
)

// Faults returns what is wrong with an HTML page, in order; none for a good one.
func Faults(page []byte) []string {
	c := &checker{ids: map[string]bool{}, labels: map[string]bool{}}
	c.read(page)
	c.page()
	for _, e := range c.all {
		c.element(e)
	}
	return c.faults
}

// element is one element of the page.
type element struct {
	name   string
	attrs  map[string]string
	text   strings.Builder // all text inside
	parent *element
}

func (e *element) inside(name string) bool {
	for p := e.parent; p != nil; p = p.parent {
		if p.name == name {
			return true
		}
	}
	return false
}

func (e *element) String() string {
	if id := e.attrs["id"]; id != "" {
		return e.name + " " + strconv.Quote(id)
	}
	return e.name
}

type checker struct {
	all    []*element
	ids    map[string]bool
	labels map[string]bool // ids that a label is for
	level  int             // of the heading before
	faults []string
}

func (c *checker) fault(format string, args ...any) {
	c.faults = append(c.faults, fmt.Sprintf(format, args...))
}

func (c *checker) read(page []byte) {
	dec := xml.NewDecoder(bytes.NewReader(page))
	dec.Strict, dec.AutoClose, dec.Entity = false, xml.HTMLAutoClose, xml.HTMLEntity
	var at *element
	for {
		token, err := dec.RawToken()
		if err == io.EOF {
			return
		}
		if err != nil {
			c.fault("not well formed: %v", err)
			return
		}
		switch t := token.(type) {
		case xml.StartElement:
			e := &element{name: t.Name.Local, attrs: map[string]string{}, parent: at}
			for _, a := range t.Attr {
				e.attrs[a.Name.Local] = a.Value
			}
			if id, ok := e.attrs["id"]; ok {
				if id == "" || c.ids[id] { // 4.1.2, names must be of one element
					c.fault("%v: an id that is empty or given twice", e)
				}
				c.ids[id] = true
			}
			if e.name == "label" {
				c.labels[e.attrs["for"]] = true
			}
			c.all = append(c.all, e)
			if !slices.Contains(xml.HTMLAutoClose, e.name) {
				at = e
			}
		case xml.EndElement:
			if at == nil || at.name != t.Name.Local {
				if !slices.Contains(xml.HTMLAutoClose, t.Name.Local) {
					c.fault("not well formed: </%s>", t.Name.Local)
				}
				continue
			}
			at = at.parent
		case xml.CharData:
			for e := at; e != nil; e = e.parent {
				e.text.Write(t)
			}
		}
	}
}

// count returns how many elements have the name.
func (c *checker) count(name string) (n int) {
	for _, e := range c.all {
		if e.name == name && !e.inside("svg") {
			n++
		}
	}
	return n
}

func (c *checker) page() {
	for _, name := range []string{"html", "title", "main", "h1"} { // 2.4.2 page titled, 1.3.1 landmarks and headings
		if n := c.count(name); n != 1 {
			c.fault("%d elements %s, want one", n, name)
		}
	}
}

func (c *checker) element(e *element) {
	text := strings.TrimSpace(e.text.String())
	for _, attr := range []string{"aria-labelledby", "aria-describedby", "aria-controls", "for"} { // 1.3.1, 4.1.2
		for _, id := range strings.Fields(e.attrs[attr]) {
			if !c.ids[id] {
				c.fault("%v: %s names %q, which is not there", e, attr, id)
			}
		}
	}
	if n, err := strconv.Atoi(e.attrs["tabindex"]); err == nil && n > 0 { // 2.4.3 focus order
		c.fault("%v: a positive tabindex", e)
	}
	switch e.name {
	case "html":
		if e.attrs["lang"] == "" { // 3.1.1 language of the page
			c.fault("html: no lang")
		}
	case "meta":
		if v := e.attrs["content"]; e.attrs["name"] == "viewport" && (strings.Contains(v, "user-scalable") || strings.Contains(v, "maximum-scale")) { // 1.4.4 resize text
			c.fault("viewport: zoom is kept from the reader")
		}
	case "title":
		if text == "" {
			c.fault("title: empty")
		}
	case "h1", "h2", "h3", "h4", "h5", "h6": // 1.3.1
		level := int(e.name[1] - '0')
		if level > c.level+1 {
			c.fault("%v: a level is left out after h%d", e, c.level)
		}
		if text == "" {
			c.fault("%v: empty", e)
		}
		c.level = level
	case "th": // 1.3.1
		if s := e.attrs["scope"]; s != "col" && s != "row" {
			c.fault("th %q: no scope", text)
		}
	case "td":
		if !e.inside("table") {
			c.fault("td: outside a table")
		}
	case "input", "select", "textarea": // 1.3.1, 3.3.2 labels
		if e.attrs["type"] != "hidden" && !c.labels[e.attrs["id"]] && e.attrs["aria-label"] == "" && e.attrs["aria-labelledby"] == "" {
			c.fault("%v: no label", e)
		}
	case "label", "button", "a", "legend", "summary", "option": // 2.4.4, 4.1.2
		if text == "" {
			c.fault("%v: empty", e)
		}
	case "fieldset":
		if !slices.ContainsFunc(c.all, func(l *element) bool { return l.name == "legend" && l.parent == e }) { // 1.3.1
			c.fault("%v: no legend", e)
		}
	case "svg": // 1.1.1 non-text content
		if e.attrs["role"] != "img" || e.attrs["aria-labelledby"] == "" {
			c.fault("%v: no role img with a title", e)
		}
	case "img":
		if _, ok := e.attrs["alt"]; !ok {
			c.fault("%v: no alt", e)
		}
	}
}
