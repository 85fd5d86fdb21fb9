package rulekit

import (
	"context"
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/lint"
	"liftlint/internal/ruleexample"
	"liftlint/internal/source"
)

// Trial is how one example of a rule came out.
type Trial struct {
	Rule   string
	Kind   string // breaks or meets
	What   string // the example in words
	Faults []string
}

// Passed reports whether the example did what it is there for.
func (t Trial) Passed() bool { return len(t.Faults) == 0 }

// Examples puts both examples of a rule to all rules: the one that breaks it
// has to be found by it alone, at the places it names; in the one that meets it
// nothing may be found, and the rule has to have judged it. A rule without both
// has a trial that did not pass.
func Examples(ctx context.Context, l *lint.Linter, rule string) ([]Trial, error) {
	pair, err := ruleexample.Load(l.Examples(), rule)
	if err != nil {
		return []Trial{{Rule: rule, Kind: "examples", Faults: []string{err.Error()}}}, nil
	}
	breaks := Trial{Rule: rule, Kind: "breaks", What: pair.Breaks.What}
	meets := Trial{Rule: rule, Kind: "meets", What: pair.Meets.What}
	if err := breaks.run(ctx, l, pair.Breaks, breaks.found(pair.Breaks)); err != nil {
		return nil, err
	}
	if err := meets.run(ctx, l, pair.Meets, meets.met); err != nil {
		return nil, err
	}
	return []Trial{breaks, meets}, nil
}

func (t *Trial) fault(format string, args ...any) {
	t.Faults = append(t.Faults, fmt.Sprintf(format, args...))
}

func (t *Trial) run(ctx context.Context, l *lint.Linter, e ruleexample.Example, look func(*lint.Result)) error {
	if e.What == "" {
		t.fault("it says nothing of itself: give what")
	}
	r, err := forExample(l, e).Check(ctx, "example", []byte(e.Text))
	if err != nil {
		return err
	}
	if r.State != lint.Judged {
		for _, f := range r.Findings {
			t.fault("the plan is not valid: %s", f.Message)
		}
		return nil
	}
	look(r)
	return nil
}

// found wants findings of the rule alone, at the places given, and of the rules
// that the example says speak too.
func (t *Trial) found(e ruleexample.Example) func(*lint.Result) {
	return func(r *lint.Result) {
		var at []string
		spoke := map[string]bool{}
		for _, f := range r.Findings {
			switch {
			case f.Rule == t.Rule:
				at = append(at, pointerOf(f.Place))
			case slices.Contains(e.Also, f.Rule):
				spoke[f.Rule] = true
			default:
				t.fault("%s finds something in it too: %s", f.Rule, f.Message)
			}
		}
		if !slices.Equal(at, e.Finds) {
			t.fault("found at [%s], expected at [%s]", strings.Join(at, ", "), strings.Join(e.Finds, ", "))
		}
		for _, id := range e.Also {
			if !spoke[id] {
				t.fault("%s finds nothing in it, though it is named under also", id)
			}
		}
	}
}

// forExample is the linter at the stage of an example, with its register.
func forExample(l *lint.Linter, e ruleexample.Example) *lint.Linter {
	l = l.AtStage(e.Stage)
	if e.Register == "" {
		return l
	}
	return l.WithRegisters(lint.RegisterText(ruleexample.InRegister, e.Register))
}

// pointerOf is a place as examples name it.
func pointerOf(at source.Location) string {
	if at.File == ruleexample.InRegister {
		return ruleexample.InRegister + "#" + at.Pointer
	}
	return at.Pointer
}

// met wants no finding, and the rule to have judged something.
func (t *Trial) met(r *lint.Result) {
	for _, f := range r.Findings {
		t.fault("%s finds something in it: %s", f.Rule, f.Message)
	}
	i := slices.IndexFunc(r.Checked, func(c lint.Checked) bool { return c.Rule == t.Rule })
	if i < 0 || len(r.Checked[i].Met) == 0 {
		t.fault("the rule judges nothing in it")
	}
}
