package stash

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/internal/say"
)

// Holding is yarn at hand: whole skeins of one label, and a rest that was weighed.
type Holding struct {
	Yarn   string     `json:"yarn,omitempty"` // as lines name it
	Label  yarn.Label `json:"label"`
	Skeins int        `json:"skeins"`
	Rest   yarn.Mass  `json:"rest,omitzero"` // unset where there is none
}

// Length returns the length at hand. It returns a *gauge.FieldError if the label
// or the rest is not valid, or the skeins are not 0 to 100 000.
func (h Holding) Length() (gauge.Measurement, error) {
	if err := h.Label.Validate(); err != nil {
		return gauge.Measurement{}, gauge.InField("Holding", err)
	}
	if h.Skeins < 0 || h.Skeins > gauge.MaxCount {
		return gauge.Measurement{}, &gauge.FieldError{Field: "Holding.Skeins", Got: strconv.Itoa(h.Skeins), Want: "0 to 100000", Err: gauge.ErrBounds}
	}
	m := h.Label.Length.Measurement().Times(gauge.Int(h.Skeins))
	if !h.Rest.IsZero() {
		if err := h.Rest.Validate(); err != nil {
			return gauge.Measurement{}, gauge.InField("Holding.Rest", err)
		}
		m = m.Add(h.Label.LengthOf(h.Rest.Exact()))
	}
	return m, nil
}

// Largest is the largest size that a stash suffices for.
type Largest struct {
	Size int               `json:"size"` // index of the size, -1 where it suffices for none
	Left gauge.Measurement `json:"left"` // what that size leaves over, of all yarns together
	Next string            `json:"next"` // why the next size up is too much; empty where there is none
}

// LargestSize returns the largest size, the last in order, for which the stash
// holds the whole total of every yarn, margin included. One size is what yarn.Buy
// (one quantity) or yarn.BuyEach gives; its quantities and the stash are matched by
// the name of the yarn.
//
// It returns a *gauge.FieldError if a holding is not valid or a size has no
// quantity.
func LargestSize(stash []Holding, sizes ...[]yarn.Quantity) (Largest, error) {
	have := map[string]gauge.Measurement{}
	for i, h := range stash {
		m, err := h.Length()
		if err != nil {
			return Largest{}, gauge.InField("Stash["+strconv.Itoa(i)+"]", err)
		}
		have[h.Yarn] = have[h.Yarn].Add(m)
	}
	answer := Largest{Size: -1}
	for i := len(sizes) - 1; i >= 0; i-- {
		if len(sizes[i]) == 0 {
			return Largest{}, &gauge.FieldError{Field: "Sizes[" + strconv.Itoa(i) + "]", Got: "no quantity", Want: "one for each yarn"}
		}
		var left gauge.Measurement
		short := ""
		for _, q := range sizes[i] {
			rest := have[q.Yarn].Sub(q.Total)
			left = left.Add(rest)
			if rest.Sign() < 0 && short == "" {
				short = fmt.Sprintf("size %d is %s short", i+1, say.In(rest.Times(gauge.Int(-1)), q.Label.Length.Unit))
				if q.Yarn != "" {
					short += " of " + text.Quote(q.Yarn)
				}
			}
		}
		if short == "" {
			answer.Size, answer.Left = i, left
			return answer, nil
		}
		answer.Next = short
	}
	return answer, nil
}
