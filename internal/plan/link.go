package plan

import (
	"fmt"

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
	itemIDs     []string
	pointIDs    []string
	faults      []yamldoc.Fault
}

func newLinker(p *Plan, root fields) *linker {
	l := &linker{items: map[string]gear.Item{}, attachments: map[string]*Attachment{}}
	for i, f := range root.of("gear").items() {
		item := p.Gear[i]
		l.items[item.Base().ID] = item
		l.itemIDs = append(l.itemIDs, item.Base().ID)
		_ = f
	}
	for i := range p.Load.Attachments {
		a := &p.Load.Attachments[i]
		l.attachments[a.ID] = a
		l.pointIDs = append(l.pointIDs, a.ID)
	}
	l.unique("gear", root.of("gear").items())
	l.unique("attachments", root.of("load").of("attachments").items())
	for _, s := range root.of("rigging").items() {
		l.unique("legs", s.of("legs").items())
	}
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
		at, seen := first[n.Text]
		if !seen {
			first[n.Text] = n.Place.Value
			continue
		}
		l.faults = append(l.faults, yamldoc.Fault{
			ID:      DuplicateID,
			Message: fmt.Sprintf("%q names two entries of %s: give each an id of its own", n.Text, list),
			Range:   n.Place.Value,
			Related: []yamldoc.Related{{Range: at, Caption: "the first one"}},
		})
	}
}

func (l *linker) support(list []fields) Support {
	var s Support
	for _, f := range list {
		s = Support{Pointer: f.pointer(), From: f.text("from")}
		for _, by := range f.of("by").items() {
			if u, ok := l.use(by); ok {
				s.By = append(s.By, u)
				l.must(by, u.Item, gear.MasterLinkKind)
			}
		}
		for i, leg := range f.of("legs").items() {
			s.Legs = append(s.Legs, l.leg(leg, s.From, i+1))
		}
	}
	return s
}

func (l *linker) leg(f fields, from string, number int) Leg {
	name := f.text("id")
	if name == "" {
		name = fmt.Sprint(number)
	}
	leg := Leg{Pointer: f.pointer(), ID: from + "/" + name}
	slings := 0
	for _, d := range f.of("down").items() {
		u, ok := l.use(d)
		if !ok {
			slings++ // what it is can't be told: do not complain twice
			continue
		}
		l.must(d, u.Item, gear.WireRopeSlingKind, gear.ShackleKind)
		if u.Item.Base().Kind == gear.WireRopeSlingKind {
			slings++
		}
		leg.Down = append(leg.Down, u)
	}
	if slings == 0 {
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
	if !ok {
		l.fault(UnknownReference, at, fmt.Sprintf("no attachment of the load has the id %q%s", at.Text, nearest.Hint(at.Text, l.pointIDs)))
	}
	return End{Pointer: at.Pointer, Attachment: a}
}

func (l *linker) use(f fields) (Use, bool) {
	item, ok := l.items[f.node.Text]
	if !ok {
		l.fault(UnknownReference, f.node, fmt.Sprintf("no item of gear has the id %q%s", f.node.Text, nearest.Hint(f.node.Text, l.itemIDs)))
	}
	return Use{Pointer: f.pointer(), Item: item}, ok
}

// must reports an item that can't work where the plan puts it.
func (l *linker) must(f fields, item gear.Item, kinds ...gear.Kind) {
	for _, k := range kinds {
		if item.Base().Kind == k {
			return
		}
	}
	l.fault(WrongPart, f.node, fmt.Sprintf("%s is a %s and can't be used here: %s is asked for",
		item.Base().ID, kindWords(item.Base().Kind), anyOf(kinds)))
}

func (l *linker) fault(id string, n *yamldoc.Node, message string) {
	if n == nil {
		return
	}
	l.faults = append(l.faults, yamldoc.Fault{ID: id, Message: message, Range: n.Place.Value})
}
