package colour

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn/internal/bound"
	"example.com/panelmath/yarn/internal/say"
)

// End is the place on a panel where a colour ends.
type End struct {
	Colour   string            `json:"colour"`
	Next     string            `json:"next"`     // the colour that follows; empty where the yarn ends
	Row      int               `json:"row"`      // counted from 1
	Stitches int               `json:"stitches"` // whole stitches of that row that the colour lasts for, all of them where it ends with the row
	Part     gauge.Ratio       `json:"part"`     // of the next stitch, 0 to less than 1
	At       gauge.Measurement `json:"at"`       // yarn from the beginning of the panel
}

// String returns "moss ends in row 7 after 12 stitches".
func (e End) String() string {
	s := fmt.Sprintf("%s ends in row %d after %s", e.Colour, e.Row, text.Count(e.Stitches, "stitch", "stitches"))
	if e.Part.Sign() > 0 {
		s += fmt.Sprintf(" and %s of the next", say.Number(e.Part))
	}
	return s
}

// Course is the way of a sequence through a panel.
type Course struct {
	Ends []End             `json:"ends"` // in order
	Used gauge.Measurement `json:"used"` // the yarn of the panel
	From gauge.Measurement `json:"from"` // where on the yarn the panel begins
	To   gauge.Measurement `json:"to"`   // where on the yarn it ends
}

// Ends returns the row and the stitch at which each colour ends on a panel that
// begins at a place of the yarn, measured from the beginning of the sequence.
// Within a row each stitch takes as much yarn as the next. A colour that ends
// just with a row ends in that row.
//
// It returns an error if:
//   - the sequence or a row is not valid, or from is negative or beyond 100 km
//     (*gauge.FieldError);
//   - a sequence that does not repeat is shorter than from and the panel
//     (ErrShort);
//   - the panel has more than 100 000 ends (gauge.ErrBounds).
func Ends(s Sequence, from gauge.Measurement, rows []Row) (Course, error) {
	if err := s.Validate(); err != nil {
		return Course{}, err
	}
	if err := bound.Length("From", from); err != nil {
		return Course{}, err
	}
	used, err := checkRows("Rows", rows)
	if err != nil {
		return Course{}, err
	}
	c := Course{Used: used, From: from, To: from.Add(used)}
	if missing := c.To.Sub(s.Period()); !s.Repeats && missing.Sign() > 0 {
		return Course{}, fmt.Errorf("follow the colours through %s: %w: %s are missing", text.Count(len(rows), "row", "rows"), ErrShort, say.In(missing, gauge.Metre))
	}
	periods, _ := used.Per(s.Period())
	if periods.Mul(gauge.Int(len(s.Runs))).Cmp(gauge.Int(MaxEnds)) > 0 {
		return Course{}, &gauge.FieldError{Field: "Ends", Got: "more than 100000", Want: "at most 100000", Err: gauge.ErrBounds}
	}
	run, left := s.at(s.phase(from))
	row, begin := 0, gauge.Measurement{} // the row under work and where it begins
	for at := left; at.Cmp(used) <= 0; {
		for begin.Add(rows[row].Yarn).Cmp(at) < 0 {
			begin = begin.Add(rows[row].Yarn)
			row++
		}
		share, _ := at.Sub(begin).Per(rows[row].Yarn)
		stitches := share.Mul(gauge.Int(rows[row].Stitches))
		whole, err := stitches.Floor()
		if err != nil {
			return Course{}, err
		}
		end := End{Colour: s.Runs[run].String(), Row: row + 1, Stitches: whole, Part: stitches.Sub(gauge.Int(whole)), At: at}
		run++
		if run == len(s.Runs) && s.Repeats {
			run = 0
		}
		if run < len(s.Runs) {
			end.Next = s.Runs[run].String()
			at = at.Add(s.Runs[run].Length.Measurement())
		}
		c.Ends = append(c.Ends, end)
		if end.Next == "" {
			break
		}
	}
	return c, nil
}
