package row_test

import (
	"errors"
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/row"
)

// The ten rows of the package page, each read and written in US and UK terms.
func Example_tenRows() {
	for i, text := range []string{
		"fhdc 101",
		"hdc in each st across",
		"dc in first st, *ch 2, sk 2, dc in next st; rep from * across",
		"hdc in each st and 2 hdc in each ch-2 sp across",
		"[sc in next 2 sts, sc2tog] 4 times",
		"*sc in next st, 2 sc in next st; rep from * 3 more times",
		"ch 3 (counts as dc), (dc, ch 1, dc) in next st, dc in last st",
		"ch 66, hdc in 3rd ch from hook (skipped chs do not count), hdc in each ch across",
		"hdc in next 7 (8, 9) sts, leave rem sts unworked",
		"*dc in next st, sk 1; rep from * to last 3 sts, dc in last 3 sts",
	} {
		r, err := row.Parse(text, row.US)
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Println(i+1, r.String() == text, r.Text(row.UK))
	}
	// Output:
	// 1 true fhtr 101
	// 2 true htr in each st across
	// 3 true tr in first st, *ch 2, miss 2, tr in next st; rep from * across
	// 4 true htr in each st and 2 htr in each ch-2 sp across
	// 5 true [dc in next 2 sts, dc2tog] 4 times
	// 6 true *dc in next st, 2 dc in next st; rep from * 3 more times
	// 7 true ch 3 (counts as tr), (tr, ch 1, tr) in next st, tr in last st
	// 8 true ch 66, htr in 3rd ch from hook (skipped chs do not count), htr in each ch across
	// 9 true htr in next 7 (8, 9) sts, leave rem sts unworked
	// 10 true *tr in next st, miss 1; rep from * to last 3 sts, tr in last 3 sts
}

// What a designer types is forgiven its style, and nothing that changes a count.
func ExampleParse() {
	r, _ := row.Parse("Double crochet in first stitch; *ch 2, skip 2, DC in next st. Repeat from * to end.", row.US)
	fmt.Println(r)
	_, err := row.Parse("dc in first st, *ch 2, htr in next st; rep from * across", row.US)
	fmt.Println(err)
	_, err = row.Parse("*dc in next st, sk 1; repeat from * 3 times", row.US)
	fmt.Println(err)
	// Output:
	// dc in first st, *ch 2, sk 2, dc in next st; rep from * across
	// row: line 1, column 24: read "htr", want US terms as in the rest of the row: this is UK for hdc
	// row: line 1, column 37: read "3 times", want 3 more times, or a total of 3 times
}

func ExampleMust() {
	fmt.Println(row.Must("miss 2, tr in next st", row.UK))
	// Output: sk 2, dc in next st
}

func ExampleRow_Text() {
	r := row.Must("sk 2, [sc in next 2 sts, sc2tog] 4 times", row.US)
	fmt.Println(r.Text(row.US))
	fmt.Println(r.Text(row.UK))
	// Output:
	// sk 2, [sc in next 2 sts, sc2tog] 4 times
	// miss 2, [dc in next 2 sts, dc2tog] 4 times
}

// A row can be put together from its items.
func ExampleRow_String() {
	r := row.Row{Items: []row.Item{
		row.Work{Make: []row.Part{{Of: row.DoubleCrochet}}, At: row.First},
		row.Repeat{Star: true, Items: []row.Item{
			row.Chains{N: row.Num{2}}, row.Skip{N: row.Num{2}}, row.Work{Make: []row.Part{{Of: row.DoubleCrochet}}},
		}},
	}}
	fmt.Println(r, r.Validate())
	// Output: dc in first st, *ch 2, sk 2, dc in next st; rep from * across <nil>
}

func ExampleRow_MarshalText() {
	b, err := row.Must("htr in each st across", row.UK).MarshalText()
	fmt.Println(string(b), err)
	// Output: hdc in each st across <nil>
}

func ExampleRow_UnmarshalText() {
	var r row.Row
	err := r.UnmarshalText([]byte("3 sc in next ch-2 sp"))
	fmt.Println(r, err)
	// Output: 3 sc in next ch-2 sp <nil>
}

func ExampleRow_Validate() {
	fmt.Println(row.Row{Items: []row.Item{row.Together{Of: row.SingleCrochet, N: 1}}}.Validate())
	// Output: Row.Items[0].N: got 1, want 2 to 99
}

func ExampleRow_Sizes() {
	fmt.Println(row.Must("hdc in next 7 (8, 9) sts", row.US).Sizes())
	// Output: 3
}

