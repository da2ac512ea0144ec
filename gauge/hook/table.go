package hook

import (
	"example.com/panelmath/internal/enum"
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
func (s Scheme) String() string { return enum.Name("Scheme", s, schemeNames[:]) }

// MarshalText returns String, or a *gauge.FieldError for an invalid value.
func (s Scheme) MarshalText() ([]byte, error) { return enum.Marshal("Scheme", s, schemeNames[:]) }

// UnmarshalText reads what String prints.
func (s *Scheme) UnmarshalText(b []byte) error {
	return enum.Unmarshal(s, "Scheme", b, schemeNames[:])
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
func (c Check) String() string { return enum.Name("Check", c, checkNames[:]) }

// MarshalText returns String, or a *gauge.FieldError for an invalid value.
func (c Check) MarshalText() ([]byte, error) { return enum.Marshal("Check", c, checkNames[:]) }

// UnmarshalText reads what String prints.
func (c *Check) UnmarshalText(b []byte) error {
	return enum.Unmarshal(c, "Check", b, checkNames[:])
}

// Label is what one scheme, or one maker, calls a hook.
type Label struct {
	Text   string `json:"text"` // "I-9"
	Scheme Scheme `json:"scheme"`
	Check  Check  `json:"check"`
	Source string `json:"source,omitempty"` // codes of the hook charts it was seen in; see the package doc
}

// row is one label of one size.
type row struct {
	micron int64
	Label
	old bool // a size of an older maker
}

func (r row) diameter() decimal.Decimal { return decimal.New(r.micron, -3) }

// sold reports whether Larger and Smaller stop at the size.
func (r row) sold() bool {
	return !r.old && (r.Scheme == US || r.Scheme == OldUK || r.micron < 2000)
}

// table is the standard's table of hooks and steel hooks with the labels of
// makers that differ from it. Source: Craft Yarn Council's
// www.YarnStandards.com, checked against the charts named in each row.
var table = [...]row{
	{2000, Label{"14", OldUK, TwoSources, "MF TY"}, false},
	{2000, Label{"B-1", US, TwoSources, "MF GR"}, false},
	{2250, Label{"B-1", US, TwoSources, "LG MF TY D4"}, false},
	{2250, Label{"13", OldUK, TwoSources, "LG MF TY D4"}, false},
	{2500, Label{"12", OldUK, OneSource, "TY"}, false},
	{2750, Label{"C-2", US, TwoSources, "LG MF D4"}, false},
	{2750, Label{"12", OldUK, TwoSources, "LG MF D4"}, false},
	{2750, Label{"11", OldUK, OneSource, "TY"}, false},
	{3000, Label{"11", OldUK, TwoSources, "TY LG"}, false},
	{3000, Label{"3", US, OneSource, "D4"}, false},
	{3125, Label{"D", US, FromMemory, ""}, true},
	{3250, Label{"D-3", US, TwoSources, "LG MF TY D4 GR"}, false},
	{3250, Label{"10", OldUK, TwoSources, "LG MF TY D4 GR"}, false},
	{3500, Label{"E-4", US, TwoSources, "LG MF TY D4 GR"}, false},
	{3500, Label{"9", OldUK, TwoSources, "LG MF TY D4 GR"}, false},
	{3750, Label{"F-5", US, TwoSources, "LG MF TY D4 GR"}, false},
	{3750, Label{"9", OldUK, OneSource, "LG"}, false},
	{4000, Label{"G-6", US, TwoSources, "LG MF TY D4 GR"}, false},
	{4000, Label{"8", OldUK, TwoSources, "LG MF TY D4 GR"}, false},
	{4250, Label{"G", US, OneSource, "D4"}, true},
	{4500, Label{"7", US, TwoSources, "LG MF TY D4 GR"}, false},
	{4500, Label{"7", OldUK, TwoSources, "LG MF TY D4 GR"}, false},
	{5000, Label{"H-8", US, TwoSources, "LG MF TY D4 GR"}, false},
	{5000, Label{"6", OldUK, TwoSources, "LG MF TY D4 GR"}, false},
	{5250, Label{"I", US, FromMemory, ""}, true},
	{5500, Label{"I-9", US, TwoSources, "LG MF TY D4 GR"}, false},
	{5500, Label{"5", OldUK, TwoSources, "LG MF TY D4 GR"}, false},
	{5750, Label{"J", US, FromMemory, ""}, true},
	{6000, Label{"J-10", US, TwoSources, "LG MF D4 GR"}, false},
	{6000, Label{"4", OldUK, TwoSources, "LG MF D4 GR"}, false},
	{6000, Label{"3", OldUK, OneSource, "TY"}, false},
	{6500, Label{"K-10.5", US, TwoSources, "LG MF D4 GR"}, false},
	{6500, Label{"3", OldUK, TwoSources, "LG MF D4 GR"}, false},
	{6500, Label{"2", OldUK, OneSource, "TY"}, false},
	{7000, Label{"2", OldUK, OneSource, "LG"}, false},
	{7000, Label{"1", OldUK, OneSource, "TY"}, false},
	{7500, Label{"1", OldUK, OneSource, "LG"}, false},
	{8000, Label{"L-11", US, TwoSources, "LG MF TY D4 GR"}, false},
	{8000, Label{"0", OldUK, TwoSources, "LG MF TY D4 GR"}, false},
	{9000, Label{"M/N-13", US, TwoSources, "LG MF D4 TY"}, false},
	{9000, Label{"00", OldUK, TwoSources, "LG MF D4 TY"}, false},
	{9000, Label{"M-13", US, TwoSources, "TY GR CD"}, false},
	{10000, Label{"N/P-15", US, TwoSources, "LG MF D4 TY"}, false},
	{10000, Label{"000", OldUK, TwoSources, "LG MF D4 TY"}, false},
	{10000, Label{"N-15", US, OneSource, "TY"}, false},
	{11000, Label{"P-16", US, OneSource, "D4"}, false},
	{11500, Label{"P-16", US, OneSource, "TY"}, false},
	{12000, Label{"O", US, OneSource, "LG"}, false},
	{12000, Label{"O-16", US, OneSource, "GR"}, false},
	{15000, Label{"P/Q", US, TwoSources, "LG D4"}, false},
	{15000, Label{"P-19", US, OneSource, "GR"}, false},
	{15750, Label{"Q", US, OneSource, "TY"}, false},
	{16000, Label{"Q", US, TwoSources, "TY GR"}, false},
	{17500, Label{"R", US, OneSource, "GR"}, false},
	{19000, Label{"S", US, OneSource, "GR"}, false},
	{25000, Label{"T/U/X", US, FromMemory, ""}, false},
	{30000, Label{"T/X", US, FromMemory, ""}, false},
	{3500, Label{"00", Steel, OneSource, "HQ"}, false},
	{3250, Label{"0", Steel, FromMemory, ""}, false},
	{2750, Label{"1", Steel, FromMemory, ""}, false},
	{2700, Label{"00", Steel, FromMemory, ""}, false},
	{2550, Label{"0", Steel, FromMemory, ""}, false},
	{2350, Label{"1", Steel, FromMemory, ""}, false},
	{2250, Label{"2", Steel, FromMemory, ""}, false},
	{2200, Label{"2", Steel, FromMemory, ""}, false},
	{2100, Label{"3", Steel, FromMemory, ""}, false},
	{2000, Label{"4", Steel, FromMemory, ""}, false},
	{1900, Label{"5", Steel, FromMemory, ""}, false},
	{1800, Label{"6", Steel, FromMemory, ""}, false},
	{1750, Label{"4", Steel, OneSource, "LG"}, false},
	{1750, Label{"0", Lace, OneSource, "LG"}, false},
	{1700, Label{"5", Steel, FromMemory, ""}, false},
	{1650, Label{"7", Steel, OneSource, "JU"}, false},
	{1600, Label{"6", Steel, OneSource, "HS"}, false},
	{1500, Label{"8", Steel, TwoSources, "JU LG"}, false},
	{1500, Label{"7", Steel, TwoSources, "JU LG"}, false},
	{1500, Label{"2", Lace, TwoSources, "JU LG"}, false},
	{1400, Label{"9", Steel, OneSource, "HS"}, false},
	{1400, Label{"8", Steel, OneSource, "HS"}, false},
	{1300, Label{"10", Steel, FromMemory, ""}, false},
	{1250, Label{"9", Steel, OneSource, "LG"}, false},
	{1250, Label{"4", Lace, OneSource, "LG"}, false},
	{1150, Label{"10", Steel, FromMemory, ""}, false},
	{1100, Label{"11", Steel, FromMemory, ""}, false},
	{1050, Label{"11", Steel, FromMemory, ""}, false},
	{1000, Label{"12", Steel, OneSource, "LG"}, false},
	{1000, Label{"6", Lace, OneSource, "LG"}, false},
	{950, Label{"13", Steel, FromMemory, ""}, false},
	{900, Label{"14", Steel, FromMemory, ""}, false},
	{900, Label{"8", Lace, FromMemory, ""}, false},
	{850, Label{"13", Steel, FromMemory, ""}, false},
	{750, Label{"14", Steel, OneSource, "HQ"}, false},
	{750, Label{"10", Lace, OneSource, "HQ"}, false},
	{600, Label{"12", Lace, FromMemory, ""}, false},
}
