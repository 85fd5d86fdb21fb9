package policy

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"liftlint/internal/facts"
	"liftlint/internal/nearest"
)

// The text of a rule is a small part of Rego: bodies that go over one
// collection, look at one record at a time, and compare its fields with
// parameters and literals. All else is refused, because the optional fields
// that a rule reads are derived from its text: a field read in a way that
// cannot be followed would turn "unknown" into "met".

// text checks the module: its imports and each of its bodies.
func (c *checker) text() {
	alias, lib := c.imports()
	for _, r := range c.module.Rules {
		if c.isFinding(r) {
			b := &body{checker: c, alias: alias, lib: lib, vars: map[ast.Var]kind{}}
			for _, im := range c.module.Imports {
				b.vars[im.Name()] = kind{}
			}
			delete(b.vars, alias)
			delete(b.vars, lib)
			b.run(r)
		}
	}
	if len(c.module.Rules) == 0 {
		noteAt(&c.problems, c.module.Package.Location, "the rule has no finding: it holds  finding contains x.key if { some x in input.%s ... }", c.rule.Over)
	}
}

// imports allows a rule its own parameters and the library, and returns the
// names that they go by.
func (c *checker) imports() (alias, lib ast.Var) {
	own := "data.params." + strings.ReplaceAll(c.rule.ID, "/", ".")
	for _, im := range c.module.Imports {
		switch path := im.Path.String(); path {
		case own:
			alias = im.Name()
		case libPath:
			lib = im.Name()
		default:
			noteAt(&c.problems, im.Location, "import %s: a rule sees its own parameters, %s, and the library, %s, and nothing else", path, own, libPath)
		}
	}
	return alias, lib
}

// isFinding tells whether r adds to the set; anything else is refused.
func (c *checker) isFinding(r *ast.Rule) bool {
	name := r.Head.Ref().String()
	switch {
	case len(r.Annotations) > 0:
		noteAt(&c.problems, r.Location, "METADATA belongs above the package line only")
	case name != "finding":
		noteAt(&c.problems, r.Location, "%s: a rule holds finding and nothing else; write a helper's conditions out, or make its value a parameter", name)
	case r.Default, r.Else != nil, len(r.Head.Args) > 0, r.Head.Value != nil, r.Head.Key == nil:
		noteAt(&c.problems, r.Location, "finding is a set: write  finding contains x.key if { ... }")
	default:
		return true
	}
	return false
}

// body is one body of finding as it is gone through.
type body struct {
	*checker
	alias    ast.Var // the parameters' name, empty when not imported
	lib      ast.Var // the library's name, empty when not imported
	record   ast.Var // the record's name, empty before it is declared
	vars     map[ast.Var]kind
	shielded bool                     // inside not or a comprehension
	seen     map[string]bool          // optional fields read in the open
	hidden   map[string]*ast.Location // those read behind a shield
}

func (b *body) run(r *ast.Rule) {
	b.seen, b.hidden = map[string]bool{}, map[string]*ast.Location{}
	for _, w := range b.rule.Where { // conditions of where stand in the open
		b.seen[w.Field] = true
	}
	before := len(b.problems)
	for _, e := range r.Body {
		b.expr(e)
	}
	if b.record == "" {
		if len(b.problems) == before {
			noteAt(&b.problems, r.Location, "finding goes over its records with: some x in input.%s", b.rule.Over)
		}
		return
	}
	b.head(r.Head.Key)
	for _, path := range sortedKeys(b.hidden) {
		if !b.seen[path] {
			noteAt(&b.problems, b.hidden[path], "%[2]s.%[1]s may be absent, which not or a comprehension would take for false: turn the comparison round (x == false for not x, x <= y for not x > y), or read the field outside as well", path, b.record)
		}
	}
}

