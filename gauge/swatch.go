package gauge

import (
	"fmt"
	"strconv"
	"strings"

	"example.com/panelmath/internal/exact"
	"github.com/shopspring/decimal"
)

// Reading is a count over a span, with the steps to which the two were read. A
// count read to the half stitch lies within a quarter stitch of the true one, a
// span read to the quarter inch within an eighth. A gauge or a count that
// stands in a pattern is a reading as well: it was rounded when it was printed.
type Reading struct {
	Over    Over            `json:"over"`
	CountTo decimal.Decimal `json:"count_to"`         // step of the count, in what Over counts; 0 stands for exact
	SpanTo  Length          `json:"span_to,omitzero"` // step of the span; the zero value stands for exact
}

// Printed returns o as a reading rounded to its own last place: a whole number
// to 1, one that ends in .5 to a half, any other to its last decimal. The span
// is exact: it was chosen.
func Printed(o Over) Reading {
	_, part, _ := strings.Cut(plain(o.Count), ".")
	if part == "5" {
		return Reading{Over: o, CountTo: decimal.New(5, -1)}
	}
	return Reading{Over: o, CountTo: decimal.New(1, -int32(len(part)))}
}

// Validate returns a *FieldError if Over is not valid, or a step is negative or
// so coarse that the count or the span could be nothing.
func (r Reading) Validate() error {
	_, _, err := r.between()
	return err
}

// between returns the loosest and the tightest gauge, per millimetre, that
// could have given the reading, or the error of Validate.
func (r Reading) between() (low, high exact.Ratio, err error) {
	mid, err := r.Over.perMM()
	if err != nil {
		return low, high, InField("Reading.Over", err)
	}
	if err := checkNumber("Reading.CountTo", r.CountTo); err != nil {
		return low, high, err
	}
	half, _ := exact.New(1, 2)
	dn, err := fromDecimal(r.CountTo).Mul(half).Quo(fromDecimal(r.Over.Count))
	if err != nil || r.CountTo.Sign() < 0 || dn.Cmp(exact.Int(1)) >= 0 {
		return low, high, &FieldError{Field: "Reading.CountTo", Got: plain(r.CountTo), Want: "0, or a step less than twice the count"}
	}
	ds := exact.Int(0)
	if r.SpanTo.given() {
		if err := r.SpanTo.Validate(); err != nil {
			return low, high, InField("Reading.SpanTo", err)
		}
		ds, err = r.SpanTo.Measurement().mm.Mul(half).Quo(r.Over.Span.Measurement().mm)
		if err != nil || ds.Sign() < 0 || ds.Cmp(exact.Int(1)) >= 0 {
			return low, high, &FieldError{Field: "Reading.SpanTo", Got: r.SpanTo.String(), Want: "nothing, or a step less than twice the span"}
		}
	}
	one := exact.Int(1)
	low, _ = one.Sub(dn).Quo(one.Add(ds)) // neither divisor is 0
	high, _ = one.Add(dn).Quo(one.Sub(ds))
	return mid.Mul(low), mid.Mul(high), nil
}

// Comparison is how one reading stands to another.
type Comparison struct {
	Ratio     Ratio `json:"ratio"`     // stitches to the inch of the second for one of the first
	Low       Ratio `json:"low"`       // the least that it can be within what was read
	High      Ratio `json:"high"`      // the most
	Explained bool  `json:"explained"` // whether rounding alone can make the two differ
}

// Compare returns how the gauge of other stands to that of r, and whether the
// rounding of the numbers alone can explain the difference. With r as the
// printed gauge and other as a printed count over its printed width it tells
// whether a pattern was drafted at its gauge. It returns the error of Validate.
func (r Reading) Compare(other Reading) (Comparison, error) {
	low1, high1, err := r.between()
	if err != nil {
		return Comparison{}, err
	}
	low2, high2, err := other.between()
	if err != nil {
		return Comparison{}, InField("other", err)
	}
	low, _ := low2.Quo(high1)
	high, _ := high2.Quo(low1)
	one := exact.Int(1)
	return Comparison{
		Ratio:     other.Over.to(r.Over),
		Low:       Ratio{low},
		High:      Ratio{high},
		Explained: low.Cmp(one) <= 0 && high.Cmp(one) >= 0,
	}, nil
}

// Explain says in one sentence what was found.
func (c Comparison) Explain() string {
	s := fmt.Sprintf("%s stitches where the other has 1, from %s to %s within what was read: ",
		plain(c.Ratio.Decimal(3)), plain(c.Low.Decimal(3)), plain(c.High.Decimal(3)))
	if c.Explained {
		return s + "rounding alone can explain it"
	}
	return s + "rounding alone cannot explain it"
}

// MaxReadings is the largest number of readings in a swatch.
const MaxReadings = 64

// Swatch is what was measured on one swatch in one direction: the same thing
// counted at several places. The zero value has no readings and is not valid.
type Swatch struct {
	Readings []Reading `json:"readings"` // 1 to MaxReadings
}

