package lint_test

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// waiting counts the checks, each a rule on a subject, that wait for
// something, from the account of all subjects.
func waiting(r *lint.Result, label string) (checks int, ids []string) {
	for _, c := range r.Checked {
		for _, u := range c.NotJudged {
			if slices.Contains(u.WaitsFor, label) || slices.Contains(u.WaitsFor, label+" is not given") {
				checks++
				ids = append(ids, c.Rule)
			}
		}
	}
	return checks, slices.Compact(ids)
}

// counted reads "12 checks wait (a, b)" at the end of a message.
func counted(t *testing.T, message string) (int, []string) {
	t.Helper()
	m := regexp.MustCompile(`: (\d+) checks? waits? \((.*)\)$`).FindStringSubmatch(message)
	if m == nil {
		t.Fatalf("%q counts nothing", message)
	}
	n, err := strconv.Atoi(m[1])
	if err != nil {
		t.Fatal(err)
	}
	return n, strings.Split(m[2], ", ")
}

func TestOneFindingForEachInput(t *testing.T) {
	text := changed(t, example(t, "pump-skid"), "  mass: 8650 kg\n", "", "section_diameter: 36 mm", "")
	r := check(t, linter(t, lint.Options{}), text)
	got := of(r, "input/missing")
	if len(got) != 2 || len(r.Findings) != 2 {
		t.Fatalf("%s", rules(r))
	}
	for i, want := range []struct{ label, words, line string }{
		{"the load's mass", "give the load's mass, `mass`: ", "load:"},
		{"ML1's section diameter", "give ML1's section diameter, `section_diameter`: ", "- id: ML1"},
	} {
		f := got[i]
		if !strings.HasPrefix(f.Message, want.words) || f.Severity != finding.Error {
			t.Errorf("%s: %s", f.Severity, f.Message)
		}
		if line := r.Line(f.Place.Range.From.Line); !strings.Contains(line, want.line) {
			t.Errorf("%s stands at %q", f.Message, line)
		}
		n, ids := counted(t, f.Message)
		checks, waitingRules := waiting(r, want.label)
		if len(waitingRules) > 4 { // three are named and the others counted
			last := fmt.Sprintf("%s and %d other rules", waitingRules[2], len(waitingRules)-3)
			waitingRules = []string{waitingRules[0], waitingRules[1], last}
		}
		if n != checks || n == 0 || !slices.Equal(ids, waitingRules) {
			t.Errorf("%s, and %d wait: %v", f.Message, checks, waitingRules)
		}
	}
	// Four eyes over one link, and the link into the hook: five checks, though the
	// rule for eyes reads two figures.
	if n, _ := counted(t, got[1].Message); n != 5 {
		t.Errorf("%s", got[1].Message)
	}
}

// TestDraftOnlyNotes: what a draft does not say yet is a note, and an error
// from review on.
func TestDraftOnlyNotes(t *testing.T) {
	text := changed(t, example(t, "pump-skid"), "  mass: 8650 kg\n", "")
	for stage, want := range map[string]finding.Severity{"draft": finding.Note, "review": finding.Error, "prelift": finding.Error} {
		r := check(t, linter(t, lint.Options{Stage: stage}), text)
		if got := of(r, "input/missing"); len(got) != 1 || got[0].Severity != want {
			t.Errorf("%s: %v", stage, got)
		}
		if n, _ := waiting(r, "the load's mass"); n == 0 {
			t.Errorf("%s: nothing is said to wait", stage)
		}
	}
}

