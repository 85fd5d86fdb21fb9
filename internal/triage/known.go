package triage

import (
	"fmt"
	"slices"

	"liftlint/internal/builtin"
	"liftlint/internal/nearest"
	"liftlint/internal/plan"
)

// The checks that look into waivers.
const (
	waiverExpired   = "waiver/expired"
	waiverUnused    = "waiver/unused"
	waiverNotJudged = "waiver/not_judged"
	waiverUnknown   = "waiver/unknown"
	waiverForbidden = "waiver/forbidden"
	waiverLapsed    = "waiver/lapsed"
	waiverNotBound  = "waiver/not_bound"
	waiverTwice     = "waiver/twice"
	waiverFormerID  = "waiver/former_id"
)

// isKnown reports whether the waiver names a rule that may be waived and a part of
// the lift, and says what is wrong where it does not.
func (x *waiving) isKnown() bool {
	if c, ok := builtin.Lookup(x.Waiver.Rule); ok {
		return x.say(waiverForbidden, "rule", fmt.Sprintf("%s is a check of liftlint itself, whose findings can't be waived", c.ID))
	}
	r, former, ok := x.Case.rule(x.Waiver.Rule)
	switch {
	case !ok:
		return x.say(waiverUnknown, "rule", fmt.Sprintf("there is no rule %q%s", x.Waiver.Rule, near(x.Waiver.Rule, x.ids(), "; `liftlint rules` lists them")))
	case r.Forbidden != "":
		return x.say(waiverForbidden, "rule", "what "+r.ID+" finds can't be waived: "+r.Forbidden)
	case !slices.Contains(r.Subjects, x.here(x.Subject)) && !slices.Contains(x.Keys, x.here(x.Subject)):
		return x.say(waiverUnknown, "subject", fmt.Sprintf("%s judges no %q%s", r.ID, x.Subject, near(x.Subject, x.stableSubjects(), "; the report names the keys behind each rule")))
	case x.byPlace(x.Subject) != "":
		return x.say(waiverNotBound, "subject", fmt.Sprintf("%s: write %q here if that is the leg that is meant, or give the leg an `id`", x.byPlace(x.Subject), x.stable(x.Subject)))
	case x.Grade != "" && !slices.Contains(r.Grades, x.Grade):
		return x.say(waiverUnknown, "grade", fmt.Sprintf("%s has no grade %q%s", r.ID, x.Grade, nearest.Hint(x.Grade, r.Grades)))
	}
	if former {
		x.say(waiverFormerID, "rule", fmt.Sprintf("rule %s is called %s now: write that", x.Waiver.Rule, r.ID))
	}
	return true
}

// stableSubjects are what the waiver may name.
func (x *waiving) stableSubjects() []string {
	list := make([]string, len(x.rule.Subjects))
	for i, key := range x.rule.Subjects {
		list[i] = x.stable(key)
	}
	return list
}

// near offers the nearest name, or else says where there are names.
func near(name string, known []string, otherwise string) string {
	if k, ok := nearest.Name(name, known); ok {
		return fmt.Sprintf(": did you mean %q?", k)
	}
	return otherwise
}

// isTwice reports whether another waiver names the same: then none of them holds.
func (x *waiving) isTwice(own int, waivers []plan.Waiver) bool {
	for i, w := range waivers {
		r, _, ok := x.Case.rule(w.Rule)
		if i != own && ok && r.ID == x.rule.ID && w.Subject == x.Subject {
			x.say(waiverTwice, "subject", fmt.Sprintf("another waiver names %s and %s as well: keep one of them; none holds", r.ID, x.Subject))
			return true
		}
	}
	return false
}
