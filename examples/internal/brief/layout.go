package brief

import (
	"errors"
	"slices"
	"strings"
)

// Layout is one of the garments that a brief may ask for. The README of the
// pattern program tells the fields and the arithmetic of each.
type Layout string

// The layouts of a brief.
const (
	OpenFront    Layout = "open front"
	ClosedFront  Layout = "closed front"
	FrontAndBack Layout = "front and back"
	Cocoon       Layout = "cocoon"
	Poncho       Layout = "poncho"
)

// Layouts returns all of them.
func Layouts() []Layout { return []Layout{OpenFront, ClosedFront, FrontAndBack, Cocoon, Poncho} }

func parseLayout(s string) (Layout, error) {
	if l := Layout(s); slices.Contains(Layouts(), l) {
		return l, nil
	}
	return "", errors.New("want open front, closed front, front and back, cocoon or poncho")
}

// Required returns the fields that a brief of the layout must have, in order,
// with blanks between them; Optional those that it may have.
func (l Layout) Required() string {
	lengths := map[Layout]string{
		OpenFront:    "ease layout length armhole_depth neck_drop",
		ClosedFront:  "ease layout length armhole_depth neck_drop neck_depth head",
		FrontAndBack: "ease layout length armhole_depth neck_width head",
		Cocoon:       "layout width length armhole_depth",
		Poncho:       "layout width neck_round head",
	}[l]
	return "name terms units gauge hook chart sizes " + lengths + " rows yarn"
}

// Optional returns the fields that a brief of the layout may have.
func (l Layout) Optional() string {
	more := map[Layout]string{
		OpenFront:    "hem_slit",
		ClosedFront:  "hem_slit neck_stretch",
		FrontAndBack: "hem_slit neck_stretch sleeve_length",
		Poncho:       "neck_stretch",
	}[l]
	return strings.TrimSpace("worked_gauge row_start direction " + more)
}

// Lengths returns the fields of the layout that hold one length for all groups,
// or one for each.
func (l Layout) Lengths() []string {
	var out []string
	for _, name := range strings.Fields(l.Required() + " " + l.Optional()) {
		switch name {
		case "length", "width", "armhole_depth", "neck_drop", "neck_depth", "neck_width", "neck_round", "head", "hem_slit", "sleeve_length":
			out = append(out, name)
		}
	}
	return out
}
