package rulepage_test

import (
	"os"
	"path/filepath"
	"testing"

	"liftlint/internal/lint"
	"liftlint/internal/rulepage"
)

const policies = "../../policies"

// TestPages compares the page beside each rule, and the index, with what is to
// stand there: METADATA, and the examples with what is said of them now. Set
// LIFTLINT_UPDATE=1 to write them anew.
func TestPages(t *testing.T) {
	l, err := lint.New(lint.Options{Stage: "review"})
	if err != nil {
		t.Fatal(err)
	}
	profiles, err := lint.ProfileNames()
	if err != nil {
		t.Fatal(err)
	}
	rules, err := l.Rules(l.Profile())
	if err != nil {
		t.Fatal(err)
	}
	wanted := map[string]bool{}
	var pages []rulepage.Page
	for _, r := range rules {
		p, err := rulepage.Build(l, rulepage.Options{Profiles: profiles, Stage: "review"}, r.ID)
		if err != nil {
			t.Fatal(err)
		}
		pages = append(pages, p)
		file := filepath.Join(policies, filepath.FromSlash(r.ID), "README.md")
		wanted[file] = true
		compare(t, file, p.Markdown())
	}
	compare(t, filepath.Join(policies, "README.md"), rulepage.Index(pages, "Made from the rules; a test compares. COVERAGE.md lists what else a lift plan deserves."))
	there, err := filepath.Glob(policies + "/*/*/README.md")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range there {
		if !wanted[file] {
			t.Errorf("%s is the page of no rule", file)
		}
	}
}

func compare(t *testing.T, file, want string) {
	t.Helper()
	if os.Getenv("LIFTLINT_UPDATE") == "1" {
		if err := os.WriteFile(file, []byte(want), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if got, err := os.ReadFile(file); err != nil || string(got) != want {
		t.Errorf("%s is stale: set LIFTLINT_UPDATE=1 to write it anew", file)
	}
}
