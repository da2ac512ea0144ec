// Package document holds a pattern as parts (headings, paragraphs, rows, tables,
// cautions) that can be written as Markdown or HTML.
package document

// Document is a whole pattern.
type Document struct {
	Title    string
	Lang     string // of the text, for screen readers: "en-US"; empty stands for "en"
	Sections []Section
}

// Section is a heading and what stands below it.
type Section struct {
	Heading string
	Blocks  []Block
}

// Block is one of Para, List, Instructions, Table, Caution and Figure.
type Block interface{ block() }

// Para is a paragraph.
type Para struct{ Text string }

// List is a list of steps (Numbered) or of points.
type List struct {
	Numbered bool
	Items    []string
}

// Instructions are rows with a label ("Row 1 (RS)") and the count at their end.
type Instructions struct{ Lines []Line }

// Line is one row, or one remark where Label is empty.
type Line struct{ Label, Text, Count string }

// Table has one header row; the first cell of every row is a header too.
type Table struct {
	Caption string
	Header  []string
	Rows    [][]string
}

// Caution is a warning that stands with the step it belongs to.
type Caution struct{ Text string }

// Figure is a drawing as SVG, with the sentence that stands for it where it
// can't be shown, and the key to the signs in it.
type Figure struct {
	SVG, Caption string
	Key          []KeyLine
}

// KeyLine tells what a letter or number in a drawing stands for.
type KeyLine struct{ Sign, Text string }

func (Para) block()         {}
func (List) block()         {}
func (Instructions) block() {}
func (Table) block()        {}
func (Caution) block()      {}
func (Figure) block()       {}
