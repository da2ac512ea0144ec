package check

import (
	"fmt"
	"slices"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/number"
	"github.com/shopspring/decimal"
)

// List is one value per size as a pattern prints it. The zero value has no
// sizes and is not valid.
type List struct {
	Name   string                     `json:"name"`          // what the values are: "back, stitches"
	Sizes  grade.Run[string]          `json:"sizes"`         // the labels
	Values grade.Run[decimal.Decimal] `json:"values"`        // one for each size; 0 skips the size
	Unit   gauge.Unit                 `json:"unit,omitzero"` // of lengths; no unit for counts
}

// Counts returns a list of counts.
func Counts(name string, sizes grade.Run[string], counts grade.Run[int]) List {
	l := List{Name: name, Sizes: slices.Clone(sizes)}
	for _, n := range counts {
		l.Values = append(l.Values, decimal.NewFromInt(int64(n)))
	}
	return l
}

// Lengths returns a list of lengths. It returns a *grade.SizeError if one is
// not in the unit of the first.
func Lengths(name string, sizes grade.Run[string], lengths grade.Run[gauge.Length]) (List, error) {
	l := List{Name: name, Sizes: slices.Clone(sizes)}
	for i, v := range lengths {
		if i == 0 {
			l.Unit = v.Unit
		}
		if v.Unit != l.Unit {
			return List{}, grade.NameSize(&grade.SizeError{Index: i, Field: name, Got: v.String(), Want: "a length in " + l.Unit.String()}, sizes)
		}
		l.Values = append(l.Values, v.Value)
	}
	return l, nil
}

// Validate returns a *gauge.FieldError if there are no sizes or more than 64,
// not one value for each, or a unit that is none, and a *grade.SizeError if a
// value breaks the bounds of a length or a count.
func (l List) Validate() error {
	if len(l.Sizes) == 0 || len(l.Sizes) > grade.MaxSizes {
		return &gauge.FieldError{Field: l.Name + ".Sizes", Got: strconv.Itoa(len(l.Sizes)), Want: "1 to 64", Err: gauge.ErrBounds}
	}
	if len(l.Values) != len(l.Sizes) {
		return &gauge.FieldError{Field: l.Name + ".Values", Got: strconv.Itoa(len(l.Values)), Want: strconv.Itoa(len(l.Sizes))}
	}
	if l.Unit != 0 && !l.Unit.Valid() {
		return &gauge.FieldError{Field: l.Name + ".Unit", Got: l.Unit.String(), Want: "a unit of length, or none for counts"}
	}
	for i, v := range l.Values {
		bad := func(err error) error {
			return &grade.SizeError{Index: i, Size: l.Sizes[i], Field: l.Name, Err: err}
		}
		if l.Unit != 0 {
			if err := (gauge.Length{Value: v, Unit: l.Unit}).Validate(); err != nil {
				return bad(err)
			}
			continue
		}
		if _, err := gauge.FromDecimal(v); err != nil {
			return bad(err)
		}
		if v.Abs().Cmp(decimal.NewFromInt(gauge.MaxCount)) > 0 {
			return bad(fmt.Errorf("got %s, want at most 100000: %w", number.Text(v), gauge.ErrBounds))
		}
	}
	return nil
}

// validate is Validate for several lists of the same sizes.
func validate(lists ...List) error {
	for _, l := range lists {
		if err := l.Validate(); err != nil {
			return err
		}
		if len(l.Sizes) != len(lists[0].Sizes) {
			return &gauge.FieldError{Field: l.Name + ".Sizes", Got: strconv.Itoa(len(l.Sizes)), Want: strconv.Itoa(len(lists[0].Sizes)) + ", as in " + lists[0].Name}
		}
	}
	return nil
}

// print returns v with the list's unit.
func (l List) print(v decimal.Decimal) string {
	if l.Unit == 0 {
		return number.Text(v)
	}
	return gauge.Length{Value: v, Unit: l.Unit}.String()
}

// measurement returns the value of size i as a length.
func (l List) measurement(i int) gauge.Measurement {
	return gauge.Length{Value: l.Values[i], Unit: l.Unit}.Measurement()
}

// used returns the places whose value is not 0.
func (l List) used() []int {
	var out []int
	for i, v := range l.Values {
		if !v.IsZero() {
			out = append(out, i)
		}
	}
	return out
}

// Finding is one thing that does not agree.
type Finding struct {
	List   string `json:"list"`  // name of the list
	Index  int    `json:"index"` // place of the size, or -1 where it is about the whole list
	Size   string `json:"size"`
	Got    string `json:"got"`
	Want   string `json:"want"`   // empty where more than one value would do, or none
	Why    string `json:"why"`    // what the value was held against
	Remark bool   `json:"remark"` // no fault, only worth a look
}

// String returns "sleeve, size S: got 72, want 6: ...".
func (f Finding) String() string {
	s := f.List
	if f.Index >= 0 {
		s += ", size " + f.Size
	}
	s += ": got " + f.Got
	if f.Want != "" {
		s += ", want " + f.Want
	}
	return s + ": " + f.Why
}

// at returns a finding about size i.
func (l List) at(i int, want, why string) Finding {
	return Finding{List: l.Name, Index: i, Size: l.Sizes[i], Got: l.print(l.Values[i]), Want: want, Why: why}
}
