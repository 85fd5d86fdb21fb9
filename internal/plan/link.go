package plan

import (
	"cmp"
	"fmt"
	"slices"

	"liftlint/internal/gear"
	"liftlint/internal/nearest"
	"liftlint/internal/quantity"
	"liftlint/internal/source"
	"liftlint/internal/yamldoc"
)

// The faults that linking finds. The last two are also found by the schemas,
// which can't compare one value with another.
const (
	DuplicateID      = "plan/duplicate_id"
	UnknownReference = "plan/unknown_reference"
	WrongPart        = "plan/wrong_part"
	MissingKey       = "plan/missing_key"
	OutOfRange       = "plan/out_of_range"
)

// FaultIDs lists them.
func FaultIDs() []string {
	return []string{DuplicateID, UnknownReference, WrongPart, MissingKey, OutOfRange}
}

// linker turns the ids of the rigging into what they name.
type linker struct {
	units       quantity.System
	items       names[gear.Item]
	attachments names[*Attachment]
	points      names[*Attachment] // of beams
	bodies      names[*Body]
	hooks       names[int]
	froms       names[int]              // supports by what they hang from
	used        map[string]source.Range // where an item works first
	hung        map[string]source.Range // where legs hang from a hook or a point first
	held        map[string]source.Range // where a leg ends at a point of a beam first
	below       map[*gear.Beam][]*gear.Beam
	partOf      map[string]*gear.Bridle // the bridle that an item is part of
	places      map[string]source.Range // where that bridle names it
	// Whether a place that legs hang from, or end at, could not be found: then
	// nothing is said of hooks and beams for which it may stand.
	lostFrom, lostEnd bool
	faults            []yamldoc.Fault
}

// names finds things by their ids. Of things that share one, the first keeps
// it; that they do is reported elsewhere.
type names[T any] struct {
	of  map[string]T
	ids []string // in the order of the plan, for hints
}

func (n *names[T]) add(id string, v T) {
	if n.of == nil {
		n.of = map[string]T{}
	}
	if _, twice := n.of[id]; twice {
		return
	}
	n.of[id] = v
	n.ids = append(n.ids, id)
}

func newLinker(p *Plan, root fields) *linker {
	l := &linker{
		units:  p.Lift.Units,
		used:   map[string]source.Range{},
		hung:   map[string]source.Range{},
		held:   map[string]source.Range{},
		below:  map[*gear.Beam][]*gear.Beam{},
		partOf: map[string]*gear.Bridle{},
		places: map[string]source.Range{},
	}
	l.name(p)
	l.unique("gear", root.of("gear").items())
	for _, g := range root.of("gear").items() {
		l.unique("points", g.of("points").items())
	}
	l.unique("attachments", root.of("load").of("attachments").items())
	l.unique("bodies", root.of("load").of("bodies").items())
	l.unique("hooks", root.of("hooks").items())
	l.ownFigures(p.Gear, root.of("gear").items())
	l.bridles(p.Gear, root.of("gear").items())
	return l
}

// name takes in all that the rigging can name. Pointers lead into the plan.
func (l *linker) name(p *Plan) {
	for _, item := range p.Gear {
		l.items.add(item.Base().ID, item)
	}
	for i := range p.Load.Attachments {
		l.attachments.add(p.Load.Attachments[i].ID, &p.Load.Attachments[i])
	}
	for _, b := range p.Beams {
		for i := range b.Points {
			l.points.add(b.Points[i].ID, &b.Points[i])
		}
	}
	for i := range p.Load.Bodies {
		l.bodies.add(p.Load.Bodies[i].ID, &p.Load.Bodies[i])
	}
	for i, h := range p.Hooks {
		l.hooks.add(h.ID, i)
	}
}

// unique reports ids that a list gives twice, at the second one.
func (l *linker) unique(list string, items []fields) { l.uniqueBy("id", list, items) }

// uniqueBy is unique for names under another key than `id`.
func (l *linker) uniqueBy(key, list string, items []fields) {
	first := map[string]source.Range{}
	for _, f := range items {
		n := f.node.Get(key)
		if n == nil {
			continue
		}
		if at, seen := first[n.Text]; seen {
			l.faultWith(DuplicateID, n, fmt.Sprintf("%q names two entries of %s: give each %s of its own", n.Text, list, article(key)), "the first one", at)
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
	item, ok := l.items.of[id]
	switch _, isPoint := l.attachments.of[id]; {
	case ok:
		return Use{Pointer: f.pointer(), Item: item}, l.can(f.node, item, kinds)
	case isPoint:
		l.fault(UnknownReference, f.node, fmt.Sprintf("%q is an attachment of the load: here stands the id of %s", id, anyOf(kinds)))
	default:
		l.fault(UnknownReference, f.node, fmt.Sprintf("no item of gear has the id %q%s", id, nearest.Hint(id, l.items.ids)))
	}
	return Use{}, false
}

// can reports an item that is of another kind than works there.
func (l *linker) can(n *yamldoc.Node, item gear.Item, kinds []gear.Kind) bool {
	kind := item.Base().Kind
	if slices.Contains(kinds, kind) {
		return true
	}
	wanted := anyOf(kinds) + " is asked for"
	if _, isBeam := item.(*gear.Beam); isBeam {
		wanted = "legs end at one of its points and hang from others" + l.pointsOf(item.Base().ID)
	}
	l.fault(WrongPart, n, fmt.Sprintf("%s is %s and can't be used here: %s", item.Base().ID, article(kindWords(kind)), wanted))
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
	l.faultAt(id, n.Place.Value, message)
}

func (l *linker) faultAt(id string, at source.Range, message string) {
	l.faults = append(l.faults, yamldoc.Fault{ID: id, Message: message, Range: at})
}

func (l *linker) faultWith(id string, n *yamldoc.Node, message, caption string, other source.Range) {
	l.fault(id, n, message)
	l.faults[len(l.faults)-1].Related = []yamldoc.Related{{Range: other, Caption: caption}}
}

// sorted gives the faults in the order of the file.
func (l *linker) sorted() []yamldoc.Fault {
	slices.SortStableFunc(l.faults, func(a, b yamldoc.Fault) int { return inFile(a.Range, b.Range) })
	return l.faults
}

// inFile compares two ranges by their order in the file.
func inFile(a, b source.Range) int {
	return cmp.Or(cmp.Compare(a.From.Line, b.From.Line), cmp.Compare(a.From.Column, b.From.Column))
}
