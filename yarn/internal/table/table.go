// Package table reads the tables that packages embed.
package table

import (
	"encoding/csv"
	"strings"
)

// Read returns the rows of a CSV text by the names of its columns. The text is
// one of the library's own, which a test reads too; of a broken one it returns
// what comes before the break.
func Read(s string) []map[string]string {
	records, _ := csv.NewReader(strings.NewReader(s)).ReadAll()
	if len(records) == 0 {
		return nil
	}
	rows := make([]map[string]string, 0, len(records)-1)
	for _, rec := range records[1:] {
		row := make(map[string]string, len(rec))
		for i, cell := range rec {
			row[records[0][i]] = cell
		}
		rows = append(rows, row)
	}
	return rows
}
