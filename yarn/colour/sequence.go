package colour

import (
	"errors"
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/internal/bound"
)

// Bounds of this package.
const (
	MaxRuns = 256     // runs in a sequence
	MaxRows = 100_000 // rows in a panel
	MaxEnds = 100_000 // colour ends on a panel
)

// ErrShort is wrapped when the yarn runs out before the panel is done.
var ErrShort = errors.New("the yarn runs out")

// Run is a stretch of yarn in one colour, or one that changes evenly from Colour
// to To.
type Run struct {
	Colour string      `json:"colour"`
	To     string      `json:"to,omitempty"` // empty where the colour stays the same
	Length yarn.Length `json:"length"`
}

// solid reports a run that does not change.
func (r Run) solid() bool { return r.To == "" || r.To == r.Colour }

// end returns the colour at the end of the run.
func (r Run) end() string {
	if r.solid() {
		return r.Colour
	}
	return r.To
}

// String returns "blue" or "blue to green".
func (r Run) String() string {
	if r.solid() {
		return r.Colour
	}
	return r.Colour + " to " + r.To
}

// Sequence is the order of colours along a yarn from the beginning of a skein. A
// yarn that changes all the time is a sequence of runs with To. The zero value is
// not valid.
type Sequence struct {
	Runs    []Run `json:"runs"`
	Repeats bool  `json:"repeats"` // begins again after the last run; else the yarn ends there
}

// Validate returns a *gauge.FieldError if there is no run or there are more than
// 256, a length is not valid or not more than 0, a run has no colour, or two
// neighbours are of one unchanging colour (make them one run).
func (s Sequence) Validate() error {
	if len(s.Runs) == 0 || len(s.Runs) > MaxRuns {
		return &gauge.FieldError{Field: "Sequence.Runs", Got: strconv.Itoa(len(s.Runs)), Want: "1 to 256", Err: gauge.ErrBounds}
	}
	for i, r := range s.Runs {
		at := "Sequence.Runs[" + strconv.Itoa(i) + "]"
		if r.Colour == "" {
			return &gauge.FieldError{Field: at + ".Colour", Got: "none", Want: "the name of a colour"}
		}
		if err := r.Length.Validate(); err != nil {
			return gauge.InField(at+".Length", err)
		}
		if r.Length.Value.Sign() == 0 {
			return &gauge.FieldError{Field: at + ".Length", Got: r.Length.String(), Want: "more than 0"}
		}
		next := s.Runs[(i+1)%len(s.Runs)]
		beside := i+1 < len(s.Runs) || s.Repeats && len(s.Runs) > 1
		if beside && r.solid() && next.solid() && r.Colour == next.Colour {
			return &gauge.FieldError{Field: at, Got: "two runs of " + text.Quote(r.Colour) + " side by side", Want: "one run"}
		}
	}
	return nil
}

// Period returns the length of all runs together, after which a repeating
// sequence begins again.
func (s Sequence) Period() gauge.Measurement {
	var m gauge.Measurement
	for _, r := range s.Runs {
		m = m.Add(r.Length.Measurement())
	}
	return m
}

// phase returns where in the period the position lies.
func (s Sequence) phase(at gauge.Measurement) gauge.Measurement {
	n, _ := at.Per(s.Period())
	whole, _ := n.Floor()
	return at.Sub(s.Period().Times(gauge.Int(whole)))
}

// at returns the run that begins at or lies over the phase, and what is left of
// it from there.
func (s Sequence) at(phase gauge.Measurement) (run int, left gauge.Measurement) {
	for i, r := range s.Runs {
		l := r.Length.Measurement()
		if phase.Cmp(l) < 0 {
			return i, l.Sub(phase)
		}
		phase = phase.Sub(l)
	}
	return len(s.Runs) - 1, gauge.Measurement{}
}

// mirrors returns the phases about which a repeating sequence reads the same
// both ways, if any: the middle of a run, or the place where two runs meet.
func (s Sequence) mirrors() []gauge.Measurement {
	if !s.Repeats {
		return nil
	}
	n := len(s.Runs)
	half, _ := gauge.Share(1, 2)
	var found []gauge.Measurement
	var begin gauge.Measurement
	for i, r := range s.Runs {
		// The middle of run i pairs i+k with i-k; its beginning pairs i+k with i-1-k.
		middle, joint := true, true
		for k := 0; k < n && (middle || joint); k++ {
			middle = middle && mirrored(s.Runs[(i+k)%n], s.Runs[(i-k+n)%n])
			joint = joint && mirrored(s.Runs[(i+k)%n], s.Runs[(i-1-k+2*n)%n])
		}
		if joint {
			found = append(found, begin)
		}
		if middle {
			found = append(found, begin.Add(r.Length.Measurement().Times(half)))
		}
		begin = begin.Add(r.Length.Measurement())
	}
	return found
}

// mirrored reports whether a read backward is b.
func mirrored(a, b Run) bool {
	return a.Colour == b.end() && a.end() == b.Colour && a.Length.Measurement().Equal(b.Length.Measurement())
}

// Row is one row of a panel: its stitches, and the yarn that they take, with
// its turn.
type Row struct {
	Stitches int               `json:"stitches"`
	Yarn     gauge.Measurement `json:"yarn"`
}

// Equal returns n equal rows.
func Equal(n int, row Row) []Row {
	rows := make([]Row, max(0, min(n, MaxRows)))
	for i := range rows {
		rows[i] = row
	}
	return rows
}

// checkRows returns the yarn that the rows take.
func checkRows(field string, rows []Row) (gauge.Measurement, error) {
	var total gauge.Measurement
	if len(rows) == 0 || len(rows) > MaxRows {
		return total, &gauge.FieldError{Field: field, Got: strconv.Itoa(len(rows)), Want: "1 to 100000", Err: gauge.ErrBounds}
	}
	for i, r := range rows {
		at := fmt.Sprintf("%s[%d]", field, i)
		if r.Stitches < 1 || r.Stitches > gauge.MaxCount {
			return total, &gauge.FieldError{Field: at + ".Stitches", Got: strconv.Itoa(r.Stitches), Want: "1 to 100000", Err: gauge.ErrBounds}
		}
		if r.Yarn.Sign() <= 0 {
			return total, &gauge.FieldError{Field: at + ".Yarn", Got: r.Yarn.String(), Want: "more than 0"}
		}
		total = total.Add(r.Yarn)
		if err := bound.Fine(at+".Yarn", total); err != nil {
			return total, err
		}
	}
	if total.In(gauge.Metre).Cmp(gauge.Int(yarn.MaxLength)) > 0 {
		return total, &gauge.FieldError{Field: field, Got: "more than 100 km of yarn", Want: "at most 100 km", Err: gauge.ErrBounds}
	}
	return total, nil
}
