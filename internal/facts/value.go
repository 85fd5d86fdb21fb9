package facts

import (
	"fmt"
	"reflect"
	"strings"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"

	"liftlint/internal/record"
)

// Value converts the document for the rules without going through JSON. A nil
// pointer becomes an absent key.
func (d *Document) Value() (ast.Value, error) { return d.ValueOf(wholeDocument()) }

// ValueOf converts what a choice keeps of the document. Every collection is there.
func (d *Document) ValueOf(c Choice) (ast.Value, error) {
	if err := d.check(); err != nil {
		return nil, err
	}
	if c.root == nil {
		c = wholeDocument()
	}
	return c.root.term(reflect.ValueOf(d).Elem()).Value, nil
}

// Choice says which fields of records are converted: of a register with 100,000
// items, those that no rule reads cost more than the rest. The zero value keeps all.
type Choice struct{ root *layout }

// Choose keeps the fields at dotted paths, by their collection, and the key of
// every record. A nested record that is named is kept whole. The error names a
// collection or a field that there is not.
func Choose(fields map[string][]string) (Choice, error) {
	root := &layout{}
	for _, f := range record.Fields(reflect.TypeFor[Document]()) {
		paths := append([]string{"key"}, fields[f.Name]...)
		of, err := chosen(f.Type.Elem(), paths)
		if err != nil {
			return Choice{}, fmt.Errorf("facts: %s: %w", f.Name, err)
		}
		root.fields = append(root.fields, columnOf(f, of))
	}
	for name := range fields {
		if _, ok := fieldNamed(reflect.TypeFor[Document](), name); !ok {
			return Choice{}, fmt.Errorf("facts: there is no collection %s", name)
		}
	}
	return Choice{root}, nil
}

// chosen is the layout of a record of which some fields are kept.
func chosen(t reflect.Type, paths []string) (*layout, error) {
	below := map[string][]string{} // of a nested record; empty: all of it
	for _, path := range paths {
		name, rest, nested := strings.Cut(path, ".")
		f, ok := fieldNamed(t, name)
		if !ok || nested && pointed(f.Type).Kind() != reflect.Struct {
			return nil, fmt.Errorf("there is no field %s", path)
		}
		if old, seen := below[name]; !nested || seen && len(old) == 0 {
			below[name] = []string{}
		} else {
			below[name] = append(old, rest)
		}
	}
	l := &layout{}
	for _, f := range record.Fields(t) {
		paths, ok := below[f.Name]
		if !ok {
			continue
		}
		of := wholeOf(f.Type)
		if len(paths) > 0 {
			var err error
			if of, err = chosen(pointed(f.Type), paths); err != nil {
				return nil, err
			}
		}
		l.fields = append(l.fields, columnOf(f, of))
	}
	return l, nil
}

func fieldNamed(t reflect.Type, name string) (record.Field, bool) {
	for _, f := range record.Fields(t) {
		if f.Name == name {
			return f, true
		}
	}
	return record.Field{}, false
}

func pointed(t reflect.Type) reflect.Type {
	if t.Kind() == reflect.Pointer {
		return t.Elem()
	}
	return t
}

// layout is how a record is converted: its fields with the terms of their names,
// which all records share.
type layout struct{ fields []column }

type column struct {
	name  *ast.Term
	index []int
	of    *layout              // of a nested record, or of the records of a list
	words map[string]*ast.Term // of a text that has a list of values
}

func columnOf(f record.Field, of *layout) column {
	c := column{name: ast.StringTerm(f.Name), index: f.Index, of: of, words: map[string]*ast.Term{}}
	for _, w := range f.Enum {
		c.words[w] = ast.StringTerm(w)
	}
	return c
}

// wholeDocument is the choice of everything.
var wholeDocument = sync.OnceValue(func() Choice { return Choice{wholeOf(reflect.TypeFor[Document]())} })

// wholeOf is the layout of all of a record, or of a list of records; nil for what
// has no fields.
func wholeOf(t reflect.Type) *layout {
	if t = pointed(t); t.Kind() == reflect.Slice {
		t = t.Elem()
	}
	if t.Kind() != reflect.Struct {
		return nil
	}
	l := &layout{}
	for _, f := range record.Fields(t) {
		l.fields = append(l.fields, columnOf(f, wholeOf(f.Type)))
	}
	return l
}

func (l *layout) term(v reflect.Value) *ast.Term {
	pairs := make([][2]*ast.Term, 0, len(l.fields))
	for i := range l.fields {
		c := &l.fields[i]
		x := v.FieldByIndex(c.index)
		if x.Kind() == reflect.Pointer {
			if x.IsNil() {
				continue
			}
			x = x.Elem()
		}
		pairs = append(pairs, [2]*ast.Term{c.name, c.term(x)})
	}
	return ast.NewTerm(ast.NewObject(pairs...))
}

func (c *column) term(v reflect.Value) *ast.Term {
	switch v.Kind() {
	case reflect.String:
		if t := c.words[v.String()]; t != nil {
			return t
		}
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
			terms[i] = c.term(v.Index(i))
		}
		return ast.ArrayTerm(terms...)
	case reflect.Struct:
		return c.of.term(v)
	}
	panic(fmt.Sprintf("facts: a field of kind %v has no place in the document", v.Kind()))
}
