package policy

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// builtinNames are the only ones that rules can reach: comparison, simple
// arithmetic and membership. None reads a clock, the network or the
// environment; none builds texts or lists without bound.
func builtinNames() []string {
	return []string{
		"eq", "assign", "equal", "neq", "lt", "lte", "gt", "gte",
		"plus", "minus", "mul", "abs", "count",
		"internal.member_2", "startswith", "endswith", "contains", "lower",
		"indexof", "substring", // of the library only: the text of rules is held to less
	}
}

// sandbox is what the parser, the compiler and the evaluation may use, all
// three alike. An empty AllowNet allows no host; nil would allow every one.
func sandbox() *ast.Capabilities {
	c := ast.CapabilitiesForThisVersion()
	names := builtinNames()
	c.Builtins = slices.DeleteFunc(c.Builtins, func(b *ast.Builtin) bool {
		return !slices.Contains(names, b.Name)
	})
	c.AllowNet = []string{}
	return c
}
