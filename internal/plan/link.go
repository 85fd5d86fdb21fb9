package plan

import (
	"cmp"
	"fmt"
	"slices"

	"liftlint/internal/gear"
	"liftlint/internal/nearest"
	"liftlint/internal/source"
	"liftlint/internal/yamldoc"
)

// The faults that linking finds.
const (
	DuplicateID      = "plan/duplicate_id"
	UnknownReference = "plan/unknown_reference"
	WrongPart        = "plan/wrong_part"
)

// FaultIDs lists them.
func FaultIDs() []string { return []string{DuplicateID, UnknownReference, WrongPart} }

// linker turns the ids of the rigging into what they name.
type linker struct {
	items       map[string]gear.Item
	attachments map[string]*Attachment
	itemIDs     []string // in the order of the plan, for hints
	pointIDs    []string
	used        map[string]source.Range // where an item works first
	partOf      map[string]*gear.Bridle // the bridle that an item is part of
	places      map[string]source.Range // where that bridle names it
	faults      []yamldoc.Fault
}

func newLinker(p *Plan, root fields) *linker {
	l := &linker{
		items:       map[string]gear.Item{},
		attachments: map[string]*Attachment{},
		used:        map[string]source.Range{},
		partOf:      map[string]*gear.Bridle{},
		places:      map[string]source.Range{},
	}
	for _, item := range p.Gear {
		id := item.Base().ID
		if _, twice := l.items[id]; twice {
			continue // reported as such; the first one keeps its name
		}
		l.items[id] = item
		l.itemIDs = append(l.itemIDs, id)
	}
	for i := range p.Load.Attachments {
		a := &p.Load.Attachments[i]
		l.attachments[a.ID] = a
		l.pointIDs = append(l.pointIDs, a.ID)
	}
	l.unique("gear", root.of("gear").items())
	l.unique("attachments", root.of("load").of("attachments").items())
	l.bridles(p.Gear, root.of("gear").items())
	return l
}

// unique reports ids that a list gives twice, at the second one.
func (l *linker) unique(list string, items []fields) {
	first := map[string]source.Range{}
	for _, f := range items {
		n := f.node.Get("id")
		if n == nil {
			continue
		}
		if at, seen := first[n.Text]; seen {
			l.faultWith(DuplicateID, n, fmt.Sprintf("%q names two entries of %s: give each an id of its own", n.Text, list), "the first one", at)
			continue
		}
		first[n.Text] = n.Place.Value
	}
}

// use finds the item named and sees that it can work there: that it is of one
// of the kinds, and works nowhere else.
func (l *linker) use(f fields, kinds ...gear.Kind) (Use, bool) {
	u, ok := l.named(f, kinds...)
	return u, ok && l.once(f.node)
}

// named finds the item named and sees that it is of one of the kinds.
func (l *linker) named(f fields, kinds ...gear.Kind) (Use, bool) {
	id := f.node.Text
	item, ok := l.items[id]
	switch _, isPoint := l.attachments[id]; {
	case ok:
		return Use{Pointer: f.pointer(), Item: item}, l.can(f.node, item, kinds)
	case isPoint:
		l.fault(UnknownReference, f.node, fmt.Sprintf("%q is an attachment of the load: here stands the id of %s", id, anyOf(kinds)))
	default:
		l.fault(UnknownReference, f.node, fmt.Sprintf("no item of gear has the id %q%s", id, nearest.Hint(id, l.itemIDs)))
	}
	return Use{}, false
}

// can reports an item that is of another kind than works there.
func (l *linker) can(n *yamldoc.Node, item gear.Item, kinds []gear.Kind) bool {
	kind := item.Base().Kind
	if slices.Contains(kinds, kind) {
		return true
	}
	l.fault(WrongPart, n, fmt.Sprintf("%s is %s and can't be used here: %s is asked for",
		item.Base().ID, article(kindWords(kind)), anyOf(kinds)))
	return false
}

// once reports an item that is put to work a second time: it would be judged
// by the force of each place alone.
func (l *linker) once(n *yamldoc.Node) bool {
	at, again := l.used[n.Text]
	if !again {
		l.used[n.Text] = n.Place.Value
		return true
	}
	l.faultWith(WrongPart, n, fmt.Sprintf("%s works in another place already: list each item of its own under gear, with its own id", n.Text), "its first place", at)
	return false
}

func (l *linker) fault(id string, n *yamldoc.Node, message string) {
	l.faults = append(l.faults, yamldoc.Fault{ID: id, Message: message, Range: n.Place.Value})
}

func (l *linker) faultWith(id string, n *yamldoc.Node, message, caption string, other source.Range) {
	l.fault(id, n, message)
	l.faults[len(l.faults)-1].Related = []yamldoc.Related{{Range: other, Caption: caption}}
}

// sorted gives the faults in the order of the file.
func (l *linker) sorted() []yamldoc.Fault {
	slices.SortStableFunc(l.faults, func(a, b yamldoc.Fault) int {
		return cmp.Or(
			cmp.Compare(a.Range.From.Line, b.Range.From.Line),
			cmp.Compare(a.Range.From.Column, b.Range.From.Column),
		)
	})
	return l.faults
}
