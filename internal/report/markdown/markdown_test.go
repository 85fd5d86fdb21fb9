package markdown

import (
	"errors"
	"fmt"
	"io"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

const root = "../../.."

func written(t interface{ Fatal(...any) }, run report.Run, o Options) string {
	var b strings.Builder
	if err := Write(&b, run, o); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestGoldens(t *testing.T) {
	clean := reporttest.HandMade(t)
	clean.Findings, clean.Checked, clean.Overrides = nil, []lint.Checked{{Rule: "load/tilt", Met: []string{"load"}}}, nil
	for name, run := range map[string]report.Run{
		"everything.md": reporttest.Everything(t),
		"clean.md":      {Results: []*lint.Result{clean}},
		"nothing.md":    {},
	} {
		got := written(t, run, Options{})
		reporttest.Golden(t, name, got)
		reporttest.NeverSaysSafe(t, got)
	}
}

// TestExamples renders the report of each example: every finding shows with its
// remedy and its source, and every figure of the table.
func TestExamples(t *testing.T) {
	for _, r := range reporttest.Examples(t, root) {
		page, kinds := read(t, written(t, report.Run{Results: []*lint.Result{r}}, Options{Most: Comment}))
		got := shown(page)
		if what := acts(kinds); what != "" {
			t.Errorf("%s: the report makes a %s", r.File, what)
		}
		want := []string{report.NameOf(r), r.File, report.Found(report.CountOf(r)), report.SumUp(r.Checked).Words(), report.Caution}
		if h, ok := report.HangingOf(r); ok {
			want = append(want, strings.Join(h.Words, "; "))
			for _, row := range h.Legs {
				want = append(want, row...)
			}
		} else if r.State == lint.Judged {
			want = append(want, "How it hangs could not be computed.")
		}
		for _, f := range r.Findings {
			want = append(want, report.Sentence(f.Message), f.Remedy, report.Sources(f.Citations), f.Title, f.Rule, fmt.Sprintf("line %d", f.Place.Range.From.Line))
		}
		for _, c := range r.Checked {
			if len(c.NotJudged) > 0 {
				want = append(want, fmt.Sprintf("%s: %d of %d subject", c.Rule, len(c.NotJudged), report.Subjects(c)))
			}
		}
		for _, w := range want {
			if !strings.Contains(got, short(w)) && !strings.Contains(got, w) {
				t.Errorf("%s: %q is not shown in\n%s", r.File, w, got)
			}
		}
	}
}

// TestVerdictFirst: the first line says what the run comes to, and never more than
// was checked.
func TestVerdictFirst(t *testing.T) {
	judged := func(severity ...finding.Severity) report.Run {
		x := &lint.Result{File: "a", State: lint.Judged, Checked: []lint.Checked{{Rule: "a/b", Met: []string{"c"}}}}
		for _, s := range severity {
			x.Findings = append(x.Findings, finding.Finding{Rule: "a/b", Severity: s})
		}
		return report.Run{Results: []*lint.Result{x}}
	}
	waits := judged(finding.Note)
	waits.Results[0].Checked = append(waits.Results[0].Checked, lint.Checked{Rule: "a/c", NotJudged: []lint.Unjudged{{Key: "k"}}})
	failed := judged()
	failed.Failures = []string{"x"}
	for want, run := range map[string]report.Run{
		"nothing found of severity warning or worse":                       judged(),
		"nothing found of severity warning or worse, 1 subject not judged": waits,
		"2 errors":                   judged(finding.Error, finding.Note, "odd"),
		"1 warning":                  judged(finding.Warning),
		"could not check everything": failed,
		"nothing was checked":        {},
		"1 of 1 not valid":           {Results: []*lint.Result{{File: "a", State: lint.NotValid}}},
	} {
		first, _, _ := strings.Cut(written(t, run, Options{}), "\n")
		if first != "## Lift plans: "+want {
			t.Errorf("%q, not %q", first, want)
		}
	}
}

// TestUnknownsAreLoud, as in every report.
func TestUnknownsAreLoud(t *testing.T) {
	for name, r := range map[string]*lint.Result{
		"no result": nil,
		"no rules":  {File: "a", State: lint.Judged},
		"odd state": {File: "a", State: "done", Checked: []lint.Checked{{Rule: "x", Met: []string{"y"}}}},
	} {
		got := written(t, report.Run{Results: []*lint.Result{r}}, Options{})
		if !strings.Contains(got, "Not checked") || !strings.Contains(got, "exit code 3") {
			t.Errorf("%s:\n%s", name, got)
		}
	}
}

// many are plans of which one, in the middle, is the worst.
func many(plans, findings int) report.Run {
	var run report.Run
	for i := range plans {
		r := &lint.Result{File: fmt.Sprintf("plan-%d", i), State: lint.Judged, Checked: []lint.Checked{{Rule: "a/b", Broken: []string{"c"}}}}
		for k := range findings {
			r.Findings = append(r.Findings, finding.Finding{Rule: "a/b", Severity: finding.Note, Message: fmt.Sprintf("finding %d of plan %d", k, i), Place: reporttest.At(r.File, k+1, 1, 2)})
		}
		if i == plans/2 {
			r.Findings = append(r.Findings, finding.Finding{Rule: "a/c", Severity: finding.Error, Message: "the worst", Place: reporttest.At(r.File, 1, 1, 2)})
		}
		run.Results = append(run.Results, r)
	}
	return run
}

// TestFits: what does not fit is left out from the least bad on, and is told.
func TestFits(t *testing.T) {
	whole := written(t, many(3, 30), Options{})
	if strings.Contains(whole, "not shown") || strings.Count(whole, "Finding ") != 90 {
		t.Error(whole)
	}
	cut := written(t, many(3, 30), Options{Most: 4000})
	if len(cut) > 4000 || strings.Count(cut, "not shown here") != 3 || !strings.Contains(cut, "The worst.") || !strings.Contains(cut, "91") && !strings.Contains(cut, "90 notes") {
		t.Errorf("%d bytes:\n%s", len(cut), cut)
	}
	crowd := written(t, many(1000, 2), Options{Most: Comment})
	if len(crowd) > Comment || !strings.Contains(crowd, "plans are not shown here") || !strings.Contains(crowd, "1 error, 0 warnings, 2000 notes") || !strings.Contains(crowd, "plan-500") || !strings.Contains(crowd, report.Caution) {
		t.Errorf("%d bytes:\n%s", len(crowd), crowd[:2000])
	}
	if got := written(t, many(1000, 2), Options{Most: 1}); !strings.Contains(got, "1000 plans are not shown") || !strings.Contains(got, "exit code 1") {
		t.Errorf("%s", got)
	}
}

// TestErrorsBeforeFigures: where there is room for one of them, errors are told and the
// tables of legs are not; ahead of all it is said what is left out, and how much of it
// are errors.
func TestErrorsBeforeFigures(t *testing.T) {
	var run report.Run
	r := reporttest.Judge(t, "v", reporttest.Example(t, root, "filter-vessel.lift.yaml"))
	for i := range 60 {
		x := *r
		x.File = fmt.Sprintf("plans/%02d.lift.yaml", i)
		run.Results = append(run.Results, &x)
	}
	few := report.Run{Results: run.Results[:12]}
	rules := map[string]bool{}
	for _, f := range r.Findings {
		if f.Severity == finding.Error {
			rules[f.Rule] = true
		}
	}
	for name, c := range map[string]struct {
		run   report.Run
		table bool
	}{"few": {few, false}, "many": {run, false}} {
		got := written(t, c.run, Options{Most: Comment})
		if len(got) > Comment || len(got) < Comment*2/3 {
			t.Errorf("%s: %d bytes", name, len(got))
		}
		if strings.Contains(got, "| leg |") != c.table {
			t.Errorf("%s: that there are tables of legs is not %v", name, c.table)
		}
		if n := strings.Index(got, "**Cut for want of room.** Not shown:"); n < 0 || n > strings.Index(got, "| plan |") {
			t.Errorf("%s: that it is cut is not said at the top: %d", name, n)
		}
		for rule := range rules {
			if n := strings.Count(got, Code(rule)); n < len(c.run.Results) {
				t.Errorf("%s: %s is told of %d of %d plans", name, rule, n, len(c.run.Results))
			}
		}
	}
	if got := written(t, few, Options{Most: Comment}); strings.Contains(got, "not shown here") || strings.Count(got, "### ") != 12 || !strings.Contains(got, "To put it right") {
		t.Error("errors are left out where warnings would do")
	}
}

// TestHostileText: whatever stands in a plan, the page has the headings and cells
// that were meant, and nothing in it links, notifies or acts.
func TestHostileText(t *testing.T) {
	real := reporttest.Judge(t, "a", reporttest.Example(t, root, "pump-skid.lift.yaml"))
	rapid.Check(t, func(t *rapid.T) {
		run := reporttest.HostileRun(t, real)
		text := written(t, run, Options{})
		page, kinds := read(t, text)
		if what := acts(kinds); what != "" || kinds["Heading"] != 2 {
			t.Fatalf("%q, %d headings in\n%s", what, kinds["Heading"], text)
		}
		if strings.Contains(text, "**How it hangs:**") != (kinds["Table"] == 1) || kinds["TableCell"] != kinds["Table"]*7*5 {
			t.Fatalf("%v in\n%s", kinds, text)
		}
		for _, r := range text {
			if r != '\n' && report.Hidden(r) {
				t.Fatalf("%U is written as it is", r)
			}
		}
		for _, f := range run.Results[0].Findings {
			if want := report.Visible(short(report.Sentence(f.Message))); !strings.Contains(shown(page), strings.TrimSpace(want)) {
				t.Fatalf("%q is not shown in\n%s", want, page)
			}
		}
	})
}

// TestPhasesGiveWay: a long table of phases makes room, and the report says so.
func TestPhasesGiveWay(t *testing.T) {
	run := report.Run{Results: []*lint.Result{reporttest.Judge(t, "v", reporttest.Example(t, root, "vessel.lift.yaml"))}}
	full := written(t, run, Options{})
	if cut := written(t, run, Options{Most: len(full) - 1}); !strings.Contains(full, "| phase |") || len(cut) >= len(full) {
		t.Errorf("%d of %d bytes", len(cut), len(full))
	}
	got := write(run, detail{findings: fewFindings - 1, plans: all})
	if strings.Contains(got, "| phase |") || !strings.Contains(got, " positions are not shown here") {
		t.Error(got)
	}
}

func TestWriterFails(t *testing.T) {
	r, w := io.Pipe()
	r.Close()
	if err := Write(w, report.Run{}, Options{}); !errors.Is(err, io.ErrClosedPipe) {
		t.Errorf("got %v", err)
	}
}
