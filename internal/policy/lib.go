package policy

import (
	_ "embed"
	"maps"
	"slices"
	"strings"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"

	"liftlint/internal/nearest"
)

// The library that rules may import: data.liftlint.lib.
const (
	libPath = "data.liftlint.lib"
	libFile = "lib.rego"
)

//go:embed lib/lib.rego
var libText string

// libModule is the library as it is compiled beside the rules.
var libModule = sync.OnceValue(func() *ast.Module {
	return ast.MustParseModuleWithOpts(libText, ast.ParserOptions{RegoVersion: ast.RegoV1, Capabilities: sandbox()})
})

// withLib adds the library to modules.
func withLib(modules map[string]*ast.Module) map[string]*ast.Module {
	all := maps.Clone(modules)
	all[libFile] = libModule().Copy()
	return all
}

// libFunction is what a function of the library takes and gives.
type libFunction struct {
	takes []kind
	gives kind
}

// libFunctions holds each function of the library by its name.
func libFunctions() map[string]libFunction {
	texts := kind{base: list, of: text}
	return map[string]libFunction{
		"differ":    {[]kind{{base: number}, {base: number}, {base: number}}, kind{base: truth}},
		"between":   {[]kind{{base: number}, {base: number}, {base: number}}, kind{base: truth}},
		"missing":   {[]kind{texts, texts}, texts},
		"shared":    {[]kind{texts, texts}, texts},
		"has_label": {[]kind{texts, {base: text}}, kind{base: truth}},
		"label":     {[]kind{texts, {base: text}}, kind{base: text}},
	}
}

// libCall finds the kind of what a function of the library gives; taken is
// false where the name is none of the library's.
func (b *body) libCall(l *ast.Location, name string, operands []kind) (k kind, ok, taken bool) {
	function, isLib := strings.CutPrefix(name, string(b.lib)+".")
	if b.lib == "" || !isLib {
		return kind{}, false, false
	}
	f, known := libFunctions()[function]
	if !known {
		names := slices.Sorted(maps.Keys(libFunctions()))
		noteAt(&b.problems, l, "%q is no function of the library%s", function, nearest.Hint(function, names))
		return kind{}, false, true
	}
	if len(operands) != len(f.takes) {
		noteAt(&b.problems, l, "%s takes %d values, found %d", name, len(f.takes), len(operands))
		return kind{}, false, true
	}
	for i, want := range f.takes {
		if operands[i].base != want.base || want.of != "" && operands[i].of != "" && operands[i].of != want.of {
			noteAt(&b.problems, l, "%s wants %s in place %d, found %s", name, want.base, i+1, operands[i].base)
			return kind{}, false, true
		}
	}
	if f.takes[0].base == number { // lengths with lengths, angles with angles
		ok = b.sameUnit(l, operands[:2])
		if function == "between" {
			ok = ok && b.sameUnit(l, []kind{operands[0], operands[2]})
		}
		return f.gives, ok, true
	}
	return f.gives, true, true
}
