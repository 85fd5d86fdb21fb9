package text

import (
	"strings"
	"testing"

	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

// TestAside: a waiver is listed at the head of its plan, and the finding is shown
// as waived after all that count.
func TestAside(t *testing.T) {
	var b strings.Builder
	if err := Write(&b, report.Run{Results: []*lint.Result{reporttest.HandMade(t)}}, Options{Width: 200}); err != nil {
		t.Fatal(err)
	}
	got, from := b.String(), 0
	for _, want := range []string{
		"  Waived: angle/leg_too_flat on leg/hook/3, grade too_flat: by lift planner, approved by appointed engineer, until 2026-12-31: no longer leg fits under the gantry (plans/a.lift.yaml:3:3).\n",
		"  Known: 1 finding from known.json.\n",
		"2 warnings, 1 note. Besides: 1 waived and 1 known from the baseline.",
		"ERROR  Leg too flat: 2 findings\n",
		"NOTE  Whole file\n",
		"WAIVED ERROR  Leg too flat\n",
		"  waived        by lift planner, approved by appointed engineer, until 2026-12-31: no longer leg fits under the gantry\n",
		"KNOWN WARNING  Wide\n",
		"  known         from known.json\n",
	} {
		at := strings.Index(got[from:], want)
		if at < 0 {
			t.Fatalf("%q does not stand behind the line before in\n%s", want, got)
		}
		from += at
	}
	if n := strings.Count(got, "leg/hook/3"); n < 2 {
		t.Errorf("the waived subject is named %d times", n)
	}
}
