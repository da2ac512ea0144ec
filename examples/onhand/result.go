package main

import (
	"example.com/panelmath/gauge"
	"example.com/panelmath/yarn/stash"
)

// result is what the JSON output holds. Measures are decimals in the unit of the
// brief to 0.001, yarn is in the unit of the label to 0.01, rounded half up for
// printing only; what is left is negative where the yarn is short.
type result struct {
	Name    string        `json:"name"`
	Units   gauge.Unit    `json:"units"`
	Yarn    gauge.Unit    `json:"yarn_units"`
	Have    string        `json:"have"`
	Sizes   []sizeResult  `json:"sizes"`
	Largest string        `json:"largest,omitempty"` // left out where the yarn makes none
	Chosen  *chosenResult `json:"chosen,omitempty"`

	Lots  []stash.Assignment `json:"lots,omitempty"`  // which piece from which lot
	Mixed string             `json:"mixed,omitempty"` // why no piece can be whole
}

type sizeResult struct {
	Label  string `json:"label"`
	Takes  string `json:"takes"` // with the spare
	Left   string `json:"left"`
	Enough string `json:"enough"` // "yes", "without the spare" or "no"
}

type chosenResult struct {
	Label string      `json:"label"`
	Ways  []wayResult `json:"ways"`
}

type wayResult struct {
	Name     string            `json:"name"` // "shorter" or "narrower"
	Found    bool              `json:"found"`
	Stitches int               `json:"stitches,omitempty"`
	Rows     int               `json:"rows,omitempty"`
	Repeats  *int              `json:"repeats,omitempty"`
	Pairs    map[string]int    `json:"pairs,omitempty"`
	Measures map[string]string `json:"measures,omitempty"`
	Tight    bool              `json:"tight,omitempty"` // it does not go round the body
	Takes    string            `json:"takes,omitempty"`
	Left     string            `json:"left,omitempty"`
}

func (a reply) result() result {
	u := a.label.Length.Unit
	in := func(m gauge.Measurement) string { return m.In(u).Text(2) }
	r := result{Name: a.Name, Units: a.Units, Yarn: u, Have: in(a.have)}
	for _, s := range a.sizes {
		r.Sizes = append(r.Sizes, sizeResult{s.Group.Label(), in(s.takes.Total), in(s.left), s.enough(a.have)})
	}
	if a.largest >= 0 {
		r.Largest = a.sizes[a.largest].Group.Label()
	}
	r.Lots = a.given
	if a.mixed != nil {
		r.Mixed = a.mixed.Error()
	}
	if a.chosen == nil {
		return r
	}
	r.Chosen = &chosenResult{Label: a.chosen.Group.Label()}
	for _, w := range a.chosen.ways {
		one := wayResult{Name: w.name, Found: w.found}
		if w.found {
			one.Stitches, one.Rows, one.Repeats = w.Panel.Stitches.Value, w.Panel.Rows.Value, &w.Panel.Repeats
			one.Pairs, one.Measures = map[string]int{}, map[string]string{}
			for _, j := range w.Sewn.Joins {
				one.Pairs[j.Asked.Name] = j.Pairs
			}
			for _, m := range w.Sewn.Layout.Measures {
				one.Measures[m.Name] = m.Length.In(a.Units).Text(3)
			}
			one.Tight = w.tight()
			one.Takes, one.Left = in(w.takes.Total), in(w.left)
		}
		r.Chosen.Ways = append(r.Chosen.Ways, one)
	}
	return r
}
