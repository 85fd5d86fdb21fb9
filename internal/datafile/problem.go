package datafile

import (
	"cmp"
	"encoding/json"
	"fmt"
	"slices"
	"strings"
)

// Problem is one thing that is wrong with a data file, a rule among them, at its place.
// Line and Column count from one; they are zero where the whole file is meant.
type Problem struct {
	File    string `json:"file"`
	Line    int    `json:"line,omitempty"`
	Column  int    `json:"column,omitempty"`
	Message string `json:"message"`
}

// String gives the problem in the form file:line:column: message.
func (p Problem) String() string {
	switch {
	case p.File == "":
		return p.Message
	case p.Line == 0:
		return p.File + ": " + p.Message
	}
	return fmt.Sprintf("%s:%d:%d: %s", p.File, p.Line, p.Column, p.Message)
}

// Problems are all that was found at once, in the order of their places.
type Problems []Problem

// Error lists the problems, one a line.
func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.String()
	}
	return strings.Join(lines, "\n")
}

// Sorted puts the problems in order and drops repeats; nil when there are none.
func (ps Problems) Sorted() error {
	if len(ps) == 0 {
		return nil
	}
	slices.SortFunc(ps, func(a, b Problem) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line),
			cmp.Compare(a.Column, b.Column), cmp.Compare(a.Message, b.Message))
	})
	return slices.Compact(ps)
}

// Add notes one more.
func (ps *Problems) Add(p Problem) { *ps = append(*ps, p) }

// OneLine folds white space, line ends among it, into single blanks.
func OneLine(text string) string { return strings.Join(strings.Fields(text), " ") }

// Convert lays validated data out in a struct, by way of JSON.
func Convert(from, to any) error {
	b, err := json.Marshal(from)
	if err != nil {
		return err
	}
	return json.Unmarshal(b, to)
}
