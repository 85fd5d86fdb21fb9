package policy_test

import (
	"context"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"liftlint/internal/facts"
	"liftlint/internal/policy"
)

// TestRulesSeeAllThatTheyRead: of each lift that breaks a rule, and of one that
// breaks none, rules find the same whether they see all of the facts or what they
// read, and whether they are asked together or one by one.
func TestRulesSeeAllThatTheyRead(t *testing.T) {
	for _, name := range []string{"us", "eu"} {
		p := builtin(t, name)
		all := p.SeeingAll()
		changes := []func(*facts.Document){func(*facts.Document) {}}
		for _, b := range breaks() {
			changes = append(changes, b.change)
		}
		for i, change := range changes {
			d := level()
			change(d)
			want, err := all.Judge(context.Background(), d)
			if err != nil {
				t.Fatal(err)
			}
			for how, pack := range map[string]*policy.Pack{"as they are": p, "one by one": p.AskedApart()} {
				got, err := pack.Judge(context.Background(), d)
				if err != nil {
					t.Fatal(err)
				}
				if diff := cmp.Diff(want, got, cmpopts.IgnoreUnexported(facts.View{}, policy.Rule{}, policy.Grade{})); diff != "" {
					t.Errorf("%s, case %d, %s:\n%s", name, i, how, diff)
				}
			}
		}
	}
}
