package grade

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/enum"
)

// MaxName is the most bytes that the name of a size may have.
const MaxName = 40

// Body is a measure of the body in one size, as a chart prints it: the two ends
// of a range, equal where one figure is printed.
type Body struct {
	Low    gauge.Length `json:"low"`
	High   gauge.Length `json:"high"`
	Basis  Basis        `json:"basis"`
	Source string       `json:"source,omitempty"` // where the figure was read
	Note   string       `json:"note,omitempty"`   // what readers of the figure must know
}

// Middle returns the middle of the range.
func (b Body) Middle() gauge.Measurement {
	half, _ := gauge.Share(1, 2)
	return b.Low.Measurement().Add(b.High.Measurement()).Times(half)
}

// Validate returns a *gauge.FieldError if an end is not a length of more than
// nothing, the ends differ in unit, low is above high, or the basis is unknown.
func (b Body) Validate() error {
	if err := b.Low.Validate(); err != nil {
		return gauge.InField("Low", err)
	}
	if err := b.High.Validate(); err != nil {
		return gauge.InField("High", err)
	}
	switch {
	case b.Low.Value.Sign() <= 0:
		return &gauge.FieldError{Field: "Low", Got: b.Low.String(), Want: "more than 0"}
	case b.High.Unit != b.Low.Unit:
		return &gauge.FieldError{Field: "High", Got: b.High.String(), Want: "the unit of Low, " + b.Low.Unit.String()}
	case b.High.Value.Cmp(b.Low.Value) < 0:
		return &gauge.FieldError{Field: "High", Got: b.High.String(), Want: "at least Low, " + b.Low.String()}
	}
	return enum.Check("Basis", b.Basis, basisNames[:])
}

// Cell is one figure of a chart: a measure of one size in one unit.
type Cell struct {
	Size    string  `json:"size"`
	Measure Measure `json:"measure"`
	Body
}

// Chart is a table of body measures by size. Inches and centimetres are kept
// apart, as printed: neither is worked out from the other, since printed
// centimetres are rounded unevenly. Compute with one column, never with a mix.
//
// The zero value has no sizes and is not valid. One person's measures are a
// chart of one size.
type Chart struct {
	Name   string   `json:"name"`
	Source string   `json:"source"`
	Sizes  []string `json:"sizes"` // from the smallest to the largest, at most MaxSizes
	Cells  []Cell   `json:"cells"` // in any order; a size may lack a measure
}

// Validate returns a *gauge.FieldError if the chart has no sizes or more than
// MaxSizes, and a *SizeError if:
//   - a size has no name, a name of more than MaxName bytes, or that of another;
//   - a cell names a size the chart lacks, or its Body is not valid;
//   - two cells give the same measure of a size in the same unit;
//   - a measure round the body (chest, waist, hip, upper arm, head) is smaller,
//     at either end, than that of a smaller size in the same unit.
//
// Lengths and breadths may fall from one size to the next: see Falls.
func (c Chart) Validate() error {
	if len(c.Sizes) == 0 || len(c.Sizes) > MaxSizes {
		return &gauge.FieldError{Field: "Chart.Sizes", Got: strconv.Itoa(len(c.Sizes)), Want: "1 to 64", Err: gauge.ErrBounds}
	}
	place := make(map[string]int, len(c.Sizes))
	for i, s := range c.Sizes {
		if strings.TrimSpace(s) == "" || len(s) > MaxName {
			return &SizeError{Index: i, Size: s, Field: "name", Got: strconv.Itoa(len(s)) + " bytes", Want: "1 to 40", Err: gauge.ErrBounds}
		}
		if j, twice := place[s]; twice {
			return &SizeError{Index: i, Size: s, Field: "name", Got: "the name of size number " + strconv.Itoa(j+1), Want: "one of its own"}
		}
		place[s] = i
	}
	type key struct {
		size    string
		measure Measure
		unit    gauge.Unit
	}
	seen := make(map[key]bool, len(c.Cells))
	for _, cell := range c.Cells {
		i, ok := place[cell.Size]
		if !ok {
			return c.noSize(cell.Size)
		}
		fail := func(got, want string) error {
			return &SizeError{Index: i, Size: cell.Size, Field: cell.Measure.String(), Got: got, Want: want}
		}
		if !cell.Measure.Valid() {
			return fail(cell.Measure.String(), "a measure of the body")
		}
		if err := cell.Body.Validate(); err != nil {
			return &SizeError{Index: i, Size: cell.Size, Field: cell.Measure.String(), Err: err}
		}
		k := key{cell.Size, cell.Measure, cell.Low.Unit}
		if seen[k] {
			return fail("two figures in "+cell.Low.Unit.String(), "one")
		}
		seen[k] = true
	}
	if f := c.falls(Measure.round); len(f) > 0 {
		return f[0]
	}
	return nil
}

