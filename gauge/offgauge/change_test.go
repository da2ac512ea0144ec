package offgauge_test

import (
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/gauge/offgauge"
	"github.com/stretchr/testify/require"
)

// over is a literal.
func over(s string) gauge.Over {
	o, err := gauge.ParseOver(s)
	if err != nil {
		panic(err)
	}
	return o
}

func change(pattern, mine string) offgauge.Change {
	return offgauge.Change{Pattern: over(pattern), Mine: over(mine)}
}

// A pattern at 5 sts to the inch casts on 98 and binds off 30 for the neck; the
// maker gets 6.5. (Numbers of a published question:
// https://annbuddknits.com/blog/page/87/)
func Example() {
	c := change("5 over 1 in", "6.5 over 1 in")
	made, err := c.Measures(gauge.MustLength("19.6 in").Measurement())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("as written it comes out at", gauge.QuarterInch.Text(made))
	for _, rule := range []gauge.Rule{{}, {Multiple: 2}, {Multiple: 2, Direction: gauge.NearestTiesDown}} {
		row, err := c.Centred(98, 30, rule)
		fmt.Printf("%v: %s %v\n", rule, row.Explain(), err)
	}
	// Output:
	// as written it comes out at 15 in
	// any: 127 = 44 + 39 + 44 <nil>
	// even: 128 = 44 + 40 + 44 <nil>
	// even, ties down: 128 = 45 + 38 + 45 <nil>
}

func ExampleChange_Measures() {
	m, err := change("4 over 1 in", "5 over 1 in").Measures(gauge.MustLength("40 in").Measurement())
	fmt.Println(gauge.QuarterInch.Text(m), err)
	// Output:
	// 32 in <nil>
}

func ExampleChange_Exact() {
	x, err := change("5 over 1 in", "6.5 over 1 in").Exact(98)
	fmt.Println(x, err)
	// Output:
	// 637/5 <nil>
}

func ExampleChange_Count() {
	n, err := change("5 over 1 in", "4 over 1 in").Count(96, gauge.Rule{Multiple: 6})
	fmt.Println(n.Explain(), err)
	// Output:
	// 76.8 lies between 72 (about 1¼ in short) and 78 (about ¼ in over), multiple of 6: the nearest is 78 <nil>
}

func ExampleChange_Counts() {
	counts, err := change("5 over 1 in", "4 over 1 in").Counts([]int{96, 102}, gauge.Rule{Multiple: 6})
	for _, n := range counts {
		fmt.Println(n.Value, n.Deviation().In(gauge.Inch).Text(1), "in")
	}
	fmt.Println(err)
	// Output:
	// 78 0.3 in
	// 84 0.6 in
	// <nil>
}

func ExampleChange_Alike() {
	counts, err := change("5 over 1 in", "6.5 over 1 in").Alike([]int{98, 106, 114}, 2)
	for _, n := range counts {
		fmt.Println(n.Exact.Text(1), n.Value)
	}
	fmt.Println(err)
	// Output:
	// 127.4 128
	// 137.8 138
	// 148.2 148
	// <nil>
}

func ExampleChange_Centred() {
	// 91 with a centred neck: an odd number stays odd.
	row, err := change("18 over 10 cm", "16 over 10 cm").Centred(91, 31, gauge.Rule{Multiple: 2, Plus: 1})
	fmt.Println(row.Explain(), err)
	// Output:
	// 81 = 27 + 27 + 27 <nil>
}

func ExampleCentred_Explain() {
	row, _ := change("5 over 1 in", "6.5 over 1 in").Centred(98, 30, gauge.Rule{})
	fmt.Println(row.Explain())
	// Output:
	// 127 = 44 + 39 + 44
}

func ExampleChange_Parts() {
	c := change("18 over 10 cm", "16 over 10 cm")
	for _, parts := range [][]int{{34, 24, 34}, {40, 7, 40, 12}} {
		row, err := c.Parts(parts, gauge.Rule{})
		fmt.Println(row.Explain(), err)
	}
	// Output:
	// 82 = 30 + 22 + 30 <nil>
	// 88 = 36 + 6 + 35 + 11 <nil>
}

func ExampleParts_Explain() {
	row, _ := change("18 over 10 cm", "16 over 10 cm").Parts([]int{34, 24, 34}, gauge.Rule{})
	fmt.Println(row.Explain())
	// Output:
	// 82 = 30 + 22 + 30
}

func ExampleChange_Validate() {
	fmt.Println(offgauge.Change{Pattern: over("5 over 1 in")}.Validate())
	// Output:
	// Change.Mine.Count: got 0, want more than 0
}

