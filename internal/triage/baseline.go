package triage

import (
	"fmt"

	"liftlint/internal/builtin"
	"liftlint/internal/finding"
	"liftlint/internal/source"
)

// The checks that look into a baseline.
const (
	baselineGone      = "baseline/gone"
	baselineNotJudged = "baseline/not_judged"
	baselineNotHeld   = "baseline/not_held"
	baselineFormer    = "baseline/former_id"
)

// BaselineOtherStage is the check whether a baseline is of the stage that plans are
// judged at.
const BaselineOtherStage = "baseline/other_stage"

// Known sets aside the findings of one plan that the baseline has and that are no
// worse than there. Whatever else it has of the plan is told of in a note.
func Known(b *Baseline, file string, c Case) Step {
	return func(fs []finding.Finding) []finding.Finding {
		known := b.plan(file)
		prints := fingerprints(file, fs, c)
		for _, k := range known.Findings {
			fs = b.known(fs, prints, k.underNewID(file, c), c)
		}
		return fs
	}
}

// OtherStage tells that a baseline is of another stage than the plan is judged at.
func OtherStage(b *Baseline, stage string) Step {
	return func(fs []finding.Finding) []finding.Finding {
		at := source.Position{Line: 1, Column: 1}
		return append(fs, builtin.Finding(BaselineOtherStage, b.NotHeld(stage), "baseline", source.Location{File: b.File, Range: source.Range{From: at, To: at}}, nil))
	}
}

// known looks one entry up among the findings.
func (b *Baseline) known(fs []finding.Finding, prints map[string]int, k KnownFinding, c Case) []finding.Finding {
	at := b.at(k)
	note := func(id, message string, related []finding.Related) []finding.Finding {
		return append(fs, builtin.Finding(id, message, "baseline/"+k.Rule+"/"+k.Key, at, related))
	}
	if why := c.byPlace(k.Key); why != "" {
		return note(baselineNotHeld, why+": what the baseline has of it sets nothing aside; write the baseline anew, with --grow, which names it by what it goes to", nil)
	}
	i, ok := prints[k.Fingerprint]
	if why := c.idle(k.Rule, k.Key); !ok && why != "" {
		return note(baselineNotJudged, fmt.Sprintf("%s: whether what the baseline has of it is still there can't be told, and it stays in the baseline", why), nil)
	}
	if !ok {
		return note(baselineGone, fmt.Sprintf("%s finds nothing any more on %s: write the baseline anew, which takes this out", k.Rule, k.Key), nil)
	}
	if k.former != "" {
		fs = note(baselineFormer, fmt.Sprintf("rule %s is called %s now: write the baseline anew", k.former, k.Rule), nil)
	}
	f := &fs[i]
	if f.Aside != nil {
		return fs
	}
	why := c.forbidden(f.Rule)
	if why == "" {
		why = k.worse(*f, c)
	}
	if why != "" {
		return note(baselineNotHeld, fmt.Sprintf("what %s finds on %s counts again: %s", k.Rule, k.Key, why), []finding.Related{{Caption: "what it is about", Place: f.Place}})
	}
	f.Aside = &finding.Aside{Means: finding.ByBaseline, Place: at}
	return fs
}

// underNewID is the entry by the id that its rule has now.
func (k KnownFinding) underNewID(file string, c Case) KnownFinding {
	if r, former, _ := c.rule(k.Rule); former {
		k.former, k.Rule = k.Rule, r.ID
		k.Fingerprint = finding.Fingerprint(file, r.ID, k.Key, 0)
	}
	return k
}

// worse says how a finding is worse than the entry has it; empty where it is not.
func (k KnownFinding) worse(f finding.Finding, c Case) string {
	if was := finding.Severity(k.Severity); !was.AtLeast(f.Severity) {
		return fmt.Sprintf("its severity is %s, and was %s", f.Severity, was)
	}
	was := accepted{}
	if k.Grade != nil {
		was.grade = *k.Grade
	}
	for _, one := range []struct {
		then *KnownFigure
		now  *finding.Figure
		to   **amount
	}{{k.Measured, f.Measured, &was.measured}, {k.Limit, f.Limit, &was.limit}} {
		switch {
		case one.then == nil:
		case one.now != nil && one.now.Field != one.then.Field && f.Grade == was.grade:
			return fmt.Sprintf("it goes by %s, and by %s in the baseline", one.now.Field, one.then.Field)
		default:
			*one.to = &amount{value: one.then.Value, text: c.Print(one.then.Field, one.then.Value)}
		}
	}
	if was.measured == nil && f.Measured != nil && f.Grade == was.grade {
		return "the baseline has no figure to compare with"
	}
	return was.worse(f, c.grades(f.Rule))
}

// fingerprints give the index of each finding. A rule finds one thing of a subject.
func fingerprints(file string, fs []finding.Finding, c Case) map[string]int {
	prints := map[string]int{}
	seen := map[[2]string]int{}
	for i, f := range fs {
		like := [2]string{f.Rule, f.Key}
		prints[finding.Fingerprint(file, f.Rule, f.Identity(c.stable(f.Key)), seen[like])] = i
		seen[like]++
	}
	return prints
}

// at is where an entry stands.
func (b *Baseline) at(k KnownFinding) source.Location {
	return source.Location{File: b.File, Range: source.Range{From: source.Position{Line: k.line, Column: 1}, To: source.Position{Line: k.line, Column: 1}}}
}
