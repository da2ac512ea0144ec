package gauge

import (
	"example.com/panelmath/internal/text"
	"github.com/shopspring/decimal"
)

// Scheme is a system of hook labels.
type Scheme uint8

// The schemes of the table.
const (
	US    Scheme = iota // letter and number of the US standard and its makers
	OldUK               // number of the old UK system
	Steel               // US number of steel hooks; one number can mean two sizes
	Lace                // lace number of steel hooks
)

var schemeNames = [...]string{"US", "old UK", "steel", "lace"}

// String returns "US", "old UK", "steel" or "lace".
func (s Scheme) String() string { return text.Name("Scheme", s, schemeNames[:]) }

// MarshalText returns String, or a *FieldError for an invalid value.
func (s Scheme) MarshalText() ([]byte, error) { return marshalName("Scheme", s, schemeNames[:]) }

// UnmarshalText reads what String prints.
func (s *Scheme) UnmarshalText(b []byte) error {
	return unmarshalName(s, "scheme", b, schemeNames[:])
}

// Check says how well a fact of a table is backed.
type Check uint8

// The zero value is FromMemory: no document was reached.
const (
	FromMemory Check = iota
	OneSource
	TwoSources
)

var checkNames = [...]string{"from memory", "one source", "two sources"}

// String returns "from memory", "one source" or "two sources".
func (c Check) String() string { return text.Name("Check", c, checkNames[:]) }

// MarshalText returns String, or a *FieldError for an invalid value.
func (c Check) MarshalText() ([]byte, error) { return marshalName("Check", c, checkNames[:]) }

// UnmarshalText reads what String prints.
func (c *Check) UnmarshalText(b []byte) error {
	return unmarshalName(c, "check", b, checkNames[:])
}

// HookLabel is what one scheme, or one maker, calls a hook.
type HookLabel struct {
	Text   string `json:"text"` // "I-9"
	Scheme Scheme `json:"scheme"`
	Check  Check  `json:"check"`
	Source string `json:"source,omitempty"` // codes of the hook charts it was seen in; see the package doc
}

// hookRow is one label of one size.
type hookRow struct {
	micron int64
	HookLabel
	old bool // a size of an older maker
}

func (r hookRow) diameter() decimal.Decimal { return decimal.New(r.micron, -3) }

// sold reports whether Larger and Smaller stop at the size.
func (r hookRow) sold() bool {
	return !r.old && (r.Scheme == US || r.Scheme == OldUK || r.micron < 2000)
}

