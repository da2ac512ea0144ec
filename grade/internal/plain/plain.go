// Package plain prints decimals for the packages below grade.
package plain

import (
	"strings"

	"example.com/panelmath/gauge"
	"github.com/shopspring/decimal"
)

// Number prints d as package gauge prints the number of a length: without an
// exponent or trailing zeros, whatever the settings of the decimal package, and
// not written out where it is out of bounds.
func Number(d decimal.Decimal) string {
	return strings.TrimSuffix(gauge.Length{Value: d, Unit: gauge.Millimetre}.String(), " mm")
}
