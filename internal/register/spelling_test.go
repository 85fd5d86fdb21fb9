package register

import (
	"errors"
	"testing"
)

// TestOneItemInTwoSpellings: capitals and blanks tell no two items apart, nor two
// makers.
func TestOneItemInTwoSpellings(t *testing.T) {
	const head = "number;kind;serial;maker\n"
	for _, c := range []struct{ rows, id, message string }{
		{"SH-1;shackle;;\nsh-1;shackle;;\n", DuplicateNumber, "the numbers `SH-1` and `sh-1` differ by capitals or blanks alone: if they are two items, give each a number that can't be taken for the other"},
		{"SH 1;shackle;;\nSH1;shackle;;\n", DuplicateNumber, "the numbers `SH 1` and `SH1` differ by capitals or blanks alone: if they are two items, give each a number that can't be taken for the other"},
		{"SH-1;shackle;A1;\nSH-2;shackle;a 1;\n", DuplicateSerial, "items `SH-1` and `SH-2` have the same serial number `a 1`, written `A1` too: correct one, or tell their makers apart"},
		{"SH-1;shackle;A1;Maker A\nSH-2;shackle;A1;maker a\n", DuplicateSerial, "items `SH-1` and `SH-2` have the same serial number `A1`: correct one, or tell their makers apart"},
		{"SH-1;shackle;A1;Maker A\nSH-11;shackle;A1;Maker B\n", "", ""},
	} {
		_, err := mustReader(t).ReadTable("gear.csv", []byte(head+c.rows), nil)
		var ps Problems
		switch {
		case c.id == "":
			if err != nil {
				t.Errorf("%q: %v", c.rows, err)
			}
		case !errors.As(err, &ps) || len(ps) != 1 || ps[0].ID != c.id || ps[0].Message != c.message || ps[0].Other == nil:
			t.Errorf("%q: %v", c.rows, err)
		}
	}
}
