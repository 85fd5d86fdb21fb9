package register

import (
	"errors"
	"os"
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/gear"
)

func mustTable(t testing.TB, text string, columns *Columns) *Table {
	t.Helper()
	table, err := mustReader(t).ReadTable("gear.csv", []byte(text), columns)
	if err != nil {
		t.Fatal(err)
	}
	return table
}

func fittings(t testing.TB) ([]byte, *Columns) {
	t.Helper()
	src, err := os.ReadFile("../../testdata/register/fittings.csv")
	if err != nil {
		t.Fatal(err)
	}
	text, err := os.ReadFile("../../testdata/register/fittings.columns.yaml")
	if err != nil {
		t.Fatal(err)
	}
	return src, mustColumns(t, string(text))
}

func TestReadTable(t *testing.T) {
	src, columns := fittings(t)
	table, err := mustReader(t).ReadTable("fittings.csv", src, columns)
	if err != nil {
		t.Fatal(err)
	}
	r := table.Register
	if table.Encoding != windows1252Name || len(r.Items) != 4 || r.Files[0].Title != "Fittings of the yard" {
		t.Errorf("%+v", r.Files)
	}
	s, _ := r.Find("SH-1")
	k := s.Gear.(*gear.Shackle)
	if s.RatedLoad == nil || !near(s.RatedLoad.Newtons, 9.5*tonneForce) || k.RatedLoad != s.RatedLoad || s.Serial != "K1" || k.Pointer != "row=2" {
		t.Errorf("%+v", s)
	}
	if diff := cmp.Diff([]Kept{{"Bemerkung", "zwei Zeilen\nmit \"Zitat\"; und Semikolon"}, {"Farbe", "grün"}}, s.Kept); diff != "" {
		t.Error(diff)
	}
	p, _ := s.Newest(ProofTest)
	if !p.Date.Equal(day(2026, 3, 4)) || !near(p.ProofLoad.Newtons, 186.3e3) {
		t.Errorf("%+v", p)
	}
	if i, ok := s.Newest(Thorough); !ok || !i.Date.Equal(day(2026, 3, 4)) || i.Outcome != Passed || !*i.Found.PinOriginal {
		t.Errorf("%+v", i)
	}
	second, _ := r.Find("SH-2")
	if !near(second.RatedLoad.Newtons, 1250.5*tonneForce) || len(second.Inspections) != 0 {
		t.Errorf("%+v", second)
	}
	// A shackle has no length: the cell is kept, and that is told.
	if diff := cmp.Diff([]Kept{{"Länge", "0,12"}}, second.Kept); diff != "" {
		t.Error(diff)
	}
	w, _ := r.Find("WR-7")
	if *w.Gear.(*gear.WireRopeSling).Length != 12.5 || w.RatedLoad.Unit != "t" || w.Gear.Base().Tag != nil || w.Kept[0].Value != "für 5 €" {
		t.Errorf("%+v", w)
	}
	h, _ := r.Find("HK-9")
	if h.RatedLoad.Unit != "kg" || h.Inspections[0].Outcome != Failed {
		t.Errorf("%+v", h)
	}
	var notes []string
	for _, n := range table.Notes {
		notes = append(notes, n.String())
	}
	want := []string{
		"fittings.csv#cell=1,13: column `Farbe`: no field is named for this column: its cells are kept as they stand",
		"fittings.csv#cell=3,6: column `Länge`: gear of kind shackle has no field `length`: kept as it stands, in 1 rows from this one on",
	}
	if diff := cmp.Diff(want, notes); diff != "" {
		t.Error(diff)
	}
}

// TestPlacesInTables: rows count the heads as the first, after RFC 7111 (from
// memory) and as spreadsheets show them.
func TestPlacesInTables(t *testing.T) {
	src, columns := fittings(t)
	table, err := mustReader(t).ReadTable("fittings.csv", src, columns)
	if err != nil {
		t.Fatal(err)
	}
	h, _ := table.Register.Find("HK-9")
	for pointer, want := range map[string]string{
		"":                           "fittings.csv#row=5",
		"/number":                    "fittings.csv#cell=5,1",
		"/rated_load":                "fittings.csv#cell=5,5",
		"/inspections/0/date":        "fittings.csv#cell=5,7",
		"/inspections/1/proof_load":  "fittings.csv#cell=5,9",
		"/inspections/1":             "fittings.csv#cell=5,9",
		"/inspections/0/found":       "fittings.csv#cell=5,11",
		"/inspections/1/inspector":   "fittings.csv#cell=5,9",
		"/certificate/number":        "fittings.csv#row=5",
		"/eyes/upper/length/nothing": "fittings.csv#row=5",
	} {
		if got := h.Place(pointer).String(); got != want {
			t.Errorf("%s: %s, want %s", pointer, got, want)
		}
	}
}

// TestPlaceOfOnlyInspection: where the first of two inspections has no cells,
// the second is the item's first and keeps its columns.
func TestPlaceOfOnlyInspection(t *testing.T) {
	src, columns := fittings(t)
	text := strings.Replace(string(src), "2026-03-06;n.i.O.;98,1", ";;98,1", 1)
	table, err := mustReader(t).ReadTable("fittings.csv", []byte(text), columns)
	if err != nil {
		t.Fatal(err)
	}
	h, _ := table.Register.Find("HK-9")
	if len(h.Inspections) != 1 || h.Inspections[0].Kind != ProofTest || h.Place("/inspections/0/date").String() != "fittings.csv#cell=5,10" {
		t.Errorf("%+v %v", h.Inspections, h.Place("/inspections/0/date"))
	}
}

