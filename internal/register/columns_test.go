package register

import (
	"errors"
	"strings"
	"testing"
)

func TestBadColumns(t *testing.T) {
	const text = "No.;Type;RL;Insp.;Sort;Serial\nA;shackle;5;;;\n"
	for _, c := range []struct{ old, new, message string }{
		{"field: serial", "field: seriel", "did you mean `serial`?"},
		{"field: serial", "field: certificate", "no field of an item with one value"},
		{"field: serial", "field: faults_seen", "entries are numbered"},
		{"field: serial", "field: serial, keep: true", "either"},
		{"field: serial", "keep: true, unit: t", "stays as it stands"},
		{"field: serial", "field: number", "filled already"},
		{"unit: t", "unit: ton", "no unit"},
		{"field: serial", "field: serial, unit: t", "no physical value"},
		{"field: serial", "field: serial, dates: day_first", "no day"},
		{"field: serial", "field: serial, decimal: comma", "no number"},
		{"field: kind", "field: kind, words: [{says: a, means: rope}]", "none of"},
		{"field: serial", "field: serial, words: [{says: a, means: b}, {says: a, means: c}]", "a meaning already"},
		{"  - {head: No., field: number}\n", "", "no column has the field `number`"},
		{"  - {head: Type, field: kind}\n", "", "under `fixed`"},
		{"liftlint: 1", "liftlint: 2", `must be "1"`},
		{"field: serial", "feld: serial", "did you mean"},
		{"columns:", "fixed: [{field: status, value: fine}]\ncolumns:", "none of"},
		{"columns:", "fixed: [{field: kind, value: shackle}]\ncolumns:", "filled already"},
	} {
		changed := strings.Replace(plainColumns, c.old, c.new, 1)
		columns, err := ReadColumns("gear.columns.yaml", []byte(changed))
		if err == nil {
			_, err = mustReader(t).ReadTable("gear.csv", []byte(text), columns)
		}
		var ps Problems
		if !errors.As(err, &ps) || !strings.Contains(err.Error(), c.message) || ps[0].Place.File != "gear.columns.yaml" || ps[0].Place.Range.IsZero() {
			t.Errorf("%s: %v", c.new, err)
		}
	}
}
