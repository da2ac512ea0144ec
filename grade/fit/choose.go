package fit

import (
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/enum"
)

// Criterion is one measure on which a size is chosen.
type Criterion struct {
	Measure  grade.Measure           `json:"measure"`
	Body     gauge.Length            `json:"body"`     // of the one who will wear it
	Finished grade.Run[gauge.Length] `json:"finished"` // of the garment, one for each size
	Wanted   grade.Ease              `json:"wanted"`   // the ease hoped for; inside Window
	Window   Window                  `json:"window"`   // the ease that will do
	Free     bool                    `json:"free"`     // any ease will do: Window is not looked at
}

// validate returns an error if c is not valid for so many sizes.
func (c Criterion) validate(sizes int) error {
	if !c.Measure.Valid() {
		return &gauge.FieldError{Field: "Measure", Got: c.Measure.String(), Want: "a measure of the body"}
	}
	field := c.Measure.String()
	if err := c.Body.Validate(); err != nil {
		return gauge.InField(field+".Body", err)
	}
	if c.Body.Value.Sign() <= 0 {
		return &gauge.FieldError{Field: field + ".Body", Got: c.Body.String(), Want: "more than 0"}
	}
	if len(c.Finished) != sizes {
		return &gauge.FieldError{Field: field + ".Finished", Got: strconv.Itoa(len(c.Finished)) + " values", Want: strconv.Itoa(sizes)}
	}
	for i, l := range c.Finished {
		if err := l.Validate(); err != nil {
			return &grade.SizeError{Index: i, Field: field, Err: err}
		}
	}
	if err := c.Wanted.Validate(); err != nil {
		return gauge.InField(field+".Wanted", err)
	}
	if c.Free {
		return nil
	}
	if err := c.Window.Validate(); err != nil {
		return gauge.InField(field, err)
	}
	if body := c.Body.Measurement(); !c.Window.Holds(body, c.Wanted.Finished(body)) {
		return &gauge.FieldError{Field: field + ".Wanted", Got: c.Wanted.String(), Want: "an ease inside the window, " + c.Window.String()}
	}
	return nil
}

// Verdict is how a choice came out. The zero value is None.
type Verdict uint8

// The three answers.
const (
	None   Verdict = iota // no size lies inside every window; the nearest are named
	Chosen                // one size is best
	Tied                  // several are equally good
)

var verdictNames = [...]string{"none", "chosen", "tied"}

// String returns "none", "chosen" or "tied".
func (v Verdict) String() string {
	return enum.Name("Verdict", v, verdictNames[:])
}

// MarshalText returns String, or a *gauge.FieldError for a value that is not
// valid.
func (v Verdict) MarshalText() ([]byte, error) {
	return enum.Marshal("Verdict", v, verdictNames[:])
}

// UnmarshalText reads what String returns. It returns a *gauge.ParseError for
// anything else.
func (v *Verdict) UnmarshalText(b []byte) error {
	return enum.Unmarshal(v, "Verdict", b, verdictNames[:])
}

// Choice is the answer of Choose.
type Choice struct {
	Verdict Verdict  `json:"verdict"`
	Sizes   []string `json:"sizes"`   // the best; all that tie; for None, those that miss by least
	Reports []Report `json:"reports"` // every size, in order
}

// Report is what one size would give.
type Report struct {
	Size   string     `json:"size"`
	Fits   bool       `json:"fits"`   // inside every window
	Picked bool       `json:"picked"` // among Choice.Sizes
	Of     []Measured `json:"of"`
}

// Measured is what one size would give in one measure.
type Measured struct {
	Criterion Criterion         `json:"criterion"`
	Ease      gauge.Measurement `json:"ease"` // what the garment measures beyond the body
	Off       gauge.Measurement `json:"off"`  // beyond the wanted ease; less than nothing where it is tighter
	Miss      gauge.Measurement `json:"miss"` // beyond the window; nothing inside it
}

