package register

import (
	"fmt"
	"strings"
)

// mostTitleBytes bounds what may stand above the heads: titles and notes.
const mostTitleBytes = 16 << 10

func bytesOf(rows [][]string) int {
	n := 0
	for _, row := range rows {
		for _, c := range row {
			n += len(c)
		}
	}
	return n
}

// skip is how many rows of a text stand above its heads, as the columns file says.
// told is the row that names the separator, which counts as one of the file.
func (c *Columns) skip(told bool) int {
	switch {
	case c == nil || c.HeadsInRow == 0:
		return 0
	case told:
		return c.HeadsInRow - 2
	}
	return c.HeadsInRow - 1
}

// headless says why the row that is to hold the heads can't.
func (t *Table) headless(name string, columns *Columns, skip int) Problems {
	switch {
	case skip < 0:
		return Problems{columns.problem("/heads_in_row", "row 1 of %s names the separator: the heads stand in row 2 or below", name)}
	case skip >= len(t.rows):
		return Problems{columns.problem("/heads_in_row", "the heads are to stand in row %d, and %s has %d rows", columns.HeadsInRow, name, len(t.rows)+t.above)}
	case bytesOf(t.rows[:skip]) > mostTitleBytes:
		return Problems{columns.problem("/heads_in_row", "the rows of %s above row %d hold more than %d KiB; do the heads stand there?", name, columns.HeadsInRow, mostTitleBytes>>10)}
	case columns != nil && columns.HeadsInRow > 0 && empty(t.rows[skip]):
		return Problems{columns.problem("/heads_in_row", "row %d of %s is blank, and the heads are to stand there", columns.HeadsInRow, name)}
	}
	return nil
}

// leaveAbove takes the rows above the heads off the table, and keeps what they say.
func (t *Table) leaveAbove(name string, skip int) {
	for i, row := range t.rows[:skip] {
		if empty(row) {
			continue
		}
		var cells []string
		for _, cell := range row {
			if cell = strings.TrimSpace(cell); cell != "" {
				cells = append(cells, cell)
			}
		}
		t.titles = append(t.titles, Note{
			Place:   Place{File: name, Row: i + 1 + t.above},
			Message: strings.Join(cells, "; "),
		})
	}
	t.rows, t.above = t.rows[skip:], t.above+skip
}

// noteTitles notes the rows above the heads that say something.
func (t *Table) noteTitles() {
	for _, n := range t.titles {
		n.Message = "above the heads: " + quote(n.Message) + ": kept as a comment where the table is written as YAML"
		t.Notes = append(t.Notes, n)
	}
}

// titleLines are the rows above the heads as comments of a YAML file.
func (t *Table) titleLines() string {
	var b strings.Builder
	for _, n := range t.titles {
		b.WriteString(strings.TrimRight(fmt.Sprintf("# row %d: %s", n.Place.Row, strings.ReplaceAll(n.Message, "\n", "\n#   ")), " ") + "\n")
	}
	return b.String()
}

// lookedBelow is how many rows are looked at for heads that stand further down.
const lookedBelow = 30

// headsBelow looks for the heads in rows below the first, where the first has too
// few: the row that has the most of the names looked for, and how many, at least two.
func headsBelow(text string, above int, known func(head string) bool) (row, heads int) {
	for _, s := range separators {
		for i, cells := range cut(text, s.char, lookedBelow).rows {
			n := 0
			for _, c := range cells {
				if known(headOf(c)) {
					n++
				}
			}
			if n > max(heads, 1) {
				row, heads = i+1+above, n
			}
		}
	}
	return row, heads
}

// headOf is a cell as the head of a column.
func headOf(cell string) string { return strings.TrimSpace(strings.ReplaceAll(cell, "\n", " ")) }

// misplaced says where the heads of a table stand, where that is not the row in
// which they were looked for; nothing where no row looks like them.
func (t *Table) misplaced(name, text string, columns *Columns) Problems {
	known := t.isHead(columns)
	here := 0
	for _, c := range t.rows[0] {
		if known(headOf(c)) {
			here++
		}
	}
	row, heads := headsBelow(text, t.told, known)
	switch first := t.above + 1; {
	case row != 0 && row != first && heads > here && columns != nil:
		return Problems{columns.problem("", "row %d of %s does not hold the heads of its columns, and row %d does: say `heads_in_row: %d`", first, name, row, row)}
	case row != 0 && row != first && heads > here:
		return Problems{{ID: Heads, Place: Place{File: name, Row: first}, Message: fmt.Sprintf("this row does not hold the heads of the columns, and row %d does: write a columns file that says `heads_in_row: %d` and what the columns are", row, row)}}
	case columns != nil || filled(t.rows[0]) > 1:
		return nil
	}
	if row := belowTitle(text, t.told); row > 0 {
		return Problems{{ID: Heads, Place: Place{File: name, Row: t.above + 1}, Message: fmt.Sprintf("this row looks like a title, and row %d like the heads of the columns: write a columns file that says `heads_in_row: %d` and what the columns are", row, row)}}
	}
	return nil
}

// isHead tells heads that a columns file speaks of or, without one, fields.
func (t *Table) isHead(columns *Columns) func(head string) bool {
	if columns != nil {
		heads := columns.heads()
		return func(head string) bool { return heads[head] }
	}
	x := &binder{v: t.reader.validator}
	return func(head string) bool {
		_, leaf := x.leaf(stepsOf(head))
		return head != "" && leaf
	}
}

// belowTitle is the first row of three cells and more below rows of one cell at
// most; 0 where there is none.
func belowTitle(text string, above int) int {
	for _, s := range separators {
		for i, cells := range cut(text, s.char, lookedBelow).rows {
			if n := filled(cells); n >= 3 && i > 0 {
				return i + 1 + above
			} else if n > 1 {
				break
			}
		}
	}
	return 0
}

// filled is how many cells of a row say something.
func filled(row []string) int {
	n := 0
	for _, c := range row {
		if strings.TrimSpace(c) != "" {
			n++
		}
	}
	return n
}
