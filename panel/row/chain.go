package row

import (
	"strconv"

	"example.com/panelmath/gauge"
)

// FirstChain returns the foundation chain of a plain row of s under the usual
// turning chain: the first stitch goes into the chain after as many as the
// stitch is high. counts says whether the skipped chains stand for a stitch.
// The chain of a slip stitch is that of sc.
func (s Stitch) FirstChain(counts bool) FoundationChain {
	f := FoundationChain{Hook: max(s.Height(), 1) + 1}
	if counts {
		f.Counts = []Part{{Of: s}}
	}
	return f
}

// skipped returns the chains that make no stitch: those skipped, less one if
// they count as a stitch.
func (f FoundationChain) skipped() int {
	n := f.Hook - 1
	if f.Counts != nil {
		n--
	}
	return n
}

// Chains returns how many chains to begin for a number of stitches, one in each
// chain that is not skipped: stitches and skipped chains, less one where these
// count as a stitch.
//
// It returns a *gauge.FieldError if Hook is less than 2 or the number is not 1
// to gauge.MaxCount.
func (f FoundationChain) Chains(stitches int) (int, error) {
	if err := f.check("stitches", stitches, 1+boolInt(f.Counts != nil)); err != nil {
		return 0, err
	}
	return stitches + f.skipped(), nil
}

// Stitches returns how many stitches come from a number of chains, the way
// back of Chains.
//
// It returns a *gauge.FieldError if Hook is less than 2, or the chains are too
// few for one stitch or more than gauge.MaxCount.
func (f FoundationChain) Stitches(chains int) (int, error) {
	if err := f.check("chains", chains, f.Hook); err != nil {
		return 0, err
	}
	return chains - f.skipped(), nil
}

func (f FoundationChain) check(field string, n, least int) error {
	if f.Hook < 2 || f.Hook > 100 {
		return &gauge.FieldError{Field: "FoundationChain.Hook", Got: strconv.Itoa(f.Hook), Want: "2 to 100"}
	}
	if n < least || n > gauge.MaxCount {
		return &gauge.FieldError{Field: field, Got: strconv.Itoa(n), Want: strconv.Itoa(least) + " to 100000", Err: gauge.ErrBounds}
	}
	return nil
}
