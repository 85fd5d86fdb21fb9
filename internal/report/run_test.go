package report

import (
	"errors"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

func judged(severities ...finding.Severity) *lint.Result {
	r := &lint.Result{File: "a", State: lint.Judged, Checked: []lint.Checked{{Rule: "a/b", Met: []string{"x"}}}}
	for _, s := range severities {
		r.Findings = append(r.Findings, finding.Finding{Severity: s})
	}
	return r
}

func TestExit(t *testing.T) {
	notValid := &lint.Result{State: lint.NotValid}
	unread := lint.Unreadable("b", errors.New("gone"))
	noRules := &lint.Result{State: lint.Judged}
	for name, c := range map[string]struct {
		run  Run
		want Exit
	}{
		"no plans":           {Run{}, Nothing},
		"clean":              {Run{Results: []*lint.Result{judged()}}, Clean},
		"warning":            {Run{Results: []*lint.Result{judged(finding.Warning)}}, Clean},
		"error":              {Run{Results: []*lint.Result{judged(), judged(finding.Note, finding.Error)}}, Findings},
		"fails on notes":     {Run{FailOn: finding.Note, Results: []*lint.Result{judged(finding.Note)}}, Findings},
		"fails on warnings":  {Run{FailOn: finding.Warning, Results: []*lint.Result{judged(finding.Note)}}, Clean},
		"unknown severity":   {Run{Results: []*lint.Result{judged("fatal")}}, Findings},
		"not valid":          {Run{Results: []*lint.Result{judged(), notValid}}, Findings},
		"unread":             {Run{Results: []*lint.Result{judged(finding.Error), unread}}, Unchecked},
		"failure":            {Run{Results: []*lint.Result{judged()}, Failures: []string{"a rule"}}, Unchecked},
		"failure alone":      {Run{Failures: []string{"a rule"}}, Unchecked},
		"judged by no rule":  {Run{Results: []*lint.Result{noRules}}, Unchecked},
		"no result":          {Run{Results: []*lint.Result{nil}}, Unchecked},
		"state nobody knows": {Run{Results: []*lint.Result{{State: "done"}}}, Unchecked},
	} {
		if got := c.run.Exit(); got != c.want {
			t.Errorf("%s: exit %d, not %d", name, got, c.want)
		}
		if c.run.Meaning() == "" {
			t.Errorf("%s: no meaning", name)
		}
	}
}

func TestCountLosesNothing(t *testing.T) {
	a := judged(finding.Error, finding.Warning, finding.Note, finding.Note, "fatal")
	a.Checked = append(a.Checked, lint.Checked{Rule: "c/d", NotJudged: []lint.Unjudged{{Key: "x"}, {Key: "y"}}})
	run := Run{Results: []*lint.Result{a, {State: lint.NotValid}, lint.Unreadable("b", errors.New("gone")), nil}}
	want := Counts{Plans: 4, Judged: 1, NotValid: 1, NotChecked: 2, Errors: 3, Warnings: 1, Notes: 2, NotJudged: 2}
	if got := run.Count(); got != want {
		t.Errorf("counted %+v, not %+v", got, want)
	}
}
