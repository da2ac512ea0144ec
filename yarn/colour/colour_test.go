package colour_test

import (
	"fmt"
	"math/big"
	"math/rand/v2"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/colour"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

// painter is the slow reference: it looks a colour up at one place of the yarn,
// in millimetres, by walking along it.
type painter []colour.Run

func (p painter) at(place *big.Rat) string {
	x := new(big.Rat).Set(place)
	for {
		for _, r := range p {
			l := r.Length.Measurement().In(gauge.Millimetre).Rat()
			if x.Cmp(l) < 0 {
				return r.String()
			}
			x.Sub(x, l)
		}
	}
}

func millimetres(n int) yarn.Length {
	return yarn.Length{Value: decimal.NewFromInt(int64(n)), Unit: gauge.Millimetre}
}

// generate returns a repeating sequence and a panel whose rows differ.
func generate(rng *rand.Rand) (colour.Sequence, []colour.Row) {
	s := colour.Sequence{Repeats: true}
	for i := range rng.IntN(4) + 1 {
		s.Runs = append(s.Runs, colour.Run{Colour: fmt.Sprint("c", i), Length: millimetres(rng.IntN(900) + 100)})
	}
	var rows []colour.Row
	for range rng.IntN(12) + 1 {
		n := rng.IntN(9) + 1
		rows = append(rows, colour.Row{Stitches: n, Yarn: gauge.MeasurementOf(gauge.Int(n*(rng.IntN(30)+20)), gauge.Millimetre)})
	}
	return s, rows
}

// stitches returns the place on the yarn at which each stitch begins, and at
// which it ends, from the panel's beginning.
func stitches(rows []colour.Row) (begin, end []*big.Rat) {
	at := new(big.Rat)
	for _, r := range rows {
		each := new(big.Rat).Quo(r.Yarn.In(gauge.Millimetre).Rat(), big.NewRat(int64(r.Stitches), 1))
		for range r.Stitches {
			begin = append(begin, new(big.Rat).Set(at))
			at = new(big.Rat).Add(at, each)
			end = append(end, new(big.Rat).Set(at))
		}
	}
	return begin, end
}

// Colour ends against a simulation that works stitch by stitch.
func TestEndsAgainstSimulation(t *testing.T) {
	rng := rand.New(rand.NewPCG(8, 1))
	ends := 0
	for range 300 {
		s, rows := generate(rng)
		from := gauge.MeasurementOf(gauge.Int(rng.IntN(3000)), gauge.Millimetre)
		c, err := colour.Ends(s, from, rows)
		require.NoError(t, err)
		ends += len(c.Ends)

		// Walk along the yarn: every place where a run ends is one end, in the stitch that covers it.
		begin, end := stitches(rows)
		offset := from.In(gauge.Millimetre).Rat()
		place := new(big.Rat)
		var want []string
		for run := 0; ; run = (run + 1) % len(s.Runs) {
			place.Add(place, s.Runs[run].Length.Measurement().In(gauge.Millimetre).Rat())
			inside := new(big.Rat).Sub(place, offset)
			if inside.Sign() <= 0 {
				continue
			}
			if inside.Cmp(end[len(end)-1]) > 0 {
				break
			}
			stitch := 0
			for end[stitch].Cmp(inside) < 0 {
				stitch++
			}
			row, done := 0, 0
			for k := range stitch {
				done++
				if done == rows[row].Stitches {
					row, done = row+1, 0
				}
				_ = k
			}
			part := new(big.Rat).Sub(inside, begin[stitch])
			part.Quo(part, new(big.Rat).Sub(end[stitch], begin[stitch]))
			if part.Cmp(big.NewRat(1, 1)) == 0 {
				part.SetInt64(0)
				done++
			}
			want = append(want, fmt.Sprint(s.Runs[run], " ", row+1, " ", done, " ", part.RatString(), " ", s.Runs[(run+1)%len(s.Runs)]))
		}
		var got []string
		for _, e := range c.Ends {
			got = append(got, fmt.Sprint(e.Colour, " ", e.Row, " ", e.Stitches, " ", e.Part, " ", e.Next))
		}
		require.Equal(t, want, got)
	}
	require.Greater(t, ends, 500)
}

// symmetric returns a sequence that reads the same both ways about some place.
func symmetric(rng *rand.Rand) colour.Sequence {
	a, b, c := rng.IntN(300)+50, rng.IntN(300)+50, rng.IntN(300)+50
	s := colour.Sequence{Repeats: true, Runs: []colour.Run{
		{Colour: "a", To: "b", Length: millimetres(a)}, {Colour: "b", Length: millimetres(b)}, {Colour: "b", To: "a", Length: millimetres(a)}, {Colour: "a", Length: millimetres(c)}}}
	turn := rng.IntN(4)
	s.Runs = append(append([]colour.Run(nil), s.Runs[turn:]...), s.Runs[:turn]...)
	return s
}

// reversed is the name of a run as it looks from its other end.
func reversed(name string, runs []colour.Run) string {
	for _, r := range runs {
		if r.String() == name && r.To != "" {
			return colour.Run{Colour: r.To, To: r.Colour}.String()
		}
	}
	return name
}

// The second panel looks as it should, stitch by stitch near the middle of each
// stitch, and takes no yarn that the first has taken.
func TestSecondAgainstSimulation(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 7))
	seen := map[string]int{}
	for i := range 400 {
		s, rows := generate(rng)
		if i%2 == 0 {
			s = symmetric(rng)
		}
		n := rng.IntN(6) + 1
		rows = colour.Equal(n, rows[0])
		used := rows[0].Yarn.Times(gauge.Int(n))
		from := gauge.MeasurementOf(gauge.Int(rng.IntN(500)), gauge.Millimetre)
		skein, err := from.Add(used.Times(gauge.Int(rng.IntN(3) + 2))).In(gauge.Millimetre).Ceil()
		require.NoError(t, err)
		k := colour.Skeins{Sequence: s, Each: millimetres(skein)}
		fresh := new(big.Rat)
		if i%3 > 0 {
			k.Fresh = millimetres(rng.IntN(1500))
			fresh = k.Fresh.Measurement().In(gauge.Millimetre).Rat()
		}
		for _, style := range []colour.Style{colour.Repeated, colour.Mirrored} {
			start, err := colour.Second(k, from, used, style)
			if err != nil { // only where the right place of a new skein lies too far in
				require.ErrorIs(t, err, colour.ErrShort)
				require.Positive(t, fresh.Sign())
				seen["short"]++
				continue
			}
			seen[fmt.Sprint(style, start.NewSkein, start.Backward)]++
			taken := from.Add(used)
			if start.NewSkein {
				taken = gauge.Measurement{}
			}
			low, high := start.At, start.At.Add(used)
			if start.Backward {
				low, high = start.At.Sub(used), start.At
			}
			require.GreaterOrEqual(t, low.Cmp(taken), 0)
			require.LessOrEqual(t, high.Cmp(k.Each.Measurement()), 0)
			require.True(t, start.Cut.Add(start.Left).Equal(k.Each.Measurement().Sub(used).Sub(taken)), "all of the skein is accounted for")

			p := painter(s.Runs)
			begin, end := stitches(rows)
			offset, at := from.In(gauge.Millimetre).Rat(), start.At.In(gauge.Millimetre).Rat()
			for j := range begin {
				middle := new(big.Rat).Sub(end[j], begin[j])
				middle.Mul(middle, big.NewRat(5003, 10007)).Add(middle, begin[j]) // never just where a colour ends
				place := new(big.Rat).Add(at, middle)
				if start.Backward {
					place.Sub(at, middle)
				}
				if start.NewSkein {
					place.Add(place, fresh)
				}
				second := p.at(place)
				if start.Backward {
					second = reversed(second, s.Runs)
				}
				want := new(big.Rat).Add(offset, middle)
				if style == colour.Mirrored {
					want.Sub(new(big.Rat).Add(offset, end[len(end)-1]), middle)
				}
				first := p.at(want)
				if style == colour.Mirrored {
					first = reversed(first, s.Runs)
				}
				require.Equal(t, first, second, "stitch %d %v", j, start.Explain())
			}
		}
	}
	for _, way := range []string{"repeated false false", "repeated true false", "mirrored false false", "mirrored false true", "mirrored true false", "mirrored true true", "short"} {
		require.Positive(t, seen[way], "%v %v", way, seen)
	}
}

