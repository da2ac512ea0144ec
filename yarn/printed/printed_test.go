package printed_test

import (
	"encoding/json"
	"math/rand/v2"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/printed"
	"github.com/stretchr/testify/require"
)

// skeins rounds work at a usage up to skeins.
func skeins(t *testing.T, work gauge.Ratio, usage gauge.Measurement, each yarn.Length) int {
	t.Helper()
	x, err := usage.Times(work).Per(each.Measurement())
	require.NoError(t, err)
	n, err := x.Ceil()
	require.NoError(t, err)
	return n
}

// A list that was made from a usage is right for an interval that holds it: at
// the high end the list comes out, at the low end and beyond the high it does
// not.
func TestUsageInterval(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 4))
	each := yarn.MustLength("210 m")
	nudge := gauge.MeasurementOf(gauge.Int(1), gauge.Millimetre)
	tiny, err := gauge.Share(1, 1_000_000)
	require.NoError(t, err)
	nudge = nudge.Times(tiny)
	for range 500 {
		truth := gauge.MeasurementOf(gauge.Int(rng.IntN(400)+100), gauge.Millimetre)
		var sizes []printed.Size
		work := 500
		for range rng.IntN(8) + 1 {
			work += rng.IntN(900)
			sizes = append(sizes, printed.Size{Work: gauge.Int(work), Skeins: skeins(t, gauge.Int(work), truth, each)})
		}
		iv, err := printed.Usage(each, sizes...)
		require.NoError(t, err)
		require.False(t, iv.None)
		require.True(t, truth.Cmp(iv.Low) > 0 && truth.Cmp(iv.High) <= 0)
		right := func(u gauge.Measurement) bool {
			for _, s := range sizes {
				if skeins(t, s.Work, u, each) != s.Skeins {
					return false
				}
			}
			return true
		}
		require.True(t, right(iv.High))
		require.True(t, right(iv.Low.Add(nudge)))
		require.False(t, right(iv.Low))
		require.False(t, right(iv.High.Add(nudge)))
	}
}

// The low end is not in the interval, the high end is: where they meet, no usage
// is left.
func TestUsageOfASinglePointIsNone(t *testing.T) {
	iv, err := printed.Usage(yarn.MustLength("100 m"), printed.Size{Work: gauge.Int(10), Skeins: 2}, printed.Size{Work: gauge.Int(20), Skeins: 2})
	require.NoError(t, err)
	require.True(t, iv.Low.Equal(iv.High))
	require.True(t, iv.None)
}

// An interval that went through a file says what it said before.
func TestIntervalGoesThroughJSON(t *testing.T) {
	for _, skeins := range []int{5, 8, 1} {
		iv, err := printed.Usage(yarn.MustLength("230 yd"), printed.Size{Name: "S", Work: gauge.Int(1000), Skeins: skeins}, printed.Size{Work: gauge.Int(1500), Skeins: 6})
		require.NoError(t, err)
		b, err := json.Marshal(iv)
		require.NoError(t, err)
		var back printed.Interval
		require.NoError(t, json.Unmarshal(b, &back))
		require.Equal(t, iv.Explain(gauge.Yard), back.Explain(gauge.Yard))
		require.Contains(t, iv.Explain(gauge.Yard), `size "S" (`)
	}
}

