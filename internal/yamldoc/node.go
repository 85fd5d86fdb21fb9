package yamldoc

import "liftlint/internal/source"

// Kind is what a node is, after YAML 1.2's core schema.
type Kind uint8

// The kinds of nodes. A Number is finite.
const (
	Mapping Kind = iota + 1
	Sequence
	String
	Number
	Bool
	Null
)

// String names the kind as messages do, with its article.
func (k Kind) String() string {
	switch k {
	case Mapping:
		return "a mapping"
	case Sequence:
		return "a list"
	case String:
		return "text"
	case Number:
		return "a number"
	case Bool:
		return "true or false"
	case Null:
		return "nothing"
	}
	return "something unknown"
}

// Style is how a node is written.
type Style uint8

// The styles of scalars, then those of collections. EmptyStyle is a value
// left out, as after `key:`; its range has no width.
const (
	PlainStyle Style = iota + 1
	SingleQuotedStyle
	DoubleQuotedStyle
	LiteralStyle
	FoldedStyle
	EmptyStyle
	BlockStyle
	FlowStyle
)

// Node is one value of a document. Pointer is its JSON pointer (RFC 6901).
// Text is a scalar's decoded text; Items and Entries are in the order of the
// file. Treat a Node as read-only.
type Node struct {
	Kind    Kind
	Style   Style
	Pointer string
	Place   source.Place
	Text    string
	Items   []*Node
	Entries []Entry

	scalar any
}

// Entry is one key of a mapping with its value.
type Entry struct {
	Key      string
	KeyRange source.Range
	Value    *Node
}

// Get returns the value of a key, or nil if n is nil, no mapping, or has no
// such key.
func (n *Node) Get(key string) *Node {
	if n == nil {
		return nil
	}
	for i := range n.Entries {
		if n.Entries[i].Key == key {
			return n.Entries[i].Value
		}
	}
	return nil
}

// Value gives the plain Go value: map[string]any, []any, string, int64,
// float64 (always finite), bool or nil. A whole number outside int64 comes as
// the nearest float64; its digits stay in Text. The value of a nil node is nil.
func (n *Node) Value() any {
	if n == nil {
		return nil
	}
	switch n.Kind {
	case Mapping:
		m := make(map[string]any, len(n.Entries))
		for _, e := range n.Entries {
			m[e.Key] = e.Value.Value()
		}
		return m
	case Sequence:
		l := make([]any, len(n.Items))
		for i, item := range n.Items {
			l[i] = item.Value()
		}
		return l
	case String:
		return n.Text
	}
	return n.scalar
}

// List returns the items of a list; none if n is nil or no list.
func (n *Node) List() []*Node {
	if n == nil || n.Kind != Sequence {
		return nil
	}
	return n.Items
}
