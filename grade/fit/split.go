package fit

import (
	"fmt"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
)

// Split is wearers split into groups, and why no other split is better.
type Split struct {
	Ease    grade.Ease `json:"ease"`    // what every garment measures beyond the largest body of its group
	Wearers []Wearer   `json:"wearers"` // from the smallest to the largest
	Parts   []Part     `json:"parts"`   // from the smallest to the largest
	// Worst is the largest ease that anybody gets; Total is the ease over all
	// wearers, each at the low end.
	Worst gauge.Measurement `json:"worst"`
	Total gauge.Measurement `json:"total"`
	// Witness holds places in Wearers: no two of them can share a group, within
	// the window of Fewest, or for less than Worst in Best. One place alone says
	// that this wearer's own range already takes Worst.
	Witness []int `json:"witness"`
	// Ties is the number of splits into as many groups with the same Worst, this
	// one included; the largest int stands for more.
	Ties int `json:"ties"`
	// Others holds the splits that tie in Worst and in Total, as the number of
	// wearers in each group: at most MaxOthers of them.
	Others [][]int `json:"others"`
}

// Part is one group of a Split.
type Part struct {
	From     int               `json:"from"`     // the wearers Split.Wearers[From:To]
	To       int               `json:"to"`       // the wearers Split.Wearers[From:To]
	Finished gauge.Measurement `json:"finished"` // the garment: Ease beyond the largest body of the group
	UpTo     gauge.Measurement `json:"up_to"`    // how large it may be inside the window of Fewest; Finished where there is no upper limit
	Least    gauge.Measurement `json:"least"`    // ease of the largest body
	Most     gauge.Measurement `json:"most"`     // ease of the smallest body
}

// Worn is what one wearer gets from a Split.
type Worn struct {
	Name   string            `json:"name"`
	Part   int               `json:"part"`    // place in Split.Parts
	AtLow  gauge.Measurement `json:"at_low"`  // ease on the smallest body of the wearer's range
	AtHigh gauge.Measurement `json:"at_high"` // ease on the largest
}

// Fewest splits wearers into the fewest groups that keep the ease of each of
// them inside the window, and among those splits takes the best. Every garment
// measures the window's least ease beyond the largest body of its group; it may
// be larger, up to Part.UpTo. Wearers who measure the same share a group.
//
// It returns a *gauge.FieldError if the window is not valid, there are no
// wearers or more than MaxWearers, or more than MaxGroups groups are needed,
// and a *grade.SizeError if a wearer is not valid, or has a range that no
// garment keeps inside the window; and an error if one range lies inside
// another.
func Fewest(wearers []Wearer, w Window) (Split, error) {
	if err := w.Validate(); err != nil {
		return Split{}, err
	}
	all, err := sorted(wearers)
	if err != nil {
		return Split{}, err
	}
	l := newLine(all, w.Least)
	earliest := make([]int, l.n()+1) // where w is open, one group holds everybody
	if !w.Open {
		if earliest, err = l.within(w); err != nil {
			return Split{}, err
		}
	}
	starts := l.greedy(earliest)
	if len(starts) > MaxGroups {
		return Split{}, &gauge.FieldError{Field: "groups", Got: strconv.Itoa(len(starts)), Want: "at most 64", Err: gauge.ErrBounds}
	}
	s := l.best(len(starts), earliest)
	for _, at := range starts {
		s.Witness = append(s.Witness, l.first[at])
	}
	for i, p := range s.Parts {
		s.Parts[i].UpTo = p.Finished
		if !w.Open {
			s.Parts[i].UpTo = w.Most.Finished(all[p.From].Low.Measurement())
		}
	}
	return s, nil
}

// Best splits wearers into k groups so that the largest ease that any of them
// gets is as small as it can be, where every garment measures ease beyond the
// largest body of its group. Wearers who measure the same share a group, so
// there are fewer groups where fewer than k measure differently.
//
// It returns a *gauge.FieldError if ease is not valid, k is not from 1 to
// MaxGroups, or there are no wearers or more than MaxWearers; a
// *grade.SizeError if a wearer is not valid; and an error if one range lies
// inside another.
func Best(wearers []Wearer, ease grade.Ease, k int) (Split, error) {
	if err := ease.Validate(); err != nil {
		return Split{}, err
	}
	if k < 1 || k > MaxGroups {
		return Split{}, &gauge.FieldError{Field: "groups", Got: strconv.Itoa(k), Want: "1 to 64", Err: gauge.ErrBounds}
	}
	all, err := sorted(wearers)
	if err != nil {
		return Split{}, err
	}
	l := newLine(all, ease)
	s := l.best(min(k, l.n()), make([]int, l.n()+1))
	s.Witness = l.witness(s.Worst)
	for i, p := range s.Parts {
		s.Parts[i].UpTo = p.Finished
	}
	return s, nil
}

// members returns the wearers of a part: those of its places that there are, where
// a file names others.
func (s Split) members(p Part) []Wearer {
	from := min(max(p.From, 0), len(s.Wearers))
	return s.Wearers[from:min(max(p.To, from), len(s.Wearers))]
}

// Lists returns the names of the wearers in each group, in the form that
// grade.Chart.Groups takes.
func (s Split) Lists() [][]string {
	out := make([][]string, len(s.Parts))
	for i, p := range s.Parts {
		for _, w := range s.members(p) {
			out[i] = append(out[i], w.Name)
		}
	}
	return out
}

// Worn returns what every wearer gets, from the smallest to the largest.
func (s Split) Worn() []Worn {
	var out []Worn
	for i, p := range s.Parts {
		for _, w := range s.members(p) {
			out = append(out, Worn{w.Name, i, p.Finished.Sub(w.Low.Measurement()), p.Finished.Sub(w.High.Measurement())})
		}
	}
	return out
}

// Explain says in a few words how the wearers are split, what the worst ease
// is, printed on the grid, and who proves that it can't be better.
func (s Split) Explain(g gauge.Grid) string {
	if len(s.Parts) == 0 {
		return "no split"
	}
	labels := make([]string, len(s.Parts))
	for i, p := range s.Parts {
		switch in := s.members(p); len(in) {
		case 0:
			labels[i] = "nobody"
		case 1:
			labels[i] = in[0].Name
		default:
			labels[i] = in[0].Name + "–" + in[len(in)-1].Name
		}
	}
	var names []string
	for _, at := range s.Witness {
		if at >= 0 && at < len(s.Wearers) {
			names = append(names, s.Wearers[at].Name)
		}
	}
	text := fmt.Sprintf("%s: the most ease anybody gets is %s", strings.Join(labels, ", "), g.Text(s.Worst))
	switch {
	case len(names) == 1 && len(s.Parts) > 1:
		text += "; " + names[0] + " alone takes that much"
	case len(names) > len(s.Parts):
		text += "; any two of " + strings.Join(names, ", ") + " in one group take that much or more"
	case len(names) > 1:
		text += "; no two of " + strings.Join(names, ", ") + " can share a group"
	}
	return text
}
