package policy_test

import (
	"context"
	"errors"
	"strings"
	"testing"
	"testing/fstest"

	"liftlint/internal/finding"
	"liftlint/internal/policy"
	"liftlint/policies"
)

// The figures and where they come from; see each profile's citations.
func TestBuiltinProfiles(t *testing.T) {
	us, eu := profile(t, "us"), profile(t, "eu")
	// OSHA's guidance on safe sling use, Table 1, counts three legs of four;
	// DGUV 100-500 two of an uneven three- or four-leg sling.
	if us.RigidSplit.Decides != "three_legs" || eu.RigidSplit.Decides != "two_legs" {
		t.Errorf("rigid split: us %s, eu %s", us.RigidSplit.Decides, eu.RigidSplit.Decides)
	}
	for _, c := range []struct {
		p             policy.Profile
		kind, service string
		months        int // 0 where the profile gives none
	}{
		{us, "wire_rope_sling", "normal", 12}, // ASME B30.9: at most a year
		{us, "wire_rope_sling", "severe", 3},  // ASME B30.9: monthly to quarterly
		{us, "wire_rope_sling", "special", 0}, // ASME B30.9: as advised
		{us, "chain_sling", "normal", 12},     // 29 CFR 1926.251(b)(6): at most 12 months
		{us, "web_sling", "normal", 12},       // ASME B30.9: at most a year
		{us, "web_sling", "severe", 3},        // ASME B30.9: monthly to quarterly
		{us, "shackle", "normal", 12},
		{us, "anchor", "normal", 0},
		{eu, "wire_rope_sling", "normal", 12}, // DGUV: yearly
		{eu, "master_link", "severe", 0},
	} {
		months, ok := c.p.IntervalMonths(c.kind, c.service)
		if months != c.months || ok != (c.months > 0) {
			t.Errorf("%s: %s in %s service: %d %v, want %d", c.p.Name, c.kind, c.service, months, ok, c.months)
		}
	}
	for _, p := range []policy.Profile{us, eu} {
		for _, cite := range append(p.RigidSplit.Citations, citations(p)...) {
			if cite.Document == "" || cite.Basis == "" {
				t.Errorf("%s: %+v", p.Name, cite)
			}
		}
	}
}

func citations(p policy.Profile) []finding.Citation {
	var out []finding.Citation
	for _, i := range p.Intervals {
		out = append(out, i.Citations...)
	}
	return out
}

func TestUnknownProfile(t *testing.T) {
	files, err := policies.Profiles()
	if err != nil {
		t.Fatal(err)
	}
	if _, err := policy.LoadProfile(files, "uss"); err == nil || err.Error() != `there is no profile "uss": there is eu, us` {
		t.Errorf("got %v", err)
	}
	if _, err := policy.LoadProfile(files, "antarctica"); err == nil || err.Error() != `there is no profile "antarctica": there is eu, us` {
		t.Errorf("got %v", err)
	}
	if _, err := policy.LoadProfile(fstest.MapFS{}, "us"); err == nil {
		t.Error("a profile out of nothing")
	}
}

const plainProfile = `name: own
title: Our practice
rigid_split: {decides: two_legs, cite: [{document: ours, basis: company}]}
inspection_intervals:
  - {kinds: [shackle], service: normal, months: 6, cite: [{document: ours, basis: company}]}
`

// ratesBridles stands at the end, where it moves no line that tests name.
const ratesBridles = "\nbridle_rating: {by: by_angle, cite: [{document: ours, basis: company}]}\n"

func readProfile(text string) (policy.Profile, error) {
	if text != "" {
		text += ratesBridles
	}
	return policy.ReadProfile("own.yaml", "own", []byte(text))
}

func TestProfilesThatAreWrong(t *testing.T) {
	for _, c := range []struct{ name, from, to, want string }{
		{"unknown key", "title:", "titles:", `own.yaml:2:1: "titles" is no key here`},
		{"decides", "two_legs", "five_legs", `own.yaml:3:15: decides: "five_legs" is none of `},
		{"decides by number", "two_legs", "2", "own.yaml:3:15: decides: "},
		{"no citation", ", cite: [{document: ours, basis: company}]}\ninsp", "}\ninsp", `own.yaml:3:1: "cite" is missing`},
		{"basis", "basis: company}]}\ninsp", "basis: hunch}]}\ninsp", `own.yaml:3:58: basis: "hunch" is none of read, memory, practice, company`},
		{"kind of gear", "[shackle]", "[shackel]", `own.yaml:5:14: "shackel" is no kind of gear: did you mean "shackle"?`},
		{"twice", "[shackle]", "[shackle, shackle]", "own.yaml:5:6: kinds: "},
		{"two documents", "title: Our practice", "---\ntitle: Our practice", "own.yaml:1:1: one YAML document is wanted here, found 2"},
		{"empty", plainProfile, "", "own.yaml:1:1: this file is empty"},
		{"name", "name: own", "name: another", `own.yaml:1:1: the profile's name is "another", and its file is own.yaml`},
		{"alias", "name: own", "name: &n own", "own.yaml:1:7: Anchor"},
		{"infinity", "months: 6", "months: .inf", "own.yaml:5:49: Infinity"},
		{"deep", "name: own", "name: " + strings.Repeat("[", 5000), "own.yaml:1:1: this YAML is nested too deep"},
		{"list for a rule", "title: Our practice", "title: Our practice\nrules: {angle/quick: [3]}", "own.yaml:3:9: angle/quick: want a mapping, found a list"},
		{"form of a rule's id", "title: Our practice", "title: Our practice\nrules: {Angle: {off: x}}", `own.yaml:3:9: "Angle": lower case letters`},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := strings.Replace(plainProfile, c.from, c.to, 1)
			_, err := readProfile(text)
			var ps policy.Problems
			if !errors.As(err, &ps) || len(ps) != 1 || !strings.HasPrefix(err.Error(), c.want) {
				t.Errorf("got  %v\nwant %s", err, c.want)
			}
		})
	}
	if _, err := readProfile(plainProfile); err != nil {
		t.Error(err)
	}
}

