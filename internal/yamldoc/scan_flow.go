package yamldoc

import "fmt"

// open takes an opening bracket as a value.
func (s *scanner) open() {
	t := s.piece(openToken, 1)
	t.list = s.src[t.from] == '['
	if len(s.flows) > 0 && !s.valueFits(t, "`"+s.src[t.from:t.to]+"`") {
		return
	}
	s.emit(t)
	s.fresh, s.property = false, 0
	s.flows = append(s.flows, flow{open: t})
	s.checkDepth(t.at)
}

// flowToken reads what stands within brackets.
func (s *scanner) flowToken() {
	top := &s.flows[len(s.flows)-1]
	if !s.insideFlow(&s.cursor) {
		s.failUnclosed(*top, fmt.Sprintf("before line %d", s.line))
		return
	}
	switch b := s.src[s.off]; {
	case b == ',':
		s.comma(top)
	case b == '}' || b == ']':
		s.close(top, b == ']')
	case b == '?' && s.blankAt(1):
		s.fail(KeyNotString, s.here(1), "`?` begins a key that is no plain text; write the key as text, then a colon")
	case b == ':' && s.tokens[len(s.tokens)-1].kind == closeToken:
		s.fail(KeyNotString, s.tokens[len(s.tokens)-1].at, "a key is plain text; this bracketed value cannot be one")
	default:
		s.nodeToken()
	}
}

// insideFlow reports whether the token under c is indented further than the
// key or dash that the brackets belong to, as YAML asks; it catches a bracket
// that was never closed at the first line that shows it. A closing bracket
// may stand further left, as many people write it.
func (s *scanner) insideFlow(c *cursor) bool {
	if b := c.at(0); b == '}' || b == ']' {
		return true
	}
	open := s.flows[0].open
	return c.line == open.at.From.Line || c.pos().Column > s.parent(open.indent)
}

func (s *scanner) failUnclosed(f flow, where string) {
	s.fail(Syntax, f.open.at, "this `%s` is not closed %s; add the closing bracket, or indent the lines within further than its key", s.src[f.open.from:f.open.to], where)
}

func (s *scanner) comma(top *flow) {
	if top.state == flowStart || top.state == flowAfterComma {
		s.fail(Syntax, s.here(1), "nothing stands before this comma; delete it or write the missing entry")
		return
	}
	s.emit(s.piece(commaToken, 1))
	top.state = flowAfterComma
}

func (s *scanner) close(top *flow, list bool) {
	if list != top.open.list {
		s.failRelated(Syntax, s.here(1), []Related{{Range: top.open.at, Caption: "the opening bracket"}},
			"`%s` closes what `%s` opened; a bracket is missing or of the wrong kind", s.src[s.off:s.off+1], s.src[top.open.from:top.open.to])
		return
	}
	t := s.piece(closeToken, 1)
	s.emit(t)
	s.flows = s.flows[:len(s.flows)-1]
	if n := len(s.flows); n > 0 {
		s.flows[n-1].state = flowAfterEntry
		return
	}
	s.fresh, s.valued = false, true
}

// valueFits checks that a value may stand here within brackets.
func (s *scanner) valueFits(t token, what string) bool {
	top := &s.flows[len(s.flows)-1]
	switch {
	case top.state == flowAfterEntry:
		s.fail(Syntax, t.at, "a comma is missing before %s", what)
	case !top.open.list && top.state != flowAfterColon:
		s.failKeyless(t, what)
	default:
		top.state = flowAfterEntry
		return true
	}
	return false
}

func (s *scanner) failKeyless(t token, what string) {
	switch n := len(s.tokens); {
	case t.kind == openToken:
		s.fail(KeyNotString, t.at, "an entry within { } begins with a key and a colon; %s cannot be a key", what)
	case n > 1 && s.tokens[n-1].kind == commaToken && s.tokens[n-1].to == t.from:
		s.fail(Syntax, t.at, "%s has no colon; decimals take a point, as in `1.4 m`; if the comma before it belongs to a text, put the whole text in quotes", what)
	default:
		s.fail(Syntax, t.at, "%s", noColon(s.src[t.from:t.to], true))
	}
}

// flowValue takes a scalar as an entry's value.
func (s *scanner) flowValue(t token) {
	if s.valueFits(t, show(s.src[t.from:t.to])) {
		s.emit(t)
	}
}

// flowKey takes a scalar as an entry's key.
func (s *scanner) flowKey(t token) bool {
	top := &s.flows[len(s.flows)-1]
	switch {
	case top.state == flowAfterEntry:
		s.fail(Syntax, t.at, "a comma is missing before %s", show(s.src[t.from:t.to]))
	case top.state == flowAfterColon:
		s.fail(Syntax, t.at, "a second colon follows in one entry; put the value in quotes if the colon belongs to it, or separate the entries with a comma")
	case top.open.list:
		s.fail(Syntax, t.at, "a key within [ ] needs braces of its own: write %s", show("{"+t.text+": ...}"))
	default:
		top.state = flowAfterColon
		top.keys++
		s.emit(t)
		s.checkKeys(top.keys, t.at)
		return !s.broken
	}
	return false
}
