package main

import (
	"encoding/json"
	"fmt"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// layoutBrief returns the default brief with other fields: nil takes one away.
func layoutBrief(t *testing.T, fields map[string]any) string {
	t.Helper()
	var root map[string]any
	require.NoError(t, json.Unmarshal(orchardWrap, &root))
	for name, v := range fields {
		root[name] = v
		if v == nil {
			delete(root, name)
		}
	}
	out, err := json.Marshal(root)
	require.NoError(t, err)
	return string(out)
}

// TestLayoutsAgainstTheOracle works the arithmetic of the README again with
// math/big, for the layouts other than open front, both ways round.
func TestLayoutsAgainstTheOracle(t *testing.T) {
	highs := []int64{34, 42, 50, 62} // chest of S, L, 2X and 5X, high end, inches
	r := rand.New(rand.NewPCG(7, 7))
	quarter := func(low, high int) *big.Rat { return big.NewRat(int64(low*4+r.IntN((high-low)*4)), 4) }
	inches := func(x *big.Rat) string { return x.FloatString(2) + " in" }
	st, ro := big.NewRat(13, 4), big.NewRat(9, 4) // per inch
	// nearest legal stitches (multiple of 3 + 1) and rows (4 + 5k + 1).
	sts := func(m *big.Rat) int64 { return nearest(mul(m, st), 3, 1) }
	rows := func(m *big.Rat) int64 { return nearest(mul(m, ro), 5, 5) }
	for i := range 120 {
		cross := i%2 == 1
		l, w := st, ro // per inch along and across
		along, across := sts, rows
		direction := "lengthwise"
		if cross {
			l, w, along, across, direction = ro, st, rows, sts, "crosswise"
		}
		length, depth, neck, width := quarter(20, 30), quarter(10, 13), quarter(11, 13), quarter(30, 40)
		ease := quarter(6, 12)
		common := map[string]any{"direction": direction, "length": inches(length), "armhole_depth": inches(depth)}
		with := func(more map[string]any) map[string]any {
			m := map[string]any{}
			for k, v := range common {
				m[k] = v
			}
			for k, v := range more {
				m[k] = v
			}
			return m
		}
		check := func(fields map[string]any, want func(group int) map[string]any) {
			t.Helper()
			in := layoutBrief(t, fields)
			code, out, errs := cli(in, "-brief", "-", "-format", "json")
			require.Equal(t, 0, code, "%s\n%s", errs, in)
			var got struct{ Sizes []map[string]any }
			require.NoError(t, json.Unmarshal([]byte(out), &got))
			for g := range highs {
				for k, v := range want(g) {
					require.Equal(t, fmt.Sprint(v), fmt.Sprint(got.Sizes[g][k]), "group %d, %s\n%s", g, k, in)
				}
			}
		}
		half := big.NewRat(1, 2)
		stitches := func(L, W int64) (int64, int64) { // stitches, rows
			if cross {
				return W, L
			}
			return L, W
		}
		round := func(g int) *big.Rat { return sum(n(highs[g]), ease) }

		front, slit := quarter(10, 12), quarter(1, 4)
		check(with(map[string]any{"layout": "closed front", "neck_drop": "1 in", "neck_depth": inches(front), "hem_slit": inches(slit), "ease": inches(ease), "head": "22 in", "neck_stretch": "10%"}), func(g int) map[string]any {
			W, L := across(quo(round(g), n(4))), along(mul(n(2), length))
			middle := mul(n(L), half)
			back, cf := floor(sum(middle, neg(l))), floor(sum(middle, neg(mul(front, l))))
			s := up(mul(slit, l))
			side := floor(sum(middle, neg(mul(depth, l)))) - s
			N, R := stitches(L, W)
			return map[string]any{"stitches": N, "rows": R, "centre_back_pairs": back, "centre_front_pairs": cf, "slit_pairs": s, "side_pairs": side,
				"round": text(quo(n(4*W), w), 3), "length": text(quo(middle, l), 3), "neck_depth": text(quo(sum(middle, n(-cf)), l), 3),
				"neck_round": text(quo(n(2*(L-back-cf)), l), 3), "armhole_depth": text(quo(sum(middle, n(-s-side)), l), 3)}
		})
		check(with(map[string]any{"layout": "front and back", "neck_drop": nil, "neck_width": inches(neck), "ease": inches(ease), "head": "20 in", "sleeve_length": "12 in"}), func(g int) map[string]any {
			W, L := across(quo(round(g), n(2))), along(length)
			shoulder := floor(mul(half, sum(n(W), neg(mul(neck, w)))))
			side := floor(sum(n(L), neg(mul(depth, l))))
			armhole := quo(n(L-side), l)
			sw, sl := across(mul(n(2), armhole)), along(n(12))
			N, R := stitches(L, W)
			SN, SR := stitches(sl, sw)
			return map[string]any{"stitches": N, "rows": R, "shoulder_pairs": shoulder, "side_pairs": side, "sleeve_stitches": SN, "sleeve_rows": SR,
				"round": text(quo(n(2*W), w), 3), "length": text(quo(n(L), l), 3), "neck_width": text(quo(n(W-2*shoulder), w), 3),
				"armhole_depth": text(armhole, 3), "sleeve_round": text(quo(n(sw), w), 3)}
		})
		check(with(map[string]any{"layout": "cocoon", "ease": nil, "neck_drop": nil, "width": inches(width)}), func(g int) map[string]any {
			W, L := across(width), along(mul(n(2), length))
			side := floor(sum(mul(n(L), half), neg(mul(depth, l))))
			N, R := stitches(L, W)
			return map[string]any{"stitches": N, "rows": R, "side_pairs": side, "width": text(quo(n(W), w), 3), "panel_length": text(quo(n(L), l), 3),
				"armhole_depth": text(quo(sum(mul(n(L), half), n(-side)), l), 3), "body_opening": text(quo(n(2*W), w), 3)}
		})
		around, narrow := quarter(22, 30), quarter(14, 20)
		check(map[string]any{"layout": "poncho", "direction": direction, "ease": nil, "neck_drop": nil, "length": nil, "armhole_depth": nil, "width": inches(narrow), "neck_round": inches(around), "head": "22 in"}, func(g int) map[string]any {
			W := across(narrow)
			L := along(sum(narrow, mul(half, around)))
			sewn := floor(mul(quo(n(W), w), l))
			for mul(n(2), quo(n(L-sewn), l)).Cmp(around) < 0 {
				L += map[bool]int64{false: 3, true: 5}[cross]
			}
			N, R := stitches(L, W)
			return map[string]any{"stitches": N, "rows": R, "seam_pairs": sewn, "neck_round": text(quo(n(2*(L-sewn)), l), 3)}
		})
	}
}

// TestYarnWays works the four ways to the yarn of the default brief's smallest
// size by hand: two panels of 163 sts by 25 rows, 326/13 · 4 by 100/9 in.
func TestYarnWays(t *testing.T) {
	area := mul(n(2), big.NewRat(163*4, 13), big.NewRat(100, 9)) // square inches
	seams := sum(mul(big.NewRat(177*4, 13), big.NewRat(5, 2)), n(36))
	total := func(inches *big.Rat) string { return text(mul(quo(sum(inches, seams), n(36)), big.NewRat(11, 10)), 2) }
	// Rows 3, 8, 13, 18 and 23 are lace: 55 dc, 54 ch-2 sps. Row 1 is fhdc, the other 19 are hdc.
	stitches := func(fhdc, hdc, dc, ch string) *big.Rat {
		per := func(count int64, length string) *big.Rat { return mul(n(2*count), quo(rat(length), n(20))) }
		return sum(per(163, fhdc), per(19*163, hdc), per(5*55, dc), per(5*108, ch))
	}
	yarn := func(way string, v any) map[string]any {
		return map[string]any{"yarn": map[string]any{"name": "a yarn", "fibre": "wool", "margin": "10%", "label": map[string]any{"length": "230 yd", "mass": "100 g"}, way: v}}
	}
	for _, c := range []struct {
		way  string
		v    any
		want string
	}{
		{"swatch", map[string]any{"width": "6 in", "height": "6 in", "mass": "14.5 g"}, total(mul(quo(area, n(36)), rat("14.5"), rat("2.3"), n(36)))},
		{"unravelled", map[string]any{"width": "6 in", "height": "5 in", "length": "30 yd"}, total(mul(quo(area, n(30)), n(30), n(36)))},
		{"project", map[string]any{"width": "20 in", "height": "60 in", "mass": "480 g"}, total(mul(quo(area, n(1200)), n(480), rat("2.3"), n(36)))},
		{"project", map[string]any{"width": "20 in", "height": "60 in", "skeins": "5", "left": "20 g"}, total(mul(quo(area, n(1200)), n(480), rat("2.3"), n(36)))},
		{"stitches", []map[string]any{{"stitch": "fhdc", "count": 20, "length": "110 in"}, {"stitch": "hdc", "count": "20", "length": "96 in"}, {"stitch": "dc", "count": 20, "length": "120 in"}, {"stitch": "ch", "count": 20, "length": "22 in"}},
			total(stitches("110", "96", "120", "22"))},
	} {
		code, out, errs := cli(layoutBrief(t, yarn(c.way, c.v)), "-brief", "-", "-format", "json")
		require.Equal(t, 0, code, errs)
		var got struct{ Sizes []map[string]any }
		require.NoError(t, json.Unmarshal([]byte(out), &got))
		require.Equal(t, c.want, got.Sizes[0]["yarn_length"], c.way)
	}
	for _, c := range []struct {
		way  string
		v    any
		want string
	}{
		{"stitches", []map[string]any{{"stitch": "hdc", "count": 20, "length": "96 in"}}, "yarn: size XS–S: "},
		{"stitches", []map[string]any{{"stitch": "htr", "count": 20, "length": "96 in"}}, `yarn.stitches[0].stitch: "htr": no stitch of US terms`},
		{"stitches", []map[string]any{}, "yarn.stitches: want a list of stitches"},
		{"stitches", []map[string]any{{"stitch": "hdc", "count": 0, "length": "96 in"}}, "yarn.stitches[0]: "},
		{"project", map[string]any{"width": "20 in", "height": "60 in"}, "yarn.project"},
		{"unravelled", map[string]any{"width": "20 in", "height": "60 in", "mass": "3 g"}, "yarn.unravelled.mass: unknown field"},
	} {
		code, out, errs := cli(layoutBrief(t, yarn(c.way, c.v)), "-brief", "-", "-format", "json")
		require.Equal(t, 2, code)
		require.Empty(t, out)
		require.Contains(t, errs, c.want)
	}
}

// TestUnwearable: garments that nobody can put on, or sew.
func TestUnwearable(t *testing.T) {
	for _, c := range []struct {
		name   string
		fields map[string]any
		want   string
	}{
		{"head through a closed neck", map[string]any{"layout": "closed front", "neck_depth": "5 in", "head": "22 in"}, "neck_depth: size XS–S: neck opening 12.923 in (32.825 cm) is less than head 22 in (55.88 cm)"},
		{"neck wider than the shoulders", map[string]any{"layout": "front and back", "neck_drop": nil, "neck_width": "16 in", "head": "22 in"}, "neck_width: size XS–S: neck width"},
		{"neck wider than the panel", map[string]any{"layout": "front and back", "neck_drop": nil, "neck_width": "26 in", "head": "22 in"}, "neck_width: size XS–S: "},
		{"armhole of a cocoon", map[string]any{"layout": "cocoon", "neck_drop": nil, "ease": nil, "width": "40 in", "armhole_depth": "4 in"}, "armhole_depth: size XS–S: armhole round"},
		{"head through a poncho", map[string]any{"layout": "poncho", "neck_drop": nil, "ease": nil, "length": nil, "armhole_depth": nil, "width": "16 in", "neck_round": "15 in", "head": "22 in"}, "neck_round: size XS–S: neck opening"},
		{"slit up to the armhole", map[string]any{"hem_slit": "20 in"}, "hem_slit: size XS–S: "},
		{"field of another layout", map[string]any{"neck_width": "8 in"}, "neck_width: unknown field"},
		{"field that is missing", map[string]any{"layout": "closed front"}, "neck_depth: missing"},
		{"direction", map[string]any{"direction": "up"}, `direction: "up": want lengthwise or crosswise`},
		{"stretch", map[string]any{"layout": "closed front", "neck_depth": "10 in", "head": "22 in", "neck_stretch": "-5%"}, `neck_stretch: "-5%": want 0% to 100%`},
	} {
		t.Run(c.name, func(t *testing.T) {
			code, out, errs := cli(layoutBrief(t, c.fields), "-brief", "-")
			require.Equal(t, 2, code)
			require.Empty(t, out)
			require.Contains(t, errs, c.want)
		})
	}
}
