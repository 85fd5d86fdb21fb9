package policy

import (
	"context"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/cover"
)

// RuleCoverage is how much of a rule's text its own tests reach. Each condition
// and each name given to a value counts as one expression, and each body's
// finding as one more: it is reached when a record meets the whole body.
type RuleCoverage struct {
	Rule        string
	Covered     int
	Expressions int
	NotCovered  []int // the lines of those that are not reached, in order, each once
}

// Share is the part that is reached, from 0 to 1; 0 where there is nothing to
// reach.
func (c RuleCoverage) Share() float64 {
	if c.Expressions == 0 {
		return 0
	}
	return float64(c.Covered) / float64(c.Expressions)
}

// Cover runs each rule's tests, with no other rule beside it, and tells what of
// its text they reach, by rule. Rules that are off are left out. Whether the
// tests pass is for Test to say. The error is Problems where rules or tests are
// wrong.
func Cover(ctx context.Context, o Options) ([]RuleCoverage, error) {
	l, err := loadTests(o)
	if err != nil {
		return nil, err
	}
	return each(ctx, l.tested(), func(t tested) (RuleCoverage, error) { return l.cover(ctx, t) })
}

func (l *loader) cover(ctx context.Context, t tested) (RuleCoverage, error) {
	c := RuleCoverage{Rule: t.rule.id}
	trace := cover.New()
	if _, err := l.runAlone(ctx, t, trace); err != nil {
		return c, err
	}
	reached := map[span]bool{}
	if f := trace.Report(nil).Files[t.rule.name]; f != nil {
		for _, r := range f.Covered {
			reached[span{r.Start.Row, r.Start.Col, r.End.Row, r.End.Col}] = true
		}
	}
	m, ps := t.rule.parse(l.caps)
	if m == nil {
		return c, ps.Sorted()
	}
	for _, s := range reachable(m) {
		c.Expressions++
		if reached[s] {
			c.Covered++
		} else {
			c.NotCovered = append(c.NotCovered, s.line)
		}
	}
	slices.Sort(c.NotCovered)
	c.NotCovered = slices.Compact(c.NotCovered)
	return c, nil
}

// span is where an expression stands. Spans are matched exactly: one that lies
// within a covered one, as in a comprehension over an empty list, need not have
// been reached.
type span struct{ line, column, endLine, endColumn int }

func spanOf(l *ast.Location) span {
	line, column := l.End()
	return span{l.Row, l.Col, line, column}
}

// reachable lists what of a module counts: not the loops, which are always
// reached where what stands behind them is.
func reachable(m *ast.Module) []span {
	var out []span
	for _, r := range m.Rules {
		out = append(out, spanOf(r.Head.Location))
		ast.WalkExprs(r.Body, func(e *ast.Expr) bool {
			if _, loop := e.Terms.(*ast.SomeDecl); !loop {
				out = append(out, spanOf(e.Location))
			}
			return false
		})
	}
	return out
}
