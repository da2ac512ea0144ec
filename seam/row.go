package seam

import (
	"fmt"
	"strconv"

	"example.com/panelmath/gauge"
)

// Visible returns how wide so many stitches or rows are in the garment when
// hidden of them do not count: those of a steek that is cut away, of an edge
// that is taken into a seam, or under an overlap. 253 stitches with a steek of
// 13 at 24 over 10 cm are 100 cm and not 105.4.
//
// It returns a *gauge.FieldError if count is not from 1 to gauge.MaxCount,
// hidden not from 0 to less than count, or the gauge is not valid.
func Visible(count, hidden int, g gauge.Over) (gauge.Measurement, error) {
	if count < 1 || count > gauge.MaxCount {
		return gauge.Measurement{}, &gauge.FieldError{Field: "count", Got: strconv.Itoa(count), Want: "1 to 100000", Err: gauge.ErrBounds}
	}
	if hidden < 0 || hidden >= count {
		return gauge.Measurement{}, &gauge.FieldError{Field: "hidden", Got: strconv.Itoa(hidden), Want: "0 to " + strconv.Itoa(count-1)}
	}
	return g.Measure(gauge.Int(count - hidden))
}

// CentreNeck splits a row for a neck in its middle and returns the stitches of
// each shoulder: 92 with a neck of 24 leave 34 on either side.
//
// It returns a *gauge.FieldError if the row is not from 3 to gauge.MaxCount, the
// neck leaves no shoulder, or the two are not both odd or both even, so that
// the sides cannot be equal; the error names the necks on either side that fit.
func CentreNeck(row, neck int) (shoulder int, err error) {
	if row < 3 || row > gauge.MaxCount {
		return 0, &gauge.FieldError{Field: "row", Got: strconv.Itoa(row), Want: "3 to 100000", Err: gauge.ErrBounds}
	}
	if neck < 1 || neck > row-2 {
		return 0, &gauge.FieldError{Field: "neck", Got: strconv.Itoa(neck), Want: fmt.Sprintf("1 to %d of %d, which leaves a stitch for each shoulder", row-2, row)}
	}
	if (row-neck)%2 != 0 {
		return 0, &gauge.FieldError{Field: "neck", Got: strconv.Itoa(neck), Want: fmt.Sprintf("%d or %d, so that both shoulders of the %d are equal", neck-1, neck+1, row)}
	}
	return (row - neck) / 2, nil
}

// CheckParts returns what is wrong with a row that is worked in parts: that
// they do not add up to it, or, where it is to be the same from either end,
// that two parts which mirror each other differ. A sum alone does not find a
// bind-off that starts a stitch early: 33 + 24 + 35 is 92 as well.
//
// It returns a *gauge.FieldError that names the part.
func CheckParts(row int, parts []int, mirrored bool) error {
	sum := 0
	for i, n := range parts {
		if n < 0 || n > gauge.MaxCount {
			return &gauge.FieldError{Field: fmt.Sprintf("parts[%d]", i), Got: strconv.Itoa(n), Want: "0 to 100000", Err: gauge.ErrBounds}
		}
		if sum += n; sum > gauge.MaxCount {
			break
		}
	}
	if sum != row {
		return &gauge.FieldError{Field: "parts", Got: strconv.Itoa(sum) + " in all", Want: strconv.Itoa(row)}
	}
	if mirrored {
		for i := range len(parts) / 2 {
			if j := len(parts) - 1 - i; parts[i] != parts[j] {
				return &gauge.FieldError{Field: fmt.Sprintf("parts[%d]", j), Got: strconv.Itoa(parts[j]), Want: fmt.Sprintf("%d, as parts[%d]", parts[i], i)}
			}
		}
	}
	return nil
}
