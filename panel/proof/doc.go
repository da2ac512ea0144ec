// Package proof reads printed instructions and finds what does not agree in
// them: a technical editor's eye for rows.
//
// # Reading
//
// Parse takes instructions as they are printed, a line for each row or stretch
// of equal rows, with its label, its counts at the end, and the lines that tell
// to work rows again:
//
//	Ch 66 (66, 70, 74)
//	Row 1 (RS): hdc in 3rd ch from hook (skipped chs do not count), hdc in each ch across. 64 (64, 68, 72) sts.
//	Rows 2–5: hdc in each st across. (64 (64, 68, 72) sts)
//	Rep Rows 2–5 3 (4, 5, 6) more times.
//
// What panel.Plan.Write prints is read back as the same plan by Text.Plan.
//
// # Finding
//
// Check works every row in every size, as a maker would, and holds what is
// printed against it:
//
//	uses    a row uses 11 of 10, leaves 1 over, or works into spaces that are not there
//	makes   a row makes 34 and 54 is printed; two halves of a split row that differ
//	early   the count printed is that of the next row; late: of the row before
//	sizes   a list stands one size off; one size breaks the even steps of the others
//	number  a row, or the last one, has another number than printed; once, where the numbers begin to be off
//	side    a row is worked on the other side than printed
//	again   rows are to be worked again that are not there
//
// A finding gives line, label, size and both numbers, and invents no repair: only
// the designer can choose it. A correct text gives none. A Remark is no fault: a
// size that steps unevenly while every row works.
//
// A count of sts may leave out the chains of chain spaces or count each as one,
// and so with slip stitches worked to get across the first stitches of a row; the
// next row may go into these or not, whichever its own count says. A foundation
// without a number may stand before row 1.
// A row that calls every place by its kind (row.ParseNamed) and does not fit
// passes over what lies between, where it fits so: `dc in next dc` over a mesh.
// A row that goes on `to last 5 sts` and ends there leaves them, where its count
// says so. 0 as a number of times skips rows in a size. After a row that does not fit, the
// work goes on from the next count that is printed.
//
// # Limits
//
//	text     1 000 000 bytes, 10 000 a line
//	work     5 million places over all rows and sizes
//	rows     100 000 in all lines together
//
// # Errors
//
// Parse returns a *row.SyntaxError with line and column, or a *gauge.FieldError
// where lists of sizes differ in length. Check and Text.Plan return the error of
// Text.Validate, which a text from a file may have.
package proof
