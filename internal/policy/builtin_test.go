package policy_test

import (
	"context"
	"testing"

	"liftlint/internal/policy"
	"liftlint/policies"
)

func sources() []policy.Source {
	return []policy.Source{{Root: "policies", Files: policies.Rules()}}
}

func profile(t testing.TB, name string) policy.Profile {
	t.Helper()
	files, err := policies.Profiles()
	if err != nil {
		t.Fatal(err)
	}
	p, err := policy.LoadProfile(files, name)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func builtin(t testing.TB, name string) *policy.Pack {
	t.Helper()
	p, err := policy.Load(context.Background(), policy.Options{Sources: sources(), Profile: profile(t, name)})
	if err != nil {
		t.Fatalf("\n%v", err)
	}
	return p
}

func TestBuiltinRulesPassTheirOwnTests(t *testing.T) {
	results, err := policy.Test(context.Background(), policy.Options{Sources: sources(), Profile: profile(t, "us")})
	if err != nil {
		t.Fatalf("\n%v", err)
	}
	byRule := map[string]int{}
	for _, r := range results {
		byRule[r.Rule]++
		if !r.Passed {
			t.Errorf("%s:%d: %s of %s failed %s", r.File, r.Line, r.Name, r.Rule, r.Reason)
		}
	}
	for _, r := range builtin(t, "us").Rules() {
		if byRule[r.ID] < 2 {
			t.Errorf("%s: %d tests ran", r.ID, byRule[r.ID])
		}
	}
	if len(results) < 50 {
		t.Errorf("only %d tests ran", len(results))
	}
}
