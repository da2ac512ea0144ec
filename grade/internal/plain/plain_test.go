package plain_test

import (
	"testing"

	"example.com/panelmath/grade/internal/plain"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

func TestNumber(t *testing.T) {
	for _, c := range []struct {
		d    decimal.Decimal
		want string
	}{
		{decimal.Decimal{}, "0"}, {decimal.New(2500, -3), "2.5"}, {decimal.New(-5, -1), "-0.5"}, {decimal.New(12, 3), "12000"},
		{decimal.New(1, 1_000_000_000), "(a number out of bounds)"},
	} {
		require.Equal(t, c.want, plain.Number(c.d))
	}
}
