package document

import (
	"fmt"
	"strings"
)

// Markdown writes d as CommonMark with pipe tables. A drawing is left out, its
// caption stays.
func (d Document) Markdown() string {
	var b strings.Builder
	fmt.Fprintf(&b, "# %s\n", escape(d.Title))
	for _, s := range d.Sections {
		fmt.Fprintf(&b, "\n## %s\n", escape(s.Heading))
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
		b.WriteString(escape(block.Text) + "\n")
	case List:
		for i, item := range block.Items {
			mark := "- "
			if block.Numbered {
				mark = fmt.Sprintf("%d. ", i+1)
			}
			b.WriteString(mark + escape(item) + "\n")
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
			b.WriteString(escape(block.Caption) + "\n\n")
		}
		row(b, block.Header)
		b.WriteString(strings.Repeat("| --- ", len(block.Header)) + "|\n")
		for _, cells := range block.Rows {
			row(b, cells)
		}
	case Caution:
		b.WriteString("> **Caution:** " + escape(block.Text) + "\n")
	case Figure:
		b.WriteString(escape(block.Caption) + "\n")
	}
}

func (l Line) markdown() string {
	s := escape(l.Text)
	if l.Label != "" {
		s = "**" + escape(l.Label) + ":** " + s
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
// to each other) and of a hostile title from being read as Markdown.
func escape(s string) string {
	return escaper.Replace(s)
}

var escaper = strings.NewReplacer(`\`, `\\`, `*`, `\*`, `_`, `\_`, `<`, `\<`, "`", "\\`", `~`, `\~`, `](`, `]\(`,
	`&#`, `\&#`, "\n", " ", "\r", " ")
