package register

import (
	"errors"
	"strings"
	"testing"
)

// TestDamageIsNotKeptUnjudged: a sign that a kind of gear lacks is refused where
// it was seen, and kept where it was not.
func TestDamageIsNotKeptUnjudged(t *testing.T) {
	const head = "liftlint: 1\ncolumns:\n  - {head: Num, field: number}\n  - {head: Kind, field: kind}\n  - {head: Day, field: inspections.date}\n"
	for _, c := range []struct {
		column, cell string
		refused      bool
	}{
		{"field: inspections.found.cut", "true", true},
		{"field: inspections.found.cut", "false", false},
		{"field: inspections.found.cut", "perhaps", true},
		{"field: inspections.found.cut, words: [{says: ja, means: \"true\"}, {says: nein, means: \"false\"}]", "ja", true},
		{"field: inspections.found.cut, words: [{says: ja, means: \"true\"}, {says: nein, means: \"false\"}]", "nein", false},
		{"field: inspections.found.broken_wires_in_one_lay", "3", true},
		{"field: inspections.found.broken_wires_in_one_lay", "0", false},
		{"field: inspections.found.outer_wire_wear", "20 %", true},
		{"field: inspections.found.outer_wire_wear", "0 %", false},
		{"field: inspections.found.throat_now", "40 mm", true},
		{"field: inspections.found.latch", "faulty", true},
		{"field: inspections.found.latch", "works", false},
		{"field: inspections.found.corrosion", "severe", true},
		{"field: inspections.found.corrosion", "light", false},
		{"field: inspections.found.pin_original", "false", true},
		{"field: inspections.found.pin_original", "true", false},
		{"field: length", "2 m", false},
	} {
		kind := "shackle"
		if strings.Contains(c.column, "corrosion") || strings.Contains(c.column, "pin_original") {
			kind = "web_sling"
		}
		columns := mustColumns(t, head+"  - {head: Sign, "+c.column+"}\nfixed:\n  - {field: inspections.kind, value: periodic}\n")
		table, err := mustReader(t).ReadTable("gear.csv", []byte("Num;Kind;Day;Sign\nSH-1;"+kind+";2026-05-04;"+c.cell+"\n"), columns)
		if !c.refused {
			if err != nil || len(table.Register.Items[0].Kept) != 1 || len(table.Notes) != 1 {
				t.Errorf("%s %s: %v", c.column, c.cell, err)
			}
			continue
		}
		var ps Problems
		if !errors.As(err, &ps) || len(ps) != 1 || ps[0].ID != BadValue || ps[0].Place.String() != "gear.csv#cell=2,4" ||
			!strings.Contains(ps[0].Message, "which inspections of gear of kind "+kind+" do not look for") {
			t.Errorf("%s %s: %v", c.column, c.cell, err)
		}
	}
}

// TestRowsThatAreNoItems: a row of sums is one fault, by its row; one that lacks
// something is named without a place in a list that it has not.
func TestRowsThatAreNoItems(t *testing.T) {
	_, err := mustReader(t).ReadTable("gear.csv", []byte("number;kind;location\nSH-1;shackle;rack\n;;1 item\n;shackle;\n"), nil)
	var ps Problems
	if !errors.As(err, &ps) || len(ps) != 2 {
		t.Fatal(err)
	}
	for i, want := range []string{
		"gear.csv#row=3: the row has neither a `number` nor a `kind`; if it is no item, as a row of sums is none, take it out of the table",
		"gear.csv#row=4: the row lacks `number`; write `number: WR-0231`",
	} {
		if ps[i].String() != want {
			t.Errorf("%s", ps[i])
		}
	}
}
