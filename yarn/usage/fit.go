package usage

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/internal/say"
)

// Sample is a swatch or finished panel whose stitches were counted, and what it
// took: its yarn if it was unravelled, or its mass. Just one of the two is set.
type Sample struct {
	Name   string      `json:"name"`
	Counts []Count     `json:"counts"`
	Yarn   yarn.Length `json:"yarn,omitzero"`
	Mass   yarn.Mass   `json:"mass,omitzero"`
}

// length returns what the sample took, by the label where it was weighed.
func (s Sample) length(label yarn.Label) (gauge.Measurement, error) {
	if err := validate(s.Counts); err != nil {
		return gauge.Measurement{}, err
	}
	switch weighed, unravelled := !s.Mass.IsZero(), !s.Yarn.IsZero(); {
	case weighed == unravelled:
		return gauge.Measurement{}, &gauge.FieldError{Field: "Yarn", Got: "both or neither of a length and a mass", Want: "one of the two"}
	case unravelled:
		return s.Yarn.Measurement(), s.Yarn.Validate()
	}
	if err := label.Validate(); err != nil {
		return gauge.Measurement{}, err
	}
	return label.LengthOf(s.Mass.Exact()), s.Mass.Validate()
}

// Fitted is the yarn per stitch that fits several samples best.
type Fitted struct {
	Rates     Rates      `json:"rates"` // Off is the largest share by which a sample differs
	Residuals []Residual `json:"residuals"`
	Spare     int        `json:"spare"` // samples beyond the kinds of stitch; 0 leaves nothing to check the fit by
}

// Residual is how far the rates are from one sample.
type Residual struct {
	Sample string            `json:"sample"`
	Took   gauge.Measurement `json:"took"` // as measured
	Off    gauge.Measurement `json:"off"`  // by the rates, less Took
}

// UndeterminedError says that the samples can't tell the stitches apart: any
// yarn could be moved between them.
type UndeterminedError struct {
	Stitches []string // in the order in which the samples name them
	Samples  int
}

// Error names the stitches.
func (e *UndeterminedError) Error() string {
	return fmt.Sprintf("fit yarn per stitch to %s: that does not determine %s; add a swatch with another share of it", text.Count(e.Samples, "sample", "samples"), strings.Join(e.Stitches, ", "))
}

// NegativeError says that the best fit would give yarn back for a stitch: a count
// or a measurement is wrong.
type NegativeError struct {
	Stitch string
	Each   gauge.Measurement
}

// Error names the stitch.
func (e *NegativeError) Error() string {
	return fmt.Sprintf("fit yarn per stitch: %s would take %s: a count or a measurement is wrong", e.Stitch, say.In(e.Each, gauge.Millimetre))
}

// Fit returns the yarn per stitch of each kind that comes nearest to all samples:
// the sum of the squares of the differences in length is least (the method of
// least squares, in exact arithmetic). Where the samples agree with one another
// the residuals are nothing and the rates are exact. The label turns the mass of
// weighed samples into length; it is not looked at when all were unravelled.
//
// It returns an error if:
//   - there are more than 256 samples or 16 kinds of stitch, or a sample or a
//     needed label is not valid (*gauge.FieldError);
//   - the samples do not determine the yarn of a stitch (*UndeterminedError);
//   - the best fit is negative for a stitch (*NegativeError).
func Fit(label yarn.Label, samples ...Sample) (Fitted, error) {
	if len(samples) == 0 || len(samples) > MaxSamples {
		return Fitted{}, &gauge.FieldError{Field: "Samples", Got: strconv.Itoa(len(samples)), Want: "1 to 256", Err: gauge.ErrBounds}
	}
	var kinds []string
	took := make([]gauge.Measurement, len(samples))
	for i, s := range samples {
		var err error
		if took[i], err = s.length(label); err != nil {
			return Fitted{}, gauge.InField("Samples["+strconv.Itoa(i)+"]", err)
		}
		if took[i].Sign() == 0 {
			return Fitted{}, &gauge.FieldError{Field: "Samples[" + strconv.Itoa(i) + "].Yarn", Got: "nothing", Want: "more than 0"}
		}
		for _, c := range s.Counts {
			if !slices.Contains(kinds, c.Stitch) {
				kinds = append(kinds, c.Stitch)
			}
			if len(kinds) > MaxKinds {
				return Fitted{}, &gauge.FieldError{Field: "Samples", Got: "more than 16 kinds of stitch", Want: "at most 16", Err: gauge.ErrBounds}
			}
		}
	}
	rows := make([][]gauge.Ratio, len(samples))
	for i, s := range samples {
		rows[i] = make([]gauge.Ratio, len(kinds)+1)
		for _, c := range s.Counts {
			k := slices.Index(kinds, c.Stitch)
			rows[i][k] = rows[i][k].Add(gauge.Int(c.N))
		}
		rows[i][len(kinds)] = took[i].In(gauge.Millimetre)
	}
	m := normal(rows, len(kinds))
	if free := reduce(m); len(free) > 0 {
		e := &UndeterminedError{Samples: len(samples)}
		for k, undetermined := range undetermined(m, free) {
			if undetermined {
				e.Stitches = append(e.Stitches, text.Quote(kinds[k]))
			}
		}
		return Fitted{}, e
	}
	f := Fitted{Spare: len(samples) - len(kinds)}
	for k, kind := range kinds {
		each := gauge.MeasurementOf(m[k][len(kinds)], gauge.Millimetre)
		if each.Sign() < 0 {
			return Fitted{}, &NegativeError{Stitch: text.Quote(kind), Each: each}
		}
		f.Rates.Rates = append(f.Rates.Rates, Rate{kind, each})
	}
	for i, s := range samples {
		var by gauge.Measurement
		for k, rate := range f.Rates.Rates {
			by = by.Add(rate.Each.Times(rows[i][k]))
		}
		off := by.Sub(took[i])
		f.Residuals = append(f.Residuals, Residual{s.Name, took[i], off})
		if off.Sign() < 0 {
			off = off.Times(gauge.Int(-1))
		}
		if share, _ := off.Per(took[i]); share.Cmp(f.Rates.Off) > 0 {
			f.Rates.Off = share
		}
	}
	return f, nil
}

