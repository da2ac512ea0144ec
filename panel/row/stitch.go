package row

import (
	"fmt"
	"strings"

	"example.com/panelmath/gauge"
)

// Stitch is a kind of stitch, named here by its US term. The zero value is no
// stitch.
type Stitch uint8

// The stitches that a row may name, by their US terms.
const (
	NoStitch Stitch = iota
	Chain
	SlipStitch
	SingleCrochet
	HalfDoubleCrochet
	DoubleCrochet
	TrebleCrochet
	DoubleTreble
	TripleTreble
	ExtendedSingle
	FrontPostDouble
	BackPostDouble
	FoundationSingle
	FoundationHalfDouble
	FoundationDouble
)

// stitches holds, for each Stitch, its abbreviation and term in US and in UK
// terms, other forms that are read, the usual turning chain and whether it is a
// foundation stitch. Names: Craft Yarn Council, Standards & Guidelines for
// Crochet and Knitting (Source: Craft Yarn Council's www.YarnStandards.com),
// abbreviations; UK names of the foundation half double and double, of the
// extended and of the post stitches are from memory. Turning chains of sl st to
// dtr: two published lessons or more, of the triple treble: one; those of the
// extended and post stitches are common practice, no source.
var stitches = [...]struct {
	abbr, term [2]string // by Terms
	also       [2]string // further forms that are read, separated by commas
	height     int
	foundation bool
}{
	Chain:                {[2]string{"ch", "ch"}, [2]string{"chain", "chain"}, [2]string{"chs,chains", "chs,chains"}, 0, false},
	SlipStitch:           {[2]string{"sl st", "ss"}, [2]string{"slip stitch", "slip stitch"}, [2]string{"slst,ss", "slst,sl st"}, 0, false},
	SingleCrochet:        {[2]string{"sc", "dc"}, [2]string{"single crochet", "double crochet"}, [2]string{}, 1, false},
	HalfDoubleCrochet:    {[2]string{"hdc", "htr"}, [2]string{"half double crochet", "half treble"}, [2]string{"", "half treble crochet"}, 2, false},
	DoubleCrochet:        {[2]string{"dc", "tr"}, [2]string{"double crochet", "treble"}, [2]string{"", "treble crochet"}, 3, false},
	TrebleCrochet:        {[2]string{"tr", "dtr"}, [2]string{"treble crochet", "double treble"}, [2]string{"treble,triple crochet", "double treble crochet"}, 4, false},
	DoubleTreble:         {[2]string{"dtr", "trtr"}, [2]string{"double treble crochet", "triple treble"}, [2]string{"double treble", "ttr,triple treble crochet"}, 5, false},
	TripleTreble:         {[2]string{"trtr", "qtr"}, [2]string{"triple treble crochet", "quadruple treble"}, [2]string{"ttr,triple treble", "quadruple treble crochet"}, 6, false},
	ExtendedSingle:       {[2]string{"esc", "exdc"}, [2]string{"extended single crochet", "extended double crochet"}, [2]string{}, 2, false},
	FrontPostDouble:      {[2]string{"FPdc", "rtrf"}, [2]string{"front post double crochet", "raised treble front"}, [2]string{}, 3, false},
	BackPostDouble:       {[2]string{"BPdc", "rtrb"}, [2]string{"back post double crochet", "raised treble back"}, [2]string{}, 3, false},
	FoundationSingle:     {[2]string{"fsc", "fdc"}, [2]string{"foundation single crochet", "foundation double crochet"}, [2]string{}, 0, true},
	FoundationHalfDouble: {[2]string{"fhdc", "fhtr"}, [2]string{"foundation half double crochet", "foundation half treble"}, [2]string{}, 0, true},
	FoundationDouble:     {[2]string{"fdc", "ftr"}, [2]string{"foundation double crochet", "foundation treble"}, [2]string{}, 0, true},
}

