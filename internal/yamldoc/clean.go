package yamldoc

import (
	"bytes"
	"strings"
	"unicode/utf8"

	"liftlint/internal/source"
)

const byteOrderMark = "\ufeff"

// normalize drops a UTF-8 byte order mark and turns every line end into LF.
func normalize(src []byte) string {
	text := strings.TrimPrefix(string(src), byteOrderMark)
	if !strings.Contains(text, "\r") {
		return text
	}
	return strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(text)
}

// clean checks size and characters. What it returns is UTF-8 with LF line
// ends and no character that hides from a reader.
func clean(src []byte, faults *faultList) (string, bool) {
	return cleanWithin(PlanLimits(), src, faults)
}

func cleanWithin(limits Limits, src []byte, faults *faultList) (string, bool) {
	start := source.Position{Line: 1, Column: 1}
	at := source.Range{From: start, To: start}
	switch {
	case len(src) > limits.Bytes:
		faults.add(TooLarge, at, nil, "the file has %d bytes; at most %d (%d MiB) are read", len(src), limits.Bytes, limits.Bytes>>20)
		return "", false
	case bytes.HasPrefix(src, []byte{0xff, 0xfe}), bytes.HasPrefix(src, []byte{0xfe, 0xff}):
		faults.add(Encoding, at, nil, "the file is written in UTF-16; save it as UTF-8")
		return "", false
	}
	text := normalize(src)
	c := cursor{src: text, line: 1}
	for c.off < len(text) {
		b := text[c.off]
		if b == '\n' {
			c.newline()
			continue
		}
		if b >= ' ' && b < 0x7f || b == '\t' {
			c.off++
			continue
		}
		r, size := utf8.DecodeRuneInString(text[c.off:])
		if why := unreadable(r, size); why != "" {
			from := c.pos()
			c.off += size
			faults.add(Encoding, source.Range{From: from, To: c.pos()}, nil, "%s", why)
			return "", false
		}
		c.off += size
	}
	return text, true
}

// unreadable says why a character other than tab and line end is refused, or
// nothing. Besides control characters these are the ones that make a text
// show otherwise than it reads, and line ends of YAML 1.1 that 1.2 dropped.
func unreadable(r rune, size int) string {
	switch {
	case r == utf8.RuneError && size <= 1:
		return "the file is not UTF-8 at this byte; save it as UTF-8"
	case r == 0:
		return "the file holds a NUL character; it is damaged, or not a UTF-8 text file"
	case r < ' ', r >= 0x7f && r <= 0x9f && r != 0x85:
		return "the file holds an invisible control character here; delete it"
	case r == 0x85, r == 0x2028, r == 0x2029:
		return "an unusual line separator stands here, which YAML versions read differently; use a plain line end or a space"
	case r >= 0x202a && r <= 0x202e, r >= 0x2066 && r <= 0x2069, r == 0x200e, r == 0x200f:
		return "an invisible character that reverses the direction of text stands here, so that the line shows otherwise than it reads; delete it"
	case r == 0xfeff:
		return "an invisible byte order mark stands inside the text; delete it"
	case r&0xfffe == 0xfffe:
		return "a code that is no character stands here; delete it"
	}
	return ""
}
