package grade

import (
	"embed"
	"fmt"
	"slices"
	"strings"

	"example.com/panelmath/internal/text"
)

// Credit is the line that the standard asks for wherever its figures are shown.
const Credit = "Source: Craft Yarn Council's www.YarnStandards.com"

//go:embed standards/*.csv
var standards embed.FS

// Standards returns the names of the charts that Standard knows.
func Standards() []string {
	return []string{"women", "men", "youth", "child", "baby", "head", "head ranges"}
}

// Standard returns an embedded chart: "women", "men", "youth", "child", "baby"
// or "head" of the Craft Yarn Council's standard, as printed, or "head ranges",
// a magazine's chart of head measures in inches that is not the Council's. How
// well each figure is known stands in its Basis: see the counts in the package
// documentation. Show the chart's Source with its figures.
//
// It returns ErrNoChart for any other name.
func Standard(chart string) (Chart, error) {
	if !slices.Contains(Standards(), chart) {
		return Chart{}, fmt.Errorf("chart %s: %w; there are %s", text.Quote(chart), ErrNoChart, strings.Join(Standards(), ", "))
	}
	source := Credit
	if chart == "head ranges" {
		source = "a magazine chart, not of the Craft Yarn Council: http://homeofalonelywoman.blogspot.com/2011/02/head-sizes.html"
	}
	file, err := standards.Open("standards/" + strings.ReplaceAll(chart, " ", "-") + ".csv")
	if err != nil {
		return Chart{}, err
	}
	defer file.Close()
	return ReadChart(chart, source, file)
}
