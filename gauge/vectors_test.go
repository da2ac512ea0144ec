package gauge_test

import (
	"flag"
	"fmt"
	"math/big"
	"os"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write testdata/rounding.txt anew, from the reference in slow_test.go")

const vectorsFile = "testdata/rounding.txt"

// vector is one line of the file.
type vector struct{ id, length, over, rule, exact, count, below, above, tie string }

func (v vector) String() string {
	return strings.Join([]string{v.id, v.length, v.over, v.rule, v.exact, v.count, v.below, v.above, v.tie}, "; ")
}

const vectorsHead = `# Vectors for rounding a length to a count, for implementations in any language.
# Fields, separated by a semicolon and a blank:
#   id; length; count over a span; rule; exact; count; below; above; tie
# The length and the span are decimals or fractions with their unit (1 in = 25.4 mm);
# exact is length · count / span in lowest terms, before the rounding; below and above
# are the legal neighbours, equal where exact is legal or lies below the smallest legal
# count; tie says whether exact lies just in the middle of them. A count that does not
# exist is a hyphen, and its neighbours are hyphens.
# T rows: cases in which other ways of computing go wrong, worked out by hand.
# P rows: published questions and worked examples; see published_test.go for the sources.
# D rows: every direction at ties and beside them. L rows: smallest counts.
# U rows: every pair of units. N rows: long numbers. Others: made up, systematically.
`

// vectorInputs lists id, length, over and rule of every vector.
func vectorInputs() []vector {
	var out []vector
	add := func(group, length, over, rule string) {
		n := 1
		for _, v := range out {
			if strings.HasPrefix(v.id, group) {
				n++
			}
		}
		out = append(out, vector{id: fmt.Sprintf("%s%02d", group, n), length: length, over: over, rule: rule})
	}
	for _, c := range anchors {
		add("T", c.length, c.over, c.rule)
	}
	for _, c := range publishedCounts {
		add("P", c.length, c.over, c.rule)
	}
	for _, d := range []string{"", ", ties down", ", up", ", down"} {
		for _, length := range []string{"11 mm", "11.25 mm", "11.49999999999999999999 mm", "11.5 mm", "11.50000000000000000001 mm", "11.75 mm", "12 mm", "12.5 mm"} {
			add("D", length, "1 over 1 mm", "any"+d)
		}
		for _, length := range []string{"100 mm", "102 mm", "103.99999999999999999999 mm", "104 mm", "104.00000000000000000001 mm", "106 mm"} {
			add("D", length, "1 over 1 mm", "multiple of 4 + 2"+d)
		}
	}
	for _, d := range []string{"", ", ties down", ", up", ", down"} {
		for _, rule := range []string{"any, at least 9", "odd, at least 4", "multiple of 6 - 1, at least 12", "multiple of 5"} {
			add("L", "3 mm", "1 over 1 mm", rule+d)
			add("L", "-2.5 mm", "1 over 1 mm", rule+d)
		}
	}
	for _, a := range []string{"457.2 mm", "61.3 cm", "0.4 m", "17 3/4 in", "5 ft 1 in", "0.5 yd"} {
		for _, b := range []string{"40 mm", "10 cm", "0.1 m", "4 in", "1 ft", "0.25 yd"} {
			add("U", a, "13.5 over "+b, "any")
		}
	}
	for _, c := range [][2]string{
		{"123.456789012345678901 mm", "17.25 over 101.6 mm"},
		{"99999.99999999999999999 mm", "1 over 1 mm"},
		{"0.00000000000000000001 mm", "1 over 1 mm"},
		{"1/3 mm", "3 over 2 mm"},
		{"1/3 mm", "2.99999999999999999999 over 2 mm"},
		{"12345678901234567890/1234567890123456787 mm", "7 over 2.5 mm"},
		{"1231.900000000000000001 mm", "2 repeats of 8 over 3.5 in"},
	} {
		add("N", c[0], c[1], "any")
		add("N", c[0], c[1], "odd")
	}
	for _, over := range []string{"13 over 4 in", "20 over 7 cm", "2 repeats of 8 over 3.5 in", "14.5 over 10 cm", "9 over 4 in"} {
		for _, rule := range []string{"even", "odd", "multiple of 3 + 1", "multiple of 6 + 1, ties down", "multiple of 8 - 1, up"} {
			for _, length := range []string{"1 1/4 in", "18 1/4 in", "60 cm", "100/3 cm", "48 1/2 in"} {
				add("S", length, over, rule)
			}
		}
	}
	return out
}

// solved fills in the results from the reference.
func (v vector) solved(t *testing.T) vector {
	m, err := gauge.ParseMeasurement(v.length)
	require.NoError(t, err, v.id)
	o, err := gauge.ParseOver(v.over)
	require.NoError(t, err, v.id)
	r, err := gauge.ParseRule(v.rule)
	require.NoError(t, err, v.id)
	x := slowExact(m.In(gauge.Millimetre).Rat(), o)
	value, below, above, tie, ok := slowCount(x, r)
	v.exact, v.count, v.below, v.above, v.tie = x.RatString(), "-", "-", "-", "no"
	if ok {
		v.count, v.below, v.above = fmt.Sprint(value), fmt.Sprint(below), fmt.Sprint(above)
	}
	if ok && tie {
		v.tie = "yes"
	}
	return v
}

func TestVectorsAreTheReference(t *testing.T) {
	text := vectorsHead
	inputs := vectorInputs()
	for _, v := range inputs {
		text += v.solved(t).String() + "\n"
	}
	if *update {
		require.NoError(t, os.WriteFile(vectorsFile, []byte(text), 0o644))
	}
	file, err := os.ReadFile(vectorsFile)
	require.NoError(t, err)
	require.Equal(t, text, string(file))
	require.GreaterOrEqual(t, len(inputs), 200)
}

// readVectors reads the committed file.
func readVectors(t *testing.T) []vector {
	file, err := os.ReadFile(vectorsFile)
	require.NoError(t, err)
	var out []vector
	for line := range strings.Lines(string(file)) {
		if f := strings.Split(strings.TrimSpace(line), "; "); !strings.HasPrefix(line, "#") {
			require.Len(t, f, 9, line)
			out = append(out, vector{f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7], f[8]})
		}
	}
	return out
}

