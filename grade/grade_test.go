package grade_test

import (
	"errors"
	"fmt"
	"strconv"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"github.com/stretchr/testify/require"
)

func TestText(t *testing.T) {
	upTo := func(n int) grade.Run[int] {
		r := make(grade.Run[int], n)
		for i := range r {
			r[i] = i + 1
		}
		return r
	}
	for _, c := range []struct {
		run  grade.Run[int]
		want string
	}{
		{nil, ""},
		{upTo(1), "1"},
		{grade.Run[int]{7, 7, 7}, "7"},
		{grade.Run[int]{101, 113, 125}, "101 (113, 125)"},
		{grade.Run[int]{66, 66, 70, 74}, "66 (66, 70, 74)"},
		{upTo(7), "1 (2, 3, 4, 5, 6, 7)"},
		{upTo(8), "1 (2, 3, 4, 5) [6, 7, 8]"},
		{upTo(9), "1 (2, 3, 4, 5) [6, 7, 8, 9]"},
		{upTo(10), "1 (2, 3, 4) [5, 6, 7] (8, 9, 10)"}, // worked example I09
	} {
		t.Run(c.want, func(t *testing.T) { require.Equal(t, c.want, grade.Numbers(c.run)) })
	}
	require.Equal(t, "x", grade.Text(grade.Run[int]{1, 2}, func(int) string { return "x" }), "alike is what prints alike")
}

func TestMap(t *testing.T) {
	double := func(n int) (int, error) {
		if n > 2 {
			return 0, errors.New("too many")
		}
		return 2 * n, nil
	}
	r, err := grade.Map(grade.Run[int]{1, 2}, double)
	require.NoError(t, err)
	require.Equal(t, grade.Run[int]{2, 4}, r)

	r, err = grade.Map(grade.Run[int]{1, 3, 4}, double)
	require.Nil(t, r)
	require.EqualError(t, err, "size number 2: too many")
	var se *grade.SizeError
	require.ErrorAs(t, err, &se)
	require.Equal(t, 1, se.Index)
	require.EqualError(t, grade.NameSize(err, grade.Run[string]{"S", "M", "L"}), "size M: too many")
	require.EqualError(t, grade.All(grade.Run[int]{1, 3, 4}, func(n int) error { _, err := double(n); return err }),
		"size number 2: too many\nsize number 3: too many")
}

func TestZipAndFor(t *testing.T) {
	add := func(a int, b string) (string, error) { return strconv.Itoa(a) + b, nil }
	r, err := grade.Zip(grade.Run[int]{1, 2}, grade.Run[string]{"a", "b"}, add)
	require.NoError(t, err)
	require.Equal(t, grade.Run[string]{"1a", "2b"}, r)
	_, err = grade.Zip(grade.Run[int]{1, 2}, grade.Run[string]{"a"}, add)
	require.EqualError(t, err, "values: got 2 beside 1, want two lists of the same length")
	one, err := grade.Run[string]{"a"}.For(3)
	require.NoError(t, err)
	require.Equal(t, grade.Run[string]{"a", "a", "a"}, one)
	_, err = grade.Run[int]{1, 2}.For(3)
	require.EqualError(t, err, "values: got 2, want 1 or 3")
}

func TestSizeError(t *testing.T) {
	e := &grade.SizeError{Index: 2, Size: "XL–2X", Field: "armhole round", Got: "12 in", Want: "at least 13.5 in"}
	require.EqualError(t, e, "size XL–2X: armhole round: got 12 in, want at least 13.5 in")
}

