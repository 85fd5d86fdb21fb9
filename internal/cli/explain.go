package cli

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"liftlint/internal/builtin"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/nearest"
	"liftlint/internal/policy"
)

type explainCommand struct {
	env     Environment
	judging judging
	format  *choice
}

// page is what there is to say of one rule or built-in check.
type page struct {
	ID          string             `json:"id" doc:"Id of the rule or of the built-in check."`
	Title       string             `json:"title" doc:"What it is called."`
	Description string             `json:"description" doc:"What it asks for and why."`
	BuiltIn     bool               `json:"built_in" doc:"Whether it is one of liftlint's own checks, which no profile changes."`
	Judges      string             `json:"judges,omitempty" doc:"The collection of facts whose records it judges."`
	Reads       []string           `json:"reads_if_known" doc:"Facts that may be missing; without them it does not judge."`
	Lowerable   bool               `json:"lowerable" doc:"Whether a profile may lower it or switch it off."`
	Waivable    bool               `json:"waivable" doc:"Whether a plan may waive it."`
	Profiles    []profileSettings  `json:"profiles" doc:"Severities and parameters by profile."`
	Sources     []finding.Citation `json:"sources" doc:"On whose authority."`
	Examples    []example          `json:"examples" doc:"A plan that breaks it and one that meets it, for rules that come with liftlint."`
}

// profileSettings are a rule's severities and parameters in one profile.
type profileSettings struct {
	Profile string       `json:"profile" doc:"Name of the profile."`
	Off     string       `json:"off,omitempty" doc:"Why the profile switches the rule off."`
	Grades  []gradeLine  `json:"grades" doc:"Worst first; one without a name for a rule without grades."`
	Params  []paramValue `json:"params" doc:"Parameters by name."`
}

type gradeLine struct {
	Name     string           `json:"name,omitempty" doc:"Name of the grade."`
	Severity finding.Severity `json:"severity" enum:"error,warning,note" doc:"How bad it is."`
	Limit    string           `json:"limit,omitempty" doc:"The parameter or fact that it is judged by."`
}

type paramValue struct {
	Name  string `json:"name" doc:"Name of the parameter, unit at the end."`
	Value any    `json:"value" doc:"A number, a text, a truth value or a list of texts."`
}

func newExplain(e Environment) *cobra.Command {
	k := &explainCommand{env: e, format: oneOf("text", "json")}
	c := &cobra.Command{
		Use:     "explain RULE",
		Short:   "Tell what a rule asks for, why, with which limits, on whose authority",
		Example: "  liftlint explain angle/leg_too_flat",
		Args:    cobra.ExactArgs(1),
		RunE:    func(_ *cobra.Command, args []string) error { return k.run(args[0]) },
	}
	k.judging.flags(c)
	c.Flags().Var(k.format, "format", "text or json")
	return c
}

func (k *explainCommand) run(id string) error {
	linter, err := k.judging.linter(".", false)
	if err != nil {
		return err
	}
	p, err := k.page(linter, id)
	if err != nil {
		return err
	}
	if k.format.value == "json" {
		return writeJSON(k.env.Stdout, p)
	}
	_, err = fmt.Fprint(k.env.Stdout, visibleLines(p.text()))
	return err
}

func (k *explainCommand) page(l *lint.Linter, id string) (page, error) {
	if c, ok := builtin.Lookup(id); ok {
		return page{ID: c.ID, Title: c.Title, Description: strings.TrimSpace(c.Description), BuiltIn: true,
			Reads: []string{}, Profiles: []profileSettings{{Profile: "every", Grades: []gradeLine{{Severity: c.Severity}}, Params: []paramValue{}}},
			Sources: []finding.Citation{c.Citation()}, Examples: []example{}}, nil
	}
	names, err := lint.ProfileNames()
	if err != nil {
		return page{}, exit{Unchecked, err}
	}
	if k.judging.profile != "" {
		names = []string{k.judging.profile}
	}
	var p page
	for _, name := range names {
		rules, err := l.Rules(name)
		if err != nil {
			return page{}, exit{Unchecked, err}
		}
		r, err := ruleOf(rules, id)
		if err != nil {
			return page{}, err
		}
		p.add(r, name, k.judging.stage)
	}
	p.Examples, err = examplesOf(l, p.ID)
	if err != nil {
		return page{}, exit{Unchecked, err}
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
		return nil, exit{Unchecked, err}
	}
	for _, c := range checks {
		ids = append(ids, c.ID)
	}
	if near, ok := nearest.Name(id, ids); ok {
		return nil, wrongUsage(fmt.Errorf("there is no rule %q: did you mean %s?", id, near))
	}
	return nil, wrongUsage(errors.New("there is no rule \"" + id + "\": liftlint rules lists them"))
}

func (p *page) add(r *policy.Rule, profile, stage string) {
	p.ID, p.Title, p.Description = r.ID, r.Title, strings.TrimSpace(r.Description)
	p.Judges, p.Reads, p.Lowerable, p.Waivable = r.Over, append([]string{}, r.Needs...), r.Lowerable, r.Waivable
	for _, c := range r.Citations {
		if !slices.Contains(p.Sources, c) {
			p.Sources = append(p.Sources, c)
		}
	}
	s := profileSettings{Profile: profile, Off: r.Off, Params: []paramValue{}}
	for _, x := range r.Params {
		s.Params = append(s.Params, paramValue{x.Name, x.Value})
	}
	for _, g := range r.Grades {
		s.Grades = append(s.Grades, gradeLine{g.Name, g.Severity.At(stage), g.Limit})
	}
	if len(r.Grades) == 0 {
		s.Grades = []gradeLine{{Severity: r.Severity.At(stage), Limit: r.Limit}}
	}
	p.Profiles = append(p.Profiles, s)
}
