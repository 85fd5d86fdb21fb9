package facts

import (
	"reflect"
	"strings"
	"sync"
)

// field is one field of a record as the document has it.
type field struct {
	name     string
	index    []int
	optional bool
	doc      string
	enum     []string
	typ      reflect.Type
}

// known keeps what was found out about a type; types do not change.
var known sync.Map // reflect.Type -> []field

// fieldsOf lists a struct's fields in order, those of embedded records included.
func fieldsOf(t reflect.Type) []field {
	if got, ok := known.Load(t); ok {
		return got.([]field)
	}
	var list []field
	for _, f := range reflect.VisibleFields(t) {
		if f.Anonymous {
			continue
		}
		name, _, _ := strings.Cut(f.Tag.Get("json"), ",")
		list = append(list, field{
			name:     name,
			index:    f.Index,
			optional: f.Type.Kind() == reflect.Pointer,
			doc:      f.Tag.Get("doc"),
			enum:     split(f.Tag.Get("enum")),
			typ:      f.Type,
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
