package gauge

import (
	"strconv"
	"strings"

	"example.com/panelmath/internal/exact"
	"example.com/panelmath/internal/text"
	"github.com/shopspring/decimal"
)

// Over is a count over the span it was measured on: 13 stitches over 4 in, or
// 2 repeats of 8 stitches over 3.5 in. It is kept as measured; what lies in an
// inch is worked out where it is needed, as a ratio. The zero value is not
// valid.
type Over struct {
	Count decimal.Decimal // stitches, rows or repeats; more than 0, half stitches allowed
	Of    int             // stitches or rows in one repeat; 0 stands for 1
	Span  Length          // more than 0
}

// Validate returns a *FieldError if the count or the span is not more than 0,
// Of is negative, or either is out of bounds.
func (o Over) Validate() error {
	if err := checkNumber("Count", o.Count); err != nil {
		return err
	}
	if o.Count.Sign() <= 0 {
		return &FieldError{Field: "Count", Got: plain(o.Count), Want: "more than 0"}
	}
	if o.Count.Cmp(decimal.NewFromInt(MaxCount)) > 0 {
		return &FieldError{Field: "Count", Got: plain(o.Count), Want: "at most 100000", Err: ErrBounds}
	}
	if o.Of < 0 || o.Of > MaxCount {
		return &FieldError{Field: "Of", Got: strconv.Itoa(o.Of), Want: "0 to 100000", Err: ErrBounds}
	}
	if err := o.Span.Validate(); err != nil {
		return InField("Span", err)
	}
	if o.Span.Value.Sign() <= 0 {
		return &FieldError{Field: "Span", Got: o.Span.String(), Want: "more than 0"}
	}
	return nil
}

// count returns the stitches or rows over the span.
func (o Over) count() exact.Ratio {
	return fromDecimal(o.Count).Mul(exact.Int(int64(max(o.Of, 1))))
}

// Exact returns how many stitches or rows lie in m, unrounded. It returns the
// error of Validate.
func (o Over) Exact(m Measurement) (Ratio, error) {
	if err := o.Validate(); err != nil {
		return Ratio{}, err
	}
	q, err := m.mm.Mul(o.count()).Quo(o.Span.Measurement().mm)
	return Ratio{q}, err
}

// Round returns the legal count nearest to what lies in m; see Rule.Round. The
// count knows its deviation as a length. It returns the errors of Validate and
// of Rule.Round.
func (o Over) Round(m Measurement, r Rule) (Count, error) {
	x, err := o.Exact(m)
	if err != nil {
		return Count{}, err
	}
	c, err := r.Round(x)
	if err != nil {
		return Count{}, err
	}
	c.Each, err = o.Measure(Int(1))
	return c, err
}

// Measure returns how long n stitches or rows are. It returns the error of
// Validate.
func (o Over) Measure(n Ratio) (Measurement, error) {
	if err := o.Validate(); err != nil {
		return Measurement{}, err
	}
	q, err := n.r.Mul(o.Span.Measurement().mm).Quo(o.count())
	return Measurement{q}, err
}

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

// String returns "13 sts and 9 rows = 4 in", or the two directions apart where
// their spans differ: "20 sts = 7 cm, 10 rows = 10 cm". ParseGauge reads it
// back.
func (g Gauge) String() string {
	s, r := g.Stitches.side("st", "sts"), g.Rows.side("row", "rows")
	if g.Stitches.Span.Unit == g.Rows.Span.Unit && g.Stitches.Span.Value.Equal(g.Rows.Span.Value) {
		return s + " and " + r + " = " + g.Rows.Span.String()
	}
	return s + " = " + g.Stitches.Span.String() + ", " + r + " = " + g.Rows.Span.String()
}

// side returns "13 sts", "2 repeats of 8 sts".
func (o Over) side(one, many string) string {
	word := many
	if o.Of > 0 {
		if o.Of == 1 {
			word = one
		}
		repeats := " repeats of "
		if o.Count.Equal(decimal.NewFromInt(1)) {
			repeats = " repeat of "
		}
		return plain(o.Count) + repeats + strconv.Itoa(o.Of) + " " + word
	}
	if o.Count.Equal(decimal.NewFromInt(1)) {
		word = one
	}
	return plain(o.Count) + " " + word
}

