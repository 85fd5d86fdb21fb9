package onfile

import (
	"math"
	"slices"
	"strings"

	"liftlint/internal/yamldoc"
)

// merger puts together what a register and an entry of a plan say of one item.
type merger struct {
	*resolver
	entry Entry
	kind  string
}

// entryOf is the register's entry, with what the plan says besides.
func (m *merger) entryOf(there, here *yamldoc.Node) *yamldoc.Node {
	for _, e := range here.Entries {
		switch e.Key {
		case "id", "kind", "item":
		case "inspection":
			m.fault("plan/unknown_key", e.KeyRange, "the inspections of "+m.entry.ID+" stand in the register: take this out, or write it there")
		default:
			m.add(there, e, []string{e.Key})
		}
	}
	return there
}

// add adds one value of the plan. Where the register has none it stands;
// otherwise it has to be the same.
func (m *merger) add(there *yamldoc.Node, e yamldoc.Entry, steps []string) {
	i := slices.IndexFunc(there.Entries, func(x yamldoc.Entry) bool { return x.Key == e.Key })
	if i < 0 {
		there.Entries = append(there.Entries, e)
		m.plan.own[e.Value.Pointer] = true
		return
	}
	old := there.Entries[i].Value
	switch {
	case m.ofUse(steps), m.unreadable(e.Value, steps), isList(steps) && !m.validator.ValidField(m.kind, steps, e.Value): // of what can't be read the schemas tell
		there.Entries[i] = e
		m.plan.own[e.Value.Pointer] = true
	case old.Kind == yamldoc.Mapping && e.Value.Kind == yamldoc.Mapping:
		for _, below := range e.Value.Entries {
			m.add(old, below, append(slices.Clone(steps), below.Key))
		}
	case isList(steps) && old.Kind == yamldoc.Sequence:
		m.join(old, e.Value)
	case !m.same(old, e.Value, steps):
		m.plan.Unlike = append(m.plan.Unlike, Unlike{Entry: m.entry, Field: strings.Join(steps, "."), Here: e.Value, There: written(old)})
	}
}

// isList reports the fields that hold lists, to which a plan may add.
func isList(steps []string) bool {
	last := steps[len(steps)-1]
	return last == "faults_seen" || last == "labels"
}

// ofUse reports values that say how the item is used, which the plan decides:
// the way a shackle's pin points, spacers on it, the length that something is
// set to.
func (m *merger) ofUse(steps []string) bool {
	switch strings.Join(steps, ".") {
	case "pin", "spacers":
		return m.kind == "shackle"
	case "length":
		return m.kind == "turnbuckle" || m.kind == "adjuster"
	}
	return false
}

// join adds what a list of the plan has besides: what is seen on a sling today
// counts as well as what was seen when it was written down.
func (m *merger) join(old, here *yamldoc.Node) {
	for _, n := range here.List() {
		if !slices.ContainsFunc(old.Items, func(x *yamldoc.Node) bool { return written(x) == written(n) }) {
			old.Items = append(old.Items, n)
			m.plan.own[here.Pointer] = true // where what was seen today stands
		}
	}
}

// How far two lengths may lie apart and still be the same one, written in other
// units. Sizes in millimeters and inches are named alike though they differ a
// little: 22 mm and 7/8 in by 1 % (arithmetic), while those that follow each other
// differ by 6 % and more (from memory); both ratios are this project's own choice.
const (
	sameSizeRatio   = 0.03
	sameFigureRatio = 0.001
)

// unreadable reports a value of the plan that is no quantity of its kind.
func (m *merger) unreadable(n *yamldoc.Node, steps []string) bool {
	field, known := m.validator.ItemField(m.kind, steps)
	if !known || field.Quantity == 0 {
		return false
	}
	_, err := field.Quantity.Parse(n.Text)
	return err != nil
}

// same reports whether two values say the same, whatever their units.
func (m *merger) same(a, b *yamldoc.Node, steps []string) bool {
	if a.Kind == yamldoc.Mapping || a.Kind == yamldoc.Sequence {
		return written(a) == written(b)
	}
	field, _ := m.validator.ItemField(m.kind, steps)
	if field.Quantity == 0 {
		return strings.TrimSpace(a.Text) == strings.TrimSpace(b.Text)
	}
	x, errX := field.Quantity.Parse(a.Text)
	y, errY := field.Quantity.Parse(b.Text)
	if errX != nil || errY != nil {
		return false
	}
	within := sameFigureRatio
	if last := steps[len(steps)-1]; strings.Contains(last, "diameter") || last == "size" || last == "width" {
		within = sameSizeRatio
	}
	return math.Abs(x-y) <= within*math.Max(math.Abs(x), math.Abs(y))
}

// written is a value as text, keys in order.
func written(n *yamldoc.Node) string {
	switch n.Kind {
	case yamldoc.Mapping:
		var parts []string
		for _, e := range n.Entries {
			parts = append(parts, e.Key+": "+written(e.Value))
		}
		slices.Sort(parts)
		return "{" + strings.Join(parts, ", ") + "}"
	case yamldoc.Sequence:
		var parts []string
		for _, i := range n.Items {
			parts = append(parts, written(i))
		}
		return "[" + strings.Join(parts, ", ") + "]"
	}
	return n.Text
}
