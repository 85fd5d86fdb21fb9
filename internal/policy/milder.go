package policy

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// milderWays notes of each parameter which way it finds less. That is known of one
// that conditions of findings compare with something else, all in the same sense, and
// that is read nowhere else.
func milderWays(m *ast.Module, r *Rule) {
	alias := paramsAlias(m)
	read := map[string]int{}
	ast.WalkTerms(m, func(t *ast.Term) bool {
		if name := paramOf(t, alias); name != "" {
			read[name]++
		}
		return false
	})
	compared := map[string][]int{}
	for _, rule := range m.Rules {
		if rule.Head.Name != "finding" {
			continue
		}
		for _, e := range rule.Body {
			name, way := comparedParam(e, alias)
			if name != "" {
				compared[name] = append(compared[name], way)
			}
		}
	}
	for i, p := range r.Params {
		ways := compared[p.Name]
		if slices.Sort(ways); len(ways) > 0 && len(ways) == read[p.Name] && ways[0] == ways[len(ways)-1] {
			r.Params[i].Milder = ways[0]
		}
	}
}

// paramsAlias is what a rule's text calls its parameters; empty where it has none.
func paramsAlias(m *ast.Module) ast.Var {
	for _, im := range m.Imports {
		if im.Path.String() != libPath {
			return im.Name()
		}
	}
	return ""
}

func paramOf(t *ast.Term, alias ast.Var) string {
	ref, ok := t.Value.(ast.Ref)
	if !ok || len(ref) != 2 || alias == "" || ref[0].Value.Compare(alias) != 0 {
		return ""
	}
	name, _ := ref[1].Value.(ast.String)
	return string(name)
}

// comparedParam is the parameter that a condition compares, and which way it finds
// less: 1 upward, -1 downward.
func comparedParam(e *ast.Expr, alias ast.Var) (name string, way int) {
	if !e.IsCall() || len(e.Operands()) != 2 || len(e.With) > 0 {
		return "", 0
	}
	switch e.Operator().String() {
	case "gt", "gte": // what is found is above it
		way = 1
	case "lt", "lte":
		way = -1
	default:
		return "", 0
	}
	if e.Negated {
		way = -way
	}
	left, right := paramOf(e.Operand(0), alias), paramOf(e.Operand(1), alias)
	switch {
	case left != "" && right != "":
		return "", 0
	case left != "":
		return left, -way
	}
	return right, way
}
