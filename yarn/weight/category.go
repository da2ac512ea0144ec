package weight

import (
	_ "embed"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/enum"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/yarn/internal/say"
	"example.com/panelmath/yarn/internal/table"
	"github.com/shopspring/decimal"
)

//go:embed categories.csv
var categories string

//go:embed thickness.csv
var thickness string

// Basis is what a category is told by.
type Basis uint8

// What the published tables tell a category by.
const (
	CrochetGauge Basis = iota // stitches over 4 in: single crochet, for lace double crochet (US terms)
	KnitGauge                 // stitches over 4 in in stockinette
	Hook                      // metric size of the hook
	Needle                    // metric size of the needle
	Wraps                     // wraps over an inch of a ruler
	ByGrist                   // length to a mass
)

var basisNames = [...]string{"crochet gauge", "knit gauge", "hook", "needle", "wraps per inch", "grist"}

// String returns the name: "crochet gauge".
func (b Basis) String() string { return enum.Name("Basis", b, basisNames[:]) }

// MarshalText returns String. It returns a *gauge.FieldError for a value that is
// none of the above.
func (b Basis) MarshalText() ([]byte, error) {
	return enum.Marshal("Basis", b, basisNames[:])
}

// UnmarshalText reads what String prints. It returns a *gauge.ParseError for
// anything else.
func (b *Basis) UnmarshalText(t []byte) error {
	return enum.Unmarshal(b, "Basis", t, basisNames[:])
}

// Range is one published range of one category, both ends included. Categories
// overlap, and the schemes conflict; every range says where it stands.
type Range struct {
	Category int             `json:"category"` // 0 lace to 7 jumbo
	Name     string          `json:"name"`     // as the source calls it
	Basis    Basis           `json:"basis"`
	Low      decimal.Decimal `json:"low"` // 0 where the range is open below
	High     decimal.Decimal `json:"high"`
	Open     bool            `json:"open"`    // no upper end; High is then 0
	Unit     string          `json:"unit"`    // "sts = 4 in", "mm", "wpi", "m/100 g", "yd/lb"
	Edition  string          `json:"edition"` // of the standard; empty for the thickness tables
	Check    string          `json:"check"`   // "two-sources", "one-source"
	Source   string          `json:"source"`  // codes of the package doc
	Note     string          `json:"note,omitempty"`
}

// holds reports whether x lies in the range.
func (r Range) holds(x gauge.Ratio) bool {
	return x.Rat().Cmp(r.Low.Rat()) >= 0 && (r.Open || x.Rat().Cmp(r.High.Rat()) <= 0)
}

// superseded reports a range of an earlier edition of the standard.
func (r Range) superseded() bool { return r.Edition != "" && r.Edition != "current" }

// String returns "4 worsted: 9 to 10 wpi (PM)".
func (r Range) String() string {
	low, high := number.Text(r.Low), number.Text(r.High)
	span := low + " to " + high
	switch {
	case r.Open:
		span = low + " and more"
	case r.Low.IsZero():
		span = high + " and fewer"
	case low == high:
		span = low
	}
	edition := ""
	if r.superseded() {
		edition = ", edition " + r.Edition
	}
	return fmt.Sprintf("%d %s: %s %s (%s%s)", r.Category, r.Name, span, r.Unit, r.Source, edition)
}

// Ranges returns every published range, of the Craft Yarn Council's standard
// yarn weight system first (Source: Craft Yarn Council's www.YarnStandards.com),
// then of the thickness tables.
func Ranges() []Range {
	var rs []Range
	for _, row := range table.Read(categories) {
		add := func(b Basis, low, high, unit string) {
			if low == "" && high == "" {
				return
			}
			note := row["note"]
			if b == CrochetGauge && row["crochet_gauge_stitch"] != "sc" {
				unit = row["crochet_gauge_stitch"] + " = 4 in"
			}
			rs = append(rs, newRange(row, row["name"], b, low, high, unit, row["edition"], note))
		}
		add(CrochetGauge, row["crochet_sts_4in_low"], row["crochet_sts_4in_high"], "sc = 4 in")
		add(KnitGauge, row["knit_sts_4in_low"], row["knit_sts_4in_high"], "sts = 4 in")
		add(Hook, row["hook_mm_low"], row["hook_mm_high"], "mm")
		add(Needle, row["needle_mm_low"], row["needle_mm_high"], "mm")
	}
	for _, row := range table.Read(thickness) {
		basis, unit := ByGrist, YardsPerPound.String()
		switch row["quantity"] {
		case "wpi":
			basis, unit = Wraps, "wpi"
		case "m_per_100g":
			unit = MetresPer100g.String()
		}
		rs = append(rs, newRange(row, row["label_in_source"], basis, row["low"], row["high"], unit, "", row["note"]))
	}
	return rs
}

func newRange(row map[string]string, name string, b Basis, low, high, unit, edition, note string) Range {
	r := Range{Name: name, Basis: b, Unit: unit, Edition: edition, Check: row["check"], Source: row["source"], Note: note}
	r.Category, _ = strconv.Atoi(row["category"])
	if low != "" {
		r.Low = number.Parse(low)
	}
	if high != "" {
		r.High = number.Parse(high)
	}
	r.Open = high == ""
	return r
}

