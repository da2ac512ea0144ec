// Package stash answers what the yarn at hand suffices for: the largest size of a
// garment, and which piece to make from which dye lot.
//
// A Holding is whole skeins of one label and a rest that was weighed. LargestSize
// wants every yarn of a size in full, margin included, and says what the next size
// up is short of. Lots gives each piece whole to one dye lot, with the fewest
// lots, trying every way (at most 12 pieces and 8 lots); each piece counts with
// its length and the More of its spread.
//
// What is not valid is a *gauge.FieldError. That no size fits is an answer (Size
// is -1); that the lots do not hold the pieces whole wraps ErrLots.
package stash
