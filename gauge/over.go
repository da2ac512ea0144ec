package gauge

import (
	"strconv"

	"example.com/panelmath/internal/exact"
	"example.com/panelmath/internal/number"
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
	_, err := o.perMM()
	return err
}

// perMM returns the stitches or rows in a millimetre, or the error of Validate.
func (o Over) perMM() (exact.Ratio, error) {
	n, err := bounded("Count", o.Count)
	switch {
	case err != nil:
		return exact.Ratio{}, err
	case n.Sign() <= 0:
		return exact.Ratio{}, &FieldError{Field: "Count", Got: number.Text(o.Count), Want: "more than 0"}
	case n.Cmp(exact.Int(MaxCount)) > 0:
		return exact.Ratio{}, &FieldError{Field: "Count", Got: number.Text(o.Count), Want: "at most 100000", Err: ErrBounds}
	case o.Of < 0 || o.Of > MaxCount:
		return exact.Ratio{}, &FieldError{Field: "Of", Got: strconv.Itoa(o.Of), Want: "0 to 100000", Err: ErrBounds}
	}
	span, err := o.Span.mm()
	if err != nil {
		return exact.Ratio{}, InField("Span", err)
	}
	if span.Sign() <= 0 {
		return exact.Ratio{}, &FieldError{Field: "Span", Got: o.Span.String(), Want: "more than 0"}
	}
	if o.Of > 1 {
		n = n.Mul(exact.Int(int64(o.Of)))
	}
	return n.Quo(span)
}

// Exact returns how many stitches or rows lie in m, unrounded. It returns the
// error of Validate.
func (o Over) Exact(m Measurement) (Ratio, error) {
	per, err := o.perMM()
	if err != nil {
		return Ratio{}, err
	}
	return Ratio{m.mm.Mul(per)}, nil
}

// Round returns the legal count nearest to what lies in m; see Rule.Round. The
// count knows its deviation as a length. It returns the errors of Validate and
// of Rule.Round.
func (o Over) Round(m Measurement, r Rule) (n Count, err error) {
	per, err := o.perMM()
	if err != nil {
		return Count{}, err
	}
	if err := r.Validate(); err != nil {
		return Count{}, err
	}
	if err := round(&r, Ratio{m.mm.Mul(per)}, &n); err != nil {
		return Count{}, err
	}
	n.Each, n.Unit = Measurement{per.Inv()}, o.Span.Unit
	return n, nil
}

// Within returns the legal counts that measure from low to high, both included,
// in order, each as the answer for itself. No count is a valid answer.
//
// It returns the errors of Validate and of Rule.Within.
func (o Over) Within(low, high Measurement, r Rule) ([]int, error) {
	per, err := o.perMM()
	if err != nil {
		return nil, err
	}
	return r.Within(Ratio{low.mm.Mul(per)}, Ratio{high.mm.Mul(per)})
}

// Measure returns how long n stitches or rows are. It returns the error of
// Validate.
func (o Over) Measure(n Ratio) (Measurement, error) {
	per, err := o.perMM()
	if err != nil {
		return Measurement{}, err
	}
	q, err := n.r.Quo(per)
	if err != nil {
		return Measurement{}, err
	}
	return Measurement{q}, nil
}

// String returns "13 over 4 in" or "2 repeats of 8 over 3.5 in", which ParseOver
// reads back.
func (o Over) String() string { return o.counted("", "") + " over " + o.Span.String() }

// counted returns "13 sts", "1 st", "2 repeats of 8 sts", or the same without
// the word.
func (o Over) counted(one, many string) string {
	s := number.Text(o.Count)
	single := s == "1"
	if o.Of > 0 {
		s += " repeats of " + strconv.Itoa(o.Of)
		if single {
			s = "1 repeat of " + strconv.Itoa(o.Of)
		}
		single = o.Of == 1
	}
	switch {
	case many == "":
		return s
	case single:
		return s + " " + one
	}
	return s + " " + many
}

// ParseOver reads `13 over 4 in` and `2 repeats of 8 over 3.5 in`; also `=`,
// `per`, and `sts` or `rows` after the count.
//
// It returns a *ParseError if s is not of this form or is out of bounds.
func ParseOver(s string) (Over, error) {
	p, err := newScanner("count over a span", s)
	if err != nil {
		return Over{}, err
	}
	o, _, err := p.counted()
	if err != nil {
		return Over{}, err
	}
	if o.Span, err = p.span(); err != nil {
		return Over{}, err
	}
	if err := o.Validate(); err != nil {
		return Over{}, p.fail(0, err.Error(), ErrBounds)
	}
	if err := p.end(); err != nil {
		return Over{}, err
	}
	return o, nil
}

// MarshalText returns String. It returns the error of Validate.
func (o Over) MarshalText() ([]byte, error) {
	if err := o.Validate(); err != nil {
		return nil, err
	}
	return []byte(o.String()), nil
}

// UnmarshalText reads what ParseOver reads.
func (o *Over) UnmarshalText(b []byte) error {
	return text.Read(o, b, ParseOver)
}

// countedWords are the short words for what is counted.
var countedWords = [...]string{"count", "sts", "rows"}

// counted takes `13 sts`, `9 rows`, `2 repeats of 8 sts`; the word that is
// counted may be missing.
func (p *scanner) counted() (o Over, what Counted, err error) {
	p.rest()
	start := p.at
	minus := p.sign()
	n, ok, err := p.number()
	if err != nil {
		return Over{}, 0, err
	}
	if !ok {
		return Over{}, 0, p.fail(start, "want a number of sts or rows, got "+text.Quote(p.s[start:]), nil)
	}
	if minus {
		n = n.Neg()
	}
	o.Count = n
	if p.word("repeats", "repeat", "reps", "rep", "clusters", "cluster") {
		p.word("of")
		d := number.Digits(p.rest())
		if o.Of, _ = strconv.Atoi(d); o.Of == 0 || o.Of > MaxCount {
			return Over{}, 0, p.fail(p.at, "want the number of sts or rows in a repeat, 1 to 100000, got "+text.Quote(p.rest()), nil)
		}
		p.at += len(d)
	}
	switch {
	case p.word("sts", "st", "stitches", "stitch"):
		what = Stitches
	case p.word("rows", "row"):
		what = Rows
	}
	if n.Sign() <= 0 {
		return Over{}, 0, p.fail(start, countedWords[what]+": got "+number.Text(n)+", want more than 0", ErrBounds)
	}
	return o, what, nil
}

// span takes `= 4 in` or `over 4 in`.
func (p *scanner) span() (Length, error) {
	if !p.word("=", "over", "to", "per", "in") {
		return Length{}, p.fail(p.at, "want = and a span like 4 in, got "+text.Quote(p.rest()), nil)
	}
	return p.length()
}
