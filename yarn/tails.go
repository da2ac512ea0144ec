package yarn

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn/internal/say"
)

// Tails returns the line for n ends of yarn of the given length each, to weave
// in where a skein begins or ends. It returns a *gauge.FieldError if n is not 0
// to 100 000 or the length is negative or not valid.
func Tails(name string, n int, each gauge.Length) (Line, error) {
	if n < 0 || n > gauge.MaxCount {
		return Line{}, &gauge.FieldError{Field: "Tails", Got: strconv.Itoa(n), Want: "0 to 100000", Err: gauge.ErrBounds}
	}
	if err := Length(each).Validate(); err != nil {
		return Line{}, gauge.InField("Tails.Length", err)
	}
	total := each.Measurement().Times(gauge.Int(n))
	return Line{Name: name, Part: Ends, Length: total,
		Why: fmt.Sprintf("%d ends of %v are %s", n, each, say.In(total, each.Unit))}.checked()
}
