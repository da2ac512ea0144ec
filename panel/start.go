package panel

import (
	"fmt"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/panel/row"
)

// RowStart says in words how a row gets to its height. It never changes a
// count. The zero value is a turning chain that does not count as a stitch.
type RowStart uint8

// How a row may begin.
const (
	ChainDoesNotCount RowStart = iota
	ChainCounts
	NoChain
)

// String returns "chain does not count", "chain counts" or "no chain".
func (s RowStart) String() string {
	names := [...]string{"chain does not count", "chain counts", "no chain"}
	if int(s) < len(names) {
		return names[s]
	}
	return fmt.Sprintf("RowStart(%d)", uint8(s))
}

// ParseRowStart reads what String returns. It returns a *gauge.ParseError for
// anything else.
func ParseRowStart(s string) (RowStart, error) {
	w := strings.ToLower(strings.Join(strings.Fields(s), " "))
	for r := ChainDoesNotCount; r <= NoChain; r++ {
		if w == r.String() {
			return r, nil
		}
	}
	return 0, &gauge.ParseError{Kind: "row start", Text: s, Cause: "got " + text.Quote(s) + ", want chain counts, chain does not count or no chain"}
}

// MarshalText returns String, or a *gauge.FieldError for an unknown value.
func (s RowStart) MarshalText() ([]byte, error) {
	if s > NoChain {
		return nil, &gauge.FieldError{Field: "RowStart", Got: s.String(), Want: "chain counts, chain does not count or no chain"}
	}
	return []byte(s.String()), nil
}

// UnmarshalText reads what ParseRowStart reads.
func (s *RowStart) UnmarshalText(b []byte) error {
	v, err := ParseRowStart(string(b))
	if err != nil {
		return err
	}
	*s = v
	return nil
}

// Starts returns the sentences that tell how the rows of the plan get to their
// height, one for each kind of stitch that a row begins with. Rows that begin
// with a chain of their own, or need none, are passed over.
func (p Plan) Starts(s RowStart, t row.Terms) []string {
	var kinds []row.Stitch
	for _, rows := range [][]row.Row{p.Opening, p.Repeat, p.Closing} {
		for _, r := range rows {
			k, plain := r.FirstStitch()
			if !plain || k.Height() == 0 {
				continue
			}
			seen := false
			for _, o := range kinds {
				seen = seen || o == k
			}
			if !seen {
				kinds = append(kinds, k)
			}
		}
	}
	if len(kinds) == 0 {
		return nil
	}
	if s == NoChain {
		return []string{"Begin the rows without a turning chain: draw the first loop of a row up to the height of its first stitch, and work that stitch into the first st."}
	}
	var out []string
	for _, k := range kinds {
		if s == ChainCounts {
			out = append(out, fmt.Sprintf("At the start of each row that begins with %s, ch %d: this chain is the first %s of the row and stands on the first st, so go on with the next st or sp. The last stitch of the row after goes into the top of this chain.", k.Abbr(t), k.Height(), k.Abbr(t)))
			continue
		}
		out = append(out, fmt.Sprintf("At the start of each row that begins with %s, ch %d (does not count as a st); work the first %s into the first st.", k.Abbr(t), k.Height(), k.Abbr(t)))
	}
	return out
}
