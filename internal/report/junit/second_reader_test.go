package junit

import (
	"strconv"
	"strings"
	"testing"

	other "github.com/joshdk/go-junit"
	"pgregory.net/rapid"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

// TestSecondReader reads the report by a library of somebody else, which finds the
// same plans, the same outcome of each rule and the same words in it.
func TestSecondReader(t *testing.T) {
	for name, run := range map[string]report.Run{"examples": {Results: reporttest.Examples(t, root)}, "everything": reporttest.Everything(t)} {
		text, n := read(t, run)
		suites, err := other.Ingest([]byte(text))
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		ours := n.all("testsuite")
		if len(suites) != len(ours) {
			t.Fatalf("%s: %d suites, not %d", name, len(suites), len(ours))
		}
		for i, s := range suites {
			if s.Name != ours[i].attr("name") || s.Totals.Failed != len(ours[i].all("failure")) || s.Totals.Error != len(ours[i].all("error")) || s.Totals.Skipped != len(ours[i].all("skipped")) {
				t.Errorf("%s: %s has %+v", name, s.Name, s.Totals)
			}
			cases := ours[i].all("testcase")
			if len(s.Tests) != len(cases) {
				t.Fatalf("%s: %d cases of %d", s.Name, len(s.Tests), len(cases))
			}
			for k, c := range s.Tests {
				said := c.SystemOut
				if e, ok := c.Error.(other.Error); ok {
					said += e.Body
				}
				for _, part := range append(cases[k].all("failure"), append(cases[k].all("error"), cases[k].all("system-out")...)...) {
					if !strings.Contains(said, part.Text) {
						t.Errorf("%s: %s says %q, and not %q", s.Name, c.Name, said, part.Text)
					}
				}
			}
		}
	}
}

// TestSecondReaderOfAnything: the sums are the same whatever stands in a plan.
func TestSecondReaderOfAnything(t *testing.T) {
	real := reporttest.Judge(t, "a", "liftlint: 1\n")
	rapid.Check(t, func(t *rapid.T) {
		run := reporttest.HostileRun(t, real)
		text, n := read(t, run)
		suites, err := other.Ingest([]byte(text))
		if err != nil {
			t.Fatalf("%v:\n%s", err, text)
		}
		var sum other.Totals
		for _, s := range suites {
			sum.Tests, sum.Failed, sum.Error, sum.Skipped = sum.Tests+s.Totals.Tests, sum.Failed+s.Totals.Failed, sum.Error+s.Totals.Error, sum.Skipped+s.Totals.Skipped
		}
		for name, got := range map[string]int{"tests": sum.Tests, "failures": sum.Failed, "errors": sum.Error, "skipped": sum.Skipped} {
			if strconv.Itoa(got) != n.attr(name) {
				t.Fatalf("%d %s:\n%s", got, name, text)
			}
		}
	})
}

// TestWaiversKeepApart in a reader that keeps one property of each name.
func TestWaiversKeepApart(t *testing.T) {
	waived := func(key string) finding.Finding {
		return finding.Finding{Rule: "a/b", Key: key, Severity: finding.Error, Aside: &finding.Aside{Means: finding.ByWaiver, By: "rigger"}}
	}
	x := &lint.Result{File: "p", State: lint.Judged, Checked: []lint.Checked{{Rule: "a/b", Broken: []string{"x", "y"}}}, Findings: []finding.Finding{waived("x"), waived("y")}}
	text, _ := read(t, report.Run{Results: []*lint.Result{x}})
	suites, err := other.Ingest([]byte(text))
	if err != nil {
		t.Fatal(err)
	}
	p := suites[0].Properties
	if !strings.Contains(p["waived"], "a/b on x") || !strings.Contains(p["waived (2)"], "a/b on y") {
		t.Errorf("%v", p)
	}
}
