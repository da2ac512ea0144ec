package colour

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/enum"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/internal/bound"
	"example.com/panelmath/yarn/internal/say"
)

// Style is how the second panel matches the first.
type Style uint8

// The two ways to match. Two panels that both begin at the centre back and are
// worked outward mirror one another on the body when they are Repeated.
const (
	Repeated Style = iota // the same colours in the same rows
	Mirrored              // the colours in the opposite order: the last row of the second is like the first row of the first
)

var styles = [...]string{"repeated", "mirrored"}

// String returns the name: "repeated".
func (s Style) String() string { return enum.Name("Style", s, styles[:]) }

// MarshalText returns String. It returns a *gauge.FieldError for a value that is
// none of the above.
func (s Style) MarshalText() ([]byte, error) {
	return enum.Marshal("Style", s, styles[:])
}

// UnmarshalText reads what String prints. It returns a *gauge.ParseError for
// anything else.
func (s *Style) UnmarshalText(b []byte) error {
	return enum.Unmarshal(s, "Style", b, styles[:])
}

// Skeins is the yarn that both panels come from: skeins of one length. The first
// begins at the beginning of the sequence. A new one begins at Fresh, which takes a
// look: unwind it until the first colour ends, and measure.
type Skeins struct {
	Sequence Sequence    `json:"sequence"`
	Each     yarn.Length `json:"each"`
	Fresh    yarn.Length `json:"fresh,omitzero"` // the place of the sequence where a new skein begins; unset for its beginning
}

// Validate returns a *gauge.FieldError if the sequence, the skein or Fresh is not
// valid, or a sequence that does not repeat is shorter than the skein or has a
// Fresh.
func (k Skeins) Validate() error {
	if err := k.Sequence.Validate(); err != nil {
		return gauge.InField("Skeins", err)
	}
	if err := k.Each.Validate(); err != nil {
		return gauge.InField("Skeins.Each", err)
	}
	if k.Each.Value.Sign() == 0 {
		return &gauge.FieldError{Field: "Skeins.Each", Got: k.Each.String(), Want: "more than 0"}
	}
	if !k.Fresh.IsZero() {
		if err := k.Fresh.Validate(); err != nil {
			return gauge.InField("Skeins.Fresh", err)
		}
		if !k.Sequence.Repeats {
			return &gauge.FieldError{Field: "Skeins.Fresh", Got: k.Fresh.String(), Want: "none: a yarn that runs once begins at its beginning"}
		}
	}
	if !k.Sequence.Repeats && k.Sequence.Period().Cmp(k.Each.Measurement()) < 0 {
		return &gauge.FieldError{Field: "Skeins.Each", Got: k.Each.String(), Want: "no more than the runs together"}
	}
	return nil
}

// Start is where to start the second panel.
type Start struct {
	Style    Style             `json:"style"`
	NewSkein bool              `json:"new_skein"` // start a new skein; the rest of the first is free for seams
	Backward bool              `json:"backward"`  // wind the yarn off from its other end
	At       gauge.Measurement `json:"at"`        // the place on the skein, from its beginning
	Cut      gauge.Measurement `json:"cut"`       // cut away to come there
	Left     gauge.Measurement `json:"left"`      // of that skein after the second panel; before it as well where it is worked backward
}

// Explain says in one sentence where to start and what is cut away, in metres.
func (s Start) Explain() string {
	from := "go on with the same skein"
	if s.NewSkein {
		from = "take a new skein"
	}
	if s.Backward {
		from += ", wound off from its other end"
	}
	cut := "nothing is cut away"
	if s.Cut.Sign() > 0 {
		cut = say.In(s.Cut, gauge.Metre) + " are cut away"
	}
	return fmt.Sprintf("%s: %s; start %s from the beginning of the skein; %s, %s are left", s.Style, from, say.In(s.At, gauge.Metre), cut, say.In(s.Left, gauge.Metre))
}

