package proof

import (
	"strconv"
	"strings"

	"example.com/panelmath/grade"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/row"
)

// Text is the instructions of a panel as they are printed. The zero value has
// no lines.
type Text struct {
	Terms row.Terms `json:"terms"`
	Sizes int       `json:"sizes"` // 1 where no list of sizes is printed
	Lines []Line    `json:"lines"`
}

// Line is one printed line: a row, or an instruction to work rows again.
type Line struct {
	Place int            `json:"place"`           // line of the text, from 1
	Label string         `json:"label"`           // "Row 1 (RS)", as printed; empty where there is none
	From  grade.Run[int] `json:"from,omitempty"`  // number of its first row in each size; nil where it has none
	Rows  int            `json:"rows"`            // rows that it stands for: 3 for "Rows 5–7"
	Side  *panel.Side    `json:"side,omitempty"`  // the side named in the label
	Row   row.Row        `json:"row,omitzero"`    // without items where Again is set
	Named bool           `json:"named,omitempty"` // the row calls places by their kind, and passes over what lies between
	Again *Again         `json:"again,omitempty"` // nil for a row
	Ends  grade.Run[End] `json:"ends,omitempty"`  // set where the line tells on which row and side each size ends
	Count []Count        `json:"count,omitempty"` // what is printed at its end
}

// End is the last row of a size, and its side.
type End struct {
	Row  int        `json:"row"`
	Side panel.Side `json:"side"`
}

// Again tells to work the rows From to To again.
type Again struct {
	From  int            `json:"from"`
	To    int            `json:"to"`
	Times grade.Run[int] `json:"times"` // 0 skips the size
	Total bool           `json:"total"` // Times are all passes, and the line stands before the rows; else they are more passes, after them
}

// Count is a number printed at the end of a row.
type Count struct {
	N      grade.Run[int] `json:"n"`
	Of     row.Stitch     `json:"of"`     // what is counted; NoStitch for all stitches
	Spaces bool           `json:"spaces"` // chain spaces are counted
	Space  row.Space      `json:"space"`  // their size; row.AnySpace where it is not printed
}

// text returns "163 (166) sts", "54 (55) ch-2 sps".
func (c Count) text(t row.Terms) string {
	s := grade.Numbers(c.N) + " "
	switch {
	case c.Spaces && c.Space > 0:
		return s + "ch-" + strconv.Itoa(int(c.Space)) + " sps"
	case c.Spaces && t == row.UK:
		return s + "ch sps"
	case c.Spaces:
		return s + "ch-sps"
	case c.Of == row.NoStitch:
		return s + "sts"
	}
	return s + c.Of.Abbr(t)
}

// String returns the lines as panel.Instructions prints them, where they are of
// its forms.
func (t Text) String() string {
	var b strings.Builder
	for _, l := range t.Lines {
		b.WriteString(l.text(t.Terms) + "\n")
	}
	return b.String()
}

func (l Line) text(t row.Terms) string {
	out := panel.Line{Label: l.Label}
	switch {
	case l.Again != nil:
		span := "Row " + strconv.Itoa(l.Again.From)
		if l.Again.To > l.Again.From {
			span = "Rows " + strconv.Itoa(l.Again.From) + "–" + strconv.Itoa(l.Again.To)
		}
		times := grade.Numbers(l.Again.Times)
		switch {
		case l.Again.Total:
			out.Text = "Work " + span + " a total of " + times + " times; 0: skip these rows in that size"
		case times == "1":
			out.Text = "Rep " + span + " 1 more time"
		default:
			out.Text = "Rep " + span + " " + times + " more times"
		}
	case l.Ends != nil:
		last := make(grade.Run[int], len(l.Ends))
		sides := make(grade.Run[panel.Side], len(l.Ends))
		for i, e := range l.Ends {
			last[i], sides[i] = e.Row, e.Side
		}
		out.Text = "The last row, Row " + grade.Numbers(last) + ", is worked on " + grade.Text(sides, panel.Side.String)
	default:
		out.Text = l.Row.Text(t)
	}
	var counts []string
	for _, c := range l.Count {
		counts = append(counts, c.text(t))
	}
	out.Count = strings.Join(counts, ", ")
	return out.String()
}
