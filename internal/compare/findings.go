package compare

import (
	"cmp"
	"math"
	"path"
	"slices"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// like is what a finding is known by in another revision: what its fingerprint is
// made of, without the file.
type like struct {
	rule, subject string
	n             int
}

func byLike(r *lint.Result, n names) map[like]finding.Finding {
	list := map[like]finding.Finding{}
	if r == nil {
		return list
	}
	seen := map[like]int{}
	for i, subject := range report.Identities(r) {
		k := like{rule: n.rule(r.Findings[i].Rule), subject: n.of(subject)}
		seen[k]++
		list[like{k.rule, k.subject, seen[k]}] = r.Findings[i]
	}
	return list
}

// findings compares both revisions.
func findings(a, b Side, an, bn names) []Finding {
	was, is := byLike(a.Result, an), byLike(b.Result, bn)
	var list []Finding
	for k, f := range is {
		old, ok := was[k]
		change := "new"
		if ok {
			change = becameOf(old, f)
		}
		if change == "" {
			continue
		}
		entry := Finding{Change: change, Rule: f.Rule, Title: f.Title, Key: f.Key, New: revision(f, b)}
		if ok {
			entry.Old = revision(old, a)
		}
		list = append(list, entry)
	}
	account := accountAfter(a, b, an, bn)
	for k, f := range was {
		if _, ok := is[k]; !ok {
			change, why := account.wentHow(k)
			list = append(list, Finding{Change: change, Rule: f.Rule, Title: f.Title, Key: f.Key, Old: revision(f, a), Why: why})
		}
	}
	slices.SortFunc(list, order)
	return list
}

// becameOf says what became of a finding; empty where it stayed as it was.
func becameOf(a, b finding.Finding) string {
	switch {
	case a.Aside == nil && b.Aside != nil:
		return "set_aside"
	case a.Aside != nil && b.Aside == nil:
		return "counts_again"
	case a.Severity == b.Severity && a.Grade == b.Grade && a.Message == b.Message && samePrinted(a.Measured, b.Measured) && samePrinted(a.Limit, b.Limit):
		return ""
	case milder(a, b):
		return "judged_otherwise"
	case b.Severity.Rank() > a.Severity.Rank():
		return "worse"
	case b.Severity.Rank() < a.Severity.Rank():
		return "better"
	}
	return byFigures(a, b)
}

// samePrinted reports whether figures differ by less than is printed, so that a reader
// would see no difference.
func samePrinted(a, b *finding.Figure) bool {
	if a == nil || b == nil {
		return a == b
	}
	return a.Text != "" && a.Text == b.Text && a.Field == b.Field
}

// milder reports whether a finding is less bad only for how it is judged: what is
// measured is no better by the limit that there was.
func milder(a, b finding.Finding) bool {
	x, y := a.Measured, b.Measured
	if x == nil && y == nil {
		return b.Severity.Rank() < a.Severity.Rank() && a.Message == b.Message
	}
	if x == nil || y == nil || x.Field != y.Field {
		return false
	}
	better := b.Severity.Rank() < a.Severity.Rank() || byFigures(a, b) == "better"
	return better && (!differs(x.Value, y.Value) || a.Limit != nil && math.Abs(y.Value-a.Limit.Value) >= math.Abs(x.Value-a.Limit.Value))
}

// byFigures judges by how far what is measured lies beyond what is asked for.
func byFigures(a, b finding.Finding) string {
	x, y := a.Measured, b.Measured
	switch {
	case x == nil && y == nil:
		if a.Grade != b.Grade {
			return "changed"
		}
		return ""
	case x == nil || y == nil || x.Field != y.Field:
		return "changed"
	case !differs(x.Value, y.Value) && !limitDiffers(a, b):
		return ""
	case a.Limit == nil || b.Limit == nil:
		return "changed"
	}
	from, to := x.Value-a.Limit.Value, y.Value-b.Limit.Value
	switch {
	case from*to < 0: // on the other side of its limit
		return "changed"
	case math.Abs(to) > math.Abs(from):
		return "worse"
	case math.Abs(to) < math.Abs(from):
		return "better"
	}
	return "changed"
}

func limitDiffers(a, b finding.Finding) bool {
	if a.Limit == nil || b.Limit == nil {
		return (a.Limit == nil) != (b.Limit == nil)
	}
	return differs(a.Limit.Value, b.Limit.Value)
}

// fileOf names the file that a finding stands in, which may be a register or a
// baseline of the same revision.
func (s Side) fileOf(f finding.Finding) string {
	if f.Place.File == "" || f.Place.File == s.Result.File {
		return s.Name
	}
	return strings.TrimSuffix(s.Name, path.Clean(s.Result.File)) + f.Place.File
}

func revision(f finding.Finding, s Side) *FindingRevision {
	r := &FindingRevision{Severity: string(f.Severity), Grade: f.Grade, Message: f.Message, File: s.fileOf(f), Line: f.Place.Range.From.Line, SetAside: f.Aside != nil}
	for _, x := range []struct {
		figure *finding.Figure
		into   **float64
	}{{f.Measured, &r.Measured}, {f.Limit, &r.Limit}} {
		if x.figure != nil && !math.IsInf(x.figure.Value, 0) && !math.IsNaN(x.figure.Value) {
			v := x.figure.Value
			*x.into = &v
		}
	}
	return r
}

// changes are what becomes of findings, what a reviewer has to know first at the
// front.
var changes = []string{"new", "worse", "not_judged", "not_looked_for", "counts_again", "judged_otherwise", "changed", "set_aside", "better", "gone"}

func order(a, b Finding) int {
	return cmp.Or(
		slices.Index(changes, a.Change)-slices.Index(changes, b.Change),
		worst(b).Rank()-worst(a).Rank(),
		cmp.Compare(a.Rule, b.Rule), cmp.Compare(a.Key, b.Key), cmp.Compare(messageOf(a), messageOf(b)),
	)
}

// worst is the severity as it is, or was.
func worst(f Finding) finding.Severity { return finding.Severity(latest(f).Severity) }

func latest(f Finding) *FindingRevision {
	if f.New != nil {
		return f.New
	}
	return f.Old
}

func messageOf(f Finding) string { return latest(f).Message }