func loadWith(t *testing.T, rules string) (*policy.Pack, error) {
	t.Helper()
	p, err := readProfile(plainProfile + rules)
	if err != nil {
		t.Fatal(err)
	}
	return policy.Load(context.Background(), policy.Options{Sources: sources(), Profile: p})
}

func TestWhatAProfileSets(t *testing.T) {
	p, err := loadWith(t, `rules:
  angle/leg_too_flat: {params: {error_deg: 35}, grades: {flat: error}}
  route/gear_unused: {severity: {draft: note, review: warning, prelift: error}}
  route/attachment_unused: {off: our lugs are welded on for good}
`)
	if err != nil {
		t.Fatal(err)
	}
	d := level()
	d.Legs[0].AngleFromHorizontalDeg = ptr(34.0)
	d.Attachments[0].Legs = 0
	got := judge(t, p, d)
	angle, idle, unused := got["angle/leg_too_flat"], got["route/gear_unused"], got["route/attachment_unused"]
	if o := angle.Outcomes[0]; o.Grade == nil || o.Grade.Name != "too_flat" {
		t.Errorf("angle: %+v", o)
	}
	if _, limit, ok := angle.Rule.LimitOf(angle.Outcomes[0]); !ok || limit != 35 {
		t.Errorf("limit %v", limit)
	}
	if s := angle.Rule.Grades[1].Severity.At(policy.Review); s != finding.Error {
		t.Errorf("flat is %s", s)
	}
	if s := idle.Rule.SeverityOf(idle.Outcomes[0], policy.Review); s != finding.Warning {
		t.Errorf("unused gear is %s", s)
	}
	if unused.DoesNotApply != "switched off by profile own: our lugs are welded on for good" {
		t.Errorf("unused: %q", unused.DoesNotApply)
	}
}

func TestSettingsThatAreWrong(t *testing.T) {
	for _, c := range []struct{ name, rules, want string }{
		{"rule", "rules: {angle/leg_to_flat: {off: x}}", `own.yaml:6:9: there is no rule "angle/leg_to_flat": did you mean "angle/leg_too_flat"?`},
		{"parameter", "rules: {load/tilt: {params: {eror_deg: 3}}}", `own.yaml:6:30: rule load/tilt has no parameter "eror_deg": did you mean "error_deg"?`},
		{"sort of parameter", "rules: {load/tilt: {params: {error_deg: '3'}}}", "own.yaml:6:30: parameter error_deg of load/tilt: the value is text, and it takes a number"},
		{"bound", "rules: {load/tilt: {params: {error_deg: 60}}}", "own.yaml:6:30: parameter error_deg of load/tilt: the value 60 is over 45, the most it can be"},
		{"over the rated load", "rules: {load/over_rated_load: {params: {over_ratio: 1.1}}}", "own.yaml:6:41: parameter over_ratio of load/over_rated_load: the value 1.1 is over 1, the most it can be"},
		{"grade", "rules: {load/tilt: {grades: {fer: note}}}", `own.yaml:6:30: rule load/tilt has no grade "fer": did you mean "far"?`},
		{"severity of grades", "rules: {load/tilt: {severity: note}}", "own.yaml:6:21: rule load/tilt has grades: give their severities under grades"},
		{"grades of none", "rules: {tension/leg_slack: {grades: {far: note}}}", `own.yaml:6:38: rule tension/leg_slack has no grade "far"`},
		{"lowered", "rules: {load/turns_over: {grades: {overturns: warning}}}", "own.yaml:6:36: rule load/turns_over can't be lowered"},
		{"switched off", "rules: {load/turns_over: {off: x}}", "own.yaml:6:27: rule load/turns_over can't be switched off"},
		{"a word the facts don't have", "rules: {tag/missing_or_incomplete: {params: {required: [makr]}}}", `policies/tag/missing_or_incomplete/rule.rego:72:48: "makr" of parameter required is none of`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := loadWith(t, c.rules)
			if err == nil || !strings.HasPrefix(err.Error(), c.want) || strings.Contains(err.Error(), "\n") {
				t.Errorf("got  %v\nwant %s", err, c.want)
			}
		})
	}
}