// Parts add up, none is more than a stitch off its share, and a list that reads
// the same from either end still does.
func TestParts(t *testing.T) {
	rnd := rand.New(rand.NewPCG(9, 10))
	mirrored := 0
	for range 3000 {
		var parts []int
		for range 1 + rnd.IntN(6) {
			parts = append(parts, rnd.IntN(40))
		}
		if rnd.IntN(2) == 0 { // mirror it
			for i := range parts {
				parts[len(parts)-1-i] = parts[i]
			}
		}
		sum := 0
		for _, n := range parts {
			sum += n
		}
		if sum == 0 {
			continue
		}
		same := true
		for i := range parts {
			same = same && parts[i] == parts[len(parts)-1-i]
		}
		c := change(fmt.Sprintf("%d over 4 in", 10+rnd.IntN(20)), fmt.Sprintf("%d over 10 cm", 10+rnd.IntN(20)))
		got, err := c.Parts(parts, gauge.Rule{Multiple: 1 + rnd.IntN(3)})
		if err != nil {
			require.ErrorIs(t, err, gauge.ErrNoCount)
			require.True(t, same, "%v", parts)
			require.True(t, len(parts)%2 == 0 || parts[len(parts)/2] == 0, "%v", parts)
			continue
		}
		whole := 0
		for i, n := range got.Parts {
			whole += n
			require.GreaterOrEqual(t, n, 0)
			off := n*sum - parts[i]*got.Whole.Value
			require.LessOrEqual(t, max(off, -off), sum, "%v became %v", parts, got.Parts)
			if same {
				require.Equal(t, n, got.Parts[len(parts)-1-i], "%v became %v", parts, got.Parts)
			}
		}
		require.Equal(t, got.Whole.Value, whole)
		if same {
			mirrored++
		}
	}
	require.Greater(t, mirrored, 300)
}

// Half a stitch at a border goes to the right, and outward where the parts mirror
// each other.
func TestPartsTies(t *testing.T) {
	c := change("4 over 1 in", "6 over 1 in")
	for _, p := range []struct {
		parts []int
		want  string
	}{
		{[]int{1, 3}, "6 = 2 + 4"}, {[]int{3, 1}, "6 = 5 + 1"}, {[]int{1, 2, 1}, "6 = 1 + 4 + 1"}, {[]int{1, 1, 1, 1}, "6 = 1 + 2 + 2 + 1"}, {[]int{2, 0, 2}, "6 = 3 + 0 + 3"},
	} {
		got, err := c.Parts(p.parts, gauge.Rule{})
		require.NoError(t, err)
		require.Equal(t, p.want, got.Explain(), "%v", p.parts)
	}
}

// The centre is never more than a stitch off, and the row adds up.
func TestCentred(t *testing.T) {
	c := change("5 over 1 in", "6.5 over 1 in")
	for whole := 40; whole < 120; whole++ {
		for centre := whole % 2; centre < 30; centre += 2 {
			got, err := c.Centred(whole, centre, gauge.Rule{})
			require.NoError(t, err)
			require.Equal(t, got.Whole.Value, 2*got.Side+got.Centre.Value)
			off := got.Centre.Off()
			require.True(t, off.Cmp(gauge.Int(1)) <= 0 && off.Cmp(gauge.Int(-1)) >= 0, "%d in %d: %v", centre, whole, got)
		}
	}
}

// No remainder does better than the one that Alike takes.
func TestAlike(t *testing.T) {
	c := change("18 over 4 in", "15 over 10 cm")
	numbers := []int{61, 73, 88, 100}
	worst := func(counts []gauge.Count) gauge.Ratio {
		w := gauge.Int(0)
		for _, n := range counts {
			for _, off := range []gauge.Ratio{n.Off(), gauge.Int(0).Sub(n.Off())} {
				if off.Cmp(w) > 0 {
					w = off
				}
			}
		}
		return w
	}
	for multiple := 1; multiple <= 12; multiple++ {
		got, err := c.Alike(numbers, multiple)
		require.NoError(t, err)
		for plus := range multiple {
			other, err := c.Counts(numbers, gauge.Rule{Multiple: multiple, Plus: plus})
			require.NoError(t, err)
			require.LessOrEqual(t, worst(got).Cmp(worst(other)), 0)
		}
		for _, n := range got {
			require.Equal(t, got[0].Value%multiple, n.Value%multiple)
		}
	}
	empty, err := c.Alike(nil, 2)
	require.NoError(t, err)
	require.Empty(t, empty)
}

