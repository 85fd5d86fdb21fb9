package facts

import (
	"fmt"
	"reflect"

	"github.com/open-policy-agent/opa/v1/ast"

	"liftlint/internal/record"
)

// Value converts the document for the rules without going through JSON. A nil
// pointer becomes an absent key.
func (d *Document) Value() (ast.Value, error) {
	if err := d.check(); err != nil {
		return nil, err
	}
	return term(reflect.ValueOf(*d)).Value, nil
}

func term(v reflect.Value) *ast.Term {
	switch v.Kind() {
	case reflect.Pointer:
		return term(v.Elem())
	case reflect.String:
		return ast.StringTerm(v.String())
	case reflect.Bool:
		return ast.InternedTerm(v.Bool())
	case reflect.Int:
		return ast.InternedTerm(int(v.Int()))
	case reflect.Float64:
		return ast.FloatNumberTerm(v.Float())
	case reflect.Slice:
		terms := make([]*ast.Term, v.Len())
		for i := range terms {
			terms[i] = term(v.Index(i))
		}
		return ast.ArrayTerm(terms...)
	case reflect.Struct:
		return objectTerm(v)
	}
	panic(fmt.Sprintf("facts: a field of kind %v has no place in the document", v.Kind()))
}

func objectTerm(v reflect.Value) *ast.Term {
	fields := record.Fields(v.Type())
	pairs := make([][2]*ast.Term, 0, len(fields))
	for _, f := range fields {
		x := v.FieldByIndex(f.Index)
		if x.Kind() == reflect.Pointer && x.IsNil() {
			continue
		}
		pairs = append(pairs, [2]*ast.Term{ast.InternedTerm(f.Name), term(x)})
	}
	return ast.NewTerm(ast.NewObject(pairs...))
}
