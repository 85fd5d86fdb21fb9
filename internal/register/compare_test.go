package register

import (
	"reflect"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

// ignorePlaces compares items but for where they stand.
func ignorePlaces() cmp.Option {
	return cmp.Options{
		cmpopts.IgnoreUnexported(Item{}),
		cmp.FilterPath(func(p cmp.Path) bool {
			f, ok := p.Last().(cmp.StructField)
			return ok && (f.Name() == "Pointer" || f.Name() == "LinkPointer")
		}, cmp.Ignore()),
		cmp.Exporter(func(reflect.Type) bool { return true }),
	}
}
