package register

import (
	"slices"
	"strconv"
	"strings"

	"liftlint/internal/source"
	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

// mostKnown bounds how many texts of a column are kept with what they mean.
const mostKnown = 4096

// rowReader turns rows into items. It keeps what cells have come to, since most
// columns hold few different texts; each goroutine has its own.
type rowReader struct {
	v       *validate.Validator
	b       *binding
	kinds   []string
	nothing []string
	kindAt  int // the target of the kind
	set     []settings
	byKind  map[string]*kindReader
	unfit   map[unfit]*seen
	nodes   nodePool
}

// kindReader knows what the targets take for one kind of gear.
type kindReader struct {
	kind   string
	fields []validate.Field
	ok     []bool
	known  []map[string]value
	// shapes are the sets of fields that a valid item has been seen with; nil
	// where values of one item are compared with one another.
	shapes map[string]bool
}

// mostKept is a length in bytes that any text kept may have.
const mostKept = 32767

func newRowReader(v *validate.Validator, b *binding) *rowReader {
	rr := &rowReader{v: v, b: b, kinds: v.GearKinds(), byKind: map[string]*kindReader{}, unfit: map[unfit]*seen{}}
	if b.columns != nil {
		rr.nothing = b.columns.Nothing
	}
	for i, t := range b.targets {
		rr.set = append(rr.set, b.settings(t))
		if len(t.steps) == 1 && t.steps[0] == "kind" {
			rr.kindAt = i
		}
	}
	return rr
}

func (rr *rowReader) reader(kind string) *kindReader {
	if k := rr.byKind[kind]; k != nil {
		return k
	}
	n := len(rr.b.targets)
	k := &kindReader{kind: kind, fields: make([]validate.Field, n), ok: make([]bool, n), known: make([]map[string]value, n)}
	for i, t := range rr.b.targets {
		if len(t.steps) > 0 {
			k.fields[i], k.ok[i] = rr.v.ItemField(kind, t.steps)
			k.known[i] = map[string]value{}
		}
	}
	if slices.Contains(rr.kinds, kind) && rr.v.Separable(kind) {
		k.shapes = map[string]bool{}
	}
	rr.byKind[kind] = k
	return k
}

// blank reports cells that say nothing.
func (rr *rowReader) blank(cell string) bool {
	text := strings.TrimSpace(cell)
	return text == "" || slices.Contains(rr.nothing, text)
}

// row is an item in the making.
type row struct {
	number   int // of the row
	item     *yamldoc.Node
	problems Problems
	kept     []*yamldoc.Node
	entries  []int // of inspections, the columns' numbers of those there are

	nodes *nodePool
	kind  *kindReader
	shape []byte // a bit for each target that has a value
	alike bool   // nothing but its shape can make the item not valid
}

// read makes the tree of values of one row. It is good until the next.
func (rr *rowReader) read(number int, cells []string) *row {
	rr.nodes.lent = 0
	r := &row{number: number, nodes: &rr.nodes}
	r.item = r.mapping(0)
	kind := rr.kindOf(cells)
	k := rr.reader(kind)
	r.kind, r.alike = k, k.shapes != nil
	r.shape = make([]byte, len(rr.b.targets)/8+1)
	for i, t := range rr.b.targets {
		switch {
		case t.column == 0 || rr.rawBlank(cells[t.column-1]):
		case len(t.steps) == 0:
			r.keep(t, cells[t.column-1])
		case rr.blank(cells[t.column-1]):
		case !k.ok[i]:
			rr.unfitting(r, i, kind, cells[t.column-1])
		default:
			rr.put(r, i, k, cells[t.column-1])
		}
	}
	rr.putFixed(r, k)
	r.entries = compact(r.item)
	if r.entries != nil {
		r.alike = false // entries of lists that are not there have no bit
	}
	if len(r.kept) > 0 {
		list := &yamldoc.Node{Kind: yamldoc.Sequence, Style: yamldoc.BlockStyle, Items: r.kept, Place: r.item.Place}
		r.item.Entries = append(r.item.Entries, yamldoc.Entry{Key: "kept", Value: list})
	}
	return r
}

func (rr *rowReader) rawBlank(cell string) bool { return strings.TrimSpace(cell) == "" }

// kindOf is the kind that a row names; empty where it names none.
func (rr *rowReader) kindOf(cells []string) string {
	t := rr.b.targets[rr.kindAt]
	if t.column == 0 {
		return t.fixed
	}
	cell := cells[t.column-1]
	if rr.blank(cell) {
		return ""
	}
	return rr.value(rr.kindAt, rr.reader(""), cell).text
}

// value is what a cell comes to.
func (rr *rowReader) value(i int, k *kindReader, cell string) value {
	if v, ok := k.known[i][cell]; ok {
		return v
	}
	var kinds []string
	if i == rr.kindAt {
		kinds = rr.kinds
	}
	v := convert(cell, k.fields[i], kinds, rr.set[i])
	v.valid = v.why == "" && k.kind != "" && rr.v.ValidField(k.kind, rr.b.targets[i].steps, v.node(source.Place{}))
	if len(k.known[i]) < mostKnown {
		k.known[i][cell] = v
	}
	return v
}

func (rr *rowReader) put(r *row, i int, k *kindReader, cell string) {
	t := rr.b.targets[i]
	v := rr.value(i, k, cell)
	if v.why != "" {
		r.problems = append(r.problems, Problem{ID: v.id, Message: v.why, Place: Place{File: rr.b.origin.name, Row: r.number, Column: t.column, Head: t.head}})
		return
	}
	r.set(i, t, v)
}

// putFixed adds what holds for all rows. An inspection is not made up of fixed
// values alone.
func (rr *rowReader) putFixed(r *row, k *kindReader) {
	for i, t := range rr.b.targets {
		if t.column > 0 || t.steps[0] == "inspections" && !r.has(t.steps[:2]) {
			continue
		}
		v := value{text: t.fixed}
		if k.ok[i] {
			v = rr.value(i, k, t.fixed)
		}
		if v.why != "" {
			r.problems = append(r.problems, Problem{ID: v.id, Message: "the fixed value of " + quote(strings.Join(t.steps, ".")) + ": " + v.why, Place: Place{File: rr.b.origin.name, Row: r.number}})
			continue
		}
		r.set(i, t, v)
	}
}

// keep takes a cell over as it stands.
func (r *row) keep(t target, cell string) {
	at := source.Place{Value: cellRange(r.number, t.column)}
	head := t.head
	r.alike = r.alike && len(cell) <= mostKept && len(head) <= mostKept
	if head == "" {
		head = "column " + strconv.Itoa(t.column)
	}
	entry := r.mapping(t.column)
	entry.Entries = append(entry.Entries,
		yamldoc.Entry{Key: "head", KeyRange: at.Value, Value: r.nodes.copyOf(yamldoc.Text(head, "", at))},
		yamldoc.Entry{Key: "value", KeyRange: at.Value, Value: r.nodes.copyOf(yamldoc.Text(cell, "", at))})
	r.kept = append(r.kept, entry)
}
