package triage

import (
	"cmp"
	"fmt"
	"time"

	"liftlint/internal/finding"
)

// isInForce reports whether the waiver holds for what it names as it is found now,
// and says what is wrong where it does not.
func (x *waiving) isInForce() bool {
	idle := x.rule.idle(x.here(x.Subject))
	switch {
	case len(x.found) == 0 && idle == "":
		return x.say(waiverUnused, "subject", fmt.Sprintf("%s finds nothing on %s: take this waiver out", x.rule.ID, x.Subject))
	case x.Day == nil:
		return x.say(waiverExpired, "until", fmt.Sprintf("the day of the lift is not known, so that it can't be told whether a waiver until %s holds: give `date` of the lift", day(x.Until)))
	case x.Day.After(x.Until):
		return x.say(waiverExpired, "until", fmt.Sprintf("the waiver of %s on %s held until %s, and the plan is judged for %s", x.rule.ID, x.Subject, day(x.Until), day(*x.Day)))
	case len(x.found) == 0:
		return x.say(waiverNotJudged, "subject", idle+": whether anything is left to waive can't be told, and the waiver waives nothing")
	}
	for _, f := range x.of {
		was, key, why := x.accepts(f)
		if why != "" {
			return x.say(waiverNotBound, key, why)
		}
		if why := was.worse(f, x.rule.Grades); why != "" {
			return x.say(waiverLapsed, cmp.Or(key, "subject"), fmt.Sprintf("the waiver of %s on %s has lapsed: %s", x.rule.ID, x.Subject, why))
		}
	}
	return true
}

func day(t time.Time) string { return t.Format(time.DateOnly) }

// accepts is how bad a finding the waiver accepts. Where it does not say so in a
// way that can be compared, why says what is wrong with which key.
func (x *waiving) accepts(f finding.Finding) (was accepted, key, why string) {
	was.grade = x.Grade
	switch {
	case x.Grade == "" && len(x.rule.Grades) > 0:
		return was, "rule", fmt.Sprintf("%s has grades: give the `grade` that is accepted, such as %s", x.rule.ID, f.Grade)
	case x.Grade != f.Grade || x.Measured == "" && x.Limit == "":
		return was, "", ""
	case x.Measured == "":
		return was, "limit", "a limit alone binds nothing: give the figure that is `measured` too, or leave both out"
	case f.Measured == nil:
		return was, "measured", x.rule.ID + " gives no figure here to compare: leave `measured` out"
	case f.Limit == nil && x.Limit != "":
		return was, "limit", x.rule.ID + " has no limit here to compare: leave `limit` out"
	case f.Limit != nil && x.Limit == "":
		return was, "measured", fmt.Sprintf("give the `limit` that the figure is accepted against, such as %s", f.Limit.Text)
	}
	return x.figures(f)
}

// figures reads those that the waiver accepts.
func (x *waiving) figures(f finding.Finding) (was accepted, key, why string) {
	was.grade = x.Grade
	for _, one := range []struct {
		key, text string
		now       *finding.Figure
		to        **amount
	}{{"measured", x.Measured, f.Measured, &was.measured}, {"limit", x.Limit, f.Limit, &was.limit}} {
		if one.now == nil {
			continue
		}
		v, err := parse(one.now.Field, one.text)
		if err != nil {
			return was, one.key, fmt.Sprintf("the figure can't be compared with %s: %v", one.now.Text, err)
		}
		*one.to = &amount{value: v, text: one.text, rounded: true}
	}
	if way := direction(f); way != 0 && way*(was.measured.value-was.limit.value) < 0 {
		return was, "measured", fmt.Sprintf("%s against %s breaks no limit: write both as the report prints them", x.Measured, x.Limit)
	}
	return was, "measured", ""
}
