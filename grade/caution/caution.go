// Package caution holds the usual cautions that depend on who wears a garment,
// as data that the writer of a pattern can place beside the step they belong to.
//
// Each comes with its public source and how far that source can be trusted. They
// are no legal advice: print Deference with them.
package caution

import "slices"

// Deference is the sentence to print with any of the cautions.
const Deference = "Local rules and licensed practice come first; these are the usual cautions, not legal advice."

// Topic is what a caution is about.
type Topic string

// The topics.
const (
	Cords     Topic = "cords"
	OpenLace  Topic = "open lace"
	Sleepwear Topic = "sleepwear"
	SmallPart Topic = "small parts"
	Flame     Topic = "flame"
)

// Caution is one caution and where it comes from.
type Caution struct {
	Topic Topic `json:"topic"`
	// Charts names the standard charts whose wearers it is for; none stands for
	// everybody.
	Charts []string `json:"charts,omitempty"`
	Place  string   `json:"place"` // the part of a pattern it belongs beside
	Text   string   `json:"text"`
	Source string   `json:"source"`
	URL    string   `json:"url"`
	// Trust says how the source was seen: regulator, second-hand, or anecdotal.
	Trust string `json:"trust"`
}

// All returns every caution, those of regulators first.
func All() []Caution {
	young := []string{"baby", "child", "youth"}
	return []Caution{
		{Cords, []string{"child", "youth"}, "ties and edgings",
			"No drawstring at hood or neck in sizes 2T to 12. At waist and hem, in sizes 2T to 16, at most 3 in (7.5 cm) of cord outside the channel at full width, no toggle or knot at its ends, and the cord sewn fast in the channel.",
			"US Consumer Product Safety Commission on drawstrings in children's outerwear (16 CFR 1120, ASTM F1816-97)",
			"http://cpsc.gov/FAQ/Drawstrings-in-Children%E2%80%99s-Upper-Outerwear", "regulator"},
		{Cords, young, "ties and edgings",
			"For children to 7 years (134 cm): no cord or drawstring at hood or neck, and none tied behind the neck. From 7 to 14 years: no drawstring with free ends there. Home makers are advised to do the same.",
			"Finnish Safety and Chemicals Agency on EN 14682",
			"https://tukes.fi/en/products-and-services/general-consumer-goods/textiles/cords-and-drawstrings-on-children-s-clothing", "regulator"},
		{Sleepwear, young, "use of the garment",
			"Not for sleeping in. Children's sleepwear in sizes over 9 months to 14 must be flame resistant or fit tightly; a loose handmade garment does neither.",
			"US Consumer Product Safety Commission on children's sleepwear (16 CFR 1615 and 1616)",
			"https://cpsc.gov/FAQ/Childrens-Sleepwear", "regulator"},
		{Flame, nil, "use of the garment",
			"Wide sleeves and open fronts catch fire and snag pot handles: not at the stove, and not near candles.",
			"New York City Fire Department, fire safety advice",
			"https://fdnysmart.org/safetytips/dont-wear-loose-fitting-clothing-cooking", "regulator"},
		{Cords, []string{"baby"}, "ties and edgings",
			"Ties at most 30 cm (12 in) long, no drawstrings; a mitten cord sewn to the back of the neck.",
			"knitting-and.com, safety of children's knitwear; stricter than the law in places",
			"https://www.knitting-and.com/crafts-and-needlework/knitting/tips/garment-construction/safety/", "second-hand"},
		{SmallPart, []string{"baby"}, "finishing",
			"Buttons sewn on very firmly.",
			"knitting-and.com, safety of children's knitwear; stricter than the law in places",
			"https://www.knitting-and.com/crafts-and-needlework/knitting/tips/garment-construction/safety/", "second-hand"},
		{SmallPart, []string{"baby"}, "materials",
			"No fluffy yarn, such as mohair, for a baby.",
			"knitting-and.com, safety of children's knitwear; stricter than the law in places",
			"https://www.knitting-and.com/crafts-and-needlework/knitting/tips/garment-construction/safety/", "second-hand"},
		{OpenLace, []string{"baby"}, "stitch pattern",
			"Small fingers can be caught in open lace, long floats and loose loops: choose a closed fabric. No safe size of hole is published.",
			"Cheryl Brunette, Babies and lace, 2019; reports of single cases, no standard",
			"https://www.cherylbrunette.com/2019/02/babies-and-lace-darling-or-dangerous/", "anecdotal"},
	}
}

// For returns the cautions for the wearers of a standard chart, "baby" or
// "child", and those for everybody. For any other name only the latter remain:
// an app with a chart of its own says whose wearers they are.
func For(chart string) []Caution {
	var out []Caution
	for _, c := range All() {
		if len(c.Charts) == 0 || slices.Contains(c.Charts, chart) {
			out = append(out, c)
		}
	}
	return out
}
