package report

import (
	"fmt"
	"strings"

	"liftlint/internal/lint"
)

// The things that a run can be over.
const (
	plan     = "plan"
	gearList = "register"
)

// Noun is what the results of a run are of: plans, or registers whose gear is
// judged by itself.
func (r Run) Noun() string {
	for _, x := range r.Results {
		if IsGear(x) {
			return gearList
		}
	}
	return plan
}

// IsGear reports whether a result is of a register and not of a plan.
func IsGear(x *lint.Result) bool { return x != nil && x.Gear != nil }

// NounOf is what one result is of.
func NounOf(x *lint.Result) string {
	if IsGear(x) {
		return gearList
	}
	return plan
}

// ItemsOf says how many items of a register were judged; what is not in service is
// not. It is empty for a plan.
func ItemsOf(x *lint.Result) string {
	if !IsGear(x) {
		return ""
	}
	said := fmt.Sprintf("%s: %d judged, %d not in service and not judged.", Plural(x.Gear.Items, "item"), x.Gear.Judged, x.Gear.Aside)
	if open := LeftToPlan(*x.Gear); open != "" {
		said += " " + open
	}
	return said
}

// LeftToPlan says what was not asked of gear by itself, and what of it could not be
// judged, since only a plan has what it takes. It is empty where there is neither.
func LeftToPlan(c lint.GearCount) string {
	var parts []string
	if c.NotAsked > 0 {
		parts = append(parts, Plural(c.NotAsked, "rule")+" not asked, for what only a plan has")
	}
	if c.ForPlan > 0 {
		parts = append(parts, Plural(c.ForPlan, "check")+" not made, for what is not given here and a plan may give")
	}
	if len(parts) == 0 {
		return ""
	}
	return "Left to checks of plans: " + strings.Join(parts, "; ") + " (--format json names each, and why)."
}

// DayMissing says what it means that a register is judged for no day; it is empty
// where there is one.
func DayMissing(x *lint.Result) string {
	if !IsGear(x) || x.State != lint.Judged || x.Day != "" {
		return ""
	}
	return "No day is given with --on: what is overdue, or due soon, was not judged."
}

// NothingKnown says what it means that a plan or a register is not valid.
func NothingKnown(x *lint.Result) string {
	if IsGear(x) {
		return "no rule ran, and no item of this register, or of those checked with it, was judged."
	}
	return "no rule ran, and nothing else about this lift is known."
}
