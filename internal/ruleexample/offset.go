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