func TestHeadsAreFields(t *testing.T) {
	table := mustTable(t, "number,kind,rated_load,certificate.number,inspections.1.date,inspections.1.kind,Color\nSH-1,shackle,4.75 t,C1,2026-03-04,periodic,green\n", nil)
	i, ok := table.Register.Find("SH-1")
	if !ok || i.Certificate.Number != "C1" || len(i.Inspections) != 1 || i.Kept[0] != (Kept{"Color", "green"}) || len(table.Notes) != 1 {
		t.Errorf("%+v %v", i, table.Notes)
	}
}

// TestFieldHeadTwice: no cell is dropped for another of the same field.
func TestFieldHeadTwice(t *testing.T) {
	for _, heads := range []string{"number,kind,serial,serial", "number,kind,inspections.date,inspections.1.date"} {
		_, err := mustReader(t).ReadTable("gear.csv", []byte(heads+"\nA,hook,1,2\n"), nil)
		var ps Problems
		if !errors.As(err, &ps) || ps[0].ID != Heads || ps[0].Place.String() != "gear.csv#cell=1,4" {
			t.Error(err)
		}
	}
}

// TestHeadless: a column without a head is kept by its number, and told of.
func TestHeadless(t *testing.T) {
	table := mustTable(t, "number,kind,,\nSH-1,shackle,,\nSH-2,shackle,, red \n", nil)
	i, _ := table.Register.Find("SH-2")
	if diff := cmp.Diff([]Kept{{"column 4", " red "}}, i.Kept); diff != "" {
		t.Error(diff)
	}
	if len(table.Notes) != 1 || table.Notes[0].Place.String() != "gear.csv#cell=3,4" {
		t.Error(table.Notes)
	}
}

// utf16Bytes writes text by way of package unicode/utf16, which the reader does
// not use for whole texts.
func utf16Bytes(text string, little, mark bool) []byte {
	units := utf16.Encode([]rune(text))
	if mark {
		units = append([]uint16{0xfeff}, units...)
	}
	var out []byte
	for _, u := range units {
		if little {
			out = append(out, byte(u), byte(u>>8))
		} else {
			out = append(out, byte(u>>8), byte(u))
		}
	}
	return out
}

// TestEncodings: one table in every encoding reads as the same items.
func TestEncodings(t *testing.T) {
	src, columns := fittings(t)
	text := decodeText(src, windows1252Name)
	if !strings.Contains(text, "für 5 €") {
		t.Fatal(text)
	}
	for name, c := range map[string]struct {
		src  []byte
		want string
	}{
		"UTF-8":                    {[]byte(text), utf8Name},
		"UTF-8 with a mark":        {[]byte(byteOrderMark + text), utf8Name},
		"UTF-16 LE":                {utf16Bytes(text, true, true), utf16LEName},
		"UTF-16 BE":                {utf16Bytes(text, false, true), utf16BEName},
		"UTF-16 LE without a mark": {utf16Bytes(text, true, false), utf16LEName},
		"UTF-16 BE without a mark": {utf16Bytes(text, false, false), utf16BEName},
		"Windows-1252":             {src, windows1252Name},
	} {
		table, err := mustReader(t).ReadTable("fittings.csv", c.src, columns)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		i, _ := table.Register.Find("WR-7")
		if table.Encoding != c.want || i.Kept[0].Value != "für 5 €" {
			t.Errorf("%s: %s, %+v", name, table.Encoding, i.Kept)
		}
	}
}

// TestWindows1252 compares with the names that the Unicode Consortium's
// CP1252.TXT gives a few of its characters (from memory).
func TestWindows1252(t *testing.T) {
	for b, want := range map[byte]string{0x80: "€", 0x84: "„", 0x96: "–", 0x9c: "œ", 0x9f: "Ÿ", 0xa0: "\u00a0", 0xb1: "±", 0xd8: "Ø", 0xe4: "ä", 0xff: "ÿ", 'a': "a"} {
		if got := decodeWindows1252([]byte{b}); got != want {
			t.Errorf("%x: %q, want %q", b, got, want)
		}
	}
}

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

// TestSameByValueAndAsWhole: rows that are judged value by value and rows that
// are held against whole schemas come to the same.
func TestSameByValueAndAsWhole(t *testing.T) {
	rows := strings.Split(strings.TrimSpace(large(60)), "\n")
	rows[40] = strings.Replace(rows[40], "Sling", "Sling", 1) + "x" // kept, longer
	columns := mustColumns(t, largeColumns)
	all := mustTable(t, strings.Join(rows, "\n"), columns)
	for i, row := range rows[1:] {
		one := mustTable(t, rows[0]+"\n"+row, columns)
		got, want := all.Register.Items[i], one.Register.Items[0]
		if diff := cmp.Diff(want, got, ignorePlaces()); diff != "" {
			t.Fatal(diff)
		}
	}
	// The same shape, and one value that its schema refuses.
	bad := strings.Join(rows, "\n") + "\n" + strings.Replace(rows[2], "rack 1;", "rack "+strings.Repeat("1", 300)+";", 1)
	if _, err := mustReader(t).ReadTable("gear.csv", []byte(bad), columns); err == nil || !strings.Contains(err.Error(), "gear.csv#cell=62,10") {
		t.Error(err)
	}
}
