package policy_test

import (
	"context"
	"strings"
	"testing"
	"testing/fstest"

	"liftlint/internal/policy"
)

func loadFiles(files map[string]string) error {
	_, err := policy.Load(context.Background(), policy.Options{Sources: folder(files)})
	return err
}

// named is the quick rule under another id.
func named(topic, name string) string {
	return strings.ReplaceAll(quick, "angle.quick", topic+"."+name)
}

func TestProblemsOfAPack(t *testing.T) {
	former := func(text, ids string) string {
		return strings.Replace(text, "#   over: legs", "#   over: legs\n#   former_ids: "+ids, 1)
	}
	for _, c := range []struct {
		name  string
		files map[string]string
		want  []string
	}{
		{"nothing to judge by", nil, []string{"there are no rules to judge by"}},
		{"a misnamed file", map[string]string{"angle/quick/rules.rego": quick, "angle/quick.rego": quick}, []string{
			"angle/quick.rego: a rule stands in TOPIC/RULE/rule.rego and its tests in rule_test.rego beside it; this file is neither",
			"angle/quick/rules.rego: a rule stands in TOPIC/RULE/rule.rego and its tests in rule_test.rego beside it; this file is neither",
		}},
		{"tests without a rule", map[string]string{"angle/quick/rule_test.rego": "package x"}, []string{
			"angle/quick/rule_test.rego:1:1: there is no rule.rego beside these tests",
		}},
		{"a former id that lives", map[string]string{"angle/quick/rule.rego": quick, "angle/other/rule.rego": former(named("angle", "other"), "[angle/quick]")}, []string{
			"angle/other/rule.rego:1:1: former id angle/quick of angle/other is a rule of its own",
		}},
		{"a former id claimed twice", map[string]string{
			"angle/quick/rule.rego": former(quick, "[angle/old]"), "angle/other/rule.rego": former(named("angle", "other"), "[angle/old]"),
		}, []string{"angle/quick/rule.rego:1:1: former id angle/old is claimed by angle/other too"}},
		{"a rule that is too large", map[string]string{"angle/quick/rule.rego": quick + strings.Repeat("#\n", 40000)}, []string{
			"angle/quick/rule.rego: the file is larger than a rule may be",
		}},
		{"all at once, in order", map[string]string{
			"angle/quick/rule.rego": strings.Replace(quick, "leg.slack", "leg.slak", 1),
			"angle/bad/rule.rego":   "package",
			"tag/bad/rule.rego":     strings.Replace(named("tag", "bad"), "over: legs", "ovr: legs", 1),
		}, []string{
			"angle/bad/rule.rego:1:7: unexpected eof token",
			`angle/quick/rule.rego:13:2: leg.slak: "slak" is no field of legs: did you mean "slack"?`,
			`tag/bad/rule.rego:6:5: "ovr" is no key here: did you mean "over"?`,
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			err := loadFiles(c.files)
			if err == nil {
				t.Fatal("it loads")
			}
			lines := strings.Split(err.Error(), "\n")
			if len(lines) != len(c.want) {
				t.Fatalf("got %d problems\n%v", len(lines), err)
			}
			for i, w := range c.want {
				if !strings.HasPrefix(lines[i], w) {
					t.Errorf("got  %s\nwant %s", lines[i], w)
				}
			}
		})
	}
}

func TestTheSameRuleInTwoFolders(t *testing.T) {
	one := fstest.MapFS{"angle/quick/rule.rego": &fstest.MapFile{Data: []byte(quick)}}
	_, err := policy.Load(context.Background(), policy.Options{Sources: []policy.Source{{Root: "ours", Files: one}, {Root: "theirs", Files: one}}})
	if want := "theirs/angle/quick/rule.rego:1:1: rule angle/quick stands in ours/angle/quick/rule.rego already"; err == nil || err.Error() != want {
		t.Errorf("got %v\nwant %s", err, want)
	}
}

// One company folder beside the built-in one.
func TestRulesOfTwoFolders(t *testing.T) {
	own := policy.Source{Root: "company", Files: fstest.MapFS{"company/quick/rule.rego": &fstest.MapFile{Data: []byte(named("company", "quick"))}}}
	p, err := policy.Load(context.Background(), policy.Options{Sources: append(sources(), own), Profile: profile(t, "us")})
	if err != nil {
		t.Fatal(err)
	}
	if _, ok := p.Rule("company/quick"); !ok || len(p.Rules()) != len(builtin(t, "us").Rules())+1 {
		t.Errorf("%d rules", len(p.Rules()))
	}
	if _, ok := p.Rule("company/slow"); ok {
		t.Error("a rule that there is not was found")
	}
}

func TestGates(t *testing.T) {
	gated := strings.Replace(quick, "#   over: legs", "#   over: legs\n#   stages: [prelift]\n#   when: {legs: {at_least: 4, at_most: 8}, category: [routine]}", 1)
	p, err := policy.Load(context.Background(), policy.Options{Sources: folder(map[string]string{"angle/quick/rule.rego": gated})})
	if err != nil {
		t.Fatal(err)
	}
	d := level()
	for _, c := range []struct {
		stage, category string
		legs            int
		want            string
	}{
		{"review", "routine", 4, "not asked at stage review"},
		{"prelift", "routine", 4, ""},
		{"prelift", "routine", 3, "only where the lift's legs at least 4 and at most 8"},
		{"prelift", "routine", 9, "only where the lift's legs at least 4 and at most 8"},
		{"prelift", "critical", 4, "only where the lift's category routine"},
	} {
		d.Lifts[0].Stage, d.Lifts[0].Category, d.Lifts[0].Legs = c.stage, c.category, c.legs
		if v := judge(t, p, d)["angle/quick"]; v.DoesNotApply != c.want || (c.want == "") != (len(v.Outcomes) == 4) {
			t.Errorf("%+v: %q, %d outcomes", c, v.DoesNotApply, len(v.Outcomes))
		}
	}
	d.Lifts[0] = level().Lifts[0]
	d.Lifts[0].Stage = "prelift"
	d.Legs = nil
	if v := judge(t, p, d)["angle/quick"]; v.DoesNotApply != "there are no legs" {
		t.Errorf("%q", v.DoesNotApply)
	}
}
