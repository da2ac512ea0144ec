package printed

import (
	"fmt"
	"slices"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/internal/say"
)

// MaxSizes is the largest number of sizes in one list.
const MaxSizes = 64

// Finding is one printed number that does not follow from the others.
type Finding struct {
	Size int    `json:"size"` // index in the list
	Got  string `json:"got"`
	Want string `json:"want"`
	Why  string `json:"why"`
}

// String returns "size 2: got 6, want 7: ...", sizes counted from 1.
func (f Finding) String() string {
	return fmt.Sprintf("size %d: got %s, want %s: %s", f.Size+1, f.Got, f.Want, f.Why)
}

func checkSizes(field string, n int) error {
	if n < 1 || n > MaxSizes {
		return &gauge.FieldError{Field: field, Got: strconv.Itoa(n), Want: "1 to 64", Err: gauge.ErrBounds}
	}
	return nil
}

func checkLength(field string, l yarn.Length) error {
	if err := l.Validate(); err != nil {
		return gauge.InField(field, err)
	}
	if l.Value.Sign() == 0 {
		return &gauge.FieldError{Field: field, Got: l.String(), Want: "more than 0"}
	}
	return nil
}

// Columns compares two printed columns of the same quantity in different units,
// yards and metres say. They agree in a size if they differ by less than 1 of
// the larger of the two units, so that any rounding of either to whole numbers
// passes.
//
// It returns a *gauge.FieldError if the columns have different lengths or more
// than 64 sizes, or a length is not valid or not more than 0.
func Columns(first, second []yarn.Length) ([]Finding, error) {
	if err := checkSizes("First", len(first)); err != nil {
		return nil, err
	}
	if len(first) != len(second) {
		return nil, &gauge.FieldError{Field: "Second", Got: strconv.Itoa(len(second)), Want: "as many sizes as the first column, " + strconv.Itoa(len(first))}
	}
	var found []Finding
	for i := range first {
		if err := checkLength("First["+strconv.Itoa(i)+"]", first[i]); err != nil {
			return nil, err
		}
		if err := checkLength("Second["+strconv.Itoa(i)+"]", second[i]); err != nil {
			return nil, err
		}
		u := second[i].Unit
		exact := first[i].Measurement().In(u)
		off := second[i].Measurement().Sub(first[i].Measurement())
		if off.Sign() < 0 {
			off = off.Times(gauge.Int(-1))
		}
		one := gauge.MeasurementOf(gauge.Int(1), u)
		if other := gauge.MeasurementOf(gauge.Int(1), first[i].Unit); other.Cmp(one) > 0 {
			one = other
		}
		if off.Cmp(one) >= 0 {
			found = append(found, Finding{Size: i, Got: second[i].String(), Want: exact.Text(0) + " " + u.String(),
				Why: fmt.Sprintf("%v is %s %v", first[i], say.Number(exact), u)})
		}
	}
	return found, nil
}

// Totals checks that balls times the length of a ball is the printed total, in
// every size, in one unit: mix a total in yards with balls in metres and nothing
// fits. It returns a *gauge.FieldError if the lists have different lengths or
// more than 64 sizes, or a number is not valid or not more than 0.
func Totals(balls []int, each yarn.Length, totals []yarn.Length) ([]Finding, error) {
	return check(balls, each, totals, func(n int, total gauge.Ratio) (string, bool) {
		want := each.Measurement().In(each.Unit).Mul(gauge.Int(n))
		return say.Number(want) + " " + each.Unit.String(), want.Equal(total)
	}, func(i, n int, want string) Finding {
		return Finding{Size: i, Got: totals[i].String(), Want: want, Why: fmt.Sprintf("%d × %v is %s", n, each, want)}
	})
}

// Balls checks that the printed balls are the fewest that hold the printed need,
// in every size. It returns the errors of Totals.
func Balls(need []yarn.Length, each yarn.Length, balls []int) ([]Finding, error) {
	return check(balls, each, need, func(n int, total gauge.Ratio) (string, bool) {
		times, _ := total.Quo(each.Measurement().In(each.Unit))
		want, err := times.Ceil()
		return strconv.Itoa(want), err == nil && want == n
	}, func(i, n int, want string) Finding {
		times, _ := need[i].Measurement().Per(each.Measurement())
		return Finding{Size: i, Got: strconv.Itoa(n), Want: want, Why: fmt.Sprintf("%v at %v a ball is %s, rounded up", need[i], each, say.Number(times))}
	})
}

