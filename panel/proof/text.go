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
	Terms row.Terms
	Sizes int // 1 where no list of sizes is printed
	Lines []Line
}

// Line is one printed line: a row, or an instruction to work rows again.
type Line struct {
	Place int            // line of the text, from 1
	Label string         // "Row 1 (RS)", as printed; empty where there is none
	From  grade.Run[int] // number of its first row in each size; nil where it has none
	Rows  int            // rows that it stands for: 3 for "Rows 5–7"
	Side  *panel.Side    // the side named in the label
	Row   row.Row        // without items where Again is set
	Again *Again         // nil for a row
	Ends  grade.Run[End] // set where the line tells on which row and side each size ends
	Count []Count        // what is printed at its end
}

// End is the last row of a size, and its side.
type End struct {
	Row  int
	Side panel.Side
}

// Again tells to work the rows From to To again.
type Again struct {
	From, To int
	Times    grade.Run[int] // 0 skips the size
	Total    bool           // Times are all passes, and the line stands before the rows; else they are more passes, after them
}

// Count is a number printed at the end of a row.
type Count struct {
	N      grade.Run[int]
	Of     row.Stitch // what is counted; NoStitch for all stitches
	Spaces bool       // chain spaces are counted
	Space  row.Space  // their size; row.AnySpace where it is not printed
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
