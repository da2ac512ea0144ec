package document

import (
	"fmt"
	"regexp"
	"strings"
	"unicode"
)

// Markdown writes d as CommonMark with pipe tables. A drawing is left out, its
// caption stays.
func (d Document) Markdown() string {
	var b strings.Builder
	fmt.Fprintf(&b, "# %s\n", heading(d.Title))
	for _, s := range d.Sections {
		fmt.Fprintf(&b, "\n## %s\n", heading(s.Heading))
		for _, block := range s.Blocks {
			b.WriteByte('\n')
			markdown(&b, block)
		}
	}
	return b.String()
}

func markdown(b *strings.Builder, block Block) {
	switch block := block.(type) {
	case Para:
		b.WriteString(start(block.Text) + "\n")
	case List:
		for i, item := range block.Items {
			mark := "- "
			if block.Numbered {
				mark = fmt.Sprintf("%d. ", i+1)
			}
			b.WriteString(mark + start(item) + "\n")
		}
	case Instructions:
		for i, l := range block.Lines {
			if i > 0 {
				b.WriteByte('\n')
			}
			b.WriteString(l.markdown() + "\n")
		}
	case Table:
		if block.Caption != "" {
			b.WriteString(start(block.Caption) + "\n\n")
		}
		row(b, block.Header)
		b.WriteString(strings.Repeat("| --- ", len(block.Header)) + "|\n")
		for _, cells := range block.Rows {
			row(b, cells)
		}
	case Caution:
		b.WriteString("> **Caution:** " + escape(block.Text) + "\n")
	case Figure:
		b.WriteString(start(block.Caption) + "\n")
	}
}

func (l Line) markdown() string {
	s := start(l.Text)
	if l.Label != "" {
		s = "**" + escape(l.Label) + ":** " + escape(l.Text)
	}
	if l.Count != "" {
		s += " — " + escape(l.Count)
	}
	return s
}

func row(b *strings.Builder, cells []string) {
	for _, c := range cells {
		b.WriteString("| " + strings.ReplaceAll(escape(c), "|", "\\|") + " ")
	}
	b.WriteString("|\n")
}

// escape keeps the marks of a pattern (the asterisk of a repeat, brackets next
// to each other) and of a hostile title from being read as Markdown. It is for
// text in the middle of a line.
func escape(s string) string {
	s = strings.Map(func(r rune) rune {
		if unicode.IsControl(r) {
			return ' '
		}
		return r
	}, s)
	return entity.ReplaceAllString(escaper.Replace(s), `\&$1`)
}

var (
	escaper = strings.NewReplacer(`\`, `\\`, `*`, `\*`, `_`, `\_`, `<`, `\<`, "`", "\\`", `~`, `\~`, `](`, `]\(`, `]:`, `]\:`)
	entity  = regexp.MustCompile(`&(#?\w+;)`)
)

// start escapes a text that begins a paragraph or an item, where a few more
// marks would be read as a heading, a quotation, a list, a line or a box to tick.
func start(s string) string {
	s = strings.TrimLeft(escape(s), " ")
	number := len(s) - len(strings.TrimLeft(s, "0123456789"))
	if opener.MatchString(s) {
		return s[:number] + `\` + s[number:]
	}
	return s
}

var opener = regexp.MustCompile(`^([#>]|[-+]([\s-]|$)|\d+[.)](\s|$)|\[[ xX]\])`)

// heading escapes a text on the line of a heading, where a last # would vanish.
func heading(s string) string { return strings.ReplaceAll(escape(s), "#", `\#`) }