// check walks through balls and lengths of the same sizes; want judges one size.
func check(balls []int, each yarn.Length, lengths []yarn.Length, want func(n int, length gauge.Ratio) (string, bool), finding func(i, n int, want string) Finding) ([]Finding, error) {
	if err := checkSizes("Balls", len(balls)); err != nil {
		return nil, err
	}
	if len(lengths) != len(balls) {
		return nil, &gauge.FieldError{Field: "Lengths", Got: strconv.Itoa(len(lengths)), Want: "as many sizes as balls, " + strconv.Itoa(len(balls))}
	}
	if err := checkLength("Each", each); err != nil {
		return nil, err
	}
	var found []Finding
	for i, n := range balls {
		if n < 1 || n > gauge.MaxCount {
			return nil, &gauge.FieldError{Field: "Balls[" + strconv.Itoa(i) + "]", Got: strconv.Itoa(n), Want: "1 to 100000", Err: gauge.ErrBounds}
		}
		if err := checkLength("Lengths["+strconv.Itoa(i)+"]", lengths[i]); err != nil {
			return nil, err
		}
		if s, ok := want(n, lengths[i].Measurement().In(each.Unit)); !ok {
			found = append(found, finding(i, n, s))
		}
	}
	return found, nil
}

// Size is one size of a printed list of skeins.
type Size struct {
	Name   string      `json:"name"`
	Work   gauge.Ratio `json:"work"`   // what it takes yarn for: square inches, stitches, any one measure; more than 0
	Skeins int         `json:"skeins"` // as printed; more than 0
}

// Interval is the yarn to a unit of work that makes a printed list right: more
// than Low and at most High. Where None is set no usage does, since the size
// that sets Low contradicts the one that sets High.
type Interval struct {
	Low      gauge.Measurement `json:"low"`
	High     gauge.Measurement `json:"high"`
	LowSize  int               `json:"low_size"`  // index of the size that sets Low
	HighSize int               `json:"high_size"` // index of the size that sets High
	None     bool              `json:"none"`
	Sizes    []Size            `json:"sizes,omitempty"` // of the list, for Explain
}

// Usage returns the interval of usage for which every size of the list needs
// just the printed skeins, rounded up. It serves a list of yards as well that
// was rounded up in steps: the step is the skein, 1250 yd by 250 are 5 of them.
// The total is meant with its margin in: a usage found here has it in too.
//
// It returns a *gauge.FieldError if there are no sizes or more than 64, the
// skein is not valid or not more than 0, or a size has no work or no skeins.
func Usage(skein yarn.Length, sizes ...Size) (Interval, error) {
	if err := checkSizes("Sizes", len(sizes)); err != nil {
		return Interval{}, err
	}
	if err := checkLength("Skein", skein); err != nil {
		return Interval{}, err
	}
	iv := Interval{Sizes: slices.Clone(sizes)}
	for i, s := range sizes {
		at := "Sizes[" + strconv.Itoa(i) + "]"
		if s.Work.Sign() <= 0 {
			return Interval{}, &gauge.FieldError{Field: at + ".Work", Got: s.Work.Text(2), Want: "more than 0"}
		}
		if s.Skeins < 1 || s.Skeins > gauge.MaxCount {
			return Interval{}, &gauge.FieldError{Field: at + ".Skeins", Got: strconv.Itoa(s.Skeins), Want: "1 to 100000", Err: gauge.ErrBounds}
		}
		one, _ := gauge.Int(1).Quo(s.Work)
		each := skein.Measurement().Times(one)
		if low := each.Times(gauge.Int(s.Skeins - 1)); i == 0 || low.Cmp(iv.Low) > 0 {
			iv.Low, iv.LowSize = low, i
		}
		if high := each.Times(gauge.Int(s.Skeins)); i == 0 || high.Cmp(iv.High) < 0 {
			iv.High, iv.HighSize = high, i
		}
	}
	iv.None = iv.Low.Cmp(iv.High) >= 0
	return iv, nil
}

// Explain says the interval in u to a unit of work, or which two sizes
// contradict one another. Without Sizes, as older files are, a size is named by
// its place alone.
func (iv Interval) Explain(u gauge.Unit) string {
	name := func(i int) string {
		if i < 0 || i >= len(iv.Sizes) {
			return fmt.Sprintf("size %d", i+1)
		}
		s := iv.Sizes[i]
		if s.Name == "" {
			return fmt.Sprintf("size %d (%s)", i+1, text.Count(s.Skeins, "skein", "skeins"))
		}
		return fmt.Sprintf("size %s (%s)", text.Quote(s.Name), text.Count(s.Skeins, "skein", "skeins"))
	}
	if iv.None {
		return fmt.Sprintf("no usage makes the list right: %s takes more than %s to a unit of work, %s at most %s",
			name(iv.LowSize), say.In(iv.Low, u), name(iv.HighSize), say.In(iv.High, u))
	}
	return fmt.Sprintf("the list is right for more than %s and at most %s to a unit of work; %s sets the low end, %s the high",
		say.In(iv.Low, u), say.In(iv.High, u), name(iv.LowSize), name(iv.HighSize))
}
