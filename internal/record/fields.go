// Package record reads Go structs as the JSON objects they become: the fields
// by their names, and the JSON Schema that describes them. Field tags carry
// what a type can't: json names the field, doc describes it, enum lists the
// values of a text.
package record

import (
	"reflect"
	"strings"
	"sync"
)

// Field is one field of a struct as its JSON object has it.
type Field struct {
	Name     string
	Index    []int // for reflect.Value.FieldByIndex
	Optional bool  // a pointer: absent where it is nil
	Doc      string
	Enum     []string
	Type     reflect.Type
}

// known keeps what was found out about a type; types do not change.
var known sync.Map // reflect.Type -> []Field

// Fields lists a struct's fields in order, those of embedded structs included.
func Fields(t reflect.Type) []Field {
	if got, ok := known.Load(t); ok {
		return got.([]Field)
	}
	var list []Field
	for _, f := range reflect.VisibleFields(t) {
		if f.Anonymous || !f.IsExported() {
			continue
		}
		name, options, _ := strings.Cut(f.Tag.Get("json"), ",")
		if name == "-" {
			continue
		}
		if name == "" {
			name = f.Name
		}
		list = append(list, Field{
			Name:     name,
			Index:    f.Index,
			Optional: f.Type.Kind() == reflect.Pointer || strings.Contains(options, "omitempty"),
			Doc:      f.Tag.Get("doc"),
			Enum:     split(f.Tag.Get("enum")),
			Type:     f.Type,
		})
	}
	known.Store(t, list)
	return list
}

func split(list string) []string {
	if list == "" {
		return nil
	}
	return strings.Split(list, ",")
}
