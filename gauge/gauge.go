package gauge

import "example.com/panelmath/internal/text"

// Gauge is a fabric's stitches and rows, each over its own span and in its own
// unit. The zero value is not valid.
type Gauge struct {
	Stitches Over
	Rows     Over
}

// Validate returns a *FieldError if either direction is not valid.
func (g Gauge) Validate() error {
	if err := g.Stitches.Validate(); err != nil {
		return InField("Gauge.Stitches", err)
	}
	if err := g.Rows.Validate(); err != nil {
		return InField("Gauge.Rows", err)
	}
	return nil
}

// StitchesIn returns the legal count of stitches nearest to the width; see
// Over.Round. It returns the errors of Validate and of Rule.Round.
func (g Gauge) StitchesIn(width Measurement, r Rule) (Count, error) {
	if err := g.Stitches.Validate(); err != nil {
		return Count{}, InField("Gauge.Stitches", err)
	}
	c, err := g.Stitches.Round(width, r)
	if err != nil {
		return Count{}, err
	}
	c.Counted = Stitches
	return c, nil
}

// RowsIn returns the legal count of rows nearest to the length; see Over.Round.
// It returns the errors of Validate and of Rule.Round.
func (g Gauge) RowsIn(length Measurement, r Rule) (Count, error) {
	if err := g.Rows.Validate(); err != nil {
		return Count{}, InField("Gauge.Rows", err)
	}
	c, err := g.Rows.Round(length, r)
	if err != nil {
		return Count{}, err
	}
	c.Counted = Rows
	return c, nil
}

// Width returns how wide n stitches are. It returns the error of Validate.
func (g Gauge) Width(n int) (Measurement, error) {
	m, err := g.Stitches.Measure(Int(n))
	return m, InField("Gauge.Stitches", err)
}

// Length returns how long n rows are. It returns the error of Validate.
func (g Gauge) Length(n int) (Measurement, error) {
	m, err := g.Rows.Measure(Int(n))
	return m, InField("Gauge.Rows", err)
}

// String returns "13 sts and 9 rows = 4 in", or the two directions apart where
// their spans differ: "20 sts = 7 cm, 10 rows = 10 cm". ParseGauge reads it
// back.
func (g Gauge) String() string {
	s, r := g.Stitches.counted("st", "sts"), g.Rows.counted("row", "rows")
	if g.Stitches.Span.Unit == g.Rows.Span.Unit && g.Stitches.Span.Value.Equal(g.Rows.Span.Value) {
		return s + " and " + r + " = " + g.Rows.Span.String()
	}
	return s + " = " + g.Stitches.Span.String() + ", " + r + " = " + g.Rows.Span.String()
}

// ParseGauge reads `12 sts and 7 rows = 4 in`, `20 sts = 7 cm, 10 rows = 10
// cm`, `2 repeats of 8 sts = 3.5 in, 9 rows = 4 in`: stitches and rows in
// either order, each once, over one span or two. Words may be long or short
// (st, sts, stitch, stitches, row, rows, repeat or cluster), `over` may stand
// for `=`, `x`, `by` and `,` for `and`, `;` for the comma.
//
// It returns a *ParseError with the place if s is not of this form, names a
// direction twice or not at all, or has a number or span out of range.
func ParseGauge(s string) (Gauge, error) {
	p, err := newScanner("gauge", s)
	if err != nil {
		return Gauge{}, err
	}
	var g Gauge
	for first := true; first || p.rest() != ""; first = false {
		if !first && !p.word(",", ";", "and") {
			return Gauge{}, p.end()
		}
		if err := p.clause(&g); err != nil {
			return Gauge{}, err
		}
	}
	for _, side := range []struct {
		name string
		over Over
	}{{"stitches", g.Stitches}, {"rows", g.Rows}} {
		if !side.over.given() {
			return Gauge{}, p.fail(len(s), "no "+side.name+"; want both: 12 sts and 7 rows = 4 in", nil)
		}
	}
	return g, nil
}

// clause takes one or two counts and the span that they were measured over.
func (p *scanner) clause(g *Gauge) error {
	p.rest()
	start := p.at
	var open []*Over // counts that wait for their span
	for len(open) == 0 || p.word("and", "x", "×", "by", ",") {
		p.rest()
		at := p.at
		o, what, err := p.counted()
		if err != nil {
			return err
		}
		side := &g.Stitches
		switch {
		case what == 0:
			return p.fail(p.at, "want sts or rows, got "+text.Quote(p.rest()), nil)
		case what == Rows:
			side = &g.Rows
		}
		if side.given() {
			return p.fail(at, what.String()+" are given twice", nil)
		}
		*side = o
		open = append(open, side)
	}
	span, err := p.span()
	if err != nil {
		return err
	}
	for _, side := range open {
		side.Span = span
		if err := side.Validate(); err != nil {
			return p.fail(start, err.Error(), ErrBounds)
		}
	}
	return nil
}

// MustGauge is ParseGauge for literals in tests and package variables; it
// panics when s is not a gauge.
func MustGauge(s string) Gauge {
	return text.Must("gauge.MustGauge", s, ParseGauge)
}

// MarshalText returns String. It returns the error of Validate.
func (g Gauge) MarshalText() ([]byte, error) {
	if err := g.Validate(); err != nil {
		return nil, err
	}
	return []byte(g.String()), nil
}

// UnmarshalText reads what ParseGauge reads.
func (g *Gauge) UnmarshalText(b []byte) error {
	return text.Read(g, b, ParseGauge)
}
