package caution_test

import (
	"fmt"
	"net/url"
	"testing"

	"example.com/panelmath/grade"
	"example.com/panelmath/grade/caution"
	"github.com/stretchr/testify/require"
)

// Every caution stands with its source, and names charts that there are.
func TestEveryCautionHasItsSource(t *testing.T) {
	for _, c := range caution.All() {
		t.Run(string(c.Topic)+" "+c.Trust, func(t *testing.T) {
			require.NotEmpty(t, c.Text)
			require.NotEmpty(t, c.Place)
			require.NotEmpty(t, c.Source)
			u, err := url.Parse(c.URL)
			require.NoError(t, err)
			require.NotEmpty(t, u.Host)
			require.Contains(t, []string{"regulator", "second-hand", "anecdotal"}, c.Trust)
			for _, chart := range c.Charts {
				require.Contains(t, grade.Standards(), chart)
			}
		})
	}
}

func TestFor(t *testing.T) {
	topics := func(chart string) map[caution.Topic]int {
		m := map[caution.Topic]int{}
		for _, c := range caution.For(chart) {
			m[c.Topic]++
		}
		return m
	}
	require.Equal(t, map[caution.Topic]int{caution.Cords: 2, caution.Sleepwear: 1, caution.Flame: 1, caution.SmallPart: 2, caution.OpenLace: 1}, topics("baby"))
	require.Equal(t, map[caution.Topic]int{caution.Cords: 2, caution.Sleepwear: 1, caution.Flame: 1}, topics("child"))
	require.Equal(t, topics("child"), topics("youth"))
	require.Equal(t, map[caution.Topic]int{caution.Flame: 1}, topics("women"))
	require.Equal(t, topics("women"), topics("a chart of the app's own"))
}

// The figures of the worked examples, topic h: H01, H06, H11.
func TestFigures(t *testing.T) {
	all := caution.All()
	require.Contains(t, all[0].Text, "3 in")
	require.Contains(t, all[0].Text, "2T to 16")
	require.Contains(t, all[1].Text, "134 cm")
	require.Contains(t, all[4].Text, "30 cm")
}

func ExampleFor() {
	for _, c := range caution.For("baby") {
		fmt.Printf("%s (%s): %s\n", c.Topic, c.Place, c.Trust)
	}
	fmt.Println(caution.Deference)
	// Output:
	// cords (ties and edgings): regulator
	// sleepwear (use of the garment): regulator
	// flame (use of the garment): regulator
	// cords (ties and edgings): second-hand
	// small parts (finishing): second-hand
	// small parts (materials): second-hand
	// open lace (stitch pattern): anecdotal
	// Local rules and licensed practice come first; these are the usual cautions, not legal advice.
}

func ExampleAll() {
	fmt.Println(caution.All()[0].Source)
	// Output: US Consumer Product Safety Commission on drawstrings in children's outerwear (16 CFR 1120, ASTM F1816-97)
}
