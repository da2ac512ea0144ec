package offgauge

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
)

// Centred is a row with a part in its middle: the neck between two shoulders.
// Whole = Side + Centre + Side.
type Centred struct {
	Whole  gauge.Count `json:"whole"`
	Centre gauge.Count `json:"centre"`
	Side   int         `json:"side"`
}

// Explain says how the row is divided: "127 = 44 + 39 + 44".
func (c Centred) Explain() string {
	return Parts{Whole: c.Whole, Parts: []int{c.Side, c.Centre.Value, c.Side}}.Explain()
}

// Centred returns the new numbers for a row of whole with a part of centre in
// its middle. The whole is rounded by r; the centre goes to the nearest number
// that is odd with an odd whole and even with an even one, in the direction of
// r, so that both sides are alike.
//
// It returns the errors of Count, a *gauge.FieldError if centre is more than
// whole or one of them is odd and the other even, or gauge.ErrNoCount if the new
// centre is wider than the new whole.
func (c Change) Centred(whole, centre int, r gauge.Rule) (Centred, error) {
	if centre > whole || (whole-centre)%2 != 0 {
		return Centred{}, &gauge.FieldError{Field: "centre", Got: strconv.Itoa(centre), Want: fmt.Sprintf("at most %d, and odd or even as it is", whole)}
	}
	w, err := c.Count(whole, r)
	if err != nil {
		return Centred{}, fmt.Errorf("whole: %w", err)
	}
	n, err := c.Count(centre, gauge.Rule{Multiple: 2, Plus: w.Value % 2, Direction: r.Direction})
	if err != nil {
		return Centred{}, fmt.Errorf("centre: %w", err)
	}
	if n.Value > w.Value {
		return Centred{}, fmt.Errorf("centre of %d in a whole of %d: %w", n.Value, w.Value, gauge.ErrNoCount)
	}
	return Centred{Whole: w, Centre: n, Side: (w.Value - n.Value) / 2}, nil
}

// Parts is a row divided into parts that add up to it.
type Parts struct {
	Whole gauge.Count `json:"whole"`
	Parts []int       `json:"parts"`
}

// Explain says how the row is divided: "127 = 44 + 39 + 44".
func (p Parts) Explain() string {
	parts := make([]string, len(p.Parts))
	for i, n := range p.Parts {
		parts[i] = strconv.Itoa(n)
	}
	return strconv.Itoa(p.Whole.Value) + " = " + strings.Join(parts, " + ")
}

// Parts returns the new numbers for a row of the given parts. Their sum is
// rounded by r, and every border between two parts then moves to the nearest
// stitch, so that the parts add up and each is at most a stitch off its share.
// A tie goes to the right; but parts that read the same from either end still
// do, and there a tie goes outward.
//
// It returns the errors of Count, a *gauge.FieldError if there is no part, one is
// negative or the sum exceeds gauge.MaxCount, or gauge.ErrNoCount if the parts
// mirror each other, nothing lies in their middle, and the new sum is odd.
func (c Change) Parts(parts []int, r gauge.Rule) (Parts, error) {
	sum := 0
	for i, n := range parts {
		if n < 0 || n > gauge.MaxCount-sum {
			return Parts{}, &gauge.FieldError{Field: fmt.Sprintf("parts[%d]", i), Got: strconv.Itoa(n), Want: "not negative, and a sum of at most 100000", Err: gauge.ErrBounds}
		}
		sum += n
	}
	if sum == 0 {
		return Parts{}, &gauge.FieldError{Field: "parts", Got: "a sum of 0", Want: "at least 1 stitch"}
	}
	whole, err := c.Count(sum, r)
	if err != nil {
		return Parts{}, err
	}
	n := len(parts)
	tie, mirrored := gauge.Nearest, mirrors(parts)
	if mirrored {
		tie = gauge.NearestTiesDown
		if whole.Value%2 != 0 && (n%2 == 0 || parts[n/2] == 0) {
			return Parts{}, fmt.Errorf("parts that mirror each other in %d: %w; want an even whole", whole.Value, gauge.ErrNoCount)
		}
	}
	borders := make([]int, n+1) // borders[i] lies before part i
	for i, at := 0, 0; i < n; i++ {
		at += parts[i]
		share, _ := gauge.Share(at, sum)
		border, err := gauge.Rule{Direction: tie}.Round(share.Mul(gauge.Int(whole.Value)))
		if err != nil {
			return Parts{}, err
		}
		borders[i+1] = border.Value
	}
	for i := 0; mirrored && i <= n/2; i++ {
		borders[n-i] = whole.Value - borders[i]
	}
	out := Parts{Whole: whole, Parts: make([]int, n)}
	for i := range parts {
		out.Parts[i] = borders[i+1] - borders[i]
	}
	return out, nil
}

// mirrors reports whether the parts read the same from either end.
func mirrors(parts []int) bool {
	back := slices.Clone(parts)
	slices.Reverse(back)
	return slices.Equal(back, parts)
}
