// Package report holds what every format shows: the results of a run, its
// counts and the caution.
package report

import (
	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// Run is everything that one call of the program found.
type Run struct {
	Results  []*lint.Result   // one a plan, in the order given
	Failures []string         // what could not be checked at all, and why
	FailOn   finding.Severity // the least severity that fails the run
}

// Caution ends every report that people read.
const Caution = "This is an aid to a qualified person's review and no approval to lift. " +
	"The maker's tag and manual, the crane's load chart and local law prevail. " +
	"Damaged or untagged gear is taken out of service."

// Counts sums a run up.
type Counts struct {
	Plans     int `json:"plans" doc:"Plans that were looked at."`
	NotValid  int `json:"not_valid" doc:"Plans that could not be understood, so that no rule ran."`
	Unread    int `json:"unread" doc:"Files that could not be opened."`
	Errors    int `json:"errors" doc:"Findings of severity error."`
	Warnings  int `json:"warnings" doc:"Findings of severity warning."`
	Notes     int `json:"notes" doc:"Findings of severity note."`
	NotJudged int `json:"not_judged" doc:"Subjects that a rule could not judge for want of a figure."`
	Failures  int `json:"failures" doc:"Failures of a rule or of the tool."`
}

// Count sums the run up.
func (run Run) Count() Counts {
	c := Counts{Failures: len(run.Failures)}
	for _, r := range run.Results {
		c.add(r)
	}
	return c
}

// CountOf sums one result up.
func CountOf(r *lint.Result) Counts {
	var c Counts
	c.add(r)
	return c
}

func (c *Counts) add(r *lint.Result) {
	c.Plans++
	switch r.State {
	case lint.NotValid:
		c.NotValid++
	case lint.Unread:
		c.Unread++
	}
	for _, f := range r.Findings {
		switch f.Severity {
		case finding.Note:
			c.Notes++
		case finding.Warning:
			c.Warnings++
		default:
			c.Errors++
		}
	}
	for _, k := range r.Checked {
		c.NotJudged += len(k.NotJudged)
	}
}
