package policy_test

import (
	"context"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/policy"
)

// whereTrial judges long gear of two kinds that is used.
func whereTrial(where string) string {
	return strings.Replace(trial("try", "", "item.length_m > 2"), "#   over: gear\n", "#   over: gear\n"+where, 1)
}

const (
	whereLines = "#   where:\n#     kind: [hook, bridle]\n#     uses: {at_least: 1}\n"
	whereFlow  = "#   where: {kind: [hook, bridle], uses: {at_least: 1}}\n"
	whereTests = `package liftlint.rules.own.try_test

import data.liftlint.rules.own.try.finding

item(kind, uses, length) := {"gear": [{"key": "gear/X", "kind": kind, "uses": uses, "length_m": length}]}

test_breaks if finding == {"gear/X"} with input as item("hook", 1, 2.01)

test_meets_at_the_limit if finding == set() with input as item("hook", 1, 2)
`
)

// TestWhereIsTakenOut: each condition of where is a change that a record it
// drops tells, however it is written.
func TestWhereIsTakenOut(t *testing.T) {
	const kind, uses = "where kind hook or bridle was taken out", "where uses at least 1 was taken out"
	for _, c := range []struct {
		where, tests string
		want         []string
	}{
		{whereLines, "", []string{kind, uses}},
		{whereFlow, "", []string{kind, uses}},
		{whereFlow, "\ntest_other_kind if finding == set() with input as item(\"shackle\", 1, 3)\n", []string{uses}},
		{whereLines, "\ntest_not_used if finding == set() with input as item(\"hook\", 0, 3)\n", []string{kind}},
		{whereFlow, "\ntest_other_kind if finding == set() with input as item(\"shackle\", 1, 3)\n\ntest_not_used if finding == set() with input as item(\"hook\", 0, 3)\n", nil},
	} {
		var got []string
		for _, w := range whats(mutate(t, own(whereTrial(c.where), whereTests+c.tests), nil)[0]) {
			if strings.HasPrefix(w, "where ") {
				got = append(got, w)
			}
		}
		if diff := cmp.Diff(c.want, got); diff != "" {
			t.Errorf("%s%s", c.where, diff)
		}
	}
}

// TestWhereIsTakenOutForTheCallbackToo: what alive loads lacks the condition as
// well, so that examples can tell it.
func TestWhereIsTakenOutForTheCallbackToo(t *testing.T) {
	told := map[string]int{}
	mutate(t, own(whereTrial(whereLines), whereTests), func(ctx context.Context, m policy.Mutant, o policy.Options) (bool, error) {
		p, err := policy.Load(ctx, o)
		if err != nil {
			return false, err
		}
		told[m.What] = len(p.Rules()[0].Where)
		return true, nil
	})
	if told["where kind hook or bridle was taken out"] != 1 || told["where uses at least 1 was taken out"] != 1 {
		t.Errorf("%v", told)
	}
}
