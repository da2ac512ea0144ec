package check

import (
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"github.com/shopspring/decimal"
)

// Rising finds sizes that are smaller than a smaller size. Equal neighbours are
// right, and skipped sizes are not looked at. Where leaving out one size alone
// makes the rest rise, that size is named, and where the others stand a fixed
// step apart, the value that it must have.
//
// It returns the error of List.Validate.
func Rising(l List) ([]Finding, error) {
	if err := l.Validate(); err != nil {
		return nil, err
	}
	used := l.used()
	if l.rises(used, -1) {
		return nil, nil
	}
	var alone []int
	for _, i := range used {
		if l.rises(used, i) {
			alone = append(alone, i)
		}
	}
	if repair := l.evenRepairs(); len(repair) == 1 {
		r := repair[0]
		if l.with(r.at, r.value).rises(used, -1) {
			return []Finding{l.at(r.at, l.print(r.value), "the other sizes rise by "+l.print(r.step)+" each")}, nil
		}
	}
	if len(alone) == 1 {
		i := alone[0]
		return []Finding{l.at(i, l.between(used, i), "sizes must not fall; all the others rise")}, nil
	}
	var out []Finding
	for k := 1; k < len(used); k++ {
		i, before := used[k], used[k-1]
		if l.Values[i].Cmp(l.Values[before]) < 0 {
			out = append(out, l.at(i, "", "less than the "+l.print(l.Values[before])+" of size "+l.Sizes[before]))
		}
	}
	return out, nil
}

// rises reports whether the values at places rise, leaving out one of them.
func (l List) rises(places []int, without int) bool {
	last := -1
	for _, i := range places {
		if i == without {
			continue
		}
		if last >= 0 && l.Values[i].Cmp(l.Values[last]) < 0 {
			return false
		}
		last = i
	}
	return true
}

// between says what the value at i may be among its neighbours.
func (l List) between(used []int, i int) string {
	var low, high string
	for _, j := range used {
		switch {
		case j < i:
			low = l.print(l.Values[j])
		case j > i && high == "":
			high = l.print(l.Values[j])
		}
	}
	switch {
	case low == "":
		return "at most " + high
	case high == "":
		return "at least " + low
	case low == high:
		return low
	}
	return low + " to " + high
}

// with returns l with another value at i.
func (l List) with(i int, v decimal.Decimal) List {
	l.Values = append(grade.Run[decimal.Decimal](nil), l.Values...)
	l.Values[i] = v
	return l
}

// Even finds sizes that break an even step. Where one value alone, changed,
// would make every step the same, its size is named with that value; otherwise
// one remark gives the steps. Skipped sizes are not looked at; with fewer than
// three sizes there is nothing to find.
//
// Uneven steps are no fault in themselves: use Even where the steps are meant to
// be even, and set its findings beside the others as remarks elsewhere. It
// returns the error of List.Validate.
func Even(l List) ([]Finding, error) {
	if err := l.Validate(); err != nil {
		return nil, err
	}
	if used := l.used(); len(used) < 3 || l.even(used) {
		return nil, nil
	}
	if repair := l.evenRepairs(); len(repair) == 1 {
		r := repair[0]
		f := l.at(r.at, l.print(r.value), "the other sizes rise by "+l.print(r.step)+" each")
		f.Remark = l.rises(l.used(), -1)
		return []Finding{f}, nil
	}
	return []Finding{{List: l.Name, Index: -1, Got: "steps of " + l.steps(), Why: "the steps from size to size are not even", Remark: true}}, nil
}

// even reports whether the values at places lie on one line.
func (l List) even(places []int) bool {
	a, b := places[0], places[1]
	for _, c := range places[2:] {
		// (v[c]-v[a])/(c-a) = (v[b]-v[a])/(b-a)
		left := l.Values[c].Sub(l.Values[a]).Mul(decimal.NewFromInt(int64(b - a)))
		right := l.Values[b].Sub(l.Values[a]).Mul(decimal.NewFromInt(int64(c - a)))
		if !left.Equal(right) {
			return false
		}
	}
	return true
}

func (l List) steps() string {
	var out []string
	used := l.used()
	for k := 1; k < len(used); k++ {
		out = append(out, l.print(l.Values[used[k]].Sub(l.Values[used[k-1]])))
	}
	return strings.Join(out, ", ")
}

// repair is a value that would make every step the same.
type repair struct {
	at          int
	value, step decimal.Decimal
}

// evenRepairs returns every single change that makes an uneven list even. Three
// of the other sizes must agree on the step: two make a line of any two numbers.
func (l List) evenRepairs() []repair {
	used := l.used()
	if len(used) < 4 || l.even(used) {
		return nil
	}
	var out []repair
	for k, i := range used {
		others := append(append([]int(nil), used[:k]...), used[k+1:]...)
		if !l.even(others) {
			continue
		}
		a, b := others[0], others[1]
		rise := l.Values[b].Sub(l.Values[a])
		step, ok := over(rise, b-a)
		if !ok || l.Unit == 0 && !step.Equal(step.Truncate(0)) {
			continue
		}
		out = append(out, repair{i, l.Values[a].Add(step.Mul(decimal.NewFromInt(int64(i - a)))), step})
	}
	return out
}

// over returns d/n where that is a decimal of a few places, as printed values are.
func over(d decimal.Decimal, n int) (decimal.Decimal, bool) {
	const places = 6
	x, err := gauge.FromDecimal(d)
	if err != nil {
		return d, false
	}
	part, err := gauge.Share(1, n)
	if err != nil {
		return d, false
	}
	q := x.Mul(part).Decimal(places)
	return q, q.Mul(decimal.NewFromInt(int64(n))).Equal(d)
}

// Legal finds counts that the rule does not allow. Where the steps between the
// other sizes are even and the value that keeps them so is legal, it is named;
// otherwise the legal counts next to it are.
//
// It returns the errors of List.Validate and gauge.Rule.Validate, and a
// *gauge.FieldError for a list of lengths.
func Legal(l List, rule gauge.Rule) ([]Finding, error) {
	if err := l.Validate(); err != nil {
		return nil, err
	}
	if err := rule.Validate(); err != nil {
		return nil, err
	}
	if l.Unit != 0 {
		return nil, &gauge.FieldError{Field: l.Name + ".Unit", Got: l.Unit.String(), Want: "counts"}
	}
	legal := func(v decimal.Decimal) bool {
		return v.Equal(v.Truncate(0)) && rule.Legal(int(v.IntPart()))
	}
	var out []Finding
	for _, i := range l.used() {
		v := l.Values[i]
		if legal(v) {
			continue
		}
		want := ""
		if r := l.evenRepairs(); len(r) == 1 && r[0].at == i && legal(r[0].value) {
			want = l.print(r[0].value)
		} else if x, err := gauge.FromDecimal(v); err == nil {
			if c, err := rule.Round(x); err == nil && c.Below != c.Above {
				want = gauge.Int(c.Below).String() + " or " + gauge.Int(c.Above).String()
			} else if err == nil {
				want = gauge.Int(c.Value).String()
			}
		}
		out = append(out, l.at(i, want, "not a legal count ("+rule.String()+")"))
	}
	return out, nil
}
