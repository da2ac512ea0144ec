package main

import (
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/seam"
	"example.com/panelmath/yarn"
)

// result is what the JSON output holds. Measures are decimals in the unit of the
// brief to 0.001, yarn is in the units of its label to 0.01, rounded half up for
// printing only.
type result struct {
	Name     string           `json:"name"`
	Pattern  gauge.Gauge      `json:"pattern_gauge"`
	Mine     gauge.Gauge      `json:"gauge"`
	Units    gauge.Unit       `json:"units"`
	Followed []followedResult `json:"followed"`
	Wanted   *wantedResult    `json:"wanted,omitempty"`
	New      []newResult      `json:"new"`
	Without  []withoutResult  `json:"without,omitempty"` // sizes that have no numbers at this gauge
	Counts   []countsResult   `json:"counts,omitempty"`
}

type followedResult struct {
	Label    string            `json:"label"`
	Measures map[string]string `json:"measures,omitempty"`
	Pattern  map[string]string `json:"pattern_measures"`
	Yarn     []yarnResult      `json:"yarn,omitempty"`
	Faults   []string          `json:"faults,omitempty"`
}

type wantedResult struct {
	Round   string   `json:"round"`
	Nearest []string `json:"nearest"` // sizes to follow as written: several in a tie
	Fits    bool     `json:"fits"`    // they can be put on; false where no size can
}

type newResult struct {
	Label    string            `json:"label"`
	Stitches int               `json:"stitches"`
	Rows     int               `json:"rows"`
	Repeats  int               `json:"repeats"`
	Chains   int               `json:"chains,omitempty"`
	Sleeve   *countsOfPiece    `json:"sleeve,omitempty"`
	Pairs    map[string]int    `json:"pairs"`
	Slit     int               `json:"slit_pairs,omitempty"` // left open at the hem
	Measures map[string]string `json:"measures"`
	Yarn     []yarnResult      `json:"yarn"`
	Faults   []string          `json:"faults,omitempty"`
	Why      []string          `json:"why,omitempty"` // one sentence for each number
}

type countsOfPiece struct {
	Stitches int `json:"stitches"`
	Rows     int `json:"rows"`
	Repeats  int `json:"repeats"`
}

type withoutResult struct {
	Label string `json:"label"`
	Why   string `json:"why"`
}

type countsResult struct {
	Asked string        `json:"asked"`
	New   []gauge.Count `json:"new"`
}

type yarnResult struct {
	Label  yarn.Label `json:"label"`
	Skeins int        `json:"skeins"`
	Length string     `json:"length"`
	Mass   string     `json:"mass"`
	Less   string     `json:"less"` // what it may take less
}

func (a reply) result() result {
	r := result{Name: a.pattern.Name, Pattern: a.pattern.Fabric.Finished, Mine: a.mine, Units: a.pattern.Units, New: []newResult{}}
	for _, f := range a.followed {
		one := followedResult{Label: f.Group.Label(), Pattern: a.decimals(f.Sewn.Layout), Yarn: quantities(f.yarn)}
		if one.Faults = faults(f.fault, f.unfit); f.fault == nil {
			one.Measures = a.decimals(f.made)
		}
		r.Followed = append(r.Followed, one)
	}
	if w := a.wanted; w != nil {
		r.Wanted = &wantedResult{Round: w.round.In(a.pattern.Units).Text(3), Nearest: runOf(w.nearest, func(i int) string { return a.followed[i].Group.Label() }), Fits: w.fits}
	}
	for _, n := range a.renewed {
		one := newResult{Label: n.Group.Label(), Stitches: n.Panel.Stitches.Value, Rows: n.Panel.Rows.Value, Repeats: n.Panel.Repeats, Chains: n.Panel.Chains,
			Pairs: pairsByName(n.Sewn), Measures: a.decimals(n.Sewn.Layout), Yarn: quantities(n.yarn), Faults: faults(n.unfit)}
		side, _ := n.Join("side")
		one.Slit = side.Start
		if a.why {
			one.Why = a.explain(n)
		}
		if p := n.Sleeve; p != nil {
			one.Sleeve = &countsOfPiece{p.Stitches.Value, p.Rows.Value, p.Repeats}
		}
		r.New = append(r.New, one)
	}
	for _, l := range a.lost {
		r.Without = append(r.Without, withoutResult{a.pattern.Sizes[l.at].Group.Label(), l.why.Error()})
	}
	for i, o := range a.others {
		r.Counts = append(r.Counts, countsResult{o.text, a.counts[i]})
	}
	return r
}

func (a reply) decimals(l layout.Layout) map[string]string {
	out := map[string]string{}
	for _, m := range l.Measures {
		out[m.Name] = m.Length.In(a.pattern.Units).Text(3)
	}
	return out
}

func pairsByName(g seam.Garment) map[string]int {
	out := map[string]int{}
	for _, j := range g.Joins {
		out[j.Asked.Name] = j.Pairs
	}
	return out
}

func quantities(q []yarn.Quantity) []yarnResult {
	return runOf(q, func(q yarn.Quantity) yarnResult {
		u := q.Label.Length.Unit
		return yarnResult{q.Label, q.Skeins, q.Total.In(u).Text(2), q.Mass.In(q.Label.Mass.Unit).Text(2), q.Less.In(u).Text(2)}
	})
}

func faults(errs ...error) (out []string) {
	for _, err := range errs {
		if err != nil {
			out = append(out, strings.Split(err.Error(), "\n")...)
		}
	}
	return out
}
