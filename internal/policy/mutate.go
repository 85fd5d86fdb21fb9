package policy

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"
)

// Mutant is a rule with one thing about it changed. Tests that pass on a mutant
// as they do on the rule don't hold the rule to that thing.
type Mutant struct {
	Rule   string
	File   string
	Line   int
	Column int
	What   string // in words, such as "< became <="
}

// OfWhere reports whether a condition of where was taken out.
func (m Mutant) OfWhere() bool { return strings.HasPrefix(m.What, "where ") }

// String gives the mutant in the form file:line:column: what.
func (m Mutant) String() string {
	return fmt.Sprintf("%s:%d:%d: %s", m.File, m.Line, m.Column, m.What)
}

// RuleMutants is what became of one rule's mutants.
type RuleMutants struct {
	Rule      string
	Killed    int      // a test fails on them, or the callback told them from the rule
	Stillborn int      // refused when loaded, so that no test had to find them
	Survivors []Mutant // by their place
}

// Alive reports whether a mutant that passes the rule's tests is still not told
// from the rule by other means, such as the findings on example plans. The
// options load the mutant and no other rule. It is called from several
// goroutines at once.
type Alive func(ctx context.Context, m Mutant, o Options) (bool, error)

// Mutate changes each rule's text, one thing at a time, and runs the rule's own
// tests on every mutant, with no other rule beside it. Those that pass are put
// to alive, where that is not nil. The answer is by rule; rules that are off are
// left out.
//
// The error is Problems where rules or tests are wrong, or a test fails on the
// rule itself; else the context's or that of alive.
func Mutate(ctx context.Context, o Options, alive Alive) ([]RuleMutants, error) {
	l, err := loadTests(o)
	if err != nil {
		return nil, err
	}
	rules := l.tested()
	lists, err := each(ctx, rules, func(t tested) ([]change, error) { return l.changes(ctx, t) })
	if err != nil {
		return nil, err
	}
	all := slices.Concat(lists...)
	fates, err := each(ctx, all, func(c change) (fate, error) { return l.try(ctx, c, alive) })
	if err != nil {
		return nil, err
	}
	var out []RuleMutants
	for i, t := range rules {
		n := len(lists[i])
		out = append(out, tally(t.rule.id, lists[i], fates[:n]))
		fates = fates[n:]
	}
	return out, nil
}

// fate is what became of a mutant.
type fate int

const (
	survived fate = iota
	killed
	stillborn
)

func tally(id string, changes []change, fates []fate) RuleMutants {
	out := RuleMutants{Rule: id}
	for i, f := range fates {
		switch f {
		case killed:
			out.Killed++
		case stillborn:
			out.Stillborn++
		default:
			out.Survivors = append(out.Survivors, changes[i].mutant)
		}
	}
	return out
}

// changes lists the mutants of a rule, whose tests have to pass on the rule
// itself: else they would seem to kill every one.
func (l *loader) changes(ctx context.Context, t tested) ([]change, error) {
	results, err := l.runAlone(ctx, t, nil)
	if err != nil {
		return nil, err
	}
	var ps Problems
	for _, r := range results {
		if !r.Passed {
			ps.Add(Problem{File: r.File, Line: r.Line, Column: 1, Message: fmt.Sprintf("%s fails with the rule as it is and no other beside it; mutants are told by tests that pass", r.Name)})
		}
	}
	if err := ps.Sorted(); err != nil {
		return nil, err
	}
	return l.find(t)
}

// try runs the tests on one mutant.
func (l *loader) try(ctx context.Context, c change, alive Alive) (fate, error) {
	t := c.tested()
	results, err := l.runAlone(ctx, t, nil)
	var ps Problems
	switch {
	case errors.As(err, &ps):
		return stillborn, nil
	case err != nil:
		return 0, err
	case slices.ContainsFunc(results, func(r TestResult) bool { return !r.Passed }):
		return killed, nil
	case alive == nil:
		return survived, nil
	}
	o, err := t.options(l.options)
	if err != nil {
		return 0, err
	}
	still, err := alive(ctx, c.mutant, o)
	if err != nil {
		return 0, fmt.Errorf("%v: %w", c.mutant, err)
	}
	if !still {
		return killed, nil
	}
	return survived, nil
}
