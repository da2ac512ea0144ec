package layout

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
)

// Rectangle is what a ready garment is made of: one size of one piece. Its
// zero value is not valid.
type Rectangle struct {
	Stitches int         `json:"stitches"` // in a row; 1 to gauge.MaxCount
	Rows     int         `json:"rows"`     // 1 to gauge.MaxCount
	Gauge    gauge.Gauge `json:"gauge"`    // finished
	// Crosswise: the rows run across the garment and its length is counted in
	// rows. Otherwise they run lengthwise, from hem to shoulder, or from hem
	// over the shoulder to hem, and its length is counted in stitches.
	Crosswise bool `json:"crosswise,omitempty"`
}

// Validate returns a *gauge.FieldError if a count is out of its range or the
// gauge is not valid.
func (r Rectangle) Validate() error { return r.piece("", Left).Validate() }

// Long returns the stitches or rows along the length.
func (r Rectangle) Long() int {
	if r.Crosswise {
		return r.Rows
	}
	return r.Stitches
}

// Wide returns the rows or stitches along the width.
func (r Rectangle) Wide() int {
	if r.Crosswise {
		return r.Stitches
	}
	return r.Rows
}

// Along returns the finished gauge along the length.
func (r Rectangle) Along() gauge.Over {
	if r.Crosswise {
		return r.Gauge.Rows
	}
	return r.Gauge.Stitches
}

// Across returns the finished gauge along the width.
func (r Rectangle) Across() gauge.Over {
	if r.Crosswise {
		return r.Gauge.Stitches
	}
	return r.Gauge.Rows
}

// piece lays r upright. Where its rows run lengthwise the foundation lies at
// the side given; crosswise it lies at the bottom.
func (r Rectangle) piece(name string, foundation Place) Piece {
	if r.Crosswise {
		foundation = Bottom
	}
	return Piece{Name: name, Stitches: r.Stitches, Rows: r.Rows, Gauge: r.Gauge, Foundation: foundation}
}

// half is where a piece folds that is folded at the middle of its length.
func (r Rectangle) half() gauge.Ratio {
	h, _ := gauge.Share(r.Long(), 2)
	return h
}

func (r Rectangle) long(n gauge.Ratio) gauge.Measurement { // r is valid
	m, _ := r.Along().Measure(n)
	return m
}

func (r Rectangle) wide(n gauge.Ratio) gauge.Measurement { // r is valid
	m, _ := r.Across().Measure(n)
	return m
}

// OpenFront is two equal panels that go over the shoulders, joined up the
// centre back, each sewn to itself at the side, open down the front.
type OpenFront struct {
	Panel      Rectangle `json:"panel"`       // hem over the shoulder to hem
	CentreBack int       `json:"centre_back"` // pairs from the back hem up
	Side       int       `json:"side"`        // pairs of each side, from the slit up
	Slit       int       `json:"slit"`        // stitches or row ends left open at each hem below the side
}

// Layout returns the garment, with the measures round, length, width (of one
// panel), armhole depth, armhole round, neck drop and, where there is one,
// slit.
//
// It returns a *gauge.FieldError if the panel is not valid, there are no pairs,
// or so many that no armhole is left or the centre back goes over the shoulder.
func (o OpenFront) Layout() (Layout, error) {
	l, err := overShoulders("open front", o.Panel, o.CentreBack, 0, o.Side, o.Slit)
	if err != nil {
		return Layout{}, err
	}
	return valid(l)
}

// ClosedFront is an open front whose foundation edges are joined in front as
// well, from the hem up to the neck.
type ClosedFront struct {
	Panel       Rectangle `json:"panel"`
	CentreBack  int       `json:"centre_back"`  // pairs from the back hem up
	CentreFront int       `json:"centre_front"` // pairs from the front hem up
	Side        int       `json:"side"`
	Slit        int       `json:"slit"`
}

// Layout returns the garment, with the measures of OpenFront and also neck
// depth (in front, from the fold down) and neck round.
//
// It returns the errors of OpenFront, and one where the two centre seams leave
// no neck.
func (c ClosedFront) Layout() (Layout, error) {
	if c.CentreFront < 1 || 2*c.CentreFront > c.Panel.Long() {
		return Layout{}, pairsError("CentreFront", c.CentreFront, c.Panel.Long()/2)
	}
	l, err := overShoulders("closed front", c.Panel, c.CentreBack, c.CentreFront, c.Side, c.Slit)
	if err != nil {
		return Layout{}, err
	}
	return valid(l)
}