func ExampleRow_Size() {
	fmt.Println(row.Must("hdc in next 7 (8, 9) sts, sk 2 (2, 3)", row.US).Size(2))
	// Output: hdc in next 9 sts, sk 3
}

func ExampleRow_Lists() {
	fmt.Println(row.Must("hdc in next 7 (8, 9) sts, sk 2 (2, 3)", row.US).Lists())
	// Output: [7 (8, 9) 2 (2, 3)]
}

func ExampleRow_Begins() {
	fmt.Println(row.Must("fhdc", row.US).Begins(), row.Must("hdc in each st across", row.US).Begins())
	// Output: true false
}

func ExampleRow_WithCount() {
	fmt.Println(row.Must("fhdc", row.US).WithCount(row.Num{101, 113}))
	// Output: fhdc 101 (113)
}

func ExampleRow_FirstStitch() {
	fmt.Println(row.Must("dc in first st, hdc in each st across", row.US).FirstStitch())
	// Output: dc true
}

func ExampleRow_Stitches() {
	fmt.Println(row.Must("dc in first st, [ch 1, hdc in next st] 3 times", row.US).Stitches())
	// Output: [dc hdc]
}

func ExampleRow_HasChains() {
	fmt.Println(row.Must("(dc, ch 1, dc) in next st", row.US).HasChains())
	// Output: true
}

func ExampleNum_In() {
	n := row.Num{7, 8, 9}
	fmt.Println(n.In(0), n.In(2), row.Num{5}.In(2), row.Num(nil).In(2))
	// Output: 7 9 5 1
}

func ExampleNum_String() {
	fmt.Println(row.Num{7, 8, 9}, row.Num{5})
	// Output: 7 (8, 9) 5
}

func ExampleSpace_String() {
	fmt.Println(row.Space(0), row.Space(2), row.AnySpace)
	// Output: st ch-2 sp ch-sp
}

func ExampleParseTerms() {
	t, err := row.ParseTerms("uk")
	fmt.Println(t, err)
	_, err = row.ParseTerms("AU")
	fmt.Println(err)
	// Output:
	// UK <nil>
	// parse terms: "AU": got "AU", want US or UK
}

func ExampleTerms_String() {
	fmt.Println(row.US, row.UK)
	// Output: US UK
}

func ExampleTerms_MarshalText() {
	b, err := row.UK.MarshalText()
	fmt.Println(string(b), err)
	// Output: UK <nil>
}

func ExampleTerms_UnmarshalText() {
	var t row.Terms
	fmt.Println(t.UnmarshalText([]byte("UK")), t)
	// Output: <nil> UK
}

// One table for the eye of a designer: names and turning chains.
func ExampleStitch_Term() {
	for s := row.SingleCrochet; s <= row.TrebleCrochet; s++ {
		fmt.Printf("%-4s %-22s %-4s %-13s ch %d\n", s.Abbr(row.US), s.Term(row.US), s.Abbr(row.UK), s.Term(row.UK), s.Height())
	}
	// Output:
	// sc   single crochet         dc   double crochet ch 1
	// hdc  half double crochet    htr  half treble   ch 2
	// dc   double crochet         tr   treble        ch 3
	// tr   treble crochet         dtr  double treble ch 4
}

func ExampleParseStitch() {
	s, err := row.ParseStitch("treble", row.UK)
	fmt.Println(s, err)
	_, err = row.ParseStitch("hdc", row.UK)
	fmt.Println(err)
	// Output:
	// dc <nil>
	// parse stitch: "hdc": a US word; the UK one is htr
}

func ExampleStitch_Abbr() {
	fmt.Println(row.DoubleCrochet.Abbr(row.US), row.DoubleCrochet.Abbr(row.UK))
	// Output: dc tr
}

func ExampleStitch_String() {
	fmt.Println(row.HalfDoubleCrochet)
	// Output: hdc
}

func ExampleStitch_Valid() {
	fmt.Println(row.NoStitch.Valid(), row.Chain.Valid())
	// Output: false true
}

func ExampleStitch_Height() {
	fmt.Println(row.SingleCrochet.Height(), row.DoubleCrochet.Height(), row.Chain.Height())
	// Output: 1 3 0
}

func ExampleStitch_Foundation() {
	fmt.Println(row.FoundationDouble.Foundation(), row.DoubleCrochet.Foundation())
	// Output: true false
}

func ExampleStitch_MarshalText() {
	b, err := row.HalfDoubleCrochet.MarshalText()
	fmt.Println(string(b), err)
	// Output: hdc <nil>
}

