package care

import (
	_ "embed" // the two tables
	"fmt"
	"slices"

	"example.com/panelmath/internal/enum"
	"example.com/panelmath/yarn/internal/table"
)

//go:embed blocking.csv
var blocking string

// Fibre is a kind of fibre that is blocked in its own way. The zero value is
// Other: a fibre that no source was read for.
type Fibre uint8

// The fibres of the table.
const (
	Other Fibre = iota
	Wool
	SuperwashWool
	Mohair // and angora
	Silk
	Cotton
	Linen
	Acrylic // and other synthetics
)

var fibres = [...]string{"other", "wool", "superwash wool", "mohair and angora", "silk", "cotton", "linen", "acrylic and other synthetics"}

// String returns the name: "mohair and angora".
func (f Fibre) String() string { return enum.Name("Fibre", f, fibres[:]) }

// MarshalText returns String. It returns a *gauge.FieldError for a value that is
// none of the above.
func (f Fibre) MarshalText() ([]byte, error) {
	return enum.Marshal("Fibre", f, fibres[:])
}

// UnmarshalText reads what String prints. It returns a *gauge.ParseError for
// anything else.
func (f *Fibre) UnmarshalText(b []byte) error {
	return enum.Unmarshal(f, "Fibre", b, fibres[:])
}

// Method is a way to block.
type Method uint8

// The three methods.
const (
	Wet   Method = iota // soak, press the water out, pin, dry
	Spray               // pin, spray with water, dry
	Steam               // pin, hold steam above, cool
)

var methods = [...]string{"wet", "spray", "steam"}

// String returns the name: "wet".
func (m Method) String() string { return enum.Name("Method", m, methods[:]) }

// MarshalText returns String. It returns a *gauge.FieldError for a value that is
// none of the above.
func (m Method) MarshalText() ([]byte, error) {
	return enum.Marshal("Method", m, methods[:])
}

// UnmarshalText reads what String prints. It returns a *gauge.ParseError for
// anything else.
func (m *Method) UnmarshalText(b []byte) error {
	return enum.Unmarshal(m, "Method", b, methods[:])
}

// Verdict is what the sources say of a method for a fibre, from the most to the
// least welcome.
type Verdict uint8

// The verdicts. Disputed: sources say opposite things, and the note says which.
const (
	Suits Verdict = iota
	WithCare
	Disputed
	Avoid
)

var verdicts = [...]string{"suits", "with care", "disputed", "avoid"}

// String returns the name: "with care".
func (v Verdict) String() string { return enum.Name("Verdict", v, verdicts[:]) }

// MarshalText returns String. It returns a *gauge.FieldError for a value that is
// none of the above.
func (v Verdict) MarshalText() ([]byte, error) {
	return enum.Marshal("Verdict", v, verdicts[:])
}

// UnmarshalText reads what String prints. It returns a *gauge.ParseError for
// anything else.
func (v *Verdict) UnmarshalText(b []byte) error {
	return enum.Unmarshal(v, "Verdict", b, verdicts[:])
}

// Advice is what the sources say of one method for a fibre.
type Advice struct {
	Fibre   Fibre   `json:"fibre"`
	Method  Method  `json:"method"`
	Verdict Verdict `json:"verdict"`
	Note    string  `json:"note,omitempty"`
	Source  string  `json:"source"`
	URL     string  `json:"url,omitempty"`
}

// String returns "acrylic and other synthetics, steam: disputed: a handbook ...".
func (a Advice) String() string {
	s := fmt.Sprintf("%v, %v: %v", a.Fibre, a.Method, a.Verdict)
	if a.Note != "" {
		s += ": " + a.Note
	}
	return s
}

// Blocking returns the advice for one fibre, one for each method.
func Blocking(f Fibre) []Advice {
	var out []Advice
	for _, row := range table.Read(blocking) {
		if row["fibre"] != f.String() {
			continue
		}
		out = append(out, Advice{Fibre: f, Note: row["note"], Source: row["source"], URL: row["url"],
			Method:  Method(slices.Index(methods[:], row["method"])),
			Verdict: Verdict(slices.Index(verdicts[:], row["verdict"]))})
	}
	return out
}

// ForLabel returns the advice for the fibres that a label names, one for each
// method: of a blend the least welcome verdict of its fibres. It returns the
// error of Fibres.
func ForLabel(label string) ([]Advice, error) {
	found, err := Fibres(label)
	if err != nil {
		return nil, err
	}
	var out []Advice
	for _, f := range found {
		for i, a := range Blocking(f) {
			switch {
			case i == len(out):
				out = append(out, a)
			case a.Verdict > out[i].Verdict:
				out[i] = a
			}
		}
	}
	return out, nil
}