// ParseGauge reads `12 sts and 7 rows = 4 in`, `20 sts = 7 cm, 10 rows = 10
// cm`, `2 repeats of 8 sts = 3.5 in, 9 rows = 4 in`: stitches and rows in
// either order, each once, over one span or two. Words may be long or short
// (st, sts, stitch, stitches, row, rows), `over` may stand for `=`, `x`, `by`
// and `,` for `and`, `;` for the comma.
//
// It returns a *ParseError with the place if s is not of this form, names a
// direction twice or not at all, or has a number or span out of range.
func ParseGauge(s string) (Gauge, error) {
	fail := func(at int, cause string) (Gauge, error) {
		return Gauge{}, &ParseError{Kind: "gauge", Text: s, At: at, Cause: cause}
	}
	if len(s) > text.Limit {
		return fail(text.Limit, "text too long; at most 10000 characters")
	}
	var g Gauge
	var open []*Over // directions read that wait for their span
	p := scanner{s: s}
	for {
		o, rows, at, cause := p.side()
		if cause != "" {
			return fail(at, cause)
		}
		dst, name := &g.Stitches, "stitches"
		if rows {
			dst, name = &g.Rows, "rows"
		}
		if dst.Of != 0 || !dst.Count.IsZero() {
			return fail(at, name+" are given twice")
		}
		*dst = o
		open = append(open, dst)
		if p.word("and", "x", "×", "by", ",") {
			continue
		}
		if !p.word("=", "over", "to", "per") {
			return fail(p.at, "want = and a span like 4 in, got "+text.Quote(p.rest()))
		}
		span, cause := p.span()
		if cause != "" {
			return fail(p.at, cause)
		}
		for _, dst := range open {
			dst.Span = span
			if err := dst.Validate(); err != nil {
				return fail(at, err.Error())
			}
		}
		open = nil
		if p.rest() == "" {
			break
		}
		if !p.word(",", ";", "and") {
			return fail(p.at, "unexpected "+text.Quote(p.rest()))
		}
	}
	switch {
	case !g.Stitches.Span.Unit.Valid():
		return fail(len(s), "no stitches; want both: 12 sts and 7 rows = 4 in")
	case !g.Rows.Span.Unit.Valid():
		return fail(len(s), "no rows; want both: 12 sts and 7 rows = 4 in")
	}
	return g, nil
}

// MustGauge is ParseGauge for literals in tests and package variables; it
// panics when s is not a gauge.
func MustGauge(s string) Gauge {
	g, err := ParseGauge(s)
	if err != nil {
		panic("gauge.MustGauge: " + err.Error())
	}
	return g
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
	v, err := ParseGauge(string(b))
	if err != nil {
		return err
	}
	*g = v
	return nil
}

// scanner walks through the text of a gauge.
type scanner struct {
	s  string
	at int
}

func (p *scanner) rest() string {
	for p.at < len(p.s) && (p.s[p.at] == ' ' || p.s[p.at] == '\t') {
		p.at++
	}
	return p.s[p.at:]
}

// letters returns the run of letters that comes next.
func (p *scanner) letters() string {
	r := p.rest()
	n := 0
	for n < len(r) && ('a' <= r[n]|0x20 && r[n]|0x20 <= 'z') {
		n++
	}
	return r[:n]
}

// word takes one of the words if it comes next.
func (p *scanner) word(words ...string) bool {
	r, l := p.rest(), p.letters()
	for _, w := range words {
		isWord := 'a' <= w[0] && w[0] <= 'z'
		if isWord && strings.EqualFold(l, w) || !isWord && strings.HasPrefix(r, w) {
			p.at += len(w)
			return true
		}
	}
	return false
}

// side reads `13 sts`, `9 rows`, `2 repeats of 8 sts`.
func (p *scanner) side() (o Over, rows bool, at int, cause string) {
	r := p.rest()
	at = p.at
	d, n, cause := scanNumber(r, true)
	if cause != "" {
		return o, false, at, cause
	}
	if n == 0 {
		return o, false, at, "want a number of sts or rows, got " + text.Quote(r)
	}
	p.at += n
	o.Count = d
	if d.Sign() <= 0 {
		return o, false, at, "got " + plain(d) + ", want more than 0"
	}
	if p.word("repeats", "repeat", "reps", "rep") {
		p.word("of")
		r = p.rest()
		e := digitsAt(r, 0)
		if e == 0 || e > 6 {
			return o, false, p.at, "want the number of sts in a repeat, got " + text.Quote(r)
		}
		o.Of, _ = strconv.Atoi(r[:e])
		if o.Of == 0 {
			return o, false, p.at, "got a repeat of 0, want at least 1"
		}
		p.at += e
	}
	switch {
	case p.word("sts", "st", "stitches", "stitch"):
	case p.word("rows", "row"):
		rows = true
	default:
		return o, false, p.at, "want sts or rows, got " + text.Quote(p.rest())
	}
	return o, rows, at, ""
}

// span reads a length that may be followed by more of the gauge.
func (p *scanner) span() (Length, string) {
	r := p.rest()
	d, at, u, cause, bad := scanLength(cutSpan(r), 0, true)
	if cause != "" {
		p.at += bad
		return Length{}, cause
	}
	l := Length{Value: d, Unit: u}
	if d.Sign() <= 0 {
		return Length{}, "got a span of " + l.String() + ", want more than 0"
	}
	if err := l.Validate(); err != nil {
		return Length{}, "a span longer than 100 m, or a number out of bounds"
	}
	p.at += at
	return l, ""
}

// cutSpan ends r where the span's unit is followed by a comma or semicolon.
func cutSpan(r string) string {
	for i := 1; i < len(r); i++ {
		if r[i] == ';' || r[i] == ',' && !(i+1 < len(r) && '0' <= r[i+1] && r[i+1] <= '9' && '0' <= r[i-1] && r[i-1] <= '9') {
			return r[:i]
		}
	}
	return r
}