// Choose finds the size for one body. A size will do if its ease lies inside
// the window of every criterion; of those, the one nearest to the wanted ease
// is best. Criteria stand in the order of their weight: a later one is asked
// only where the ones before it leave a tie. Where no size will do, the nearest
// are those that miss the windows by least, in the same order.
//
// It returns a *gauge.FieldError if there are no sizes or more than 64, no
// criteria, or a criterion is not valid: a length, ease or window out of range,
// not one finished length for each size, or a wanted ease outside the window.
func Choose(sizes grade.Run[string], criteria ...Criterion) (Choice, error) {
	if len(sizes) == 0 || len(sizes) > grade.MaxSizes {
		return Choice{}, &gauge.FieldError{Field: "sizes", Got: strconv.Itoa(len(sizes)), Want: "1 to 64", Err: gauge.ErrBounds}
	}
	if len(criteria) == 0 {
		return Choice{}, &gauge.FieldError{Field: "criteria", Got: "none", Want: "at least one"}
	}
	for _, c := range criteria {
		if err := c.validate(len(sizes)); err != nil {
			return Choice{}, grade.NameSize(err, sizes)
		}
	}
	var ch Choice
	anyFits := false
	for i, size := range sizes {
		r := Report{Size: size, Fits: true}
		for _, c := range criteria {
			body, finished := c.Body.Measurement(), c.Finished[i].Measurement()
			m := Measured{Criterion: c, Ease: finished.Sub(body), Off: finished.Sub(c.Wanted.Finished(body))}
			if !c.Free {
				m.Miss = c.Window.Miss(body, finished)
			}
			r.Fits = r.Fits && m.Miss.Sign() == 0
			r.Of = append(r.Of, m)
		}
		anyFits = anyFits || r.Fits
		ch.Reports = append(ch.Reports, r)
	}
	distance := func(m Measured) gauge.Measurement {
		if anyFits {
			return abs(m.Off)
		}
		return abs(m.Miss)
	}
	compare := func(a, b Report) int {
		return slices.CompareFunc(a.Of, b.Of, func(x, y Measured) int { return distance(x).Cmp(distance(y)) })
	}
	best := -1
	for i, r := range ch.Reports {
		if r.Fits == anyFits && (best < 0 || compare(r, ch.Reports[best]) < 0) {
			best = i
		}
	}
	for i, r := range ch.Reports {
		if r.Fits == anyFits && compare(r, ch.Reports[best]) == 0 {
			ch.Reports[i].Picked = true
			ch.Sizes = append(ch.Sizes, r.Size)
		}
	}
	switch {
	case anyFits && len(ch.Sizes) == 1:
		ch.Verdict = Chosen
	case anyFits:
		ch.Verdict = Tied
	}
	return ch, nil
}

func abs(m gauge.Measurement) gauge.Measurement {
	if m.Sign() < 0 {
		return m.Times(gauge.Int(-1))
	}
	return m
}

// Explain says in a line for each size why it is chosen or why it is not, its
// lengths printed on the grid.
func (c Choice) Explain(g gauge.Grid) []string {
	out := make([]string, len(c.Reports))
	for i, r := range c.Reports {
		word := "not chosen"
		switch {
		case r.Picked && c.Verdict == Chosen:
			word = "chosen"
		case r.Picked && c.Verdict == Tied:
			word = "ties"
		case r.Picked:
			word = "nearest, but outside"
		case r.Fits:
			word = "would do, " + strings.Join(c.Sizes, " or ") + " is nearer"
		}
		var parts []string
		for _, m := range r.Of {
			s := m.Criterion.Measure.String() + " ease " + g.Text(m.Ease)
			switch {
			case m.Miss.Sign() < 0:
				s += ", " + g.Text(abs(m.Miss)) + " less than the least (" + m.Criterion.Window.Least.String() + ")"
			case m.Miss.Sign() > 0:
				s += ", " + g.Text(m.Miss) + " more than the most (" + m.Criterion.Window.Most.String() + ")"
			case m.Off.Sign() == 0:
				s += ", as wanted"
			default:
				s += ", " + g.Text(abs(m.Off)) + " from the wanted " + m.Criterion.Wanted.String()
			}
			parts = append(parts, s)
		}
		out[i] = r.Size + ": " + word + ": " + strings.Join(parts, "; ")
	}
	return out
}
