package care

import (
	_ "embed" // see blocking.go

	"example.com/panelmath/internal/enum"
	"example.com/panelmath/yarn/internal/table"
)

//go:embed cautions.csv
var cautions string

// Topic is a danger that the work itself can bring. Those that depend on who
// wears the garment are in grade/caution.
type Topic uint8

// The topics.
const (
	SteamBurns Topic = iota
	Hands
)

var topics = [...]string{"steam", "hands"}

// String returns the name: "hands".
func (t Topic) String() string { return enum.Name("Topic", t, topics[:]) }

// MarshalText returns String. It returns a *gauge.FieldError for a value that is
// none of the above.
func (t Topic) MarshalText() ([]byte, error) {
	return enum.Marshal("Topic", t, topics[:])
}

// UnmarshalText reads what String prints. It returns a *gauge.ParseError for
// anything else.
func (t *Topic) UnmarshalText(b []byte) error {
	return enum.Unmarshal(t, "Topic", b, topics[:])
}

// Caution is a caution in plain words, ready to print, with its source.
type Caution struct {
	Topic  Topic  `json:"topic"`
	Place  string `json:"place"` // the part of a pattern it belongs beside
	Text   string `json:"text"`
	Trust  string `json:"trust"` // how the source was seen: "second-hand"
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
				out = append(out, Caution{Topic: t, Place: row["place"], Text: row["text"], Trust: row["trust"], Source: row["source"], URL: row["url"]})
			}
		}
	}
	return out
}
