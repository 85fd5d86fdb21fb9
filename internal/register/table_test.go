package register

import (
	"os"
	"strings"
	"testing"

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