func ExampleStitch_UnmarshalText() {
	var s row.Stitch
	fmt.Println(s.UnmarshalText([]byte("treble crochet")), s)
	// Output: <nil> tr
}

func ExampleStitch_Plain() {
	fmt.Println(row.FoundationHalfDouble.Plain())
	// Output: hdc
}

// The same eleven stitches under each turning-chain rule.
func ExampleStitch_FirstChain() {
	for s := row.SingleCrochet; s <= row.TrebleCrochet; s++ {
		not, _ := s.FirstChain(false).Chains(11)
		counted, _ := s.FirstChain(true).Chains(11)
		fmt.Printf("%d %s: ch %d, or %d where the skipped chs count\n", 11, s, not, counted)
	}
	// Output:
	// 11 sc: ch 12, or 11 where the skipped chs count
	// 11 hdc: ch 13, or 12 where the skipped chs count
	// 11 dc: ch 14, or 13 where the skipped chs count
	// 11 tr: ch 15, or 14 where the skipped chs count
}

func ExampleFoundationChain_Chains() {
	fmt.Println(row.FoundationChain{Hook: 3}.Chains(64))
	// Output: 66 <nil>
}

func ExampleFoundationChain_Stitches() {
	fmt.Println(row.FoundationChain{Hook: 2}.Stitches(57))
	// Output: 56 <nil>
}

func ExampleAbbreviations() {
	for _, a := range row.Abbreviations("tr in first st, *ch 2, miss 2, tr in next st; rep from * across", row.UK) {
		fmt.Println(a.Abbr+":", a.Meaning)
	}
	// Output:
	// *: start of what is worked again, as often as the text says
	// ch: chain
	// rep: repeat
	// st: stitch
	// tr: treble
}

func ExampleSyntaxError_Error() {
	_, err := row.Parse("hdc in each st across,\nhdc in eech st", row.US)
	var s *row.SyntaxError
	if errors.As(err, &s) {
		fmt.Println(s.Line, s.Col, s.Read)
	}
	fmt.Println(err)
	// Output:
	// 2 8 eech
	// row: line 2, column 8: read "eech", want a place: next st, each st across, first st, last st, same st or a ch-m sp
}

func ExampleSyntaxError_Unwrap() {
	_, err := row.Parse("[[[dc in next 9999 sts] 9999 times] 9999 times]", row.US)
	fmt.Println(errors.Is(err, gauge.ErrBounds), err)
	// Output: true row: line 1, column 3: read "[", want a repeat that works at most 100000 places
}

func ExampleFitError_Error() {
	e := &row.FitError{Row: 1, Text: "sc in next 11 sts", Uses: 11, Short: 1, Has: gauge.Rule{Least: 10}, Err: row.ErrShort}
	fmt.Println(e)
	// Output: row 2, "sc in next 11 sts": uses 11 of 10, 1 short
}

func ExampleFitError_Cause() {
	e := &row.FitError{Want: 2, Err: row.ErrNoPlace}
	fmt.Println(e.Cause())
	// Output: works into each ch-2 sp, and the row before has none
}

func ExampleFitError_Unwrap() {
	fmt.Println(errors.Is(&row.FitError{Err: row.ErrSplit}, row.ErrSplit))
	// Output: true
}

func ExampleInvalidError_Error() {
	fmt.Println(&row.InvalidError{Row: 2, Err: row.Row{}.Validate()})
	// Output: row 3: Row.Items: got no instruction, want at least one instruction
}

func ExampleInvalidError_Unwrap() {
	var f *gauge.FieldError
	fmt.Println(errors.As(&row.InvalidError{Err: row.Row{}.Validate()}, &f), f.Field)
	// Output: true Row.Items
}

func ExampleTerms_Spell() {
	fmt.Println(row.US.Spell("Centre back: 12 cm, or 4¾ in, towards the hem"))
	fmt.Println(row.UK.Spell("Center front, in the color of the border"))
	// Output:
	// Center back: 12 cm, or 4¾ in, toward the hem
	// Centre front, in the colour of the border
}

// A row that calls places by their kind may pass over others.
func ExampleParseNamed() {
	for _, s := range []string{"sc in first st, *ch 1, sc in next sc; rep from * across", "*sc in next sc, ch 1, sk 1; rep from * across", "sc in each st across"} {
		_, named, err := row.ParseNamed(s, row.US)
		fmt.Println(named, err)
	}
	// Output:
	// true <nil>
	// false <nil>
	// false <nil>
}
