package proof

import (
	"slices"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/panel/work"
)

// Plan returns the plan that the text writes out, and how: its inverse is
// panel.Plan.Write. The rows before those that are worked again are the opening,
// the rows after them the closing; where nothing is worked again all rows are
// opening. The foundation loses its number, which is that of Stitches.
//
// It returns the error of Validate, and a *gauge.FieldError if the text does not begin with a foundation,
// has no number for it, or works more than one stretch of rows again.
func (t Text) Plan() (panel.Plan, panel.Writing, error) {
	if err := t.Validate(); err != nil {
		return panel.Plan{}, panel.Writing{}, err
	}
	t.Sizes = max(t.Sizes, 1)
	var p panel.Plan
	w := panel.Writing{Terms: t.Terms}
	var again *Again
	number, before := 0, 0 // rows written so far, repeats not counted; and those before row 1
	for _, l := range t.Lines {
		switch {
		case l.Ends != nil:
		case l.Again != nil:
			if again != nil {
				return panel.Plan{}, panel.Writing{}, lineError(l, "a second stretch of rows worked again", "one repeat", nil)
			}
			again = l.Again
			if !again.Total {
				if again.To != number {
					return panel.Plan{}, panel.Writing{}, lineError(l, "rows to "+strconv.Itoa(again.To)+" worked again after row "+strconv.Itoa(number), "a repeat that ends with the row before it", nil)
				}
				from := before + again.From - 1
				p.Repeat = slices.Clone(p.Opening[from:])
				p.Opening = p.Opening[:from]
			}
		default:
			if l.From != nil && l.From[0] == 1 && before == 0 && again == nil { // a foundation may stand before row 1
				before, number = number, 0
			}
			for range l.Rows {
				number++
				switch {
				case again == nil:
					p.Opening = append(p.Opening, l.Row)
				case again.Total && number >= again.From && number <= again.To:
					p.Repeat = append(p.Repeat, l.Row)
				default:
					p.Closing = append(p.Closing, l.Row)
				}
			}
		}
	}
	if len(p.Opening) == 0 || !p.Opening[0].Begins() {
		return panel.Plan{}, panel.Writing{}, &gauge.FieldError{Field: "Text.Lines", Got: "no foundation row or chain", Want: "one to begin with"}
	}
	var err error
	if w.Stitches, err = t.begin(p.Opening[0]); err != nil {
		return panel.Plan{}, panel.Writing{}, err
	}
	p.Opening[0] = p.Opening[0].WithCount(nil)
	if s := t.Lines[0].Side; s != nil {
		w.FirstSide = *s
	}
	w.Repeats = make(grade.Run[int], t.Sizes)
	if again != nil {
		for i, n := range again.Times {
			w.Repeats[i] = n
			if !again.Total {
				w.Repeats[i]++
			}
		}
	}
	return p, w, nil
}

// begin returns the stitches of the first row in each size.
func (t Text) begin(first row.Row) (grade.Run[int], error) {
	out := make(grade.Run[int], t.Sizes)
	for i := range out {
		w, _, err := work.Into(first, nil, i)
		if err != nil {
			return nil, err
		}
		out[i] = w.Made.Count()
	}
	return out, nil
}
