package facts

import (
	"encoding/json"
	"reflect"
	"strings"
)

// Schema is the JSON Schema (2020-12) of the document, made from the types.
// The published schema/facts.schema.json is this, word for word.
func Schema() map[string]any {
	g := generator{defs: map[string]any{}}
	root := g.object(reflect.TypeFor[Document]())
	root["$schema"] = "https://json-schema.org/draft/2020-12/schema"
	root["title"] = "liftlint facts"
	root["description"] = "What rules see of one lift plan: SI numbers with the unit in each name; what is not known is absent."
	root["$defs"] = g.defs
	return root
}

// SchemaJSON is Schema as an indented file.
func SchemaJSON() ([]byte, error) {
	b, err := json.MarshalIndent(Schema(), "", "  ")
	return append(b, '\n'), err
}

type generator struct{ defs map[string]any }

func (g generator) object(t reflect.Type) map[string]any {
	properties := map[string]any{}
	required := []any{}
	for _, f := range fieldsOf(t) {
		p := g.schemaOf(f)
		if f.doc != "" {
			p["description"] = f.doc
		}
		properties[f.name] = p
		if !f.optional {
			required = append(required, f.name)
		}
	}
	return map[string]any{
		"type":                 "object",
		"additionalProperties": false,
		"properties":           properties,
		"required":             required,
	}
}

func (g generator) schemaOf(f field) map[string]any {
	t := f.typ
	if t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	if t.Kind() == reflect.Slice {
		return map[string]any{"type": "array", "items": g.scalarOrRef(t.Elem(), f.enum)}
	}
	return g.scalarOrRef(t, f.enum)
}

func (g generator) scalarOrRef(t reflect.Type, enum []string) map[string]any {
	switch t.Kind() {
	case reflect.Struct:
		name := strings.ToLower(t.Name())
		if _, done := g.defs[name]; !done {
			g.defs[name] = nil // a place kept, should a type hold itself
			g.defs[name] = g.object(t)
		}
		return map[string]any{"$ref": "#/$defs/" + name}
	case reflect.Bool:
		return map[string]any{"type": "boolean"}
	case reflect.Int:
		return map[string]any{"type": "integer"}
	case reflect.Float64:
		return map[string]any{"type": "number"}
	}
	s := map[string]any{"type": "string"}
	if len(enum) > 0 {
		values := make([]any, len(enum))
		for i, e := range enum {
			values[i] = e
		}
		s["enum"] = values
	}
	return s
}
