package register

import (
	"cmp"
	"errors"
	"fmt"
	"strings"

	"liftlint/internal/yamldoc"
)

// Note is something that a reader of a table should know: nothing is lost, but
// something is not where it may have been meant to be.
type Note struct {
	Place   Place
	Message string
}

// String gives the note on one line.
func (n Note) String() string {
	return Problem{Place: n.Place, Message: n.Message}.String()
}

// OfCells reports whether cells were not read. What stands above the heads is there by the
// word of the columns file.
func (n Note) OfCells() bool { return n.Place.Column > 0 }

// Said is the message, with the head of its column.
func (n Note) Said() string { return Problem{Place: n.Place, Message: n.Message}.Said() }

// Table is a register read from a CSV file.
type Table struct {
	Register *Register
	Encoding string // as in a columns file
	Notes    []Note

	binding *binding
	reader  *Reader
	rows    [][]string
	lines   []int32 // as a cutter has them, below the row that names the separator
	above   int     // rows above the heads
	told    int     // 1 where the first row of the file names the separator
	titles  []Note
	title   string
	site    string
}

// ReadTable reads a CSV file, with columns that say what its columns are, or
// nil where its heads are the names of fields. The first row holds the heads, or the
// one that the columns name.
// The error holds Problems.
func (rd *Reader) ReadTable(name string, src []byte, columns *Columns) (*Table, error) {
	t, err := rd.readTable(name, src, columns)
	if err != nil {
		return nil, err
	}
	if err := t.Join(); err != nil {
		return nil, err
	}
	return t, nil
}

// Join sees that no number or serial of a table read by itself stands for two
// items, and readies it to be looked up in.
func (t *Table) Join() error {
	r, err := Join(t.Register)
	if err == nil {
		t.Register = r
	}
	return err
}

// readTable leaves numbers and serials to Join.
func (rd *Reader) readTable(name string, src []byte, columns *Columns) (*Table, error) {
	if len(src) > maxTableBytes {
		return nil, tooLarge(name, int64(len(src)), maxTableBytes)
	}
	t := &Table{reader: rd, Encoding: tellEncoding(src), title: strings.TrimSuffix(baseName(name), ".csv")}
	if columns != nil {
		t.Encoding = cmp.Or(columns.Encoding, t.Encoding)
		t.title, t.site = cmp.Or(columns.Title, t.title), columns.Site
	}
	err := t.read(name, decodeText(src, t.Encoding), columns)
	t.findLines(err)
	if err != nil {
		return nil, err
	}
	return t, nil
}

// findLines puts the line that a row begins on beside the row, wherever something is
// said of it.
func (t *Table) findLines(err error) {
	o := origin{lines: t.lines, above: t.told}
	fill := func(p *Place) {
		if p != nil && p.Row > 0 && p.Line == 0 {
			p.Line = o.line(p.Row)
		}
	}
	for i := range t.Notes {
		fill(&t.Notes[i].Place)
	}
	var ps Problems
	if errors.As(err, &ps) {
		for i := range ps {
			fill(&ps[i].Place)
			fill(ps[i].Other)
		}
	}
}

// read reads the items of a text. The error holds Problems.
func (t *Table) read(name, text string, columns *Columns) error {
	if ps := t.cut(name, text, columns); len(ps) > 0 {
		return sorted(ps, 0)
	}
	heads := make([]string, len(t.rows[0]))
	for i, h := range t.rows[0] {
		heads[i] = headOf(h)
	}
	b, ps := bind(t.reader.validator, name, heads, t.above+1, columns)
	if len(ps) > 0 {
		_, body, _ := separatorLine(text)
		if elsewhere := t.misplaced(name, body, columns); len(elsewhere) > 0 {
			return elsewhere
		}
		return sorted(ps, 0)
	}
	t.binding = b
	t.noteTitles()
	t.Notes = append(t.Notes, b.notes...)
	b.origin.lines, b.origin.above = t.lines, t.told
	t.noteHeadless(name)
	return t.items(name)
}