// Valid reports whether s is one of the stitches above.
func (s Stitch) Valid() bool { return s > NoStitch && int(s) < len(stitches) }

// Abbr returns the abbreviation: "dc" for DoubleCrochet in US terms, "tr" in
// UK terms.
func (s Stitch) Abbr(t Terms) string {
	if !s.Valid() || !t.valid() {
		return fmt.Sprintf("Stitch(%d)", uint8(s))
	}
	return stitches[s].abbr[t]
}

// Term returns the name in full: "double crochet", "treble".
func (s Stitch) Term(t Terms) string {
	if !s.Valid() || !t.valid() {
		return fmt.Sprintf("Stitch(%d)", uint8(s))
	}
	return stitches[s].term[t]
}

// String returns the US abbreviation.
func (s Stitch) String() string { return s.Abbr(US) }

// Height returns the usual turning chain, which is also the height of the
// stitch in chains: 1 for sc, 2 for hdc, 3 for dc, 4 for tr. It is 0 for a
// chain, a slip stitch and the foundation stitches, which need none.
func (s Stitch) Height() int {
	if !s.Valid() {
		return 0
	}
	return stitches[s].height
}

// Foundation reports whether s is made together with the chain it stands on.
func (s Stitch) Foundation() bool { return s.Valid() && stitches[s].foundation }

// Plain returns the stitch that a foundation stitch stands for: sc for fsc. Any
// other stitch is returned as it is.
func (s Stitch) Plain() Stitch {
	if s.Foundation() {
		return s - FoundationSingle + SingleCrochet
	}
	return s
}

// is reports whether the words, joined by single blanks, name s in t.
func (s Stitch) is(words string, t Terms) bool {
	e := &stitches[s]
	if strings.EqualFold(words, e.abbr[t]) || strings.EqualFold(words, e.term[t]) {
		return true
	}
	for also := range strings.SplitSeq(e.also[t], ",") {
		if strings.EqualFold(words, also) && also != "" {
			return true
		}
	}
	return false
}

// stitchNamed returns the stitch that the words name in t.
func stitchNamed(words string, t Terms) Stitch {
	for s := Chain; s.Valid(); s++ {
		if s.is(words, t) {
			return s
		}
	}
	return NoStitch
}

// ParseStitch reads the abbreviation or the full name of a stitch in the given
// terms; case does not matter. It returns a *gauge.ParseError for anything else,
// and says so where the other terms know the word.
func ParseStitch(s string, t Terms) (Stitch, error) {
	words := strings.Join(strings.Fields(s), " ")
	fail := func(cause string) (Stitch, error) {
		return NoStitch, &gauge.ParseError{Kind: "stitch", Text: s, Cause: cause}
	}
	if !t.valid() {
		return fail("terms that are neither US nor UK")
	}
	if st := stitchNamed(words, t); st != NoStitch {
		return st, nil
	}
	if st := stitchNamed(words, t.other()); st != NoStitch {
		return fail(fmt.Sprintf("a %s word; the %s one is %s", t.other(), t, st.Abbr(t)))
	}
	return fail("no stitch of the standard, like sc, hdc or dc")
}

// MarshalText returns the US abbreviation, nothing for NoStitch. It returns a
// *gauge.FieldError for a stitch that is not valid.
func (s Stitch) MarshalText() ([]byte, error) {
	switch {
	case s == NoStitch:
		return []byte{}, nil
	case !s.Valid():
		return nil, &gauge.FieldError{Field: "Stitch", Got: s.String(), Want: "a stitch of the standard"}
	}
	return []byte(s.String()), nil
}

// UnmarshalText reads a stitch in US terms, as ParseStitch does; nothing is
// NoStitch.
func (s *Stitch) UnmarshalText(b []byte) error {
	if len(b) == 0 {
		*s = NoStitch
		return nil
	}
	v, err := ParseStitch(string(b), US)
	if err != nil {
		return err
	}
	*s = v
	return nil
}
