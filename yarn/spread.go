package yarn

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/yarn/internal/bound"
	"example.com/panelmath/yarn/internal/say"
	"github.com/shopspring/decimal"
)

// Reading is how far the readings of a swatch may be off, either way: half a
// step of the scale, what the tape can't tell on each side. The zero value
// takes the readings as exact.
type Reading struct {
	Side gauge.Length `json:"side,omitzero"` // of each side of the swatch
	Mass Mass         `json:"mass,omitzero"` // of its mass
	Yarn Length       `json:"yarn,omitzero"` // of its unravelled length
}

// unset reports a length that was not given.
func unset(l gauge.Length) bool { return l.Unit == 0 && l.Value.IsZero() }

// validate checks the readings against those of the swatch, whose own fields
// are valid.
func (r Reading) validate(s Swatch) error {
	if !unset(r.Side) {
		if err := r.Side.Validate(); err != nil {
			return gauge.InField("Swatch.Reading.Side", err)
		}
		m := r.Side.Measurement()
		if m.Sign() < 0 || m.Cmp(s.Width.Measurement()) >= 0 || m.Cmp(s.Height.Measurement()) >= 0 {
			return &gauge.FieldError{Field: "Swatch.Reading.Side", Got: r.Side.String(), Want: "at least 0 and less than the swatch"}
		}
	}
	if !r.Mass.IsZero() {
		if err := r.Mass.Validate(); err != nil {
			return gauge.InField("Swatch.Reading.Mass", err)
		}
		if s.Mass.IsZero() || r.Mass.Exact().Cmp(s.Mass.Exact()) >= 0 {
			return &gauge.FieldError{Field: "Swatch.Reading.Mass", Got: r.Mass.String(), Want: "less than the mass of the swatch"}
		}
	}
	if !r.Yarn.IsZero() {
		if err := r.Yarn.Validate(); err != nil {
			return gauge.InField("Swatch.Reading.Yarn", err)
		}
		if s.Yarn.IsZero() || r.Yarn.Measurement().Cmp(s.Yarn.Measurement()) >= 0 {
			return &gauge.FieldError{Field: "Swatch.Reading.Yarn", Got: r.Yarn.String(), Want: "less than the yarn of the swatch"}
		}
	}
	return nil
}

// spread returns the least and the most of what the swatch may say, as shares
// of what it does say: least yarn on the largest swatch, most on the smallest.
func (s Swatch) spread() (low, high gauge.Ratio) {
	d := s.Reading.Side.Measurement()
	larger := Rectangle(s.Width.Measurement().Add(d), s.Height.Measurement().Add(d))
	smaller := Rectangle(s.Width.Measurement().Sub(d), s.Height.Measurement().Sub(d))
	low, high = over(s.Area().mm2, larger.mm2), over(s.Area().mm2, smaller.mm2)
	off := gauge.Ratio{}
	if s.Yarn.IsZero() {
		off = over(s.Reading.Mass.Exact().g, s.Mass.Exact().g)
	} else {
		off, _ = s.Reading.Yarn.Measurement().Per(s.Yarn.Measurement())
	}
	one := gauge.Int(1)
	return low.Mul(one.Sub(off)), high.Mul(one.Add(off))
}

