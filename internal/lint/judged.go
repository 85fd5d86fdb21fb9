package lint

import (
	"slices"
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/finding"
	"liftlint/internal/policy"
)

// addVerdicts turns what the rules found into findings, and keeps account of
// every subject.
func (r *Result) addVerdicts(verdicts []policy.Verdict) {
	for _, v := range verdicts {
		c := Checked{Rule: v.Rule.ID, Title: v.Rule.Title, Worst: v.Rule.Worst(r.Stage), DoesNotApply: v.DoesNotApply, NotAsked: !v.Rule.Asked(r.Stage), FormerIDs: v.Rule.FormerIDs, By: v.Rule}
		for _, o := range v.Outcomes {
			switch o.State {
			case policy.Broken:
				c.Broken = append(c.Broken, o.Subject.Key)
				r.Findings = append(r.Findings, r.broken(v.Rule, o))
			case policy.NotJudged:
				c.NotJudged = append(c.NotJudged, Unjudged{Key: o.Subject.Key, WaitsFor: r.waitsFor(o), ForPlan: r.planMayGive(v.Rule, o)})
			case policy.Met:
				c.Met = append(c.Met, o.Subject.Key)
			default:
				c.NotJudged = append(c.NotJudged, Unjudged{Key: o.Subject.Key, WaitsFor: []string{"the rule gave no answer that is known"}})
			}
		}
		r.Checked = append(r.Checked, c)
	}
}

func (r *Result) broken(rule *policy.Rule, o policy.Outcome) finding.Finding {
	p := r.printerFor(rule, o)
	f := finding.Finding{
		Rule:      rule.ID,
		Title:     rule.TitleOf(o),
		Severity:  rule.SeverityOf(o, r.Stage),
		Key:       o.Subject.Key,
		Message:   rule.Message(o, p.text),
		Place:     r.locate(rule.PlaceOf(o)),
		Related:   r.related(concerning(rule, o, r.Facts.Related[o.Subject.Key])),
		Measured:  p.measured,
		Limit:     p.limit,
		Citations: rule.CitationsOf(o),
	}
	if o.Grade != nil {
		f.Grade = o.Grade.Name
	}
	f.Related = slices.DeleteFunc(f.Related, func(x finding.Related) bool { return x.Place.Range == f.Place.Range })
	return f
}

// concerning keeps the places that have to do with what the rule measured, or with the
// nested record that it points at.
func concerning(rule *policy.Rule, o policy.Outcome, list []facts.Related) []facts.Related {
	measured, _, _ := rule.MeasuredOf(o)
	var out []facts.Related
	for _, x := range list {
		if x.Field == "" || x.Field == measured || x.Field == rule.Place || strings.HasPrefix(measured, x.Field+".") {
			out = append(out, x)
		}
	}
	return out
}

// waitsFor says in words what an outcome waits for.
func (r *Result) waitsFor(o policy.Outcome) []string {
	var words []string
	gap := r.gapOf(o)
	for _, in := range gap.Inputs {
		words = append(words, in.Label+" is not given")
	}
	for _, why := range gap.Reasons {
		words = append(words, why.Text)
	}
	slices.Sort(words)
	return slices.Compact(words)
}

// gap is what a missing field waits for; the field itself where nothing is
// known of it, so that it is never passed over.
func (r *Result) gap(subject facts.View, field string) facts.Gap {
	gap, ok := r.Facts.Gaps[facts.GapKey{Key: subject.Key, Field: field}]
	if ok {
		return gap
	}
	what := " is not known"
	if _, there := subject.Field(field); there { // its value is a word for unknown
		what = " is not given"
	}
	return facts.Gap{Reasons: []facts.Reason{{Text: field + " of " + subject.Key + what}}}
}
