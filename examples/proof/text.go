package main

import (
	"fmt"
	"regexp"
	"strings"
	"unicode/utf8"

	"example.com/panelmath/internal/text"
)

// maxName is how long a name before a colon may be.
const maxName = 80

// maxText is how many bytes a text may have; a pattern of forty pages has half of
// them.
const maxText = 256 << 10

// LineError tells which line can't be read, and why.
type LineError struct {
	Line int
	Err  error
}

// Error returns `line 3: Sizes: ...`.
func (e *LineError) Error() string { return fmt.Sprintf("line %d: %v", e.Line, e.Err) }

// Unwrap returns the cause.
func (e *LineError) Unwrap() error { return e.Err }

func unreadable(line int, format string, args ...any) error {
	return &LineError{Line: line, Err: fmt.Errorf(format, args...)}
}

// line is one line of the text without its Markdown.
type line struct {
	number  int
	text    string // "Row 1 (RS): fhdc 163. — 163 sts"
	heading bool
	aside   bool   // a comment of the editor's own
	name    string // what stands before the first colon, where that is a name; else empty
	body    string // what stands behind it; else the whole text
}

var (
	bullet   = regexp.MustCompile(`^(?:[-•] +|\d{1,3}\. +|> *)`)
	capitals = regexp.MustCompile(`^[A-Z][A-Z &'/-]{2,59}:?$`)
	goesOn   = regexp.MustCompile(`^[a-z*(\[]`)
	named    = regexp.MustCompile(`^([A-Za-z][^:=|]{0,79}):\s+(\S.*)$`)
	escape   = regexp.MustCompile("\\\\([\\\\*_<>`~\\[\\](){}#+.!|&-])")
)

// continues reports whether a line is the rest of a row that was broken off for
// the width of the page: the row has no full stop at its end, and the line goes on
// with a small letter, a mark or a bracket.
func (l line) continues(before line) bool {
	return rowLine.MatchString(before.text) && goesOn.MatchString(l.text) && !strings.HasSuffix(before.text, ".") &&
		!rowLine.MatchString(l.text) && len(before.text)+len(l.text) < text.Limit
}

// split cuts a text into its lines. A line that begins with // is a comment of
// the editor's own and reads as an empty one.
func split(s string) ([]line, error) {
	if len(s) > maxText {
		return nil, unreadable(strings.Count(s[:maxText], "\n")+1, "the text goes on after %d bytes, want at most so many", maxText)
	}
	var out []line
	for i, raw := range strings.Split(s, "\n") {
		l := line{number: i + 1}
		if len(raw) > text.Limit {
			return nil, unreadable(l.number, "%d characters, want at most %d", len(raw), text.Limit)
		}
		if !utf8.ValidString(raw) {
			return nil, unreadable(l.number, "not valid UTF-8: %s", text.Quote(strings.ToValidUTF8(raw, "�")))
		}
		raw = strings.TrimSpace(strings.ReplaceAll(raw, "\u00a0", " "))
		if l.aside = strings.HasPrefix(raw, "//"); !l.aside {
			l.heading = strings.HasPrefix(raw, "#") || capitals.MatchString(raw)
			raw = bullet.ReplaceAllString(raw, "")
			raw = strings.TrimLeft(raw, "# ")
			raw = strings.ReplaceAll(raw, "**", "")
			l.text = numbering(strings.TrimSpace(escape.ReplaceAllString(raw, "$1")))
		}
		if n := len(out) - 1; n >= 0 && l.continues(out[n]) {
			// The row moves on to this line, so that a third can follow, and keeps its number.
			l.text, l.number = out[n].text+" "+l.text, out[n].number
			out[n].text, out[n].body, out[n].name = "", "", ""
		}
		l.body = l.text
		if l.aside {
			l.body = raw
		}
		if m := named.FindStringSubmatch(l.text); m != nil && !l.heading {
			l.name, l.body = m[1], m[2]
		}
		out = append(out, l)
	}
	return out, nil
}