// Validate returns a *FieldError if there is no reading or too many, or one is
// not valid.
func (s Swatch) Validate() error {
	if n := len(s.Readings); n == 0 || n > MaxReadings {
		return &FieldError{Field: "Swatch.Readings", Got: strconv.Itoa(n) + " readings", Want: "1 to 64", Err: ErrBounds}
	}
	for i, r := range s.Readings {
		if err := r.Validate(); err != nil {
			return InField(fmt.Sprintf("Swatch.Readings[%d]", i), err)
		}
	}
	return nil
}

// Over returns the gauge of the swatch: all counts over all spans, so that a
// long span, which is known better, weighs more. It returns the error of
// Validate, and of Over.Validate where the sums are out of bounds.
func (s Swatch) Over() (Over, error) {
	if err := s.Validate(); err != nil {
		return Over{}, err
	}
	first := s.Readings[0].Over
	sum := Over{Of: first.Of, Span: Length{Unit: first.Span.Unit}}
	for _, r := range s.Readings {
		if r.Over.Of != first.Of {
			sum.Of = 0
		}
		if r.Over.Span.Unit != first.Span.Unit {
			sum.Span.Unit = Millimetre
		}
	}
	for _, r := range s.Readings {
		n := r.Over.Count
		if sum.Of == 0 {
			n = n.Mul(decimal.New(int64(max(r.Over.Of, 1)), 0))
		}
		sum.Count = sum.Count.Add(n)
		span := r.Over.Span
		if span.Unit != sum.Span.Unit {
			span.Value = span.Value.Mul(decimal.New(units[span.Unit].tenth, -1))
		}
		sum.Span.Value = sum.Span.Value.Add(span.Value)
	}
	return sum, InField("Swatch", sum.Validate())
}

// Spread is how far the readings of a swatch differ, as shares of its gauge: 1/20
// is 5 %.
type Spread struct {
	Between Ratio `json:"between"` // tightest reading less loosest one
	Reading Ratio `json:"reading"` // what reading those two to their steps can cause by itself
	Share   Ratio `json:"share"`   // how much of Between that explains, 0 to 1; 1 where the readings agree
}

// Spread returns how far the readings differ and how much of that comes from
// counting to a half stitch over a short span. It returns the error of Over.
func (s Swatch) Spread() (Spread, error) {
	sum, err := s.Over()
	if err != nil {
		return Spread{}, err
	}
	loosest, tightest := s.Readings[0], s.Readings[0]
	for _, r := range s.Readings[1:] {
		x, _ := r.Over.perMM()
		if y, _ := loosest.Over.perMM(); x.Cmp(y) < 0 {
			loosest = r
		}
		if y, _ := tightest.Over.perMM(); x.Cmp(y) > 0 {
			tightest = r
		}
	}
	loose, _ := loosest.Over.perMM()
	tight, _ := tightest.Over.perMM()
	_, loose2, _ := loosest.between()
	tight2, _, _ := tightest.between()
	per, _ := sum.perMM() // not 0, as it is valid
	between, _ := tight.Sub(loose).Quo(per)
	reading, _ := loose2.Sub(loose).Add(tight.Sub(tight2)).Quo(per)
	share := exact.Int(1)
	if between.Cmp(reading) > 0 {
		share, _ = reading.Quo(between)
	}
	return Spread{Between: Ratio{between}, Reading: Ratio{reading}, Share: Ratio{share}}, nil
}

// Explain says in one sentence what was found: "the readings differ by 5 %;
// reading them can cause 5 %, which is all of it".
func (s Spread) Explain() string {
	text := fmt.Sprintf("the readings differ by %s; reading them can cause %s", percent(s.Between), percent(s.Reading))
	if s.Share.Cmp(Int(1)) >= 0 {
		return text + ", which is all of it"
	}
	return text + ", which is " + percent(s.Share) + " of it: the fabric itself varies"
}

// percent returns "5 %", "3.6 %".
func percent(x Ratio) string { return plain(x.Mul(Int(100)).Decimal(1)) + " %" }

// Range is a length that is known to lie from Low to High.
type Range struct {
	Low  Measurement `json:"low"`
	Mid  Measurement `json:"mid"` // the best guess
	High Measurement `json:"high"`
}

// Text returns the range on a grid: "41 in (39½ to 42¾)".
func (r Range) Text(g Grid) string {
	return g.Text(r.Mid) + " (" + g.Number(r.Low) + " to " + g.Number(r.High) + ")"
}

// Measure returns how long n stitches or rows are: Mid at the gauge of the
// swatch, Low and High at the tightest and the loosest gauge that any reading
// allows. It returns the error of Over.
func (s Swatch) Measure(n Ratio) (Range, error) {
	sum, err := s.Over()
	if err != nil {
		return Range{}, err
	}
	mid, _ := sum.Measure(n)
	out := Range{Low: mid, Mid: mid, High: mid}
	for _, r := range s.Readings {
		loose, tight, _ := r.between()
		a, _ := n.r.Quo(tight)
		b, _ := n.r.Quo(loose)
		if out.Low.mm.Cmp(a) > 0 {
			out.Low = Measurement{a}
		}
		if out.High.mm.Cmp(b) < 0 {
			out.High = Measurement{b}
		}
	}
	return out, nil
}
