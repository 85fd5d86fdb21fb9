package sarif

import (
	"cmp"
	"slices"

	"liftlint/internal/finding"
	"liftlint/internal/policy"
)

// standard reports whether a citation names a published text. Common practice
// has none, and a company's rules and liftlint's own are no standard.
func standard(c finding.Citation) bool { return c.Basis == finding.Read || c.Basis == finding.Memory }

// wholeText is the id of the taxon for a standard that is cited without clause.
const wholeText = "whole text"

func clause(c finding.Citation) string { return cmp.Or(c.Clause, wholeText) }

// taxonomiesOf makes one of each standard in one edition, with the clauses cited.
func taxonomiesOf(sources []policy.Cited) []component {
	type edition struct{ document, edition string }
	clauses := map[edition][]string{}
	for _, c := range sources {
		if standard(c.Citation) {
			e := edition{c.Document, c.Edition}
			clauses[e] = append(clauses[e], clause(c.Citation))
		}
	}
	var list []component
	for e, ids := range clauses {
		slices.Sort(ids)
		t := component{Name: e.document, Version: e.edition, ShortDescription: &text{Text: "A text that rules cite, with the clauses cited."}}
		for _, id := range slices.Compact(ids) {
			t.Taxa = append(t.Taxa, descriptor{ID: id})
		}
		list = append(list, t)
	}
	slices.SortFunc(list, func(a, b component) int {
		return cmp.Or(cmp.Compare(a.Name, b.Name), cmp.Compare(a.Version, b.Version))
	})
	return list
}

// relationships point from a rule to the clauses it cites, each saying how far
// the text can be relied on, and for which grades it is one.
func (c *catalog) relationships(sources []policy.Cited) []relationship {
	var list []relationship
	for _, s := range sources {
		if !standard(s.Citation) {
			continue
		}
		t := slices.IndexFunc(c.taxonomies, func(x component) bool { return x.Name == s.Document && x.Version == s.Edition })
		taxon := slices.IndexFunc(c.taxonomies[t].Taxa, func(d descriptor) bool { return d.ID == clause(s.Citation) })
		list = append(list, relationship{
			Target:      descriptorLink{clause(s.Citation), taxon, &componentLink{s.Document, t}},
			Kinds:       []string{"relevant"},
			Description: shown(s.Basis.Words() + s.Of()),
		})
	}
	return list
}
