package yamldoc

import (
	"strings"

	"liftlint/internal/source"
)

// blockToken reads what stands outside of all brackets.
func (s *scanner) blockToken() {
	b := s.src[s.off]
	switch {
	case b == '-' && s.blankAt(1):
		s.dash()
	case b == '?' && s.blankAt(1):
		s.fail(KeyNotString, s.here(1), "`?` begins a key that is no plain text; write the key as text, then a colon")
	case b == ':' && s.blankAt(1):
		s.strayColon()
	case s.valued:
		s.fail(Syntax, s.restOfLine(), "%s follows a value that is already complete; delete it, or put the whole value in quotes", show(s.line1()))
	case b == '}' || b == ']':
		s.fail(Syntax, s.here(1), "`%c` closes a bracket that was never opened", b)
	default:
		s.nodeToken()
	}
}

// nodeToken reads the start of a node, in a block or within brackets.
func (s *scanner) nodeToken() {
	switch b := s.src[s.off]; b {
	case '{', '[':
		s.open()
	case '&', '*', '!':
		s.properties(b)
	case '"', '\'':
		s.scalar(s.quoted())
	case '|', '>':
		if len(s.flows) > 0 {
			s.mustQuote()
			return
		}
		s.scalar(s.blockScalar())
	case '%', '@', '`', ',':
		if b == '%' && s.off == s.bol && len(s.tokens) == 0 && !s.header {
			s.fail(Syntax, s.restOfLine(), "lines that begin with `%%` (directives) are not read; delete this one")
			return
		}
		s.mustQuote()
	case '#':
		s.fail(Syntax, s.restOfLine(), "a comment needs a space before its `#`; if this is no comment, put the whole value in quotes")
	default:
		s.scalar(s.plain())
	}
}

func (s *scanner) mustQuote() {
	s.fail(Syntax, s.restOfLine(), "text cannot begin with `%c`; put it in quotes", s.src[s.off])
}

// line1 is the rest of this line.
func (s *scanner) line1() string {
	line, _, _ := strings.Cut(s.src[s.off:], "\n")
	return strings.TrimRight(line, " \t")
}

func (s *scanner) dash() {
	if !s.fresh {
		s.fail(Syntax, s.restOfLine(), "a list item cannot begin here; begin it on its own line, or put the text in quotes if the dash belongs to it")
		return
	}
	t := s.piece(dashToken, 1)
	s.emit(t)
	s.enter(t, true)
	c := s.cursor
	if c.skipSpaces(); strings.Contains(s.src[s.off:c.off], "\t") && !c.end() && c.at(0) != '\n' && c.at(0) != '#' {
		s.fail(TabIndent, s.here(c.off-s.off), "a tab follows the dash of a list item; use a space")
	}
}

// strayColon explains a colon that follows no scalar.
func (s *scanner) strayColon() {
	last := len(s.tokens) - 1
	if last >= 0 && s.tokens[last].kind == closeToken && s.valued {
		s.fail(KeyNotString, s.tokens[last].at, "a key is plain text; this bracketed value cannot be one")
		return
	}
	if s.fresh {
		s.fail(KeyNotString, s.here(1), "no key stands before this colon")
		return
	}
	s.fail(Syntax, s.here(1), "this colon has no key before it; put text that holds a colon in quotes")
}

// enter opens the block collection that a dash or key belongs to, unless it
// is open, and closes those further right.
func (s *scanner) enter(t token, list bool) {
	for n := len(s.blocks); n > 0; n = len(s.blocks) {
		top := &s.blocks[n-1]
		if top.column < t.indent || top.column == t.indent && (list || !top.list) {
			break
		}
		s.blocks = s.blocks[:n-1]
	}
	n := len(s.blocks)
	if n == 0 || s.blocks[n-1].column < t.indent || s.blocks[n-1].list != list {
		s.blocks = append(s.blocks, block{column: t.indent, list: list})
		s.count(t.at)
		s.checkDepth(t.at)
	}
	if top := &s.blocks[len(s.blocks)-1]; !list {
		top.keys++
		s.checkKeys(top.keys, t.at)
	}
}

func (s *scanner) checkDepth(at source.Range) {
	if len(s.blocks)+len(s.flows) > maxDepth && !s.broken {
		s.fail(TooDeep, at, "values are nested more than %d deep here", maxDepth)
	}
}

func (s *scanner) checkKeys(n int, at source.Range) {
	if n > maxKeys && !s.broken {
		s.fail(TooManyKeys, at, "this mapping has more than %d keys", maxKeys)
	}
}

// parent is the column that text of a node at the given column must stay
// right of, on all its lines; 0 at the root.
func (s *scanner) parent(column int) int {
	for i := len(s.blocks) - 1; i >= 0; i-- {
		if s.blocks[i].column < column {
			return s.blocks[i].column
		}
	}
	return 0
}

// properties refuses an anchor, alias or tag and reads on behind it, so that
// all of them are reported at once.
func (s *scanner) properties(mark byte) {
	n := 1
	for !s.blankAt(n) && !(len(s.flows) > 0 && strings.IndexByte(",[]{}", s.at(n)) >= 0) {
		n++
	}
	name := s.src[s.off : s.off+n]
	t := s.piece(scalarToken, n)
	switch mark {
	case '!':
		s.note(Tag, t.at, "the tag %s is not read; delete it, and put text that begins with `!` in quotes", show(name))
	case '&':
		s.note(Alias, t.at, "the anchor %s is not read; delete it and write each value out where it belongs", show(name))
	case '*':
		s.note(Alias, t.at, "the alias %s is not read; write the value out here, and put text that begins with `*` in quotes", show(name))
		t.style, t.text = DoubleQuotedStyle, name // stands for any value
		s.scalar(t)
		return
	}
	if s.property == 0 {
		s.property = t.indent
	}
}
