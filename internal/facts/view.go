package facts

import (
	"maps"
	"reflect"
	"strings"
	"sync"
	"sync/atomic"

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
	steps, ok := stepsOf(v.value.Type(), path)
	if !ok {
		return nil, false
	}
	x := v.value
	for _, index := range steps {
		if x = x.FieldByIndex(index); x.Kind() == reflect.Pointer {
			if x.IsNil() {
				return nil, false
			}
			x = x.Elem()
		}
	}
	return x.Interface(), true
}

// pathOf is a dotted path in records of a type.
type pathOf struct {
	record reflect.Type
	path   string
}

// knownPaths keeps where paths lead, but for those that lead nowhere; types do not
// change. The map is copied when one is added, and is never written to, so that
// looking one up costs little: on a large register that is done millions of times.
var (
	knownPaths atomic.Pointer[map[pathOf][][]int]
	addingPath sync.Mutex
)

// stepsOf are the indices of the fields that a path goes through; false where there
// is no such field.
func stepsOf(t reflect.Type, path string) ([][]int, bool) {
	if known := knownPaths.Load(); known != nil {
		if steps, ok := (*known)[pathOf{t, path}]; ok {
			return steps, true
		}
	}
	steps, of := [][]int{}, t
	for name := range strings.SplitSeq(path, ".") {
		f, ok := record.Field{}, false
		if of = pointed(of); of.Kind() == reflect.Struct {
			f, ok = fieldNamed(of, name)
		}
		if !ok {
			return nil, false
		}
		steps, of = append(steps, f.Index), f.Type
	}
	keepPath(pathOf{t, path}, steps)
	return steps, true
}

func keepPath(p pathOf, steps [][]int) {
	addingPath.Lock()
	defer addingPath.Unlock()
	all := map[pathOf][][]int{}
	if known := knownPaths.Load(); known != nil {
		maps.Copy(all, *known)
	}
	all[p] = steps
	knownPaths.Store(&all)
}
