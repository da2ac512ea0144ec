package care_test

import (
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn/care"
	"github.com/stretchr/testify/require"
)

// Every fibre has one piece of advice for every method, with its source.
func TestBlockingIsComplete(t *testing.T) {
	for f := care.Other; f <= care.Acrylic; f++ {
		t.Run(f.String(), func(t *testing.T) {
			advice := care.Blocking(f)
			require.Len(t, advice, 3)
			for i, a := range advice {
				require.Equal(t, f, a.Fibre)
				require.Equal(t, care.Method(i), a.Method)
				require.LessOrEqual(t, a.Verdict, care.Avoid)
				require.NotEmpty(t, a.Source)
				if a.Verdict == care.Disputed || f == care.Other {
					require.NotEmpty(t, a.Note)
				}
			}
		})
	}
	require.Empty(t, care.Blocking(99))
}

// Steam on acrylic: a knitting handbook says never, other makers say it is what
// works (https://www.knittingmagic.biz/guide-4/steam-dunk-or-spray-deciding-which-blocking-method-to-use.html,
// https://whatknots.blogspot.com/2021/12/steam-blocking-acrylic-blocking-your.html).
// The advice says so, and stays careful.
func TestSteamOnAcrylic(t *testing.T) {
	a := care.Blocking(care.Acrylic)[care.Steam]
	require.Equal(t, care.Disputed, a.Verdict)
	for _, words := range []string{"never touch", "hover", "test on a swatch first", "permanent", "110 °C", "149 °C"} {
		require.Contains(t, a.Note, words)
	}
}

// A blend is never treated as kindlier than its least welcome fibre.
func TestForLabelTakesTheLeastWelcome(t *testing.T) {
	for _, c := range []struct {
		label string
		steam care.Verdict
	}{
		{"100% cotton", care.Suits}, {"linen", care.Suits}, {"Merino wool", care.Suits}, {"superwash wool", care.Disputed}, {"60% cotton 40% acrylic", care.Disputed},
		{"wool and silk", care.WithCare}, {"wool/mohair", care.Avoid}, {"cotton blend", care.Avoid}, {"viscose", care.Avoid}, {"", care.Avoid},
	} {
		t.Run(c.label, func(t *testing.T) {
			advice, err := care.ForLabel(c.label)
			require.NoError(t, err)
			require.Len(t, advice, 3)
			require.Equal(t, c.steam, advice[care.Steam].Verdict)
		})
	}
	_, err := care.ForLabel(strings.Repeat("wool ", 2001))
	require.ErrorIs(t, err, gauge.ErrBounds)
}

