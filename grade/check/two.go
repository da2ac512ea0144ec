package check

import (
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/number"
	"github.com/shopspring/decimal"
)

// pair holds the comparison of two lists, size by size.
type pair struct {
	a, b  List
	agree func(i, j int) bool // whether a's value of size i goes with b's of size j
	want  func(i int) string  // what b must be beside a's value of size i; may be empty
	why   func(i int) string  // what b was held against
}

// findings returns nothing where the lists agree in every size, one finding
// where they agree one size apart, and else one for each size.
func (p pair) findings() []Finding {
	out, both := p.each(), 0
	for i := range p.a.Sizes {
		if !p.a.Values[i].IsZero() && !p.b.Values[i].IsZero() {
			both++
		}
	}
	if len(out) > 0 && len(out) == both {
		for _, by := range []int{1, -1} {
			if f, ok := p.shifted(by); ok {
				return []Finding{f}
			}
		}
	}
	return out
}

// each is findings without the question whether a list is shifted.
func (p pair) each() []Finding {
	var out []Finding
	for i := range p.a.Sizes {
		if !p.a.Values[i].IsZero() && !p.b.Values[i].IsZero() && !p.agree(i, i) {
			out = append(out, p.b.at(i, p.want(i), p.why(i)))
		}
	}
	return out
}

// shifted reports whether every value of a goes with b's value of the size that
// many places further up, in at least two sizes.
func (p pair) shifted(by int) (Finding, bool) {
	n, first := 0, -1
	for i := range p.a.Sizes {
		j := i + by
		if j < 0 || j >= len(p.b.Sizes) || p.a.Values[i].IsZero() || p.b.Values[j].IsZero() {
			continue
		}
		if !p.agree(i, j) {
			return Finding{}, false
		}
		if n++; first < 0 {
			first = i
		}
	}
	if n < 2 {
		return Finding{}, false
	}
	way := "larger"
	if by < 0 {
		way = "smaller"
	}
	j := first + by
	return Finding{List: p.b.Name, Index: -1, Got: "values that go with " + p.a.Name + " one size apart",
		Why: "one of the two lists is shifted by a size: " + p.a.print(p.a.Values[first]) + " of size " + p.a.Sizes[first] +
			" goes with " + p.b.print(p.b.Values[j]) + " of size " + p.b.Sizes[j] + ", the next " + way + ", and so in " +
			strconv.Itoa(n) + " sizes"}, true
}

// Units finds sizes whose two lengths are not the same under the convention
// that the page uses: the other list must print what grid prints for the own
// one. gauge.HalfCentimetre converts at 2.54 to the inch,
// gauge.HalfCentimetreAt25 at 2.5; see Conventions. A list shifted by one size
// gives one finding.
//
// It returns the error of List.Validate, and a *gauge.FieldError if the lists
// differ in length, own is a list of counts, or other is not in the grid's unit.
func Units(own, other List, grid gauge.Grid) ([]Finding, error) {
	if err := validate(own, other); err != nil {
		return nil, err
	}
	if err := grid.Validate(); err != nil {
		return nil, err
	}
	if own.Unit == 0 {
		return nil, &gauge.FieldError{Field: own.Name + ".Unit", Got: "counts", Want: "a unit of length"}
	}
	if other.Unit != grid.Unit() {
		return nil, &gauge.FieldError{Field: other.Name + ".Unit", Got: other.unit(), Want: grid.Unit().String() + ", the unit of the grid"}
	}
	want := func(i int) decimal.Decimal { return grid.Round(own.measurement(i)).Value }
	return pair{own, other,
		func(i, j int) bool { return want(i).Equal(other.Values[j]) },
		func(i int) string { return other.print(want(i)) },
		func(i int) string { return own.print(own.Values[i]) + " prints so on the " + grid.String() },
	}.findings(), nil
}

func (l List) unit() string {
	if l.Unit == 0 {
		return "counts"
	}
	return l.Unit.String()
}

// Conventions returns the grids of other's unit under which the two lists agree
// in every size: what a checker must know before it can find anything. It
// returns the errors of Units.
func Conventions(own, other List) ([]gauge.Grid, error) {
	var out []gauge.Grid
	for g := gauge.QuarterInch; g <= gauge.WholeCentimetreAt25; g++ {
		if g.Unit() != other.Unit {
			continue
		}
		f, err := Units(own, other, g)
		if err != nil {
			return nil, err
		}
		if len(f) == 0 {
			out = append(out, g)
		}
	}
	return out, nil
}

