package report

import (
	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// Counts are the sums over plans, or over registers.
type Counts struct {
	Plans, Judged, NotValid, NotChecked int // every plan is one of the three
	Errors, Warnings, Notes             int // findings that count
	Waived, Known                       int // findings set aside by a waiver, and by the baseline
	NotJudged                           int // subjects of rules that could not be judged

	noun string // what they are, where they are no plans
}

// Count sums up the run.
func (r Run) Count() Counts {
	var sum Counts
	for _, x := range r.Results {
		sum.add(x)
	}
	sum.Plans += len(r.Lost)
	sum.NotChecked += len(r.Lost)
	return sum
}

// CountOf sums up one result.
func CountOf(x *lint.Result) Counts {
	var c Counts
	c.add(x)
	return c
}

func (c *Counts) add(x *lint.Result) {
	c.Plans++
	if IsGear(x) {
		c.noun = gearList
	}
	switch {
	case !Understood(x):
		c.NotChecked++
	case x.State == lint.NotValid:
		c.NotValid++
	default:
		c.Judged++
	}
	if x == nil {
		return
	}
	c.Waived += len(Waived(x))
	c.Known += len(Known(x))
	for _, f := range finding.Counting(x.Findings) {
		switch f.Severity {
		case finding.Note:
			c.Notes++
		case finding.Warning:
			c.Warnings++
		default: // a severity that nobody knows is never read as harmless
			c.Errors++
		}
	}
	for _, k := range x.Checked {
		c.NotJudged += len(k.NotJudged)
	}
}
