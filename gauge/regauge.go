package gauge

import (
	"fmt"
	"slices"
	"strconv"

	"example.com/panelmath/internal/exact"
)

// Regauge turns the numbers of a pattern into those of another gauge, in one
// direction: stitches to stitches, or rows to rows. The zero value is not
// valid.
type Regauge struct {
	Pattern Over `json:"pattern"` // the gauge the pattern was written at
	Mine    Over `json:"mine"`
}

// Validate returns a *FieldError if either gauge is not valid.
func (g Regauge) Validate() error {
	if err := g.Pattern.Validate(); err != nil {
		return InField("Regauge.Pattern", err)
	}
	return InField("Regauge.Mine", g.Mine.Validate())
}

// Measures returns what comes out at Mine of a piece that measures m at Pattern,
// when its counts are left as they are. It returns the error of Validate.
func (g Regauge) Measures(m Measurement) (Measurement, error) {
	if err := g.Validate(); err != nil {
		return Measurement{}, err
	}
	return m.Times(g.Pattern.to(g.Mine)), nil
}

// Exact returns the number at Mine that measures what n does at Pattern,
// unrounded. It returns the error of Validate.
func (g Regauge) Exact(n int) (Ratio, error) {
	if err := g.Validate(); err != nil {
		return Ratio{}, err
	}
	return Int(n).Mul(g.Mine.to(g.Pattern)), nil
}

// Counts returns the legal count for each number of the pattern, with the
// length that each is off. It returns the errors of Validate and of Rule.Round,
// and a *FieldError that names the number if it is not from 0 to MaxCount.
func (g Regauge) Counts(numbers []int, r Rule) ([]Count, error) {
	if err := g.Validate(); err != nil {
		return nil, err
	}
	factor := g.Mine.to(g.Pattern)
	each, _ := g.Mine.Measure(Int(1))
	out := make([]Count, len(numbers))
	for i, n := range numbers {
		if err := checkCount(fmt.Sprintf("numbers[%d]", i), n); err != nil {
			return nil, err
		}
		c, err := r.Round(Int(n).Mul(factor))
		if err != nil {
			return nil, err
		}
		c.Each, c.Unit = each, g.Mine.Span.Unit
		out[i] = c
	}
	return out, nil
}

func checkCount(field string, n int) error {
	if n < 0 || n > MaxCount {
		return &FieldError{Field: field, Got: strconv.Itoa(n), Want: "0 to 100000", Err: ErrBounds}
	}
	return nil
}

// maxAlike bounds the remainders that Alike tries.
const maxAlike = 1000

// Alike returns counts that all leave the same remainder by multiple, whichever
// it is: all even or all odd for 2. Of the remainders it takes the one whose
// worst count is least off, and of equal ones the smallest.
//
// It returns the errors of Counts, or a *FieldError if multiple is not from 1 to
// 1000.
func (g Regauge) Alike(numbers []int, multiple int) ([]Count, error) {
	if multiple < 1 || multiple > maxAlike {
		return nil, &FieldError{Field: "multiple", Got: strconv.Itoa(multiple), Want: "1 to 1000", Err: ErrBounds}
	}
	var best []Count
	var worst exact.Ratio
	for plus := range multiple {
		counts, err := g.Counts(numbers, Rule{Multiple: multiple, Plus: plus})
		if err != nil {
			return nil, err
		}
		off := exact.Int(0)
		for _, c := range counts {
			d := c.Off().r
			if d.Sign() < 0 {
				d = d.Neg()
			}
			if d.Cmp(off) > 0 {
				off = d
			}
		}
		if best == nil || off.Cmp(worst) < 0 {
			best, worst = counts, off
		}
	}
	return best, nil
}

// Centred is a row with a part in its middle: the neck between two shoulders.
// Whole = Side + Centre + Side.
type Centred struct {
	Whole  Count `json:"whole"`
	Centre Count `json:"centre"`
	Side   int   `json:"side"`
}

