package policy

import (
	"cmp"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"liftlint/internal/datafile"
)

// change is a mutant and the bytes of the rule's text that make it.
type change struct {
	mutant   Mutant
	of       tested
	from, to int
	with     string
	without  string // or the field whose condition in where it lacks
}

// tested is the mutant with the rule's tests.
func (c change) tested() tested {
	t := c.of
	t.without = c.without
	t.rule.text = t.rule.text[:c.from] + c.with + t.rule.text[c.to:]
	return t
}

// finder goes through a rule for what can be changed. What would leave the rule
// as it was, whatever it is put to, is left out, since no test could tell it:
//
//   - a parameter that a layer sets, for its default is not used;
//   - zero moved by a share of itself;
//   - a whole number moved by less than one, where it is compared with nothing
//     but whole numbers: these are moved by one instead;
//   - what a comprehension gathers, where only the number of items counts;
//   - a condition that is true as it stands.
type finder struct {
	*loader
	of      tested
	file    regoFile // of the rule
	over    string
	record  ast.Var
	alias   ast.Var         // the parameters' name, empty when not imported
	numbers map[string]bool // parameters that conditions read, and whether with whole numbers only
	params  map[string]paramEntry
	changes []change
	misfits Problems
}

// find lists the mutants of a rule that loads, in the order of their places.
func (l *loader) find(t tested) ([]change, error) {
	m, ps := t.rule.parse(l.caps)
	if m == nil {
		return nil, ps.Sorted()
	}
	meta, tree, ps := readMetadata(m, l.schema)
	if len(ps) > 0 {
		return nil, ps.Sorted()
	}
	f := finder{loader: l, of: t, file: t.rule, over: meta.Custom.Over, numbers: map[string]bool{}, params: meta.Custom.Params}
	for _, im := range m.Imports {
		if im.Path.String() != libPath {
			f.alias = im.Name()
		}
	}
	for _, r := range m.Rules {
		f.record = recordOf(r)
		ast.WalkExprs(r.Body, func(e *ast.Expr) bool {
			f.expr(e)
			return false
		})
	}
	f.defaults(tree)
	f.where(meta.Custom.Where, tree)
	slices.SortStableFunc(f.changes, func(a, b change) int { return cmp.Compare(a.from, b.from) })
	return f.changes, f.misfits.Sorted()
}

// replace notes the change of what stands in the text at a place, which has to
// be what the parser says stands there.
func (f *finder) replace(at *ast.Location, old, with, what string, args ...any) {
	if !strings.HasPrefix(f.file.text[min(at.Offset, len(f.file.text)):], old) {
		noteAt(&f.misfits, at, "%q does not stand here, so that it can't be changed", old)
		return
	}
	f.changes = append(f.changes, change{
		mutant: Mutant{f.file.id, f.file.name, at.Row, at.Col, datafile.OneLine(fmt.Sprintf(what, args...))},
		of:     f.of, from: at.Offset, to: at.Offset + len(old), with: with,
	})
}

// where takes out each condition of where. The text is left as it is, since a
// key can be written in many ways; the loader leaves the condition out.
func (f *finder) where(conditions map[string]condition, tree *datafile.Tree) {
	for _, field := range sortedKeys(conditions) {
		p := tree.Problem("/custom/where/"+datafile.Escape(field), "")
		at := offsetOf(f.file.text, p.Line, p.Column)
		e := conditions[field]
		words := Condition{field, e.values, e.atLeast, e.atMost}.String()
		f.changes = append(f.changes, change{
			mutant: Mutant{f.file.id, f.file.name, p.Line, p.Column, "where " + words + " was taken out"},
			of:     f.of, from: at, to: at, without: field,
		})
	}
}

// offsetOf is the byte at which a place in a text stands.
func offsetOf(text string, line, column int) int {
	lines := strings.SplitAfter(text, "\n")
	return len(strings.Join(lines[:line-1], "")) + column - 1
}

// expr changes one expression: its operators and numbers, and, where it is a
// condition, all of it.
func (f *finder) expr(e *ast.Expr) {
	own := ownTerms(e)
	whole := f.whole(own)
	for _, t := range own {
		f.operator(t)
		f.number(t, whole)
	}
	if _, loop := e.Terms.(*ast.SomeDecl); !loop && !e.IsAssignment() {
		f.condition(e)
	}
}

// ownTerms are the terms of an expression, each reference as one, without those
// in comprehensions, whose expressions are gone through by themselves, and
// without what is counted.
func ownTerms(e *ast.Expr) []*ast.Term {
	var out []*ast.Term
	ast.WalkTerms(e, func(t *ast.Term) bool {
		switch v := t.Value.(type) {
		case *ast.ArrayComprehension, *ast.SetComprehension:
			return true
		case ast.Ref:
			out = append(out, t)
			return true
		case ast.Call:
			if v[0].String() == "count" {
				out = append(out, v[0])
				return true
			}
		}
		out = append(out, t)
		return false
	})
	return out
}

// neighbors are the operators next to each, in both ways to write them.
func neighbors() map[string][]string {
	return map[string][]string{
		"<": {"<=", ">="}, "<=": {"<"}, ">": {">=", "<="}, ">=": {">"}, "==": {"!="}, "!=": {"=="},
		"lt": {"lte", "gte"}, "lte": {"lt"}, "gt": {"gte", "lte"}, "gte": {"gt"}, "equal": {"neq"}, "neq": {"equal"},
	}
}

func (f *finder) operator(t *ast.Term) {
	ref, ok := t.Value.(ast.Ref)
	if !ok || len(ref) != 1 {
		return
	}
	is := string(t.Location.Text)
	for _, other := range neighbors()[is] {
		f.replace(t.Location, is, other, "%s became %s", is, other)
	}
}

// negation is the word at the beginning of an expression.
var negation = regexp.MustCompile(`^not\b\s*`)

// condition takes a condition out or turns it round. What is taken out leaves
// true behind, which changes nothing else in a body.
func (f *finder) condition(e *ast.Expr) {
	text := string(e.Location.Text)
	if text != "true" {
		f.replace(e.Location, text, "true", "%s was taken out", text)
	}
	word := negation.FindString(text)
	switch {
	case e.Negated && word != "":
		f.replace(e.Location, word, "", "%s became %s", text, text[len(word):])
	case !e.Negated && e.IsCall() && e.Operator().Equal(ast.Member.Ref()):
		f.replace(e.Location, "", "not ", "%s became not %s", text, text)
	}
}
