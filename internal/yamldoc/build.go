package yamldoc

import (
	"unicode/utf8"

	"liftlint/internal/source"
)

// Text is a node for a text that stands in a file of another type.
func Text(text, pointer string, at source.Place) *Node {
	return &Node{Kind: String, Style: DoubleQuotedStyle, Pointer: pointer, Place: at, Text: text}
}

// Plain is a node for a text that is read as if it stood plain in a YAML file:
// as a number, true or false where it is one.
func Plain(text, pointer string, at source.Place) *Node {
	r := resolve(text)
	return &Node{Kind: r.kind, Style: PlainStyle, Pointer: pointer, Place: at, Text: text, scalar: r.value}
}

// Refusal says why a text could not stand in a file, or nothing. Tabs and line
// ends can.
func Refusal(text string) string {
	for i := 0; i < len(text); {
		if b := text[i]; b >= ' ' && b < 0x7f || b == '\t' || b == '\n' || b == '\r' {
			i++
			continue
		}
		r, size := utf8.DecodeRuneInString(text[i:])
		if why := unreadable(r, size); why != "" {
			return why
		}
		i += size
	}
	return ""
}

// WithRoot is the document with another tree, made from its own. Places are
// still looked up in the text as it was read.
func (d *Document) WithRoot(root *Node) *Document {
	with := *d
	with.root = root
	return &with
}