func TestStandardCharts(t *testing.T) {
	for _, name := range grade.Standards() {
		c, err := grade.Standard(name)
		require.NoError(t, err)
		require.NoError(t, c.Validate())
	}
	women, err := grade.Standard("women")
	require.NoError(t, err)
	require.Equal(t, []string{"XS", "S", "M", "L", "XL", "2X", "3X", "4X", "5X"}, women.Sizes)
	b, err := women.Body("M", grade.Chest, gauge.Centimetre)
	require.NoError(t, err)
	require.Equal(t, "91.5 cm to 96.5 cm, one-source", fmt.Sprintf("%v to %v, %v", b.Low, b.High, b.Basis))
	_, err = women.Body("9X", grade.Chest, gauge.Inch)
	require.ErrorIs(t, err, grade.ErrNoSize)
	require.EqualError(t, err, "size 9X: no such size in the chart women; it has XS, S, M, L, XL, 2X, 3X, 4X, 5X")
	child, err := grade.Standard("child")
	require.NoError(t, err)
	_, err = child.Body("2", grade.UpperArm, gauge.Centimetre)
	require.ErrorIs(t, err, grade.ErrNoCell)
	require.EqualError(t, err, "size 2: upper arm: no figure in cm in the chart child")
	_, err = grade.Standard("dog")
	require.ErrorIs(t, err, grade.ErrNoChart)
}

func TestEase(t *testing.T) {
	body := gauge.MustLength("40 in").Measurement()
	for _, c := range []struct{ text, prints, finished string }{
		{"9 in", "9 in", "49 in"}, {"-5%", "-5%", "38 in"}, {"2 1/2 in", "2.5 in", "42.5 in"}, {"+7.5 %", "7.5%", "43 in"},
		{"-2 in", "-2 in", "38 in"}, {"0%", "0%", "40 in"},
	} {
		t.Run(c.text, func(t *testing.T) {
			e, err := grade.ParseEase(c.text)
			require.NoError(t, err)
			require.Equal(t, c.prints, e.String())
			require.True(t, e.Finished(body).Equal(gauge.MustLength(c.finished).Measurement()))
		})
	}
	for _, c := range []struct{ text, want string }{
		{"9 inn", `parse ease: "9 inn": unknown unit "inn"`},
		{"9", `parse ease: "9": no unit; want a length like 9 in or a percentage like -5%`},
		{"-100%", `parse ease: "-100%": Ease.Value: got -100%, want above -100% and at most 1000%`},
		{"x%", `parse ease: "x%": want a percentage like -5%`},
	} {
		t.Run(c.text, func(t *testing.T) {
			_, err := grade.ParseEase(c.text)
			require.EqualError(t, err, c.want)
		})
	}
}

func TestGroups(t *testing.T) {
	women, err := grade.Standard("women")
	require.NoError(t, err)
	groups, err := women.Groups([][]string{{"XS", "S"}, {"M"}, {"XL", "2X", "3X"}})
	require.NoError(t, err)
	require.Equal(t, grade.Run[string]{"XS–S", "M", "XL–3X"}, grade.Labels(groups))
	require.Equal(t, "3X", groups[2].Largest())
	b, err := groups[2].Body(grade.Chest, gauge.Inch)
	require.NoError(t, err)
	require.Equal(t, "44 in to 54 in", b.Low.String()+" to "+b.High.String())
	require.Equal(t, grade.OneSource, b.Basis)

	for _, c := range []struct {
		lists [][]string
		want  string
	}{
		{nil, "groups: got 0, want 1 to 64"},
		{make([][]string, 65), "groups: got 65, want 1 to 64"},
		{[][]string{{"XS"}, {}}, "size number 2: group: got no size, want at least one"},
		{[][]string{{"XS"}, {"6X"}}, "size 6X: no such size in the chart women; it has XS, S, M, L, XL, 2X, 3X, 4X, 5X"},
		{[][]string{{"XS", "S"}, {"S"}}, "size S: group number 2: got it in group number 1 as well, want each size once"},
		{[][]string{{"M"}, {"S"}}, "size S: group number 2: got it after M, want sizes in the order of the chart"},
		{[][]string{{"XS"}, {"M", "XL"}}, "size XL: group number 2: got it beside M, want its neighbour L"},
	} {
		t.Run(c.want, func(t *testing.T) {
			_, err := women.Groups(c.lists)
			require.EqualError(t, err, c.want)
		})
	}
}

// Groups have a chart of their own.
func TestGroupsOwnTheirChart(t *testing.T) {
	c, err := grade.Standard("women")
	require.NoError(t, err)
	groups, err := c.Singles()
	require.NoError(t, err)
	groups[0].Chart.Cells[0], groups[0].Chart.Sizes[0] = grade.Cell{}, ""
	require.NoError(t, c.Validate())
}