// A yarn that changes once from end to end has no second place like the first:
// a new skein, at the same place or from its other end.
func TestSecondOfAYarnThatRunsOnce(t *testing.T) {
	k := colour.Skeins{Each: yarn.MustLength("400 m"), Sequence: colour.Sequence{Runs: []colour.Run{{Colour: "white", To: "black", Length: yarn.MustLength("400 m")}}}}
	start, err := colour.Second(k, metres("30"), metres("150"), colour.Repeated)
	require.NoError(t, err)
	require.Equal(t, "repeated: take a new skein; start 30 m from the beginning of the skein; 30 m are cut away, 220 m are left", start.Explain())
	start, err = colour.Second(k, metres("30"), metres("150"), colour.Mirrored)
	require.NoError(t, err)
	require.Equal(t, "mirrored: take a new skein, wound off from its other end; start 180 m from the beginning of the skein; 220 m are cut away, 30 m are left", start.Explain())
}

func TestMirrorsOfAGradient(t *testing.T) {
	// There and back again: the turn is a place to mirror about, so nothing need be wound off.
	k := colour.Skeins{Each: yarn.MustLength("400 m"), Sequence: colour.Sequence{Repeats: true, Runs: []colour.Run{
		{Colour: "white", To: "black", Length: yarn.MustLength("50 m")}, {Colour: "black", To: "white", Length: yarn.MustLength("50 m")}}}}
	start, err := colour.Second(k, gauge.Measurement{}, metres("150"), colour.Mirrored)
	require.NoError(t, err)
	require.Equal(t, "mirrored: go on with the same skein; start 150 m from the beginning of the skein; nothing is cut away, 100 m are left", start.Explain())
}

