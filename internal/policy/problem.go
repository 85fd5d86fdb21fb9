package policy

import (
	"cmp"
	"fmt"

	"github.com/open-policy-agent/opa/v1/ast"

	"liftlint/internal/datafile"
)

type (
	// Problem is one thing that is wrong with a rule or a profile.
	Problem = datafile.Problem
	// Problems are all that was found at once.
	Problems = datafile.Problems
)

// noteAt notes a problem at a place in a Rego file.
func noteAt(ps *Problems, l *ast.Location, format string, args ...any) {
	p := Problem{Message: fmt.Sprintf(format, args...)}
	if l != nil {
		p.File, p.Line, p.Column = l.File, l.Row, l.Col
	}
	ps.Add(p)
}

// noteRego takes over the errors of the Rego parser and compiler.
func noteRego(ps *Problems, file string, err error) {
	list, ok := err.(ast.Errors)
	if !ok {
		ps.Add(Problem{File: file, Message: err.Error()})
		return
	}
	for _, e := range list {
		p := Problem{File: file, Message: datafile.OneLine(e.Message)}
		if e.Location != nil {
			p.File, p.Line, p.Column = cmp.Or(e.Location.File, file), e.Location.Row, e.Location.Col
		}
		ps.Add(p)
	}
}
