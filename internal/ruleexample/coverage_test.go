package ruleexample_test

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/goccy/go-yaml"

	"liftlint/internal/builtin"
	"liftlint/internal/lint"
)

// group is one group of checks as policies/coverage.yaml lists them.
type group struct {
	Group  string `yaml:"group"`
	Checks []struct {
		What string   `yaml:"what"`
		By   []string `yaml:"by"`
	} `yaml:"checks"`
}

// TestCoverage: every rule that a line claims exists, and so has examples of
// its own; every rule stands in some line; and COVERAGE.md says the same. Set
// LIFTLINT_UPDATE=1 to write it anew.
func TestCoverage(t *testing.T) {
	const folder = "../../policies/"
	text, err := os.ReadFile(folder + "coverage.yaml")
	if err != nil {
		t.Fatal(err)
	}
	var groups []group
	if err := yaml.UnmarshalWithOptions(text, &groups, yaml.Strict()); err != nil {
		t.Fatal(err)
	}
	rules := ruleIDs(t)
	claimed := map[string]bool{}
	for _, g := range groups {
		for _, c := range g.Checks {
			for _, id := range c.By {
				claimed[id] = true
				if _, known := builtin.Lookup(id); !known && !slices.Contains(rules, id) {
					t.Errorf("%q is claimed to be checked by %s, which does not exist", c.What, id)
				}
			}
		}
	}
	for _, id := range rules {
		if !claimed[id] {
			t.Errorf("no line of coverage.yaml names %s", id)
		}
	}
	compare(t, folder+"COVERAGE.md", page(groups))
}

func ruleIDs(t *testing.T) []string {
	t.Helper()
	l, err := lint.New(lint.Options{Stage: "review"})
	if err != nil {
		t.Fatal(err)
	}
	rules, err := l.Rules("us")
	if err != nil {
		t.Fatal(err)
	}
	var ids []string
	for _, r := range rules {
		ids = append(ids, r.ID)
	}
	return ids
}

func page(groups []group) string {
	var b strings.Builder
	b.WriteString("# What is checked, and what is still open\n\nMade from coverage.yaml; a test compares. Each rule has a plan that breaks it and one\nthat meets it beside it, and finds nothing else in them.\n")
	done, all := 0, 0
	var tables strings.Builder
	for _, g := range groups {
		fmt.Fprintf(&tables, "\n## %s\n\n| check | by |\n|---|---|\n", g.Group)
		for _, c := range g.Checks {
			all++
			by := "open"
			if len(c.By) > 0 {
				done++
				by = "`" + strings.Join(c.By, "`, `") + "`"
			}
			fmt.Fprintf(&tables, "| %s | %s |\n", c.What, by)
		}
	}
	fmt.Fprintf(&b, "\n%d of %d lines are covered.\n%s", done, all, tables.String())
	return b.String()
}

func compare(t *testing.T, file, want string) {
	t.Helper()
	if os.Getenv("LIFTLINT_UPDATE") == "1" {
		if err := os.WriteFile(file, []byte(want), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if got, err := os.ReadFile(file); err != nil || string(got) != want {
		t.Errorf("%s is not what coverage.yaml says: set LIFTLINT_UPDATE=1 to write it anew", file)
	}
}
