package yamldoc

import "strings"

// blockScalar reads a scalar under `|` or `>`: its lines are those indented
// further than the key or dash that it belongs to. The range runs from the
// mark to the end of the last line that counts.
func (s *scanner) blockScalar() token {
	t := s.piece(scalarToken, 1)
	t.style = LiteralStyle
	if s.src[t.from] == '>' {
		t.style = FoldedStyle
	}
	parent := s.parent(t.indent)
	chomp, indent, ok := s.blockHeader()
	if !ok {
		return t
	}
	if indent > 0 {
		indent += max(parent-1, 0)
	}
	b := blockText{scanner: s, parent: parent, indent: indent, folded: t.style == FoldedStyle}
	t.at.To = s.pos()
	t.to = s.off
	b.headerEnd()
	b.read()
	t.text = b.finish(chomp)
	if last := b.lastOf(chomp); last.off > 0 {
		t.to, t.at.To = last.off, last.pos()
	}
	return t
}

// blockHeader reads what may follow the mark: `+` or `-`, and an indentation.
func (s *scanner) blockHeader() (chomp byte, indent int, ok bool) {
	for !s.blankAt(0) {
		switch b := s.at(0); {
		case (b == '+' || b == '-') && chomp == 0:
			chomp = b
		case b >= '1' && b <= '9' && indent == 0:
			indent = int(b - '0')
		default:
			s.badHeader()
			return 0, 0, false
		}
		s.off++
	}
	c := s.cursor
	c.skipSpaces()
	if c.at(0) != '\n' && !(c.at(0) == '#' && c.off > s.off) {
		s.badHeader()
		return 0, 0, false
	}
	return chomp, indent, true
}

func (s *scanner) badHeader() {
	s.fail(Syntax, s.restOfLine(), "after `|` or `>` the text begins on the next line, indented; put text that begins with `|` or `>` in quotes")
}

// blockText gathers the lines of a block scalar.
type blockText struct {
	*scanner
	parent int
	indent int // spaces before the text; 0 until known
	folded bool

	text     strings.Builder
	lines    int
	held     int    // line ends held back until more text comes
	spaced   bool   // the last line began with a blank
	lastText cursor // end of the last line with text
	lastLine cursor // end of the last line, blank or not
}

// headerEnd steps over a comment behind the mark and the line end.
func (b *blockText) headerEnd() {
	b.skipSpaces()
	if !b.end() && b.at(0) == '#' {
		b.comment()
	}
	if !b.end() {
		b.newline()
	}
}

func (b *blockText) read() {
	widest := 0
	for !b.end() && !b.marker() {
		line, _, more := strings.Cut(b.src[b.off:], "\n")
		spaces := len(line) - len(strings.TrimLeft(line, " "))
		blank := strings.TrimLeft(line, " \t") == ""
		switch {
		case blank && b.indent == 0:
			widest = max(widest, spaces)
		case blank:
		case b.indent == 0 && (spaces < b.parent || spaces == 0), spaces < b.indent:
			b.refuseTab(line, spaces)
			return
		case b.indent == 0:
			b.indent = spaces
			if widest > spaces {
				b.fail(Syntax, b.restOfLine(), "a blank line above has more spaces than this first line of the text; delete the spaces on it")
				return
			}
		}
		b.add(line, blank && (b.indent == 0 || spaces < b.indent || len(line) == b.indent))
		if !more {
			b.held--
			return
		}
		b.newline()
	}
}

// refuseTab refuses a tab where a line of the scalar needs its spaces.
func (b *blockText) refuseTab(line string, spaces int) {
	if line[spaces] == '\t' {
		b.off += spaces
		b.fail(TabIndent, b.here(1), "a tab indents this line; YAML counts spaces only: indent with spaces, here and on the lines that follow")
	}
}

// add takes one line and holds its end back.
func (b *blockText) add(line string, empty bool) {
	b.off += len(line)
	b.lastLine = b.cursor
	if empty {
		b.held++
		return
	}
	text := line[b.indent:]
	spaced := text[0] == ' ' || text[0] == '\t'
	if b.lines > 0 && b.folded && !spaced && !b.spaced {
		fold(&b.text, b.held)
	} else {
		b.text.WriteString(strings.Repeat("\n", b.held))
	}
	b.text.WriteString(text)
	b.held, b.spaced, b.lastText = 1, spaced, b.cursor
	b.lines++
}

func (b *blockText) lastOf(chomp byte) cursor {
	if chomp == '+' {
		return b.lastLine
	}
	return b.lastText
}

// finish adds the line ends that the header keeps: all of them for `+`, none
// for `-`, otherwise one.
func (b *blockText) finish(chomp byte) string {
	keep := b.held
	switch {
	case chomp == '-', chomp == 0 && b.lines == 0:
		keep = 0
	case chomp == 0:
		keep = min(keep, 1)
	}
	return b.text.String() + strings.Repeat("\n", max(keep, 0))
}
