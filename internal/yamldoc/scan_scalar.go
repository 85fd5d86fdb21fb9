package yamldoc

import "strings"

// scalar places a scalar that was just read: it is a key if a colon follows.
func (s *scanner) scalar(t token) {
	if s.broken {
		return
	}
	if t.to-t.from > maxScalar {
		s.fail(ScalarTooLong, t.at, "this text is longer than %d bytes (64 KiB)", maxScalar)
		return
	}
	c := s.cursor
	c.skipSpaces()
	block := t.style == LiteralStyle || t.style == FoldedStyle
	if !block && s.colonAt(&c, t) {
		s.off = c.off
		s.key(t)
		return
	}
	s.property = 0
	if t.style == PlainStyle && !s.judgePlain(t) {
		return
	}
	if len(s.flows) > 0 {
		s.flowValue(t)
		return
	}
	s.fresh, s.valued = false, !block
	s.emit(t)
}

// colonAt reports whether the colon of a key stands under c. Within brackets
// a quoted key needs no space behind its colon.
func (s *scanner) colonAt(c *cursor, t token) bool {
	if c.at(0) != ':' {
		return false
	}
	if c.blankAt(1) {
		return true
	}
	return len(s.flows) > 0 && (t.style != PlainStyle || flowIndicator(c.at(1)))
}

func flowIndicator(b byte) bool { return strings.IndexByte(",[]{}", b) >= 0 }

// key takes t as a key; the cursor is on its colon.
func (s *scanner) key(t token) {
	t.key = true
	if t.at.From.Line != t.at.To.Line {
		s.longKey(t)
		return
	}
	if t.style == PlainStyle && strings.HasPrefix(t.text, "\u00a0") {
		s.judgePlain(t)
		return
	}
	if t.style == PlainStyle && !s.blankAt(1) { // YAML 1.1 takes such a colon for text
		s.fail(Syntax, s.here(1), "a space is missing after the colon of %s", show(t.text))
		return
	}
	if len(t.text) > maxKeyBytes || t.to-t.from > maxKeyBytes {
		s.fail(ScalarTooLong, t.at, "this key is longer than %d bytes", maxKeyBytes)
		return
	}
	if len(s.flows) > 0 {
		if !s.flowKey(t) {
			return
		}
	} else {
		if !s.fresh {
			s.secondColon(t)
			return
		}
		s.emit(t)
		s.enter(t, false)
	}
	s.fresh, s.property = false, 0
	colon := s.piece(colonToken, 1)
	colon.indent = t.indent
	s.tokens = append(s.tokens, colon)
}

// secondColon explains a key where only a value can stand.
func (s *scanner) secondColon(t token) {
	if n := len(s.tokens); n > 0 && s.tokens[n-1].kind == colonToken {
		s.fail(Syntax, s.here(1), "a second colon follows on one line; put the value in quotes if the colon belongs to it, or begin a new line after the first colon")
		return
	}
	s.fail(Syntax, t.at, "the key %s cannot stand here; begin it on its own line", show(t.text))
}

// longKey explains a colon behind a scalar of several lines: nearly always a
// colon is missing above, or a line is indented too far.
func (s *scanner) longKey(t token) {
	switch {
	case t.style != PlainStyle:
		s.fail(Syntax, t.at, "a key in quotes must end on the line where it begins; is a quote missing?")
	case len(s.flows) > 0:
		open := s.flows[len(s.flows)-1].open
		s.failRelated(Syntax, s.lastLine(t), []Related{{Range: open.at, Caption: "the bracket"}},
			"a comma or the closing bracket is missing before %s", show(s.lastLineText(t)))
	case s.fresh:
		s.fail(Syntax, s.firstLine(t), "%s", noColon(s.src[t.from:t.to], false))
	default:
		s.fail(Syntax, s.lastLine(t), "%s is indented further than the key above, which already has a value; indent it like that key, or put text that holds a colon in quotes", show(s.lastLineText(t)))
	}
}

// noColon explains a line that should be a key with its value.
func noColon(text string, inFlow bool) string {
	line, _, _ := strings.Cut(text, "\n")
	line = strings.TrimRight(line, " \t")
	if key, value, ok := strings.Cut(line, ":"); ok && key != "" && value != "" {
		return "a space is missing after the colon: write " + show(key+": "+strings.TrimLeft(value, " \u00a0"))
	}
	if inFlow {
		return show(line) + " has no colon; within { } write `key: value`"
	}
	return show(line) + " has no colon; write it as `key: value`, or as `key:` with its entries indented below"
}

// looksLikeEntry reports text such as `mass:8650 kg` that fills a line of its
// own and was surely meant as a key with a value. Web addresses pass.
func looksLikeEntry(text string) bool {
	line, _, _ := strings.Cut(text, "\n")
	key, value, found := strings.Cut(line, ":")
	if !found || key == "" || value == "" || strings.HasPrefix(value, "//") {
		return false
	}
	return strings.Trim(key, "abcdefghijklmnopqrstuvwxyz0123456789_") == "" && (key[0] < '0' || key[0] > '9')
}

// judgePlain refuses plain text that is hardly what its writer meant.
func (s *scanner) judgePlain(t token) bool {
	switch {
	case strings.HasPrefix(t.text, "\u00a0"), strings.HasSuffix(t.text, "\u00a0"):
		s.fail(Syntax, t.at, "an invisible no-break space begins or ends %s; use a plain space, or quotes if it belongs to the text", show(t.text))
	case s.fresh && len(s.flows) == 0 && looksLikeEntry(t.text) && s.alone(t):
		s.fail(Syntax, s.firstLine(t), "%s", noColon(t.text, false))
	default:
		return true
	}
	return false
}

// alone reports whether t is the first on its line.
func (s *scanner) alone(t token) bool {
	bol := strings.LastIndexByte(s.src[:t.from], '\n') + 1
	return strings.Trim(s.src[bol:t.from], " ") == ""
}
