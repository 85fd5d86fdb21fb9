package yamldoc

import "liftlint/internal/source"

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
