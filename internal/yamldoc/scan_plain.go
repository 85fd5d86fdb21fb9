package yamldoc

import (
	"strings"

	"liftlint/internal/source"
)

// plain reads a scalar without quotes, over several lines if they go on.
func (s *scanner) plain() token {
	t := s.piece(scalarToken, 0)
	t.style = PlainStyle
	parent := s.parent(t.indent)
	if !s.plainStart() {
		s.badStart()
		return t
	}
	s.plainLine()
	t.text = s.src[t.from:s.off]
	var text strings.Builder
	for {
		t.to, t.at.To = s.off, s.pos()
		next, breaks, ok := s.continues(parent)
		if !ok || s.off-t.from > maxScalar {
			break
		}
		if text.Len() == 0 {
			text.WriteString(t.text)
		}
		fold(&text, breaks)
		s.cursor = next
		from := s.off
		s.plainLine()
		text.WriteString(s.src[from:s.off])
	}
	if text.Len() > 0 {
		t.text = text.String()
	}
	return t
}

// plainStart reports whether text may begin here; blockToken and flowToken
// have taken every other indicator. A colon or question mark in front is
// refused: YAML 1.1 and 1.2 differ on them.
func (s *scanner) plainStart() bool {
	switch s.src[s.off] {
	case ':', '?':
		return false
	case '-':
		return !s.blankAt(1) && !(len(s.flows) > 0 && flowIndicator(s.at(1)))
	}
	return true
}

func (s *scanner) badStart() {
	switch {
	case s.src[s.off] == '-' && s.blankAt(1):
		s.fail(Syntax, s.restOfLine(), "dashes make no list within brackets; separate the items with commas")
	case s.src[s.off] == ':' && (s.blankAt(1) || flowIndicator(s.at(1))):
		s.fail(KeyNotString, s.here(1), "no key stands before this colon")
	default:
		s.mustQuote()
	}
}

// plainLine steps to the end of a scalar's text on this line, trailing blanks
// excluded.
func (s *scanner) plainLine() {
	inFlow := len(s.flows) > 0
	last := s.off
	for i := s.off; i < len(s.src); i++ {
		b := s.src[i]
		if b == '\n' {
			break
		}
		if b == ' ' || b == '\t' {
			continue
		}
		s.off = i
		if b == ':' && (s.blankAt(1) || inFlow && flowIndicator(s.at(1))) {
			break
		}
		if b == '#' && i > 0 && (s.src[i-1] == ' ' || s.src[i-1] == '\t') || inFlow && flowIndicator(b) {
			break
		}
		last = i + 1
	}
	s.off = last
}

// continues looks whether a plain scalar goes on on a later line. It returns
// a cursor there and the number of line ends between.
func (s *scanner) continues(parent int) (next cursor, breaks int, ok bool) {
	c := s.cursor
	c.skipSpaces()
	if c.end() || c.at(0) != '\n' {
		return c, 0, false
	}
	for !c.end() && c.at(0) == '\n' {
		c.newline()
		breaks++
		if c.marker() {
			return c, 0, false
		}
		c.skipSpaces()
	}
	if c.end() || c.at(0) == '#' {
		return c, 0, false
	}
	if len(s.flows) > 0 {
		return c, breaks, s.insideFlow(&c) && !flowIndicator(c.at(0)) && !s.flowColon(&c)
	}
	tab := strings.IndexByte(c.src[c.bol:c.off], '\t') >= 0
	column := c.off - c.bol + 1
	if column > parent && parent > 0 && c.at(0) == '-' && c.blankAt(1) {
		s.cursor = c
		s.fail(Syntax, s.restOfLine(), "a list item stands below a key or item that already has a value; give it a key of its own, or put the whole text in quotes")
		return c, 0, false
	}
	return c, breaks, !tab && column > parent && !(c.at(0) == ':' && c.blankAt(1))
}

func (s *scanner) flowColon(c *cursor) bool {
	return c.at(0) == ':' && (c.blankAt(1) || flowIndicator(c.at(1)))
}

// fold joins lines: one line end is a space, more are line ends less one.
func fold(text *strings.Builder, breaks int) {
	if breaks == 1 {
		text.WriteByte(' ')
		return
	}
	for ; breaks > 1; breaks-- {
		text.WriteByte('\n')
	}
}

// firstLine is the range of a scalar's first line, lastLine of its last.
func (s *scanner) firstLine(t token) source.Range {
	c := cursor{src: s.src, off: t.from, line: t.at.From.Line, bol: strings.LastIndexByte(s.src[:t.from], '\n') + 1}
	line, _, _ := strings.Cut(s.src[t.from:t.to], "\n")
	c.off += len(strings.TrimRight(line, " \t"))
	return source.Range{From: t.at.From, To: c.pos()}
}

func (s *scanner) lastLine(t token) source.Range {
	bol := strings.LastIndexByte(s.src[:t.to], '\n') + 1
	c := cursor{src: s.src, off: t.to - len(s.lastLineText(t)), line: t.at.To.Line, bol: bol}
	return source.Range{From: c.pos(), To: t.at.To}
}

func (s *scanner) lastLineText(t token) string {
	text := s.src[t.from:t.to]
	return strings.TrimLeft(text[strings.LastIndexByte(text, '\n')+1:], " \t")
}
