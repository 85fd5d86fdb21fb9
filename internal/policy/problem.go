package policy

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Problem is one thing that is wrong with a rule or a profile, at its place.
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

// sorted puts the problems in order and drops repeats; nil when there are none.
func (ps Problems) sorted() error {
	if len(ps) == 0 {
		return nil
	}
	slices.SortFunc(ps, func(a, b Problem) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line),
			cmp.Compare(a.Column, b.Column), cmp.Compare(a.Message, b.Message))
	})
	return slices.Compact(ps)
}

func (ps *Problems) add(p Problem) { *ps = append(*ps, p) }

// at notes a problem at a place in a Rego file.
func (ps *Problems) at(l *ast.Location, format string, args ...any) {
	p := Problem{Message: fmt.Sprintf(format, args...)}
	if l != nil {
		p.File, p.Line, p.Column = l.File, l.Row, l.Col
	}
	ps.add(p)
}

// rego takes over the errors of the Rego parser and compiler.
func (ps *Problems) rego(file string, err error) {
	list, ok := err.(ast.Errors)
	if !ok {
		ps.add(Problem{File: file, Message: err.Error()})
		return
	}
	for _, e := range list {
		p := Problem{File: file, Message: oneLine(e.Message)}
		if e.Location != nil {
			p.File, p.Line, p.Column = cmp.Or(e.Location.File, file), e.Location.Row, e.Location.Col
		}
		ps.add(p)
	}
}

func oneLine(text string) string { return strings.Join(strings.Fields(text), " ") }