// Apart finds sizes in which list b is not by the given amount more than list
// a: row 3 has 4 stitches more than row 2 in every size. Where the steps of
// exactly one of the two lists are broken by its value, and even without it,
// that list is the one named.
//
// It returns the error of List.Validate, and a *gauge.FieldError if the lists
// differ in length or unit, or by breaks the bounds of a number.
func Apart(a, b List, by decimal.Decimal) ([]Finding, error) {
	if err := validate(a, b); err != nil {
		return nil, err
	}
	if a.Unit != b.Unit {
		return nil, &gauge.FieldError{Field: b.Name + ".Unit", Got: b.unit(), Want: a.unit() + ", as in " + a.Name}
	}
	if _, err := gauge.FromDecimal(by); err != nil {
		return nil, gauge.InField("by", err)
	}
	found := pair{a, b,
		func(i, j int) bool { return b.Values[j].Sub(a.Values[i]).Equal(by) },
		func(i int) string { return b.print(a.Values[i].Add(by)) },
		func(i int) string {
			return "must be " + a.print(by) + " more than the " + a.print(a.Values[i]) + " of " + a.Name
		},
	}.findings()
	for k, f := range found {
		if f.Index < 0 {
			continue
		}
		inA, inB := b.Values[f.Index].Sub(by), a.Values[f.Index].Add(by)
		okA, okB := a.repairs(f.Index, inA), b.repairs(f.Index, inB)
		switch {
		case okA && !okB:
			found[k] = a.at(f.Index, a.print(inA), "its own steps say so, and "+b.Name+" must be "+a.print(by)+" more")
		case okB && !okA:
			found[k].Why += "; its own steps say so as well"
		default:
			found[k].Want = ""
			found[k].Why += "; which of the two is wrong can't be told"
		}
	}
	return found, nil
}

// repairs reports whether the steps of l are uneven as they are, and even with
// v at i.
func (l List) repairs(i int, v decimal.Decimal) bool {
	r := l.evenRepairs()
	return len(r) == 1 && r[0].at == i && r[0].value.Equal(v)
}

// AtMost finds sizes in which a list exceeds its limit: the rows that the
// increases need against the rows that there are, the armhole against the arm.
//
// It returns the error of List.Validate, and a *gauge.FieldError if the lists
// differ in length, or one is of lengths and the other of counts.
func AtMost(l, limit List) ([]Finding, error) {
	if err := validate(l, limit); err != nil {
		return nil, err
	}
	if (l.Unit == 0) != (limit.Unit == 0) {
		return nil, &gauge.FieldError{Field: l.Name + ".Unit", Got: l.unit(), Want: limit.unit() + ", as in " + limit.Name}
	}
	return pair{limit, l,
		func(i, j int) bool {
			if l.Unit == 0 {
				return l.Values[j].Cmp(limit.Values[i]) <= 0
			}
			return l.measurement(j).Cmp(limit.measurement(i)) <= 0
		},
		func(i int) string { return "at most " + limit.print(limit.Values[i]) },
		func(int) string { return "the limit is " + limit.Name },
	}.each(), nil
}

// Fabric says how a count makes a width.
type Fabric struct {
	Over       gauge.Over   `json:"over"`            // stitches (or rows) over their span
	Pieces     int          `json:"pieces"`          // widths like the printed one that the count makes; 0 stands for 1
	NotCounted int          `json:"not_counted"`     // stitches that make no width: a steek, a seam, an overlap
	Grid       gauge.Grid   `json:"grid"`            // on which the widths are printed
	Within     gauge.Length `json:"within,omitzero"` // a printed width this far off is right; nothing at all means: as the grid prints it
}

// Validate returns a *gauge.FieldError if a field is out of its range.
func (f Fabric) Validate() error {
	if err := f.Over.Validate(); err != nil {
		return gauge.InField("Fabric.Over", err)
	}
	if f.Pieces < 0 || f.Pieces > gauge.MaxCount {
		return &gauge.FieldError{Field: "Fabric.Pieces", Got: strconv.Itoa(f.Pieces), Want: "0 to 100000", Err: gauge.ErrBounds}
	}
	if f.NotCounted < 0 || f.NotCounted > gauge.MaxCount {
		return &gauge.FieldError{Field: "Fabric.NotCounted", Got: strconv.Itoa(f.NotCounted), Want: "0 to 100000", Err: gauge.ErrBounds}
	}
	if err := f.Grid.Validate(); err != nil {
		return gauge.InField("Fabric", err)
	}
	if f.Within.Unit == 0 && f.Within.Value.IsZero() {
		return nil
	}
	if err := f.Within.Validate(); err != nil {
		return gauge.InField("Fabric.Within", err)
	}
	if f.Within.Value.Sign() < 0 {
		return &gauge.FieldError{Field: "Fabric.Within", Got: f.Within.String(), Want: "0 or more"}
	}
	return nil
}

