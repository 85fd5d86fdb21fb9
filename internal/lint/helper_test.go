package lint_test

import (
	"context"
	"os"
	"strings"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

func example(t testing.TB, name string) string {
	t.Helper()
	text, err := os.ReadFile("../../examples/" + name + ".lift.yaml")
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// changed replaces parts of a plan: old, new, old, new ...
func changed(t testing.TB, text string, pairs ...string) string {
	t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		if !strings.Contains(text, pairs[i]) {
			t.Fatalf("the plan has no %q", pairs[i])
		}
		text = strings.Replace(text, pairs[i], pairs[i+1], 1)
	}
	return text
}

func linter(t testing.TB, o lint.Options) *lint.Linter {
	t.Helper()
	if o.Stage == "" {
		o.Stage = "review"
	}
	l, err := lint.New(o)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func check(t testing.TB, l *lint.Linter, text string) *lint.Result {
	t.Helper()
	r, err := l.Check(context.Background(), "plan.lift.yaml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// of picks the findings of one rule.
func of(r *lint.Result, rule string) []finding.Finding {
	var list []finding.Finding
	for _, f := range r.Findings {
		if f.Rule == rule {
			list = append(list, f)
		}
	}
	return list
}

// rules lists the rule of each finding, in order.
func rules(r *lint.Result) string {
	var list []string
	for _, f := range r.Findings {
		list = append(list, f.Rule)
	}
	return strings.Join(list, " ")
}
