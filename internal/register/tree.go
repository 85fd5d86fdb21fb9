package register

import (
	"slices"
	"strconv"

	"liftlint/internal/source"
	"liftlint/internal/yamldoc"
)

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
	leaf := r.leaf(v, source.Place{Value: cellRange(r.number, column)})
	n := r.item
	for i, step := range steps {
		var next *yamldoc.Node
		if i == len(steps)-1 {
			next = leaf
		}
		n = into(n, step, next, func() *yamldoc.Node { return r.group(steps[i+1], column) })
	}
}

// leaf is a value as a node of the pool; the one that is copied never leaves the
// stack.
func (r *row) leaf(v value, at source.Place) *yamldoc.Node {
	if v.plain {
		return r.nodes.copyOf(yamldoc.Plain(v.text, "", at))
	}
	return r.nodes.copyOf(yamldoc.Text(v.text, "", at))
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
