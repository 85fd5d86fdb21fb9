package yamldoc

import "liftlint/internal/source"

type tokenKind uint8

const (
	dashToken tokenKind = iota + 1
	colonToken
	commaToken
	openToken
	closeToken
	scalarToken
)

// token is a piece of the text. Every colon and every dash in tokens is
// followed by its value, if need be by an empty scalar.
type token struct {
	kind   tokenKind
	at     source.Range
	from   int // offsets in the cleaned text
	to     int
	indent int // column that decides what a key, dash or value belongs to

	// of a scalar
	style Style
	key   bool
	text  string
	// of a bracket
	list bool
}

// block is an open block collection: its column and whether it is a list.
type block struct {
	column int
	list   bool
	keys   int
}

// flow is an open bracket and what may come next within it.
type flow struct {
	open  token
	state flowState
	keys  int
}

type flowState uint8

const (
	flowStart flowState = iota
	flowAfterComma
	flowAfterColon
	flowAfterEntry
)
