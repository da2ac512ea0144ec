// Package usage works out yarn by stitches: how much one stitch of each kind
// takes, measured by unravelling or fitted from several swatches and finished
// panels, and what a panel of so many stitches of each kind takes.
//
// # Model
//
// Count is so many stitches of one kind. A kind is a name: "hdc", "ch", but also
// "cast-on" where that takes more than a stitch. A Rate is the yarn of one stitch,
// exact; Rates are the rates of several kinds and by what share they may be off.
// Rates.Line turns the counts of a panel into a yarn.Line whose spread is that
// share.
//
// Measured takes the rate from stitches that were unravelled. Fit takes the rates
// from samples in which several kinds stand side by side: each sample has its
// counts and the yarn it took, unravelled or weighed. Where there are more samples
// than kinds they will not agree to the millimetre, and the fit is that of least
// squares: the sum of the squares of the differences in length is least. It is
// worked out in exact ratios, so that samples which do agree give back the very
// rates they came from, with residuals of nothing.
//
// The residual of every sample is returned. The largest, as a share of its sample,
// becomes the Off of the rates. With as many samples as kinds the fit goes through
// all of them and says nothing of how good it is: Spare is 0, and Explain says so.
//
// # Limits and errors
//
// At most 16 kinds, 256 samples and 10 000 000 stitches to a count. Fields that do
// not hold are *gauge.FieldError. Samples that can't tell some stitches apart are
// an *UndeterminedError with their names (two swatches with as many chains to each
// double crochet do not determine either); a fit that would give yarn back for a
// stitch is a *NegativeError.
//
// # JSON
//
// A sample is {"name": "first panel", "counts": [{"stitch": "hdc", "n": 3600}],
// "mass": "112 g"}, or "yarn": "22 m" for "mass".
package usage
