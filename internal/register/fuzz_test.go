package register

import (
	"errors"
	"os"
	"strings"
	"testing"
)

// sound sees that a problem has an id, a place and a message of one line.
func sound(t *testing.T, err error) {
	t.Helper()
	var ps Problems
	if !errors.As(err, &ps) {
		t.Fatalf("a fault of the tool: %v", err)
	}
	known := map[string]bool{}
	for _, id := range ProblemIDs() {
		known[id] = true
	}
	for _, p := range ps {
		if !known[p.ID] || p.Place.File == "" || p.Message == "" || strings.ContainsAny(p.String(), "\n\x00\x1b") {
			t.Fatalf("%+v", p)
		}
	}
}

// FuzzYAML: any file is a register whose items can be found, or has problems.
func FuzzYAML(f *testing.F) {
	f.Add(loft(f))
	f.Add("liftlint: 1\nregister: {title: a}\nitems: [{number: a, kind: hook}]\n")
	f.Add("liftlint: 1\nregister: {title: a}\nitems: [{number: a, kind: bridle, master: b, groups: [{legs: [c]}]}]\n")
	f.Add("items: [1, [], {}, {number: [], kind: {}}, {kind: shackle, id: x, inspections: [{found: {}}]}]\n")
	rd := mustReader(f)
	f.Fuzz(func(t *testing.T, text string) {
		r, err := rd.ReadYAML("a.gear.yaml", []byte(text))
		if err != nil {
			sound(t, err)
			return
		}
		for i := range r.Items {
			if found, ok := r.Find(r.Items[i].Number); !ok || found != &r.Items[i] {
				t.Fatal(r.Items[i].Number)
			}
		}
	})
}

// FuzzTable: any bytes are a table that survives being written as YAML, with
// every cell that is not blank in some item, or have problems.
func FuzzTable(f *testing.F) {
	src, err := os.ReadFile("../../testdata/register/fittings.csv")
	if err != nil {
		f.Fatal(err)
	}
	f.Add(src)
	f.Add([]byte("Nr.;Art;Farbe\nA;Haken;x\n"))
	f.Add([]byte("number,kind,x\nA,hook,1\n,,\nB,shackle,\"a\nb\"\n"))
	f.Add(utf16Bytes("number,kind\nA,hook\n", true, true))
	f.Add([]byte("sep=\t\nnumber\tkind\nA\thook\n"))
	f.Add([]byte("number,kind,inspections.2.date,inspections.2.kind\nA,hook,2026-01-02,periodic\n"))
	rd := mustReader(f)
	text, err := os.ReadFile("../../testdata/register/fittings.columns.yaml")
	if err != nil {
		f.Fatal(err)
	}
	columns := mustColumns(f, string(text))
	titled := mustColumns(f, "liftlint: 1\nheads_in_row: 3\ncolumns: [{head: No., field: number}]\nfixed: [{field: kind, value: hook}]\n")
	f.Add([]byte("The yard, # all\n\"a\nb: c\",,d\nNo.,x\nA,1\n"))
	f.Fuzz(func(t *testing.T, src []byte) {
		for _, c := range []*Columns{nil, columns, titled} {
			table, err := rd.ReadTable("a.csv", src, c)
			if err != nil {
				sound(t, err)
				continue
			}
			if lost := lostCells(table, table.rows); len(lost) > 0 {
				t.Fatalf("lost: %q", lost)
			}
			files, err := table.YAML()
			if err != nil {
				t.Fatal(err)
			}
			for _, n := range table.titles {
				if line, _, _ := strings.Cut(n.Message, "\n"); !strings.Contains(string(files[0]), strings.TrimRight(line, " ")) {
					t.Fatalf("lost: %q", n.Message)
				}
			}
			if back := readBack(t, rd, files); len(back.Items) != len(table.Register.Items) {
				t.Fatal(len(back.Items), len(table.Register.Items))
			}
		}
	})
}

// FuzzColumns: any file says what columns are, or has problems.
func FuzzColumns(f *testing.F) {
	for _, seed := range []string{plainColumns, largeColumns, "liftlint: 1\ncolumns: [{head: a, field: inspections.99.date}, {head: b, field: groups.1.legs.2}, {head: c, field: .}]\nfixed: [{field: kind, value: hook}]\n"} {
		f.Add(seed)
	}
	rd := mustReader(f)
	f.Fuzz(func(t *testing.T, text string) {
		c, err := ReadColumns("a.columns.yaml", []byte(text))
		if err == nil {
			_, err = rd.ReadTable("a.csv", []byte("No.,Type,a,b,c\nA,hook,1,2,3\n"), c)
		}
		if err != nil {
			sound(t, err)
		}
	})
}
