package grade

import (
	"fmt"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
)

// Measure is a measure of the body. The zero value is Chest, the measure that
// charts are keyed by.
type Measure uint8

// The measures of the standard's charts, taken as the standard says.
const (
	Chest        Measure = iota // chest or bust, round the fullest part
	Waist                       // round the natural waist
	Hip                         // round the widest part
	UpperArm                    // round the widest part above the elbow
	Head                        // round the forehead
	CrossBack                   // from shoulder to shoulder
	ArmholeDepth                // from the top outer edge of the shoulder down to the armpit
	BackWaist                   // from the bone at the back of the neck to the natural waist
	BackHip                     // from the bone at the back of the neck to the hip; men only
	ArmLength                   // from the armpit to the wrist
	NeckToWrist                 // from the centre back of the neck, over the shoulder, to the wrist
)

// measures holds the words of the trade and the key of the tables.
var measures = [...]struct{ words, key string }{
	Chest:        {"chest", "chest"},
	Waist:        {"waist", "waist"},
	Hip:          {"hip", "hip"},
	UpperArm:     {"upper arm", "upper_arm"},
	Head:         {"head", "head_circumference"},
	CrossBack:    {"cross back", "cross_back"},
	ArmholeDepth: {"armhole depth", "armhole_depth"},
	BackWaist:    {"back waist length", "back_waist"},
	BackHip:      {"back hip length", "back_hip"},
	ArmLength:    {"arm length to underarm", "arm_length_underarm"},
	NeckToWrist:  {"centre back neck to wrist", "neck_to_wrist"},
}

// Valid reports whether m is one of the measures above.
func (m Measure) Valid() bool { return int(m) < len(measures) }

// String returns the words of the trade: "upper arm".
func (m Measure) String() string {
	if !m.Valid() {
		return fmt.Sprintf("Measure(%d)", uint8(m))
	}
	return measures[m].words
}

// round reports whether m goes round the body, and so never shrinks from one
// size of a chart to the next.
func (m Measure) round() bool { return m <= Head }

// ParseMeasure reads a measure by its words ("upper arm"), or by the key of a
// table ("upper_arm"). Case does not matter; "bust" is Chest.
//
// It returns a *gauge.ParseError if s is none of these.
func ParseMeasure(s string) (Measure, error) {
	w := strings.ToLower(strings.TrimSpace(s))
	if w == "bust" {
		return Chest, nil
	}
	for m := range measures {
		if w == measures[m].words || w == measures[m].key {
			return Measure(m), nil
		}
	}
	all := make([]string, len(measures))
	for m := range measures {
		all[m] = measures[m].words
	}
	return 0, &gauge.ParseError{Kind: "measure", Text: s,
		Cause: "unknown measure " + text.Quote(s) + "; want " + strings.Join(all, ", ")}
}

// MarshalText returns the words. It returns a *gauge.FieldError for a measure
// that is not valid.
func (m Measure) MarshalText() ([]byte, error) {
	if !m.Valid() {
		return nil, &gauge.FieldError{Field: "Measure", Got: m.String(), Want: "a measure of the body"}
	}
	return []byte(m.String()), nil
}

// UnmarshalText reads what ParseMeasure reads.
func (m *Measure) UnmarshalText(b []byte) error {
	return text.Read(m, b, ParseMeasure)
}
