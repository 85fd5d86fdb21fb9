package plan

import (
	"fmt"

	"liftlint/internal/gear"
	"liftlint/internal/yamldoc"
)

// bridles links the members of each bridle. Each item is part of one bridle at
// most, and once.
func (l *linker) bridles(items []gear.Item, list []fields) {
	for i, item := range items {
		if b, ok := item.(*gear.Bridle); ok {
			l.bridle(b, list[i])
		}
	}
}

func (l *linker) bridle(b *gear.Bridle, f fields) {
	if u, ok := l.member(b, f.of("master"), gear.MasterLinkKind); ok {
		b.Master = u.Item.(*gear.Link)
	}
	for _, g := range f.of("groups").items() {
		group := gear.BridleGroup{Pointer: g.pointer()}
		if link := g.of("link"); link.exists() {
			if u, ok := l.member(b, link, gear.IntermediateLinkKind); ok {
				group.Link, group.LinkPointer = u.Item.(*gear.Link), u.Pointer
			}
		}
		for _, leg := range g.of("legs").items() {
			if u, ok := l.member(b, leg, gear.WireRopeSlingKind, gear.ChainSlingKind); ok {
				l.alike(b, group, leg, u.Item)
				group.Legs = append(group.Legs, gear.BridleLeg{Pointer: u.Pointer, Sling: u.Item})
			}
		}
		if group.Link != nil && len(group.Legs) > 2 {
			l.fault(WrongPart, g.of("legs").node, fmt.Sprintf("%s is an intermediate link and takes two legs; here are %d", group.Link.ID, len(group.Legs)))
		}
		b.Groups = append(b.Groups, group)
	}
	if n := len(b.Legs()); n > 4 {
		l.fault(WrongPart, f.of("groups").node, fmt.Sprintf("bridle %s has %d legs; a bridle has four at most", b.ID, n))
	}
}

// alike sees that a leg is of the kind of the bridle's first: what its tag says
// is for legs that give alike.
func (l *linker) alike(b *gear.Bridle, group gear.BridleGroup, f fields, leg gear.Item) {
	before := append(b.Legs(), group.Legs...)
	if len(before) == 0 {
		return
	}
	first, own := before[0].Sling.Base(), leg.Base()
	if first.Kind != own.Kind {
		l.faultWith(WrongPart, f.node, fmt.Sprintf("%s is %s, and bridle %s has %s: all legs of a bridle are of one kind", own.ID, article(kindWords(own.Kind)), b.ID, article(kindWords(first.Kind))), "where the bridle names "+first.ID, l.places[first.ID])
	}
}

// member links one item that a bridle names as its own.
func (l *linker) member(b *gear.Bridle, f fields, kinds ...gear.Kind) (Use, bool) {
	u, ok := l.named(f, kinds...)
	if !ok {
		return Use{}, false
	}
	id := f.node.Text
	if other, taken := l.partOf[id]; taken {
		l.faultWith(WrongPart, f.node, fmt.Sprintf("%s is part of bridle %s already: each link and leg is part of one bridle, once", id, other.ID), "its first place", l.places[id])
		return Use{}, false
	}
	l.partOf[id], l.places[id] = b, f.node.Place.Value
	return u, true
}

// ownPlace reports an item that is put to work by itself though it is part of
// a bridle.
func (l *linker) ownPlace(f fields) bool {
	b, part := l.partOf[f.node.Text]
	if part {
		l.faultWith(WrongPart, f.node, fmt.Sprintf("%s is part of bridle %s and can't be used by itself: write %s in `by`", f.node.Text, b.ID, b.ID), "where the bridle names it", l.places[f.node.Text])
	}
	return !part
}

// beginning sees that a leg below a bridle begins with one of its slings, and
// that nothing else of a bridle stands in any leg.
func (l *linker) beginning(f fields, first bool, in *BridleUse) {
	b, part := l.partOf[f.node.Text]
	switch {
	case in == nil || !first:
		l.ownPlace(f)
	case !part || b != in.Bridle:
		l.fault(WrongPart, f.node, fmt.Sprintf("the leg hangs from bridle %s: it begins with one of the slings that are part of it", in.Bridle.ID))
	}
}

// linkOf is the intermediate link that a leg of the bridle hangs from, nil
// where it hangs from the master link.
func linkOf(b *gear.Bridle, leg gear.Item) *Use {
	for _, g := range b.Groups {
		for _, member := range g.Legs {
			if member.Sling == leg && g.Link != nil {
				return &Use{Pointer: g.LinkPointer, Item: g.Link}
			}
		}
	}
	return nil
}

// allLegsOfBridle reports legs of the bridle that the rigging does not name: it
// hangs there all the same.
func (l *linker) allLegsOfBridle(s Support) {
	if s.Bridle == nil {
		return
	}
	for _, leg := range s.Bridle.Bridle.Legs() {
		id := leg.Sling.Base().ID
		if _, used := l.used[id]; used {
			continue
		}
		l.faults = append(l.faults, yamldoc.Fault{
			ID:      WrongPart,
			Message: fmt.Sprintf("bridle %s has a leg %s that the rigging does not name: use it, or write `{down: [%s], end: {kind: parked}}`", s.Bridle.Bridle.ID, id, id),
			Range:   l.used[s.Bridle.Bridle.ID],
			Related: []yamldoc.Related{{Range: l.places[id], Caption: "the leg"}},
		})
	}
}
