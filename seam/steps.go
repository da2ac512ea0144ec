package seam

import (
	"errors"
	"strings"

	"example.com/panelmath/gauge"
)

// DefaultBlocking is the blocking step where the fibre is not known.
const DefaultBlocking = "Block both panels to the finished measurements before seaming, in the way the yarn's label allows, and let them dry. " +
	"Never bring steam or an iron to acrylic or another man-made fibre without trying it on the swatch: heat can ruin it for good."

// OpenFrontSteps returns the finishing of an open front as sentences, one a
// step, with every number for all sizes: "join 49 (50, 52) pairs". centreBack
// and side hold one join a size, in order; the side join is worked on both
// panels. blocking is the step that comes first, with the cautions of the
// fibre; empty stands for DefaultBlocking.
//
// It returns an error if there is no size, the two differ in length or in the
// edge they lie on, or a join has no pairs.
func OpenFrontSteps(centreBack, side []Join, blocking string) ([]string, error) {
	if len(centreBack) == 0 || len(centreBack) != len(side) {
		return nil, errors.New("open front steps: want one centre back and one side join a size")
	}
	for i := range side {
		if centreBack[i].Pairs < 1 || side[i].Pairs < 1 {
			return nil, errors.New("open front steps: a join without pairs")
		}
		if centreBack[i].Asked.Count != side[i].Asked.Count {
			return nil, errors.New("open front steps: centre back and side lie on panels of different length")
		}
	}
	if blocking == "" {
		blocking = DefaultBlocking
	}
	back := run(centreBack, func(j Join) string { return halves(gauge.Int(j.Pairs)) })
	sides := run(side, func(j Join) string { return halves(gauge.Int(j.Pairs)) })
	foldAt := run(side, func(j Join) string { return halves(j.Asked.half()) })
	neck := bothUnits(centreBack, func(j Join) gauge.Measurement { return j.Opening })
	arm := bothUnits(side, func(j Join) gauge.Measurement { return j.Opening })
	fold := "The fold at the shoulder lies " + foldAt + " sts from either hem"
	odd := false
	for _, j := range side {
		odd = odd || j.MiddleOnFold
	}
	if odd {
		fold += "; a half means that it runs through the middle stitch"
	}
	return []string{
		blocking,
		"Lay the two panels side by side, right sides up, with the foundation edges together in the middle and the hems level. Pin the hems. " + fold + ".",
		"Centre back: count " + back + " sts up from the back hem on both foundation edges and place a marker at each. From the hem up, join " + back +
			" pairs of sts, one st to one st, and stop at the markers: " + neck + " stay open below the fold for the neck. The rest of both edges stays open down the front.",
		"Pull the seam lengthwise, as wearing will: it has to give as much as the panels. If it is tighter, undo it and join more loosely. Fasten off.",
		"Fold both panels over at the shoulder, right sides out, hems level. Pin.",
		"Sides: on each panel count " + sides + " sts up from both hems along the outer edge and place markers. From the hem up, join " + sides +
			" pairs of sts, and stop at the markers: " + arm + " from the fold stay open for each armhole. Check the stretch again and fasten off.",
		"Weave in all ends along the seams, each in two directions. Rest your hands between seams.",
		"Worn loose: keep open fronts and wide sleeves away from flames and hobs.",
	}, nil
}

// run prints one value a size as a pattern does: "49 (50, 52)".
func run(js []Join, value func(Join) string) string {
	first := value(js[0])
	same := true
	var rest []string
	for _, j := range js[1:] {
		v := value(j)
		same = same && v == first
		rest = append(rest, v)
	}
	if same {
		return first
	}
	return first + " (" + strings.Join(rest, ", ") + ")"
}

// bothUnits prints a length a size in quarter inches and half centimetres.
func bothUnits(js []Join, value func(Join) gauge.Measurement) string {
	in := run(js, func(j Join) string { return gauge.QuarterInch.Number(value(j)) })
	cm := run(js, func(j Join) string { return gauge.HalfCentimetre.Number(value(j)) })
	return in + " in [" + cm + " cm]"
}
