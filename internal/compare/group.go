package compare

import (
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/report"
)

// group are findings of one rule and grade that are as bad, and of which the same
// became.
type group []Finding

// grouped keeps the order in which the first of each group stands.
func grouped(list []Finding) []group {
	type kind struct {
		change, severity, rule, grade, title string
		grown                                bool
	}
	var groups []group
	at := map[kind]int{}
	for _, f := range list {
		r := latest(f)
		k := kind{f.Change, r.Severity, f.Rule, r.Grade, f.Title, f.Grown}
		i, ok := at[k]
		if !ok {
			i = len(groups)
			at[k], groups = i, append(groups, nil)
		}
		groups[i] = append(groups[i], f)
	}
	return groups
}

// head names what the findings have in common.
func (g group) head() string {
	words := fmt.Sprintf("%s %s: %s", strings.ToUpper(spaced(g[0].Change)), latest(g[0]).Severity, g[0].Title)
	if len(g) > 1 {
		words += fmt.Sprintf(": %d findings", len(g))
	}
	return words
}

// lines tell where each finding stands, how it was, and of what.
func (g group) lines() []string {
	var lines, keys []string
	why := g.why()
	for _, f := range g {
		lines = append(lines, f.lines()...)
		if why == "" && len(f.Why) > 0 {
			lines = append(lines, "why: "+strings.Join(f.Why, "; "))
		}
		if !slices.Contains(keys, f.Key) {
			keys = append(keys, f.Key)
		}
	}
	if why != "" {
		lines = append(lines, "why: "+why)
	}
	if g[0].Grown {
		lines = append(lines, "known only since this change, which has the baseline take it in")
	}
	rule := "rule " + g[0].Rule
	if grade := latest(g[0]).Grade; grade != "" {
		rule += ", grade " + grade
	}
	return append(lines, rule+", on "+strings.Join(keys, ", "))
}

func (f Finding) lines() []string {
	var lines []string
	if f.New != nil {
		lines = append(lines, f.New.place()+": "+report.Sentence(f.New.Message))
	}
	if f.Old != nil {
		lines = append(lines, "before, "+f.Old.Severity+", "+f.Old.place()+": "+report.Sentence(f.Old.Message))
	}
	return lines
}

// why is what holds of all findings; empty where each has its own.
func (g group) why() string {
	for _, f := range g[1:] {
		if !slices.Equal(f.Why, g[0].Why) {
			return ""
		}
	}
	return strings.Join(g[0].Why, "; ")
}

func (r *FindingRevision) place() string {
	if r.Line == 0 {
		return r.File
	}
	return fmt.Sprintf("%s:%d", r.File, r.Line)
}

// subjectLines have a line for each rule and what it waits for, with all subjects of
// which that is so.
func subjectLines(list []Subject) []string {
	type kind struct{ rule, change, why string }
	var kinds []kind
	of := map[kind][]Subject{}
	for _, s := range list {
		k := kind{s.Rule, s.Change, strings.Join(s.Why, "; ")}
		if of[k] == nil {
			kinds = append(kinds, k)
		}
		of[k] = append(of[k], s)
	}
	var out []string
	for _, k := range kinds {
		first := of[k][0]
		keys := lines(of[k], func(s Subject) string { return s.Key })
		why := k.why
		if why == "" {
			why = "it is not said why"
		}
		out = append(out, fmt.Sprintf("%s, %s: %s (%s), on %s: %s", spaced(first.Change), first.Severity, first.Title, first.Rule, strings.Join(keys, ", "), why))
	}
	return out
}
