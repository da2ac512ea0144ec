package grade

import "example.com/panelmath/gauge"

// MemberEase is the ease that one member of a group gets from a finished
// measure, at both ends of its printed range.
type MemberEase struct {
	Size   string            `json:"size"`
	AtLow  gauge.Measurement `json:"at_low"`  // on the smallest body of the size: the most
	AtHigh gauge.Measurement `json:"at_high"` // on the largest body of the size: the least
}

// Eases returns the ease that every member of the group gets from a garment
// whose measure m is finished at the given length, by the chart's column u.
//
// It returns the errors of Group.Body.
func (g Group) Eases(m Measure, u gauge.Unit, finished gauge.Measurement) ([]MemberEase, error) {
	if _, err := g.Body(m, u); err != nil {
		return nil, err
	}
	out := make([]MemberEase, len(g.Members))
	for i, size := range g.Members {
		b, err := g.Chart.Body(size, m, u)
		if err != nil {
			return nil, err
		}
		out[i] = MemberEase{size, finished.Sub(b.Low.Measurement()), finished.Sub(b.High.Measurement())}
	}
	return out, nil
}

// Gap is the stretch between two neighbouring groups in which a body falls that
// neither group was printed for.
type Gap struct {
	Below string       `json:"below"` // label of the smaller group
	Above string       `json:"above"` // label of the larger group
	From  gauge.Length `json:"from"`  // high end of the smaller group
	To    gauge.Length `json:"to"`    // low end of the larger one
}

// Width returns how wide the gap is.
func (g Gap) Width() gauge.Measurement { return g.To.Measurement().Sub(g.From.Measurement()) }

// Middle returns the middle of the gap. Widening both groups to it closes the
// gap, so that no body falls between two sizes.
func (g Gap) Middle() gauge.Measurement { return Body{Low: g.From, High: g.To}.Middle() }

// Holds reports whether a body falls into the gap, its two ends not included.
func (g Gap) Holds(body gauge.Measurement) bool {
	return body.Cmp(g.From.Measurement()) > 0 && body.Cmp(g.To.Measurement()) < 0
}

// Gaps returns the gaps between neighbouring groups in the measure m, by the
// chart's column u; groups that touch or overlap have none.
//
// It returns the errors of Group.Body, with the place of the group.
func Gaps(groups Run[Group], m Measure, u gauge.Unit) ([]Gap, error) {
	bodies, err := Map(groups, func(g Group) (Body, error) { return g.Body(m, u) })
	if err != nil {
		return nil, err
	}
	var out []Gap
	for i := 1; i < len(bodies); i++ {
		gap := Gap{groups[i-1].Label(), groups[i].Label(), bodies[i-1].High, bodies[i].Low}
		if gap.Width().Sign() > 0 {
			out = append(out, gap)
		}
	}
	return out, nil
}