// TestReasonsAreFindings: what can't be judged for a reason that nothing else
// reports is an error of its own, beside whatever other errors there are.
func TestReasonsAreFindings(t *testing.T) {
	bridle := [2]string{"rated_load: 5.65 t, hitch: vertical, angle_from_horizontal: 90 deg", "rated_load: 11.3 t, hitch: vertical, angle_from_horizontal: 60 deg"}
	later := [2]string{"{date: 2026-06-11, by: site rigging loft}", "{date: 2026-12-24}"}
	l := linter(t, lint.Options{})
	for _, c := range []struct {
		name  string
		pairs []string
		want  string
	}{
		{"tag at an angle", bridle[:], "S1's tag is for 60 deg from horizontal: what one straight leg may carry is not on it: 2 checks wait (load/bound_over_rated_load, load/over_rated_load)"},
		{"inspection to come", later[:], "the inspection of ML1 on 2026-12-24 comes after the day that is judged for, 2026-12-04: 2 checks wait (inspection/due_soon, inspection/overdue)"},
	} {
		for _, also := range []struct {
			name  string
			pairs []string
		}{{"alone", nil}, {"beside an error", []string{"condition: legible, maker: loft, serial: \"0232\"", "condition: legible, serial: \"0232\""}}} {
			t.Run(c.name+" "+also.name, func(t *testing.T) {
				r := check(t, l, changed(t, example(t, "pump-skid"), append(slices.Clone(c.pairs), also.pairs...)...))
				got := of(r, "input/not_judged")
				if len(got) != 1 || got[0].Message != c.want || got[0].Severity != finding.Error {
					t.Errorf("%s: %v", rules(r), got)
				}
			})
		}
	}
}

// TestToldReasonsAreNotRepeated: a sling without a tag and a load that turns
// over are reported once, by their own rules.
func TestToldReasonsAreNotRepeated(t *testing.T) {
	l := linter(t, lint.Options{})
	r := check(t, l, changed(t, example(t, "pump-skid"), "center_of_gravity: {x: 3.2 m, y: 1.2 m, z: 1.15 m}", "center_of_gravity: {x: 3.2 m, y: 1.2 m, z: 9 m}", "height: 2.6 m", "height: 10 m"))
	if got := rules(r); got != "load/turns_over" {
		t.Errorf("%s", got)
	}
	if n, _ := waiting(r, "the load turns over"); n == 0 {
		t.Error("nothing is said to wait")
	}
	r = check(t, l, changed(t, example(t, "pump-skid"), "condition: legible, maker: loft, serial: \"0232\"", "condition: illegible"))
	if got := rules(r); !strings.HasPrefix(got, "tag/missing_or_incomplete") || strings.Contains(got, "input/") {
		t.Errorf("%s", got)
	}
	if n, _ := waiting(r, "S2's tag is illegible"); n == 0 {
		t.Error("nothing is said to wait")
	}
}

// TestEverySubjectIsAccountedFor: whatever a plan lacks, each rule's subjects
// are met, broken or not judged, and none that waits is without a finding.
func TestEverySubjectIsAccountedFor(t *testing.T) {
	l := linter(t, lint.Options{})
	full := example(t, "pump-skid")
	whole := check(t, l, full)
	for _, line := range strings.SplitAfter(full, "\n") {
		if strings.TrimSpace(line) == "" {
			continue
		}
		r := check(t, l, strings.Replace(full, line, "", 1))
		if r.State == lint.NotValid {
			continue
		}
		for i, c := range r.Checked {
			if c.DoesNotApply == "" && len(c.Met)+len(c.Broken)+len(c.NotJudged) == 0 {
				t.Errorf("without %q: %s has no subjects and no word on it", line, c.Rule)
			}
			if c.Rule != whole.Checked[i].Rule {
				t.Errorf("without %q: %s is not in its place", line, c.Rule)
			}
			for _, u := range c.NotJudged {
				if len(u.WaitsFor) == 0 {
					t.Errorf("without %q: %s waits for nothing on %s", line, c.Rule, u.Key)
				}
			}
			if len(c.NotJudged) > 0 && len(r.Findings) == 0 {
				t.Errorf("without %q: %s can't judge, and nothing is found", line, c.Rule)
			}
		}
		for _, f := range r.Findings {
			if strings.Contains(fmt.Sprint(f.Message), "is not known") {
				t.Errorf("without %q: %s", line, f.Message)
			}
		}
	}
}
