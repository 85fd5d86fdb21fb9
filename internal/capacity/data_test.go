package capacity

import (
	"strings"
	"testing"
)

func TestEveryEmbeddedTableIsRead(t *testing.T) {
	files, err := dataFiles.ReadDir("data")
	if err != nil || len(files) != 10 {
		t.Fatalf("%d tables, %v", len(files), err)
	}
	for _, f := range files {
		for _, row := range embeddedRows(f.Name()) {
			if basis := row["basis"]; basis != "read" && basis != "memory" && basis != "practice" {
				t.Errorf("%s: basis %q: %v", f.Name(), basis, row)
			}
		}
	}
}

func TestTablesWithoutSourceAreRefused(t *testing.T) {
	for name, text := range map[string]string{
		"empty":      "",
		"no rows":    "a,source,basis\n",
		"no source":  "a,source,basis\n1,,read\n",
		"no basis":   "a,source,basis\n1,some table,\n",
		"no columns": "a\n1\n",
		"ragged":     "a,source,basis\n1,some table\n",
	} {
		if rows, err := rowsOf(strings.NewReader(text)); err == nil {
			t.Errorf("%s: read as %v", name, rows)
		}
	}
}
