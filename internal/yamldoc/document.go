package yamldoc

import (
	"strings"

	"liftlint/internal/source"
)

// Document is one file, read without faults. Treat it as read-only; it may be
// shared among goroutines.
type Document struct {
	name     string
	root     *Node
	index    map[string]*Node
	lines    lineIndex
	comments []Comment
}

// Comment is one comment. Text is what follows its `#`; the range includes
// the `#` and ends with the line.
type Comment struct {
	Text  string
	Range source.Range
}

// Read parses one document. name is kept for reports and opens nothing. Read
// returns a document only when there are no faults; faults come sorted by
// place, each once.
func Read(name string, src []byte) (*Document, []Fault) {
	return ReadWithin(PlanLimits(), name, src)
}

// ReadWithin is Read with the limits of another type of file.
func ReadWithin(limits Limits, name string, src []byte) (*Document, []Fault) {
	faults := &faultList{}
	text, ok := cleanWithin(limits, src, faults)
	if !ok {
		return nil, faults.sorted()
	}
	s := scanWithin(limits, text, faults)
	if s.broken {
		return nil, faults.sorted()
	}
	c := composeWithin(limits, s.tokens, faults)
	if len(faults.all) == 0 {
		readAgain(text, s.tokens, c.root, faults)
	}
	if len(faults.all) > 0 {
		return nil, faults.sorted()
	}
	return &Document{name: name, root: c.root, index: c.index, lines: indexLines(text), comments: s.comments}, nil
}

// Name is the name given to Read.
func (d *Document) Name() string { return d.name }

// Root is the node of the whole document.
func (d *Document) Root() *Node { return d.root }

// Comments lists all comments in the order of the file.
func (d *Document) Comments() []Comment { return d.comments }

// Find returns the node at a JSON pointer (RFC 6901); the root's is "".
func (d *Document) Find(pointer string) (*Node, bool) {
	n, ok := d.index[pointer]
	return n, ok
}

// Place returns where the node at a JSON pointer stands.
func (d *Document) Place(pointer string) (source.Place, bool) {
	n, ok := d.index[pointer]
	if !ok {
		return source.Place{}, false
	}
	return n.Place, true
}

// Nearest returns the place of the node at a JSON pointer or, failing that,
// of its nearest ancestor that exists; in the end the root's.
func (d *Document) Nearest(pointer string) source.Place {
	for {
		if n, ok := d.index[pointer]; ok {
			return n.Place
		}
		i := strings.LastIndexByte(pointer, '/')
		if i < 0 {
			return d.root.Place
		}
		pointer = pointer[:i]
	}
}

// Line returns the text of line n, counted from one, without its end; empty
// if there is no such line.
func (d *Document) Line(n int) string { return d.lines.line(n) }

// Line returns line n of a file, counted as in the ranges of this package,
// without its end. It serves excerpts of files that have faults, and takes
// time in proportion to the file.
func Line(src []byte, n int) string { return indexLines(normalize(src)).line(n) }

type lineIndex struct {
	text   string
	starts []int
}

func indexLines(text string) lineIndex {
	starts := make([]int, 1, strings.Count(text, "\n")+1)
	for i := 0; i < len(text); i++ {
		if text[i] == '\n' {
			starts = append(starts, i+1)
		}
	}
	return lineIndex{text, starts}
}

func (x lineIndex) line(n int) string {
	if n < 1 || n > len(x.starts) {
		return ""
	}
	line, _, _ := strings.Cut(x.text[x.starts[n-1]:], "\n")
	return line
}
