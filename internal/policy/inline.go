package policy

import (
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// inline puts each parameter's value where the checked module names it, takes
// the import away, and adds the conditions of where to each body: a record
// that where drops never reaches finding, whatever the author wrote.
func inline(m *ast.Module, r *Rule) {
	alias := ast.Var("")
	var kept []*ast.Import
	for _, im := range m.Imports {
		if im.Path.String() == libPath {
			kept = append(kept, im)
			continue
		}
		alias = im.Name()
	}
	m.Imports = kept
	ast.WalkTerms(m, func(t *ast.Term) bool {
		ref, ok := t.Value.(ast.Ref)
		if !ok || len(ref) != 2 || alias == "" || ref[0].Value.Compare(alias) != 0 {
			return false
		}
		if name, ok := ref[1].Value.(ast.String); ok {
			if v, ok := r.Param(string(name)); ok {
				t.Value = constant(v)
			}
		}
		return true
	})
	for _, rule := range m.Rules {
		rule.Body = append(rule.Body, guards(rule, r)...)
		for i, e := range rule.Body {
			e.Index = i
		}
	}
}

func constant(v any) ast.Value {
	switch v := v.(type) {
	case float64:
		return ast.FloatNumberTerm(v).Value
	case bool:
		return ast.Boolean(v)
	case string:
		return ast.String(v)
	case []string:
		terms := make([]*ast.Term, len(v))
		for i, x := range v {
			terms[i] = ast.StringTerm(x)
		}
		return ast.NewArray(terms...)
	case []any:
		terms := make([]*ast.Term, len(v))
		for i, x := range v {
			terms[i] = ast.NewTerm(constant(x))
		}
		return ast.NewArray(terms...)
	}
	return ast.Null{}
}

// guards are the conditions of where as expressions on the body's record.
func guards(rule *ast.Rule, r *Rule) []*ast.Expr {
	record := recordOf(rule)
	var out []*ast.Expr
	for _, w := range r.Where {
		field := func() *ast.Term { return ast.NewTerm(fieldRef(record, w.Field)) }
		if len(w.Values) > 0 {
			out = append(out, ast.Member.Expr(field(), ast.NewTerm(constant(w.Values))))
		}
		if w.AtLeast != nil {
			out = append(out, ast.GreaterThanEq.Expr(field(), ast.FloatNumberTerm(*w.AtLeast)))
		}
		if w.AtMost != nil {
			out = append(out, ast.LessThanEq.Expr(field(), ast.FloatNumberTerm(*w.AtMost)))
		}
	}
	for i := range out {
		e := out[i].Copy() // OPA shares terms between modules; these are written to
		out[i] = e
		e.Location = rule.Location
		ast.WalkTerms(e, func(t *ast.Term) bool {
			t.Location = rule.Location
			return false
		})
	}
	return out
}

// recordOf is the variable that a checked body goes over its records with.
func recordOf(rule *ast.Rule) ast.Var {
	for _, e := range rule.Body {
		if d, ok := e.Terms.(*ast.SomeDecl); ok {
			if in, ok := d.Symbols[0].Value.(ast.Call); ok {
				if ref, ok := in[2].Value.(ast.Ref); ok && ref.HasPrefix(ast.InputRootRef) {
					return in[1].Value.(ast.Var)
				}
			}
		}
	}
	return ""
}

func fieldRef(record ast.Var, path string) ast.Ref {
	ref := ast.Ref{ast.NewTerm(record)}
	for _, name := range strings.Split(path, ".") {
		ref = append(ref, ast.StringTerm(name))
	}
	return ref
}
