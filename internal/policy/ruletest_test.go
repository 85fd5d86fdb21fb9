package policy_test

import (
	"context"
	"strings"
	"testing"

	"liftlint/internal/policy"
)

const quickTests = `package liftlint.rules.angle.quick_test

import data.liftlint.rules.angle.quick.finding

test_breaks if finding == {"leg/1"} with input as {"legs": [{"key": "leg/1", "slack": true}]}

test_meets if finding == set() with input as {"legs": [{"key": "leg/1", "slack": false}]}
`

func runTests(t *testing.T, rule, tests string) ([]policy.TestResult, error) {
	t.Helper()
	files := map[string]string{"angle/quick/rule.rego": rule}
	if tests != "" {
		files["angle/quick/rule_test.rego"] = tests
	}
	return policy.Test(context.Background(), policy.Options{Sources: folder(files)})
}

func TestTestsThatPassAndFail(t *testing.T) {
	results, err := runTests(t, quick, quickTests)
	if err != nil || len(results) != 2 || !results[0].Passed || !results[1].Passed {
		t.Fatalf("%+v %v", results, err)
	}
	results, err = runTests(t, strings.Replace(quick, "== true", "== false", 1), quickTests)
	if err != nil || len(results) != 2 || results[0].Passed || results[1].Passed {
		t.Fatalf("a rule turned round passes: %+v %v", results, err)
	}
	want := policy.TestResult{Rule: "angle/quick", Name: "test_breaks", File: "angle/quick/rule_test.rego", Line: 5}
	if results[0] != want {
		t.Errorf("got %+v, want %+v", results[0], want)
	}
	skipped := quickTests + "\ntodo_test_later if finding == set()\n"
	results, err = runTests(t, quick, skipped)
	if err != nil || len(results) != 3 || results[2].Passed || results[2].Reason == "" {
		t.Errorf("a skipped test counts as passed: %+v %v", results, err)
	}
}

func TestTestsThatAreWrong(t *testing.T) {
	for _, c := range []struct{ name, tests, want string }{
		{"none", "", "angle/quick/rule.rego:1:1: the rule has no rule_test.rego beside it"},
		{"none that breaks", strings.Replace(quickTests, "test_breaks", "test_a", 1), "angle/quick/rule_test.rego:1:1: there is no test named test_breaks..."},
		{"none that meets", strings.Replace(quickTests, "test_meets", "test_b", 1), "angle/quick/rule_test.rego:1:1: there is no test named test_meets..."},
		{"misspelt fact", strings.Replace(quickTests, `"slack": false`, `"slak": false`, 1), `angle/quick/rule_test.rego:7:73: "slak" is no field of legs: did you mean "slack"?`},
		{"package", strings.Replace(quickTests, "quick_test", "quick", 1), "angle/quick/rule_test.rego:1:1: the package is liftlint.rules.angle.quick, and its folder says liftlint.rules.angle.quick_test"},
		{"syntax", quickTests + "test_x if {", "angle/quick/rule_test.rego:8:"},
		{"unknown name", quickTests + "\ntest_x if nowhere == 3\n", "angle/quick/rule_test.rego:9:11: var nowhere is unsafe"},
		{"network", quickTests + "\ntest_x if http.send({}) == 3\n", "angle/quick/rule_test.rego:9:11: undefined function http.send"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := runTests(t, quick, c.tests)
			if err == nil || !strings.HasPrefix(err.Error(), c.want) {
				t.Errorf("got  %v\nwant %s", err, c.want)
			}
		})
	}
}
