package grade

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
)

// MaxSizes is the most sizes that a list may have.
const MaxSizes = 64

// Run is one value per size, in the order of the sizes: the smallest first.
// The zero value is a run of no sizes.
type Run[T any] []T

// For returns r for n sizes: r itself where it has n values, and its one value
// n times where it has one, since a lone number stands for all sizes. The
// result is a copy.
//
// It returns a *gauge.FieldError if r has neither 1 nor n values, or n is not
// from 1 to MaxSizes.
func (r Run[T]) For(n int) (Run[T], error) {
	if n < 1 || n > MaxSizes {
		return nil, &gauge.FieldError{Field: "sizes", Got: strconv.Itoa(n), Want: "1 to 64", Err: gauge.ErrBounds}
	}
	out := make(Run[T], n)
	switch len(r) {
	case n:
		copy(out, r)
	case 1:
		for i := range out {
			out[i] = r[0]
		}
	default:
		want := fmt.Sprintf("1 or %d", n)
		if n == 1 {
			want = "1"
		}
		return nil, &gauge.FieldError{Field: "values", Got: strconv.Itoa(len(r)), Want: want}
	}
	return out, nil
}

// Map calls f for every size, in order, and returns its results.
//
// It returns a *SizeError with the place of the first size for which f returns
// an error, wrapping that error; then no result is returned. A *SizeError from
// f keeps what it says and is given its place.
func Map[T, U any](r Run[T], f func(T) (U, error)) (Run[U], error) {
	out := make(Run[U], len(r))
	for i, v := range r {
		u, err := f(v)
		if err != nil {
			return nil, placed(i, err)
		}
		out[i] = u
	}
	return out, nil
}

// Zip calls f for every size of two runs, in order, and returns its results.
//
// It returns a *gauge.FieldError if the runs differ in length, and a *SizeError
// as Map does.
func Zip[T, U, V any](a Run[T], b Run[U], f func(T, U) (V, error)) (Run[V], error) {
	if len(a) != len(b) {
		return nil, &gauge.FieldError{Field: "values", Got: fmt.Sprintf("%d beside %d", len(a), len(b)), Want: "two lists of the same length"}
	}
	out := make(Run[V], len(a))
	for i := range a {
		v, err := f(a[i], b[i])
		if err != nil {
			return nil, placed(i, err)
		}
		out[i] = v
	}
	return out, nil
}

// All calls f for every size, in order, and returns what is wrong in all of
// them, joined: a *SizeError for each size for which f returns an error. It
// returns nil if there is none. Where Map stops at the first, All goes on.
func All[T any](r Run[T], f func(T) error) error {
	var all []error
	for i, v := range r {
		if err := f(v); err != nil {
			all = append(all, placed(i, err))
		}
	}
	return errors.Join(all...)
}

// placed gives err its place in a run.
func placed(i int, err error) error {
	if e, ok := err.(*SizeError); ok {
		p := *e
		p.Index = i
		return &p
	}
	return &SizeError{Index: i, Err: err}
}

// Text prints one value per size in the house style: the smallest size outside
// the brackets, "101 (113, 125)". Where all print alike, one value stands for
// all sizes. More than seven sizes are broken into bracket groups of three or
// four, round and square in turn: "1 (2, 3, 4) [5, 6, 7] (8, 9, 10)". A run of
// no sizes prints nothing.
func Text[T any](r Run[T], f func(T) string) string {
	words := each(r, f)
	if alike(words) {
		return words[0]
	}
	return house(words)
}

// InFull is Text with every size written out, also where all print alike: for a
// list that stands beside another.
func InFull[T any](r Run[T], f func(T) string) string { return house(each(r, f)) }

func each[T any](r Run[T], f func(T) string) []string {
	words := make([]string, len(r))
	for i, v := range r {
		words[i] = f(v)
	}
	return words
}

// Numbers is Text for whole numbers.
func Numbers(r Run[int]) string { return Text(r, strconv.Itoa) }

// Beyond longRun sizes, the values in brackets go in groups of at most groupMost.
const (
	longRun   = 7
	groupMost = 4
)

func house(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	var b strings.Builder
	b.WriteString(words[0])
	rest := words[1:]
	groups := 1
	if len(words) > longRun {
		groups = (len(rest) + groupMost - 1) / groupMost
	}
	for g := range groups {
		n := (len(rest) + groups - g - 1) / (groups - g)
		opening, closing := " (", ")"
		if g%2 == 1 {
			opening, closing = " [", "]"
		}
		b.WriteString(opening + strings.Join(rest[:n], ", ") + closing)
		rest = rest[n:]
	}
	return b.String()
}

func alike(words []string) bool {
	for _, w := range words {
		if w != words[0] {
			return false
		}
	}
	return len(words) > 0
}
