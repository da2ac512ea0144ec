package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math/big"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// The oracle: the arithmetic of an open-front brief worked again with math/big
// alone, on generated briefs, and compared with what the program prints. It
// shares no code with the library; the body measures are copied from the
// standard's tables (chest high end and upper arm high end, as printed; Craft
// Yarn Council's www.YarnStandards.com, women's and men's upper arm and the
// child's centimetres from memory).
var bodies = map[string][]struct {
	size           string
	chestIn, armIn string
	chestCm, armCm string
}{
	"women": {{"XS", "30", "9.75", "76", "25"}, {"S", "34", "10.25", "86", "26"}, {"M", "38", "11", "96.5", "28"}, {"L", "42", "12", "106.5", "30.5"},
		{"XL", "46", "13.5", "117", "34.5"}, {"2X", "50", "15.5", "127", "39.5"}, {"3X", "54", "17", "137", "43"}, {"4X", "58", "18.5", "147", "47"}, {"5X", "62", "19.5", "158", "49.5"}},
	"men":   {{"S", "36", "12", "91.5", "30.5"}, {"M", "40", "13", "101.5", "33"}, {"L", "44", "15", "111.5", "38"}, {"XL", "48", "16", "122", "40.5"}, {"2X", "52", "17", "132", "43"}},
	"child": {{"4", "23", "7.5", "58.5", "19"}, {"6", "25", "8", "63.5", "20.5"}, {"8", "26.5", "8.5", "67", "21.5"}, {"10", "28", "8.75", "71", "22"}},
}

func rat(s string) *big.Rat {
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		panic(s)
	}
	return r
}

func mul(a ...*big.Rat) *big.Rat {
	p := big.NewRat(1, 1)
	for _, x := range a {
		p.Mul(p, x)
	}
	return p
}

func quo(a, b *big.Rat) *big.Rat { return new(big.Rat).Quo(a, b) }
func sum(a ...*big.Rat) *big.Rat {
	s := new(big.Rat)
	for _, x := range a {
		s.Add(s, x)
	}
	return s
}
func neg(a *big.Rat) *big.Rat { return new(big.Rat).Neg(a) }
func n(i int64) *big.Rat      { return big.NewRat(i, 1) }

// floor rounds down; up rounds up.
func floor(x *big.Rat) int64 {
	q, _ := new(big.Int).DivMod(x.Num(), x.Denom(), new(big.Int))
	return q.Int64()
}
func up(x *big.Rat) int64 { return -floor(neg(x)) }

// nearest is k·m + p nearest to x, k from 0, a tie to the larger.
func nearest(x *big.Rat, m, p int64) int64 {
	k := floor(sum(quo(sum(x, n(-p)), n(m)), big.NewRat(1, 2)))
	return max(k, 0)*m + p
}

// text is x to the places, half up.
func text(x *big.Rat, places int) string {
	scale := new(big.Rat).SetInt(new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(places)), nil))
	q := floor(sum(mul(x, scale), big.NewRat(1, 2)))
	s := fmt.Sprintf("%0*d", places+1, q)
	return s[:len(s)-places] + "." + s[len(s)-places:]
}

var mmOf = map[string]*big.Rat{"in": rat("25.4"), "cm": rat("10"), "yd": rat("914.4"), "m": rat("1000"), "ft": rat("304.8")}

// generated is a brief and what the oracle says of it: the sizes, or none where
// the brief must be refused.
type generated struct {
	brief map[string]any
	want  []map[string]any
}

