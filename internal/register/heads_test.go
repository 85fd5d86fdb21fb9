package register

import (
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

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

// TestHeadsThatAreNearlyFields: without a columns file, what is nearly a field is
// not put among what nobody reads.
func TestHeadsThatAreNearlyFields(t *testing.T) {
	for _, c := range []struct{ head, message string }{
		{"serail", "did you mean `serial`? Write"},
		{"Serial", "did you mean `serial`? Write"},
		{"inspections.dat", "no field of an item with one value. Write"},
		{"certificate", "no field of an item with one value. Write"},
		{"faults_seen", "numbered as in `faults_seen.1`. Write"},
	} {
		_, err := mustReader(t).ReadTable("gear.csv", []byte("number,kind,Remarks,"+c.head+"\nA,web_sling,,cut\n"), nil)
		var ps Problems
		if !errors.As(err, &ps) || len(ps) != 1 || ps[0].ID != Heads || ps[0].Place.String() != "gear.csv#cell=1,4" || !strings.Contains(ps[0].Message, c.message) {
			t.Errorf("%s: %v", c.head, err)
		}
	}
}

// titled is a table as a spreadsheet exports it, with a title, a note in two lines
// and a blank row above its heads.
const titled = "Site gear list 2026;;;;;\n\"Printed 4 May,\nsecond floor\";;checked: Q;;;\n;;;;;\nNo.;Type;RL;Insp.;Sort;Serial\nSH-1;shackle;4,75;2026-03-04;periodic;K1\nSH-2;shackle;five;;;K2\n"

func titledColumns(t *testing.T, keys string) *Columns {
	return mustColumns(t, strings.Replace(plainColumns, "columns:", keys+"\ncolumns:", 1))
}

// TestHeadsInRow: rows keep the numbers that they have in the file, and what stands
// above the heads is told of and goes along as comments.
func TestHeadsInRow(t *testing.T) {
	columns := titledColumns(t, "heads_in_row: 4")
	table := mustTable(t, strings.Replace(titled, "five", "5", 1), columns)
	i, ok := table.Register.Find("SH-2")
	if !ok || i.Place("/rated_load").String() != "gear.csv#cell=6,3" || i.Place("").String() != "gear.csv#row=6" {
		t.Errorf("%+v", i)
	}
	var notes []string
	for _, n := range table.Notes {
		notes = append(notes, n.String())
	}
	want := []string{
		"gear.csv#row=1: above the heads: `Site gear list 2026`: kept as a comment where the table is written as YAML",
		"gear.csv#row=2: above the heads: `Printed 4 May,\\nsecond floor; checked: Q`: kept as a comment where the table is written as YAML",
	}
	if diff := cmp.Diff(want, notes); diff != "" {
		t.Error(diff)
	}
	files, err := table.YAML()
	if err != nil {
		t.Fatal(err)
	}
	const comments = "# row 1: Site gear list 2026\n# row 2: Printed 4 May,\n#   second floor; checked: Q\nliftlint: 1\n"
	if text := string(files[0]); !strings.HasPrefix(text, comments) {
		t.Error(text)
	}
	_, err = mustReader(t).ReadTable("gear.csv", []byte(titled), columns)
	var ps Problems
	if !errors.As(err, &ps) || len(ps) != 1 || ps[0].Place.String() != "gear.csv#cell=6,3" {
		t.Error(err)
	}
}

// TestHeadsBelowTheSeparatorLine: the row that names the separator is one of the
// file.
func TestHeadsBelowTheSeparatorLine(t *testing.T) {
	text := "sep=;\nThe yard, all of it\nNo.;Type;RL;Insp.;Sort;Serial\nSH-1;shackle;five;;;\n"
	_, err := mustReader(t).ReadTable("gear.csv", []byte(text), titledColumns(t, "heads_in_row: 3"))
	var ps Problems
	if !errors.As(err, &ps) || len(ps) != 1 || ps[0].Place.String() != "gear.csv#cell=4,3" {
		t.Error(err)
	}
}

// TestTitlesMakeNoYAML: whatever a title says stays a comment.
func TestTitlesMakeNoYAML(t *testing.T) {
	for _, title := range []string{"items: []", "\"\n- number: X\"", "# # \t#", "---", "\"a\r\nb: c\""} {
		table := mustTable(t, title+"\n"+"No.;Type;RL;Insp.;Sort;Serial\nSH-1;shackle;5;;;\n", titledColumns(t, "heads_in_row: 2\nseparator: semicolon"))
		files, err := table.YAML()
		if err != nil {
			t.Errorf("%q: %v", title, err)
			continue
		}
		r, err := mustReader(t).ReadYAML("gear.gear.yaml", files[0])
		if err != nil || len(r.Items) != 1 {
			t.Errorf("%q: %v", title, err)
		}
	}
}

// TestHeadsElsewhere: one message says where the heads seem to stand, or why they
// can't stand where they are said to.
func TestHeadsElsewhere(t *testing.T) {
	fields := "number;kind;serial\nSH-1;shackle;K1\n"
	mine := "No.;Type;Serial\nSH-1;shackle;K1\n"
	for _, c := range []struct{ name, keys, text, place, message string }{
		{"a title, with columns", "title: Yard", titled, "gear.columns.yaml", "row 1 of gear.csv does not hold the heads of its columns, and row 4 does: say `heads_in_row: 4`"},
		{"a title of one cell, with columns", "title: Yard", "Gear, of the site\n\n" + strings.SplitN(titled, "\n;;;;;\n", 2)[1], "gear.columns.yaml", "row 3 does: say `heads_in_row: 3`"},
		{"a title in quotes that hold the separator", "title: Yard", "\"Gear; 2026\";of\n" + strings.SplitN(titled, "\n;;;;;\n", 2)[1], "gear.columns.yaml", "row 2 does: say `heads_in_row: 2`"},
		{"a title, without columns", "", "Site gear list 2026\n\n" + fields, "gear.csv#row=1", "row 3 does: write a columns file that says `heads_in_row: 3`"},
		{"below the line of the separator", "", "sep=;\nSite gear list 2026\n" + fields, "gear.csv#row=2", "row 3 does: write a columns file that says `heads_in_row: 3`"},
		{"heads that are no fields", "", "Site gear list 2026\n\n" + mine, "gear.csv#row=1", "looks like a title, and row 3 like the heads of the columns: write a columns file that says `heads_in_row: 3`"},
		{"a blank row", "heads_in_row: 3", titled, "gear.columns.yaml", "row 3 of gear.csv is blank"},
		{"beyond the end", "heads_in_row: 9", titled, "gear.columns.yaml", "in row 9, and gear.csv has 6 rows"},
		{"the line of the separator", "heads_in_row: 1", "sep=;\n" + mine, "gear.columns.yaml", "row 1 of gear.csv names the separator"},
		{"a row of the table", "heads_in_row: 5", titled, "gear.columns.yaml", "row 5 of gear.csv does not hold the heads of its columns, and row 4 does: say `heads_in_row: 4`"},
		{"much above", "heads_in_row: 2", strings.Repeat("x", 17<<10) + "\n" + mine, "gear.columns.yaml", "more than 16 KiB"},
		{"damage above the heads", "heads_in_row: 2", "Site\x00\n" + mine, "gear.csv#cell=1,1", "NUL"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var columns *Columns
			if c.keys != "" {
				columns = titledColumns(t, c.keys)
			}
			_, err := mustReader(t).ReadTable("gear.csv", []byte(c.text), columns)
			var ps Problems
			if !errors.As(err, &ps) || len(ps) != 1 || !strings.HasPrefix(ps[0].Place.String(), c.place) || !strings.Contains(ps[0].Message, c.message) {
				t.Error(err)
			}
		})
	}
}

// TestNoTitle: a table that lacks a field is not taken for one with a title.
func TestNoTitle(t *testing.T) {
	for _, text := range []string{"nummer;kind\nSH-1;shackle\nSH-2;hook;\n", "nummer\nSH-1\nSH-2\n"} {
		_, err := mustReader(t).ReadTable("gear.csv", []byte(text), nil)
		if err == nil || strings.Contains(err.Error(), "heads_in_row") || !strings.Contains(err.Error(), "no column has the head `number`") {
			t.Error(err)
		}
	}
}
