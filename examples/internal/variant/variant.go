// Package variant asks what becomes of a brief when one of its fields is
// another: one size alone, another gauge, a shorter length. A changed brief goes
// through the same reader and the same arithmetic as one that a designer wrote.
package variant

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"maps"
	"os"
	"strings"

	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/examples/internal/garment"
	"example.com/panelmath/grade"
	"example.com/panelmath/internal/text"
)

// Brief is a brief as its fields stand in the file, and as it was read.
//
// The methods that change a field leave Brief as it was read before: Again reads
// what has been changed.
type Brief struct {
	brief.Brief
	fields map[string]json.RawMessage
}

// Open reads the brief in a file, from standard input where file is "-", or the
// one that the program holds where file is empty.
func Open(file string, stdin io.Reader, held []byte) (Brief, error) {
	switch file {
	case "":
		return Read(bytes.NewReader(held))
	case "-":
		return Read(stdin)
	}
	f, err := os.Open(file)
	if err != nil {
		return Brief{}, fmt.Errorf("brief: %w", err)
	}
	defer f.Close()
	return Read(f)
}

// Read reads a brief. Its errors are those of brief.Read.
func Read(r io.Reader) (Brief, error) {
	var file bytes.Buffer
	read, err := brief.Read(io.TeeReader(r, &file))
	if err != nil {
		return Brief{}, err
	}
	b := Brief{Brief: read}
	if err := json.Unmarshal(file.Bytes(), &b.fields); err != nil {
		return Brief{}, fmt.Errorf("brief: %w", err)
	}
	return b, nil
}

// Has reports whether the brief has a field.
func (b Brief) Has(field string) bool { return b.fields[field] != nil }

// With returns the fields with one of them set to a text.
func (b Brief) With(field, value string) Brief {
	fields := maps.Clone(b.fields)
	fields[field], _ = json.Marshal(value) // a string always has a JSON form
	return Brief{b.Brief, fields}
}

// Without returns the fields less one.
func (b Brief) Without(field string) Brief {
	fields := maps.Clone(b.fields)
	delete(fields, field)
	return Brief{b.Brief, fields}
}

// Only returns the fields for some groups of sizes: of every list with a value
// for each group those of the groups named.
func (b Brief) Only(groups ...int) Brief {
	fields := maps.Clone(b.fields)
	for name, value := range b.fields {
		var list, kept []json.RawMessage
		if json.Unmarshal(value, &list) != nil || len(list) != len(b.Groups) {
			continue
		}
		for _, i := range groups {
			kept = append(kept, list[i])
		}
		fields[name], _ = json.Marshal(kept) // what was read from JSON has a JSON form
	}
	return Brief{b.Brief, fields}
}

// Again reads the fields as they now are. Its errors are those of brief.Read.
func (b Brief) Again() (Brief, error) {
	file, err := json.Marshal(b.fields)
	if err != nil {
		return Brief{}, fmt.Errorf("brief: %w", err)
	}
	return Read(bytes.NewReader(file))
}

// Make works out the garment of the fields as they now are. Its error is a
// *brief.Error that names the field and the size.
func (b Brief) Make() (garment.Garment, error) {
	again, err := b.Again()
	if err != nil {
		return garment.Garment{}, err
	}
	g, err := garment.Make(again.Brief)
	if err != nil {
		return garment.Garment{}, err
	}
	for _, s := range g.Sizes {
		if err := s.Short(); err != nil {
			return garment.Garment{}, &brief.Error{Field: "length", Size: s.Group.Label(), Cause: err.Error(), Err: err}
		}
	}
	return g, nil
}

// Size returns the place of the group of sizes with a label. Small letters and
// any dash will do: "xl-2x" is XL–2X. Its error lists the labels.
func (b Brief) Size(label string) (int, error) {
	plain := func(s string) string {
		return strings.ToUpper(strings.NewReplacer("–", "-", " ", "").Replace(s))
	}
	labels := grade.Labels(b.Groups)
	for i, l := range labels {
		if plain(l) == plain(label) {
			return i, nil
		}
	}
	return 0, fmt.Errorf("got %s, want one of %s", text.Quote(label), strings.Join(labels, ", "))
}
