package text

import (
	"errors"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

type colour uint8

var errNone = errors.New("none")

func TestNames(t *testing.T) {
	names := []string{"red", "pale blue"}
	for i, want := range names {
		require.Equal(t, want, Name("Colour", colour(i), names))
		v, ok := Named[colour](" "+strings.ToUpper(want), names)
		require.True(t, ok)
		require.Equal(t, colour(i), v)
	}
	require.Equal(t, "Colour(2)", Name("Colour", colour(2), names))
	for _, s := range []string{"", "blue", strings.Repeat(" ", Limit) + "red"} {
		_, ok := Named[colour](s, names)
		require.False(t, ok, s)
	}
}

func TestOr(t *testing.T) {
	for _, c := range []struct {
		name  string
		names []string
		want  string
	}{
		{"none", nil, ""},
		{"one", []string{"red"}, "red"},
		{"two", []string{"red", "blue"}, "red or blue"},
		{"three", []string{"red", "green", "blue"}, "red, green or blue"},
		{"zero value without a name", []string{"", "stitches", "rows"}, "stitches or rows"},
	} {
		t.Run(c.name, func(t *testing.T) { require.Equal(t, c.want, Or(c.names)) })
	}
}

func TestRead(t *testing.T) {
	parse := func(s string) (colour, error) {
		if s != "red" {
			return 9, errNone
		}
		return 1, nil
	}
	c := colour(3)
	require.ErrorIs(t, Read(&c, []byte("blue"), parse), errNone)
	require.Equal(t, colour(3), c, "a text that cannot be read changes nothing")
	require.NoError(t, Read(&c, []byte("red"), parse))
	require.Equal(t, colour(1), c)
}

func TestMust(t *testing.T) {
	parse := func(s string) (string, error) {
		if s == "" {
			return "", errNone
		}
		return s, nil
	}
	require.Equal(t, "x", Must("Colour", "x", parse))
	require.PanicsWithValue(t, "Colour: "+errNone.Error(), func() { Must("Colour", "", parse) })
}