// noteHeadless notes columns that have cells and no head.
func (t *Table) noteHeadless(name string) {
	for j, head := range t.binding.origin.heads {
		if head != "" {
			continue
		}
		for i, row := range t.rows[1:] {
			if j < len(row) && strings.TrimSpace(row[j]) != "" {
				t.Notes = append(t.Notes, Note{Place: Place{File: name, Row: i + 2 + t.above, Column: j + 1}, Message: "this column has no head: its cells are kept as they stand, from this one on"})
				break
			}
		}
	}
}

func tooLarge(name string, has, most int64) Problems {
	return Problems{{ID: TooLarge, Place: Place{File: name}, Message: fmt.Sprintf("the file has %d bytes; at most %d (%d MiB) are read", has, most, most>>20)}}
}

// cut cuts the text into cells, sees that they can be read, and finds the heads.
func (t *Table) cut(name, text string, columns *Columns) Problems {
	_, body, told := separatorLine(text)
	if told {
		t.above, t.told = 1, 1
	}
	skip := columns.skip(told)
	separator, ok := t.separator(text, columns, max(skip, 0))
	if !ok {
		return Problems{{ID: Separator, Place: Place{File: name, Row: 1}, Message: "the cells can be parted in two ways; say `separator:` in the columns file"}}
	}
	c := cut(body, separator, maxRows)
	var ps Problems
	for _, f := range c.faults {
		ps = append(ps, Problem{ID: f.id, Message: f.message, Place: Place{File: name, Row: f.row + t.above, Column: f.column}})
	}
	switch t.rows, t.lines = c.rows, c.lines; {
	case len(c.rows) == 0 && len(ps) == 0:
		return Problems{{ID: Heads, Place: Place{File: name}, Message: "the file is empty; its first row holds the heads of the columns"}}
	case len(c.faults) == 0 && !c.complete():
		ps = append(ps, Problem{ID: TooLarge, Place: Place{File: name, Row: maxRows + t.above}, Message: fmt.Sprintf("the table has more than %d rows; split it", maxRows)})
	}
	if skip == 0 && len(c.faults) > 0 && len(c.rows) > 0 { // a title has told of another separator than the table's
		if elsewhere := t.misplaced(name, body, columns); len(elsewhere) > 0 {
			return elsewhere
		}
	}
	if ps = append(ps, t.unreadable(name, body)...); len(ps) > 0 {
		return ps
	}
	if ps = t.headless(name, columns, skip); len(ps) > 0 {
		return ps
	}
	t.leaveAbove(name, skip)
	return nil
}

// separator is what stands between cells: what the columns file or the first row
// says, or else what the rows from the heads on look like.
func (t *Table) separator(text string, columns *Columns, skip int) (separator byte, ok bool) {
	separator, body, told := separatorLine(text)
	if columns != nil && columns.Separator != "" {
		return separatorNamed(columns.Separator), true
	}
	if told {
		return separator, true
	}
	var heads map[string]bool
	if columns != nil {
		heads = columns.heads()
	}
	return tellSeparator(body, skip, heads)
}

// unreadable lists the cells that are damaged.
func (t *Table) unreadable(name, text string) Problems {
	if yamldoc.Refusal(text) == "" {
		return nil
	}
	var ps Problems
	for i, row := range t.rows {
		for j, cell := range row {
			if why := badText(cell, t.Encoding); why != "" {
				ps = append(ps, Problem{ID: Encoding, Message: why, Place: Place{File: name, Row: i + 1 + t.above, Column: j + 1}})
			}
		}
	}
	return ps
}

// node is the tree of values of one row, by its index below the heads; nil for
// an empty one.
func (t *Table) node(rr *rowReader, i int) *yamldoc.Node {
	cells := t.rows[i+1]
	if empty(cells) {
		return nil
	}
	cells, _ = t.evened(cells, i+2+t.above)
	return rr.read(i+2+t.above, cells).item
}

func baseName(name string) string {
	return name[strings.LastIndexAny(name, `/\`)+1:]
}
