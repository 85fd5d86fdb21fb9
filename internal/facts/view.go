package facts

import (
	"reflect"
	"strings"

	"liftlint/internal/record"
)

// View is one record, to be read by the names that its fields have in the
// document.
type View struct {
	Key, At string
	value   reflect.Value
}

// Collections lists the document's collections in their order.
func Collections() []string {
	var names []string
	for _, f := range record.Fields(reflect.TypeFor[Document]()) {
		names = append(names, f.Name)
	}
	return names
}

// Records returns the records of a collection; false when there is no such
// collection.
func (d *Document) Records(collection string) ([]View, bool) {
	v := reflect.ValueOf(d).Elem()
	for _, f := range record.Fields(v.Type()) {
		if f.Name != collection {
			continue
		}
		list := v.FieldByIndex(f.Index)
		views := make([]View, list.Len())
		for i := range views {
			views[i] = viewOf(list.Index(i))
		}
		return views, true
	}
	return nil, false
}

// ViewOf reads a single record, such as a Leg.
func ViewOf(record any) View { return viewOf(reflect.ValueOf(record)) }

func viewOf(v reflect.Value) View {
	r := v.FieldByName("Record").Interface().(Record)
	return View{Key: r.Key, At: r.At, value: v}
}

// Field returns the value at a dotted path: a float64, an int, a bool, a
// string, a []string or a nested record. It is false when the field is absent
// or there is no such field.
func (v View) Field(path string) (any, bool) {
	x := v.value
	for name := range strings.SplitSeq(path, ".") {
		var ok bool
		if x, ok = child(x, name); !ok {
			return nil, false
		}
	}
	return x.Interface(), true
}

func child(x reflect.Value, name string) (reflect.Value, bool) {
	if x.Kind() != reflect.Struct {
		return x, false
	}
	for _, f := range record.Fields(x.Type()) {
		if f.Name != name {
			continue
		}
		c := x.FieldByIndex(f.Index)
		if c.Kind() == reflect.Pointer {
			if c.IsNil() {
				return c, false
			}
			c = c.Elem()
		}
		return c, true
	}
	return x, false
}
