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
	for _, s := range []string{"60% cotton, 40% acrylic", "superwash wool", "a DK cotton blend", "ünïcode", ""} {
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
	})
}
