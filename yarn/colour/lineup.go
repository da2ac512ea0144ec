package colour

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn/internal/say"
)

// Band is one colour's stretch of a panel that is made to line up with another.
type Band struct {
	Colour string            `json:"colour"`
	From   gauge.Ratio       `json:"from"`   // rows from the beginning of the panel
	To     gauge.Ratio       `json:"to"`     // rows from the beginning of the panel
	Given  gauge.Measurement `json:"given"`  // what the first panel took of the colour
	Needed gauge.Measurement `json:"needed"` // what the second takes
	Cut    gauge.Measurement `json:"cut"`    // Given less Needed where that is more than nothing
	Short  gauge.Measurement `json:"short"`  // Needed less Given where that is more than nothing
}

// Explain says the rows and the yarn in one sentence, in metres.
func (b Band) Explain() string {
	s := fmt.Sprintf("%s from row %s to row %s takes %s of %s", b.Colour, say.Number(b.From), say.Number(b.To), say.In(b.Needed, gauge.Metre), say.In(b.Given, gauge.Metre))
	switch {
	case b.Short.Sign() > 0:
		return s + ": " + say.In(b.Short, gauge.Metre) + " short"
	case b.Cut.Sign() > 0:
		return s + ": cut away " + say.In(b.Cut, gauge.Metre)
	}
	return s + ": nothing is cut away"
}

// LineUp returns what a second panel of as many rows but another width takes of
// each colour, when its colours are made to change at the same rows as the
// first's: cut the yarn where a band is done, go on with the next colour. The
// same length of colour makes a band twice as tall on a panel half as wide.
//
// It returns the errors of Ends, and a *gauge.FieldError if the panels have
// different numbers of rows.
func LineUp(s Sequence, from gauge.Measurement, first, second []Row) ([]Band, error) {
	c, err := Ends(s, from, first)
	if err != nil {
		return nil, err
	}
	if len(first) != len(second) {
		return nil, &gauge.FieldError{Field: "Second", Got: strconv.Itoa(len(second)) + " rows", Want: "as many rows as the first panel, " + strconv.Itoa(len(first))}
	}
	if _, err := checkRows("Second", second); err != nil {
		return nil, err
	}
	run, _ := s.at(s.phase(from))
	b := Band{Colour: s.Runs[run].String()}
	var done gauge.Measurement // of the first panel's yarn
	var bands []Band
	row, sum := 0, gauge.Measurement{} // rows of second that lie before the change, and their yarn
	var spent gauge.Measurement        // of second's yarn, in bands before
	end := func(at gauge.Measurement, rows gauge.Ratio, next string) {
		whole, _ := rows.Floor()
		for ; row < whole; row++ {
			sum = sum.Add(second[row].Yarn)
		}
		reached := sum
		if whole < len(second) {
			reached = reached.Add(second[whole].Yarn.Times(rows.Sub(gauge.Int(whole))))
		}
		b.To, b.Given, b.Needed = rows, at.Sub(done), reached.Sub(spent)
		if over := b.Given.Sub(b.Needed); over.Sign() >= 0 {
			b.Cut = over
		} else {
			b.Short = b.Needed.Sub(b.Given)
		}
		bands = append(bands, b)
		b, done, spent = Band{Colour: next, From: rows}, at, reached
	}
	for _, e := range c.Ends {
		part, _ := gauge.Int(e.Stitches).Add(e.Part).Quo(gauge.Int(first[e.Row-1].Stitches))
		end(e.At, gauge.Int(e.Row-1).Add(part), e.Next)
	}
	if done.Cmp(c.Used) < 0 {
		end(c.Used, gauge.Int(len(first)), "")
	}
	return bands, nil
}

// Split shares a length of yarn out in proportion to stitches, so that the shade
// changes at the same row in every part of a garment that is worked side by
// side: 140 stitches of body and 60 of arms take 70 and 30 percent. The parts sum
// up to the whole.
//
// It returns a *gauge.FieldError if there is no part, a part has a negative
// number of stitches, or there are none together.
func Split(m gauge.Measurement, stitches ...int) ([]gauge.Measurement, error) {
	total := 0
	for i, n := range stitches {
		if n < 0 || n > gauge.MaxCount {
			return nil, &gauge.FieldError{Field: "Stitches[" + strconv.Itoa(i) + "]", Got: strconv.Itoa(n), Want: "0 to 100000", Err: gauge.ErrBounds}
		}
		total += n
	}
	parts := make([]gauge.Measurement, len(stitches))
	for i, n := range stitches {
		share, err := gauge.Share(n, total)
		if err != nil {
			return nil, &gauge.FieldError{Field: "Stitches", Got: "0 together", Want: "more than 0"}
		}
		parts[i] = m.Times(share)
	}
	if len(parts) == 0 {
		return nil, &gauge.FieldError{Field: "Stitches", Got: "no part", Want: "at least one"}
	}
	return parts, nil
}
