package annotate

import (
	"errors"
	"fmt"
	"io"
	"regexp"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

const root = "../../.."

func written(t interface{ Fatal(...any) }, run report.Run) string {
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

// command is what the service reads from a line.
type command struct {
	level, message string
	properties     map[string]string
}

var shape = regexp.MustCompile(`^::([a-z]+) ([^:]*)::(.*)$`)

// obeyed reads a log as the service does: a command at the start of a line, or an
// older form anywhere in it.
func obeyed(log string) (list []command, older bool) {
	for line := range strings.Lines(strings.ReplaceAll(log, "\r", "\n")) {
		line = strings.TrimSuffix(line, "\n")
		older = older || strings.Contains(line, "##[")
		if !strings.HasPrefix(strings.TrimLeft(line, " \t"), "::") {
			continue
		}
		c := command{properties: map[string]string{}}
		m := shape.FindStringSubmatch(line)
		if m == nil {
			return append(list, command{level: "unknown: " + line}), older
		}
		c.level, c.message = m[1], strings.NewReplacer("%0A", "\n", "%0D", "\r", "%25", "%").Replace(m[3])
		for p := range strings.SplitSeq(m[2], ",") {
			name, value, _ := strings.Cut(p, "=")
			c.properties[name] = strings.NewReplacer("%0A", "\n", "%0D", "\r", "%3A", ":", "%2C", ",", "%25", "%").Replace(value)
		}
		list = append(list, c)
	}
	return list, older
}

// TestFailuresHavePlaces where they name one, and what follows stays with it.
func TestFailuresHavePlaces(t *testing.T) {
	got, _ := obeyed(written(t, report.Run{Failures: []string{
		"liftlint.yaml:5:33: no such rule\nrules/a/b/rule.rego:2:1: no such key\n  not checked for it: plans/a.lift.yaml",
		"plans/b.lift.yaml: the check stopped: at 1:2: x",
	}}))
	want := []string{"liftlint.yaml:5:33 no such rule", "rules/a/b/rule.rego:2:1 no such key\n  not checked for it: plans/a.lift.yaml", ":: plans/b.lift.yaml: the check stopped: at 1:2: x"}
	if len(got) < len(want) {
		t.Fatalf("%v", got)
	}
	for i, w := range want {
		p := got[i].properties
		if is := p["file"] + ":" + p["line"] + ":" + p["col"] + " " + got[i].message; is != w || got[i].level != "error" || p["title"] != "Could not check" {
			t.Errorf("%q, not %q", is, w)
		}
	}
}

// TestExamples reads the commands of each example back.
func TestExamples(t *testing.T) {
	for _, r := range reporttest.Examples(t, root) {
		got, _ := obeyed(written(t, report.Run{Results: []*lint.Result{r}}))
		counts := map[string]int{}
		for _, c := range got {
			counts[c.level]++
			if c.properties["file"] == "" {
				continue
			}
			at := fmt.Sprintf("%s:%s:%s", c.properties["file"], c.properties["line"], c.properties["col"])
			found := false
			for _, f := range r.Findings {
				found = found || levelOf(f) == c.level && report.Place(f.Place) == at && strings.HasPrefix(c.message, report.Sentence(f.Message)) &&
					strings.Contains(c.message, report.Sources(f.Citations)) && strings.Contains(c.message, strings.TrimSuffix(f.Remedy, ".")) && c.properties["title"] == f.Title+" ["+f.Rule+"]"
			}
			if !found {
				t.Errorf("%s: nothing was found that is told as %+v", r.File, c)
			}
		}
		n := report.CountOf(r)
		for level, want := range map[string]int{"error": n.Errors, "warning": n.Warnings, "notice": n.Notes} {
			if counts[level] != min(want, most) {
				t.Errorf("%s: %d annotations of level %s for %d findings", r.File, counts[level], level, want)
			}
		}
	}
}

// TestAtMostTen: each rule is told of before any is told of twice, failures go
// before all, and the last tells how many are left.
func TestAtMostTen(t *testing.T) {
	r := &lint.Result{File: "p", State: lint.Judged, Checked: []lint.Checked{{Rule: "a/b", Met: []string{"k"}}}}
	for i := range 7 {
		r.Findings = append(r.Findings, finding.Finding{Rule: "a/many", Severity: finding.Error, Key: fmt.Sprint(i), Message: fmt.Sprintf("many %d", i), Place: reporttest.At("p", i+1, 1, 2)})
	}
	for i := range 8 {
		r.Findings = append(r.Findings, finding.Finding{Rule: fmt.Sprintf("b/%d", i), Severity: finding.Error, Message: fmt.Sprintf("once %d", i), Place: reporttest.At("p", 20+i, 1, 2)})
	}
	got, _ := obeyed(written(t, report.Run{Results: []*lint.Result{r}, Failures: []string{"a rule has failed"}}))
	if len(got) != most {
		t.Fatalf("%d annotations", len(got))
	}
	if got[0].message != "a rule has failed" || !strings.HasPrefix(got[1].message, "Many 0") || !strings.HasPrefix(got[8].message, "Once 6") {
		t.Errorf("%+v", got)
	}
	if last := got[9]; last.properties["title"] != "7 more of level error" || last.message != "9 of 16 are shown. The report in another format tells all." {
		t.Errorf("%+v", last)
	}
}

// TestEscapes: what stands in a text arrives as it is, spelled out where it is
// hidden, and ends neither a property nor the command.
func TestEscapes(t *testing.T) {
	const words = "50 % of %0A, ::error file=x::y\r\u202e"
	f := finding.Finding{Rule: "a/b", Title: words, Severity: finding.Warning, Message: words, Place: reporttest.At("plans/a,b:c%0A.yaml", 3, 1, 4)}
	got, _ := obeyed(written(t, report.Run{Results: []*lint.Result{{File: "p", State: lint.NotValid, Findings: []finding.Finding{f}}}}))
	const want = `50 % of %0A, ::error file=x::y\u000d\u202e`
	if len(got) != 1 || got[0].level != "warning" || got[0].properties["title"] != want+" [a/b]" || got[0].message != want+".\nSource: none is given." || got[0].properties["file"] != "plans/a,b:c%0A.yaml" {
		t.Errorf("%+v", got)
	}
}

// TestSilenceIsNoAnswer: what was not checked is an error of its own.
func TestSilenceIsNoAnswer(t *testing.T) {
	for want, run := range map[string]report.Run{
		"there was no plan to judge":       {},
		"there is no result for one plan":  {Results: []*lint.Result{nil}},
		"no rule was put to this plan":     {Results: []*lint.Result{{File: "a", State: lint.Judged}}},
		"Permission denied.\nSource: lift": {Results: []*lint.Result{lint.Unreadable("a", errors.New("permission denied"))}},
	} {
		got, _ := obeyed(written(t, run))
		if len(got) != 1 || got[0].level != "error" || !strings.HasPrefix(got[0].message, want) {
			t.Errorf("%q is not in %+v", want, got)
		}
	}
}

// TestHostileText: the service obeys as many commands as were meant, each of the
// level meant, and nothing else in the log.
func TestHostileText(t *testing.T) {
	real := reporttest.Judge(t, "a", "liftlint: 1\n")
	rapid.Check(t, func(t *rapid.T) {
		run := reporttest.HostileRun(t, real)
		log := written(t, run)
		got, older := obeyed(log)
		want := 0
		for _, level := range levels() {
			want += min(len(ranked(run, level)), most)
		}
		if len(got) != want || older {
			t.Fatalf("%d commands, not %d, in\n%q", len(got), want, log)
		}
		for _, c := range got {
			for name := range c.properties {
				if !strings.Contains("file line col endLine endColumn title", name) {
					t.Fatalf("property %q in\n%q", name, log)
				}
			}
		}
		for _, r := range log {
			if r != '\n' && report.Hidden(r) {
				t.Fatalf("%U is written as it is", r)
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