// Falls returns, as a *SizeError each, the lengths and breadths that are
// smaller than that of a smaller size. A chart may print such figures, but
// whoever wrote it should look at them. Cells that are not valid are passed over.
func (c Chart) Falls() []*SizeError {
	return c.falls(func(m Measure) bool { return !m.round() })
}

// falls returns the figures of some measures that are smaller than those of the
// size before that has one, column by column.
func (c Chart) falls(of func(Measure) bool) []*SizeError {
	type column struct {
		measure Measure
		unit    gauge.Unit
	}
	columns := map[column][]Body{} // by size; a zero Body where there is no figure
	for _, cell := range c.Cells {
		i := slices.Index(c.Sizes, cell.Size)
		if i < 0 || !of(cell.Measure) || cell.Body.Validate() != nil {
			continue
		}
		k := column{cell.Measure, cell.Low.Unit}
		if columns[k] == nil {
			columns[k] = make([]Body, len(c.Sizes))
		}
		columns[k][i] = cell.Body
	}
	var out []*SizeError
	for m := range Measure(len(measures)) {
		for u := gauge.Millimetre; u.Valid(); u++ {
			before := -1
			for i, b := range columns[column{m, u}] {
				if !b.Low.Unit.Valid() {
					continue
				}
				if before >= 0 {
					last := columns[column{m, u}][before]
					got, want := b.Low, last.Low
					if got.Value.Cmp(want.Value) >= 0 {
						got, want = b.High, last.High
					}
					if got.Value.Cmp(want.Value) < 0 {
						out = append(out, &SizeError{Index: i, Size: c.Sizes[i], Field: m.String(), Got: got.String(),
							Want: "at least the " + want.String() + " of size " + name(c.Sizes[before])})
					}
				}
				before = i
			}
		}
	}
	return out
}

// Body returns the measure m of a size as the chart prints it in unit u.
//
// It returns a *SizeError if the chart lacks the size (ErrNoSize), prints no
// such figure in that unit (ErrNoCell), or the figure is not valid.
func (c Chart) Body(size string, m Measure, u gauge.Unit) (Body, error) {
	i := slices.Index(c.Sizes, size)
	if i < 0 {
		return Body{}, c.noSize(size)
	}
	for _, cell := range c.Cells {
		if cell.Size == size && cell.Measure == m && cell.Low.Unit == u {
			if err := cell.Body.Validate(); err != nil {
				return Body{}, &SizeError{Index: i, Size: size, Field: m.String(), Err: err}
			}
			return cell.Body, nil
		}
	}
	return Body{}, &SizeError{Index: i, Size: size, Field: m.String(),
		Err: fmt.Errorf("%w in %v in the chart %s", ErrNoCell, u, name(c.Name))}
}

func (c Chart) noSize(size string) error {
	names := make([]string, len(c.Sizes))
	for i, s := range c.Sizes {
		names[i] = name(s)
	}
	return &SizeError{Index: -1, Size: name(size),
		Err: fmt.Errorf("%w in the chart %s; it has %s", ErrNoSize, name(c.Name), strings.Join(names, ", "))}
}
