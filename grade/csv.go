package grade

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
)

// maxTable is the most bytes that ReadChart reads.
const maxTable = 1 << 18

// columns are the columns that ReadChart knows; the first five must be there.
var columns = [...]string{"size", "measure", "unit", "low", "high", "check", "source", "note"}

// ReadChart reads a chart from comma-separated values. The first line names the
// columns, in any order: size, measure, unit, low and high must be there;
// check (a basis), source and note may be; no two have one name, and others are
// passed over. An empty high is that of low. The
// sizes are those of the column size, in the order in which they first appear.
//
//	size,measure,unit,low,high
//	S,chest,in,32,34
//	S,upper_arm,in,10.25,
//
// It returns an error that names the line if the table is not of this form or
// longer than 256 KiB, and the error of Chart.Validate.
func ReadChart(name, source string, r io.Reader) (Chart, error) {
	limited := &io.LimitedReader{R: r, N: maxTable + 1}
	rows := csv.NewReader(limited)
	header, err := rows.Read()
	if errors.Is(err, io.EOF) {
		return Chart{}, fmt.Errorf("read chart %s: an empty table; want the columns size, measure, unit, low and high", text.Quote(name))
	}
	if err != nil {
		return Chart{}, fmt.Errorf("read chart %s: header: %w", text.Quote(name), err)
	}
	col := map[string]int{}
	for i, h := range header {
		h = strings.TrimPrefix(h, "\ufeff") // spreadsheets put a byte order mark in front
		h = strings.ToLower(strings.TrimSpace(h))
		if _, twice := col[h]; twice && slices.Contains(columns[:], h) {
			return Chart{}, fmt.Errorf("read chart %s: header: two columns %q", text.Quote(name), h)
		}
		col[h] = i
	}
	for _, need := range columns[:5] {
		if _, ok := col[need]; !ok {
			return Chart{}, fmt.Errorf("read chart %s: header: no column %q", text.Quote(name), need)
		}
	}
	c := Chart{Name: name, Source: source}
	for {
		row, err := rows.Read()
		if limited.N == 0 {
			return Chart{}, fmt.Errorf("read chart %s: more than %d bytes: %w", text.Quote(name), maxTable, gauge.ErrBounds)
		}
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return Chart{}, fmt.Errorf("read chart %s: %w", text.Quote(name), err)
		}
		cell, err := readCell(func(name string) string {
			if i, ok := col[name]; ok {
				return strings.TrimSpace(row[i])
			}
			return ""
		})
		if err != nil {
			line, _ := rows.FieldPos(0)
			return Chart{}, fmt.Errorf("read chart %s: line %d: %w", text.Quote(name), line, err)
		}
		if !slices.Contains(c.Sizes, cell.Size) {
			if len(c.Sizes) == MaxSizes {
				return Chart{}, fmt.Errorf("read chart %s: more than %d sizes: %w", text.Quote(name), MaxSizes, gauge.ErrBounds)
			}
			c.Sizes = append(c.Sizes, cell.Size)
		}
		c.Cells = append(c.Cells, cell)
	}
	if err := c.Validate(); err != nil {
		return Chart{}, fmt.Errorf("read chart %s: %w", text.Quote(name), err)
	}
	return c, nil
}

func readCell(field func(string) string) (Cell, error) {
	c := Cell{Size: field("size"), Body: Body{Source: field("source"), Note: field("note")}}
	var err error
	if c.Measure, err = ParseMeasure(field("measure")); err != nil {
		return Cell{}, err
	}
	if c.Basis, err = ParseBasis(field("check")); err != nil {
		return Cell{}, err
	}
	if c.Low, err = gauge.ParseLength(field("low") + " " + field("unit")); err != nil {
		return Cell{}, err
	}
	c.High = c.Low
	if high := field("high"); high != "" {
		c.High, err = gauge.ParseLength(high + " " + field("unit"))
	}
	return c, err
}
