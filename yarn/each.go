package yarn

import (
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
)

// Yarn is a yarn, or one colour of it, that lines can name.
type Yarn struct {
	Name  string `json:"name"`
	Label Label  `json:"label"`
}

// BuyEach is Buy for a garment in several yarns or colours: one quantity for
// each yarn, in the order given, of the lines that name it.
//
// It returns the errors of Buy, and a *gauge.FieldError if two yarns have one
// name, a line names a yarn that is not there, or a yarn has no line.
func BuyEach(yarns []Yarn, margin Margin, lines ...Line) ([]Quantity, error) {
	if len(yarns) == 0 || len(yarns) > 64 {
		return nil, &gauge.FieldError{Field: "Yarns", Got: strconv.Itoa(len(yarns)), Want: "1 to 64 yarns", Err: gauge.ErrBounds}
	}
	at := make(map[string]int, len(yarns))
	for i, y := range yarns {
		if _, twice := at[y.Name]; twice {
			return nil, &gauge.FieldError{Field: "Yarns[" + strconv.Itoa(i) + "].Name", Got: text.Quote(y.Name) + " twice", Want: "a name of its own"}
		}
		at[y.Name] = i
	}
	of := make([][]Line, len(yarns))
	for i, l := range lines {
		j, ok := at[l.Yarn]
		if !ok {
			return nil, &gauge.FieldError{Field: "Lines[" + strconv.Itoa(i) + "].Yarn", Got: text.Quote(l.Yarn), Want: "the name of a yarn"}
		}
		of[j] = append(of[j], l)
	}
	qs := make([]Quantity, len(yarns))
	for i, y := range yarns {
		q, err := Buy(y.Label, margin, of[i]...)
		if err != nil {
			return nil, gauge.InField("Yarns["+strconv.Itoa(i)+"]", err)
		}
		q.Yarn = y.Name
		qs[i] = q
	}
	return qs, nil
}

// ByPiece adds up the lines of each piece, in the order in which the pieces come;
// lines that belong to no piece come together as one without a name. It returns
// a *gauge.FieldError if a line is not valid.
func ByPiece(lines ...Line) ([]Line, error) {
	var pieces []Line
	at := map[string]int{}
	for i, l := range lines {
		if err := l.Validate(); err != nil {
			return nil, gauge.InField("Lines["+strconv.Itoa(i)+"]", err)
		}
		j, ok := at[l.Piece]
		if !ok {
			j = len(pieces)
			at[l.Piece] = j
			pieces = append(pieces, Line{Name: l.Piece, Piece: l.Piece})
		}
		p := &pieces[j]
		p.Length, p.Less, p.More = p.Length.Add(l.Length), p.Less.Add(l.Less), p.More.Add(l.More)
		if err := finite("Lines", p.Length, p.Less, p.More); err != nil {
			return nil, err
		}
	}
	return pieces, nil
}