func generate(r *rand.Rand) generated {
	pick := func(s ...string) string { return s[r.IntN(len(s))] }
	units := pick("in", "cm")
	chart := pick("women", "women", "men", "child")
	table := bodies[chart]
	tick := func(low, high int) string { // a number on quarters, or on tenths for centimetres
		if units == "in" {
			return big.NewRat(int64(low*4+r.IntN((high-low)*4+1)), 4).FloatString(2)
		}
		return big.NewRat(int64(low*25+r.IntN((high-low)*25+1)), 10).FloatString(1)
	}

	// A gauge: stitches and rows, over one span or two.
	spans := [][2]string{{"4", "in"}, {"10", "cm"}, {"7", "cm"}, {"2", "in"}, {"4.5", "in"}, {"100", "mm"}}
	mmOf["mm"] = n(1)
	s1, s2 := spans[r.IntN(len(spans))], spans[r.IntN(len(spans))]
	sts, rows := big.NewRat(int64(10+r.IntN(50)), 2), big.NewRat(int64(8+r.IntN(30)), 2)
	num := func(x *big.Rat) string { return strings.TrimSuffix(x.FloatString(1), ".0") }
	gauge := fmt.Sprintf("%s sts = %s %s, %s rows = %s %s", num(sts), s1[0], s1[1], num(rows), s2[0], s2[1])
	if r.IntN(2) == 0 {
		s2 = s1
		gauge = fmt.Sprintf("%s sts and %s rows = %s %s", num(sts), num(rows), s1[0], s1[1])
	}
	g := quo(sts, mul(rat(s1[0]), mmOf[s1[1]]))  // stitches a millimetre
	h := quo(mul(rat(s2[0]), mmOf[s2[1]]), rows) // millimetres a row

	// Neighbouring sizes into groups, some left out at either end.
	var groups [][]string
	var last []int
	for i := r.IntN(2); i < len(table) && len(groups) < 9; {
		size := min(1+r.IntN(3), len(table)-i)
		var names []string
		for _, b := range table[i : i+size] {
			names = append(names, b.size)
		}
		groups = append(groups, names)
		last = append(last, i+size-1)
		i += size
	}
	mm := mmOf[units]
	list := func(low, high int) (any, []*big.Rat) { // one value for all or one for each
		if r.IntN(2) == 0 {
			v := tick(low, high)
			out := make([]*big.Rat, len(groups))
			for i := range out {
				out[i] = mul(rat(v), mm)
			}
			if r.IntN(2) == 0 {
				return v + " " + units, out
			}
			return []string{v + " " + units}, out
		}
		var texts []string
		var out []*big.Rat
		for range groups {
			v := tick(low, high)
			texts, out = append(texts, v+" "+units), append(out, mul(rat(v), mm))
		}
		return texts, out
	}
	lengths, lengthMM := list(12, 34)
	depths, depthMM := list(5, 13)
	drops, dropMM := list(0, 3)

	// Ease: a length or a percentage, either sign.
	percent := r.IntN(2) == 0
	ease := big.NewRat(int64(r.IntN(160)-30), 4)
	easeText := ease.FloatString(2) + " " + units
	if percent {
		easeText = ease.FloatString(2) + "%"
	}

	// Rows: plain ones, and lace with its filling row.
	multiple := int64(1)
	gcd := func(a, b int64) int64 { return new(big.Int).GCD(nil, nil, big.NewInt(a), big.NewInt(b)).Int64() }
	uk := r.IntN(3) == 0
	hdc, dc, skip := "hdc", "dc", "sk"
	if uk {
		hdc, dc, skip = "htr", "tr", "miss"
	}
	lace := false
	blocks := func(most int) []string {
		out := []string{}
		for range r.IntN(most + 1) {
			if r.IntN(2) == 0 {
				out = append(out, pick(hdc, dc)+" in each st across")
				continue
			}
			lace = true
			m := 1 + r.IntN(4)
			multiple = multiple / gcd(multiple, int64(m+1)) * int64(m+1)
			out = append(out, fmt.Sprintf("%s in first st, *ch %d, %s %d, %s in next st; rep from * across", dc, m, skip, m, dc))
			if m == 1 && r.IntN(2) == 0 {
				out = append(out, fmt.Sprintf("%s in each st and in each ch-1 sp across", hdc))
			} else {
				out = append(out, fmt.Sprintf("%s in each st and %d %s in each ch-%d sp across", hdc, m, hdc, m))
			}
		}
		return out
	}
	foundation := "fhdc"
	if uk {
		foundation = "fhtr"
	}
	opening := append([]string{foundation}, blocks(3)...)
	repeat := append([]string{hdc + " in each st across"}, blocks(2)...)
	closing := blocks(2)

	labelUnit, label, labelMass := pick("m", "yd"), int64(50+r.IntN(400)), int64(25*(1+r.IntN(8)))
	swatchW, swatchH, swatchMass := int64(10+r.IntN(12)), int64(10+r.IntN(12)), big.NewRat(int64(20+r.IntN(200)), 10)
	margin, factor, tail := int64(r.IntN(25)), big.NewRat(5, 2), mul(n(6), mmOf["in"])
	yarn := map[string]any{
		"name": "a yarn of our own", "fibre": "wool", "margin": fmt.Sprintf("%d%%", margin),
		"label":  map[string]any{"length": fmt.Sprintf("%d %s", label, labelUnit), "mass": fmt.Sprintf("%d g", labelMass)},
		"swatch": map[string]any{"width": fmt.Sprintf("%d %s", swatchW, units), "height": fmt.Sprintf("%d %s", swatchH, units), "mass": swatchMass.FloatString(1) + " g"},
	}
	if r.IntN(2) == 0 {
		factor, tail = big.NewRat(int64(10+r.IntN(40)), 10), mul(n(int64(r.IntN(20))), mmOf["cm"])
		yarn["seam_factor"] = factor.FloatString(1)
		yarn["tail_end"] = quo(tail, mmOf["cm"]).FloatString(0) + " cm"
	}

	out := generated{brief: map[string]any{
		"name": "Generated wrap", "terms": map[bool]string{true: "UK", false: "US"}[uk], "units": units, "gauge": gauge, "hook": "5 mm",
		"chart": chart, "sizes": groups, "ease": easeText, "layout": "open front", "length": lengths, "armhole_depth": depths, "neck_drop": drops,
		"rows": map[string]any{"opening": opening, "repeat": repeat, "closing": closing}, "yarn": yarn,
	}}

	plus := int64(0)
	least := int64(0)
	if lace {
		plus, least = 1, 1
	}
	for i := range groups {
		b := table[last[i]]
		body, arm := mul(rat(b.chestIn), mm), mul(rat(b.armIn), mm)
		if units == "cm" {
			body, arm = mul(rat(b.chestCm), mm), mul(rat(b.armCm), mm)
		}
		f := sum(body, mul(ease, mm))
		if percent {
			f = mul(body, sum(n(1), quo(ease, n(100))))
		}
		if f.Sign() <= 0 {
			return generated{brief: out.brief}
		}
		width := quo(f, n(4))
		start := int64(len(opening) + len(closing))
		R := nearest(quo(width, h), int64(len(repeat)), start)
		N := nearest(mul(n(2), lengthMM[i], g), multiple, plus)
		if N <= least {
			return generated{brief: out.brief}
		}
		half := big.NewRat(N, 2)
		back := floor(sum(half, neg(mul(dropMM[i], g))))
		side := floor(sum(half, neg(mul(depthMM[i], g))))
		if back < 1 || side < 1 {
			return generated{brief: out.brief}
		}
		depth := quo(sum(half, n(-side)), g)
		if mul(n(2), depth).Cmp(arm) < 0 {
			return generated{brief: out.brief}
		}
		wide := mul(n(R), h)
		fabric := mul(n(2), quo(n(N), g), wide) // square millimetres
		density := quo(swatchMass, mul(n(swatchW), n(swatchH), mm, mm))
		perGram := quo(n(label), n(labelMass)) // label units a gram
		length := mul(fabric, density, perGram)
		seams := mul(sum(quo(n(back+2*side), g)), factor)
		seams = sum(seams, mul(n(6), tail))
		total := mul(sum(length, quo(seams, mmOf[labelUnit])), sum(n(1), big.NewRat(margin, 100)))
		name := groups[i][0]
		if k := len(groups[i]); k > 1 {
			name += "–" + groups[i][k-1]
		}
		out.want = append(out.want, map[string]any{
			"label": name, "stitches": N, "rows": R, "repeats": (R - start) / int64(len(repeat)), "centre_back_pairs": back, "side_pairs": side,
			"round": text(quo(mul(n(4), wide), mm), 3), "length": text(quo(mul(half), mul(g, mm)), 3), "width": text(quo(wide, mm), 3),
			"armhole_depth": text(quo(depth, mm), 3), "neck_drop": text(quo(sum(half, n(-back)), mul(g, mm)), 3),
			"yarn_length": text(total, 2), "yarn_mass": text(quo(total, perGram), 2), "skeins": up(quo(total, n(label))),
		})
	}
	return out
}

func TestAgainstTheOracle(t *testing.T) {
	accepted := 0
	for seed := range uint64(1500) {
		g := generate(rand.New(rand.NewPCG(seed, 1)))
		in, err := json.Marshal(g.brief)
		require.NoError(t, err)
		var out, errs bytes.Buffer
		code := run([]string{"-brief", "-", "-format", "json"}, bytes.NewReader(in), &out, &errs)
		if g.want == nil {
			require.Equal(t, 2, code, "seed %d must be refused: %s", seed, in)
			require.Empty(t, out.String())
			continue
		}
		require.Equal(t, 0, code, "seed %d: %s\n%s", seed, errs.String(), in)
		var got struct{ Sizes []map[string]any }
		dec := json.NewDecoder(&out)
		dec.UseNumber()
		require.NoError(t, dec.Decode(&got))
		require.Len(t, got.Sizes, len(g.want))
		for i, want := range g.want {
			for k, v := range want {
				require.Equal(t, fmt.Sprint(v), fmt.Sprint(got.Sizes[i][k]), "seed %d, size %v, %s\n%s", seed, want["label"], k, in)
			}
		}
		accepted++
	}
	require.Greater(t, accepted, 300, "too few of the generated briefs are sound; the generator tests nothing")
}
