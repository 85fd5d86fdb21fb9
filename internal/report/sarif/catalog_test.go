package sarif

import (
	"strings"
	"testing"

	"liftlint/internal/builtin"
	"liftlint/internal/finding"
	"liftlint/internal/policy"
	"liftlint/internal/report"
)

func rule(limit float64, severity finding.Severity, off string) *policy.Rule {
	return &policy.Rule{
		ID: "a/flat", Title: "Flat", Description: "The flatter,\nthe worse.", FormerIDs: []string{"a/level"}, Off: off,
		Params:   []policy.Param{{Name: "minimum_deg", Value: limit}, {Name: "words", Value: []string{"x", "y"}}},
		Severity: policy.Always(severity),
		Citations: []policy.Cited{
			{Citation: finding.Citation{Document: "Standard 1", Edition: "2020", Clause: "4.2", Basis: finding.Read}},
			{Citation: finding.Citation{Document: "Standard 1", Edition: "2014", Clause: "3", Basis: finding.Memory}},
			{Citation: finding.Citation{Document: "Standard 1", Edition: "2020", Basis: finding.Memory}},
			{Citation: finding.Citation{Document: "common practice", Basis: finding.Practice}},
			{Citation: finding.Citation{Document: "site rules", Basis: finding.Company}},
		},
	}
}

func described(t *testing.T, rules ...*policy.Rule) (descriptor, run) {
	t.Helper()
	_, got := written(t, report.Run{}, Options{Rules: rules, Stage: policy.Review})
	for _, d := range got.Tool.Driver.Rules {
		if d.ID == "a/flat" {
			return d, got
		}
	}
	t.Fatal("the rule is not described")
	return descriptor{}, got
}

// TestDescriptor: a rule comes with its limits, former ids and authorities.
func TestDescriptor(t *testing.T) {
	d, got := described(t, rule(30, finding.Warning, ""))
	c := d.DefaultConfiguration
	if c.Level != "warning" || c.Enabled != nil || c.Parameters["minimum_deg"] != 30.0 || d.DeprecatedIDs[0] != "a/level" || d.FullDescription.Text != "The flatter, the worse." {
		t.Errorf("%+v, %+v", d, c)
	}
	for _, want := range []string{"The flatter, the worse.", "minimum_deg: 30", "words: x, y", "Standard 1, 2020, 4.2 (text read)", "common practice (no published source)", "site rules (company rule)", "liftlint explain a/flat"} {
		if !strings.Contains(d.Help.Text, want) {
			t.Errorf("help lacks %q:\n%s", want, d.Help.Text)
		}
	}
	// Practice and company rules are no published standard.
	if len(d.Relationships) != 3 || len(got.Taxonomies) != 2 || got.Taxonomies[0].Version != "2014" || got.Taxonomies[1].Taxa[1].ID != wholeText {
		t.Errorf("%+v\n%+v", d.Relationships, got.Taxonomies)
	}
	checkLinks(t, got)
	checks, err := builtin.All()
	if err != nil || len(got.Tool.Driver.Rules) != len(checks)+1 {
		t.Errorf("%d rules, with %d checks built in: %v", len(got.Tool.Driver.Rules), len(checks), err)
	}
}

// TestSeveralProfiles: the worst severity counts, limits that differ are not told
// as one, and a rule is off only where all have it off.
func TestSeveralProfiles(t *testing.T) {
	d, _ := described(t, rule(30, finding.Note, ""), rule(45, finding.Error, ""), rule(30, finding.Warning, ""))
	if c := d.DefaultConfiguration; c.Level != "error" || c.Parameters != nil || !strings.Contains(d.Help.Text, "different limits") || strings.Contains(d.Help.Text, "minimum_deg") {
		t.Errorf("%+v\n%s", c, d.Help.Text)
	}
	d, _ = described(t, rule(30, finding.Error, "not here"), rule(30, finding.Note, ""))
	if c := d.DefaultConfiguration; c.Enabled != nil || c.Level != "note" || c.Parameters == nil {
		t.Errorf("off in one: %+v", c)
	}
	d, _ = described(t, rule(30, finding.Error, "not here"))
	if c := d.DefaultConfiguration; c.Enabled == nil || *c.Enabled {
		t.Errorf("off in all: %+v", c)
	}
}
