package hook

import (
	"slices"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
	"github.com/shopspring/decimal"
)

// Hook is a crochet hook. Its diameter in millimetres is the truth; letters and
// numbers are labels, and makers differ about them. The zero value is not
// valid.
type Hook struct {
	Diameter decimal.Decimal // millimetres; more than 0, at most 50
}

// Parse reads a diameter: "5.5 mm", "5.5mm", "0.55 cm".
//
// It returns a *gauge.ParseError if s is not a length of more than 0 and at most
// 50 mm. A label ("I-9") is refused with the diameters that it stands for.
func Parse(s string) (Hook, error) {
	l, err := gauge.ParseLength(s)
	if err != nil {
		cause := "want a diameter like 5.5 mm"
		if hooks := Labelled(s); len(hooks) > 0 {
			names := make([]string, len(hooks))
			for i, h := range hooks {
				names[i] = h.String()
			}
			cause = "a label, which makers use differently; write the diameter: " + strings.Join(names, " or ")
		}
		return Hook{}, &gauge.ParseError{Kind: "hook", Text: s, Cause: cause, Err: err}
	}
	d, ok := l.Measurement().In(gauge.Millimetre).ExactDecimal()
	h := Hook{Diameter: d}
	if h.Validate() != nil || !ok {
		return Hook{}, &gauge.ParseError{Kind: "hook", Text: s, Cause: "want more than 0 and at most 50 mm", Err: gauge.ErrBounds}
	}
	return h, nil
}

// Must is Parse for literals in tests and package variables; it panics when
// s is not a hook.
func Must(s string) Hook {
	return text.Must("hook.Must", s, Parse)
}

// Validate returns a *gauge.FieldError if the diameter is not more than 0 and at
// most 50 mm.
func (h Hook) Validate() error {
	if got, want := number.Outside(h.Diameter); got != "" {
		return &gauge.FieldError{Field: "Hook.Diameter", Got: got, Want: want, Err: gauge.ErrBounds}
	}
	if h.Diameter.Sign() <= 0 || h.Diameter.Cmp(decimal.NewFromInt(50)) > 0 {
		return &gauge.FieldError{Field: "Hook.Diameter", Got: number.Text(h.Diameter), Want: "more than 0 and at most 50", Err: gauge.ErrBounds}
	}
	return nil
}

// String returns "5.5 mm", which Parse reads back.
func (h Hook) String() string { return number.Text(h.Diameter) + " mm" }

// MarshalText returns String. It returns the error of Validate.
func (h Hook) MarshalText() ([]byte, error) {
	if err := h.Validate(); err != nil {
		return nil, err
	}
	return []byte(h.String()), nil
}

// UnmarshalText reads what Parse reads.
func (h *Hook) UnmarshalText(b []byte) error {
	return text.Read(h, b, Parse)
}

// US returns the current US label, "I-9", or "" where the size has none. Where
// makers differ it is the standard's; Labels has them all.
func (h Hook) US() string { return h.label(US) }

// UK returns the old UK number, "5", or "" where the size has none.
func (h Hook) UK() string { return h.label(OldUK) }

// Explain names the hook by every label that the table has, with how well each
// is backed: "5.5 mm: US I-9 (two sources), old UK 5 (two sources)".
func (h Hook) Explain() string {
	var labels []string
	for _, l := range h.Labels() {
		labels = append(labels, l.Scheme.String()+" "+l.Text+" ("+l.Check.String()+")")
	}
	if labels == nil {
		return h.String() + ": no label in the table"
	}
	return h.String() + ": " + strings.Join(labels, ", ")
}

func (h Hook) label(s Scheme) string {
	for _, l := range h.Labels() {
		if l.Scheme == s {
			return l.Text
		}
	}
	return ""
}

// Labels returns every label that the table has for the size, the standard's
// before those of single makers; none for a size that is not in the table.
func (h Hook) Labels() []Label {
	if h.Validate() != nil {
		return nil
	}
	var out []Label
	for _, r := range table {
		if h.Diameter.Equal(r.diameter()) {
			out = append(out, r.Label)
		}
	}
	return out
}

// Labelled returns the hooks, thinnest first, to which some maker gives
// the label: several for "P-16" or for most steel numbers, none for an unknown
// label. Case does not matter, and "I/9" and "I 9" are "I-9".
func Labelled(label string) []Hook {
	if len(label) > text.Limit {
		return nil
	}
	var out []Hook
	want := fold(label)
	for _, r := range table {
		same := func(h Hook) bool { return h.Diameter.Equal(r.diameter()) }
		if fold(r.Text) == want && !slices.ContainsFunc(out, same) {
			out = append(out, Hook{Diameter: r.diameter()})
		}
	}
	slices.SortFunc(out, func(a, b Hook) int { return a.Diameter.Cmp(b.Diameter) })
	return out
}

// fold writes a label as labels are compared.
func fold(s string) string {
	return strings.NewReplacer("/", "-", " ", "-").Replace(strings.ToUpper(strings.TrimSpace(s)))
}

// Larger returns the next size up that is sold now, and false if the table has
// none or h is not valid. Sizes of older makers (3.125, 4.25, 5.25, 5.75 mm) and
// steel sizes above 2 mm are left out.
func (h Hook) Larger() (Hook, bool) { return h.next(1) }

// Smaller returns the next size down, of the same sizes as Larger.
func (h Hook) Smaller() (Hook, bool) { return h.next(-1) }

// next returns the nearest size whose comparison with h gives side.
func (h Hook) next(side int) (best Hook, ok bool) {
	if h.Validate() != nil {
		return Hook{}, false
	}
	for _, r := range table {
		d := r.diameter()
		if r.sold() && d.Cmp(h.Diameter) == side && (!ok || d.Cmp(best.Diameter) == -side) {
			best, ok = Hook{Diameter: d}, true
		}
	}
	return best, ok
}
