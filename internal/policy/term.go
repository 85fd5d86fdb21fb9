package policy

import (
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"liftlint/internal/datafile"
	"liftlint/internal/nearest"
)

// term finds a term's kind. It is false, with a problem noted, for a term that
// rules don't use.
func (b *body) term(t *ast.Term) (kind, bool) {
	switch v := t.Value.(type) {
	case ast.Number:
		return kind{base: number}, true
	case ast.Boolean:
		return kind{base: truth}, true
	case ast.String:
		return kind{base: text, values: []string{string(v)}}, true
	case *ast.Array:
		var items []*ast.Term
		v.Foreach(func(x *ast.Term) { items = append(items, x) })
		return b.literalList(t, items)
	case ast.Set:
		return b.literalList(t, v.Slice())
	case ast.Var:
		return b.variable(t, v)
	case ast.Ref:
		return b.reference(t, v)
	case ast.Call:
		return b.function(t.Location, v)
	case *ast.SetComprehension:
		return b.comprehension(v.Term, v.Body)
	case *ast.ArrayComprehension:
		return b.comprehension(v.Term, v.Body)
	}
	noteAt(&b.problems, t.Location, "%v is not used in rules: numbers, texts, true, false and lists of these are", t)
	return kind{}, false
}

func (b *body) literalList(t *ast.Term, items []*ast.Term) (kind, bool) {
	out := kind{base: list}
	if len(items) == 0 {
		noteAt(&b.problems, t.Location, "an empty list holds nothing to ask for")
		return kind{}, false
	}
	for _, x := range items {
		k, ok := b.term(x)
		if !ok {
			return kind{}, false
		}
		if k.base == list || out.of != "" && out.of != k.base {
			noteAt(&b.problems, t.Location, "%v: a list holds values of one sort", t)
			return kind{}, false
		}
		out.of = k.base
		out.values = append(out.values, k.values...)
	}
	return out, true
}

func (b *body) comprehension(head *ast.Term, inner ast.Body) (kind, bool) {
	defer b.shield()()
	outer := b.vars
	b.vars = map[ast.Var]kind{}
	for v, k := range outer {
		b.vars[v] = k
	}
	defer func() { b.vars = outer }()
	for _, e := range inner {
		b.expr(e)
	}
	k, ok := b.term(head)
	if ok && k.base == list {
		noteAt(&b.problems, head.Location, "%v: a list of lists is not used in rules", head)
		return kind{}, false
	}
	return kind{base: list, of: k.base, enum: k.enum, values: k.values, param: k.param, field: k.field}, ok
}

func (b *body) variable(t *ast.Term, v ast.Var) (kind, bool) {
	if v == b.record && v != "" {
		noteAt(&b.problems, t.Location, "%s is a whole record: use its fields", v)
		return kind{}, false
	}
	k, ok := b.vars[v]
	if !ok {
		noteAt(&b.problems, t.Location, "%s: %s", v, b.stray(v))
	}
	return k, k.base != ""
}

func (b *body) stray(v ast.Var) string {
	switch {
	case v == "input":
		return "the facts are read through: some x in input." + b.rule.Over
	case v == "data":
		return "a rule reads the facts and its own parameters, nothing else"
	case v == b.alias && v != "":
		return "name one of the parameters, as in " + string(v) + "." + firstOf(b.rule.paramNames())
	case v.IsWildcard():
		return "records are gone over with: some x in input." + b.rule.Over
	}
	return "nothing of that name is declared above"
}

func firstOf(names []string) string {
	if len(names) == 0 {
		return "name"
	}
	return names[0]
}

// reference is a field of the record, or a parameter.
func (b *body) reference(t *ast.Term, ref ast.Ref) (kind, bool) {
	root, ok := ref[0].Value.(ast.Var)
	if !ok {
		noteAt(&b.problems, t.Location, "%v is not used in rules", t)
		return kind{}, false
	}
	path, plain := dotted(ref[1:])
	k, declared := b.vars[root]
	switch {
	case declared && k.base == "": // its declaration has a problem of its own
	case !(root == b.record || root == b.alias) || root == "":
		noteAt(&b.problems, t.Location, "%v: %s", ref, b.stray(root))
	case !plain:
		noteAt(&b.problems, t.Location, "%v: name the field outright, as in %s.field", ref, root)
	case root == b.record:
		return b.readField(t, path)
	default:
		return b.parameter(t, path)
	}
	return kind{}, false
}

func dotted(ref ast.Ref) (string, bool) {
	var names []string
	for _, t := range ref {
		s, ok := t.Value.(ast.String)
		if !ok || strings.Contains(string(s), ".") {
			return "", false
		}
		names = append(names, string(s))
	}
	return strings.Join(names, "."), true
}

func (b *body) readField(t *ast.Term, path string) (kind, bool) {
	got, ok := b.shape.field(b.rule.Over, path)
	b.read[path] = true
	switch {
	case !ok:
		noteAt(&b.problems, t.Location, "%v: %q is no field of %s%s", t, got.failed, b.rule.Over, nearest.Hint(got.failed, got.known))
		return kind{}, false
	case got.kind.base == record:
		noteAt(&b.problems, t.Location, "%v is a whole record: use its fields", t)
		return kind{}, false
	case got.optional:
		b.needs[path] = true
		if b.shielded {
			b.hidden[path] = t.Location
		} else {
			b.seen[path] = true
		}
	}
	return b.unsaid.read(path, got.kind), true
}

func (b *body) parameter(t *ast.Term, name string) (kind, bool) {
	i := slices.IndexFunc(b.rule.Params, func(p Param) bool { return p.Name == name })
	if i < 0 {
		noteAt(&b.problems, t.Location, "%v: there is no parameter %q%s", t, name, nearest.Hint(name, b.rule.paramNames()))
		return kind{}, false
	}
	b.read[name] = true
	return b.paramKind(b.rule.Params[i]), true
}

// stranger finds a word among those that a stands for that b can never be.
func stranger(a, b kind) (string, bool) {
	if b.enum == nil {
		return "", false
	}
	for _, w := range a.values {
		if !slices.Contains(b.enum, w) {
			return w, true
		}
	}
	return "", false
}

func notAmong(word, param string, enum []string) string {
	from := ""
	if param != "" {
		from = fmt.Sprintf(" of parameter %s", param)
	}
	return fmt.Sprintf("%q%s is none of %s%s", word, from, strings.Join(enum, ", "), datafile.Guess(word, enum))
}
