package validate

import (
	"cmp"
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/internal/yamldoc"
)

// written shows how a missing key is written: its choices, or an example.
func written(key string, s *jsonschema.Schema) string {
	for _, part := range withRefs(s) {
		if len(part.Enum) > 1 {
			return quote(key+":") + " with " + oneOf(part.Enum)
		}
	}
	text, ok := example(s, 6)
	if !ok {
		return quote(key+":") + " with its value"
	}
	return "`" + key + ": " + clean(text) + "`"
}

// example is a value that the schema takes, in YAML's flow style; depth bounds
// how far it goes into what is required of a mapping.
func example(s *jsonschema.Schema, depth int) (string, bool) {
	for _, part := range withRefs(s) {
		if text, ok := ownExample(part); ok {
			return text, true
		}
	}
	if depth == 0 {
		return "", false
	}
	for _, part := range withRefs(s) {
		if items, ok := part.Items.(*jsonschema.Schema); ok {
			text, ok := example(items, depth-1)
			return "[" + text + "]", ok
		}
		if len(part.Required) > 0 {
			return exampleMapping(part, depth)
		}
	}
	return "", false
}

func exampleMapping(s *jsonschema.Schema, depth int) (string, bool) {
	var pairs []string
	for _, k := range s.Required {
		text, ok := example(s.Properties[k], depth-1)
		if !ok {
			return "", false
		}
		pairs = append(pairs, k+": "+text)
	}
	return "{" + strings.Join(pairs, ", ") + "}", true
}

// ownExample is what one schema itself says.
func ownExample(s *jsonschema.Schema) (string, bool) {
	switch {
	case len(s.Examples) > 0:
		return flow(s.Examples[0]), true
	case len(s.Constant) > 0:
		return flow(s.Constant[0]), true
	case len(s.Enum) > 0:
		return flow(s.Enum[0]), true
	}
	return "", false
}

// flow writes a value of a schema in YAML's flow style. Keys come sorted, id
// and kind first.
func flow(v any) string {
	switch v := v.(type) {
	case map[string]any:
		var pairs []string
		for _, k := range slices.SortedFunc(maps.Keys(v), namesFirst) {
			pairs = append(pairs, k+": "+flow(v[k]))
		}
		return "{" + strings.Join(pairs, ", ") + "}"
	case []any:
		var items []string
		for _, item := range v {
			items = append(items, flow(item))
		}
		return "[" + strings.Join(items, ", ") + "]"
	case string:
		return plain(v)
	case json.Number:
		return v.String()
	}
	return fmt.Sprint(v)
}

// plain leaves out the quotes where the text stays the same text without them.
func plain(text string) string {
	doc, faults := yamldoc.Read("", []byte("["+text+"]"))
	if len(faults) == 0 {
		if root := doc.Root(); len(root.Items) == 1 && root.Items[0].Kind == yamldoc.String && root.Items[0].Text == text {
			return text
		}
	}
	quoted, err := json.Marshal(text)
	if err != nil {
		return text
	}
	return string(quoted)
}

// namesFirst puts what says which thing it is ahead of the rest.
func namesFirst(a, b string) int {
	lead := func(k string) int {
		if k == "id" || k == "kind" {
			return 0
		}
		return 1
	}
	return cmp.Or(cmp.Compare(lead(a), lead(b)), cmp.Compare(a, b))
}
