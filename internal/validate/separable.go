package validate

import (
	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/internal/yamldoc"
)

// Separable reports whether an item of a kind is valid whenever one with the
// same keys is and each of its own values is: whether no schema of it compares
// values with one another. Then a table of many like rows need not be held
// against whole schemas row by row.
func (v *Validator) Separable(kind string) bool {
	for _, path := range []string{itemPath, kindPath("gear", kind), foundFolder + kind + suffix} {
		sch, err := v.schemas.get(path)
		if err != nil || !separable(sch, map[*jsonschema.Schema]bool{}) {
			return false
		}
	}
	return true
}

func separable(s *jsonschema.Schema, seen map[*jsonschema.Schema]bool) bool {
	if s == nil || seen[s] {
		return true
	}
	seen[s] = true
	if joins(s) || !separable(s.Ref, seen) {
		return false
	}
	if items, ok := s.Items.(*jsonschema.Schema); ok {
		if !separable(items, seen) {
			return false
		}
	} else if s.Items != nil {
		return false
	}
	for _, p := range s.Properties {
		if !separable(p, seen) {
			return false
		}
	}
	return true
}

// joins reports keywords by which what one value may be hangs on another, and
// any that are not used here and not looked into.
func joins(s *jsonschema.Schema) bool {
	return s.AllOf != nil || s.AnyOf != nil || s.OneOf != nil || s.Not != nil || s.If != nil ||
		s.PropertyNames != nil || s.RegexProperties || s.PatternProperties != nil || s.Dependencies != nil ||
		s.DependentRequired != nil || s.DependentSchemas != nil || s.UnevaluatedProperties != nil ||
		s.Contains != nil || s.UniqueItems || s.PrefixItems != nil || s.Items2020 != nil || s.UnevaluatedItems != nil ||
		s.RecursiveRef != nil || s.DynamicRef != nil || s.MinProperties >= 0 || s.MaxProperties >= 0
}

// ValidField reports whether a value of an item's field is valid by itself.
func (v *Validator) ValidField(kind string, steps []string, n *yamldoc.Node) bool {
	chain := v.fieldChain(kind, steps)
	return len(chain) > 0 && run(chain[0], n.Value()) == nil
}
