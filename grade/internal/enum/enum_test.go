package enum_test

import (
	"testing"

	"example.com/panelmath/grade/internal/enum"
	"github.com/stretchr/testify/require"
)

type colour uint8

func TestEnum(t *testing.T) {
	names := []string{"red", "blue"}
	for i, want := range names {
		require.Equal(t, want, enum.Name("Colour", colour(i), names))
		b, err := enum.Marshal("Colour", colour(i), names)
		require.NoError(t, err)
		back, err := enum.Parse[colour]("Colour", string(b), names)
		require.NoError(t, err)
		require.Equal(t, colour(i), back)
	}
	require.Equal(t, "Colour(2)", enum.Name("Colour", colour(2), names))
	b, err := enum.Marshal("Colour", colour(2), names)
	require.EqualError(t, err, "Colour: got Colour(2), want red, blue")
	require.Nil(t, b)
	_, err = enum.Parse[colour]("Colour", "green", names)
	require.EqualError(t, err, `parse colour: "green": unknown colour "green"; want red, blue`)
}
