package proof

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/panel"
)

// Validate returns a *gauge.FieldError if the text has more than grade.MaxSizes
// sizes or, all lines together, more than gauge.MaxCount rows; if a list has not
// one value for each size; or if a number or a row does not hold. A line may have
// a row without items: Check says of it that it is not valid, and goes on.
func (t Text) Validate() error {
	if t.Sizes < 0 || t.Sizes > grade.MaxSizes {
		return &gauge.FieldError{Field: "Text.Sizes", Got: strconv.Itoa(t.Sizes), Want: "1 to 64", Err: gauge.ErrBounds}
	}
	if _, err := t.Terms.MarshalText(); err != nil {
		return gauge.InField("Text", err)
	}
	rows := 0
	for _, l := range t.Lines {
		if err := l.validate(max(t.Sizes, 1)); err != nil {
			return err
		}
		if rows += l.Rows; rows > gauge.MaxCount {
			return lineError(l, "more than 100000 rows to here", "at most 100000", gauge.ErrBounds)
		}
	}
	return nil
}

func (l Line) validate(sizes int) error {
	list := func(name string, n grade.Run[int], least, most int) error {
		if len(n) != sizes {
			return lineError(l, fmt.Sprintf("%d in %s", len(n), name), "one for each of "+text.Count(sizes, "size", "sizes"), nil)
		}
		for _, x := range n {
			if x < least || x > most {
				return lineError(l, fmt.Sprintf("%d in %s", x, name), fmt.Sprintf("%d to %d", least, most), gauge.ErrBounds)
			}
		}
		return nil
	}
	if l.Rows < 0 || l.Rows > gauge.MaxCount {
		return lineError(l, text.Count(l.Rows, "row", "rows"), "0 to 100000", gauge.ErrBounds)
	}
	if l.Side != nil && *l.Side > panel.WrongSide {
		return lineError(l, l.Side.String(), "RS or WS", nil)
	}
	if l.From != nil {
		if err := list("from", l.From, 1, gauge.MaxCount); err != nil {
			return err
		}
	}
	if a := l.Again; a != nil {
		if a.From < 1 || a.To < a.From || a.To > gauge.MaxCount {
			return lineError(l, fmt.Sprintf("rows %d to %d again", a.From, a.To), "rows from 1 to 100000, the first before the last", gauge.ErrBounds)
		}
		if err := list("times", a.Times, 0, gauge.MaxCount); err != nil {
			return err
		}
	}
	if l.Ends != nil {
		last := make(grade.Run[int], len(l.Ends))
		for i, e := range l.Ends {
			if last[i] = e.Row; e.Side > panel.WrongSide {
				return lineError(l, e.Side.String(), "RS or WS", nil)
			}
		}
		if err := list("ends", last, 0, gauge.MaxCount); err != nil {
			return err
		}
	}
	for _, c := range l.Count {
		if err := list("count", c.N, 0, gauge.MaxCount); err != nil {
			return err
		}
	}
	if len(l.Row.Items) == 0 {
		return nil
	}
	if err := l.Row.Validate(); err != nil {
		return gauge.InField("line "+strconv.Itoa(l.Place), err)
	}
	if n := l.Row.Sizes(); n > 1 && n != sizes {
		return lineError(l, fmt.Sprintf("%d sizes", n), text.Count(sizes, "size", "sizes")+", as elsewhere", nil)
	}
	return nil
}

func lineError(l Line, got, want string, err error) error {
	return &gauge.FieldError{Field: "line " + strconv.Itoa(l.Place), Got: got, Want: want, Err: err}
}