// What the label leaves open is never taken for pure, and what it denies is never
// found. The labels are invented.
func TestFibresKnowsWhatItDoesNotKnow(t *testing.T) {
	const o, w, s, m, k, c, l, a = care.Other, care.Wool, care.SuperwashWool, care.Mohair, care.Silk, care.Cotton, care.Linen, care.Acrylic
	for label, want := range map[string][]care.Fibre{
		"50% bamboo, 50% cotton": {o, c}, "80% wool, 20% alpaca": {o, w}, "55% cotton, 45% viscose": {o, c}, "linen 40%": {o, l},
		"cotton 60% acrylic 30%": {o, c, a}, "40% seacell 60% silk": {o, k}, "silk 60%, zibeline 40%": {o, k}, "60% cotton": {o, c}, "% cotton": {o, c},
		"33.3% wool, 66,7 % silk": {w, k}, "66 percent cotton and 34 per cent linen": {c, l}, "cotton 60% acrylic 40%": {c, a}, "contents: 60% cotton 40% acrylic": {c, a},
		"100% wool-free": {o}, "50% wool-free, 50% cotton": {o, c}, "100% bamboo cotton": {o, c}, "cotton-seacell": {o, c}, "cotton-rich": {o, c}, "cotton/linen": {c, l},
		"wool, alpaca": {o, w}, "wool and suri": {o, w}, "silk / zibeline": {o, k}, "cotton with a touch of stretch": {o, c}, "bamboo cotton": {o, c}, "wool blend": {o, w},
		"wool-free, no silk, 100% polyester": {a}, "wool free cotton": {c}, "free of wool and silk, cotton": {k, c}, "non-superwash wool": {w}, "non superwash wool": {w},
		"without wool or silk, 100% cotton": {c}, "100% cotton, contains no wool": {c}, "cruelty-free wool": {w}, "mulesing free merino": {w}, "faux mohair, 100% acrylic": {a},
		"silk-like polyester": {a}, "100% organic cotton": {c}, "DK cotton": {c}, "100% mercerized pima cotton": {c}, "soft worsted yarn, cotton": {c},
		"100% recycled polyester": {a}, "100% virgin wool": {w}, "superfine merino": {w}, "extrafine merino wool, 50 g, 125 m": {w}, "cotton, machine washable": {c},
		"cotton, made in Utopia": {c}, "100% cotton, camel": {c}, "100% cotton, 8 colours": {c}, "100% wool, superwash": {s}, "super-wash merino": {s}, "75% super wash wool, 25% nylon": {s, a},
		"100 % Peruvian highland wool": {w}, "kid mohair and silk": {m, k}, "70% merino 30% yak": {o, w}, "Merino (100%)": {w}, "cotton (60%) acrylic (40%)": {c, a}, "cotton (bamboo core)": {o, c},
	} {
		t.Run(label, func(t *testing.T) {
			found, err := care.Fibres(label)
			require.NoError(t, err)
			require.Equal(t, want, found)
		})
	}
}

func TestCautions(t *testing.T) {
	all := care.Cautions(care.SteamBurns, care.Hands)
	require.Len(t, all, 2)
	for i, c := range all {
		require.Equal(t, care.Topic(i), c.Topic)
		require.NotEmpty(t, c.Text)
		require.NotEmpty(t, c.Place)
		require.NotEmpty(t, c.Trust)
		require.NotEmpty(t, c.Source)
		require.True(t, strings.HasPrefix(c.URL, "http"))
	}
	// A break every 20 minutes: mamas2hands 2010, and the East Lancs RSI Group.
	require.Contains(t, all[care.Hands].Text, "every 20 minutes")
	require.Empty(t, care.Cautions(99))
}

func TestNamesRefuse(t *testing.T) {
	for name, marshal := range map[string]func() ([]byte, error){
		"fibre": care.Fibre(99).MarshalText, "method": care.Method(99).MarshalText, "verdict": care.Verdict(99).MarshalText, "topic": care.Topic(99).MarshalText,
	} {
		_, err := marshal()
		require.Error(t, err, name)
	}
	var f care.Fibre
	var m care.Method
	var v care.Verdict
	var topic care.Topic
	for name, unmarshal := range map[string]func([]byte) error{"fibre": f.UnmarshalText, "method": m.UnmarshalText, "verdict": v.UnmarshalText, "topic": topic.UnmarshalText} {
		require.ErrorContains(t, unmarshal([]byte("yak")), "parse "+name)
	}
}

func FuzzFibres(f *testing.F) {
	for _, s := range []string{"60% cotton, 40% acrylic", "superwash wool", "a DK cotton blend", "ünïcode", "50% bamboo, 50% cotton", "linen 40%", "wool-free, no silk, 100% polyester", "non-", "33,3 % wool", ""} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		found, err := care.Fibres(s)
		if err != nil {
			require.Greater(t, len(s), 10_000)
			return
		}
		require.NotEmpty(t, found)
		advice, err := care.ForLabel(s)
		require.NoError(t, err)
		require.Len(t, advice, 3)
		unknown, err := care.Fibres("50% zibeline, " + s)
		if err == nil { // a fibre that nobody knows makes the rest no more welcome
			require.Contains(t, unknown, care.Other)
		}
	})
}

func BenchmarkFibres(b *testing.B) {
	long := strings.Repeat("wool-rich 5% ", 769)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := care.Fibres(long); err != nil {
			b.Fatal(err)
		}
	}
}
