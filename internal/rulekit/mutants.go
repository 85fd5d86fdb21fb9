package rulekit

import (
	"context"
	"slices"
	"sync"

	"liftlint/internal/facts"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/ruleexample"
)

// Unnoticed tells whether a changed rule finds in both examples just what the
// rule as it is written finds, at the same grades. The facts of the examples are
// computed once.
func Unnoticed(l *lint.Linter, profile string) policy.Alive {
	var mu sync.Mutex
	known := map[string]func() (examined, error){}
	return func(ctx context.Context, m policy.Mutant, o policy.Options) (bool, error) {
		mu.Lock()
		once, ok := known[m.Rule]
		if !ok {
			once = sync.OnceValues(func() (examined, error) { return examine(ctx, l, profile, m.Rule) })
			known[m.Rule] = once
		}
		mu.Unlock()
		e, err := once()
		if err != nil {
			return false, err
		}
		changed, err := policy.Load(ctx, o)
		if err != nil {
			return false, err
		}
		found, err := e.judge(ctx, changed)
		return slices.Equal(found, e.found), err
	}
}

// examined is a rule's examples with what it finds in them.
type examined struct {
	documents []*facts.Document
	found     []string
}

func examine(ctx context.Context, l *lint.Linter, profile, rule string) (examined, error) {
	var e examined
	pair, err := ruleexample.Load(l.Examples(), rule)
	if err != nil {
		return e, err
	}
	for _, x := range []ruleexample.Example{pair.Breaks, pair.Meets} {
		r, err := forExample(l, x).Compute("example", []byte(x.Text))
		if err != nil {
			return e, err
		}
		if r.Facts != nil {
			e.documents = append(e.documents, &r.Facts.Document)
		}
	}
	o, err := l.RuleOptions(profile)
	if err != nil {
		return e, err
	}
	o.Only = []string{rule}
	pack, err := policy.Load(ctx, o)
	if err != nil {
		return e, err
	}
	e.found, err = e.judge(ctx, pack)
	return e, err
}

// judge lists what the one rule of a pack finds in the examples.
func (e examined) judge(ctx context.Context, pack *policy.Pack) ([]string, error) {
	var found []string
	for _, d := range e.documents {
		verdicts, err := pack.Judge(ctx, d)
		if err != nil {
			return nil, err
		}
		for _, v := range verdicts {
			for _, o := range v.Outcomes {
				line := o.Subject.Key + " " + string(o.State)
				if o.Grade != nil {
					line += " " + o.Grade.Name
				}
				found = append(found, line)
			}
		}
		found = append(found, "next")
	}
	return found, nil
}
