package report_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// TestAsideDoesNotCount: what a run comes to is that of the findings that are not
// set aside, and the others are counted and named.
func TestAsideDoesNotCount(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var all, counting []finding.Finding
		aside := 0
		for range rapid.IntRange(0, 6).Draw(t, "findings") {
			f := finding.Finding{Rule: "a/b", Severity: rapid.SampledFrom(finding.Severities()).Draw(t, "severity")}
			if means := rapid.SampledFrom([]finding.Means{"", finding.ByWaiver, finding.ByBaseline}).Draw(t, "means"); means != "" {
				f.Aside = &finding.Aside{Means: means}
				aside++
			} else {
				counting = append(counting, f)
			}
			all = append(all, f)
		}
		of := func(fs []finding.Finding) report.Run {
			return report.Run{Results: []*lint.Result{{State: lint.Judged, Checked: make([]lint.Checked, 1), Findings: fs}}}
		}
		with, without := of(all), of(counting)
		if with.Exit() != without.Exit() {
			t.Fatalf("exit %d, and %d without what is set aside", with.Exit(), without.Exit())
		}
		c := with.Count()
		if c.Waived+c.Known != aside || c.Errors+c.Warnings+c.Notes != len(counting) {
			t.Fatalf("%+v", c)
		}
		if aside > 0 && with.Exit() == report.Clean && !strings.Contains(with.Meaning(), "besides") {
			t.Fatal(with.Meaning())
		}
		groups := report.Grouped(all)
		if !slices.IsSortedFunc(groups, func(a, b []finding.Finding) int {
			return order(a) - order(b)
		}) {
			t.Fatal("what is set aside stands ahead of what counts")
		}
		for _, g := range groups {
			if n := len(finding.Counting(g)); n != 0 && n != len(g) {
				t.Fatal("one group has both")
			}
		}
	})
}

func order(g []finding.Finding) int {
	if g[0].Aside != nil {
		return 1
	}
	return 0
}
