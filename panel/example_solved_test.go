package panel_test

import (
	"fmt"
	"log"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/row"
)

// A plan is solved once, and gives a panel in every size.
func ExampleSolved_Panel() {
	g := gauge.MustGauge("13 sts and 9 rows = 4 in")
	solved, err := lace().Solve()
	if err != nil {
		log.Fatal(err)
	}
	for _, width := range []string{"10 3/4 in", "12 3/4 in", "14 3/4 in"} {
		p, err := solved.Panel(gauge.MustLength("50 in").Measurement(), gauge.MustLength(width).Measurement(), g)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Printf("%s: %d sts, %d rows, %d repeats, %s wide\n", width, p.Stitches.Value, p.Rows.Value, p.Repeats, gauge.QuarterInch.Text(p.Width))
	}
	// Output:
	// 10 3/4 in: 163 sts, 24 rows, 7 repeats, 10¾ in wide
	// 12 3/4 in: 163 sts, 30 rows, 9 repeats, 13¼ in wide
	// 14 3/4 in: 163 sts, 33 rows, 10 repeats, 14¾ in wide
}

func ExamplePlan_Solve() {
	s, err := lace().Solve()
	fmt.Println(s.Legal, err)
	// Output: multiple of 3 + 1, at least 4 <nil>
}

// lace has a foundation row, then lace, its filling row and a plain row for a
// repeat, and two plain rows to close.
func lace() panel.Plan {
	us := func(s string) row.Row { return row.Must(s, row.US) }
	return panel.Plan{
		Opening: []row.Row{us("fhdc")},
		Repeat: []row.Row{us("dc in first st, *ch 2, sk 2, dc in next st; rep from * across"),
			us("hdc in each st and 2 hdc in each ch-2 sp across"), us("hdc in each st across")},
		Closing: []row.Row{us("hdc in each st across"), us("hdc in each st across")},
	}
}
