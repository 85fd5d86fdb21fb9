package line

import (
	"errors"
	"io"
	"regexp"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

const root = "../../.."

func written(t testing.TB, run report.Run) string {
	t.Helper()
	var b strings.Builder
	if err := Write(&b, run); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestGolden(t *testing.T) {
	got := written(t, reporttest.Everything(t))
	reporttest.Golden(t, "everything.txt", got)
	reporttest.NeverSaysSafe(t, got)
}

// shape is what a line of a finding looks like to those who read it.
var shape = regexp.MustCompile(`^(.+):([1-9]\d*):([1-9]\d*): (error|warning|note): (.+) \[([a-z_/]+)\]$`)

// TestExamples reads the lines back and counts them.
func TestExamples(t *testing.T) {
	for _, r := range reporttest.Examples(t, root) {
		lines := strings.Split(strings.TrimRight(written(t, report.Run{Results: []*lint.Result{r}}), "\n"), "\n")
		if len(lines) != len(r.Findings)+1 {
			t.Errorf("%s: %d lines for %d findings", r.File, len(lines), len(r.Findings))
			continue
		}
		for i, f := range r.Findings {
			m := shape.FindStringSubmatch(lines[i])
			if m == nil || m[1] != r.File || m[4] != string(f.Severity) || m[5] != f.Message || m[6] != f.Rule {
				t.Errorf("%+v is written %q", f, lines[i])
			}
		}
	}
}

// TestSilenceIsNoAnswer: what was not checked is told, and so is the outcome of
// a run without findings.
func TestSilenceIsNoAnswer(t *testing.T) {
	for want, run := range map[string]report.Run{
		"there is no result": {Results: []*lint.Result{nil}},
		"no rule was put":    {Results: []*lint.Result{{File: "a", State: lint.Judged}}},
		"exit code 4":        {},
		"could not check: x": {Failures: []string{"x"}},
		"(exit code 0).":     {Results: []*lint.Result{{File: "a", State: lint.Judged, Checked: []lint.Checked{{Rule: "a/b", Met: []string{"c"}}}}}},
		"a rule could not":   {Results: []*lint.Result{{File: "a", State: lint.Judged, Checked: []lint.Checked{{Rule: "a/b", NotJudged: []lint.Unjudged{{Key: "c"}}}}}}},
	} {
		if got := written(t, run); !strings.Contains(got, want) {
			t.Errorf("%q is not in\n%s", want, got)
		}
	}
}

// TestHostileText: whatever stands in a plan, each finding takes one line, and
// none of them acts.
func TestHostileText(t *testing.T) {
	real := reporttest.Judge(t, "a", "liftlint: 1\n")
	rapid.Check(t, func(t *rapid.T) {
		run := reporttest.HostileRun(t, real)
		var b strings.Builder
		if err := Write(&b, run); err != nil {
			t.Fatal(err)
		}
		least := len(run.Failures) + len(run.Results[0].Findings) + 1
		if n := strings.Count(b.String(), "\n"); n != least && n != least+1 {
			t.Fatalf("%d lines, not %d:\n%q", n, least, b.String())
		}
		for line := range strings.Lines(b.String()) {
			line = strings.TrimSuffix(line, "\n")
			if strings.HasPrefix(strings.TrimSpace(line), "::") || report.Visible(line) != line {
				t.Fatalf("%q would act", line)
			}
		}
	})
}

func TestWriterFails(t *testing.T) {
	r, w := io.Pipe()
	r.Close()
	if err := Write(w, report.Run{}); !errors.Is(err, io.ErrClosedPipe) {
		t.Errorf("got %v", err)
	}
}
