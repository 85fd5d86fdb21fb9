package register

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"liftlint/internal/nearest"
	"liftlint/internal/validate"
)

// mostEntries bounds the entries of a list that columns can fill.
const mostEntries = 50

func isNumber(step string) bool {
	n, err := strconv.Atoi(step)
	return err == nil && n >= 1 && n <= mostEntries && strconv.Itoa(n) == step
}

func lessOne(step string) string {
	n, _ := strconv.Atoi(step)
	return strconv.Itoa(n - 1)
}

// target is where a column's cells go. Without steps they are kept.
type target struct {
	column int // from one; 0 for a fixed value
	head   string
	steps  []string
	spec   Column
	fixed  string
	words  map[string]string
}

// binding is a table's columns, bound to the fields they fill.
type binding struct {
	columns *Columns // nil: the heads are fields
	targets []target // in the order of the columns, then the fixed ones
	origin  *origin
	notes   []Note
}

// binder finds what is wrong with a columns file.
type binder struct {
	v        *validate.Validator
	columns  *Columns
	problems Problems
	taken    map[string]bool // fields by their pointers
}

// bind binds heads to fields. Columns that no entry speaks of are kept, and
// noted.
func bind(v *validate.Validator, name string, heads []string, row int, columns *Columns) (*binding, Problems) {
	b := &binding{columns: columns, origin: &origin{name: name, columns: map[string]int{}, heads: heads}}
	x := &binder{v: v, columns: columns, taken: map[string]bool{}}
	specs := x.specs(name, heads, row)
	for i, head := range heads {
		t := target{column: i + 1, head: head, spec: specs[head]}
		if t.spec.Field != "" {
			t.steps = stepsOf(t.spec.Field)
			t.words = wordsOf(t.spec)
		} else if !t.spec.Keep && head != "" {
			b.notes = append(b.notes, Note{Place: Place{File: name, Row: row, Column: i + 1, Head: head}, Message: "no field is named for this column: its cells are kept as they stand"})
		}
		b.targets = append(b.targets, t)
	}
	if columns != nil {
		for _, f := range columns.Fixed {
			b.targets = append(b.targets, target{steps: stepsOf(f.Field), fixed: f.Value})
		}
	}
	x.needed(name, row)
	if columns == nil && len(x.problems) == 0 {
		x.misspelt(b, row)
	}
	b.register()
	return b, x.problems
}

// register notes the column of each field and, for groups of fields, their
// first.
func (b *binding) register() {
	for _, t := range b.targets {
		if t.column == 0 || len(t.steps) == 0 {
			continue
		}
		for n := range t.steps {
			p := "/" + strings.Join(t.steps[:n+1], "/")
			if _, ok := b.origin.columns[p]; !ok {
				b.origin.columns[p] = t.column
			}
		}
	}
}

// specs are the entries by their heads.
func (x *binder) specs(name string, heads []string, row int) map[string]Column {
	if x.columns == nil {
		return x.fieldHeads(name, heads, row)
	}
	specs := map[string]Column{}
	for i, c := range x.columns.Columns {
		at := fmt.Sprintf("/columns/%d", i)
		if _, twice := specs[c.Head]; twice {
			x.add(at+"/head", "the head %s has an entry already", quote(c.Head))
		}
		specs[c.Head] = c
		switch n := count(heads, c.Head); {
		case n == 0:
			x.add(at+"/head", "%s has no column with the head %s in row %d%s", name, quote(c.Head), row, nearHead(c.Head, heads))
		case n > 1 && c.Field != "":
			x.add(at+"/head", "%s has %d columns with the head %s; rename all but one", name, n, quote(c.Head))
		}
		x.column(at, c)
	}
	for i, f := range x.columns.Fixed {
		x.fixed(fmt.Sprintf("/fixed/%d", i), f)
	}
	return specs
}

// fieldHeads takes heads that are names of fields for entries of their own.
func (x *binder) fieldHeads(name string, heads []string, row int) map[string]Column {
	specs := map[string]Column{}
	for i, h := range heads {
		steps := stepsOf(h)
		if _, leaf := x.leaf(steps); !leaf {
			continue
		}
		if p := "/" + strings.Join(steps, "/"); x.taken[p] {
			x.problems = append(x.problems, Problem{ID: Heads, Place: Place{File: name, Row: row, Column: i + 1, Head: h}, Message: "this field has a column already; rename one of them"})
		} else {
			specs[h], x.taken[p] = Column{Head: h, Field: h}, true
		}
	}
	return specs
}

// fixed sees that a value for all rows is one that its field takes.
func (x *binder) fixed(at string, f FixedValue) {
	field, ok := x.field(at, f.Field)
	switch {
	case !ok:
	case f.Field == "kind" && !slices.Contains(x.v.GearKinds(), f.Value):
		x.add(at+"/value", "%s is no kind of gear; there are %s", quote(f.Value), quoteAll(x.v.GearKinds()))
	case len(field.Words) > 0 && !slices.Contains(field.Words, f.Value):
		x.add(at+"/value", "%s is none of %s", quote(f.Value), quoteAll(field.Words))
	}
}

func count(list []string, of string) int {
	n := 0
	for _, s := range list {
		if s == of {
			n++
		}
	}
	return n
}

