package yamldoc

import (
	"strings"

	"liftlint/internal/source"
)

// scanner cuts a cleaned text into tokens, in one pass and linear time. It
// enforces all limits, so that whatever reads its tokens is bounded. A fault
// after which nothing that follows has a certain meaning sets broken.
type scanner struct {
	cursor
	tokens   []token
	comments []Comment
	faults   *faultList
	blocks   []block
	flows    []flow
	nodes    int
	maxNodes int
	broken   bool // no tree can be built
	stop     bool // nothing more is read
	header   bool // `---` was seen
	ended    bool // `...` was seen

	fresh    bool // only dashes so far on this line: a key or a dash may stand here
	valued   bool // a value is complete on this line: nothing but its end may follow
	property int  // column of an anchor or tag before a node on its line, or 0
}

func scan(text string, faults *faultList) *scanner { return scanWithin(PlanLimits(), text, faults) }

func scanWithin(limits Limits, text string, faults *faultList) *scanner {
	s := &scanner{cursor: cursor{src: text, line: 1}, maxNodes: limits.Nodes, faults: faults, fresh: true}
	s.tokens = make([]token, 0, len(text)/8+4)
	for !s.stop {
		s.skipToToken()
		if s.stop || s.end() {
			break
		}
		s.scanToken()
	}
	if !s.broken {
		s.finish()
	}
	return s
}

// finish closes what the end of the text leaves open.
func (s *scanner) finish() {
	if len(s.flows) > 0 {
		s.failUnclosed(s.flows[len(s.flows)-1], "before the end of the file")
		return
	}
	s.fillEmpty(nil)
	if len(s.tokens) > 0 {
		return
	}
	s.broken = true
	if len(s.faults.all) == 0 {
		start := source.Position{Line: 1, Column: 1}
		s.fail(Empty, source.Range{From: start, To: start}, "the file holds no data, only blank lines or comments")
	}
}

// note records a fault after which reading goes on.
func (s *scanner) note(id string, at source.Range, format string, args ...any) {
	s.faults.add(id, at, nil, format, args...)
	if s.faults.full {
		s.broken, s.stop = true, true
	}
}

// fail records a fault that makes the rest of the text uncertain.
func (s *scanner) fail(id string, at source.Range, format string, args ...any) {
	s.failRelated(id, at, nil, format, args...)
}

func (s *scanner) failRelated(id string, at source.Range, related []Related, format string, args ...any) {
	s.faults.add(id, at, related, format, args...)
	s.broken, s.stop = true, true
}

// here is the range of the next n bytes of this line.
func (s *scanner) here(n int) source.Range {
	from := s.pos()
	c := s.cursor
	c.off = min(c.off+n, len(c.src))
	return source.Range{From: from, To: c.pos()}
}

// restOfLine is the range from here to the end of the line, without a
// trailing space.
func (s *scanner) restOfLine() source.Range {
	line, _, _ := strings.Cut(s.src[s.off:], "\n")
	return s.here(max(1, len(strings.TrimRight(line, " \t"))))
}

// skipToToken steps over blanks, line ends, comments and document markers.
func (s *scanner) skipToToken() {
	for !s.end() && !s.stop {
		if s.off == s.bol && s.startLine() {
			continue
		}
		spaced := s.off == s.bol || s.src[s.off-1] == ' ' || s.src[s.off-1] == '\t'
		switch b := s.src[s.off]; {
		case b == ' ' || b == '\t':
			s.off++
		case b == '\n':
			s.newline()
		case b == '#' && spaced:
			s.comment()
		default:
			return
		}
	}
}

// startLine looks at the start of a line; it reports whether it took a marker.
func (s *scanner) startLine() bool {
	s.fresh, s.valued, s.property = true, false, 0
	if s.marker() {
		s.documentMarker()
		return true
	}
	c := s.cursor
	for !c.end() && c.src[c.off] == ' ' {
		c.off++
	}
	if c.at(0) != '\t' || len(s.flows) > 0 {
		return false
	}
	tab := c
	if c.skipSpaces(); !c.end() && c.at(0) != '\n' && c.at(0) != '#' {
		s.off = tab.off
		s.fail(TabIndent, s.here(c.off-tab.off), "a tab indents this line; YAML counts spaces only: indent with spaces, here and on the lines that follow")
	}
	return false
}

func (s *scanner) comment() {
	line, _, _ := strings.Cut(s.src[s.off:], "\n")
	at := s.here(len(line))
	s.comments = append(s.comments, Comment{Text: line[1:], Range: at})
	s.off += len(line)
}

// documentMarker reads `---` or `...` at the start of a line.
func (s *scanner) documentMarker() {
	start := s.src[s.off] == '-'
	switch {
	case len(s.flows) > 0:
		s.failUnclosed(s.flows[len(s.flows)-1], "before this document ends")
		return
	case start && (s.header || s.ended || len(s.tokens) > 0):
		s.several(s.here(3))
		return
	case start:
		s.header = true
	default:
		s.ended = true
	}
	s.off += 3
	s.fresh = false
}

func (s *scanner) several(at source.Range) {
	s.note(SeveralDocs, at, "a second document begins here; a file holds one: move this one to a file of its own")
	s.stop = true
}

func (s *scanner) scanToken() {
	if s.ended {
		s.several(s.restOfLine())
		return
	}
	if len(s.flows) > 0 {
		s.flowToken()
		return
	}
	s.blockToken()
}

// emit appends a token, and before it the empty value of a key or dash that
// has none. It counts nodes.
func (s *scanner) emit(t token) {
	s.fillEmpty(&t)
	s.tokens = append(s.tokens, t)
	if t.kind == openToken || t.kind == scalarToken && !t.key {
		s.count(t.at)
	}
}

func (s *scanner) count(at source.Range) {
	if s.nodes++; s.nodes > s.maxNodes && !s.broken {
		s.fail(TooManyNodes, at, "the file holds more than %d values; split it", s.maxNodes)
	}
}

// fillEmpty gives the last key or dash an empty value unless next is its value.
func (s *scanner) fillEmpty(next *token) {
	if len(s.tokens) == 0 {
		return
	}
	last := s.tokens[len(s.tokens)-1]
	if last.kind != colonToken && last.kind != dashToken {
		return
	}
	if next != nil {
		switch inFlow := len(s.flows) > 0; {
		case next.kind == commaToken, next.kind == closeToken:
		case inFlow, next.at.From.Line == last.at.From.Line, next.indent > last.indent:
			return
		case last.kind == colonToken && next.kind == dashToken && next.indent == last.indent:
			return // a list may stand right below its key
		}
	}
	at := source.Range{From: last.at.To, To: last.at.To}
	s.tokens = append(s.tokens, token{kind: scalarToken, style: EmptyStyle, at: at, from: last.to, to: last.to, indent: last.indent + 1})
	s.count(at)
}

// piece makes a token of the next n bytes of this line and steps over them.
func (s *scanner) piece(kind tokenKind, n int) token {
	t := token{kind: kind, at: s.here(n), from: s.off, to: s.off + n}
	t.indent = t.at.From.Column
	if s.property > 0 {
		t.indent = s.property
	}
	s.off += n
	return t
}
