package register

import (
	"fmt"
	"strings"
	"testing"
)

// TestLinesOfRows: a row is found on its line of the file, whatever line ends the
// file has and however many lines the cells above go over.
func TestLinesOfRows(t *testing.T) {
	for _, end := range []string{"\n", "\r\n", "\r"} {
		text := strings.Join([]string{
			"number;kind;location",
			"SH-1;shackle;rack 1",
			"SH-2;shackle;\"rack", "2, below\"",
			"SH-3;shackle;\"rack", "", "3\"",
			"SH-4;shackle;rack 4",
		}, end)
		for above, first := range map[string]int{"": 0, "sep=;" + end: 1} {
			if first > 0 && end == "\r" {
				continue // no spreadsheet writes this line and such ends
			}
			table := mustTable(t, above+text, nil)
			var got []string
			for i := range table.Register.Items {
				p := table.Register.Items[i].Place("")
				got = append(got, fmt.Sprintf("row %d on line %d", p.Row-first, p.Line-first))
			}
			if want := "row 2 on line 2, row 3 on line 3, row 4 on line 5, row 5 on line 8"; strings.Join(got, ", ") != want {
				t.Errorf("%q: %s", above+end, strings.Join(got, ", "))
			}
		}
	}
	plain := mustTable(t, "number;kind\nSH-1;shackle\nSH-2;shackle\n", nil)
	if p := plain.Register.Items[1].Place("/kind"); p.Line != 3 || plain.lines != nil {
		t.Errorf("%+v", p)
	}
}
