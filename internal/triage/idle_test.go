package triage

import (
	"slices"
	"strings"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/plan"
)

// idleCase is a case in which rules that found something once do not look any more.
func idleCase() Case {
	c := plain()
	c.Rules = []Rule{
		{ID: "a/graded", FormerIDs: []string{"a/once"}, Grades: []string{"bad", "less"}, Subjects: []string{"k1"}, NotJudged: []Wait{{Key: "k1", For: []string{"the length is not given"}}}},
		{ID: "a/plain", Subjects: []string{"k1", "k2"}, NotJudged: []Wait{{Key: "k1"}}},
		{ID: "a/off", NotAsked: "switched off by liftlint.yaml: kits"},
	}
	return c
}

// ofAll is a baseline of what those rules found, and of a rule that is not there.
func ofAll() *Baseline {
	entry := func(rule, key string) KnownFinding {
		return KnownFinding{Rule: rule, Key: key, Severity: "error", Fingerprint: finding.Fingerprint("p", rule, key, 0)}
	}
	return &Baseline{Stage: "review", File: "known.json", Plans: []KnownPlan{{File: "p", Profile: "us", Findings: []KnownFinding{
		entry("a/once", "k1"), entry("a/plain", "k1"), entry("a/plain", "k2"), entry("a/off", "k1"), entry("a/removed", "k1"),
	}}}}
}

// TestNotJudgedIsNotGone: of an entry it is told that it is gone only where its rule
// has looked.
func TestNotJudgedIsNotGone(t *testing.T) {
	var said []string
	for _, f := range Run(nil, Known(ofAll(), "p", idleCase())) {
		if f.Severity != finding.Note {
			t.Errorf("%+v", f)
		}
		said = append(said, f.Rule+" "+f.Message)
	}
	slices.Sort(said)
	for i, want := range []string{
		"baseline/gone a/plain finds nothing any more on k2",
		"baseline/not_judged a/graded can't judge k1 (the length is not given)",
		"baseline/not_judged a/off is not asked (switched off by liftlint.yaml: kits)",
		"baseline/not_judged a/plain can't judge k1 (something that is not named)",
		"baseline/not_judged there is no rule a/removed here",
	} {
		if len(said) != 5 || !strings.HasPrefix(said[i], want) {
			t.Fatalf("%q is not said: %q", want, said)
		}
	}
}

// TestNotJudgedStays in a baseline that is written anew, and is known again later.
func TestNotJudgedStays(t *testing.T) {
	for _, grow := range []bool{false, true} {
		today := KnownPlan{File: "p", Profile: "us"}
		Run(nil, Record(&today, idleCase()))
		m, err := ofAll().Merge([]KnownPlan{today}, grow, nil)
		if err != nil || m.Dropped != 1 || m.Kept != 4 {
			t.Fatalf("%+v, %v", m, err)
		}
		b, _ := again(t, m.Baseline)
		found := finding.Finding{Rule: "a/graded", Key: "k1", Severity: finding.Error}
		if out := Run([]finding.Finding{found}, Known(b, "p", plain())); !slices.ContainsFunc(out, func(f finding.Finding) bool { return f.Aside != nil }) {
			t.Errorf("%v", out)
		}
	}
}

// TestWaiverOfWhatIsNotJudged: it is not told to take a waiver out while nobody has
// looked; that it has expired is.
func TestWaiverOfWhatIsNotJudged(t *testing.T) {
	for _, c := range []struct{ rule, key, until, id, says string }{
		{"a/graded", "k1", "2027-01-01", waiverNotJudged, "a/graded can't judge k1 (the length is not given)"},
		{"a/off", "k1", "2027-01-01", waiverNotJudged, "switched off by liftlint.yaml: kits"},
		{"a/graded", "k1", "2026-01-01", waiverExpired, "held until 2026-01-01"},
		{"a/plain", "k2", "2027-01-01", waiverUnused, "finds nothing on k2"},
		{"a/plain", "k2", "2026-01-01", waiverUnused, "finds nothing on k2"},
	} {
		w := plan.Waiver{Pointer: "/waivers/0", Rule: c.rule, Subject: c.key, Until: lastDay(c.until)}
		out := Run(nil, Waive([]plan.Waiver{w}, idleCase()))
		if len(out) != 1 || out[0].Rule != c.id || !strings.Contains(out[0].Message, c.says) {
			t.Errorf("%s on %s: %v", c.rule, c.key, out)
		}
	}
}
