package fit

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/text"
)

// Class is a fit class of the Craft Yarn Council's standard, in one edition.
type Class struct {
	Name    string `json:"name"`    // very-close, close, classic, loose, oversized: the same in both editions
	Printed string `json:"printed"` // the edition's own words: "Standard fit"
	Edition string `json:"edition"` // current or earlier
	Inches  Window `json:"inches"`
	Metric  Window `json:"metric"` // centimetres as printed
	// HasMetric is false where the edition's centimetres were not seen; then
	// Metric is the zero Window.
	HasMetric bool        `json:"has_metric"`
	Basis     grade.Basis `json:"basis"`
	Source    string      `json:"source"`
	Note      string      `json:"note"`
}

//go:embed fit-ease.csv
var table string

// Classes returns the fit classes of an edition, "current" or "earlier", from
// the closest to the widest. The editions differ for the two closest: what the
// earlier one calls close has 1 to 2 in of ease, in the current one it has none.
// Show grade.Credit with them.
//
// It returns an error if there is no such edition.
func Classes(edition string) ([]Class, error) {
	rows, err := csv.NewReader(strings.NewReader(table)).ReadAll()
	if err != nil {
		return nil, err
	}
	var out []Class
	for _, row := range rows[1:] {
		if row[1] != edition {
			continue
		}
		c := Class{Name: row[0], Edition: row[1], Printed: row[2], Source: row[8], Note: row[9], HasMetric: row[5] != ""}
		if c.Basis, err = grade.ParseBasis(row[7]); err != nil {
			return nil, err
		}
		if c.Inches, err = window(row[3], row[4], "in"); err != nil {
			return nil, err
		}
		if c.HasMetric {
			if c.Metric, err = window(row[5], row[6], "cm"); err != nil {
				return nil, err
			}
		}
		out = append(out, c)
	}
	if out == nil {
		return nil, fmt.Errorf("fit classes: no edition %s; there are current and earlier", text.Quote(edition))
	}
	return out, nil
}

func window(low, high, unit string) (w Window, err error) {
	if w.Least, err = grade.ParseEase(low + " " + unit); err != nil {
		return Window{}, err
	}
	if high == "" {
		w.Open = true
		return w, nil
	}
	w.Most, err = grade.ParseEase(high + " " + unit)
	return w, err
}

// ClassesOf returns those of the classes that an ease falls into, by their
// inches, or by their centimetres where metric: two where it lies on the line
// between them, none where the classes leave it out (1 in, in the current
// edition).
func ClassesOf(classes []Class, ease gauge.Measurement, metric bool) []Class {
	var out []Class
	for _, c := range classes {
		w := c.Inches
		if metric {
			w = c.Metric
		}
		if (!metric || c.HasMetric) && w.Holds(gauge.Measurement{}, ease) {
			out = append(out, c)
		}
	}
	return out
}
