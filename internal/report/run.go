// Package report holds what every format of a report shares: the run, what it
// comes to, the caution, and how text from outside is made harmless.
package report

import (
	"fmt"
	"slices"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// Run is one run over any number of plans, or of registers.
type Run struct {
	Results  []*lint.Result
	Failures []string         // what could not be checked at all: a rule has failed, the tool has
	Lost     []string         // plans that a failure has kept from being checked, and that have no result
	FailOn   finding.Severity // the least severity that makes a run fail; empty is error
	// Unchanged counts the plans left out on purpose: neither they nor what they are
	// judged by has changed since a revision that was asked for.
	Unchanged int
	// Gone are the plans that were there in that revision and are not any more.
	Gone []string
	// GoneConfigs are the configurations that were, and that held for what was to be
	// checked.
	GoneConfigs []string
	// NotCompared are unchanged plans that could not be read, so that gear and lift
	// numbers of the changed ones were not held against theirs.
	NotCompared []string
}

// Threshold is the least severity that makes the run fail.
func (r Run) Threshold() finding.Severity {
	if r.FailOn == "" {
		return finding.Error
	}
	return r.FailOn
}

// Exit is what a run comes to, as the exit code of the command.
type Exit int

// The exits a check can have. Usage errors never get as far as a report.
const (
	Clean     Exit = 0 // checked, nothing at or above the threshold
	Findings  Exit = 1 // findings at or above it, or a plan that is not valid
	Unchecked Exit = 3 // something could not be checked
	Nothing   Exit = 4 // nothing was checked
)

// Meaning says what the code stands for. It never says more than was checked.
func (r Run) Meaning() string {
	c := r.Count()
	switch r.Exit() {
	case Clean:
		if c.Plans == 0 {
			return r.idleWords()
		}
		return r.cleanWords(c)
	case Findings:
		if c.NotValid > 0 {
			return fmt.Sprintf("%d of %d %ss not valid, so that no rule ran on them", c.NotValid, c.Plans, r.Noun())
		}
		return "there are findings of severity " + string(r.Threshold()) + " or worse"
	case Unchecked:
		if len(r.Failures) == 0 && slices.ContainsFunc(r.Results, lacksDay) {
			return "no day is given, so that what is overdue was not judged"
		}
		return "something could not be checked"
	}
	if r.noGearJudged() {
		return "no item here may be used, so that nothing was judged"
	}
	return "nothing was checked"
}

// idleWords say why no plan of a change had to be checked.
func (r Run) idleWords() string {
	gone := ""
	if n := len(r.Gone); n > 0 {
		gone = fmt.Sprintf("%s %s gone", Plural(n, "plan"), be(n))
	}
	if r.Unchanged == 0 {
		return "nothing was checked: " + gone + ", and no other differs"
	}
	said := fmt.Sprintf("nothing was checked: of %s none has changed, nor has what judges them", Plural(r.Unchanged, "plan"))
	if gone != "" {
		said += "; " + gone
	}
	return said
}

func be(n int) string {
	if n == 1 {
		return "is"
	}
	return "are"
}

// cleanWords never call a plan free of what is only set aside.
func (r Run) cleanWords(c Counts) string {
	said, besides := "nothing of severity "+string(r.Threshold())+" or worse was found", ""
	if aside := c.asideWords(); aside != "" {
		besides = ", besides " + aside
	}
	if c.NotJudged > 0 {
		return fmt.Sprintf("%s%s, and %d times a rule could not judge", said, besides, c.NotJudged)
	}
	return said + " by the checks that were made" + besides
}

// Exit finds the code. Could not check goes before findings, findings before
// nothing to check.
func (r Run) Exit() Exit {
	code := Nothing
	if len(r.Failures) > 0 {
		return Unchecked
	}
	if r.Unchanged > 0 || len(r.Gone) > 0 {
		code = Clean
	}
	for _, x := range r.Results {
		if !Understood(x) || lacksDay(x) && !r.noGearJudged() {
			return Unchecked
		}
		if code == Nothing {
			code = Clean
		}
		worst := finding.Worst(finding.Counting(x.Findings))
		if x.State == lint.NotValid || worst != "" && worst.AtLeast(r.Threshold()) {
			code = Findings
		}
	}
	if r.noGearJudged() {
		return Nothing
	}
	return code
}

func lacksDay(x *lint.Result) bool { return DayMissing(x) != "" }

// noGearJudged reports whether the run is over registers of which every item is kept
// from being used, so that no rule was put to any.
func (r Run) noGearJudged() bool {
	for _, x := range r.Results {
		if !IsGear(x) || x.State != lint.Judged || x.Gear.Judged > 0 {
			return false
		}
	}
	return len(r.Results) > 0
}

// Understood reports whether a result says what it found: a plan judged by at
// least one rule, or one that is not valid and says so.
func Understood(x *lint.Result) bool {
	if x == nil {
		return false
	}
	return x.State == lint.NotValid || x.State == lint.Judged && len(x.Checked) > 0
}
