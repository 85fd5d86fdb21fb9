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
	faults      []yamldoc.Fault
}

func newLinker(p *Plan, root fields) *linker {
	l := &linker{
		items:       map[string]gear.Item{},
		attachments: map[string]*Attachment{},
		used:        map[string]source.Range{},
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

func (l *linker) support(list []fields) Support {
	var s Support
	for _, f := range list { // the schema lets one through
		s = Support{Pointer: f.pointer(), From: f.text("from")}
		for _, by := range f.of("by").items() {
			if u, ok := l.use(by, gear.MasterLinkKind); ok {
				s.By = append(s.By, u)
			}
		}
		legs := f.of("legs").items()
		l.uniqueLegs(legs)
		for i, leg := range legs {
			s.Legs = append(s.Legs, l.leg(leg, s.From, i))
		}
	}
	return s
}

// legName is the leg's own name, or its number counted from one.
func legName(f fields, index int) string {
	if name := f.text("id"); name != "" {
		return name
	}
	return fmt.Sprint(index + 1)
}

// uniqueLegs also reports a leg that is called by the number of another.
func (l *linker) uniqueLegs(legs []fields) {
	l.unique("legs", legs)
	numbered := map[string]source.Range{}
	for i, f := range legs {
		if f.text("id") == "" {
			numbered[legName(f, i)] = f.node.Place.Value
		}
	}
	for _, f := range legs {
		id := f.node.Get("id")
		if id == nil {
			continue
		}
		if at, taken := numbered[id.Text]; taken {
			l.faultWith(DuplicateID, id, fmt.Sprintf("%q is also the number of a leg without an id: give this one another id, or that one an id too", id.Text), "the leg of that number", at)
		}
	}
}

func (l *linker) leg(f fields, from string, index int) Leg {
	leg := Leg{Pointer: f.pointer(), ID: from + "/" + legName(f, index)}
	hasSling := false
	for _, d := range f.of("down").items() {
		u, ok := l.use(d, gear.WireRopeSlingKind, gear.ShackleKind)
		// What it is may not be known, or be wrong: one complaint is enough.
		hasSling = hasSling || !ok || u.Item.Base().Kind == gear.WireRopeSlingKind
		if ok {
			leg.Down = append(leg.Down, u)
		}
	}
	if !hasSling {
		l.fault(WrongPart, f.of("down").node, "a leg needs a sling among its parts")
	}
	leg.End = l.end(f.of("end"))
	return leg
}

func (l *linker) end(f fields) End {
	at := f.node.Get("at")
	if at == nil {
		return End{Pointer: f.pointer()}
	}
	a, ok := l.attachments[at.Text]
	switch _, isGear := l.items[at.Text]; {
	case ok:
	case isGear:
		l.fault(UnknownReference, at, fmt.Sprintf("%q is an item of gear: a leg ends at an attachment of the load", at.Text))
	default:
		l.fault(UnknownReference, at, fmt.Sprintf("no attachment of the load has the id %q%s", at.Text, nearest.Hint(at.Text, l.pointIDs)))
	}
	return End{Pointer: at.Pointer, Attachment: a}
}

// use finds the item named and sees that it can work there: that it is of one
// of the kinds, and works nowhere else.
func (l *linker) use(f fields, kinds ...gear.Kind) (Use, bool) {
	id := f.node.Text
	item, ok := l.items[id]
	switch _, isPoint := l.attachments[id]; {
	case ok:
		return Use{Pointer: f.pointer(), Item: item}, l.can(f.node, item, kinds) && l.once(f.node)
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
	l.fault(WrongPart, n, fmt.Sprintf("%s is a %s and can't be used here: %s is asked for",
		item.Base().ID, kindWords(kind), anyOf(kinds)))
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