func valid(l Layout) (Layout, error) {
	if err := l.Validate(); err != nil {
		return Layout{}, err
	}
	return l, nil
}

func pairsError(field string, got, most int) error {
	want := "1 pair"
	if most > 1 {
		want = fmt.Sprintf("1 to %d pairs", most)
	}
	return &gauge.FieldError{Field: field, Got: strconv.Itoa(got), Want: want, Err: ErrLayout}
}

func overShoulders(name string, r Rectangle, back, front, side, slit int) (Layout, error) {
	if err := r.Validate(); err != nil {
		return Layout{}, gauge.InField("Panel", err)
	}
	long := r.Long()
	switch {
	case back < 1 || 2*back > long:
		return Layout{}, pairsError("CentreBack", back, long/2)
	case back+front >= long:
		return Layout{}, &gauge.FieldError{Field: "CentreFront", Got: strconv.Itoa(front), Want: "fewer, so that a neck is left", Err: ErrLayout}
	case slit < 0 || slit >= long:
		return Layout{}, &gauge.FieldError{Field: "Slit", Got: strconv.Itoa(slit), Want: "0 to " + strconv.Itoa(long-1), Err: ErrLayout}
	case side < 1 || 2*(side+slit) >= long:
		return Layout{}, pairsError("Side", side, (long-1)/2-slit)
	}
	fold := Fold{Name: "shoulder", At: r.half()}
	open := "front and neck"
	if front > 0 {
		open = "neck"
	}
	inner := func(k Kind) Edge {
		return edge(Stretch{"centre back", back, k}, Stretch{open, long - back - front, Open}, Stretch{"centre front", front, k})
	}
	left, right := r.piece("left panel", Right), r.piece("right panel", Left)
	for _, p := range []*Piece{&left, &right} {
		p.Folds = append(p.Folds, fold)
		p.Edges[Bottom], p.Edges[Top] = Edge{{"back hem", r.Wide(), Open}}, Edge{{"front hem", r.Wide(), Open}}
	}
	left.Edges[Right], right.Edges[Left] = inner(Joined), inner(Partner)
	left.Edges[Left] = foldedSide("left", long, side, slit)
	right.Edges[Right] = foldedSide("right", long, side, slit)

	depth := r.long(r.half().Sub(gauge.Int(side + slit)))
	l := Layout{Name: name, Pieces: []Piece{left, right}, Measures: []Measure{
		{"round", r.wide(gauge.Int(4 * r.Wide()))},
		{"length", r.long(r.half())},
		{"width", r.wide(gauge.Int(r.Wide()))},
		{"armhole depth", depth},
		{"armhole round", depth.Times(gauge.Int(2))},
		{"neck drop", r.long(r.half().Sub(gauge.Int(back)))},
	}}
	if front > 0 {
		l.Measures = append(l.Measures,
			Measure{"neck depth", r.long(r.half().Sub(gauge.Int(front)))},
			Measure{"neck round", r.long(gauge.Int(2 * (long - back - front)))})
	}
	if slit > 0 {
		l.Measures = append(l.Measures, Measure{"slit", r.long(gauge.Int(slit))})
	}
	return l, nil
}

// foldedSide is an edge that is folded at its middle and sewn to itself.
func foldedSide(which string, long, side, slit int) Edge {
	return edge(
		Stretch{which + " slit", slit, Open},
		Stretch{which + " side seam", side, Joined},
		Stretch{which + " armhole", long - 2*(side+slit), Open},
		Stretch{which + " side seam", side, Partner},
		Stretch{which + " slit", slit, Open})
}

// edge drops stretches of nothing.
func edge(all ...Stretch) Edge {
	var e Edge
	for _, s := range all {
		if s.Count != 0 {
			e = append(e, s)
		}
	}
	return e
}