// Each band of the second panel ends where the first's does, and needs what its
// rows take: against a sum over small slices of rows.
func TestLineUpAgainstSimulation(t *testing.T) {
	rng := rand.New(rand.NewPCG(10, 3))
	for range 200 {
		s, first := generate(rng)
		var second []colour.Row
		for range first {
			second = append(second, colour.Row{Stitches: rng.IntN(9) + 1, Yarn: gauge.MeasurementOf(gauge.Int(rng.IntN(300)+20), gauge.Millimetre)})
		}
		from := gauge.MeasurementOf(gauge.Int(rng.IntN(2000)), gauge.Millimetre)
		bands, err := colour.LineUp(s, from, first, second)
		require.NoError(t, err)
		var given, needed gauge.Measurement
		at := gauge.Ratio{}
		for i, b := range bands {
			require.True(t, b.From.Equal(at))
			require.Equal(t, -1, b.From.Cmp(b.To))
			at = b.To
			given, needed = given.Add(b.Given), needed.Add(b.Needed)
			require.True(t, b.Given.Sub(b.Needed).Equal(b.Cut.Sub(b.Short)))
			require.True(t, b.Cut.Sign() == 0 || b.Short.Sign() == 0)
			require.True(t, yarnBetween(t, first, b.From, b.To).Equal(b.Given), "band %d", i)
			require.True(t, yarnBetween(t, second, b.From, b.To).Equal(b.Needed), "band %d", i)
		}
		require.True(t, at.Equal(gauge.Int(len(first))))
		total := func(rows []colour.Row) (m gauge.Measurement) {
			for _, r := range rows {
				m = m.Add(r.Yarn)
			}
			return m
		}
		require.True(t, given.Equal(total(first)) && needed.Equal(total(second)))
		same, err := colour.LineUp(s, from, first, first)
		require.NoError(t, err)
		for _, b := range same {
			require.True(t, b.Cut.Sign() == 0 && b.Short.Sign() == 0)
		}
	}
}

// yarnBetween returns what rows take from one place to another, counted in rows.
func yarnBetween(t *testing.T, rows []colour.Row, from, to gauge.Ratio) gauge.Measurement {
	t.Helper()
	var m gauge.Measurement
	for i, r := range rows {
		a, b := gauge.Int(i), gauge.Int(i+1)
		if from.Cmp(a) > 0 {
			a = from
		}
		if to.Cmp(b) < 0 {
			b = to
		}
		if a.Cmp(b) < 0 {
			m = m.Add(r.Yarn.Times(b.Sub(a)))
		}
	}
	return m
}

// The parts of a split sum up to the whole.
func TestSplit(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 2))
	for range 100 {
		m := gauge.MeasurementOf(gauge.Int(rng.IntN(100_000)+1), gauge.Millimetre)
		var sts []int
		for range rng.IntN(6) + 1 {
			sts = append(sts, rng.IntN(200)+1)
		}
		parts, err := colour.Split(m, sts...)
		require.NoError(t, err)
		var sum gauge.Measurement
		for _, p := range parts {
			sum = sum.Add(p)
		}
		require.True(t, sum.Equal(m))
	}
	for _, c := range []struct {
		sts  []int
		want string
	}{{nil, "Stitches: got no part, want at least one"}, {[]int{0, 0}, "Stitches: got 0 together, want more than 0"}, {[]int{4, -1}, "Stitches[1]: got -1, want 0 to 100000"}} {
		_, err := colour.Split(metres("1"), c.sts...)
		require.EqualError(t, err, c.want)
	}
}

