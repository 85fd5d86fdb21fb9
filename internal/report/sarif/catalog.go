package sarif

import (
	"slices"
	"strings"

	"liftlint/internal/builtin"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/report"
)

// catalog holds what results point at: rules and the standards that they cite.
type catalog struct {
	rules      []descriptor
	index      map[string]int // of a rule by its id
	taxonomies []component
}

// newCatalog lists the checks built in and all rules by id. One that a result
// names and nobody listed is added, so that none points nowhere.
func newCatalog(results []*lint.Result, o Options) *catalog {
	all := map[string]*entry{}
	checks, err := builtin.All()
	if err != nil {
		checks = nil // what was found by them is still told, with fewer words
	}
	for _, k := range checks {
		all[k.ID] = &entry{id: k.ID, title: k.Title, why: inOneLine(k.Description), level: k.Severity, on: true, sources: []policy.Cited{{Citation: k.Citation()}}}
	}
	for _, r := range o.Rules {
		if all[r.ID] == nil {
			all[r.ID] = &entry{id: r.ID, title: r.Title, why: inOneLine(r.Description), formerly: r.FormerIDs, level: finding.Note, rule: r}
		}
		all[r.ID].add(r, o.Stage)
	}
	for _, x := range results {
		for _, f := range x.Findings {
			if all[f.Rule] == nil {
				all[f.Rule] = &entry{id: f.Rule, title: f.Title, level: f.Severity, on: true, sources: cited(f.Citations)}
			}
		}
		for _, k := range x.Checked {
			if all[k.Rule] == nil {
				all[k.Rule] = &entry{id: k.Rule, title: k.Title, level: finding.Error, on: true}
			}
		}
	}
	c := &catalog{index: map[string]int{}}
	c.fill(all)
	return c
}

// cited takes citations for authorities of all grades.
func cited(list []finding.Citation) []policy.Cited {
	out := make([]policy.Cited, len(list))
	for i, c := range list {
		out[i].Citation = c
	}
	return out
}

func (c *catalog) fill(all map[string]*entry) {
	ids := make([]string, 0, len(all))
	var sources []policy.Cited
	for id, e := range all {
		ids = append(ids, id)
		sources = append(sources, e.sources...)
	}
	slices.Sort(ids)
	c.taxonomies = taxonomiesOf(sources)
	for i, id := range ids {
		c.index[id] = i
		d := all[id].descriptor()
		d.Relationships = c.relationships(all[id].sources)
		c.rules = append(c.rules, d)
	}
}

func (c *catalog) driver(o Options) component {
	d := component{
		Name:             "liftlint",
		ShortDescription: &text{Text: "Reviews lift plans like code."},
		FullDescription:  &text{Text: report.Caution},
		Language:         language,
		Rules:            c.rules,
		Notifications:    notifications(),
	}
	if strings.HasPrefix(o.Version, "v") { // a build from sources has none
		d.Version = o.Version
	}
	for i, t := range c.taxonomies {
		d.SupportedTaxonomies = append(d.SupportedTaxonomies, componentLink{t.Name, i})
	}
	return d
}

func (c *catalog) link(rule string) descriptorLink {
	return descriptorLink{ID: rule, Index: c.index[rule]}
}

// entry is a rule or built-in check as all profiles of the run together have it.
type entry struct {
	id, title, why string
	formerly       []string
	level          finding.Severity // the worst that it can reach in any of them
	on             bool             // in one of them at least
	sources        []policy.Cited
	rule           *policy.Rule // as the first of them has it; nil for a built-in check
	differs        bool         // limits are not the same in all
}

func (e *entry) add(r *policy.Rule, stage string) {
	if e.rule != nil && !slices.EqualFunc(e.rule.Params, r.Params, sameParam) {
		e.differs = true
	}
	for _, c := range r.Citations {
		if !slices.ContainsFunc(e.sources, c.Same) {
			e.sources = append(e.sources, c)
		}
	}
	if r.Off != "" {
		return
	}
	e.on = true
	if worst := r.Worst(stage); worst.AtLeast(e.level) {
		e.level = worst
	}
}

func sameParam(a, b policy.Param) bool { return a.Name == b.Name && words(a.Value) == words(b.Value) }
