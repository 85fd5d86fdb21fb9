package report_test

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

const root = "../.."

// byPrint is the rule and message of each finding by its fingerprint.
func byPrint(t *testing.T, r *lint.Result) map[string]string {
	t.Helper()
	out := map[string]string{}
	for i, p := range report.Fingerprints(r) {
		if other, ok := out[p]; ok {
			t.Errorf("%s: %s has the fingerprint of %s", r.File, r.Findings[i].Message, other)
		}
		out[p] = r.Findings[i].Rule
	}
	return out
}

func edited(t *testing.T, text string, pairs ...string) string {
	t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		if strings.Count(text, pairs[i]) != 1 {
			t.Fatalf("%q does not stand in the plan once", pairs[i])
		}
		text = strings.Replace(text, pairs[i], pairs[i+1], 1)
	}
	return text
}

// TestFingerprintsSurvive what changes nothing about the findings.
func TestFingerprintsSurvive(t *testing.T) {
	const file = "examples/filter-vessel.lift.yaml"
	text := reporttest.Example(t, root, "filter-vessel.lift.yaml")
	text = edited(t, text, "hook: {body_width: 120 mm, ", "hook: {", "    inspection: {date: 2025-11-28}\n", "")
	want := byPrint(t, reporttest.Judge(t, file, text))
	if !slices.Contains(slices.Collect(maps.Values(want)), report.InputMissing) || len(want) < 10 {
		t.Fatalf("the plan does not lack anything: %v", want)
	}
	attachment := text[strings.Index(text, "    - {id: A, kind: padeye"):]
	attachment = attachment[:strings.Index(attachment, "\n")+1]
	last := text[strings.Index(text, "    - {id: E, kind: padeye"):]
	last = last[:strings.Index(last, "\n")+1]
	gear := text[strings.Index(text, "gear:\n")+len("gear:\n") : strings.Index(text, "\nrigging:")+1]
	legs := text[strings.Index(text, "      - {down: [S1, K1]"):]
	for name, changed := range map[string]string{
		"reordered legs":  strings.Replace(text, legs, reversed(legs, "      - "), 1),
		"moved lines":     strings.Replace(text, "load:\n", "# a line\n\n\nload:\n", 1),
		"reordered items": edited(t, edited(t, text, attachment, ""), last, last+attachment),
		"reordered gear":  strings.Replace(text, gear, reversed(gear, "  - "), 1),
		"other units":     edited(t, text, "mass: 11.4 t\n", "mass: 11400 kg\n", "throat: 100 mm", "throat: 10 cm"),
	} {
		if changed == text {
			t.Fatalf("%s: nothing is changed", name)
		}
		if d := cmp.Diff(want, byPrint(t, reporttest.Judge(t, file, changed))); d != "" {
			t.Errorf("%s: %s", name, d)
		}
	}
	if d := cmp.Diff(want, byPrint(t, reporttest.Judge(t, "other.lift.yaml", text))); d == "" {
		t.Error("two plans have the same fingerprints")
	}
}

// reversed turns the items of a list round. Each begins with the mark.
func reversed(list, mark string) string {
	items := strings.Split(strings.TrimPrefix(list, mark), "\n"+mark)
	items[len(items)-1] = strings.TrimSuffix(items[len(items)-1], "\n")
	slices.Reverse(items)
	return mark + strings.Join(items, "\n"+mark) + "\n"
}

// TestFingerprintsAreUnique for every finding in one plan, those of plans that
// are not valid too.
func TestFingerprintsAreUnique(t *testing.T) {
	for _, r := range append(reporttest.Examples(t, root), reporttest.Everything(t).Results...) {
		byPrint(t, r)
	}
	like := finding.Finding{Rule: "a/b", Key: "c"}
	byPrint(t, &lint.Result{File: "f", Findings: []finding.Finding{like, like, {Rule: "a/b", Key: finding.WholeFile, Message: "x"}, {Rule: "a/b", Key: finding.WholeFile, Message: "y"}}})
}
