package validate

import (
	"maps"
	"slices"
	"strings"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/internal/nearest"
	"liftlint/internal/yamldoc"
)

// longestMisspelt is more than any key with a letter wrong. Longer ones are
// not compared with the known ones, which takes time in proportion.
const longestMisspelt = 40

// keys words what is wrong with the keys of a mapping: unknown ones at the key,
// missing ones at the head of the mapping, a misspelt one once.
func (x *explainer) keys(n *yamldoc.Node, s *jsonschema.Schema) {
	known := slices.Sorted(maps.Keys(s.Properties))
	// Required keys come first: of equally near ones, one of them was meant.
	absent := slices.DeleteFunc(slices.Concat(s.Required, known), func(k string) bool { return n.Get(k) != nil })
	meant := map[string]bool{}
	for _, e := range n.Entries {
		if slices.Contains(known, e.Key) {
			continue
		}
		near, ok := nearKey(e.Key, absent)
		required := ok && slices.Contains(s.Required, near)
		if required {
			meant[near] = true
		}
		if required || s.AdditionalProperties == false {
			x.add(UnknownKey, e.KeyRange, quote(e.Key)+" is no key of "+x.name(n.Pointer)+hint(e.Key, near, known))
		}
	}
	for _, k := range s.Required {
		if n.Get(k) == nil && !meant[k] {
			x.add(MissingKey, x.head(n), x.name(n.Pointer)+" lacks "+quote(k)+"; write "+written(k, s.Properties[k]))
		}
	}
}

// hint says what an unknown key may stand for: one that is absent, one that is
// there already, or any.
func hint(key, near string, known []string) string {
	if near != "" {
		return ": did you mean " + quote(near) + "?"
	}
	if k, ok := nearKey(key, known); ok {
		return ": " + quote(k) + " is there already"
	}
	if len(known) == 0 {
		return ""
	}
	return "; its keys are " + list(quoteAll(known), "and")
}

// nearKey finds the known key that was meant. Two letters in the wrong order
// count as near, also in words so short that two other letters would not.
func nearKey(key string, known []string) (string, bool) {
	if len(key) > longestMisspelt {
		return "", false
	}
	if k, ok := otherWords()[strings.ToLower(key)]; ok && slices.Contains(known, k) {
		return k, true
	}
	if k, ok := nearest.Name(key, known); ok {
		return k, true
	}
	for _, k := range known {
		if sameLetters(key, k) {
			return k, true
		}
	}
	return "", false
}

// otherWords are what the trade calls some of the keys too.
func otherWords() map[string]string {
	return map[string]string{
		"weight": "mass", "wt": "mass",
		"wll": "rated_load", "swl": "rated_load", "capacity": "rated_load", "rating": "rated_load", "rated_capacity": "rated_load",
		"cog": "center_of_gravity", "cg": "center_of_gravity", "center_of_mass": "center_of_gravity",
		"lugs": "attachments", "lifting_points": "attachments", "padeyes": "attachments",
		"slings": "gear", "hardware": "gear", "rope_diameter": "diameter", "dia": "diameter",
		"manufacturer": "maker", "serial_number": "serial", "inspector": "by", "name": "title", "version": "liftlint",
	}
}

func sameLetters(a, b string) bool {
	x, y := []rune(a), []rune(b)
	slices.Sort(x)
	slices.Sort(y)
	return slices.Equal(x, y)
}
