package rulepage

import (
	"context"
	"errors"
	"fmt"
	"strings"

	"liftlint/internal/lint"
	"liftlint/internal/ruleexample"
)

// Example is one of a rule's two plans, with what is said of it.
type Example struct {
	Kind string   `json:"kind" enum:"breaks,meets" doc:"Whether it breaks the rule or meets it."`
	What string   `json:"what" doc:"The example in words."`
	Set  []Change `json:"set" doc:"What differs from a plan without faults."`
	Says []string `json:"says" doc:"What the rule says of it: nothing, where it is met."`
}

// Change is a value that an example sets.
type Change struct {
	At string `json:"at" doc:"JSON pointer of the value."`
	To string `json:"to" doc:"What is written there."`
}

// examplesOf puts the rule to its two examples. A rule without
// examples has none here.
func examplesOf(l *lint.Linter, rule string) ([]Example, error) {
	pair, err := ruleexample.Load(l.Examples(), rule)
	if errors.Is(err, ruleexample.ErrNone) {
		return []Example{}, nil
	}
	if err != nil {
		return nil, err
	}
	list := []Example{{Kind: "breaks"}, {Kind: "meets"}}
	for i, e := range []ruleexample.Example{pair.Breaks, pair.Meets} {
		if err := list[i].fill(l, rule, e); err != nil {
			return nil, err
		}
	}
	return list, nil
}

func (x *Example) fill(l *lint.Linter, rule string, e ruleexample.Example) error {
	x.What, x.Set, x.Says = e.What, []Change{}, []string{}
	for _, c := range e.Set {
		x.Set = append(x.Set, Change(c))
	}
	l = l.AtStage(e.Stage)
	if e.Register != "" {
		l = l.WithRegisters(lint.RegisterText(ruleexample.InRegister, e.Register))
	}
	r, err := l.Check(context.Background(), "example", []byte(e.Text))
	if err != nil {
		return err
	}
	for _, f := range r.Findings {
		if f.Rule == rule {
			x.Says = append(x.Says, fmt.Sprintf("%s: %s", f.Severity, f.Message))
		}
	}
	return nil
}

// text shows the example: what it is, what is written, what is said of it.
func (x Example) text() string {
	var b strings.Builder
	if x.Kind == "breaks" {
		fmt.Fprintln(&b, wrap("Broken by "+x.What+":", ""))
	} else {
		fmt.Fprintln(&b, wrap("Met by "+x.What+".", ""))
	}
	for _, c := range x.Set {
		fmt.Fprintf(&b, "  %s: %s\n", c.At, c.To)
	}
	for _, s := range x.Says {
		fmt.Fprintln(&b, wrap(s, "  "))
	}
	return b.String()
}
