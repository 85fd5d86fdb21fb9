package register

import (
	"errors"
	"strings"
	"testing"
)

const plainColumns = `
liftlint: 1
columns:
  - {head: No., field: number}
  - {head: Type, field: kind}
  - {head: RL, field: rated_load, unit: t}
  - {head: Insp., field: inspections.date}
  - {head: Sort, field: inspections.kind}
  - {head: Serial, field: serial}
`

// TestBadTables: what is wrong with a table, and in which cell.
func TestBadTables(t *testing.T) {
	const head = "No.;Type;RL;Insp.;Sort;Serial\n"
	good := "SH-1;shackle;4,75;2026-03-04;periodic;K1\n"
	for _, c := range []struct{ name, text, id, place, message string }{
		{"ambiguous day", head + "SH-1;shackle;1;03/04/2026;periodic;\n", "register/bad_date", "gear.csv#cell=2,4", "2026-04-03 or 2026-03-04"},
		{"ambiguous day with points", head + "SH-1;shackle;1;4.3.2026;periodic;\n", "register/bad_date", "gear.csv#cell=2,4", "day_first"},
		{"impossible day", head + good + "SH-2;shackle;1;31.2.2026;periodic;\n", "register/bad_date", "gear.csv#cell=3,4", "not in the calendar"},
		{"short year", head + "SH-1;shackle;1;04.03.26;periodic;\n", "register/bad_date", "gear.csv#cell=2,4", "two digits"},
		{"a year for a day", head + "SH-1;shackle;1;2026;periodic;\n", "register/bad_date", "gear.csv#cell=2,4", "no day"},
		{"ambiguous number", head + "SH-1;shackle;1.250;;;\n", BadNumber, "gear.csv#cell=2,3", "1.250 and as 1250"},
		{"number with bad thousands", head + "SH-1;shackle;1.25.0,5;;;\n", BadNumber, "gear.csv#cell=2,3", "no number"},
		{"any ton", head + "SH-1;shackle;5 ton;;;\n", "register/unit", "gear.csv#cell=2,3", "short_ton"},
		{"text for a number", head + "SH-1;shackle;five;;;\n", "register/unit", "gear.csv#cell=2,3", ""},
		{"spreadsheet error", head + "SH-1;shackle;#REF!;;;\n", BadValue, "gear.csv#cell=2,3", "spreadsheet"},
		{"serial cut short", head + "SH-1;shackle;1;;;1,23457E+11\n", BadValue, "gear.csv#cell=2,6", "cut short"},
		{"negative rating", head + "SH-1;shackle;-5;;;\n", "register/unit", "gear.csv#cell=2,3", ""},
		{"no number", head + good + ";shackle;5;;;\n", "register/missing_key", "gear.csv#row=3", "`number`"},
		{"no kind", head + "SH-1;;5;;;\n", "register/missing_key", "gear.csv#row=2", "`kind`"},
		{"unknown kind", head + "SH-1;Rope thing;5;;;\n", "register/not_allowed", "gear.csv#cell=2,2", "words"},
		{"inspection without a day", head + "SH-1;shackle;5;;periodic;\n", "register/missing_key", "gear.csv#cell=2,5", "`date`"},
		{"short row", head + good + "SH-2;shackle;5\n", Ragged, "gear.csv#cell=3,3", "3 cells"},
		{"long row", head + "SH-1;shackle;5;;;K1;more\n", Ragged, "gear.csv#cell=2,7", "7 cells"},
		{"number twice", head + good + "SH-1;shackle;5;;;K2\n", DuplicateNumber, "gear.csv#cell=3,1", "two items"},
		{"serial twice", head + good + "SH-2;shackle;5;;;K1\n", DuplicateSerial, "gear.csv#cell=3,6", "same serial"},
		{"NUL", head + "SH-1;shackle;5;;;K\x001\n", Encoding, "gear.csv#cell=2,6", "NUL"},
		{"control character", head + "SH-1;shackle;5;;;K\x1b1\n", Encoding, "gear.csv#cell=2,6", "control"},
		{"mark that turns text round", head + "SH-1;shackle;5;;;K\u202e1\n", Encoding, "gear.csv#cell=2,6", "direction"},
		{"damaged UTF-8", head + "SH-ü;shackle;5;;;K\xfc1\n", Encoding, "gear.csv#cell=2,6", "not UTF-8"},
		{"no meaning in Windows-1252", head + "SH-\xfc;shackle;5;;;K\x811\n", Encoding, "gear.csv#cell=2,6", "no meaning"},
		{"half a UTF-16 pair", "", Encoding, "gear.csv#cell=2,6", "no meaning"},
		{"open quote", head + good + "SH-2;\"shackle;5;;;\n", Quotes, "gear.csv#cell=3,2", "not closed"},
		{"text after a quote", head + "SH-1;\"sha\"ckle;5;;;\n", Quotes, "gear.csv#cell=2,2", "closing quote"},
		{"quoted line break counts as one row", head + "\"SH\n1\";shackle;5;;;\nSH-2;shackle;five;;;\n", "register/unit", "gear.csv#cell=3,3", ""},
		{"blank rows count", head + "\n;;;;;\nSH-2;shackle;five;;;\n", "register/unit", "gear.csv#cell=4,3", ""},
		{"empty", "", Heads, "gear.csv", "empty"},
		{"only heads", head, Heads, "gear.csv", "no rows"},
		{"head is missing", "No.;Type;RL;Insp;Sort;Serial\n" + good, BadColumns, "gear.columns.yaml", "did you mean `Insp`?"},
		{"head twice", "No.;Type;RL;Insp.;Sort;Serial;RL\n", BadColumns, "gear.columns.yaml", "2 columns"},
	} {
		t.Run(c.name, func(t *testing.T) {
			src := []byte(c.text)
			if c.name == "half a UTF-16 pair" {
				src = utf16Bytes(head+"SH-1;shackle;5;;;K", true, true)
				src = append(append(src, 0x00, 0xd8), utf16Bytes("1\n", true, false)...)
			}
			table, err := mustReader(t).ReadTable("gear.csv", src, mustColumns(t, plainColumns))
			var ps Problems
			if !errors.As(err, &ps) || table != nil {
				t.Fatalf("%v", err)
			}
			for _, p := range ps {
				if p.ID == c.id && strings.HasPrefix(p.Place.String(), c.place) && strings.Contains(p.Message, c.message) {
					return
				}
			}
			t.Errorf("want %s at %s %q, got\n%v", c.id, c.place, c.message, ps)
		})
	}
}

