package yamldoc

import (
	"strconv"
	"strings"
	"unicode/utf16"
	"unicode/utf8"

	"liftlint/internal/source"
)

// quoted reads a scalar in single or double quotes.
func (s *scanner) quoted() token {
	t := s.piece(scalarToken, 1)
	quote := s.src[t.from]
	t.style = DoubleQuotedStyle
	if quote == '\'' {
		t.style = SingleQuotedStyle
	}
	q := quotedText{scanner: s, token: t, quote: quote, parent: s.parent(t.indent)}
	for !s.broken && !q.closed {
		q.step()
	}
	t.text, t.to, t.at.To = q.text.String(), s.off, s.pos()
	return t
}

// quotedText decodes one quoted scalar.
type quotedText struct {
	*scanner
	token  token
	quote  byte
	parent int
	text   strings.Builder
	closed bool
}

// step reads a run of ordinary text, then what ends it.
func (q *quotedText) step() {
	stops := "\\\"\n"
	if q.quote == '\'' {
		stops = "'\n"
	}
	if q.off-q.token.from > maxScalar {
		q.fail(ScalarTooLong, q.token.at, "this text is longer than %d bytes (64 KiB); is its closing quote missing?", maxScalar)
		return
	}
	n := strings.IndexAny(q.src[q.off:], stops)
	if n < 0 {
		q.unclosed()
		return
	}
	run := q.src[q.off : q.off+n]
	q.off += n
	switch b := q.src[q.off]; {
	case b == '\n':
		q.text.WriteString(strings.TrimRight(run, " \t"))
		q.lineEnd(false)
	case b == '\\':
		q.text.WriteString(run)
		q.escape()
	case q.quote == '\'' && q.at(1) == '\'':
		q.text.WriteString(run + "'")
		q.off += 2
	default:
		q.text.WriteString(run)
		q.off++
		q.closed = true
	}
}

func (q *quotedText) unclosed() {
	line := q.firstLine(token{at: q.token.at, from: q.token.from, to: len(q.src)})
	q.fail(Syntax, line, "the quote that opens here is not closed; end the text with `%c`, or indent the lines that go on with it", q.quote)
}

// lineEnd folds the line ends under the cursor. An escaped one joins the
// lines without a space.
func (q *quotedText) lineEnd(escaped bool) {
	breaks := 0
	for !q.end() && q.at(0) == '\n' {
		q.newline()
		breaks++
		if q.marker() {
			q.unclosed()
			return
		}
		q.skipSpaces()
	}
	if q.end() || q.off-q.bol+1 <= q.parent {
		q.unclosed()
		return
	}
	if escaped { // the others stand for themselves
		q.text.WriteString(strings.Repeat("\n", breaks-1))
		return
	}
	fold(&q.text, breaks)
}

// simpleEscape gives the characters of YAML 1.2.2, 5.7, that need no digits.
func simpleEscape(b byte) (rune, bool) {
	const names, values = "0abt\tnvfre \"/\\N_LP", "\x00\a\b\t\t\n\v\f\r\x1b \"/\\\u0085\u00a0\u2028\u2029"
	i := strings.IndexByte(names, b)
	if i < 0 {
		return 0, false
	}
	return []rune(values)[i], true
}

// escape decodes the backslash under the cursor.
func (q *quotedText) escape() {
	from := q.cursor
	b := q.at(1)
	if b == '\n' && q.off+1 < len(q.src) {
		q.off++
		q.lineEnd(true)
		return
	}
	r, ok := simpleEscape(b)
	q.off += 2
	if digits := strings.IndexByte("xuU", b); digits >= 0 {
		r, ok = q.hex(2 << digits)
	}
	if q.off > len(q.src) {
		q.off = len(q.src)
	}
	at := source.Range{From: from.pos(), To: q.pos()}
	written := q.src[from.off:q.off]
	if !ok {
		q.fail(Syntax, at, "%s is no escape in double quotes; write `\\\\` for a backslash, or use single quotes", show(written))
		return
	}
	if r != '\t' && r != '\n' {
		if unreadable(r, utf8.RuneLen(r)) != "" {
			q.note(Encoding, at, "%s stands for a control or invisible character, which is refused; delete it", show(written))
		}
	}
	q.text.WriteRune(r)
}

// hex reads n digits, and the second half of a surrogate pair.
func (q *quotedText) hex(n int) (rune, bool) {
	r, ok := q.digits(n)
	if n == 4 && utf16.IsSurrogate(r) && strings.HasPrefix(q.src[q.off:], `\u`) {
		q.off += 2
		low, lowOK := q.digits(4)
		r, ok = utf16.DecodeRune(r, low), ok && lowOK
		return r, ok && r != utf8.RuneError
	}
	return r, ok && utf8.ValidRune(r)
}

func (q *quotedText) digits(n int) (rune, bool) {
	if q.off+n > len(q.src) {
		return utf8.RuneError, false
	}
	v, err := strconv.ParseUint(q.src[q.off:q.off+n], 16, 32)
	if err != nil || v > utf8.MaxRune {
		return utf8.RuneError, false
	}
	q.off += n
	return rune(v), true
}
