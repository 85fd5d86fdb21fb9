package triage

import (
	"slices"
	"strings"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/plan"
)

// numbered is a case of two subjects that go by their places in a list, in one order
// and in the other.
func numbered(names map[string]string) Case {
	c := plain()
	c.Stable = func(key string) string {
		if name, ok := names[key]; ok {
			return name
		}
		return key
	}
	return c
}

var (
	inOrder  = map[string]string{"k1": "to A", "k2": "to B"}
	turned   = map[string]string{"k1": "to B", "k2": "to A"}
	ofBoth   = []finding.Finding{{Rule: "a/plain", Key: "k1", Severity: finding.Error}, {Rule: "a/plain", Key: "k2", Severity: finding.Error}}
	acceptsA = plan.Waiver{Pointer: "/waivers/0", Rule: "a/plain", Subject: "to A", Reason: "r", By: "b", ApprovedBy: "c", Until: lastDay("2026-12-31")}
)

func asideIn(fs []finding.Finding) []string {
	var keys []string
	for _, f := range fs {
		if f.Aside != nil {
			keys = append(keys, f.Key)
		}
	}
	return keys
}

// TestWaiverStaysWithItsSubject when subjects change places, and is refused where it
// goes by a place.
func TestWaiverStaysWithItsSubject(t *testing.T) {
	for key, names := range map[string]map[string]string{"k1": inOrder, "k2": turned} {
		got := Run(ofBoth, Waive([]plan.Waiver{acceptsA}, numbered(names)))
		if keys := asideIn(got); !slices.Equal(keys, []string{key}) || len(got) != 2 {
			t.Errorf("%v: %+v", keys, got)
		}
	}
	byPlace := acceptsA
	byPlace.Subject = "k1"
	got := Run(ofBoth, Waive([]plan.Waiver{byPlace}, numbered(inOrder)))
	i := slices.IndexFunc(got, func(f finding.Finding) bool { return f.Rule == waiverNotBound })
	if len(asideIn(got)) != 0 || i < 0 || got[i].Severity != finding.Error || !strings.Contains(got[i].Message, `write "to A" here if that`) {
		t.Errorf("%+v", got)
	}
}

// TestBaselineStaysWithItsSubject likewise; what was written down by place sets
// nothing aside.
func TestBaselineStaysWithItsSubject(t *testing.T) {
	var known KnownPlan
	known.File, known.Profile = "p", "us"
	Run(ofBoth[:1], Record(&known, numbered(inOrder)))
	if len(known.Findings) != 1 || known.Findings[0].Key != "to A" {
		t.Fatalf("%+v", known)
	}
	b := &Baseline{Stage: "review", File: "known.json", Plans: []KnownPlan{known}}
	for key, names := range map[string]map[string]string{"k1": inOrder, "k2": turned} {
		if keys := asideIn(Run(ofBoth, Known(b, "p", numbered(names)))); !slices.Equal(keys, []string{key}) {
			t.Errorf("%v", keys)
		}
	}
	c := numbered(turned)
	c.Rules[1].NotJudged = []Wait{{Key: "k2"}}
	if got := Run(nil, Known(b, "p", c)); len(got) != 1 || got[0].Rule != baselineNotJudged {
		t.Errorf("%+v", got)
	}
	b.Plans[0].Findings[0].Key = "k1"
	b.Plans[0].Findings[0].Fingerprint = finding.Fingerprint("p", "a/plain", "k1", 0)
	got := Run(ofBoth, Known(b, "p", numbered(inOrder)))
	if i := slices.IndexFunc(got, func(f finding.Finding) bool { return f.Rule == baselineNotHeld }); len(asideIn(got)) != 0 || i < 0 {
		t.Errorf("%+v", got)
	}
}
