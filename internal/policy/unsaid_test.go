package policy_test

import (
	"context"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/facts"
	"liftlint/internal/policy"
)

// ropeRule is a rule over ropes with what the case puts in it.
func ropeRule(more, body string) string {
	imports := ""
	if strings.Contains(body, " p.") {
		imports += "import data.params.angle.bad as p\n"
	}
	if strings.Contains(body, "lib.") {
		imports += "import data.liftlint.lib\n"
	}
	return `# METADATA
# title: t
# description: For this test.
# custom:
#   severity: error
#   over: ropes
` + more + `#   message: "{id}"
#   cite: [{document: company handbook, basis: company}]
package liftlint.rules.angle.bad

` + imports + `
finding contains rope.key if {
	some rope in input.ropes
` + body + "\n}\n"
}

// ropeOutcome puts a rule to one rope.
func ropeOutcome(t *testing.T, text string, rope facts.Rope) policy.Outcome {
	t.Helper()
	p, err := policy.Load(context.Background(), policy.Options{Sources: folder(map[string]string{"angle/bad/rule.rego": text})})
	if err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	d := level()
	rope.Key, rope.At = "rope/X", "#/gear/0"
	d.Ropes = []facts.Rope{rope}
	v := judge(t, p, d)["angle/bad"]
	if len(v.Outcomes) == 0 {
		return policy.Outcome{}
	}
	return v.Outcomes[0]
}

// TestAWordForUnknownIsNoValue: a rule that reads a field and does not ask for
// its word for unknown has not judged where that is the value.
func TestAWordForUnknownIsNoValue(t *testing.T) {
	unsaid := facts.Rope{Core: "not_given", Sleeves: []string{"steel", "not_given"}, EyeKinds: []string{"socket"}}
	for _, c := range []struct {
		name, more, body string
		state            policy.State
		missing          []string
	}{
		{"compared", "", `rope.core == "fiber"`, policy.NotJudged, []string{"core"}},
		{"not equal finds it", "", `rope.core != "iwrc"`, policy.Broken, nil},
		{"in a list", "", `rope.core in {"fiber"}`, policy.NotJudged, []string{"core"}},
		{"in a parameter", "#   params: {unwanted: [fiber]}\n", `rope.core in p.unwanted`, policy.NotJudged, []string{"core"}},
		{"the word in a parameter", "#   params: {unwanted: [fiber, not_given]}\n", `rope.core in p.unwanted; rope.tucked_splices`, policy.Met, nil},
		{"the word asked for", "", `rope.core in {"fiber", "not_given"}; rope.tucked_splices`, policy.Met, nil},
		{"in another body", "", "rope.core == \"fiber\"\n}\n\nfinding contains rope.key if {\n\tsome rope in input.ropes\n\trope.core == \"not_given\"\n\trope.tucked_splices", policy.Met, nil},
		{"of another field", "", `rope.core == "fiber"; "not_given" in rope.sleeves`, policy.NotJudged, []string{"core"}},
		{"a list that holds it", "", `"aluminum" in rope.sleeves`, policy.NotJudged, []string{"sleeves"}},
		{"a list without it", "", `"knotted" in rope.eye_kinds`, policy.Met, nil},
		{"given to the library", "#   params: {metals: [aluminum]}\n", `count(lib.shared(rope.sleeves, p.metals)) > 0`, policy.NotJudged, []string{"sleeves"}},
		{"the library given the word", "", `count(lib.shared(rope.sleeves, ["aluminum", "not_given"])) > 9`, policy.Met, nil},
		{"by way of a name", "", `core := rope.core; core == "fiber"`, policy.NotJudged, []string{"core"}},
		{"item by item", "", `some metal in rope.sleeves; metal == "aluminum"`, policy.NotJudged, []string{"sleeves"}},
		{"the word item by item", "", `some metal in rope.sleeves; metal in {"aluminum", "not_given"}; rope.tucked_splices`, policy.Met, nil},
		{"behind not", "", `not rope.core == "not_given"; rope.tucked_splices`, policy.Met, nil},
		{"gathered", "", `count([m | some m in rope.sleeves; m == "aluminum"]) > 0`, policy.NotJudged, []string{"sleeves"}},
		{"where names it", "#   where: {core: [fiber, not_given]}\n", `rope.core == "fiber"`, policy.Met, nil},
		{"where leaves it out", "#   where: {core: [fiber, iwrc]}\n", `rope.core == "fiber"`, "", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			o := ropeOutcome(t, ropeRule(c.more, "\t"+c.body), unsaid)
			if diff := cmp.Diff(c.missing, o.Missing); o.State != c.state || diff != "" {
				t.Errorf("%s %s", o.State, diff)
			}
		})
	}
}

// TestWhatIsBrokenStaysSo: a finding stands, whatever else is unsaid.
func TestWhatIsBrokenStaysSo(t *testing.T) {
	rule := ropeRule("", "\t\"aluminum\" in rope.sleeves")
	if o := ropeOutcome(t, rule, facts.Rope{Core: "iwrc", Sleeves: []string{"aluminum", "not_given"}}); o.State != policy.Broken {
		t.Errorf("%s", o.State)
	}
	if o := ropeOutcome(t, rule, facts.Rope{Core: "not_given", Sleeves: []string{"steel"}}); o.State != policy.Met {
		t.Errorf("a field that the rule does not read: %s", o.State)
	}
}

// TestNestedWordForUnknown: the same of a field of a nested record.
func TestNestedWordForUnknown(t *testing.T) {
	d := level()
	d.Gear[0].Tag.State = "not_recorded"
	text := `# METADATA
# title: t
# description: For this test.
# custom:
#   severity: error
#   over: gear
#   message: "{id}"
#   cite: [{document: company handbook, basis: company}]
package liftlint.rules.angle.bad

finding contains item.key if {
	some item in input.gear
	item.tag.state == "missing"
}
`
	p, err := policy.Load(context.Background(), policy.Options{Sources: folder(map[string]string{"angle/bad/rule.rego": text})})
	if err != nil {
		t.Fatal(err)
	}
	o := judge(t, p, d)["angle/bad"].Outcomes
	if o[0].State != policy.NotJudged || !cmp.Equal(o[0].Missing, []string{"tag.state"}) || o[1].State != policy.Met {
		t.Errorf("%s %v, %s", o[0].State, o[0].Missing, o[1].State)
	}
}
