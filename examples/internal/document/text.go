package document

import "strings"

// Text returns every sentence, row and cell of d, one a line, without marks.
func (d Document) Text() string {
	var b strings.Builder
	add := func(parts ...string) {
		b.WriteString(strings.Join(parts, " "))
		b.WriteByte('\n')
	}
	for _, s := range d.Sections {
		for _, block := range s.Blocks {
			switch block := block.(type) {
			case Para:
				add(block.Text)
			case List:
				add(block.Items...)
			case Instructions:
				for _, l := range block.Lines {
					add(l.Label, l.Text, l.Count)
				}
			case Table:
				for _, cells := range block.Rows {
					add(cells...)
				}
			case Caution:
				add(block.Text)
			case Figure:
				add(block.Caption)
			}
		}
	}
	return b.String()
}
