package register

import (
	"strconv"
	"strings"

	"liftlint/internal/source"
)

// at is where an item stands. pointer is that of YAML, row that of a table.
type at struct {
	file    *origin
	pointer string
	number  source.Range // of the number, in YAML
	row     int
	entries []int // of a table: the columns' numbers of its inspections, where some have none
}

// origin is what all items of one file share.
type origin struct {
	name    string
	columns map[string]int // of a table: the column of each field by its pointer in the item
	heads   []string
	lines   []int32 // of a table: the lines that its rows begin on; nil where each row has one line
	above   int     // of a table: the lines above its heads
}

// line is the line of the file that a row of a table begins on.
func (o *origin) line(row int) int {
	if i := row - 1 - o.above; i >= 0 && i < len(o.lines) {
		return int(o.lines[i]) + o.above
	}
	return row
}

// Place is where the item stands or, with a JSON pointer below it such as
// /certificate/date, one of its values. A value of a table that has no cell of
// its own stands where the nearest group of values around it does.
func (i *Item) Place(pointer string) Place {
	a := i.at
	if a.file == nil {
		return Place{}
	}
	if a.row == 0 {
		p := Place{File: a.file.name, Pointer: a.pointer + pointer}
		if pointer == "" {
			p.Range = a.number
		}
		return p
	}
	p := Place{File: a.file.name, Row: a.row, Line: a.file.line(a.row)}
	pointer = a.inColumns(pointer)
	for pointer != "" {
		if c, ok := a.file.columns[pointer]; ok {
			p.Column, p.Head = c, a.file.heads[c-1]
			break
		}
		pointer = pointer[:strings.LastIndexByte(pointer, '/')]
	}
	return p
}

// inColumns puts the number that the columns have for an inspection in place of
// its number in the item.
func (a at) inColumns(pointer string) string {
	rest, ok := strings.CutPrefix(pointer, "/inspections/")
	if !ok || a.entries == nil {
		return pointer
	}
	index, rest, _ := strings.Cut(rest, "/")
	i, err := strconv.Atoi(index)
	if err != nil || i < 0 || i >= len(a.entries) {
		return pointer
	}
	pointer = "/inspections/" + strconv.Itoa(a.entries[i])
	if rest != "" {
		pointer += "/" + rest
	}
	return pointer
}