// normal returns the normal equations of the samples: AᵀA with Aᵀb beside it,
// for n unknowns.
func normal(rows [][]gauge.Ratio, n int) [][]gauge.Ratio {
	m := make([][]gauge.Ratio, n)
	for i := range n {
		m[i] = make([]gauge.Ratio, n+1)
		for j := range n + 1 {
			for _, row := range rows {
				m[i][j] = m[i][j].Add(row[i].Mul(row[j]))
			}
		}
	}
	return m
}

// reduce brings m, of n rows and n+1 columns, to reduced row echelon form and
// returns the columns without a pivot. With none, the last column is the
// solution.
func reduce(m [][]gauge.Ratio) (free []int) {
	n, top := len(m), 0
	for col := range n {
		pivot := top
		for pivot < n && m[pivot][col].Sign() == 0 {
			pivot++
		}
		if pivot == n {
			free = append(free, col)
			continue
		}
		m[top], m[pivot] = m[pivot], m[top]
		for j := n; j >= col; j-- {
			m[top][j], _ = m[top][j].Quo(m[top][col])
		}
		for i := range n {
			if factor := m[i][col]; i != top && factor.Sign() != 0 {
				for j := col; j <= n; j++ {
					m[i][j] = m[i][j].Sub(factor.Mul(m[top][j]))
				}
			}
		}
		top++
	}
	return free
}

// undetermined reports for each column of the reduced m whether its unknown
// hangs together with a free one.
func undetermined(m [][]gauge.Ratio, free []int) []bool {
	u := make([]bool, len(m))
	for _, f := range free {
		u[f] = true
	}
	top := 0
	for col := range m {
		if slices.Contains(free, col) {
			continue
		}
		for _, f := range free {
			u[col] = u[col] || m[top][f].Sign() != 0
		}
		top++
	}
	return u
}

// Explain says what each stitch takes, how far each sample is from it, and
// whether anything is left to check the fit by.
func (f Fitted) Explain() []string {
	var s []string
	for _, r := range f.Rates.Rates {
		s = append(s, fmt.Sprintf("%s takes %s a stitch", r.Stitch, say.In(r.Each, gauge.Millimetre)))
	}
	for _, r := range f.Residuals {
		way, off := "more", r.Off
		if off.Sign() < 0 {
			way, off = "less", off.Times(gauge.Int(-1))
		}
		line := fmt.Sprintf("%s took %s; the rates give just that", r.Sample, say.In(r.Took, gauge.Metre))
		if off.Sign() != 0 {
			share, _ := off.Per(r.Took)
			line = fmt.Sprintf("%s took %s; the rates give %s%% %s", r.Sample, say.In(r.Took, gauge.Metre), say.Number(share.Mul(gauge.Int(100))), way)
		}
		s = append(s, line)
	}
	if f.Spare == 0 {
		s = append(s, "as many samples as kinds of stitch: nothing is left to check the fit by")
	}
	return s
}
