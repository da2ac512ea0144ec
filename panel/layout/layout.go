package layout

import (
	"errors"
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/enum"
	"example.com/panelmath/internal/text"
)

// The bounds of a layout, besides those of counts and lengths in gauge. A name
// has at most 10 000 bytes.
const (
	MaxPieces    = 32 // in a layout
	MaxStretches = 16 // in an edge; also folds in a piece, and finished measures twice as many
)

// ErrLayout: the parts of a layout do not make a garment.
var ErrLayout = errors.New("not a garment")

// Layout is a garment as rectangles laid flat, right sides up, with what meets
// what. It is described by few parts: the pieces; their edges, each cut into
// stretches that are sewn or stay open; and the folds. The ready garments of
// this package make one from counts; an app describes its own in the same way.
//
// The zero value has no pieces and is not valid.
type Layout struct {
	Name     string    `json:"name"`
	Pieces   []Piece   `json:"pieces"`             // 1 to MaxPieces
	Measures []Measure `json:"measures,omitempty"` // the finished garment, exactly
	// Easing is the share by which the longer side of a seam may exceed the
	// shorter and still be eased in flat; 0 stands for 1/10 (common practice,
	// no source).
	Easing gauge.Ratio `json:"easing"`
}

// Measure is one finished measure of a garment, such as its round.
type Measure struct {
	Name   string            `json:"name"`
	Length gauge.Measurement `json:"length"`
}

// Piece is one rectangle, drawn as it lies.
type Piece struct {
	Name       string      `json:"name"`
	Stitches   int         `json:"stitches"` // in a row
	Rows       int         `json:"rows"`
	Gauge      gauge.Gauge `json:"gauge"`      // finished
	Foundation Place       `json:"foundation"` // where the foundation edge lies; work goes away from it
	// Edges holds the stretches of each edge, from left to right and from
	// bottom to top. An edge without stretches is open all along.
	Edges [4]Edge `json:"edges"`
	Folds []Fold  `json:"folds,omitempty"`
	// NewLine puts the piece below the ones before it in a drawing.
	NewLine bool `json:"new_line,omitempty"`
}

// Edge is one edge of a piece, as its stretches in order.
type Edge []Stretch

// Stretch is a part of an edge: so many stitches, or so many row ends, that
// are sewn or stay open.
type Stretch struct {
	Name  string `json:"name"` // "left side": both sides of a seam bear its name
	Count int    `json:"count"`
	Kind  Kind   `json:"kind"`
}

// Fold is a line on which a piece is folded over.
type Fold struct {
	Name    string      `json:"name"`              // "shoulder"
	Upright bool        `json:"upright,omitempty"` // from bottom to top; from left to right otherwise
	At      gauge.Ratio `json:"at"`                // stitches or rows from the left, or from the bottom: halves are usual
}

// Place is one of the four edges of a piece as it is drawn.
type Place uint8

// The edges in the order of the clock, from the bottom. Where the foundation
// lies at one, row 1 (right side facing, worked from right to left as the right
// hand works) begins at the edge before it and ends at the edge after it.
const (
	Bottom Place = iota
	Left
	Top
	Right
)

// Kind tells what becomes of a stretch.
type Kind uint8

// The kinds of a stretch. A seam has two sides, and all its stretches bear its
// name; a side may be made of several stretches.
const (
	Open    Kind = iota // stays open: hem, front, neck, armhole
	Joined              // one side of a seam
	Partner             // the other side of it
)

// After returns the edge n places on, in the order of the clock.
func (p Place) After(n int) Place { return Place(((int(p)+n)%4 + 4) % 4) }

// upright reports whether the edge goes from bottom to top.
func (p Place) upright() bool { return p == Left || p == Right }

var placeNames = [...]string{"bottom", "left", "top", "right"}

// String returns "bottom", "left", "top" or "right".
func (p Place) String() string { return enum.Name("Place", p, placeNames[:]) }

// MarshalText returns String. It returns a *gauge.FieldError for no valid place.
func (p Place) MarshalText() ([]byte, error) { return enum.Marshal("Place", p, placeNames[:]) }

// UnmarshalText reads what String returns; it returns a *gauge.ParseError for
// anything else.
func (p *Place) UnmarshalText(b []byte) error { return enum.Unmarshal(p, "Place", b, placeNames[:]) }

