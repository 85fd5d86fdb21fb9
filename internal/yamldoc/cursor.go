package yamldoc

import (
	"unicode/utf8"

	"liftlint/internal/source"
)

// cursor walks a text that has LF line ends. A position counts code points;
// the last answer is remembered, because counting a long line anew for every
// token takes quadratic time.
type cursor struct {
	src  string
	off  int
	line int // from one
	bol  int // offset of the line's first byte

	knownOff, knownCol int
}

func (c *cursor) pos() source.Position {
	if c.knownOff < c.bol || c.knownOff > c.off || c.knownCol == 0 {
		c.knownOff, c.knownCol = c.bol, 1
	}
	c.knownCol += utf8.RuneCountInString(c.src[c.knownOff:c.off])
	c.knownOff = c.off
	return source.Position{Line: c.line, Column: c.knownCol}
}

// newline steps over the line end under the cursor.
func (c *cursor) newline() {
	c.off++
	c.line++
	c.bol = c.off
}

func (c *cursor) end() bool { return c.off >= len(c.src) }

// at gives the byte i places on, or LF behind the end, which closes whatever
// a line end closes.
func (c *cursor) at(i int) byte {
	if c.off+i >= len(c.src) {
		return '\n'
	}
	return c.src[c.off+i]
}

// blankAt reports whether a space, a tab or a line end stands i places on.
func (c *cursor) blankAt(i int) bool {
	b := c.at(i)
	return b == ' ' || b == '\t' || b == '\n'
}

// skipSpaces steps over spaces and tabs.
func (c *cursor) skipSpaces() {
	for !c.end() && (c.src[c.off] == ' ' || c.src[c.off] == '\t') {
		c.off++
	}
}

// marker reports whether `---` or `...` stands at the start of this line.
func (c *cursor) marker() bool {
	if c.off != c.bol || c.off+3 > len(c.src) {
		return false
	}
	m := c.src[c.off : c.off+3]
	return (m == "---" || m == "...") && c.blankAt(3)
}
