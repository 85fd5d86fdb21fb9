package register

import (
	"encoding/csv"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// secondReading has encoding/csv cut the text. It passes blank rows over, which
// are taken out of ours for the comparison.
func secondReading(text string, separator byte) ([][]string, error) {
	r := csv.NewReader(strings.NewReader(text))
	r.Comma, r.FieldsPerRecord, r.LazyQuotes = rune(separator), -1, true
	return r.ReadAll()
}

func withoutBlank(rows [][]string) [][]string {
	var kept [][]string
	for _, r := range rows {
		if len(r) > 1 || r[0] != "" {
			kept = append(kept, r)
		}
	}
	return kept
}

func drawCell(t *rapid.T) string {
	return rapid.OneOf(
		rapid.SampledFrom([]string{"", "x", "4,75", "5/8\" chain", "a;b", "two\nlines", "\"", "ü €", " ", "\t", "='1", "a,b;c\td"}),
		rapid.StringOf(rapid.SampledFrom([]rune("ab ,;\t\"\n€"))),
	).Draw(t, "cell")
}

// TestWrittenTableReadsBack: what encoding/csv writes of any cells, with any
// separator, reads as those cells.
func TestWrittenTableReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		columns := rapid.IntRange(2, 6).Draw(t, "columns")
		var want [][]string
		for range rapid.IntRange(1, 8).Draw(t, "rows") {
			var row []string
			for range columns {
				row = append(row, drawCell(t))
			}
			want = append(want, row)
		}
		var b strings.Builder
		w := csv.NewWriter(&b)
		separator := rapid.SampledFrom([]byte{',', ';', '\t'}).Draw(t, "separator")
		w.Comma = rune(separator)
		w.UseCRLF = rapid.Bool().Draw(t, "CRLF")
		if err := w.WriteAll(want); err != nil {
			t.Fatal(err)
		}
		c := cut(b.String(), separator, maxRows)
		if len(c.faults) > 0 || !c.complete() || !reflect.DeepEqual(c.rows, want) {
			t.Fatalf("%q\nwant %q\ngot  %q %v", b.String(), want, c.rows, c.faults)
		}
	})
}

// FuzzCut: where both readers take a text, they take it alike, and nothing is
// lost: each character is in a cell, or parts cells.
func FuzzCut(f *testing.F) {
	for _, seed := range []string{"a,b\nc,d\n", "a;\"b\nc\";d\r\n", "\"a\"\"b\",c", "\"open", "\"a\"b,c", "a\"b,c\n\n,\n", "sep=;\na;b\n", "\ufeffa,b", "a,b\rc,d"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		c := cut(text, ',', maxRows)
		if len(c.faults) > 0 {
			if at := c.faults[0]; at.row < 1 || at.column < 1 || at.message == "" {
				t.Fatalf("%+v", at)
			}
			return
		}
		if !c.complete() {
			t.Fatal("not complete")
		}
		if strings.Contains(text, "\r") {
			return // a lone CR ends a row here and is text there
		}
		theirs, err := secondReading(text, ',')
		if err != nil {
			return
		}
		if ours := withoutBlank(c.rows); len(ours)+len(theirs) > 0 && !reflect.DeepEqual(ours, withoutBlank(theirs)) {
			t.Fatalf("%q\nours   %q\ntheirs %q", text, ours, theirs)
		}
	})
}

func TestTellSeparator(t *testing.T) {
	for _, c := range []struct {
		text string
		want byte
		ok   bool
	}{
		{"a,b\n1,2\n", ',', true},
		{"a;b\n1,5;2\n", ';', true},
		{"a\tb\n1,5\t2;3\n", '\t', true},
		{"a;b;c\n1,5;2,5;3,5\n1,5;2,5;3,5\n", ';', true},
		{"\"a,b\";c\n1;2\n", ';', true},
		{"one\ntwo\n", ',', true},
		{"a,b;c\n", 0, false},
		{"a,b;c\n1,2;3\n", 0, false},
	} {
		got, ok := tellSeparator(c.text, 0, nil)
		if ok != c.ok || ok && got != c.want {
			t.Errorf("%q: %q %v", c.text, got, ok)
		}
	}
	if got, ok := tellSeparator("a,b;c\n1,2;3\n", 0, map[string]bool{"a,b": true, "c": true}); !ok || got != ';' {
		t.Errorf("by its heads: %q %v", got, ok)
	}
	table := mustTable(t, "sep=;\r\nnumber;kind\r\nA;hook\r\n", nil)
	if p := table.Register.Items[0].Place("/number"); p.Row != 3 {
		t.Error(p)
	}
}
