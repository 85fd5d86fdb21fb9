// Package rulepage gathers what there is to say of a rule, for `explain` and
// for the pages that stand beside the rules.
package rulepage

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/builtin"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/nearest"
	"liftlint/internal/policy"
)

// Options say what a page tells of.
type Options struct {
	Profiles []string // whose severities and parameters
	Stage    string   // for which the severities are
}

// ErrUnknown is wrapped by the error for a rule that there is not.
var ErrUnknown = errors.New("unknown rule")

type unknown struct{ text string }

func (u unknown) Error() string { return u.text }

func (u unknown) Unwrap() error { return ErrUnknown }

// Page is what there is to say of one rule or built-in check.
type Page struct {
	ID          string            `json:"id" doc:"Id of the rule or of the built-in check."`
	Title       string            `json:"title" doc:"What it is called."`
	Description string            `json:"description" doc:"What it asks for and why."`
	BuiltIn     bool              `json:"built_in" doc:"Whether it is one of liftlint's own checks, which no profile changes."`
	Judges      string            `json:"judges,omitempty" doc:"The collection of facts whose records it judges."`
	Where       []Asked           `json:"where" doc:"Which of these records, by field: all of them have to hold."`
	When        []Asked           `json:"when" doc:"On which lifts, by field of the lift."`
	Stages      []string          `json:"stages" doc:"At which stages; at all where none is listed."`
	Reads       []string          `json:"reads_if_known" doc:"Facts that may be missing or not given; without them it does not judge."`
	Lowerable   bool              `json:"lowerable" doc:"Whether a profile may lower it or switch it off."`
	Waivable    bool              `json:"waivable" doc:"Whether a plan may waive it."`
	Profiles    []ProfileSettings `json:"profiles" doc:"Severities and parameters by profile."`
	Sources     []policy.Cited    `json:"sources" doc:"On whose authority."`
	Examples    []Example         `json:"examples" doc:"A plan that breaks it and one that meets it, for rules that come with liftlint."`
}

// ProfileSettings are a rule's severities and parameters in one profile.
type ProfileSettings struct {
	Profile string       `json:"profile" doc:"Name of the profile."`
	Off     string       `json:"off,omitempty" doc:"Why the profile switches the rule off."`
	Grades  []GradeLine  `json:"grades" doc:"Worst first; one without a name for a rule without grades."`
	Params  []ParamValue `json:"params" doc:"Parameters by name."`
}

// GradeLine is the severity of a rule or of one of its grades.
type GradeLine struct {
	Name     string           `json:"name,omitempty" doc:"Name of the grade."`
	Title    string           `json:"title" doc:"What a finding of it is called."`
	Severity finding.Severity `json:"severity" enum:"error,warning,note" doc:"How bad it is."`
	Limit    string           `json:"limit,omitempty" doc:"The parameter or fact that it is judged by."`
}

// ParamValue is a parameter as a profile has it.
type ParamValue struct {
	Name  string `json:"name" doc:"Name of the parameter, unit at the end."`
	Value any    `json:"value" doc:"A number, a text, a truth value or a list of texts."`
}

// Build gathers what there is to say of a rule, by its id or a former one, in
// the profiles named. The examples are put to the rules as the linter has them.
// The error is ErrUnknown where there is no such rule.
func Build(l *lint.Linter, o Options, id string) (Page, error) {
	if c, ok := builtin.Lookup(id); ok {
		return Page{ID: c.ID, Title: c.Title, Description: strings.TrimSpace(c.Description), BuiltIn: true,
			Where: []Asked{}, When: []Asked{}, Stages: []string{}, Reads: []string{}, Profiles: []ProfileSettings{{Profile: "every", Grades: []GradeLine{{Title: c.Title, Severity: c.Severity}}, Params: []ParamValue{}}},
			Sources: []policy.Cited{{Citation: c.Citation()}}, Examples: []Example{}}, nil
	}
	var p Page
	for _, name := range o.Profiles {
		rules, err := l.Rules(name)
		if err != nil {
			return Page{}, err
		}
		r, err := ruleOf(rules, id)
		if err != nil {
			return Page{}, err
		}
		p.add(r, name, o.Stage)
	}
	var err error
	if p.Examples, err = examplesOf(l, p.ID); err != nil {
		return Page{}, err
	}
	return p, nil
}

// ruleOf finds a rule by its id or a former one.
func ruleOf(rules []*policy.Rule, id string) (*policy.Rule, error) {
	var ids []string
	for _, r := range rules {
		if r.ID == id || slices.Contains(r.FormerIDs, id) {
			return r, nil
		}
		ids = append(ids, r.ID)
	}
	checks, err := builtin.All()
	if err != nil {
		return nil, err
	}
	for _, c := range checks {
		ids = append(ids, c.ID)
	}
	if near, ok := nearest.Name(id, ids); ok {
		return nil, unknown{fmt.Sprintf("there is no rule %q: did you mean %s?", id, near)}
	}
	return nil, unknown{"there is no rule \"" + id + "\": liftlint rules lists them"}
}

func (p *Page) add(r *policy.Rule, profile, stage string) {
	p.ID, p.Title, p.Description = r.ID, r.Title, strings.TrimSpace(r.Description)
	p.Judges, p.Reads, p.Lowerable, p.Waivable = r.Over, readsOf(r), r.Lowerable, r.Waivable
	p.Where, p.When, p.Stages = asked(r.Where), asked(r.When), append([]string{}, r.Stages...)
	for _, c := range r.Citations {
		if !slices.ContainsFunc(p.Sources, c.Same) {
			p.Sources = append(p.Sources, c)
		}
	}
	s := ProfileSettings{Profile: profile, Off: r.Off, Params: []ParamValue{}}
	for _, x := range r.Params {
		s.Params = append(s.Params, ParamValue{x.Name, x.Value})
	}
	for _, g := range r.Grades {
		s.Grades = append(s.Grades, GradeLine{g.Name, g.Title, g.Severity.At(stage), g.Limit})
	}
	if len(r.Grades) == 0 {
		s.Grades = []GradeLine{{Title: r.Title, Severity: r.Severity.At(stage), Limit: r.Limit}}
	}
	p.Profiles = append(p.Profiles, s)
}
