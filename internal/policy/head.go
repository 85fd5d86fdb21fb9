package policy

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"liftlint/internal/datafile"
	"liftlint/internal/nearest"
)

// The keys of an element of finding that says more than which record it means.
const (
	elementKey   = "key"
	elementGrade = "grade"
	elementNames = "names"
)

// head checks an element of finding: a record's key, or an object of key,
// grade and names.
func (b *body) head(t *ast.Term) {
	o, ok := t.Value.(ast.Object)
	if !ok {
		b.headKey(t)
		if len(b.rule.Grades) > 0 {
			noteAt(&b.problems, t.Location, "the rule has grades: write  finding contains {\"key\": %s.key, \"grade\": ...}", b.record)
		}
		if b.showsNames("") {
			noteAt(&b.problems, t.Location, "the message lists {names}: write  finding contains {\"key\": %s.key, \"names\": ...}", b.record)
		}
		return
	}
	entries := map[string]*ast.Term{}
	o.Foreach(func(k, v *ast.Term) {
		name, ok := k.Value.(ast.String)
		known := []string{elementKey, elementGrade, elementNames}
		if !ok || !slices.Contains(known, string(name)) {
			noteAt(&b.problems, k.Location, "%v: an element of finding has key, grade and names%s", k, datafile.Guess(strings.Trim(k.String(), `"`), known))
			return
		}
		entries[string(name)] = v
	})
	if entries[elementKey] == nil {
		noteAt(&b.problems, t.Location, "an element of finding names its record: \"key\": %s.key", b.record)
	} else {
		b.headKey(entries[elementKey])
	}
	b.headGrade(t, entries[elementGrade])
	b.headNames(t, entries)
}

func (b *body) headKey(t *ast.Term) {
	if t.String() != string(b.record)+".key" {
		noteAt(&b.problems, t.Location, "%v: an element of finding is the record's key, %s.key", t, b.record)
	}
}

func (b *body) headGrade(t, grade *ast.Term) {
	switch {
	case grade == nil && len(b.rule.Grades) > 0:
		noteAt(&b.problems, t.Location, "\"grade\" is missing: one of %s", strings.Join(b.rule.GradeNames(), ", "))
		return
	case grade == nil:
		return
	case len(b.rule.Grades) == 0:
		noteAt(&b.problems, grade.Location, "METADATA lists no grades")
		return
	}
	k, ok := b.term(grade)
	switch {
	case !ok:
	case k.base != text:
		noteAt(&b.problems, grade.Location, "a grade is a text, found %s", k.base)
	case len(k.values) == 0:
		noteAt(&b.problems, grade.Location, "%v: write the grade outright, one of %s", grade, strings.Join(b.rule.GradeNames(), ", "))
	}
	for _, name := range k.values {
		if _, known := b.rule.grade(name); !known {
			noteAt(&b.problems, grade.Location, "there is no grade %q%s", name, nearest.Hint(name, b.rule.GradeNames()))
		}
	}
}

func (b *body) headNames(t *ast.Term, entries map[string]*ast.Term) {
	grade := ""
	if g := entries[elementGrade]; g != nil {
		grade = strings.Trim(g.String(), `"`)
	}
	names := entries[elementNames]
	switch shows := b.showsNames(grade); {
	case names == nil && shows:
		noteAt(&b.problems, t.Location, "the message lists {names}, and the element has none")
	case names != nil && !shows:
		noteAt(&b.problems, names.Location, "the message does not list {names}")
	case names != nil:
		if k, ok := b.term(names); ok && (k.base != list || k.of != text) {
			noteAt(&b.problems, names.Location, "names is a list of texts")
		}
	}
}

// showsNames tells whether the message of a grade lists names.
func (b *body) showsNames(grade string) bool {
	m := b.rule.message
	if i, ok := b.rule.grade(grade); ok && b.rule.Grades[i].message != nil {
		m = b.rule.Grades[i].message
	}
	return slices.ContainsFunc(m, func(p piece) bool { return p.name == namesName })
}
