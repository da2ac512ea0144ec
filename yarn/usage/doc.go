// Package usage works out yarn by what earlier work used: by stitches, by rows, or
// by a finished project.
//
// # By stitches
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
// # By rows, and by a finished project
//
// A RowSample is one row that was unravelled: it takes so many times its width,
// and so do other rows of the same stitch, a foundation chain, a round of edging.
//
// A Project is a finished piece in the same fabric and what it used: its own mass,
// or the skeins that went into it less the weighed rest. It is scaled by area or by
// a number. Skeins whose rest was not weighed are known to the last one only: the
// line takes them whole, and Less is one skein.
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
// "mass": "112 g"}, or "yarn": "22 m" for "mass"; a row {"width": "10 in", "yarn":
// "145 in"}; a project {"label": {"length": "230 yd", "mass": "100 g"}, "area":
// "1400 sq in", "skeins": "6", "left": "20 g"}, or "mass": "560 g" for its skeins.
package usage