func TestUsageRefuses(t *testing.T) {
	each := yarn.MustLength("210 m")
	ok := printed.Size{Work: gauge.Int(100), Skeins: 3}
	for _, c := range []struct {
		name  string
		each  yarn.Length
		sizes []printed.Size
		want  string
	}{
		{"no size", each, nil, "Sizes: got 0, want 1 to 64"},
		{"65 sizes", each, make([]printed.Size, 65), "Sizes: got 65, want 1 to 64"},
		{"no skein", yarn.Length{}, []printed.Size{ok}, "Skein.Unit: got Unit(0), want yd, m, in, ft, cm or mm"},
		{"skein of nothing", yarn.MustLength("0 m"), []printed.Size{ok}, "Skein: got 0 m, want more than 0"},
		{"no work", each, []printed.Size{ok, {Skeins: 2}}, "Sizes[1].Work: got 0.00, want more than 0"},
		{"no skeins", each, []printed.Size{{Work: gauge.Int(1)}}, "Sizes[0].Skeins: got 0, want 1 to 100000"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := printed.Usage(c.each, c.sizes...)
			require.EqualError(t, err, c.want)
		})
	}
	require.Contains(t, printed.Interval{None: true}.Explain(gauge.Inch), "size 1 takes more than")
	require.Contains(t, printed.Interval{LowSize: -1, HighSize: 7}.Explain(gauge.Inch), "size 0 sets the low end, size 8 the high")
	iv, err := printed.Usage(each, ok)
	require.NoError(t, err)
	require.Contains(t, iv.Explain(gauge.Metre), "size 1 (3 skeins) sets the low end")
}

func TestColumnsAcceptsEveryRounding(t *testing.T) {
	for _, c := range []struct {
		first, second string
		ok            bool
	}{
		{"200 yd", "182 m", true}, {"200 yd", "183 m", true}, {"200 yd", "184 m", false}, {"200 yd", "181 m", false},
		{"183 m", "200 yd", true}, {"182 m", "200 yd", true}, {"182 m", "198 yd", true}, {"182 m", "201 yd", false},
		{"100 yd", "101 yd", false}, {"100 yd", "100.5 yd", true},
	} {
		found, err := printed.Columns(lengths(c.first), lengths(c.second))
		require.NoError(t, err)
		require.Equal(t, c.ok, len(found) == 0, "%s and %s: %v", c.first, c.second, found)
	}
}

func TestChecksRefuse(t *testing.T) {
	each := yarn.MustLength("210 m")
	for _, c := range []struct {
		name string
		run  func() error
		want string
	}{
		{"no column", func() error { _, err := printed.Columns(nil, nil); return err }, "First: got 0, want 1 to 64"},
		{"columns of two lengths", func() error { _, err := printed.Columns(lengths("1 m"), nil); return err }, "Second: got 0, want as many sizes as the first column, 1"},
		{"first of nothing", func() error { _, err := printed.Columns(lengths("0 m"), lengths("1 yd")); return err }, "First[0]: got 0 m, want more than 0"},
		{"second of nothing", func() error { _, err := printed.Columns(lengths("1 m"), lengths("0 yd")); return err }, "Second[0]: got 0 yd, want more than 0"},
		{"no balls", func() error { _, err := printed.Balls(nil, each, nil); return err }, "Balls: got 0, want 1 to 64"},
		{"balls without needs", func() error { _, err := printed.Balls(nil, each, []int{1}); return err }, "Lengths: got 0, want as many sizes as balls, 1"},
		{"ball of nothing", func() error { _, err := printed.Balls(lengths("1 m"), yarn.Length{}, []int{1}); return err }, "Each.Unit: got Unit(0), want yd, m, in, ft, cm or mm"},
		{"no ball", func() error { _, err := printed.Totals([]int{0}, each, lengths("1 m")); return err }, "Balls[0]: got 0, want 1 to 100000"},
		{"total of nothing", func() error { _, err := printed.Totals([]int{1}, each, lengths("0 m")); return err }, "Lengths[0]: got 0 m, want more than 0"},
	} {
		t.Run(c.name, func(t *testing.T) { require.EqualError(t, c.run(), c.want) })
	}
}

func BenchmarkUsage(b *testing.B) {
	var sizes []printed.Size
	for i := range 9 {
		sizes = append(sizes, printed.Size{Work: gauge.Int(1400 + 150*i), Skeins: 7 + i*3/4})
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := printed.Usage(yarn.MustLength("210 m"), sizes...); err != nil {
			b.Fatal(err)
		}
	}
}
