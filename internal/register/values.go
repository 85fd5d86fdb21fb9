package register

import (
	"strconv"
	"strings"

	"liftlint/internal/yamldoc"
)

// Value is one value of an item as it is written.
type Value struct {
	Field string // with dots, entries of lists counted from one: certificate.date, groups.1.legs.2
	Text  string
	Place Place
}

// Values lists all values of an item that was kept by Reader.Keeping, in the
// order of the file; those below a pointer, such as /inspections/0, if one is
// given, by their fields below it.
func (i *Item) Values(pointer string) []Value {
	n := i.values
	for _, step := range splitPointer(pointer) {
		if n == nil {
			return nil
		}
		if at, err := strconv.Atoi(step); err == nil && n.Kind == yamldoc.Sequence {
			if at < 0 || at >= len(n.Items) {
				return nil
			}
			n = n.Items[at]
			continue
		}
		n = n.Get(step)
	}
	return i.valuesOf(n, "", pointer)
}

func splitPointer(pointer string) []string {
	if pointer == "" {
		return nil
	}
	return strings.Split(pointer[1:], "/")
}

func (i *Item) valuesOf(n *yamldoc.Node, field, pointer string) []Value {
	if n == nil {
		return nil
	}
	var all []Value
	switch n.Kind {
	case yamldoc.Mapping:
		for _, e := range n.Entries {
			all = append(all, i.valuesOf(e.Value, dotted(field, e.Key), pointer+"/"+e.Key)...)
		}
	case yamldoc.Sequence:
		for k, item := range n.Items {
			all = append(all, i.valuesOf(item, dotted(field, strconv.Itoa(k+1)), pointer+"/"+strconv.Itoa(k))...)
		}
	default:
		p := i.Place(pointer)
		if p.Row == 0 {
			p.Range = n.Place.Value
		}
		all = append(all, Value{field, n.Text, p})
	}
	return all
}

func dotted(field, step string) string {
	if field == "" {
		return step
	}
	return field + "." + step
}

// copied is a tree of its own.
func copied(n *yamldoc.Node) *yamldoc.Node {
	c := *n
	c.Entries, c.Items = nil, nil
	for _, e := range n.Entries {
		e.Value = copied(e.Value)
		c.Entries = append(c.Entries, e)
	}
	for _, i := range n.Items {
		c.Items = append(c.Items, copied(i))
	}
	return &c
}
