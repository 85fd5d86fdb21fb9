package capacity

import (
	"embed"
	"encoding/csv"
	"fmt"
	"io"
)

//go:embed data/*.csv
var dataFiles embed.FS

// embeddedRows are the rows of a table that is part of the program. A test
// reads them all, so a fault in one never gets as far as a user.
func embeddedRows(name string) []map[string]string {
	f := must(dataFiles.Open("data/" + name))
	defer f.Close()
	return must(rowsOf(f))
}

// rowsOf reads a table as maps from its header. It is an error if there are no
// rows, or if one doesn't name its source and how far to rely on it.
func rowsOf(r io.Reader) ([]map[string]string, error) {
	all, err := csv.NewReader(r).ReadAll()
	if err != nil {
		return nil, err
	}
	if len(all) < 2 {
		return nil, fmt.Errorf("the table holds no rows")
	}
	var rows []map[string]string
	for i, line := range all[1:] {
		row := map[string]string{}
		for j, h := range all[0] {
			row[h] = line[j]
		}
		if row["source"] == "" || row["basis"] == "" {
			return nil, fmt.Errorf("row %d names no source or no basis: %v", i+1, line)
		}
		rows = append(rows, row)
	}
	return rows, nil
}

func must[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}
