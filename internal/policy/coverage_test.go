package policy_test

import (
	"context"
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/policy"
)

func TestCover(t *testing.T) {
	loop := "lacking := [f |\n\tsome f in item.tag.shows\n\tnot f in p.wanted\n]\ncount(lacking) > 0"
	for _, c := range []struct {
		name, params, body string
		tests              []string
		want               policy.RuleCoverage
	}{
		{"all of it", "", "item.uses > 2\nitem.in_bridle == true",
			[]string{`breaks "uses": 3, "in_bridle": true`},
			policy.RuleCoverage{Covered: 3, Expressions: 3}},
		{"never found", "", "item.uses > 2\nitem.in_bridle == true",
			[]string{`meets "uses": 3, "in_bridle": false`},
			policy.RuleCoverage{Covered: 2, Expressions: 3, NotCovered: []int{13}}},
		{"the first condition alone", "", "item.uses > 2\nitem.in_bridle == true",
			[]string{`meets "uses": 2, "in_bridle": true`},
			policy.RuleCoverage{Covered: 1, Expressions: 3, NotCovered: []int{13, 16}}},
		{"an absent fact", "", "item.length_m > 2\nitem.in_bridle == true",
			[]string{`meets "in_bridle": true`}, // it is not compared with anything
			policy.RuleCoverage{Covered: 0, Expressions: 3, NotCovered: []int{13, 15, 16}}},
		{"two on one line", "", "item.uses > 2; item.in_bridle == true; item.id == \"S1\"",
			[]string{`meets "uses": 2`},
			policy.RuleCoverage{Covered: 1, Expressions: 4, NotCovered: []int{13, 15}}},
		{"within a comprehension", "wanted: [maker]", loop,
			[]string{`breaks "tag": {"shows": ["serial"]}`},
			policy.RuleCoverage{Covered: 4, Expressions: 4}},
		{"a comprehension over nothing", "wanted: [maker]", loop,
			[]string{`meets "tag": {"shows": []}`},
			policy.RuleCoverage{Covered: 2, Expressions: 4, NotCovered: []int{15, 19}}},
		{"nothing", "", "item.uses > 2", nil,
			policy.RuleCoverage{Covered: 0, Expressions: 2, NotCovered: []int{13, 15}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			tests := trialTests("try", c.tests) + "\ntest_breaks if true\n"
			got, err := policy.Cover(context.Background(), own(trial("try", c.params, c.body), tests))
			if err != nil || len(got) != 1 {
				t.Fatalf("%+v %v", got, err)
			}
			c.want.Rule = "own/try"
			if diff := cmp.Diff(c.want, got[0]); diff != "" {
				t.Error(diff)
			}
		})
	}
}

func TestShare(t *testing.T) {
	for _, c := range []struct {
		c    policy.RuleCoverage
		want float64
	}{
		{policy.RuleCoverage{Covered: 3, Expressions: 4}, 0.75},
		{policy.RuleCoverage{Covered: 4, Expressions: 4}, 1},
		{policy.RuleCoverage{}, 0},
	} {
		if got := c.c.Share(); got != c.want {
			t.Errorf("%+v: %v, want %v", c.c, got, c.want)
		}
	}
}

// The conditions of where are no part of the text: what they drop is not
// reached.
func TestCoverUnderWhere(t *testing.T) {
	rule := trial("try", "", "item.uses > 2")
	where := "#   over: gear\n#   where: {in_bridle: [true]}\n"
	o := own(strings.Replace(rule, "#   over: gear\n", where, 1), trialTests("try", []string{`meets "uses": 3, "in_bridle": false`})+"\ntest_breaks if true\n")
	got, err := policy.Cover(context.Background(), o)
	if err != nil || !cmp.Equal(got, []policy.RuleCoverage{{Rule: "own/try", Covered: 1, Expressions: 2, NotCovered: []int{14}}}) {
		t.Errorf("%+v %v", got, err)
	}
}

// A rule is not reached by the tests of another, and those that are off are
// left out.
func TestCoverIsByRule(t *testing.T) {
	files := map[string]string{}
	for _, name := range []string{"b", "a", "c"} {
		files["own/"+name+"/rule.rego"], files["own/"+name+"/rule_test.rego"] = farRule(name)
	}
	files["own/b/rule_test.rego"] = blind("b") + "\ntest_other if data.liftlint.rules.own.a.finding with input as {\"gear\": [{\"key\": \"gear/S1\", \"length_m\": 9}]}\n"
	files["own/a/rule_test.rego"] = blind("a")
	o := policy.Options{Sources: folder(files)}
	o.Profile.Rules = map[string]policy.Setting{"own/c": {Off: "not here"}}
	want := []policy.RuleCoverage{
		{Rule: "own/a", Expressions: 2, NotCovered: []int{15, 17}},
		{Rule: "own/b", Expressions: 2, NotCovered: []int{15, 17}},
	}
	if got, err := policy.Cover(context.Background(), o); err != nil || !cmp.Equal(got, want) {
		t.Errorf("%+v %v", got, err)
	}
}

func TestCoverOfWhatIsWrong(t *testing.T) {
	var ps policy.Problems
	for _, o := range []policy.Options{{}, own(trial("try", "", "item.uses > 2"), "package x"), own("package x", blind("try"))} {
		if got, err := policy.Cover(context.Background(), o); got != nil || !errors.As(err, &ps) {
			t.Errorf("%+v %v", got, err)
		}
	}
}
