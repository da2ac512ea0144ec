// The peers that panelmath is measured against; a module of its own, so that
// nobody who uses panelmath needs them.
module example.com/panelmath/internal/bench

go 1.25

require (
	example.com/panelmath v0.0.0
	github.com/cockroachdb/apd/v3 v3.2.3
	github.com/shopspring/decimal v1.6.0
)

replace example.com/panelmath => ../..
