package enum_test

import (
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/enum"
	"github.com/stretchr/testify/require"
)

type colour uint8

func TestEnum(t *testing.T) {
	names := []string{"red", "blue"}
	for i, want := range names {
		require.Equal(t, want, enum.Name("Colour", colour(i), names))
		b, err := enum.Marshal("Colour", colour(i), names)
		require.NoError(t, err)
		var back colour
		require.NoError(t, enum.Unmarshal(&back, "Colour", b, names))
		require.Equal(t, colour(i), back)
	}
	require.Equal(t, "Colour(2)", enum.Name("Colour", colour(2), names))
}

func TestEnumRefuses(t *testing.T) {
	names := []string{"red", "blue"}
	b, err := enum.Marshal("Colour", colour(2), names)
	require.EqualError(t, err, "Colour: got Colour(2), want red or blue")
	var field *gauge.FieldError
	require.ErrorAs(t, err, &field)
	require.Nil(t, b)
	_, err = enum.Parse[colour]("Colour", "green", names)
	require.EqualError(t, err, `parse colour: "green": unknown colour; want red or blue`)
	var parse *gauge.ParseError
	require.ErrorAs(t, err, &parse)
	c := colour(1)
	require.Error(t, enum.Unmarshal(&c, "Colour", []byte("green"), names))
	require.Equal(t, colour(1), c)
}
