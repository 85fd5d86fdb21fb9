package policy_test

import (
	"context"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/finding"
	"liftlint/internal/policy"
)

const graded = `# METADATA
# title: Leg flat
# description: A description.
# custom:
#   over: legs
#   measured: angle_from_horizontal_deg
#   params: {error_deg: 30, note_deg: 60}
#   grades:
#     - {name: flat, severity: error, limit: error_deg}
#     - {name: rather_flat, severity: note, limit: note_deg, title: Leg rather flat}
#   message: "leg {id} at {measured}, {limit}"
#   cite:
#     - {document: a standard, basis: read, grades: [flat]}
#     - {document: another country's standard, basis: read, profiles: [eu], grades: [flat]}
#     - {document: a handbook, basis: memory}
#     - {document: common practice, basis: practice, grades: [rather_flat]}
package liftlint.rules.angle.graded

import data.params.angle.graded as p

finding contains {"key": leg.key, "grade": "flat"} if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < p.error_deg
}

finding contains {"key": leg.key, "grade": "rather_flat"} if {
	some leg in input.legs
	leg.angle_from_horizontal_deg < p.note_deg
}
`

// TestGradesHaveTheirOwn: a finding is called as its grade is, and cites what is
// the authority for that grade alone.
func TestGradesHaveTheirOwn(t *testing.T) {
	p, err := policy.Load(context.Background(), policy.Options{Sources: folder(map[string]string{"angle/graded/rule.rego": graded}), Profile: policy.Profile{Name: "us"}})
	if err != nil {
		t.Fatal(err)
	}
	d := level()
	d.Legs[0].AngleFromHorizontalDeg, d.Legs[1].AngleFromHorizontalDeg = ptr(20.0), ptr(50.0)
	v := judge(t, p, d)["angle/graded"]
	handbook := finding.Citation{Document: "a handbook", Basis: finding.Memory}
	for i, want := range []struct {
		title     string
		citations []finding.Citation
	}{
		{"Leg flat", []finding.Citation{{Document: "a standard", Basis: finding.Read}, handbook}},
		{"Leg rather flat", []finding.Citation{handbook, {Document: "common practice", Basis: finding.Practice}}},
	} {
		if got := v.Rule.TitleOf(v.Outcomes[i]); got != want.title {
			t.Errorf("it is called %q, want %q", got, want.title)
		}
		if diff := cmp.Diff(want.citations, v.Rule.CitationsOf(v.Outcomes[i])); diff != "" {
			t.Error(diff)
		}
	}
	var words []string
	for _, c := range v.Rule.Citations {
		words = append(words, c.String())
	}
	if diff := cmp.Diff([]string{
		"a standard (text read); of: flat",
		"a handbook (from memory: confirm before relying on it)",
		"common practice (no published source); of: rather flat",
	}, words); diff != "" {
		t.Error(diff)
	}
}

// TestWithoutGrades: a rule without grades has its own title and cites all.
func TestWithoutGrades(t *testing.T) {
	r := &policy.Rule{Title: "Leg flat", Citations: []policy.Cited{{Citation: finding.Citation{Document: "a standard"}}, {Citation: finding.Citation{Document: "a handbook"}}}}
	if got := r.CitationsOf(policy.Outcome{}); r.TitleOf(policy.Outcome{}) != "Leg flat" || len(got) != 2 {
		t.Errorf("%q, %v", r.TitleOf(policy.Outcome{}), got)
	}
}