// Second returns where to start the second of two panels that take the same yarn
// in the same rows, so that it matches the first, which began at from on the
// first skein and used so much of it. It goes on with the skein of the first
// panel where that holds the second one whole, and else starts a new skein at the
// right place; a skein is never changed within the panel. Of several ways on one
// skein it takes the one that cuts away least, and the yarn as it runs on a tie.
//
// It returns an error if the skeins are not valid, from is negative, or used is
// not more than 0 (*gauge.FieldError), or a panel does not fit on one skein
// (ErrShort).
func Second(k Skeins, from, used gauge.Measurement, style Style) (Start, error) {
	if err := k.Validate(); err != nil {
		return Start{}, err
	}
	if err := bound.Length("From", from); err != nil {
		return Start{}, err
	}
	if used.Sign() <= 0 {
		return Start{}, &gauge.FieldError{Field: "Used", Got: used.String(), Want: "more than 0"}
	}
	if style > Mirrored {
		return Start{}, &gauge.FieldError{Field: "Style", Got: style.String(), Want: "repeated or mirrored"}
	}
	whole, to := k.Each.Measurement(), from.Add(used)
	if to.Cmp(whole) > 0 {
		return Start{}, fmt.Errorf("match a second panel: %w: the first takes %s and the skein holds %v", ErrShort, say.In(to, gauge.Metre), k.Each)
	}
	if s, ok := k.on(false, from, to, style); ok {
		return s, nil
	}
	if s, ok := k.on(true, from, to, style); ok {
		return s, nil
	}
	return Start{}, fmt.Errorf("match a second panel: %w: no place on a new skein of %v leaves %s for it", ErrShort, k.Each, say.In(used, gauge.Metre))
}

// on returns the best start on the skein of the first panel, which took the yarn
// from from to to, or on a new one.
func (k Skeins) on(fresh bool, from, to gauge.Measurement, style Style) (best Start, ok bool) {
	whole, used := k.Each.Measurement(), to.Sub(from)
	begin, offset := to, gauge.Measurement{} // of the yarn to be had, on the skein; of the skein, on the sequence
	if fresh {
		begin, offset = gauge.Measurement{}, k.Fresh.Measurement()
	}
	offer := func(s Start) {
		s.Style, s.NewSkein = style, fresh
		if s.Cut.Sign() >= 0 && s.Left.Sign() >= 0 && (!ok || s.Cut.Cmp(best.Cut) < 0) {
			best, ok = s, true
		}
	}
	for _, phase := range k.forward(from, to, style) {
		at := k.next(begin, phase.Sub(offset))
		offer(Start{At: at, Cut: at.Sub(begin), Left: whole.Sub(at).Sub(used)})
	}
	if style == Mirrored {
		at := k.last(to.Sub(offset))
		offer(Start{Backward: true, At: at, Cut: whole.Sub(at), Left: at.Sub(used).Sub(begin)})
	}
	return best, ok
}

// forward returns the phases from which the yarn as it runs matches.
func (k Skeins) forward(from, to gauge.Measurement, style Style) []gauge.Measurement {
	if style == Repeated {
		return []gauge.Measurement{from}
	}
	var phases []gauge.Measurement
	for _, centre := range k.Sequence.mirrors() {
		// The colour x before to is the colour x after its mirror image.
		phases = append(phases, centre.Times(gauge.Int(2)).Sub(to))
	}
	return phases
}

// next returns the first place at or after begin of the phase. A yarn that runs
// once has that place just once: it may lie before begin.
func (k Skeins) next(begin, phase gauge.Measurement) gauge.Measurement {
	if !k.Sequence.Repeats {
		return phase
	}
	return begin.Add(k.Sequence.phase(phase.Sub(begin)))
}

// last returns the last place on the skein that looks like at.
func (k Skeins) last(at gauge.Measurement) gauge.Measurement {
	if !k.Sequence.Repeats {
		return at
	}
	whole := k.Each.Measurement()
	return whole.Sub(k.Sequence.phase(whole.Sub(at)))
}