// width returns what one piece of a count measures.
func (f Fabric) width(count decimal.Decimal) (gauge.Measurement, error) {
	n, err := gauge.FromDecimal(count)
	if err != nil {
		return gauge.Measurement{}, err
	}
	part, err := gauge.Share(1, max(f.Pieces, 1))
	if err != nil {
		return gauge.Measurement{}, err
	}
	return f.Over.Measure(n.Sub(gauge.Int(f.NotCounted)).Mul(part))
}

// Widths finds sizes whose printed width is not what the printed count makes at
// the gauge. A list shifted by one size gives one finding.
//
// It returns the errors of List.Validate and Fabric.Validate, and a
// *gauge.FieldError if the lists differ in length, counts is a list of lengths,
// or widths is not in the grid's unit.
func Widths(counts, widths List, f Fabric) ([]Finding, error) {
	if err := validate(counts, widths); err != nil {
		return nil, err
	}
	if err := f.Validate(); err != nil {
		return nil, err
	}
	if counts.Unit != 0 {
		return nil, &gauge.FieldError{Field: counts.Name + ".Unit", Got: counts.Unit.String(), Want: "counts"}
	}
	if widths.Unit != f.Grid.Unit() {
		return nil, &gauge.FieldError{Field: widths.Name + ".Unit", Got: widths.unit(), Want: f.Grid.Unit().String() + ", the unit of the grid"}
	}
	made, err := grade.Map(counts.Values, f.width)
	if err != nil {
		return nil, grade.NameSize(err, counts.Sizes)
	}
	want := func(i int) decimal.Decimal { return f.Grid.Round(made[i]).Value }
	return pair{counts, widths,
		func(i, j int) bool {
			if want(i).Equal(widths.Values[j]) {
				return true
			}
			off := made[i].Sub(widths.measurement(j))
			if off.Sign() < 0 {
				off = off.Times(gauge.Int(-1))
			}
			return off.Cmp(f.Within.Measurement()) <= 0
		},
		func(i int) string { return widths.print(want(i)) },
		func(i int) string {
			return "the " + counts.print(counts.Values[i]) + " of " + counts.Name + " make that at " + f.gauge()
		},
	}.findings(), nil
}

func (f Fabric) gauge() string {
	return number.Text(f.Over.Count.Mul(decimal.NewFromInt(int64(max(f.Over.Of, 1))))) + " over " + f.Over.Span.String()
}

// Sum finds sizes in which the parts do not add up to the whole. A part that is
// skipped (0) adds nothing. Where exactly one value, changed alone, would both
// add up and make the steps of its own list even, that list is named; else the
// whole is, without a value wanted.
//
// It returns the error of List.Validate, and a *gauge.FieldError if there are no
// parts, or the lists differ in length or unit.
func Sum(whole List, parts ...List) ([]Finding, error) {
	all := append([]List{whole}, parts...)
	if err := validate(all...); err != nil {
		return nil, err
	}
	if len(parts) == 0 {
		return nil, &gauge.FieldError{Field: "parts", Got: "none", Want: "at least one"}
	}
	for _, p := range parts {
		if p.Unit != whole.Unit {
			return nil, &gauge.FieldError{Field: p.Name + ".Unit", Got: p.unit(), Want: whole.unit() + ", as in " + whole.Name}
		}
	}
	var out []Finding
	for i := range whole.Sizes {
		sum, text := decimal.Decimal{}, ""
		for k, p := range parts {
			sum = sum.Add(p.Values[i])
			if k > 0 {
				text += " + "
			}
			text += number.Text(p.Values[i])
		}
		over := sum.Sub(whole.Values[i])
		if over.IsZero() {
			continue
		}
		why := "the parts add up to " + text + " = " + whole.print(sum)
		f := whole.at(i, "", why+"; which value is wrong can't be told")
		found := 0
		for k, l := range all {
			v := l.Values[i].Sub(over)
			if k == 0 {
				v = sum
			}
			if l.repairs(i, v) {
				found++
				f = l.at(i, l.print(v), why+" beside "+whole.print(whole.Values[i])+"; with this value the steps of its list are even and all adds up")
			}
		}
		if found > 1 {
			f = whole.at(i, "", why+"; more than one value would do")
		}
		out = append(out, f)
	}
	return out, nil
}
