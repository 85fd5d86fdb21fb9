package junit

import (
	"cmp"
	"fmt"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// findings of one plan by their rule.
type findings struct {
	order   []string // ids, as they first occur
	list    map[string][]finding.Finding
	checked map[string]bool // rules of the account
}

func byRule(x *lint.Result) findings {
	f := findings{list: map[string][]finding.Finding{}, checked: map[string]bool{}}
	for _, c := range x.Checked {
		f.checked[c.Rule] = true
	}
	for _, one := range x.Findings {
		if f.list[one.Rule] == nil {
			f.order = append(f.order, one.Rule)
		}
		f.list[one.Rule] = append(f.list[one.Rule], one)
	}
	return f
}

// ofCheck is the case of a check that is no rule and found something.
func ofCheck(x *lint.Result, list []finding.Finding, threshold finding.Severity) testCase {
	c := titled(list[0].Rule, list[0].Title)
	if x.State == lint.Unread {
		c.at(list[0])
		c.Error = &answer{Message: report.Visible(list[0].Message), Type: "not_checked", Text: told(list)}
		return c
	}
	c.found(list, threshold, x.State == lint.NotValid)
	return c
}

// ofRule is the case of a rule. What could not be judged is skipped and says so,
// unless something worse is to be said of another subject.
func ofRule(x *lint.Result, k lint.Checked, list []finding.Finding, threshold finding.Severity) testCase {
	c := titled(k.Rule, k.Title)
	if len(list) > 0 {
		c.found(list, threshold, false)
	}
	open := unjudged(k)
	switch {
	case c.Failure != nil:
		if open != "" {
			c.Failure.Text += "\n" + open
		}
	case open != "":
		c.Skipped = &answer{Message: fmt.Sprintf("not judged: %d of %s", max(len(k.NotJudged), 1), report.Plural(max(report.Subjects(k), 1), "subject")), Text: open}
	case k.DoesNotApply != "":
		c.Skipped = &answer{Message: report.Visible("does not apply: " + k.DoesNotApply)}
	}
	return c
}

func titled(rule, title string) testCase {
	topic, _, _ := strings.Cut(rule, "/")
	name := report.Visible(rule)
	if title != "" {
		name += ": " + report.Visible(title)
	}
	return testCase{ClassName: report.Visible(cmp.Or(topic, "liftlint")), Name: name}
}

// found makes a failure of findings at or above the threshold, or where the plan
// is not valid; below it, and where they are set aside, they are told beside a case
// that does not fail.
func (c *testCase) found(list []finding.Finding, threshold finding.Severity, always bool) {
	c.at(list[0])
	counting := finding.Counting(list)
	worst := finding.Worst(counting)
	if !always && (worst == "" || !worst.AtLeast(threshold)) {
		c.SystemOut = &output{told(list)}
		return
	}
	if len(counting) == 0 {
		counting = list
	}
	c.at(counting[0])
	message := report.Sentence(counting[0].Message)
	if len(counting) > 1 {
		message += fmt.Sprintf(" And %d more.", len(counting)-1)
	}
	c.Failure = &answer{Message: report.Visible(message), Type: report.Visible(string(worst)), Text: told(list)}
}

func (c *testCase) at(f finding.Finding) {
	c.File, c.Line = report.Visible(f.Place.File), f.Place.Range.From.Line
}

// told is findings in words, a paragraph each.
func told(list []finding.Finding) string {
	var b strings.Builder
	for i, f := range list {
		if i > 0 {
			b.WriteString("\n")
		}
		fmt.Fprintf(&b, "%s\n", report.Visible(fmt.Sprintf("%s: %s: %s", report.Place(f.Place), f.Severity, report.Sentence(f.Message))))
		if f.Aside != nil {
			fmt.Fprintf(&b, "  %s: %s\n", f.Word(), report.Visible(f.Aside.Words()))
		}
		if f.Remedy != "" {
			fmt.Fprintf(&b, "  put it right: %s\n", report.Visible(f.Remedy))
		}
		for _, x := range f.Related {
			fmt.Fprintf(&b, "  see also: %s\n", report.Visible(report.Place(x.Place)+", "+x.Caption))
		}
		fmt.Fprintf(&b, "  source: %s\n", report.Visible(report.Sources(f.Citations)))
	}
	return b.String()
}

// unjudged tells of the subjects that could not be judged; empty where all were.
func unjudged(k lint.Checked) string {
	var b strings.Builder
	for _, u := range k.NotJudged {
		why := "something that is not named"
		if len(u.WaitsFor) > 0 {
			why = strings.Join(u.WaitsFor, "; ")
		}
		fmt.Fprintf(&b, "not judged: %s\n", report.Visible(u.Key+": "+why))
	}
	if report.Subjects(k) == 0 && k.DoesNotApply == "" {
		b.WriteString("not judged: the rule judged nothing, and does not say why\n")
	}
	return b.String()
}