// Explain says in one sentence how the row is divided: "127 = 44 + 39 + 44".
func (c Centred) Explain() string {
	return fmt.Sprintf("%d = %d + %d + %d", c.Whole.Value, c.Side, c.Centre.Value, c.Side)
}

// Centred returns the new numbers for a row of whole with a part of centre in
// its middle. The whole is rounded by r; the centre goes to the nearest number
// that is odd with an odd whole and even with an even one, in the direction of
// r, so that both sides are alike.
//
// It returns the errors of Counts, a *FieldError if centre is more than whole or
// the two are not both even or both odd, or ErrNoCount if the new centre is wider
// than the new whole.
func (g Regauge) Centred(whole, centre int, r Rule) (Centred, error) {
	if centre > whole || mod(whole-centre, 2) != 0 {
		return Centred{}, &FieldError{Field: "centre", Got: strconv.Itoa(centre),
			Want: fmt.Sprintf("at most %d, and even or odd as it is", whole)}
	}
	w, err := g.Counts([]int{whole}, r)
	if err != nil {
		return Centred{}, InField("whole", err)
	}
	c, err := g.Counts([]int{centre}, Rule{Multiple: 2, Plus: mod(w[0].Value, 2), Direction: r.Direction})
	if err != nil {
		return Centred{}, InField("centre", err)
	}
	if c[0].Value > w[0].Value {
		return Centred{}, fmt.Errorf("centre %d in %d: %w", c[0].Value, w[0].Value, ErrNoCount)
	}
	return Centred{Whole: w[0], Centre: c[0], Side: (w[0].Value - c[0].Value) / 2}, nil
}

// Parts is a row divided into parts that add up to it.
type Parts struct {
	Whole Count `json:"whole"`
	Parts []int `json:"parts"`
}

// Parts returns the new numbers for a row of the given parts. Their sum is
// rounded by r, and every seam between two parts then moves to the nearest
// stitch, so that the parts add up and each is at most a stitch off its share.
// A tie goes to the right; but parts that read the same from either end still
// do, and there a tie goes outward.
//
// It returns the errors of Counts, a *FieldError if there is no part or the sum
// exceeds MaxCount, or ErrNoCount if the parts mirror each other, nothing lies in
// their middle, and the new sum is odd.
func (g Regauge) Parts(parts []int, r Rule) (Parts, error) {
	sum := 0
	for i, n := range parts {
		if err := checkCount(fmt.Sprintf("parts[%d]", i), n); err != nil {
			return Parts{}, err
		}
		if sum += n; sum > MaxCount {
			break
		}
	}
	if sum == 0 || sum > MaxCount {
		return Parts{}, &FieldError{Field: "parts", Got: "a sum of " + strconv.Itoa(sum), Want: "1 to 100000", Err: ErrBounds}
	}
	w, err := g.Counts([]int{sum}, r)
	if err != nil {
		return Parts{}, err
	}
	whole, n := w[0].Value, len(parts)
	back := slices.Clone(parts)
	slices.Reverse(back)
	mirrored := slices.Equal(back, parts)
	if mirrored && whole%2 != 0 && (n%2 == 0 || parts[n/2] == 0) {
		return Parts{}, fmt.Errorf("parts that mirror each other in %d: %w; want an even whole", whole, ErrNoCount)
	}
	tie := Nearest
	if mirrored {
		tie = NearestTiesDown
	}
	seams := make([]int, n+1) // seams[i] lies before part i
	for i, at := 0, 0; i < n; i++ {
		at += parts[i]
		x, _ := exact.New(int64(at)*int64(whole), int64(sum)) // at most whole
		c, _ := Rule{Direction: tie}.Round(Ratio{x})
		seams[i+1] = c.Value
	}
	for i := 0; mirrored && i <= n/2; i++ {
		seams[n-i] = whole - seams[i]
	}
	out := Parts{Whole: w[0], Parts: make([]int, n)}
	for i := range parts {
		out.Parts[i] = seams[i+1] - seams[i]
	}
	return out, nil
}
