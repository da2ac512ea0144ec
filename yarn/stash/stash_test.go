package stash_test

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/stash"
	"github.com/stretchr/testify/require"
)

func whole(n int) gauge.Measurement { return gauge.MeasurementOf(gauge.Int(n), gauge.Metre) }

// fewest tries every way to put the pieces into the lots.
func fewest(pieces, lots []int) (int, bool) {
	best, found := len(lots)+1, false
	way := make([]int, len(pieces))
	for {
		left := append([]int(nil), lots...)
		used := map[int]bool{}
		ok := true
		for i, p := range pieces {
			left[way[i]] -= p
			used[way[i]] = true
			ok = ok && left[way[i]] >= 0
		}
		if ok && len(used) < best {
			best, found = len(used), true
		}
		i := 0
		for ; i < len(way); i++ {
			if way[i]++; way[i] < len(lots) {
				break
			}
			way[i] = 0
		}
		if i == len(way) {
			return best, found
		}
	}
}

func TestLotsAgainstEveryWay(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 2))
	possible := 0
	for range 300 {
		var pieces []yarn.Line
		var lots []stash.Lot
		var p, l []int
		for i := range rng.IntN(5) + 1 {
			p = append(p, rng.IntN(90)+10)
			pieces = append(pieces, yarn.Line{Name: fmt.Sprint("piece ", i), Length: whole(p[i] - 5), More: whole(5)})
		}
		for i := range rng.IntN(4) + 1 {
			l = append(l, rng.IntN(160)+20)
			lots = append(lots, stash.Lot{Name: fmt.Sprint("lot ", i), Length: whole(l[i])})
		}
		want, ok := fewest(p, l)
		got, err := stash.Lots(pieces, lots)
		if !ok {
			require.ErrorIs(t, err, stash.ErrLots)
			require.Nil(t, got)
			continue
		}
		possible++
		require.NoError(t, err)
		require.Len(t, got, len(pieces))
		used := map[string]int{}
		for i, a := range got {
			require.Equal(t, pieces[i].Name, a.Piece)
			used[a.Lot] += p[i]
		}
		require.Len(t, used, want)
		for i, lot := range lots {
			require.LessOrEqual(t, used[lot.Name], l[i])
		}
	}
	require.Greater(t, possible, 100)
}

func TestLotsRefuses(t *testing.T) {
	piece := yarn.Line{Name: "back", Length: whole(1)}
	lot := stash.Lot{Name: "A", Length: whole(1)}
	for _, c := range []struct {
		name   string
		pieces []yarn.Line
		lots   []stash.Lot
		want   string
	}{
		{"no piece", nil, []stash.Lot{lot}, "Pieces: got 0, want 1 to 12"},
		{"13 pieces", make([]yarn.Line, 13), []stash.Lot{lot}, "Pieces: got 13, want 1 to 12"},
		{"no lot", []yarn.Line{piece}, nil, "Lots: got 0, want 1 to 8"},
		{"9 lots", []yarn.Line{piece}, make([]stash.Lot, 9), "Lots: got 9, want 1 to 8"},
		{"negative lot", []yarn.Line{piece}, []stash.Lot{{Length: whole(-1)}}, "Lots[0].Length: got -1000 mm, want at least 0"},
		{"negative piece", []yarn.Line{{Length: whole(-1)}}, []stash.Lot{lot}, "Pieces[0].Line.Length: got less than nothing, want at least 0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := stash.Lots(c.pieces, c.lots)
			require.EqualError(t, err, c.want)
		})
	}
}

// The size found fits, the next does not.
func TestLargestSize(t *testing.T) {
	rng := rand.New(rand.NewPCG(6, 9))
	label := yarn.MustLabel("100 m = 50 g")
	for range 300 {
		var sizes [][]yarn.Quantity
		need := []int{0, 0}
		for range 6 {
			var size []yarn.Quantity
			for i, name := range []string{"main", "edge"} {
				need[i] += rng.IntN(300) + 1
				q, err := yarn.Buy(label, yarn.Margin{}, yarn.Line{Yarn: name, Length: whole(need[i])})
				require.NoError(t, err)
				q.Yarn = name
				size = append(size, q)
			}
			sizes = append(sizes, size)
		}
		have := []stash.Holding{{Yarn: "main", Label: label, Skeins: rng.IntN(15)}, {Yarn: "edge", Label: label, Skeins: rng.IntN(15)}, {Yarn: "edge", Label: label, Rest: yarn.MustMass("20 g")}}
		best, err := stash.LargestSize(have, sizes...)
		require.NoError(t, err)
		fits := func(i int) bool {
			return sizes[i][0].Total.Cmp(whole(100*have[0].Skeins)) <= 0 && sizes[i][1].Total.Cmp(whole(100*have[1].Skeins+40)) <= 0
		}
		if best.Size >= 0 {
			require.True(t, fits(best.Size))
			require.True(t, best.Left.Equal(whole(100*(have[0].Skeins+have[1].Skeins)+40).Sub(sizes[best.Size][0].Total).Sub(sizes[best.Size][1].Total)))
		}
		if best.Size < len(sizes)-1 {
			require.False(t, fits(best.Size+1))
			require.Contains(t, best.Next, fmt.Sprintf("size %d is", best.Size+2))
		} else {
			require.Empty(t, best.Next)
		}
	}
}

func TestLargestSizeRefuses(t *testing.T) {
	label := yarn.MustLabel("100 m = 50 g")
	q, err := yarn.Buy(label, yarn.Margin{}, yarn.Line{Length: whole(1)})
	require.NoError(t, err)
	for _, c := range []struct {
		name string
		h    stash.Holding
		want string
	}{
		{"no label", stash.Holding{}, "Stash[0].Holding.Label.Length.Unit: got Unit(0), want yd, m, in, ft, cm or mm"},
		{"negative skeins", stash.Holding{Label: label, Skeins: -1}, "Stash[0].Holding.Skeins: got -1, want 0 to 100000"},
		{"a negative rest", stash.Holding{Label: label, Rest: yarn.Mass{Value: yarn.MustMass("1 g").Value.Neg(), Unit: yarn.Gram}}, "Stash[0].Holding.Rest.Value: got -1 g, want at least 0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := stash.LargestSize([]stash.Holding{c.h}, []yarn.Quantity{q})
			require.EqualError(t, err, c.want)
		})
	}
	_, err = stash.LargestSize(nil, []yarn.Quantity{})
	require.EqualError(t, err, "Sizes[0]: got no quantity, want one for each yarn")
	best, err := stash.LargestSize(nil, []yarn.Quantity{q})
	require.NoError(t, err)
	require.Equal(t, -1, best.Size)
	require.Equal(t, "size 1 is 1 m short", best.Next)
}

func BenchmarkLots(b *testing.B) {
	var pieces []yarn.Line
	for i := range stash.MaxPieces {
		pieces = append(pieces, yarn.Line{Length: whole(40 + 7*i)})
	}
	var lots []stash.Lot
	for i := range stash.MaxLots {
		lots = append(lots, stash.Lot{Length: whole(130 + 11*i)})
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := stash.Lots(pieces, lots); err != nil {
			b.Fatal(err)
		}
	}
}
