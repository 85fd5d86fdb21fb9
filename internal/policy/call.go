package policy

import (
	"github.com/open-policy-agent/opa/v1/ast"
)

// call is an expression that applies an operator or a built-in.
func (b *body) call(e *ast.Expr, terms []*ast.Term) {
	if terms[0].String() == "assign" {
		b.assign(e, terms[1], terms[2])
		return
	}
	k, ok := b.function(e.Location, terms)
	if ok && k.base != truth {
		noteAt(&b.problems, e.Location, "%v is %s, and no condition: compare it with something", e, k.base)
	}
}

// assign gives a name to a value. The name keeps the value's kind.
func (b *body) assign(e *ast.Expr, left, right *ast.Term) {
	v, ok := left.Value.(ast.Var)
	switch {
	case !ok || v.IsWildcard():
		noteAt(&b.problems, e.Location, "%v: a plain name stands left of :=", left)
		b.forget(left)
	case e.Negated:
		noteAt(&b.problems, e.Location, "not before := has no meaning")
	case b.free(left, v):
		k, _ := b.term(right)
		b.vars[v] = k
	}
}

// function finds the kind of an operator's or a built-in's result, and holds
// its operands to what it is made for. Rego itself compares anything with
// anything: "50" > 100 is true there.
func (b *body) function(l *ast.Location, terms []*ast.Term) (kind, bool) {
	name := terms[0].String()
	operands := make([]kind, 0, len(terms)-1)
	known := true
	for _, t := range terms[1:] {
		k, ok := b.term(t)
		known = known && ok
		operands = append(operands, k)
	}
	if !known {
		return kind{}, false
	}
	b.unsaid.asked(operands)
	if k, ok, taken := b.libCall(l, name, operands); taken {
		return k, ok
	}
	switch name {
	case "lt", "lte", "gt", "gte":
		return kind{base: truth}, b.numbers(l, operands) && b.sameUnit(l, operands)
	case "equal", "neq":
		return kind{base: truth}, b.comparable(l, operands)
	case "internal.member_2":
		return kind{base: truth}, b.member(l, operands)
	case "plus", "minus":
		k := kind{base: number, unit: operands[0].unit + operands[len(operands)-1].unit}
		if operands[0].unit != "" {
			k.unit = operands[0].unit
		}
		return k, b.numbers(l, operands) && b.sameUnit(l, operands)
	case "mul":
		return kind{base: number}, b.numbers(l, operands)
	case "abs":
		return operands[0], b.numbers(l, operands)
	case "count":
		return kind{base: number}, b.wants(l, operands, list)
	case "startswith", "endswith", "contains":
		return kind{base: truth}, b.wants(l, operands, text)
	case "lower":
		return kind{base: text}, b.wants(l, operands, text)
	case "eq":
		noteAt(&b.problems, l, "write == to compare, or := to give a name")
		return kind{}, false
	}
	noteAt(&b.problems, l, "%s is not used in rules: arithmetic and anything longer is computed for the facts", name)
	return kind{}, false
}

func (b *body) wants(l *ast.Location, operands []kind, want base) bool {
	for _, k := range operands {
		if k.base != want {
			noteAt(&b.problems, l, "%s is wanted here, found %s", want, k.base)
			return false
		}
	}
	return true
}

func (b *body) numbers(l *ast.Location, operands []kind) bool {
	return b.wants(l, operands, number)
}

// sameUnit refuses degrees against newtons. A literal has no unit and goes
// with any.
func (b *body) sameUnit(l *ast.Location, operands []kind) bool {
	for _, x := range operands[1:] {
		if y := operands[0]; x.unit != "" && y.unit != "" && x.unit != y.unit {
			noteAt(&b.problems, l, "one side is in %s, the other in %s", y.unit, x.unit)
			return false
		}
	}
	return true
}

func (b *body) comparable(l *ast.Location, o []kind) bool {
	switch {
	case o[0].base != o[1].base:
		noteAt(&b.problems, l, "%s is compared with %s", o[0].base, o[1].base)
		return false
	case o[0].base == list:
		noteAt(&b.problems, l, "lists are not compared: ask for one of them with in, or count them")
		return false
	case o[0].base == number:
		return b.sameUnit(l, o)
	}
	return b.familiar(l, o[0], o[1]) && b.familiar(l, o[1], o[0])
}

func (b *body) member(l *ast.Location, o []kind) bool {
	if o[1].base != list {
		noteAt(&b.problems, l, "in wants a list at its right, found %s", o[1].base)
		return false
	}
	if o[1].of != "" && o[0].base != o[1].of {
		noteAt(&b.problems, l, "what is looked for is %s, what the list holds is %s", o[0].base, o[1].of)
		return false
	}
	return b.familiar(l, o[0], o[1]) && b.familiar(l, o[1], o[0])
}

// familiar refuses a word that the other side can never be.
func (b *body) familiar(l *ast.Location, a, other kind) bool {
	word, bad := stranger(a, other)
	if bad {
		noteAt(&b.problems, l, "%s", notAmong(word, a.param, other.enum))
	}
	return !bad
}
