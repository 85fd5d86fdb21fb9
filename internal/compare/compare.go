package compare

import (
	"cmp"
	"slices"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// Pair is a plan in both revisions; nil where there is none.
type Pair struct{ Old, New *Side }

// Of compares pairs of plans.
func Of(old, new string, pairs []Pair, failures []string, failOn finding.Severity) Comparison {
	c := Comparison{Version: Version, Tool: "liftlint", Caution: report.Caution, Old: old, New: new, FailOn: string(failOn), Failures: failures}
	for _, p := range pairs {
		c.Failures = append(c.Failures, p.notUnderstood()...)
		plan := of(p)
		if plan.same() {
			c.Same++
			continue
		}
		c.Plans = append(c.Plans, plan)
	}
	c.Exit = int(c.outcome(failOn))
	return c
}

// notUnderstood names the sides that are called judged, and to which no rule was put.
func (p Pair) notUnderstood() []string {
	var list []string
	for _, s := range []*Side{p.Old, p.New} {
		if s != nil && s.Result.State == lint.Judged && !report.Understood(s.Result) {
			list = append(list, s.Name+": there was no rule to judge it by")
		}
	}
	return list
}

// of compares one plan.
func of(p Pair) Plan {
	a, b := sideOf(p.Old), sideOf(p.New)
	plan := Plan{Status: "changed", Old: revisionOf(p.Old), New: revisionOf(p.New)}
	switch {
	case p.Old == nil:
		plan.Status = "added"
	case p.New == nil:
		plan.Status = "gone"
		return plan
	case a.Result.State != lint.Judged || b.Result.State != lint.Judged:
		plan.Status = "not_judged"
	}
	an, bn := namesOf(a.Result, b.Result)
	x, y := read(a), read(b)
	if p.Old == nil {
		plan.Findings = findings(a, b, an, bn)
		plan.grow(a.Result, b.Result)
		return plan
	}
	plan.Judged = judgedOtherwise(a.Result, b.Result, an, bn)
	if plan.Status != "not_judged" {
		plan.Figures = figures(a, b, x, y, an, bn)
	}
	if a.Result.GearList() != nil && b.Result.GearList() != nil || plan.Status != "not_judged" {
		plan.Gear, plan.Written = gearOf(differing(x, y), x, y)
		plan.Written = gathered(slices.DeleteFunc(plan.Written, func(w Word) bool { return isCenter(w.What) }))
	}
	plan.Findings = findings(a, b, an, bn)
	plan.grow(a.Result, b.Result)
	plan.Unjudged = unjudged(accountOf(a.Result, an), accountAfter(a, b, an, bn))
	return plan
}

// isCenter reports whether a path is that of a coordinate that stands among the
// figures.
func isCenter(path string) bool {
	axis, ok := strings.CutPrefix(path, centerPath)
	return ok && len(axis) == 1
}

func sideOf(s *Side) Side {
	if s == nil {
		return Side{Result: &lint.Result{}}
	}
	return *s
}

func revisionOf(s *Side) *Revision {
	if s == nil {
		return nil
	}
	return &Revision{File: s.Name, State: string(s.Result.State), ID: s.Result.ID, Title: s.Result.Title}
}

func (p Plan) same() bool {
	return p.Status == "changed" && len(p.Judged)+len(p.Figures)+len(p.Gear)+len(p.Written)+len(p.Findings)+len(p.Unjudged) == 0 && p.Grown == nil
}

// outcome is the exit code.
func (c Comparison) outcome(failOn finding.Severity) report.Exit {
	code := report.Nothing
	if c.Same+len(c.Plans) > 0 {
		code = report.Clean
	}
	for _, p := range c.Plans {
		if p.worse(failOn) {
			code = report.Findings
		}
	}
	for _, p := range c.Plans {
		for _, r := range []*Revision{p.Old, p.New} {
			if r != nil && r.State != string(lint.Judged) && r.State != string(lint.NotValid) {
				return report.Unchecked
			}
		}
	}
	if len(c.Failures) > 0 {
		return report.Unchecked
	}
	return code
}

func (p Plan) worse(failOn finding.Severity) bool {
	if p.New != nil && p.New.State != string(lint.Judged) {
		return true
	}
	return slices.ContainsFunc(p.Findings, func(f Finding) bool {
		s, worse := f.severity()
		return worse && s.AtLeast(failOn)
	}) || slices.ContainsFunc(p.Unjudged, func(s Subject) bool { return finding.Severity(s.Severity).AtLeast(failOn) }) || slices.ContainsFunc(p.Judged, func(r Ruling) bool { return r.Milder && finding.Severity(r.Severity).AtLeast(failOn) })
}

// Pairs puts plans together: by their paths, and what is left by their numbers, so
// that one that was renamed is known again. A single plan on each side is a pair,
// whatever it is called.
func Pairs(old, new map[string]*Side, alone bool) []Pair {
	var pairs []Pair
	if alone && len(old) == 1 && len(new) == 1 {
		for _, a := range old {
			for _, b := range new {
				return []Pair{{a, b}}
			}
		}
	}
	left := map[string]*Side{}
	for name, a := range old {
		if new[name] == nil {
			left[name] = a
		} else {
			pairs = append(pairs, Pair{a, new[name]})
		}
	}
	byID := renamed(left)
	came := map[string]*Side{}
	for name, b := range new {
		if old[name] == nil {
			came[name] = b
		}
	}
	for id, name := range renamed(came) {
		if from, ok := byID[id]; ok {
			pairs = append(pairs, Pair{left[from], came[name]})
			delete(left, from)
			delete(came, name)
		}
	}
	for _, a := range left {
		pairs = append(pairs, Pair{Old: a})
	}
	for _, b := range came {
		pairs = append(pairs, Pair{New: b})
	}
	slices.SortFunc(pairs, func(x, y Pair) int { return cmp.Compare(x.name(), y.name()) })
	return pairs
}

// renamed are the names of plans by their numbers, of those that have one of their
// own.
func renamed(sides map[string]*Side) map[string]string {
	byID, twice := map[string]string{}, map[string]bool{}
	for name, s := range sides {
		id := s.Result.ID
		if _, ok := byID[id]; ok || id == "" {
			twice[id] = true
		}
		byID[id] = name
	}
	for id := range twice {
		delete(byID, id)
	}
	return byID
}

func (p Pair) name() string {
	if p.New != nil {
		return p.New.Name
	}
	return p.Old.Name
}
