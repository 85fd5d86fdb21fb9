package register

import (
	"strings"
	"unicode/utf8"

	"liftlint/internal/yamldoc"
)

// Bounds of a table. A cell of a spreadsheet holds 32,767 characters at most
// (from memory), and a table of gear has far fewer columns and rows than these.
const (
	maxTableBytes = 64 << 20
	maxRows       = 250_000
	maxCells      = 500 // in a row
	maxCellBytes  = 4 * 32767
)

// gridFault is what keeps a table from being cut into cells.
type gridFault struct {
	id, message string
	row, column int
}

// cutter cuts a text into cells after RFC 4180: cells in quotes may hold
// separators, line breaks and quotes written twice. A quote inside a cell that
// does not begin with one is a character like any other, as in 5/8" chain.
type cutter struct {
	text      string
	separator byte
	off       int
	rows      [][]string
	lines     []int32  // on which rows begin, the first line being 1; nil while each row has one line
	next      int32    // the line of the next row
	room      []string // for the cells of rows to come
	faults    []gridFault
	stop      bool
}

// cut cuts the text into rows, at most so many.
func cut(text string, separator byte, most int) *cutter {
	c := &cutter{text: text, separator: separator, next: 1}
	for c.off < len(text) && !c.stop && len(c.rows) < most {
		start := c.off
		c.row()
		c.count(text[start:c.off])
	}
	return c
}

// count notes the line that a row began on, once a row has had more than one.
func (c *cutter) count(row string) {
	breaks := int32(strings.Count(row, "\n") + strings.Count(row, "\r") - strings.Count(row, "\r\n"))
	if breaks > 1 && c.lines == nil {
		for i := range c.rows {
			c.lines = append(c.lines, int32(i+1))
		}
	} else if c.lines != nil {
		c.lines = append(c.lines, c.next)
	}
	c.next += max(breaks, 1)
}

// complete reports whether all of the text was cut.
func (c *cutter) complete() bool { return c.off >= len(c.text) && !c.stop }

func (c *cutter) fail(column int, id, message string) {
	c.faults = append(c.faults, gridFault{id, message, len(c.rows) + 1, column})
	c.stop = true
}

// row takes one row with its line end.
func (c *cutter) row() {
	cells := c.room[:0]
	for more := true; more && !c.stop; {
		if len(cells) == maxCells {
			c.fail(maxCells+1, Ragged, "a row has more than 500 cells; is this a table of gear, and its separator right?")
			return
		}
		var cell string
		cell, more = c.cell(len(cells) + 1)
		cells = append(cells, cell)
	}
	c.rows = append(c.rows, cells[:len(cells):len(cells)])
	if c.room = cells[len(cells):]; cap(c.room) < 64 {
		c.room = make([]string, 0, 4096)
	}
}

// cell takes one cell with the separator or line end after it, and says whether
// the row goes on.
func (c *cutter) cell(column int) (cell string, more bool) {
	if c.off < len(c.text) && c.text[c.off] == '"' {
		if cell = c.quoted(column); c.stop {
			return cell, false
		}
	} else {
		cell = c.bare()
	}
	if len(cell) > maxCellBytes {
		c.fail(column, Quotes, "the cell is longer than a cell of a spreadsheet can be; is a closing quote missing?")
	}
	return cell, c.after(column)
}

func (c *cutter) bare() string {
	start := c.off
	for c.off < len(c.text) {
		if b := c.text[c.off]; b == c.separator || b == '\n' || b == '\r' {
			break
		}
		c.off++
	}
	return c.text[start:c.off]
}

// quoted takes a cell in quotes. Line ends within become LF.
func (c *cutter) quoted(column int) string {
	var b strings.Builder
	whole := true // one piece of the text so far
	c.off++
	start := c.off
	for {
		i := strings.IndexByte(c.text[c.off:], '"')
		if i < 0 {
			c.fail(column, Quotes, "the quote that this cell begins with is not closed")
			return ""
		}
		c.off += i + 1
		if c.off >= len(c.text) || c.text[c.off] != '"' {
			break
		}
		b.WriteString(c.text[start:c.off])
		whole = false
		c.off++
		start = c.off
	}
	cell := c.text[start : c.off-1]
	if !whole {
		b.WriteString(cell)
		cell = b.String()
	}
	if strings.Contains(cell, "\r") {
		cell = strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(cell)
	}
	return cell
}

// after takes what stands after a cell.
func (c *cutter) after(column int) (more bool) {
	if c.off >= len(c.text) {
		return false
	}
	switch b := c.text[c.off]; {
	case b == c.separator:
		c.off++
		return true
	case strings.HasPrefix(c.text[c.off:], "\r\n"):
		c.off += 2
	case b == '\n' || b == '\r':
		c.off++
	default:
		c.fail(column, Quotes, "text follows the closing quote of this cell; write quotes inside a cell twice")
	}
	return false
}

// badText says what can't be read of a cell, or nothing.
func badText(cell, encoding string) string {
	switch {
	case strings.Contains(cell, "\x00"):
		return "the cell holds a NUL character; the file is damaged, or no text"
	case utf8.ValidString(cell):
		return yamldoc.Refusal(cell)
	case encoding == utf8Name:
		return "the cell is not UTF-8, as other cells are; save the table as UTF-8, or say `encoding: windows_1252` in its columns file if it is that"
	}
	return "the cell holds bytes that have no meaning in " + strings.ReplaceAll(encoding, "_", "-") + "; save the table as UTF-8"
}
