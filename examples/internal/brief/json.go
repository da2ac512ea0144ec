package brief

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"
)

// Limits of a brief as a file. A text in it has at most textLimit characters.
const (
	SizeLimit = 256 << 10 // bytes of a whole brief
	readLimit = 2 << 20   // read this far to name the field that is too long
	textLimit = 10_000
	deepest   = 8
)

// node is one JSON value with its place, so that every complaint can name the
// field. Field names match exactly, and a name given twice is an error: both
// are slips that encoding/json would let pass.
type node struct {
	path    string
	kind    string // "text", "number", "list", "object", "true", "false", "null"
	text    string // of a text or number
	items   []node // of a list
	members []node // of an object, in order
	name    string // of a member
}

// a names the kind in a sentence: "a list", "an object", "null".
func (n node) a() string {
	switch n.kind {
	case "object":
		return "an object"
	case "true", "false", "null":
		return n.kind
	}
	return "a " + n.kind
}

// parse reads one JSON object. Some editors put a byte order mark in front of it.
func parse(data []byte) (node, error) {
	data = bytes.TrimPrefix(data, []byte("\ufeff"))
	if len(bytes.TrimSpace(data)) == 0 {
		return node{}, &Error{Field: "brief", Cause: "empty; want a JSON object with name, terms, units, gauge and so on"}
	}
	p := parser{dec: json.NewDecoder(bytes.NewReader(data)), data: data, bad: invalidAt(data)}
	p.dec.UseNumber()
	n, err := p.value("", 0)
	if err != nil {
		return node{}, err
	}
	if _, err := p.dec.Token(); err != io.EOF {
		return node{}, p.fail("brief", "more text after the end of the object")
	}
	if p.bad >= 0 {
		return node{}, p.fail("brief", "not valid UTF-8")
	}
	if n.kind != "object" {
		return node{}, &Error{Field: "brief", Cause: "got " + n.a() + ", want a JSON object"}
	}
	if len(data) > SizeLimit {
		return node{}, &Error{Field: "brief", Cause: fmt.Sprintf("%d bytes, want at most %d", len(data), SizeLimit)}
	}
	return n, nil
}

// invalidAt returns the offset of the first byte that is not UTF-8, or -1.
func invalidAt(data []byte) int {
	for i := 0; i < len(data); {
		r, n := utf8.DecodeRune(data[i:])
		if r == utf8.RuneError && n == 1 {
			return i
		}
		i += n
	}
	return -1
}

type parser struct {
	dec  *json.Decoder
	data []byte
	bad  int // offset of the first byte that is not UTF-8, or -1
}

// fail adds the line and column where reading stopped.
func (p *parser) fail(path, cause string) *Error {
	at := min(int(p.dec.InputOffset()), len(p.data))
	line := bytes.Count(p.data[:at], []byte("\n")) + 1
	col := utf8.RuneCount(p.data[bytes.LastIndexByte(p.data[:at], '\n')+1:at]) + 1
	if path == "" {
		path = "brief"
	}
	return &Error{Field: path, Cause: fmt.Sprintf("%s (line %d, column %d)", cause, line, col)}
}

func (p *parser) token(path string) (json.Token, error) {
	t, err := p.dec.Token()
	switch {
	case err == io.EOF || err == io.ErrUnexpectedEOF:
		return nil, p.fail(path, "the text ends in the middle")
	case err != nil:
		return nil, p.fail(path, strings.TrimPrefix(err.Error(), "json: "))
	case p.bad >= 0 && p.dec.InputOffset() > int64(p.bad):
		return nil, p.fail(path, "not valid UTF-8")
	}
	return t, nil
}

func (p *parser) value(path string, depth int) (node, error) {
	t, err := p.token(path)
	if err != nil {
		return node{}, err
	}
	n := node{path: path}
	switch t := t.(type) {
	case string:
		n.kind, n.text = "text", t
	case json.Number:
		n.kind, n.text = "number", t.String()
	case bool:
		n.kind = fmt.Sprint(t)
	case nil:
		n.kind = "null"
	case json.Delim:
		if depth >= deepest {
			return node{}, p.fail(path, "nested too deep")
		}
		if t == '[' {
			return p.list(n, depth)
		}
		return p.object(n, depth)
	}
	if c := utf8.RuneCountInString(n.text); c > textLimit {
		return node{}, &Error{Field: orBrief(path), Cause: fmt.Sprintf("%d characters, want at most %d", c, textLimit)}
	}
	return n, nil
}

func orBrief(path string) string {
	if path == "" {
		return "brief"
	}
	return path
}

func (p *parser) list(n node, depth int) (node, error) {
	n.kind = "list"
	for p.dec.More() {
		item, err := p.value(fmt.Sprintf("%s[%d]", n.path, len(n.items)), depth+1)
		if err != nil {
			return node{}, err
		}
		if n.items = append(n.items, item); len(n.items) > 1000 {
			return node{}, p.fail(n.path, "more than 1000 entries")
		}
	}
	_, err := p.token(n.path)
	return n, err
}

func (p *parser) object(n node, depth int) (node, error) {
	n.kind = "object"
	for p.dec.More() {
		t, err := p.token(n.path)
		if err != nil {
			return node{}, err
		}
		name := t.(string)
		path := name
		if strings.TrimSpace(name) == "" {
			path = strconv.Quote(name)
		}
		if n.path != "" {
			path = n.path + "." + path
		}
		path = clip(path)
		for _, m := range n.members {
			if m.name == name {
				return node{}, p.fail(path, "given twice")
			}
		}
		m, err := p.value(path, depth+1)
		if err != nil {
			return node{}, err
		}
		m.name = name
		if n.members = append(n.members, m); len(n.members) > 100 {
			return node{}, p.fail(n.path, "more than 100 fields")
		}
	}
	_, err := p.token(n.path)
	return n, err
}

// clip keeps a hostile field name from filling the screen.
func clip(s string) string {
	if utf8.RuneCountInString(s) <= 80 {
		return s
	}
	return string([]rune(s)[:80]) + "…"
}