func TestColourRefuses(t *testing.T) {
	ok := colour.Sequence{Repeats: true, Runs: []colour.Run{{Colour: "a", Length: yarn.MustLength("1 m")}, {Colour: "b", Length: yarn.MustLength("1 m")}}}
	once := colour.Sequence{Runs: ok.Runs}
	row := colour.Row{Stitches: 10, Yarn: metres("1")}
	seq := func(runs ...colour.Run) colour.Sequence { return colour.Sequence{Repeats: true, Runs: runs} }
	ends := func(s colour.Sequence, from gauge.Measurement, rows ...colour.Row) func() error {
		return func() error { _, err := colour.Ends(s, from, rows); return err }
	}
	second := func(k colour.Skeins, from, used gauge.Measurement, style colour.Style) func() error {
		return func() error { _, err := colour.Second(k, from, used, style); return err }
	}
	minus := gauge.MustLength("-1 m").Measurement()
	skeins := colour.Skeins{Sequence: ok, Each: yarn.MustLength("50 m")}
	for _, c := range []struct {
		name string
		run  func() error
		want string
	}{
		{"no run", ends(colour.Sequence{}, gauge.Measurement{}, row), "Sequence.Runs: got 0, want 1 to 256"},
		{"no colour", ends(seq(colour.Run{Length: yarn.MustLength("1 m")}), gauge.Measurement{}, row), "Sequence.Runs[0].Colour: got none, want the name of a colour"},
		{"no length", ends(seq(colour.Run{Colour: "a"}), gauge.Measurement{}, row), "Sequence.Runs[0].Length.Unit: got Unit(0), want yd, m, in, ft, cm or mm"},
		{"length of nothing", ends(seq(colour.Run{Colour: "a", Length: yarn.MustLength("0 m")}), gauge.Measurement{}, row), "Sequence.Runs[0].Length: got 0 m, want more than 0"},
		{"one colour at the seam of the sequence", ends(seq(ok.Runs[0], ok.Runs[1], ok.Runs[0]), gauge.Measurement{}, row), `Sequence.Runs[2]: got two runs of "a" side by side, want one run`},
		{"negative place", ends(ok, minus, row), "From: got less than nothing, want at least 0"},
		{"place beyond the world", ends(ok, metres("100000").Times(gauge.Int(2)), row), "From: got more than 100 km, want at most 100 km"},
		{"no row", ends(ok, gauge.Measurement{}), "Rows: got 0, want 1 to 100000"},
		{"row without stitches", ends(ok, gauge.Measurement{}, colour.Row{Yarn: metres("1")}), "Rows[0].Stitches: got 0, want 1 to 100000"},
		{"row without yarn", ends(ok, gauge.Measurement{}, row, colour.Row{Stitches: 1}), "Rows[1].Yarn: got 0 mm, want more than 0"},
		{"endless rows", ends(ok, gauge.Measurement{}, colour.Row{Stitches: 1, Yarn: metres("60000")}, colour.Row{Stitches: 1, Yarn: metres("60000")}), "Rows: got more than 100 km of yarn, want at most 100 km"},
		{"ends without end", ends(seq(colour.Run{Colour: "a", Length: yarn.MustLength("1 mm")}), gauge.Measurement{}, colour.Row{Stitches: 1, Yarn: metres("99000")}), "Ends: got more than 100000, want at most 100000"},
		{"yarn runs out", ends(once, gauge.Measurement{}, colour.Equal(3, row)...), "follow the colours through 3 rows: the yarn runs out: 1 m are missing"},
		{"panels of different rows", func() error {
			_, err := colour.LineUp(ok, gauge.Measurement{}, colour.Equal(3, row), colour.Equal(2, row))
			return err
		}, "Second: got 2 rows, want as many rows as the first panel, 3"},
		{"second panel without yarn", func() error {
			_, err := colour.LineUp(ok, gauge.Measurement{}, []colour.Row{row}, []colour.Row{{Stitches: 1}})
			return err
		}, "Second[0].Yarn: got 0 mm, want more than 0"},
		{"line up with no run", func() error {
			_, err := colour.LineUp(colour.Sequence{}, gauge.Measurement{}, []colour.Row{row}, []colour.Row{row})
			return err
		}, "Sequence.Runs: got 0, want 1 to 256"},
		{"skeins without runs", second(colour.Skeins{}, gauge.Measurement{}, metres("1"), colour.Repeated), "Skeins.Sequence.Runs: got 0, want 1 to 256"},
		{"skein of nothing", second(colour.Skeins{Sequence: ok, Each: yarn.MustLength("0 m")}, gauge.Measurement{}, metres("1"), colour.Repeated), "Skeins.Each: got 0 m, want more than 0"},
		{"fresh without unit", second(colour.Skeins{Sequence: ok, Each: skeins.Each, Fresh: yarn.Length{Value: decimal.NewFromInt(1)}}, gauge.Measurement{}, metres("1"), colour.Repeated), "Skeins.Fresh.Unit: got Unit(0), want yd, m, in, ft, cm or mm"},
		{"fresh of a yarn that runs once", second(colour.Skeins{Sequence: once, Each: yarn.MustLength("1 m"), Fresh: yarn.MustLength("1 m")}, gauge.Measurement{}, metres("1"), colour.Repeated), "Skeins.Fresh: got 1 m, want none: a yarn that runs once begins at its beginning"},
		{"a new skein that begins in the wrong place", second(colour.Skeins{Sequence: ok, Each: yarn.MustLength("3 m"), Fresh: yarn.MustLength("1.5 m")}, metres("1"), metres("2"), colour.Repeated), "match a second panel: the yarn runs out: no place on a new skein of 3 m leaves 2 m for it"},
		{"skein longer than its runs", second(colour.Skeins{Sequence: once, Each: yarn.MustLength("3 m")}, gauge.Measurement{}, metres("1"), colour.Repeated), "Skeins.Each: got 3 m, want no more than the runs together"},
		{"second from a negative place", second(skeins, minus, metres("1"), colour.Repeated), "From: got less than nothing, want at least 0"},
		{"second of nothing", second(skeins, gauge.Measurement{}, gauge.Measurement{}, colour.Repeated), "Used: got 0 mm, want more than 0"},
		{"second of no style", second(skeins, gauge.Measurement{}, metres("1"), 9), "Style: got Style(9), want repeated or mirrored"},
		{"nothing left for the second", second(skeins, metres("1"), metres("49.5"), colour.Repeated), "match a second panel: the yarn runs out: the first takes 50.5 m and the skein holds 50 m"},
	} {
		t.Run(c.name, func(t *testing.T) { require.EqualError(t, c.run(), c.want) })
	}
	require.Empty(t, colour.Equal(-1, row))
	var s colour.Style
	require.Error(t, s.UnmarshalText([]byte("sideways")))
}