func nearHead(head string, heads []string) string {
	if near, ok := nearest.Name(head, heads); ok {
		return ": did you mean " + quote(near) + "?"
	}
	return "; its heads are " + quoteAll(heads)
}

func (x *binder) add(pointer, format string, args ...any) {
	x.problems = append(x.problems, x.columns.problem(pointer, format, args...))
}

// column sees that an entry says one thing, and what its field can take.
func (x *binder) column(at string, c Column) {
	if (c.Field != "") == c.Keep {
		x.add(at, "an entry has either a `field` or `keep: true`")
		return
	}
	if c.Keep {
		if c.Unit != "" || c.Dates != "" || c.Decimal != "" || c.Words != nil {
			x.add(at, "a column that is kept stays as it stands: only `head` and `keep` have a meaning")
		}
		return
	}
	field, ok := x.field(at, c.Field)
	if !ok {
		return
	}
	if c.Unit != "" && !slices.Contains(field.Quantity.Units(), c.Unit) {
		x.add(at+"/unit", "%s is no unit of %s%s", quote(c.Unit), quote(c.Field), unitsOf(field))
	}
	if c.Dates != "" && !field.Day {
		x.add(at+"/dates", "%s is no day", quote(c.Field))
	}
	if c.Decimal != "" && field.Quantity == 0 && field.Type != "number" && field.Type != "integer" {
		x.add(at+"/decimal", "%s is no number", quote(c.Field))
	}
	allowed := field.Words
	if c.Field == "kind" {
		allowed = x.v.GearKinds()
	}
	for i, w := range c.Words {
		if slices.ContainsFunc(c.Words[:i], func(o Word) bool { return o.Says == w.Says }) {
			x.add(fmt.Sprintf("%s/words/%d/says", at, i), "%s has a meaning already", quote(w.Says))
		}
		if len(allowed) > 0 && !slices.Contains(allowed, w.Means) {
			x.add(fmt.Sprintf("%s/words/%d/means", at, i), "%s is none of %s", quote(w.Means), quoteAll(allowed))
		}
	}
}

func unitsOf(f validate.Field) string {
	if f.Quantity == 0 {
		return ", which is no physical value"
	}
	return "; write one of " + quoteAll(f.Quantity.Units())
}

// field finds what a field takes, and sees that it is filled once.
func (x *binder) field(at, name string) (validate.Field, bool) {
	steps := stepsOf(name)
	field, ok := x.leaf(steps)
	if !ok {
		x.add(at+"/field", "%s is no field of an item with one value%s", quote(name), x.hint(steps))
		return field, false
	}
	if p := "/" + strings.Join(steps, "/"); x.taken[p] {
		x.add(at+"/field", "%s is filled already", quote(name))
	} else {
		x.taken[p] = true
	}
	return field, true
}

func (x *binder) hint(steps []string) string {
	if f, ok := fieldOfAny(x.v, steps); ok && f.Type == "array" {
		return ": it is a list, whose entries are numbered as in " + quote(steps[0]+".1")
	}
	for _, kind := range x.v.GearKinds() {
		if near, ok := nearest.Name(steps[0], x.v.ItemKeys(kind)); ok && near != steps[0] {
			return ": did you mean " + quote(near) + "?"
		}
	}
	return ""
}

// misspelt refuses heads that are to be fields and are nearly one: what is found on
// gear must not end up among what nobody reads.
func (x *binder) misspelt(b *binding, row int) {
	for _, t := range b.targets {
		if t.head == "" || len(t.steps) > 0 {
			continue
		}
		steps := stepsOf(t.head)
		hint := x.hint(steps)
		if f, below := fieldOfAny(x.v, steps[:1]); hint == "" && (!below || len(steps) == 1 && f.Type != "object") {
			continue
		}
		if !strings.HasSuffix(hint, "?") {
			hint += "."
		}
		x.problems = append(x.problems, Problem{ID: Heads, Place: Place{File: b.origin.name, Row: row, Column: t.column, Head: t.head},
			Message: "this is no field of an item with one value" + hint + " Write the field, or say in a columns file what the columns are, with `keep: true` for this one"})
	}
}

// leaf finds a field with one value.
func (x *binder) leaf(steps []string) (validate.Field, bool) {
	f, ok := fieldOfAny(x.v, steps)
	return f, ok && f.Type != "object" && f.Type != "array" && steps[0] != "kept"
}

// needed sees that rows have a number and a kind at all.
func (x *binder) needed(name string, row int) {
	for _, field := range []string{"number", "kind"} {
		switch {
		case x.taken["/"+field]:
		case x.columns == nil:
			x.problems = append(x.problems, Problem{ID: Heads, Place: Place{File: name, Row: row},
				Message: fmt.Sprintf("no column has the head %s; say in a columns file what the heads mean", quote(field))})
		case field == "kind":
			x.add("/columns", "no column has the field `kind`, which every item has; where all are of one kind, say so under `fixed`")
		default:
			x.add("/columns", "no column has the field %s, which every item has", quote(field))
		}
	}
}

func wordsOf(c Column) map[string]string {
	if len(c.Words) == 0 {
		return nil
	}
	words := map[string]string{}
	for _, w := range c.Words {
		words[w.Says] = w.Means
	}
	return words
}