func TestRatingWithoutUnit(t *testing.T) {
	columns := mustColumns(t, strings.Replace(plainColumns, ", unit: t", "", 1))
	_, err := mustReader(t).ReadTable("gear.csv", []byte("No.,Type,RL,Insp.,Sort,Serial\nA,shackle,4.75,,,\nB,shackle,5 t,,,\n"), columns)
	var ps Problems
	if !errors.As(err, &ps) || len(ps) != 1 || ps[0].ID != NoUnit || ps[0].String() != "gear.csv#cell=2,3: column `RL`: "+ps[0].Message {
		t.Error(err)
	}
}

// TestAllFaultsAreListed up to a bound, in their order.
func TestAllFaultsAreListed(t *testing.T) {
	var b strings.Builder
	b.WriteString("No.;Type;RL;Insp.;Sort;Serial\n")
	for range 3000 {
		b.WriteString("A;shackle;five;;;\n")
	}
	_, err := mustReader(t).ReadTable("gear.csv", []byte(b.String()), mustColumns(t, plainColumns))
	var ps Problems
	if !errors.As(err, &ps) || len(ps) != mostProblems+1 || ps[99].Place.Row != 101 || ps[100].ID != TooMany || !strings.Contains(ps[100].Message, "3000") {
		t.Errorf("%d", len(ps))
	}
}

func TestTooLargeTable(t *testing.T) {
	_, err := mustReader(t).ReadTable("gear.csv", make([]byte, 200<<20), nil)
	var ps Problems
	if !errors.As(err, &ps) || ps[0].ID != TooLarge || !strings.Contains(ps[0].Message, "209715200 bytes; at most 67108864 (64 MiB)") {
		t.Error(err)
	}
	_, err = mustReader(t).ReadTable("gear.csv", []byte("number,kind\n"+strings.Repeat("\n", maxRows)), nil)
	if !errors.As(err, &ps) || ps[0].ID != TooLarge {
		t.Error(err)
	}
	_, err = mustReader(t).ReadTable("gear.csv", []byte("number,kind\n"+strings.Repeat(",", maxCells)), nil)
	if !errors.As(err, &ps) || ps[0].ID != Ragged {
		t.Error(err)
	}
}