// FrontAndBack is two equal panels from hem to shoulder, joined at the
// shoulders and the sides, with or without rectangular sleeves.
type FrontAndBack struct {
	Panel    Rectangle  `json:"panel"`
	Shoulder int        `json:"shoulder"` // pairs of each shoulder, from the outer edge in
	Side     int        `json:"side"`     // pairs of each side; 0 leaves the sides open, as in a poncho of two rectangles hung front and back
	Slit     int        `json:"slit"`
	Sleeve   *Rectangle `json:"sleeve,omitempty"` // its long side lies along the arm; nil for none
}

// Layout returns the garment, with the measures round, length, width,
// neck width, neck round, and where they are: armhole depth, armhole round,
// slit, sleeve length, sleeve round.
//
// It returns a *gauge.FieldError if a rectangle is not valid, the shoulders
// leave no neck, the sides leave no armhole, there is a sleeve and no side
// seam, or the sleeve is too unlike the armhole to be eased into it.
func (f FrontAndBack) Layout() (Layout, error) {
	r := f.Panel
	if err := r.Validate(); err != nil {
		return Layout{}, gauge.InField("Panel", err)
	}
	long, wide := r.Long(), r.Wide()
	hole := long - f.Side - f.Slit
	switch {
	case f.Shoulder < 1 || 2*f.Shoulder >= wide:
		return Layout{}, pairsError("Shoulder", f.Shoulder, (wide-1)/2)
	case f.Slit < 0 || f.Slit >= long:
		return Layout{}, &gauge.FieldError{Field: "Slit", Got: strconv.Itoa(f.Slit), Want: "0 to " + strconv.Itoa(long-1), Err: ErrLayout}
	case f.Side < 0 || hole < 1:
		return Layout{}, pairsError("Side", f.Side, long-1-f.Slit)
	case f.Side == 0 && f.Slit > 0:
		return Layout{}, &gauge.FieldError{Field: "Slit", Got: strconv.Itoa(f.Slit), Want: "0, the sides being open", Err: ErrLayout}
	case f.Sleeve != nil && f.Side == 0:
		return Layout{}, &gauge.FieldError{Field: "Side", Got: "0", Want: "a side seam below the sleeve", Err: ErrLayout}
	}
	half := func(name, atLeft, atRight string, k Kind) Piece {
		p := r.piece(name, Left)
		p.Edges[Bottom] = Edge{{"hem", wide, Open}}
		p.Edges[Top] = edge(Stretch{atLeft + " shoulder", f.Shoulder, k}, Stretch{"neck", wide - 2*f.Shoulder, Open}, Stretch{atRight + " shoulder", f.Shoulder, k})
		for at, which := range map[Place]string{Left: atLeft, Right: atRight} {
			up := Stretch{which + " armhole", hole, Open}
			if f.Side == 0 {
				up.Name = which + " side"
			}
			if f.Sleeve != nil {
				up.Kind = Joined
			}
			p.Edges[at] = edge(Stretch{which + " slit", f.Slit, Open}, Stretch{which + " side seam", f.Side, k}, up)
		}
		return p
	}
	// Both lie right side up: the wearer's left is at the left of the back and
	// at the right of the front.
	l := Layout{Name: "front and back", Pieces: []Piece{half("back", "left", "right", Joined), half("front", "right", "left", Partner)}}
	neck := r.wide(gauge.Int(wide - 2*f.Shoulder))
	l.Measures = []Measure{
		{"round", r.wide(gauge.Int(2 * wide))},
		{"length", r.long(gauge.Int(long))},
		{"width", r.wide(gauge.Int(wide))},
		{"neck width", neck},
		{"neck round", neck.Times(gauge.Int(2))},
	}
	if f.Side > 0 {
		depth := r.long(gauge.Int(hole))
		l.Measures = append(l.Measures, Measure{"armhole depth", depth}, Measure{"armhole round", depth.Times(gauge.Int(2))})
	}
	if f.Slit > 0 {
		l.Measures = append(l.Measures, Measure{"slit", r.long(gauge.Int(f.Slit))})
	}
	if s := f.Sleeve; s != nil {
		if err := s.Validate(); err != nil {
			return Layout{}, gauge.InField("Sleeve", err)
		}
		for i, which := range []string{"left", "right"} {
			p := s.piece(which+" sleeve", Left)
			p.NewLine = i == 0
			p.Edges[Top] = Edge{{which + " armhole", s.Wide(), Partner}}
			p.Edges[Left] = Edge{{which + " underarm", s.Long(), Joined}}
			p.Edges[Right] = Edge{{which + " underarm", s.Long(), Partner}}
			p.Edges[Bottom] = Edge{{which + " sleeve end", s.Wide(), Open}}
			l.Pieces = append(l.Pieces, p)
		}
		l.Measures = append(l.Measures, Measure{"sleeve length", s.long(gauge.Int(s.Long()))}, Measure{"sleeve round", s.wide(gauge.Int(s.Wide()))})
	}
	return valid(l)
}

