package grade_test

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/notation"
	"github.com/shopspring/decimal"
)

// The Larkrise jacket in four groups of the women's chart: what it measures, the
// stitches of half the round, and whether the armhole clears the arm.
func Example() {
	women, err := grade.Standard("women")
	if err != nil {
		fmt.Println(err)
		return
	}
	groups, err := women.Groups([][]string{{"XS", "S"}, {"M", "L"}, {"XL", "2X"}, {"3X", "4X", "5X"}})
	if err != nil {
		fmt.Println(err)
		return
	}
	round, err := grade.OnChart(groups, grade.Chest, gauge.Inch, grade.Ruling{}, grade.Run[grade.Ease]{grade.MustEase("9 in")})
	if err != nil {
		fmt.Println(err)
		return
	}
	half, _ := gauge.Share(1, 2)
	g := gauge.MustGauge("13 sts and 9 rows = 4 in")
	stitches, err := grade.Map(grade.ShareOf(round, half), func(m gauge.Measurement) (int, error) {
		c, err := g.Stitches.Round(m, gauge.Rule{Multiple: 3, Plus: 2})
		return c.Value, err
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("Sizes", grade.Text(grade.Labels(groups), func(s string) string { return s }))
	fmt.Println("Round", notation.Both(round, gauge.QuarterInch, gauge.HalfCentimetre))
	fmt.Println("Stitches", grade.Numbers(stitches))

	depth := grade.Run[gauge.Length]{gauge.MustLength("6 in"), gauge.MustLength("7 in"), gauge.MustLength("7 1/2 in"), gauge.MustLength("9 in")}
	_, err = grade.Zip(groups, depth, func(g grade.Group, d gauge.Length) (gauge.Measurement, error) {
		arm, err := g.Ruled(grade.UpperArm, gauge.Inch, grade.Ruling{})
		if err != nil {
			return arm, err
		}
		round := d.Measurement().Times(gauge.Int(2))
		if round.Cmp(arm) < 0 {
			return round, &grade.SizeError{Field: "armhole round", Got: gauge.QuarterInch.Text(round), Want: "at least " + gauge.QuarterInch.Text(arm)}
		}
		return round, nil
	})
	fmt.Println(grade.NameSize(err, grade.Labels(groups)))
	fmt.Println(women.Source)
	// Output:
	// Sizes XS–S (M–L, XL–2X, 3X–5X)
	// Round 43 (51, 59, 71) in [109 (129.5, 150, 180.5) cm]
	// Stitches 71 (83, 95, 116)
	// size XL–2X: armhole round: got 15 in, want at least 15½ in
	// Source: Craft Yarn Council's www.YarnStandards.com
}

func ExampleStandard() {
	child, err := grade.Standard("child")
	fmt.Println(child.Sizes, err)
	b, _ := child.Body("6", grade.Chest, gauge.Inch)
	fmt.Println(b.High, b.Basis)
	_, err = grade.Standard("cat")
	fmt.Println(err)
	// Output:
	// [2 4 6 8 10] <nil>
	// 25 in one-source
	// chart "cat": no such chart; there are women, men, youth, child, baby, head, head ranges
}

func ExampleStandards() {
	fmt.Println(grade.Standards())
	// Output: [women men youth child baby head head ranges]
}

func ExampleReadChart() {
	table := "size,measure,unit,low,high\n" +
		"small,chest,cm,80,88\n" +
		"large,chest,cm,92,100\n" +
		"large,upper_arm,cm,33.5,\n"
	c, err := grade.ReadChart("Larkrise", "our own fitting day", strings.NewReader(table))
	fmt.Println(c.Sizes, len(c.Cells), err)
	// Output: [small large] 3 <nil>
}

func ExampleChart_Body() {
	women, _ := grade.Standard("women")
	for _, u := range []gauge.Unit{gauge.Inch, gauge.Centimetre} {
		b, err := women.Body("5X", grade.Chest, u)
		fmt.Println(b.Low, "to", b.High, b.Basis, err)
	}
	child, _ := grade.Standard("child")
	_, err := child.Body("2", grade.UpperArm, gauge.Centimetre)
	fmt.Println(errors.Is(err, grade.ErrNoCell), err)
	// Output:
	// 60 in to 62 in one-source <nil>
	// 152 cm to 158 cm one-source <nil>
	// true size 2: upper arm: no figure in cm in the chart child
}

func ExampleChart_Groups() {
	women, _ := grade.Standard("women")
	groups, err := women.Groups([][]string{{"XS", "S"}, {"M"}})
	fmt.Println(grade.Labels(groups), err)
	_, err = women.Groups([][]string{{"XS", "M"}})
	fmt.Println(err)
	// Output:
	// [XS–S M] <nil>
	// size M: group number 1: got it beside XS, want its neighbour S
}

func ExampleChart_Singles() {
	youth, _ := grade.Standard("youth")
	groups, err := youth.Singles()
	fmt.Println(grade.Labels(groups), err)
	// Output: [12 14 16] <nil>
}

func ExampleChart_Validate() {
	c := grade.Chart{Name: "own", Sizes: []string{"A", "B"}, Cells: []grade.Cell{
		{Size: "A", Measure: grade.Chest, Body: grade.Body{Low: gauge.MustLength("84 cm"), High: gauge.MustLength("88 cm")}},
		{Size: "B", Measure: grade.Chest, Body: grade.Body{Low: gauge.MustLength("80 cm"), High: gauge.MustLength("92 cm")}},
	}}
	fmt.Println(c.Validate())
	// Output: size B: chest: got 80 cm, want at least the 84 cm of size A
}

func ExampleChart_Falls() {
	c := grade.Chart{Name: "own", Sizes: []string{"A", "B"}, Cells: []grade.Cell{
		{Size: "A", Measure: grade.ArmLength, Body: grade.Body{Low: gauge.MustLength("45 cm"), High: gauge.MustLength("45 cm")}},
		{Size: "B", Measure: grade.ArmLength, Body: grade.Body{Low: gauge.MustLength("44 cm"), High: gauge.MustLength("44 cm")}},
	}}
	fmt.Println(c.Validate(), c.Falls())
	// Output: <nil> [size B: arm length to underarm: got 44 cm, want at least the 45 cm of size A]
}

func ExampleBody_Middle() {
	women, _ := grade.Standard("women")
	b, _ := women.Body("M", grade.Chest, gauge.Inch)
	fmt.Println(gauge.QuarterInch.Text(b.Middle()))
	// Output: 37 in
}

func ExampleBody_Validate() {
	fmt.Println(grade.Body{Low: gauge.MustLength("38 in"), High: gauge.MustLength("36 in")}.Validate())
	// Output: High: got 36 in, want at least Low, 38 in
}

func group(sizes ...string) grade.Group {
	women, err := grade.Standard("women")
	if err != nil {
		panic(err)
	}
	groups, err := women.Groups([][]string{sizes})
	if err != nil {
		panic(err)
	}
	return groups[0]
}

func ExampleGroup_Label() {
	fmt.Println(group("3X", "4X", "5X").Label(), group("M").Label())
	// Output: 3X–5X M
}

func ExampleGroup_Body() {
	b, err := group("3X", "4X", "5X").Body(grade.Chest, gauge.Inch)
	fmt.Println(b.Low, "to", b.High, err)
	// Output: 52 in to 62 in <nil>
}

func ExampleGroup_Smallest() {
	fmt.Println(group("3X", "4X", "5X").Smallest())
	// Output: 3X
}

func ExampleGroup_Largest() {
	fmt.Println(group("3X", "4X", "5X").Largest())
	// Output: 5X
}

func ExampleGroup_Member() {
	fmt.Println(group("3X", "4X", "5X").Member(grade.MiddleMember))
	// Output: 4X
}

func ExampleGroup_Ruled() {
	g := group("XS", "S")
	for _, r := range []grade.Ruling{{}, {End: grade.MiddleOfRange}, {Member: grade.SmallestMember, End: grade.LowEnd}} {
		m, err := g.Ruled(grade.Chest, gauge.Inch, r)
		fmt.Println(r.Member, r.End, gauge.QuarterInch.Text(m), err)
	}
	// Output:
	// largest high 34 in <nil>
	// largest middle 33 in <nil>
	// smallest low 28 in <nil>
}

func ExampleGroup_Eases() {
	finished := gauge.MustLength("71 in").Measurement()
	eases, _ := group("3X", "4X", "5X").Eases(grade.Chest, gauge.Inch, finished)
	for _, e := range eases {
		fmt.Println(e.Size, gauge.QuarterInch.Text(e.AtHigh), "to", gauge.QuarterInch.Text(e.AtLow))
	}
	// Output:
	// 3X 17 in to 19 in
	// 4X 13 in to 15 in
	// 5X 9 in to 11 in
}

func ExampleGroup_Validate() {
	women, _ := grade.Standard("women")
	fmt.Println(grade.Group{Chart: women, Members: []string{"S", "L"}}.Validate())
	// Output: size L: group number 1: got it beside S, want its neighbour M
}

func ExampleLabels() {
	fmt.Println(grade.Labels(grade.Run[grade.Group]{group("XS", "S"), group("M")}))
	// Output: [XS–S M]
}

func gap() grade.Gap {
	gaps, err := grade.Gaps(grade.Run[grade.Group]{group("XS", "S"), group("M", "L")}, grade.Chest, gauge.Inch)
	if err != nil {
		panic(err)
	}
	return gaps[0]
}

func ExampleGaps() {
	groups := grade.Run[grade.Group]{group("XS", "S"), group("M", "L"), group("XL")}
	gaps, err := grade.Gaps(groups, grade.Chest, gauge.Inch)
	for _, g := range gaps {
		fmt.Println(g.Below, g.From, "to", g.To, g.Above)
	}
	fmt.Println(err)
	// Output:
	// XS–S 34 in to 36 in M–L
	// M–L 42 in to 44 in XL
	// <nil>
}

func ExampleGap_Width() {
	fmt.Println(gauge.QuarterInch.Text(gap().Width()))
	// Output: 2 in
}

func ExampleGap_Middle() {
	fmt.Println(gauge.QuarterInch.Text(gap().Middle()))
	// Output: 35 in
}

func ExampleGap_Holds() {
	fmt.Println(gap().Holds(gauge.MustLength("35 in").Measurement()), gap().Holds(gauge.MustLength("36 in").Measurement()))
	// Output: true false
}

func ExampleOnChart() {
	groups := grade.Run[grade.Group]{group("S"), group("M"), group("L")}
	round, err := grade.OnChart(groups, grade.Chest, gauge.Centimetre, grade.Ruling{}, grade.Run[grade.Ease]{grade.MustEase("-5%")})
	fmt.Println(grade.Text(round, gauge.HalfCentimetre.Number), err)
	// Output: 81.5 (91.5, 101) <nil>
}

func ExampleStepped() {
	r, err := grade.Stepped(gauge.MustLength("51 in"), 3, gauge.MustLength("10 in"), gauge.MustLength("8 in"))
	fmt.Println(r, err)
	// Output: [51 in 61 in 69 in] <nil>
}

func ExampleShareOf() {
	third, _ := gauge.Share(1, 3)
	widths := grade.Run[gauge.Measurement]{gauge.MustLength("21 in").Measurement(), gauge.MustLength("22 in").Measurement()}
	fmt.Println(grade.Text(grade.ShareOf(widths, third), gauge.QuarterInch.Number))
	// Output: 7 (7¼)
}

func ExampleEvenSteps() {
	necks := grade.Run[gauge.Measurement]{gauge.MustLength("6 in").Measurement(), gauge.MustLength("7 in").Measurement(), gauge.MustLength("7.5 in").Measurement()}
	s := grade.EvenSteps(necks)
	fmt.Println(grade.Text(s.Values, gauge.QuarterInch.Number))
	for _, c := range s.Changes {
		fmt.Println("size number", c.Index+1, "was", gauge.QuarterInch.Text(c.From))
	}
	// Output:
	// 6 (6¾, 7½)
	// size number 2 was 7 in
}

func ExampleNoneSmaller() {
	arms := grade.Run[gauge.Measurement]{gauge.MustLength("45 cm").Measurement(), gauge.MustLength("44 cm").Measurement(), gauge.MustLength("46 cm").Measurement()}
	s := grade.NoneSmaller(arms)
	fmt.Println(grade.Text(s.Values, gauge.HalfCentimetre.Number), len(s.Changes), "changed")
	// Output: 45 (45, 46) 1 changed
}

func ExampleMap() {
	widths := grade.Run[string]{"20 in", "22 in", "24 inn"}
	_, err := grade.Map(widths, gauge.ParseLength)
	var size *grade.SizeError
	fmt.Println(errors.As(err, &size), size.Index)
	fmt.Println(err)
	// Output:
	// true 2
	// size number 3: parse length: "24 inn": unknown unit "inn"
}

func ExampleZip() {
	sum, err := grade.Zip(grade.Run[int]{28, 34}, grade.Run[int]{24, 26}, func(side, neck int) (int, error) { return 2*side + neck, nil })
	fmt.Println(grade.Numbers(sum), err)
	// Output: 80 (94) <nil>
}

func ExampleAll() {
	err := grade.All(grade.Run[int]{12, 13, 15}, func(n int) error {
		if n%2 == 1 {
			return errors.New("odd")
		}
		return nil
	})
	fmt.Println(err)
	// Output:
	// size number 2: odd
	// size number 3: odd
}

func ExampleText() {
	labels := grade.Run[string]{"XS–S", "M–L", "XL–2X"}
	fmt.Println(grade.Text(labels, func(s string) string { return s }))
	// Output: XS–S (M–L, XL–2X)
}

func ExampleInFull() {
	same := grade.Run[int]{7, 7, 7}
	fmt.Println(grade.Text(same, strconv.Itoa), "or", grade.InFull(same, strconv.Itoa))
	// Output: 7 or 7 (7, 7)
}

func ExampleNumbers() {
	fmt.Println(grade.Numbers(grade.Run[int]{101, 113, 125}))
	fmt.Println(grade.Numbers(grade.Run[int]{7, 7, 7}))
	fmt.Println(grade.Numbers(grade.Run[int]{1, 2, 3, 4, 5, 6, 7, 8, 9, 10}))
	// Output:
	// 101 (113, 125)
	// 7
	// 1 (2, 3, 4) [5, 6, 7] (8, 9, 10)
}

func ExampleRun_For() {
	r, err := grade.Run[string]{"1 1/4 in"}.For(3)
	fmt.Println(len(r), err)
	_, err = grade.Run[int]{1, 2}.For(3)
	fmt.Println(err)
	// Output:
	// 3 <nil>
	// values: got 2, want 1 or 3
}

func ExampleNameSize() {
	_, err := grade.Map(grade.Run[string]{"20 in", "x"}, gauge.ParseLength)
	err = grade.NameSize(err, grade.Run[string]{"S", "M"})
	fmt.Println(strings.HasPrefix(err.Error(), "size M: "))
	// Output: true
}

func ExampleSizeError_Error() {
	fmt.Println(&grade.SizeError{Size: "XL–2X", Field: "armhole round", Got: "12 in", Want: "at least 13.5 in"})
	// Output: size XL–2X: armhole round: got 12 in, want at least 13.5 in
}

func ExampleSizeError_Unwrap() {
	fmt.Println(errors.Is(&grade.SizeError{Size: "9X", Err: grade.ErrNoSize}, grade.ErrNoSize))
	// Output: true
}

func ExampleParseEase() {
	for _, s := range []string{"9 in", "-2 1/2 in", "-5%", "9 inn"} {
		e, err := grade.ParseEase(s)
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Println(e)
	}
	// Output:
	// 9 in
	// -2.5 in
	// -5%
	// parse ease: "9 inn": unknown unit "inn"
}

func ExampleMustEase() {
	fmt.Println(grade.MustEase("7.5%"))
	// Output: 7.5%
}

func ExampleEaseOf() {
	fmt.Println(grade.EaseOf(gauge.MustLength("8 cm")))
	// Output: 8 cm
}

func ExamplePercent() {
	fmt.Println(grade.Percent(decimal.New(-75, -1)))
	// Output: -7.5%
}

func ExampleEase_Finished() {
	body := gauge.MustLength("40 in").Measurement()
	for _, e := range []string{"9 in", "-2 in", "-5%", "0%"} {
		fmt.Println(e, gauge.QuarterInch.Text(grade.MustEase(e).Finished(body)))
	}
	// Output:
	// 9 in 49 in
	// -2 in 38 in
	// -5% 38 in
	// 0% 40 in
}

func ExampleGiven() {
	length, percent, err := grade.Given(gauge.MustLength("41.5 in").Measurement(), gauge.MustLength("43.5 in").Measurement())
	fmt.Println(gauge.QuarterInch.Text(length), percent.Text(1)+"%", err)
	// Output: 2 in 4.8% <nil>
}

func ExampleEase_Validate() {
	fmt.Println(grade.Percent(decimal.NewFromInt(-100)).Validate())
	// Output: Ease.Value: got -100%, want above -100% and at most 1000%
}

func ExampleEase_Sign() {
	fmt.Println(grade.MustEase("-5%").Sign(), grade.Ease{}.Sign(), grade.MustEase("9 in").Sign())
	// Output: -1 0 1
}

func ExampleEase_String() {
	fmt.Println(grade.MustEase("+2 1/2 in"), grade.MustEase("-5 %"))
	// Output: 2.5 in -5%
}

func ExampleEase_MarshalText() {
	b, err := grade.MustEase("9 in").MarshalText()
	fmt.Println(string(b), err)
	// Output: 9 in <nil>
}

func ExampleEase_UnmarshalText() {
	var e grade.Ease
	fmt.Println(e.UnmarshalText([]byte("-5%")), e)
	// Output: <nil> -5%
}

func ExampleParseMeasure() {
	m, err := grade.ParseMeasure("upper_arm")
	fmt.Println(m, err)
	m, err = grade.ParseMeasure("Bust")
	fmt.Println(m, err)
	// Output:
	// upper arm <nil>
	// chest <nil>
}

func ExampleMeasure_String() {
	fmt.Println(grade.UpperArm, grade.BackHip)
	// Output: upper arm back hip length
}

func ExampleMeasure_Valid() {
	fmt.Println(grade.Chest.Valid(), grade.Measure(99).Valid())
	// Output: true false
}

func ExampleMeasure_MarshalText() {
	b, err := grade.CrossBack.MarshalText()
	fmt.Println(string(b), err)
	// Output: cross back <nil>
}

func ExampleMeasure_UnmarshalText() {
	var m grade.Measure
	fmt.Println(m.UnmarshalText([]byte("armhole depth")), m)
	// Output: <nil> armhole depth
}

func ExampleParseBasis() {
	b, err := grade.ParseBasis("memory")
	fmt.Println(b, err)
	// Output: memory <nil>
}

func ExampleBasis_String() {
	fmt.Println(grade.TwoSources, grade.OneSource, grade.Memory, grade.Stated)
	// Output: two-sources one-source memory stated
}

func ExampleBasis_MarshalText() {
	b, err := grade.Memory.MarshalText()
	fmt.Println(string(b), err)
	// Output: memory <nil>
}

func ExampleBasis_UnmarshalText() {
	var b grade.Basis
	fmt.Println(b.UnmarshalText([]byte("one-source")), b)
	// Output: <nil> one-source
}

func ExampleWhich_String() {
	fmt.Println(grade.LargestMember, grade.SmallestMember, grade.MiddleMember)
	// Output: largest smallest middle
}

func ExampleWhich_MarshalText() {
	b, err := grade.SmallestMember.MarshalText()
	fmt.Println(string(b), err)
	// Output: smallest <nil>
}

func ExampleWhich_UnmarshalText() {
	var w grade.Which
	fmt.Println(w.UnmarshalText([]byte("middle")), w)
	// Output: <nil> middle
}

func ExampleEnd_String() {
	fmt.Println(grade.HighEnd, grade.LowEnd, grade.MiddleOfRange)
	// Output: high low middle
}

func ExampleEnd_MarshalText() {
	b, err := grade.LowEnd.MarshalText()
	fmt.Println(string(b), err)
	// Output: low <nil>
}

func ExampleEnd_UnmarshalText() {
	var e grade.End
	fmt.Println(e.UnmarshalText([]byte("middle")), e)
	// Output: <nil> middle
}

func ExampleRuling_Validate() {
	fmt.Println(grade.Ruling{End: 7}.Validate())
	// Output: Ruling.End: got End(7), want high, low or middle
}
