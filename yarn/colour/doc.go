// Package colour follows yarn that changes colour along its length: where each
// colour ends on a panel, and how a second panel is made to match the first.
//
// # Model
//
// A Sequence is the order of colours along the yarn: runs of one colour, or runs
// that change evenly from one colour to another (a yarn that changes all the time
// is made of those). It repeats, or it runs once from one end of the skein to the
// other. Places on the yarn are measured from the beginning of the sequence, which
// is the beginning of the first skein; a new skein may begin elsewhere, and says so
// in Skeins.Fresh.
//
// A panel is its rows, each with its stitches and the yarn they take, turn
// included; within a row every stitch takes as much as the next. So rows may
// differ in width and in stitch. Where the yarn of a row comes from a swatch or
// from yarn/usage it has their spread, and the place of a colour end has it too,
// the more the further up.
//
// Ends gives the row and the stitch where each colour ends. Second gives the place
// to start a second panel of the same rows, repeated or mirrored, what is cut
// away, and whether a new skein is needed. LineUp makes the colours of a panel of
// another width end at the same rows, and gives what each takes. Split shares one
// shade out between parts that are worked side by side.
//
// # Matching
//
// Repeated starts at the same place of the sequence, the next one that the skein
// still has whole. Mirrored wants the colours in the opposite order: some sequences
// read the same both ways about a place (there and back again), and then the yarn
// is used as it runs; else it is wound off from its other end. If the rest of the
// skein does not hold the panel, a new skein is started at the right place: the
// matching stays, what lies before it is cut away, and the rest of the first skein
// is free for seams.
//
// # Limits and errors
//
// At most 256 runs, 100 000 rows of 100 000 stitches, 100 000 ends and 100 km.
// What is not valid is a *gauge.FieldError; yarn that runs out wraps ErrShort.
package colour