func TestAYarnMayEndWithThePanel(t *testing.T) {
	s := colour.Sequence{Runs: []colour.Run{{Colour: "a", Length: yarn.MustLength("3 m")}}}
	c, err := colour.Ends(s, metres("1"), colour.Equal(2, colour.Row{Stitches: 10, Yarn: metres("1")}))
	require.NoError(t, err)
	require.Len(t, c.Ends, 1)
	require.Equal(t, "a ends in row 2 after 10 stitches", c.Ends[0].String())
	require.Empty(t, c.Ends[0].Next)
	c, err = colour.Ends(s, metres("3"), []colour.Row{})
	require.Error(t, err)
	require.Empty(t, c.Ends)
}

func BenchmarkEnds(b *testing.B) {
	rows := colour.Equal(88, colour.Row{Stitches: 163, Yarn: metres("8.3")})
	b.ReportAllocs()
	for b.Loop() {
		if _, err := colour.Ends(stripes(), metres("5"), rows); err != nil {
			b.Fatal(err)
		}
	}
}

// A hundred thousand rows that share no denominator are refused at once.
func TestEndlessFractionsAreRefused(t *testing.T) {
	rows := make([]colour.Row, colour.MaxRows)
	for i := range rows {
		part, err := gauge.Share(1, 1_000_000_007+2*i)
		require.NoError(t, err)
		rows[i] = colour.Row{Stitches: 1, Yarn: gauge.MeasurementOf(part, gauge.Metre)}
	}
	_, err := colour.Ends(stripes(), gauge.Measurement{}, rows)
	require.ErrorIs(t, err, gauge.ErrBounds)
}