// hookTable is the standard's table of hooks and steel hooks with the labels of
// makers that differ from it. Source: Craft Yarn Council's
// www.YarnStandards.com, checked against the charts named in each row.
var hookTable = [...]hookRow{
	{2000, HookLabel{"14", OldUK, TwoSources, "MF TY"}, false},
	{2000, HookLabel{"B-1", US, TwoSources, "MF GR"}, false},
	{2250, HookLabel{"B-1", US, TwoSources, "LG MF TY D4"}, false},
	{2250, HookLabel{"13", OldUK, TwoSources, "LG MF TY D4"}, false},
	{2500, HookLabel{"12", OldUK, OneSource, "TY"}, false},
	{2750, HookLabel{"C-2", US, TwoSources, "LG MF D4"}, false},
	{2750, HookLabel{"12", OldUK, TwoSources, "LG MF D4"}, false},
	{2750, HookLabel{"11", OldUK, OneSource, "TY"}, false},
	{3000, HookLabel{"11", OldUK, TwoSources, "TY LG"}, false},
	{3000, HookLabel{"3", US, OneSource, "D4"}, false},
	{3125, HookLabel{"D", US, FromMemory, ""}, true},
	{3250, HookLabel{"D-3", US, TwoSources, "LG MF TY D4 GR"}, false},
	{3250, HookLabel{"10", OldUK, TwoSources, "LG MF TY D4 GR"}, false},
	{3500, HookLabel{"E-4", US, TwoSources, "LG MF TY D4 GR"}, false},
	{3500, HookLabel{"9", OldUK, TwoSources, "LG MF TY D4 GR"}, false},
	{3750, HookLabel{"F-5", US, TwoSources, "LG MF TY D4 GR"}, false},
	{3750, HookLabel{"9", OldUK, OneSource, "LG"}, false},
	{4000, HookLabel{"G-6", US, TwoSources, "LG MF TY D4 GR"}, false},
	{4000, HookLabel{"8", OldUK, TwoSources, "LG MF TY D4 GR"}, false},
	{4250, HookLabel{"G", US, OneSource, "D4"}, true},
	{4500, HookLabel{"7", US, TwoSources, "LG MF TY D4 GR"}, false},
	{4500, HookLabel{"7", OldUK, TwoSources, "LG MF TY D4 GR"}, false},
	{5000, HookLabel{"H-8", US, TwoSources, "LG MF TY D4 GR"}, false},
	{5000, HookLabel{"6", OldUK, TwoSources, "LG MF TY D4 GR"}, false},
	{5250, HookLabel{"I", US, FromMemory, ""}, true},
	{5500, HookLabel{"I-9", US, TwoSources, "LG MF TY D4 GR"}, false},
	{5500, HookLabel{"5", OldUK, TwoSources, "LG MF TY D4 GR"}, false},
	{5750, HookLabel{"J", US, FromMemory, ""}, true},
	{6000, HookLabel{"J-10", US, TwoSources, "LG MF D4 GR"}, false},
	{6000, HookLabel{"4", OldUK, TwoSources, "LG MF D4 GR"}, false},
	{6000, HookLabel{"3", OldUK, OneSource, "TY"}, false},
	{6500, HookLabel{"K-10.5", US, TwoSources, "LG MF D4 GR"}, false},
	{6500, HookLabel{"3", OldUK, TwoSources, "LG MF D4 GR"}, false},
	{6500, HookLabel{"2", OldUK, OneSource, "TY"}, false},
	{7000, HookLabel{"2", OldUK, OneSource, "LG"}, false},
	{7000, HookLabel{"1", OldUK, OneSource, "TY"}, false},
	{7500, HookLabel{"1", OldUK, OneSource, "LG"}, false},
	{8000, HookLabel{"L-11", US, TwoSources, "LG MF TY D4 GR"}, false},
	{8000, HookLabel{"0", OldUK, TwoSources, "LG MF TY D4 GR"}, false},
	{9000, HookLabel{"M/N-13", US, TwoSources, "LG MF D4 TY"}, false},
	{9000, HookLabel{"00", OldUK, TwoSources, "LG MF D4 TY"}, false},
	{9000, HookLabel{"M-13", US, TwoSources, "TY GR CD"}, false},
	{10000, HookLabel{"N/P-15", US, TwoSources, "LG MF D4 TY"}, false},
	{10000, HookLabel{"000", OldUK, TwoSources, "LG MF D4 TY"}, false},
	{10000, HookLabel{"N-15", US, OneSource, "TY"}, false},
	{11000, HookLabel{"P-16", US, OneSource, "D4"}, false},
	{11500, HookLabel{"P-16", US, OneSource, "TY"}, false},
	{12000, HookLabel{"O", US, OneSource, "LG"}, false},
	{12000, HookLabel{"O-16", US, OneSource, "GR"}, false},
	{15000, HookLabel{"P/Q", US, TwoSources, "LG D4"}, false},
	{15000, HookLabel{"P-19", US, OneSource, "GR"}, false},
	{15750, HookLabel{"Q", US, OneSource, "TY"}, false},
	{16000, HookLabel{"Q", US, TwoSources, "TY GR"}, false},
	{17500, HookLabel{"R", US, OneSource, "GR"}, false},
	{19000, HookLabel{"S", US, OneSource, "GR"}, false},
	{25000, HookLabel{"T/U/X", US, FromMemory, ""}, false},
	{30000, HookLabel{"T/X", US, FromMemory, ""}, false},
	{3500, HookLabel{"00", Steel, OneSource, "HQ"}, false},
	{3250, HookLabel{"0", Steel, FromMemory, ""}, false},
	{2750, HookLabel{"1", Steel, FromMemory, ""}, false},
	{2700, HookLabel{"00", Steel, FromMemory, ""}, false},
	{2550, HookLabel{"0", Steel, FromMemory, ""}, false},
	{2350, HookLabel{"1", Steel, FromMemory, ""}, false},
	{2250, HookLabel{"2", Steel, FromMemory, ""}, false},
	{2200, HookLabel{"2", Steel, FromMemory, ""}, false},
	{2100, HookLabel{"3", Steel, FromMemory, ""}, false},
	{2000, HookLabel{"4", Steel, FromMemory, ""}, false},
	{1900, HookLabel{"5", Steel, FromMemory, ""}, false},
	{1800, HookLabel{"6", Steel, FromMemory, ""}, false},
	{1750, HookLabel{"4", Steel, OneSource, "LG"}, false},
	{1750, HookLabel{"0", Lace, OneSource, "LG"}, false},
	{1700, HookLabel{"5", Steel, FromMemory, ""}, false},
	{1650, HookLabel{"7", Steel, OneSource, "JU"}, false},
	{1600, HookLabel{"6", Steel, OneSource, "HS"}, false},
	{1500, HookLabel{"8", Steel, TwoSources, "JU LG"}, false},
	{1500, HookLabel{"7", Steel, TwoSources, "JU LG"}, false},
	{1500, HookLabel{"2", Lace, TwoSources, "JU LG"}, false},
	{1400, HookLabel{"9", Steel, OneSource, "HS"}, false},
	{1400, HookLabel{"8", Steel, OneSource, "HS"}, false},
	{1300, HookLabel{"10", Steel, FromMemory, ""}, false},
	{1250, HookLabel{"9", Steel, OneSource, "LG"}, false},
	{1250, HookLabel{"4", Lace, OneSource, "LG"}, false},
	{1150, HookLabel{"10", Steel, FromMemory, ""}, false},
	{1100, HookLabel{"11", Steel, FromMemory, ""}, false},
	{1050, HookLabel{"11", Steel, FromMemory, ""}, false},
	{1000, HookLabel{"12", Steel, OneSource, "LG"}, false},
	{1000, HookLabel{"6", Lace, OneSource, "LG"}, false},
	{950, HookLabel{"13", Steel, FromMemory, ""}, false},
	{900, HookLabel{"14", Steel, FromMemory, ""}, false},
	{900, HookLabel{"8", Lace, FromMemory, ""}, false},
	{850, HookLabel{"13", Steel, FromMemory, ""}, false},
	{750, HookLabel{"14", Steel, OneSource, "HQ"}, false},
	{750, HookLabel{"10", Lace, OneSource, "HQ"}, false},
	{600, HookLabel{"12", Lace, FromMemory, ""}, false},
}
