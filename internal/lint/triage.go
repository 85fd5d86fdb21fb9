package lint

import (
	"fmt"
	"slices"
	"time"

	"liftlint/internal/facts"
	"liftlint/internal/plan"
	"liftlint/internal/policy"
	"liftlint/internal/source"
	"liftlint/internal/triage"
)

// settle goes over the findings: it sets aside what is waived and what the
// baseline has, and puts all in order.
func (r *Result) settle(rules []*policy.Rule, o Options) error {
	waivers, err := plan.Waivers(r.doc)
	if err != nil {
		return fmt.Errorf("%s: %w", r.File, err)
	}
	c, name := r.caseOf(rules), r.File
	if o.Named != nil {
		name = o.Named(r.File)
	}
	steps := []triage.Step{triage.Waive(waivers, c)}
	if o.Record {
		r.Recorded = &triage.KnownPlan{File: name, Profile: r.Profile}
		steps = append(steps, triage.Record(r.Recorded, c))
	}
	r.known = knownBy{o.Baseline, name, c}
	switch {
	case o.Baseline == nil:
	case o.Baseline.NotHeld(o.Stage) != "":
		r.known.baseline = nil
		steps = append(steps, triage.OtherStage(o.Baseline, o.Stage))
	default:
		if err := o.Baseline.Fits(name, r.Profile); err != nil {
			return fmt.Errorf("%s: %w", r.File, err)
		}
		steps = append(steps, triage.Known(o.Baseline, name, c))
	}
	r.Findings = triage.Run(r.Findings, steps...)
	return nil
}

// caseOf is what triage has to know of the plan.
func (r *Result) caseOf(rules []*policy.Rule) triage.Case {
	c := triage.Case{Keys: r.keys(), Stable: r.Stable, Locate: func(pointer string) source.Location { return r.locate("#" + pointer) }}
	c.Print = func(field string, value float64) string { return single(field, value, r.Units) }
	if day, err := time.Parse(time.DateOnly, r.Day); err == nil {
		c.Day = &day
	}
	checked := map[string]Checked{}
	for _, k := range r.Checked {
		checked[k.Rule] = k
	}
	for _, rule := range rules {
		own := triage.Rule{ID: rule.ID, FormerIDs: rule.FormerIDs, Grades: rule.GradeNames(), Forbidden: rule.Unwaivable()}
		checked[rule.ID].settle(&own)
		c.Rules = append(c.Rules, own)
	}
	return c
}

// settle notes of a rule what it was put to.
func (c Checked) settle(rule *triage.Rule) {
	rule.Subjects = c.subjects()
	for _, u := range c.NotJudged {
		rule.NotJudged = append(rule.NotJudged, triage.Wait{Key: u.Key, For: u.WaitsFor})
	}
	if c.NotAsked {
		rule.NotAsked = c.DoesNotApply
	}
}

func (c Checked) subjects() []string {
	keys := slices.Concat(c.Broken, c.Met)
	for _, u := range c.NotJudged {
		keys = append(keys, u.Key)
	}
	return keys
}

// keys are those of all records of the facts.
func (r *Result) keys() []string {
	var list []string
	for _, name := range facts.Collections() {
		views, _ := r.Facts.Document.Records(name)
		for _, v := range views {
			list = append(list, v.Key)
		}
	}
	return list
}
