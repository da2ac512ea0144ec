package text

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestQuote(t *testing.T) {
	for _, c := range []struct{ name, s, want string }{
		{"short", "9 inn", `"9 inn"`},
		{"control", "a\nb", `"a\nb"`},
		{"long", strings.Repeat("x", 70), `"` + strings.Repeat("x", 60) + `"… (70 bytes)`},
		{"cut between runes", strings.Repeat("x", 59) + "½½½", `"` + strings.Repeat("x", 59) + `"… (65 bytes)`},
	} {
		t.Run(c.name, func(t *testing.T) { require.Equal(t, c.want, Quote(c.s)) })
	}
}

func TestCount(t *testing.T) {
	require.Equal(t, "1 skein", Count(1, "skein", "skeins"))
	require.Equal(t, "0 skeins", Count(0, "skein", "skeins"))
	require.Equal(t, "5 skeins", Count(5, "skein", "skeins"))
}