var kindNames = [...]string{"open", "joined", "partner"}

// String returns "open", "joined" or "partner".
func (k Kind) String() string { return enum.Name("Kind", k, kindNames[:]) }

// MarshalText returns String. It returns a *gauge.FieldError for no valid kind.
func (k Kind) MarshalText() ([]byte, error) { return enum.Marshal("Kind", k, kindNames[:]) }

// UnmarshalText reads what String returns; it returns a *gauge.ParseError for
// anything else.
func (k *Kind) UnmarshalText(b []byte) error { return enum.Unmarshal(k, "Kind", b, kindNames[:]) }

// RowEnds reports whether the edge at that place is made of row ends and not
// of stitches.
func (p Piece) RowEnds(at Place) bool { return at.upright() != p.Foundation.upright() }

// Count returns the stitches or row ends along the edge at that place.
func (p Piece) Count(at Place) int {
	if p.RowEnds(at) {
		return p.Rows
	}
	return p.Stitches
}

// Over returns the finished gauge along the edge at that place.
func (p Piece) Over(at Place) gauge.Over {
	if p.RowEnds(at) {
		return p.Gauge.Rows
	}
	return p.Gauge.Stitches
}

// Width returns the finished width as drawn. It returns an error if the gauge
// is not valid.
func (p Piece) Width() (gauge.Measurement, error) {
	return p.Over(Bottom).Measure(gauge.Int(p.Count(Bottom)))
}

// Height returns the finished height as drawn. It returns an error if the
// gauge is not valid.
func (p Piece) Height() (gauge.Measurement, error) {
	return p.Over(Left).Measure(gauge.Int(p.Count(Left)))
}

// Stretches returns the stretches of the edge at that place; where none are
// given, the one that stays open all along. What is no place has none.
func (p Piece) Stretches(at Place) Edge {
	if at > Right {
		return nil
	}
	if len(p.Edges[at]) == 0 {
		return Edge{{Count: p.Count(at)}}
	}
	return append(Edge(nil), p.Edges[at]...)
}

// Validate returns a *gauge.FieldError if a count is out of its range, the
// gauge or a place is not valid, a name is too long, the stretches of an edge
// are too many or do not add up to it, or a fold lies outside the piece.
func (p Piece) Validate() error {
	for _, f := range []struct {
		name string
		n    int
	}{{"Stitches", p.Stitches}, {"Rows", p.Rows}} {
		if f.n < 1 || f.n > gauge.MaxCount {
			return &gauge.FieldError{Field: f.name, Got: strconv.Itoa(f.n), Want: "1 to 100000", Err: gauge.ErrBounds}
		}
	}
	if err := p.Gauge.Validate(); err != nil {
		return err
	}
	if len(p.Name) > text.Limit {
		return &gauge.FieldError{Field: "Name", Got: text.Quote(p.Name), Want: "at most 10000 bytes", Err: gauge.ErrBounds}
	}
	if p.Foundation > Right {
		return &gauge.FieldError{Field: "Foundation", Got: p.Foundation.String(), Want: "bottom, left, top or right"}
	}
	for at, edge := range p.Edges {
		at := Place(at)
		if len(edge) > MaxStretches {
			return &gauge.FieldError{Field: fmt.Sprintf("Edges[%v]", at), Got: strconv.Itoa(len(edge)) + " stretches", Want: "at most 16", Err: gauge.ErrBounds}
		}
		sum := 0
		for i, s := range edge {
			field := fmt.Sprintf("Edges[%v][%d]", at, i)
			switch {
			case s.Count < 1 || s.Count > gauge.MaxCount:
				return &gauge.FieldError{Field: field + ".Count", Got: strconv.Itoa(s.Count), Want: "1 to 100000", Err: gauge.ErrBounds}
			case s.Kind > Partner:
				return &gauge.FieldError{Field: field + ".Kind", Got: s.Kind.String(), Want: "open, joined or partner"}
			case len(s.Name) > text.Limit:
				return &gauge.FieldError{Field: field + ".Name", Got: text.Quote(s.Name), Want: "at most 10000 bytes", Err: gauge.ErrBounds}
			case s.Kind != Open && s.Name == "":
				return &gauge.FieldError{Field: field + ".Name", Got: "none", Want: "the name of the seam"}
			}
			sum += s.Count
		}
		if len(edge) > 0 && sum != p.Count(at) {
			return &gauge.FieldError{Field: fmt.Sprintf("Edges[%v]", at), Got: strconv.Itoa(sum) + " in all its stretches",
				Want: strconv.Itoa(p.Count(at)), Err: ErrLayout}
		}
	}
	if len(p.Folds) > MaxStretches {
		return &gauge.FieldError{Field: "Folds", Got: strconv.Itoa(len(p.Folds)), Want: "at most 16", Err: gauge.ErrBounds}
	}
	for i, f := range p.Folds {
		if len(f.Name) > text.Limit {
			return &gauge.FieldError{Field: fmt.Sprintf("Folds[%d].Name", i), Got: text.Quote(f.Name), Want: "at most 10000 bytes", Err: gauge.ErrBounds}
		}
		most := p.Count(Left)
		if f.Upright {
			most = p.Count(Bottom)
		}
		if f.At.Sign() <= 0 || f.At.Cmp(gauge.Int(most)) >= 0 {
			return &gauge.FieldError{Field: fmt.Sprintf("Folds[%d].At", i), Got: f.At.String(), Want: "more than 0 and less than " + strconv.Itoa(most)}
		}
	}
	return nil
}