// answered is the vector with this library's answer.
func (v vector) answered(t *testing.T) vector {
	m, err := gauge.ParseMeasurement(v.length)
	require.NoError(t, err, v.id)
	o, err := gauge.ParseOver(v.over)
	require.NoError(t, err, v.id)
	r, err := gauge.ParseRule(v.rule)
	require.NoError(t, err, v.id)
	x, err := o.Exact(m)
	require.NoError(t, err, v.id)
	v.exact, v.count, v.below, v.above, v.tie = x.String(), "-", "-", "-", "no"
	c, err := o.Round(m, r)
	if err != nil {
		require.ErrorIs(t, err, gauge.ErrNoCount, v.id)
		return v
	}
	v.count, v.below, v.above = fmt.Sprint(c.Value), fmt.Sprint(c.Below), fmt.Sprint(c.Above)
	if c.Tie {
		v.tie = "yes"
	}
	return v
}

func TestVectors(t *testing.T) {
	for _, v := range readVectors(t) {
		require.Equal(t, v.String(), v.answered(t).String())
	}
}

// anchors are cases in which other ways of computing go wrong, worked out by
// hand: lengths, counts and spans that tie exactly or almost.
var anchors = []struct{ length, over, rule, exact, count, wrong string }{
	{"2.5 in", "20 over 4 in", "any", "25/2", "13", "half to even gives 12"},
	{"6 in", "15 over 4 in", "any", "45/2", "23", "float64 gives 22"},
	{"7 in", "18 over 4 in", "any", "63/2", "32", "float64 gives 31"},
	{"152.4 mm", "19 over 101.6 mm", "any", "57/2", "29", "stitches over span first gives 28"},
	{"45 mm", "11 over 90 mm", "any", "11/2", "6", "stitches over span first gives 5"},
	{"55 mm", "9 over 90 mm", "any", "11/2", "6", "length over span first gives 5"},
	{"25 mm", "29 over 50 mm", "any", "29/2", "15", "float64, stitches over span first, gives 14"},
	{"205 mm", "15 over 50 mm", "any", "123/2", "62", "float64, length over span first, gives 61"},
	{"63.49999999999999999 mm", "20 over 101.6 mm", "any", "", "12", "a quotient of 16 places gives 13"},
	{"63.500000000000006 mm", "20 over 101.60000000000001 mm", "any", "", "12", "a quotient of 16 places gives 13"},
	{"63.475 mm", "20 over 101.6 mm", "any", "", "12", "a quotient of 2 places gives 13"},
	{"100/3 mm", "16.5 over 100 mm", "any", "11/2", "6", "a third written as a decimal gives 5"},
	{"518 mm", "20 over 100 mm", "multiple of 4 + 2", "518/5", "102", "rounded first, then snapped, gives 106"},
	{"-2.5 mm", "1 over 1 mm", "any", "-5/2", "0", "a count is never less than the smallest, 0"},
}

func TestAnchors(t *testing.T) {
	for _, c := range anchors {
		t.Run(c.length+" at "+c.over, func(t *testing.T) {
			got := vector{length: c.length, over: c.over, rule: c.rule}.answered(t)
			require.Equal(t, c.count, got.count, c.wrong)
			if c.exact != "" {
				require.Equal(t, c.exact, got.exact)
			} else {
				x, ok := new(big.Rat).SetString(got.exact)
				require.True(t, ok)
				require.Negative(t, x.Cmp(big.NewRat(25, 2)), "%s is just under 12.5", got.exact)
			}
		})
	}
}
