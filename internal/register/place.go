package register

import (
	"fmt"
	"strconv"

	"liftlint/internal/source"
)

// Place is where something stands: in YAML by a JSON pointer, in a table by row
// and column, counted from one with the heads as row 1. Column 0 means the row
// as a whole.
type Place struct {
	File    string
	Pointer string
	Range   source.Range // in YAML; zero where it was not looked up
	Row     int
	Line    int // of the file that the row of an item begins on
	Column  int
	Head    string // of the column
}

// String gives the place as a reference: file#/items/3/serial for YAML (RFC
// 6901), file#cell=231,7 or file#row=231 for a table (RFC 7111, 2.1 and 2.3).
func (p Place) String() string {
	if p.Row > 0 {
		return p.File + "#" + fragment(p.Row, p.Column)
	}
	if p.Pointer == "" {
		return p.File
	}
	return p.File + "#" + p.Pointer
}

// Fragment is what String has after the #.
func (p Place) Fragment() string {
	if p.Row > 0 {
		return fragment(p.Row, p.Column)
	}
	return p.Pointer
}

// Where is the place as people look it up: file:line:column for YAML where the
// range is known, otherwise as String has it.
func (p Place) Where() string {
	if p.Row == 0 && !p.Range.IsZero() {
		return fmt.Sprintf("%s:%d:%d", p.File, p.Range.From.Line, p.Range.From.Column)
	}
	return p.String()
}

func fragment(row, column int) string {
	if column == 0 {
		return "row=" + strconv.Itoa(row)
	}
	return "cell=" + strconv.Itoa(row) + "," + strconv.Itoa(column)
}
