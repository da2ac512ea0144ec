package row

import (
	"encoding/csv"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func table(t *testing.T, name string) []map[string]string {
	t.Helper()
	f, err := os.Open("testdata/" + name)
	require.NoError(t, err)
	defer f.Close()
	records, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	var out []map[string]string
	for _, r := range records[1:] {
		m := map[string]string{}
		for i, field := range records[0] {
			m[field] = r[i]
		}
		out = append(out, m)
	}
	return out
}

// Every stitch of the standard is known by its abbreviations and terms in both
// systems. Source: Craft Yarn Council's www.YarnStandards.com and the pages in
// testdata/README.md; rows marked memory are from memory.
func TestNamesOfTheStandard(t *testing.T) {
	kinds := map[Stitch]bool{}
	for _, r := range table(t, "stitch-names.csv") {
		t.Run(r["us_abbr"], func(t *testing.T) {
			if r["kind"] == "decrease" {
				us, err := Parse(r["us_abbr"], US)
				require.NoError(t, err)
				require.Equal(t, r["uk_abbr"], us.Text(UK))
				uk, err := Parse(r["uk_abbr"], UK)
				require.NoError(t, err)
				require.Equal(t, us, uk)
				return
			}
			s, err := ParseStitch(r["us_abbr"], US)
			require.NoError(t, err)
			kinds[s] = true
			require.Equal(t, r["us_abbr"], s.Abbr(US))
			require.Equal(t, r["us_term"], s.Term(US))
			require.Equal(t, r["uk_abbr"], s.Abbr(UK))
			require.Equal(t, r["uk_term"], s.Term(UK))
			for _, c := range []struct {
				word  string
				terms Terms
			}{{r["us_term"], US}, {r["uk_abbr"], UK}, {r["uk_term"], UK}, {strings.ToUpper(r["us_abbr"]), US}} {
				got, err := ParseStitch(c.word, c.terms)
				require.NoError(t, err)
				require.Equal(t, s, got, "ParseStitch(%q, %v)", c.word, c.terms)
			}
		})
	}
	for s := Chain; s.Valid(); s++ {
		require.True(t, kinds[s], "%v is not in the standard", s)
	}
}

// Turning chains, also worked example E25 (dummies.com): 0, 1, 2, 3, 4, 5 chains
// for sl st to dtr.
func TestTurningChains(t *testing.T) {
	for _, r := range table(t, "turning-chains.csv") {
		s, err := ParseStitch(r["stitch_us"], US)
		require.NoError(t, err)
		want, err := strconv.Atoi(r["value"])
		require.NoError(t, err)
		require.Equal(t, want, s.Height(), "%v", s)
	}
	require.Zero(t, NoStitch.Height())
}

// Practice case PC-25 (a UK pattern worked in US terms; garnstudio.com, and a
// maker's page): UK dc, htr, tr, dtr are US sc, hdc, dc, tr, and the words that
// both systems use never mean the same.
func TestTermsShiftByOne(t *testing.T) {
	for uk, us := range map[string]string{"dc": "sc", "htr": "hdc", "tr": "dc", "dtr": "tr"} {
		s, err := ParseStitch(uk, UK)
		require.NoError(t, err)
		require.Equal(t, us, s.Abbr(US))
	}
	for s := SingleCrochet; s.Valid(); s++ {
		other, err := ParseStitch(s.Abbr(UK), US)
		if err == nil {
			require.NotEqual(t, s, other, "%s means the same in both", s.Abbr(UK))
		}
	}
	_, err := ParseStitch("htr", US)
	require.ErrorContains(t, err, "a UK word; the US one is hdc")
	_, err = ParseStitch("sc", UK)
	require.ErrorContains(t, err, "a US word; the UK one is dc")
	_, err = ParseStitch("purl", US)
	require.ErrorContains(t, err, "no stitch of the standard")
	_, err = ParseStitch("sc", 9)
	require.Error(t, err)
}

func TestStitchZeroAndUnknown(t *testing.T) {
	require.False(t, NoStitch.Valid())
	require.Equal(t, "Stitch(0)", NoStitch.String())
	require.Equal(t, "Stitch(200)", Stitch(200).Term(UK))
	require.Equal(t, "Stitch(3)", SingleCrochet.Abbr(7))
	require.Equal(t, HalfDoubleCrochet, FoundationHalfDouble.Plain())
	require.Equal(t, TrebleCrochet, TrebleCrochet.Plain())
	for s := NoStitch; s <= FoundationDouble; s++ {
		b, err := s.MarshalText()
		require.NoError(t, err)
		back := SlipStitch
		require.NoError(t, back.UnmarshalText(b))
		require.Equal(t, s, back)
	}
	_, err := Stitch(200).MarshalText()
	require.EqualError(t, err, "Stitch: got Stitch(200), want a stitch of the standard")
	require.Error(t, new(Stitch).UnmarshalText([]byte("purl")))
	require.Equal(t, "Space(-9)", Space(-9).String())
}

func TestTerms(t *testing.T) {
	for s, want := range map[string]Terms{"US": US, " uk ": UK} {
		got, err := ParseTerms(s)
		require.NoError(t, err)
		require.Equal(t, want, got)
		var back Terms
		b, err := got.MarshalText()
		require.NoError(t, err)
		require.NoError(t, back.UnmarshalText(b))
		require.Equal(t, want, back)
	}
	_, err := ParseTerms("AU")
	require.EqualError(t, err, `parse terms: "AU": got "AU", want US or UK`)
	var x Terms
	require.Error(t, x.UnmarshalText([]byte("x")))
	_, err = Terms(9).MarshalText()
	require.EqualError(t, err, "Terms: got Terms(9), want US or UK")
}