// Cocoon is one rectangle folded at the middle of its length, each side sewn
// to itself from the open end up to an armhole at the fold.
type Cocoon struct {
	Panel Rectangle `json:"panel"`
	Side  int       `json:"side"` // pairs of each side
}

// Layout returns the garment, with the measures width, panel length (before
// folding), length (folded), armhole depth, armhole round and body opening (all
// round the open edges).
//
// It returns a *gauge.FieldError if the rectangle is not valid or the sides
// leave no armhole.
func (c Cocoon) Layout() (Layout, error) {
	r := c.Panel
	if err := r.Validate(); err != nil {
		return Layout{}, gauge.InField("Panel", err)
	}
	long, wide := r.Long(), r.Wide()
	if c.Side < 1 || 2*c.Side >= long {
		return Layout{}, pairsError("Side", c.Side, (long-1)/2)
	}
	p := r.piece("panel", Left)
	p.Folds = []Fold{{Name: "fold", At: r.half()}}
	p.Edges[Left], p.Edges[Right] = foldedSide("left", long, c.Side, 0), foldedSide("right", long, c.Side, 0)
	p.Edges[Bottom] = Edge{{"body opening", wide, Open}}
	p.Edges[Top] = Edge{{"body opening", wide, Open}}
	depth := r.long(r.half().Sub(gauge.Int(c.Side)))
	l := Layout{Name: "cocoon", Pieces: []Piece{p}, Measures: []Measure{
		{"width", r.wide(gauge.Int(wide))},
		{"panel length", r.long(gauge.Int(long))},
		{"length", r.long(r.half())},
		{"armhole depth", depth},
		{"armhole round", depth.Times(gauge.Int(2))},
		{"body opening", r.wide(gauge.Int(2 * wide))},
	}}
	return valid(l)
}

// Poncho is two equal rectangles, the short end of each sewn to the long side
// of the other; what is left of the two long sides is the neck.
type Poncho struct {
	Panel Rectangle `json:"panel"`
	Side  int       `json:"side"` // stitches or row ends of the long side to which the short end of the other is sewn
}

// Layout returns the garment, with the measures width and panel length (of one
// rectangle), neck round and hem round.
//
// It returns a *gauge.FieldError if the rectangle is not valid, no neck is
// left, or the stretch of the long side is too unlike the short end.
func (o Poncho) Layout() (Layout, error) {
	r := o.Panel
	if err := r.Validate(); err != nil {
		return Layout{}, gauge.InField("Panel", err)
	}
	long, wide := r.Long(), r.Wide()
	if o.Side < 1 || o.Side >= long {
		return Layout{}, pairsError("Side", o.Side, long-1)
	}
	seams := [2]string{"first seam", "second seam"}
	l := Layout{Name: "poncho"}
	for i, name := range []string{"first panel", "second panel"} {
		p := r.piece(name, Right)
		p.Edges[Bottom] = Edge{{seams[i], wide, Joined}}
		p.Edges[Right] = Edge{{"neck", long - o.Side, Open}, {seams[1-i], o.Side, Partner}}
		p.Edges[Left], p.Edges[Top] = Edge{{"hem", long, Open}}, Edge{{"hem", wide, Open}}
		l.Pieces = append(l.Pieces, p)
	}
	full, end := r.long(gauge.Int(long)), r.wide(gauge.Int(wide))
	l.Measures = []Measure{
		{"width", end},
		{"panel length", full},
		{"neck round", r.long(gauge.Int(2 * (long - o.Side)))},
		{"hem round", full.Add(end).Times(gauge.Int(2))},
	}
	return valid(l)
}
