package policy

import (
	"slices"
	"strings"

	"liftlint/internal/datafile"
	"liftlint/internal/facts"
)

// base is the sort of a value in a rule.
type base string

// The sorts that rules can handle.
const (
	number base = "a number"
	text   base = "text"
	truth  base = "true or false"
	list   base = "a list"
	record base = "a record"
)

// kind is all that is known of a value before any rule runs.
type kind struct {
	base   base
	of     base     // what a list holds
	unit   string   // of a number whose name ends in one
	enum   []string // the words a text, or a list's texts, can be; nil for any
	values []string // the words a literal or a parameter stands for
	param  string   // the parameter that those words come from
	field  string   // the field it comes from, of one that can be unsaid
}

// unsaidWords are values of a field that stand for what the plan does not say.
func unsaidWords() []string { return []string{"not_given", "not_recorded"} }

// unsaid lists the words of a kind that stand for unknown.
func (k kind) unsaid() []string {
	return slices.DeleteFunc(unsaidWords(), func(w string) bool { return !slices.Contains(k.enum, w) })
}

// unitOf is the unit that a name ends in, empty when it ends in none. An
// angle's reference is part of its name, not of its unit.
func unitOf(name string) string {
	last := name[strings.LastIndexAny(name, "_.")+1:]
	if slices.Contains([]string{"n", "kg", "m", "mm", "deg", "days", "months", "ratio", "kpa", "mps", "c", "pa", "d", "times"}, last) && last != name {
		return last
	}
	return ""
}

// shape answers questions about the facts' schema, which is closed.
type shape struct{ root map[string]any }

func newShape() shape { return shape{facts.Schema()} }

func (s shape) deref(node map[string]any) map[string]any {
	if ref, ok := node["$ref"].(string); ok {
		d, _ := s.root["$defs"].(map[string]any)
		node, _ = d[strings.TrimPrefix(ref, "#/$defs/")].(map[string]any)
	}
	return node
}

// step is what a dotted path leads to.
type step struct {
	kind     kind
	optional bool     // some step of the path may be absent
	known    []string // where the path fails: the names there are
	failed   string   // and the one that is none of them
}

// field follows a dotted path through a collection's records.
func (s shape) field(over, path string) (step, bool) {
	properties, _ := s.root["properties"].(map[string]any)
	collection, _ := properties[over].(map[string]any)
	items, _ := collection["items"].(map[string]any)
	node := s.deref(items)
	out := step{}
	for name := range strings.SplitSeq(path, ".") {
		out.optional = out.optional || !slices.Contains(datafile.Texts(node["required"]), name)
		fields, _ := node["properties"].(map[string]any)
		child, ok := fields[name].(map[string]any)
		if !ok {
			return step{known: datafile.Keys(node["properties"]), failed: name}, false
		}
		node = s.deref(child)
	}
	out.kind = s.kindOf(node, path)
	return out, true
}

func (s shape) kindOf(node map[string]any, path string) kind {
	switch node["type"] {
	case "number", "integer":
		return kind{base: number, unit: unitOf(path)}
	case "boolean":
		return kind{base: truth}
	case "string":
		return kind{base: text, enum: datafile.Texts(node["enum"])}
	case "array":
		items, _ := node["items"].(map[string]any)
		of := s.kindOf(s.deref(items), path)
		return kind{base: list, of: of.base, enum: of.enum}
	}
	return kind{base: record}
}

// words are those that a text field can be.
func (s shape) words(over, path string) []string {
	got, _ := s.field(over, path)
	return got.kind.enum
}