func TestRefuses(t *testing.T) {
	good := change("5 over 1 in", "6.5 over 1 in")
	for name, c := range map[string]struct {
		call func(offgauge.Change) error
		want string
	}{
		"count":           {func(c offgauge.Change) error { _, err := c.Count(-1, gauge.Rule{}); return err }, "n: got -1, want 0 to 100000"},
		"too many":        {func(c offgauge.Change) error { _, err := c.Count(90_000, gauge.Rule{}); return err }, "Count: got about 117000, want at most 100000"},
		"counts":          {func(c offgauge.Change) error { _, err := c.Counts([]int{3, -1}, gauge.Rule{}); return err }, "number 2 of the list, -1: n: got -1, want 0 to 100000"},
		"rule":            {func(c offgauge.Change) error { _, err := c.Count(1, gauge.Rule{Least: -1}); return err }, "Rule.Least: got -1, want 0 to 100000"},
		"alike":           {func(c offgauge.Change) error { _, err := c.Alike([]int{3}, 101); return err }, "multiple: got 101, want 1 to 100"},
		"alike, a number": {func(c offgauge.Change) error { _, err := c.Alike([]int{-3}, 2); return err }, "number 1 of the list, -3: n: got -3, want 0 to 100000"},
		"centre too wide": {func(c offgauge.Change) error { _, err := c.Centred(30, 32, gauge.Rule{}); return err }, "centre: got 32, want at most 30, and odd or even as it is"},
		"centre odd":      {func(c offgauge.Change) error { _, err := c.Centred(98, 31, gauge.Rule{}); return err }, "centre: got 31, want at most 98, and odd or even as it is"},
		"whole":           {func(c offgauge.Change) error { _, err := c.Centred(90_000, 30, gauge.Rule{}); return err }, "whole: Count: got about 117000, want at most 100000"},
		"centre negative": {func(c offgauge.Change) error { _, err := c.Centred(98, -2, gauge.Rule{}); return err }, "centre: n: got -2, want 0 to 100000"},
		"centre, no whole": {func(c offgauge.Change) error {
			_, err := c.Centred(7, 7, gauge.Rule{Multiple: 20, Plus: 6})
			return err
		}, "centre of 10 in a whole of 6: no legal count"},
		"no parts":        {func(c offgauge.Change) error { _, err := c.Parts(nil, gauge.Rule{}); return err }, "parts: got a sum of 0, want at least 1 stitch"},
		"part":            {func(c offgauge.Change) error { _, err := c.Parts([]int{3, -1}, gauge.Rule{}); return err }, "parts[1]: got -1, want not negative, and a sum of at most 100000"},
		"sum":             {func(c offgauge.Change) error { _, err := c.Parts([]int{60_000, 60_000}, gauge.Rule{}); return err }, "parts[1]: got 60000, want not negative, and a sum of at most 100000"},
		"parts, too many": {func(c offgauge.Change) error { _, err := c.Parts([]int{90_000}, gauge.Rule{}); return err }, "Count: got about 117000, want at most 100000"},
		"halves": {func(c offgauge.Change) error {
			_, err := c.Parts([]int{7, 7}, gauge.Rule{Multiple: 2, Plus: 1})
			return err
		}, "parts that mirror each other in 19: no legal count; want an even whole"},
		"empty middle": {func(c offgauge.Change) error {
			_, err := c.Parts([]int{7, 0, 7}, gauge.Rule{Multiple: 2, Plus: 1})
			return err
		}, "parts that mirror each other in 19: no legal count; want an even whole"},
	} {
		t.Run(name, func(t *testing.T) { require.EqualError(t, c.call(good), c.want) })
	}
	for _, bad := range []offgauge.Change{{}, {Pattern: good.Pattern}, {Mine: good.Mine}} {
		require.Error(t, bad.Validate())
		_, err := bad.Measures(gauge.Measurement{})
		require.Error(t, err)
		_, err = bad.Exact(3)
		require.Error(t, err)
		_, err = bad.Centred(98, 30, gauge.Rule{})
		require.Error(t, err)
		_, err = bad.Parts([]int{98}, gauge.Rule{})
		require.Error(t, err)
	}
}

func TestJSON(t *testing.T) {
	b, err := json.Marshal(change("5 over 1 in", "6.5 over 1 in"))
	require.NoError(t, err)
	require.Equal(t, `{"pattern":"5 over 1 in","mine":"6.5 over 1 in"}`, string(b))
	var back offgauge.Change
	require.NoError(t, json.Unmarshal(b, &back))
	x, err := back.Exact(98)
	require.NoError(t, err)
	require.Equal(t, "637/5", x.String())
	row, err := back.Parts([]int{34, 30, 34}, gauge.Rule{})
	require.NoError(t, err)
	b, err = json.Marshal(row)
	require.NoError(t, err)
	require.Contains(t, string(b), `"parts":[44,39,44]`)
}
