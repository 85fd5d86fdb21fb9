package summary

import (
	"errors"
	"io"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

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

// row is a line of a table: a name, and numbers or dots.
var row = regexp.MustCompile(`^  (\S+) +([\d.]+) +([\d.]+) +([\d.]+) +([\d.]+) +([\d.]+)( +judged)?$`)

// TestSumsAgree reads the tables back: both give the sums of all findings.
func TestSumsAgree(t *testing.T) {
	run := report.Run{Results: reporttest.Examples(t, "../../..")}
	want := run.Count()
	sums := map[bool][3]int{}
	rows := 0
	for line := range strings.Lines(written(t, run)) {
		m := row.FindStringSubmatch(strings.TrimSuffix(line, "\n"))
		if m == nil {
			continue
		}
		rows++
		plan := m[7] != ""
		s := sums[plan]
		for i := range s {
			n, _ := strconv.Atoi(m[2+i])
			s[i] += n
		}
		sums[plan] = s
	}
	all := [3]int{want.Errors, want.Warnings, want.Notes}
	if sums[true] != all || sums[false] != all || all[0] == 0 {
		t.Errorf("by plan %v and by rule %v, of %v", sums[true], sums[false], all)
	}
	if rows < len(run.Results)+5 {
		t.Errorf("only %d rows", rows)
	}
}

// TestSilenceIsNoAnswer: what was not checked is told.
func TestSilenceIsNoAnswer(t *testing.T) {
	for want, run := range map[string]report.Run{
		"plan 1": {Results: []*lint.Result{nil}}, "not checked": {Results: []*lint.Result{{File: "a", State: lint.Judged}}},
		"exit code 4": {}, "COULD NOT CHECK: x": {Failures: []string{"x"}},
		"no rule ran": {Results: []*lint.Result{{File: "a", State: lint.NotValid}}},
	} {
		if got := written(t, run); !strings.Contains(got, want) {
			t.Errorf("%q is not in\n%s", want, got)
		}
	}
}

func TestHostileText(t *testing.T) {
	real := reporttest.Judge(t, "a", "liftlint: 1\n")
	rapid.Check(t, func(t *rapid.T) {
		var b strings.Builder
		if err := Write(&b, reporttest.HostileRun(t, real)); err != nil {
			t.Fatal(err)
		}
		for line := range strings.Lines(b.String()) {
			if line = strings.TrimSuffix(line, "\n"); report.Visible(line) != line {
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