// Measured is what is known of a yarn. Leave what was not measured at its zero
// value; at least one is needed.
type Measured struct {
	Crochet gauge.Over   `json:"crochet,omitzero"` // single crochet over a span (US terms); double crochet for lace
	Knit    gauge.Over   `json:"knit,omitzero"`    // stockinette over a span
	Hook    gauge.Length `json:"hook,omitzero"`    // that gave the crochet gauge, or that the label names
	Needle  gauge.Length `json:"needle,omitzero"`
	Wraps   gauge.Over   `json:"wraps,omitzero"` // wraps over a span of a ruler, side by side
	Grist   Grist        `json:"grist,omitzero"`
}

// Verdict is every category that fits, and on what basis. A range that only an
// earlier edition of the standard has stands in Fits and counts for nothing else.
type Verdict struct {
	Fits []Range `json:"fits"` // every range that holds a measured figure, earlier editions too
	Gaps []Basis `json:"gaps"` // what was measured and no range holds
	All  []int   `json:"all"`  // categories that fit on every basis measured, lowest first
	Any  []int   `json:"any"`  // categories that fit on at least one
}

// Categories returns every category that fits the measured figures, with the
// range that says so. The categories overlap, so more than one is usual; none
// that fits all figures is a sign that one figure is wrong.
//
// It returns a *gauge.FieldError if nothing was measured or a figure is not
// valid or not more than 0.
func Categories(m Measured) (Verdict, error) {
	var v Verdict
	fits := map[Basis][]int{}
	var bases []Basis
	all := Ranges()
	try := func(b Basis, in func(unit string) gauge.Ratio) {
		bases = append(bases, b)
		for _, r := range all {
			if r.Basis == b && r.holds(in(r.Unit)) {
				v.Fits = append(v.Fits, r)
				if !r.superseded() {
					fits[b] = append(fits[b], r.Category)
				}
			}
		}
		if fits[b] == nil {
			v.Gaps = append(v.Gaps, b)
		}
	}
	for _, c := range []struct {
		b     Basis
		field string
		o     gauge.Over
		over  string
	}{{CrochetGauge, "Measured.Crochet", m.Crochet, "4 in"}, {KnitGauge, "Measured.Knit", m.Knit, "4 in"}, {Wraps, "Measured.Wraps", m.Wraps, "1 in"}} {
		if c.o.Count.IsZero() && c.o.Span.Unit == 0 {
			continue
		}
		x, err := c.o.Exact(gauge.MustLength(c.over).Measurement())
		if err != nil {
			return Verdict{}, gauge.InField(c.field, err)
		}
		try(c.b, func(string) gauge.Ratio { return x })
	}
	for _, c := range []struct {
		b     Basis
		field string
		l     gauge.Length
	}{{Hook, "Measured.Hook", m.Hook}, {Needle, "Measured.Needle", m.Needle}} {
		if c.l.Unit == 0 && c.l.Value.IsZero() {
			continue
		}
		if err := c.l.Validate(); err != nil {
			return Verdict{}, gauge.InField(c.field, err)
		}
		if c.l.Value.Sign() <= 0 {
			return Verdict{}, &gauge.FieldError{Field: c.field, Got: c.l.String(), Want: "more than 0"}
		}
		try(c.b, func(string) gauge.Ratio { return c.l.Measurement().In(gauge.Millimetre) })
	}
	if m.Grist.Validate() == nil {
		try(ByGrist, func(unit string) gauge.Ratio {
			u, _ := ParseUnit(unit)
			return m.Grist.In(u)
		})
	}
	if len(bases) == 0 {
		return Verdict{}, &gauge.FieldError{Field: "Measured", Got: "nothing", Want: "at least one figure"}
	}
	for category := range 8 {
		count := 0
		for _, b := range bases {
			if slices.Contains(fits[b], category) {
				count++
			}
		}
		if count == len(bases) {
			v.All = append(v.All, category)
		}
		if count > 0 {
			v.Any = append(v.Any, category)
		}
	}
	return v, nil
}

// Explain says which categories fit and by which ranges, a sentence each.
func (v Verdict) Explain() []string {
	s := []string{"no category fits all that was measured: check the figures"}
	switch {
	case len(v.All) == 1:
		s[0] = fmt.Sprintf("category %d fits all that was measured", v.All[0])
	case len(v.All) > 1:
		s[0] = fmt.Sprintf("categories %s fit all that was measured; they overlap", join(v.All))
	}
	for _, b := range v.Gaps {
		s = append(s, "no table has a range for the "+b.String())
	}
	for _, r := range v.Fits {
		s = append(s, r.Basis.String()+": "+r.String())
	}
	return s
}

func join(ns []int) string {
	words := make([]string, len(ns))
	for i, n := range ns {
		words[i] = strconv.Itoa(n)
	}
	return strings.Join(words, ", ")
}

// inUnit prints a grist for a sentence.
func inUnit(g Grist, u Unit) string { return say.Number(g.In(u)) + " " + u.String() }
