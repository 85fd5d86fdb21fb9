// Package junit is the report for build services that read JUnit's XML. A plan
// is a test suite and a rule a test case. The report has a failure or an error
// exactly where the exit code of the run is not 0.
package junit

import (
	"encoding/xml"
	"fmt"
	"io"
	"strings"

	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// Write writes the report of a run. The only error is the writer's own.
func Write(w io.Writer, run report.Run) error {
	var b strings.Builder
	b.WriteString(xml.Header)
	e := xml.NewEncoder(&b)
	e.Indent("", "  ")
	if err := e.Encode(build(run)); err != nil {
		return fmt.Errorf("junit report: %w", err)
	}
	b.WriteString("\n")
	_, err := io.WriteString(w, b.String())
	return err
}

func build(run report.Run) testSuites {
	all := testSuites{Name: "liftlint"}
	if s, ok := ownSuite(run); ok {
		all.add(s)
	}
	for _, x := range run.Results {
		if x != nil {
			all.add(plan(x, run))
		}
	}
	all.Suites[len(all.Suites)-1].SystemOut = &output{report.Caution} // there is one suite at least
	return all
}

// ownSuite holds what could not be checked at all; it is there only then.
func ownSuite(run report.Run) (testSuite, bool) {
	s := testSuite{Name: "liftlint"}
	for _, f := range run.Failures {
		s.add(wrong("could not check", f))
	}
	for _, x := range run.Results {
		if x == nil {
			s.add(wrong("not checked", "there is no result for one plan"))
		}
	}
	switch {
	case len(run.Results) > 0 || len(run.Failures) > 0:
	case run.Unchanged > 0, len(run.Gone) > 0:
		s.add(testCase{ClassName: "liftlint", Name: "nothing checked", Skipped: &answer{Message: run.Meaning()}})
	default:
		s.add(wrong("nothing checked", "there was no plan to judge"))
	}
	return s, s.Tests > 0
}

func wrong(name, what string) testCase {
	what = lines(strings.TrimSpace(what))
	first, _, _ := strings.Cut(what, "\n")
	return testCase{ClassName: "liftlint", Name: name, Error: &answer{Message: first, Type: "not_checked", Text: what}}
}

// plan is the suite of one plan: a case for each check that found something and
// is no rule, then one for each rule.
func plan(x *lint.Result, run report.Run) testSuite {
	s := testSuite{Name: report.Visible(x.File), File: report.Visible(x.File), Properties: propertiesOf(x)}
	found := byRule(x)
	for _, id := range found.order {
		if !found.checked[id] {
			s.add(ofCheck(x, found.list[id], run.Threshold()))
		}
	}
	for _, c := range x.Checked {
		s.add(ofRule(x, c, found.list[c.Rule], run.Threshold()))
	}
	switch {
	case x.State == lint.Unread && len(x.Findings) > 0: // the case of that finding is an error
	case !report.Understood(x):
		s.add(wrong("not checked", "no rule was put to this "+report.NounOf(x)))
	case report.DayMissing(x) != "":
		s.add(wrong("no day given", report.DayMissing(x)))
	case x.State == lint.NotValid && s.Failures == 0:
		s.add(testCase{ClassName: "liftlint", Name: "not valid", Failure: &answer{Message: "the " + report.NounOf(x) + " is not valid, so that no rule ran", Type: "not_valid"}})
	}
	return s
}

func propertiesOf(x *lint.Result) *properties {
	var p properties
	for _, v := range []property{{report.NounOf(x), report.NameOf(x)}, {"state", string(x.State)}, {"profile", x.Profile}, {"stage", x.Stage}, {"day", x.Day}, {"items", report.ItemsOf(x)}, {"not judged", report.DayMissing(x)}} {
		if v.Value != "" {
			p.add(v.Name, v.Value)
		}
	}
	for _, o := range x.Overrides {
		p.add("set by "+o.From, fmt.Sprintf("%s, %s: %s instead of %s", o.Rule, o.What, o.Is, o.Was))
	}
	for _, f := range report.Waived(x) {
		p.add("waived", report.WaiverOf(f))
	}
	if p.List == nil {
		return nil
	}
	return &p
}

// lines makes a text of several lines harmless.
func lines(text string) string {
	list := strings.Split(text, "\n")
	for i, l := range list {
		list[i] = report.Visible(l)
	}
	return strings.Join(list, "\n")
}
