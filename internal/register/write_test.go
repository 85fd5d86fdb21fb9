package register

import (
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"go.yaml.in/yaml/v3"
	"pgregory.net/rapid"

	"liftlint/internal/yamldoc"
)

// readBack reads the files of a table as one register.
func readBack(t interface{ Fatal(...any) }, rd *Reader, files [][]byte) *Register {
	var all []*Register
	for _, text := range files {
		r, err := rd.readYAML("back", text)
		if err != nil {
			t.Fatal(err, string(text))
		}
		all = append(all, r)
	}
	r, err := Join(all...)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func TestTableAsYAML(t *testing.T) {
	src, columns := fittings(t)
	table, err := mustReader(t).ReadTable("fittings.csv", src, columns)
	if err != nil {
		t.Fatal(err)
	}
	files, err := table.YAML()
	if err != nil || len(files) != 1 {
		t.Fatal(err)
	}
	back := readBack(t, mustReader(t), files)
	if diff := cmp.Diff(table.Register.Items, back.Items, ignorePlaces()); diff != "" {
		t.Error(diff)
	}
	const want = `liftlint: 1
register:
  title: Fittings of the yard
  site: Harrow Point
items:
  - number: SH-1
    kind: shackle
    serial: K1
    maker: Maker A
    rated_load: 9.5 t
    inspections:
      - {date: 2026-03-04, outcome: passed, found: {pin_original: true}, kind: thorough}
      - {proof_load: 186.3 kN, date: 2026-03-04, kind: proof_test}
    kept:
      - {head: Bemerkung, value: "zwei Zeilen\nmit \"Zitat\"; und Semikolon"}
      - {head: Farbe, value: "grün"}
`
	if !strings.HasPrefix(string(files[0]), want) {
		t.Errorf("%s", files[0])
	}
}

// drawn texts are such as stand in cells, and such as YAML reads as something
// else.
func drawnText(t *rapid.T, label string) string {
	return rapid.OneOf(
		rapid.SampledFrom([]string{"loft, rack 4", "yes", "no", "null", "~", "12", "0012", "1e3", "0x1F", "12:30", "a: b", "# c", "- d", "[e", "{f}", "it's \"so\"", "two\nlines", "tab\there", "é ü 荷 €", "😀", "true", "2026-12-04", "a\\b", "%TAG", "@", "`", "|", ">", "end:", "&a", "*a", "!t", "?", "<<", "x  y", "-"}),
		rapid.StringOfN(rapid.Rune(), 1, 20, -1),
	).Filter(func(s string) bool {
		return strings.TrimSpace(s) != "" && yamldoc.Refusal(s) == "" && !strings.Contains(s, "\r")
	}).Draw(t, label)
}

func csvCell(text string) string { return `"` + strings.ReplaceAll(text, `"`, `""`) + `"` }

// TestTablesSurviveYAML: any table that is read, written as YAML and read again
// holds the same items, and an independent reader of YAML finds in what was
// kept what the cells held.
func TestTablesSurviveYAML(t *testing.T) {
	rd := mustReader(t)
	columns := mustColumns(t, largeColumns)
	rapid.Check(t, func(t *rapid.T) {
		var b strings.Builder
		b.WriteString("No.;Type;Serial;Maker;RL;Rope;Length;Cert.;Cert. day;Rack;Status;Insp.;Sort;By;Result;Due;Broken wires;Color\n")
		n := rapid.IntRange(1, 5).Draw(t, "rows")
		var colors []string
		pick := func(label string, texts ...string) string { return rapid.SampledFrom(texts).Draw(t, label) }
		for i := range n {
			color := drawnText(t, "color")
			colors = append(colors, color)
			inspection := pick("inspection", ";;;;;", "4.3.2026;periodic;;;;", "46085;thorough;R. Sample;passed;1.1.2027;", "2026-03-04;repair;;failed;;2")
			kind := pick("kind", "Sling", "Shackle")
			if kind == "Shackle" {
				inspection = strings.TrimSuffix(inspection, "2")
			}
			cells := []string{csvCell("N" + string(rune('a'+i))), kind, "", csvCell(drawnText(t, "maker")), pick("load", "", "4,75", "1.250,5", "5 short_ton"), pick("rope", "", "26", "1/2 in"),
				pick("length", "", "4,00"), csvCell(drawnText(t, "certificate")), pick("day", "", "1.2.2025"), csvCell(drawnText(t, "rack")), pick("status", "", "in service", "Scrapped"), inspection, csvCell(color)}
			b.WriteString(strings.Join(cells, ";") + "\n")
		}
		table, err := rd.ReadTable("gear.csv", []byte(b.String()), columns)
		if err != nil {
			t.Skip(err) // a text that its field refuses
		}
		files, err := table.YAML()
		if err != nil {
			t.Fatal(err)
		}
		back := readBack(t, rd, files)
		if diff := cmp.Diff(table.Register.Items, back.Items, ignorePlaces()); diff != "" {
			t.Fatalf("%s\n%s\n%s", b.String(), files[0], diff)
		}
		var theirs struct {
			Items []struct{ Kept []Kept }
		}
		if err := yaml.Unmarshal(files[0], &theirs); err != nil {
			t.Fatal(err)
		}
		for i, color := range colors {
			kept := theirs.Items[i].Kept
			if kept[len(kept)-1] != (Kept{"Color", color}) {
				t.Fatalf("%q, want %q", kept, color)
			}
		}
	})
}

// TestSplit: items are spread over files within their bounds, each once and in
// order.
func TestSplit(t *testing.T) {
	table := mustTable(t, large(300), mustColumns(t, largeColumns))
	whole, err := table.YAML()
	if err != nil || len(whole) != 1 {
		t.Fatal(err)
	}
	for name, w := range map[string]*writer{
		"bytes":    {mostBytes: 9000, mostNodes: 1e6, mostPointers: 1e9},
		"nodes":    {mostBytes: 1e9, mostNodes: 700, mostPointers: 1e9},
		"pointers": {mostBytes: 1e9, mostNodes: 1e6, mostPointers: 20000},
	} {
		w.head = table.head()
		rr := newRowReader(table.reader.validator, table.binding)
		for i := range table.rows[1:] {
			w.item(table.node(rr, i))
		}
		w.close()
		if len(w.files) < 5 {
			t.Errorf("%s: %d files", name, len(w.files))
		}
		for _, f := range w.files {
			if len(f) > w.mostBytes {
				t.Errorf("%s: %d bytes", name, len(f))
			}
		}
		if err := table.sameAs(w.files); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		back := readBack(t, mustReader(t), w.files)
		if diff := cmp.Diff(table.Register.Items, back.Items, ignorePlaces()); diff != "" {
			t.Errorf("%s: %s", name, diff)
		}
		// A file lost, or one item changed, is noticed.
		if table.sameAs(w.files[:len(w.files)-1]) == nil || table.sameAs(w.files[1:]) == nil {
			t.Errorf("%s: a file is not missed", name)
		}
		changed := slices.Clone(w.files)
		changed[1] = []byte(strings.Replace(string(changed[1]), "green", "red", 1))
		if table.sameAs(changed) == nil {
			t.Errorf("%s: a change is not noticed", name)
		}
	}
}

func TestSave(t *testing.T) {
	folder := t.TempDir()
	one, two := [][]byte{[]byte("a")}, [][]byte{[]byte("b"), []byte("c")}
	save := func(files [][]byte, replace bool) ([]string, error) { return Save(folder, "loft", files, replace) }
	if paths, err := save(one, false); err != nil || len(paths) != 1 || filepath.Base(paths[0]) != "loft.gear.yaml" {
		t.Fatal(paths, err)
	}
	if _, err := save(one, false); !errors.Is(err, ErrExists) {
		t.Error(err)
	}
	if _, err := save(two, false); !errors.Is(err, ErrExists) {
		t.Error("beside the earlier one:", err)
	}
	if _, err := save(two, true); !errors.Is(err, ErrExists) {
		t.Error("beside the earlier one:", err)
	}
	if _, err := save([][]byte{[]byte("new")}, true); err != nil {
		t.Error(err)
	}
	if b, _ := os.ReadFile(filepath.Join(folder, "loft.gear.yaml")); string(b) != "new" {
		t.Errorf("%s", b)
	}
	if paths, err := Save(folder, "yard", two, false); err != nil || filepath.Base(paths[1]) != "yard-2.gear.yaml" {
		t.Error(paths, err)
	}
	entries, err := os.ReadDir(folder)
	if err != nil || len(entries) != 3 {
		t.Error(entries, err)
	}
	if _, err := Save(filepath.Join(folder, "none"), "loft", one, false); err == nil {
		t.Error("written into a folder that is not there")
	}
}

// TestSaveHalfway: what can't be finished leaves nothing behind.
func TestSaveHalfway(t *testing.T) {
	folder := t.TempDir()
	temp, err := writeTemp(folder, []byte("a"))
	if err != nil {
		t.Fatal(err)
	}
	taken := filepath.Join(folder, "taken")
	if err := os.WriteFile(taken, []byte("old"), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := appear(temp, taken, false); err == nil {
		t.Error("overwritten")
	}
	if b, _ := os.ReadFile(taken); string(b) != "old" {
		t.Errorf("%s", b)
	}
}

// TestScalars: what is written without quotes, and what reads back at all.
func TestScalars(t *testing.T) {
	for text, want := range map[string]string{
		"SH-1": "SH-1", "9.5 t": "9.5 t", "2026-03-04": "2026-03-04", "6x36": "6x36", "5 %": "5 %", "12": `"12"`, "1e3": `"1e3"`, "yes": `"yes"`, "": `""`,
		"a: b": `"a: b"`, "a,b": `"a,b"`, "x\u00ady": `"x\u00ady"`, "a\tb": `"a\tb"`, "😀": `"\U0001f600"`, "- x": `"- x"`, "null": `"null"`,
	} {
		if got := scalar(text); got != want {
			t.Errorf("%q: %s", text, got)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		text := drawnText(t, "text")
		doc, faults := yamldoc.Read("f", []byte("{a: "+scalar(text)+"}"))
		if len(faults) > 0 || doc.Root().Get("a").Value() != text {
			t.Fatalf("%q as %s: %v", text, scalar(text), faults)
		}
	})
}

// BenchmarkYAML reads 4,000 items, about as many as one file is written with.
//
//	2026-11-27  about 1 s for 2 MB, half of it the second reading; as a process
//	            1.5 s of both cores' time and 400 MB resident. 100,000 items in
//	            20 files: 22 s of both cores' time, 1.4 GB (two shared, busy
//	            cores).
func BenchmarkYAML(b *testing.B) {
	t := mustTable(b, large(4_000), mustColumns(b, largeColumns))
	files, err := t.YAML()
	if err != nil || len(files) != 1 {
		b.Fatal(len(files), err)
	}
	b.SetBytes(int64(len(files[0])))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := mustReader(b).ReadYAML("a", files[0]); err != nil {
			b.Fatal(err)
		}
	}
}
