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

// nodePool lends the nodes of one row after another, each with the room that
// it had for entries.
type nodePool struct {
	nodes []*yamldoc.Node
	lent  int
}

func (p *nodePool) node() *yamldoc.Node {
	if p.lent == len(p.nodes) {
		p.nodes = append(p.nodes, &yamldoc.Node{})
	}
	n := p.nodes[p.lent]
	p.lent++
	*n = yamldoc.Node{Entries: n.Entries[:0], Items: n.Items[:0]}
	return n
}

// copyOf takes a node over but for its room.
func (p *nodePool) copyOf(of *yamldoc.Node) *yamldoc.Node {
	n := p.node()
	entries, items := n.Entries, n.Items
	*n = *of
	n.Entries, n.Items = entries, items
	return n
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

// unfit is a column whose cells a kind of gear has no field for.
type unfit struct {
	column int
	kind   string
}

// seen is how often, and in which row first.
type seen struct{ cells, row int }

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
			if kind != "" {
				r.keep(t, cells[t.column-1])
				rr.noteUnfit(t.column, kind, number)
			}
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

func (rr *rowReader) noteUnfit(column int, kind string, row int) {
	s := rr.unfit[unfit{column, kind}]
	if s == nil {
		s = &seen{row: row}
		rr.unfit[unfit{column, kind}] = s
	}
	s.cells++
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

// cellRange is a cell as a range: its row and column for line and column.
func cellRange(row, column int) source.Range {
	return source.Range{From: source.Position{Line: row, Column: column}, To: source.Position{Line: row, Column: column + 1}}
}

// has reports whether a list holds an entry already.
func (r *row) has(steps []string) bool {
	i, _ := strconv.Atoi(steps[1])
	list := r.item.Get(steps[0])
	return list != nil && i < len(list.Items) && list.Items[i] != nil
}

// set puts a value where its steps lead, and makes the groups on the way.
func (r *row) set(i int, t target, v value) {
	steps, column := t.steps, t.column
	r.shape[i/8] |= 1 << (i % 8)
	r.alike = r.alike && v.valid
	leaf := r.nodes.copyOf(v.node(source.Place{Value: cellRange(r.number, column)}))
	n := r.item
	for i, step := range steps {
		var next *yamldoc.Node
		if i == len(steps)-1 {
			next = leaf
		}
		n = into(n, step, next, func() *yamldoc.Node { return r.group(steps[i+1], column) })
	}
}

// group is a mapping, or a list where what comes next is a number.
func (r *row) group(next string, column int) *yamldoc.Node {
	n := r.mapping(column)
	if _, err := strconv.Atoi(next); err == nil {
		n.Kind = yamldoc.Sequence
	}
	return n
}

// mapping is one without entries yet.
func (r *row) mapping(column int) *yamldoc.Node {
	n := r.nodes.node()
	n.Kind, n.Style, n.Pointer = yamldoc.Mapping, yamldoc.BlockStyle, fragment(r.number, column)
	n.Place.Value = cellRange(r.number, column)
	return n
}

// into steps from a node to the value of a key or an entry of a list; what is
// not there yet is set or made.
func into(n *yamldoc.Node, step string, set *yamldoc.Node, made func() *yamldoc.Node) *yamldoc.Node {
	if n.Kind == yamldoc.Sequence {
		i, _ := strconv.Atoi(step)
		for len(n.Items) <= i {
			n.Items = append(n.Items, nil)
		}
		if n.Items[i] == nil {
			if set == nil {
				set = made()
			}
			n.Items[i] = set
		}
		return n.Items[i]
	}
	if v := n.Get(step); v != nil {
		return v
	}
	if set == nil {
		set = made()
	}
	n.Entries = append(n.Entries, yamldoc.Entry{Key: step, KeyRange: set.Place.Value, Value: set})
	return set
}

// compact takes out entries of lists that a row has no values for, and lists
// the inspections that stay where some went.
func compact(n *yamldoc.Node) (inspections []int) {
	for _, e := range n.Entries {
		if e.Key == "inspections" && slices.Contains(e.Value.Items, nil) {
			for i, item := range e.Value.Items {
				if item != nil {
					inspections = append(inspections, i)
				}
			}
		}
		compact(e.Value)
	}
	if slices.Contains(n.Items, nil) {
		n.Items = slices.DeleteFunc(n.Items, func(i *yamldoc.Node) bool { return i == nil })
	}
	for _, i := range n.Items {
		compact(i)
	}
	return inspections
}

// withPointers gives all nodes their JSON pointers, by which messages name
// them. The item is the first of a list.
func withPointers(n *yamldoc.Node, pointer string) {
	n.Pointer = pointer
	for _, e := range n.Entries {
		withPointers(e.Value, pointer+"/"+e.Key)
	}
	for i, item := range n.Items {
		withPointers(item, pointer+"/"+strconv.Itoa(i))
	}
}
