package ruleexample

import (
	"bytes"
	"unicode/utf8"

	"liftlint/internal/source"
)

// offset is the byte at which a position stands.
func offset(text []byte, p source.Position) int {
	at := 0
	for range p.Line - 1 {
		at += bytes.IndexByte(text[at:], '\n') + 1
	}
	for range p.Column - 1 {
		_, n := utf8.DecodeRune(text[at:])
		at += n
	}
	return at
}

// without takes the lines of a value out, those of its key included.
func without(text []byte, place source.Place) []byte {
	first := place.Value.From
	if !place.Key.IsZero() {
		first = place.Key.From
	}
	from := offset(text, source.Position{Line: first.Line, Column: 1})
	to := offset(text, source.Position{Line: place.Value.To.Line + 1, Column: 1})
	return []byte(string(text[:from]) + string(text[to:]))
}
