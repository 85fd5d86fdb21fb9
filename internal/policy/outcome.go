package policy

import (
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/nearest"
)

// State is how a subject stands with a rule.
type State string

// The states.
const (
	Met       State = "met"
	Broken    State = "broken"
	NotJudged State = "not_judged" // a fact that the rule reads is absent or unsaid
)

// Outcome is how one record stands with one rule.
type Outcome struct {
	Subject facts.View
	State   State
	Grade   *Grade   // the worst reached; nil unless broken, and for rules without grades
	Names   []string // what the element listed, for {names} in the message
	// Missing are the absent fields, dotted, each cut to the shortest part
	// that is absent, and those whose value is a word for unknown. Of a broken subject: what might show it to be worse.
	Missing []string
}

// Verdict is how a rule's subjects stand, in the order of the facts.
type Verdict struct {
	Rule         *Rule
	Outcomes     []Outcome
	DoesNotApply string // why there are no outcomes
}

// element is one element of a rule's finding.
type element struct {
	key   string
	grade string
	names []string
}

// outcomes settles every subject. The answers say which records are such; the
// elements are those that the rule found.
func (r *Rule) outcomes(records []facts.View, answers []answer, elements []element) ([]Outcome, error) {
	found := map[string][]element{}
	for _, e := range elements {
		found[e.key] = append(found[e.key], e)
	}
	subjects := 0
	for _, applies := range answers {
		if applies != no {
			subjects++
		}
	}
	if subjects == 0 && len(found) == 0 {
		return nil, nil
	}
	out := make([]Outcome, 0, subjects)
	for i, v := range records {
		applies := answers[i]
		if applies == no {
			continue
		}
		o, err := r.outcome(v, found[v.Key])
		if err != nil {
			return nil, err
		}
		if applies == unknown {
			o = Outcome{Subject: v, State: NotJudged, Missing: r.missing(v)}
		}
		out = append(out, o)
		delete(found, v.Key)
	}
	for _, key := range sortedKeys(found) {
		return nil, fmt.Errorf("rule %s found %q, which is no record of %s that it judges", r.ID, key, r.Over)
	}
	return out, nil
}

func (r *Rule) outcome(v facts.View, elements []element) (Outcome, error) {
	o := Outcome{Subject: v, State: Met, Missing: r.missing(v)}
	if len(elements) == 0 {
		if len(o.Missing) > 0 {
			o.State = NotJudged
		}
		return o, nil
	}
	o.State = Broken
	worst, err := r.worstOf(elements)
	if err != nil {
		return o, err
	}
	if len(r.Grades) > 0 {
		o.Grade = &r.Grades[worst]
	}
	if worst == 0 { // nothing could make it worse
		o.Missing = nil
	}
	for _, e := range elements {
		if o.Grade == nil || e.grade == o.Grade.Name {
			o.Names = append(o.Names, e.names...)
		}
	}
	if len(elements) > 1 {
		slices.Sort(o.Names)
		o.Names = slices.Compact(o.Names)
	}
	return o, nil
}

// worstOf is the index of the worst grade among the elements, zero for a rule
// without grades.
func (r *Rule) worstOf(elements []element) (int, error) {
	if len(r.Grades) == 0 {
		return 0, nil
	}
	worst := len(r.Grades)
	for _, e := range elements {
		i, ok := r.grade(e.grade)
		if !ok {
			return 0, fmt.Errorf("rule %s gave the grade %q, which its METADATA does not list%s", r.ID, e.grade, nearest.Hint(e.grade, r.GradeNames()))
		}
		worst = min(worst, i)
	}
	return worst, nil
}

// missing lists the fields that the rule needs and the record lacks, or has a
// word for unknown in.
func (r *Rule) missing(v facts.View) []string {
	var out []string
	for _, path := range r.Needs {
		if absent, ok := firstAbsent(v, path); ok && !slices.Contains(out, absent) {
			out = append(out, absent)
		}
	}
	for _, u := range r.Unsaid {
		if u.of(v) && !slices.Contains(out, u.Field) {
			out = append(out, u.Field)
		}
	}
	slices.Sort(out)
	return out
}

func firstAbsent(v facts.View, path string) (string, bool) {
	for i, c := range path + "." {
		if c != '.' {
			continue
		}
		if _, ok := v.Field(path[:i]); !ok {
			return path[:i], true
		}
	}
	return "", false
}

// Asked reports whether the rule is put to lifts at a stage: it is switched on, and
// asks at that stage.
func (r *Rule) Asked(stage string) bool {
	return r.Off == "" && (len(r.Stages) == 0 || slices.Contains(r.Stages, stage))
}

// gate says why a rule does not apply to a lift, empty where it does.
func (r *Rule) gate(lift facts.View, stage string) string {
	if r.Off != "" {
		return "switched off by " + r.OffBy + ": " + r.Off
	}
	if !r.Asked(stage) {
		return "not asked at stage " + stage
	}
	for _, c := range r.When {
		if c.ask(lift) != yes {
			return "only where the lift's " + c.String()
		}
	}
	return ""
}

// NothingToJudge words why a rule has no subjects.
func (r *Rule) NothingToJudge() string {
	if len(r.Where) == 0 {
		return "there are no " + r.Over
	}
	words := make([]string, len(r.Where))
	for i, c := range r.Where {
		words[i] = c.String()
	}
	return "there are no " + r.Over + " with " + strings.Join(words, " and ")
}