// Validate returns a *gauge.FieldError if there is no piece or there are too
// many, a bound is broken, a piece is not valid or two bear one name, a seam lacks a side (ErrLayout), the
// two sides of a seam are so unlike in length that they cannot be eased
// together (ErrLayout), or Easing is not from 0 to 1.
func (l Layout) Validate() error {
	if len(l.Pieces) < 1 || len(l.Pieces) > MaxPieces {
		return &gauge.FieldError{Field: "Pieces", Got: strconv.Itoa(len(l.Pieces)), Want: "1 to 32", Err: gauge.ErrBounds}
	}
	if len(l.Name) > text.Limit {
		return &gauge.FieldError{Field: "Name", Got: text.Quote(l.Name), Want: "at most 10000 bytes", Err: gauge.ErrBounds}
	}
	if len(l.Measures) > 2*MaxStretches {
		return &gauge.FieldError{Field: "Measures", Got: strconv.Itoa(len(l.Measures)), Want: "at most 32", Err: gauge.ErrBounds}
	}
	for i, m := range l.Measures {
		if len(m.Name) > text.Limit {
			return &gauge.FieldError{Field: fmt.Sprintf("Measures[%d].Name", i), Got: text.Quote(m.Name), Want: "at most 10000 bytes", Err: gauge.ErrBounds}
		}
	}
	if l.Easing.Sign() < 0 || l.Easing.Cmp(gauge.Int(1)) > 0 {
		return &gauge.FieldError{Field: "Easing", Got: l.Easing.String(), Want: "0 to 1"}
	}
	names := map[string]bool{}
	for i, p := range l.Pieces {
		field := fmt.Sprintf("Pieces[%d]", i)
		if err := p.Validate(); err != nil {
			return gauge.InField(field, err)
		}
		if names[p.Name] {
			return &gauge.FieldError{Field: field + ".Name", Got: strconv.Quote(p.Name) + " twice", Want: "a name of its own"}
		}
		names[p.Name] = true
	}
	most := l.Easing
	if most.Sign() == 0 {
		most, _ = gauge.Share(1, 10)
	}
	for _, s := range l.seams() {
		if len(s.Sides[0].Parts) == 0 || len(s.Sides[1].Parts) == 0 {
			return &gauge.FieldError{Field: s.Name, Got: "one side of a seam", Want: "a joined stretch and its partner", Err: ErrLayout}
		}
		short, long := s.Sides[0].Length, s.Sides[1].Length
		if short.Cmp(long) > 0 {
			short, long = long, short
		}
		if long.Cmp(short.Times(gauge.Int(1).Add(most))) > 0 {
			return &gauge.FieldError{Field: s.Name, Err: ErrLayout, Got: "sides of " + both(s.Sides[0].Length) + " and " + both(s.Sides[1].Length),
				Want: "lengths that differ by at most " + most.String()}
		}
	}
	return nil
}

// both prints a length in both units for an error.
func both(m gauge.Measurement) string {
	return m.In(gauge.Inch).Text(2) + " in (" + m.In(gauge.Centimetre).Text(2) + " cm)"
}
