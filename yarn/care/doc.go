// Package care holds what a pattern should say about finishing and safety, as
// data with its sources: how to block a fibre, and the cautions that belong to the
// work itself.
//
// None of it is legal or medical advice: local rules and licensed practice go
// first, and the care symbols of the label before any table. Always block a swatch
// first.
//
// Blocking returns, for a fibre, what the sources say of wet, spray and steam
// blocking. Where they say opposite things the verdict is Disputed and the note
// says which: steam on acrylic is the case that matters, since too much heat is
// permanent. ForLabel reads the fibres that a label names and takes, of a blend,
// the least welcome verdict; a fibre that is not named counts as one that nothing
// is known of.
//
// Cautions returns texts that are ready to print beside the step they belong to:
// steam, and resting the hands. Those that depend on who wears the garment (cords,
// open lace, flame) are in grade/caution.
//
// A text of more than 10 000 characters is a *gauge.ParseError; nothing else here
// fails.
package care