// GaugeSpread returns the least and the most area, as shares of the area at g,
// of a piece of fixed counts when the counts of g may be off by so many stitches
// and so many rows over their spans, either way. Half a stitch or row is usual.
// The shares are for Line.Widen.
//
// It returns a *gauge.FieldError if the gauge is not valid, or an error is
// negative or not less than its count.
func GaugeSpread(g gauge.Gauge, stitches, rows decimal.Decimal) (low, high gauge.Ratio, err error) {
	if err := g.Validate(); err != nil {
		return low, high, err
	}
	low, high = gauge.Int(1), gauge.Int(1)
	for _, side := range []struct {
		field string
		count decimal.Decimal
		of    int
		off   decimal.Decimal
	}{{"Stitches", g.Stitches.Count, g.Stitches.Of, stitches}, {"Rows", g.Rows.Count, g.Rows.Of, rows}} {
		off, err := bound.Number(side.field, side.off)
		if err != nil {
			return gauge.Ratio{}, gauge.Ratio{}, err
		}
		count := exactly(side.count).Mul(gauge.Int(max(side.of, 1)))
		if off.Sign() < 0 || off.Cmp(count) >= 0 {
			return gauge.Ratio{}, gauge.Ratio{}, &gauge.FieldError{Field: side.field, Got: number.Text(side.off), Want: "at least 0 and less than the count of the gauge"}
		}
		low, high = low.Mul(over(count, count.Add(off))), high.Mul(over(count, count.Sub(off)))
	}
	return low, high, nil
}

// Widen returns the line with its spread widened: all of it may come to low to
// high times what it says, as with an area that is known no better. It returns a
// *gauge.FieldError unless 0 ≤ low ≤ 1 ≤ high, or the line is not valid.
func (l Line) Widen(low, high gauge.Ratio) (Line, error) {
	if err := l.Validate(); err != nil {
		return Line{}, err
	}
	one := gauge.Int(1)
	if low.Sign() < 0 || low.Cmp(one) > 0 || high.Cmp(one) < 0 {
		return Line{}, &gauge.FieldError{Field: "Widen", Got: say.Number(low) + " to " + say.Number(high), Want: "a low of 0 to 1 and a high of at least 1"}
	}
	l.Less = l.Length.Sub(l.Length.Sub(l.Less).Times(low))
	l.More = l.Length.Add(l.More).Times(high).Sub(l.Length)
	return l.checked()
}

// Comparison is how two ways to the same line agree.
type Comparison struct {
	A     Line              `json:"a"`
	B     Line              `json:"b"`
	Apart gauge.Measurement `json:"apart"` // B less A; negative where B is less
	Share gauge.Ratio       `json:"share"` // Apart as a share of A
	Agree bool              `json:"agree"` // the spreads of the two touch or overlap
	Gap   gauge.Measurement `json:"gap"`   // what lies between the spreads; nothing where they agree
}

// Compare compares two ways to the same line: by swatch and by stitches, say.
// Lines without a spread agree only if they are equal. It returns a
// *gauge.FieldError if a line is not valid or a takes nothing.
func Compare(a, b Line) (Comparison, error) {
	for _, l := range []Line{a, b} {
		if err := l.Validate(); err != nil {
			return Comparison{}, err
		}
	}
	c := Comparison{A: a, B: b, Apart: b.Length.Sub(a.Length)}
	var err error
	if c.Share, err = c.Apart.Per(a.Length); err != nil {
		return Comparison{}, &gauge.FieldError{Field: "A.Length", Got: "0", Want: "more than 0", Err: err}
	}
	below := b.Length.Sub(b.Less).Sub(a.Length.Add(a.More))
	above := a.Length.Sub(a.Less).Sub(b.Length.Add(b.More))
	if below.Sign() > 0 {
		c.Gap = below
	}
	if above.Sign() > 0 {
		c.Gap = above
	}
	c.Agree = c.Gap.Sign() == 0
	return c, nil
}

// Explain says in one sentence how the two agree, in metres.
func (c Comparison) Explain() string {
	way := "more"
	share := c.Share
	if share.Sign() < 0 {
		way, share = "less", share.Mul(gauge.Int(-1))
	}
	s := fmt.Sprintf("%s takes %s, %s takes %s, %s%% %s", c.A.Name, say.In(c.A.Length, gauge.Metre), c.B.Name, say.In(c.B.Length, gauge.Metre),
		say.Number(share.Mul(gauge.Int(100))), way)
	if c.Agree {
		return s + ": within their spread"
	}
	return s + fmt.Sprintf(": their spreads are %s apart; measure again", say.In(c.Gap, gauge.Metre))
}
