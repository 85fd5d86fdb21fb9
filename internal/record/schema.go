package record

import (
	"encoding/json"
	"fmt"
	"reflect"
	"strings"
)

// Schema is the JSON Schema (2020-12) of a struct type: closed objects, every
// field with its description. It panics on a type that it has no schema for,
// which is a mistake in the program.
func Schema(t reflect.Type, title, description string) map[string]any {
	g := generator{defs: map[string]any{}, types: map[string]reflect.Type{}}
	root := g.object(t)
	root["$schema"] = "https://json-schema.org/draft/2020-12/schema"
	root["title"] = title
	root["description"] = description
	root["$defs"] = g.defs
	return root
}

// SchemaFile lays a schema out as it is published.
func SchemaFile(schema map[string]any) ([]byte, error) {
	b, err := json.MarshalIndent(schema, "", "  ")
	return append(b, '\n'), err
}

type generator struct {
	defs  map[string]any
	types map[string]reflect.Type // what each definition describes
}

func (g generator) object(t reflect.Type) map[string]any {
	properties := map[string]any{}
	required := []any{}
	for _, f := range Fields(t) {
		p := g.schemaOf(f)
		if f.Doc != "" {
			p["description"] = f.Doc
		}
		properties[f.Name] = p
		if !f.Optional {
			required = append(required, f.Name)
		}
	}
	return map[string]any{
		"type":                 "object",
		"additionalProperties": false,
		"properties":           properties,
		"required":             required,
	}
}

func (g generator) schemaOf(f Field) map[string]any {
	t := f.Type
	if t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	if t.Kind() == reflect.Slice {
		return map[string]any{"type": "array", "items": g.scalarOrRef(t.Elem(), f.Enum)}
	}
	return g.scalarOrRef(t, f.Enum)
}

func (g generator) scalarOrRef(t reflect.Type, enum []string) map[string]any {
	switch t.Kind() {
	case reflect.Struct:
		return g.ref(t)
	case reflect.Bool:
		return map[string]any{"type": "boolean"}
	case reflect.Int:
		return map[string]any{"type": "integer"}
	case reflect.Float64:
		return map[string]any{"type": "number"}
	case reflect.Interface:
		return map[string]any{} // any value
	}
	if t.Kind() != reflect.String {
		panic(fmt.Sprintf("record: there is no schema for a field of type %v", t))
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

// ref describes a struct once, under its name.
func (g generator) ref(t reflect.Type) map[string]any {
	name := strings.ToLower(t.Name())
	switch described, done := g.types[name]; {
	case !done:
		g.types[name] = t // first, should a type hold itself
		g.defs[name] = g.object(t)
	case described != t:
		panic(fmt.Sprintf("record: %v and %v would share the definition %q", described, t, name))
	}
	return map[string]any{"$ref": "#/$defs/" + name}
}
