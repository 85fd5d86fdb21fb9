package policy

import (
	"github.com/open-policy-agent/opa/v1/ast"

	"liftlint/internal/facts"
)

// SeeingAll is the pack whose rules see all of the facts, also what none reads, in
// one query.
func (p *Pack) SeeingAll() *Pack {
	all := *p
	all.reads, all.apartFrom = facts.Choice{}, 0
	return &all
}

// AskedApart is the pack whose rules are asked one by one, however few records
// there are.
func (p *Pack) AskedApart() *Pack {
	apart := *p
	apart.apartFrom = 1
	return &apart
}

// MilderWay is that of a parameter in a rule with a condition.
func MilderWay(condition, param string) (int, error) {
	m, err := ast.ParseModuleWithOpts("rule.rego", "package a\nimport data.params.a.b as p\nfinding contains {\"key\": leg.key} if {\n\tsome leg in input.legs\n\t"+condition+"\n}\n", ast.ParserOptions{RegoVersion: ast.RegoV1})
	if err != nil {
		return 0, err
	}
	r := &Rule{Params: []Param{{Name: param}}}
	milderWays(m, r)
	return r.Params[0].Milder, nil
}
