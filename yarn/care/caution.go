package care

import (
	_ "embed" // see blocking.go
	"fmt"

	"example.com/panelmath/yarn/internal/table"
)

//go:embed cautions.csv
var cautions string

// Topic is a danger that a step of the work, or the garment, can bring.
type Topic uint8

// The topics. Print a caution with the step it belongs to.
const (
	SteamBurns Topic = iota // where a piece is steamed
	Hands                   // before the first long stretch of work
	Flame                   // for wide sleeves, open fronts and shawls
	Cords                   // for anything with ties, for children
	Lace                    // for open fabric, for babies
	Sleepwear               // for loose things for children
)

// String returns the name: "hands".
func (t Topic) String() string {
	names := [...]string{"steam", "hands", "flame", "cords", "lace", "sleepwear"}
	if int(t) < len(names) {
		return names[t]
	}
	return fmt.Sprintf("Topic(%d)", uint8(t))
}

// MarshalText returns String.
func (t Topic) MarshalText() ([]byte, error) { return []byte(t.String()), nil }

// Caution is a caution in plain words, ready to print, with its source.
type Caution struct {
	Topic  Topic  `json:"topic"`
	Text   string `json:"text"`
	Source string `json:"source"`
	URL    string `json:"url"`
}

// Cautions returns the cautions on the given topics, in that order. A topic that
// is not one of the above has none.
func Cautions(topics ...Topic) []Caution {
	rows := table.Read(cautions)
	var out []Caution
	for _, t := range topics {
		for _, row := range rows {
			if row["topic"] == t.String() {
				out = append(out, Caution{Topic: t, Text: row["text"], Source: row["source"], URL: row["url"]})
			}
		}
	}
	return out
}
