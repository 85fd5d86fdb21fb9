// Package source says where things stand in the files that people write.
package source

// Position is a place in a text. Line and Column count from one; Column
// counts code points, so that a caret lands under the right character.
type Position struct {
	Line   int `json:"line"`
	Column int `json:"column"`
}

// Before reports whether p stands ahead of q.
func (p Position) Before(q Position) bool {
	return p.Line < q.Line || p.Line == q.Line && p.Column < q.Column
}

// Range is half open: To is the position just after its last character.
type Range struct {
	From Position `json:"from"`
	To   Position `json:"to"`
}

// IsZero reports whether the range is unknown.
func (r Range) IsZero() bool { return r == Range{} }

// Place is where a value stands and, for a value in a mapping, where the key
// that names it stands. Key is zero for list items and for the root.
type Place struct{ Key, Value Range }

// Location is a range in a named file. Pointer is the JSON pointer (RFC 6901)
// of the value, empty for the whole document.
type Location struct {
	File    string `json:"file"`
	Pointer string `json:"pointer,omitempty"`
	Range   Range  `json:"range"`
}