func (b *body) expr(e *ast.Expr) {
	if len(e.With) > 0 {
		noteAt(&b.problems, e.Location, "with: a rule judges the facts as they are")
		return
	}
	if e.Negated {
		defer b.shield()()
	}
	switch t := e.Terms.(type) {
	case *ast.SomeDecl:
		b.some(e, t)
	case *ast.Term:
		b.condition(t)
	case []*ast.Term:
		b.call(e, t)
	case *ast.Every:
		noteAt(&b.problems, e.Location, "every is not followed into: use not, or names with a comprehension")
	default:
		noteAt(&b.problems, e.Location, "this is not used in rules")
	}
}

// shield marks what follows as read behind not or a comprehension, until the
// returned function is called.
func (b *body) shield() func() {
	before := b.shielded
	b.shielded = true
	return func() { b.shielded = before }
}

// condition is a bare term: true or false.
func (b *body) condition(t *ast.Term) {
	k, ok := b.term(t)
	if ok && k.base != truth {
		noteAt(&b.problems, t.Location, "%v is %s, and no condition: compare it with something", t, k.base)
	}
}

// some declares the record, or goes over a list.
func (b *body) some(e *ast.Expr, d *ast.SomeDecl) {
	in, ok := d.Symbols[0].Value.(ast.Call)
	if !ok || len(in) != 3 {
		b.forget(d.Symbols...)
		noteAt(&b.problems, e.Location, "write: some x in input.%s, or some x in a list; no index is used", b.rule.Over)
		return
	}
	v, ok := in[1].Value.(ast.Var)
	if !ok || v.IsWildcard() {
		noteAt(&b.problems, e.Location, "some names one plain variable")
		b.forget(in[1])
		return
	}
	if !b.free(in[1], v) {
		return
	}
	b.vars[v] = kind{} // until more is known
	if ref, ok := in[2].Value.(ast.Ref); ok && ref.HasPrefix(ast.InputRootRef) {
		b.over(e, v, ref)
		return
	}
	k, ok := b.term(in[2])
	if ok && k.base != list {
		noteAt(&b.problems, in[2].Location, "%v is %s, and no list to go over", in[2], k.base)
		return
	}
	if ok {
		b.vars[v] = kind{base: k.of, enum: k.enum, values: k.values, param: k.param, field: k.field}
	}
}

// over declares the record that the body judges.
func (b *body) over(e *ast.Expr, v ast.Var, ref ast.Ref) {
	var collection string
	if len(ref) == 2 {
		if s, ok := ref[1].Value.(ast.String); ok {
			collection = string(s)
		}
	}
	switch {
	case collection == "":
		noteAt(&b.problems, e.Location, "%v: records are gone over with: some x in input.%s", ref, b.rule.Over)
	case collection != b.rule.Over && slices.Contains(facts.Collections(), collection):
		noteAt(&b.problems, ref[0].Location, "the rule reads %s, and METADATA says it goes over %s", collection, b.rule.Over)
	case collection != b.rule.Over:
		noteAt(&b.problems, ref[0].Location, "%q is no collection of the facts%s", collection, nearest.Hint(collection, facts.Collections()))
	case b.record != "":
		noteAt(&b.problems, e.Location, "a rule looks at one record at a time; %s is already declared", b.record)
	case b.shielded:
		noteAt(&b.problems, e.Location, "the record is declared in the body itself, not inside not or a comprehension")
	default:
		delete(b.vars, v)
		b.record = v
	}
}

// free refuses a name that already means something.
func (b *body) free(t *ast.Term, v ast.Var) bool {
	_, taken := b.vars[v]
	if taken || v == b.record || v == b.alias || v == b.lib || v == "input" || v == "data" {
		noteAt(&b.problems, t.Location, "%s already has a meaning here: choose another name", v)
		return false
	}
	return true
}

// forget declares names of which nothing is known, so that a problem with
// where they are declared is not repeated wherever they are used.
func (b *body) forget(terms ...*ast.Term) {
	for _, t := range terms {
		ast.WalkVars(t, func(v ast.Var) bool {
			if _, known := b.vars[v]; !known && v != b.record && v != b.alias && v != b.lib {
				b.vars[v] = kind{}
			}
			return false
		})
	}
}
